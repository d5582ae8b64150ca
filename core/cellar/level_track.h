// SPDX-License-Identifier: GPL-3.0-or-later
//
// How much beer is in a keg, by whatever evidence there is: the journal's side of
// core/physics/level_filter.h, which joins weighings, hefts, dew lines and counts
// with the draw between them and keeps contradictions apart. And when the keg
// runs out, by what was drawn on which weekdays from it and from those that stood
// on its line before (core/physics/run_out.h).
#pragma once

#include <memory>
#include <optional>
#include <vector>

#include "core/cellar/readings.h"
#include "core/cellar/status.h"
#include "core/physics/level_filter.h"

namespace ullage::cellar {

// How much was in it at a time, by all the evidence up to then.
struct LevelPoint {
  Instant at{};
  VolumeEstimate left;
  bool measured = false;  // weighed, hefted, counted ...; else filled or tapped
};

// Beer drawn over a time.
struct BeerDraw {
  Instant from{}, to{};
  VolumeEstimate amount;
};

class LevelTrack {
 public:
  // A new filling; nullopt when nobody said how much.
  void start(Instant, std::optional<VolumeEstimate>);
  void unknown_start(Instant at) { start(at, std::nullopt); }
  void stop();  // emptied
  void tapped(Instant at);
  void untapped(Instant at);
  void poured(Instant, VolumeEstimate amount, LevelMethod);
  void lost(Instant, VolumeEstimate amount);
  void read(Instant, VolumeEstimate amount, LevelMethod);
  void refused(Instant, Message why);  // a reading that can't be
  // All is told. `before`: what the kegs before it on its line were drawn.
  void finish(Volume brimful, std::vector<BeerDraw> before);

  [[nodiscard]] const std::vector<LevelPoint>& points() const { return points_; }

  // As shown at a moment, counting on at the rate it has been going while on tap.
  [[nodiscard]] Level at(Instant now, Volume brimful) const;
  // When it runs out: 10, 50 and 90 %. Empty off tap and without evidence of a draw.
  struct RunsOut {
    Window when;
    VolumeEstimate drawn_today;  // usual on such a day
  };
  [[nodiscard]] std::optional<RunsOut> runs_out(Instant now, const LocalCalendar&) const;

 private:
  struct Step {
    Instant at{};
    physics::LevelEvidence what;
  };
  [[nodiscard]] std::optional<VolumeEstimate> left_at(Instant) const;
  [[nodiscard]] std::optional<Message> conflict() const;

  bool full_ = false;
  std::optional<Instant> origin_;
  std::optional<VolumeEstimate> start_;
  std::vector<Step> steps_;
  std::optional<Instant> tapped_at_, drawn_evidence_;
  std::optional<Message> refused_;
  std::optional<Message> cant_tell_;

  std::optional<physics::LevelFilter> filter_;
  std::vector<LevelPoint> points_;
  std::vector<BeerDraw> before_;
  std::vector<LevelTold> told_;
};

}  // namespace ullage::cellar
