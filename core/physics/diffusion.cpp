// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/physics/diffusion.h"

#include <cmath>

#include "core/physics/co2_gas.h"

namespace ullage::physics {

using namespace units;

Result<Duration> diffusion_time(Length depth, Temperature t) {
  if (auto bad = outside(Subject::temperature, in_kelvin(t), diffusion_temperature_range))
    return std::unexpected(*bad);
  if (auto bad = outside(Subject::length, in_metres(depth), diffusion_depth_range))
    return std::unexpected(*bad);
  const double m2_per_s = 5019e-9 * std::exp(-19510.0 / (gas_constant * in_kelvin(t)));
  return seconds(in_metres(depth) * in_metres(depth) / m2_per_s);
}

}  // namespace ullage::physics
