// SPDX-License-Identifier: GPL-3.0-or-later
//
// Friction in a full round pipe.
//
//   dp = f (L / d) rho v^2 / 2       Darcy-Weisbach, f the Darcy factor
//   Re = rho v d / mu
//   f  = 64 / Re                                      laminar, Re <= 2300
//   1/sqrt f = -2 log10(e/d / 3.7 + 2.51/(Re sqrt f)) Colebrook, Re >= 4000
//
// Between 2300 and 4000 nature jumps to and fro; no equation is right there. We
// go from one to the other by f = (1 - s) f_laminar + s f_Colebrook with s =
// x^3 (10 - 15 x + 6 x^2), x = (Re - 2300) / 1700. That has no step in f nor in
// its first two derivatives, and the pressure lost keeps rising with the flow:
// a line has one flow at each pressure and a solver cannot oscillate. The choice
// of s is ours; what it may be off by is the whole gap between the two laws (30 %
// at 2300), which calibration by a timed pour takes out.
//
// The Fanning factor of other books is a quarter of the Darcy factor; the types
// keep them apart.
#pragma once

#include "core/physics/error.h"
#include "core/units/flow.h"
#include "core/units/scales.h"

namespace ullage::physics {

using Reynolds = units::OnScale<struct ReynoldsTag>;
using RelativeRoughness = units::OnScale<struct RelativeRoughnessTag>;  // e / d
using DarcyFriction = units::OnScale<struct DarcyFrictionTag>;
using FanningFriction = units::OnScale<struct FanningFrictionTag>;

inline constexpr double laminar_below = 2300.0;
inline constexpr double turbulent_above = 4000.0;
inline constexpr Range reynolds_range{1e-3, 1e8};
inline constexpr Range colebrook_reynolds_range{laminar_below, 1e8};
inline constexpr Range relative_roughness_range{0.0, 0.05};

// Glass, brass, plastic: 0.0015 mm (a designer's table and Binder 1973, verified).
[[nodiscard]] units::Length drawn_tube_roughness();

[[nodiscard]] Result<DarcyFriction> friction_factor(Reynolds, RelativeRoughness);
[[nodiscard]] Result<DarcyFriction> laminar_friction(Reynolds);  // at any Reynolds number
[[nodiscard]] Result<DarcyFriction> colebrook_friction(Reynolds, RelativeRoughness);
[[nodiscard]] constexpr FanningFriction to_fanning(DarcyFriction f) {
  return FanningFriction(f.count() / 4.0);
}

// For a round pipe that runs full; arguments above zero (unchecked).
[[nodiscard]] Reynolds reynolds_number(units::Density, units::Velocity, units::Length bore,
                                       units::DynamicViscosity);
[[nodiscard]] units::Velocity mean_velocity(units::VolumeFlow, units::Length bore);
[[nodiscard]] units::PressureDifference friction_loss(DarcyFriction, units::Length length,
                                                      units::Length bore, units::Density,
                                                      units::Velocity);

// The same laws on bare numbers, unchecked: for solvers that call them often.
namespace pipe_detail {
[[nodiscard]] double colebrook(double reynolds, double relative_roughness);
[[nodiscard]] double friction(double reynolds, double relative_roughness);
}  // namespace pipe_detail

}  // namespace ullage::physics
