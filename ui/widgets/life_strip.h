// SPDX-License-Identifier: GPL-3.0-or-later
//
// A keg's life on a line of days: what it was, is and is likely to be. Phases
// differ by height and pattern as well as colour; a forecast is paler with a
// dashed edge; the stretch in which it should become ready is a bar with ends.
#pragma once

#include <QRectF>
#include <QString>
#include <array>
#include <chrono>
#include <functional>
#include <vector>

#include "core/cellar/status.h"
#include "ui/models/keg_row.h"
#include "ui/widgets/cell_style.h"

class QPainter;

namespace ullage::ui {

// Maps moments to places: two weeks back to two weeks ahead, the cell's width.
struct LifeScale {
  cellar::Instant now{};
  qreal left = 0;
  qreal right = 1;
  [[nodiscard]] static constexpr std::chrono::seconds reach() { return std::chrono::days(14); }
  [[nodiscard]] qreal x_of(cellar::Instant) const;
};
[[nodiscard]] LifeScale life_scale(const QRectF& cell, cellar::Instant now);

// The words written under a stretch that is wide enough, by cellar::Phase.
using PhaseNames = std::array<QString, 9>;

void paint_life_cell(QPainter&, const QRectF& cell, const LifeView&, const LifeScale&,
                     const PhaseNames&, const CellStyle&);
// One stretch: for the legend too.
void paint_life_span(QPainter&, const QRectF&, cellar::Phase, bool forecast, const Theme&);

struct LifeTick {
  cellar::Instant at{};
  QString label;
  bool today = false;
};
void paint_life_axis(QPainter&, const QRectF& header, const std::vector<LifeTick>&,
                     const LifeScale&, const CellStyle&);

}  // namespace ullage::ui
