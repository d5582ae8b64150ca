// SPDX-License-Identifier: GPL-3.0-or-later
//
// Quantities of liquid that runs: volume flow, dynamic viscosity, pressure lost
// along a length. See quantities.h for the rest.
#pragma once

#include "core/units/quantities.h"

namespace ullage::units {

using VolumeFlow =
    boost::units::quantity<boost::units::divide_typeof_helper<si::volume, si::time>::type>;
using DynamicViscosity = boost::units::quantity<si::dynamic_viscosity>;
using PressureGradient =
    boost::units::quantity<boost::units::divide_typeof_helper<si::pressure, si::length>::type>;

[[nodiscard]] inline VolumeFlow litres_per_second(double v) { return litres(v) / seconds(1.0); }
[[nodiscard]] inline VolumeFlow us_fluid_ounces_per_second(double v) {
  return us_fluid_ounces(v) / seconds(1.0);
}
[[nodiscard]] inline double in_litres_per_second(VolumeFlow q) { return q.value() * 1e3; }
[[nodiscard]] inline double in_us_fluid_ounces_per_second(VolumeFlow q) {
  return in_us_gallons(cubic_metres(q.value())) * 128.0;
}
[[nodiscard]] inline DynamicViscosity millipascal_seconds(double v) {
  return DynamicViscosity::from_value(v * 1e-3);
}
[[nodiscard]] inline double in_millipascal_seconds(DynamicViscosity q) { return q.value() * 1e3; }
[[nodiscard]] inline PressureGradient psi_per_foot(double v) { return psi(v) / feet(1.0); }
[[nodiscard]] inline double in_psi_per_foot(PressureGradient q) {
  return q.value() * metres_per_foot / pascals_per_psi;
}
[[nodiscard]] inline double in_bar_per_metre(PressureGradient q) {
  return q.value() / pascals_per_bar;
}

}  // namespace ullage::units
