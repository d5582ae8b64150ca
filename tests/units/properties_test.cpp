// SPDX-License-Identifier: GPL-3.0-or-later
//
// What must hold for every quantity, unit and input, not only for chosen rows.
#include <gtest/gtest.h>
#include <rapidcheck/gtest.h>

#include <cmath>
#include <string>
#include <tuple>
#include <vector>

#include "core/units/gravity_scale.h"
#include "core/units/magnitude.h"
#include "core/units/parsing.h"
#include "core/units/printing.h"

namespace ullage::units {
namespace {

template <class E>
E any_of(std::initializer_list<E> values) {
  return *rc::gen::elementOf(std::vector<E>(values));
}

DisplayUnits any_units() {
  using enum PressureUnit;
  using enum TemperatureUnit;
  using enum VolumeUnit;
  using enum GlassUnit;
  return {.pressure = any_of({psi, PressureUnit::bar, kilopascal}),
          .temperature = any_of({TemperatureUnit::celsius, TemperatureUnit::fahrenheit}),
          .volume = any_of({litre, us_gallon, imperial_gallon}),
          .glass = any_of({us_pint, imperial_pint, half_litre, third_litre}),
          .mass = any_of({MassUnit::kilogram, MassUnit::pound}),
          .length = any_of({LengthUnit::metre, LengthUnit::foot}),
          .bore = any_of({BoreUnit::millimetre, BoreUnit::inch}),
          .co2 = any_of({Co2Unit::volumes, Co2Unit::grams_per_litre}),
          .gravity = any_of({GravityUnit::specific_gravity, GravityUnit::plato})};
}

NumberStyle any_style() { return {.decimal_mark = any_of({'.', ','})}; }

// A number between two, in steps fine enough to meet every kind of rounding.
double between(double low, double high) {
  constexpr int steps = 1'000'000;
  return low + (high - low) * *rc::gen::inRange(0, steps + 1) / steps;
}

// Half of the last printed place, in the magnitude of the quantity. The sliver
// on top is for the binary rounding of a number that lies on the edge.
void close(double parsed, double original, double half_place) {
  if (std::abs(parsed - original) > half_place * (1 + 1e-6) + 1e-9 * std::abs(original)) {
    RC_FAIL("printed " + std::to_string(original) + " and read back " + std::to_string(parsed));
  }
}

struct Everyday {
  DisplayUnits units = any_units();
  NumberStyle style = any_style();
  Printer printer{.units = units, .style = style};
  Parser parser{.units = units, .style = style};
};

RC_GTEST_PROP(PrintThenParse, gauge_pressure, ()) {
  const Everyday e;
  const GaugePressure q = gauge_psi(between(-5, 900));
  // Three figures from 100 psi and from 10 bar on.
  const double places[] = {pascals_per_psi * (in_psi(q) < 99.95 ? 0.05 : 0.5),
                           pascals_per_bar * (in_bar(q) < 9.995   ? 0.005
                                              : in_bar(q) < 99.95 ? 0.05
                                                                  : 0.5),
                           500.0};
  const auto parsed = e.parser.gauge_pressure(e.printer.print(q));
  RC_ASSERT(parsed.has_value());
  close(to_magnitude(*parsed), to_magnitude(q), places[static_cast<int>(e.units.pressure)]);
}

RC_GTEST_PROP(PrintThenParse, temperature, ()) {
  const Everyday e;
  const Temperature q = celsius(between(-30, 100));
  const auto parsed = e.parser.temperature(e.printer.print(q));
  RC_ASSERT(parsed.has_value());
  close(parsed->value(), q.value(), 0.05);
}

RC_GTEST_PROP(PrintThenParse, temperature_difference, ()) {
  const Everyday e;
  const TemperatureDifference q = kelvin_difference(between(-30, 30));
  const auto parsed = e.parser.temperature_difference(e.printer.print(q));
  RC_ASSERT(parsed.has_value());
  close(parsed->value(), q.value(), 0.05);
}

RC_GTEST_PROP(PrintThenParse, volume, ()) {
  const Everyday e;
  const Volume q = litres(between(0, 200));
  const double places[] = {0.05e-3, 0.005e-3 * litres_per_us_gallon,
                           0.005e-3 * litres_per_imperial_gallon};
  const auto parsed = e.parser.volume(e.printer.print(q));
  RC_ASSERT(parsed.has_value());
  close(parsed->value(), q.value(), places[static_cast<int>(e.units.volume)]);
}

RC_GTEST_PROP(PrintThenParse, mass, ()) {
  const Everyday e;
  const Mass q = kilograms(between(0, 1) * between(0, 200));
  const double place = e.units.mass == MassUnit::kilogram ? 0.005 : 0.05 * kilograms_per_pound;
  const auto parsed = e.parser.mass(e.printer.print(q));
  RC_ASSERT(parsed.has_value());
  close(parsed->value(), q.value(), place);
}

RC_GTEST_PROP(PrintThenParse, length_and_bore, ()) {
  const Everyday e;
  const Length q = metres(between(-20, 300));
  const double place = e.units.length == LengthUnit::metre ? 0.005 : 0.005 * metres_per_foot;
  const auto parsed = e.parser.length(e.printer.print(q));
  RC_ASSERT(parsed.has_value());
  close(parsed->value(), q.value(), place);

  const Length bore = millimetres(between(1, 30));
  const double bore_place = e.units.bore == BoreUnit::millimetre ? 5e-6 : 0.0005 * metres_per_inch;
  const auto parsed_bore = e.parser.bore(e.printer.print_bore(bore));
  RC_ASSERT(parsed_bore.has_value());
  close(parsed_bore->value(), bore.value(), bore_place);
}

RC_GTEST_PROP(PrintThenParse, co2, ()) {
  const Everyday e;
  const Co2Concentration q = grams_per_litre(between(0, 12));
  const double place = e.units.co2 == Co2Unit::volumes ? 0.005 * grams_per_litre_per_volume : 0.005;
  const auto parsed = e.parser.co2(e.printer.print(q));
  RC_ASSERT(parsed.has_value());
  close(parsed->count(), q.count(), place);
}

RC_GTEST_PROP(PrintThenParse, gravity, ()) {
  const Everyday e;
  const SpecificGravity q = specific_gravity(between(0.985, 1.150));
  // A tenth of a degree Plato is 0.0004 to 0.00053 in gravity (slope 190 to 270).
  const double place = e.units.gravity == GravityUnit::plato ? 0.05 / 190 : 0.0005;
  const auto parsed = e.parser.gravity(e.printer.print(q));
  RC_ASSERT(parsed.has_value());
  close(parsed->count(), q.count(), place);
}

RC_GTEST_PROP(PrintThenParse, fraction_and_duration, ()) {
  const Everyday e;
  const Fraction share = fraction(between(0, 1));
  const auto parsed = e.parser.fraction(e.printer.print(share));
  RC_ASSERT(parsed.has_value());
  close(parsed->count(), share.count(), 0.005);

  // Days from ten on are whole, so half a day is the coarsest step.
  const Duration span = hours(between(0, 1) * between(0, 1000));
  const auto parsed_span = e.parser.duration(e.printer.print(span));
  RC_ASSERT(parsed_span.has_value());
  close(parsed_span->value(), span.value(), 43200);
}

RC_GTEST_PROP(PrintThenParse, plain_number_with_nine_decimals, ()) {
  const Everyday e;
  const double v = between(-1000, 1000);
  const auto parsed = e.parser.number(e.printer.number(v, 9));
  RC_ASSERT(parsed.has_value());
  close(*parsed, v, 0.5e-9);
}

// Out of a unit and back: a multiplication and a division by one constant (and
// for °F an addition of 32 or 273.15), each exact to half an ulp.
RC_GTEST_PROP(Conversions, round_trip, ()) {
  const double v = between(-500, 5000);
  const double tolerance = 1e-12 * std::max(1.0, std::abs(v));
  const auto same = [&](double back) { RC_ASSERT(std::abs(back - v) <= tolerance); };
  same(in_psi(psi(v)));
  same(in_bar(bar(v)));
  same(in_psi(gauge_psi(v)));
  same(in_bar(bar_absolute(v)));
  same(in_psi(psi_absolute(v)));
  same(in_celsius(celsius(v)));
  same(in_fahrenheit(fahrenheit(v)));
  same(in_fahrenheit_difference(fahrenheit_difference(v)));
  same(in_litres(litres(v)));
  same(in_us_gallons(us_gallons(v)));
  same(in_imperial_gallons(imperial_gallons(v)));
  same(in_us_pints(us_pints(v)));
  same(in_imperial_pints(imperial_pints(v)));
  same(in_grams(grams(v)));
  same(in_pounds(pounds(v)));
  same(in_millimetres(millimetres(v)));
  same(in_feet(feet(v)));
  same(in_inches(inches(v)));
  same(in_minutes(minutes(v)));
  same(in_hours(hours(v)));
  same(in_days(days(v)));
  same(in_per_day(per_day(v)));
  same(to_volumes(to_concentration(volumes_of_co2(v))).count());
}

RC_GTEST_PROP(Conversions, gravity_there_and_back, ()) {
  const SpecificGravity g =
      specific_gravity(between(least_gravity.count(), greatest_gravity.count()));
  const auto p = to_plato(g);
  RC_ASSERT(p.has_value());
  const auto back = to_specific_gravity(*p);
  RC_ASSERT(back.has_value());
  // The cubic's terms reach 1200 while P is near 0, so P carries 2e-13 of
  // rounding, and a slope of at least 190 divides it.
  RC_ASSERT(std::abs(back->count() - g.count()) <= 1e-12);
}

// The half-width printed has one digit, or two after a 1, and is within its own
// rounding of the true one; the value ends at the same place.
RC_GTEST_PROP(RoundingRule, holds_for_any_half_width, ()) {
  const double width = std::pow(10.0, between(-6, 4));
  const double value = between(-2000, 2000);
  const std::string text = value_with_error(value, width, {});
  const std::size_t at = text.find(" ± ");
  RC_ASSERT(at != std::string::npos);
  const std::string left = text.substr(0, at);
  const std::string right = text.substr(at + std::string(" ± ").size());

  std::string digits;
  for (const char c : right) {
    if (c != '.') digits += c;
  }
  digits.erase(0, digits.find_first_not_of('0'));
  const bool starts_with_one = digits.starts_with('1');
  const bool whole = right.find('.') == std::string::npos;
  while (whole && digits.size() > (starts_with_one ? 2u : 1u) && digits.ends_with('0')) {
    digits.pop_back();
  }
  RC_ASSERT(digits.size() <= (starts_with_one ? 2u : 1u));
  // One digit is worst at 2.5 -> 3 or 2.4999 -> 2: a fifth.
  RC_ASSERT(std::abs(std::stod(right) / width - 1) <= 0.2 + 1e-9);

  const auto decimals = [](const std::string& s) {
    const std::size_t mark = s.find('.');
    return mark == std::string::npos ? std::size_t{0} : s.size() - mark - 1;
  };
  RC_ASSERT(decimals(left) == decimals(right));
}

void parse_everything(const Parser& parser, const std::string& typed) {
  const auto explain = [](const auto& parsed) {
    if (parsed) {
      RC_ASSERT(std::isfinite(to_magnitude(*parsed)));
    } else {
      RC_ASSERT(!describe(parsed.error(), "Field").empty());
    }
  };
  explain(parser.gauge_pressure(typed));
  explain(parser.pressure_difference(typed));
  explain(parser.temperature(typed));
  explain(parser.temperature_difference(typed));
  explain(parser.volume(typed));
  explain(parser.mass(typed));
  explain(parser.length(typed));
  explain(parser.bore(typed));
  explain(parser.co2(typed));
  explain(parser.gravity(typed));
  explain(parser.fraction(typed));
  explain(parser.duration(typed));
  const auto number = parser.number(typed);
  if (number) RC_ASSERT(std::isfinite(*number));
}

RC_GTEST_PROP(Parser, takes_any_bytes, (const std::string& bytes)) {
  parse_everything({.units = any_units(), .style = any_style()}, bytes);
}

// Bytes at random seldom look like a quantity; pieces of quantities do.
RC_GTEST_PROP(Parser, takes_any_mix_of_pieces, ()) {
  const auto piece = rc::gen::elementOf(std::vector<std::string>{
      "1",  "0",   "12",  "345", "1,500", ".",  ",",  "/",    " ",    "-",   "\u2212", "e9",
      "e",  "psi", "bar", "°F",  "C",     "ft", "in", "'",    "\"",   "gal", "pint",   "oz",
      "lb", "%",   "½",   "vol", "g/L",   "P",  "SG", "\xFF", "\xE2", "h",   "min",    "1048"});
  const auto pieces = *rc::gen::container<std::vector<std::string>>(piece);
  std::string typed;
  for (const std::string& p : pieces) typed += p;
  parse_everything({.units = any_units(), .style = any_style()}, typed);
}

}  // namespace
}  // namespace ullage::units
