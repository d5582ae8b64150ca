// SPDX-License-Identifier: GPL-3.0-or-later
//
// A keg's CO2 over its time, as it is drawn: what the model tells with its range
// (68 %), what was read, and what was done. Derived, never stored.
#pragma once

#include <optional>
#include <vector>

#include "core/cellar/ids.h"
#include "core/cellar/message.h"
#include "core/cellar/time.h"
#include "core/units/estimate.h"

namespace ullage::cellar {

struct CurvePoint {
  Instant at{};
  units::Co2Volumes low, likely, high;
};
struct CurveReading {
  Instant at{};
  units::Estimate<units::Co2Volumes> co2;
  EntryId entry;
};
// What the range is made of at a moment: with the sources of its error.
struct CurveSources {
  Instant at{};
  units::Estimate<units::Co2Volumes> co2;
};
struct CurveMark {  // gas set, vented, planned drop ...
  Instant at{};
  Message label;
  bool planned = false;
};
struct CarbonationCurveData {
  std::vector<CurvePoint> points;     // empty when there is nothing to tell
  std::vector<CurveSources> sources;  // at some of the points, the first and the last among them
  std::vector<CurveReading> readings;
  std::vector<CurveMark> marks;
  std::optional<units::Co2Volumes> target_low, target_high;
};

}  // namespace ullage::cellar
