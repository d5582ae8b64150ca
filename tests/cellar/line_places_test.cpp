// SPDX-License-Identifier: GPL-3.0-or-later
//
// Where the beer of a line stands: a keg against its place as it is, and hose in a
// place that nobody told a temperature of.
#include <gtest/gtest.h>

#include "core/cellar/readings.h"
#include "core/units/present.h"
#include "tests/cellar/pour_scene.h"

namespace ullage::testing {
namespace {

const Advice* said(const PourState& p, MessageKey key) {
  for (const Advice& a : p.advice)
    if (a.headline.key == key) return &a;
  return nullptr;
}

PlaceRecord set_to(PlaceId id, double celsius) {
  PlaceRecord r;
  r.place = id;
  r.name = "Cold box";
  r.set_temperature = units::celsius(celsius);
  return r;
}

// A box that is set to 3 °C and reads 6.5 °C has no warm keg in it.
TEST(KegStillWarm, IsToldByThePlaceAsItReadsAndNotAsItIsSet) {
  PourFigures f;
  f.celsius = 6.5;
  f.psi = 14.5;
  PourScene s(f);
  s.log(day(-59), set_to(s.box, 3));
  const PourState p = s.pour_now();
  ASSERT_NEAR(units::in_celsius(p.setting.beer.value()), 6.5, 0.1);
  EXPECT_FALSE(said(p, MessageKey::adv_pour_still_warm));
}

// Turned down to 1 °C on the thermostat, until somebody reads it again.
TEST(KegStillWarm, AThermostatTurnedDownMakesItWarmUntilTheKegFollows) {
  PourScene s;
  s.log(day(22), set_to(s.box, -4));
  const PourState p = s.pour_now(day(22, 1));
  EXPECT_TRUE(said(p, MessageKey::adv_pour_still_warm));
  EXPECT_FALSE(said(s.pour_now(day(27)), MessageKey::adv_pour_still_warm));
}

// Our own keg, filled warm, in a place that has readings only.
TEST(KegStillWarm, AKegOfOurOwnFilledWarmSaysHowWarmItIsAndItsPlace) {
  PourScene s;
  const PlaceId larder = s.place("Larder");
  s.read(larder, day(22), 4);
  const KegId fresh = s.Scenario::keg("K07", larder);
  s.log(day(21, 1), Untapped{s.keg});
  s.prepare(fresh, day(22, 1));
  s.fill(fresh, s.beer, day(22, 4), 18.6, 20);
  s.gas(fresh, day(22, 4.5), 11.5);
  s.log(day(22, 5), Tapped{fresh, s.line});
  const PourState early = s.pour_now(day(22, 6));
  const Advice* a = said(early, MessageKey::adv_pour_still_warm);
  ASSERT_TRUE(a);
  EXPECT_EQ(a->severity, Severity::advice);
  EXPECT_EQ(*get_if<std::string>(&a->headline.args.at(0)), "K07");
  EXPECT_GT(units::in_celsius(get_if<TemperatureEstimate>(&a->headline.args.at(1))->value()), 12);
  EXPECT_NEAR(units::in_celsius(get_if<TemperatureEstimate>(&a->headline.args.at(2))->value()), 4,
              1e-9);
  EXPECT_FALSE(said(s.pour_now(day(26)), MessageKey::adv_pour_still_warm)) << "cold by then";
}

TEST(HoseSomewhere, NobodyToldHowWarmIsSaidAndIsNoAllClear) {
  PourScene s;
  const PlaceId bar = s.place("Bar");
  s.segment(1, 5, 3.0 / 16, {});
  s.segment(2, 6, 0.25, bar, 1);  // 58 mL stand in it
  const PourState p = s.pour_now();
  EXPECT_EQ(p.setting.place_names[2], "Bar");
  EXPECT_FALSE(p.setting.told(2));
  EXPECT_TRUE(p.setting.told(1));
  const Advice* a = said(p, MessageKey::adv_pour_untold);
  ASSERT_TRUE(a);
  EXPECT_EQ(a->severity, Severity::info);
  EXPECT_EQ(*get_if<std::string>(&a->headline.args.at(0)), "Bar");
  const auto* stands = get_if<units::Estimate<Volume>>(&a->headline.args.at(1));
  ASSERT_TRUE(stands);
  EXPECT_NEAR(units::in_litres(stands->value()) * 1e3, 57.9, 0.1);
  ASSERT_TRUE(a->action);
  EXPECT_EQ(present(a->action).kind, "temperature_read");
  EXPECT_EQ(present(a->action).about, subject(bar));
  EXPECT_FALSE(said(p, MessageKey::adv_pour_warm)) << "nor is it said to be warm";
  const auto judged = [&](std::size_t part) {
    return std::any_of(p.outlook.places.begin(), p.outlook.places.end(),
                       [&](const physics::StandingPlace& each) { return each.part == part; });
  };
  EXPECT_TRUE(judged(1)) << "the rest of the line is judged all the same";
  EXPECT_FALSE(judged(2));

  s.read(bar, day(21, 12), 21);
  const PourState read = s.pour_now();
  EXPECT_FALSE(said(read, MessageKey::adv_pour_untold));
  EXPECT_TRUE(said(read, MessageKey::adv_pour_warm));
}

// With the keg in the same place there is nothing to ask for.
TEST(HoseSomewhere, ThePlaceOfTheKegIsAsTold) {
  PourScene s;
  s.segment(1, 5, 3.0 / 16, s.box);
  EXPECT_FALSE(said(s.pour_now(), MessageKey::adv_pour_untold));
}

}  // namespace
}  // namespace ullage::testing
