// SPDX-License-Identifier: GPL-3.0-or-later
//
// Quantities as people read them: a number in the unit they chose, and the
// unit. Exact readings print with the digits an instrument can show; estimates
// print "2.4 ± 0.2" rounded so that the half-width keeps one significant digit
// (two when it starts with 1) and the value ends at the same decimal place.
// Results are UTF-8; "volumes" is abbreviated "vol", degrees are "°C"/"°F".
//
// Decimals of a reading: psi, °C, °F, L and lb one, dropped when it is 0; gal, kg, m, ft
// up to two; bar two; kPa none; from 100 psi or 10 bar on three figures, as gauges show; volumes
// and g/L one, two where they are there; specific gravity always three; °P and % alcohol one.
// A negative number has the true minus sign. What is not a finite number, and a
// specific gravity that has no Plato (gravity_scale.h), prints as "–".
// An estimate is written at most one place finer than a reading of its unit; an
// error too small to show there prints as the reading alone.
#pragma once

#include <string>

#include "core/units/display_units.h"
#include "core/units/estimate.h"

namespace ullage::units {

// How a quantity is written: how many decimals a plain reading gets and what
// the unit is called. `unit` is empty for a specific gravity.
[[nodiscard]] std::string unit_name(PressureUnit);     // "psi", "bar", "kPa"
[[nodiscard]] std::string unit_name(TemperatureUnit);  // "°C", "°F"
[[nodiscard]] std::string unit_name(VolumeUnit);       // "L", "gal", "imp gal"
[[nodiscard]] std::string unit_name(GlassUnit);        // "US pints", "pints", "half litres", ...
[[nodiscard]] std::string unit_name(MassUnit);
[[nodiscard]] std::string unit_name(LengthUnit);
[[nodiscard]] std::string unit_name(BoreUnit);
[[nodiscard]] std::string unit_name(Co2Unit);      // "vol", "g/L"
[[nodiscard]] std::string unit_name(GravityUnit);  // "", "°P"

struct Printer {
  DisplayUnits units;
  NumberStyle style;

  [[nodiscard]] std::string number(double v, int decimals) const;

  [[nodiscard]] std::string print(GaugePressure) const;
  [[nodiscard]] std::string print(PressureDifference) const;
  [[nodiscard]] std::string print(Temperature) const;
  [[nodiscard]] std::string print(TemperatureDifference) const;
  [[nodiscard]] std::string print(Volume) const;
  [[nodiscard]] std::string print(Mass) const;  // small masses in g or oz
  [[nodiscard]] std::string print(Length) const;
  [[nodiscard]] std::string print_bore(Length) const;
  [[nodiscard]] std::string print(Co2Volumes) const;  // in volumes or g/L, as chosen
  [[nodiscard]] std::string print(Co2Concentration) const;
  [[nodiscard]] std::string print(SpecificGravity) const;  // SG or °P, as chosen
  [[nodiscard]] std::string print(Plato) const;            // the same choice
  [[nodiscard]] std::string print(Abv) const;              // "5.4 %"
  [[nodiscard]] std::string print(Fraction) const;         // "62 %"
  [[nodiscard]] std::string print(
      Duration) const;  // "40 min", "3 h", "2 days": the largest apt unit
  [[nodiscard]] std::string print_glasses(Volume) const;  // "23 pints"

  // "2.4 ± 0.2 vol"
  [[nodiscard]] std::string print(const Estimate<Co2Volumes>&) const;
  [[nodiscard]] std::string print(const Estimate<Co2Concentration>&) const;
  [[nodiscard]] std::string print(const Estimate<Volume>&) const;
  [[nodiscard]] std::string print(const Estimate<GaugePressure>&) const;
  [[nodiscard]] std::string print(const Estimate<PressureDifference>&) const;
  [[nodiscard]] std::string print(const Estimate<Temperature>&) const;
  [[nodiscard]] std::string print(const Estimate<TemperatureDifference>&) const;
  [[nodiscard]] std::string print(const Estimate<Mass>&) const;
  [[nodiscard]] std::string print(const Estimate<SpecificGravity>&) const;
  [[nodiscard]] std::string print(const Estimate<Abv>&) const;
  [[nodiscard]] std::string print(const Estimate<Fraction>&) const;
  [[nodiscard]] std::string print(const Estimate<Duration>&) const;
  [[nodiscard]] std::string print_glasses(const Estimate<Volume>&) const;
  // "2.3 to 2.7 vol": both ends in one unit with the same decimals, and one
  // number where both read the same.
  [[nodiscard]] std::string print_range(Co2Volumes low, Co2Volumes high) const;
  [[nodiscard]] std::string print_range(GaugePressure low, GaugePressure high) const;
  [[nodiscard]] std::string print_range(Temperature low, Temperature high) const;
  [[nodiscard]] std::string print_range(Volume low, Volume high) const;
  [[nodiscard]] std::string print_range(Duration low, Duration high) const;
};

// "2.4 ± 0.2" from the two numbers alone: the rounding rule in one place.
[[nodiscard]] std::string value_with_error(double value, double half_width, NumberStyle style);

}  // namespace ullage::units
