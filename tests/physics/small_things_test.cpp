// SPDX-License-Identifier: GPL-3.0-or-later
//
// Cooling, level, purge amounts, alcohol, lines.
#include <gtest/gtest.h>

#include <array>
#include <cmath>

#include "core/physics/gravity.h"
#include "core/physics/keg_cooling.h"
#include "core/physics/level.h"
#include "core/physics/line_volume.h"
#include "core/physics/purge.h"
#include "tests/physics/keg_cases.h"

namespace ullage::physics {
namespace {

using namespace units;

// Common practice, no source: a keg at 9 to 10 C needs over 24 h to reach 3 C.
TEST(Cooling, KegFromTenToThreeTakesOverADay) {
  const auto tau = cooling_time_constant(litres(58.7), {"cooling"});
  ASSERT_TRUE(tau);
  const auto w = time_to_temperature(celsius(9.5), celsius(2), celsius(3), *tau);
  ASSERT_TRUE(w && *w);
  EXPECT_GT(in_hours((*w)->likely), 24.0);
  EXPECT_LT(in_hours((*w)->earliest), 24.0);
  EXPECT_LT(in_hours((*w)->latest), 72.0);
}

TEST(Cooling, FollowsPlacesOneAfterAnother) {
  const std::array places{PlaceTemperature{hours(0), celsius(2)},
                          PlaceTemperature{hours(9), celsius(20)}};
  const auto early = keg_temperature(celsius(20), places, hours(9), hours(9));
  EXPECT_NEAR(in_celsius(*early), 2 + 18 * std::exp(-1.0), 1e-9);
  const auto late = keg_temperature(celsius(20), places, hours(9), hours(200));
  EXPECT_NEAR(in_celsius(*late), 20, 1e-3);
}

TEST(Cooling, NeverBeyondThePlace) {
  const auto tau = cooling_time_constant(litres(19), {"cooling"});
  EXPECT_FALSE(time_to_temperature(celsius(10), celsius(4), celsius(3), *tau)->has_value());
  EXPECT_FALSE(time_to_temperature(celsius(10), celsius(4), celsius(4), *tau)->has_value());
}

Weighing weighing(double gross_kg) {
  return {Estimate<Mass>(kilograms(gross_kg)).with({"scale: bias"}, 0.3),
          Estimate<Mass>(kilograms(4.5)).with({"K01: tare"}, 0.5),
          specific_gravity(1.010),
          celsius(4),
          litres(19.6),
          gauge_psi(12),
          sea_level()};
}

TEST(LevelByWeight, TakesTheGasOff) {
  // 10 L of beer at 1010 kg/m3 and 9.6 L of CO2 at 26.7 psia, 4 C: 3.6 kg/m3.
  const auto beer = beer_from_weight(weighing(4.5 + 10.10 + 9.6 * 3.6e-3));
  ASSERT_TRUE(beer);
  EXPECT_NEAR(in_litres(beer->value()), 10.0, 0.02);
  EXPECT_NEAR(beer->half_width() * 1e3, std::hypot(0.3, 0.5) / 1.01, 0.02);
  EXPECT_EQ(beer->largest()->source.name, "K01: tare");
}

TEST(LevelByWeight, EmptyWithinErrorIsEmptyAndBeyondIsRefused) {
  const auto empty = beer_from_weight(weighing(4.4));
  ASSERT_TRUE(empty);
  EXPECT_EQ(in_litres(empty->value()), 0.0);
  EXPECT_GT(empty->half_width(), 0.0);
  EXPECT_EQ(beer_from_weight(weighing(3.0)).error().subject, Subject::mass);
  EXPECT_EQ(beer_from_weight(weighing(40.0)).error().subject, Subject::beer_volume);
}

TEST(LevelByGlasses, LossAndFillWiden) {
  const auto start = Estimate<Volume>(litres(19)).with({"fill"}, 0.2e-3);
  const auto left =
      beer_after_glasses(start, {20, us_pints(1), {"fill of glasses"}, {"foam and loss"}});
  ASSERT_TRUE(left);
  const double sold = 20 * 0.473176;
  EXPECT_NEAR(in_litres(left->value()), 19 - sold * 1.05, 1e-3);
  EXPECT_NEAR(left->half_width() * 1e3, std::hypot(0.2, sold * 0.0525, sold * 0.05), 2e-3);
  EXPECT_FALSE(beer_after_glasses(start, {80, us_pints(1), {"f"}, {"l"}}));
}

TEST(LevelByHand, FifteenPercentOfAKeg) {
  const auto beer = beer_from_heft(fraction(0.4), litres(19), {"heft"});
  EXPECT_NEAR(in_litres(beer->value()), 7.6, 1e-9);
  EXPECT_NEAR(beer->half_width() * 1e3, 2.85, 1e-9);
}

// 19 L at 30 psi above 1 atm is 19 L x 2.04 atm more: 73 g, 2 % more as real gas.
TEST(PurgeGas, GramsOfACycle) {
  const Vessel v{litres(19), litres(19), sea_level(), celsius(20)};
  const auto one = purge_by_cycles(v, {1, gauge_psi(30), {}});
  ASSERT_TRUE(one);
  EXPECT_NEAR(in_grams(one->co2_used), 72.5, 2.0);
}

// Pushing 19 L out at little above 1 atm takes about 1.84 g/L x 19 = 35 g; at 5
// psi 47 g. A sheet's 43 g lies between.
TEST(PurgeGas, LiquidPushIsCheapAndClean) {
  const Vessel v{litres(19), litres(19), sea_level(), celsius(20)};
  const auto push = purge_by_liquid(v, {gauge_psi(5)});
  ASSERT_TRUE(push);
  EXPECT_NEAR(in_grams(push->co2_used), 47, 2);
  const auto cycles = purge_by_cycles(v, {5, gauge_psi(30), {}});
  EXPECT_LT(in_grams(push->co2_used), in_grams(cycles->co2_used) / 5);
  EXPECT_LT(in_ppm(push->oxygen), 2500);
  EXPECT_GT(in_ppm(push->worst), in_ppm(push->oxygen));
}

// 1000 ppm in 19 L of gas for 19 L of beer: 1e-3 x 41.6 mol/m3 x 32 g/mol = 1.33 mg/L.
TEST(PurgeGas, OxygenIfAllGoesIntoTheBeer) {
  Vessel v{litres(19), litres(19), sea_level(), celsius(20)};
  v.oxygen = ppm(1000);
  const auto none = purge_by_cycles(v, {0, gauge_psi(30), {}});
  ASSERT_TRUE(none);
  EXPECT_NEAR(none->if_all_in_beer.count(), 1.33, 0.01);
}

TEST(Alcohol, OrdinaryBeer) {
  const auto og = Estimate<SpecificGravity>(specific_gravity(1.050)).with({"hydrometer"}, 0.001);
  const auto fg = Estimate<SpecificGravity>(specific_gravity(1.010)).with({"hydrometer"}, 0.001);
  const auto abv = alcohol(og, fg, {"alcohol formula"});
  ASSERT_TRUE(abv);
  // Duty office: 40 degrees x 0.130 = 5.2; Balling 5.3.
  EXPECT_NEAR(abv->value().count(), 5.25, 0.12);
  // One hydrometer for both: its bias cancels, the formula's own error is left.
  EXPECT_EQ(abv->largest()->source.name, "alcohol formula");
  EXPECT_LT(abv->half_width(), 0.2);
}

// Trade handbook: 3/16 in holds 18 mL a metre, 1/4 in 32, 5/16 in 49, 3/8 in 71.
TEST(LineVolume, TradeFigures) {
  const auto ml = [](double inch) {
    return in_litres(*line_volume(inches(inch), metres(1))) * 1e3;
  };
  EXPECT_NEAR(ml(3.0 / 16), 18, 0.5);
  EXPECT_NEAR(ml(1.0 / 4), 32, 0.5);
  EXPECT_NEAR(ml(5.0 / 16), 49, 0.6);
  EXPECT_NEAR(ml(3.0 / 8), 71, 0.5);
}

}  // namespace
}  // namespace ullage::physics
