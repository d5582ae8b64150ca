// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/physics/cleaning_solution.h"

#include <gtest/gtest.h>

#include "core/physics/diffusion.h"
#include "core/units/printing.h"
#include "tests/physics/printed_numbers.h"

namespace ullage::testing {
namespace {

using namespace units;
using physics::Concentrate;

// Mass balance by hand: 10 L at 2 % hold 200 g of NaOH; a 30 % liquor of 1.33
// kg/L gives that in 666.7 g, 501.3 mL. Flakes (100 %): 200 g.
TEST(CleaningSolution, FollowsTheMassBalance) {
  const auto liquor = physics::cleaning_solution(litres(10), fraction(0.02),
                                                 {fraction(0.30), kilograms_per_cubic_metre(1330)});
  ASSERT_TRUE(liquor);
  EXPECT_NEAR(in_grams(liquor->concentrate), 666.67, 0.01);
  EXPECT_NEAR(in_litres(*liquor->concentrate_volume) * 1000, 501.25, 0.01);
  EXPECT_NEAR(in_litres(liquor->water), 9.49875, 1e-5);
  const auto flakes = physics::cleaning_solution(litres(10), fraction(0.02), Concentrate{});
  ASSERT_TRUE(flakes);
  EXPECT_NEAR(in_grams(flakes->concentrate), 200, 1e-9);
  EXPECT_FALSE(flakes->concentrate_volume);
}

// The example of docs/physics-cleaning.md, by the rounding of units::value_with_error.
TEST(CleaningSolution, CarriesItsErrorsAsThePageSays) {
  const auto made =
      physics::solution_estimate(litres(10), fraction(0.02), {fraction(0.30), {}}, {});
  ASSERT_TRUE(made);
  const auto page = physics::cases::printed("physics-cleaning.md",
                                            R"(take (.*) g, and what is made so has (.*) %\.)");
  ASSERT_EQ(page.size(), 2U);
  const auto no_spaces = [](std::string text) {
    std::erase(text, ' ');
    return text;
  };
  EXPECT_EQ(page[0], no_spaces(value_with_error(in_grams(made->concentrate.value()),
                                                made->concentrate.half_width() * 1e3, {})));
  EXPECT_EQ(page[1], no_spaces(value_with_error(made->strength.value().count() * 100,
                                                made->strength.half_width() * 100, {})));
}

TEST(CleaningSolution, DosesAreProportional) {
  EXPECT_NEAR(in_litres(*physics::dose_of_liquid(litres(12), fraction(0.01))) * 1000, 120, 1e-9);
  EXPECT_NEAR(in_grams(*physics::dose_of_powder(litres(12), kilograms_per_cubic_metre(15))), 180,
              1e-9);
}

TEST(CleaningSolution, RefusesWhatCannotBeMixed) {
  const auto weak = physics::cleaning_solution(litres(10), fraction(0.05), {fraction(0.03), {}});
  ASSERT_FALSE(weak);
  EXPECT_EQ(weak.error().subject, physics::Subject::fraction);
  EXPECT_DOUBLE_EQ(weak.error().high, 0.03) << "what the label holds";
  EXPECT_FALSE(physics::cleaning_solution(litres(10), fraction(0.5), Concentrate{}));
  EXPECT_FALSE(physics::cleaning_solution(litres(-1), fraction(0.02), Concentrate{}));
  EXPECT_FALSE(physics::cleaning_solution(litres(1), fraction(0.02), {fraction(0), {}}));
  EXPECT_FALSE(physics::cleaning_solution(litres(1), fraction(0.02),
                                          {fraction(0.3), kilograms_per_cubic_metre(10)}));
  EXPECT_FALSE(physics::dose_of_liquid(litres(1), fraction(1.5)));
  EXPECT_FALSE(physics::dose_of_powder(litres(1), kilograms_per_cubic_metre(-1)));
}

TEST(Diffusion, RefusesIceAndSteam) {
  EXPECT_FALSE(physics::diffusion_time(metres(0.5), celsius(-5)));
  EXPECT_FALSE(physics::diffusion_time(metres(0.5), celsius(60)));
  EXPECT_FALSE(physics::diffusion_time(metres(0), celsius(10)));
  EXPECT_GT(*physics::diffusion_time(metres(0.5), celsius(5)),
            *physics::diffusion_time(metres(0.5), celsius(15)));
}

}  // namespace
}  // namespace ullage::testing
