// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/widgets/tag_range.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

namespace ullage::ui {
namespace {

using ::testing::ElementsAre;

TEST(Tags, RangesKeepTheirZeros) {
  EXPECT_THAT(*expand_tags("K08..K11"), ElementsAre("K08", "K09", "K10", "K11"));
  EXPECT_THAT(*expand_tags("K8 .. 10"), ElementsAre("K8", "K9", "K10"));
  EXPECT_THAT(*expand_tags("K01-K03"), ElementsAre("K01", "K02", "K03"));
}

TEST(Tags, ListsAndSingleTags) {
  EXPECT_THAT(*expand_tags("K01, K05;  BAR-A"), ElementsAre("K01", "K05", "BAR-A"));
  EXPECT_THAT(*expand_tags("7"), ElementsAre("7"));
}

TEST(Tags, RefusalsNameTheirReason) {
  const auto fault = [](const char* typed) { return expand_tags(typed).error().fault; };
  EXPECT_EQ(fault(""), TagFault::empty);
  EXPECT_EQ(fault("K01..B03"), TagFault::range_mixed);
  EXPECT_EQ(fault("K08..K01"), TagFault::range_backward);
  EXPECT_EQ(fault("K..L"), TagFault::range_no_number);
  EXPECT_EQ(fault("K001..K999"), TagFault::too_many);
  EXPECT_EQ(fault("K1..K999999999999999999"), TagFault::too_long);
  EXPECT_EQ(fault("K01, k01"), TagFault::repeated);
  EXPECT_EQ(fault("a-tag-that-is-far-too-long"), TagFault::too_long);
  // As long as the register takes, in characters, not bytes.
  EXPECT_EQ(fault("Gärkeller-013"), TagFault::too_long);
  EXPECT_THAT(*expand_tags("Gärkeller-01"), ElementsAre("Gärkeller-01"));
  for (const char* typed : {"", "K01..B03", "K08..K01", "K..L", "K001..K999", "K01 K01"}) {
    EXPECT_FALSE(sentence(expand_tags(typed).error()).empty());
  }
}

}  // namespace
}  // namespace ullage::ui
