// SPDX-License-Identifier: GPL-3.0-or-later
//
// What is refused when an act is logged: values that cannot be (a volume below
// nothing, a moment that has not come), contradictions (final gravity above
// original, a tag two kegs would wear), text that does not fit, and entries
// about things that are not there. Bad practice is never refused: it happened,
// and advice speaks of it.
#pragma once

#include <chrono>
#include <vector>

#include "core/cellar/message.h"
#include "core/cellar/register.h"

namespace ullage::cellar {

// A clock set a little ahead on another machine is no reason to refuse.
inline constexpr std::chrono::minutes future_allowed{2};

// Empty when the act may be logged. Faults come in the order of the drafts and
// of their fields; header fields are named "happened_at", "note", "by". Things
// registered by the act itself count as known. `reg` must be up to date with
// the journal.
[[nodiscard]] std::vector<Fault> validate(const Act&, const Journal&, const Register& reg,
                                          Instant now);

}  // namespace ullage::cellar
