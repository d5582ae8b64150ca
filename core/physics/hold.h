// SPDX-License-Identifier: GPL-3.0-or-later
//
// Is a keg with its gas turned off losing gas?
//
// The readings (time, gauge pressure, temperature) give the gas by the real-gas
// law; a leak law (leak_law.h) is fitted to them by weighted least squares, once
// as a viscous and once as an orifice leak, and the 95 % interval of the leak is
// where the misfit grows by 1.96^2 (profile likelihood: exact for small leaks,
// and sound for a keg that emptied between two readings). A sealed keg at 30 psi
// cooled from 20 to 4 C falls by about 2.5 psi and is tight.
//
// Errors: the readings' own, by named source (one dial's bias cancels, its
// repeatability does not); the barometer between readings; water left inside,
// which takes up CO2 and looks like a leak; the first 30 minutes, in which gas
// and lid settle. With beer inside see judge_hold_with_beer (hold_beer.h).
// docs/physics-hold.md.
#pragma once

#include <optional>
#include <vector>

#include "core/physics/error.h"
#include "core/physics/leak_law.h"
#include "core/units/estimate.h"
#include "core/units/gauge_pressure.h"
#include "core/units/quantities.h"

namespace ullage::physics {

struct HoldReading {
  units::Duration at;
  units::Estimate<units::GaugePressure> pressure;
  units::Estimate<units::Temperature> temperature;
};

// What the leak would do to a keg in use, and to the bottle that feeds it.
struct HoldService {
  units::GaugePressure pressure = units::gauge_psi(12);
  units::Temperature temperature = units::celsius(4);
  std::optional<units::Mass> bottle;  // CO2 in it
};

struct HoldTest {
  units::Volume gas_space;
  units::AbsolutePressure ambient;
  std::vector<HoldReading> readings;  // in order of time; 2 to 200 for a verdict
  // When the gas was turned off, on the readings' clock; the first reading if
  // not known.
  std::optional<units::Duration> closed_at = std::nullopt;
  // 95 % change of the barometer over days. Over less it is taken as
  // sqrt(1 - exp(-t / 12 h)) of it (assumed).
  units::PressureDifference barometer = units::pascals(2000);
  // Water that may be left inside: it takes up between nothing and all the CO2
  // pure water can hold, within some 4 hours (0.25 L: up to 0.5 psi in 19 L).
  units::Volume wet_residue = units::litres(0.25);
  // 95 % error of a reading in the first 30 minutes (common practice, no source).
  units::PressureDifference settling = units::psi(0.3);
  HoldService service;
};

enum class HoldVerdict {
  holds,  // the 95 % interval of the leak, at test pressure, is under the limit
  leaks,  // that interval is above zero, and reaches the limit
  cant_tell,
};
enum class HoldReason {
  none,
  one_reading,
  too_soon,       // less than 30 minutes between the first and the last reading
  no_pressure,    // under 2 psi: nothing to lose
  within_errors,  // read again: the leak this could have missed is above the limit
  rose,           // the pressure rose more than the errors explain
  contradictory,  // no leak fits the readings (1 in 1000)
  absorption,     // beer inside: what it took up or gave off isn't known well enough
};

// CO2 a day, 95 %. No `high`, and no `likely`: the keg had emptied before it was
// read, so nothing bounds the leak from above.
struct LeakRange {
  units::Mass low;  // below zero where a small inflow would fit as well
  std::optional<units::Mass> likely;
  std::optional<units::Mass> high;
};
struct LawFit {
  LeakLaw law = LeakLaw::viscous;
  LeakRange at_test;              // per day, at the first reading's pressure and temperature
  LeakRange at_service;           // per day, at HoldService
  units::AbsolutePressure start;  // of the fitted line, at the first reading
  double misfit = 0;              // chi squared over readings - 2 degrees of freedom
};

struct HoldOutcome {
  HoldVerdict verdict = HoldVerdict::cant_tell;
  HoldReason reason = HoldReason::none;
  units::Duration lasted = units::seconds(0);
  units::GaugePressure expected;                      // last reading of a tight, dry keg
  units::Estimate<units::PressureDifference> change;  // last reading minus expected
  // Mean over the test, with where its error comes from; the laws agree on it.
  units::Estimate<units::Mass> leak_per_day;
  std::vector<LawFit> laws;  // viscous, orifice; none where nothing could be fitted
  // At test pressure: a leak this big would be found in 19 of 20 such tests.
  std::optional<units::Mass> smallest_visible_per_day;
  // The leak goes on at service pressure: how long the bottle lasts. `soonest`
  // by the worst case that the test leaves open, `likely` by the middle of the
  // laws; none where that leak is nothing.
  struct BottleLife {
    std::optional<units::Duration> soonest;
    std::optional<units::Duration> likely;
  } bottle;
  // Lids seat with pressure: a keg that holds is proven down to here only.
  std::optional<units::GaugePressure> proven_down_to;
  // When another reading with the same instruments should decide, on the
  // readings' clock. None: not within 60 days.
  std::optional<units::Duration> read_again_at;
};

inline constexpr double leak_limit_grams_per_day = 2.0;
inline constexpr double hold_settle_minutes = 30.0;
inline constexpr Range hold_gauge_range{-2.0e4, 9.0e5};          // Pa: to 130 psi
inline constexpr Range hold_duration_range{1.0, 400 * 86400.0};  // s
inline constexpr Range leak_limit_range{1e-6, 1.0};              // kg a day
inline constexpr Range hold_readings_range{1, 200};

// Refuses values out of range, and readings out of order or at one time
// (Subject::step_time).
[[nodiscard]] Result<HoldOutcome> judge_hold(
    const HoldTest&, units::Mass limit_per_day = units::grams(leak_limit_grams_per_day));

// The lines of a picture of the test, at `count` >= 2 times from the first
// reading to the last. The temperature between readings is taken as straight.
struct HoldPoint {
  units::Duration at;
  units::GaugePressure tight;                 // no leak, dry
  units::GaugePressure low, high;             // no leak: with all the residue allowed for, dry
  std::vector<units::GaugePressure> leaking;  // one for each of the outcome's laws
};
[[nodiscard]] Result<std::vector<HoldPoint>> hold_lines(const HoldTest&, const HoldOutcome&,
                                                        int count);

}  // namespace ullage::physics
