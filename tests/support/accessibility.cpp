// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/support/accessibility.h"

#include <QAbstractButton>
#include <QAbstractScrollArea>
#include <QAccessible>
#include <QApplication>
#include <QButtonGroup>
#include <QComboBox>
#include <QImage>
#include <QLabel>
#include <QLineEdit>
#include <QTest>
#include <QTreeView>
#include <algorithm>
#include <map>
#include <set>

#include "tests/support/painted_text.h"
#include "ui/theme/theme.h"

namespace ullage::testing {

namespace {

std::string name_of(const QWidget& widget) {
  QString text = QString::fromLatin1(widget.metaObject()->className());
  if (!widget.objectName().isEmpty()) text += " '" + widget.objectName() + "'";
  if (const auto* label = qobject_cast<const QLabel*>(&widget)) text += " “" + label->text() + "”";
  if (const auto* button = qobject_cast<const QAbstractButton*>(&widget)) {
    text += " “" + button->text() + "”";
  }
  return text.toStdString();
}

bool takes_tab(const QWidget& widget) {
  return widget.isVisible() && widget.isEnabled() && !widget.focusProxy() &&
         (widget.focusPolicy() & Qt::TabFocus) == Qt::TabFocus;
}

// One visible, enabled button of an exclusive group stands for all.
const QWidget* stop_of(const QWidget* widget) {
  const auto* button = qobject_cast<const QAbstractButton*>(widget);
  if (button && !button->group() && button->autoExclusive()) {
    for (const auto* sibling : button->parentWidget()->findChildren<QAbstractButton*>(
             QString(), Qt::FindDirectChildrenOnly)) {
      if (sibling->autoExclusive() && !sibling->group()) return sibling;
    }
  }
  if (!button || !button->group() || !button->group()->exclusive()) return widget;
  return button->group()->buttons().first();
}

std::vector<QWidget*> visible_children(QWidget& window) {
  std::vector<QWidget*> all;
  for (QWidget* child : window.findChildren<QWidget*>()) {
    if (child->isVisible() && child->window() == &window) all.push_back(child);
  }
  return all;
}

QString text_on(const QWidget& widget) {
  if (const auto* label = qobject_cast<const QLabel*>(&widget)) return label->text();
  if (const auto* button = qobject_cast<const QAbstractButton*>(&widget)) return button->text();
  if (const auto* edit = qobject_cast<const QLineEdit*>(&widget)) {
    return edit->text().isEmpty() ? edit->placeholderText() : edit->text();
  }
  if (const auto* combo = qobject_cast<const QComboBox*>(&widget)) {
    return combo->isEditable() ? QString() : combo->currentText();
  }
  return {};
}

// The colour that most of the area has: what text on it stands on.
QColor ground_of(const QImage& picture, const QRect& area) {
  std::map<QRgb, int> seen;
  for (int y = area.top(); y <= area.bottom(); ++y) {
    const auto* pixels = reinterpret_cast<const QRgb*>(picture.constScanLine(y));
    for (int x = area.left(); x <= area.right();) {  // a run of one colour at a time
      const int from = x;
      while (x <= area.right() && pixels[x] == pixels[from]) ++x;
      seen[pixels[from]] += x - from;
    }
  }
  return {std::max_element(seen.begin(), seen.end(), [](const auto& a, const auto& b) {
            return a.second < b.second;
          })->first};
}

QColor over(const QColor& ink, const QColor& ground) {
  const float share = ink.alphaF();
  const auto mix = [share](float a, float b) { return a * share + b * (1 - share); };
  return QColor::fromRgbF(mix(ink.redF(), ground.redF()), mix(ink.greenF(), ground.greenF()),
                          mix(ink.blueF(), ground.blueF()));
}

}  // namespace

std::vector<std::string> unnamed_controls(QWidget& window) {
  std::vector<std::string> findings;
  for (QWidget* child : visible_children(window)) {
    if (!takes_tab(*child)) continue;
    QAccessibleInterface* spoken = QAccessible::queryAccessibleInterface(child);
    if (!spoken || spoken->text(QAccessible::Name).trimmed().isEmpty()) {
      findings.push_back(name_of(*child) + " has no accessible name");
    }
  }
  return findings;
}

std::vector<std::string> tab_order_faults(QWidget& window) {
  std::set<const QWidget*> wanted;
  for (QWidget* child : visible_children(window)) {
    if (takes_tab(*child)) wanted.insert(stop_of(child));
  }
  if (wanted.empty()) return {};
  window.activateWindow();
  if (!QTest::qWaitForWindowActive(&window)) return {"the window did not become active"};
  if (!window.focusWidget()) QTest::keyClick(&window, Qt::Key_Tab);
  std::set<const QWidget*> reached;
  std::string way;
  const std::size_t enough = wanted.size() * 2 + 4;
  for (std::size_t i = 0; i < enough && window.focusWidget(); ++i) {
    QWidget* here = window.focusWidget();
    if (reached.insert(stop_of(here)).second) way += "\n  " + name_of(*here);
    QTest::keyClick(here, Qt::Key_Tab);
    if (window.focusWidget() == here && wanted.size() > 1) {
      return {name_of(*here) + " keeps the keyboard: Tab does not leave it"};
    }
  }
  std::vector<std::string> findings;
  for (const QWidget* control : wanted) {
    if (!reached.contains(control))
      findings.push_back(name_of(*control) + " is not reached by Tab, which goes:" + way);
  }
  return findings;
}

std::vector<std::string> contrast_faults(QWidget& window, double ratio) {
  std::set<std::string> findings;
  scroll_through(window, [&] {
    QImage picture(window.size(), QImage::Format_RGB32);
    window.render(&picture);
    for (const PaintedText& text : painted_texts(window)) {
      const QRect area = text.area & picture.rect();
      if (area.isEmpty()) continue;
      const QColor ground = ground_of(picture, area);
      const double found = ui::contrast(over(text.ink, ground), ground);
      if (found >= ratio) continue;
      const QWidget* on = window.childAt(area.center());
      findings.insert("“" + text.text.toStdString() + "” stands out " + std::to_string(found) +
                      ":1" + (on ? " in " + name_of(*on) : ""));
    }
  });
  return {findings.begin(), findings.end()};
}

std::vector<std::string> clipped_texts(QWidget& window) {
  std::vector<std::string> findings;
  for (QWidget* child : visible_children(window)) {
    if (text_on(*child).trimmed().isEmpty()) continue;
    const auto* label = qobject_cast<const QLabel*>(child);
    const bool wraps = label && label->wordWrap();
    const QSize needed = child->minimumSizeHint();
    const int height = wraps ? label->heightForWidth(child->width()) : needed.height();
    const bool is_text = label || qobject_cast<const QAbstractButton*>(child);
    if (!is_text) continue;
    if ((!wraps && child->width() < needed.width()) || child->height() < height) {
      findings.push_back(name_of(*child) + " is " + std::to_string(child->width()) + "x" +
                         std::to_string(child->height()) + ", its text needs " +
                         std::to_string(needed.width()) + "x" + std::to_string(height));
    }
  }
  return findings;
}

std::vector<std::string> cut_cells(const QTreeView& view) {
  std::vector<std::string> findings;
  const int margins = 2 * (view.style()->pixelMetric(QStyle::PM_FocusFrameHMargin) + 1);
  const auto look_at = [&](const QModelIndex& cell) {
    const QRect room = view.visualRect(cell);
    const QString text = cell.data().toString();
    const QRect needed = view.fontMetrics().boundingRect(
        QRect(0, 0, room.width() - margins, QWIDGETSIZE_MAX), Qt::TextWordWrap, text);
    if (needed.width() <= room.width() - margins && needed.height() <= room.height()) return;
    findings.push_back("“" + text.toStdString() + "” has " + std::to_string(room.width()) + "x" +
                       std::to_string(room.height()));
  };
  // Row by row as they are shown, the rows below an opened one included.
  for (QModelIndex at = view.model()->index(0, 0, view.rootIndex()); at.isValid();
       at = view.indexBelow(at)) {
    for (int column = 0; column < view.model()->columnCount(at.parent()); ++column) {
      look_at(at.siblingAtColumn(column));
    }
  }
  return findings;
}

}  // namespace ullage::testing
