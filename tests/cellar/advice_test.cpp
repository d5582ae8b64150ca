// SPDX-License-Identifier: GPL-3.0-or-later
//
// Each piece of advice, and what puts it right.
#include <gmock/gmock.h>

#include "core/units/present.h"
#include "tests/cellar/scenario.h"

namespace ullage::testing {
namespace {

struct Advised : ::testing::Test {
  Scenario s;
  PlaceId box = s.place("Cold box", 2.0);
  KegId k = s.keg("K01", box);
  BatchId rye = s.batch("Red Rye", 2.3, 2.7);
  void SetUp() override { s.log(day(0), Emptied{k}); }
  [[nodiscard]] bool advises(MessageKey key, Instant when) const {
    return says(s.status(k, when).advice, key);
  }
};

TEST_F(Advised, AWellKeptKegGetsNone) {
  s.read(box, day(0), 2.0);
  s.prepare(k, day(1));
  s.fill(k, rye, day(2), 18.6, 2.0);
  s.gas(k, day(2), 11, GasPurpose::set_and_wait);
  for (int d = 2; d < 20; ++d) {
    EXPECT_THAT(s.status(k, day(d, 6)).advice, ::testing::IsEmpty()) << "day " << d;
  }
}

TEST_F(Advised, AnUncleanedFillStandsUntilTheCleaningIsLoggedOrItIsEmptied) {
  s.fill(k, rye, day(2));
  EXPECT_TRUE(advises(MessageKey::bad_filled_uncleaned, day(3)));
  s.prepare(k, day(1));
  EXPECT_FALSE(advises(MessageKey::bad_filled_uncleaned, day(3)));
}

TEST_F(Advised, AnUnsanitisedFillStandsUntilEmptied) {
  s.log(day(1), Cleaned{k, CleaningMethod::caustic, "", {}, {}, {}});
  s.fill(k, rye, day(2));
  EXPECT_TRUE(advises(MessageKey::bad_filled_unsanitised, day(30)));
  s.log(day(31), Emptied{k});
  EXPECT_FALSE(advises(MessageKey::bad_filled_unsanitised, day(32)));
}

TEST_F(Advised, FillingAFullKegIsADangerUntilEmptiedInBetween) {
  s.prepare(k, day(1));
  s.fill(k, rye, day(2));
  s.fill(k, rye, day(9));
  EXPECT_TRUE(advises(MessageKey::bad_filled_not_empty, day(10)));
  EXPECT_EQ(s.status(k, day(10)).advice.front().severity, Severity::danger);
  EXPECT_TRUE(misfits(s.status(k, day(10)), MessageKey::misfit_filled_while_full));
  EXPECT_FALSE(s.status(k, day(10)).level.left);
  s.log(day(8), Emptied{k});
  EXPECT_FALSE(advises(MessageKey::bad_filled_not_empty, day(10)));
}

TEST_F(Advised, PressureAboveTheRatingUntilLoweredAndVentedThenInspected) {
  KegRecord weak = keg_from_preset(KegKind::ball_lock_19);
  weak.keg = k;
  weak.tag = "K01";
  weak.place = box;
  weak.rated_pressure = units::gauge_psi(20);
  s.log(day(0), weak);
  s.prepare(k, day(1));
  s.fill(k, rye, day(2), 18.6, 2.0);
  s.gas(k, day(2, 1), 30, GasPurpose::burst);
  EXPECT_TRUE(advises(MessageKey::bad_over_rated, day(2, 2)));
  s.gas(k, day(2, 3), 11);
  EXPECT_TRUE(advises(MessageKey::bad_over_rated, day(2, 4))) << "lowering does not vent";
  s.log(day(2, 5), Vented{k, {}});
  EXPECT_FALSE(advises(MessageKey::bad_over_rated, day(2, 6)));
  EXPECT_TRUE(advises(MessageKey::bad_inspect_after_pressure, day(2, 6)));
  s.log(day(3), Inspected{k, false, false, false, true});
  EXPECT_FALSE(advises(MessageKey::bad_inspect_after_pressure, day(4)));
  s.gas(k, day(4), 17);
  EXPECT_TRUE(advises(MessageKey::bad_near_rated, day(4, 1)));
  s.gas(k, day(5), 11);
  EXPECT_FALSE(advises(MessageKey::bad_near_rated, day(5, 1)));
}

TEST_F(Advised, AcidAfterChlorineUntilRinsed) {
  s.log(day(1), Sanitised{k, SanitisingMethod::chlorine, "", {}});
  s.log(day(1, 1), Cleaned{k, CleaningMethod::acid, "", {}, {}, {}});
  EXPECT_TRUE(advises(MessageKey::bad_acid_and_chlorine, day(1, 2)));
  s.log(day(1, 3), Cleaned{k, CleaningMethod::rinse, "", {}, {}, {}});
  EXPECT_FALSE(advises(MessageKey::bad_acid_and_chlorine, day(1, 4)));
}

TEST_F(Advised, OpeningUnderPressureUntilAVentIsLogged) {
  s.gas(k, day(1), 12);
  s.log(day(2), Cleaned{k, CleaningMethod::caustic, "", {}, {}, {}});
  EXPECT_TRUE(advises(MessageKey::bad_opened_unvented, day(3)));
  s.log(day(1, 23), Vented{k, {}});  // backdated
  s.log(day(1, 23), GasOff{k});
  EXPECT_TRUE(advises(MessageKey::bad_opened_unvented, day(3))) << "the gas was still on";
  s.log(day(1, 23.5), Vented{k, {}});
  EXPECT_FALSE(advises(MessageKey::bad_opened_unvented, day(3)));
}

TEST_F(Advised, ABurstLeftOnIsOverdueAndThenOverItsRange) {
  s.read(box, day(1), 2.0);
  s.prepare(k, day(1));
  s.fill(k, rye, day(2), 18.6, 2.0);
  s.gas(k, day(2), 30, GasPurpose::burst);
  const Instant drop = [&] {
    const auto next = s.status(k, day(2, 1)).next_step;
    return next && next->key == MessageKey::next_drop_and_vent ? get<Instant>(next->args[1])
                                                               : Instant{};
  }();
  ASSERT_GT(drop, day(2, 1));
  EXPECT_TRUE(advises(MessageKey::adv_drop, drop - std::chrono::hours(4)));
  EXPECT_TRUE(advises(MessageKey::adv_drop_overdue, drop + std::chrono::hours(2)));
  EXPECT_TRUE(advises(MessageKey::adv_over_carbonated, drop + std::chrono::days(6)));
  EXPECT_EQ(s.status(k, drop + std::chrono::days(6)).state.key, MessageKey::state_over_range);
  const KegStatus late = s.status(k, drop + std::chrono::hours(2));
  EXPECT_FALSE(late.advice.front().inputs.empty());
  EXPECT_EQ(present(late.advice.front().action).kind, "gas_set");
}

// A regulator turned down lets no gas out of the keg: the act that is offered has both.
TEST_F(Advised, ToDropABurstIsToVentToo) {
  s.read(box, day(1), 2.0);
  s.prepare(k, day(1));
  s.fill(k, rye, day(2), 18.6, 2.0);
  s.gas(k, day(2), 30, GasPurpose::burst);
  const auto next = s.status(k, day(2, 1)).next_step;
  ASSERT_TRUE(next && next->key == MessageKey::next_drop_and_vent);
  const Instant due = get<Instant>(present(next).args[1]) + std::chrono::hours(2);
  const std::vector<Advice> advice = s.status(k, due).advice;
  const auto drop = std::find_if(advice.begin(), advice.end(), [](const Advice& a) {
    return a.action && a.action->kind == "gas_set";
  });
  ASSERT_NE(drop, advice.end());
  EXPECT_TRUE(drop->action->vent_to_it);
  const GaugePressure to = get<GasSet>(present(drop->action->prefill)).pressure;
  s.log(due, GasSet{k, to, GasPurpose::serving, {}, {}, {}});
  const Instant later = due + std::chrono::days(7);
  const auto lowered_only = s.status(k, later).co2.now;
  s.log(due, Vented{k, to});
  const auto vented = s.status(k, later).co2.now;
  ASSERT_TRUE(lowered_only && vented);
  EXPECT_GT(present(lowered_only).value().count(), present(vented).value().count() + 0.02);
}

TEST_F(Advised, AFailedHoldTestSaysHowMuchItLoses) {
  s.prepare(k, day(1));
  const auto reading = [&](Instant when, double psi, bool first) {
    s.log(when, HoldReading{k, units::gauge_psi(psi), {}, units::celsius(15), {}, first});
  };
  reading(day(2), 30, true);
  EXPECT_TRUE(s.status(k, day(2, 1)).hold_result);
  reading(day(3), 20, false);
  const KegStatus status = s.status(k, day(3, 1));
  EXPECT_TRUE(status.hold_failed);
  EXPECT_EQ(status.state.key, MessageKey::state_fix_seal);
  EXPECT_TRUE(says(status.advice, MessageKey::adv_hold_failed));
  s.log(day(4), Inspected{k, true, false, false, true});
  EXPECT_FALSE(s.status(k, day(4, 1)).hold_failed) << "new seals, new test";
}

TEST_F(Advised, HeldBackLentAndRecalled) {
  s.prepare(k, day(1));
  s.fill(k, rye, day(2));
  s.log(day(3), Quarantined{k, "tastes of butter"});
  EXPECT_TRUE(advises(MessageKey::adv_held_back, day(4)));
  const LineId line = s.line("Line 1", "1");
  s.log(day(4), Tapped{k, line});
  EXPECT_TRUE(advises(MessageKey::bad_on_tap_held_back, day(5)));
  s.log(day(5), Untapped{k});
  EXPECT_FALSE(advises(MessageKey::bad_on_tap_held_back, day(6)));
  s.log(day(6), Cleared{k, "fine"});
  EXPECT_FALSE(advises(MessageKey::adv_held_back, day(7)));
  s.log(day(7), Lent{k, "Sam", {}, date(10)});
  EXPECT_FALSE(advises(MessageKey::adv_lent_overdue, day(10)));
  EXPECT_TRUE(advises(MessageKey::adv_lent_overdue, day(11)));
  s.log(day(12), Returned{k});
  EXPECT_FALSE(advises(MessageKey::adv_lent_overdue, day(13)));
  s.log(day(13), BatchRecalled{rye, "glass"});
  EXPECT_TRUE(advises(MessageKey::adv_recalled, day(14)));
  EXPECT_EQ(s.status(k, day(14)).readiness.kind, ReadinessKind::blocked);
}

TEST_F(Advised, DatesTapTimeHopsAndFermentation) {
  s.prepare(k, day(1));
  BatchRecord dated;
  dated.batch = BatchId{Uuid{{9}}};
  dated.beer = s.cellar(day(1)).beers.front().beer;
  dated.name = "Brew 9";
  dated.final_gravity = units::specific_gravity(1.010);
  dated.best_by = date(60);
  s.log(day(1), dated);
  Filled f;
  f.keg = k;
  f.batch = dated.batch;
  f.volume = units::litres(18.6);
  f.gravity = units::specific_gravity(1.018);
  s.log(day(2), f);
  EXPECT_TRUE(advises(MessageKey::adv_gas_to_come, day(3)));
  s.log(day(3), HopsIn{k, "leaf", {}});
  EXPECT_FALSE(advises(MessageKey::adv_hops_long, day(12)));
  EXPECT_TRUE(advises(MessageKey::adv_hops_long, day(14)));
  EXPECT_FALSE(advises(MessageKey::adv_near_best_by, day(50)));
  EXPECT_TRUE(advises(MessageKey::adv_near_best_by, day(55)));
  EXPECT_TRUE(advises(MessageKey::adv_past_best_by, day(61)));
  s.log(day(5), Tapped{k, s.line("Line 1", "1")});
  EXPECT_FALSE(advises(MessageKey::adv_long_on_tap, day(40)));
  EXPECT_TRUE(advises(MessageKey::adv_long_on_tap, day(52)));
}

TEST_F(Advised, GasOnAnEmptyKeg) {
  s.gas(k, day(1), 12);
  EXPECT_TRUE(advises(MessageKey::adv_gas_on_empty, day(2)));
  s.log(day(2), GasOff{k});
  EXPECT_FALSE(advises(MessageKey::adv_gas_on_empty, day(3)));
}

TEST_F(Advised, LevelsCountDownAndConflictsAreShown) {
  s.prepare(k, day(1));
  s.fill(k, rye, day(2), 18.6);
  const LineId line = s.line("Line 1", "1");
  s.log(day(10), Tapped{k, line});
  LevelReading glasses;
  glasses.keg = k;
  glasses.method = LevelMethod::glasses;
  glasses.glasses = 10;
  glasses.glass_volume = units::litres(0.5);
  s.log(day(12), glasses);
  KegStatus status = s.status(k, day(12));
  ASSERT_TRUE(status.level.left);
  EXPECT_NEAR(units::in_litres(present(status.level.left).value()), 18.6 - 5.25, 0.3);
  // 5.25 L on a Thursday and a Friday, which draw more than most: 13.35 L at 2.6 a
  // day are 5.1 days, at the slower week's 1.9 seven.
  ASSERT_TRUE(status.next_step);
  EXPECT_EQ(present(status.next_step).key, MessageKey::next_empty_about);
  const Window out = get<Window>(present(status.next_step).args[0]);
  EXPECT_GT(units::in_days(between(day(12), out.likely)), 4.5);
  EXPECT_LT(units::in_days(between(day(12), out.likely)), 7.0);
  LevelReading heft;
  heft.keg = k;
  heft.method = LevelMethod::heft;
  heft.fraction_left = units::fraction(0.1);  // far below what was counted
  s.log(day(12, 1), heft);
  status = s.status(k, day(12, 1));
  EXPECT_LT(units::in_litres(present(status.level.left).value()), 3.0);
  heft.fraction_left = units::fraction(1.0);  // and now far above
  s.log(day(12, 2), heft);
  EXPECT_TRUE(advises(MessageKey::adv_level_conflict, day(12, 2)));
}

TEST_F(Advised, PlacesAndLinesAndBottlesSpeakUp) {
  s.prepare(k, day(1));
  s.fill(k, rye, day(2));
  s.read(box, day(2), 2.0);
  EXPECT_FALSE(says(s.cellar(day(5)).attention, MessageKey::adv_place_stale));
  EXPECT_TRUE(says(s.cellar(day(12)).attention, MessageKey::adv_place_stale));
  const LineId line = s.line("Line 1", "1", 14);
  LineCleaned cleaned;
  cleaned.line = line;
  cleaned.flush_check = FlushCheck::ph;
  cleaned.flush_passed = true;
  s.log(day(3), cleaned);
  EXPECT_FALSE(s.cellar(day(17, 12)).find(line)->overdue) << "due that day";
  EXPECT_TRUE(s.cellar(day(18, 12)).find(line)->overdue);
  BottleRecord bottle;
  bottle.bottle = BottleId{Uuid{{3}}};
  bottle.name = "Bottle A";
  bottle.tare = units::kilograms(5.0);
  bottle.content = units::kilograms(6.35);
  s.log(day(1), bottle);
  s.log(day(2), BottleWeighed{bottle.bottle, units::kilograms(5.6), {}, {}});
  const CellarStatus c = s.cellar(day(3));
  ASSERT_TRUE(c.find(bottle.bottle)->gas_left);
  EXPECT_NEAR(units::in_kilograms(present(c.find(bottle.bottle)->gas_left).value()), 0.6, 1e-9);
  EXPECT_TRUE(says(c.attention, MessageKey::adv_bottle_low));
}

}  // namespace
}  // namespace ullage::testing
