// SPDX-License-Identifier: GPL-3.0-or-later
//
// Fonts and line breaks of everything printed. Lines are broken here, once, and
// painted one by one, so that what was measured is what comes out.
#pragma once

#include <QFont>
#include <QPen>
#include <QRectF>
#include <QStringList>

class QPainter;

namespace ullage::ui {

// Of that many points on paper. A trace of letter spacing turns ligatures off:
// text copied from the PDF is then the text that was written.
[[nodiscard]] QFont printed_font(const QFont& base, double pt, int weight);
[[nodiscard]] QPen printed_line(double pt);

// The text in lines no wider than `width` dots; a word that is wider by itself is
// broken. An empty text has no lines.
[[nodiscard]] QStringList broken_lines(const QString& text, const QFont& font, double width);
[[nodiscard]] double line_height(const QFont& font);
// Paints the lines from the area's top left; gives the y below the last one.
double paint_lines(QPainter& painter, const QStringList& lines, const QFont& font, double x,
                   double y);

// Paints the text as large as fits between the two sizes; below the smaller one
// it goes on shrinking rather than lose a letter.
struct FitBetween {
  double largest_pt, smallest_pt;
  int weight;
};
void paint_fitted(QPainter& painter, const QRectF& area, int alignment, const QString& text,
                  const QFont& base, const FitBetween& fit);

}  // namespace ullage::ui
