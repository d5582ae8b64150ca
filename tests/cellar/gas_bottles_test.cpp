// SPDX-License-Identifier: GPL-3.0-or-later
//
// Bottles one by one (gauges, warmth, tests), gas that counts for none, and what the
// kegs on a supply and those still to be filled will take.
#include <gtest/gtest.h>

#include "core/cellar/kegs_to_fill.h"
#include "core/cellar/loose_gas.h"
#include "core/units/present.h"
#include "tests/cellar/gas_cellar.h"

namespace ullage::testing {
namespace {

double in_g(const MassEstimate& m) { return units::in_grams(m.value()); }

void read_gauge(GasCellar& scene, BottleId bottle, Instant when, double bar, double celsius) {
  GaugeRead g;
  g.bottle = bottle;
  g.pressure = units::gauge_bar(bar);
  g.temperature = units::celsius(celsius);
  scene.log(when, g);
}

void edit(GasCellar& scene, BottleId id, Instant when, auto change) {
  BottleRecord b;
  for (const BottleStatus& s : scene.cellar(when).bottles) {
    if (s.record.bottle == id) b = s.record;
  }
  change(b);
  scene.log(when, b);
}

TEST(GasGauge, OfMixedGasFallsWithWhatIsUsed) {
  GasCellar scene;
  edit(scene, scene.bottle, day(-50), [](BottleRecord& b) {
    b.co2 = units::mole_fraction(0.3);
    b.water_capacity = units::litres(10);
  });
  read_gauge(scene, scene.bottle, day(0), 100, 15);
  const ToldBottle& told = scene.account(day(1)).told.at(0);
  EXPECT_EQ(present(told.gauge).key, MessageKey::gauge_tells_mixed);
  EXPECT_FALSE(told.liquid_full_at) << "there is no liquid";
}

TEST(GasGauge, SaysWhatIsMissingAndWhatCannotBeComputed) {
  GasCellar scene;
  read_gauge(scene, scene.bottle, day(0), 60, 45);  // above the critical point
  EXPECT_EQ(present(scene.account(day(1)).told.at(0).gauge).key, MessageKey::gauge_cant_tell);
  edit(scene, scene.bottle, day(1), [](BottleRecord& b) { b.content.reset(); });
  EXPECT_EQ(present(scene.account(day(2)).told.at(0).gauge).key, MessageKey::gauge_needs_capacity);
}

TEST(GasGauge, OfAManifoldIsToldBottleByBottle) {
  GasCellar scene;
  const BottleId second = scene.gas_bottle("Bottle 2");
  scene.gas_regulator("Manifold", second, scene.regulator);
  read_gauge(scene, second, day(0), 30, 20);
  const GasAccount& a = scene.account(day(1));
  ASSERT_EQ(a.told.size(), 2u);
  EXPECT_FALSE(a.told[0].gauge);
  EXPECT_EQ(present(a.told[1].gauge).key, MessageKey::gauge_tells_vapour);
  EXPECT_TRUE(a.told[1].liquid_full_at);
}

// Filled to 68 % it is all liquid at 26.8 °C.
TEST(GasBottle, IsTooWarmWhereItsPlaceComesNearTheLiquidFullTemperature) {
  GasCellar scene;
  scene.read(scene.box, day(0), 20);
  EXPECT_FALSE(scene.account(day(1)).told.at(0).too_warm);
  EXPECT_FALSE(says(scene.told.attention, MessageKey::adv_bottle_warm));
  scene.read(scene.box, day(2), 26.6);  // within its error of that
  const ToldBottle& told = scene.account(day(3)).told.at(0);
  ASSERT_TRUE(told.place);
  EXPECT_LT(present(told.place).value(), present(told.liquid_full_at));
  EXPECT_TRUE(told.too_warm);
  EXPECT_TRUE(says(scene.told.attention, MessageKey::adv_bottle_warm));
  // Filled less, it may stand warmer.
  edit(scene, scene.bottle, day(3), [](BottleRecord& b) { b.fill_ratio = units::fraction(0.6); });
  EXPECT_FALSE(scene.account(day(4)).told.at(0).too_warm);
  EXPECT_FALSE(says(scene.told.attention, MessageKey::adv_bottle_warm));
}

TEST(GasBottle, ItsTestIsSaidAMonthBeforeAndWarnedOfWhenOverdue) {
  GasCellar scene;
  const auto due = [&](int on) {
    edit(scene, scene.bottle, day(0), [&](BottleRecord& b) { b.retest_due = date(on); });
    return scene.cellar(day(0, 12)).attention;
  };
  EXPECT_FALSE(says(due(31), MessageKey::adv_bottle_retest));
  EXPECT_TRUE(says(due(20), MessageKey::adv_bottle_retest));
  EXPECT_TRUE(says(due(0), MessageKey::adv_bottle_retest)) << "on the day it is not late yet";
  const auto late = due(-1);
  EXPECT_FALSE(says(late, MessageKey::adv_bottle_retest));
  ASSERT_TRUE(says(late, MessageKey::adv_bottle_retest_over));
  for (const Advice& a : late) {
    if (a.headline.key == MessageKey::adv_bottle_retest_over) {
      EXPECT_EQ(a.severity, Severity::warning);
    }
  }
}

TEST(GasBottle, ATestThatWasDoneMovesItToTheDayCertified) {
  GasCellar scene;
  edit(scene, scene.bottle, day(-40), [](BottleRecord& b) { b.retest_due = date(-1); });
  WorkDone done;
  done.work = WorkKind::bottle_retest;
  done.bottle = scene.bottle;
  done.next_due = date(3650);
  scene.log(day(-2), done);
  EXPECT_EQ(scene.account(day(1)).told.at(0).test_due, date(3650));
  EXPECT_FALSE(says(scene.told.attention, MessageKey::adv_bottle_retest_over));
  done.complete = false;  // only begun
  done.next_due = date(2);
  scene.log(day(0), done);
  EXPECT_EQ(scene.account(day(1)).told.at(0).test_due, date(3650));
}

TEST(LooseGas, NamesRegulatorsWithoutABottleAndKegsOfNoNamedRegulator) {
  GasCellar scene;
  const BatchId bitter = scene.batch("Bitter");
  const KegId unnamed = scene.delivered("K01", bitter, day(0));
  scene.gas(unnamed, day(0, 1), 12);
  EXPECT_TRUE(loose_gas(scene.cellar(day(1))).unnamed.empty()) << "the only supply's";
  const BottleId second = scene.gas_bottle("Bottle 2");
  scene.gas_regulator("Regulator 2", second);
  const RegulatorId spare = scene.gas_regulator("Spare", {});
  const KegId on_spare = scene.delivered("K02", bitter, day(0));
  scene.set_gas(on_spare, day(0, 1), 12, spare);
  const LooseGas loose = loose_gas(scene.cellar(day(1)));
  ASSERT_EQ(loose.regulators.size(), 1u);
  EXPECT_EQ(loose.regulators[0].name, "Spare");
  EXPECT_EQ(loose.on_those, std::vector<std::string>{"K02"});
  EXPECT_EQ(loose.unnamed, std::vector<std::string>{"K01"});
}

// 18.6 L at 12 psi and 4 °C push 3.59 g/L out; at equilibrium nearly nothing is
// taken up besides.
TEST(GasPlanned, IsWhatTheKegsOnItStillTake) {
  GasCellar scene;
  const KegId k = scene.delivered("K01", scene.batch("Bitter"), day(0));
  EXPECT_EQ(in_g(scene.account(day(0, 2)).planned), 0) << "no gas on it";
  scene.set_gas(k, day(0, 1), 12);
  scene.weigh(day(0, 2), 2.0);
  const GasAccount& plenty = scene.account(day(0, 3));
  EXPECT_NEAR(in_g(plenty.planned), 18.6 * 3.59, 8);
  EXPECT_GT(present(plenty.planned_enough).count(), 0.99);
  scene.weigh(day(0, 4), 0.02);
  EXPECT_LT(present(scene.account(day(0, 5)).planned_enough).count(), 0.01);
}

// By the figures of practice: 19 L take 68 g to push out at 12 psi and 62 g to
// carbonate from 0.85 to 2.5 volumes.
TEST(GasPlanned, KegsStillToFillAreAddedAndWriteNothing) {
  GasCellar scene;
  const KegId k = scene.delivered("K01", scene.batch("Bitter"), day(0));
  scene.set_gas(k, day(0, 1), 12);
  scene.log(day(0, 2), Tapped{k, scene.line("Line 1", "1")});
  scene.weigh(day(0), 2.0);
  scene.heavy(k, day(10), 4.2 + 8.8);
  scene.weigh(day(10), 2.0 - 0.036);
  const std::size_t entries = scene.journal.entries().size();
  const GasAccount& a = scene.account(day(10, 1));
  EXPECT_FALSE(gas_for({0, units::litres(19)}, a));
  EXPECT_FALSE(gas_for({3, units::litres(0)}, a));
  const auto few = gas_for({5, units::litres(19)}, a);
  ASSERT_TRUE(few && few->enough && few->work_for);
  EXPECT_NEAR(in_g(present(few).for_them), 5 * (68 + 62), 0.04 * 5 * 130);
  EXPECT_NEAR(in_g(present(few).in_all), in_g(present(few).for_them) + in_g(a.planned), 1e-6);
  EXPECT_GT(present(present(few).enough).count(), 0.95);
  const double days = in_g(present(few).in_all) / in_g(present(a.use_per_day));
  EXPECT_NEAR(units::in_days(present(present(present(few).work_for).likely)), days, 0.05 * days);
  EXPECT_LT(present(present(present(few).work_for).earliest),
            present(present(present(few).work_for).likely));
  const auto many = gas_for({25, units::litres(19)}, a);
  EXPECT_LT(present(present(many).enough).count(), 0.05);
  EXPECT_EQ(scene.journal.entries().size(), entries);
}

// The question starts with the kegs that stand empty, once a batch waits for them.
TEST(KegsToFill, AreThoseThatStandEmptyWhileABatchWaits) {
  Scenario scene;
  const PlaceId box = scene.place("Cold box", 4.0);
  const KegId full = scene.keg("K01", box);
  const KegId empty = scene.keg("K02", box);
  const KegId large = scene.keg("K03", box, KegKind::keg_50);
  scene.keg("K04", box);  // never told of
  const BatchId old = scene.batch("Bitter", 2.4, 2.6);
  for (const KegId k : {full, empty, large}) scene.log(day(-2), Emptied{k});
  scene.prepare(full, day(-1));
  scene.fill(full, old, day(0), 18.6, 4);
  const auto waiting = [&] { return kegs_waiting(scene.cellar(day(1)), scene.journal); };
  EXPECT_EQ(waiting().empty, (std::vector<std::string>{"K02", "K03"}));
  EXPECT_TRUE(waiting().batches.empty()) << "it is in K01";
  EXPECT_EQ(waiting().kegs.count, 0);
  scene.batch("Stout", 1.8, 2.2);
  EXPECT_EQ(waiting().batches.size(), 1U);
  EXPECT_EQ(waiting().kegs.count, 2);
  const KegRecord soda = keg_from_preset(KegKind::ball_lock_19);
  EXPECT_NEAR(units::in_litres(waiting().kegs.each), (units::in_litres(soda.nominal) + 50) / 2,
              1e-9);
  scene.log(day(0, 5), Quarantined{large, "dented"});
  EXPECT_EQ(waiting().empty, std::vector<std::string>{"K02"});
  // In the keg it waits no more, and the keg is full.
  scene.log(day(0, 6), Cleared{large});
  EXPECT_EQ(waiting().kegs.count, 2);
}

}  // namespace
}  // namespace ullage::testing
