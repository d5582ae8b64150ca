// SPDX-License-Identifier: GPL-3.0-or-later
//
// How much beer was in a keg at any moment of a filling, between and after its
// readings. Between two readings the draw is taken as even from the tapping on,
// with an error for uneven days that is widest half way. After the last reading
// the keg goes on at the rate it has shown; without one it is anywhere between
// untouched and two weeks' even draw further down.
#pragma once

#include "core/cellar/keg_timeline.h"

namespace ullage::cellar {

// `tapped` and `emptied` where they have come. nullopt: nobody ever said.
[[nodiscard]] std::optional<VolumeEstimate> beer_in_keg(const KegTimeline&, Instant at,
                                                        std::optional<Instant> tapped,
                                                        std::optional<Instant> emptied);

}  // namespace ullage::cellar
