// SPDX-License-Identifier: GPL-3.0-or-later
//
// No number on an axis is rounded: 7.5 must not be marked 8. What each span gives
// is worked out by hand from the ticker's documented steps (1, 2, 2.5, 5, 10).
#include "ui/charts/axis_decimals.h"

#include <gtest/gtest.h>

#include <limits>

namespace ullage::ui {
namespace {

TEST(AxisDecimals, StepsOfTwoAndAHalfTakeOneMore) {
  EXPECT_EQ(axis_decimals(10, 4), 1);   // 2.5, 5.0, 7.5
  EXPECT_EQ(axis_decimals(1.2, 5), 2);  // 0.25, 0.50
  EXPECT_EQ(axis_decimals(100, 4), 0);  // 25, 50: whole all the same
}

TEST(AxisDecimals, RoundStepsTakeNoneTheyDoNotNeed) {
  EXPECT_EQ(axis_decimals(8, 4), 0);     // 2, 4, 6
  EXPECT_EQ(axis_decimals(20, 4), 0);    // 5, 10
  EXPECT_EQ(axis_decimals(38, 4), 0);    // 9.5 becomes 10
  EXPECT_EQ(axis_decimals(0.8, 5), 1);   // 0.16 becomes 0.2
  EXPECT_EQ(axis_decimals(0.38, 4), 1);  // 0.095 becomes 0.1
}

TEST(AxisDecimals, AnAxisWithoutLengthHasNone) {
  EXPECT_EQ(axis_decimals(0, 4), 0);
  EXPECT_EQ(axis_decimals(-1, 4), 0);
  EXPECT_EQ(axis_decimals(std::numeric_limits<double>::quiet_NaN(), 4), 0);
}

}  // namespace
}  // namespace ullage::ui
