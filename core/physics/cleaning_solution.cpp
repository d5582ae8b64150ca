// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/physics/cleaning_solution.h"

namespace ullage::physics {

using namespace units;

namespace {

constexpr double water_kilograms_per_m3 = 1000;

Result<Volume> in_range(double cubic) {
  if (auto bad = outside(Subject::volume, cubic, solution_range)) return std::unexpected(*bad);
  return cubic_metres(cubic);
}

}  // namespace

Result<Volume> solution_for_lines(Volume line_contents, double fills, Volume outside_lines) {
  for (const Volume& v : {line_contents, outside_lines}) {
    if (auto bad = outside(Subject::volume, in_cubic_metres(v), line_contents_range))
      return std::unexpected(*bad);
  }
  if (auto bad = outside(Subject::vessel_volumes, fills, fills_range)) return std::unexpected(*bad);
  return in_range(fills * in_cubic_metres(line_contents) + in_cubic_metres(outside_lines));
}

Result<Volume> solution_for_keg(Volume brimful, Fraction share) {
  if (auto bad = outside(Subject::fraction, share.count(), {0.01, 1.0}))
    return std::unexpected(*bad);
  return in_range(share.count() * in_cubic_metres(brimful));
}

Result<Mass> agent_by_mass(Volume solution, Density dose) {
  const auto volume = in_range(in_cubic_metres(solution));
  if (!volume) return std::unexpected(volume.error());
  const double grams_a_litre = in_kilograms_per_cubic_metre(dose);
  if (auto bad = outside(Subject::density, grams_a_litre, mass_dose_range))
    return std::unexpected(*bad);
  return Mass(solution * dose);
}

Result<Volume> agent_by_volume(Volume solution, Fraction dose) {
  const auto volume = in_range(in_cubic_metres(solution));
  if (!volume) return std::unexpected(volume.error());
  if (auto bad = outside(Subject::fraction, dose.count(), volume_dose_range))
    return std::unexpected(*bad);
  return Volume(solution * dose.count());
}

Result<Mass> agent_by_strength(Volume solution, Fraction wanted, Fraction product) {
  const auto volume = in_range(in_cubic_metres(solution));
  if (!volume) return std::unexpected(volume.error());
  if (auto bad = outside(Subject::fraction, product.count(), product_strength_range))
    return std::unexpected(*bad);
  if (auto bad = outside(Subject::fraction, wanted.count(), strength_range))
    return std::unexpected(*bad);
  if (auto bad = outside(Subject::fraction, wanted.count(), {strength_range.low, product.count()}))
    return std::unexpected(*bad);
  return kilograms(in_cubic_metres(solution) * water_kilograms_per_m3 * wanted.count() /
                   product.count());
}

}  // namespace ullage::physics
