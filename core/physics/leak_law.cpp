// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/physics/leak_law.h"

#include <algorithm>
#include <cmath>
#include <numbers>

#include "core/physics/atmosphere.h"
#include "core/physics/co2_gas.h"

namespace ullage::physics {

using namespace units;

namespace {

constexpr double sutherland_kelvin = 240.0;
constexpr Range nozzle_pressure_range{1e3, 5e6};      // Pa
constexpr Range nozzle_temperature_range{200, 1000};  // K
constexpr Range nozzle_bore_range{0.0, 1.0};          // m

// Flow through an opening over p0 A sqrt(M / R T0), at the pressure ratio r.
double flow_coefficient(double r, double k) {
  return std::sqrt(2 * k / (k - 1) * std::max(0.0, std::pow(r, 2 / k) - std::pow(r, (k + 1) / k)));
}

}  // namespace

double critical_pressure_ratio(const PerfectGas& gas) {
  const double k = gas.heat_ratio;
  return std::pow(2 / (k + 1), k / (k - 1));
}

AbsolutePressure choked_above(AbsolutePressure ambient, const PerfectGas& gas) {
  return pascals_absolute(in_pascals(ambient) / critical_pressure_ratio(gas));
}

Result<NozzleFlow> nozzle_flow(AbsolutePressure upstream, Temperature t,
                               AbsolutePressure downstream, Length bore, const PerfectGas& gas) {
  for (const AbsolutePressure& p : {upstream, downstream}) {
    if (auto bad = outside(Subject::absolute_pressure, in_pascals(p), nozzle_pressure_range))
      return std::unexpected(*bad);
  }
  if (auto bad = outside(Subject::absolute_pressure, in_pascals(upstream),
                         {in_pascals(downstream), nozzle_pressure_range.high}))
    return std::unexpected(*bad);
  if (auto bad = outside(Subject::temperature, in_kelvin(t), nozzle_temperature_range))
    return std::unexpected(*bad);
  if (auto bad = outside(Subject::bore, in_metres(bore), nozzle_bore_range))
    return std::unexpected(*bad);
  const double k = gas.heat_ratio;
  const double area = std::numbers::pi / 4 * in_metres(bore) * in_metres(bore);
  const double critical = critical_pressure_ratio(gas);
  const double ratio = in_pascals(downstream) / in_pascals(upstream);
  const double r = std::max(ratio, critical);  // the throat goes no lower
  const double specific = gas_constant / gas.kilograms_per_mole;
  const double t0 = in_kelvin(t);
  NozzleFlow out;
  out.choked = ratio <= critical;
  out.mach = std::sqrt(2 / (k - 1) * (std::pow(r, (1 - k) / k) - 1));
  const double throat_t = t0 * std::pow(r, (k - 1) / k);
  const double speed = out.mach * std::sqrt(k * specific * throat_t);
  out.temperature = kelvin(throat_t);
  out.velocity = speed * si::metre_per_second;
  out.density = kilograms_per_cubic_metre(r * in_pascals(upstream) / (specific * throat_t));
  out.flow = MassFlow::from_value(in_pascals(upstream) * area * flow_coefficient(r, k) /
                                  std::sqrt(specific * t0));
  return out;
}

double leak_drive(LeakLaw law, AbsolutePressure inside, Temperature t, AbsolutePressure ambient) {
  const double p = in_pascals(inside);
  const double pa = in_pascals(ambient);
  const double k = in_kelvin(t);
  if (p <= pa) return 0;
  if (law == LeakLaw::viscous) {
    return (p - pa) * (p + pa) * (k + sutherland_kelvin) / (k * k * std::sqrt(k));
  }
  static const PerfectGas co2;
  static const double critical = critical_pressure_ratio(co2);
  static const double choked = flow_coefficient(critical, co2.heat_ratio);
  const double r = pa / p;
  return p * (r <= critical ? choked : flow_coefficient(r, co2.heat_ratio)) / std::sqrt(k);
}

Result<MassFlow> leak_at(LeakLaw law, MassFlow flow, const LeakState& known, const LeakState& asked,
                         AbsolutePressure ambient) {
  if (auto bad = outside(Subject::ambient_pressure, in_pascals(ambient), ambient_pressure_range))
    return std::unexpected(*bad);
  for (const LeakState* s : {&known, &asked}) {
    if (auto bad = outside(Subject::absolute_pressure, in_pascals(s->inside), gas_pressure_range))
      return std::unexpected(*bad);
    if (auto bad = outside(Subject::temperature, in_kelvin(s->temperature), gas_temperature_range))
      return std::unexpected(*bad);
  }
  const double reference = leak_drive(law, known.inside, known.temperature, ambient);
  if (reference <= 0)
    return std::unexpected(RangeError{Subject::absolute_pressure, in_pascals(known.inside),
                                      std::nextafter(in_pascals(ambient), 1e9),
                                      gas_pressure_range.high});
  return flow * (leak_drive(law, asked.inside, asked.temperature, ambient) / reference);
}

}  // namespace ullage::physics
