// SPDX-License-Identifier: GPL-3.0-or-later
//
// The worked numbers of docs/physics-carbonation.md and docs/physics-level.md, to
// the digits printed there.
#include <gtest/gtest.h>

#include "core/physics/carbonation_answers.h"
#include "core/physics/diffusion.h"
#include "core/physics/level_filter.h"
#include "core/physics/rate_posterior.h"
#include "core/physics/run_out.h"
#include "core/units/present.h"
#include "tests/physics/keg_cases.h"

namespace ullage::physics {
namespace {

using namespace units;

CarbonationHistory at_twelve_psi() {
  return cases::soda_keg(3, {{hours(0), GasOn{cases::dial(12)}}});
}

TEST(CarbonationPage, OneReading) {
  CarbonationHistory h = at_twelve_psi();
  const auto before = CarbonationModel::make(h, cases::rates()).value();
  h.readings.push_back(
      {days(2), Estimate<Co2Volumes>(volumes_of_co2(2.10)).with({"meter: reading 1"}, 0.08)});
  const auto after = CarbonationModel::make(h, cases::rates()).value();
  const RateBand& prior = present(after.learned()).prior;
  const RateBand& rate = present(after.learned()).posterior;
  EXPECT_NEAR(in_days(prior.median), 3.9, 0.06);
  EXPECT_NEAR(in_days(rate.low), 1.4, 0.06);
  EXPECT_NEAR(in_days(rate.median), 1.8, 0.06);
  EXPECT_NEAR(in_days(rate.high), 2.2, 0.06);
  const auto expect_band = [](const CarbonationModel& model, double at, double low, double likely,
                              double high) {
    const CarbonationPoint p = model.at(days(at)).value();
    EXPECT_NEAR(p.low.count(), low, 0.006) << at;
    EXPECT_NEAR(p.median.count(), likely, 0.006) << at;
    EXPECT_NEAR(p.high.count(), high, 0.006) << at;
  };
  expect_band(before, 2, 1.23, 1.55, 1.99);
  expect_band(before, 4, 1.53, 1.97, 2.40);
  expect_band(after, 2, 2.00, 2.09, 2.16);
  expect_band(after, 4, 2.37, 2.48, 2.58);
}

TEST(CarbonationPage, SecondOpinion) {
  const auto a =
      equilibrium_answer({gauge_psi(25), sea_level()}, celsius(1), Equation::polynomial).value();
  EXPECT_EQ(a.by, Equation::fitted_chart);
  EXPECT_NEAR(a.co2.count(), 4.15, 0.006);
  EXPECT_NEAR(present(a.second).count(), 4.21, 0.006);
}

TEST(CarbonationPage, Drift) {
  const auto m = CarbonationModel::make(at_twelve_psi(), cases::rates()).value();
  const auto kept = drift_at(m, cases::exactly(8), days(60), days(14)).value();
  const auto vented =
      drift_at(m, cases::exactly(8), days(60), days(14), BeforeServing::vented).value();
  EXPECT_NEAR(kept.change.value().count(), 0, 0.001);
  EXPECT_NEAR(vented.change.value().count(), -0.016, 0.0006);
  EXPECT_NEAR(vented.change.half_width(), 0.008, 0.0006);
}

TEST(CarbonationPage, Diffusion) {
  EXPECT_NEAR(in_days(diffusion_time(metres(0.5), celsius(10)).value()), 2290, 5);
}

}  // namespace
}  // namespace ullage::physics
