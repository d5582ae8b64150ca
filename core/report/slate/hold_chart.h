// SPDX-License-Identifier: GPL-3.0-or-later
//
// The picture of a hold test on the slate: the readings, what a tight keg would read
// and, on an empty keg, the leak that fits by each of the two laws.
#pragma once

#include <optional>

#include "core/physics/hold_beer.h"
#include "core/report/slate/computation.h"

namespace ullage::report::slate {

// Fields "repeat", "dial" and "dials" tell what each reading may be off by itself.
[[nodiscard]] Chart hold_chart(const Inputs&, const physics::HoldTest&, const physics::HoldOutcome&,
                               const std::optional<physics::BeerInside>&);

}  // namespace ullage::report::slate
