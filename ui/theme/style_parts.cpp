// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/theme/style_parts.h"

#include <QPainter>
#include <QPainterPath>
#include <QStyleOption>
#include <QVariant>
#include <QWidget>
#include <algorithm>

#include "ui/theme/style.h"
#include "ui/theme/theme.h"

namespace ullage::ui {

namespace {

constexpr int least_slider = 28;
constexpr auto field_fault_property = "ullage_fault";

bool has(const QStyleOption& option, QStyle::StateFlag flag) { return option.state.testFlag(flag); }

QRectF inside(const QRect& rect) { return QRectF(rect).adjusted(0.5, 0.5, -0.5, -0.5); }

bool in_fault(const QWidget* widget) {
  return widget && widget->property(field_fault_property).toBool();
}

// The outline of a button that may be joined to its neighbours.
QPainterPath button_outline(const QRectF& body, Segment segment, double corner) {
  QPainterPath path;
  path.setFillRule(Qt::WindingFill);
  path.addRoundedRect(body, corner, corner);
  const QRectF left(body.left(), body.top(), corner, body.height());
  const QRectF right(body.right() - corner, body.top(), corner, body.height());
  if (segment == Segment::middle || segment == Segment::last) path.addRect(left);
  if (segment == Segment::middle || segment == Segment::first) path.addRect(right);
  return path.simplified();
}

struct ButtonLook {
  QColor fill, edge, ink;
  bool filled = false;
};

ButtonLook look_of(const QStyleOption& option, const QWidget* widget) {
  const Theme& theme = theme_of(option.palette);
  const bool enabled = has(option, QStyle::State_Enabled);
  const bool over = enabled && has(option, QStyle::State_MouseOver);
  const bool on = has(option, QStyle::State_On);
  const bool down = has(option, QStyle::State_Sunken);
  const QColor rest = down || over ? theme.hover : theme.surface;
  if (!enabled) return {theme.window, theme.line, theme.text_secondary, false};
  if (on) return {theme.accent, theme.accent, theme.accent_text, true};
  switch (role_of(widget)) {
    case ButtonRole::primary:
      return {over || down ? theme.accent_hover : theme.accent,
              over || down ? theme.accent_hover : theme.accent, theme.accent_text, true};
    case ButtonRole::danger:
      return {over || down ? theme.danger_surface : theme.surface, theme.danger, theme.danger_ink,
              false};
    case ButtonRole::quiet:
      return {over || down ? theme.hover : QColor(Qt::transparent), QColor(Qt::transparent),
              theme.accent_ink, false};
    case ButtonRole::plain:
      break;
  }
  return {rest, theme.control_line, theme.text, false};
}

}  // namespace

void paint_focus_ring(QPainter& painter, const QRectF& body, double corner, const Theme& theme,
                      bool on_filled) {
  painter.save();
  painter.setRenderHint(QPainter::Antialiasing);
  painter.setBrush(Qt::NoBrush);
  painter.setPen(QPen(on_filled ? theme.accent_text : theme.focus, 2));
  const double inset = on_filled ? 3 : 0.5;
  painter.drawRoundedRect(body.adjusted(inset, inset, -inset, -inset),
                          std::max(1.0, corner - inset), std::max(1.0, corner - inset));
  painter.restore();
}

void paint_field(QPainter& painter, const QStyleOption& option, const QWidget* widget) {
  const Theme& theme = theme_of(option.palette);
  painter.save();
  painter.setRenderHint(QPainter::Antialiasing);
  const bool enabled = has(option, QStyle::State_Enabled);
  const bool fixed = has(option, QStyle::State_ReadOnly);
  painter.setBrush(enabled && !fixed ? theme.surface : theme.window);
  painter.setPen(QPen(in_fault(widget)    ? theme.danger
                      : enabled && !fixed ? theme.control_line
                                          : theme.line,
                      1));
  const QRectF body = inside(option.rect);
  painter.drawRoundedRect(body, radius::control, radius::control);
  painter.restore();
  if (has(option, QStyle::State_HasFocus)) {
    paint_focus_ring(painter, body, radius::control, theme);
  }
}

void paint_frame(QPainter& painter, const QStyleOption& option) {
  const Theme& theme = theme_of(option.palette);
  const bool focus = has(option, QStyle::State_HasFocus);
  painter.save();
  painter.setRenderHint(QPainter::Antialiasing);
  painter.setBrush(Qt::NoBrush);
  painter.setPen(QPen(focus ? theme.focus : theme.control_line, focus ? 2 : 1));
  // Hardly rounded: what it frames is square.
  painter.drawRoundedRect(inside(option.rect), 2, 2);
  painter.restore();
}

QColor button_ink(const QStyleOption& option, const QWidget* widget) {
  return look_of(option, widget).ink;
}

void paint_button(QPainter& painter, const QStyleOption& option, const QWidget* widget) {
  const Theme& theme = theme_of(option.palette);
  const ButtonLook look = look_of(option, widget);
  const Segment segment = segment_of(widget);
  QRectF body = inside(option.rect);
  // Joined buttons share the line between them.
  if (segment == Segment::middle || segment == Segment::last) body.setLeft(body.left() - 1);
  painter.save();
  painter.setRenderHint(QPainter::Antialiasing);
  painter.setPen(QPen(look.edge, 1));
  painter.setBrush(look.fill);
  painter.drawPath(button_outline(body, segment, radius::control));
  painter.restore();
  if (has(option, QStyle::State_HasFocus)) {
    paint_focus_ring(painter, inside(option.rect), radius::control, theme, look.filled);
  }
}

void paint_tool_button(QPainter& painter, const QStyleOption& option) {
  const Theme& theme = theme_of(option.palette);
  const bool over = has(option, QStyle::State_MouseOver) && has(option, QStyle::State_Enabled);
  const bool on = has(option, QStyle::State_On);
  const bool down = has(option, QStyle::State_Sunken);
  if (!over && !on && !down) return;
  painter.save();
  painter.setRenderHint(QPainter::Antialiasing);
  painter.setPen(Qt::NoPen);
  painter.setBrush(on ? theme.selected : theme.hover);
  painter.drawRoundedRect(QRectF(option.rect), radius::control, radius::control);
  painter.restore();
}

void paint_check_box(QPainter& painter, const QStyleOption& option) {
  const Theme& theme = theme_of(option.palette);
  const bool on = has(option, QStyle::State_On);
  const bool some = has(option, QStyle::State_NoChange);
  const bool enabled = has(option, QStyle::State_Enabled);
  const QRectF box = inside(option.rect).adjusted(1, 1, -1, -1);
  painter.save();
  painter.setRenderHint(QPainter::Antialiasing);
  const QColor edge = enabled ? theme.control_line : theme.line;
  painter.setPen(QPen(on || some ? theme.accent : edge, 1));
  painter.setBrush(on || some ? theme.accent : theme.surface);
  painter.drawRoundedRect(box, radius::small, radius::small);
  const QPen pen(theme.accent_text, 2, Qt::SolidLine, Qt::RoundCap, Qt::RoundJoin);
  painter.setPen(pen);
  painter.setBrush(Qt::NoBrush);
  const auto at = [&](double x, double y) {
    return QPointF(box.left() + x * box.width(), box.top() + y * box.height());
  };
  if (on) {
    painter.drawPolyline(QList<QPointF>{at(0.22, 0.53), at(0.42, 0.73), at(0.79, 0.29)});
  } else if (some) {
    painter.drawLine(at(0.25, 0.5), at(0.75, 0.5));
  }
  painter.restore();
}

void paint_radio(QPainter& painter, const QStyleOption& option) {
  const Theme& theme = theme_of(option.palette);
  const bool on = has(option, QStyle::State_On);
  const QRectF box = inside(option.rect).adjusted(1, 1, -1, -1);
  painter.save();
  painter.setRenderHint(QPainter::Antialiasing);
  painter.setPen(QPen(on ? theme.accent : theme.control_line, on ? 2 : 1));
  painter.setBrush(theme.surface);
  painter.drawEllipse(box);
  if (on) {
    constexpr double dot = 0.25;  // of the box, on each side of the middle
    painter.setPen(Qt::NoPen);
    painter.setBrush(theme.accent);
    painter.drawEllipse(box.center(), box.width() * dot, box.height() * dot);
  }
  painter.restore();
}

void paint_chevron(QPainter& painter, const QRect& rect, bool down, const QColor& colour) {
  constexpr double half_width = 4;
  constexpr double half_height = 2;
  const double turn = down ? 1 : -1;
  const QPointF middle = QRectF(rect).center();
  painter.save();
  painter.setRenderHint(QPainter::Antialiasing);
  painter.setPen(QPen(colour, 1.6, Qt::SolidLine, Qt::RoundCap, Qt::RoundJoin));
  painter.drawPolyline(QList<QPointF>{middle + QPointF(-half_width, -half_height * turn),
                                      middle + QPointF(0, half_height * turn),
                                      middle + QPointF(half_width, -half_height * turn)});
  painter.restore();
}

QRect scroll_bar_part(const QStyleOptionSlider& bar, QStyle::SubControl part) {
  const bool across = bar.orientation == Qt::Horizontal;
  const int length = across ? bar.rect.width() : bar.rect.height();
  const int span = bar.maximum - bar.minimum;
  int slider = length;
  if (span > 0) {
    const double share = static_cast<double>(bar.pageStep) / (span + bar.pageStep);
    slider = std::clamp(static_cast<int>(length * share), std::min(least_slider, length), length);
  }
  const int start = QStyle::sliderPositionFromValue(bar.minimum, bar.maximum, bar.sliderPosition,
                                                    length - slider, bar.upsideDown);
  const auto piece = [&](int from, int to) {
    return across ? QRect(bar.rect.left() + from, bar.rect.top(), to - from, bar.rect.height())
                  : QRect(bar.rect.left(), bar.rect.top() + from, bar.rect.width(), to - from);
  };
  switch (part) {
    case QStyle::SC_ScrollBarGroove:
      return bar.rect;
    case QStyle::SC_ScrollBarSlider:
      return piece(start, start + slider);
    case QStyle::SC_ScrollBarSubPage:
      return piece(0, start);
    case QStyle::SC_ScrollBarAddPage:
      return piece(start + slider, length);
    default:
      return {};
  }
}

void paint_scroll_bar(QPainter& painter, const QStyleOptionSlider& bar, const QRect& slider) {
  const Theme& theme = theme_of(bar.palette);
  painter.save();
  painter.setRenderHint(QPainter::Antialiasing);
  painter.fillRect(bar.rect, theme.window);
  const bool active = has(bar, QStyle::State_Enabled) && bar.maximum > bar.minimum;
  if (active) {
    const bool held = bar.activeSubControls.testFlag(QStyle::SC_ScrollBarSlider);
    painter.setPen(Qt::NoPen);
    painter.setBrush(held ? theme.text_secondary : theme.control_line);
    const QRectF body = QRectF(slider).adjusted(3, 3, -3, -3);
    const double corner = std::min(body.width(), body.height()) / 2;
    painter.drawRoundedRect(body, corner, corner);
  }
  painter.restore();
}

}  // namespace ullage::ui
