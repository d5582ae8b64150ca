// SPDX-License-Identifier: GPL-3.0-or-later
//
// How much beer is in a keg, by whatever evidence there is. The strongest
// evidence stands until there is stronger, or until a later, weaker reading lies
// clearly below it (beer was poured that nobody wrote down). A weaker reading
// clearly above it is a conflict: it is shown and not averaged in. What was
// poured or wasted by count comes off as it is logged.
#pragma once

#include <optional>
#include <vector>

#include "core/cellar/readings.h"
#include "core/cellar/status.h"

namespace ullage::cellar {

// How much was in it at a time, by evidence of that time.
struct LevelPoint {
  Instant at{};
  VolumeEstimate left;
  bool measured = false;  // weighed, hefted ...; else filled or counted down
};

class LevelTrack {
 public:
  // A new filling; nullopt when nobody said how much.
  void start(Instant, std::optional<VolumeEstimate>);
  void unknown_start(Instant at) { start(at, std::nullopt); }
  void stop();  // emptied
  void tapped(Instant at);
  void poured(Instant, const VolumeEstimate& amount);
  void read(Instant, const VolumeEstimate& amount);
  void refused(Instant, Message why);  // a reading that can't be

  [[nodiscard]] const std::vector<LevelPoint>& points() const { return points_; }
  [[nodiscard]] std::optional<VolumeEstimate> last() const;
  [[nodiscard]] std::optional<Message> conflict() const { return conflict_; }

  // As shown at a moment, counting on at the rate it has been going while on tap.
  [[nodiscard]] Level at(Instant now, Volume brimful) const;
  // When it runs out at the rate it has been going; empty without evidence of a rate.
  [[nodiscard]] std::optional<Window> runs_out(Instant now) const;

 private:
  struct DrawRate {
    double litres_per_day = 0;
    double half_width = 0;
    Instant from{};
  };
  [[nodiscard]] std::optional<DrawRate> rate() const;

  bool full_ = false;
  std::vector<LevelPoint> points_;
  std::optional<Instant> tapped_at_;
  std::optional<Message> conflict_;
  std::optional<Message> cant_tell_;
};

}  // namespace ullage::cellar
