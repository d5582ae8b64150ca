// SPDX-License-Identifier: GPL-3.0-or-later
//
// What a beer line holds: pi/4 bore^2 length.
#pragma once

#include "core/physics/error.h"
#include "core/units/quantities.h"

namespace ullage::physics {

inline constexpr Range bore_range{1e-3, 50e-3};        // m: 1 to 50 mm
inline constexpr Range line_length_range{0.0, 500.0};  // m

[[nodiscard]] Result<units::Volume> line_volume(units::Length bore, units::Length length);

}  // namespace ullage::physics
