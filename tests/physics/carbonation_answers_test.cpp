// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/physics/carbonation_answers.h"

#include <gtest/gtest.h>

#include <cmath>

#include "tests/physics/keg_cases.h"

namespace ullage::physics {
namespace {

using namespace units;
using cases::dial;
using cases::exactly;
using cases::soda_keg;

CarbonationModel answers_model(const CarbonationHistory& h) {
  auto m = CarbonationModel::make(h, cases::rates());
  EXPECT_TRUE(m.has_value());
  return m.value();
}

TEST(Drift, NoneAtThePressureThatHoldsIt) {
  const auto m = answers_model(soda_keg(3, {{hours(0), GasOn{exactly(12)}}}));
  const auto d = drift_at(m, exactly(12), days(60), days(14));
  ASSERT_TRUE(d);
  EXPECT_NEAR(d->change.value().count(), 0, 0.002);
  // Both ends hang on the same dial, weather and equation.
  EXPECT_LT(d->change.half_width(), 0.2 * d->now.half_width());
}

// By hand: 12 psi holds 2.58 volumes at 3 C, 8 psi 2.18; over two weeks at a time
// constant of 4 days 97 % of the way, once the headspace has been let down.
TEST(Drift, FallsTowardsALowerPressureOnceVented) {
  const auto m = answers_model(soda_keg(3, {{hours(0), GasOn{exactly(12)}}}));
  const double high = equilibrium_co2(GasAbove{gauge_psi(12), sea_level()}, celsius(3))->count();
  const double low = equilibrium_co2(GasAbove{gauge_psi(8), sea_level()}, celsius(3))->count();
  const auto vented = drift_at(m, exactly(8), days(60), days(14), BeforeServing::vented);
  const auto kept = drift_at(m, exactly(8), days(60), days(14));
  ASSERT_TRUE(vented && kept);
  EXPECT_LT(vented->change.value().count(), 0);
  // A full keg's small headspace comes back up: it does not get down to `low`.
  EXPECT_GT(vented->then.value().count(), low);
  EXPECT_LT(vented->then.value().count(), high);
  EXPECT_NEAR(kept->change.value().count(), 0, 0.01) << "lowering does not vent";
}

TEST(Drift, RisesTowardsAHigherPressure) {
  const auto m = answers_model(soda_keg(3, {{hours(0), GasOn{dial(8)}}}));
  const double high = equilibrium_co2(GasAbove{gauge_psi(12), sea_level()}, celsius(3))->count();
  const auto d = drift_at(m, dial(12), days(60), days(4));
  ASSERT_TRUE(d);
  const double start = d->now.value().count();
  // A full keg at the default's time constant: 1 - 1/e of the way in four days.
  const double tau = in_days(cases::rates().resting.median());
  EXPECT_NEAR(d->then.value().count(), start + (high - start) * (1 - std::exp(-4 / tau)), 0.005);
  EXPECT_NEAR(d->in_the_end.value().count(), high, 0.002);
}

TEST(Drift, RefusesNoTimeAtAll) {
  const auto m = answers_model(soda_keg(3, {{hours(0), GasOn{exactly(12)}}}));
  EXPECT_FALSE(drift_at(m, exactly(12), days(1), hours(0)));
  EXPECT_FALSE(drift_at(m, exactly(12), days(-1), days(1)));
  EXPECT_FALSE(drift_at(m, exactly(500), days(1), days(1)));
  EXPECT_FALSE(drift_at(m, exactly(12), days(1), days(std::nan(""))));
}

TEST(EquilibriumAnswer, GivesASecondOpinion) {
  const auto a = equilibrium_answer({gauge_psi(11), sea_level()}, celsius(3));
  ASSERT_TRUE(a && a->second);
  EXPECT_EQ(a->by, Equation::fitted_chart);
  EXPECT_EQ(a->second_by, Equation::exponential);
  EXPECT_FALSE(a->instead_because);
  EXPECT_LT(std::abs(a->co2.count() - a->second->count()), 0.1);
}

// The polynomial is printed for 2 to 3 volumes: 25 psi at 1 C holds 3.9.
TEST(EquilibriumAnswer, SwitchesOutOfRangeAndSaysWhy) {
  const auto a = equilibrium_answer({gauge_psi(25), sea_level()}, celsius(1), Equation::polynomial);
  ASSERT_TRUE(a && a->instead_because);
  EXPECT_EQ(a->by, Equation::fitted_chart);
  EXPECT_EQ(a->instead_because->subject, Subject::co2);
  const auto warm =
      equilibrium_answer({gauge_psi(30), sea_level()}, celsius(22), Equation::polynomial);
  ASSERT_TRUE(warm && warm->instead_because);
  EXPECT_EQ(warm->instead_because->subject, Subject::co2_above_water);
  EXPECT_EQ(warm->by, Equation::fitted_chart);
}

TEST(EquilibriumAnswer, RefusesWhereNoneCanTell) {
  const auto a = equilibrium_answer({gauge_psi(11), sea_level()}, celsius(90));
  ASSERT_FALSE(a);
  EXPECT_EQ(a.error().subject, Subject::temperature);
  EXPECT_FALSE(equilibrium_answer({gauge_psi(500), sea_level()}, celsius(3)));
}

}  // namespace
}  // namespace ullage::physics
