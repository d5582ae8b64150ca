// SPDX-License-Identifier: GPL-3.0-or-later
//
// What would be in the air of each place if its gas bottles emptied into it,
// from the register, beside published limits. Bottles count as full: the worst
// is planned for. Figures for a caution, never an all-clear.
#pragma once

#include <optional>
#include <span>
#include <string>
#include <vector>

#include "core/cellar/journal.h"
#include "core/cellar/readings.h"
#include "core/cellar/status.h"
#include "core/physics/room_air.h"

namespace ullage::cellar {

using ShareEstimate = units::Estimate<MoleFraction>;

struct BottleInRoom {
  BottleRecord record;
  std::optional<Mass> gas;  // its content when full, else what is in it; nullopt: not known
  bool full = true;
};

struct PlaceSafety {
  PlaceRecord place;
  std::vector<BottleInRoom> bottles;
  bool holds_nitrogen = false;
  Temperature temperature = units::celsius(20);
  bool temperature_known = false;
  std::optional<physics::RoomOutcome> outcome;  // absent: no volume, or no known bottle
  // Of the outcome, with what the room's volume, the bottles' content, the temperature
  // and the weather make uncertain. That the air is evenly mixed is not among it: low
  // spots are far above.
  std::optional<ShareEstimate> co2, co2_flowing, oxygen;
  std::optional<VolumeEstimate> room_for_three_percent;
  // What the unexplained losses of its supplies settle at with the stated air changes,
  // each by its own gas; those that are not enough to be called a loss count, too.
  std::optional<ShareEstimate> leak_settles_at;
  bool leak_called_one = false;  // the alarm of one of them is on
  std::optional<Instant> alarm_checked;
  bool alarm_passed = true;
};

// Places with bottles in them first, then those below ground, then the rest, each by
// name. Bottles without a place come last as a place without an id.
[[nodiscard]] std::vector<PlaceSafety> room_safety(const CellarStatus&, const Journal&);

// Published limits for a cellar in a country: those that count there, and those of
// other countries to look at where it has none itself.
struct LimitsOfCountry {
  // The country's own, then the EU's where it is a member state, then those of no
  // country; of every country when none is stated.
  std::vector<physics::ExposureLimit> here;
  // Of the others, by country: for carbon dioxide or oxygen, whichever `here` lacks.
  std::vector<physics::ExposureLimit> elsewhere;
  bool co2_here = false, oxygen_here = false;
};
// `country` as people type it: "de" is DE, "UK" is GB.
[[nodiscard]] LimitsOfCountry limits_for(
    const std::optional<std::string>& country,
    std::span<const physics::ExposureLimit> published = physics::exposure_limits());
// Whether the outcome reaches a limit (stays below it, for oxygen).
[[nodiscard]] bool reaches(const physics::RoomOutcome&, const physics::ExposureLimit&);

}  // namespace ullage::cellar
