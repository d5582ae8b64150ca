// SPDX-License-Identifier: GPL-3.0-or-later
//
// What would be in the air of each place if its gas bottles emptied into it,
// from the register, beside published limits. Bottles count as full: the worst
// is planned for. Figures for a caution, never an all-clear.
#pragma once

#include <optional>
#include <vector>

#include "core/cellar/journal.h"
#include "core/cellar/status.h"
#include "core/physics/room_air.h"

namespace ullage::cellar {

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
  std::optional<Volume> room_for_three_percent;
  // What the supply's unexplained loss settles at with the stated air changes.
  std::optional<MoleFraction> leak_settles_at;
  std::optional<Instant> alarm_checked;
  bool alarm_passed = true;
};

// Places with bottles in them first, then those below ground, then the rest, each by
// name. Bottles without a place come last as a place without an id.
[[nodiscard]] std::vector<PlaceSafety> room_safety(const CellarStatus&, const Journal&);

// Limits of the country and those without one; of every country when it is not
// stated or has none in the list.
[[nodiscard]] std::vector<physics::ExposureLimit> limits_for(
    const std::optional<std::string>& country);
// Whether the outcome reaches a limit (stays below it, for oxygen).
[[nodiscard]] bool reaches(const physics::RoomOutcome&, const physics::ExposureLimit&);

}  // namespace ullage::cellar
