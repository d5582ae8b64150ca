// SPDX-License-Identifier: GPL-3.0-or-later
//
// CO2 that creeps through still water by itself: why a keg's rate is not
// computed from first principles. D(T) = D0 exp(-E / R T) with D0 5019e-9 m2/s,
// E 19.51 kJ/mol (Jaehne 1987, coefficients from memory; they return the printed
// table of the CRC Handbook within 1 %). In beer it is slower still, about as
// its viscosity is higher.
//
// A layer of depth L takes about L^2 / D to come to rest: years for a keg, which
// in fact takes days: beer that has taken up CO2 is heavier and sinks, and that
// stirring cannot be computed from what a person knows of a keg.
#pragma once

#include "core/physics/error.h"
#include "core/units/quantities.h"

namespace ullage::physics {

inline constexpr Range diffusion_temperature_range{273.15, 308.15};  // K: 0 to 35 C
inline constexpr Range diffusion_depth_range{1e-4, 5.0};             // m

// How long CO2 by diffusion alone takes through `depth` of water.
[[nodiscard]] Result<units::Duration> diffusion_time(units::Length depth, units::Temperature);

}  // namespace ullage::physics
