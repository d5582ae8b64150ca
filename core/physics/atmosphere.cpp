// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/physics/atmosphere.h"

#include <cmath>
#include <utility>

namespace ullage::physics {

using namespace units;

Result<AbsolutePressure> ambient_pressure(Length altitude) {
  constexpr double earth_radius_m = 6356766.0;
  constexpr double lapse_k_per_m = 0.0065;
  constexpr double base_k = 288.15;
  constexpr double exponent = 5.25588;
  const double h = in_metres(altitude);
  if (auto bad = outside(Subject::altitude, h, altitude_range)) return std::unexpected(*bad);
  const double geopotential = earth_radius_m * h / (earth_radius_m + h);
  return pascals_absolute(pascals_per_atmosphere *
                          std::pow(1.0 - lapse_k_per_m * geopotential / base_k, exponent));
}

Result<Estimate<AbsolutePressure>> ambient_pressure_estimate(Length altitude, ErrorSource weather) {
  const auto p = ambient_pressure(altitude);
  if (!p) return std::unexpected(p.error());
  return Estimate<AbsolutePressure>(*p).with(std::move(weather), weather_half_width_pascals);
}

AbsolutePressure sea_level() { return pascals_absolute(pascals_per_atmosphere); }

}  // namespace ullage::physics
