// SPDX-License-Identifier: GPL-3.0-or-later
//
// Mixed gas: which CO2 share keeps a beer as it is when a long line asks for more
// pressure than the beer's own. The beer feels the CO2's partial pressure, so
// everything is in absolute pressures:
//
//   a = (b + air) / c - air     c = (b + air) / (a + air)
//
// b gauge pressure of pure CO2 that holds the beer, a gauge pressure applied, c
// CO2 share. Source: a brewers' trade handbook's appendix (symbols and inputs
// verified, the formula from memory).
#pragma once

#include "core/physics/error.h"
#include "core/units/gauge_pressure.h"
#include "core/units/scales.h"

namespace ullage::physics {

inline constexpr Range blend_share_range{0.05, 1.0};
inline constexpr Range blend_pressure_range{0.0, 1.0e6};  // Pa gauge

// Refuses an applied pressure below the pure one (`gauge_pressure`): no gas has
// more than 100 % CO2.
[[nodiscard]] Result<units::MoleFraction> blend_for(units::GaugePressure pure,
                                                    units::GaugePressure applied,
                                                    units::AbsolutePressure ambient);
[[nodiscard]] Result<units::GaugePressure> applied_for(units::GaugePressure pure,
                                                       units::MoleFraction co2,
                                                       units::AbsolutePressure ambient);
// What pure CO2 would do the same; below ambient (negative) is possible.
[[nodiscard]] Result<units::GaugePressure> pure_equivalent(units::GaugePressure applied,
                                                           units::MoleFraction co2,
                                                           units::AbsolutePressure ambient);

}  // namespace ullage::physics
