// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/physics/co2_bottle.h"

#include <algorithm>
#include <array>
#include <boost/math/tools/roots.hpp>
#include <cmath>
#include <cstdint>

#include "core/physics/co2_gas.h"

namespace ullage::physics {

using namespace units;

namespace {

constexpr double water_kg_per_m3 = 1000.0;
constexpr double n2_kilograms_per_mole = 28.0134e-3;

// a_i and t_i of one ancillary equation.
struct SaturationTerm {
  double a;
  double t;
};

template <std::size_t n>
double saturation_sum(const std::array<SaturationTerm, n>& terms, double kelvins) {
  const double tau = 1.0 - kelvins / co2_critical_kelvin;
  double sum = 0;
  for (const SaturationTerm& term : terms) sum += term.a * std::pow(tau, term.t);
  return sum;
}

double saturation_pascals(double kelvins) {
  constexpr std::array<SaturationTerm, 4> terms{
      {{-7.0602087, 1.0}, {1.9391218, 1.5}, {-1.6463597, 2.0}, {-3.2995634, 4.0}}};
  return co2_critical_pascals *
         std::exp(co2_critical_kelvin / kelvins * saturation_sum(terms, kelvins));
}

double liquid_kg_per_m3(double kelvins) {
  constexpr std::array<SaturationTerm, 4> terms{
      {{1.9245108, 0.34}, {-0.62385555, 0.5}, {-0.32731127, 10.0 / 6.0}, {0.39245142, 11.0 / 6.0}}};
  return co2_critical_kg_per_m3 * std::exp(saturation_sum(terms, kelvins));
}

double vapour_kg_per_m3(double kelvins) {
  constexpr std::array<SaturationTerm, 5> terms{{{-1.7074879, 0.34},
                                                 {-0.82274670, 0.5},
                                                 {-4.6008549, 1.0},
                                                 {-10.111178, 7.0 / 3.0},
                                                 {-29.742252, 14.0 / 3.0}}};
  return co2_critical_kg_per_m3 * std::exp(saturation_sum(terms, kelvins));
}

// Peng-Robinson attraction at a temperature, and volume, of a pure gas.
struct CubicGas {
  double a;
  double b;
};
CubicGas cubic_gas(double critical_kelvin, double critical_pascals, double acentric, double t) {
  const double kappa = 0.37464 + 1.54226 * acentric - 0.26992 * acentric * acentric;
  const double root = 1 + kappa * (1 - std::sqrt(t / critical_kelvin));
  const double rt = gas_constant * critical_kelvin;
  return {0.45724 * rt * rt / critical_pascals * root * root, 0.07780 * rt / critical_pascals};
}

CubicGas cubic_mixture(double co2, double t) {
  constexpr double interaction = -0.017;
  const CubicGas c = cubic_gas(co2_critical_kelvin, co2_critical_pascals, 0.22394, t);
  const CubicGas n = cubic_gas(126.192, 3.3958e6, 0.0372, t);
  const double n2 = 1 - co2;
  const double cross = std::sqrt(c.a * n.a) * (1 - interaction);
  return {co2 * co2 * c.a + 2 * co2 * n2 * cross + n2 * n2 * n.a, co2 * c.b + n2 * n.b};
}

// The largest real root of z^3 + p z^2 + q z + r: the gas.
double largest_root(double p, double q, double r) {
  const double shift = p / 3;
  const double m = q - p * p / 3;
  const double n = 2 * p * p * p / 27 - p * q / 3 + r;
  const double inside = n * n / 4 + m * m * m / 27;
  if (inside > 0) {
    const double s = std::sqrt(inside);
    return std::cbrt(-n / 2 + s) + std::cbrt(-n / 2 - s) - shift;
  }
  const double size = 2 * std::sqrt(-m / 3);
  // Rounding may push the cosine past 1 where two roots meet.
  const double cosine = m == 0 ? 0.0 : std::clamp(3 * n / (m * size), -1.0, 1.0);
  return size * std::cos(std::acos(cosine) / 3) - shift;
}

double dense_gas_kg_per_m3(double pascals, double t, double co2) {
  const CubicGas g = cubic_mixture(co2, t);
  const double rt = gas_constant * t;
  const double a = g.a * pascals / (rt * rt);
  const double b = g.b * pascals / rt;
  const double z = largest_root(b - 1, a - 2 * b - 3 * b * b, -(a * b - b * b - b * b * b));
  const double molar = co2 * co2_kilograms_per_mole + (1 - co2) * n2_kilograms_per_mole;
  return pascals * molar / (z * rt);
}

Outside bad_temperature(Temperature t, Range range) {
  return outside(Subject::temperature, in_kelvin(t), range);
}

}  // namespace

Result<Saturation> co2_saturation(Temperature t) {
  if (auto bad = bad_temperature(t, saturation_temperature_range)) return std::unexpected(*bad);
  const double k = in_kelvin(t);
  return Saturation{pascals_absolute(saturation_pascals(k)),
                    kilograms_per_cubic_metre(liquid_kg_per_m3(k)),
                    kilograms_per_cubic_metre(vapour_kg_per_m3(k))};
}

Result<Density> bottle_gas_density(AbsolutePressure p, Temperature t, MoleFraction co2) {
  const bool pure = co2.count() >= pure_co2_from;
  if (auto bad = bad_temperature(t, pure ? saturation_temperature_range : bottle_temperature_range))
    return std::unexpected(*bad);
  if (auto bad = outside(Subject::co2_fraction, co2.count(), {0.0, 1.0}))
    return std::unexpected(*bad);
  Range pressures = bottle_pressure_range;
  if (pure) pressures.high = saturation_pascals(in_kelvin(t));
  if (auto bad = outside(Subject::absolute_pressure, in_pascals(p), pressures))
    return std::unexpected(*bad);
  return kilograms_per_cubic_metre(dense_gas_kg_per_m3(in_pascals(p), in_kelvin(t), co2.count()));
}

Result<BottleState> co2_bottle_state(Mass gas, Volume water_capacity, Temperature t) {
  if (auto bad = outside(Subject::mass, in_kilograms(gas), bottle_contents_range))
    return std::unexpected(*bad);
  if (auto bad = outside(Subject::volume, in_cubic_metres(water_capacity), water_capacity_range))
    return std::unexpected(*bad);
  const auto s = co2_saturation(t);
  if (!s) return std::unexpected(s.error());
  const double density = in_kilograms(gas) / in_cubic_metres(water_capacity);
  const double vapour = in_kilograms_per_cubic_metre(s->vapour);
  BottleState out;
  out.liquid_gone_below = kilograms(vapour * in_cubic_metres(water_capacity));
  if (density > in_kilograms_per_cubic_metre(s->liquid)) {
    out.phase = BottlePhase::liquid_full;
  } else if (density > vapour) {
    out.phase = BottlePhase::liquid_and_vapour;
    out.pressure = s->pressure;
  } else {
    // The dense-gas equation meets saturation only within its own error, so the
    // pressure is scaled to reach it where the liquid goes.
    const auto at = [&](double pa) { return dense_gas_kg_per_m3(pa, in_kelvin(t), 1.0); };
    const double scale = at(in_pascals(s->pressure)) / vapour;
    const auto miss = [&](double pa) { return at(pa) / scale - density; };
    std::uintmax_t steps = 60;
    const auto found =
        boost::math::tools::toms748_solve(miss, 0.0, in_pascals(s->pressure) * (1 + 1e-9),
                                          boost::math::tools::eps_tolerance<double>(30), steps);
    out.pressure = pascals_absolute((found.first + found.second) / 2);
  }
  return out;
}

Result<Temperature> liquid_full_temperature(Fraction fill_ratio) {
  if (auto bad = outside(Subject::fraction, fill_ratio.count(), fill_ratio_range))
    return std::unexpected(*bad);
  const double density = fill_ratio.count() * water_kg_per_m3;
  const auto miss = [&](double k) { return liquid_kg_per_m3(k) - density; };
  std::uintmax_t steps = 100;
  const auto found =
      boost::math::tools::toms748_solve(miss, saturation_temperature_range.low, co2_critical_kelvin,
                                        boost::math::tools::eps_tolerance<double>(40), steps);
  return kelvin((found.first + found.second) / 2);
}

Result<Volume> water_capacity_for(Mass content, Fraction fill_ratio) {
  if (auto bad = outside(Subject::fraction, fill_ratio.count(), fill_ratio_range))
    return std::unexpected(*bad);
  if (auto bad = outside(Subject::mass, in_kilograms(content), bottle_contents_range))
    return std::unexpected(*bad);
  return cubic_metres(in_kilograms(content) / (fill_ratio.count() * water_kg_per_m3));
}

namespace {

Result<Estimate<Mass>> gas_by_gauge(const BottleGauge& g, MoleFraction co2, Volume water_capacity,
                                    const ErrorSource& equation) {
  const bool pure = co2.count() >= pure_co2_from;
  const auto mass_at = [&](GaugePressure p, Temperature t) -> Result<Mass> {
    const AbsolutePressure abs = p.at_ambient(g.ambient);
    if (auto bad = outside(Subject::absolute_pressure, in_pascals(abs), bottle_pressure_range))
      return std::unexpected(*bad);
    // Errors may carry a reading a little past saturation; the gas branch of the
    // equation goes on smoothly there.
    return kilograms(dense_gas_kg_per_m3(in_pascals(abs), in_kelvin(t), pure ? 1.0 : co2.count()) *
                     in_cubic_metres(water_capacity));
  };
  auto gas = try_propagate(mass_at, g.pressure, g.temperature);
  if (!gas) return gas;
  const Fraction share = pure ? dense_co2_half_width : dense_mixed_half_width;
  return gas->with_error(equation, share.count() * gas->value());
}

}  // namespace

Result<GaugeVerdict> what_gauge_tells(const BottleGauge& g, MoleFraction co2, Volume water_capacity,
                                      const ErrorSource& equation) {
  if (auto bad = outside(Subject::co2_fraction, co2.count(), {0.0, 1.0}))
    return std::unexpected(*bad);
  if (auto bad = outside(Subject::volume, in_cubic_metres(water_capacity), water_capacity_range))
    return std::unexpected(*bad);
  if (auto bad = bad_temperature(g.temperature.value(), bottle_temperature_range))
    return std::unexpected(*bad);
  const AbsolutePressure shown = g.pressure.value().at_ambient(g.ambient);
  if (auto bad = outside(Subject::absolute_pressure, in_pascals(shown), bottle_pressure_range))
    return std::unexpected(*bad);
  GaugeVerdict out;
  if (co2.count() < pure_co2_from) {
    auto gas = gas_by_gauge(g, co2, water_capacity, equation);
    if (!gas) return std::unexpected(gas.error());
    out.tells = GaugeTells::mixed_gas;
    out.gas = *gas;
    return out;
  }
  const auto s = co2_saturation(g.temperature.value());
  if (!s) return std::unexpected(s.error());
  out.saturation = s->pressure;
  // How far dial and thermometer together may be from saturation: the slope of
  // the curve is about 2.5 % a kelvin.
  const double slope = (saturation_pascals(in_kelvin(g.temperature.value())) -
                        saturation_pascals(in_kelvin(g.temperature.value()) - 1.0));
  const double error = std::hypot(g.pressure.half_width(), slope * g.temperature.half_width());
  const double below = in_pascals(s->pressure) - in_pascals(shown);
  if (std::abs(below) <= error) {
    out.tells = GaugeTells::nothing_while_liquid;
    out.least =
        kilograms(in_kilograms_per_cubic_metre(s->vapour) * in_cubic_metres(water_capacity));
  } else if (below < 0) {
    out.tells = GaugeTells::above_saturation;
  } else {
    auto gas = gas_by_gauge(g, co2, water_capacity, equation);
    if (!gas) return std::unexpected(gas.error());
    out.tells = GaugeTells::vapour_only;
    out.gas = *gas;
  }
  return out;
}

}  // namespace ullage::physics
