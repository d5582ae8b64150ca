// SPDX-License-Identifier: GPL-3.0-or-later
//
// When a keg is ready, against common practice (no single source unless named):
// a burst at 30 psi on cold beer takes one to three days; set and wait takes
// seven to fourteen; a delivered keg rests 24 to 72 hours in the cold (trade
// bodies and trade press).
#include <gmock/gmock.h>

#include "core/units/present.h"
#include "tests/cellar/scenario.h"

namespace ullage::testing {
namespace {

double days_until(Instant t, Instant from) { return units::in_days(between(from, t)); }

struct Cold : ::testing::Test {
  Scenario s;
  PlaceId box = s.place("Cold box", 1.5);
  KegId k = s.keg("K01", box);
  BatchId rye = s.batch("Red Rye", 2.3, 2.7);
  Instant filled = day(1, 19);
  void SetUp() override {
    s.read(box, day(0), 1.5);
    s.log(day(0), Emptied{k});
    s.prepare(k, day(1));
    s.fill(k, rye, filled, 18.6, 1.5);
  }
};

TEST_F(Cold, ABurstIsReadyInOneToThreeDays) {
  s.gas(k, filled, 30, GasPurpose::burst);
  const KegStatus status = s.status(k, filled + std::chrono::hours(1));
  ASSERT_EQ(status.readiness.kind, ReadinessKind::ready_at);
  ASSERT_TRUE(status.readiness.when);
  const Window& w = present(status.readiness.when);
  EXPECT_GT(days_until(w.likely, filled), 0.9);
  EXPECT_LT(days_until(w.likely, filled), 3.1);
  EXPECT_LE(w.earliest, w.likely);
  ASSERT_TRUE(w.latest);
  EXPECT_GT(present(w.latest), w.likely);
  EXPECT_EQ(status.phase, Phase::carbonating);
  EXPECT_EQ(status.state.key, MessageKey::state_ready_at);
  ASSERT_TRUE(status.next_step);
  EXPECT_EQ(present(status.next_step).key, MessageKey::next_drop_and_vent);
  EXPECT_TRUE(status.co2.overshoots);
  EXPECT_THAT(status.advice, ::testing::IsEmpty()) << "a burst in good time needs no advice";
  EXPECT_FALSE(status.life.empty());
  EXPECT_TRUE(status.life.back().forecast);
}

TEST_F(Cold, SetAndWaitTakesAboutOneToTwoWeeks) {
  s.gas(k, filled, 10, GasPurpose::set_and_wait);
  const KegStatus status = s.status(k, filled + std::chrono::hours(1));
  ASSERT_EQ(status.readiness.kind, ReadinessKind::ready_at);
  EXPECT_GT(days_until(present(status.readiness.when).likely, filled), 5);
  EXPECT_LT(days_until(present(status.readiness.when).likely, filled), 15);
}

TEST_F(Cold, BelowItsRangeWithoutGasIsBlocked) {
  const KegStatus status = s.status(k, filled + std::chrono::hours(5));
  EXPECT_EQ(status.readiness.kind, ReadinessKind::blocked);
  EXPECT_EQ(status.readiness.headline.key, MessageKey::blocked_no_gas);
  ASSERT_TRUE(status.readiness.to_do);
  EXPECT_EQ(present(status.readiness.to_do).key, MessageKey::next_set_gas);
  EXPECT_TRUE(says(status.advice, MessageKey::adv_no_gas));
}

TEST_F(Cold, TooLittlePressureIsBlockedAndSaysWhatToSet) {
  s.gas(k, filled, 3);
  const KegStatus status = s.status(k, filled + std::chrono::hours(5));
  EXPECT_EQ(status.readiness.headline.key, MessageKey::blocked_too_low);
  EXPECT_TRUE(says(status.advice, MessageKey::adv_too_low));
}

TEST_F(Cold, AReadingInItsRangeMakesItReady) {
  s.gas(k, filled, 10);
  CarbonationReading read;
  read.keg = k;
  read.co2 = units::to_concentration(units::volumes_of_co2(2.5));
  read.co2_half_width = units::to_concentration(units::volumes_of_co2(0.05));
  s.log(day(4), read);
  const KegStatus status = s.status(k, day(4, 1));
  EXPECT_EQ(status.readiness.kind, ReadinessKind::ready_now);
  EXPECT_EQ(status.phase, Phase::ready);
  ASSERT_TRUE(status.co2.now);
  EXPECT_NEAR(present(status.co2.now).value().count(), 2.5, 0.05);
  EXPECT_LT(present(status.co2.now).half_width(), 0.1);
  const auto curve = Replay(s.journal, s.calendar).carbonation_curve(k, day(4, 1));
  EXPECT_EQ(curve.readings.size(), 1U);
  EXPECT_GT(curve.points.size(), 50U);
  for (const CurvePoint& p : curve.points) {
    EXPECT_LE(p.low, p.likely);
    EXPECT_LE(p.likely, p.high);
  }
}

TEST_F(Cold, HopsKeepAReadyKegBack) {
  s.gas(k, filled, 10);
  s.log(filled, HopsIn{k, "leaf", units::grams(50)});
  CarbonationReading read;
  read.keg = k;
  read.co2 = units::to_concentration(units::volumes_of_co2(2.5));
  read.co2_half_width = units::to_concentration(units::volumes_of_co2(0.05));
  s.log(day(4), read);
  EXPECT_EQ(s.status(k, day(4, 1)).readiness.headline.key, MessageKey::blocked_hops);
  EXPECT_EQ(s.status(k, day(4, 1)).phase, Phase::conditioning);
  s.log(day(5), HopsOut{k});
  EXPECT_EQ(s.status(k, day(5, 1)).readiness.kind, ReadinessKind::ready_now);
}

TEST_F(Cold, LoweringTheRegulatorDoesNotVent) {
  s.gas(k, filled, 30, GasPurpose::burst);
  s.gas(k, day(2, 19), 10);
  const double closed = present(s.status(k, day(5)).co2.now).value().count();
  s.log(day(2, 19), Vented{k, {}});
  const double vented = present(s.status(k, day(5)).co2.now).value().count();
  EXPECT_LT(vented, closed);
}

TEST_F(Cold, AWarmKegWaitsForItsBeerToCool) {
  Scenario w;
  const PlaceId cold = w.place("Cold box", 2.0);
  w.read(cold, day(0), 2.0);
  const KegId keg = w.keg("K02", cold);
  const BatchId b = w.batch("Bitter", 0.5, 2.0);
  w.log(day(0), Emptied{keg});
  w.prepare(keg, day(0, 2));
  w.fill(keg, b, day(1), 18.6, 20);
  w.gas(keg, day(1), 5);
  const KegStatus status = w.status(keg, day(1, 2));
  ASSERT_EQ(status.readiness.kind, ReadinessKind::ready_at);
  EXPECT_GT(days_until(present(status.readiness.when).likely, day(1)), 0.4);
  EXPECT_LT(days_until(present(status.readiness.when).likely, day(1)), 2.0);
}

TEST(Readiness, WithoutATemperatureItCannotTellAndSaysWhatWould) {
  Scenario s;
  const PlaceId shed = s.place("Shed");
  const KegId k = s.keg("K01", shed);
  s.log(day(0), Emptied{k});
  s.prepare(k, day(0, 1));
  s.fill(k, s.batch("Red Rye"), day(1));
  s.gas(k, day(1), 12);
  KegStatus status = s.status(k, day(2));
  EXPECT_EQ(status.readiness.kind, ReadinessKind::cant_tell);
  ASSERT_TRUE(status.readiness.to_do);
  EXPECT_EQ(present(status.readiness.to_do).key, MessageKey::next_read_temperature);
  s.read(shed, day(2), 3.0);
  EXPECT_EQ(s.status(k, day(2, 1)).readiness.kind, ReadinessKind::ready_at);
}

struct Delivered : ::testing::Test {
  Scenario s;
  PlaceId cellar_room = s.place("Cellar", 11.0);
  KegId k = s.keg("K20", cellar_room, KegKind::keg_50);
  BatchId lager = s.batch("House Lager", 2.3, 2.7);
};

TEST_F(Delivered, AKegThatCameInColdRestsADay) {
  s.log(day(1), s.receive(k, lager, 12.0, date(40)));
  KegStatus status = s.status(k, day(1, 3));
  ASSERT_EQ(status.readiness.kind, ReadinessKind::ready_at);
  EXPECT_NEAR(days_until(present(status.readiness.when).likely, day(1)), 1.0, 0.01);
  EXPECT_EQ(status.phase, Phase::conditioning);
  status = s.status(k, day(2, 1));
  EXPECT_EQ(status.readiness.kind, ReadinessKind::ready_now);
  EXPECT_EQ(status.phase, Phase::ready);
  EXPECT_FALSE(status.co2.now) << "its CO2 was never stated";
  EXPECT_THAT(status.advice, ::testing::IsEmpty());
}

TEST_F(Delivered, AKegThatCameInWarmRestsOneToThreeDays) {
  s.log(day(1), s.receive(k, lager, 22.0, date(40)));
  const KegStatus status = s.status(k, day(1, 3));
  ASSERT_EQ(status.readiness.kind, ReadinessKind::ready_at);
  const double likely = days_until(present(status.readiness.when).likely, day(1));
  EXPECT_GE(likely, 1.0);
  EXPECT_LE(likely, 3.0);
  EXPECT_GE(days_until(present(present(status.readiness.when).latest), day(1)), 2.0);
}

TEST_F(Delivered, DateSealAndWarmthBlockIt) {
  s.log(day(1), s.receive(k, lager, 12.0, date(10)));
  EXPECT_EQ(s.status(k, day(11, 12)).readiness.headline.key, MessageKey::blocked_past_best_by);
  EXPECT_EQ(s.status(k, day(10, 12)).readiness.kind, ReadinessKind::ready_now);
  Received broken = s.receive(k, lager, 12.0, date(40));
  broken.seal_intact = false;
  s.log(day(12), broken);
  EXPECT_EQ(s.status(k, day(14)).readiness.headline.key, MessageKey::blocked_seal);
  const PlaceId yard = s.place("Yard", 22.0);
  s.log(day(15), Moved{k, yard});
  s.log(day(15), s.receive(k, lager, 22.0, date(40)));
  EXPECT_EQ(s.status(k, day(17)).readiness.headline.key, MessageKey::blocked_warm);
}

// The kegs that stood there before anybody kept a log: counted, not received.
TEST_F(Delivered, AKegFoundWithADeliveredBatchIsJudgedLikeADeliveredOne) {
  BatchRecord came = *s.cellar(day(0)).batches.begin();
  came.origin = BatchOrigin::delivered;
  came.best_by = date(40);
  s.log(day(0), came);
  Found found{.keg = k, .contents = FoundContents::beer, .batch = lager};
  found.since = day(1);
  s.log(day(5), found);
  KegStatus status = s.status(k, day(5, 1));
  EXPECT_EQ(status.readiness.kind, ReadinessKind::ready_now);
  EXPECT_TRUE(present(status.contents).found);
  EXPECT_FALSE(status.co2.now);
  EXPECT_EQ(s.status(k, day(41)).readiness.headline.key, MessageKey::blocked_past_best_by);
  // One of our own is judged by its CO2, of which nothing is known.
  const BatchId ours = s.batch("Red Rye");
  found.batch = ours;
  s.log(day(42), found);
  status = s.status(k, day(43));
  EXPECT_EQ(status.readiness.kind, ReadinessKind::cant_tell);
  EXPECT_EQ(status.readiness.headline.key, MessageKey::cant_tell_co2);
}

TEST_F(Delivered, FirstExpiredGoesFirst) {
  const KegId later = s.keg("K21", cellar_room, KegKind::keg_50);
  const KegId none = s.keg("K22", cellar_room, KegKind::keg_50);
  const KegId resting = s.keg("K23", cellar_room, KegKind::keg_50);
  s.log(day(1), s.receive(later, lager, 12.0, date(60)));
  s.log(day(1), s.receive(none, lager, 12.0, std::nullopt));
  s.log(day(2), s.receive(k, lager, 12.0, date(40)));
  s.log(day(4, 20), s.receive(resting, lager, 12.0, date(20)));
  const CellarStatus c = s.cellar(day(5));
  EXPECT_EQ(c.find(k)->use_next_rank, 1);
  EXPECT_EQ(c.find(later)->use_next_rank, 2);
  EXPECT_EQ(c.find(none)->use_next_rank, 3);
  EXPECT_EQ(c.find(resting)->use_next_rank, 4) << "not ready yet";
}

TEST_F(Delivered, ALockedLineBlocksItsKegUntilACheckReleasesIt) {
  const LineId line = s.line("Line 3", "3");
  s.log(day(1), s.receive(k, lager, 12.0, date(40)));
  s.log(day(3), Tapped{k, line});
  s.log(day(4), LineLocked{line, LineAgent::caustic, "caustic 2 %", "cleaning"});
  CellarStatus c = s.cellar(day(4, 1));
  ASSERT_TRUE(c.find(line)->lock);
  EXPECT_EQ(c.find(k)->readiness.headline.key, MessageKey::blocked_line_locked);
  EXPECT_EQ(c.find(k)->state.key, MessageKey::state_do_not_serve);
  EXPECT_EQ(c.attention.front().severity, Severity::danger);
  LineCleaned cleaned;
  cleaned.line = line;
  cleaned.flush_check = FlushCheck::litmus;
  cleaned.flush_passed = true;
  s.log(day(4, 1), cleaned);
  EXPECT_TRUE(s.cellar(day(4, 2)).find(line)->lock) << "only a release ends a lock";
  s.log(day(4, 2), LineReleased{line, FlushCheck::litmus, false, "JB", ""});
  EXPECT_TRUE(s.cellar(day(4, 3)).find(line)->lock) << "a failed check releases nothing";
  s.log(day(4, 3), LineReleased{line, FlushCheck::litmus, true, "JB", ""});
  c = s.cellar(day(4, 4));
  EXPECT_FALSE(c.find(line)->lock);
  EXPECT_EQ(c.find(k)->readiness.kind, ReadinessKind::ready_now);
}

TEST_F(Delivered, AnUncheckedCleaningLocksTheLine) {
  const LineId line = s.line("Line 3", "3", 7);
  LineCleaned cleaned;
  cleaned.line = line;
  s.log(day(4), cleaned);
  const CellarStatus c = s.cellar(day(4, 1));
  EXPECT_TRUE(c.find(line)->lock);
  EXPECT_EQ(c.find(line)->clean_due, date(11));
  // Acid is a cleaning of another kind: what is due by the line's rule stays due.
  cleaned.agent = LineAgent::acid;
  s.log(day(6), cleaned);
  const CellarStatus later = s.cellar(day(6, 1));
  EXPECT_EQ(later.find(line)->last_cleaned, day(6));
  EXPECT_EQ(later.find(line)->clean_due, date(11));
}

}  // namespace
}  // namespace ullage::testing
