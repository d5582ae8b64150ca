// SPDX-License-Identifier: GPL-3.0-or-later
//
// The piecewise solution against an adaptive Runge-Kutta integrator that knows
// nothing of pieces: moles of CO2 and inert gas, the valve as a stiff one-way
// inflow, steps chosen by error. What is shared is only the equilibrium line and
// the virial coefficient.
#include <gtest/gtest.h>

#include <algorithm>
#include <array>
#include <boost/numeric/odeint.hpp>
#include <cmath>

#include "core/physics/carbonation_solver.h"
#include "core/physics/co2_gas.h"
#include "core/physics/equilibrium.h"
#include "tests/physics/keg_cases.h"

namespace ullage::physics {
namespace {

using namespace units;
using cases::exactly;

// Short against the uptake, which rocking makes hundreds of times faster.
constexpr double valve_seconds = 2.0;
constexpr double valve_seconds_rocking = 0.01;
constexpr double moles_per_volume = grams_per_litre_per_volume / co2_kilograms_per_mole;

// beer CO2 mol/m3, headspace CO2 mol, headspace inert mol, beer temperature K
using State = std::array<double, 4>;

struct Reference {
  double beer, headspace, first_beer, resting, rocking, cooling;
  double place;
  double rock_until = -1;
  std::optional<double> set_pa;
  double supply = 1;

  // Under mixed gas the supply's share weights the virial coefficient.
  [[nodiscard]] double virial(const State& x) const {
    const double share = supply < 1 ? supply : x[1] / (x[1] + x[2]);
    return co2_second_virial(kelvin(x[3])) * share * share;
  }
  [[nodiscard]] double pressure(const State& x) const {
    const double n = x[1] + x[2];
    return gas_constant * x[3] * n / (headspace - virial(x) * n);
  }
  void operator()(const State& x, State& rate, double t) const {
    const double p_co2 = pressure(x) * x[1] / (x[1] + x[2]);
    const SolubilityLine line = fitted_chart_line(kelvin(x[3]));
    const double rest =
        (line.volumes_per_pascal * p_co2 + line.intercept_volumes) * moles_per_volume;
    const double k = t < rock_until ? 1 / rocking : first_beer / beer / resting;
    rate[0] = k * (rest - x[0]);
    double inflow = 0;
    if (set_pa) {
      const double full = *set_pa * headspace / (gas_constant * x[3] + virial(x) * *set_pa);
      inflow = std::max(
          0.0, (full - x[1] - x[2]) / (t < rock_until ? valve_seconds_rocking : valve_seconds));
    }
    rate[1] = supply * inflow - beer * rate[0];
    rate[2] = (1 - supply) * inflow;
    rate[3] = (place - x[3]) / cooling;
  }

  void apply(const Step& step, State& x) {
    if (const auto* gas = get_if<GasOn>(&step.what)) {
      set_pa = in_pascals(gas->pressure.value()) + pascals_per_atmosphere;
      supply = gas->co2.count();
    } else if (holds_alternative<GasOff>(step.what)) {
      set_pa.reset();
    } else if (const auto* vent = get_if<Vented>(&step.what)) {
      const double to = in_pascals(vent->to) + pascals_per_atmosphere;
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

  void advance(State& x, double from, double to) const {
    namespace odeint = boost::numeric::odeint;
    if (to <= from) return;
    odeint::integrate_adaptive(
        odeint::make_controlled<odeint::runge_kutta_dopri5<State>>(1e-10, 1e-9), std::cref(*this),
        x, from, to, std::min(1.0, to - from));
  }
};

void expect_agreement(const CarbonationHistory& history, double days_long) {
  const CarbonationRates rates = cases::rates();
  Reference reference{in_cubic_metres(history.beer),
                      in_cubic_metres(history.brimful - history.beer),
                      in_cubic_metres(history.beer),
                      in_seconds(rates.resting.median()),
                      in_seconds(rates.rocking.median()),
                      in_seconds(rates.cooling.median()),
                      in_kelvin(history.start.value()),
                      -1,
                      std::nullopt,
                      1};
  const Duration end = days(days_long);
  ASSERT_FALSE(check_history(history, rates, end));
  const Trajectory ours = Trajectory::solve(history, rates, {}, end);
  State x{history.initial.value().count() * moles_per_volume, 0, 0, reference.place};
  const double start_pa = in_pascals(history.headspace) + pascals_per_atmosphere;
  const double share = history.headspace_co2.count();
  const double total =
      start_pa * reference.headspace /
      (gas_constant * x[3] + co2_second_virial(kelvin(x[3])) * share * share * start_pa);
  x[1] = share * total;
  x[2] = (1 - share) * total;

  double now = 0;
  std::size_t next = 0;
  constexpr int checks = 40;
  for (int i = 1; i <= checks; ++i) {
    // Off the round hours, so that no check falls on a step.
    const double until = in_seconds(end) * (i - 0.37) / checks;
    while (next < history.steps.size() && in_seconds(history.steps[next].at) <= until) {
      reference.advance(x, now, in_seconds(history.steps[next].at));
      now = in_seconds(history.steps[next].at);
      reference.apply(history.steps[next], x);
      ++next;
    }
    // Rocking's end is a jump in the rate: stop there too.
    if (reference.rock_until > now && reference.rock_until < until) {
      reference.advance(x, now, reference.rock_until);
      now = reference.rock_until;
    }
    reference.advance(x, now, until);
    now = until;
    const KegState state = ours.at(seconds(until));
    EXPECT_NEAR(state.co2.count(), x[0] / moles_per_volume, 0.001) << until / 86400 << " d";
    EXPECT_NEAR(in_psi(state.headspace), reference.pressure(x) / pascals_per_psi, 0.05)
        << until / 86400 << " d";
    EXPECT_NEAR(in_kelvin(state.temperature), x[3], 0.006) << until / 86400 << " d";
  }
}

TEST(AgainstIntegrator, BurstThenServingFromAWarmStart) {
  expect_agreement(cases::soda_keg(20, {{hours(0), PlaceChanged{cases::thermometer(2)}},
                                        {hours(0), GasOn{exactly(30)}},
                                        {hours(48), GasOn{exactly(11)}}}),
                   10);
}

TEST(AgainstIntegrator, LoweredWhileBeerStillTakesGas) {
  expect_agreement(
      cases::soda_keg(2, {{hours(0), GasOn{exactly(35)}}, {hours(20), GasOn{exactly(20)}}}), 8);
}

TEST(AgainstIntegrator, OverfullThenVentedToServing) {
  expect_agreement(cases::soda_keg(2, {{hours(0), GasOn{exactly(40)}},
                                       {hours(90), Vented{gauge_psi(0)}},
                                       {hours(90.1), GasOn{exactly(8)}},
                                       {hours(130), Vented{gauge_psi(0)}}}),
                   9);
}

TEST(AgainstIntegrator, GasOffAndWarmedThenCooled) {
  expect_agreement(cases::soda_keg(3, {{hours(0), GasOn{exactly(15)}},
                                       {hours(60), GasOff{}},
                                       {hours(60), PlaceChanged{cases::thermometer(22)}},
                                       {hours(110), PlaceChanged{cases::thermometer(2)}},
                                       {hours(150), GasOn{exactly(12)}}}),
                   10);
}

TEST(AgainstIntegrator, WarmingPastEquilibriumShutsTheValve) {
  expect_agreement(cases::soda_keg(2, {{hours(0), GasOn{exactly(12)}},
                                       {days(12), PlaceChanged{cases::thermometer(14)}},
                                       {days(15), PlaceChanged{cases::thermometer(2)}}}),
                   20);
}

TEST(AgainstIntegrator, MixedGasLeavesNitrogenBehind) {
  CarbonationHistory h = cases::soda_keg(4, {{hours(0), GasOn{exactly(30), mole_fraction(0.3)}},
                                             {hours(50), BeerDrawn{litres(6)}},
                                             {hours(100), GasOn{exactly(25), mole_fraction(0.6)}}});
  expect_agreement(h, 9);
}

TEST(AgainstIntegrator, AirLeftInTheHeadspace) {
  CarbonationHistory h = cases::soda_keg(4, {{hours(0), GasOn{exactly(12)}}});
  h.headspace_co2 = mole_fraction(0);
  expect_agreement(h, 9);
}

TEST(AgainstIntegrator, RockedWithGasOnAndThenOff) {
  expect_agreement(cases::soda_keg(2, {{hours(0), GasOn{exactly(30)}},
                                       {hours(1), Rocked{minutes(8)}},
                                       {hours(2), GasOff{}},
                                       {hours(3), Rocked{minutes(5)}},
                                       {hours(8), GasOn{exactly(11)}}}),
                   3);
}

TEST(AgainstIntegrator, DrawnDownOverAWeek) {
  std::vector<Step> steps{{hours(0), GasOn{exactly(12)}}};
  for (int i = 1; i <= 14; ++i) steps.push_back({hours(12 * i), BeerDrawn{litres(1.2)}});
  expect_agreement(cases::soda_keg(3, std::move(steps)), 8);
}

// The kind of history a busy keg has: its place read daily, rising and falling, the
// regulator moved now and then, a pour a day. The check valve opens and shuts daily.
TEST(AgainstIntegrator, SixBusyWeeks) {
  std::vector<Step> steps;
  for (int d = 0; d < 42; ++d) {
    steps.push_back(
        {days(d), PlaceChanged{Estimate<Temperature>(celsius(4 + 1.5 * std::sin(1.3 * d)))}});
    if (d % 10 == 0) steps.push_back({days(d), GasOn{exactly(11 + d % 3)}});
    steps.push_back({days(d + 0.5), BeerDrawn{litres(0.25)}});
  }
  expect_agreement(cases::soda_keg(12, std::move(steps)), 42.5);
}

}  // namespace
}  // namespace ullage::physics
