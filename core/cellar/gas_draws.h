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

#include <vector>

#include "core/cellar/keg_timeline.h"

namespace ullage::cellar {

enum class GasWork { pushing, carbonating, headspace, purging, pressure_test };

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
[[nodiscard]] std::vector<GasDraw> gas_draws(const KegTimeline& now, const Journal&, Lookup&,
                                             const std::vector<Instant>& moments);

// The keg's timeline as it stood just before an entry of its own story.
[[nodiscard]] KegTimeline keg_timeline_before(KegId, const Journal&, const Entry& stop);

}  // namespace ullage::cellar
