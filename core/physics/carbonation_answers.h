// SPDX-License-Identifier: GPL-3.0-or-later
//
// Questions people ask of a carbonation model beside "now" and "when": how far
// the beer drifts at a serving pressure, and what two equations say of a setting.
#pragma once

#include <optional>

#include "core/physics/carbonation.h"
#include "core/physics/equilibrium.h"

namespace ullage::physics {

// From `now` on at `serving`, for `over`. Where the gas is lowered without a vent
// the headspace keeps what it has (carbonation.h); `vented` lets it down first.
struct Drift {
  units::Estimate<units::Co2Volumes> now;
  units::Estimate<units::Co2Volumes> then;
  units::Estimate<units::Co2Volumes> change;  // errors that both share cancel
  units::Estimate<units::Co2Volumes> in_the_end;
};
enum class BeforeServing { as_it_is, vented };

// `over` from a minute to a year; what the model refuses is refused.
[[nodiscard]] Result<Drift> drift_at(const CarbonationModel&,
                                     const units::Estimate<units::GaugePressure>& serving,
                                     units::Duration now, units::Duration over,
                                     BeforeServing before = BeforeServing::as_it_is);

// What holds at rest, by the equation asked for; where that one is out of its
// range (or would have beer hold more than water), by the next that is not, with
// the reason: default, then exponential. Refuses with the first reason when none
// can tell.
struct EquilibriumAnswer {
  units::Co2Volumes co2;
  Equation by = Equation::fitted_chart;
  std::optional<RangeError> instead_because;
  // A second equation beside it, where one can tell: they differ by so much.
  std::optional<units::Co2Volumes> second;
  std::optional<Equation> second_by;
};
[[nodiscard]] Result<EquilibriumAnswer> equilibrium_answer(
    const GasAbove&, units::Temperature, Equation wanted = Equation::fitted_chart);

}  // namespace ullage::physics
