// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/cellar/room_safety.h"

#include <gtest/gtest.h>

#include <cmath>

#include "core/units/present.h"
#include "tests/cellar/gas_cellar.h"

namespace ullage::testing {
namespace {

void describe_room(GasCellar& scene, double cubic_metres) {
  PlaceRecord p;
  p.place = scene.box;
  p.name = "Cold box";
  p.net_air_volume = units::cubic_metres(cubic_metres);
  p.air_changes_per_hour = 0.5;
  p.set_temperature = units::celsius(20);
  scene.log(day(-30), p);
}

// 2.27 kg in 20 m3 is 6 % at 20 °C by the needs list's own arithmetic.
TEST(RoomSafety, BottlesOfAPlaceAreSummed) {
  GasCellar scene;
  PlaceRecord p;
  p.place = scene.box;
  p.name = "Cold box";
  p.net_air_volume = units::cubic_metres(20);
  p.set_temperature = units::celsius(20);
  scene.log(day(-30), p);
  auto safety = room_safety(scene.cellar(day(0)), scene.journal);
  ASSERT_EQ(safety.size(), 1u);
  ASSERT_TRUE(safety[0].outcome);
  EXPECT_NEAR(present(safety[0].outcome).co2.count() * 100, 6.2, 0.05);
  const double one = present(safety[0].outcome).co2.count();
  scene.gas_bottle("Bottle 2");
  safety = room_safety(scene.cellar(day(0)), scene.journal);
  EXPECT_NEAR(present(safety[0].outcome).co2.count(), 2 * one, 1e-9);
  EXPECT_FALSE(safety[0].holds_nitrogen);
  scene.gas_bottle("Mixed", 0.3);
  safety = room_safety(scene.cellar(day(0)), scene.journal);
  EXPECT_TRUE(safety[0].holds_nitrogen);
}

TEST(RoomSafety, SaysNothingWithoutAVolume) {
  const GasCellar scene;
  const auto safety = room_safety(scene.cellar(day(0)), scene.journal);
  ASSERT_EQ(safety.size(), 1u);
  EXPECT_FALSE(safety[0].outcome);
  EXPECT_TRUE(safety[0].room_for_three_percent);
}

std::string countries_of(const std::vector<physics::ExposureLimit>& limits) {
  std::string out;
  for (const auto& l : limits) {
    const std::string one = l.country.empty() ? "-" : std::string(l.country);
    if (!out.ends_with(one)) out += (out.empty() ? "" : " ") + one;
  }
  return out;
}

TEST(RoomSafety, LimitsOfTheCountryThenOfTheUnionAndWhereItHasNoneOfOthers) {
  const auto german = limits_for("DE");
  EXPECT_EQ(countries_of(german.here), "DE EU");
  EXPECT_TRUE(german.co2_here);
  EXPECT_FALSE(german.oxygen_here);
  // The list has an oxygen limit of one country alone: it is shown, by its name.
  EXPECT_EQ(countries_of(german.elsewhere), "US");
  ASSERT_EQ(german.elsewhere.size(), 1u);
  EXPECT_EQ(german.elsewhere[0].kind, physics::LimitKind::oxygen_below);

  EXPECT_EQ(countries_of(limits_for("FR").here), "EU");
  EXPECT_EQ(countries_of(limits_for("at").here), "EU") << "small letters";
  EXPECT_EQ(countries_of(limits_for("GB").here), "GB") << "no member state";
  EXPECT_EQ(countries_of(limits_for("UK").here), "GB");
  EXPECT_EQ(countries_of(limits_for("AU").here), "AU");
  EXPECT_EQ(limits_for("AU").elsewhere.size(), 1u);
  EXPECT_EQ(countries_of(limits_for("EU").here), "EU") << "once";

  const auto american = limits_for("US");
  EXPECT_TRUE(american.oxygen_here);
  EXPECT_TRUE(american.elsewhere.empty());

  const auto nowhere = limits_for("XX");
  EXPECT_TRUE(nowhere.here.empty());
  EXPECT_EQ(nowhere.elsewhere.size(), physics::exposure_limits().size());

  const auto any = limits_for({});
  EXPECT_EQ(any.here.size(), physics::exposure_limits().size());
  EXPECT_TRUE(any.elsewhere.empty());
}

TEST(RoomSafety, LimitsOfNoCountryCountEverywhere) {
  const auto limit = [](std::string_view country, physics::LimitKind kind) {
    return physics::ExposureLimit{country, kind, units::mole_fraction(0.01), "limit", "", "", {}};
  };
  using physics::LimitKind;
  const std::vector<physics::ExposureLimit> published{
      limit("", LimitKind::oxygen_below), limit("AU", LimitKind::oxygen_below),
      limit("EU", LimitKind::working_day), limit("FR", LimitKind::working_day)};
  EXPECT_EQ(countries_of(limits_for("FR", published).here), "FR EU -");
  EXPECT_TRUE(limits_for("FR", published).elsewhere.empty());
  const auto british = limits_for("GB", published);
  EXPECT_EQ(countries_of(british.here), "-");
  EXPECT_TRUE(british.oxygen_here);
  EXPECT_FALSE(british.co2_here);
  EXPECT_EQ(countries_of(british.elsewhere), "EU FR");
}

// The volume is taken to be known to 10 %, the content to 5 %, the temperature to 2 K.
TEST(RoomSafety, SharesCarryTheErrorOfWhatTheyRestOn) {
  GasCellar scene;
  describe_room(scene, 20);
  const PlaceSafety place = room_safety(scene.cellar(day(0)), scene.journal).front();
  ASSERT_TRUE(place.co2 && place.oxygen && place.co2_flowing && place.room_for_three_percent);
  const double share = present(place.co2).value().count();
  EXPECT_DOUBLE_EQ(share, present(place.outcome).co2.count());
  EXPECT_NEAR(present(place.co2).half_width() / share,
              std::hypot(std::hypot(0.10, 0.05, 2 / 293.15), 2000 / 101325.0), 0.003);
  EXPECT_NEAR(present(place.oxygen).half_width(), 0.20946 * present(place.co2).half_width(), 1e-6);
  const VolumeEstimate& wanted = present(place.room_for_three_percent);
  EXPECT_NEAR(wanted.half_width() / wanted.value().value(),
              std::hypot(0.05, 2 / 293.15, 2000 / 101325.0), 0.002);
}

double settles_ppm(GasCellar& scene) {
  const auto place = room_safety(scene.cellar(day(22)), scene.journal).front();
  return place.leak_settles_at ? place.leak_settles_at->value().count() * 1e6 : -1;
}

// 20 g/day of CO2 in 20 m3 at half a change an hour: 45 ppm (docs/physics-gas.md),
// from 20 / 44.01 = 0.454 mol. 20 g of 30 % CO2 in nitrogen have 0.3 * 20 / (0.3 *
// 44.01 + 0.7 * 28.01) = 0.183 mol of it: 18 ppm.
TEST(RoomSafety, ALossOfMixedGasIsNoPureCarbonDioxide) {
  for (const double co2 : {1.0, 0.3}) {
    GasCellar scene;
    describe_room(scene, 20);
    for (const BottleStatus& b : scene.cellar(day(0)).bottles) {
      BottleRecord r = b.record;
      r.co2 = units::mole_fraction(co2);
      scene.log(day(-20), r);
    }
    for (int week = 0; week < 4; ++week) scene.weigh(day(7 * week), 2.0 - 0.14 * week);
    EXPECT_NEAR(settles_ppm(scene), co2 > 0.5 ? 45 : 18, 1);
  }
}

TEST(RoomSafety, ALossBelowTheAlarmStillCounts) {
  GasCellar scene;
  describe_room(scene, 20);
  scene.weigh(day(0), 2.0);
  scene.weigh(day(21), 1.99);  // half a gram a day: below the limit
  const auto place = room_safety(scene.cellar(day(22)), scene.journal).front();
  ASSERT_FALSE(scene.account(day(22)).alarm);
  ASSERT_TRUE(place.leak_settles_at);
  EXPECT_FALSE(place.leak_called_one);
  EXPECT_GT(present(place.leak_settles_at).high().count(),
            present(place.leak_settles_at).value().count());
}

}  // namespace
}  // namespace ullage::testing
