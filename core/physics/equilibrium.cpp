// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/physics/equilibrium.h"

#include <cmath>
#include <optional>
#include <utility>

#include "core/physics/atmosphere.h"
#include "core/physics/co2_gas.h"
#include "core/physics/density.h"

namespace ullage::physics {

using namespace units;

namespace {

constexpr double chart_ambient_psi = 14.695;
constexpr Range polynomial_fahrenheit{32.0, 80.0};
constexpr Range polynomial_volumes{2.0, 3.0};
constexpr Range co2_share_limits{1e-3, 1.0};
// An ulp of slack where a temperature or a result sits exactly on its limit.
constexpr double edge = 1e-9;

Co2Volumes water_co2(AbsolutePressure p, Temperature t) {
  const double k = in_kelvin(t);
  const double hundredths = k / 100.0;
  const double moles_per_kg_atm =
      std::exp(-58.0931 + 90.5069 / hundredths + 22.2940 * std::log(hundredths));
  const double pa = in_pascals(p);
  const double fugacity_coefficient = std::exp(co2_second_virial(t) * pa / (gas_constant * k));
  const double moles_per_m3 = moles_per_kg_atm * pa / pascals_per_atmosphere *
                              fugacity_coefficient *
                              in_kilograms_per_cubic_metre(water_density_unchecked(t));
  return to_volumes(grams_per_litre(moles_per_m3 * co2_kilograms_per_mole));
}

// E2 is a quadratic in volumes at a given temperature: its lower root.
std::optional<Co2Volumes> polynomial_co2(AbsolutePressure p, Temperature t) {
  const double f = in_fahrenheit(t);
  const double gauge_psi_sea_level = in_psi(p) - pascals_per_atmosphere / pascals_per_psi;
  const double a = -0.0684226;
  const double b = 0.173354 * f + 4.24267;
  const double c = -16.6999 - 0.0101059 * f + 0.00116512 * f * f - gauge_psi_sea_level;
  const double discriminant = b * b - 4.0 * a * c;
  if (discriminant < 0) return std::nullopt;
  return volumes_of_co2((-b + std::sqrt(discriminant)) / (2.0 * a));
}

AbsolutePressure polynomial_pressure(Co2Volumes co2, Temperature t) {
  const double f = in_fahrenheit(t);
  const double v = co2.count();
  const double p = -16.6999 - 0.0101059 * f + 0.00116512 * f * f + 0.173354 * f * v + 4.24267 * v -
                   0.0684226 * v * v;
  return gauge_psi(p).at_ambient(pascals_absolute(pascals_per_atmosphere));
}

double exponential_volumes_per_pascal(Temperature t) {
  const double grams_per_litre_bar = 10.0 * std::exp(-10.73797 + 2617.25 / in_kelvin(t));
  return to_volumes(grams_per_litre(grams_per_litre_bar / pascals_per_bar)).count();
}

// Water's fugacity correction makes it the one equation without a closed inverse.
AbsolutePressure water_pressure(Co2Volumes co2, Temperature t) {
  double low = 0.0;
  double high = 2.0 * equilibrium_pressure_range.high;
  for (int i = 0; i < 60; ++i) {
    const double mid = 0.5 * (low + high);
    (water_co2(pascals_absolute(mid), t) < co2 ? low : high) = mid;
  }
  return pascals_absolute(0.5 * (low + high));
}

Outside outside_polynomial(Subject subject, double value, Range range) {
  return outside(subject, value, {range.low - edge, range.high + edge});
}

Result<Co2Volumes> beer_co2(AbsolutePressure p, Temperature t, Equation equation) {
  switch (equation) {
    case Equation::polynomial: {
      const double f = in_fahrenheit(t);
      if (auto bad = outside_polynomial(Subject::temperature, f, polynomial_fahrenheit))
        return std::unexpected(RangeError{Subject::temperature, in_kelvin(t),
                                          in_kelvin(fahrenheit(polynomial_fahrenheit.low)),
                                          in_kelvin(fahrenheit(polynomial_fahrenheit.high))});
      const auto co2 = polynomial_co2(p, t);
      if (!co2)
        return std::unexpected(RangeError{Subject::absolute_pressure, in_pascals(p), 0.0,
                                          equilibrium_pressure_range.high});
      if (auto bad = outside_polynomial(Subject::co2, co2->count(), polynomial_volumes))
        return std::unexpected(*bad);
      return *co2;
    }
    case Equation::exponential:
      return volumes_of_co2(exponential_volumes_per_pascal(t) * in_pascals(p));
    case Equation::pure_water:
      return water_co2(p, t);
    case Equation::fitted_chart:
      break;
  }
  const SolubilityLine line = fitted_chart_line(t);
  return volumes_of_co2(line.volumes_per_pascal * in_pascals(p) + line.intercept_volumes);
}

Result<AbsolutePressure> beer_pressure(Co2Volumes co2, Temperature t, Equation equation) {
  switch (equation) {
    case Equation::polynomial: {
      const double f = in_fahrenheit(t);
      if (auto bad = outside_polynomial(Subject::temperature, f, polynomial_fahrenheit))
        return std::unexpected(RangeError{Subject::temperature, in_kelvin(t),
                                          in_kelvin(fahrenheit(polynomial_fahrenheit.low)),
                                          in_kelvin(fahrenheit(polynomial_fahrenheit.high))});
      if (auto bad = outside_polynomial(Subject::co2, co2.count(), polynomial_volumes))
        return std::unexpected(*bad);
      return polynomial_pressure(co2, t);
    }
    case Equation::exponential:
      return pascals_absolute(co2.count() / exponential_volumes_per_pascal(t));
    case Equation::pure_water:
      return water_pressure(co2, t);
    case Equation::fitted_chart:
      break;
  }
  const SolubilityLine line = fitted_chart_line(t);
  return pascals_absolute((co2.count() - line.intercept_volumes) / line.volumes_per_pascal);
}

Result<Co2Volumes> not_above_water(Co2Volumes co2, AbsolutePressure p, Temperature t) {
  const Co2Volumes water = water_co2(p, t);
  if (co2 > water)
    return std::unexpected(RangeError{Subject::co2_above_water, co2.count(), 0.0, water.count()});
  return co2;
}

}  // namespace

Co2Volumes equation_half_width(Equation equation) {
  switch (equation) {
    case Equation::polynomial:
      return volumes_of_co2(0.02);
    case Equation::exponential:
      return volumes_of_co2(0.09);
    case Equation::pure_water:
      return volumes_of_co2(0.3);
    case Equation::fitted_chart:
      break;
  }
  return volumes_of_co2(0.06);
}

const char* equation_name(Equation equation) {
  switch (equation) {
    case Equation::polynomial:
      return "polynomial";
    case Equation::exponential:
      return "exponential";
    case Equation::pure_water:
      return "pure_water";
    case Equation::fitted_chart:
      break;
  }
  return "fitted_chart";
}

SolubilityLine fitted_chart_line(Temperature t) {
  const double volumes_per_psi = 0.01821 + 0.090115 * std::exp(-(in_fahrenheit(t) - 32.0) / 43.11);
  const double shift_psi = chart_ambient_psi - pascals_per_atmosphere / pascals_per_psi;
  return {volumes_per_psi / pascals_per_psi, volumes_per_psi * shift_psi - 0.003342};
}

Result<Co2Volumes> equilibrium_co2(AbsolutePressure co2_partial, Temperature t, Equation equation) {
  if (auto bad = outside(Subject::temperature, in_kelvin(t), beer_temperature_range))
    return std::unexpected(*bad);
  if (auto bad =
          outside(Subject::absolute_pressure, in_pascals(co2_partial), equilibrium_pressure_range))
    return std::unexpected(*bad);
  const Result<Co2Volumes> co2 = beer_co2(co2_partial, t, equation);
  if (!co2 || equation == Equation::pure_water) return co2;
  return not_above_water(*co2, co2_partial, t);
}

Result<AbsolutePressure> equilibrium_pressure(Co2Volumes co2, Temperature t, Equation equation) {
  if (auto bad = outside(Subject::temperature, in_kelvin(t), beer_temperature_range))
    return std::unexpected(*bad);
  if (auto bad = outside(Subject::co2, co2.count(), co2_range)) return std::unexpected(*bad);
  const Result<AbsolutePressure> p = beer_pressure(co2, t, equation);
  if (!p) return p;
  if (auto bad = outside(Subject::absolute_pressure, in_pascals(*p), equilibrium_pressure_range))
    return std::unexpected(*bad);
  if (equation == Equation::pure_water) return p;
  if (const auto allowed = not_above_water(co2, *p, t); !allowed)
    return std::unexpected(allowed.error());
  return p;
}

Result<Co2Volumes> equilibrium_co2(const GasAbove& gas, Temperature t, Equation equation) {
  if (auto bad = outside(Subject::co2_fraction, gas.co2.count(), co2_share_limits))
    return std::unexpected(*bad);
  if (auto bad =
          outside(Subject::ambient_pressure, in_pascals(gas.ambient), ambient_pressure_range))
    return std::unexpected(*bad);
  const double total = in_pascals(gas.pressure.at_ambient(gas.ambient));
  if (auto bad =
          outside(Subject::gauge_pressure, in_pascals(gas.pressure),
                  {-in_pascals(gas.ambient),
                   equilibrium_pressure_range.high / gas.co2.count() - in_pascals(gas.ambient)}))
    return std::unexpected(*bad);
  return equilibrium_co2(pascals_absolute(total * gas.co2.count()), t, equation);
}

Result<GaugePressure> equilibrium_gauge(Co2Volumes co2, Temperature t, AbsolutePressure ambient,
                                        MoleFraction share, Equation equation) {
  if (auto bad = outside(Subject::co2_fraction, share.count(), co2_share_limits))
    return std::unexpected(*bad);
  if (auto bad = outside(Subject::ambient_pressure, in_pascals(ambient), ambient_pressure_range))
    return std::unexpected(*bad);
  const auto partial = equilibrium_pressure(co2, t, equation);
  if (!partial) return std::unexpected(partial.error());
  return GaugePressure::from_absolute(pascals_absolute(in_pascals(*partial) / share.count()),
                                      ambient);
}

Result<Estimate<Co2Volumes>> equilibrium_co2_estimate(const Estimate<GaugePressure>& pressure,
                                                      const Estimate<Temperature>& temperature,
                                                      const Estimate<AbsolutePressure>& ambient,
                                                      ErrorSource equation_source,
                                                      MoleFraction share) {
  const auto e = try_propagate(
      [&](GaugePressure p, Temperature t, AbsolutePressure air) {
        return equilibrium_co2(GasAbove{p, air, share}, t);
      },
      pressure, temperature, ambient);
  if (!e) return e;
  return e->with(std::move(equation_source), equation_half_width(Equation::fitted_chart).count());
}

Result<Estimate<GaugePressure>> equilibrium_gauge_estimate(
    const Estimate<Co2Volumes>& co2, const Estimate<Temperature>& temperature,
    const Estimate<AbsolutePressure>& ambient, ErrorSource equation_source, MoleFraction share) {
  // The chart's half-width is in volumes: it enters beside the target's error.
  const Estimate<Co2Volumes> with_equation =
      co2.with(std::move(equation_source), -equation_half_width(Equation::fitted_chart).count());
  return try_propagate([&](Co2Volumes c, Temperature t,
                           AbsolutePressure air) { return equilibrium_gauge(c, t, air, share); },
                       with_equation, temperature, ambient);
}

}  // namespace ullage::physics
