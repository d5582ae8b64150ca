// SPDX-License-Identifier: GPL-3.0-or-later
//
// How warm the beer in a keg is: it starts as it was filled or arrived and
// follows the places it stands in with the lag of its mass.
#pragma once

#include <optional>
#include <vector>

#include "core/cellar/message.h"
#include "core/cellar/place_history.h"
#include "core/physics/keg_cooling.h"

namespace ullage::cellar {

struct WarmthStep {
  Instant at{};
  TemperatureEstimate place;  // the air about it from then on
  bool read = false;          // else as set
};

struct BeerWarmth {
  Instant start_at{};
  TemperatureEstimate start;
  bool start_known = false;       // stated; else taken as its place
  std::vector<WarmthStep> steps;  // never empty, the first at or before start_at
  physics::LogEstimate<units::Duration> time_constant;

  [[nodiscard]] std::optional<TemperatureEstimate> at(Instant) const;
  // Standing where it stands now, when it comes to `target` (from `now`); empty
  // when it is there already or never gets there.
  [[nodiscard]] std::optional<Window> comes_to(Temperature target, Instant now) const;
  [[nodiscard]] const TemperatureEstimate& place_now() const { return steps.back().place; }
};

// A stay of the keg in a place.
struct Stay {
  Instant from{};
  const PlaceHistory* place = nullptr;  // nullptr: somewhere unknown
};

// nullopt when no temperature was ever told for where it stands. Of what the
// places were told after `until` nothing is used, but for a first temperature.
[[nodiscard]] std::optional<BeerWarmth> beer_warmth(Instant start_at,
                                                    const std::optional<TemperatureEstimate>& start,
                                                    const std::vector<Stay>& stays, Volume brimful,
                                                    const std::string& tag,
                                                    Instant until = Instant::max());

}  // namespace ullage::cellar
