// SPDX-License-Identifier: GPL-3.0-or-later
//
// Inside of round.h: between what a value of the round must lie, in what steps it
// is set, and what it may be read on.
#pragma once

#include <vector>

#include "core/cellar/round.h"

namespace ullage::cellar {

struct AskLimits {
  RoundAsk ask = RoundAsk::place_temperature;
  RoundValue least, greatest, step;
  double jump = 0;  // a change beyond this is worth a second look, in SI
};

[[nodiscard]] const AskLimits& ask_limits_of(RoundAsk);
[[nodiscard]] std::vector<InstrumentKind> kinds_for(RoundAsk);

}  // namespace ullage::cellar
