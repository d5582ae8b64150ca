// SPDX-License-Identifier: GPL-3.0-or-later
#include <algorithm>
#include <cmath>

#include "core/physics/co2_gas.h"
#include "core/physics/hold_fit.h"

namespace ullage::physics {

using namespace units;

namespace {

constexpr double emptied_exponent = 60;  // e^-60 of the excess left: all of it gone
constexpr double cap_exponent = 40;      // of the shortest interval
constexpr double most_pascals = 1.0e6;   // absolute; the highest reading in range
constexpr double floor_multiple = 8;     // of the inflow that reaches it from nothing
// A leak law run backwards would have the keg fill the faster the fuller it is,
// without bound in finite time, and from ambient never; gas that flows in does no
// such thing. Its drive against that at the first reading:
constexpr Range inflow_drive{0.25, 4};
constexpr double inflow_stops = 1.0e7;  // Pa: ten times any reading
constexpr int inflow_steps = 4;
constexpr double straight_kelvin = 0.3;  // a temperature change taken in one step
constexpr int temperature_steps = 4;

}  // namespace

LeakPath::LeakPath(const HoldTest& test, LeakLaw law) : test_(test), law_(law) {
  const HoldReading& first = test.readings.front();
  const AbsolutePressure p = first.pressure.value().at_ambient(test.ambient);
  const Temperature t = first.temperature.value();
  reference_drive_ = leak_drive(law, p, t, test.ambient);
  const double excess = gas(p, t).value() - gas(test.ambient, t).value();
  double shortest = in_seconds(test.readings.back().at - first.at);
  scale_ = LeakRate::from_value(excess / shortest);
  floor_ = LeakRate::from_value(-floor_multiple * gas(pascals_absolute(most_pascals), t).value() /
                                shortest);
  for (std::size_t i = 1; i < test.readings.size(); ++i) {
    shortest = std::min(shortest, in_seconds(test.readings[i].at - test.readings[i - 1].at));
  }
  cap_ = LeakRate::from_value(cap_exponent * excess / shortest);
}

Amount LeakPath::gas(AbsolutePressure p, Temperature t) const {
  const double pa = in_pascals(p);
  return moles(pa * in_cubic_metres(test_.gas_space) /
               (gas_constant * in_kelvin(t) + co2_second_virial(t) * pa));
}

AbsolutePressure LeakPath::at_temperature(AbsolutePressure p, Temperature from,
                                          Temperature to) const {
  const double molar = in_moles(gas(p, from)) / in_cubic_metres(test_.gas_space);
  return pascals_absolute(gas_constant * in_kelvin(to) * molar /
                          (1 - co2_second_virial(to) * molar));
}

// u = sqrt(p - pa): du/dt = -c D(p) / D(ref) / (dn/dp) / 2u bends gently for both
// laws, down to the moment an orifice leak stops (u reaches 0 at a finite rate).
AbsolutePressure LeakPath::leaked(AbsolutePressure from, Temperature t, Duration lasting,
                                  LeakRate rate) const {
  if (rate.value() < 0) return filled(from, t, lasting, rate);
  const double pa = in_pascals(test_.ambient);
  const double seconds = in_seconds(lasting);
  const double rt = gas_constant * in_kelvin(t);
  const double b = co2_second_virial(t);
  const double factor = rate.value() / reference_drive_ / (in_cubic_metres(test_.gas_space) * rt);
  const auto slope = [&](double u) {
    const double p = pa + u * u;
    const double stretch = rt + b * p;
    return -factor * stretch * stretch * leak_drive(law_, pascals_absolute(p), t, test_.ambient) /
           (2 * u);
  };
  double u = std::sqrt(std::max(0.0, in_pascals(from) - pa));
  if (u == 0 || seconds <= 0) return from;
  const double exponent = -slope(u) / u * seconds;
  if (exponent > emptied_exponent) return test_.ambient;
  const int steps = std::clamp(static_cast<int>(std::ceil(2 * std::abs(exponent))), 3, 128);
  const double h = seconds / steps;
  for (int i = 0; i < steps; ++i) {
    const double k1 = slope(u);
    if (u + h * k1 <= 0) return test_.ambient;
    const double k2 = slope(u + h * k1 / 2);
    const double k3 = slope(std::max(1e-9, u + h * k2 / 2));
    const double k4 = slope(std::max(1e-9, u + h * k3));
    u += h * (k1 + 2 * k2 + 2 * k3 + k4) / 6;
    if (u <= 1e-6) return test_.ambient;
  }
  return pascals_absolute(pa + u * u);
}

AbsolutePressure LeakPath::filled(AbsolutePressure from, Temperature t, Duration lasting,
                                  LeakRate rate) const {
  const double rt = gas_constant * in_kelvin(t);
  const double b = co2_second_virial(t);
  const double factor = -rate.value() / (in_cubic_metres(test_.gas_space) * rt);
  const auto slope = [&](double p) {
    const double drive = leak_drive(law_, pascals_absolute(p), t, test_.ambient) / reference_drive_;
    return factor * (rt + b * p) * (rt + b * p) *
           std::clamp(drive, inflow_drive.low, inflow_drive.high);
  };
  double p = in_pascals(from);
  const double h = in_seconds(lasting) / inflow_steps;
  for (int i = 0; i < inflow_steps && p < inflow_stops; ++i) {
    const double k1 = slope(p);
    const double k2 = slope(std::min(inflow_stops, p + h * k1 / 2));
    const double k3 = slope(std::min(inflow_stops, p + h * k2 / 2));
    const double k4 = slope(std::min(inflow_stops, p + h * k3));
    p += h * (k1 + 2 * k2 + 2 * k3 + k4) / 6;
  }
  return pascals_absolute(std::min(p, inflow_stops));
}

AbsolutePressure LeakPath::over(AbsolutePressure p, std::size_t interval, LeakRate rate) const {
  const HoldReading& from = test_.readings[interval];
  const HoldReading& to = test_.readings[interval + 1];
  const double t0 = in_kelvin(from.temperature.value());
  const double change = in_kelvin(to.temperature.value()) - t0;
  const int steps = std::abs(change) > straight_kelvin ? temperature_steps : 1;
  const Duration each = (to.at - from.at) / static_cast<double>(steps);
  Temperature t = from.temperature.value();
  for (int i = 0; i < steps; ++i) {
    const Temperature middle = kelvin(t0 + change * (i + 0.5) / steps);
    p = leaked(at_temperature(p, t, middle), middle, each, rate);
    t = middle;
  }
  return at_temperature(p, t, to.temperature.value());
}

std::vector<AbsolutePressure> LeakPath::pressures(AbsolutePressure start, LeakRate rate) const {
  std::vector<AbsolutePressure> out{start};
  for (std::size_t i = 0; i + 1 < test_.readings.size(); ++i) {
    out.push_back(over(out.back(), i, rate));
  }
  return out;
}

}  // namespace ullage::physics
