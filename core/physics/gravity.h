// SPDX-License-Identifier: GPL-3.0-or-later
//
// Alcohol and extract from original and final gravity.
//
// Balling: RE = 0.1808 OE + 0.8192 AE; A[% w/w] = (OE - RE) / (2.0665 -
// 0.010665 OE); ABV = A * SG_final / 0.7907. Beside it the duty-office factor
// table (ABV = (OG - FG in degrees) * factor). They differ by 0.1 to 0.2 % ABV at
// usual strengths; the half-width of the answer is that difference, at least
// 0.1 % ABV. Sources: docs/physics.md, "Gravity and alcohol".
#pragma once

#include <optional>

#include "core/physics/error.h"
#include "core/units/estimate.h"
#include "core/units/scales.h"

namespace ullage::physics {

inline constexpr Range original_gravity_range{1.000, 1.160};
inline constexpr Range final_gravity_range{0.985, 1.100};

struct Fermented {
  units::Abv abv;                           // Balling
  std::optional<units::Abv> abv_by_factor;  // second opinion; its table ends at 100.7 degrees
  units::Plato original_extract;
  units::Plato apparent_extract;
  units::Plato real_extract;
  units::Fraction apparent_attenuation;
};

// Refuses final above original with Subject::final_gravity (value FG, high OG).
[[nodiscard]] Result<Fermented> fermented(units::SpecificGravity original,
                                          units::SpecificGravity final_gravity);

[[nodiscard]] Result<units::Estimate<units::Abv>> alcohol(
    const units::Estimate<units::SpecificGravity>& original,
    const units::Estimate<units::SpecificGravity>& final_gravity, units::ErrorSource formula);

}  // namespace ullage::physics
