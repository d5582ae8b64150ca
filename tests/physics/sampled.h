// SPDX-License-Identifier: GPL-3.0-or-later
//
// Brute force for the tests of stated errors: every named source drawn at random,
// the middle 95 % of the answers that come out.
#pragma once

#include <gtest/gtest.h>

#include <algorithm>
#include <functional>
#include <map>
#include <optional>
#include <random>
#include <string>
#include <vector>

#include "core/physics/log_estimate.h"
#include "core/units/estimate.h"

namespace ullage::physics::sampled {

using units::Contribution;
using units::Estimate;
using units::Quantity;

// One case of the world: each named source off by some 95 % half-widths.
class Case {
 public:
  explicit Case(std::mt19937& random) : random_(random) {}
  double offset(const std::string& source) {
    const auto [at, is_new] = offsets_.try_emplace(source, 0.0);
    if (is_new) at->second = std::normal_distribution<double>(0, 1 / 1.959964)(random_);
    return at->second;
  }
  template <Quantity Q>
  Q of(const Estimate<Q>& e) {
    double v = units::to_magnitude(e.value());
    for (const Contribution& c : e.contributions()) v += c.half_width * offset(c.source.name);
    return units::from_magnitude<Q>(v);
  }
  template <Quantity Q>
  Q of(const LogEstimate<Q>& e) {
    return e.at(offset(e.source().name));
  }

 private:
  std::mt19937& random_;
  std::map<std::string, double> offsets_;
};

struct Middle {
  double low = 0, median = 0, high = 0;
};

// The middle 95 % of `cases` answers; one that has none is greater than all.
inline Middle middle_of(int cases, const std::function<std::optional<double>(Case&)>& answer) {
  std::mt19937 random(20261205);
  std::vector<double> seen;
  for (int i = 0; i < cases; ++i) {
    Case one(random);
    seen.push_back(answer(one).value_or(1e300));
  }
  std::sort(seen.begin(), seen.end());
  const auto at = [&](double q) { return seen[static_cast<std::size_t>(q * cases)]; };
  return {at(0.025), at(0.5), at(0.975)};
}

inline void expect_middle(const Middle& stated, const Middle& drawn, double share) {
  const double width = drawn.high - drawn.low;
  EXPECT_NEAR(stated.low, drawn.low, share * width);
  EXPECT_NEAR(stated.median, drawn.median, share * width);
  EXPECT_NEAR(stated.high, drawn.high, share * width);
}

template <Quantity Q>
Middle stated_by(const Estimate<Q>& e) {
  const double v = units::to_magnitude(e.value());
  return {v - e.half_width(), v, v + e.half_width()};
}

template <Quantity Q>
Estimate<Q> off_by(Q value, const char* source, double half_width) {
  return Estimate<Q>(value).with({source}, half_width);
}

}  // namespace ullage::physics::sampled
