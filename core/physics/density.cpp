// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/physics/density.h"

namespace ullage::physics {

using namespace units;

Density water_density_unchecked(Temperature temperature) {
  const double t = in_celsius(temperature);
  const double top =
      999.83952 +
      t * (16.945176 +
           t * (-7.9870401e-3 + t * (-46.170461e-6 + t * (105.56302e-9 - t * 280.54253e-12))));
  return kilograms_per_cubic_metre(top / (1.0 + 16.879850e-3 * t));
}

Result<Density> water_density(Temperature t) {
  if (auto bad = outside(Subject::temperature, in_kelvin(t), water_temperature_range))
    return std::unexpected(*bad);
  return water_density_unchecked(t);
}

Result<Density> beer_density(SpecificGravity sg, Temperature t) {
  if (auto bad = outside(Subject::gravity, sg.count(), gravity_range)) return std::unexpected(*bad);
  const auto water = water_density(t);
  if (!water) return water;
  return kilograms_per_cubic_metre(sg.count() * in_kilograms_per_cubic_metre(*water));
}

}  // namespace ullage::physics
