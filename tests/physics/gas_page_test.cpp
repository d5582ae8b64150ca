// SPDX-License-Identifier: GPL-3.0-or-later
//
// The worked numbers of docs/physics-gas.md, to the digits printed there.
#include <gtest/gtest.h>

#include <array>

#include "core/physics/atmosphere.h"
#include "core/physics/co2_bottle.h"
#include "core/physics/gas_ledger.h"
#include "core/physics/gas_use.h"
#include "core/physics/room_air.h"
#include "core/physics/room_errors.h"
#include "core/physics/room_leak.h"
#include "tests/physics/printed_numbers.h"

namespace ullage::physics {
namespace {

using namespace units;

TEST(GasPage, Bottles) {
  const auto capacity = water_capacity_for(kilograms(2.27), fraction(0.68));
  EXPECT_NEAR(in_litres(*capacity), 3.34, 0.006);
  const auto warm = co2_bottle_state(kilograms(2.27), *capacity, celsius(20));
  EXPECT_EQ(warm->phase, BottlePhase::liquid_and_vapour);
  EXPECT_NEAR(in_psi(*warm->pressure - sea_level()), 816, 0.6);
  EXPECT_NEAR(in_kilograms(warm->liquid_gone_below), 0.65, 0.006);
  const auto cold = co2_bottle_state(kilograms(2.27), *capacity, celsius(3));
  EXPECT_NEAR(in_psi(*cold->pressure - sea_level()), 532, 0.6);
  EXPECT_NEAR(in_kilograms(cold->liquid_gone_below), 0.36, 0.006);
  EXPECT_NEAR(in_celsius(*liquid_full_temperature(fraction(0.68))), 26.8, 0.06);
  EXPECT_NEAR(in_celsius(*liquid_full_temperature(fraction(0.75))), 22.1, 0.06);
}

TEST(GasPage, Use) {
  const SupplyState cold{Estimate<GaugePressure>(gauge_psi(12)),
                         Estimate<Temperature>(celsius(3.3)), sea_level()};
  EXPECT_NEAR(in_grams(gas_to_push(Estimate<Volume>(litres(19)), cold, {"m"})->value()), 68, 0.6);
  EXPECT_NEAR(
      in_grams(
          gas_to_fill_headspace(Estimate<Volume>(litres(1)), gauge_psi(0), cold, {"m"})->value()),
      1.6, 0.06);
  EXPECT_NEAR(in_grams(gas_to_carbonate(
                           Estimate<Volume>(litres(19)), Estimate<Co2Volumes>(volumes_of_co2(0.85)),
                           Estimate<Co2Volumes>(volumes_of_co2(2.5)), mole_fraction(1), {"m"})
                           ->value()),
              62, 0.6);
}

TEST(GasPage, Account) {
  const std::array weighed{2.00, 1.90, 1.82, 1.70, 1.61};
  std::vector<LedgerPoint> points;
  for (std::size_t i = 0; i < weighed.size(); ++i) {
    const double used = 0.06 * static_cast<double>(i);
    points.push_back({days(7.0 * static_cast<double>(i)),
                      Estimate<Mass>(kilograms(weighed[i]))
                          .with({"scale: bias"}, 0.05)
                          .with({"scale: reading " + std::to_string(i)}, 0.02),
                      Estimate<Mass>(kilograms(used)).with({"method"}, 0.1 * used)});
  }
  const auto out = unexplained_loss(points);
  ASSERT_TRUE(out);
  EXPECT_NEAR(in_grams(out->per_day.value()), 5.4, 0.06);
  EXPECT_NEAR(out->per_day.half_width() * 1e3, 1.3, 0.06);
  EXPECT_GT(out->confidence.count(), 0.999);
  EXPECT_NEAR(in_grams(out->smallest_visible_per_day), 2.8, 0.06);
  EXPECT_TRUE(out->steady);
  EXPECT_EQ(out->verdict, LossVerdict::unexplained);
  const auto left = days_left({Estimate<Mass>(kilograms(1.0)).with({"scale"}, 0.1),
                               Estimate<Mass>(grams(10)).with({"use"}, 0.002),
                               Estimate<Mass>(grams(5.3)).with({"loss"}, 0.0013)});
  ASSERT_TRUE(left && left->earliest && left->likely && left->latest);
  EXPECT_NEAR(in_days(*left->likely), 65, 0.6);
  EXPECT_NEAR(in_days(*left->earliest), 55, 0.6);
  EXPECT_NEAR(in_days(*left->latest), 80, 0.6);
}

// The example with its errors, as the page prints it.
TEST(GasPage, RoomAirsErrors) {
  KnownGas gas;
  gas.bottles = {{kilograms(12)}};
  gas.there = gas.there.with({"content"}, 0.05);
  const KnownRoom room{net_volume({metres(5), metres(3.5), metres(2.4), metres(0.05),
                                   Estimate<Fraction>(fraction(0.1)).with({"stock"}, 0.05)}),
                       Estimate<Temperature>(celsius(12)).with({"thermometer"}, 0.5),
                       *ambient_pressure_estimate(metres(0), {"weather"})};
  const auto air = room_air_estimate(gas, room);
  ASSERT_TRUE(air);
  const auto page = cases::printed("physics-gas.md", R"(at 12 °C: ([\d.]+) ± ([\d.]+) % of CO2)");
  ASSERT_EQ(page.size(), 2U);
  EXPECT_PRINTED(air->co2.value().count() * 100, page[0], 0);
  EXPECT_PRINTED(air->co2.half_width() * 100, page[1], 0);
}

TEST(GasPage, RoomAir) {
  const Room room{cubic_metres(20), celsius(20), sea_level()};
  const std::array gas{EscapingGas{kilograms(6.35)}};
  const auto out = if_all_escapes(gas, room);
  EXPECT_NEAR(out->co2.count() * 100, 17.3, 0.06);
  EXPECT_NEAR(out->co2_flowing.count() * 100, 15.9, 0.06);
  EXPECT_NEAR(out->oxygen.count() * 100, 17.3, 0.06);
  const auto leak = steady_release({grams(20)}, room, per_second(0.5 / 3600));
  EXPECT_NEAR(leak->count() * 1e6, 45, 0.6);
  const EscapingGas large{grams(500)};
  const Rate half = per_second(0.5 / 3600);
  EXPECT_NEAR(steady_release(large, room, half, hours(8))->count() * 100, 0.11, 0.006);
  EXPECT_NEAR(steady_release(large, room, half)->count() * 100, 0.113, 0.0006);
  EXPECT_FALSE(*steady_release_reaches(mole_fraction(0.005), large, room, half));
  EXPECT_NEAR(in_hours(**steady_release_reaches(mole_fraction(0.005), large, room, per_second(0))),
              8.8, 0.06);
  EXPECT_NEAR(in_per_second(*air_changes_for(mole_fraction(0.005), large, room)) * 3600, 0.113,
              0.0006);
}

}  // namespace
}  // namespace ullage::physics
