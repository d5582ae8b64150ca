// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/cellar/gas_account.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include "core/cellar/gas_draws.h"
#include "core/units/present.h"
#include "tests/cellar/gas_cellar.h"

namespace ullage::testing {
namespace {

double grams(const MassEstimate& m) { return units::in_grams(m.value()); }

// 1.9768 g/L a volume; an ideal gas at 12 psi and 4 °C has 26.7 psi x 44.01 g/mol /
// (R T) = 3.52 g/L, the real one 2 % more.
TEST(GasDraws, PushingAKegEmptyTakesItsVolumeOfGas) {
  GasCellar scene;
  const KegId k = scene.delivered("K01", scene.batch("Bitter"), day(0));
  scene.set_gas(k, day(0, 1), 12);
  scene.log(day(1), Tapped{k, scene.line("Line 1", "1")});
  scene.log(day(11), Emptied{k});
  double pushed = 0;
  const auto now = keg_timeline(k, scene.journal);
  for (const GasDraw& d : gas_draws(now, scene.journal, {day(-1), day(5), day(12)})) {
    EXPECT_EQ(d.regulator, scene.regulator);
    EXPECT_GE(d.to, d.from);
    if (d.work == GasWork::pushing) pushed += grams(d.mass);
  }
  EXPECT_NEAR(pushed, 18.6 * 3.59, 0.02 * 18.6 * 3.59);
}

TEST(GasDraws, EarlierFillingsOfAKegCountToo) {
  GasCellar scene;
  const BatchId bitter = scene.batch("Bitter");
  const KegId k = scene.delivered("K01", bitter, day(0));
  const LineId line = scene.line("Line 1", "1");
  for (int round = 0; round < 2; ++round) {
    const int at = 10 * round;
    if (round > 0) scene.log(day(at), scene.receive(k, bitter, 4, {}));
    scene.set_gas(k, day(at, 1), 12);
    scene.log(day(at, 2), Tapped{k, line});
    scene.log(day(at + 9), Emptied{k});
  }
  double pushed = 0;
  for (const GasDraw& d :
       gas_draws(keg_timeline(k, scene.journal), scene.journal, {day(-1), day(30)}))
    if (d.work == GasWork::pushing) pushed += grams(d.mass);
  EXPECT_GT(pushed, 120);
  EXPECT_LT(pushed, 150);
}

TEST(GasAccount, NotWeighedSaysSo) {
  GasCellar scene;
  EXPECT_EQ(present(scene.account(day(1)).cant_tell).key, MessageKey::gas_never_weighed);
  scene.weigh(day(0), 2.0);
  const GasAccount& once = scene.account(day(1));
  EXPECT_EQ(present(once.cant_tell).key, MessageKey::gas_weighed_once);
  EXPECT_FALSE(once.alarm);
  ASSERT_TRUE(once.gas_now);
  EXPECT_NEAR(grams(present(once.gas_now)), 2000, 1);
}

TEST(GasAccount, NothingOnTheGasAndALighterBottleIsALeak) {
  GasCellar scene;
  for (int week = 0; week < 4; ++week) scene.weigh(day(7 * week), 2.0 - 0.14 * week);
  const GasAccount& a = scene.account(day(22));
  ASSERT_TRUE(a.loss);
  EXPECT_NEAR(grams(present(a.loss).per_day), 20, 0.01);
  EXPECT_TRUE(a.alarm);
  EXPECT_EQ(a.cost_minor_per_30_days, 600);  // 600 g at a cent a gram
  ASSERT_TRUE(a.runs_out);
  // 1.58 kg at the last weighing at 20 g/day: 79 days.
  EXPECT_NEAR(units::in_days(between(day(21), present(a.runs_out).likely)), 79, 1.5);
  EXPECT_TRUE(says(scene.told.attention, MessageKey::adv_gas_loss));
  ASSERT_FALSE(a.suspects.empty());
  EXPECT_EQ(a.suspects.front().why.key, MessageKey::suspect_joint);
  ASSERT_TRUE(a.isolation_wait);
}

TEST(GasAccount, UseOfTheKegsIsNoLoss) {
  GasCellar scene;
  const KegId k = scene.delivered("K01", scene.batch("Bitter"), day(0));
  scene.set_gas(k, day(0, 1), 12);
  scene.log(day(0, 2), Tapped{k, scene.line("Line 1", "1")});
  scene.weigh(day(0), 2.0);
  scene.weigh(day(14), 2.0 - 18.6 * 0.00359);
  scene.log(day(14), Emptied{k});
  const GasAccount& a = scene.account(day(15));
  ASSERT_TRUE(a.loss);
  EXPECT_FALSE(a.alarm);
  EXPECT_LT(std::abs(grams(present(a.loss).per_day)), present(a.loss).per_day.half_width() * 1e3);
  EXPECT_TRUE(a.suspects.empty());
}

TEST(GasAccount, RefillStartsANewOne) {
  GasCellar scene;
  scene.weigh(day(0), 1.0);
  scene.weigh(day(7), 0.4);
  scene.weigh(day(8), 2.2);
  const GasAccount& a = scene.account(day(9));
  ASSERT_EQ(a.weighings.size(), 1u);
  EXPECT_EQ(a.weighings.front().at, day(8));
}

TEST(GasAccount, WeighedWithTheRegulatorOrWithout) {
  GasCellar scene;
  scene.weigh(day(0), 2.0);
  scene.log(day(7), BottleWeighed{scene.bottle, units::kilograms(3.5 + 1.1 + 2.0), scene.scale,
                                  scene.regulator});
  const GasAccount& a = scene.account(day(8));
  ASSERT_TRUE(a.loss);
  // The regulator's mass is not known, so 0.4 kg either way over 7 days.
  EXPECT_GT(present(a.loss).per_day.half_width() * 1e3, 400.0 / 7);
  EXPECT_FALSE(a.alarm);
}

TEST(GasAccount, ManifoldOfTwoBottlesHasOneAccount) {
  GasCellar scene;
  const BottleId second = scene.gas_bottle("Bottle 2");
  scene.gas_regulator("Manifold", second, scene.regulator);
  scene.weigh(day(0), 2.0);
  EXPECT_EQ(present(scene.account(day(1)).cant_tell).key, MessageKey::gas_weigh_together);
  scene.weigh(day(0, 1), 2.2, second);
  scene.weigh(day(10), 1.9);
  scene.weigh(day(10, 1), 2.0, second);
  const GasAccount& a = scene.account(day(11), 0);
  EXPECT_EQ(a.bottles.size(), 2u);
  EXPECT_EQ(scene.told.bottles.at(0).account, scene.told.bottles.at(1).account);
  ASSERT_EQ(a.weighings.size(), 2u);
  EXPECT_NEAR(grams(a.weighings.front().gas), 4200, 1);
  EXPECT_NEAR(grams(present(a.loss).per_day), 30, 0.01);
}

TEST(GasAccount, SecondaryRegulatorFeedsFromTheFirstOnesBottle) {
  GasCellar scene;
  const RegulatorId secondary = scene.gas_regulator("Secondary", {}, scene.regulator);
  const KegId k = scene.delivered("K01", scene.batch("Bitter"), day(0));
  scene.set_gas(k, day(0, 1), 12, secondary);
  const GasAccount& a = scene.account(day(1));
  ASSERT_EQ(a.branches.size(), 2u);
  EXPECT_EQ(a.branches[1].regulator.name, "Secondary");
  ASSERT_EQ(a.branches[1].kegs.size(), 1u);
  EXPECT_EQ(a.branches[1].kegs[0].tag, "K01");
}

TEST(GasAccount, KegsChangeBottlesWithTheirRegulator) {
  GasCellar scene;
  const BottleId second = scene.gas_bottle("Bottle 2");
  const KegId k = scene.delivered("K01", scene.batch("Bitter"), day(0));
  scene.weigh(day(0), 2.0);
  scene.weigh(day(0), 2.0, second);
  scene.set_gas(k, day(0, 1), 12);
  scene.log(day(0, 2), Tapped{k, scene.line("Line 1", "1")});
  scene.log(day(5), BottleChanged{scene.regulator, second, {}, true, true});
  scene.heavy(k, day(10), 4.2 + 8.8);
  scene.weigh(day(10), 2.0);
  scene.weigh(day(10), 2.0, second);
  const double first = grams(scene.account(day(11), 0).weighings.back().expected);
  const double other = grams(scene.account(day(11), 1).weighings.back().expected);
  // About ten litres in ten days, half of the time from each, but for the two hours
  // before it was tapped.
  EXPECT_NEAR(first, other, 0.05 * other);
  EXPECT_GT(first, 10);
}

TEST(GasAccount, SuspectsRankWhatWasFoundThenFailedThenTouched) {
  GasCellar scene;
  const BatchId bitter = scene.batch("Bitter");
  const KegId quiet = scene.delivered("K01", bitter, day(0));
  const KegId touched = scene.delivered("K02", bitter, day(0));
  const KegId leaky = scene.delivered("K03", bitter, day(0));
  scene.set_gas(quiet, day(0, 1), 12);
  scene.set_gas(leaky, day(0, 1), 12);
  scene.set_gas(touched, day(13), 12);
  LeakTested found;
  found.keg = leaky;
  found.leak_found = true;
  found.where = "lid";
  scene.log(day(20), found);
  scene.weigh(day(0), 2.0);
  scene.weigh(day(7), 1.99);
  scene.weigh(day(14), 1.98);
  scene.weigh(day(21), 1.6);
  scene.weigh(day(28), 1.2);
  const GasAccount& a = scene.account(day(29));
  ASSERT_TRUE(a.alarm);
  EXPECT_EQ(a.loss_from, day(21));
  EXPECT_FALSE(present(a.loss).steady);
  ASSERT_GE(a.suspects.size(), 3u);
  EXPECT_EQ(a.suspects[0].about, subject(leaky));
  // One step for the weighing, one for the bottle's valve, one for each keg, one for
  // what is before them.
  EXPECT_EQ(a.isolation.size(), 6u);
  EXPECT_EQ(a.isolation[2].task.about, subject(leaky));
}

TEST(GasAccount, GaugeTellsNothingWhileLiquidRemains) {
  GasCellar scene;
  GaugeRead g;
  g.bottle = scene.bottle;
  g.temperature = units::celsius(20);
  g.pressure = units::gauge_bar(56.3);  // saturation at 20 °C: 57.29 bar absolute (printed)
  scene.log(day(0), g);
  EXPECT_EQ(present(scene.account(day(1)).told.at(0).gauge).key, MessageKey::gauge_tells_nothing);
  g.pressure = units::gauge_bar(30);
  scene.log(day(2), g);
  EXPECT_EQ(present(scene.account(day(3)).told.at(0).gauge).key, MessageKey::gauge_tells_vapour);
  g.pressure = units::gauge_bar(90);
  scene.log(day(4), g);
  EXPECT_EQ(present(scene.account(day(5)).told.at(0).gauge).key,
            MessageKey::gauge_above_saturation);
  EXPECT_NEAR(units::in_celsius(present(scene.account(day(5)).told.at(0).liquid_full_at)), 26.8,
              0.05);
}

TEST(GasAccount, SameAfterAsBeforeAndAfterAStrike) {
  GasCellar scene;
  scene.weigh(day(0), 2.0);
  const EntryId wrong = scene.weigh(day(7), 1.0);
  scene.weigh(day(14), 1.9);
  EXPECT_EQ(scene.account(day(15)).weighings.size(), 1u);  // 1.0 to 1.9: a refill
  scene.strike(wrong);
  EXPECT_EQ(scene.account(day(15)).weighings.size(), 2u);
}

}  // namespace
}  // namespace ullage::testing
