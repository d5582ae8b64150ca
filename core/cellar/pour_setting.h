// SPDX-License-Identifier: GPL-3.0-or-later
//
// Gathers what a line's pour depends on out of the stories of the line and of
// the keg on it. See pour_state.h for what is made of it.
#pragma once

#include <expected>

#include "core/cellar/keg_timeline.h"
#include "core/cellar/line_timeline.h"
#include "core/cellar/pour_state.h"

namespace ullage::cellar {

// The glass that is usual there: a pint, or half a litre.
[[nodiscard]] Volume glass_of(UnitsPreset);

// Or what is missing: the hose, gas on the keg, a temperature.
[[nodiscard]] std::expected<PourSetting, Message> pour_setting(const LineTimeline&,
                                                               const KegTimeline&, const KegStatus&,
                                                               Instant now, Lookup&,
                                                               const PlaceLookup&);

// Setting, outlook and advice of a line with that keg on it, into its status.
void tell_pour(LineStatus&, const KegStatus&, const LineTimeline&, const KegTimeline&, Instant now,
               Lookup&, const PlaceLookup&);

}  // namespace ullage::cellar
