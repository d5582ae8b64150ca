// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/units/parsing.h"

#include <algorithm>
#include <cmath>
#include <functional>
#include <limits>
#include <utility>
#include <vector>

#include "core/units/magnitude.h"
#include "core/units/number_reading.h"
#include "core/units/number_text.h"
#include "core/units/printing.h"
#include "core/units/typed_text.h"
#include "core/units/unit_tables.h"

namespace ullage::units {

namespace {

using ToMagnitude = std::function<double(double)>;

// One number and the unit typed behind it.
struct Term {
  ReadNumber number;
  UnitKey unit;
};

// Everything one parse needs to know beside the text.
struct Reading {
  const UnitTable& table;
  ToMagnitude bare;  // what a number without a unit means; empty: it is refused
  Customary gallon = Customary::either;
  Customary pint = Customary::either;
};

ParseError fault(ParseFault what, std::string_view typed, const UnitTable& table) {
  return {.fault = what,
          .typed = quotable(typed),
          .accepted_units = std::string(table.accepted),
          .reading = {}};
}

// What "gal" and "fl oz" mean to someone who has chosen these units. Keg sizes
// are named in US gallons everywhere, so that is the default; litres beside
// imperial pints leave it open.
Customary customary_gallon(const DisplayUnits& u) {
  if (u.volume == VolumeUnit::imperial_gallon) return Customary::imperial;
  if (u.volume == VolumeUnit::us_gallon) return Customary::us;
  return u.glass == GlassUnit::imperial_pint ? Customary::either : Customary::us;
}

Customary customary_pint(const DisplayUnits& u) {
  if (u.glass == GlassUnit::us_pint) return Customary::us;
  if (u.glass == GlassUnit::imperial_pint) return Customary::imperial;
  if (u.volume == VolumeUnit::us_gallon) return Customary::us;
  return u.volume == VolumeUnit::imperial_gallon ? Customary::imperial : Customary::either;
}

// Where the next number starts: at a digit, or at a decimal mark before one.
std::size_t next_number(std::string_view text) {
  const std::size_t digit = std::min(text.find_first_of("0123456789"), text.size());
  const bool marked =
      digit > 0 && digit < text.size() && (text[digit - 1] == '.' || text[digit - 1] == ',');
  return marked ? digit - 1 : digit;
}
std::expected<std::vector<Term>, ParseFault> split_terms(std::string_view text, NumberStyle style,
                                                         bool fractions) {
  std::vector<Term> terms;
  while (!text.empty()) {
    const auto number = read_number(text, style, fractions);
    if (!number) return std::unexpected(number.error());
    text.remove_prefix(number->length);
    const std::size_t end = next_number(text);
    terms.push_back({*number, unit_key(text.substr(0, end))});
    text.remove_prefix(end);
  }
  return terms;
}

std::expected<ToMagnitude, ParseError> find_unit(const Reading& as, const UnitKey& key,
                                                 std::string_view typed) {
  std::vector<const UnitRow*> fitting;
  for (const UnitRow& row : as.table.rows) {
    if (spells(row, key)) fitting.push_back(&row);
  }
  if (fitting.size() == 1) return ToMagnitude(fitting.front()->magnitude);
  if (fitting.size() > 1) {
    const bool pint = key.lowered.starts_with('p');
    const Customary meant = pint ? as.pint : as.gallon;
    for (const UnitRow* row : fitting) {
      if (row->customary == meant) return ToMagnitude(row->magnitude);
    }
    ParseError error = fault(ParseFault::ambiguous_unit, typed, as.table);
    error.reading = "US " + key.as_typed + " or imp " + key.as_typed;
    return std::unexpected(error);
  }
  for (const UnitTable* other : all_unit_tables()) {
    if (!knows(*other, key)) continue;
    ParseError error = fault(ParseFault::wrong_dimension, typed, as.table);
    error.reading = other->noun;
    return std::unexpected(error);
  }
  return std::unexpected(fault(ParseFault::unknown_unit, typed, as.table));
}

std::expected<double, ParseError> magnitude_of(const Term& term, const Reading& as,
                                               std::string_view typed) {
  ToMagnitude to = as.bare;
  if (!term.unit.lowered.empty()) {
    auto unit = find_unit(as, term.unit, typed);
    if (!unit) return std::unexpected(unit.error());
    to = std::move(*unit);
  } else if (!to) {
    return std::unexpected(fault(ParseFault::missing_unit, typed, as.table));
  }
  const double value = to(term.number.value);
  if (term.number.if_grouped) {
    constexpr double rounding = 1e-12;  // 1.048 and 1048 / 1000 differ by an ulp at most
    const double grouped = to(*term.number.if_grouped);
    if (!(std::abs(value - grouped) <= rounding * std::abs(value))) {
      ParseError error = fault(ParseFault::ambiguous_number, typed, as.table);
      constexpr Decimals as_typed{0, 9};
      const NumberStyle other{typed.find(',') != std::string_view::npos ? '.' : ','};
      error.reading = write_number(term.number.value, as_typed, other) + " or " +
                      write_number(*term.number.if_grouped, as_typed, other);
      return std::unexpected(error);
    }
  }
  return value;
}

// "3 ft 6 in": falling units, each named, one sign in front of all.
std::expected<double, ParseError> sum_of(const std::vector<Term>& terms, const Reading& as,
                                         std::string_view typed) {
  double sum = 0;
  double last_unit = std::numeric_limits<double>::infinity();
  for (const Term& term : terms) {
    const auto value = magnitude_of(term, as, typed);
    if (!value) return value;
    const auto unit = magnitude_of({.number = {.value = 1}, .unit = term.unit}, as, typed);
    if (term.unit.lowered.empty() || !unit || *unit >= last_unit) {
      return std::unexpected(fault(ParseFault::not_a_number, typed, as.table));
    }
    last_unit = *unit;
    sum += std::abs(*value);
  }
  return std::signbit(terms.front().number.value) ? -sum : sum;
}

// `shown_unit` is what a bare number means, by the name it is printed under.
Reading reading_in(const UnitTable& table, std::string_view shown_unit, const DisplayUnits& units) {
  Reading as{
      .table = table, .bare = {}, .gallon = customary_gallon(units), .pint = customary_pint(units)};
  if (auto unit = find_unit(as, unit_key(shown_unit), {})) as.bare = std::move(*unit);
  return as;
}

template <Quantity Q>
Parsed<Q> parse_as(std::string_view input, const Reading& as, NumberStyle style) {
  const std::string text = plain_text(input.substr(0, longest_typed + 1));
  if (text.empty()) return std::unexpected(fault(ParseFault::empty, {}, as.table));
  if (input.size() > longest_typed) {
    return std::unexpected(fault(ParseFault::not_a_number, text, as.table));
  }
  const auto terms = split_terms(text, style, as.table.fractions);
  if (!terms) return std::unexpected(fault(terms.error(), text, as.table));
  if (terms->size() > 1 && !as.table.compound) {
    return std::unexpected(fault(ParseFault::not_a_number, text, as.table));
  }
  const auto value =
      terms->size() == 1 ? magnitude_of(terms->front(), as, text) : sum_of(*terms, as, text);
  if (!value) return std::unexpected(value.error());
  if (!(*value >= as.table.least && *value <= as.table.greatest)) {
    return std::unexpected(fault(ParseFault::out_of_range, text, as.table));
  }
  return from_magnitude<Q>(*value);
}

}  // namespace

Parsed<GaugePressure> Parser::gauge_pressure(std::string_view typed) const {
  return parse_as<GaugePressure>(
      typed, reading_in(pressure_table(), unit_name(units.pressure), units), style);
}

Parsed<PressureDifference> Parser::pressure_difference(std::string_view typed) const {
  return parse_as<PressureDifference>(
      typed, reading_in(pressure_table(), unit_name(units.pressure), units), style);
}

Parsed<Temperature> Parser::temperature(std::string_view typed) const {
  return parse_as<Temperature>(
      typed, reading_in(temperature_table(), unit_name(units.temperature), units), style);
}

Parsed<TemperatureDifference> Parser::temperature_difference(std::string_view typed) const {
  return parse_as<TemperatureDifference>(
      typed, reading_in(temperature_difference_table(), unit_name(units.temperature), units),
      style);
}

Parsed<Volume> Parser::volume(std::string_view typed) const {
  return parse_as<Volume>(typed, reading_in(volume_table(), unit_name(units.volume), units), style);
}

Parsed<Mass> Parser::mass(std::string_view typed) const {
  return parse_as<Mass>(typed, reading_in(mass_table(), unit_name(units.mass), units), style);
}

Parsed<Length> Parser::length(std::string_view typed) const {
  return parse_as<Length>(typed, reading_in(length_table(), unit_name(units.length), units), style);
}

Parsed<Length> Parser::bore(std::string_view typed) const {
  return parse_as<Length>(typed, reading_in(bore_table(), unit_name(units.bore), units), style);
}

Parsed<Co2Concentration> Parser::co2(std::string_view typed) const {
  return parse_as<Co2Concentration>(typed, reading_in(co2_table(), unit_name(units.co2), units),
                                    style);
}

namespace {

// "1.013": to the third decimal nobody reads degrees Plato, and every gravity is written so.
bool written_as_gravity(std::string_view typed) {
  const std::string text = plain_text(typed.substr(0, longest_typed + 1));
  const auto mark = text.find_first_of(".,");
  if (mark != 1 || text.size() - mark - 1 < 3) return false;
  const bool digits = std::all_of(text.begin() + static_cast<std::ptrdiff_t>(mark) + 1, text.end(),
                                  [](char c) { return c >= '0' && c <= '9'; });
  return digits && (text.starts_with("0") || text.starts_with("1"));
}

}  // namespace

Parsed<SpecificGravity> Parser::gravity(std::string_view typed) const {
  Reading as = reading_in(gravity_table(), "SG", units);
  if (units.gravity == GravityUnit::plato && !written_as_gravity(typed)) {
    // Beside "°P" a bare 12 is degrees Plato, yet 1048 and 1.048 can only be gravities.
    constexpr double more_than_any_plato = 900.0;
    as.bare = [gravity = as.bare,
               degrees = reading_in(gravity_table(), unit_name(units.gravity), units).bare](
                  double v) { return v >= more_than_any_plato ? gravity(v) : degrees(v); };
  }
  return parse_as<SpecificGravity>(typed, as, style);
}

Parsed<Fraction> Parser::fraction(std::string_view typed) const {
  Reading as = reading_in(fraction_table(), "%", units);
  const std::string text = plain_text(typed.substr(0, longest_typed + 1));
  const auto number = read_number(text, style, as.table.fractions);
  const bool bare = number && number->length == text.size();
  if (bare && !number->as_fraction && number->value == 1) {
    ParseError error = fault(ParseFault::ambiguous_number, text, as.table);
    error.reading = "1 % or 100 %";
    return std::unexpected(error);
  }
  const bool as_fraction = bare && number->as_fraction;
  as.bare = [as_fraction](double v) { return as_fraction || v < 1 ? v : v / 100.0; };
  return parse_as<Fraction>(typed, as, style);
}

Parsed<Duration> Parser::duration(std::string_view typed) const {
  return parse_as<Duration>(typed, reading_in(duration_table(), {}, units), style);
}

Parsed<Duration> Parser::duration(std::string_view typed, Duration shown_unit) const {
  Reading as = reading_in(duration_table(), {}, units);
  as.bare = [length = in_seconds(shown_unit)](double v) { return v * length; };
  return parse_as<Duration>(typed, as, style);
}

Parsed<double> Parser::number(std::string_view typed) const {
  constexpr double any = std::numeric_limits<double>::max();
  static constexpr UnitTable none{"a plain number", "", {}, -any, any};
  const auto read =
      parse_as<Fraction>(typed, {.table = none, .bare = [](double v) { return v; }}, style);
  if (!read) return std::unexpected(read.error());
  return read->count();
}

}  // namespace ullage::units
