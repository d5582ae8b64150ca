// SPDX-License-Identifier: GPL-3.0-or-later
//
// The quantile method against exact distributions where there is one and against
// brute-force sampling where there is none.
#include "core/units/quantiles.h"

#include <fmt/format.h>
#include <gtest/gtest.h>

#include <algorithm>
#include <cmath>
#include <expected>
#include <optional>
#include <random>
#include <stdexcept>
#include <string>
#include <vector>

#include "core/units/present.h"

namespace ullage::units {
namespace {

// A 95 % half-width in standard deviations (normal tables: 1.959964).
constexpr double half_width_in_sigmas = 1.959964;

struct Quantiles {
  double low, median, high;
};

// Brute force: a hundred thousand draws of every source, seed fixed. The standard
// error of its 2.5 % quantile is sqrt(0.025 * 0.975 / n) / density = 0.0085
// sigma, 0.2 % of the 95 % span: ten times finer than what it judges.
template <class F, class... Qs>
Quantiles brute_force(F f, const Estimate<Qs>&... inputs) {
  constexpr std::size_t draws = 100'000;
  std::mt19937_64 random(20260401);
  std::normal_distribution<double> normal(0.0, 1.0 / half_width_in_sigmas);
  const std::vector<ErrorSource> sources = sources_of(inputs...);
  std::vector<double> results;
  results.reserve(draws);
  std::vector<double> offset(sources.size());
  const auto draw_of = [&](const auto& e) {
    double v = to_magnitude(e.value());
    for (const Contribution& c : e.contributions()) {
      const auto at = std::lower_bound(sources.begin(), sources.end(), c.source);
      v += c.half_width * offset[static_cast<std::size_t>(at - sources.begin())];
    }
    return v;
  };
  for (std::size_t i = 0; i < draws; ++i) {
    for (double& o : offset) o = normal(random);
    results.push_back(to_magnitude(f(from_magnitude<Qs>(draw_of(inputs))...)));
  }
  std::sort(results.begin(), results.end());
  const auto at = [&](double p) {
    return results[static_cast<std::size_t>(p * static_cast<double>(draws))];
  };
  return {at(0.025), at(0.5), at(0.975)};
}

// The promise of quantiles.h, for each of the three quantiles: within 2 % of the
// 95 % span, 10 % around a top or bottom.
template <class R>
void expect_agrees(const char* name, const Spread<R>& spread, const Quantiles& truth,
                   double promise = 0.02) {
  const double span = truth.high - truth.low;
  const double low = (to_magnitude(spread.low) - truth.low) / span;
  const double median = (to_magnitude(spread.median) - truth.median) / span;
  const double high = (to_magnitude(spread.high) - truth.high) / span;
  testing::Test::RecordProperty(name, fmt::format("off by {:+.2f} {:+.2f} {:+.2f} % of the span",
                                                  100 * low, 100 * median, 100 * high));
  EXPECT_NEAR(low, 0.0, promise) << name;
  EXPECT_NEAR(median, 0.0, promise) << name;
  EXPECT_NEAR(high, 0.0, promise) << name;
}

Estimate<Mass> mass(double kg, std::vector<Contribution> errors) {
  return {kilograms(kg), std::move(errors)};
}

TEST(Quantiles, one_source_straight_is_the_half_width) {
  const auto spread = propagate_quantiles([](Mass m) { return m; }, mass(20, {{{"scale"}, 0.3}}));
  // Linear interpolation between neighbouring points of 256 bends away from the
  // normal curve by 0.0004 half-widths at 2.5 %.
  EXPECT_NEAR(in_kilograms(spread.low), 19.7, 0.3 * 0.001);
  EXPECT_NEAR(in_kilograms(spread.median), 20.0, 1e-12);
  EXPECT_NEAR(in_kilograms(spread.high), 20.3, 0.3 * 0.001);
}

TEST(Quantiles, no_source_gives_the_value_three_times) {
  int calls = 0;
  const auto spread = propagate_quantiles(
      [&](Mass m) {
        ++calls;
        return m;
      },
      Estimate(kilograms(3)));
  EXPECT_EQ(in_kilograms(spread.low), 3);
  EXPECT_EQ(in_kilograms(spread.median), 3);
  EXPECT_EQ(in_kilograms(spread.high), 3);
  EXPECT_EQ(calls, 1);
}

TEST(Quantiles, cost_is_bounded_by_what_the_header_says) {
  std::size_t calls = 0;
  (void)propagate_quantiles(
      [&](Mass a, Mass b) {
        ++calls;
        return a - b;
      },
      mass(20, {{{"a"}, 0.3}, {{"b"}, 0.1}}), mass(4, {{{"a"}, 0.3}, {{"c"}, 0.1}}));
  EXPECT_EQ(calls, 257u + 2u * 2u);  // two inputs, though three sources
}

TEST(Quantiles, the_same_to_the_last_bit) {
  const auto once = [] {
    return propagate_quantiles([](Mass a, Mass b) { return fraction(a / b); },
                               mass(4, {{{"a"}, 0.5}}), mass(5, {{{"b"}, 0.7}}));
  };
  EXPECT_EQ(once().low.count(), once().low.count());
  EXPECT_EQ(once().high.count(), once().high.count());
}

// A sum of n equal independent errors is normal with a half-width of sqrt(n):
// exact for every number of sources the program could meet.
TEST(Quantiles, straight_sum_of_many_sources) {
  for (const int n : {2, 3, 5, 8, 12, 20}) {
    std::vector<Contribution> errors;
    errors.reserve(static_cast<std::size_t>(n));
    for (int i = 0; i < n; ++i) errors.push_back({{"source " + std::to_string(i)}, 1.0});
    const auto spread = propagate_quantiles([](Mass m) { return m; }, mass(0, errors));
    EXPECT_NEAR(in_kilograms(spread.high) / std::sqrt(n), 1.0, 0.001) << n;
    EXPECT_NEAR(in_kilograms(spread.low) / std::sqrt(n), -1.0, 0.001) << n;
  }
}

TEST(Quantiles, shared_source_cancels_in_a_difference) {
  const auto gross = mass(23.4, {{{"scale: bias"}, 0.3}, {{"scale: reading 1"}, 0.1}});
  const auto tare = mass(4.3, {{{"scale: bias"}, 0.3}, {{"scale: reading 2"}, 0.1}});
  const auto spread = propagate_quantiles([](Mass a, Mass b) { return a - b; }, gross, tare);
  EXPECT_NEAR(in_kilograms(spread.high) - 19.1, 0.1 * std::sqrt(2.0), 0.0002);
  EXPECT_NEAR(in_kilograms(spread.median), 19.1, 1e-9);
}

// exp of a normal is lognormal: its quantiles are the exp of the normal's.
TEST(Quantiles, lognormal_exactly) {
  const double width = std::log(2.0);  // a factor of two either way at 95 %
  const Estimate<Fraction> log_time(fraction(std::log(4.0)), {{{"k"}, width}});
  const auto spread =
      propagate_quantiles([](Fraction f) { return days(std::exp(f.count())); }, log_time);
  EXPECT_NEAR(in_days(spread.low), 2.0, 2.0 * 0.002);
  EXPECT_NEAR(in_days(spread.median), 4.0, 4.0 * 0.002);
  EXPECT_NEAR(in_days(spread.high), 8.0, 8.0 * 0.002);
}

TEST(Quantiles, bent_functions_agree_with_brute_force) {
  const auto a = mass(4.0, {{{"a"}, 0.8}, {{"shared"}, 0.5}});
  const auto b = mass(5.0, {{{"b"}, 1.5}, {{"shared"}, -0.5}});
  const auto c = mass(2.0, {{{"c"}, 0.6}, {{"d"}, 0.6}, {{"e"}, 0.6}});
  const auto ratio = [](Mass x, Mass y) { return fraction(x / y); };
  expect_agrees("ratio_with_a_wide_divisor", propagate_quantiles(ratio, a, b),
                brute_force(ratio, a, b));
  const auto lognormal = [](Mass x, Mass y, Mass z) {
    return fraction(std::exp(in_kilograms(x) - in_kilograms(y) + in_kilograms(z)));
  };
  expect_agrees("lognormal_over_six_sources", propagate_quantiles(lognormal, a, b, c),
                brute_force(lognormal, a, b, c));
  const auto difference = [](Mass x, Mass y) { return x - y; };
  expect_agrees("difference_with_a_shared_source", propagate_quantiles(difference, a, b),
                brute_force(difference, a, b));
  const auto relaxed = [](Mass k, Mass ceiling, Mass time) {
    const double rate = std::exp(in_kilograms(k) - 4.0);
    return fraction(in_kilograms(ceiling) * (1.0 - std::exp(-rate * in_kilograms(time))));
  };
  expect_agrees("approach_to_equilibrium", propagate_quantiles(relaxed, a, b, c),
                brute_force(relaxed, a, b, c));
}

TEST(Quantiles, twelve_sources_and_strong_bends_agree_with_brute_force) {
  std::vector<Contribution> many;
  many.reserve(12);
  for (int i = 0; i < 12; ++i) {
    many.push_back({{"source " + std::to_string(i)}, 0.2 + 0.05 * i});
  }
  const auto x = mass(3.0, many);
  const auto y = mass(6.0, {{{"source 3"}, 0.9}, {{"source 7"}, -0.7}, {{"other"}, 1.0}});
  const auto product = [](Mass p, Mass q) { return fraction(p.value() * q.value()); };
  expect_agrees("product_of_two", propagate_quantiles(product, x, y), brute_force(product, x, y));
  const auto bent = [](Mass p, Mass q) {
    return fraction(std::exp(0.5 * in_kilograms(p)) / in_kilograms(q));
  };
  expect_agrees("exponential_over_a_divisor", propagate_quantiles(bent, x, y),
                brute_force(bent, x, y));
  // The steepest direction at the centre says little here: the worst case.
  const auto hill = [](Mass p, Mass q) {
    const double u = in_kilograms(p) - 3.0;
    const double v = in_kilograms(q) - 6.0;
    return fraction(u * u + v * v + 0.1 * u);
  };
  expect_agrees("bottom_of_a_bowl", propagate_quantiles(hill, x, y), brute_force(hill, x, y), 0.10);
}

// A level that is approached from below: time = -ln(1 - level/ceiling) / rate,
// and never when the ceiling is under the level.
std::optional<Duration> time_to_reach(Fraction level, Fraction ceiling) {
  if (ceiling <= level) return std::nullopt;
  return days(-std::log(1.0 - level.count() / ceiling.count()));
}

TEST(Quantiles, never_reached_is_later_than_any_time) {
  // The ceiling is below the level with the probability that a normal number is
  // below (2.5 - 2.6) / (0.2 / 1.959964) = -0.98 sigma: 0.1635 (normal table).
  const Estimate<Fraction> level(fraction(2.5));
  const Estimate<Fraction> ceiling(fraction(2.6), {{{"dial"}, 0.2}});
  const auto all = distribution_of(time_to_reach, level, ceiling);
  EXPECT_NEAR(all.probability_of_answer().count(), 1 - 0.1635, 1.0 / 256);
  EXPECT_FALSE(all.at(0.9).has_value());
  ASSERT_TRUE(all.at(0.5).has_value());

  const auto spread = propagate_quantiles(time_to_reach, level, ceiling);
  EXPECT_FALSE(spread.high.has_value());
  ASSERT_TRUE(spread.median.has_value());
  ASSERT_TRUE(spread.low.has_value());
  // Time falls as the ceiling rises, so its quantiles are the times at the
  // ceiling's: 2.6 at the median, 2.8 at the early end.
  EXPECT_NEAR(in_days(present(spread.median)),
              in_days(present(time_to_reach(fraction(2.5), fraction(2.6)))), 0.01);
  EXPECT_NEAR(in_days(present(spread.low)),
              in_days(present(time_to_reach(fraction(2.5), fraction(2.8)))), 0.01);
}

TEST(Quantiles, an_error_value_is_no_answer) {
  const auto refuse = [](Mass m) -> std::expected<Mass, std::string> {
    if (in_kilograms(m) > 20) return std::unexpected("over the range");
    return m;
  };
  const auto spread = propagate_quantiles(refuse, mass(19.9, {{{"scale"}, 0.3}}));
  EXPECT_TRUE(spread.low && spread.median);
  EXPECT_FALSE(spread.high);
  const auto never = propagate_quantiles(refuse, mass(30, {{{"scale"}, 0.3}}));
  EXPECT_FALSE(never.low || never.median || never.high);
}

TEST(Quantiles, a_result_that_is_not_finite_is_no_number) {
  const auto bad = [](Mass m) { return fraction(std::sqrt(in_kilograms(m))); };
  const auto spread = propagate_quantiles(bad, mass(-5, {{{"scale"}, 0.3}}));
  EXPECT_TRUE(std::isnan(spread.low.count()));
  EXPECT_TRUE(std::isnan(spread.high.count()));
}

TEST(Quantiles, any_probability_between_one_and_ninety_nine_percent) {
  const auto all = distribution_of([](Mass m) { return m; }, mass(0, {{{"scale"}, 1.0}}));
  // Normal table: 84.13 % lies below one standard deviation, 10 % below -1.2816.
  EXPECT_NEAR(in_kilograms(present(all.at(0.8413))), 1 / half_width_in_sigmas, 0.001);
  EXPECT_NEAR(in_kilograms(present(all.at(0.1))), -1.2816 / half_width_in_sigmas, 0.001);
  EXPECT_THROW((void)all.at(0.001), std::out_of_range);
  EXPECT_THROW((void)all.at(1.0), std::out_of_range);
}

}  // namespace
}  // namespace ullage::units
