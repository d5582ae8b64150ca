// SPDX-License-Identifier: GPL-3.0-or-later
//
// The error of a hold test with beer inside against brute force: every named source
// of every reading drawn at random, the balance of gas and beer followed in small
// steps by arithmetic of its own (only the equilibrium and the gas law are the
// program's; they have checks of their own).
#include <gtest/gtest.h>

#include <cmath>
#include <string>
#include <vector>

#include "core/physics/co2_gas.h"
#include "core/physics/equilibrium.h"
#include "core/physics/hold_beer.h"
#include "core/units/present.h"
#include "tests/physics/hold_cases.h"
#include "tests/physics/sampled.h"

namespace ullage::physics {
namespace {

using namespace units;
using cases::held_keg;
using cases::hold_reading;
using sampled::Case;
using sampled::Middle;

constexpr double steps_a_stretch = 40;
constexpr double grams_per_mole = 44.0095;

struct Held {
  HoldTest test;
  BeerInside beer;
};

// A soda keg with 1 L above 18.6 L of beer at rest at the first reading.
Held held(std::vector<HoldReading> readings, double co2_error) {
  Held out{held_keg(std::move(readings)), {}};
  out.test.gas_space = litres(1.0);
  const HoldReading& first = out.test.readings.front();
  const auto rest =
      equilibrium_co2(GasAbove{first.pressure.value(), sea_level()}, first.temperature.value());
  out.beer = {litres(18.6),
              Estimate<Co2Volumes>(*rest).with({"CO2 at start"}, co2_error),
              LogEstimate<Duration>(days(4), 2, {"uptake"}),
              {"equation"}};
  return out;
}

// Grams lost a day in one case of the world.
std::optional<double> lost_a_day(const Held& held, Case& c) {
  struct Seen {
    double days, pascals, kelvin;
  };
  std::vector<Seen> seen;
  const std::size_t count = held.test.readings.size();
  for (std::size_t i = 0; i < count; ++i) {
    const HoldReading& r = held.test.readings[i];
    double pa = in_pascals(c.of(r.pressure).at_ambient(held.test.ambient));
    if (i == 0) pa += in_pascals(held.test.settling) * c.offset("settling");
    if (i + 1 == count) pa += in_pascals(held.test.barometer) * c.offset("barometer");
    seen.push_back({in_days(r.at), pa, in_kelvin(c.of(r.temperature))});
  }
  const double miss = equation_half_width(Equation::fitted_chart).count() * c.offset("equation");
  const auto holds = [&](const Seen& s) {
    return equilibrium_co2(pascals_absolute(s.pascals), kelvin(s.kelvin))->count() + miss;
  };
  const double tau = in_days(c.of(held.beer.resting));
  const double first = c.of(held.beer.co2).count();
  double co2 = first;
  for (std::size_t i = 1; i < count; ++i) {
    const double from = holds(seen[i - 1]), to = holds(seen[i]);
    const double step = (seen[i].days - seen[i - 1].days) / steps_a_stretch;
    for (int n = 0; n < steps_a_stretch; ++n) {  // the midpoint rule
      const double at_middle = from + (to - from) * (n + 0.5) / steps_a_stretch;
      const double middle = co2 + 0.5 * step * (at_middle - co2) / tau;
      co2 += step * (at_middle - middle) / tau;
    }
  }
  const auto moles_above = [&](const Seen& s) {
    return in_moles(
        *gas_amount(pascals_absolute(s.pascals), held.test.gas_space, kelvin(s.kelvin)));
  };
  const double above = moles_above(seen.front()) - moles_above(seen.back());
  const double in_beer = (first - co2) * grams_per_litre_per_volume * in_litres(held.beer.beer);
  return (above * grams_per_mole + in_beer) / seen.back().days;
}

struct Told {
  HoldOutcome outcome;
  Middle drawn;
  [[nodiscard]] double width() const { return drawn.high - drawn.low; }
};

Told told_and_drawn(const Held& h, double limit_grams) {
  const auto out = judge_hold_with_beer(h.test, h.beer, grams(limit_grams));
  EXPECT_TRUE(out);
  return {*out, sampled::middle_of(3000, [&](Case& c) { return lost_a_day(h, c); })};
}

// Quantiles of 3000 cases are good to 3 % of the width; the stated error takes what
// bends (the uptake's rate) from 256 points, as docs/physics-uncertainty.md says.
void expect_as_drawn(const Held& h) {
  const Told t = told_and_drawn(h, 2);
  // A leak is surely seen at 1.84 half-widths.
  const double stated_width =
      in_grams(present(t.outcome.smallest_visible_per_day)) * 2 * 1.959964 / (1.959964 + 1.644854);
  EXPECT_NEAR(stated_width, t.width(), 0.10 * t.width());
  EXPECT_NEAR(in_grams(t.outcome.leak_per_day.value()), t.drawn.median, 0.06 * t.width());
  EXPECT_NEAR(1e3 * 2 * t.outcome.leak_per_day.half_width(), t.width(), 0.12 * t.width());
  // The verdict turns where the drawn upper end is.
  const auto just_above =
      judge_hold_with_beer(h.test, h.beer, grams(t.drawn.high + 0.08 * t.width()));
  const auto just_below =
      judge_hold_with_beer(h.test, h.beer, grams(t.drawn.high - 0.08 * t.width()));
  ASSERT_TRUE(just_above && just_below);
  EXPECT_EQ(just_above->verdict, HoldVerdict::holds);
  EXPECT_NE(just_below->verdict, HoldVerdict::holds);
}

TEST(HoldWithBeerSampling, TwoReadingsThreeWeeksApart) {
  expect_as_drawn(held({hold_reading(0, 13, 4), hold_reading(24 * 21, 11, 4)}, 0.15));
}

TEST(HoldWithBeerSampling, AWarmDayInBetween) {
  expect_as_drawn(held(
      {hold_reading(0, 13, 4), hold_reading(24 * 4, 17, 8), hold_reading(24 * 9, 12, 4)}, 0.2));
}

// One dial read every week: its bias moves what the beer followed all along.
TEST(HoldWithBeerSampling, WeeklyReadingsOnOneDial) {
  std::vector<HoldReading> readings;
  for (int week = 0; week <= 8; ++week)
    readings.push_back(hold_reading(168 * week, 13 - 0.5 * week, 4));
  expect_as_drawn(held(std::move(readings), 0.15));
}

TEST(HoldWithBeerSampling, FreshBeerThatDrinks) {
  Held h = held({hold_reading(0, 30, 4), hold_reading(24, 15, 4), hold_reading(48, 9, 4)}, 0.2);
  h.beer.co2 = Estimate<Co2Volumes>(volumes_of_co2(0.9)).with({"CO2 at start"}, 0.2);
  const Told t = told_and_drawn(h, 2);
  EXPECT_EQ(t.outcome.verdict, HoldVerdict::cant_tell);
  const double stated_width =
      in_grams(present(t.outcome.smallest_visible_per_day)) * 2 * 1.959964 / (1.959964 + 1.644854);
  // The rate bends it: a fast keg took up little more than a usual one.
  EXPECT_NEAR(stated_width, t.width(), 0.12 * t.width());
}

}  // namespace
}  // namespace ullage::physics
