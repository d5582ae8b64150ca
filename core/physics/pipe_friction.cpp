// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/physics/pipe_friction.h"

#include <cmath>
#include <numbers>

namespace ullage::physics {

using namespace units;

namespace pipe_detail {

// Newton's method on x = 1 / sqrt f from Haaland's explicit value, which is
// within 2 %: three steps reach the last digit.
double colebrook(double reynolds, double relative_roughness) {
  const double a = relative_roughness / 3.7;
  const double b = 2.51 / reynolds;
  double x = -1.8 * std::log10(std::pow(a, 1.11) + 6.9 / reynolds);
  for (int step = 0; step < 3; ++step) {
    const double inside = a + b * x;
    const double miss = x + 2.0 * std::log10(inside);
    x -= miss / (1.0 + 2.0 * b / (inside * std::numbers::ln10));
  }
  return 1.0 / (x * x);
}

double friction(double reynolds, double relative_roughness) {
  if (reynolds <= laminar_below) return 64.0 / reynolds;
  const double turbulent = colebrook(reynolds, relative_roughness);
  if (reynolds >= turbulent_above) return turbulent;
  const double x = (reynolds - laminar_below) / (turbulent_above - laminar_below);
  const double s = x * x * x * (10.0 + x * (-15.0 + 6.0 * x));
  return (1.0 - s) * 64.0 / reynolds + s * turbulent;
}

}  // namespace pipe_detail

Length drawn_tube_roughness() { return millimetres(0.0015); }

Result<DarcyFriction> laminar_friction(Reynolds re) {
  if (auto bad = outside(Subject::reynolds, re.count(), reynolds_range))
    return std::unexpected(*bad);
  return DarcyFriction(64.0 / re.count());
}

Result<DarcyFriction> colebrook_friction(Reynolds re, RelativeRoughness roughness) {
  if (auto bad = outside(Subject::reynolds, re.count(), colebrook_reynolds_range))
    return std::unexpected(*bad);
  if (auto bad = outside(Subject::relative_roughness, roughness.count(), relative_roughness_range))
    return std::unexpected(*bad);
  return DarcyFriction(pipe_detail::colebrook(re.count(), roughness.count()));
}

Result<DarcyFriction> friction_factor(Reynolds re, RelativeRoughness roughness) {
  if (auto bad = outside(Subject::reynolds, re.count(), reynolds_range))
    return std::unexpected(*bad);
  if (auto bad = outside(Subject::relative_roughness, roughness.count(), relative_roughness_range))
    return std::unexpected(*bad);
  return DarcyFriction(pipe_detail::friction(re.count(), roughness.count()));
}

Reynolds reynolds_number(Density density, Velocity v, Length bore, DynamicViscosity viscosity) {
  return Reynolds(density.value() * v.value() * bore.value() / viscosity.value());
}

Velocity mean_velocity(VolumeFlow flow, Length bore) {
  return Velocity::from_value(4.0 * flow.value() /
                              (std::numbers::pi * bore.value() * bore.value()));
}

PressureDifference friction_loss(DarcyFriction f, Length length, Length bore, Density density,
                                 Velocity v) {
  return pascals(f.count() * length.value() / bore.value() * density.value() * v.value() *
                 v.value() / 2.0);
}

}  // namespace ullage::physics
