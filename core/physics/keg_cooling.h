// SPDX-License-Identifier: GPL-3.0-or-later
//
// How a keg follows the temperature of its place: lumped, Newton's law,
// dT/dt = (T_place - T) / tau. The beer is taken as one temperature.
//
// tau prior: 9 h for 19 L in still cold air, 95 % 5 to 16 h, growing with the
// cube root of the volume (heat content over surface). Common practice, no
// source: a warm 19 L keg takes about a day in a refrigerator, a keg at 9-10 C
// needs over 24 h to come to 3 C in a cold room at about 2 C.
#pragma once

#include <optional>
#include <span>

#include "core/physics/error.h"
#include "core/physics/log_estimate.h"
#include "core/units/quantities.h"

namespace ullage::physics {

inline constexpr Range vessel_volume_range{1e-3, 1.0};                   // m3: 1 to 1000 L
inline constexpr Range place_temperature_range{253.15, 323.15};          // K: -20 to 50 C
inline constexpr Range cooling_time_constant_range{60.0, 40 * 86400.0};  // s

struct PlaceTemperature {
  units::Duration at;  // since the start
  units::Temperature temperature;
};

[[nodiscard]] Result<LogEstimate<units::Duration>> cooling_time_constant(units::Volume brimful,
                                                                         units::ErrorSource source);

// Temperature of the beer `after` the start; `places` in order of time, the
// first one at or before the start (its time is not otherwise used).
[[nodiscard]] Result<units::Temperature> keg_temperature(units::Temperature start,
                                                         std::span<const PlaceTemperature> places,
                                                         units::Duration time_constant,
                                                         units::Duration after);

// When the beer comes to `target`, standing in `place` from now on. Empty when
// it never does: the target is not between beer and place.
struct CoolingWindow {
  units::Duration earliest;
  units::Duration likely;
  units::Duration latest;
};
[[nodiscard]] Result<std::optional<CoolingWindow>> time_to_temperature(
    units::Temperature beer, units::Temperature place, units::Temperature target,
    const LogEstimate<units::Duration>& time_constant);

}  // namespace ullage::physics
