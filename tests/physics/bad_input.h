// SPDX-License-Identifier: GPL-3.0-or-later
//
// One row for each argument of each computation: with a good value it answers, and
// with no number, an infinite one, or what nobody's cellar has (500 psi, 90 C beer,
// a bore of 0.1 mm, nothing, less than nothing) it refuses, naming a value that is
// indeed outside the limits it names. No row may answer NaN, none may clamp.
#pragma once

#include <gtest/gtest.h>

#include <cmath>
#include <functional>
#include <limits>
#include <optional>
#include <vector>

#include "core/physics/error.h"
#include "core/units/estimate.h"
#include "core/units/present.h"

namespace ullage::physics::cases {

using Refusal = std::optional<RangeError>;

template <class T>
Refusal refusal_of(const Result<T>& r) {
  return r ? std::nullopt : Refusal(r.error());
}

struct BadRow {
  const char* what;
  double good;
  std::vector<double> bad;  // beside NaN and the infinities
  std::function<Refusal(double)> ask;
};

inline void expect_refusals(const std::vector<BadRow>& rows) {
  constexpr double inf = std::numeric_limits<double>::infinity();
  for (const BadRow& row : rows) {
    const Refusal good = row.ask(row.good);
    EXPECT_FALSE(good) << row.what << " = " << row.good << ": " << describe(present(good));
    std::vector<double> values = row.bad;
    values.insert(values.end(), {std::numeric_limits<double>::quiet_NaN(), inf, -inf});
    for (const double v : values) {
      const Refusal refused = row.ask(v);
      ASSERT_TRUE(refused) << row.what << " = " << v << " was answered";
      EXPECT_FALSE(present(refused).value >= present(refused).low &&
                   present(refused).value <= present(refused).high)
          << row.what << " = " << v << ": " << describe(present(refused));
      EXPECT_TRUE(std::isfinite(present(refused).low)) << row.what << " = " << v;
      EXPECT_FALSE(describe(present(refused)).empty());
    }
  }
}

template <units::Quantity Q>
units::Estimate<Q> with_error(Q value, double half_width) {
  return units::Estimate<Q>(value).with({"error"}, half_width);
}

}  // namespace ullage::physics::cases
