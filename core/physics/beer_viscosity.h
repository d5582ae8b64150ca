// SPDX-License-Identifier: GPL-3.0-or-later
//
// How thick water and beer are, and beer as it runs through a line.
//
// Water: mu = 1e-6 Pa s (280.68 r^-1.9 + 511.45 r^-7.7 + 61.131 r^-19.6 +
// 0.45903 r^-40), r = T / 300 K: the equation for liquid water at 0.1 MPa that
// goes with the IAPWS 2008 formulation (Patek et al. 2009), from memory; checked
// against printed tables (International Critical Tables 0 to 30 C) to 0.9 %,
// which is how far those tables stand from one another at 20 and 25 C.
//
// Beer: that times a factor. 1.44 was measured (Zhang & Xu 2008, seen as an
// excerpt, with 1.9 mPa s at 9 C, a factor of 1.41); a dark, strong beer reached
// 3.91 mPa s at 2 C, 2.3 times water. Ordinary beer: 1.44, 95 % within a factor
// of 1.25 (assumed from those). It matters little: in turbulent flow pressure
// lost goes with viscosity to the power of about 1/5.
#pragma once

#include "core/physics/error.h"
#include "core/physics/log_estimate.h"
#include "core/units/estimate.h"
#include "core/units/flow.h"
#include "core/units/scales.h"

namespace ullage::physics {

using ViscosityFactor = units::OnScale<struct TimesWaterTag>;  // beer over water

inline constexpr Range flow_temperature_range{271.15, 308.15};  // K: -2 to 35 C
inline constexpr Range viscosity_factor_range{1.0, 3.0};
inline constexpr ViscosityFactor ordinary_beer_viscosity{1.44};
inline constexpr double ordinary_beer_viscosity_spread = 1.25;  // 95 %, as a factor

[[nodiscard]] Result<units::DynamicViscosity> water_viscosity(units::Temperature);
[[nodiscard]] Result<units::DynamicViscosity> beer_viscosity(
    units::Temperature, ViscosityFactor factor = ordinary_beer_viscosity);

// The factor as an estimate under the name of the beer it is about.
[[nodiscard]] units::Estimate<ViscosityFactor> ordinary_viscosity_factor(units::ErrorSource);

// What a line's flow depends on.
struct FlowingBeer {
  units::Density density;
  units::DynamicViscosity viscosity;
};
[[nodiscard]] Result<FlowingBeer> flowing_beer(
    units::Temperature, units::SpecificGravity gravity = units::specific_gravity(1.010),
    ViscosityFactor factor = ordinary_beer_viscosity);

}  // namespace ullage::physics
