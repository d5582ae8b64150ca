// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/widgets/life_legend.h"

#include <QFontMetricsF>
#include <QPainter>
#include <QStringList>
#include <cmath>

#include "ui/theme/theme.h"

namespace ullage::ui {

namespace {

constexpr qreal swatch_width = 22;
constexpr qreal swatch_full = 14;
constexpr qreal after_swatch = 5;
constexpr qreal after_word = 14;

}  // namespace

LifeLegend::LifeLegend(QWidget* parent) : QWidget(parent) {
  setSizePolicy(QSizePolicy::Preferred, QSizePolicy::Fixed);
}

void LifeLegend::set_phase_names(const PhaseNames& names) {
  using cellar::Phase;
  keys_.clear();
  for (const Phase phase : {Phase::dirty, Phase::clean, Phase::purged, Phase::carbonating,
                            Phase::conditioning, Phase::ready, Phase::on_tap}) {
    keys_.push_back({phase, false, names[static_cast<std::size_t>(phase)]});
  }
  keys_.push_back({Phase::ready, true, tr("likely")});
  QStringList words;
  for (const Key& key : keys_) words << key.word;
  setAccessibleName(tr("Life strip, low to high: %1").arg(words.join(QStringLiteral(", "))));
  updateGeometry();
  update();
}

QSize LifeLegend::sizeHint() const {
  const QFontMetricsF metrics(font_of(TextRole::small));
  qreal width = 0;
  for (const Key& key : keys_) {
    width += swatch_width + after_swatch + metrics.horizontalAdvance(key.word) + after_word;
  }
  return {static_cast<int>(std::ceil(width)), static_cast<int>(metrics.height()) + 10};
}

void LifeLegend::paintEvent(QPaintEvent*) {
  const Theme& theme = theme_of(this);
  const QFont font = font_of(TextRole::small);
  const QFontMetricsF metrics(font);
  QPainter painter(this);
  qreal x = 0;
  const qreal ground = height() / 2.0 + swatch_full / 2;
  for (const Key& key : keys_) {
    const qreal word = metrics.horizontalAdvance(key.word);
    if (x + swatch_width + after_swatch + word > width()) break;
    const double tall = theme.phases[static_cast<std::size_t>(key.phase)].height * swatch_full;
    paint_life_span(painter, QRectF(x, ground - tall, swatch_width, tall), key.phase, key.forecast,
                    theme);
    x += swatch_width + after_swatch;
    draw_elided(painter, x, height() / 2.0 + metrics.capHeight() / 2, word + 1, font,
                theme.text_secondary, key.word);
    x += word + after_word;
  }
}

}  // namespace ullage::ui
