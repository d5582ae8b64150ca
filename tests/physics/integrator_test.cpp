// SPDX-License-Identifier: GPL-3.0-or-later
//
// The piecewise solution against an adaptive Runge-Kutta integrator that knows
// nothing of pieces: moles of CO2 and inert gas, the valve as a stiff one-way
// inflow, steps chosen by error. What is shared is only the equilibrium line and
// the virial coefficient.
#include <gtest/gtest.h>

#include <cmath>

#include "core/physics/carbonation_solver.h"
#include "tests/physics/reference_keg.h"

namespace ullage::physics {
namespace {

using namespace units;
using cases::exactly;
using cases::moles_per_volume;

void expect_agreement(const CarbonationHistory& history, double days_long) {
  const CarbonationRates rates = cases::rates();
  cases::ReferenceKeg reference = cases::ReferenceKeg::of(history, rates);
  const Duration end = days(days_long);
  ASSERT_FALSE(check_history(history, rates, end));
  const Trajectory ours = Trajectory::solve(history, rates, {}, end);
  cases::ReferenceState x = reference.start(history);

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
  const CarbonationHistory h =
      cases::soda_keg(4, {{hours(0), GasOn{exactly(30), mole_fraction(0.3)}},
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
