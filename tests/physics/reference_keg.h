// SPDX-License-Identifier: GPL-3.0-or-later
//
// A keg's CO2 worked out apart from the solver, which it knows nothing of: moles of
// CO2 and inert gas in headspace and beer, step by step in time. What is shared is
// only the equilibrium line and the virial coefficient.
//
//   advance()  adaptive Runge-Kutta, the valve a stiff one-way inflow: as exact as is
//              wanted, a tenth of a second a keg
//   stride()   Runge-Kutta in steps of half an hour, the valve an exact condition (open:
//              the headspace at the set pressure; shut: closed): within 0.002 volumes of
//              advance(), for thousands of kegs
#pragma once

#include <gtest/gtest.h>

#include <algorithm>
#include <array>
#include <boost/numeric/odeint.hpp>
#include <cmath>
#include <optional>

#include "core/physics/carbonation_solver.h"
#include "core/physics/co2_gas.h"
#include "core/physics/equilibrium.h"
#include "core/units/present.h"
#include "tests/physics/keg_cases.h"

namespace ullage::physics::cases {

using namespace units;

// Short against the uptake, which rocking makes hundreds of times faster.
inline constexpr double valve_seconds = 2.0;
inline constexpr double valve_seconds_rocking = 0.01;
inline constexpr double moles_per_volume = grams_per_litre_per_volume / co2_kilograms_per_mole;

// beer CO2 mol/m3, headspace CO2 mol, headspace inert mol, beer temperature K
using ReferenceState = std::array<double, 4>;

struct ReferenceKeg {
  double beer, headspace, first_beer, resting, rocking, cooling;
  double place;
  double rock_until = -1;
  std::optional<double> set_pa;
  double supply = 1;
  double ambient_pa = pascals_per_atmosphere;
  double equation_off = 0;  // volumes, by which the equilibrium line is off

  // With the history's values and the medians of the rates.
  static ReferenceKeg of(const CarbonationHistory& history, const CarbonationRates& rates) {
    return {in_cubic_metres(history.beer),      in_cubic_metres(history.brimful - history.beer),
            in_cubic_metres(history.beer),      in_seconds(rates.resting.median()),
            in_seconds(rates.rocking.median()), in_seconds(rates.cooling.median()),
            in_kelvin(history.start.value())};
  }
  [[nodiscard]] ReferenceState start(const CarbonationHistory& history) const {
    const double kelvins = in_kelvin(history.start.value());
    const double pa = in_pascals(history.headspace) + ambient_pa;
    const double share = history.headspace_co2.count();
    const double total =
        pa * headspace /
        (gas_constant * kelvins + co2_second_virial(kelvin(kelvins)) * share * share * pa);
    return {history.initial.value().count() * moles_per_volume, share * total, (1 - share) * total,
            kelvins};
  }

  // Under mixed gas the supply's share weights the virial coefficient.
  [[nodiscard]] double virial(const ReferenceState& x) const {
    const double share = supply < 1 ? supply : x[1] / (x[1] + x[2]);
    return co2_second_virial(kelvin(x[3])) * share * share;
  }
  [[nodiscard]] double pressure(const ReferenceState& x) const {
    const double n = x[1] + x[2];
    return gas_constant * x[3] * n / (headspace - virial(x) * n);
  }
  // Moles in the headspace at the set pressure.
  [[nodiscard]] double full(const ReferenceState& x) const {
    return present(set_pa) * headspace / (gas_constant * x[3] + virial(x) * present(set_pa));
  }
  void operator()(const ReferenceState& x, ReferenceState& rate, double t) const {
    const double p_co2 = pressure(x) * x[1] / (x[1] + x[2]);
    const SolubilityLine line = fitted_chart_line(kelvin(x[3]));
    const double rest = (line.volumes_per_pascal * p_co2 + line.intercept_volumes + equation_off) *
                        moles_per_volume;
    const double k = t < rock_until ? 1 / rocking : first_beer / beer / resting;
    rate[0] = k * (rest - x[0]);
    double inflow = 0;
    if (set_pa) {
      inflow = std::max(
          0.0, (full(x) - x[1] - x[2]) / (t < rock_until ? valve_seconds_rocking : valve_seconds));
    }
    rate[1] = supply * inflow - beer * rate[0];
    rate[2] = (1 - supply) * inflow;
    rate[3] = (place - x[3]) / cooling;
  }

  void apply(const Step& step, ReferenceState& x) {
    if (const auto* gas = get_if<GasOn>(&step.what)) {
      set_pa = in_pascals(gas->pressure.value()) + ambient_pa;
      supply = gas->co2.count();
    } else if (holds_alternative<GasOff>(step.what)) {
      set_pa.reset();
    } else if (const auto* vent = get_if<Vented>(&step.what)) {
      const double to = in_pascals(vent->to) + ambient_pa;
      if (pressure(x) > to) {
        const double kept = to * headspace / (gas_constant * x[3] + virial(x) * to) / (x[1] + x[2]);
        x[1] *= kept;
        x[2] *= kept;
      }
    } else if (const auto* moved = get_if<PlaceChanged>(&step.what)) {
      place = in_kelvin(moved->temperature.value());
    } else if (const auto* rocked = get_if<Rocked>(&step.what)) {
      rock_until = in_seconds(step.at) + in_seconds(rocked->how_long);
    } else if (const auto* drawn = get_if<BeerDrawn>(&step.what)) {
      beer -= in_cubic_metres(drawn->beer);
      headspace += in_cubic_metres(drawn->beer);
    } else {
      FAIL() << "a step the reference does not know";
    }
  }

  void advance(ReferenceState& x, double from, double to) const {
    namespace odeint = boost::numeric::odeint;
    if (to <= from) return;
    odeint::integrate_adaptive(
        odeint::make_controlled<odeint::runge_kutta_dopri5<ReferenceState>>(1e-10, 1e-9),
        std::cref(*this), x, from, to, std::min(1.0, to - from));
  }

  // --- strides

  void stride(ReferenceState& x, double from, double to) const {
    if (to <= from) return;  // acts of one moment: no gas flows between them
    while (from < to) {
      const bool shaken = from < rock_until;
      double step = std::min(shaken ? 15.0 : 1800.0, to - from);
      if (shaken) step = std::min(step, rock_until - from);
      if (set_pa && missing(x) > 0) fill(x);
      const bool open = set_pa && keeps_flowing(x, from);
      runge_kutta(x, step, {from + 0.5 * step, open});
      if (open) fill(x);  // what rounding left
      from += step;
    }
    if (set_pa && missing(x) > 0) fill(x);
  }

 private:
  struct Stride {
    double middle;  // decides whether it is rocked
    bool open;
  };
  [[nodiscard]] double missing(const ReferenceState& x) const { return full(x) - x[1] - x[2]; }
  void fill(ReferenceState& x) const {
    const double more = missing(x);
    x[1] += supply * more;
    x[2] += (1 - supply) * more;
  }
  // What flows in while the headspace stays at the set pressure, mol/s.
  [[nodiscard]] double inflow(const ReferenceState& x, const ReferenceState& shut_rate) const {
    ReferenceState warmer = x;
    warmer[3] += shut_rate[3];
    return full(warmer) - full(x) + beer * shut_rate[0];
  }
  [[nodiscard]] ReferenceState shut_rate(const ReferenceState& x, double t) const {
    ReferenceKeg shut = *this;
    shut.set_pa.reset();
    ReferenceState rate{};
    shut(x, rate, t);
    return rate;
  }
  [[nodiscard]] bool keeps_flowing(const ReferenceState& x, double t) const {
    return missing(x) >= -1e-9 * full(x) && inflow(x, shut_rate(x, t)) > 0;
  }
  [[nodiscard]] ReferenceState slope(const ReferenceState& x, const Stride& s) const {
    ReferenceState rate = shut_rate(x, s.middle);
    if (!s.open) return rate;
    const double in = inflow(x, rate);
    rate[1] += supply * in;
    rate[2] += (1 - supply) * in;
    return rate;
  }
  static ReferenceState moved(const ReferenceState& x, const ReferenceState& slope, double by) {
    return {x[0] + by * slope[0], x[1] + by * slope[1], x[2] + by * slope[2], x[3] + by * slope[3]};
  }
  void runge_kutta(ReferenceState& x, double h, const Stride& s) const {
    const ReferenceState a = slope(x, s);
    const ReferenceState b = slope(moved(x, a, h / 2), s);
    const ReferenceState c = slope(moved(x, b, h / 2), s);
    const ReferenceState d = slope(moved(x, c, h), s);
    for (std::size_t i = 0; i < x.size(); ++i) x[i] += h / 6 * (a[i] + 2 * b[i] + 2 * c[i] + d[i]);
  }
};

}  // namespace ullage::physics::cases
