// SPDX-License-Identifier: GPL-3.0-or-later
//
// Balancing a line: applied pressure = lift + what hoses and fittings lose at the
// pour wanted. By the handbook, with psi per foot and a rounded lift (as people
// do it on paper), and by the physics of draught_line.h.
#pragma once

#include <optional>
#include <vector>

#include "core/physics/draught_line.h"

namespace ullage::physics {

// --- on paper

struct HandbookRun {
  units::Length length = units::metres(0);
  units::PressureGradient restriction = units::psi_per_foot(0);
};
// 0.5 psi a foot (a maker's manual, verified); exact is 0.438 for beer.
[[nodiscard]] units::PressureDifference handbook_lift(units::Length rise);

struct HandbookBalance {
  units::PressureDifference lift, runs;
  units::PressureDifference left;  // for a restrictor; negative: too much already
};
[[nodiscard]] Result<HandbookBalance> handbook_balance(units::GaugePressure applied,
                                                       units::Length rise,
                                                       const std::vector<HandbookRun>&);
// How long a restrictor hose of that restriction takes up `left`. Refuses a
// negative one: a restrictor only takes away.
[[nodiscard]] Result<units::Length> restrictor_length(units::PressureDifference left,
                                                      units::PressureGradient);

// --- by the physics

struct BalancedHose {
  units::Length exact = units::metres(0);
  std::optional<units::Length> at_hand;   // the nearest of those at hand
  std::optional<units::VolumeFlow> flow;  // what it then pours
};
// The length of hose `part` for this pour; refuses where no length will do.
[[nodiscard]] Result<BalancedHose> balance_length(const LineFlow&, std::size_t part,
                                                  units::GaugePressure, units::VolumeFlow,
                                                  const std::vector<units::Length>& at_hand = {});

}  // namespace ullage::physics
