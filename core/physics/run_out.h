// SPDX-License-Identifier: GPL-3.0-or-later
//
// When a keg on tap runs out: earliest, likely and latest, 10, 50 and 90 % (an
// 80 % range), by how much was drawn on which weekdays.
//
// Each weekday d has a usual draw q_d. A span that had n_d days of each saw
//   amount = sum_d n_d q_d, give or take  sum_d n_d (c q_d)^2  and its own error
// (variances). Before anything is seen Fridays and Saturdays are taken as 1.5, the
// others as 0.8 of the mean, each give or take 60 % of itself and all together
// 100 %: spans then move the weekdays they held (linear regression with a normal
// prior, exact). c, how much one day differs from the same day of another week,
// starts as 45 % with the weight of two spans and follows what the spans show.
// All "common practice, no source", and back-tested on made-up bars
// (tests/physics/run_out_test.cpp, run_out_bars_test.cpp).
//
// P(empty by the end of day k) = P(draw until then >= what is left): how far off
// the whole level is enters as a factor (lognormal, five points), all else as a
// normal sum. Straight within a day.
#pragma once

#include <array>
#include <optional>
#include <vector>

#include "core/physics/error.h"
#include "core/units/estimate.h"
#include "core/units/quantities.h"

namespace ullage::physics {

// Days of each weekday, Sunday first, fractions included.
using WeekdayShares = std::array<double, 7>;

struct SpanOnTap {
  WeekdayShares days{};
  units::Estimate<units::Volume> drawn;
};

struct RunOutQuestion {
  units::Estimate<units::Volume> left;  // now
  std::vector<SpanOnTap> seen;          // of this keg and of those before it here
  int weekday = 0;                      // today, Sunday 0
  double day_gone = 0;                  // share of today already past
};

// From now. Empty where the share of cases that ran out by then is not reached
// within a year.
struct RunOut {
  std::optional<units::Duration> earliest, likely, latest;
  std::array<units::Estimate<units::Volume>, 7> a_day;  // usual draw by weekday
};

inline constexpr Range spans_range{1.0, 1000.0};  // count
inline constexpr Range weekday_range{0.0, 6.0};
inline constexpr Range span_days_range{0.02, 400.0};  // half an hour to a year

// Refuses a question without spans, or whose spans drew nothing at all
// (Subject::beer_volume): nothing then tells when it runs out.
[[nodiscard]] Result<RunOut> run_out(const RunOutQuestion&);

}  // namespace ullage::physics
