// SPDX-License-Identifier: GPL-3.0-or-later
//
// Gas by mass balance: what weighings say was used, against what the work on the
// kegs should have used. What is left over is lost.
//
//   weighed_i + expected_i = start - loss * t_i + error_i
//
// solved for loss (and start) by generalised least squares over the weighings,
// with the covariance that the named error sources give: a scale's bias is the
// same in all weighings and goes into the start, so a scale that is 2 kg off
// finds the same leak; an error that all expected use shares (a keg's volume, a
// method) stays, and the result says so. Derivation: docs/physics-gas.md.
#pragma once

#include <optional>
#include <span>
#include <vector>

#include "core/physics/error.h"
#include "core/units/estimate.h"
#include "core/units/quantities.h"
#include "core/units/scales.h"

namespace ullage::physics {

struct LedgerPoint {
  units::Duration at;
  units::Estimate<units::Mass> weighed;       // gas left, or gross: a constant cancels
  units::Estimate<units::Mass> expected_use;  // since one moment, the same for all points
};

enum class LossVerdict {
  within_errors,  // nothing that the errors don't cover
  unexplained,    // more than `limit` a day, and 99 % sure that it is anything at all
};

struct LossBetween {
  units::Duration from;
  units::Duration to;
  units::Estimate<units::Mass> weighed;  // by how much the bottle got lighter
  units::Estimate<units::Mass> expected;
  units::Estimate<units::Mass> unexplained;  // weighed - expected
};

struct UnexplainedLoss {
  units::Estimate<units::Mass> per_day;  // below zero: less was used than expected
  units::Fraction confidence;            // that anything is lost at all
  // The smallest steady loss whose verdict is `unexplained` in loss_seen_chance of
  // such accounts. A smaller one may well be there and pass unseen.
  units::Mass smallest_visible_per_day;
  LossVerdict verdict = LossVerdict::within_errors;
  // False: the weighings don't lie on one line within their errors (1 in 1000 by
  // chance): the loss began or ended in between, or an entry is wrong or missing.
  bool steady = true;
  std::vector<LossBetween> between;  // one for each pair of neighbours
};

inline constexpr Range ledger_points_range{2, 2000};
inline constexpr Range ledger_span_range{3600.0, 3.2e8};  // s between first and last: 1 h to 10 a
inline constexpr double loss_limit_grams_per_day = 2.0;
inline constexpr double loss_sure_from = 0.99;
inline constexpr double loss_seen_chance = 0.9;

// Points in order of time, each later than the one before (step_time otherwise).
// One gram of independent error is added to each weighing, for rounding.
[[nodiscard]] Result<UnexplainedLoss> unexplained_loss(
    std::span<const LedgerPoint>,
    units::Mass limit_per_day = units::grams(loss_limit_grams_per_day));

// --- how long it lasts

struct GasSpending {
  units::Estimate<units::Mass> gas;           // now in the bottle
  units::Estimate<units::Mass> use_per_day;   // planned or as it has been
  units::Estimate<units::Mass> loss_per_day;  // unexplained
};
// 2.5, 50 and 97.5 %; absent: part of the range never empties it. Nothing left
// is 0 days; more than ten years counts as never.
struct DaysLeft {
  std::optional<units::Duration> earliest, likely, latest;
};
[[nodiscard]] Result<DaysLeft> days_left(const GasSpending&);

// Whether the gas carries planned work for so long, with the loss on top.
struct EnoughGas {
  units::Estimate<units::Mass> left_after;  // below zero: short by that
  units::Fraction probability;              // that it is enough
};
[[nodiscard]] Result<EnoughGas> enough_for(const units::Estimate<units::Mass>& gas,
                                           const units::Estimate<units::Mass>& planned,
                                           const units::Estimate<units::Mass>& loss_per_day,
                                           units::Duration over);

}  // namespace ullage::physics
