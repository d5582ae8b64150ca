// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/widgets/life_strip.h"

#include <QFontMetricsF>
#include <QPainter>
#include <QPainterPath>
#include <QtMath>
#include <algorithm>
#include <vector>

#include "ui/theme/theme.h"

namespace ullage::ui {

namespace {

constexpr qreal strip_height = 22;

// From one end to before the other, so many points apart.
std::vector<qreal> marks_from(qreal from, qreal to, qreal apart) {
  const int count = std::max(0, qCeil((to - from) / apart));
  std::vector<qreal> marks;
  marks.reserve(static_cast<std::size_t>(count));
  for (int i = 0; i < count; ++i) marks.push_back(from + i * apart);
  return marks;
}

void draw_pattern(QPainter& painter, const QRectF& bar, StripPattern pattern, const QColor& ink) {
  QColor soft = ink;
  soft.setAlphaF(0.75F);
  painter.setPen(QPen(soft, 1.1));
  const qreal rise = bar.height();
  switch (pattern) {
    case StripPattern::diagonal:
      for (const qreal x : marks_from(bar.left() - rise, bar.right(), 6)) {
        painter.drawLine(QPointF(x, bar.bottom()), QPointF(x + rise, bar.top()));
      }
      break;
    case StripPattern::back_diagonal:
      for (const qreal x : marks_from(bar.left() - rise, bar.right(), 6)) {
        painter.drawLine(QPointF(x, bar.top()), QPointF(x + rise, bar.bottom()));
      }
      break;
    case StripPattern::dots:
      painter.setPen(Qt::NoPen);
      painter.setBrush(soft);
      for (const qreal x : marks_from(bar.left() + 3, bar.right() - 1, 5)) {
        painter.drawEllipse(QPointF(x, bar.center().y()), 1.1, 1.1);
      }
      break;
    case StripPattern::outline:
    case StripPattern::solid:
      break;
  }
}

void draw_ready_window(QPainter& painter, const cellar::Window& window, const LifeScale& scale,
                       qreal middle, const Theme& theme) {
  const qreal from = scale.x_of(window.earliest);
  const qreal to = window.latest ? scale.x_of(*window.latest) : scale.right;
  if (to - from < 2) return;
  painter.setPen(QPen(theme.text, 1.5));
  painter.drawLine(QPointF(from, middle), QPointF(to, middle));
  painter.drawLine(QPointF(from, middle - 4), QPointF(from, middle + 4));
  if (window.latest) painter.drawLine(QPointF(to, middle - 4), QPointF(to, middle + 4));
}

// Each phase is named once, under its first stretch, where the name has room
// before the next phase begins.
void draw_names(QPainter& painter, const LifeView& life, const LifeScale& scale,
                const PhaseNames& names, qreal baseline, const CellStyle& style) {
  const QFontMetricsF metrics(style.small);
  for (std::size_t i = 0; i < life.spans.size();) {
    std::size_t next = i + 1;
    while (next < life.spans.size() && life.spans[next].phase == life.spans[i].phase) ++next;
    const qreal from = scale.x_of(life.spans[i].from);
    const qreal to = scale.x_of(life.spans[next - 1].to);
    const QString& name = names[static_cast<std::size_t>(life.spans[i].phase)];
    const bool last = next == life.spans.size();
    const qreal room = (last ? scale.right + cell_margin : to) - from;
    if (to - from > 4 && metrics.horizontalAdvance(name) + 3 < room) {
      // Lines of the calendar give way to the word.
      painter.fillRect(QRectF(from, baseline - metrics.ascent() + 1,
                              metrics.horizontalAdvance(name) + 3, metrics.height() - 1),
                       style.ground);
      draw_elided(painter, from + 1, baseline, room, style.small, style.theme->text_secondary,
                  name);
    }
    i = next;
  }
}

void draw_grid(QPainter& painter, const QRectF& cell, const LifeScale& scale, const Theme& theme) {
  painter.setPen(Qt::NoPen);
  painter.setBrush(theme.line);
  for (const int week : {-2, -1, 1, 2}) {
    const qreal x = on_pixel(painter, scale.x_of(scale.now + std::chrono::weeks(week)));
    painter.drawRect(QRectF(x, cell.top(), 1, cell.height()));
  }
}

}  // namespace

qreal LifeScale::x_of(cellar::Instant at) const {
  const auto half = static_cast<double>(reach().count());
  const double where = std::clamp(static_cast<double>((at - now).count()) / half, -1.0, 1.0);
  return left + ((where + 1) / 2 * (right - left));
}

LifeScale life_scale(const QRectF& cell, cellar::Instant now) {
  return {now, cell.left() + cell_margin, cell.right() - cell_margin};
}

void paint_life_span(QPainter& painter, const QRectF& bar, cellar::Phase phase, bool forecast,
                     const Theme& theme) {
  const PhaseLook& look = theme.phases[static_cast<std::size_t>(phase)];
  painter.save();
  painter.setRenderHint(QPainter::Antialiasing);
  QPainterPath shape;
  const qreal round = bar.width() < 8 ? 0 : 2;
  shape.addRoundedRect(bar, round, round);
  painter.fillPath(shape, forecast ? pale(look.fill, theme.window) : look.fill);
  painter.setClipPath(shape, Qt::IntersectClip);
  if (look.pattern != StripPattern::solid) {
    draw_pattern(painter, bar, look.pattern, forecast ? pale(look.ink, theme.window) : look.ink);
  }
  painter.setClipping(false);
  QPen edge(look.ink, 1);
  if (forecast) {
    edge.setDashPattern({3, 2});
  }
  painter.setPen(edge);
  painter.setBrush(Qt::NoBrush);
  if (bar.width() > 5) painter.drawRoundedRect(bar.adjusted(0.5, 0.5, -0.5, -0.5), round, round);
  painter.restore();
}

void paint_life_cell(QPainter& painter, const QRectF& cell, const LifeView& life,
                     const LifeScale& scale, const PhaseNames& names, const CellStyle& style) {
  const Theme& theme = *style.theme;
  draw_grid(painter, cell, scale, theme);
  const qreal full = style.compact ? std::min(cell.height() - 2, strip_height) : strip_height;
  // The strip stands on one ground line, so that a life reads as rising steps.
  const qreal ground = on_pixel(
      painter, style.compact ? cell.center().y() + (full / 2) : first_baseline(cell, style) + 5);
  for (const cellar::LifeSpan& span : life.spans) {
    const qreal from = on_pixel(painter, scale.x_of(span.from));
    const qreal to = on_pixel(painter, scale.x_of(span.to));
    if (to - from < 0.5) continue;
    const double height = theme.phases[static_cast<std::size_t>(span.phase)].height * full;
    paint_life_span(painter, QRectF(from, ground - height, std::max(1.5, to - from - 1), height),
                    span.phase, span.forecast, theme);
  }
  painter.save();
  painter.setRenderHint(QPainter::Antialiasing);
  if (life.ready) draw_ready_window(painter, *life.ready, scale, ground - (full * 0.35), theme);
  painter.restore();
  painter.setPen(Qt::NoPen);
  painter.setBrush(theme.text);
  const qreal today = on_pixel(painter, scale.x_of(scale.now));
  painter.drawRect(QRectF(today - 0.5, cell.top(), 1.5, cell.height()));
  if (!style.compact) draw_names(painter, life, scale, names, second_baseline(cell, style), style);
}

void paint_life_axis(QPainter& painter, const QRectF& header, const std::vector<LifeTick>& ticks,
                     const LifeScale& scale, const CellStyle& style) {
  const Theme& theme = *style.theme;
  std::vector<QRectF> taken;
  const auto draw = [&](const LifeTick& tick) {
    const QFont& font = tick.today ? style.strong : style.small;
    const qreal width = QFontMetricsF(font).horizontalAdvance(tick.label);
    const qreal x = scale.x_of(tick.at);
    const qreal from = std::clamp(x - (width / 2), header.left() + 2, header.right() - width - 2);
    painter.setPen(Qt::NoPen);
    painter.setBrush(tick.today ? theme.text : theme.control_line);
    painter.drawRect(QRectF(on_pixel(painter, x), header.bottom() - 4, tick.today ? 1.5 : 1, 4));
    const QRectF place(from - 4, 0, width + 8, 1);
    if (std::any_of(taken.begin(), taken.end(),
                    [&](const QRectF& other) { return other.intersects(place); })) {
      return;
    }
    taken.push_back(place);
    draw_elided(painter, from, header.bottom() - 9, width + 2, font,
                tick.today ? theme.text : theme.text_secondary, tick.label);
  };
  // Today first, then outwards in: what has no room left gives way.
  for (const LifeTick& tick : ticks) {
    if (tick.today) draw(tick);
  }
  for (const bool outer : {true, false}) {
    for (const LifeTick& tick : ticks) {
      const bool at_end = &tick == &ticks.front() || &tick == &ticks.back();
      if (!tick.today && at_end == outer) draw(tick);
    }
  }
}

}  // namespace ullage::ui
