// SPDX-License-Identifier: GPL-3.0-or-later
//
// The states of a keg's life, and entries that don't fit.
#include <gmock/gmock.h>

#include "core/units/present.h"
#include "tests/cellar/scenario.h"

namespace ullage::testing {
namespace {

TEST(Replay, AKegNobodySpokeOfIsNotKnown) {
  Scenario s;
  const KegId k = s.keg("K01");
  const KegStatus status = s.status(k, day(0));
  EXPECT_EQ(status.phase, Phase::unknown);
  EXPECT_EQ(status.state.key, MessageKey::state_unknown);
  EXPECT_EQ(status.readiness.kind, ReadinessKind::nothing_in_it);
  EXPECT_FALSE(s.status(KegId{}, day(0)).registered_now);
}

TEST(Replay, PreparationGoesStepByStepAndFillingUsesItUp) {
  Scenario s;
  const KegId k = s.keg("K01", s.place("Cold box", 1.0));
  s.log(day(0), Emptied{k});
  EXPECT_EQ(s.status(k, day(1)).phase, Phase::dirty);
  s.log(day(1), Cleaned{k, CleaningMethod::rinse, "", {}, {}, {}});
  EXPECT_EQ(s.status(k, day(2)).phase, Phase::dirty) << "a rinse is not cleaning";
  EXPECT_EQ(s.status(k, day(2)).state.key, MessageKey::state_rinsed);
  s.log(day(2), Cleaned{k, CleaningMethod::caustic, "", {}, {}, {}});
  EXPECT_EQ(s.status(k, day(3)).phase, Phase::clean) << "caustic is not sanitising";
  s.log(day(3), Sanitised{k, SanitisingMethod::iodine, "", {}});
  EXPECT_EQ(s.status(k, day(4)).phase, Phase::sanitised);
  s.log(day(4), Purged{k, PurgeMethod::cycles, 5, units::gauge_psi(30), {}, {}});
  EXPECT_EQ(s.status(k, day(5)).phase, Phase::purged);
  EXPECT_EQ(s.status(k, day(5)).state.key, MessageKey::state_ready_to_fill);
  s.log(day(5), Cleaned{k, CleaningMethod::rinse, "", {}, {}, {}});
  EXPECT_EQ(s.status(k, day(6)).phase, Phase::clean) << "a rinse undoes sanitising and purging";
}

TEST(Replay, SanitisingBeforeCleaningDoesNotCount) {
  Scenario s;
  const KegId k = s.keg("K01");
  s.log(day(0), Emptied{k});
  s.log(day(1), Sanitised{k, SanitisingMethod::iodine, "", {}});
  s.log(day(2), Cleaned{k, CleaningMethod::caustic, "", {}, {}, {}});
  EXPECT_EQ(s.status(k, day(3)).phase, Phase::clean);
  for (const PreparationStep& step : s.status(k, day(3)).preparation) {
    if (step.kind == "sanitised") {
      EXPECT_FALSE(step.still_counts);
    }
    if (step.kind == "cleaned") {
      EXPECT_TRUE(step.still_counts);
    }
  }
}

TEST(Replay, RenewedSealsUndoSanitisingAndPurging) {
  Scenario s;
  const KegId k = s.keg("K01");
  s.log(day(0), Emptied{k});
  s.prepare(k, day(1));
  ASSERT_EQ(s.status(k, day(2)).phase, Phase::purged);
  Inspected renewed;
  renewed.keg = k;
  renewed.seals_renewed = true;
  s.log(day(2), renewed);
  EXPECT_EQ(s.status(k, day(3)).phase, Phase::clean);
}

PreparationStep purged_step(Scenario& s, KegId k, Instant now) {
  for (const PreparationStep& step : s.status(k, now).preparation) {
    if (step.kind == "purged") return step;
  }
  return {};
}

std::int64_t whole(const Message& m, std::size_t argument) {
  return get<std::int64_t>(m.args.at(argument));
}

// Purges go on from one another until the keg is opened. 20 °C or 15 makes no odds to
// shares: 1 % of air and what the liquid gives off, then two thirds gone twice.
TEST(Replay, PurgesOfAShutKegGoOnFromOneAnother) {
  Scenario s;
  const KegId k = s.keg("K01");
  s.log(day(0), Emptied{k});
  s.log(day(1), Cleaned{k, CleaningMethod::caustic, "", {}, {}, {}});
  s.log(day(1, 1), Sanitised{k, SanitisingMethod::iodine, "", {}});
  s.log(day(2), Purged{k, PurgeMethod::pushed_liquid, {}, units::gauge_psi(5), {}, {}});
  const PreparationStep pushed = purged_step(s, k, day(2, 1));
  ASSERT_TRUE(pushed.result);
  EXPECT_EQ(present(pushed.result).key, MessageKey::step_purged_pushed);
  EXPECT_TRUE(pushed.goes_on_from.empty());
  s.log(day(3), Purged{k, PurgeMethod::cycles, 2, units::gauge_psi(30), {}, {}});
  const PreparationStep both = purged_step(s, k, day(3, 1));
  ASSERT_TRUE(both.result);
  ASSERT_EQ(present(both.result).key, MessageKey::step_purged_in_order);
  EXPECT_EQ(whole(present(both.result), 0), 2);
  EXPECT_EQ(both.goes_on_from, (std::vector{present(pushed.entry)}));
  // A fill to 30 psi at sea level changes 0.9 x 30 / 44.7 of what is over the gas's own 30 ppm.
  const double change = 1 - 0.9 * 30 / 44.696;
  const double left =
      30 + (static_cast<double>(whole(present(pushed.result), 0)) - 30) * change * change;
  EXPECT_NEAR(static_cast<double>(whole(present(both.result), 1)), left, 0.06 * left);
  // Cycles not said how many are passed over; renewed seals let the air in.
  s.log(day(4), Purged{k, PurgeMethod::cycles, {}, {}, {}, {}});
  EXPECT_EQ(whole(present(purged_step(s, k, day(4, 1)).result), 1), whole(present(both.result), 1));
  Inspected renewed;
  renewed.keg = k;
  renewed.seals_renewed = true;
  s.log(day(5), renewed);
  s.log(day(6), Purged{k, PurgeMethod::cycles, 2, units::gauge_psi(30), {}, {}});
  const PreparationStep anew = purged_step(s, k, day(6, 1));
  EXPECT_EQ(present(anew.result).key, MessageKey::step_purged_cycles);
  EXPECT_TRUE(anew.goes_on_from.empty());
  EXPECT_GT(whole(present(anew.result), 2), 20000);
}

TEST(Replay, FillTapEmpty) {
  Scenario s;
  const PlaceId box = s.place("Cold box", 1.0);
  const KegId k = s.keg("K01", box);
  const LineId line = s.line("Line 1", "1");
  const BatchId rye = s.batch("Red Rye");
  s.log(day(-1), Emptied{k});
  s.prepare(k, day(0));
  s.fill(k, rye, day(0, 19));
  KegStatus status = s.status(k, day(0, 20));
  ASSERT_TRUE(status.contents);
  EXPECT_EQ(present(status.contents).beer.name, "Red Rye");
  EXPECT_TRUE(present(status.contents).filled_by_us);
  ASSERT_TRUE(status.level.left);
  EXPECT_NEAR(units::in_litres(present(status.level.left).value()), 18.6, 1e-9);
  s.log(day(9), Tapped{k, line});
  status = s.status(k, day(9, 1));
  EXPECT_EQ(status.phase, Phase::on_tap);
  EXPECT_EQ(status.state.key, MessageKey::state_on_tap);
  EXPECT_EQ(s.cellar(day(9, 1)).find(line)->keg, k);
  s.log(day(20), Emptied{k});
  status = s.status(k, day(20, 1));
  EXPECT_EQ(status.phase, Phase::dirty);
  EXPECT_FALSE(status.contents);
  EXPECT_FALSE(s.cellar(day(20, 1)).find(line)->keg);
  EXPECT_THAT(status.doesnt_fit, ::testing::IsEmpty());
}

TEST(Replay, WhatDoesNotFitIsMarkedAndLeavesTheStageAlone) {
  Scenario s;
  const KegId k = s.keg("K01");
  const LineId line = s.line("Line 1", "1");
  s.log(day(0), Emptied{k});
  s.log(day(1), Tapped{k, line});
  s.log(day(1), Untapped{k});
  s.log(day(1), Emptied{k});
  s.log(day(1), Cleared{k, "fine"});
  s.log(day(1), Returned{k});
  s.log(day(1), HopsOut{k});
  s.log(day(1), Moved{k, PlaceId{Uuid{{7}}}});
  const KegStatus status = s.status(k, day(2));
  EXPECT_EQ(status.phase, Phase::dirty);
  for (const MessageKey key :
       {MessageKey::misfit_tapped_empty, MessageKey::misfit_untapped_not_on_tap,
        MessageKey::misfit_emptied_already, MessageKey::misfit_cleared_not_held,
        MessageKey::misfit_returned_not_lent, MessageKey::misfit_hops_out_none,
        MessageKey::misfit_unknown_place}) {
    EXPECT_TRUE(misfits(status, key)) << static_cast<int>(key);
  }
}

TEST(Replay, ABackdatedEmptyingMakesTheStoryFit) {
  Scenario s;
  const KegId k = s.keg("K01", s.place("Cold box", 1.0));
  const BatchId rye = s.batch("Red Rye");
  s.log(day(-1), Emptied{k});
  s.prepare(k, day(0));
  s.fill(k, rye, day(1));
  s.log(day(20), Cleaned{k, CleaningMethod::caustic, "", {}, {}, {}});
  KegStatus status = s.status(k, day(21));
  EXPECT_TRUE(misfits(status, MessageKey::misfit_cleaned_while_full));
  EXPECT_TRUE(status.contents) << "beer does not vanish by a cleaning entry";
  s.log(day(19), Emptied{k});
  status = s.status(k, day(21));
  EXPECT_THAT(status.doesnt_fit, ::testing::IsEmpty());
  EXPECT_EQ(status.phase, Phase::clean);
}

TEST(Replay, StrikingAFillInThePastDerivesThePresentAnew) {
  Scenario s;
  const KegId k = s.keg("K01", s.place("Cold box", 1.0));
  const BatchId rye = s.batch("Red Rye");
  s.log(day(-1), Emptied{k});
  s.prepare(k, day(0));
  const EntryId fill = s.fill(k, rye, day(1));
  s.gas(k, day(1, 1), 12);
  const Replay replay(s.journal, s.calendar);
  ASSERT_TRUE(replay.keg_status(k, day(3)).contents);
  s.strike(fill);
  const KegStatus status = replay.keg_status(k, day(3));
  EXPECT_FALSE(status.contents);
  EXPECT_EQ(status.phase, Phase::purged);
}

TEST(Replay, TheSameReplayTellsWhatAFreshOneTells) {
  Scenario s;
  const PlaceId box = s.place("Cold box", 1.0);
  const KegId a = s.keg("K01", box), b = s.keg("K02", box);
  const BatchId rye = s.batch("Red Rye");
  s.log(day(-1), Emptied{a});
  s.log(day(-1), Emptied{b});
  s.prepare(a, day(0));
  s.fill(a, rye, day(1));
  s.gas(a, day(1, 1), 12);
  const Replay replay(s.journal, s.calendar);
  (void)replay.status(day(2));
  s.read(box, day(2, 1), 3.0);  // about a place, so about both kegs
  const auto kept = replay.keg_status(a, day(4)).co2.now;
  const auto fresh = s.status(a, day(4)).co2.now;
  ASSERT_TRUE(kept && fresh);
  EXPECT_DOUBLE_EQ(present(kept).value().count(), present(fresh).value().count());
}

TEST(Replay, KegsAreInNaturalOrderAndFoundByTag) {
  Scenario s;
  s.keg("K10");
  s.keg("K2");
  s.keg("K1");
  const CellarStatus cellar = s.cellar(day(0));
  ASSERT_EQ(cellar.kegs.size(), 3U);
  EXPECT_EQ(cellar.kegs[0].record.tag, "K1");
  EXPECT_EQ(cellar.kegs[1].record.tag, "K2");
  EXPECT_EQ(cellar.kegs[2].record.tag, "K10");
  EXPECT_NE(cellar.keg_by_tag("k10"), nullptr);
  EXPECT_EQ(cellar.keg_by_tag("K3"), nullptr);
}

TEST(Replay, FoundIsAStartingPointAndUnknownsStayUnknown) {
  Scenario s;
  const KegId k = s.keg("K01", s.place("Cold box", 3.0));
  Found f;
  f.keg = k;
  f.contents = FoundContents::beer;
  s.log(day(0), f);
  const KegStatus status = s.status(k, day(1));
  EXPECT_EQ(status.phase, Phase::conditioning);
  EXPECT_FALSE(status.contents);
  EXPECT_FALSE(status.level.left);
  EXPECT_TRUE(status.level.cant_tell);
  EXPECT_FALSE(status.co2.now);
  EXPECT_EQ(status.readiness.kind, ReadinessKind::cant_tell);
  f.contents = FoundContents::empty_sanitised;
  s.log(day(2), f);
  EXPECT_EQ(s.status(k, day(3)).phase, Phase::sanitised);
}

}  // namespace
}  // namespace ullage::testing
