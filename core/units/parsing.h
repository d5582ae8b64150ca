// SPDX-License-Identifier: GPL-3.0-or-later
//
// What a person types, read as a quantity: "30 psi", "2.1 bar", "34F", "1,5",
// "12" (a bare number means the unit shown beside the field; a typed unit
// wins). One parser for the whole program: fields, command line, imports.
//
// Either decimal mark is accepted where it is unambiguous. "1,500" is refused
// as ambiguous rather than guessed. Spaces around the unit and letter case do
// not matter except where they change the meaning.
#pragma once

#include <expected>
#include <string>
#include <string_view>

#include "core/units/display_units.h"
#include "core/units/gauge_pressure.h"
#include "core/units/quantities.h"
#include "core/units/scales.h"

namespace ullage::units {

enum class ParseFault {
  empty,
  not_a_number,
  ambiguous_number,  // "1,500": fifteen hundred or one and a half?
  unknown_unit,      // "30 frogs"
  wrong_dimension,   // "30 psi" where a temperature is asked
  out_of_range,      // not finite, or beyond what the dimension can be at all
};

struct ParseError {
  ParseFault fault = ParseFault::empty;
  std::string typed;           // the offending part
  std::string accepted_units;  // "psi, bar, kPa": for the sentence at the field
};

template <class Q>
using Parsed = std::expected<Q, ParseError>;

struct Parser {
  DisplayUnits units;
  NumberStyle style;

  [[nodiscard]] Parsed<GaugePressure> gauge_pressure(std::string_view) const;
  [[nodiscard]] Parsed<PressureDifference> pressure_difference(std::string_view) const;
  [[nodiscard]] Parsed<Temperature> temperature(std::string_view) const;
  [[nodiscard]] Parsed<TemperatureDifference> temperature_difference(std::string_view) const;
  [[nodiscard]] Parsed<Volume> volume(
      std::string_view) const;                              // L, mL, gal, imp gal, pint, fl oz ...
  [[nodiscard]] Parsed<Mass> mass(std::string_view) const;  // kg, g, lb, oz
  [[nodiscard]] Parsed<Length> length(std::string_view) const;  // m, cm, mm, ft, in; "3 ft 6 in"
  [[nodiscard]] Parsed<Length> bore(std::string_view) const;    // mm, in; "3/16 in"
  [[nodiscard]] Parsed<Co2Concentration> co2(std::string_view) const;     // "2.5 vol", "4.9 g/L"
  [[nodiscard]] Parsed<SpecificGravity> gravity(std::string_view) const;  // "1.048", "1048", "12 P"
  [[nodiscard]] Parsed<Fraction> fraction(std::string_view) const;        // "62 %", "0.62", "3/4"
  [[nodiscard]] Parsed<Duration> duration(std::string_view) const;        // "20 min", "2 h", "3 d"
  [[nodiscard]] Parsed<double> number(std::string_view) const;
};

}  // namespace ullage::units
