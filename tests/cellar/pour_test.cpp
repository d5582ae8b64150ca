// SPDX-License-Identifier: GPL-3.0-or-later
//
// How a line pours out of the journal: set-up, calibration by timed pours, the
// what-if that writes nothing, kegs that lock their line.
#include <gmock/gmock.h>
#include <rapidcheck.h>

#include <cmath>

#include "core/units/present.h"
#include "tests/cellar/pour_scene.h"

namespace ullage::testing {
namespace {

double glass_seconds(const PourState& s) {
  return units::in_seconds(present(s.outlook.glass_time).likely);
}
double spread(const PourState& s) {
  return present(s.outlook.flow).half_width() / present(s.outlook.flow).value().value();
}

TEST(LineSetUp, TakesPiecesRestrictorAndFittings) {
  PourScene s;
  const PlaceId bar = s.place("Bar", 20);
  s.segment(2, 2, 0.25, bar, 2);
  const SegmentId first = s.segment(1, 6, 3.0 / 16, {});
  LineRecord r = s.record;
  r.restrictor_length = units::feet(1);
  r.restrictor_bore = units::inches(0.125);
  r.faucet_loss = units::psi(1);
  s.log(day(-40), r);
  const PourSetting& set = s.pour_now().setting;
  ASSERT_EQ(set.line.parts.size(), 6U);
  EXPECT_EQ(set.line.pieces[1].segment, first);
  EXPECT_EQ(set.line.pieces[2].place, bar);
  EXPECT_EQ(set.line.pieces[3].kind, LinePiece::restrictor);
  EXPECT_TRUE(set.line.pieces[0].assumed);
  EXPECT_FALSE(set.line.pieces[5].assumed);
  EXPECT_EQ(set.line.main_hose, 1U);
  // The tower stands as warm as the bar, the rest as cold as the keg.
  EXPECT_NEAR(units::in_celsius(set.standing[2].value()), 20, 1e-9);
  EXPECT_NEAR(units::in_celsius(set.standing[1].value()), 4, 0.1);
  EXPECT_EQ(set.place_names[2], "Bar");
  // The line's own rise gives way to the pieces'.
  EXPECT_NEAR(units::in_feet(physics::total_rise(set.line.parts)), 2, 1e-9);
}

TEST(LineSetUp, SaysWhatIsMissing) {
  PourScene s;
  LineRecord r = s.record;
  r.bore.reset();
  s.log(day(-40), r);
  EXPECT_EQ(present(s.line_now().no_pour).key, MessageKey::pour_no_hose);
  r.bore = units::millimetres(0.1);
  s.log(day(-39), r);
  EXPECT_EQ(present(s.line_now().no_pour).key, MessageKey::pour_hose_unlikely);
  r.bore = units::inches(3.0 / 16);
  s.log(day(-38), r);
  EXPECT_TRUE(s.line_now().pour);
  s.log(day(22), GasOff{s.keg});
  EXPECT_EQ(present(s.line_now(day(22, 1)).no_pour).key, MessageKey::pour_no_gas);
  s.log(day(23), Untapped{s.keg});
  EXPECT_EQ(present(s.line_now(day(23, 1)).no_pour).key, MessageKey::pour_no_keg);
}

// Nobody has timed it: the pour lies between handbook and friction, so wide.
TEST(Pour, UntimedIsWideAndTimedIsNarrow) {
  PourScene s;
  const PourState before = s.pour_now();
  EXPECT_EQ(before.setting.timed_pours, 0);
  EXPECT_GT(spread(before), 0.2);
  s.timed(day(21, 12), 12.0);
  const PourState after = s.pour_now();
  EXPECT_EQ(after.setting.timed_pours, 1);
  EXPECT_LT(spread(after), 0.1);
  // It pours now as it was timed, in the same glass: a US pint.
  EXPECT_NEAR(glass_seconds(after), 12.0, 0.05);
  ASSERT_TRUE(after.outlook.handbook) << "the handbook's figure stays beside it";
  EXPECT_NEAR(units::in_psi_per_foot(present(after.outlook.handbook).handbook), 3.0, 1e-9);
}

TEST(Pour, ANewHoseForgetsTheOldPours) {
  PourScene s;
  s.timed(day(21, 12), 12.0);
  LineRecord r = s.record;
  r.clean_source = "own rule";  // says nothing of the hose
  s.log(day(21, 13), r);
  EXPECT_EQ(s.pour_now().setting.timed_pours, 1);
  r.length = units::feet(10);
  s.log(day(21, 14), r);
  EXPECT_EQ(s.pour_now().setting.timed_pours, 0);
}

TEST(Pour, StrikingATimedPourIsAsIfItNeverWas) {
  PourScene s;
  const double before = glass_seconds(s.pour_now());
  TimedPour p;
  p.line = s.line;
  p.volume = units::us_pints(1);
  p.duration = units::seconds(20);
  const EntryId id = s.log(day(21, 12), p);
  EXPECT_NEAR(glass_seconds(s.pour_now()), 20, 0.05);
  s.strike(id);
  EXPECT_EQ(glass_seconds(s.pour_now()), before);
}

WhatIf any_change() {
  const auto pick = [](double low, double high) {
    return low + (high - low) * *rc::gen::inRange(0, 1001) / 1000.0;
  };
  WhatIf w;
  if (*rc::gen::arbitrary<bool>()) w.pressure = units::gauge_psi(pick(0, 40));
  if (*rc::gen::arbitrary<bool>()) w.length = units::feet(pick(1, 40));
  if (*rc::gen::arbitrary<bool>()) w.bore = units::millimetres(pick(3, 13));
  if (*rc::gen::arbitrary<bool>()) w.temperature = units::celsius(pick(0, 25));
  if (*rc::gen::arbitrary<bool>()) w.target = units::volumes_of_co2(pick(1.2, 4));
  return w;
}

// Any what-if says nothing that is not a number, and asking again says the same.
// That the page writes none of it is for tests/journeys/what_if_journey_test.cpp.
TEST(WhatIfProperty, SaysNumbersAndTheSameWhenAskedAgain) {
  const PourScene s;
  const CellarStatus before = s.cellar(day(22));
  const LineStatus& line = *before.find(s.line);
  EXPECT_TRUE(rc::check([&] {
    const WhatIf change = any_change();
    const PourSetting changed = with(line.pour->setting, change);
    const PourOutlook out = pour_outlook(changed);
    (void)entries_for(change, line, before);
    if (out.flow) {
      RC_ASSERT(std::isfinite(out.flow->value().value()) && out.flow->value().value() > 0);
      RC_ASSERT(std::isfinite(out.flow->half_width()));
    } else {
      RC_ASSERT(out.cant_tell.has_value());
    }
    for (const auto& p : out.places) RC_ASSERT(std::isfinite(units::in_pascals(p.pressure)));
    RC_ASSERT(s.line_now().pour->outlook.glass_time->likely ==
              line.pour->outlook.glass_time->likely);
  }));
}

TEST(WhatIf, MovesWhatItSaysAndNothingElse) {
  const PourScene s;
  const PourSetting now = s.pour_now().setting;
  const PourOutlook base = pour_outlook(now);
  const PourOutlook longer = pour_outlook(with(now, {.length = units::feet(12)}));
  EXPECT_GT(present(longer.glass_time).likely, present(base.glass_time).likely);
  EXPECT_EQ(longer.should_be, base.should_be);
  const PourOutlook wider = pour_outlook(with(now, {.bore = units::inches(0.25)}));
  EXPECT_LT(present(wider.glass_time).likely, present(base.glass_time).likely);
  const PourOutlook warmer = pour_outlook(with(now, {.temperature = units::celsius(10)}));
  EXPECT_GT(present(warmer.should_be), present(base.should_be));
  const PourOutlook more = pour_outlook(with(now, {.pressure = units::gauge_psi(20)}));
  EXPECT_LT(present(more.glass_time).likely, present(base.glass_time).likely);
  EXPECT_GT(present(more.settles).value(), present(base.settles).value());
  const PourOutlook target = pour_outlook(with(now, {.target = units::volumes_of_co2(3)}));
  EXPECT_GT(present(target.should_be), present(base.should_be));
  // The length that would be right pours a nominal pour.
  const PourOutlook right = pour_outlook(with(now, {.length = base.right_length}));
  EXPECT_NEAR(present(right.flow).value().value() / physics::nominal_pour().value(), 1, 1e-6);
}

TEST(WhatIf, AppliedBecomesEntriesThatMakeItTrue) {
  PourScene s;
  const CellarStatus before = s.cellar(day(22));
  const WhatIf change{units::gauge_psi(13), units::feet(9), units::inches(0.25), units::celsius(3),
                      units::volumes_of_co2(2.7)};
  const auto entries = entries_for(change, *before.find(s.line), before);
  ASSERT_EQ(entries.size(), 4U);
  EXPECT_EQ(kind_of(entries[0]), "gas_set");
  EXPECT_EQ(kind_of(entries[1]), "line_record");
  EXPECT_EQ(kind_of(entries[2]), "place_record");
  EXPECT_EQ(kind_of(entries[3]), "beer_record");
  for (const Payload& p : entries) s.log(day(22, 1), p);
  const PourSetting after = s.pour_now(day(40)).setting;
  EXPECT_NEAR(units::in_psi(after.pressure.value()), 13, 1e-9);
  EXPECT_NEAR(units::in_feet(after.line.hose().length), 9, 1e-9);
  EXPECT_NEAR(units::in_inches(after.line.hose().bore), 0.25, 1e-9);
  EXPECT_NEAR(present(after.target_high).count(), 2.8, 1e-6);
}

TEST(WhatIf, AppliesToThePieceOfALineToldByPieces) {
  PourScene s;
  s.segment(1, 2, 0.25, {});
  const SegmentId longest = s.segment(2, 7, 3.0 / 16, {});
  const CellarStatus all = s.cellar(day(22));
  const auto entries = entries_for({.length = units::feet(5)}, *all.find(s.line), all);
  ASSERT_EQ(entries.size(), 1U);
  const auto* piece = get_if<SegmentRecord>(&entries[0]);
  ASSERT_TRUE(piece);
  EXPECT_EQ(piece->segment, longest);
  EXPECT_NEAR(units::in_feet(piece->length), 5, 1e-9);
}

TEST(KegLock, AQuarantinedKegLocksItsLineUntilItIsCleared) {
  PourScene s;
  EXPECT_FALSE(s.line_now().do_not_serve());
  Quarantined hold;
  hold.keg = s.keg;
  hold.reason = "smells of vinegar";
  s.log(day(22, 1), hold);
  const LineStatus locked = s.line_now(day(22, 2));
  EXPECT_TRUE(locked.do_not_serve());
  EXPECT_EQ(present(locked.keg_lock).tag, "K01");
  EXPECT_EQ(locked.state.key, MessageKey::line_keg_locked);
  EXPECT_EQ(locked.advice.front().severity, Severity::danger);
  Cleared cleared;
  cleared.keg = s.keg;
  s.log(day(22, 3), cleared);
  EXPECT_FALSE(s.line_now(day(22, 4)).do_not_serve());
}

// 30 psi that are 20 a day later, as empty kegs are tested.
TEST(KegLock, ALeakingKegLocksItsLine) {
  PourScene s;
  s.log(day(22), Emptied{s.keg});
  s.log(day(22, 1), Cleaned{s.keg, CleaningMethod::caustic, "", {}, {}, {}});
  s.log(day(22, 2), HoldReading{s.keg, units::gauge_psi(30), {}, units::celsius(15), {}, true});
  s.log(day(23, 2), HoldReading{s.keg, units::gauge_psi(20), {}, units::celsius(15), {}, false});
  ASSERT_TRUE(s.status(s.keg, day(23, 3)).hold_failed);
  s.fill(s.keg, s.beer, day(23, 4), 18.6, 4);
  s.gas(s.keg, day(23, 5), 11.5);
  s.log(day(23, 6), Tapped{s.keg, s.line});
  const LineStatus locked = s.line_now(day(23, 7));
  ASSERT_TRUE(locked.keg_lock);
  EXPECT_EQ(present(locked.keg_lock).why.key, MessageKey::keg_lock_leaking);
  EXPECT_TRUE(locked.do_not_serve());
}

LeakTested leak_test_of(KegId keg, bool found) {
  LeakTested t;
  t.keg = keg;
  t.leak_found = found;
  if (found) t.where = "lid";
  return t;
}

TEST(KegLock, ALeakFoundLocksItsLineUntilATestFindsNone) {
  PourScene s;
  s.log(day(22, 1), leak_test_of(s.keg, true));
  const LineStatus locked = s.line_now(day(22, 2));
  ASSERT_TRUE(locked.keg_lock);
  EXPECT_EQ(present(locked.keg_lock).why.key, MessageKey::keg_lock_leak_found);
  EXPECT_EQ(locked.state.key, MessageKey::line_keg_locked);
  ASSERT_TRUE(locked.advice.front().action);
  EXPECT_EQ(present(locked.advice.front().action).kind, LeakTested::kind);
  s.log(day(22, 3), leak_test_of(s.keg, false));
  EXPECT_FALSE(s.line_now(day(22, 4)).do_not_serve());
  s.log(day(22, 5), leak_test_of(s.keg, true));
  EXPECT_TRUE(s.line_now(day(22, 6)).do_not_serve());
}

// Emptied, mended and shown to hold, the next beer in it may be served.
TEST(KegLock, ALeakFoundIsOverWithAHoldTestThatHoldsOrAnInspection) {
  for (const bool inspected : {true, false}) {
    PourScene s;
    s.log(day(22), leak_test_of(s.keg, true));
    s.log(day(22, 1), Emptied{s.keg});
    s.log(day(22, 1), Cleaned{s.keg, CleaningMethod::caustic, "", {}, {}, {}});
    ASSERT_TRUE(s.status(s.keg, day(22, 1)).leaks);
    if (inspected) {
      Inspected mended{.keg = s.keg};
      mended.seals_renewed = true;
      s.log(day(22, 2), mended);
    } else {
      s.log(day(22, 2), HoldReading{s.keg, units::gauge_psi(30), {}, units::celsius(15), {}, true});
      s.log(day(29, 2),
            HoldReading{s.keg, units::gauge_psi(30), {}, units::celsius(15), {}, false});
    }
    EXPECT_FALSE(s.status(s.keg, day(29, 3)).leaks) << inspected;
    s.fill(s.keg, s.beer, day(29, 4), 18.6, 4);
    s.gas(s.keg, day(29, 5), 11.5);
    s.log(day(29, 6), Tapped{s.keg, s.line});
    EXPECT_FALSE(s.line_now(day(29, 7)).do_not_serve()) << inspected;
  }
}

// A keg filled although it failed: what is done about it counts, not the tap alone.
TEST(KegLock, AFailedHoldTestIsOverWithALaterTestThatFindsNoLeak) {
  PourScene s;
  s.log(day(22), Emptied{s.keg});
  s.log(day(22), Cleaned{s.keg, CleaningMethod::caustic, "", {}, {}, {}});
  s.log(day(22, 1), HoldReading{s.keg, units::gauge_psi(30), {}, units::celsius(15), {}, true});
  s.log(day(23, 1), HoldReading{s.keg, units::gauge_psi(20), {}, units::celsius(15), {}, false});
  s.fill(s.keg, s.beer, day(23, 4), 18.6, 4);
  s.gas(s.keg, day(23, 5), 11.5);
  s.log(day(23, 6), Tapped{s.keg, s.line});
  ASSERT_TRUE(s.line_now(day(23, 7)).do_not_serve());
  s.log(day(23, 8), leak_test_of(s.keg, false));
  EXPECT_FALSE(s.line_now(day(23, 9)).do_not_serve());
  EXPECT_TRUE(s.status(s.keg, day(23, 9)).hold_failed) << "the reading stays what it was";
}

TEST(KegLock, ARecalledBatchLocksItsLineUntilTheKegIsOff) {
  PourScene s;
  s.log(day(22, 1), BatchRecalled{s.beer, "glass in it"});
  EXPECT_TRUE(s.line_now(day(22, 2)).keg_lock);
  s.log(day(22, 3), Untapped{s.keg});
  EXPECT_FALSE(s.line_now(day(22, 4)).do_not_serve());
}

}  // namespace
}  // namespace ullage::testing
