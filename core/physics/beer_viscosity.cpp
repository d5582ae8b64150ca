// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/physics/beer_viscosity.h"

#include <cmath>
#include <utility>

#include "core/physics/density.h"

namespace ullage::physics {

using namespace units;

Result<DynamicViscosity> water_viscosity(Temperature t) {
  if (auto bad = outside(Subject::temperature, in_kelvin(t), flow_temperature_range))
    return std::unexpected(*bad);
  const double ln_r = std::log(in_kelvin(t) / 300.0);
  const double micro = 280.68 * std::exp(-1.9 * ln_r) + 511.45 * std::exp(-7.7 * ln_r) +
                       61.131 * std::exp(-19.6 * ln_r) + 0.45903 * std::exp(-40.0 * ln_r);
  return millipascal_seconds(micro * 1e-3);
}

Result<DynamicViscosity> beer_viscosity(Temperature t, ViscosityFactor factor) {
  if (auto bad = outside(Subject::factor, factor.count(), viscosity_factor_range))
    return std::unexpected(*bad);
  const auto water = water_viscosity(t);
  if (!water) return water;
  return *water * factor.count();
}

Estimate<ViscosityFactor> ordinary_viscosity_factor(ErrorSource source) {
  const double value = ordinary_beer_viscosity.count();
  return Estimate<ViscosityFactor>(ordinary_beer_viscosity)
      .with(std::move(source), value * (ordinary_beer_viscosity_spread - 1.0));
}

Result<FlowingBeer> flowing_beer(Temperature t, SpecificGravity gravity, ViscosityFactor factor) {
  const auto viscosity = beer_viscosity(t, factor);
  if (!viscosity) return std::unexpected(viscosity.error());
  const auto density = beer_density(gravity, t);
  if (!density) return std::unexpected(density.error());
  return FlowingBeer{*density, *viscosity};
}

}  // namespace ullage::physics
