// SPDX-License-Identifier: GPL-3.0-or-later
//
// Specific gravity (20/20 C) and degrees Plato: two ways to write one reading,
// so the conversion lives with the units and everything shares it.
//
//   P = -616.868 + 1111.14 S - 630.272 S^2 + 135.997 S^3
//
// the cubic published as the ASBC polynomial, a fit to the brewing chemists'
// extract tables (coefficients verified against a text that names it). It is
// within 0.001 °P of the later best fit to the same tables (Buhl 2024) from
// 1.000 to 1.100; outside that span it is an extrapolation of a smooth curve.
// It rises for every S, so the inverse is unique; the inverse is solved
// numerically from the same cubic and round-trips to 1e-12 in S.
#pragma once

#include <expected>

#include "core/units/scales.h"

namespace ullage::units {

// The span in which a gravity is taken for a reading of wort, beer, wine or
// cider at all. About -5 to 40 °P.
inline constexpr SpecificGravity least_gravity{0.980};
inline constexpr SpecificGravity greatest_gravity{1.180};

enum class GravityScaleError { below_range, above_range };

[[nodiscard]] std::expected<Plato, GravityScaleError> to_plato(SpecificGravity);
[[nodiscard]] std::expected<SpecificGravity, GravityScaleError> to_specific_gravity(Plato);

}  // namespace ullage::units
