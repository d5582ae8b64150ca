// SPDX-License-Identifier: GPL-3.0-or-later
//
// The text that a window paints, whoever paints it: labels and fields, cells of tables,
// drawings, charts. It is taken from the painting itself, so nothing that can be seen
// escapes for being of a class that a test does not know. Not seen: text in a picture
// (a page of paper in its preview).
#pragma once

#include <QColor>
#include <QRect>
#include <QString>
#include <functional>
#include <vector>

class QWidget;

namespace ullage::testing {

struct PaintedText {
  QString text;
  QRect area;  // in the window, as far as it is in sight
  QColor ink;
};

// What is in sight now.
[[nodiscard]] std::vector<PaintedText> painted_texts(QWidget& window);

// Scrolls all that can be scrolled from top to bottom, a screenful at a time, calls
// `look` at each stop, and scrolls back. Without anything to scroll: one stop.
void scroll_through(QWidget& window, const std::function<void()>& look);

}  // namespace ullage::testing
