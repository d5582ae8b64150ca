// SPDX-License-Identifier: GPL-3.0-or-later
//
// The algebra of estimates: what is shared cancels or adds, what is not adds in
// squares; and readings of instruments as estimates.
#include "core/units/estimate.h"

#include <gtest/gtest.h>

#include <cmath>
#include <expected>
#include <string>

#include "core/units/instrument_errors.h"

namespace ullage::units {
namespace {

// Sums of a few doubles near 1e6 (pascals): an ulp is 1e-10, so 1e-6 allows for
// any order of adding and shows any slip in the algebra.
constexpr double few_roundings = 1e-6;

const InstrumentErrors<GaugePressure> dial{
    .name = "dial R1", .bias = psi(2), .repeatability = psi(0.5)};
const InstrumentErrors<GaugePressure> other_dial{
    .name = "dial R2", .bias = psi(2), .repeatability = psi(0.5)};

TEST(InstrumentErrors, one_reading_carries_both_errors) {
  const auto p = read_with(dial, gauge_psi(12), "monday");
  EXPECT_NEAR(in_psi(p.error()), std::hypot(2.0, 0.5), 1e-12);
  EXPECT_EQ(p.value(), gauge_psi(12));
  ASSERT_NE(p.largest(), nullptr);
  EXPECT_EQ(p.largest()->source.name, "dial R1: bias");
}

TEST(InstrumentErrors, one_dial_sees_the_fall_that_two_dials_do_not) {
  const auto fall = [](GaugePressure before, GaugePressure after) { return before - after; };
  const auto before = read_with(dial, gauge_psi(30), "monday");
  const auto after = read_with(dial, gauge_psi(29.5), "tuesday");
  const auto after_on_other = read_with(other_dial, gauge_psi(29.5), "tuesday");
  // The bias cancels: what is left is the repeatability of two readings.
  EXPECT_NEAR(in_psi(propagate(fall, before, after).error()), 0.5 * std::sqrt(2.0), 1e-9);
  EXPECT_NEAR(in_psi(propagate(fall, before, after_on_other).error()),
              std::sqrt(2 * 4.0 + 2 * 0.25), 1e-9);
}

TEST(InstrumentErrors, the_same_reading_used_twice_is_one_reading) {
  const auto p = read_with(dial, gauge_psi(30), "monday");
  const auto nothing = propagate([](GaugePressure a, GaugePressure b) { return a - b; }, p, p);
  EXPECT_NEAR(in_pascals(nothing.error()), 0.0, few_roundings);
}

TEST(InstrumentErrors, a_share_of_the_reading) {
  const RelativeErrors heft{
      .name = "heft", .bias = fraction(0.15), .repeatability = fraction(0.05)};
  const auto level = read_with(heft, litres(10), "friday");
  EXPECT_NEAR(in_litres(level.error()), std::hypot(1.5, 0.5), 1e-12);
}

TEST(Estimate, exact_has_no_error) {
  const auto e = Estimate<Volume>::exact(litres(19));
  EXPECT_EQ(e.half_width(), 0.0);
  EXPECT_EQ(e.low(), litres(19));
  EXPECT_EQ(e.high(), litres(19));
  EXPECT_EQ(e.largest(), nullptr);
}

TEST(Estimate, the_same_source_adds_with_its_sign) {
  const auto twice = Estimate(kilograms(5)).with({"tare"}, 0.3).with({"tare"}, 0.2);
  EXPECT_EQ(twice.contributions().size(), 1u);
  EXPECT_NEAR(twice.half_width(), 0.5, 1e-15);
  EXPECT_NEAR(twice.with({"tare"}, -0.5).half_width(), 0.0, 1e-15);
  EXPECT_NEAR(twice.with({"scale"}, 1.2).half_width(), 1.3, 1e-15);
}

TEST(Estimate, shifted_moves_by_one_source_only) {
  const auto e = Estimate(kilograms(5)).with({"tare"}, 0.3).with({"scale"}, -0.1);
  EXPECT_NEAR(in_kilograms(e.shifted({"tare"}, 2.0)), 5.6, 1e-15);
  EXPECT_NEAR(in_kilograms(e.shifted({"scale"}, 1.0)), 4.9, 1e-15);
  EXPECT_NEAR(in_kilograms(e.shifted({"stranger"}, 9.0)), 5.0, 0.0);
}

TEST(Propagate, shared_errors_add_in_a_sum) {
  const auto a = Estimate(kilograms(5)).with({"scale"}, 0.3);
  const auto b = Estimate(kilograms(7)).with({"scale"}, 0.3);
  const auto sum = propagate([](Mass x, Mass y) { return x + y; }, a, b);
  EXPECT_NEAR(in_kilograms(sum.value()), 12, 1e-12);
  EXPECT_NEAR(sum.half_width(), 0.6, 1e-12);
  EXPECT_EQ(sum.contributions().size(), 1u);
}

// The textbook rule for a product of independent factors: relative errors add in
// squares (to first order, which is what `propagate` is).
TEST(Propagate, product_of_independent_factors) {
  const auto a = Estimate(fraction(0.8)).with({"a"}, 0.008);
  const auto b = Estimate(fraction(0.5)).with({"b"}, 0.010);
  const auto product =
      propagate([](Fraction x, Fraction y) { return fraction(x.count() * y.count()); }, a, b);
  EXPECT_NEAR(product.half_width() / 0.4, std::hypot(0.01, 0.02), 1e-12);
}

TEST(Propagate, sources_stay_named_through_two_steps) {
  const auto gross = Estimate(kilograms(23)).with({"scale"}, 0.3);
  const auto tare = Estimate(kilograms(4)).with({"scale"}, 0.3).with({"stamp"}, 0.1);
  const auto net = propagate([](Mass g, Mass t) { return g - t; }, gross, tare);
  const auto back = propagate([](Mass n, Mass t) { return n + t; }, net, tare);
  // Net and tare share the stamp with opposite signs, so weighing back is exact
  // but for the scale.
  EXPECT_NEAR(back.half_width(), 0.3, 1e-12);
}

TEST(TryPropagate, refuses_where_a_shifted_point_is_refused) {
  const auto below_ten = [](Mass m) -> std::expected<Mass, std::string> {
    if (in_kilograms(m) > 10) return std::unexpected("over ten");
    return m;
  };
  const auto safe = try_propagate(below_ten, Estimate(kilograms(9)).with({"scale"}, 0.5));
  ASSERT_TRUE(safe.has_value());
  EXPECT_NEAR(safe->half_width(), 0.5, 1e-12);
  const auto edge = try_propagate(below_ten, Estimate(kilograms(9.8)).with({"scale"}, 0.5));
  ASSERT_FALSE(edge.has_value());
  EXPECT_EQ(edge.error(), "over ten");
}

TEST(SourcesOf, each_once_in_order) {
  const auto a = Estimate(kilograms(1)).with({"z"}, 1).with({"a"}, 1);
  const auto b = Estimate(litres(1)).with({"m"}, 1).with({"z"}, 1);
  const std::vector<ErrorSource> expected = {{"a"}, {"m"}, {"z"}};
  EXPECT_EQ(sources_of(a, b), expected);
}

}  // namespace
}  // namespace ullage::units
