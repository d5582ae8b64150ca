// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/physics/hold.h"

#include <algorithm>

#include "core/physics/atmosphere.h"
#include "core/physics/co2_gas.h"
#include "core/physics/keg_cooling.h"
#include "core/physics/purge.h"

namespace ullage::physics {

using namespace units;

namespace {

constexpr double settle_seconds = 30 * 60.0;
constexpr Range hold_duration_range{1.0, 400 * 86400.0};
constexpr Range limit_range{1e-6, 1.0};  // kg a day
constexpr Range error_range{0.0, 1e5};   // Pa

std::optional<RangeError> check(const HoldTest& test, Mass limit) {
  if (auto bad = outside(Subject::headspace, in_cubic_metres(test.gas_space), {1e-4, 1.0}))
    return *bad;
  if (auto bad =
          outside(Subject::ambient_pressure, in_pascals(test.ambient), ambient_pressure_range))
    return *bad;
  for (const HoldReading* r : {&test.first, &test.second}) {
    if (auto bad =
            outside(Subject::gauge_pressure, in_pascals(r->pressure.value()), purge_pressure_range))
      return *bad;
    if (auto bad =
            outside(Subject::temperature, in_kelvin(r->temperature.value()), gas_temperature_range))
      return *bad;
  }
  if (auto bad = outside(Subject::duration, in_seconds(test.second.at - test.first.at),
                         hold_duration_range))
    return *bad;
  for (const PressureDifference& p : {test.barometer, test.wet_residue}) {
    if (auto bad = outside(Subject::gauge_pressure, in_pascals(p), error_range)) return *bad;
  }
  if (auto bad = outside(Subject::mass, in_kilograms(limit), limit_range)) return *bad;
  return std::nullopt;
}

// What a tight keg reads at the second temperature.
Result<GaugePressure> tight(const HoldTest& test, GaugePressure first, Temperature t1,
                            Temperature t2) {
  const auto gas = gas_amount(first.at_ambient(test.ambient), test.gas_space, t1);
  if (!gas) return std::unexpected(gas.error());
  const auto later = gas_pressure(*gas, test.gas_space, t2);
  if (!later) return std::unexpected(later.error());
  return GaugePressure::from_absolute(*later, test.ambient);
}

}  // namespace

Result<HoldOutcome> judge_hold(const HoldTest& test, Mass limit) {
  if (const auto bad = check(test, limit)) return std::unexpected(*bad);
  const auto expected = tight(test, test.first.pressure.value(), test.first.temperature.value(),
                              test.second.temperature.value());
  if (!expected) return std::unexpected(expected.error());
  const auto change = try_propagate(
      [&](GaugePressure p1, Temperature t1, GaugePressure p2,
          Temperature t2) -> Result<PressureDifference> {
        const auto p = tight(test, p1, t1, t2);
        if (!p) return std::unexpected(p.error());
        return PressureDifference(p2 - *p);
      },
      test.first.pressure, test.first.temperature, test.second.pressure, test.second.temperature);
  if (!change) return std::unexpected(change.error());

  HoldOutcome out;
  out.expected = *expected;
  out.change = change->with(ErrorSource{"barometer"}, in_pascals(test.barometer))
                   .with(ErrorSource{"wet residue"}, in_pascals(test.wet_residue));
  const Duration elapsed = test.second.at - test.first.at;
  // Moles a pascal, from the gas law at the second temperature.
  const auto at_expected = gas_amount(expected->at_ambient(test.ambient), test.gas_space,
                                      test.second.temperature.value());
  if (!at_expected) return std::unexpected(at_expected.error());
  const double moles_per_pascal =
      in_moles(*at_expected) / in_pascals(expected->at_ambient(test.ambient));
  out.leak_per_day = propagate(
      [&](PressureDifference missing) {
        return Mass(co2_mass(moles(-in_pascals(missing) * moles_per_pascal)) / in_days(elapsed));
      },
      out.change);

  const double leak = in_kilograms(out.leak_per_day.value());
  const double error = out.leak_per_day.half_width();
  out.smallest_visible_per_day = kilograms(error);
  if (in_seconds(elapsed) < settle_seconds) {
    out.reason = HoldReason::too_soon;
    out.read_again_at = std::max(seconds(settle_seconds), elapsed * (error / in_kilograms(limit)));
  } else if (leak + error < in_kilograms(limit)) {
    out.verdict = HoldVerdict::holds_so_far;
  } else if (leak - error > 0) {
    out.verdict = HoldVerdict::falls;
  } else {
    out.reason = HoldReason::within_errors;
    // The pressure error is fixed: spread over more days it is fewer grams a day.
    const double room =
        in_kilograms(limit) - std::max(0.0, std::min(leak, 0.5 * in_kilograms(limit)));
    out.read_again_at = elapsed * std::max(1.0, error / room);
  }
  return out;
}

}  // namespace ullage::physics
