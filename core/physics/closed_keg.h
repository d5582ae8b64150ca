// SPDX-License-Identifier: GPL-3.0-or-later
//
// A closed keg of beer under its own CO2: where headspace and beer come to rest.
//
//   n = beer x C + n_gas(p, headspace, T),   C = Ceq(p, T)
//
// Real gas, pure CO2; Ceq is the default equilibrium. Used for rescue and priming.
#pragma once

#include "core/physics/error.h"
#include "core/units/quantities.h"
#include "core/units/scales.h"

namespace ullage::physics {

struct ClosedKeg {
  units::Volume brimful;
  units::Volume beer;  // under headspace_share_range of the brimful
  units::Temperature temperature;
};
struct KegAtRest {
  units::AbsolutePressure headspace;
  units::Co2Volumes co2;
};

[[nodiscard]] Result<units::Amount> co2_in_keg(const ClosedKeg&, const KegAtRest&);
// Where `total` CO2 comes to rest. Refuses what would rest above
// equilibrium_pressure_range.
[[nodiscard]] Result<KegAtRest> at_rest(const ClosedKeg&, units::Amount total);
// Beer holding `co2` and a headspace in balance with it.
[[nodiscard]] Result<KegAtRest> resting_at(const ClosedKeg&, units::Co2Volumes co2);

// Closed, headspace and beer meet faster than beer alone meets a steady gas: the
// headspace holds little. Share of the resting time constant, 0 to 1.
[[nodiscard]] Result<units::Fraction> closed_time_share(const ClosedKeg&);

}  // namespace ullage::physics
