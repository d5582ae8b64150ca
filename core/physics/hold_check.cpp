// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/physics/hold_check.h"

#include <cmath>

#include "core/physics/atmosphere.h"
#include "core/physics/co2_gas.h"

namespace ullage::physics {

using namespace units;

namespace {

constexpr Range hold_space_range{1e-4, 1.0};    // m3
constexpr Range hold_error_range{0.0, 1e5};     // Pa
constexpr Range hold_residue_range{0.0, 5e-3};  // m3
constexpr Range bottle_range{0.1, 200.0};       // kg

std::optional<RangeError> check_reading(const HoldReading& r, const HoldTest& test) {
  if (auto bad = outside(Subject::gauge_pressure, in_pascals(r.pressure.value()), hold_gauge_range))
    return *bad;
  if (auto bad =
          outside(Subject::absolute_pressure,
                  in_pascals(r.pressure.value().at_ambient(test.ambient)), gas_pressure_range))
    return *bad;
  if (auto bad =
          outside(Subject::temperature, in_kelvin(r.temperature.value()), gas_temperature_range))
    return *bad;
  for (const Contribution& c : r.pressure.contributions()) {
    if (auto bad = outside(Subject::gauge_pressure, std::abs(c.half_width), {0, 1e6})) return *bad;
  }
  for (const Contribution& c : r.temperature.contributions()) {
    if (auto bad = outside(Subject::temperature, std::abs(c.half_width), {0, 100})) return *bad;
  }
  return std::nullopt;
}

std::optional<RangeError> check_order(const HoldTest& test) {
  const double low = hold_duration_range.low;
  const double high = hold_duration_range.high;
  const Duration first = test.readings.front().at;
  if (auto bad = outside(Subject::duration, in_seconds(first), {-high, high})) return *bad;
  Duration before = first;
  for (std::size_t i = 1; i < test.readings.size(); ++i) {
    const double least = in_seconds(before) + low;
    before = test.readings[i].at;
    if (auto bad = outside(Subject::step_time, in_seconds(before), {least, 2 * high})) return *bad;
  }
  if (test.readings.size() > 1) {
    if (auto bad = outside(Subject::duration, in_seconds(before - first), hold_duration_range))
      return *bad;
  }
  if (test.closed_at) {
    if (auto bad = outside(Subject::step_time, in_seconds(*test.closed_at),
                           {in_seconds(first) - high, in_seconds(first)}))
      return *bad;
  }
  return std::nullopt;
}

}  // namespace

bool is_settled(const HoldTest& test, const HoldReading& r) {
  const Duration closed = test.closed_at.value_or(test.readings.front().at);
  return in_seconds(r.at - closed) >= hold_settle_minutes * 60;
}

double settling_of_first(const HoldTest& test) {
  return is_settled(test, test.readings.front()) ? 0 : units::in_pascals(test.settling);
}

std::optional<RangeError> check_hold(const HoldTest& test, Mass limit) {
  if (auto bad = outside(Subject::headspace, in_cubic_metres(test.gas_space), hold_space_range))
    return *bad;
  if (auto bad =
          outside(Subject::ambient_pressure, in_pascals(test.ambient), ambient_pressure_range))
    return *bad;
  if (auto bad =
          outside(Subject::parts, static_cast<double>(test.readings.size()), hold_readings_range))
    return *bad;
  for (const HoldReading& r : test.readings) {
    if (auto bad = check_reading(r, test)) return bad;
  }
  if (auto bad = check_order(test)) return bad;
  for (const PressureDifference& p : {test.barometer, test.settling}) {
    if (auto bad = outside(Subject::gauge_pressure, in_pascals(p), hold_error_range)) return *bad;
  }
  if (auto bad = outside(Subject::volume, in_cubic_metres(test.wet_residue), hold_residue_range))
    return *bad;
  if (auto bad = outside(Subject::gauge_pressure, in_pascals(test.service.pressure),
                         {0, hold_gauge_range.high}))
    return *bad;
  if (auto bad =
          outside(Subject::temperature, in_kelvin(test.service.temperature), gas_temperature_range))
    return *bad;
  if (test.service.bottle) {
    if (auto bad = outside(Subject::mass, in_kilograms(*test.service.bottle), bottle_range))
      return *bad;
  }
  if (auto bad = outside(Subject::mass, in_kilograms(limit), leak_limit_range)) return *bad;
  return std::nullopt;
}

}  // namespace ullage::physics
