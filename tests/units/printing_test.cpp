// SPDX-License-Identifier: GPL-3.0-or-later
//
// What a reading and an estimate look like, row by row. The expected texts are
// the rules of printing.h written out by hand.
#include "core/units/printing.h"

#include <gtest/gtest.h>
#include <rapidcheck/gtest.h>

#include <limits>
#include <string>

#include "core/units/paper_text.h"

namespace ullage::units {
namespace {

constexpr double not_finite[] = {std::numeric_limits<double>::quiet_NaN(),
                                 std::numeric_limits<double>::infinity(),
                                 -std::numeric_limits<double>::infinity()};

struct PrintRow {
  std::string printed;
  std::string expected;
};

template <std::size_t N>
void check_printed(const PrintRow (&rows)[N]) {
  for (const PrintRow& row : rows) EXPECT_EQ(row.printed, row.expected);
}

const Printer us_printer{.units = DisplayUnits::us(), .style = {}};
const Printer metric_printer{.units = DisplayUnits::metric(), .style = {}};
const Printer british_printer{.units = DisplayUnits::british(), .style = {}};
const Printer comma_printer{.units = DisplayUnits::metric(), .style = {.decimal_mark = ','}};

Printer with_pressure(PressureUnit u) {
  Printer p;
  p.units.pressure = u;
  return p;
}

TEST(PrintReading, pressure) {
  const Printer kilopascals = with_pressure(PressureUnit::kilopascal);
  const Printer bars = with_pressure(PressureUnit::bar);
  check_printed({{us_printer.print(gauge_psi(30)), "30 psi"},
                 {us_printer.print(gauge_psi(12.5)), "12.5 psi"},
                 {us_printer.print(gauge_psi(12.04)), "12 psi"},
                 {us_printer.print(gauge_psi(-0.5)), "−0.5 psi"},
                 {us_printer.print(gauge_psi(-0.04)), "0 psi"},
                 {us_printer.print(psi(2)), "2 psi"},
                 {bars.print(gauge_bar(2.1)), "2.10 bar"},
                 {bars.print(gauge_bar(0)), "0.00 bar"},
                 {bars.print(bar(1)), "1.00 bar"},
                 {comma_printer.print(gauge_bar(2.1)), "2,10 bar"},
                 {kilopascals.print(gauge_bar(2.1)), "210 kPa"},
                 {kilopascals.print(bar(0.034)), "3 kPa"}});
}

// No gauge for it shows more than three figures.
TEST(PrintReading, high_pressure_to_what_a_bottles_gauge_shows) {
  const Printer bars = with_pressure(PressureUnit::bar);
  check_printed(
      {{us_printer.print(gauge_psi(816.3)), "816 psi"},
       {us_printer.print(gauge_psi(99.94)), "99.9 psi"},
       {us_printer.print(gauge_psi(99.96)), "100 psi"},
       {us_printer.print(gauge_bar(140)), "2031 psi"},
       {us_printer.print(gauge_psi(-14.5)), "−14.5 psi"},
       {us_printer.print(psi(243.7)), "244 psi"},
       {us_printer.print_range(gauge_psi(816.3), gauge_psi(850.6)), "816 to 851 psi"},
       {us_printer.print_range(gauge_psi(60.6), gauge_psi(120.6)), "61 to 121 psi"},
       {us_printer.print(
            Estimate<GaugePressure>(gauge_psi(816.3)).with({"dial"}, in_pascals(psi(40)))),
        "820 ± 40 psi"},
       {bars.print(gauge_bar(56.28)), "56.3 bar"},
       {bars.print(gauge_bar(56)), "56 bar"},
       {bars.print(gauge_bar(9.994)), "9.99 bar"},
       {bars.print(gauge_bar(9.996)), "10 bar"},
       {bars.print(gauge_bar(200.4)), "200 bar"},
       {comma_printer.print(gauge_bar(56.28)), "56,3 bar"}});
}

TEST(PrintReading, rooms_to_three_figures) {
  check_printed({{print_room(cubic_metres(40), metric_printer), "40 m³"},
                 {print_room(cubic_metres(2.44), metric_printer), "2.4 m³"},
                 {print_room(cubic_metres(1234), metric_printer), "1230 m³"},
                 {print_room(litres(300), comma_printer), "0,3 m³"},
                 {print_room(cubic_metres(40), us_printer), "1410 ft³"},
                 {print_room(cubic_metres(not_finite[0]), us_printer), "–"},
                 {print_room(cubic_metres(not_finite[1]), us_printer), "–"}});
}

// "_" stands for the space that no line breaks at.
TEST(HeldTogether, numbers_keep_their_units_and_signs) {
  const auto held = [](const std::string& text) {
    std::string out = held_together(text);
    for (auto at = out.find("\u00A0"); at != std::string::npos; at = out.find("\u00A0"))
      out.replace(at, 2, "_");
    return out;
  };
  check_printed(
      {{held("13.5 fl oz of beer lost"), "13.5_fl_oz of beer lost"},
       {held("2.4 ± 0.2 vol, then 12 psi."), "2.4_±_0.2_vol, then 12_psi."},
       {held("about 23 US pints, or 20 half litres"), "about 23_US_pints, or 20_half_litres"},
       {held("from 3/16 in to −1.5 °C (62 %)"), "from 3/16_in to −1.5_°C (62_%)"},
       {held("2.3 to 2.7 vol"), "2.3 to 2.7_vol"},
       {held("Keg 12 went out"), "Keg 12 went out"},
       {held("fl oz and US pints without a number"), "fl oz and US pints without a number"},
       {held("12 Germans"), "12 Germans"},
       {held(" 4  L "), " 4  L "},
       {held(""), ""}});
}

RC_GTEST_PROP(HeldTogether, changes_nothing_but_spaces, (const std::string& text)) {
  std::string out = held_together(text);
  for (auto at = out.find("\u00A0"); at != std::string::npos; at = out.find("\u00A0", at))
    out.replace(at, 2, " ");
  std::string plain = text;
  for (auto at = plain.find("\u00A0"); at != std::string::npos; at = plain.find("\u00A0", at))
    plain.replace(at, 2, " ");
  RC_ASSERT(out == plain);
}

TEST(PrintReading, temperature) {
  check_printed({{metric_printer.print(celsius(4)), "4 °C"},
                 {metric_printer.print(celsius(-1.5)), "−1.5 °C"},
                 {comma_printer.print(celsius(3.54)), "3,5 °C"},
                 {us_printer.print(fahrenheit(34)), "34 °F"},
                 {us_printer.print(celsius(4)), "39.2 °F"},
                 {us_printer.print(kelvin_difference(1)), "1.8 °F"},
                 {metric_printer.print(kelvin_difference(-2)), "−2 °C"}});
}

TEST(PrintReading, volume_mass_length) {
  check_printed({{metric_printer.print(litres(19)), "19 L"},
                 {metric_printer.print(litres(18.93)), "18.9 L"},
                 {metric_printer.print(litres(0.256)), "0.26 L"},
                 {metric_printer.print(litres(0.996)), "1 L"},
                 {metric_printer.print(litres(0)), "0 L"},
                 {us_printer.print(us_gallons(5)), "5 gal"},
                 {us_printer.print(litres(10)), "2.64 gal"},
                 {metric_printer.print(kilograms(4.3)), "4.3 kg"},
                 {metric_printer.print(kilograms(23.456)), "23.46 kg"},
                 {metric_printer.print(grams(28.35)), "28 g"},
                 {metric_printer.print(grams(1.96)), "2 g"},
                 {metric_printer.print(grams(0.13)), "0.1 g"},
                 {metric_printer.print(grams(999.6)), "1 kg"},
                 {metric_printer.print(kilograms(0)), "0 kg"},
                 {us_printer.print(pounds(9.84)), "9.8 lb"},
                 {us_printer.print(pounds(0.25)), "4 oz"},
                 {us_printer.print(grams(4.6)), "0.2 oz"},
                 {us_printer.print(grams(1.4)), "0.05 oz"},  // a leak a day, not none
                 {us_printer.print(pounds(0.999)), "1 lb"},
                 {metric_printer.print(metres(1.829)), "1.83 m"},
                 {us_printer.print(feet(10)), "10 ft"},
                 {us_printer.print(feet(5.5)), "5.5 ft"}});
}

TEST(PrintReading, bore_by_the_fraction_it_is_sold_by) {
  check_printed({{us_printer.print_bore(inches(3.0 / 16.0)), "3/16 in"},
                 {us_printer.print_bore(inches(0.25)), "1/4 in"},
                 {us_printer.print_bore(millimetres(5)), "0.197 in"},
                 {us_printer.print_bore(inches(1)), "1 in"},
                 {metric_printer.print_bore(inches(3.0 / 16.0)), "4.76 mm"},
                 {metric_printer.print_bore(millimetres(7)), "7 mm"}});
}

TEST(PrintReading, co2_and_gravity) {
  check_printed({{us_printer.print(volumes_of_co2(2.5)), "2.5 vol"},
                 {us_printer.print(volumes_of_co2(2.456)), "2.46 vol"},
                 {us_printer.print(volumes_of_co2(3)), "3.0 vol"},
                 {us_printer.print(grams_per_litre(4.942)), "2.5 vol"},
                 {metric_printer.print(grams_per_litre(4.9)), "4.9 g/L"},
                 {metric_printer.print(volumes_of_co2(2.5)), "4.94 g/L"},
                 {us_printer.print(specific_gravity(1.048)), "1.048"},
                 {us_printer.print(specific_gravity(1)), "1.000"},
                 {comma_printer.print(specific_gravity(1.048)), "11,9 °P"},
                 {metric_printer.print(plato(12)), "12.0 °P"},
                 {us_printer.print(plato(12)), "1.048"},
                 {metric_printer.print(specific_gravity(2)), "–"},
                 {us_printer.print(percent_abv(5.4)), "5.4 %"},
                 {us_printer.print(percent_abv(5)), "5.0 %"},
                 {us_printer.print(fraction(0.62)), "62 %"},
                 {us_printer.print(fraction(0.004)), "0.4 %"},
                 {us_printer.print(fraction(1)), "100 %"}});
}

TEST(PrintReading, time_in_the_largest_apt_unit) {
  check_printed({{us_printer.print(seconds(0)), "0 min"},
                 {us_printer.print(seconds(45)), "45 s"},
                 {us_printer.print(seconds(119.7)), "2 min"},
                 {us_printer.print(minutes(40)), "40 min"},
                 {us_printer.print(minutes(119.8)), "2 h"},
                 {us_printer.print(hours(2.5)), "2.5 h"},
                 {us_printer.print(hours(47)), "47 h"},
                 {us_printer.print(hours(47.7)), "2 days"},
                 {us_printer.print(days(3.5)), "3.5 days"},
                 {us_printer.print(days(40)), "40 days"}});
}

TEST(PrintReading, glasses) {
  check_printed({{us_printer.print_glasses(us_pints(23)), "23 US pints"},
                 {us_printer.print_glasses(us_pints(1)), "1 US pint"},
                 {british_printer.print_glasses(imperial_pints(0)), "0 pints"},
                 {metric_printer.print_glasses(litres(10)), "20 half litres"}});
}

TEST(PrintReading, what_is_not_a_number_is_a_dash) {
  for (const double v : not_finite) {
    check_printed({{us_printer.print(gauge_psi(v)), "–"},
                   {us_printer.print(celsius(v)), "–"},
                   {us_printer.print(litres(v)), "–"},
                   {us_printer.print(kilograms(v)), "–"},
                   {us_printer.print(seconds(v)), "–"},
                   {us_printer.print(fraction(v)), "–"},
                   {metric_printer.print(specific_gravity(v)), "–"},
                   {us_printer.print_bore(metres(v)), "–"},
                   {us_printer.print_glasses(litres(v)), "–"},
                   {us_printer.number(v, 2), "–"},
                   {us_printer.print(Estimate(volumes_of_co2(v))), "–"},
                   {us_printer.print(Estimate(volumes_of_co2(2), {{{"dial"}, v}})), "–"},
                   {us_printer.print_range(volumes_of_co2(2), volumes_of_co2(v)), "–"},
                   {value_with_error(v, 1, {}), "–"},
                   {value_with_error(1, v, {}), "–"}});
  }
}

struct RoundingRow {
  double value;
  double half_width;
  std::string expected;
};

TEST(RoundingRule, one_digit_of_error_or_two_after_a_one) {
  const RoundingRow rows[] = {
      {1.74, 0.2, "1.7 ± 0.2"},
      {1.74, 0.19999999999, "1.7 ± 0.2"},
      {1.74, 0.20000000001, "1.7 ± 0.2"},
      {2.437, 0.24, "2.4 ± 0.2"},
      {2.437, 0.25001, "2.4 ± 0.3"},
      {2.437, 0.15, "2.44 ± 0.15"},
      {2.437, 0.194, "2.44 ± 0.19"},
      {2.437, 0.196, "2.4 ± 0.2"},
      {2.437, 0.0949, "2.44 ± 0.09"},
      {2.437, 0.096, "2.44 ± 0.10"},
      {2.437, 0.1, "2.44 ± 0.10"},
      {12.3, 2, "12 ± 2"},
      {12.3, 1, "12.3 ± 1.0"},
      {12.3, 9.6, "12 ± 10"},
      {343.2, 23, "340 ± 20"},
      {343.2, 14, "343 ± 14"},
      {1743, 260, "1700 ± 300"},
      {12, 23, "10 ± 20"},
      {0.04, 0.3, "0.0 ± 0.3"},
      {-0.04, 0.3, "0.0 ± 0.3"},
      {-1.26, 0.3, "−1.3 ± 0.3"},
      {2.4, -0.2, "2.4 ± 0.2"},
      {2.4, 0, "2.4"},
      {2, 1e-13, "2"},
  };
  for (const RoundingRow& row : rows) {
    EXPECT_EQ(value_with_error(row.value, row.half_width, {}), row.expected)
        << row.value << " and " << row.half_width;
  }
  EXPECT_EQ(value_with_error(2.437, 0.15, {.decimal_mark = ','}), "2,44 ± 0,15");
}

template <class Q>
Estimate<Q> with_width(Q value, double half_width) {
  return Estimate<Q>(value, {{{"instrument"}, half_width}});
}

TEST(PrintEstimate, in_the_chosen_unit) {
  const Estimate<GaugePressure> by_dial = with_width(gauge_psi(12.3), in_pascals(psi(2)));
  const Estimate<SpecificGravity> hydrometer = with_width(specific_gravity(1.0483), 0.002);
  check_printed({
      {us_printer.print(with_width(volumes_of_co2(2.43), 0.2)), "2.4 ± 0.2 vol"},
      {metric_printer.print(with_width(volumes_of_co2(2.43), 0.2)), "4.8 ± 0.4 g/L"},
      {comma_printer.print(with_width(volumes_of_co2(2.43), 0.2)), "4,8 ± 0,4 g/L"},
      {us_printer.print(with_width(grams_per_litre(4.8), 0.4)), "2.4 ± 0.2 vol"},
      {us_printer.print(by_dial), "12 ± 2 psi"},
      {metric_printer.print(by_dial), "0.85 ± 0.14 bar"},
      {with_pressure(PressureUnit::kilopascal).print(by_dial), "85 ± 14 kPa"},
      {us_printer.print(with_width(celsius(4), 0.5)), "39.2 ± 0.9 °F"},
      {metric_printer.print(with_width(celsius(4), 0.5)), "4.0 ± 0.5 °C"},
      {metric_printer.print(with_width(litres(9.46), 0.003)), "9 ± 3 L"},
      {us_printer.print(with_width(litres(9.46), 0.0005)), "2.50 ± 0.13 gal"},
      {metric_printer.print(with_width(kilograms(0.4), 0.3)), "400 ± 300 g"},
      {metric_printer.print(with_width(kilograms(0.4), 1.3)), "0.4 ± 1.3 kg"},
      {us_printer.print(hydrometer), "1.048 ± 0.002"},
      {metric_printer.print(hydrometer), "12.0 ± 0.5 °P"},
      {us_printer.print(with_width(percent_abv(5.42), 0.3)), "5.4 ± 0.3 %"},
      {us_printer.print(with_width(fraction(0.623), 0.15)), "62 ± 15 %"},
      {us_printer.print(with_width(days(4.2), in_seconds(days(2)))), "4 ± 2 days"},
      {british_printer.print_glasses(with_width(imperial_pints(22.6), 0.0023)), "23 ± 4 pints"},
  });
}

TEST(PrintEstimate, an_error_too_small_to_show_leaves_the_reading) {
  check_printed({
      {us_printer.print(Estimate(volumes_of_co2(2.5))), "2.5 vol"},
      {us_printer.print(with_width(volumes_of_co2(2.5), 0.0004)), "2.5 vol"},
      {us_printer.print(with_width(volumes_of_co2(2.5), 0.0006)), "2.500 ± 0.001 vol"},
      {us_printer.print(with_width(gauge_psi(12), 1.0)), "12 psi"},
  });
}

TEST(PrintEstimate, a_side_off_the_plato_scale_leaves_the_other) {
  EXPECT_EQ(metric_printer.print(with_width(specific_gravity(0.985), 0.01)), "−4 ± 3 °P");
}

TEST(PrintRange, both_ends_alike) {
  check_printed({
      {us_printer.print_range(volumes_of_co2(2.3), volumes_of_co2(2.7)), "2.3 to 2.7 vol"},
      {us_printer.print_range(volumes_of_co2(2.3), volumes_of_co2(2.75)), "2.30 to 2.75 vol"},
      {us_printer.print_range(volumes_of_co2(2.5), volumes_of_co2(2.5)), "2.5 vol"},
      {us_printer.print_range(gauge_psi(10), gauge_psi(12.5)), "10.0 to 12.5 psi"},
      {us_printer.print_range(hours(20), days(3)), "0.8 to 3.0 days"},
      {metric_printer.print_range(celsius(-1), celsius(4)), "−1 to 4 °C"},
      {metric_printer.print_range(litres(7), litres(9)), "7 to 9 L"},
  });
}

TEST(PrintNumber, fixed_decimals) {
  check_printed({{us_printer.number(2, 2), "2.00"},
                 {comma_printer.number(2.345, 1), "2,3"},
                 {us_printer.number(-3, 0), "−3"},
                 {us_printer.number(-0.001, 2), "0.00"}});
}

TEST(UnitNames, as_printed_behind_the_number) {
  check_printed({{unit_name(PressureUnit::psi), "psi"},
                 {unit_name(PressureUnit::bar), "bar"},
                 {unit_name(PressureUnit::kilopascal), "kPa"},
                 {unit_name(TemperatureUnit::celsius), "°C"},
                 {unit_name(TemperatureUnit::fahrenheit), "°F"},
                 {unit_name(VolumeUnit::litre), "L"},
                 {unit_name(VolumeUnit::us_gallon), "gal"},
                 {unit_name(VolumeUnit::imperial_gallon), "imp gal"},
                 {unit_name(GlassUnit::imperial_pint), "pints"},
                 {unit_name(MassUnit::pound), "lb"},
                 {unit_name(LengthUnit::foot), "ft"},
                 {unit_name(BoreUnit::inch), "in"},
                 {unit_name(Co2Unit::grams_per_litre), "g/L"},
                 {unit_name(GravityUnit::specific_gravity), ""},
                 {unit_name(GravityUnit::plato), "°P"}});
}

}  // namespace
}  // namespace ullage::units
