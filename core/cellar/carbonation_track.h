// SPDX-License-Identifier: GPL-3.0-or-later
//
// CO2 in a keg's beer: the model of core/physics fed from the journal, or the
// reason why nothing can be told.
//
// Start: still beer keeps what its warmest temperature since fermentation left
// in it; without that, the fill temperature bounds it widely. Spunded beer is at
// equilibrium with the valve; measured beer as measured. A keg found or received
// starts from the CO2 stated, or from pressure and temperature at rest.
//
// Carbonation readings teach the model how fast this keg is and where its other
// causes of error stand (core/physics/rate_posterior.h): they narrow the band.
// Readings that the history can't give are a conflict. It is told, nothing is
// learned, and the model starts again from each reading that is surer than it.
#pragma once

#include <optional>
#include <string>
#include <vector>

#include "core/cellar/beer_warmth.h"
#include "core/cellar/level_track.h"
#include "core/cellar/status.h"
#include "core/physics/carbonation.h"

namespace ullage::cellar {

struct CarbonationTrack {
  Instant origin{};
  std::optional<physics::CarbonationModel> model;
  std::optional<Message> cant_tell;
  // From the start: when it first comes into its range, and first passes its
  // top. Empty when it never does at these settings, or the beer has no range.
  std::optional<Window> enters, leaves;
  std::vector<CurveReading> readings;
  std::vector<CurveMark> marks;
  std::optional<UptakeRate> uptake;
  std::vector<InputUsed> inputs;

  [[nodiscard]] units::Duration time_of(Instant t) const { return between(origin, t); }
  [[nodiscard]] std::optional<Co2Estimate> at(Instant) const;
  [[nodiscard]] std::optional<Window> on_calendar(const physics::Window&) const;
};

}  // namespace ullage::cellar
