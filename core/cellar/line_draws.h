// SPDX-License-Identifier: GPL-3.0-or-later
//
// What was drawn on a line before the keg that is on it now: kegs that were full
// when they were put on and ran empty there.
#pragma once

#include "core/cellar/level_track.h"

namespace ullage::cellar {

// Of the last 120 days before `until`, oldest first.
[[nodiscard]] std::vector<BeerDraw> draws_on_line(LineId, Instant until, Lookup&);

}  // namespace ullage::cellar
