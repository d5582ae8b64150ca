// SPDX-License-Identifier: GPL-3.0-or-later
//
// Unit factors against a table of published ones, units.csv beside this file.
// Each row names its source and how sure it is: "verified" was read in the
// source, "from memory" was not, "computed" follows from another row.
#include <gtest/gtest.h>

#include <cmath>
#include <functional>
#include <map>
#include <string>

#include "core/units/quantities.h"
#include "tests/published/csv.h"

namespace ullage::units {
namespace {

// How one of the unit is made here, and read in the table's unit.
const std::map<std::string, std::function<double()>>& ours() {
  static const std::map<std::string, std::function<double()>> factors = {
      {"US gallon in L", [] { return in_litres(us_gallons(1)); }},
      {"imperial gallon in L", [] { return in_litres(imperial_gallons(1)); }},
      {"UK pint in mL", [] { return in_litres(imperial_pints(1)) * 1000; }},
      {"US pint in mL", [] { return in_litres(us_pints(1)) * 1000; }},
      {"US fluid ounce in mL", [] { return in_litres(us_fluid_ounces(1)) * 1000; }},
      {"psi in Pa", [] { return in_pascals(psi(1)); }},
      {"standard atmosphere in Pa", [] { return pascals_per_atmosphere; }},
      {"standard atmosphere in psi", [] { return in_psi(pascals(pascals_per_atmosphere)); }},
      {"pound in kg", [] { return in_kilograms(pounds(1)); }},
      {"foot in m", [] { return in_metres(feet(1)); }}};
  return factors;
}

TEST(PublishedUnits, factors) {
  std::size_t checked = 0;
  for (const published::Row& row : published::table("units.csv")) {
    const auto at = ours().find(row.text("unit") + " in " + row.text("in_unit"));
    if (at == ours().end()) continue;  // casks and barrels are not units of the program
    ++checked;
    // Half a unit in the last printed place of the table.
    const std::string& printed = row.text("factor");
    const std::size_t mark = printed.find('.');
    const double decimals =
        mark == std::string::npos ? 0 : static_cast<double>(printed.size() - mark - 1);
    EXPECT_NEAR(at->second(), row.number("factor"), 0.5 * std::pow(10, -decimals))
        << row.text("unit") << " from " << row.text("source") << " (" << row.text("flag") << ")";
  }
  EXPECT_EQ(checked, ours().size()) << "a factor of ours is not in the table";
}

// Definitions, from the text of the standards (psi, pound, inch: NIST SP 811;
// gallons: 231 cubic inches and 4.54609 L). Exact, so to a few ulps.
TEST(PublishedUnits, definitions_agree_with_one_another) {
  EXPECT_NEAR(in_cubic_metres(us_gallons(1)), 231 * std::pow(metres_per_inch, 3), 1e-17);
  // Pound-force over square inch: 0.45359237 kg times 9.80665 m/s2.
  EXPECT_NEAR(pascals_per_psi, kilograms_per_pound * 9.80665 / (metres_per_inch * metres_per_inch),
              1e-11);
  EXPECT_NEAR(metres_per_foot, 12 * metres_per_inch, 1e-16);
}

// Fixed points everybody knows: 32 and 212 °F, -40 on both scales.
TEST(PublishedUnits, temperature_fixed_points) {
  EXPECT_NEAR(in_fahrenheit(celsius(0)), 32, 1e-12);
  EXPECT_NEAR(in_fahrenheit(celsius(100)), 212, 1e-12);
  EXPECT_NEAR(in_celsius(fahrenheit(-40)), -40, 1e-12);
  EXPECT_NEAR(in_kelvin(celsius(0)), 273.15, 1e-12);
}

}  // namespace
}  // namespace ullage::units
