// SPDX-License-Identifier: GPL-3.0-or-later
//
// A purge with the errors of what it was read on: the dial, the thermometer, the
// volumes, the weather, beside how well the gas mixes (purge.h).
//
//   range of the oxygen left = likely e^(-s_below) ... likely e^(s_above)
//   s^2 = ln(best or worst / likely)^2 + sum over sources (d ln oxygen)^2
//
// In the logarithm, since oxygen falls by the same factor with each cycle: 2 psi at 30
// is 4 % of the ratio and, after five cycles, 22 % of what is left. Each source by a
// central difference, sides of the mixing apart. docs/physics-purge.md, "Errors".
#pragma once

#include "core/physics/purge_plan.h"
#include "core/units/estimate.h"

namespace ullage::physics {

// A Vessel as it is known.
struct KnownVessel {
  units::Estimate<units::Volume> gas_space, beer;
  units::Estimate<units::AbsolutePressure> ambient;
  units::Estimate<units::Temperature> temperature;
  units::MoleFraction oxygen = air_oxygen;
};

struct PurgeEstimate {
  // Its best and worst are the whole range; its grams are those of the arithmetic.
  PurgeOutcome outcome;
  OxygenConcentration if_all_in_beer_best;
  units::Estimate<units::Mass> co2_used;  // with the method's own 15 % (gas_use.h)
  // Of ln(oxygen left) and of ln(oxygen in the beer), the mixing under its own name.
  std::vector<units::Contribution> oxygen_errors, in_beer_errors;
};

// `off` is what the dial of the act's pressure is off by; no fill ends below the air's
// own pressure. Refuses what purge_on refuses.
[[nodiscard]] Result<PurgeEstimate> purge_estimate(
    const KnownVessel&, const PurgeAct&, const units::Estimate<units::PressureDifference>& off,
    units::ErrorSource method, const SupplyGas& gas = {}, const PurgeMixing& mixing = {});

}  // namespace ullage::physics
