// SPDX-License-Identifier: GPL-3.0-or-later
//
// The round: walking order, what is asked where, what makes one look twice, and
// the entries it leaves.
#include "core/cellar/round.h"

#include <gmock/gmock.h>

#include <cmath>

#include "tests/cellar/scenario.h"

namespace ullage::testing {
namespace {

using ::testing::ElementsAre;
using ::testing::IsEmpty;
using ::testing::SizeIs;

class RoundTest : public ::testing::Test {
 protected:
  [[nodiscard]] std::vector<RoundStation> stations(Instant now = day(2)) const {
    return round_stations(s.cellar(now), s.journal);
  }
  [[nodiscard]] static std::vector<std::string> names(const std::vector<RoundStation>& all) {
    std::vector<std::string> out;
    for (const RoundStation& st : all) out.push_back(st.name);
    return out;
  }
  Scenario s;
  PlaceId box = s.place("Cold box", 3);
  PlaceId cellar = s.place("Cellar", 12);
  BatchId rye = s.batch("Red Rye");
};

TEST_F(RoundTest, GoesPlaceByPlaceTapsFirst) {
  const KegId a = s.keg("K01", box);
  const KegId b = s.keg("K02", box);
  const KegId c = s.keg("K03", cellar);
  s.keg("K04", cellar);  // nothing is known of it: nothing to read
  s.fill(a, rye, day(0));
  s.fill(b, rye, day(0));
  s.fill(c, rye, day(0));
  s.log(day(1), Tapped{b, s.line("Line 1", "1")});
  PlaceRecord first{.place = cellar, .name = "Cellar"};
  first.walk_order = 1;
  s.log(day(1), first);
  EXPECT_THAT(names(stations()), ElementsAre("Cellar", "K03", "Cold box", "K02", "K01"));
  PlaceRecord sooner{.place = box, .name = "Cold box"};
  sooner.walk_order = 0;
  s.log(day(1, 1), sooner);
  EXPECT_THAT(names(stations()), ElementsAre("Cold box", "K02", "K01", "Cellar", "K03"));
}

TEST_F(RoundTest, AsksAtMostThreeThingsWithTheirLastValues) {
  const KegId a = s.keg("K01", box);
  s.fill(a, rye, day(0));
  s.gas(a, day(0, 1), 12);
  LevelReading l;
  l.keg = a;
  l.fraction_left = units::fraction(0.9);
  s.log(day(1), l);
  for (const RoundStation& st : stations()) {
    EXPECT_THAT(st.questions, ::testing::Not(IsEmpty()));
    EXPECT_LE(st.questions.size(), 3U);
    if (st.name != "K01") continue;
    EXPECT_EQ(st.questions[0].ask, RoundAsk::gas_pressure);
    EXPECT_EQ(get<GaugePressure>(*st.questions[0].last), units::gauge_psi(12));
    EXPECT_EQ(st.questions[0].last_at, day(0, 1));
    EXPECT_EQ(st.questions[1].ask, RoundAsk::share_left);
    EXPECT_EQ(get<units::Fraction>(*st.questions[1].last), units::fraction(0.9));
  }
}

TEST_F(RoundTest, AStationIsOneActOfWhatWasRead) {
  const KegId a = s.keg("K01", box);
  s.fill(a, rye, day(0));
  s.gas(a, day(0, 1), 12);
  const auto all = stations();
  const auto at =
      std::find_if(all.begin(), all.end(), [](const RoundStation& st) { return st.name == "K01"; });
  ASSERT_NE(at, all.end());
  const auto drafts = round_drafts(
      *at, {RoundValue(units::gauge_psi(14)), RoundValue(units::fraction(0.8)), std::nullopt},
      day(2), s.cellar(day(2)));
  ASSERT_THAT(drafts, SizeIs(2));
  EXPECT_EQ(get<GasSet>(drafts[0].payload).pressure, units::gauge_psi(14));
  EXPECT_EQ(get<LevelReading>(drafts[1].payload).fraction_left, units::fraction(0.8));
  EXPECT_EQ(drafts[1].happened_at, day(2));
  // As it was set: nothing to log.
  EXPECT_THAT(
      round_drafts(*at, {RoundValue(units::gauge_psi(12.05)), {}, {}}, day(2), s.cellar(day(2))),
      IsEmpty());
}

TEST_F(RoundTest, RefusesTheImpossibleAndDoubtsTheOdd) {
  const KegId a = s.keg("K01", box);
  s.fill(a, rye, day(0));
  s.gas(a, day(0, 1), 12);
  LevelReading l;
  l.keg = a;
  l.fraction_left = units::fraction(0.5);
  s.log(day(1), l);
  const auto all = stations();
  const auto keg = *std::find_if(all.begin(), all.end(),
                                 [](const RoundStation& st) { return st.name == "K01"; });
  const auto& gas = keg.questions[0];
  EXPECT_EQ(doubt_about(gas, units::gauge_psi(12)), RoundDoubt::none);
  EXPECT_EQ(doubt_about(gas, units::gauge_psi(30)), RoundDoubt::much_higher);
  EXPECT_EQ(doubt_about(gas, units::gauge_psi(2)), RoundDoubt::much_lower);
  EXPECT_TRUE(refuses(doubt_about(gas, units::gauge_psi(500))));
  EXPECT_TRUE(refuses(doubt_about(gas, units::gauge_psi(-3))));
  EXPECT_TRUE(refuses(doubt_about(gas, units::gauge_psi(std::nan("")))));
  EXPECT_EQ(doubt_about(keg.questions[1], units::fraction(0.9)), RoundDoubt::fuller);
  EXPECT_EQ(doubt_about(keg.questions[1], units::fraction(0.4)), RoundDoubt::none);
}

TEST_F(RoundTest, APlaceAsksItsTemperature) {
  s.read(box, day(1), 3.5);
  const auto all = stations();
  const auto at = std::find_if(all.begin(), all.end(),
                               [](const RoundStation& st) { return st.name == "Cold box"; });
  ASSERT_NE(at, all.end());
  EXPECT_EQ(at->questions[0].last_at, day(1));
  const auto drafts = round_drafts(*at, {RoundValue(units::celsius(4))}, day(2), s.cellar(day(2)));
  ASSERT_THAT(drafts, SizeIs(1));
  EXPECT_EQ(get<TemperatureRead>(drafts[0].payload).place, box);
}

}  // namespace
}  // namespace ullage::testing
