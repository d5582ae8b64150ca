// SPDX-License-Identifier: GPL-3.0-or-later
//
// Ways down from too much CO2.
#include "core/physics/rescue.h"

#include <gtest/gtest.h>
#include <rapidcheck/gtest.h>

#include <cmath>

#include "core/physics/atmosphere.h"
#include "core/physics/co2_gas.h"
#include "core/physics/equilibrium.h"

namespace ullage::physics {
namespace {

using namespace units;

OverCarbonated over(double beer_litres, double volumes, double target, double celsius_now = 4) {
  return {litres(19.9),
          Estimate<Volume>(litres(beer_litres)).with({"level"}, 0.02 * beer_litres * 1e-3),
          Estimate<Co2Volumes>(volumes_of_co2(volumes)).with({"CO2"}, 0.1),
          Estimate<Temperature>(celsius(celsius_now)).with({"thermometer"}, 0.5),
          sea_level(),
          volumes_of_co2(target),
          LogEstimate<Duration>(days(4), 2, {"uptake"})};
}

// Worked out apart from this program, by the closed mass balance of an ideal gas: a
// full 19 L keg at 4 C from 3.7 to 2.5 volumes takes 20 vents, a half full one 2.
// The real gas holds 2 % more a litre, so one vent fewer may do.
TEST(Rescue, VentsOfAFullAndOfAHalfFullKeg) {
  const auto full = vents_to_target(over(18.9, 3.7, 2.5));
  const auto half = vents_to_target(over(9.95, 3.7, 2.5));
  ASSERT_TRUE(full && half);
  EXPECT_GE(full->vents, 19);
  EXPECT_LE(full->vents, 20);
  EXPECT_EQ(half->vents, 2);
  ASSERT_TRUE(full->most);
  EXPECT_LT(full->fewest, full->vents);
  EXPECT_GT(*full->most, full->vents);
}

// What was vented is what the keg no longer has.
TEST(Rescue, GasVentedIsGasLost) {
  const OverCarbonated o = over(18.9, 3.7, 2.5);
  const auto plan = vents_to_target(o);
  ASSERT_TRUE(plan);
  const VentStep& last = plan->steps.back();
  const double from_beer = (3.7 - last.after.count()) * 18.9 * 1.9768;
  const double from_head =
      in_grams(co2_mass(
          *gas_amount(plan->steps.front().before.at_ambient(o.ambient), litres(1), celsius(4)))) -
      in_grams(co2_mass(*gas_amount(last.at_rest.at_ambient(o.ambient), litres(1), celsius(4))));
  EXPECT_NEAR(in_grams(plan->vented), from_beer + from_head, 0.02);
}

// The same grams with their error: the last vent stops at the target, so the arithmetic
// is the beer's fall to it and the headspace's.
TEST(Rescue, TheGasToLetOutHasTheErrorsOfTheKeg) {
  const OverCarbonated o = over(18.9, 3.7, 2.5);
  const auto plan = vents_to_target(o);
  ASSERT_TRUE(plan);
  const auto end = end_of_vents(o, *plan);
  ASSERT_TRUE(end);
  const double from_beer = (3.7 - 2.5) * 18.9 * 1.9768;
  const double head = in_grams(co2_mass(
      *gas_amount(plan->steps.front().before.at_ambient(o.ambient), litres(1), celsius(4))));
  EXPECT_GT(in_grams(end->vented.value()), from_beer);
  EXPECT_LT(in_grams(end->vented.value()), from_beer + head);
  EXPECT_LE(in_grams(end->vented.value()), in_grams(plan->vented));
  // Each of the same vents lets out a headspace of gas, and that is 1.0 L give or take
  // the 2 % of 18.9 L: 38 %, and 0.1 of 3.7 volumes more or less pressure (3 %).
  const double share = end->vented.half_width() * 1e3 / in_grams(end->vented.value());
  EXPECT_GT(share, 0.25);
  EXPECT_LT(share, 0.45);
}

// Warm beer gives more at each vent; a vent to above the target's pressure, none.
TEST(Rescue, WarmTakesFewerVents) {
  const auto cold = vents_to_target(over(18.9, 3.7, 2.5, 4));
  const auto warm = vents_to_target(over(18.9, 3.7, 2.5, 18));
  ASSERT_TRUE(cold && warm);
  EXPECT_LT(warm->vents, 0.65 * cold->vents);
  EXPECT_EQ(vents_to_target(over(18.9, 3.7, 2.5), gauge_psi(20)).error().subject,
            Subject::gauge_pressure);
}

// A litre of headspace over 18.9 of beer holds about a thirtieth of what the beer
// takes for the same pressure, so the pressure is back that much faster.
TEST(Rescue, AFullKegComesBackInHours) {
  const auto full = vents_to_target(over(18.9, 3.7, 2.5));
  const auto half = vents_to_target(over(9.95, 3.7, 2.5));
  ASSERT_TRUE(full && half);
  EXPECT_GT(in_hours(full->wait.median()), 5);
  EXPECT_LT(in_hours(full->wait.median()), 16);
  EXPECT_GT(in_days(half->wait.median()), 3);
  EXPECT_EQ(full->wait.factor(), 2);
}

TEST(Rescue, HeldAtTheTargetsPressure) {
  const auto plan = hold_at_target(over(18.9, 3.7, 2.5));
  ASSERT_TRUE(plan);
  EXPECT_NEAR(in_psi(plan->setting),
              in_psi(*equilibrium_gauge(volumes_of_co2(2.5), celsius(4), sea_level())), 1e-9);
  EXPECT_NEAR(in_days(plan->within.median()), 4 * std::log(12.0), 1e-9);
}

// Served down: of n moles in keg and headspace, what left is what was poured.
TEST(Rescue, ServedDownWithTheGasOff) {
  const auto plan = serve_to_target(over(18.9, 3.0, 2.5));
  ASSERT_TRUE(plan);
  EXPECT_GT(in_litres(plan->drawn), 2);
  EXPECT_LT(in_litres(plan->drawn), 8);
  EXPECT_NEAR(in_litres(plan->drawn + plan->left), 18.9, 1e-9);
  // Poured beer held between 3.0 and 2.5: the balance closes between those two.
  const double head_start = in_moles(
      *gas_amount(*equilibrium_pressure(volumes_of_co2(3.0), celsius(4)), litres(1.0), celsius(4)));
  const double head_end =
      in_moles(*gas_amount(*equilibrium_pressure(volumes_of_co2(2.5), celsius(4)),
                           litres(19.9) - plan->left, celsius(4)));
  const double poured =
      44.92e-3 * (3.0 * 18.9 - 2.5 * in_litres(plan->left)) + head_start - head_end;
  EXPECT_GT(poured, 44.92e-3 * 2.5 * in_litres(plan->drawn));
  EXPECT_LT(poured, 44.92e-3 * 3.0 * in_litres(plan->drawn));
}

TEST(Rescue, RefusesWhatNeedsNone) {
  EXPECT_EQ(vents_to_target(over(18.9, 2.4, 2.5)).error().subject, Subject::co2);
  EXPECT_EQ(hold_at_target(over(18.9, std::nan(""), 2.5)).error().subject, Subject::co2);
  EXPECT_EQ(vents_to_target(over(19.9, 3.7, 2.5)).error().subject, Subject::beer_volume);
  EXPECT_EQ(serve_to_target(over(18.9, 3.7, 2.5, 90)).error().subject, Subject::temperature);
  OverCarbonated high = over(18.9, 3.7, 2.5);
  high.ambient = pascals_absolute(std::nan(""));
  EXPECT_EQ(vents_to_target(high).error().subject, Subject::ambient_pressure);
}

double over_in(double low, double high) {
  return low + (high - low) * *rc::gen::inRange(0, 1000001) / 1e6;
}

RC_GTEST_PROP(RescueProperty, EachVentTakesLessAndReachesTheTarget, ()) {
  const double target = over_in(2.0, 3.0);
  const double t = over_in(2, 12);
  const auto plan = vents_to_target(over(over_in(4, 18.5), target + over_in(0.2, 1.0), target, t));
  RC_ASSERT(plan.has_value());
  double before = 9;
  for (const VentStep& s : plan->steps) {
    RC_ASSERT(s.after.count() < before);
    RC_ASSERT(s.at_rest < s.before);
    before = s.after.count();
  }
  RC_ASSERT(plan->steps.back().after.count() <= target);
  RC_ASSERT(plan->fewest <= plan->vents);
  if (plan->most) RC_ASSERT(*plan->most >= plan->vents);
}

// The last vent stops where the beer ends on the target; the whole course's error
// is carried: what the beer is too much of to begin with, it keeps a part of.
RC_GTEST_PROP(RescueProperty, TheLastVentEndsOnTheTarget, ()) {
  const double target = over_in(2.0, 3.0);
  const OverCarbonated o =
      over(over_in(4, 18.5), target + over_in(0.2, 1.0), target, over_in(2, 12));
  const auto plan = vents_to_target(o);
  RC_ASSERT(plan.has_value());
  const auto end = end_of_vents(o, *plan);
  RC_ASSERT(end.has_value());
  RC_ASSERT(std::abs(end->co2.value().count() - target) < 1e-4);
  RC_ASSERT(end->last_to >= gauge_psi(0));
  RC_ASSERT(end->last_to <= plan->steps.back().before);
  RC_ASSERT(end->co2.half_width() > 0);
}

TEST(Rescue, WithoutAPlanThereIsNoEnd) {
  EXPECT_EQ(end_of_vents(over(18.9, 3.7, 2.5), VentPlan{}).error().subject, Subject::cycles);
}

RC_GTEST_PROP(ClosedKegProperty, WhatIsPutInIsFoundAgain, ()) {
  const ClosedKeg keg{litres(19.9), litres(over_in(1, 19.5)), celsius(over_in(-2, 25))};
  const auto state = resting_at(keg, volumes_of_co2(over_in(0.8, 2.2)));
  RC_ASSERT(state.has_value());
  const auto total = co2_in_keg(keg, *state);
  RC_ASSERT(total.has_value());
  const auto back = at_rest(keg, *total);
  RC_ASSERT(back.has_value());
  RC_ASSERT(std::abs(back->co2.count() - state->co2.count()) < 1e-6);
}

}  // namespace
}  // namespace ullage::physics
