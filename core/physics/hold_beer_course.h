// SPDX-License-Identifier: GPL-3.0-or-later
//
// What a tight keg with beer in it does along a hold test: headspace and beer are
// one closed system,
//
//   n_head(p, T) + beer C = constant,   dC/dt = (Ceq(p, T) - C) / tau.
//
// Internal to core/physics; hold_beer.h has the words.
#pragma once

#include <vector>

#include "core/physics/hold_beer.h"

namespace ullage::physics {

// Where the beer's CO2 is drawn to, straight in time over a span of it.
struct PulledTo {
  units::Co2Volumes from, to;
};
// The beer's CO2 at the end of the span.
[[nodiscard]] units::Co2Volumes after_uptake(units::Co2Volumes, const PulledTo&,
                                             units::Duration span, units::Duration time_constant);

// The headspace at each reading's time, from the pressure of the first one. Of the
// readings after it only times and temperatures count (straight between them).
// `equation_off` is added to the equilibrium.
[[nodiscard]] Result<std::vector<units::AbsolutePressure>> tight_course(
    const HoldTest&, const BeerInside&, units::Co2Volumes equation_off = units::volumes_of_co2(0));

}  // namespace ullage::physics
