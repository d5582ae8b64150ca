// SPDX-License-Identifier: GPL-3.0-or-later
//
// How much CO2 beer holds at rest under a pressure of CO2 at a temperature, and
// the pressure that holds a given amount.
//
// The pressure that counts is the partial pressure of CO2: absolute pressure
// times the CO2 share of the gas. Each source fits the same trade chart (pure
// CO2 over a "standard beer") or pure water; sugar and alcohol of one's own beer
// are within the equation's half-width. Sources, tables and how far they
// disagree: docs/physics.md, "Equilibrium".
#pragma once

#include "core/physics/error.h"
#include "core/units/estimate.h"
#include "core/units/gauge_pressure.h"
#include "core/units/quantities.h"
#include "core/units/scales.h"

namespace ullage::physics {

// P in psi gauge at sea level, F in degrees Fahrenheit, V in volumes.
enum class Equation {
  // V = (P + 14.695)(0.01821 + 0.090115 exp(-(F - 32) / 43.11)) - 0.003342
  // A. J. deLange 2011, fitted to the chart. The default.
  fitted_chart,
  // P = -16.6999 - 0.0101059 F + 0.00116512 F^2 + 0.173354 F V + 4.24267 V
  //     - 0.0684226 V^2, printed beside its own table; only 32-80 F, 2-3 volumes.
  polynomial,
  // C[g/L] = 10 p[bar, absolute] exp(-10.73797 + 2617.25 / T[K]), attributed to
  // European brewing methods.
  exponential,
  // Weiss 1974 for fresh water with its fugacity correction. An upper bound for
  // any beer, not a beer equation.
  pure_water,
};

inline constexpr Range beer_temperature_range{270.15, 308.15};    // K: -3 to 35 C
inline constexpr Range equilibrium_pressure_range{1.0e3, 6.0e5};  // Pa absolute, of CO2
inline constexpr Range co2_range{0.05, 6.0};                      // volumes

// 95 % half-width in volumes by which the equation may miss the trade chart: the
// largest distance from its cells, of the polynomial from those in its range. Of
// pure water: how far other published fits are from this one (5 %), at 6 volumes.
[[nodiscard]] units::Co2Volumes equation_half_width(Equation);
[[nodiscard]] const char* equation_name(Equation);  // lower_snake_case

// Refuses, beside the ranges above, an answer that would be more CO2 than pure
// water takes up (co2_above_water; value asked, `high` what water holds): the
// straight-line beer equations get there above about 5 bar.
[[nodiscard]] Result<units::Co2Volumes> equilibrium_co2(units::AbsolutePressure co2_partial,
                                                        units::Temperature,
                                                        Equation equation = Equation::fitted_chart);
[[nodiscard]] Result<units::AbsolutePressure> equilibrium_pressure(
    units::Co2Volumes, units::Temperature, Equation equation = Equation::fitted_chart);

// A gas supply at a gauge pressure, as on the regulator. `co2` is the CO2 share
// of the gas above the beer (1 for pure CO2, more than 0).
struct GasAbove {
  units::GaugePressure pressure;
  units::AbsolutePressure ambient;
  units::MoleFraction co2 = units::mole_fraction(1);
};
[[nodiscard]] Result<units::Co2Volumes> equilibrium_co2(const GasAbove&, units::Temperature,
                                                        Equation equation = Equation::fitted_chart);
// The gauge pressure to set: "what pressure holds 2.5 volumes at 3 C up here?"
// May be below ambient (negative) for nearly flat beer.
[[nodiscard]] Result<units::GaugePressure> equilibrium_gauge(
    units::Co2Volumes, units::Temperature, units::AbsolutePressure ambient,
    units::MoleFraction co2 = units::mole_fraction(1), Equation equation = Equation::fitted_chart);

// The same with errors carried and the equation's own half-width added under
// `equation_source`.
[[nodiscard]] Result<units::Estimate<units::Co2Volumes>> equilibrium_co2_estimate(
    const units::Estimate<units::GaugePressure>&, const units::Estimate<units::Temperature>&,
    const units::Estimate<units::AbsolutePressure>& ambient, units::ErrorSource equation_source,
    units::MoleFraction co2 = units::mole_fraction(1));
[[nodiscard]] Result<units::Estimate<units::GaugePressure>> equilibrium_gauge_estimate(
    const units::Estimate<units::Co2Volumes>&, const units::Estimate<units::Temperature>&,
    const units::Estimate<units::AbsolutePressure>& ambient, units::ErrorSource equation_source,
    units::MoleFraction co2 = units::mole_fraction(1));

// The default equation is a straight line in pressure at each temperature:
// volumes = slope * p + intercept. For solvers; unchecked.
struct SolubilityLine {
  double volumes_per_pascal = 0;
  double intercept_volumes = 0;
};
[[nodiscard]] SolubilityLine fitted_chart_line(units::Temperature);

}  // namespace ullage::physics
