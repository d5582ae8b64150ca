// SPDX-License-Identifier: GPL-3.0-or-later
//
// What stands on every page of a log or list around its body: its heading, its foot
// with "page x of y"; and the line to sign at its end.
#pragma once

#include <QFont>
#include <QRectF>
#include <QSizeF>
#include <QString>
#include <string>
#include <vector>

class QPainter;

namespace ullage::ui {

struct SheetFrame {
  QString title, below_title, cellar, printed, footnote;
};

// The part of the paper that is left for the body.
[[nodiscard]] QRectF body_of(const QSizeF& paper);
void paint_frame(QPainter& painter, const SheetFrame& frame, const QRectF& body, const QFont& base,
                 int page, int pages);

// The height that signatures take.
[[nodiscard]] double signatures_height();
void paint_signatures(QPainter& painter, const std::vector<std::string>& labels, const QFont& font,
                      const QRectF& body, double y);

}  // namespace ullage::ui
