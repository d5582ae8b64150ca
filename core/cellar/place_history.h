// SPDX-License-Identifier: GPL-3.0-or-later
//
// The temperature of a place over time, as the beer standing in it would have
// it. A place is as cold as it was last read; until the first reading, as it is
// set. Air is not beer: a reading of the air carries a further degree of error,
// and a set temperature two (common practice).
//
// Readings that change nothing are left out: within 0.2 °C of the one before on
// the same thermometer (0.02 volumes of CO2), so a year of daily readings stays
// short. `last_read` still says when it was last looked at.
#pragma once

#include <functional>
#include <optional>
#include <vector>

#include "core/cellar/readings.h"

namespace ullage::cellar {

struct PlaceWarmth {
  Instant from{};
  TemperatureEstimate temperature;
  bool read = false;  // else as set
  EntryId entry;
};

struct PlaceHistory {
  std::optional<PlaceRecord> record;
  std::vector<PlaceWarmth> warmth;  // in order of time
  std::optional<Instant> last_read;
  std::optional<Temperature> last_reading;
  Reliance relies_on;

  // At a moment. Before the first statement, the first one: a temperature told
  // today is better than none for the day before. Nullptr when nothing was ever said.
  [[nodiscard]] const PlaceWarmth* at(Instant) const;
};

[[nodiscard]] PlaceHistory place_history(PlaceId, const Journal&);

// Histories that somebody keeps: many kegs stand in one place.
using PlaceLookup = std::function<const PlaceHistory&(PlaceId)>;
// Each worked out when it is first asked for and kept as long as the lookup; the
// journal must not change meanwhile.
[[nodiscard]] PlaceLookup places_of(const Journal&);

}  // namespace ullage::cellar
