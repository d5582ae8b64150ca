// SPDX-License-Identifier: GPL-3.0-or-later
//
// Words that the trade writes or says differently in the US: sanitise, litre, tap.
// For texts that are written once, the British way; messages have both texts in
// their table (phrases.h). Whole words alone are changed, wherever a text is in
// English; another language has none of them.
#pragma once

#include <string>
#include <string_view>

#include "core/report/say.h"

namespace ullage::report {

// "Tap &above the keg" -> "Faucet &above the keg". A "&" in front of the letter that
// reaches a field stays there. Beer is on tap everywhere, and so is tap water.
[[nodiscard]] std::string regional(std::string_view said, RegionalWords);

}  // namespace ullage::report
