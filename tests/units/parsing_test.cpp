// SPDX-License-Identifier: GPL-3.0-or-later
//
// What a person types and what is made of it: accepted and refused rows side by
// side, one table per quantity.
#include "core/units/parsing.h"

#include <gtest/gtest.h>

#include <boost/variant2/variant.hpp>
#include <cmath>
#include <functional>
#include <ostream>
#include <string>
#include <string_view>
#include <utility>
#include <vector>

#include "core/units/gravity_scale.h"
#include "core/units/magnitude.h"

namespace ullage::units {

void PrintTo(ParseFault fault, std::ostream* out) {
  constexpr const char* names[] = {"empty",           "not_a_number",   "ambiguous_number",
                                   "unknown_unit",    "ambiguous_unit", "missing_unit",
                                   "wrong_dimension", "out_of_range"};
  *out << names[static_cast<int>(fault)];
}

namespace {

template <class Q>
using Expected = boost::variant2::variant<Q, ParseFault>;

template <class Q>
struct ParseRow {
  std::string_view typed;
  Expected<Q> expected;
};

// A parse multiplies or divides by at most three constants, each step rounding by half an ulp
// (1.1e-16 relative); 1e-14 leaves room for that and none for a wrong factor.
constexpr double arithmetic = 1e-14;

template <class Q>
void expect_rows(const std::function<Parsed<Q>(std::string_view)>& parse,
                 const std::vector<ParseRow<Q>>& rows) {
  for (const ParseRow<Q>& row : rows) {
    SCOPED_TRACE("typed: \"" + std::string(row.typed) + "\"");
    const Parsed<Q> parsed = parse(row.typed);
    if (const auto* fault = get_if<ParseFault>(&row.expected)) {
      ASSERT_FALSE(parsed.has_value());
      EXPECT_EQ(parsed.error().fault, *fault);
      continue;
    }
    ASSERT_TRUE(parsed.has_value()) << describe(parsed.error(), "Field");
    const double expected = to_magnitude(get<Q>(row.expected));
    EXPECT_NEAR(to_magnitude(*parsed), expected, arithmetic * std::max(1.0, std::abs(expected)));
  }
}

const Parser us_parser{.units = DisplayUnits::us(), .style = {}};
const Parser metric_parser{.units = DisplayUnits::metric(), .style = {}};
const Parser british_parser{.units = DisplayUnits::british(), .style = {}};
const Parser plain_parser{};
const Parser comma_parser{.units = DisplayUnits::metric(), .style = {.decimal_mark = ','}};

using enum ParseFault;

TEST(ParsePressure, rows) {
  expect_rows<GaugePressure>([](auto typed) { return us_parser.gauge_pressure(typed); },
                             {{"30 psi", gauge_psi(30)},
                              {"30psi", gauge_psi(30)},
                              {"  30   PSI ", gauge_psi(30)},
                              {"30 psig", gauge_psi(30)},
                              {"30", gauge_psi(30)},
                              {"30.", gauge_psi(30)},
                              {".5", gauge_psi(0.5)},
                              {"0", gauge_psi(0)},
                              {"+12", gauge_psi(12)},
                              {"-2 psi", gauge_psi(-2)},
                              {"\u22122 psi", gauge_psi(-2)},
                              {"2.1 bar", gauge_bar(2.1)},
                              {"2,1 bar", gauge_bar(2.1)},
                              {"210 kPa", gauge_pascals(210000)},
                              {"210 kpa", gauge_pascals(210000)},
                              {"0.21 MPa", gauge_pascals(210000)},
                              {"210000 Pa", gauge_pascals(210000)},
                              {"350 mbar", gauge_pascals(35000)},
                              {"30\u00A0psi", gauge_psi(30)},
                              {"30\u202Fpsi", gauge_psi(30)},
                              {"3e1 psi", gauge_psi(30)},
                              {"1,234.5 kPa", gauge_pascals(1234500)},
                              {"1.234,5 kPa", gauge_pascals(1234500)},
                              {"1,234,567 Pa", gauge_pascals(1234567)}});
}

TEST(ParsePressure, doubtful_rows) {
  expect_rows<GaugePressure>([](auto typed) { return us_parser.gauge_pressure(typed); },
                             {{"", empty},
                              {"   ", empty},
                              {"\u00A0", empty},
                              {"psi", not_a_number},
                              {"thirty psi", not_a_number},
                              {"--3", not_a_number},
                              {"1.2.3", not_a_number},
                              {"1,23,456", not_a_number},
                              {"30,", not_a_number},
                              {".", not_a_number},
                              {"12/14", not_a_number},
                              {"10 12", not_a_number},
                              {"30 psi 2 bar", not_a_number},
                              {"nan", not_a_number},
                              {"inf psi", not_a_number},
                              {"0x10 psi", not_a_number},
                              {"1,500", ambiguous_number},
                              {"1,500 psi", ambiguous_number},
                              {"12,500 Pa", ambiguous_number},
                              {"0,500 bar", gauge_bar(0.5)},
                              {"1,50 bar", gauge_bar(1.5)},
                              {"1,5000 bar", gauge_bar(1.5)},
                              {"30 frogs", unknown_unit},
                              {"30 psia", unknown_unit},
                              {"210 mpa", unknown_unit},
                              {"30 psi!", unknown_unit},
                              {"30 F", wrong_dimension},
                              {"5 gal", wrong_dimension},
                              {"12 %", wrong_dimension},
                              {"1e400", out_of_range},
                              {"1e-400", out_of_range},
                              {"1e300 psi", out_of_range},
                              {"999999 psi", out_of_range},
                              {"-20 psi", out_of_range},
                              {std::string_view("30\0psi", 6), unknown_unit}});
  expect_rows<GaugePressure>([](auto typed) { return comma_parser.gauge_pressure(typed); },
                             {{"1,5", gauge_bar(1.5)},
                              {"1.5", gauge_bar(1.5)},
                              {"1,500", gauge_bar(1.5)},
                              {"1.500", ambiguous_number}});
  expect_rows<PressureDifference>(
      [](auto typed) { return metric_parser.pressure_difference(typed); },
      {{"0.1", bar(0.1)}, {"-2 psi", psi(-2)}, {"2 °C", wrong_dimension}});
}

TEST(ParseTemperature, rows) {
  expect_rows<Temperature>([](auto typed) { return metric_parser.temperature(typed); },
                           {{"34F", fahrenheit(34)},
                            {"34 °F", fahrenheit(34)},
                            {"34° F", fahrenheit(34)},
                            {"34 ºf", fahrenheit(34)},
                            {"34\u2109", fahrenheit(34)},
                            {"34 deg F", fahrenheit(34)},
                            {"4", celsius(4)},
                            {"-1 C", celsius(-1)},
                            {"\u22121\u00A0°C", celsius(-1)},
                            {"- 1 °C", celsius(-1)},
                            {"1,5", celsius(1.5)},
                            {"280 K", kelvin(280)},
                            {"30 psi", wrong_dimension},
                            {"12 frogs", unknown_unit},
                            {"4 °", unknown_unit},
                            {"1/2 C", not_a_number},
                            {"-300", out_of_range},
                            {"-460 F", out_of_range},
                            {"900 C", out_of_range}});
  expect_rows<Temperature>([](auto typed) { return us_parser.temperature(typed); },
                           {{"34", fahrenheit(34)}, {"4 C", celsius(4)}});
  expect_rows<TemperatureDifference>(
      [](auto typed) { return us_parser.temperature_difference(typed); },
      {{"1.8", kelvin_difference(1)},
       {"1 C", kelvin_difference(1)},
       {"0.5 K", kelvin_difference(0.5)},
       {"-2 F", fahrenheit_difference(-2)},
       {"2 psi", wrong_dimension}});
}

TEST(ParseVolume, rows) {
  expect_rows<Volume>([](auto typed) { return plain_parser.volume(typed); },
                      {{"19", litres(19)},
                       {"19 L", litres(19)},
                       {"19 l", litres(19)},
                       {"19 litres", litres(19)},
                       {"500 mL", litres(0.5)},
                       {"33 cl", litres(0.33)},
                       {"1 hL", litres(100)},
                       {"5 gal", us_gallons(5)},
                       {"5 gal.", us_gallons(5)},
                       {"5 US gal", us_gallons(5)},
                       {"9 imp gal", imperial_gallons(9)},
                       {"9 imperial gallons", imperial_gallons(9)},
                       {"1/2 gal", us_gallons(0.5)},
                       {"2 1/2 gal", us_gallons(2.5)},
                       {"2½ gal", us_gallons(2.5)},
                       {"½ gal", us_gallons(0.5)},
                       {"16 fl oz", us_pints(1)},
                       {"16 fl. oz.", us_pints(1)},
                       {"20 imp fl oz", imperial_pints(1)},
                       {"3 US pints", us_pints(3)},
                       {"3 imp pints", imperial_pints(3)},
                       {"20 half litres", litres(10)},
                       {"20 pints", ambiguous_unit},
                       {"19 kg", wrong_dimension},
                       {"19 barrels", unknown_unit},
                       {"-1 L", out_of_range},
                       {"1/0 L", not_a_number},
                       {"1e9 L", out_of_range}});
  expect_rows<Volume>([](auto typed) { return british_parser.volume(typed); },
                      {{"20 pints", imperial_pints(20)},
                       {"9 gal", ambiguous_unit},
                       {"9 imp gal", imperial_gallons(9)},
                       {"5 US gal", us_gallons(5)}});
  expect_rows<Volume>(
      [](auto typed) { return us_parser.volume(typed); },
      {{"5", us_gallons(5)}, {"8 pints", us_gallons(1)}, {"12 oz", us_gallons(12.0 / 128.0)}});
  Parser imperial = plain_parser;
  imperial.units.volume = VolumeUnit::imperial_gallon;
  expect_rows<Volume>([&](auto typed) { return imperial.volume(typed); },
                      {{"9", imperial_gallons(9)},
                       {"9 gal", imperial_gallons(9)},
                       {"72 pints", imperial_gallons(9)},
                       {"160 fl oz", imperial_gallons(1)}});
}

TEST(ParseMass, rows) {
  expect_rows<Mass>([](auto typed) { return metric_parser.mass(typed); },
                    {{"4.3", kilograms(4.3)},
                     {"28 g", grams(28)},
                     {"5 lb", pounds(5)},
                     {"5 lbs.", pounds(5)},
                     {"2 lb 3 oz", pounds(2 + 3.0 / 16.0)},
                     {"2lb3oz", pounds(2 + 3.0 / 16.0)},
                     {"8 oz", pounds(0.5)},
                     {"3 oz 2 lb", not_a_number},
                     {"2 lb 3", not_a_number},
                     {"2 lb 3 psi", wrong_dimension},
                     {"-2 kg", out_of_range},
                     {"5 L", wrong_dimension}});
}

TEST(ParseLength, rows) {
  expect_rows<Length>([](auto typed) { return us_parser.length(typed); },
                      {{"10", feet(10)},
                       {"3 ft 6 in", feet(3.5)},
                       {"3' 6\"", feet(3.5)},
                       {"3\u2032 6\u2033", feet(3.5)},
                       {"3 ft .5 in", inches(36.5)},
                       {"3 ft 1 1/2 in", inches(37.5)},
                       {"-3 ft 6 in", feet(-3.5)},
                       {"-0 ft 6 in", feet(-0.5)},
                       {"1.83 m", metres(1.83)},
                       {"183 cm", metres(1.83)},
                       {"3 ft -6 in", unknown_unit},
                       {"3 ft 6", not_a_number},
                       {"3 6 in", not_a_number},
                       {"6 in 3 ft", not_a_number},
                       {"3 ft 2 ft", not_a_number},
                       {"10 bar", wrong_dimension},
                       {"20 000 000 m", not_a_number},
                       {"20000 m", out_of_range}});
  expect_rows<Length>([](auto typed) { return metric_parser.bore(typed); },
                      {{"3/16 in", inches(3.0 / 16.0)},
                       {"3/16\"", inches(3.0 / 16.0)},
                       {"1 1/4 in", inches(1.25)},
                       {"5", millimetres(5)},
                       {"4.76 mm", millimetres(4.76)},
                       {"0 mm", out_of_range},
                       {"-5 mm", out_of_range},
                       {"2 m", out_of_range}});
}

TEST(ParseCo2, rows) {
  expect_rows<Co2Concentration>([](auto typed) { return us_parser.co2(typed); },
                                {{"2.5", to_concentration(volumes_of_co2(2.5))},
                                 {"2.5 vol", to_concentration(volumes_of_co2(2.5))},
                                 {"2,5 Volumes", to_concentration(volumes_of_co2(2.5))},
                                 {"4.9 g/L", grams_per_litre(4.9)},
                                 {"4.9 g / l", grams_per_litre(4.9)},
                                 {"2.5 psi", wrong_dimension},
                                 {"-1", out_of_range},
                                 {"200 vol", out_of_range}});
  expect_rows<Co2Concentration>([](auto typed) { return metric_parser.co2(typed); },
                                {{"4.9", grams_per_litre(4.9)}});
}

TEST(ParseGravity, rows) {
  // 12 °P is published as 1.0484; the scale itself is tested elsewhere.
  const SpecificGravity twelve_plato = *to_specific_gravity(plato(12));
  EXPECT_NEAR(twelve_plato.count(), 1.0484, 5e-5);
  expect_rows<SpecificGravity>([](auto typed) { return us_parser.gravity(typed); },
                               {{"1.048", specific_gravity(1.048)},
                                {"1,048", specific_gravity(1.048)},
                                {"1048", specific_gravity(1.048)},
                                {"1.048 SG", specific_gravity(1.048)},
                                {"998", specific_gravity(0.998)},
                                {"12 P", twelve_plato},
                                {"12°P", twelve_plato},
                                {"12 Plato", twelve_plato},
                                {"12", out_of_range},
                                {"48", out_of_range},
                                {"1500", out_of_range},
                                {"60 P", out_of_range},
                                {"-30 P", out_of_range},
                                {"1.048 kg", wrong_dimension}});
  expect_rows<SpecificGravity>([](auto typed) { return comma_parser.gravity(typed); },
                               {{"12", twelve_plato},
                                {"1048", specific_gravity(1.048)},
                                {"1.048", specific_gravity(1.048)},
                                {"1.0", *to_specific_gravity(plato(1.0))},
                                {"1,048 SG", specific_gravity(1.048)},
                                {"1.048 SG", specific_gravity(1.048)}});
}

TEST(ParseFraction, rows) {
  expect_rows<Fraction>([](auto typed) { return us_parser.fraction(typed); },
                        {{"62 %", fraction(0.62)},
                         {"62%", fraction(0.62)},
                         {"62", fraction(0.62)},
                         {"0.62", fraction(0.62)},
                         {"0,62", fraction(0.62)},
                         {"3/4", fraction(0.75)},
                         {"¾", fraction(0.75)},
                         {"4/4", fraction(1)},
                         {"0", fraction(0)},
                         {"100", fraction(1)},
                         {"1 %", fraction(0.01)},
                         {"1", ambiguous_number},
                         {"1.0", ambiguous_number},
                         {"5/4", out_of_range},
                         {"101 %", out_of_range},
                         {"-5 %", out_of_range},
                         {"62 psi", wrong_dimension}});
}

TEST(ParseDuration, rows) {
  expect_rows<Duration>([](auto typed) { return us_parser.duration(typed); },
                        {{"20 min", minutes(20)},
                         {"2 h", hours(2)},
                         {"3 d", days(3)},
                         {"2 days", days(2)},
                         {"1 week", days(7)},
                         {"90 s", seconds(90)},
                         {"1.5 h", hours(1.5)},
                         {"1 h 30 min", minutes(90)},
                         {"1/2 h", minutes(30)},
                         {"20", missing_unit},
                         {"-5 min", out_of_range},
                         {"200 weeks 1 d", days(1401)},
                         {"9999999 d", out_of_range},
                         {"5 m", wrong_dimension}});
  expect_rows<Duration>([](auto typed) { return us_parser.duration(typed, minutes(1)); },
                        {{"20", minutes(20)}, {"20 s", seconds(20)}, {"", empty}});
}

TEST(ParseNumber, rows) {
  EXPECT_EQ(us_parser.number("1.5").value(), 1.5);
  EXPECT_EQ(us_parser.number("-3").value(), -3.0);
  EXPECT_EQ(comma_parser.number("1,500").value(), 1.5);
  EXPECT_EQ(us_parser.number("1,500").error().fault, ambiguous_number);
  EXPECT_EQ(us_parser.number("5 psi").error().fault, wrong_dimension);
  EXPECT_EQ(us_parser.number("5 frogs").error().fault, unknown_unit);
  EXPECT_EQ(us_parser.number("1e400").error().fault, out_of_range);
  EXPECT_EQ(us_parser.number("").error().fault, empty);
}

template <class Q>
std::string sentence(const Parsed<Q>& parsed, std::string_view field) {
  return parsed ? "accepted" : describe(parsed.error(), field);
}

TEST(DescribeParseError, one_plain_sentence_at_the_field) {
  const std::vector<std::pair<std::string, std::string>> rows = {
      {sentence(us_parser.gauge_pressure("30 frogs"), "Pressure"),
       "“30 frogs” has a unit I don't know. Use psi, bar or kPa."},
      {sentence(us_parser.temperature("30 psi"), "Temperature"),
       "“30 psi” is a pressure. Use °C or °F."},
      {sentence(us_parser.gauge_pressure(""), "Pressure"), "Pressure is missing."},
      {sentence(us_parser.gauge_pressure(""), ""), "A value is missing."},
      {sentence(us_parser.gauge_pressure("abc"), "Pressure"), "“abc” is not a number I can read."},
      {sentence(us_parser.gauge_pressure("1,500"), "Pressure"),
       "“1,500” can be read two ways. Type 1.5 or 1500."},
      {sentence(comma_parser.gauge_pressure("1.500"), "Pressure"),
       "“1.500” can be read two ways. Type 1,5 or 1500."},
      {sentence(british_parser.volume("9 gal"), "Volume"),
       "“9 gal” can be read two ways. Type US gal or imp gal."},
      {sentence(us_parser.fraction("1"), "Level"), "“1” can be read two ways. Type 1 % or 100 %."},
      {sentence(us_parser.duration("20"), "Time"), "“20” needs a unit. Use min, h or days."},
      {sentence(us_parser.temperature("-500"), "Temperature"),
       "“-500” is outside what is possible here."},
      {sentence(us_parser.number("5 psi"), "Count"),
       "“5 psi” is a pressure. Type the number alone."},
      {sentence(us_parser.gauge_pressure("3\xFF psi"), "Pressure"),
       "“3\uFFFD psi” has a unit I don't know. Use psi, bar or kPa."},
      {sentence(us_parser.gauge_pressure(std::string(5000, '7')), "Pressure"),
       "“7777777777777777777777777777777777777777…” is not a number I can read."},
  };
  for (const auto& [said, expected] : rows) EXPECT_EQ(said, expected);
}

}  // namespace
}  // namespace ullage::units
