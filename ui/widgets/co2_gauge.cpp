// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/widgets/co2_gauge.h"

#include <QFontMetricsF>
#include <QPainter>
#include <algorithm>

#include "ui/theme/theme.h"

namespace ullage::ui {

namespace {

QColor mark_colour(const Co2View& co2, const Theme& theme) {
  return co2.verdict == cellar::Co2Verdict::above ? theme.danger : theme.text;
}

}  // namespace

QRectF co2_gauge_rect(const QRectF& cell, const CellStyle& style) {
  if (style.compact) {
    return QRectF(cell.left() + cell_margin, cell.top() + 2, cell.width() * 0.4, cell.height() - 4);
  }
  const qreal baseline = second_baseline(cell, style);
  return QRectF(cell.left() + cell_margin, baseline - 11, cell.width() - (2 * cell_margin), 14);
}

void paint_co2_gauge(QPainter& painter, const QRectF& box, const Co2View& co2, double top,
                     const Theme& theme) {
  if (!co2.now && !co2.band) return;
  painter.save();
  painter.setRenderHint(QPainter::Antialiasing);
  painter.setPen(Qt::NoPen);
  const qreal middle = on_pixel(painter, box.center().y());
  const auto x_of = [&](double volumes) {
    return box.left() + (box.width() * std::clamp(volumes / top, 0.0, 1.0));
  };
  painter.setBrush(theme.line);
  painter.drawRoundedRect(QRectF(box.left(), middle - 1, box.width(), 2), 1, 1);
  if (co2.band) {
    const qreal height = std::min(box.height(), 12.0);
    const QRectF band(x_of(co2.band->low), middle - (height / 2),
                      std::max(3.0, x_of(co2.band->high) - x_of(co2.band->low)), height);
    painter.setBrush(pale(theme.success, theme.surface));
    painter.setPen(QPen(theme.success, 1));
    painter.drawRoundedRect(band.adjusted(0.5, 0.5, -0.5, -0.5), 2, 2);
    painter.setPen(Qt::NoPen);
  }
  if (co2.now) {
    const QColor ink = mark_colour(co2, theme);
    const qreal from = x_of(co2.now->low);
    const qreal to = x_of(co2.now->high);
    painter.setBrush(ink);
    painter.drawRect(QRectF(from, middle - 0.75, to - from, 1.5));
    if (to - from > 9) {
      painter.drawRect(QRectF(from, middle - 2.5, 1, 5));
      painter.drawRect(QRectF(to - 1, middle - 2.5, 1, 5));
    }
    const qreal height = std::min(box.height(), 14.0);
    painter.drawRoundedRect(QRectF(x_of(co2.now->value) - 1.5, middle - (height / 2), 3, height), 1,
                            1);
  }
  painter.restore();
}

namespace {

qreal co2_text_left(const QRectF& gauge, const CellStyle& style) {
  return style.compact ? gauge.right() + cell_margin : gauge.left();
}
qreal co2_mark(qreal text_left, const CellStyle& style) {
  return text_left + QFontMetricsF(style.body).horizontalAdvance(QStringLiteral("0"));
}

}  // namespace

QRectF co2_number_rect(const QRectF& cell, const Co2View& co2, const CellStyle& style) {
  if (!co2.now) return {};
  const qreal left = co2_text_left(co2_gauge_rect(cell, style), style);
  return number_rect({co2_mark(left, style), first_baseline(cell, style), cell.right()},
                     co2.amount.value, co2.amount.error, style);
}

void paint_co2_cell(QPainter& painter, const QRectF& cell, const Co2View& co2, double top,
                    const CellStyle& style) {
  const Theme& theme = *style.theme;
  const QRectF gauge = co2_gauge_rect(cell, style);
  paint_co2_gauge(painter, gauge, co2, top, theme);
  const qreal first = first_baseline(cell, style);
  const qreal text_left = co2_text_left(gauge, style);
  const qreal room = cell.right() - text_left - 2;
  if (!co2.now) {
    draw_elided(painter, text_left, first, room, style.small, theme.text_secondary, co2.none);
    return;
  }
  const bool above = co2.verdict == cellar::Co2Verdict::above;
  draw_number(painter, {co2_mark(text_left, style), first, cell.right()}, co2.amount.value,
              co2.amount.error, above ? theme.danger_ink : theme.text, style);
}

}  // namespace ullage::ui
