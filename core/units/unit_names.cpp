// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/units/printing.h"

namespace ullage::units {

std::string unit_name(PressureUnit u) {
  switch (u) {
    case PressureUnit::psi:
      return "psi";
    case PressureUnit::bar:
      return "bar";
    case PressureUnit::kilopascal:
      return "kPa";
  }
  return {};
}

std::string unit_name(TemperatureUnit u) { return u == TemperatureUnit::celsius ? "°C" : "°F"; }

std::string unit_name(VolumeUnit u) {
  switch (u) {
    case VolumeUnit::litre:
      return "L";
    case VolumeUnit::us_gallon:
      return "gal";
    case VolumeUnit::imperial_gallon:
      return "imp gal";
  }
  return {};
}

std::string unit_name(GlassUnit u) {
  switch (u) {
    case GlassUnit::us_pint:
      return "US pints";
    case GlassUnit::imperial_pint:
      return "pints";
    case GlassUnit::half_litre:
      return "half litres";
    case GlassUnit::third_litre:
      return "third litres";
  }
  return {};
}

std::string unit_name(MassUnit u) { return u == MassUnit::kilogram ? "kg" : "lb"; }
std::string unit_name(LengthUnit u) { return u == LengthUnit::metre ? "m" : "ft"; }
std::string unit_name(BoreUnit u) { return u == BoreUnit::millimetre ? "mm" : "in"; }
std::string unit_name(Co2Unit u) { return u == Co2Unit::volumes ? "vol" : "g/L"; }
std::string unit_name(GravityUnit u) { return u == GravityUnit::plato ? "°P" : ""; }

}  // namespace ullage::units
