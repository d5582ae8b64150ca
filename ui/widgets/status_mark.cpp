// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/widgets/status_mark.h"

#include <QPainter>
#include <QPainterPath>
#include <algorithm>

#include "ui/theme/icons.h"
#include "ui/theme/theme.h"

namespace ullage::ui {

namespace {

constexpr int word_mark_side = 16;

std::optional<Mark> most_severe(const std::vector<cellar::Advice>& advice) {
  const auto worst = std::max_element(
      advice.begin(), advice.end(),
      [](const cellar::Advice& a, const cellar::Advice& b) { return a.severity < b.severity; });
  if (worst == advice.end() || worst->severity < cellar::Severity::warning) return std::nullopt;
  return mark_of(worst->severity);
}

Mark mark_of_phase(cellar::Phase phase) {
  switch (phase) {
    case cellar::Phase::dirty:
      return Mark::half_ring;
    case cellar::Phase::clean:
    case cellar::Phase::sanitised:
    case cellar::Phase::purged:
      return Mark::ring;
    case cellar::Phase::carbonating:
    case cellar::Phase::conditioning:
      return Mark::clock;
    case cellar::Phase::ready:
      return Mark::dot;
    case cellar::Phase::on_tap:
      return Mark::cup;
    case cellar::Phase::unknown:
      break;
  }
  return Mark::question;
}

void paint_half_ring(QPainter& painter, const QRectF& box, const QColor& colour, double pen) {
  const QRectF ring = box.adjusted(pen, pen, -pen, -pen);
  painter.setPen(QPen(colour, pen));
  painter.setBrush(Qt::NoBrush);
  painter.drawEllipse(ring);
  painter.setPen(Qt::NoPen);
  painter.setBrush(colour);
  constexpr int sixteenths_of_a_degree = 16;
  painter.drawPie(ring, 180 * sixteenths_of_a_degree, 180 * sixteenths_of_a_degree);
}

void paint_bar(QPainter& painter, const QRectF& box, const QColor& colour, double pen) {
  painter.setPen(QPen(colour, pen));
  painter.setBrush(Qt::NoBrush);
  painter.drawEllipse(box.adjusted(pen, pen, -pen, -pen));
  painter.setPen(QPen(colour, pen * 1.3, Qt::SolidLine, Qt::FlatCap));
  const QPointF middle = box.center();
  painter.drawLine(middle - QPointF(box.width() * 0.24, 0),
                   middle + QPointF(box.width() * 0.24, 0));
}

void paint_question(QPainter& painter, const QRectF& box, const QColor& colour, double pen) {
  QPen dotted(colour, pen);
  dotted.setDashPattern({1.2, 1.4});
  painter.setPen(dotted);
  painter.setBrush(Qt::NoBrush);
  painter.drawEllipse(box.adjusted(pen, pen, -pen, -pen));
  QFont font = font_of(TextRole::strong);
  font.setPixelSize(std::max(6, static_cast<int>(box.height() * 0.6)));
  painter.setFont(font);
  painter.setPen(colour);
  painter.drawText(box, Qt::AlignCenter, QStringLiteral("?"));
}

}  // namespace

QColor mark_colour(Mark mark, const Theme& theme) {
  switch (mark) {
    case Mark::triangle:
    case Mark::clock:
      return theme.warning;
    case Mark::octagon:
    case Mark::padlock:
      return theme.danger;
    case Mark::dot:
      return theme.success;
    case Mark::cup:
      return theme.accent;
    case Mark::info:
      return theme.accent_ink;
    case Mark::bar:
      return theme.danger;
    case Mark::ring:
    case Mark::half_ring:
    case Mark::question:
      break;
  }
  return theme.text_secondary;
}

void paint_mark(QPainter& painter, const QRectF& box, Mark mark, const Theme& theme) {
  painter.save();
  painter.setRenderHint(QPainter::Antialiasing);
  const QColor colour = mark_colour(mark, theme);
  const double pen = box.height() / 10.5;
  switch (mark) {
    case Mark::half_ring:
      paint_half_ring(painter, box, colour, pen);
      break;
    case Mark::bar:
      paint_bar(painter, box, colour, pen);
      break;
    case Mark::question:
      paint_question(painter, box, colour, pen);
      break;
    case Mark::ring:
      painter.setPen(QPen(colour, pen));
      painter.setBrush(Qt::NoBrush);
      painter.drawEllipse(box.adjusted(pen, pen, -pen, -pen));
      break;
    case Mark::dot:
      painter.setPen(Qt::NoPen);
      painter.setBrush(colour);
      painter.drawEllipse(box.adjusted(pen, pen, -pen, -pen));
      break;
    case Mark::clock:
      paint_icon(painter, box, Icon::clock, colour);
      break;
    case Mark::cup:
      paint_icon(painter, box, Icon::on_tap, colour);
      break;
    case Mark::triangle:
      paint_icon(painter, box, Icon::warning, colour);
      break;
    case Mark::octagon:
      paint_icon(painter, box, Icon::danger, colour);
      break;
    case Mark::padlock:
      paint_icon(painter, box, Icon::lock, colour);
      break;
    case Mark::info:
      paint_icon(painter, box, Icon::info, colour);
      break;
  }
  painter.restore();
}

Mark mark_of(cellar::Severity severity) {
  switch (severity) {
    case cellar::Severity::danger:
      return Mark::octagon;
    case cellar::Severity::warning:
      return Mark::triangle;
    case cellar::Severity::advice:
      return Mark::clock;
    case cellar::Severity::info:
      break;
  }
  return Mark::info;
}

Mark mark_of(const cellar::KegStatus& keg) {
  if (keg.lock) return Mark::padlock;
  if (const auto worst = most_severe(keg.advice)) return *worst;
  if (keg.quarantined) return Mark::bar;
  if (keg.hold_failed) return Mark::triangle;
  return mark_of_phase(keg.phase);
}

Mark mark_of(const cellar::LineStatus& line) {
  if (line.do_not_serve()) return Mark::padlock;
  if (const auto worst = most_severe(line.advice)) return *worst;
  if (line.overdue) return Mark::triangle;
  return line.keg ? Mark::cup : Mark::ring;
}

StatusMark::StatusMark(Mark mark, const QString& word, QWidget* parent)
    : QWidget(parent), mark_(mark), word_(word) {
  setAccessibleName(word);
}

void StatusMark::set(Mark mark, const QString& word) {
  mark_ = mark;
  word_ = word;
  setAccessibleName(word);
  updateGeometry();
  update();
}

QSize StatusMark::sizeHint() const {
  const QFontMetrics metrics(font());
  const int words = word_.isEmpty() ? 0 : space::s + metrics.horizontalAdvance(word_);
  return {word_mark_side + words, std::max(word_mark_side, metrics.height())};
}

QSize StatusMark::minimumSizeHint() const { return {word_mark_side, sizeHint().height()}; }

void StatusMark::paintEvent(QPaintEvent*) {
  const Theme& theme = theme_of(this);
  QPainter painter(this);
  const double top = (height() - word_mark_side) / 2.0;
  paint_mark(painter, QRectF(0, top, word_mark_side, word_mark_side), mark_, theme);
  painter.setPen(theme.text);
  const QRect words(word_mark_side + space::s, 0, width() - word_mark_side - space::s, height());
  painter.drawText(words, Qt::AlignVCenter | Qt::AlignLeft,
                   fontMetrics().elidedText(word_, Qt::ElideRight, words.width()));
}

}  // namespace ullage::ui
