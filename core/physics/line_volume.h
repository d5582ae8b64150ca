// SPDX-License-Identifier: GPL-3.0-or-later
//
// What a beer line holds: pi/4 bore^2 length. The bore goes in squared: hose drawn to
// 3 % (assumed, as in handbook_restriction.h) holds what is stated within 6 %.
#pragma once

#include <string>

#include "core/physics/error.h"
#include "core/units/estimate.h"
#include "core/units/quantities.h"

namespace ullage::physics {

inline constexpr Range bore_range{1e-3, 50e-3};        // m: 1 to 50 mm
inline constexpr Range line_length_range{0.0, 500.0};  // m

[[nodiscard]] Result<units::Volume> line_volume(units::Length bore, units::Length length);
inline constexpr double hose_drawn_to = 0.03;     // of the bore, 95 %
inline constexpr double hose_measured_to = 0.05;  // of the length, along its way (assumed)
// What hoses of one line hold, worked out from bores and lengths as stated; `line` names
// the sources.
[[nodiscard]] units::Estimate<units::Volume> as_hoses_hold(units::Volume, const std::string& line);
[[nodiscard]] Result<units::Estimate<units::Volume>> line_volume_estimate(
    const units::Estimate<units::Length>& bore, const units::Estimate<units::Length>& length);

}  // namespace ullage::physics
