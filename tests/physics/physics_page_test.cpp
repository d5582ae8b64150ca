// SPDX-License-Identifier: GPL-3.0-or-later
//
// The worked numbers of docs/physics.md, to the digits printed there.
#include <gtest/gtest.h>

#include "core/physics/equilibrium.h"
#include "core/physics/gravity.h"
#include "core/physics/keg_cooling.h"
#include "core/physics/purge.h"
#include "core/units/present.h"
#include "tests/physics/hold_cases.h"
#include "tests/physics/keg_cases.h"

namespace ullage::physics {
namespace {

using namespace units;

double gauge_for(double volumes, double c, AbsolutePressure air, Equation e, double share = 1) {
  return in_psi(
      equilibrium_gauge(volumes_of_co2(volumes), celsius(c), air, mole_fraction(share), e).value());
}

TEST(PhysicsPage, Equilibrium) {
  const AbsolutePressure mile_high = ambient_pressure(metres(1609.344)).value();
  EXPECT_NEAR(in_pascals(mile_high), 83432, 0.6);
  EXPECT_NEAR(gauge_for(2.5, 3, sea_level(), Equation::fitted_chart), 10.92, 0.006);
  EXPECT_NEAR(gauge_for(2.5, 3, sea_level(), Equation::polynomial), 10.94, 0.006);
  EXPECT_NEAR(gauge_for(2.5, 3, sea_level(), Equation::exponential), 10.58, 0.006);
  EXPECT_NEAR(gauge_for(2.5, 3, sea_level(), Equation::pure_water), 9.46, 0.006);
  EXPECT_NEAR(gauge_for(2.5, 3, mile_high, Equation::fitted_chart), 13.52, 0.006);
  EXPECT_NEAR(gauge_for(2.4, 12, sea_level(), Equation::fitted_chart, 0.6), 40.3, 0.06);
}

TEST(PhysicsPage, Cooling) {
  const auto tau = cooling_time_constant(litres(58.7), {"cooling"}).value();
  const auto w = present(time_to_temperature(celsius(9.5), celsius(2), celsius(3), tau).value());
  EXPECT_NEAR(in_hours(w.earliest), 15, 0.6);
  EXPECT_NEAR(in_hours(w.likely), 26, 0.6);
  EXPECT_NEAR(in_hours(w.latest), 48, 0.6);
}

void expect_ppm(const PurgeOutcome& out, double best, double likely, double worst, double grams) {
  EXPECT_NEAR(in_ppm(out.best), best, 0.005 * best);
  EXPECT_NEAR(in_ppm(out.oxygen), likely, 0.005 * likely);
  EXPECT_NEAR(in_ppm(out.worst), worst, 0.005 * worst);
  EXPECT_NEAR(in_grams(out.co2_used), grams, 0.6);
}

TEST(PhysicsPage, Purge) {
  const Vessel v{litres(19), litres(19), sea_level(), celsius(20)};
  const auto cycles = purge_by_cycles(v, {5, gauge_psi(30), {}}).value();
  expect_ppm(cycles, 835, 2070, 4490, 363);
  EXPECT_NEAR(cycles.if_all_in_beer.count(), 2.75, 0.006);
  expect_ppm(purge_by_sweep(v, 5).value(), 1440, 10500, 46800, 175);
  expect_ppm(purge_by_liquid(v, {gauge_psi(5)}).value(), 1580, 1830, 5660, 47);
}

TEST(PhysicsPage, Alcohol) {
  const auto f = fermented(specific_gravity(1.050), specific_gravity(1.010)).value();
  EXPECT_NEAR(f.abv.count(), 5.32, 0.006);
  EXPECT_NEAR(present(f.abv_by_factor).count(), 5.20, 0.006);
  EXPECT_NEAR(f.real_extract.count(), 4.34, 0.006);
}

TEST(PhysicsPage, Hold) {
  const auto out = judge_hold(
      cases::held_keg({cases::hold_reading(0, 30, 20), cases::hold_reading(24, 27.5, 4)}));
  ASSERT_TRUE(out);
  EXPECT_NEAR(in_psi(out->expected), 27.47, 0.006);
}

}  // namespace
}  // namespace ullage::physics
