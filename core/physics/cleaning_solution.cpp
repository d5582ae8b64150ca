// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/physics/cleaning_solution.h"

#include <algorithm>

namespace ullage::physics {

using namespace units;

namespace {

constexpr double solution_density = 1000;  // kg/m3

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
