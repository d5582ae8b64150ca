// SPDX-License-Identifier: GPL-3.0-or-later
//
// What a hold test says of kegs that hold, leak, cool, warm, or were read badly.
#include "core/physics/hold.h"

#include <gtest/gtest.h>
#include <rapidcheck/gtest.h>

#include <cmath>
#include <limits>

#include "core/units/present.h"
#include "tests/physics/hold_cases.h"
#include "tests/physics/keg_cases.h"

namespace ullage::physics {
namespace {

using namespace units;
using cases::DialErrors;
using cases::held_keg;
using cases::hold_reading;

constexpr double hold_nan = std::numeric_limits<double>::quiet_NaN();
constexpr double hold_inf = std::numeric_limits<double>::infinity();
const DialErrors digital{psi(0.3), psi(0.05)};

// 44.7 psia x 16/293 = 2.44 psi by the ideal law, a little more for a real gas.
TEST(HoldTest, CoolingAloneIsNotALeak) {
  for (const double read : {27.2, 27.5, 28.0}) {
    const auto out = judge_hold(held_keg({hold_reading(0, 30, 20), hold_reading(24, read, 4)}));
    ASSERT_TRUE(out);
    EXPECT_NEAR(30 - in_psi(out->expected), 2.5, 0.1);
    EXPECT_NE(out->verdict, HoldVerdict::leaks) << read;
  }
}

TEST(HoldTest, OneDialSeesWhatTwoDialsCannot) {
  const auto one = judge_hold(held_keg({hold_reading(0, 30, 20), hold_reading(24, 28, 20)}));
  const auto two =
      judge_hold(held_keg({hold_reading(0, 30, 20), hold_reading(24, 28, 20, {}, "other")}));
  ASSERT_TRUE(one && two);
  EXPECT_EQ(one->verdict, HoldVerdict::leaks);
  EXPECT_EQ(two->verdict, HoldVerdict::cant_tell);
  EXPECT_LT(one->leak_per_day.half_width(), 0.5 * two->leak_per_day.half_width());
  // Either dial's bias would narrow it.
  EXPECT_TRUE(two->leak_per_day.largest()->source.name.ends_with(": bias"));
}

// One psi of 19.6 L at 20 C is 2.5 g of CO2: 44.01 g/mol x 6895 Pa x V / RT, and
// 1.5 % more for a real gas at 3 bar (B / RT = -5.2e-8 / Pa, twice over 3e5 Pa).
TEST(HoldTest, GramsOfAPsi) {
  HoldTest dry = held_keg({hold_reading(0, 30, 20, digital), hold_reading(24, 29, 20, digital)});
  dry.wet_residue = litres(0);
  const auto out = judge_hold(dry);
  ASSERT_TRUE(out);
  const double ideal = 44.01 * 6894.76 * 0.0196 / (8.3145 * 293.15);
  EXPECT_NEAR(in_grams(out->leak_per_day.value()), ideal * (1 + 2 * 5.2e-8 * 3.05e5), 0.01 * ideal);
  ASSERT_EQ(out->laws.size(), 2u);
  // At test pressure the leak was a little more than over the whole day, by half
  // of what the drive changed: 1 psi of 45 or of (44.7^2 - 14.7^2).
  for (const LawFit& f : out->laws) {
    ASSERT_TRUE(f.at_test.likely);
    EXPECT_NEAR(present(f.at_test.likely) / out->leak_per_day.value(),
                f.law == LeakLaw::viscous ? 1 + 44.2 / 1783 : 1 + 0.5 / 44.7, 0.004);
  }
}

// From 30 to 12 psi at one temperature: viscous by (26.7^2 - 14.7^2) /
// (44.7^2 - 14.7^2) = 0.279; choked, 26.7 / 44.7 = 0.597 (12 psi is 0.1 psi short
// of choking, where the nozzle's curve is flat).
TEST(HoldTest, ServingPressureByBothLaws) {
  HoldTest test = held_keg({hold_reading(0, 30, 20, digital), hold_reading(48, 28, 20, digital)});
  test.service = {gauge_psi(12), celsius(20), kilograms(2.268)};
  const auto out = judge_hold(test);
  ASSERT_TRUE(out);
  EXPECT_EQ(out->verdict, HoldVerdict::leaks);
  const double viscous =
      present(out->laws[0].at_service.likely) / present(out->laws[0].at_test.likely);
  const double orifice =
      present(out->laws[1].at_service.likely) / present(out->laws[1].at_test.likely);
  EXPECT_NEAR(viscous, 0.279, 0.001);
  EXPECT_NEAR(orifice, 0.597, 0.001);
  ASSERT_TRUE(out->bottle.soonest && out->bottle.likely);
  const double middle = (in_grams(present(out->laws[0].at_service.likely)) +
                         in_grams(present(out->laws[1].at_service.likely))) /
                        2;
  EXPECT_NEAR(in_days(present(out->bottle.likely)), 2268 / middle, 0.5);
  EXPECT_LT(present(out->bottle.soonest), present(out->bottle.likely));
}

TEST(HoldTest, SaysWhenItCannotTellYetAndWhenItCould) {
  const auto early = judge_hold(held_keg({hold_reading(0, 30, 20), hold_reading(6, 29.8, 20)}));
  ASSERT_TRUE(early);
  EXPECT_EQ(early->verdict, HoldVerdict::cant_tell);
  EXPECT_EQ(early->reason, HoldReason::within_errors);
  ASSERT_TRUE(early->read_again_at);
  // Read then, with nothing more gone, it is settled.
  const auto later =
      judge_hold(held_keg({hold_reading(0, 30, 20), hold_reading(6, 29.8, 20),
                           hold_reading(in_hours(*early->read_again_at) + 1, 29.8, 20)}));
  ASSERT_TRUE(later);
  EXPECT_EQ(later->verdict, HoldVerdict::holds);
  EXPECT_NEAR(in_psi(*later->proven_down_to), 29.8, 1e-9);
  EXPECT_LT(in_grams(*later->smallest_visible_per_day), 4);
}

// Two perfect dials a minute of a second apart would not help: the gas settles.
TEST(HoldTest, TwoMinutesAreNoTest) {
  const auto out = judge_hold(
      held_keg({hold_reading(0, 30, 20, digital), hold_reading(2.0 / 60, 25, 20, digital)}));
  ASSERT_TRUE(out);
  EXPECT_EQ(out->verdict, HoldVerdict::cant_tell);
  EXPECT_EQ(out->reason, HoldReason::too_soon);
  ASSERT_TRUE(out->read_again_at);
  EXPECT_GE(in_minutes(*out->read_again_at), 30);
}

TEST(HoldTest, OneReadingIsNone) {
  const auto out = judge_hold(held_keg({hold_reading(0, 30, 20)}));
  ASSERT_TRUE(out);
  EXPECT_EQ(out->verdict, HoldVerdict::cant_tell);
  EXPECT_EQ(out->reason, HoldReason::one_reading);
  EXPECT_TRUE(out->laws.empty());
}

TEST(HoldTest, APressureThatRoseIsNoTightKeg) {
  // Sealed, cooled, and up by 3 psi: gas was on, or a reading is wrong.
  const auto cold = judge_hold(held_keg({hold_reading(0, 30, 20), hold_reading(24, 33, 4)}));
  ASSERT_TRUE(cold);
  EXPECT_EQ(cold->verdict, HoldVerdict::cant_tell);
  EXPECT_EQ(cold->reason, HoldReason::rose);
  // Up and down by more than any leak: no one leak fits.
  const auto jump = judge_hold(
      held_keg({hold_reading(0, 30, 20), hold_reading(12, 20, 20), hold_reading(24, 30, 20)}));
  ASSERT_TRUE(jump);
  EXPECT_EQ(jump->verdict, HoldVerdict::cant_tell);
  EXPECT_EQ(jump->reason, HoldReason::contradictory);
}

TEST(HoldTest, AnEmptiedKegLeaksAtLeast) {
  for (const double left : {0.0, 0.2}) {
    const auto out = judge_hold(held_keg({hold_reading(0, 30, 20), hold_reading(24, left, 20)}));
    ASSERT_TRUE(out);
    EXPECT_EQ(out->verdict, HoldVerdict::leaks) << left;
    // It lost 75 g in a day, so it leaks that at least.
    for (const LawFit& f : out->laws) {
      EXPECT_GT(in_grams(f.at_test.low), 70) << left;
      EXPECT_FALSE(f.at_test.high) << left;
    }
    EXPECT_NEAR(in_grams(out->leak_per_day.value()), 75, 4) << left;
  }
}

TEST(HoldTest, NothingToLose) {
  const auto out = judge_hold(held_keg({hold_reading(0, 1, 20), hold_reading(24, 1, 20)}));
  ASSERT_TRUE(out);
  EXPECT_EQ(out->reason, HoldReason::no_pressure);
}

TEST(HoldTest, AReadingAfterSettlingIsWorthMore) {
  const HoldTest fresh =
      held_keg({hold_reading(0, 30, 20, digital), hold_reading(24, 30, 20, digital)});
  HoldTest settled = fresh;
  settled.closed_at = hours(-1);
  EXPECT_LT(judge_hold(settled)->leak_per_day.half_width(),
            judge_hold(fresh)->leak_per_day.half_width());
}

TEST(HoldTest, BadReadingsAreRefused) {
  const auto subject_of = [](const HoldReading& second) {
    const auto out = judge_hold(held_keg({hold_reading(0, 30, 20), second}));
    return out ? std::optional<Subject>() : std::optional(out.error().subject);
  };
  for (const double bad : {hold_nan, hold_inf, 500.0, -20.0})
    EXPECT_EQ(subject_of(hold_reading(24, bad, 20)), Subject::gauge_pressure) << bad;
  for (const double bad : {hold_nan, -hold_inf, 90.0, -60.0})
    EXPECT_EQ(subject_of(hold_reading(24, 30, bad)), Subject::temperature) << bad;
  for (const double bad : {hold_nan, hold_inf, -2.0, 0.0})
    EXPECT_EQ(subject_of(hold_reading(bad, 30, 20)), Subject::step_time) << bad;
  EXPECT_EQ(subject_of(hold_reading(24 * 500, 30, 20)), Subject::duration);
  HoldReading broken = hold_reading(24, 30, 20);
  broken.pressure = broken.pressure.with({"broken"}, hold_nan);
  EXPECT_EQ(subject_of(broken), Subject::gauge_pressure);
}

TEST(HoldTest, BadSurroundingsAreRefused) {
  const HoldTest good = held_keg({hold_reading(0, 30, 20), hold_reading(24, 30, 20)});
  const auto subject_of = [&](auto&& change, Mass limit = grams(2)) {
    HoldTest test = good;
    change(test);
    const auto out = judge_hold(test, limit);
    return out ? std::optional<Subject>() : std::optional(out.error().subject);
  };
  const auto same = [](HoldTest&) {};
  EXPECT_EQ(subject_of([](HoldTest& t) { t.readings.clear(); }), Subject::parts);
  EXPECT_EQ(subject_of([](HoldTest& t) { t.gas_space = litres(0); }), Subject::headspace);
  EXPECT_EQ(subject_of([](HoldTest& t) { t.ambient = pascals_absolute(hold_nan); }),
            Subject::ambient_pressure);
  EXPECT_EQ(subject_of([](HoldTest& t) { t.wet_residue = litres(-1); }), Subject::volume);
  EXPECT_EQ(subject_of([](HoldTest& t) { t.barometer = pascals(hold_nan); }),
            Subject::gauge_pressure);
  EXPECT_EQ(subject_of([](HoldTest& t) { t.service.bottle = grams(0); }), Subject::mass);
  EXPECT_EQ(subject_of([](HoldTest& t) { t.closed_at = hours(2); }), Subject::step_time);
  EXPECT_EQ(subject_of(same, grams(0)), Subject::mass);
  EXPECT_EQ(subject_of(same, grams(hold_nan)), Subject::mass);
  EXPECT_EQ(subject_of(same), std::nullopt);
}

TEST(HoldTest, LinesRunThroughWhatWasRead) {
  const HoldTest test =
      held_keg({hold_reading(0, 30, 20, digital), hold_reading(10, 27, 12, digital),
                hold_reading(48, 22, 4, digital)});
  const auto out = judge_hold(test);
  ASSERT_TRUE(out);
  const auto lines = hold_lines(test, *out, 97);
  ASSERT_TRUE(lines);
  ASSERT_EQ(lines->size(), 97u);
  EXPECT_NEAR(in_psi(lines->back().tight), in_psi(out->expected), 1e-6);
  for (std::size_t law = 0; law < 2; ++law) {
    EXPECT_NEAR(in_psi(lines->front().leaking[law]), 30, 0.5);
    EXPECT_NEAR(in_psi(lines->back().leaking[law]), 22, 0.5);
  }
  for (const HoldPoint& p : *lines) {
    EXPECT_LE(in_psi(p.low), in_psi(p.tight));
    EXPECT_LT(in_psi(p.tight) - in_psi(p.low), 1.0);
  }
}

double hold_in(double low, double high) {
  return low + (high - low) * *rc::gen::inRange(0, 1000001) / 1e6;
}

// Whatever was read: numbers, the interval round its middle, a verdict that goes
// with it.
RC_GTEST_PROP(HoldProperty, OutcomesAreWhole, ()) {
  std::vector<HoldReading> readings{hold_reading(0, hold_in(3, 60), hold_in(-5, 35))};
  const int more = *rc::gen::inRange(1, 6);
  double at = 0;
  for (int i = 0; i < more; ++i) {
    at += hold_in(0.05, 60);
    readings.push_back(hold_reading(at, hold_in(0, 60), hold_in(-5, 35)));
  }
  const auto out = judge_hold(held_keg(std::move(readings)));
  RC_ASSERT(out.has_value());
  RC_ASSERT(std::isfinite(in_grams(out->leak_per_day.value())));
  RC_ASSERT(std::isfinite(out->leak_per_day.half_width()));
  for (const LawFit& f : out->laws) {
    RC_ASSERT(std::isfinite(in_grams(f.at_test.low)));
    RC_ASSERT(std::isfinite(in_grams(f.at_service.low)));
    if (f.at_test.likely) RC_ASSERT(*f.at_test.likely > f.at_test.low);
    if (f.at_test.likely && f.at_test.high) RC_ASSERT(*f.at_test.likely < *f.at_test.high);
    if (out->verdict == HoldVerdict::holds) RC_ASSERT(in_grams(present(f.at_test.high)) < 2);
    if (out->verdict == HoldVerdict::leaks) RC_ASSERT(in_grams(f.at_test.low) > 0);
  }
  if (out->read_again_at) RC_ASSERT(in_seconds(*out->read_again_at) >= 1800);
}

// A last reading lower by more tells of a larger leak.
RC_GTEST_PROP(HoldProperty, LowerReadingLargerLeak, ()) {
  const double p = hold_in(15, 40);
  const double t = hold_in(2, 25);
  const double fall = hold_in(0, 5);
  const double more = hold_in(0.5, 5);
  const double hours_apart = hold_in(2, 200);
  const auto a =
      judge_hold(held_keg({hold_reading(0, p, t), hold_reading(hours_apart, p - fall, t)}));
  const auto b =
      judge_hold(held_keg({hold_reading(0, p, t), hold_reading(hours_apart, p - fall - more, t)}));
  RC_ASSERT(a && b);
  RC_ASSERT(a->leak_per_day.value() < b->leak_per_day.value());
  RC_ASSERT(present(a->laws[0].at_test.likely) < present(b->laws[0].at_test.likely));
}

}  // namespace
}  // namespace ullage::physics
