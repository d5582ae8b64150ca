// SPDX-License-Identifier: GPL-3.0-or-later
//
// Air pressure at a place, from its altitude.
//
// p = 101325 (1 - 0.0065 H / 288.15)^5.25588, H = 6356766 h / (6356766 + h):
// U.S. Standard Atmosphere 1976, h the height above sea level. Weather moves the
// true pressure about this by up to some 20 hPa (0.3 psi) either way.
#pragma once

#include "core/physics/error.h"
#include "core/units/estimate.h"
#include "core/units/quantities.h"

namespace ullage::physics {

inline constexpr Range altitude_range{-500.0, 5500.0};             // m
inline constexpr Range ambient_pressure_range{45000.0, 110000.0};  // Pa
inline constexpr double weather_half_width_pascals = 2000.0;       // 95 %, common practice

[[nodiscard]] Result<units::AbsolutePressure> ambient_pressure(units::Length altitude);

// The same with the weather as an error source of that name.
[[nodiscard]] Result<units::Estimate<units::AbsolutePressure>> ambient_pressure_estimate(
    units::Length altitude, units::ErrorSource weather);

[[nodiscard]] units::AbsolutePressure sea_level();

}  // namespace ullage::physics
