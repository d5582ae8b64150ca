// SPDX-License-Identifier: GPL-3.0-or-later
//
// What every hold test must satisfy before it is judged. Internal to core/physics.
#pragma once

#include <optional>

#include "core/physics/hold.h"

namespace ullage::physics {

inline constexpr double least_hold_psi = 2.0;
// A leak of this many 95 % half-widths is told from none in 95 of 100 tests.
inline constexpr double surely_seen = (1.959964 + 1.644854) / 1.959964;

// Whether gas and lid had settled by this reading.
[[nodiscard]] bool is_settled(const HoldTest&, const HoldReading&);
// What settling may still take of the first reading's pressure, in Pa.
[[nodiscard]] double settling_of_first(const HoldTest&);
[[nodiscard]] std::optional<RangeError> check_hold(const HoldTest&, units::Mass limit);

}  // namespace ullage::physics
