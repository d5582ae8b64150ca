// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/widgets/state_cell.h"

#include <QPainter>
#include <QPixmap>
#include <QPixmapCache>

#include "ui/theme/theme.h"

namespace ullage::ui {

namespace {

// A mark is a drawing that is parsed each time; a table shows the same few over
// and over.
void paint_kept_mark(QPainter& painter, const QRectF& box, Mark mark, const Theme& theme) {
  const qreal ratio = painter.device()->devicePixelRatioF();
  const QString key = QStringLiteral("ullage_mark_%1_%2_%3_%4")
                          .arg(static_cast<int>(mark))
                          .arg(theme.dark ? 1 : 0)
                          .arg(box.width())
                          .arg(ratio);
  QPixmap picture;
  if (!QPixmapCache::find(key, &picture)) {
    picture = QPixmap((box.size() * ratio).toSize());
    picture.setDevicePixelRatio(ratio);
    picture.fill(Qt::transparent);
    QPainter inside(&picture);
    paint_mark(inside, QRectF(QPointF(0, 0), box.size()), mark, theme);
    inside.end();
    QPixmapCache::insert(key, picture);
  }
  painter.drawPixmap(box.topLeft(), picture);
}

}  // namespace

void paint_state_cell(QPainter& painter, const QRectF& cell, const KegRow& row,
                      const CellStyle& style) {
  const Theme& theme = *style.theme;
  const qreal size = style.compact ? 13 : 16;
  const qreal first = first_baseline(cell, style);
  qreal left = cell.left() + cell_margin;
  qreal right = cell.right() - 4;
  QString head = row.state;
  QString rest = row.next_step;
  QColor head_colour = theme.text;
  QColor rest_colour = theme.text_secondary;
  if (row.stopped) {
    const QRectF plate = cell.adjusted(2, style.compact ? 0.5 : 5, -4, style.compact ? -0.5 : -5);
    painter.setRenderHint(QPainter::Antialiasing);
    painter.setBrush(theme.danger_surface);
    painter.setPen(QPen(theme.danger, 1));
    painter.drawRoundedRect(plate.adjusted(0.5, 0.5, -0.5, -0.5), radius::small, radius::small);
    right = plate.right() - 6;
    head = row.caution.head;
    rest = row.caution.rest;
    head_colour = theme.danger_ink;
    rest_colour = theme.text;
  }
  const qreal cap = size / 2;
  const qreal mark_middle = style.compact ? cell.center().y() : first - 5;
  paint_kept_mark(painter, QRectF(left, on_pixel(painter, mark_middle - cap), size, size), row.mark,
                  theme);
  left += size + 7;
  if (style.compact) {
    const qreal end =
        draw_elided(painter, left, first, right - left, style.strong, head_colour, head);
    draw_elided(painter, end + 7, first, right - end - 7, style.small, rest_colour, rest);
    return;
  }
  draw_elided(painter, left, first, right - left, style.strong, head_colour, head);
  draw_elided(painter, left, second_baseline(cell, style), right - left, style.small, rest_colour,
              rest);
}

}  // namespace ullage::ui
