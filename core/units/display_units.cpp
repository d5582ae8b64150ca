// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/units/display_units.h"

namespace ullage::units {

DisplayUnits DisplayUnits::metric() {
  return {.pressure = PressureUnit::bar,
          .temperature = TemperatureUnit::celsius,
          .volume = VolumeUnit::litre,
          .glass = GlassUnit::half_litre,
          .mass = MassUnit::kilogram,
          .length = LengthUnit::metre,
          .bore = BoreUnit::millimetre,
          .co2 = Co2Unit::grams_per_litre,
          .gravity = GravityUnit::plato};
}

DisplayUnits DisplayUnits::us() {
  return {.pressure = PressureUnit::psi,
          .temperature = TemperatureUnit::fahrenheit,
          .volume = VolumeUnit::us_gallon,
          .glass = GlassUnit::us_pint,
          .mass = MassUnit::pound,
          .length = LengthUnit::foot,
          .bore = BoreUnit::inch,
          .co2 = Co2Unit::volumes,
          .gravity = GravityUnit::specific_gravity};
}

DisplayUnits DisplayUnits::british() {
  return {.pressure = PressureUnit::psi,
          .temperature = TemperatureUnit::celsius,
          .volume = VolumeUnit::litre,
          .glass = GlassUnit::imperial_pint,
          .mass = MassUnit::kilogram,
          .length = LengthUnit::metre,
          .bore = BoreUnit::millimetre,
          .co2 = Co2Unit::volumes,
          .gravity = GravityUnit::specific_gravity};
}

}  // namespace ullage::units
