// SPDX-License-Identifier: GPL-3.0-or-later
//
// Too much CO2 in the beer: ways down, each by the closed mass balance
// (closed_keg.h), gas off throughout.
//
//   vents   let the headspace down to a pressure, shut, wait for it to come back,
//           again: about 20 for a full 19 L keg from 3.7 to 2.5 volumes, about 2
//           when it is half full, because only the headspace goes each time
//   held    relief or spunding valve held at the target's own pressure: needs no
//           counting and cannot overshoot, but takes several time constants
//   served  drawn with the gas off: the headspace grows and takes CO2 from the beer
//
// Warming the keg first makes each vent take more (ask at another temperature).
// The time constant is that of carbonation.h, guesswork within a factor of 2; that
// beer gives off gas as slowly as it takes it up is assumed (rocked or knocked it
// gives it off at once, and foams). docs/physics-rescue.md.
#pragma once

#include <optional>
#include <vector>

#include "core/physics/closed_keg.h"
#include "core/physics/log_estimate.h"
#include "core/units/estimate.h"
#include "core/units/gauge_pressure.h"

namespace ullage::physics {

struct OverCarbonated {
  units::Volume brimful;
  units::Estimate<units::Volume> beer;
  units::Estimate<units::Co2Volumes> co2;
  units::Estimate<units::Temperature> temperature;
  units::AbsolutePressure ambient;
  units::Co2Volumes target;
  LogEstimate<units::Duration> resting;  // time constant of the beer alone
};

// Vents as a number with a fraction: the last one needs no more than its share.
using VentCount = units::OnScale<struct VentCountTag>;

struct VentStep {
  units::GaugePressure before;   // at rest
  units::Co2Volumes after;       // in the beer once it is at rest again
  units::GaugePressure at_rest;  // what the gauge comes back to
};
struct VentPlan {
  int vents = 0;
  std::vector<VentStep> steps;
  // 95 %, from the errors of level, CO2 and temperature; a missing end is more
  // than most_vents.
  int fewest = 0;
  std::optional<int> most;
  LogEstimate<units::Duration> wait;  // after each vent: 95 % of the way back
  units::Mass vented;
};
inline constexpr int most_vents = 120;

// Refuses beer at or under the target (Subject::co2), a target that the pressure
// vented to can't reach (Subject::gauge_pressure), and more than most_vents
// (Subject::cycles).
[[nodiscard]] Result<VentPlan> vents_to_target(const OverCarbonated&,
                                               units::GaugePressure vent_to = {});

// What the plan comes to. Vents are whole, so the last one would go past the
// target: it is let down only to `last_to`, which ends on it.
struct VentedEnd {
  units::GaugePressure last_to;
  // With the errors of level, CO2 and temperature carried through the course.
  units::Estimate<units::GaugePressure> after_first;  // what the gauge comes back to
  units::Estimate<units::Co2Volumes> co2;             // at rest after all of them
  units::Estimate<units::GaugePressure> at_rest;
  units::Estimate<units::Mass> vented;  // what the keg held before, less what it holds then
};
// `plan` is the answer of vents_to_target to the same question.
[[nodiscard]] Result<VentedEnd> end_of_vents(const OverCarbonated&, const VentPlan& plan,
                                             units::GaugePressure vent_to = {});

struct HeldPlan {
  units::GaugePressure setting;         // the target's own pressure at rest
  LogEstimate<units::Duration> within;  // until 0.1 volumes from the target
};
[[nodiscard]] Result<HeldPlan> hold_at_target(const OverCarbonated&);

struct ServePlan {
  units::Volume drawn;  // until the beer left is at the target
  units::Volume left;
  units::GaugePressure pressure;  // then, at rest
};
// Slow pouring, at rest all along. Refuses when the beer runs out first
// (Subject::beer_volume) or would stand below ambient (Subject::gauge_pressure).
[[nodiscard]] Result<ServePlan> serve_to_target(const OverCarbonated&);

}  // namespace ullage::physics
