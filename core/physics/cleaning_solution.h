// SPDX-License-Identifier: GPL-3.0-or-later
//
// How much cleaner goes into how much water.
//
// By its label's strength: the mass of active substance in a solution of w % by
// weight is w times the solution's mass, so
//
//   m_active = w V rho_s,   m_concentrate = m_active / w_label,
//   V_concentrate = m_concentrate / rho_concentrate.
//
// rho_s is taken as 1 kg/L: a 2 % caustic is 1.021 kg/L at 20 C (from memory),
// so the amount comes out 2 % low, far inside what anybody can pour.
// By a dose on the label, "10 mL a litre": amount = dose times the volume.
//
// Source: mass balance. Strengths in use: 2 % NaOH by weight, 3 % for old or
// problem lines (trade handbook). The label's own instructions come first.
#pragma once

#include <optional>

#include "core/physics/error.h"
#include "core/units/estimate.h"
#include "core/units/quantities.h"
#include "core/units/scales.h"

namespace ullage::physics {

inline constexpr Range solution_volume_range{0.0, 10.0};      // m3
inline constexpr Range solution_strength_range{0.0, 0.20};    // by weight: 0 to 20 %
inline constexpr Range label_strength_range{0.001, 1.0};      // by weight
inline constexpr Range concentrate_density_range{500, 2500};  // kg/m3

// What the label says of a cleaner as sold. Without a density it is a powder, or
// is weighed.
struct Concentrate {
  units::Fraction active = units::fraction(1);  // active substance by weight
  std::optional<units::Density> density;
};

struct SolutionParts {
  units::Mass concentrate;
  std::optional<units::Volume> concentrate_volume;  // where the density is known
  units::Volume water;                              // what is left to fill up with
};

// `strength` is by weight of active substance. RangeError (fraction) when the
// label's strength is below the one wanted; it names the label's as the limit.
[[nodiscard]] Result<SolutionParts> cleaning_solution(units::Volume solution,
                                                      units::Fraction strength, const Concentrate&);

// What a solution is made up with, each as a share of itself, 95 %.
struct SolutionErrors {
  units::Fraction label = units::fraction(0.05);     // the label's strength
  units::Fraction marks = units::fraction(0.05);     // of the vessel that the solution is made in
  units::Fraction measured = units::fraction(0.03);  // scale or measuring jug of the cleaner
};
// The parts that would make just the strength wanted, each with what label, marks and
// the solution's own density (2 %) leave open; and the strength of what is made by their
// values, measured out as well as it may be.
struct SolutionEstimate {
  units::Estimate<units::Mass> concentrate;
  std::optional<units::Estimate<units::Volume>> concentrate_volume;
  units::Estimate<units::Volume> water;
  units::Estimate<units::Fraction> strength;
};
[[nodiscard]] Result<SolutionEstimate> solution_estimate(units::Volume solution,
                                                         units::Fraction strength,
                                                         const Concentrate&, const SolutionErrors&);
// By dose: volume (or, for a powder, mass) of concentrate for each volume of solution.
[[nodiscard]] Result<units::Volume> dose_of_liquid(units::Volume solution,
                                                   units::Fraction volume_per_volume);
[[nodiscard]] Result<units::Mass> dose_of_powder(units::Volume solution,
                                                 units::Density mass_per_volume);

// What a line cleaning usually is: a brewers' association recommendation as draught
// service pages reproduce it (verified). How often is a matter of rules
// (core/cellar/work_rules.h).
struct LineCleaningPractice {
  units::Duration standing = units::minutes(20);
  units::Fraction caustic{0.02};
  units::Temperature coldest = units::fahrenheit(80);
  units::Temperature hottest = units::fahrenheit(125);
};
inline const LineCleaningPractice line_cleaning_practice{};

}  // namespace ullage::physics
