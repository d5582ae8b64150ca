// SPDX-License-Identifier: GPL-3.0-or-later
//
// How much cleaning solution a job takes, and how much agent goes into it.
//
// A solution must fill what is cleaned and what carries it there. Doses are as
// the label says them: grams a litre, millilitres a litre, or a strength in per
// cent of a dissolved agent by weight, made up from a stronger product:
//   m_product = V rho strength / product strength
// rho is taken as water's, 1.0 kg/L: a 3 % caustic is 3 % heavier, so this is up
// to 3 % less than by the letter, inside what a jug can measure (arithmetic).
//
// What is usual for beer lines (brewers' association recommendation as reproduced
// by draught-service pages, verified): caustic 2 % by weight, 3 % for old or
// problem lines; 15 minutes going round or 20 standing; not above 125 degF (one
// printing: 110). The product's own label goes before all of it. Caustic and acid
// burn: gloves and goggles, agent into water, never the other way round, and
// never acid and chlorine together.
#pragma once

#include "core/physics/error.h"
#include "core/units/quantities.h"
#include "core/units/scales.h"

namespace ullage::physics {

inline constexpr Range solution_range{1e-5, 1.0};          // m3: 10 mL to 1000 L
inline constexpr Range line_contents_range{0.0, 0.5};      // m3
inline constexpr Range fills_range{1.0, 20.0};             // times what the lines hold
inline constexpr Range mass_dose_range{1e-3, 200.0};       // g/L
inline constexpr Range volume_dose_range{1e-6, 0.5};       // mL/mL
inline constexpr Range strength_range{1e-4, 0.2};          // by weight, in use
inline constexpr Range product_strength_range{1e-3, 1.0};  // by weight, as bought

// The lines' contents `fills` times (once standing, more when it goes to waste at
// the tap), and what pump, hoses and can hold that never gets into a line.
[[nodiscard]] Result<units::Volume> solution_for_lines(units::Volume line_contents, double fills,
                                                       units::Volume outside_lines);
// Filling a keg by a share: 1 brimful, less where it is rolled or sprayed.
[[nodiscard]] Result<units::Volume> solution_for_keg(units::Volume brimful, units::Fraction share);

[[nodiscard]] Result<units::Mass> agent_by_mass(units::Volume solution, units::Density dose);
[[nodiscard]] Result<units::Volume> agent_by_volume(units::Volume solution, units::Fraction dose);
// `product` at least as strong as `wanted` (Subject::fraction otherwise).
[[nodiscard]] Result<units::Mass> agent_by_strength(units::Volume solution, units::Fraction wanted,
                                                    units::Fraction product);

// What a line cleaning should have been, and how a given one falls short.
struct LineCleaningPractice {
  units::Duration going_round = units::minutes(15);
  units::Duration standing = units::minutes(20);
  units::Fraction caustic{0.02};
  units::Fraction caustic_for_old_lines{0.03};
  units::Temperature coldest = units::fahrenheit(80);
  units::Temperature hottest = units::fahrenheit(125);
  units::Duration routine = units::days(14);
  units::Duration acid = units::days(91);
};
inline const LineCleaningPractice line_cleaning_practice{};

}  // namespace ullage::physics
