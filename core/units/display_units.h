// SPDX-License-Identifier: GPL-3.0-or-later
//
// Which units a person reads, one choice per dimension, and how numbers are
// written. Stored values never depend on these; only printing.h and parsing.h
// (and through them the screens, sheets and exports) do.
#pragma once

namespace ullage::units {

enum class PressureUnit { psi, bar, kilopascal };
enum class TemperatureUnit { celsius, fahrenheit };
enum class VolumeUnit { litre, us_gallon, imperial_gallon };
enum class GlassUnit { us_pint, imperial_pint, half_litre, third_litre };
enum class MassUnit { kilogram, pound };
enum class LengthUnit { metre, foot };  // lengths, rises, altitudes
enum class BoreUnit { millimetre, inch };
enum class Co2Unit { volumes, grams_per_litre };
enum class GravityUnit { specific_gravity, plato };

struct DisplayUnits {
  PressureUnit pressure = PressureUnit::bar;
  TemperatureUnit temperature = TemperatureUnit::celsius;
  VolumeUnit volume = VolumeUnit::litre;
  GlassUnit glass = GlassUnit::half_litre;
  MassUnit mass = MassUnit::kilogram;
  LengthUnit length = LengthUnit::metre;
  BoreUnit bore = BoreUnit::millimetre;
  Co2Unit co2 = Co2Unit::volumes;
  GravityUnit gravity = GravityUnit::specific_gravity;
  friend bool operator==(const DisplayUnits&, const DisplayUnits&) = default;

  [[nodiscard]] static DisplayUnits metric();   // bar, C, L, half litre, kg, m, mm, g/L, Plato
  [[nodiscard]] static DisplayUnits us();       // psi, F, US gal, US pint, lb, ft, in, volumes, SG
  [[nodiscard]] static DisplayUnits british();  // psi, C, L, imperial pint, kg, m, mm, volumes, SG
};

// How numbers are written: the decimal mark of the person's locale. Input
// accepts either mark where it is unambiguous (parsing.h).
struct NumberStyle {
  char decimal_mark = '.';
  friend bool operator==(const NumberStyle&, const NumberStyle&) = default;
};

}  // namespace ullage::units
