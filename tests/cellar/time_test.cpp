// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/cellar/time.h"

#include <gtest/gtest.h>

namespace ullage::cellar {
namespace {

using namespace std::chrono_literals;

constexpr Instant noon{std::chrono::sys_days{std::chrono::January / 5 / 2026} + 12h};

TEST(After, RoundsToTheNearestSecondEitherWay) {
  EXPECT_EQ(after(noon, units::seconds(10.4)), noon + 10s);
  EXPECT_EQ(after(noon, units::seconds(10.6)), noon + 11s);
  EXPECT_EQ(after(noon, units::seconds(-10.4)), noon - 10s);
  EXPECT_EQ(after(noon, units::seconds(-10.6)), noon - 11s);
  EXPECT_EQ(after(noon, units::seconds(-0.2)), noon);
}

TEST(After, UndoesBetween) {
  for (const auto span : {0s, 1s, -1s, 86400s, -86400s * 400}) {
    EXPECT_EQ(after(noon, between(noon, noon + span)), noon + span) << span.count();
  }
}

}  // namespace
}  // namespace ullage::cellar
