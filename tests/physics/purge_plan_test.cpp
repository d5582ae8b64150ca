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
  m.mixing = {Mixing{}, Mixing{}};
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

// Perfect mixing multiplies (Branan): y0 (PL/PH)^n in whichever portions it is done.
TEST(PurgeInOrder, PortionsOfCyclesAreTheirSum) {
  const std::vector<PurgeAct> acts{PressureCycles{3, gauge_psi(30), {}},
                                   PressureCycles{2, gauge_psi(10), {}}};
  const auto all = purge_in_order(empty_keg(), acts, {mole_fraction(0)}, {Mixing{}, Mixing{}});
  ASSERT_TRUE(all);
  ASSERT_EQ(all->size(), 2u);
  const double psi_air = 14.69595;
  const double left =
      209460 * std::pow(psi_air / (psi_air + 30), 3) * std::pow(psi_air / (psi_air + 10), 2);
  EXPECT_NEAR(in_ppm(all->back().oxygen), left, 1e-4 * left);
  const auto in_one = purge_by_cycles(empty_keg(), {5, gauge_psi(30), {}});
  const auto in_two =
      purge_in_order(empty_keg(), std::vector<PurgeAct>{PressureCycles{3, gauge_psi(30), {}},
                                                        PressureCycles{2, gauge_psi(30), {}}});
  ASSERT_TRUE(in_one && in_two);
  EXPECT_NEAR(in_ppm(in_two->back().best), in_ppm(in_one->best), 1e-6);
  EXPECT_NEAR(in_ppm(in_two->back().oxygen), in_ppm(in_one->oxygen), 1e-6);
  EXPECT_NEAR(in_ppm(in_two->back().worst), in_ppm(in_one->worst), 1e-6);
  EXPECT_NEAR(in_grams(in_two->back().co2_used), in_grams(in_one->co2_used), 1e-9);
}

// Cycles after a push go on from what it left; before it they are for nothing, as the
// keg is opened to be filled.
TEST(PurgeInOrder, APushBeginsFromAir) {
  const PurgeAct push = LiquidPush{gauge_psi(5)};
  const PurgeAct cycles = PressureCycles{2, gauge_psi(10), {}};
  const auto alone = purge_by_liquid(empty_keg(), {gauge_psi(5)});
  const auto after = purge_in_order(empty_keg(), std::vector{push, cycles});
  const auto before = purge_in_order(empty_keg(), std::vector{cycles, push});
  ASSERT_TRUE(alone && after && before);
  EXPECT_EQ(after->front().oxygen, alone->oxygen);
  // Two cycles to 10 psi of likely mixing 0.9 change 1 - 0.9 x 10 / 24.696 each.
  const double kept = std::pow(1 - 0.9 * 10 / 24.69595, 2);
  EXPECT_NEAR(in_ppm(after->back().oxygen), 30 + (in_ppm(alone->oxygen) - 30) * kept, 0.01);
  EXPECT_EQ(before->back().oxygen, alone->oxygen);
  EXPECT_EQ(before->back().worst, alone->worst);
  EXPECT_GT(before->back().co2_used, alone->co2_used);
  EXPECT_TRUE(purge_in_order(empty_keg(), {})->empty());
  EXPECT_EQ(
      purge_in_order(empty_keg(), std::vector<PurgeAct>{PressureCycles{-1, gauge_psi(10), {}}})
          .error()
          .subject,
      Subject::cycles);
}

// What is planned after a purge is what that purge, done, comes to.
TEST(PurgeInOrder, PlansGoOnFromWhatWasDone) {
  const auto done = purge_by_cycles(empty_keg(), {3, gauge_psi(30), {}});
  ASSERT_TRUE(done);
  const auto fresh = purge_plans(ppm(300), empty_keg());
  const auto plans = purge_plans(ppm(300), empty_keg(), {}, *done);
  ASSERT_TRUE(fresh && plans);
  for (const PurgePlan& p : *plans) {
    if (p.way != PurgeWay::cycles) continue;
    const auto carried_out = purge_on(*done, empty_keg(), p.cycles);
    EXPECT_EQ(p.outcome.oxygen, carried_out->oxygen);
    EXPECT_EQ(p.outcome.worst, carried_out->worst);
    EXPECT_NEAR(in_grams(p.outcome.co2_used + done->co2_used), in_grams(carried_out->co2_used),
                1e-9);
    for (const PurgePlan& f : *fresh) {
      if (f.way == PurgeWay::cycles && f.cycles.high == p.cycles.high) {
        EXPECT_LT(p.cycles.cycles, f.cycles.cycles);
      }
    }
  }
  // There already: nothing is left to do.
  const auto enough = purge_plans(ppm(20000), empty_keg(), {}, *done);
  ASSERT_TRUE(enough);
  EXPECT_EQ(enough->front().cycles.cycles, 0);
  EXPECT_EQ(in_grams(enough->front().outcome.co2_used), 0);
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

PurgeAct any_purge() {
  const auto pressure = gauge_psi(purge_in(1, 60));
  switch (*rc::gen::inRange(0, 3)) {
    case 0:
      return PressureCycles{*rc::gen::inRange(0, 8), pressure, {}};
    case 1:
      return Sweep{purge_in(0, 8)};
    default:
      return LiquidPush{pressure};
  }
}

RC_GTEST_PROP(PurgeInOrderProperty, NoActButAPushLetsOxygenIn, ()) {
  const int count = *rc::gen::inRange(1, 8);
  std::vector<PurgeAct> acts;
  acts.reserve(static_cast<std::size_t>(count));
  for (int i = 0; i < count; ++i) acts.push_back(any_purge());
  const auto all = purge_in_order(empty_keg(), acts);
  RC_ASSERT(all.has_value());
  for (std::size_t i = 0; i < acts.size(); ++i) {
    const PurgeOutcome& now = (*all)[i];
    RC_ASSERT(now.best <= now.oxygen && now.oxygen <= now.worst);
    RC_ASSERT(now.if_all_in_beer <= now.if_all_in_beer_worst);
    RC_ASSERT(now.floor <= now.best || holds_alternative<LiquidPush>(acts[i]));
    if (i == 0) continue;
    RC_ASSERT(now.co2_used >= (*all)[i - 1].co2_used);
    if (!holds_alternative<LiquidPush>(acts[i])) {
      RC_ASSERT(in_ppm(now.oxygen) <= in_ppm((*all)[i - 1].oxygen) * (1 + 1e-12));
    }
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
