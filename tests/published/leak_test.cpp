// SPDX-License-Identifier: GPL-3.0-or-later
//
// Leaks and nozzles against a federal test procedure and a textbook.
#include <gtest/gtest.h>

#include <cmath>
#include <numbers>

#include "core/physics/atmosphere.h"
#include "core/physics/co2_gas.h"
#include "core/physics/leak_law.h"
#include "tests/published/csv.h"

namespace ullage::published {
namespace {

using namespace physics;
using namespace units;

double leak_example(const std::string& which, const std::string& quantity) {
  for (const Row& row : table("leak_and_orifice_examples.csv")) {
    if (row.text("case") == which && row.text("result_quantity") == quantity)
      return row.number("value");
  }
  ADD_FAILURE() << which << ": " << quantity << " is not in the table";
  return 0;
}

const std::string tank = "subsonic nozzle N2";

// 40 CFR 1065.644, inputs verified, result recomputed: 2.000 L from 25.3 to 50.6
// kPa in 70 s at 293.15 K takes 0.00029657 mol/s of (ideal) air. Its R of 8.314472
// and ours agree to 1e-6; five digits are printed.
TEST(LeakExamples, VacuumDecayOfTheFederalProcedure) {
  const auto moles_at = [](double pascal) {
    return in_moles(
        gas_amount(pascals_absolute(pascal), litres(2), kelvin(293.15), mole_fraction(0)).value());
  };
  const double printed =
      leak_example("vacuum/pressure decay n = V/R (p2/T2-p1/T1)/(t2-t1)", "mol/s");
  EXPECT_NEAR((moles_at(50600) - moles_at(25300)) / 70, printed, 0.5e-8);
}

PerfectGas textbook_nitrogen() { return {1.4, gas_constant / 296.8}; }

// 30 cm2 as a round hole.
Length textbook_bore() { return metres(std::sqrt(4 * 30e-4 / std::numbers::pi)); }

// Fox & McDonald problem 13.31, verified. Mach to 4 digits; the rest is printed to
// 4 digits from that rounded Mach number.
TEST(NozzleExamples, SubsonicTankOfNitrogen) {
  const auto out = nozzle_flow(bar_absolute(1.5), kelvin(450), bar_absolute(1.0), textbook_bore(),
                               textbook_nitrogen());
  ASSERT_TRUE(out);
  EXPECT_FALSE(out->choked);
  EXPECT_NEAR(out->mach, leak_example(tank, "exit Mach"), 1e-4);
  EXPECT_NEAR(in_kelvin(out->temperature), leak_example("same", "exit temperature K"), 0.03);
  EXPECT_NEAR(out->velocity.value(), leak_example("same", "exit velocity m/s"), 0.1);
  EXPECT_NEAR(in_kilograms_per_cubic_metre(out->density),
              leak_example("same", "exit density kg/m3"), 2e-4);
  EXPECT_NEAR(in_kilograms_per_second(out->flow), leak_example("same", "mass flow kg/s"), 5e-4);
}

// Computed from the formula beside it in the table, 4 digits.
TEST(NozzleExamples, TheSameTankChoked) {
  const auto out = nozzle_flow(bar_absolute(1.5), kelvin(450), bar_absolute(0.5), textbook_bore(),
                               textbook_nitrogen());
  ASSERT_TRUE(out);
  EXPECT_TRUE(out->choked);
  EXPECT_NEAR(out->mach, 1, 1e-9);
  EXPECT_NEAR(in_kilograms_per_second(out->flow),
              leak_example("same tank choked", "mass flow kg/s"), 5e-5);
}

// Air verified in a tutorial (3 digits), CO2 computed.
TEST(NozzleExamples, CriticalRatios) {
  EXPECT_NEAR(critical_pressure_ratio({1.4, 0.029}),
              leak_example("critical pressure ratio air k=1.4", "p*/p0"), 5e-4);
  EXPECT_NEAR(critical_pressure_ratio(),
              leak_example("critical pressure ratio CO2 k=1.289", "p*/p0"), 5e-5);
  EXPECT_NEAR(in_psi(choked_above(sea_level())) - in_psi(sea_level()),
              leak_example("CO2 keg above which a leak to 1 atm is choked", "gauge psi"), 0.006);
}

// Two choked orifice leaks go as p / sqrt(T): that is all there is above 12.1 psi.
TEST(LeakLaws, ChokedOrificeGoesByPressure) {
  const LeakState test{psi_absolute(44.696), celsius(20)};
  const LeakState other{psi_absolute(30), celsius(4)};
  const auto leak = leak_at(LeakLaw::orifice, grams_per_day(10), test, other, sea_level());
  ASSERT_TRUE(leak);
  EXPECT_NEAR(in_grams_per_day(*leak), 10 * 30 / 44.696 / std::sqrt(277.15 / 293.15), 1e-9);
}

TEST(LeakLaws, RefuseWhereNothingIsKnown) {
  const LeakState high{psi_absolute(44.7), celsius(20)};
  const LeakState none{sea_level(), celsius(20)};
  EXPECT_FALSE(leak_at(LeakLaw::viscous, grams_per_day(1), none, high, sea_level()));
  EXPECT_NEAR(in_grams_per_day(
                  leak_at(LeakLaw::viscous, grams_per_day(1), high, none, sea_level()).value()),
              0, 1e-12);
  EXPECT_FALSE(nozzle_flow(bar_absolute(1), celsius(20), bar_absolute(2), millimetres(1)));
  EXPECT_FALSE(nozzle_flow(bar_absolute(2), celsius(20), bar_absolute(1), metres(-1)));
}

}  // namespace
}  // namespace ullage::published
