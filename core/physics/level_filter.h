// SPDX-License-Identifier: GPL-3.0-or-later
//
// How much beer is in a keg by all the evidence there is, each piece at its time,
// with the draw between them.
//
// State: beer V, draw a day r, and an offset for each named source of error that
// more than one piece of evidence shares (the keg's tare, a scale's bias, the
// glasses' fill): two weighings on one scale tell a difference better than an
// amount. A Kalman filter, exact for what follows:
//
//   shut       dV = 0
//   on tap     dV = -r dt; a day's draw varies by 60 % of itself (standard
//              deviation), r drifts by 10 % a day
//   counted    V falls by the count, which also covers the time since the last
//              piece of evidence and tells of r
//   a loss     V falls by it; r goes on
//   a reading  V = reading + its sources' offsets + its own error
//
// A keg nobody has measured on tap is taken to last ten days, give or take ten.
// The 60, 10 and ten are common practice, no source.
//
// Evidence that contradicts what came before is not averaged in: a reading off by
// more than once in a thousand times is a conflict. Where it reads less, or is
// the surer of the two, the filter starts again from it; else it goes on without.
// Either way the conflict is kept and told until a later reading agrees.
#pragma once

#include <boost/variant2/variant.hpp>
#include <optional>
#include <vector>

#include "core/physics/error.h"
#include "core/units/estimate.h"
#include "core/units/quantities.h"

namespace ullage::physics {

struct PutOnTap {};
struct TakenOffTap {};
struct BeerCounted {  // since the last evidence: by glasses or a meter
  units::Estimate<units::Volume> amount;
};
struct BeerLost {  // beside what is served
  units::Estimate<units::Volume> amount;
};
struct LevelRead {  // weighed, hefted, by the dew line
  units::Estimate<units::Volume> left;
};
using LevelEvidence =
    boost::variant2::variant<PutOnTap, TakenOffTap, BeerCounted, BeerLost, LevelRead>;
struct LevelStep {
  units::Duration at;  // since the start, in order
  LevelEvidence what;
};

struct LevelHistory {
  units::Volume brimful;
  units::Estimate<units::Volume> start;
  std::vector<LevelStep> steps;
};

struct LevelThen {
  units::Duration at{};
  units::Estimate<units::Volume> left;
  bool told_by_evidence = false;  // of this moment; else only tapped
};

struct LevelConflict {
  units::Duration at{};
  units::Estimate<units::Volume> reads;
  units::Estimate<units::Volume> expected;  // by all before it
  bool taken = false;                       // the filter went on from the reading
};

// What left the keg over a time on tap, as far as the evidence goes.
struct DrawSeen {
  units::Duration from{}, to{};
  units::Estimate<units::Volume> amount;
};

inline constexpr Range level_steps_range{0.0, 100000.0};  // count

class LevelFilter {
 public:
  // Refuses steps out of order or out of range, amounts that are not finite or
  // below zero, and a vessel out of range, naming the limit.
  [[nodiscard]] static Result<LevelFilter> make(const LevelHistory&);

  // After the last step, drawing on at the rate it has gone while on tap. Below
  // zero by its own error at most: an estimate whose high end is negative says
  // that it should be empty.
  [[nodiscard]] units::Estimate<units::Volume> at(units::Duration) const;
  [[nodiscard]] const std::vector<LevelThen>& points() const { return points_; }
  // Open contradictions, the last one last.
  [[nodiscard]] const std::vector<LevelConflict>& conflicts() const { return conflicts_; }
  [[nodiscard]] const std::vector<DrawSeen>& draws() const { return draws_; }
  // Beer drawn on a day on tap; nothing before any evidence of it.
  [[nodiscard]] std::optional<units::Estimate<units::Volume>> draw_a_day() const;
  [[nodiscard]] bool on_tap() const { return on_tap_; }

 private:
  friend class LevelFilterRun;
  struct State {
    std::vector<double> mean;        // litres, litres a day, offsets in half-widths
    std::vector<double> covariance;  // row by row
  };
  LevelFilter() = default;
  [[nodiscard]] units::Estimate<units::Volume> volume_of(const State&) const;

  std::vector<units::ErrorSource> shared_;
  State state_;
  units::Duration last_{};
  double keg_litres_ = 0;
  bool on_tap_ = false;
  bool draw_known_ = false;
  std::vector<LevelThen> points_;
  std::vector<LevelConflict> conflicts_;
  std::vector<DrawSeen> draws_;
};

}  // namespace ullage::physics
