// SPDX-License-Identifier: GPL-3.0-or-later
//
// The grounds of the freshness clock (core/cellar/freshness.h): the time that a
// tapped keg stood at each warmth; the best-by day of one that is not tapped.
#pragma once

#include "core/cellar/freshness.h"
#include "core/report/grounds.h"
#include "core/report/say.h"

namespace ullage::report {

// Empty where neither is known.
[[nodiscard]] Grounds freshness_grounds(const cellar::FreshClock&, const Speaker&);

}  // namespace ullage::report
