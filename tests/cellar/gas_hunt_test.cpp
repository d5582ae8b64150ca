// SPDX-License-Identifier: GPL-3.0-or-later
//
// Where to look first when gas is lost, in the whole order, and in which order to
// shut things off.
#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include "core/units/present.h"
#include "tests/cellar/gas_cellar.h"

namespace ullage::testing {
namespace {

using ::testing::ElementsAre;
using ::testing::Pair;

struct GasHunt : GasCellar {
  // Hardly anything until day 21, then 85 g a day: touched from day 19 on is
  // "shortly before the loss showed".
  void lose() {
    weigh(day(0), 2.0);
    weigh(day(7), 1.99);
    weigh(day(14), 1.98);
    weigh(day(21), 1.6);
    weigh(day(28), 1.0);
  }
  KegId on_gas(const std::string& tag, double at_day = 0) {
    const KegId k = delivered(tag, bitter, day(0));
    set_gas(k, day(0) + std::chrono::hours(static_cast<int>(24 * at_day) + 1), 12);
    return k;
  }
  void leak(std::optional<KegId> keg, int at_day, const std::string& where, bool found = true) {
    LeakTested t;
    t.keg = keg;
    t.leak_found = found;
    t.where = where;
    log(day(at_day), t);
  }
  void inspect(KegId keg, int at_day, bool seals) {
    Inspected i;
    i.keg = keg;
    i.seals_renewed = seals;
    log(day(at_day), i);
  }
  static std::vector<std::pair<SubjectRef, MessageKey>> suspected(const GasAccount& a) {
    std::vector<std::pair<SubjectRef, MessageKey>> out;
    out.reserve(a.suspects.size());
    for (const GasSuspect& s : a.suspects) out.emplace_back(s.about, s.why.key);
    return out;
  }

  BatchId bitter = batch("Bitter");
};

TEST(GasHuntOrder, IsWhatWasFoundThenFailedThenHandledThenNeverTested) {
  GasHunt scene;
  const KegId untested = scene.on_gas("K01"), gas_on = scene.on_gas("K02", 20),
              leaky = scene.on_gas("K03"), tapped = scene.on_gas("K04"),
              hopped = scene.on_gas("K05"), moved = scene.on_gas("K06"),
              resealed = scene.on_gas("K07"), put_right = scene.on_gas("K08"),
              tight = scene.on_gas("K10");
  scene.leak(leaky, 15, "lid");
  const LineId line = scene.line("Line 1", "1");
  scene.log(day(22), Tapped{tapped, line});
  HopsIn hops;
  hops.keg = hopped;
  hops.hops = "Fuggle";
  scene.log(day(24), hops);
  scene.set_gas(hopped, day(24, 1), 12);  // back on: the lid is what is said
  scene.log(day(23), Moved{moved, scene.box});
  scene.inspect(resealed, 21, true);
  scene.leak(put_right, 10, "post");
  scene.inspect(put_right, 12, false);
  scene.leak(tight, 26, "", false);
  const KegId failed = scene.keg("K09", scene.box);
  scene.log(day(1), HoldReading{failed, units::gauge_psi(30), {}, units::celsius(4), {}, true});
  scene.log(day(2), HoldReading{failed, units::gauge_psi(8), {}, units::celsius(4), {}, false});
  scene.set_gas(failed, day(3), 12);
  LeakTested of_bottle, of_line;
  of_bottle.bottle = scene.bottle;
  of_line.line = line;
  of_bottle.leak_found = of_line.leak_found = true;
  of_bottle.where = "valve";
  scene.log(day(16), of_bottle);
  scene.log(day(17), of_line);
  scene.lose();

  const GasAccount& a = scene.account(day(29));
  ASSERT_TRUE(a.alarm);
  ASSERT_EQ(a.loss_from, day(21));
  using K = MessageKey;
  EXPECT_THAT(
      GasHunt::suspected(a),
      ElementsAre(
          Pair(subject(line), K::suspect_leak_seen),
          Pair(subject(scene.bottle), K::suspect_leak_found),
          Pair(subject(leaky), K::suspect_leak_found),
          Pair(subject(failed), K::suspect_hold_failed), Pair(subject(hopped), K::suspect_opened),
          Pair(subject(moved), K::suspect_moved), Pair(subject(tapped), K::suspect_coupled),
          Pair(subject(resealed), K::suspect_seals), Pair(subject(gas_on), K::suspect_touched),
          Pair(subject(untested), K::suspect_untested),
          Pair(subject(scene.regulator), K::suspect_joint),
          Pair(subject(put_right), K::suspect_rest), Pair(subject(tight), K::suspect_rest)));
  // Each opens a leak test of the thing itself.
  EXPECT_EQ(get<LeakTested>(present(a.suspects[0].check.prefill)).line, line);
  EXPECT_EQ(get<LeakTested>(present(a.suspects[1].check.prefill)).bottle, scene.bottle);
  EXPECT_EQ(get<LeakTested>(present(a.suspects[2].check.prefill)).keg, leaky);
}

TEST(GasHuntOrder, AHoldTestBegunLaterPutsALeakRight) {
  GasHunt scene;
  const KegId k = scene.keg("K01", scene.box);
  scene.leak(k, 1, "lid");
  scene.log(day(2), HoldReading{k, units::gauge_psi(30), {}, units::celsius(4), {}, true});
  scene.log(day(8), HoldReading{k, units::gauge_psi(30), {}, units::celsius(4), {}, false});
  scene.set_gas(k, day(9), 12);
  scene.lose();
  const GasAccount& a = scene.account(day(29));
  ASSERT_TRUE(a.alarm);
  EXPECT_THAT(GasHunt::suspected(a),
              ::testing::Contains(Pair(subject(k), MessageKey::suspect_rest)));
}

// Without an alarm what somebody found still stands, and is said.
TEST(GasHuntOrder, ALeakFoundOnABottleOrALineIsSaidWithoutAnAlarm) {
  GasHunt scene;
  LeakTested t;
  t.bottle = scene.bottle;
  t.leak_found = true;
  t.where = "valve";
  scene.log(day(0), t);
  const GasAccount& a = scene.account(day(1));
  EXPECT_FALSE(a.alarm);
  ASSERT_EQ(a.suspects.size(), 1u);
  EXPECT_TRUE(a.isolation.empty());
  EXPECT_TRUE(says(scene.told.attention, MessageKey::suspect_leak_found));
  t.leak_found = false;
  scene.log(day(2), t);
  EXPECT_TRUE(scene.account(day(3)).suspects.empty());
  EXPECT_FALSE(says(scene.told.attention, MessageKey::suspect_leak_found));
}

std::vector<std::pair<MessageKey, SubjectRef>> steps_of(const GasAccount& a) {
  std::vector<std::pair<MessageKey, SubjectRef>> out;
  out.reserve(a.isolation.size());
  for (const IsolationStep& s : a.isolation) out.emplace_back(s.what.key, present(s.task.about));
  return out;
}

TEST(GasIsolation, EveryBottleThenEveryBranchThenEveryKegThenWhatIsBefore) {
  GasHunt scene;
  const BottleId second = scene.gas_bottle("Bottle 2");
  const RegulatorId bar = scene.gas_regulator("Bar", {}, scene.regulator);
  const RegulatorId manifold = scene.gas_regulator("Manifold", second, scene.regulator);
  const KegId k = scene.delivered("K01", scene.bitter, day(0));
  scene.set_gas(k, day(0, 1), 12, bar);
  for (int week = 0; week < 4; ++week) {
    scene.weigh(day(7 * week), 2.0 - 0.3 * week);
    scene.weigh(day(7 * week, 1), 2.0 - 0.3 * week, second);
  }
  const GasAccount& a = scene.account(day(22));
  ASSERT_TRUE(a.alarm);
  ASSERT_EQ(a.bottles.size(), 2u);
  using K = MessageKey;
  // The regulator that feeds the other two is no branch of its own.
  EXPECT_THAT(steps_of(a), ElementsAre(Pair(K::isolate_weigh, subject(scene.bottle)),
                                       Pair(K::isolate_weigh, subject(second)),
                                       Pair(K::isolate_bottle, subject(scene.bottle)),
                                       Pair(K::isolate_bottle, subject(second)),
                                       Pair(K::isolate_branch, subject(scene.bottle)),
                                       Pair(K::isolate_branch, subject(scene.bottle)),
                                       Pair(K::isolate_keg, subject(k)),
                                       Pair(K::isolate_rest, subject(scene.regulator))));
  EXPECT_EQ(get<BottleWeighed>(present(a.isolation[1].task.prefill)).bottle, second);
  EXPECT_EQ(get<std::string>(a.isolation[4].what.args.at(0)), "Bar");
  EXPECT_EQ(get<std::string>(a.isolation[5].what.args.at(0)), "Manifold");
  EXPECT_EQ(get<LeakTested>(present(a.isolation[7].task.prefill)).regulator, scene.regulator);
  (void)manifold;
}

}  // namespace
}  // namespace ullage::testing
