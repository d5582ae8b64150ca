// SPDX-License-Identifier: GPL-3.0-or-later
//
// Hold tests of kegs with beer in them.
#include "core/physics/hold_beer.h"

#include <gtest/gtest.h>

#include <cmath>

#include "core/physics/equilibrium.h"
#include "tests/physics/hold_cases.h"

namespace ullage::physics {
namespace {

using namespace units;
using cases::held_keg;
using cases::hold_reading;

HoldTest full_keg(std::vector<HoldReading> readings) {
  HoldTest test = held_keg(std::move(readings));
  test.gas_space = litres(1.0);
  return test;
}

BeerInside beer_of(double litres_of_beer, double volumes, double error) {
  return {litres(litres_of_beer),
          Estimate<Co2Volumes>(volumes_of_co2(volumes)).with({"CO2 at start"}, error),
          LogEstimate<Duration>(days(4), 2, {"uptake"}),
          {"equation"}};
}

// Fresh beer under 30 psi, gas off: it falls because the beer drinks it.
TEST(HoldWithBeer, BeerThatDrinksIsNoLeak) {
  for (const double read : {25.0, 15.0, 5.0}) {
    const auto out = judge_hold_with_beer(
        full_keg({hold_reading(0, 30, 4), hold_reading(24, read, 4)}), beer_of(18.6, 0.9, 0.2));
    ASSERT_TRUE(out);
    EXPECT_EQ(out->verdict, HoldVerdict::cant_tell) << read;
    EXPECT_EQ(out->reason, HoldReason::absorption) << read;
  }
}

// A full keg at rest at 13 psi that reads 11 psi a day later
// is inside the errors of one dial and one thermometer.
TEST(HoldWithBeer, TwoPsiInADayOnAFullKegTellsNothing) {
  const auto rest = equilibrium_co2({gauge_psi(13), sea_level()}, celsius(4));
  const auto out = judge_hold_with_beer(full_keg({hold_reading(0, 13, 4), hold_reading(24, 11, 4)}),
                                        beer_of(18.6, rest->count(), 0.2));
  ASSERT_TRUE(out);
  EXPECT_EQ(out->verdict, HoldVerdict::cant_tell);
  EXPECT_EQ(out->reason, HoldReason::absorption);
}

// Over two months the sum of beer and headspace tells: 13 to 3 psi at 4 C is 0.6
// volumes of 18.6 L, some 22 g.
TEST(HoldWithBeer, AMonthsFallOfABarIsALeak) {
  const auto rest = equilibrium_co2({gauge_psi(13), sea_level()}, celsius(4));
  HoldTest test = full_keg({hold_reading(0, 13, 4)});
  for (int week = 1; week <= 8; ++week)
    test.readings.push_back(hold_reading(week * 168, 13 - 10.0 * week / 8, 4));
  const auto out = judge_hold_with_beer(test, beer_of(18.6, rest->count(), 0.15), grams(0.2));
  ASSERT_TRUE(out);
  EXPECT_EQ(out->verdict, HoldVerdict::leaks);
  // 0.4 g a day is under the usual limit of 2.
  const auto usual = judge_hold_with_beer(test, beer_of(18.6, rest->count(), 0.15));
  ASSERT_TRUE(usual);
  EXPECT_EQ(usual->verdict, HoldVerdict::holds);
  const double slope = 1.5 / 14.696;  // volumes a psi at 4 C: 1.5 at 1 atm
  const double grams_lost = 10 * slope * 18.6 * 1.9768 + 10 * 0.13;
  EXPECT_NEAR(in_grams(out->leak_per_day.value()) * 56, grams_lost, 0.15 * grams_lost);
}

// A keg at rest that stays there for weeks holds, by the same sum.
TEST(HoldWithBeer, AtRestForWeeksHolds) {
  const auto rest = equilibrium_co2({gauge_psi(13), sea_level()}, celsius(4));
  const auto out =
      judge_hold_with_beer(full_keg({hold_reading(0, 13, 4), hold_reading(24 * 21, 13, 4)}),
                           beer_of(18.6, rest->count(), 0.1));
  ASSERT_TRUE(out);
  EXPECT_NEAR(in_psi(out->expected), 13, 0.01);
  EXPECT_EQ(out->verdict, HoldVerdict::holds);
}

TEST(HoldWithBeer, RefusesNonsense) {
  const HoldTest test = full_keg({hold_reading(0, 13, 4), hold_reading(24, 11, 4)});
  EXPECT_EQ(judge_hold_with_beer(test, beer_of(0, 2, 0.1)).error().subject, Subject::beer_volume);
  EXPECT_EQ(judge_hold_with_beer(test, beer_of(18, std::nan(""), 0.1)).error().subject,
            Subject::co2);
  BeerInside still = beer_of(18, 2, 0.1);
  still.resting = LogEstimate<Duration>(seconds(0), 2, {"uptake"});
  EXPECT_EQ(judge_hold_with_beer(test, still).error().subject, Subject::time_constant);
}

}  // namespace
}  // namespace ullage::physics
