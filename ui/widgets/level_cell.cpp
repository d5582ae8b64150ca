// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/widgets/level_cell.h"

#include <QFontMetricsF>
#include <QPainter>
#include <QPainterPath>
#include <algorithm>

#include "ui/theme/theme.h"

namespace ullage::ui {

void paint_keg_glyph(QPainter& painter, const QRectF& box, const LevelView& level,
                     const Theme& theme) {
  painter.save();
  painter.setRenderHint(QPainter::Antialiasing);
  const qreal collar = std::max(2.0, box.height() * 0.1);
  const QRectF body = box.adjusted(0.75, collar, -0.75, -0.75);
  QPainterPath shell;
  shell.addRoundedRect(body, box.width() * 0.26, box.width() * 0.26);
  painter.fillPath(shell, theme.surface);
  if (level.fraction) {
    const QRectF inside = body.adjusted(1.5, 1.5, -1.5, -1.5);
    const double spread = level.fraction_half_width.value_or(0);
    const double sure = std::clamp(*level.fraction - spread, 0.0, 1.0);
    const double maybe = std::clamp(*level.fraction + spread, 0.0, 1.0);
    QPainterPath room;
    room.addRoundedRect(inside, box.width() * 0.16, box.width() * 0.16);
    painter.setClipPath(room);
    const auto up_to = [&](double fraction) {
      return QRectF(inside.left(), inside.bottom() - (inside.height() * fraction), inside.width(),
                    inside.height() * fraction);
    };
    painter.fillRect(up_to(maybe), pale(theme.text_secondary, theme.surface));
    painter.fillRect(up_to(sure), theme.text_secondary);
    painter.setClipping(false);
  }
  painter.setPen(QPen(theme.text_secondary, 1.5));
  painter.setBrush(Qt::NoBrush);
  painter.drawPath(shell);
  const qreal handle = box.width() * 0.24;
  painter.drawLine(QPointF(box.left() + handle, box.top() + 0.75),
                   QPointF(box.right() - handle, box.top() + 0.75));
  painter.restore();
}

namespace {

constexpr qreal glyph_gap = 9;  // between the keg and the words

qreal level_text_left(const QRectF& cell, const CellStyle& style) {
  return cell.left() + cell_margin + (style.compact ? 9 : 17) + glyph_gap;
}
qreal level_mark(qreal text_left, const CellStyle& style) {
  return text_left + QFontMetricsF(style.body).horizontalAdvance(QStringLiteral("00"));
}

}  // namespace

QRectF level_number_rect(const QRectF& cell, const LevelView& level, const CellStyle& style) {
  if (!level.none.isEmpty()) return {};
  return number_rect(
      {level_mark(level_text_left(cell, style), style), first_baseline(cell, style), cell.right()},
      level.amount.value, level.amount.error, style);
}

void paint_level_cell(QPainter& painter, const QRectF& cell, const LevelView& level,
                      const CellStyle& style) {
  const Theme& theme = *style.theme;
  const qreal height = style.compact ? std::min(cell.height() - 2, 16.0) : 30;
  const qreal width = style.compact ? 9 : 17;
  const qreal left = cell.left() + cell_margin;
  paint_keg_glyph(painter, QRectF(left, cell.center().y() - (height / 2), width, height), level,
                  theme);
  const qreal text_left = level_text_left(cell, style);
  const qreal room = cell.right() - text_left - 2;
  const qreal first = first_baseline(cell, style);
  if (!level.none.isEmpty()) {
    const QRectF middle = cell;
    CellStyle one_line = style;
    one_line.compact = true;
    draw_elided(painter, text_left, first_baseline(middle, one_line), room, style.small,
                theme.text_secondary, level.none);
    return;
  }
  draw_number(painter, {level_mark(text_left, style), first, cell.right()}, level.amount.value,
              level.amount.error, theme.text, style);
  if (!style.compact) {
    draw_elided(painter, text_left, second_baseline(cell, style), room, style.small,
                theme.text_secondary, level.glasses);
  }
}

}  // namespace ullage::ui
