// SPDX-License-Identifier: GPL-3.0-or-later
//
// From a keg's entries since it was filled to the temperature and CO2 of its
// beer: fills in warmth, cold_since and co2 of the timeline.
#pragma once

#include <vector>

#include "core/cellar/keg_timeline.h"

namespace ullage::cellar {

// `since_filling` begins with the filling entry; `stays` are all of the keg's.
// `until` for a filling that is over: nothing later is looked at.
void derive_co2(const std::vector<const Entry*>& since_filling, const std::vector<Stay>& stays,
                Lookup&, KegTimeline&, std::optional<Instant> until = {});

// At this or colder a keg is on its way to being served: the warm end of a
// cellar (11 to 13 °C, trade press) and a degree.
[[nodiscard]] inline Temperature cold_enough() { return units::celsius(14); }

}  // namespace ullage::cellar
