// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/physics/cleaning_solution.h"

#include <algorithm>

namespace ullage::physics {

using namespace units;

namespace {

constexpr double solution_density = 1000;         // kg/m3
constexpr double solution_density_within = 0.02;  // of it, up to 3 % caustic

// So many times what is stated.
Estimate<Fraction> times_one(const char* name, double within) {
  return Estimate<Fraction>(fraction(1)).with({name}, within);
}

}  // namespace

Result<SolutionParts> cleaning_solution(Volume solution, Fraction strength,
                                        const Concentrate& concentrate) {
  const double volume = in_cubic_metres(solution);
  if (auto bad = outside(Subject::volume, volume, solution_volume_range)) {
    return std::unexpected(*bad);
  }
  if (auto bad = outside(Subject::fraction, concentrate.active.count(), label_strength_range)) {
    return std::unexpected(*bad);
  }
  const Range strengths{solution_strength_range.low,
                        std::min(solution_strength_range.high, concentrate.active.count())};
  if (auto bad = outside(Subject::fraction, strength.count(), strengths)) {
    return std::unexpected(*bad);
  }
  const double mass = strength.count() * volume * solution_density / concentrate.active.count();
  SolutionParts parts{kilograms(mass), std::nullopt,
                      cubic_metres(volume - mass / solution_density)};
  if (concentrate.density) {
    const double density = in_kilograms_per_cubic_metre(*concentrate.density);
    if (auto bad = outside(Subject::density, density, concentrate_density_range)) {
      return std::unexpected(*bad);
    }
    parts.concentrate_volume = cubic_metres(mass / density);
    parts.water = cubic_metres(volume - mass / density);
  }
  return parts;
}

Result<SolutionEstimate> solution_estimate(Volume solution, Fraction strength,
                                           const Concentrate& concentrate,
                                           const SolutionErrors& errors) {
  const auto parts = cleaning_solution(solution, strength, concentrate);
  if (!parts) return std::unexpected(parts.error());
  const auto label = times_one("the label’s strength", errors.label.count());
  const auto marks = times_one("marks of the vessel", errors.marks.count());
  const auto density = times_one("density of the solution", solution_density_within);
  const auto measured = times_one("the cleaner measured out", errors.measured.count());
  const auto mass = propagate(
      [&](Fraction l, Fraction v, Fraction d) {
        return Mass(v.count() * d.count() / l.count() * parts->concentrate);
      },
      label, marks, density);
  const auto liquid = [&](Fraction l, Fraction v, Fraction d) {
    return Volume(v.count() * d.count() / l.count() * *parts->concentrate_volume);
  };
  const auto water = propagate(
      [&](Fraction l, Fraction v, Fraction d) {
        // What the concentrate takes the place of, as cleaning_solution has it.
        const Volume taken = solution - parts->water;
        return Volume(v.count() * solution - v.count() * d.count() / l.count() * taken);
      },
      label, marks, density);
  const auto made = propagate(
      [&](Fraction l, Fraction m, Fraction v, Fraction d) {
        return fraction(strength.count() * l.count() * m.count() / (v.count() * d.count()));
      },
      label, measured, marks, density);
  SolutionEstimate out{mass, std::nullopt, water, made};
  if (parts->concentrate_volume) out.concentrate_volume = propagate(liquid, label, marks, density);
  return out;
}

Result<Volume> dose_of_liquid(Volume solution, Fraction volume_per_volume) {
  const double volume = in_cubic_metres(solution);
  if (auto bad = outside(Subject::volume, volume, solution_volume_range)) {
    return std::unexpected(*bad);
  }
  if (auto bad = outside(Subject::fraction, volume_per_volume.count(), {0.0, 1.0})) {
    return std::unexpected(*bad);
  }
  return cubic_metres(volume * volume_per_volume.count());
}

Result<Mass> dose_of_powder(Volume solution, Density mass_per_volume) {
  const double volume = in_cubic_metres(solution);
  if (auto bad = outside(Subject::volume, volume, solution_volume_range)) {
    return std::unexpected(*bad);
  }
  const double dose = in_kilograms_per_cubic_metre(mass_per_volume);
  if (auto bad = outside(Subject::density, dose, {0.0, 1000.0})) return std::unexpected(*bad);
  return kilograms(volume * dose);
}

}  // namespace ullage::physics
