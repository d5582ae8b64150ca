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

// `off` is what the dial of the acts' pressures is off by; no fill ends below the air's
// own pressure. Refuses what purge_on refuses.
[[nodiscard]] Result<PurgeEstimate> purge_estimate(
    const KnownVessel&, const PurgeAct&, const units::Estimate<units::PressureDifference>& off,
    units::ErrorSource method, const SupplyGas& gas = {}, const PurgeMixing& mixing = {});

// Several in their order, going on from `before` where there is one, whose own best and
// worst are part of the range. The gas is that of these acts alone. Refuses none.
[[nodiscard]] Result<PurgeEstimate> purge_estimate(
    const KnownVessel&, std::span<const PurgeAct>,
    const units::Estimate<units::PressureDifference>& off, units::ErrorSource method,
    const SupplyGas& gas = {}, const PurgeMixing& mixing = {},
    const std::optional<PurgeOutcome>& before = std::nullopt);

// cycles_to_reach() by the best, the likely and the worst mixing, the dial and the air
// within their errors. No `most` where the dial may stand so high without any gas.
struct CyclesNeeded {
  double likely = 0, fewest = 0;
  std::optional<double> most;
  std::vector<units::Contribution> errors;
};
[[nodiscard]] Result<CyclesNeeded> cycles_needed(
    units::MoleFraction target, const KnownVessel&, units::GaugePressure high,
    const units::Estimate<units::PressureDifference>& off, const SupplyGas& gas = {},
    const Mixing& mixing = cycle_mixing());

}  // namespace ullage::physics
