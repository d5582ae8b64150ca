// SPDX-License-Identifier: GPL-3.0-or-later
//
// Density of water, and of beer from its specific gravity.
//
// Water: Kell 1975 (J. Chem. Eng. Data 20:97), rational polynomial, 0 to 40 C (used from -3) at
// 1 atm; coefficients from memory, checked against the International Critical
// Tables to 0.06 kg/m3. Beer: specific gravity 20/20 C times water at the
// beer's temperature, so beer is taken to expand like water: within 0.1 % of real beer between 0
// and 25 C, far below any scale used on a keg.
#pragma once

#include "core/physics/error.h"
#include "core/units/estimate.h"
#include "core/units/quantities.h"
#include "core/units/scales.h"

namespace ullage::physics {

inline constexpr Range water_temperature_range{270.15, 313.15};  // K: -3 to 40 C
inline constexpr Range gravity_range{0.980, 1.200};              // specific gravity 20/20

[[nodiscard]] Result<units::Density> water_density(units::Temperature);
[[nodiscard]] units::Density water_density_unchecked(units::Temperature);
[[nodiscard]] Result<units::Density> beer_density(units::SpecificGravity,
                                                  units::Temperature = units::celsius(20));

}  // namespace ullage::physics
