// SPDX-License-Identifier: GPL-3.0-or-later
//
// Rocking, a rate learned from a reading, a keg with its gas off and what pure CO2 a
// blend is like, on the slate.
#include <gmock/gmock.h>

#include <cmath>

#include "core/units/present.h"
#include "tests/report/asked.h"

namespace ullage::testing::slates {
namespace {

using namespace report::slate;  // NOLINT(google-build-using-namespace): the whole file is about it
using namespace asking;         // NOLINT(google-build-using-namespace)
using report::slate::Fault;     // the cellar has a Fault and a Field, too
using report::slate::Field;
using ::testing::Contains;
using ::testing::HasSubstr;

// Cold beer, one time constant of 10 minutes: C = Ceq - (Ceq - C0) e^(-t / 10 min). Ceq at
// 30 psi and 38 °F by the straight line through Miller's chart (2.57 at 12 psi, 0.096 a
// psi) is 4.3.
TEST(SlateRocking, FollowsItsTimeConstant) {
  Asked asked("rocking");
  asked.with("temperature", units::fahrenheit(38)).with("place", units::fahrenheit(38));
  const double expected = 10 * std::log((4.3 - 0.85) / (4.3 - 2.4));
  const Answer a = asked.answer();
  EXPECT_NEAR(units::in_seconds(number_of<units::Duration>(a, "Rock it for")) / 60, expected,
              0.12 * expected);
  // 10 min, 95 % 3 to 33: the fast edge at a third of it, more or less.
  EXPECT_LT(magnitude_of(present(a.values.front().low)),
            0.5 * magnitude_of(present(a.values.front().value)));
  EXPECT_NE(value_named(a, "Past its range after"), nullptr);
  asked.with("rocked", units::minutes(10));
  EXPECT_NEAR(magnitude_of(present(value_named(asked.answer(), "CO₂ after 10 min")->value)),
              4.3 - (4.3 - 0.85) * std::exp(-1.0), 0.12);
  EXPECT_EQ(Asked("rocking").with("high", units::volumes_of_co2(1)).problem().field, "high");
}

// A keg that has nearly all after three days is a fast one; one that has little, slow.
TEST(SlateLearnedRate, FollowsTheReading) {
  const auto days = [](double volumes) {
    const Answer a = Asked("learned_rate")
                         .with("read", units::volumes_of_co2(volumes))
                         .with("read_error", units::volumes_of_co2(0.05))
                         .answer();
    return units::in_days(get<units::Duration>(*a.values.front().value));
  };
  // 0.85 to 2.6 volumes: half way, 1.73, in three days is 3 / ln 2 = 4.3.
  EXPECT_NEAR(days(1.73), 4.3, 0.5);
  EXPECT_LT(days(2.1), 3.3);
  EXPECT_GT(days(1.4), 5);
  const Answer a = Asked("learned_rate").answer();
  const AnswerValue* before = value_named(a, "Taken before the reading");
  ASSERT_NE(before, nullptr);
  EXPECT_LT(
      magnitude_of(present(a.values.front().high)) / magnitude_of(present(a.values.front().low)),
      magnitude_of(present(before->high)) / magnitude_of(present(before->low)))
      << "a reading narrows it";
  EXPECT_THAT(Asked("learned_rate")
                  .with("read", units::volumes_of_co2(5))
                  .with("read_error", units::volumes_of_co2(0.05))
                  .answer()
                  .sentences,
              Contains(HasSubstr("nothing was learned from it")));
}

// A full keg's headspace goes to what its beer has: Miller's chart, 2.57 volumes at
// 38 °F is 12 psi and at 50 °F, 2.50 volumes, 18 psi.
TEST(SlateShutKeg, AFullKegReadsItsBeer) {
  Asked asked("shut_keg");
  asked.with("co2", units::volumes_of_co2(2.57))
      .with("temperature", units::fahrenheit(38))
      .with("place", units::fahrenheit(38))
      .with("beer", units::litres(19.5));
  const auto reads = [](const Asked& a) {
    return units::in_psi(number_of<units::GaugePressure>(a.answer(), "At rest the dial reads"));
  };
  // 18 psi more in 0.4 L is 1 g of gas: 0.03 volumes of the beer, a quarter of a psi.
  EXPECT_NEAR(reads(asked), 12.25, 0.7);
  asked.with("place", units::fahrenheit(50)).with("co2", units::volumes_of_co2(2.48));
  EXPECT_NEAR(reads(asked), 18.0, 0.9);
  const Answer a = asked.answer();
  const AnswerValue* dial = value_named(a, "At rest the dial reads");
  for (const char* source : {"CO₂ in the beer", "thermometer: bias", "equilibrium equation"}) {
    EXPECT_THAT(dial->errors, Contains(::testing::Field(&units::Contribution::source,
                                                        units::ErrorSource{source})));
  }
  ASSERT_GT(a.chart.points.size(), 10U);
  EXPECT_NEAR(units::in_psi(get<units::GaugePressure>(a.chart.points.front().likely)), 30, 0.1);
}

// 60 % CO2 at 25 psi: 0.6 times 39.7 less 14.7 is 9.1 psi of pure CO2.
TEST(SlateBlends, AreLikeTheirShareOfTheAbsolutePressure) {
  const Answer a = Asked("blend_like").answer();
  EXPECT_NEAR(units::in_psi(number_of<units::GaugePressure>(a, "Like pure CO₂ at")),
              0.6 * 39.696 - 14.696, 0.01);
  // Round: the blend to order for what it holds is this one.
  const auto holds = number_of<units::Co2Volumes>(a, "At rest the beer holds");
  EXPECT_NEAR(number_of<units::Fraction>(Asked("blend_to_order").with("co2", holds).answer(),
                                         "CO₂ in the blend")
                  .count(),
              0.6, 1e-4);
  EXPECT_EQ(Asked("blend_like").with("temperature", units::celsius(60)).problem().field,
            "temperature");
}

}  // namespace
}  // namespace ullage::testing::slates
