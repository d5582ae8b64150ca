// SPDX-License-Identifier: GPL-3.0-or-later
//
// Kegs on one regulator.
#include "core/physics/shared_regulator.h"

#include <gtest/gtest.h>
#include <rapidcheck.h>

#include <cmath>

#include "core/physics/atmosphere.h"
#include "core/physics/equilibrium.h"

namespace ullage::physics {
namespace {

using namespace units;

SharingKeg sharing(double low, double high, double c, double now = 2.4) {
  SharingKeg k;
  k.name = "K";
  k.brimful = litres(19.6);
  k.beer = litres(15);
  k.now = Estimate<Co2Volumes>(volumes_of_co2(now)).with({"co2"}, 0.1);
  k.headspace = gauge_psi(10);
  k.temperature = Estimate<Temperature>(celsius(c)).with({"t"}, 0.5);
  k.ambient = Estimate<AbsolutePressure>(sea_level());
  k.low = volumes_of_co2(low);
  k.high = volumes_of_co2(high);
  return k;
}

TEST(SharedRegulator, LikeBeersShareOnePressure) {
  const std::vector kegs{sharing(2.3, 2.6, 4), sharing(2.4, 2.7, 4)};
  const auto best = best_shared_pressure(kegs);
  ASSERT_TRUE(best);
  EXPECT_TRUE(best->suits_all);
  // The middle of what 2.4 and 2.6 volumes need at 4 C: 10.8 and 13.0 psi.
  EXPECT_GT(in_psi(best->pressure), 10.6);
  EXPECT_LT(in_psi(best->pressure), 13.2);
  for (const Co2Volumes v : best->settles) {
    EXPECT_GE(v.count(), 2.4);
    EXPECT_LE(v.count(), 2.6);
  }
  EXPECT_EQ(fewest_regulators(kegs)->size(), 1U);
}

TEST(SharedRegulator, StoutAndWheatDoNot) {
  const std::vector kegs{sharing(1.7, 2.0, 4), sharing(3.2, 3.6, 4), sharing(1.8, 2.2, 4)};
  const auto best = best_shared_pressure(kegs);
  ASSERT_TRUE(best);
  EXPECT_FALSE(best->suits_all);
  // Both ends are equally far out of range at the best pressure.
  EXPECT_NEAR(best->settles[0].count() - 2.0, 3.2 - best->settles[1].count(), 1e-3);
  const auto groups = fewest_regulators(kegs);
  ASSERT_TRUE(groups);
  ASSERT_EQ(groups->size(), 2U);
  EXPECT_EQ((*groups)[0].kegs, (std::vector<std::size_t>{0, 2}));
  EXPECT_EQ((*groups)[1].kegs, (std::vector<std::size_t>{1}));
}

// Every keg is in exactly one group whose pressure suits it; no pressure tried
// leaves a smaller worst misfit than the best one.
TEST(SharedRegulator, GroupsSuitTheirKegs) {
  EXPECT_TRUE(rc::check([] {
    std::vector<SharingKeg> kegs;
    for (int i = *rc::gen::inRange(1, 9); i > 0; --i) {
      const double low = 1.6 + 0.01 * *rc::gen::inRange(0, 160);
      kegs.push_back(
          sharing(low, low + 0.05 + 0.01 * *rc::gen::inRange(0, 60), *rc::gen::inRange(2, 13)));
    }
    const auto groups = fewest_regulators(kegs);
    RC_ASSERT(groups.has_value());
    std::vector<int> seen(kegs.size(), 0);
    for (const RegulatorGroup& g : *groups) {
      for (const std::size_t i : g.kegs) {
        ++seen[i];
        const auto span = suiting_pressures(kegs[i]);
        RC_ASSERT(in_pascals(g.pressure) >= in_pascals(span->low) - 1e-6);
        RC_ASSERT(in_pascals(g.pressure) <= in_pascals(span->high) + 1e-6);
      }
    }
    for (const int n : seen) RC_ASSERT(n == 1);
    const auto best = best_shared_pressure(kegs);
    RC_ASSERT(best->suits_all == (groups->size() == 1));
  }));
}

TEST(SharedRegulator, BecomesInDays) {
  const SharingKeg k = sharing(2.3, 2.6, 4, 2.4);
  const auto p = Estimate<GaugePressure>(gauge_psi(25)).with({"dial"}, psi(2).value());
  const auto week = co2_after(k, p, days(7));
  const auto month = co2_after(k, p, days(40));
  ASSERT_TRUE(week && month);
  EXPECT_GT(week->median.count(), 2.8);
  EXPECT_LT(week->low.count(), week->median.count());
  const auto end = equilibrium_co2(GasAbove{gauge_psi(25), sea_level()}, celsius(4));
  EXPECT_NEAR(month->median.count(), end->count(), 0.02);
}

TEST(SharedRegulator, Refuses) {
  EXPECT_EQ(best_shared_pressure({}).error().subject, Subject::parts);
  EXPECT_EQ(suiting_pressures(sharing(2.6, 2.3, 4)).error().subject, Subject::co2);
  EXPECT_EQ(suiting_pressures(sharing(2.3, 2.6, 60)).error().subject, Subject::temperature);
}

}  // namespace
}  // namespace ullage::physics
