// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/units/present.h"

#include <gtest/gtest.h>

#include <memory>
#include <optional>
#include <stdexcept>
#include <utility>

namespace ullage {
namespace {

TEST(Present, IsTheValueItself) {
  std::optional<int> changed = 3;
  present(changed) = 4;
  const std::optional<int> read = changed;
  EXPECT_EQ(present(read), 4);
  EXPECT_EQ(&present(read), &*read) << "no copy";
}

TEST(Present, MovesOutOfWhatNobodyKeeps) {
  std::optional<std::unique_ptr<int>> held = std::make_unique<int>(5);
  EXPECT_EQ(*present(std::move(held)), 5);
}

TEST(Present, StopsWhereTheValueIsAbsent) {
  std::optional<int> absent;
  EXPECT_THROW((void)present(absent), std::logic_error);
  EXPECT_THROW((void)present(std::as_const(absent)), std::logic_error);
  EXPECT_THROW((void)present(std::optional<int>()), std::logic_error);
}

}  // namespace
}  // namespace ullage
