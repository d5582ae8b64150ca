// SPDX-License-Identifier: GPL-3.0-or-later
//
// Purging against worked examples of chemical engineering. Those mix perfectly
// and purge with pure gas, so both are set so here.
#include "core/physics/purge.h"

#include <gtest/gtest.h>

#include <cmath>
#include <optional>
#include <string>

#include "core/physics/atmosphere.h"
#include "core/physics/co2_gas.h"
#include "core/physics/keg_cooling.h"
#include "core/units/present.h"
#include "tests/published/csv.h"

namespace ullage::published {
namespace {

using namespace physics;
using namespace units;

constexpr SupplyGas pure{mole_fraction(0)};
constexpr Mixing perfect{};

Vessel vessel(double oxygen, AbsolutePressure ambient = sea_level(),
              Temperature temperature = celsius(20)) {
  return {litres(19), litres(19), ambient, temperature, mole_fraction(oxygen)};
}

AbsolutePressure pressure_in(const Row& row, const std::string& column) {
  const double v = row.number(column);
  const std::string& unit = row.text("pressure_unit");
  if (unit == "atm") return pascals_absolute(v * pascals_per_atmosphere);
  if (unit == "mmHg") return pascals_absolute(v * pascals_per_atmosphere / 760);
  EXPECT_EQ(unit, "psia");
  return pascals_absolute(v * pascals_per_psi);
}

// A cycle from `low` up to `high`: to this program low is the air about the keg.
struct Example {
  explicit Example(const Row& row)
      : low(pressure_in(row, "low")),
        high(GaugePressure::from_absolute(pressure_in(row, "high"), low)),
        before(vessel(row.number("oxygen_before"), low, fahrenheit(75))),
        after(mole_fraction(row.maybe("oxygen_after").value_or(0))),
        cycles(static_cast<int>(row.maybe("cycles").value_or(0))),
        printed(row.number("value")),
        exact(row.maybe("exact")) {}
  AbsolutePressure low;
  GaugePressure high;
  Vessel before;
  MoleFraction after;
  int cycles;
  double printed;
  std::optional<double> exact;

  // No keg stands in air this thin: it is refused, not reckoned.
  [[nodiscard]] bool in_a_vacuum() const { return in_pascals(low) < ambient_pressure_range.low; }
};

// Half a unit of the last digit of the exact figure in the source.
constexpr double last_digit_exact = 0.006;

void expect_cycles(const Example& e) {
  const auto n = cycles_to_reach(e.after, e.before, e.high, pure);
  ASSERT_TRUE(n);
  // "exact 4.4": one digit behind the point, the others two.
  EXPECT_NEAR(*n, present(e.exact), present(e.exact) == 4.4 ? 0.06 : last_digit_exact);
  const bool whole = e.printed == std::floor(e.printed);
  EXPECT_NEAR(whole ? std::ceil(*n) : *n, e.printed, whole ? 0 : last_digit_exact);
}

// The sources take the gas as ideal. CO2 between 1 and 5 atm takes 3.2 % more than
// that, to 94.7 psia 4.0 %, below 1 atm 0.8 %; nothing else may differ.
double more_than_ideal(const Example& e) {
  const auto mole = [&](AbsolutePressure p) {
    return in_moles(*gas_amount(p, litres(19), e.before.temperature));
  };
  const AbsolutePressure top = e.high.at_ambient(e.low);
  const double ideal = (in_pascals(top) - in_pascals(e.low)) * 0.019 /
                       (gas_constant * in_kelvin(e.before.temperature));
  return (mole(top) - mole(e.low)) / ideal;
}

double moles_used(const Example& e) {
  const auto out = purge_by_cycles(e.before, {e.cycles, e.high, gauge_pascals(0)}, pure, perfect);
  return in_kilograms(out.value().co2_used) / co2_kilograms_per_mole;
}

// Branan-type worked-example sheet, purge-requirement sheet, Crowl & Louvar; each
// row has its source and how sure it is.
TEST(PurgeExamples, AsPrinted) {
  int read = 0;
  int refused = 0;
  for (const Row& row : table("purge_examples.csv")) {
    const Example e(row);
    const std::string& result = row.text("result");
    SCOPED_TRACE(row.text("case") + ": " + result);
    ++read;
    if (e.in_a_vacuum()) {
      ++refused;
      EXPECT_EQ(cycles_to_reach(e.after, e.before, e.high, pure).error().subject,
                Subject::ambient_pressure);
    } else if (result == "cycles") {
      expect_cycles(e);
    } else if (result == "final oxygen, %") {
      const auto out =
          purge_by_cycles(e.before, {e.cycles, e.high, gauge_pascals(0)}, pure, perfect);
      ASSERT_TRUE(out);
      EXPECT_NEAR(out->oxygen.count() * 100, e.printed, 0.005);
      EXPECT_EQ(out->best, out->worst);
    } else if (result == "vessel volumes") {
      const auto n = volumes_to_reach(e.after, e.before, pure);
      ASSERT_TRUE(n);
      EXPECT_NEAR(*n, present(e.exact), 0.0006);
      EXPECT_NEAR(*n, e.printed, 0.06);  // 3.045 printed as 3.1
    } else if (result == "gas used, vessel volumes") {
      const double volume =
          pascals_per_atmosphere * 0.019 / (gas_constant * in_kelvin(e.before.temperature));
      EXPECT_NEAR(moles_used(e) / volume, e.printed * more_than_ideal(e), 1e-3);
      EXPECT_LT(more_than_ideal(e), 1.035);
    } else {
      ASSERT_EQ(result, "gas used in 1000 US gal at 75 F, lb-mol");
      const double lb_moles = moles_used(e) * (3.785411784 / 0.019) / 453.59237;
      EXPECT_NEAR(lb_moles, e.printed * more_than_ideal(e), 0.06);
      EXPECT_LT(more_than_ideal(e), 1.045);
    }
  }
  EXPECT_EQ(read, 11);
  EXPECT_EQ(refused, 3);
}

// y0 (PL / PH)^n computed elsewhere for kegs; arithmetic. A supply of gauge 30 psi
// is a factor of 3.04, not 30: absolute pressures. 14.696 psia in the table.
TEST(PurgeKegTable, AsComputedElsewhere) {
  for (const Row& row : table("purge_keg_computed.csv")) {
    const auto out =
        purge_by_cycles(vessel(0.20946),
                        {static_cast<int>(row.number("cycles")),
                         gauge_psi(row.number("purge_gauge_pressure_psi")), gauge_pascals(0)},
                        pure, perfect);
    ASSERT_TRUE(out);
    const double printed = row.number("residual_O2_ppmv");
    EXPECT_NEAR(in_ppm(out->oxygen), printed, 2e-4 * printed + 0.006);
  }
}

// Trade forums: 5 fills to 30 psi leave about 0.08 % oxygen, 11 about 1 ppm
// (common practice).
TEST(PurgePractice, ForumFiguresHoldForPerfectMixing) {
  const auto five = purge_by_cycles(vessel(0.20946), {5, gauge_psi(30), {}}, pure, perfect);
  const auto eleven = purge_by_cycles(vessel(0.20946), {11, gauge_psi(30), {}}, pure, perfect);
  ASSERT_TRUE(five && eleven);
  EXPECT_NEAR(five->oxygen.count() * 100, 0.08, 0.005);
  EXPECT_NEAR(in_ppm(eleven->oxygen), 1.0, 0.3);
}

}  // namespace
}  // namespace ullage::published
