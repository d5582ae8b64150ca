// SPDX-License-Identifier: GPL-3.0-or-later
//
// Purging planned.
#include "core/physics/purge_plan.h"

#include <gtest/gtest.h>
#include <rapidcheck/gtest.h>

#include <cmath>
#include <limits>

#include "core/physics/atmosphere.h"

namespace ullage::physics {
namespace {

using namespace units;

Vessel empty_keg(AbsolutePressure ambient = sea_level()) {
  return {litres(19), litres(19), ambient, celsius(20)};
}
PurgeMeans textbook() {
  PurgeMeans m;
  m.gas = {mole_fraction(0)};
  m.cycle = {};
  m.sweep = {};
  return m;
}

TEST(PurgeSeries, OneOutcomeForEachCycle) {
  const auto all = purge_series(empty_keg(), {5, gauge_psi(30), {}});
  ASSERT_TRUE(all);
  ASSERT_EQ(all->size(), 6u);
  EXPECT_NEAR(in_ppm(all->front().oxygen), 209460, 1e-6);
  EXPECT_EQ(in_grams(all->front().co2_used), 0);
  const auto five = purge_by_cycles(empty_keg(), {5, gauge_psi(30), {}});
  EXPECT_EQ(all->back().oxygen, five->oxygen);
  EXPECT_NEAR(in_grams((*all)[2].co2_used) * 2.5, in_grams(five->co2_used), 1e-9);
}

// Arithmetic of perfect mixing, computed elsewhere: to 100 ppm it takes 14.7, 8.9
// and 6.9 cycles at 10, 20 and 30 psi.
TEST(PurgePlans, CyclesToAHundredPpm) {
  PurgeMeans means = textbook();
  means.liquid = false;
  const auto plans = purge_plans(ppm(100), empty_keg(), means);
  ASSERT_TRUE(plans);
  const auto cycles_at = [&](double psi_gauge) {
    for (const PurgePlan& p : *plans) {
      if (p.way == PurgeWay::cycles && std::abs(in_psi(p.cycles.high) - psi_gauge) < 0.01)
        return p.cycles.cycles;
    }
    return 0;
  };
  EXPECT_EQ(cycles_at(10), 15);
  EXPECT_EQ(cycles_at(20), 9);
  EXPECT_EQ(cycles_at(30), 7);
  // ln(209460 / 100) = 7.65 volumes of sweep; less gas than any cycles, if it mixes.
  EXPECT_EQ(plans->front().way, PurgeWay::sweep);
  EXPECT_EQ(plans->front().vessel_volumes, 8.0);
}

// With the mixing of real kegs, pushing out liquid is cheapest by far.
TEST(PurgePlans, LiquidPushIsCheapest) {
  const auto plans = purge_plans(ppm(200), empty_keg());
  ASSERT_TRUE(plans && !plans->empty());
  EXPECT_EQ(plans->front().way, PurgeWay::push_then_cycles);
  for (const PurgePlan& p : *plans) EXPECT_LE(p.outcome.oxygen, ppm(200));
  const auto easy = purge_plans(ppm(3000), empty_keg());
  EXPECT_EQ(easy->front().way, PurgeWay::liquid_push);
  // About 47 g for 19 L at 5 psi and 20 C: 19 L x 1.36 bar / RT.
  EXPECT_NEAR(in_grams(easy->front().outcome.co2_used), 47, 1.5);
}

// Higher up a cycle to the same gauge pressure changes more of the air.
TEST(PurgePlans, FewerCyclesAtAltitude) {
  PurgeMeans means = textbook();
  means.pressures = {gauge_psi(10)};
  means.liquid = false;
  const auto low = purge_plans(ppm(100), empty_keg(), means);
  const auto high = purge_plans(ppm(100), empty_keg(ambient_pressure(metres(3000)).value()), means);
  ASSERT_TRUE(low && high);
  const auto cycles = [](const std::vector<PurgePlan>& plans) {
    for (const PurgePlan& p : plans) {
      if (p.way == PurgeWay::cycles) return p.cycles.cycles;
    }
    return 0;
  };
  // ln(2095) / ln(1 + 10 / 14.696) = 14.7 and / ln(1 + 10 / 10.170) = 11.2.
  EXPECT_EQ(cycles(*low), 15);
  EXPECT_EQ(cycles(*high), 12);
}

TEST(PurgePlans, RefuseTheFloorAndNonsense) {
  EXPECT_EQ(purge_plans(ppm(30), empty_keg()).error().subject, Subject::oxygen_fraction);
  EXPECT_EQ(purge_plans(ppm(std::nan("")), empty_keg()).error().subject, Subject::oxygen_fraction);
  PurgeMeans absurd;
  absurd.pressures = {gauge_psi(500)};
  EXPECT_EQ(purge_plans(ppm(100), empty_keg(), absurd).error().subject, Subject::gauge_pressure);
  EXPECT_EQ(purge_series(empty_keg(), {-1, gauge_psi(30), {}}).error().subject, Subject::cycles);
  // One whiff of 0.1 psi needs more than 60 cycles: no plan, and no error.
  PurgeMeans weak;
  weak.pressures = {gauge_psi(0.1)};
  weak.liquid = false;
  const auto plans = purge_plans(ppm(31), empty_keg(), weak);
  ASSERT_TRUE(plans);
  for (const PurgePlan& p : *plans) EXPECT_NE(p.way, PurgeWay::cycles);
}

double purge_in(double low, double high) {
  return low + (high - low) * *rc::gen::inRange(0, 1000001) / 1e6;
}

RC_GTEST_PROP(PurgePlanProperty, EveryPlanGetsThereCheapestFirst, ()) {
  const double target = purge_in(50, 20000);
  const auto plans = purge_plans(ppm(target), empty_keg());
  RC_ASSERT(plans.has_value() && !plans->empty());
  double used = 0;
  for (const PurgePlan& p : *plans) {
    RC_ASSERT(in_ppm(p.outcome.oxygen) <= target * (1 + 1e-9));
    RC_ASSERT(p.outcome.best <= p.outcome.oxygen);
    RC_ASSERT(p.outcome.oxygen <= p.outcome.worst);
    RC_ASSERT(p.outcome.oxygen >= p.outcome.floor);
    RC_ASSERT(in_grams(p.outcome.co2_used) >= used);
    used = in_grams(p.outcome.co2_used);
  }
}

// One cycle fewer would not have done.
RC_GTEST_PROP(PurgePlanProperty, NoCycleTooMany, ()) {
  PurgeMeans means;
  means.liquid = false;
  const double target = purge_in(50, 20000);
  const auto plans = purge_plans(ppm(target), empty_keg(), means);
  RC_ASSERT(plans.has_value());
  for (const PurgePlan& p : *plans) {
    if (p.way != PurgeWay::cycles || p.cycles.cycles == 0) continue;
    const auto fewer =
        purge_by_cycles(empty_keg(), {p.cycles.cycles - 1, p.cycles.high, {}}, means.gas);
    RC_ASSERT(in_ppm(fewer->oxygen) > target * (1 - 1e-9));
  }
}

}  // namespace
}  // namespace ullage::physics
