// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/print/sheet_frame.h"

#include <QFontMetricsF>
#include <QPainter>

#include "ui/context.h"
#include "ui/print/lettering.h"
#include "ui/print/paper.h"

namespace ullage::ui {
namespace {

constexpr double frame_margin_mm = 11;
constexpr double frame_heading_pt = 44;
constexpr double frame_foot_pt = 28;

}  // namespace

QRectF body_of(const QSizeF& paper) {
  const double margin = millimetres_on_paper(frame_margin_mm);
  return QRectF(QPointF(0, 0), paper)
      .adjusted(margin, margin + points(frame_heading_pt), -margin,
                -margin - points(frame_foot_pt));
}

void paint_frame(QPainter& painter, const SheetFrame& frame, const QRectF& body, const QFont& base,
                 int page, int pages) {
  const double top = body.top() - points(frame_heading_pt);
  const double half = body.width() / 2;
  paint_fitted(painter, QRectF(body.left(), top, half, points(24)), Qt::AlignLeft, frame.title,
               base, {18, 9, QFont::Bold});
  paint_fitted(painter, QRectF(body.left(), top + points(24), body.width(), points(13)),
               Qt::AlignLeft, frame.below_title, base, {10, 6, QFont::DemiBold});
  paint_fitted(painter, QRectF(body.left() + half, top, half, points(24)), Qt::AlignRight,
               frame.cellar + QLatin1Char('\n') + frame.printed, base, {9, 5, QFont::Normal});
  const double foot = body.bottom() + points(6);
  const double page_width = points(80);
  paint_fitted(painter, QRectF(body.left(), foot, body.width() - page_width, points(20)),
               Qt::AlignLeft, frame.footnote, base, {8, 5, QFont::Normal});
  paint_fitted(painter, QRectF(body.right() - page_width, foot, page_width, points(20)),
               Qt::AlignRight, QStringLiteral("page %1 of %2").arg(page + 1).arg(pages), base,
               {8, 5, QFont::Normal});
}

double signatures_height() { return points(52); }

void paint_signatures(QPainter& painter, const std::vector<std::string>& labels, const QFont& font,
                      const QRectF& body, double y) {
  // The last line ends at the margin.
  const double gap = points(24);
  const double step = (body.width() + gap) / static_cast<double>(labels.size());
  const QFontMetricsF metrics(font);
  for (std::size_t i = 0; i < labels.size(); ++i) {
    const QString label = q(labels[i]);
    const double x = body.left() + step * static_cast<double>(i);
    paint_lines(painter, {label}, font, x, y + points(26));
    const double line_y = y + points(26) + metrics.ascent();
    painter.setPen(printed_line(0.5));
    painter.drawLine(QPointF(x + metrics.horizontalAdvance(label) + points(6), line_y),
                     QPointF(x + step - gap, line_y));
    painter.setPen(Qt::black);
  }
}

}  // namespace ullage::ui
