// SPDX-License-Identifier: GPL-3.0-or-later
//
// Extract and alcohol against printed tables.
#include "core/physics/gravity.h"

#include <gtest/gtest.h>

#include "core/units/gravity_scale.h"
#include "tests/published/csv.h"

namespace ullage::published {
namespace {

using namespace physics;
using namespace units;

SpecificGravity gravity_of(double degrees_plato) {
  const auto sg = to_specific_gravity(plato(degrees_plato));
  EXPECT_TRUE(sg.has_value());
  return sg.value_or(specific_gravity(1));
}

// The ASBC polynomial computed elsewhere, 1.000 to 1.100: arithmetic, 3 decimals.
// Other published equations beside it: within 0.05 degrees to 1.080.
TEST(PlatoTable, ExtractOfOriginalGravity) {
  int checked = 0;
  for (const Row& row : table("plato_equations.csv")) {
    const auto f = fermented(specific_gravity(row.number("sg_20_20")), specific_gravity(1.000));
    ASSERT_TRUE(f);
    EXPECT_NEAR(f->original_extract.count(), row.number("P1_plato"), 0.0006);
    if (row.number("sg_20_20") <= 1.080) {
      EXPECT_NEAR(f->original_extract.count(), row.number("P4_plato"), 0.05);
    }
    ++checked;
  }
  EXPECT_EQ(checked, 51);
}

// Eckhardt's table of Balling's own factors (verified): alcohol by weight per
// degree of apparent drop. The 0.8192 formula is known to lie 0.4 % (6 P) to
// 2.4 % (30 P) above it, and is what the third column computes.
TEST(BallingFactors, FormulaAgainstItsOwnOldTable) {
  for (const Row& row : table("balling_alcohol_factor.csv")) {
    const double oe = row.number("original_extract_plato");
    const double ae = oe / 4;
    if (oe > 24) continue;  // final gravities beyond beer
    const auto f = fermented(gravity_of(oe), gravity_of(ae));
    ASSERT_TRUE(f);
    const double by_weight = f->abv.count() * 0.7907 / gravity_of(ae).count();
    const double factor = by_weight / (oe - ae);
    EXPECT_NEAR(factor, row.number("same_from_0.8192_formula"), 0.0002);
    const double old_table = row.number("abw_per_plato_apparent_drop_Balling_table");
    EXPECT_GT(factor, old_table);
    EXPECT_LT(factor, old_table * 1.025);
  }
}

// The duty office's factors (from memory): each row's own ends.
TEST(DutyFactors, EachRowOfTheTable) {
  for (const Row& row : table("hmrc_abv_factor.csv")) {
    for (const char* end : {"og_minus_pg_from", "og_minus_pg_to"}) {
      const double degrees = row.number(end);
      const auto f = fermented(specific_gravity(1.0 + degrees / 1000), specific_gravity(1.0));
      ASSERT_TRUE(f);
      ASSERT_TRUE(f->abv_by_factor);
      EXPECT_NEAR(f->abv_by_factor->count(), degrees * row.number("abv_percent_per_degree"), 1e-6);
    }
  }
}

// Two published ways disagree by this much over usual beers, which is why an ABV
// is never shown surer than that.
TEST(AlcoholWays, DisagreeByUnderAQuarterPercentInUsualBeers) {
  for (const double og : {1.036, 1.044, 1.052, 1.060}) {
    const auto f = fermented(specific_gravity(og), specific_gravity(1.010));
    ASSERT_TRUE(f);
    ASSERT_TRUE(f->abv_by_factor);
    EXPECT_NEAR(f->abv.count(), f->abv_by_factor->count(), 0.25);
  }
}

}  // namespace
}  // namespace ullage::published
