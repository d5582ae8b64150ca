// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/physics/cleaning_solution.h"

#include <gtest/gtest.h>

#include <cmath>

#include "core/physics/diffusion.h"
#include "core/physics/line_volume.h"
#include "tests/physics/keg_cases.h"

namespace ullage::physics {
namespace {

using namespace units;

// Arithmetic by hand: 6 m of 4.76 mm hold 107 mL; twice that and 2 L of can and
// pump are 2.21 L; at 20 g/L 44 g, at 2 % from a 4 % product half of the weight.
TEST(CleaningSolution, WorkedExample) {
  const Volume lines = line_volume(millimetres(4.76), metres(6)).value();
  const Volume solution = solution_for_lines(lines, 2, litres(2)).value();
  EXPECT_NEAR(in_litres(solution), 2.21, 0.005);
  EXPECT_NEAR(in_grams(agent_by_mass(solution, kilograms_per_cubic_metre(20)).value()), 44.3, 0.1);
  EXPECT_NEAR(in_litres(agent_by_volume(solution, fraction(0.015)).value()), 0.0332, 0.0002);
  EXPECT_NEAR(in_kilograms(agent_by_strength(solution, fraction(0.02), fraction(0.04)).value()),
              0.5 * in_litres(solution), 1e-9);
  EXPECT_NEAR(in_litres(solution_for_keg(litres(19.6), fraction(0.25)).value()), 4.9, 1e-9);
}

TEST(CleaningSolution, RefusesWhatNoLabelSays) {
  EXPECT_FALSE(solution_for_lines(litres(-1), 1, litres(0)));
  EXPECT_FALSE(solution_for_lines(litres(1), 0.5, litres(0)));
  EXPECT_FALSE(solution_for_lines(litres(0), 1, litres(0)));
  EXPECT_FALSE(solution_for_lines(litres(std::nan("")), 1, litres(0)));
  EXPECT_FALSE(solution_for_keg(litres(19), fraction(0)));
  EXPECT_FALSE(agent_by_mass(litres(2), kilograms_per_cubic_metre(0)));
  EXPECT_FALSE(agent_by_volume(litres(2), fraction(0.9)));
  EXPECT_FALSE(agent_by_strength(litres(2), fraction(0.02), fraction(0.01)));
  EXPECT_FALSE(agent_by_strength(litres(2), fraction(0.5), fraction(1)));
}

TEST(Diffusion, RefusesIceAndSteam) {
  EXPECT_FALSE(diffusion_time(metres(0.5), celsius(-5)));
  EXPECT_FALSE(diffusion_time(metres(0.5), celsius(60)));
  EXPECT_FALSE(diffusion_time(metres(0), celsius(10)));
  EXPECT_GT(*diffusion_time(metres(0.5), celsius(5)), *diffusion_time(metres(0.5), celsius(15)));
}

}  // namespace
}  // namespace ullage::physics
