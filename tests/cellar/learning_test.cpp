// SPDX-License-Identifier: GPL-3.0-or-later
//
// What readings teach about a keg's rate, and when a keg on tap runs out, from
// the journal to the status.
#include <gtest/gtest.h>

#include "core/cellar/weekdays.h"
#include "core/units/present.h"
#include "tests/cellar/scenario.h"

namespace ullage::testing {
namespace {

class Learning : public ::testing::Test {
 protected:
  Learning() {
    box = s.place("Cold box", 3.0);
    k = s.keg("K01", box);
    rye = s.batch("Red Rye");
    s.prepare(k, day(0));
    s.fill(k, rye, day(0, 12), 18.6, 3.0);
    s.gas(k, day(0, 13), 12);
  }
  EntryId metered(Instant when, double volumes) {
    CarbonationReading r;
    r.keg = k;
    r.co2 = units::to_concentration(units::volumes_of_co2(volumes));
    r.co2_half_width = units::to_concentration(units::volumes_of_co2(0.08));
    return s.log(when, r);
  }
  Co2State co2(Instant when) { return s.status(k, when).co2; }

  Scenario s;
  PlaceId box;
  KegId k;
  BatchId rye;
};

TEST_F(Learning, WithoutReadingsTheRateIsTheUsualOne) {
  const Co2State c = co2(day(2));
  ASSERT_TRUE(c.uptake);
  EXPECT_EQ(present(c.uptake).readings, 0);
  EXPECT_NEAR(units::in_days(present(c.uptake).usual.likely), 4.0, 0.3);
  EXPECT_EQ(units::in_seconds(present(c.uptake).usual.likely),
            units::in_seconds(present(c.uptake).learned.likely));
  EXPECT_EQ(uptake_words(present(c.uptake)).key, MessageKey::uptake_usual);
}

TEST_F(Learning, AReadingNarrowsTheCurveAndTheForecast) {
  const Co2State before = co2(day(3));
  metered(day(2, 12), 2.05);
  const Co2State after_it = co2(day(3));
  ASSERT_TRUE(before.now && after_it.now && after_it.uptake);
  EXPECT_LT(present(after_it.now).half_width(), 0.5 * present(before.now).half_width());
  EXPECT_GT(present(after_it.now).value(), present(before.now).value());
  EXPECT_EQ(present(after_it.uptake).readings, 1);
  EXPECT_LT(present(after_it.uptake).learned.likely, present(after_it.uptake).usual.likely);
  EXPECT_EQ(uptake_words(present(after_it.uptake)).key, MessageKey::uptake_learned);
  ASSERT_TRUE(before.in_range && after_it.in_range);
  EXPECT_LT(present(after_it.in_range).likely, present(before.in_range).likely);
}

TEST_F(Learning, StruckReadingTeachesNothing) {
  const Co2State before = co2(day(3));
  s.strike(metered(day(2, 12), 2.05));
  const Co2State again = co2(day(3));
  EXPECT_EQ(units::to_magnitude(present(before.now).value()),
            units::to_magnitude(present(again.now).value()));
  EXPECT_EQ(present(again.uptake).readings, 0);
}

// 3.6 volumes after a day at 12 psi can't be: the curve goes on from the reading.
TEST_F(Learning, ImpossibleReadingIsAConflictAndTheCurveStartsAgain) {
  metered(day(1, 12), 3.6);
  const Co2State c = co2(day(1, 13));
  ASSERT_TRUE(c.now && c.uptake);
  EXPECT_FALSE(present(c.uptake).readings_fit);
  EXPECT_EQ(uptake_words(present(c.uptake)).key, MessageKey::uptake_conflict);
  EXPECT_EQ(units::in_seconds(present(c.uptake).usual.low),
            units::in_seconds(present(c.uptake).learned.low));
  EXPECT_NEAR(present(c.now).value().count(), 3.6, 0.05);
}

LevelReading weighed(KegId keg, double kilograms) {
  LevelReading r;
  r.keg = keg;
  r.method = LevelMethod::weight;
  r.gross_mass = units::kilograms(kilograms);
  return r;
}

class OnTap : public Learning {
 protected:
  OnTap() {
    line = s.line("Line 1", "1");
    s.log(day(12, 12), Tapped{k, line});
  }
  LineId line;
};

TEST_F(OnTap, NothingIsForetoldBeforeAnythingIsKnown) {
  EXPECT_FALSE(s.status(k, day(12, 13)).level.runs_out);
}

// 18.6 L of beer at 1.01 kg/L over a tare of 4.5 kg; 5 L gone in two days.
TEST_F(OnTap, WeighingsForetellTheEnd) {
  s.log(day(14, 12), weighed(k, 4.5 + 13.6 * 1.01));
  const KegStatus status = s.status(k, day(14, 12));
  ASSERT_TRUE(status.level.left);
  EXPECT_NEAR(units::in_litres(present(status.level.left).value()), 13.6, 0.5);
  ASSERT_TRUE(status.level.runs_out && status.level.runs_out->latest);
  const Window& w = present(status.level.runs_out);
  EXPECT_GT(units::in_days(between(day(14, 12), w.likely)), 3.5);
  EXPECT_LT(units::in_days(between(day(14, 12), w.likely)), 8.0);
  EXPECT_LT(w.earliest, w.likely);
  EXPECT_LT(w.likely, present(w.latest));
  EXPECT_EQ(present(status.next_step).key, MessageKey::next_empty_about);
}

// A keg just put on is told by those before it on its line.
TEST_F(OnTap, KegsBeforeItOnTheLineForetellIt) {
  Scenario other;
  const LineId tap = other.line("Line 1", "1");
  const BatchId ale = other.batch("Ale");
  const auto serve = [&](const std::string& tag, int from, int to) {
    const KegId keg = other.keg(tag, other.place("Box " + tag, 3.0));
    other.prepare(keg, day(from - 1));
    other.fill(keg, ale, day(from - 1, 12), 18.6, 3.0);
    other.log(day(from), Tapped{keg, tap});
    if (to > from) other.log(day(to), Emptied{keg});
    return keg;
  };
  serve("A1", 0, 6);
  serve("A2", 6, 12);
  serve("A3", 12, 18);
  const KegId now = serve("A4", 18, 0);
  const KegStatus status = other.status(now, day(18, 1));
  ASSERT_TRUE(status.level.runs_out && status.level.runs_out->latest);
  EXPECT_NEAR(units::in_days(between(day(18), present(status.level.runs_out).likely)), 6.0, 1.2);
}

TEST_F(OnTap, OffTapNothingRunsOut) {
  s.log(day(14, 12), weighed(k, 4.5 + 13.6 * 1.01));
  s.log(day(15), Untapped{k});
  EXPECT_FALSE(s.status(k, day(16)).level.runs_out);
  const auto then = s.status(k, day(15)).level.left;
  const auto later = s.status(k, day(40)).level.left;
  ASSERT_TRUE(then && later);
  EXPECT_EQ(units::to_magnitude(present(then).value()),
            units::to_magnitude(present(later).value()));
}

TEST_F(Learning, ShutKegThatLostBeerIsAConflict) {
  s.log(day(6), weighed(k, 4.5 + 9.0 * 1.01));
  const KegStatus status = s.status(k, day(6, 1));
  ASSERT_TRUE(status.level.cant_tell);
  EXPECT_EQ(present(status.level.cant_tell).key, MessageKey::level_reads_less);
  ASSERT_TRUE(status.level.left);
  EXPECT_NEAR(units::in_litres(present(status.level.left).value()), 9.0, 0.3);
}

// Sunday 23:00 to Tuesday 01:00, and over the hour that autumn repeats.
TEST(WeekdayShares, CountsByTheWallClock) {
  const LondonCalendar london;
  const auto days = weekday_shares(day(-1, 23), day(1, 1), london);
  EXPECT_NEAR(days[0], 1 / 24.0, 1e-9);
  EXPECT_NEAR(days[1], 1.0, 1e-9);
  EXPECT_NEAR(days[2], 1 / 24.0, 1e-9);
  EXPECT_EQ(days[3], 0.0);
  const auto whole = weekday_shares(day(-14), day(0), london);
  for (const double d : whole) EXPECT_NEAR(d, 2.0, 0.05);
}

}  // namespace
}  // namespace ullage::testing
