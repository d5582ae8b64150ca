// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/widgets/cell_style.h"

#include <QFontMetricsF>
#include <QPainter>
#include <algorithm>
#include <cmath>

#include "ui/theme/theme.h"

namespace ullage::ui {

CellStyle cell_style(const Theme& theme, bool compact) {
  CellStyle style{&theme,
                  compact,
                  font_of(TextRole::strong),
                  font_of(TextRole::body),
                  font_of(TextRole::small),
                  theme.window};
  if (compact) {
    style.body = style.small;
    style.strong = style.small;
    style.strong.setWeight(QFont::DemiBold);
  }
  return style;
}

namespace {

qreal middle_baseline(const QRectF& cell, const QFont& font) {
  const QFontMetricsF metrics(font);
  return cell.center().y() + (metrics.capHeight() / 2);
}

}  // namespace

qreal first_baseline(const QRectF& cell, const CellStyle& style) {
  const qreal middle = middle_baseline(cell, style.body);
  return style.compact ? middle : middle - (QFontMetricsF(style.small).height() * 0.56);
}

qreal second_baseline(const QRectF& cell, const CellStyle& style) {
  if (style.compact) return middle_baseline(cell, style.body);
  return first_baseline(cell, style) + QFontMetricsF(style.small).height() * 1.24;
}

qreal draw_elided(QPainter& painter, qreal x, qreal baseline, qreal width, const QFont& font,
                  const QColor& colour, const QString& text) {
  if (text.isEmpty() || width <= 0) return x;
  const QFontMetricsF metrics(font);
  qreal taken = metrics.horizontalAdvance(text);
  QString fits = text;
  if (taken > width) {
    fits = metrics.elidedText(text, Qt::ElideRight, width);
    taken = metrics.horizontalAdvance(fits);
  }
  painter.setFont(font);
  painter.setPen(colour);
  painter.drawText(QPointF(x, baseline), fits);
  return x + taken;
}

namespace {

// Where a number begins whose decimal mark stands at mark_x, and where its error does.
struct NumberPlace {
  qreal value, error;
};
NumberPlace place_of_number(qreal mark_x, const QString& value, const CellStyle& style) {
  const QFontMetricsF metrics(style.body);
  const auto mark = std::find_if(value.begin(), value.end(), [](QChar c) {
    return c == QLatin1Char('.') || c == QLatin1Char(',');
  });
  const QString whole = value.left(mark - value.begin());
  return {mark_x - metrics.horizontalAdvance(whole),
          mark_x + metrics.horizontalAdvance(QStringLiteral(".00")) + 3};
}

}  // namespace

void draw_number(QPainter& painter, const NumberSpot& spot, const QString& value,
                 const QString& error, const QColor& value_colour, const CellStyle& style) {
  const NumberPlace place = place_of_number(spot.mark_x, value, style);
  painter.setFont(style.body);
  painter.setPen(value_colour);
  painter.drawText(QPointF(place.value, spot.baseline), value);
  draw_elided(painter, place.error, spot.baseline, spot.right - place.error, style.small,
              style.theme->text_secondary, error);
}

QRectF number_rect(const NumberSpot& spot, const QString& value, const QString& error,
                   const CellStyle& style) {
  const NumberPlace place = place_of_number(spot.mark_x, value, style);
  const QFontMetricsF metrics(style.body);
  const qreal end = place.error + QFontMetricsF(style.small).horizontalAdvance(error);
  return {place.value, spot.baseline - metrics.ascent(), std::min(end, spot.right) - place.value,
          metrics.height()};
}

qreal on_pixel(const QPainter& painter, qreal position) {
  const qreal ratio = painter.device() != nullptr ? painter.device()->devicePixelRatioF() : 1.0;
  return std::round(position * ratio) / ratio;
}

}  // namespace ullage::ui
