// SPDX-License-Identifier: GPL-3.0-or-later
//
// What a person types, read as a quantity: "30 psi", "2.1 bar", "34F", "1,5",
// "3 ft 6 in", "12" (a bare number means the unit shown beside the field; a
// typed unit wins). One parser for the whole program: fields, command line,
// imports. Full precision is kept; nothing is rounded or clamped.
//
// Either decimal mark is accepted where it is unambiguous: the person's own mark
// always, the other one unless it could be a thousands mark. So "1,500" is
// refused as ambiguous rather than guessed, unless the person's mark is the
// comma or both readings mean the same (a gravity of 1.048 or 1048). Spaces
// around the unit and letter case do not matter except where they change the
// meaning. What a printer writes, its parser reads.
//
// "gal", "pint" and "fl oz" mean the kind the person has chosen to see. With no
// such choice a gallon is the US one (keg sizes are named in it) and a pint is
// refused; a person who sees litres and imperial pints is asked which gallon.
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
  ambiguous_unit,    // "20 pints": US or imperial?
  missing_unit,      // "20" where no unit is shown beside the field
  wrong_dimension,   // "30 psi" where a temperature is asked
  out_of_range,      // not finite, or beyond what the dimension can be at all
};

struct ParseError {
  ParseFault fault = ParseFault::empty;
  std::string typed;           // as typed: valid UTF-8, shortened if long
  std::string accepted_units;  // "psi, bar, kPa": for the sentence at the field
  std::string reading;         // "1.5 or 1500"; "a pressure" for a wrong dimension
};

template <class Q>
using Parsed = std::expected<Q, ParseError>;

// The sentence to stand at the field, plain and short: “30 frogs” has a unit I
// don't know. Use psi, bar or kPa. `field` is the label of the field.
[[nodiscard]] std::string describe(const ParseError&, std::string_view field);

struct Parser {
  DisplayUnits units;
  NumberStyle style;

  // psi, bar, mbar, kPa, Pa; above ambient. A vacuum down to -1.1 bar, up to
  // 400 bar (gas bottles).
  [[nodiscard]] Parsed<GaugePressure> gauge_pressure(std::string_view) const;
  [[nodiscard]] Parsed<PressureDifference> pressure_difference(std::string_view) const;
  // °C, °F, K; absolute zero to 500 °C.
  [[nodiscard]] Parsed<Temperature> temperature(std::string_view) const;
  [[nodiscard]] Parsed<TemperatureDifference> temperature_difference(std::string_view) const;
  // L, mL, cL, hL, gal, imp gal, US gal, pint, qt, fl oz; not negative.
  [[nodiscard]] Parsed<Volume> volume(std::string_view) const;
  // kg, g, lb, oz, "2 lb 3 oz"; not negative.
  [[nodiscard]] Parsed<Mass> mass(std::string_view) const;
  // m, cm, mm, ft, in, "3 ft 6 in"; may be negative (a fall), within 10 km.
  [[nodiscard]] Parsed<Length> length(std::string_view) const;
  // mm, in, "3/16 in"; 0.1 mm to 1 m.
  [[nodiscard]] Parsed<Length> bore(std::string_view) const;
  // "2.5 vol", "4.9 g/L"; 0 to 100 g/L.
  [[nodiscard]] Parsed<Co2Concentration> co2(std::string_view) const;
  // "1.048", "1048", "1.048 SG", "12 P"; the span of gravity_scale.h.
  [[nodiscard]] Parsed<SpecificGravity> gravity(std::string_view) const;
  // "62 %", "0.62", "3/4", "62"; 0 to 100 %. A bare number below 1 is a
  // fraction, above 1 a percentage; a bare "1" could be either and is refused.
  [[nodiscard]] Parsed<Fraction> fraction(std::string_view) const;
  // "20 min", "2 h", "3 d", "1 h 30 min"; 0 to 100 years. A bare number is
  // refused, unless the field shows a unit, given as its length (minutes(1)).
  [[nodiscard]] Parsed<Duration> duration(std::string_view) const;
  [[nodiscard]] Parsed<Duration> duration(std::string_view, Duration shown_unit) const;
  // A number without a unit.
  [[nodiscard]] Parsed<double> number(std::string_view) const;
};

}  // namespace ullage::units
