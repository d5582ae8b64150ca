// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/theme/style.h"

#include <QAbstractButton>
#include <QComboBox>
#include <QDialog>
#include <QDialogButtonBox>
#include <QLineEdit>
#include <QPainter>
#include <QPainterPath>
#include <QPushButton>
#include <QStyleOption>
#include <QVariant>

#include "ui/theme/style_parts.h"
#include "ui/theme/theme.h"

namespace ullage::ui {

namespace {

constexpr auto role_property = "ullage_role";
constexpr auto segment_property = "ullage_segment";
constexpr int button_padding = 14;
constexpr int quiet_padding = 8;  // no border to keep away from
constexpr int field_padding = 8;
constexpr int chevron_room = 28;
constexpr int scroll_bar_extent = 12;
constexpr int header_height = 30;
constexpr int menu_item_height = 30;
constexpr int popup_row_height = 26;
constexpr int indicator_side = 18;
constexpr int tool_button_side = 32;

}  // namespace

void set_role(QAbstractButton* button, ButtonRole role) {
  button->setProperty(role_property, static_cast<int>(role));
  button->update();
}

void make_default(QPushButton* button) {
  set_role(button, ButtonRole::primary);
  button->setDefault(true);
}

ButtonRole role_of(const QWidget* widget) {
  return widget ? static_cast<ButtonRole>(widget->property(role_property).toInt())
                : ButtonRole::plain;
}

void set_segment(QAbstractButton* button, Segment segment) {
  button->setProperty(segment_property, static_cast<int>(segment));
}

Segment segment_of(const QWidget* widget) {
  return widget ? static_cast<Segment>(widget->property(segment_property).toInt()) : Segment::whole;
}

Style::Style() : QProxyStyle(QStringLiteral("fusion")) { setObjectName(QLatin1String(style_name)); }

void Style::polish(QWidget* widget) {
  QProxyStyle::polish(widget);
  if (qobject_cast<QAbstractButton*>(widget) || qobject_cast<QComboBox*>(widget) ||
      qobject_cast<QLineEdit*>(widget)) {
    widget->setAttribute(Qt::WA_Hover);
  }
}

void Style::drawPrimitive(PrimitiveElement element, const QStyleOption* option, QPainter* painter,
                          const QWidget* widget) const {
  switch (element) {
    case PE_PanelLineEdit:
      // Inside a combo or spin box the frame is theirs.
      if (const auto* frame = qstyleoption_cast<const QStyleOptionFrame*>(option);
          frame && frame->lineWidth > 0) {
        paint_field(*painter, *option, widget);
      }
      return;
    case PE_FrameLineEdit:
      return;
    case PE_Frame:
      paint_frame(*painter, *option);
      return;
    case PE_PanelButtonCommand:
      paint_button(*painter, *option, widget);
      return;
    case PE_PanelButtonTool:
      paint_tool_button(*painter, *option);
      return;
    case PE_FrameFocusRect:
      paint_focus_ring(*painter, QRectF(option->rect).adjusted(1, 1, -1, -1), radius::small,
                       theme_of(option->palette));
      return;
    case PE_IndicatorCheckBox:
      paint_check_box(*painter, *option);
      return;
    case PE_IndicatorRadioButton:
      paint_radio(*painter, *option);
      return;
    case PE_IndicatorArrowDown:
    case PE_IndicatorArrowUp:
      paint_chevron(*painter, option->rect, element == PE_IndicatorArrowDown,
                    theme_of(option->palette).text_secondary);
      return;
    case PE_FrameMenu:
    case PE_PanelTipLabel: {
      const Theme& theme = theme_of(option->palette);
      painter->fillRect(option->rect, theme.raised);
      painter->setPen(theme.line);
      painter->drawRect(option->rect.adjusted(0, 0, -1, -1));
      return;
    }
    default:
      QProxyStyle::drawPrimitive(element, option, painter, widget);
  }
}

void Style::drawControl(ControlElement element, const QStyleOption* option, QPainter* painter,
                        const QWidget* widget) const {
  if (element == CE_PushButton) {
    // The panel draws the ring itself; Fusion's dotted rectangle is left out.
    drawControl(CE_PushButtonBevel, option, painter, widget);
    if (const auto* button = qstyleoption_cast<const QStyleOptionButton*>(option)) {
      QStyleOptionButton label = *button;
      label.rect = subElementRect(SE_PushButtonContents, button, widget);
      drawControl(CE_PushButtonLabel, &label, painter, widget);
    }
    return;
  }
  if (element == CE_PushButtonLabel) {
    if (const auto* button = qstyleoption_cast<const QStyleOptionButton*>(option)) {
      QStyleOptionButton label = *button;
      label.palette.setColor(QPalette::ButtonText, button_ink(*option, widget));
      QProxyStyle::drawControl(element, &label, painter, widget);
      return;
    }
  }
  if (element == CE_HeaderSection || element == CE_HeaderEmptyArea) {
    const Theme& theme = theme_of(option->palette);
    painter->fillRect(option->rect, theme.window);
    painter->fillRect(QRect(option->rect.left(), option->rect.bottom(), option->rect.width(), 1),
                      theme.line);
    return;
  }
  QProxyStyle::drawControl(element, option, painter, widget);
}

void Style::drawComplexControl(ComplexControl control, const QStyleOptionComplex* option,
                               QPainter* painter, const QWidget* widget) const {
  if (control == CC_ComboBox) {
    if (const auto* combo = qstyleoption_cast<const QStyleOptionComboBox*>(option)) {
      paint_field(*painter, *combo, widget);
      QRect arrow = combo->rect;
      arrow.setLeft(arrow.right() - chevron_room);
      paint_chevron(*painter, arrow, true, theme_of(combo->palette).text_secondary);
      return;
    }
  }
  if (control == CC_ScrollBar) {
    if (const auto* bar = qstyleoption_cast<const QStyleOptionSlider*>(option)) {
      paint_scroll_bar(*painter, *bar,
                       subControlRect(CC_ScrollBar, bar, SC_ScrollBarSlider, widget));
      return;
    }
  }
  QProxyStyle::drawComplexControl(control, option, painter, widget);
}

int Style::pixelMetric(PixelMetric metric, const QStyleOption* option,
                       const QWidget* widget) const {
  switch (metric) {
    case PM_LayoutLeftMargin:
    case PM_LayoutRightMargin:
      return qobject_cast<const QDialog*>(widget)
                 ? space::xl
                 : QProxyStyle::pixelMetric(metric, option, widget);
    case PM_LayoutTopMargin:
    case PM_LayoutBottomMargin:
      return qobject_cast<const QDialog*>(widget)
                 ? space::l
                 : QProxyStyle::pixelMetric(metric, option, widget);
    case PM_ScrollBarExtent:
      return scroll_bar_extent;
    case PM_ScrollView_ScrollBarSpacing:
      return 0;
    case PM_IndicatorWidth:
    case PM_IndicatorHeight:
    case PM_ExclusiveIndicatorWidth:
    case PM_ExclusiveIndicatorHeight:
      return indicator_side;
    case PM_CheckBoxLabelSpacing:
    case PM_RadioButtonLabelSpacing:
      return space::s;
    case PM_ButtonShiftHorizontal:
    case PM_ButtonShiftVertical:
      return 0;
    case PM_ButtonIconSize:
    case PM_SmallIconSize:
      return small_icon;
    case PM_FocusFrameHMargin:  // beside the text of a table's cell
    case PM_HeaderMargin:
      return space::s;
    case PM_MenuHMargin:
    case PM_MenuVMargin:
      return space::xs;
    default:
      return QProxyStyle::pixelMetric(metric, option, widget);
  }
}

int Style::styleHint(StyleHint hint, const QStyleOption* option, const QWidget* widget,
                     QStyleHintReturn* data) const {
  switch (hint) {
    case SH_EtchDisabledText:
    case SH_DialogButtonBox_ButtonsHaveIcons:
    case SH_ComboBox_Popup:
    case SH_ItemView_ActivateItemOnSingleClick:
      return 0;
    case SH_DialogButtonLayout:
      // Everywhere the order in which our dialogs add their buttons: Qt 6.4 leaves one
      // out of the Tab order when the desktop's order is another.
      return QDialogButtonBox::WinLayout;
    case SH_UnderlineShortcut:
      return 1;
    case SH_ToolTipLabel_Opacity:
      return 255;
    default:
      return QProxyStyle::styleHint(hint, option, widget, data);
  }
}

QSize Style::sizeFromContents(ContentsType type, const QStyleOption* option, const QSize& contents,
                              const QWidget* widget) const {
  QSize size = QProxyStyle::sizeFromContents(type, option, contents, widget);
  switch (type) {
    case CT_LineEdit:
      if (const auto* frame = qstyleoption_cast<const QStyleOptionFrame*>(option);
          frame && frame->lineWidth > 0) {
        size.setHeight(std::max(size.height(), control_height));
      }
      return size;
    case CT_PushButton:
      return {
          std::max(contents.width() +
                       2 * (role_of(widget) == ButtonRole::quiet ? quiet_padding : button_padding),
                   control_height),
          std::max(contents.height() + 2 * space::s, control_height)};
    case CT_ComboBox:
      return {size.width() + space::m, std::max(size.height(), control_height)};
    case CT_ToolButton:
      return size.expandedTo(QSize(tool_button_side, tool_button_side));
    case CT_HeaderSection:
      size.setHeight(std::max(size.height(), header_height));
      return size;
    case CT_ItemViewItem:
      // The choices of a drop-down list are targets like those of a menu.
      if (widget && widget->window()->windowType() == Qt::Popup) {
        size.setHeight(std::max(size.height(), popup_row_height));
      }
      return size;
    case CT_MenuItem:
      if (const auto* item = qstyleoption_cast<const QStyleOptionMenuItem*>(option);
          item && item->menuItemType != QStyleOptionMenuItem::Separator) {
        size.setHeight(std::max(size.height(), menu_item_height));
      }
      return size;
    default:
      return size;
  }
}

QRect Style::subElementRect(SubElement element, const QStyleOption* option,
                            const QWidget* widget) const {
  QRect rect = QProxyStyle::subElementRect(element, option, widget);
  if (element == SE_LineEditContents) {
    const auto* frame = qstyleoption_cast<const QStyleOptionFrame*>(option);
    if (frame && frame->lineWidth > 0) rect.adjust(field_padding - 2, 0, 2 - field_padding, 0);
  }
  return rect;
}

QRect Style::subControlRect(ComplexControl control, const QStyleOptionComplex* option,
                            SubControl part, const QWidget* widget) const {
  if (control == CC_ComboBox) {
    if (part == SC_ComboBoxEditField) {
      return option->rect.adjusted(field_padding, 2, -chevron_room, -2);
    }
    if (part == SC_ComboBoxArrow) {
      return option->rect.adjusted(option->rect.width() - chevron_room, 0, 0, 0);
    }
  }
  if (control == CC_ScrollBar) {
    if (const auto* bar = qstyleoption_cast<const QStyleOptionSlider*>(option)) {
      return scroll_bar_part(*bar, part);
    }
  }
  return QProxyStyle::subControlRect(control, option, part, widget);
}

}  // namespace ullage::ui
