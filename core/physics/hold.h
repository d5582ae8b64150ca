// SPDX-License-Identifier: GPL-3.0-or-later
//
// Did a closed keg with only gas in it hold its pressure between two readings?
//
// The first reading gives the gas (n = p V / Z R T); the second temperature gives
// the pressure that gas should show; what is missing is the leak. A sealed keg
// at 30 psi cooled from 20 to 4 C falls by about 2.4 psi and is tight.
//
// Errors: the readings' own (one instrument's bias cancels, its repeatability
// does not; two instruments' biases do not), the thermometer, the barometer
// between the readings, and water left inside, which takes up CO2. With beer
// inside this says nothing: absorption moves the pressure far more.
#pragma once

#include <optional>

#include "core/physics/error.h"
#include "core/units/estimate.h"
#include "core/units/gauge_pressure.h"
#include "core/units/quantities.h"

namespace ullage::physics {

struct HoldReading {
  units::Duration at;
  units::Estimate<units::GaugePressure> pressure;
  units::Estimate<units::Temperature> temperature;
};

struct HoldTest {
  units::Volume gas_space;
  units::AbsolutePressure ambient;
  HoldReading first;
  HoldReading second;
  // 95 % change of the barometer between the readings, and how far a wet residue
  // may pull the pressure down (0.25 L of water: about 0.4 psi in a 19 L keg).
  units::PressureDifference barometer = units::pascals(2000);
  units::PressureDifference wet_residue = units::psi(0.4);
};

enum class HoldVerdict {
  holds_so_far,  // 95 % upper bound of the leak is under the limit
  falls,         // 95 % lower bound of the leak is above zero
  cant_tell,
};
enum class HoldReason {
  none,
  too_soon,       // under 30 minutes: gas and lid still settle
  within_errors,  // read again later: the leak it could miss is above the limit
};

struct HoldOutcome {
  HoldVerdict verdict = HoldVerdict::cant_tell;
  HoldReason reason = HoldReason::none;
  units::GaugePressure expected;                      // second reading of a tight keg
  units::Estimate<units::PressureDifference> change;  // read minus expected
  units::Estimate<units::Mass> leak_per_day;          // of CO2, at the test pressure
  units::Mass smallest_visible_per_day;               // a leak below this would not have shown
  // When another reading with the same errors could show a leak at the limit.
  std::optional<units::Duration> read_again_at;  // since the first reading
};

inline constexpr double leak_limit_grams_per_day = 2.0;

[[nodiscard]] Result<HoldOutcome> judge_hold(
    const HoldTest&, units::Mass limit_per_day = units::grams(leak_limit_grams_per_day));

}  // namespace ullage::physics
