// SPDX-License-Identifier: GPL-3.0-or-later
//
// The course of a tight keg with beer in it, and its band.
#include <gtest/gtest.h>

#include <cmath>

#include "core/physics/closed_keg.h"
#include "core/physics/co2_gas.h"
#include "core/physics/equilibrium.h"
#include "core/physics/hold_beer.h"
#include "tests/physics/hold_cases.h"
#include "tests/physics/sampled.h"

namespace ullage::physics {
namespace {

using namespace units;
using cases::held_keg;
using cases::hold_reading;
using sampled::Case;
using sampled::expect_middle;
using sampled::Middle;
using sampled::middle_of;

HoldTest litre_above(std::vector<HoldReading> readings) {
  HoldTest test = held_keg(std::move(readings));
  test.gas_space = litres(1.0);
  return test;
}

BeerInside fresh_beer(double volumes, double error) {
  return {litres(18.6),
          Estimate<Co2Volumes>(volumes_of_co2(volumes)).with({"CO2 at start"}, error),
          LogEstimate<Duration>(days(4), 2, {"uptake"}),
          {"equation"}};
}

// It ends where the closed balance of headspace and beer (closed_keg.h) comes to rest,
// and gets there falling: the beer drinks it.
TEST(HoldBeerLines, EndAtTheClosedBalance) {
  const HoldTest test = litre_above({hold_reading(0, 30, 4), hold_reading(24 * 60, 5, 4)});
  const auto lines = hold_beer_lines(test, fresh_beer(2.0, 0.1), 121);
  ASSERT_TRUE(lines);
  ASSERT_EQ(lines->size(), 121u);
  EXPECT_NEAR(in_psi(lines->front().tight), 30, 1e-9);
  for (std::size_t i = 1; i < lines->size(); ++i) {
    EXPECT_LT(in_psi((*lines)[i].tight), in_psi((*lines)[i - 1].tight) + 1e-6);
    EXPECT_LE((*lines)[i].low, (*lines)[i].tight);
    EXPECT_GE((*lines)[i].high, (*lines)[i].tight);
  }
  const auto gas = gas_amount(test.readings.front().pressure.value().at_ambient(test.ambient),
                              litres(1), celsius(4));
  const auto rest = at_rest({litres(19.6), litres(18.6), celsius(4)},
                            *gas + dissolved_amount(volumes_of_co2(2.0), litres(18.6)));
  ASSERT_TRUE(rest);
  EXPECT_NEAR(in_psi(lines->back().tight),
              in_psi(GaugePressure::from_absolute(rest->headspace, test.ambient)), 0.02);
  const auto judged = judge_hold_with_beer(test, fresh_beer(2.0, 0.1));
  ASSERT_TRUE(judged);
  EXPECT_NEAR(in_psi(judged->expected), in_psi(lines->back().tight), 0.02);
}

// What the dial is always off by is off at the end, too: at rest it widens nothing.
TEST(HoldBeerLines, TheBandLeavesOutWhatReadingsShare) {
  const auto rest = equilibrium_co2({gauge_psi(13), sea_level()}, celsius(4));
  const auto width_with = [&](double bias) {
    const cases::DialErrors dial{psi(bias), psi(0.01)};
    const HoldTest test = litre_above({hold_reading(0, 13, 4, dial), hold_reading(2, 13, 4, dial)});
    const auto lines = hold_beer_lines(test, fresh_beer(rest->count(), 0.001), 3);
    return lines ? in_psi((*lines)[0].high) - in_psi((*lines)[0].low) : std::nan("");
  };
  EXPECT_NEAR(width_with(2), width_with(0), 1e-6);
}

// Every source drawn at random, headspace and beer followed in 4000 plain steps by
// arithmetic of its own.
TEST(HoldBeerLines, TheBandIsThatOfBruteForce) {
  const HoldTest test = litre_above({hold_reading(0, 20, 6), hold_reading(36, 15, 4)});
  const BeerInside inside = fresh_beer(2.3, 0.1);
  const auto lines = hold_beer_lines(test, inside, 25);
  ASSERT_TRUE(lines);
  const Middle drawn = middle_of(600, [&](Case& c) -> std::optional<double> {
    const HoldReading& a = test.readings.front();
    const HoldReading& b = test.readings.back();
    const double shared = 2.0 * c.offset("dial: bias");
    double p = in_pascals(c.of(a.pressure).at_ambient(test.ambient)) +
               in_pascals(test.settling) * c.offset("settling");
    const double t1 = in_kelvin(c.of(a.temperature));
    const double t2 = in_kelvin(c.of(b.temperature));
    const double tau = in_seconds(c.of(inside.resting));
    const double off = equation_half_width(Equation::fitted_chart).count() * c.offset("equation");
    double co2 = c.of(inside.co2).count();
    const auto moles_in = [&](double pa, double k) {
      return in_moles(gas_amount(pascals_absolute(pa), litres(1), kelvin(k)).value());
    };
    double gas = moles_in(p, t1);
    constexpr int steps = 4000;
    const double step = 36 * 3600.0 / steps;
    for (int i = 0; i < steps; ++i) {
      const double k = t1 + (t2 - t1) * i / steps;
      p = in_pascals(gas_pressure(moles(gas), litres(1), kelvin(k)).value());
      const auto pull = equilibrium_co2(pascals_absolute(p), kelvin(k));
      if (!pull) return std::nullopt;
      const double taken = (pull->count() + off - co2) * step / tau;
      co2 += taken;
      gas -= in_moles(dissolved_amount(volumes_of_co2(1), litres(18.6))) * taken;
    }
    p = in_pascals(gas_pressure(moles(gas), litres(1), kelvin(t2)).value());
    return in_psi(GaugePressure::from_absolute(pascals_absolute(p), test.ambient)) - shared;
  });
  const HoldPoint& end = lines->back();
  expect_middle({in_psi(end.low), in_psi(end.tight), in_psi(end.high)}, drawn, 0.12);
}

TEST(HoldBeerLines, RefuseWhatTheTestRefuses) {
  const HoldTest test = litre_above({hold_reading(0, 13, 4), hold_reading(24, 11, 4)});
  EXPECT_EQ(hold_beer_lines(test, fresh_beer(std::nan(""), 0.1), 9).error().subject, Subject::co2);
  EXPECT_EQ(hold_beer_lines(test, fresh_beer(2, 0.1), 1).error().subject, Subject::parts);
  EXPECT_TRUE(
      hold_beer_lines(litre_above({hold_reading(0, 13, 4)}), fresh_beer(2, 0.1), 9)->empty());
}

}  // namespace
}  // namespace ullage::physics
