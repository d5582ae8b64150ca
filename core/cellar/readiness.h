// SPDX-License-Identifier: GPL-3.0-or-later
//
// Parts of the readiness verdict that its files share.
#pragma once

#include "core/cellar/keg_moment.h"

namespace ullage::cellar {

// A delivered keg: best-by date, seal, hours in the cold.
void judge_received(Moment&);

// Both must have come: the later of each edge.
[[nodiscard]] Window later_of(const Window&, const Window&);

// What to read or state when the CO2 can't be told.
[[nodiscard]] Message what_would_tell(const Moment&);

// Beer this near its place, in kelvin, is at serving temperature.
inline constexpr double near_its_place = 2.0;

// Hours a delivered keg stands in the cold before it is tapped (trade bodies and
// trade press: 24 at least, 24 to 48 in the UK, 72 for one that came in warm).
inline constexpr std::chrono::hours shortest_rest{24};
inline constexpr std::chrono::hours usual_rest{48};
inline constexpr std::chrono::hours longest_rest{72};

}  // namespace ullage::cellar
