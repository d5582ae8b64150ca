// SPDX-License-Identifier: GPL-3.0-or-later
//
// What the painters of a keg's row share: the theme and typefaces they draw
// with, and the two baselines that texts of neighbouring cells stand on.
#pragma once

#include <QColor>
#include <QFont>
#include <QRectF>

class QPainter;

namespace ullage::ui {

struct Theme;

struct CellStyle {
  const Theme* theme;
  bool compact;
  QFont strong;   // tag, state
  QFont body;     // contents, numbers
  QFont small;    // second lines, errors
  QColor ground;  // behind the cell, for text that must stand clear of lines
};
[[nodiscard]] CellStyle cell_style(const Theme&, bool compact);

// Room left and right inside a cell.
inline constexpr qreal cell_margin = 8;

// The baselines of a row with two lines; in compact rows both are the one line.
[[nodiscard]] qreal first_baseline(const QRectF& cell, const CellStyle&);
[[nodiscard]] qreal second_baseline(const QRectF& cell, const CellStyle&);

// Draws text from x, elided to width; returns the x where it ended.
qreal draw_elided(QPainter&, qreal x, qreal baseline, qreal width, const QFont&, const QColor&,
                  const QString&);
// Where a number stands on its line: its decimal mark, so that a column of them lines
// up whatever their digits, and how far it may go.
struct NumberSpot {
  qreal mark_x = 0, baseline = 0, right = 0;
};
// With its error, which always begins at one place.
void draw_number(QPainter&, const NumberSpot&, const QString& value, const QString& error,
                 const QColor& value_colour, const CellStyle&);

// The room that number and error take when drawn so, a line high.
[[nodiscard]] QRectF number_rect(const NumberSpot&, const QString& value, const QString& error,
                                 const CellStyle&);

// A line's position on whole device pixels, so that thin lines stay sharp.
[[nodiscard]] qreal on_pixel(const QPainter&, qreal);

}  // namespace ullage::ui
