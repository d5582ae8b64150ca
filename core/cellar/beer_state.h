// SPDX-License-Identifier: GPL-3.0-or-later
//
// The beer in a keg at a moment: which it is, its CO2 and how much is left, each with
// what it was derived from. Part of the status (status.h).
#pragma once

#include <optional>
#include <vector>

#include "core/cellar/curve_points.h"
#include "core/cellar/entry.h"
#include "core/cellar/message.h"
#include "core/cellar/uptake.h"

namespace ullage::cellar {

enum class Co2Verdict { unknown, below, within, above };

struct Co2State {
  std::optional<units::Estimate<units::Co2Volumes>> now;
  std::optional<units::Co2Volumes> target_low, target_high;
  Co2Verdict verdict = Co2Verdict::unknown;
  std::optional<Window> in_range;    // when it reaches its range at these settings
  std::optional<Window> overshoots;  // when it passes the top of the range
  std::optional<units::Co2Volumes> settles_at;
  std::vector<units::Contribution> settles_errors;  // of it
  std::optional<UptakeRate> uptake;
  // What was read of it, and done to its gas, since the beer is in it.
  std::vector<CurveReading> readings;
  std::vector<CurveMark> marks;
  std::optional<Message> cant_tell;  // why there is no estimate
};

// What somebody told of a level: that so much went in, is left, was drawn or lost.
struct LevelTold {
  enum class What { in_it_at_first, left, drawn, lost };
  Instant at{};
  What what = What::left;
  std::optional<LevelMethod> method;  // of what is left or drawn
  units::Estimate<units::Volume> amount;
};

struct Level {
  std::optional<units::Estimate<units::Volume>> left;
  std::optional<Instant> measured_at;
  std::optional<units::Fraction> of_brimful;
  std::vector<LevelTold> told;                                // in the order of the journal
  std::optional<Window> runs_out;                             // on tap: 10, 50 and 90 %
  std::optional<units::Estimate<units::Volume>> drawn_today;  // on tap: usual on such a day
  std::optional<Message> cant_tell;
};

struct Contents {
  BatchId batch;
  BatchRecord batch_record;
  BeerRecord beer;
  bool filled_by_us = false;
  bool found = false;  // at a stock-taking: how it came is not known
  Instant since{};
  std::optional<units::Abv> abv;
  std::optional<Date> best_by;
};

}  // namespace ullage::cellar
