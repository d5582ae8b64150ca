// SPDX-License-Identifier: GPL-3.0-or-later
//
// What the work on one keg should have drawn from a gas supply, worked out from
// its journal: pushing beer out, carbonating it, filling headspaces, purging,
// putting an empty keg under pressure. Between two moments asked for, each kind
// of work is one draw with its errors by name, so that sums over kegs and times
// keep what their errors share.
//
// What is not known is taken wide: a keg on tap whose level nobody read since is
// anywhere between untouched and two weeks further down; beer whose CO2 can't be
// told took up between nothing and what still beer would.
#pragma once

#include <map>
#include <memory>
#include <vector>

#include "core/cellar/gas_draw_story.h"
#include "core/cellar/keg_timeline.h"
#include "core/cellar/plain_draws.h"

namespace ullage::cellar {

struct GasDraw {
  Instant from{};
  Instant to{};  // at most the next moment asked for after `from`
  KegId keg;
  GasWork work = GasWork::pushing;
  std::optional<RegulatorId> regulator;  // nullopt: nobody said
  MassEstimate mass;
};

// Draws of the keg from the first of `moments` (in rising order, at least two) to
// the last. `now` is the keg's present timeline.
[[nodiscard]] std::vector<GasDraw> gas_draws(const KegTimeline& now, const Journal&,
                                             const std::vector<Instant>& moments);

// A keg's draws, kept: those up to the last moment of a grid until something they
// were worked out from changes, those of a filling that is over as long as nothing
// changes about the time of that filling. As time goes on only the stretch from
// the grid's end is worked out again. The same whatever was kept before.
class KegDraws {
 public:
  // `now` must stay where it is as long as what it relies on holds. `to` is no
  // earlier than the end of the grid.
  void bring_up(const KegTimeline& now, const Journal&, const PlaceLookup&,
                const std::vector<Instant>& grid, Instant to, SourceTable&);

  // In parts, each in order of time.
  [[nodiscard]] const std::vector<std::shared_ptr<const PlainDraws>>& draws() const {
    return draws_;
  }
  [[nodiscard]] const Reliance& relies_on() const { return relies_on_; }

 private:
  class Walk;
  struct Over {  // a filling that is over
    EntryId end;
    std::vector<Instant> moments;
    GasDrawState before, after;
    std::shared_ptr<const PlainDraws> draws;
    Reliance relies_on;
  };
  void pass_over(Walk&, GasDrawStory&, std::size_t begin, std::size_t end,
                 const std::map<EntryId, Over>& known);
  void go_on(Walk&, GasDrawStory&, Instant until, const std::map<EntryId, Over>* known);

  std::vector<Instant> grid_;
  Reliance relies_on_;
  std::map<EntryId, Over> over_;  // by the entry that began it
  std::vector<std::shared_ptr<const PlainDraws>> draws_;
  std::size_t next_ = 0;  // entry of the keg's story
  // Fillings that ended after the grid, as they were.
  std::vector<std::shared_ptr<const KegTimeline>> then_;
  // Where the grid ends.
  GasDrawState at_grid_end_;
  std::size_t closed_ = 0, next_closed_ = 0, then_closed_ = 0;
};

}  // namespace ullage::cellar
