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

constexpr int zoom = 3;  // so that thin strokes reach their full colour

// The colour most of the area has is what the text stands on; the colour that
// stands out most from it is the text.
double contrast_on(const QImage& picture, const QRect& area) {
  std::map<QRgb, int> seen;
  for (int y = area.top(); y <= area.bottom(); ++y) {
    const auto* pixels = reinterpret_cast<const QRgb*>(picture.constScanLine(y));
    for (int x = area.left(); x <= area.right();) {  // a run of one colour at a time
      const int from = x;
      while (x <= area.right() && pixels[x] == pixels[from]) ++x;
      seen[pixels[from]] += x - from;
    }
  }
  const auto ground = std::max_element(
      seen.begin(), seen.end(), [](const auto& a, const auto& b) { return a.second < b.second; });
  double most = 1;
  for (const auto& [colour, count] : seen) {
    most = std::max(most, ui::contrast(QColor(colour), QColor(ground->first)));
  }
  return most;
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
  QImage picture(window.size() * zoom, QImage::Format_RGB32);
  picture.setDevicePixelRatio(zoom);
  window.render(&picture);
  std::vector<std::string> findings;
  for (QWidget* child : visible_children(window)) {
    if (text_on(*child).trimmed().isEmpty()) continue;
    const QRect inside(child->mapTo(&window, QPoint(0, 0)), child->size());
    const QRect shown = inside.intersected(window.rect());
    const QRect visible = child->visibleRegion().boundingRect();
    if (shown.isEmpty() || visible.size() != child->size()) continue;  // scrolled out of sight
    const QRect area(shown.topLeft() * zoom, shown.size() * zoom);
    const double found = contrast_on(picture, area);
    if (found < ratio) {
      findings.push_back(name_of(*child) + " has text of " + std::to_string(found) + ":1");
    }
  }
  return findings;
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
