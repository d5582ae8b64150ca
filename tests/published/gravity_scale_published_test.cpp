// SPDX-License-Identifier: GPL-3.0-or-later
//
// Specific gravity and Plato against plato_equations.csv: five published curves
// computed from 1.000 to 1.100. P1 is ours; the others were fitted by other
// people, to the same extract tables or on their own.
#include <gtest/gtest.h>

#include "core/units/gravity_scale.h"
#include "tests/published/csv.h"

namespace ullage::units {
namespace {

struct Curve {
  const char* name;
  const char* column;
  double tolerance;  // °P
};

// P1 prints three decimals of the same equation: half a digit. P2 (Buhl's best
// fit to the same tables, constant term recalled) claims 0.0005 °P and agrees
// with P1 to 0.001 by its printed digits. P3 (Lincoln, from memory), P4 (Buhl's
// one-parameter curve, verified, rms 0.023 °P) and P5 (De Clerck, from memory)
// are rougher fits: a tenth of a degree catches a wrong coefficient, and a
// hydrometer shows no more.
constexpr Curve curves[] = {{"P1 ASBC polynomial", "P1_plato", 0.00051},
                            {"P2 Buhl", "P2_plato", 0.002},
                            {"P3 Lincoln", "P3_plato", 0.1},
                            {"P4 one parameter", "P4_plato", 0.1},
                            {"P5 De Clerck", "P5_plato", 0.1}};

TEST(PublishedGravity, plato_of_every_tabulated_gravity) {
  const auto rows = published::table("plato_equations.csv");
  ASSERT_GT(rows.size(), 40u);
  for (const published::Row& row : rows) {
    const auto p = to_plato(specific_gravity(row.number("sg_20_20")));
    ASSERT_TRUE(p.has_value());
    for (const Curve& curve : curves) {
      EXPECT_NEAR(p->count(), row.number(curve.column), curve.tolerance)
          << curve.name << " at " << row.text("sg_20_20");
    }
  }
}

// The brewers' rational inverse S = 1 + P / (258.6 - 227.1 P / 258.2) (from
// memory) at 10, 12 and 20 °P. It is an approximation of its own: two units in
// the fourth decimal, a fifth of what a hydrometer is read to.
TEST(PublishedGravity, inverse_against_another_inverse) {
  const double expected[][2] = {{10, 1.04003}, {12, 1.04838}, {20, 1.08298}};
  for (const auto& [degrees, gravity] : expected) {
    const auto s = to_specific_gravity(plato(degrees));
    ASSERT_TRUE(s.has_value());
    EXPECT_NEAR(s->count(), gravity, 2e-4) << degrees;
  }
}

TEST(PublishedGravity, refuses_what_is_no_gravity) {
  EXPECT_EQ(to_plato(specific_gravity(0.97)).error(), GravityScaleError::below_range);
  EXPECT_EQ(to_plato(specific_gravity(1.2)).error(), GravityScaleError::above_range);
  EXPECT_EQ(to_specific_gravity(plato(-20)).error(), GravityScaleError::below_range);
  EXPECT_EQ(to_specific_gravity(plato(60)).error(), GravityScaleError::above_range);
}

}  // namespace
}  // namespace ullage::units
