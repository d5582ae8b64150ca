// SPDX-License-Identifier: GPL-3.0-or-later
//
// Half a year of a busy keg on gas: its place read every day, the regulator moved
// every ten, a pour a day. What comes later must not change what was.
#include <gtest/gtest.h>

#include <array>
#include <cmath>
#include <cstdio>
#include <string>

#include "core/physics/carbonation.h"
#include "core/physics/equilibrium.h"
#include "tests/physics/keg_cases.h"

namespace ullage::physics {
namespace {

using namespace units;

CarbonationHistory half_year_on_gas(int days_long) {
  CarbonationHistory h = cases::soda_keg(12, {});
  h.brimful = litres(50.8);
  h.beer = litres(50);
  const auto place = [](double c, int n) {
    return Estimate<Temperature>(celsius(c))
        .with({"display: bias"}, 2.0)
        .with({"display: reading " + std::to_string(n)}, 0.5);
  };
  h.start = place(12, -1);
  for (int d = 0; d < days_long; ++d) {
    h.steps.push_back({days(d), PlaceChanged{place(3 + std::sin(d), d)}});
    if (d % 10 == 0)
      h.steps.push_back(
          {days(d),
           GasOn{cases::dial(11 + d % 3).with({"dial: reading " + std::to_string(d)}, 3447)}});
    if (d == 2) h.steps.push_back({days(d), Rocked{minutes(5)}});
    if (d >= 10) h.steps.push_back({days(d + 0.5), BeerDrawn{litres(0.25)}});
  }
  return h;
}

CarbonationModel modelled(const CarbonationHistory& h, Duration horizon) {
  const auto rates = carbonation_priors(litres(50.8), litres(50), "K01").value();
  return CarbonationModel::make(h, rates, horizon).value();
}

// The pieces of the solution may be cut elsewhere past the end of the shorter one,
// not before it: the same numbers but for rounding.
TEST(DenseHistory, WhatComesLaterDoesNotChangeWhatWas) {
  const CarbonationHistory whole = half_year_on_gas(183);
  CarbonationHistory first = whole;
  while (in_days(first.steps.back().at) > 100) first.steps.pop_back();
  const CarbonationModel long_one = modelled(whole, days(200));
  const CarbonationModel short_one = modelled(first, days(1));
  for (const double d : {0.3, 1.7, 10.2, 55.6, 99.9}) {
    const auto a = long_one.at(days(d));
    const auto b = short_one.at(days(d));
    ASSERT_TRUE(a && b);
    EXPECT_NEAR(a->median.count(), b->median.count(), 1e-12) << d;
    EXPECT_NEAR(in_psi(a->headspace), in_psi(b->headspace), 1e-9) << d;
  }
}

// A keg like this stays near what its gas and place hold, give or take what is said.
TEST(DenseHistory, StaysAroundWhatItsGasHolds) {
  const CarbonationModel m = modelled(half_year_on_gas(183), days(200));
  const double low = equilibrium_co2(GasAbove{gauge_psi(11), sea_level()}, celsius(4))->count();
  const double high = equilibrium_co2(GasAbove{gauge_psi(13), sea_level()}, celsius(2))->count();
  for (int d = 40; d < 180; d += 7) {
    const auto p = m.at(days(d));
    ASSERT_TRUE(p);
    EXPECT_GT(p->median.count(), low) << d;
    EXPECT_LT(p->median.count(), high) << d;
    EXPECT_GT(p->high.count() - p->low.count(), 0.1) << d;
    std::array<char, 80> text{};
    std::snprintf(text.data(), text.size(), "%.14g %.14g %.14g", p->low.count(), p->median.count(),
                  p->high.count());
    RecordProperty("day_" + std::to_string(d), text.data());
  }
}

}  // namespace
}  // namespace ullage::physics
