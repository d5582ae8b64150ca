// SPDX-License-Identifier: GPL-3.0-or-later
//
// How fast gas leaks through a small opening, against its pressure.
//
// What a leak is like inside is not known: a scratch across a seal is long and
// thin (viscous flow), a grain under a poppet is a hole (orifice). The two
// bound how the leak changes from one pressure to another:
//
//   viscous   n' ~ (p^2 - pa^2) / (eta T)     laminar flow of a compressible gas
//   orifice   n' ~ p psi(pa / p) / sqrt(T)    isentropic nozzle, choked below the
//                                             critical ratio pa / p
//   psi^2 = 2k/(k-1) (r^(2/k) - r^((k+1)/k)), r not below rc
//   rc = (2 / (k+1))^(k / (k-1)): 0.548 for CO2, so choked above 12.1 psi
//   eta ~ T^1.5 / (T + 240 K)                 Sutherland (from memory)
//
// Sources, checks, a worked example: docs/physics-hold.md.
#pragma once

#include <boost/units/operators.hpp>

#include "core/physics/error.h"
#include "core/units/quantities.h"

namespace ullage::physics {

enum class LeakLaw { viscous, orifice };

using MassFlow = boost::units::quantity<
    boost::units::divide_typeof_helper<units::si::mass, units::si::time>::type>;
[[nodiscard]] inline MassFlow grams_per_day(double v) { return units::grams(v) / units::days(1); }
[[nodiscard]] inline double in_kilograms_per_second(MassFlow m) { return m.value(); }
[[nodiscard]] inline double in_grams_per_day(MassFlow m) { return m.value() * 1e3 * 86400.0; }

// A gas with constant heats: the ratio k, and kilograms a mole.
struct PerfectGas {
  double heat_ratio = 1.289;               // CO2 near 15 C
  double kilograms_per_mole = 44.0095e-3;  // CO2
};

// p*/p0 at and below which an opening is choked.
[[nodiscard]] double critical_pressure_ratio(const PerfectGas& gas = {});
// The gauge pressure above which a leak to `ambient` is choked.
[[nodiscard]] units::AbsolutePressure choked_above(units::AbsolutePressure ambient,
                                                   const PerfectGas& gas = {});

struct NozzleFlow {
  bool choked = false;
  double mach = 0;  // at the throat
  units::Temperature temperature;
  units::Velocity velocity;
  units::Density density;
  MassFlow flow;
};
// Isentropic flow from rest at `upstream` through a round converging opening of `bore`
// to `downstream`, not above it. 1e3 to 5e6 Pa, 200 to 1000 K, bore up to 1 m.
[[nodiscard]] Result<NozzleFlow> nozzle_flow(units::AbsolutePressure upstream, units::Temperature,
                                             units::AbsolutePressure downstream, units::Length bore,
                                             const PerfectGas& gas = {});

// How hard gas at `inside` is driven out, on a scale of its own for each law:
// only the ratio of two of one law means anything, that of their molar flows.
// 0 at or below ambient. Unchecked, for solvers.
[[nodiscard]] double leak_drive(LeakLaw, units::AbsolutePressure inside, units::Temperature,
                                units::AbsolutePressure ambient);

// What a leak of `flow` of CO2 at one state is at another, by the law.
struct LeakState {
  units::AbsolutePressure inside;
  units::Temperature temperature;
};
// Refuses states outside gas_pressure_range and gas_temperature_range, and a
// known state that isn't above ambient (nothing leaks there).
[[nodiscard]] Result<MassFlow> leak_at(LeakLaw, MassFlow flow, const LeakState& known,
                                       const LeakState& asked, units::AbsolutePressure ambient);

}  // namespace ullage::physics
