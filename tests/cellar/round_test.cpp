// SPDX-License-Identifier: GPL-3.0-or-later
//
// The round: walking order, what is asked where, what makes one look twice, and
// the entries it leaves.
#include "core/cellar/round.h"

#include <gmock/gmock.h>

#include <algorithm>
#include <cmath>

#include "core/cellar/presets.h"
#include "core/cellar/register.h"
#include "core/cellar/validate.h"
#include "core/units/present.h"
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
    out.reserve(all.size());
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
  EXPECT_THAT(names(stations()), ElementsAre("Cellar", "K03", "Cold box", "K02", "K01", "Line 1"));
  PlaceRecord sooner{.place = box, .name = "Cold box"};
  sooner.walk_order = 0;
  s.log(day(1, 1), sooner);
  EXPECT_THAT(names(stations()), ElementsAre("Cold box", "K02", "K01", "Cellar", "K03", "Line 1"));
}

// A place taken out of use is not walked to for its temperature; what was left in it,
// and what stands nowhere known, is still asked about, at the end.
TEST_F(RoundTest, PassesByNoKegOfAPlaceOutOfUseOrOfNone) {
  const KegId left = s.keg("K01", cellar);
  const KegId lost = s.keg("K02");
  const KegId here = s.keg("K03", box);
  for (const KegId k : {left, lost, here}) s.fill(k, rye, day(0));
  BottleRecord bottle;
  bottle.bottle.uuid.bytes[0] = 0xbe;
  bottle.name = "Bottle 1";
  bottle.place = cellar;
  s.log(day(0), bottle);
  PlaceRecord closed{.place = cellar, .name = "Cellar"};
  closed.in_use = false;
  s.log(day(1), closed);
  const auto all = stations();
  ASSERT_THAT(names(all), ElementsAre("Cold box", "K03", "K01", "Bottle 1", "K02"));
  EXPECT_FALSE(all[1].place_out_of_use);
  for (const std::size_t i : {2U, 3U}) {
    EXPECT_TRUE(all[i].place_out_of_use) << all[i].name;
    EXPECT_EQ(all[i].place, "Cellar");
  }
  EXPECT_FALSE(all[4].place_out_of_use);
  EXPECT_EQ(all[4].place, "");
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
    EXPECT_EQ(get<GaugePressure>(present(st.questions[0].last)), units::gauge_psi(12));
    EXPECT_EQ(st.questions[0].last_at, day(0, 1));
    EXPECT_EQ(st.questions[1].ask, RoundAsk::share_left);
    EXPECT_EQ(get<units::Fraction>(present(st.questions[1].last)), units::fraction(0.9));
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

// A keg on the scale: asked for within what it can weigh, as the log takes it, and begun
// where a keg of tare and beer would stand.
TEST_F(RoundTest, AKegsWeightIsAskedForWithinWhatItCanWeigh) {
  const KegId k = s.keg("K01", box);
  s.fill(k, rye, day(0));
  const auto all = stations();
  const auto at =
      std::find_if(all.begin(), all.end(), [](const auto& st) { return st.name == "K01"; });
  ASSERT_NE(at, all.end());
  const auto q = std::find_if(at->questions.begin(), at->questions.end(),
                              [](const auto& each) { return each.ask == RoundAsk::keg_weight; });
  ASSERT_NE(q, at->questions.end());
  const CellarStatus now = s.cellar(day(2));
  const KegStatus& keg = *now.find(k);
  ASSERT_TRUE(keg.record.tare && keg.level.left);
  ASSERT_TRUE(q->begins);
  const double begins = units::in_kilograms(get<Mass>(*q->begins));
  EXPECT_NEAR(begins,
              units::in_kilograms(present(keg.record.tare)) +
                  units::in_litres(present(keg.level.left).value()),
              0.01);
  const Register reg(s.journal);
  const auto logged = [&](Mass m) {
    const LevelReading reading{.keg = k, .method = LevelMethod::weight, .gross_mass = m};
    return validate({.drafts = {{.payload = reading, .happened_at = day(2)}}, .by = "AB"},
                    s.journal, reg, day(2))
        .empty();
  };
  for (const RoundValue& end : {q->least, q->greatest}) {
    const Mass m = get<Mass>(end);
    EXPECT_TRUE(logged(m)) << units::in_kilograms(m);
    EXPECT_FALSE(refuses(doubt_about(*q, m)));
  }
  const Mass under = get<Mass>(q->least) - units::kilograms(0.01);
  const Mass over = get<Mass>(q->greatest) + units::kilograms(0.01);
  for (const Mass& m : {under, over}) {
    EXPECT_FALSE(logged(m)) << units::in_kilograms(m);
    EXPECT_TRUE(refuses(doubt_about(*q, m)));
  }
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

InstrumentRecord instrument(InstrumentKind kind, const char* name, std::uint8_t n) {
  InstrumentRecord i = instrument_from_preset(kind);
  i.instrument.uuid.bytes[0] = 0xcd;
  i.instrument.uuid.bytes[15] = n;
  i.name = name;
  return i;
}

// What was read with, last time at this station, is what it is read with again,
// with its errors, and it goes into the entry.
TEST_F(RoundTest, RemembersWhatEachStationIsReadOn) {
  const InstrumentRecord probe = instrument(InstrumentKind::thermometer, "Probe", 1);
  const InstrumentRecord display = instrument(InstrumentKind::fridge_display, "Display", 2);
  const InstrumentRecord dial = instrument(InstrumentKind::regulator_dial, "Dial", 3);
  for (const InstrumentRecord& i : {probe, display, dial}) s.log(day(0), i);
  s.log(day(1), TemperatureRead{box, units::celsius(3.04), display.instrument, TemperatureOf::air});
  s.log(day(1), TemperatureRead{cellar, units::celsius(12), probe.instrument, TemperatureOf::air});
  const auto all = stations();
  const auto at = [&](const char* name) {
    return *std::find_if(all.begin(), all.end(),
                         [&](const RoundStation& st) { return st.name == name; });
  };
  const RoundQuestion cold = at("Cold box").questions.at(0);
  EXPECT_EQ(cold.instrument, display.instrument);
  EXPECT_THAT(cold.instruments, SizeIs(2)) << "no dial reads a temperature";
  EXPECT_EQ(at("Cellar").questions.at(0).instrument, probe.instrument);
  // Bias 2 and repeatability 0.5 of a fridge display, as the design has them: root of 4.25.
  const auto read = get<units::Estimate<Temperature>>(present(cold.last_read));
  EXPECT_NEAR(read.half_width(), std::sqrt(2 * 2 + 0.5 * 0.5), 1e-9);
  RoundStation here = at("Cold box");
  auto drafts = round_drafts(here, {RoundValue(units::celsius(4))}, day(2), s.cellar(day(2)));
  EXPECT_EQ(get<TemperatureRead>(drafts.at(0).payload).thermometer, display.instrument);
  here.questions[0].instrument = probe.instrument;
  drafts = round_drafts(here, {RoundValue(units::celsius(4))}, day(2), s.cellar(day(2)));
  s.log(day(2), drafts.at(0).payload);
  EXPECT_EQ(stations(day(2, 1)).at(0).questions.at(0).instrument, probe.instrument);
}

// The glass is asked for once, where it is poured; a tap with nothing on, or with cleaner
// in its line, is walked to all the same.
TEST_F(RoundTest, EveryTapIsAStationAndAsksForTheGlass) {
  const KegId a = s.keg("K01", box);
  s.fill(a, rye, day(0));
  s.gas(a, day(0, 1), 12);
  const LineId line = s.line("Line 1", "1");
  const auto at = [&](const char* name) {
    const auto all = stations();
    return *std::find_if(all.begin(), all.end(),
                         [&](const RoundStation& st) { return st.name == name; });
  };
  EXPECT_EQ(at("Line 1").about, subject(line));
  EXPECT_THAT(at("Line 1").questions, IsEmpty()) << "nothing on it";
  s.log(day(1), Tapped{a, line});
  for (const RoundQuestion& q : at("K01").questions) EXPECT_NE(q.ask, RoundAsk::pour_time);
  const RoundStation tap = at("Line 1");
  ASSERT_THAT(tap.questions, SizeIs(1));
  EXPECT_EQ(tap.questions[0].ask, RoundAsk::pour_time);
  const auto drafts =
      round_drafts(tap, {RoundValue(units::seconds(9))}, day(2), s.cellar(day(2)), "pours slowly");
  ASSERT_THAT(drafts, SizeIs(2));
  const auto& pour = get<TimedPour>(drafts[0].payload);
  EXPECT_EQ(pour.line, line);
  EXPECT_EQ(pour.volume, present(tap.questions[0].glass));
  EXPECT_EQ(pour.duration, units::seconds(9));
  EXPECT_EQ(pour.pressure, units::gauge_psi(12)) << "as it stood on its keg";
  EXPECT_EQ(get<Noted>(drafts[1].payload).line, line);
  EXPECT_EQ(drafts[1].note, "pours slowly");
  // Typed later from paper, of a time before the gas was set: nobody knows what stood then.
  EXPECT_FALSE(
      get<TimedPour>(round_drafts(tap, {RoundValue(units::seconds(9))}, day(0), s.cellar(day(2)))
                         .at(0)
                         .payload)
          .pressure);
  s.log(day(1, 2), LineLocked{line, LineAgent::caustic, "", ""});
  EXPECT_TRUE(at("Line 1").do_not_serve);
  EXPECT_THAT(at("Line 1").questions, IsEmpty()) << "cleaner may be in it";
  EXPECT_THAT(at("K01").questions, SizeIs(2));
}

// Come back to a station: what is typed again is a correction of what was logged there.
TEST_F(RoundTest, WhatIsReadAgainCorrectsAndIsNotCountedTwice) {
  const KegId a = s.keg("K01", box);
  s.fill(a, rye, day(0));
  const auto all = stations();
  const RoundStation keg = *std::find_if(all.begin(), all.end(),
                                         [](const RoundStation& st) { return st.name == "K01"; });
  const auto read = [&](double share, double psi, const std::string& remark, Instant when) {
    return round_drafts(keg,
                        {RoundValue(units::gauge_psi(psi)), RoundValue(units::fraction(share))},
                        when, s.cellar(when), remark);
  };
  std::vector<EntryId> before;
  for (const Draft& d : read(0.8, 9, "lid wet", day(2)))
    before.push_back(s.log(d.happened_at, d.payload));
  // The same again, ten minutes later: nothing new, but for the remark, which was kept.
  auto again = read(0.8, 9, "", day(2, 0.2));
  correct_instead(again, before, s.journal, false);
  EXPECT_THAT(again, IsEmpty());
  again = read(0.7, 9, "", day(2, 0.2));
  correct_instead(again, before, s.journal, false);
  ASSERT_THAT(again, SizeIs(1));
  EXPECT_EQ(again[0].replaces, before[1]);
  EXPECT_EQ(again[0].happened_at, day(2)) << "it was read then";
  again = read(0.7, 9, "", day(1, 12));
  correct_instead(again, before, s.journal, true);
  EXPECT_EQ(again.at(0).happened_at, day(1, 12)) << "the time was what was wrong";
  // Taken back meanwhile: there is nothing to correct any more.
  s.strike(before[1]);
  again = read(0.7, 9, "", day(2, 0.2));
  correct_instead(again, before, s.journal, false);
  ASSERT_THAT(again, SizeIs(1));
  EXPECT_FALSE(again[0].replaces);
}

}  // namespace
}  // namespace ullage::testing
