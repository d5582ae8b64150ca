// SPDX-License-Identifier: GPL-3.0-or-later
//
// What docs/ says of how far tables and equations are apart, worked out anew from the
// tables: no check of the equations, which have theirs beside these, but of the pages.
#include <gtest/gtest.h>

#include <algorithm>
#include <cmath>
#include <map>
#include <string>
#include <utility>
#include <vector>

#include "core/physics/atmosphere.h"
#include "core/physics/co2_bottle.h"
#include "core/physics/co2_gas.h"
#include "core/physics/density.h"
#include "core/physics/equilibrium.h"
#include "tests/physics/printed_numbers.h"
#include "tests/published/csv.h"

namespace ullage::published {
namespace {

using namespace physics;
using namespace units;
using cases::printed;

// Along the pressure a real chart is straight: how far cells lie off their row's
// straight line. Of the chart alone.
TEST(Distances, OfTheChartFromStraightRows) {
  std::map<double, std::vector<std::pair<double, double>>> rows;
  for (const Row& row : table("co2_beer_table_degF_psig.csv"))
    rows[row.number("temp_degF")].emplace_back(row.number("gauge_pressure_psi"),
                                               row.number("co2_volumes"));
  double roughest = 0;
  for (const auto& [f, cells] : rows) {
    const auto n = static_cast<double>(cells.size());
    double p_mean = 0, v_mean = 0, pp = 0, pv = 0;
    for (const auto& [p, v] : cells) p_mean += p / n, v_mean += v / n;
    for (const auto& [p, v] : cells) {
      pp += (p - p_mean) * (p - p_mean);
      pv += (p - p_mean) * (v - v_mean);
    }
    for (const auto& [p, v] : cells)
      roughest = std::max(roughest, std::abs(v - v_mean - pv / pp * (p - p_mean)));
  }
  const auto page = printed("physics.md", R"(its cells lie up to ([\d.]+) volumes off)");
  ASSERT_EQ(page.size(), 1U);
  EXPECT_PRINTED(roughest, page[0], 0);
}

// Pure water's equation from the handbook's table and from the measured points.
TEST(Distances, OfWaterFromHandbookAndMeasurements) {
  double handbook = 0, cold = 0, warm = 0;
  for (const Row& row : table("co2_water_crc_mole_fraction.csv")) {
    const Temperature t = celsius(row.number("temp_C"));
    const auto co2 = equilibrium_co2(pascals_absolute(row.number("co2_partial_pressure_kPa") * 1e3),
                                     t, Equation::pure_water);
    if (!co2) continue;
    const double dissolved = to_concentration(*co2).count() / 44.0095;
    const double water = in_kilograms_per_cubic_metre(*water_density(t)) / 18.0153;
    const double table_has = row.number("mole_fraction_x1000");
    const double off = std::abs(1000 * dissolved / (dissolved + water) - table_has) - 0.0005;
    handbook = std::max(handbook, 100 * off / table_has);
  }
  for (const Row& row : table("co2_water_bunsen_murray_riley.csv")) {
    const double c = row.number("temp_C");
    const auto co2 = equilibrium_co2(sea_level(), celsius(c), Equation::pure_water);
    ASSERT_TRUE(co2);
    const double off =
        100 * std::abs(row.number("bunsen_coeff_volSTP_per_vol_atm") / co2->count() - 1);
    double& side = c <= 25 ? cold : warm;
    side = std::max(side, off);
  }
  const auto page = printed(
      "physics.md",
      R"(([\d.]+) % from the CRC Handbook's table .* within ([\d.]+) % of him up to 25 °C and ([\d.]+) % above)");
  ASSERT_EQ(page.size(), 3U);
  EXPECT_PRINTED(handbook, page[0], 0);
  EXPECT_LE(cold, std::stod(page[1]));
  EXPECT_NEAR(warm, std::stod(page[2]), 0.1);
}

// The dense-gas equation from the printed vapour, the virial table and the handbook's
// nitrogen.
TEST(Distances, OfDenseGasFromTheTables) {
  double cool = 0, warm = 0, thin = 0, nitrogen = 0;
  for (const Row& row : table("co2_saturation.csv")) {
    const auto vapour = row.maybe("vapour_density_kg_m3");
    const double c = row.number("temp_C");
    if (!vapour) continue;
    const auto d =
        bottle_gas_density(co2_saturation(celsius(c))->pressure, celsius(c), mole_fraction(1));
    const double off = 100 * std::abs(in_kilograms_per_cubic_metre(*d) / *vapour - 1);
    double& side = c <= 25 ? cool : warm;
    side = std::max(side, off);
  }
  for (const Row& row : table("co2_gas_compressibility.csv")) {
    const auto d = bottle_gas_density(bar_absolute(row.number("pressure_bar_abs")),
                                      celsius(row.number("temp_C")), mole_fraction(1));
    thin = std::max(
        thin, 100 * std::abs(in_kilograms_per_cubic_metre(*d) / row.number("density_kg_m3") - 1));
  }
  const auto full = bottle_gas_density(bar_absolute(200), kelvin(300), mole_fraction(0));
  const double ideal = 200e5 * 28.0134e-3 / (gas_constant * 300);
  nitrogen = 100 * std::abs(ideal / in_kilograms_per_cubic_metre(*full) / 1.0559 - 1);
  const auto page = printed(
      "physics-gas.md",
      R"(by up to ([\d.]+) % to 25 °C and ([\d.]+) % at 30 °C, from a virial table at keg pressures by ([\d.]+) %, from handbook nitrogen by ([\d.]+) % at 200 bar)");
  ASSERT_EQ(page.size(), 4U);
  EXPECT_PRINTED(cool, page[0], 0);
  EXPECT_PRINTED(warm, page[1], 0);
  EXPECT_PRINTED(thin, page[2], 0);
  EXPECT_PRINTED(nitrogen, page[3], 0);
}

}  // namespace
}  // namespace ullage::published
