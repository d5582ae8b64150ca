// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/units/unit_tables.h"

#include <algorithm>
#include <array>

#include "core/units/gravity_scale.h"
#include "core/units/magnitude.h"

namespace ullage::units {

namespace {

// Turns a maker of quantities.h into the function a row wants, so that no factor
// stands in this file.
template <auto maker, double scale = 1.0>
double by(double v) {
  return to_magnitude(maker(v * scale));
}

constexpr std::array pressure_rows = {
    UnitRow{"psi|psig|lb/in2", by<psi>},
    UnitRow{"bar|bars|barg", by<bar>},
    UnitRow{"mbar|millibar|hpa", by<pascals, 100.0>},
    UnitRow{"kpa|kilopascal|kilopascals", by<pascals, 1000.0>},
    UnitRow{"MPa", by<pascals, 1e6>, Customary::either, true},
    UnitRow{"pa|pascal|pascals", by<pascals>},
};

constexpr std::array temperature_rows = {
    UnitRow{"°c|c|degc|degreesc|celsius|centigrade", by<celsius>},
    UnitRow{"°f|f|degf|degreesf|fahrenheit", by<fahrenheit>},
    UnitRow{"k|kelvin", by<kelvin>},
};

constexpr std::array temperature_difference_rows = {
    UnitRow{"°c|c|degc|degreesc|celsius|centigrade|k|kelvin", by<kelvin_difference>},
    UnitRow{"°f|f|degf|degreesf|fahrenheit", by<fahrenheit_difference>},
};

constexpr std::array volume_rows = {
    UnitRow{"l|lt|ltr|litre|litres|liter|liters", by<litres>},
    UnitRow{"ml|millilitre|millilitres|milliliter|milliliters|cc", by<litres, 1e-3>},
    UnitRow{"cl|centilitre|centilitres|centiliter|centiliters", by<litres, 1e-2>},
    UnitRow{"m3|m³|cubicmetre|cubicmetres|cubicmeter|cubicmeters", by<litres, 1e3>},
    UnitRow{"ft3|ft³|cuft|cubicfoot|cubicfeet",
            by<us_gallons, 1728.0 / 231.0>},  // both in cubic inches
    UnitRow{"hl|hectolitre|hectolitres|hectoliter|hectoliters", by<litres, 100.0>},
    UnitRow{"gal|gals|gallon|gallons", by<us_gallons>, Customary::us},
    UnitRow{"gal|gals|gallon|gallons", by<imperial_gallons>, Customary::imperial},
    UnitRow{"usgal|usgals|usgallon|usgallons", by<us_gallons>},
    UnitRow{"impgal|impgals|impgallon|impgallons|imperialgallon|imperialgallons|ukgal|ukgallon",
            by<imperial_gallons>},
    UnitRow{"qt|qts|quart|quarts", by<us_gallons, 0.25>, Customary::us},
    UnitRow{"qt|qts|quart|quarts", by<imperial_gallons, 0.25>, Customary::imperial},
    UnitRow{"pt|pts|pint|pints", by<us_pints>, Customary::us},
    UnitRow{"pt|pts|pint|pints", by<imperial_pints>, Customary::imperial},
    UnitRow{"uspt|uspint|uspints", by<us_pints>},
    UnitRow{"imppt|imppint|imppints|imperialpint|imperialpints|ukpint|ukpints", by<imperial_pints>},
    UnitRow{"floz|oz|fluidounce|fluidounces", by<us_fluid_ounces>, Customary::us},
    UnitRow{"floz|oz|fluidounce|fluidounces", by<imperial_gallons, 1.0 / 160.0>,
            Customary::imperial},
    UnitRow{"usfloz", by<us_fluid_ounces>},
    UnitRow{"impfloz|ukfloz", by<imperial_gallons, 1.0 / 160.0>},
    UnitRow{"halflitre|halflitres|halfliter|halfliters", by<litres, 0.5>},
    UnitRow{"thirdlitre|thirdlitres|thirdliter|thirdliters", by<litres, 1.0 / 3.0>},
};

constexpr std::array mass_rows = {
    UnitRow{"kg|kgs|kilo|kilos|kilogram|kilograms", by<kilograms>},
    UnitRow{"g|gr|gram|grams|gramme|grammes", by<grams>},
    UnitRow{"lb|lbs|pound|pounds", by<pounds>},
    UnitRow{"oz|ozs|ounce|ounces", by<pounds, 1.0 / 16.0>},
};

constexpr std::array length_rows = {
    UnitRow{"m|metre|metres|meter|meters", by<metres>},
    UnitRow{"cm|centimetre|centimetres|centimeter|centimeters", by<metres, 1e-2>},
    UnitRow{"mm|millimetre|millimetres|millimeter|millimeters", by<millimetres>},
    UnitRow{"ft|foot|feet|'", by<feet>},
    UnitRow{"in|ins|inch|inches|\"", by<inches>},
};

constexpr std::array co2_rows = {
    UnitRow{"vol|vols|volume|volumes|v/v",
            [](double v) { return to_concentration(volumes_of_co2(v)).count(); }},
    UnitRow{"g/l|gpl|gramsperlitre|gramsperliter", by<grams_per_litre>},
};

// "1048" is how a specific gravity is said aloud; no gravity is anywhere near it
// otherwise.
double gravity_as_said(double v) {
  constexpr double said_from = 900.0;
  return v >= said_from ? v / 1000.0 : v;
}

double gravity_of_plato(double v) {
  const auto gravity = to_specific_gravity(plato(v));
  return gravity ? gravity->count() : -1.0;  // below any possible gravity, so refused
}

constexpr std::array gravity_rows = {
    UnitRow{"sg|°sg|specificgravity", gravity_as_said},
    UnitRow{"°p|p|plato|°plato|degp", gravity_of_plato},
};

constexpr std::array fraction_rows = {
    UnitRow{"%|percent|pct|percents", by<fraction, 0.01>},
};

constexpr std::array duration_rows = {
    UnitRow{"s|sec|secs|second|seconds", by<seconds>},
    UnitRow{"min|mins|minute|minutes", by<minutes>},
    UnitRow{"h|hr|hrs|hour|hours", by<hours>},
    UnitRow{"d|day|days", by<days>},
    UnitRow{"wk|wks|week|weeks", by<days, 7.0>},
};

constexpr UnitTable pressures{"a pressure", "psi, bar, kPa", pressure_rows, -1.1e5, 4e7};
constexpr UnitTable temperatures{"a temperature", "°C, °F", temperature_rows, 0.0, 773.15};
constexpr UnitTable temperature_differences{"a temperature", "°C, °F", temperature_difference_rows,
                                            -1000.0, 1000.0};
constexpr UnitTable volumes{
    "a volume", "L, mL, US gal, imp gal, US pint, imp pint", volume_rows, 0.0, 1e3, true};
constexpr UnitTable masses{"a weight", "kg, g, lb, oz", mass_rows, 0.0, 1e5, true, true};
constexpr UnitTable lengths{"a length", "m, cm, mm, ft, in", length_rows, -1e4, 1e4, true, true};
constexpr UnitTable bores{"a length", "mm, in", length_rows, 1e-4, 1.0, true};
constexpr UnitTable co2_amounts{"an amount of CO₂", "vol, g/L", co2_rows, 0.0, 100.0};
constexpr UnitTable gravities{"a gravity", "SG, °P", gravity_rows, least_gravity.count(),
                              greatest_gravity.count()};
constexpr UnitTable shares{"a percentage", "%", fraction_rows, 0.0, 1.0, true};
constexpr UnitTable times{
    "a time", "min, h, days", duration_rows, 0.0, 100 * 365.25 * 86400.0, true, true};

constexpr std::array every_table = {&pressures, &temperatures, &volumes,   &masses, &lengths,
                                    &bores,     &co2_amounts,  &gravities, &shares, &times};

bool listed(std::string_view spellings, std::string_view key) {
  while (!spellings.empty()) {
    const std::size_t end = std::min(spellings.find('|'), spellings.size());
    if (spellings.substr(0, end) == key) return true;
    spellings.remove_prefix(std::min(end + 1, spellings.size()));
  }
  return false;
}

}  // namespace

UnitKey unit_key(std::string_view typed) {
  UnitKey key;
  std::copy_if(typed.begin(), typed.end(), std::back_inserter(key.as_typed),
               [](char c) { return c != ' '; });
  // Abbreviations may carry their full stops: "in.", "fl. oz."
  std::erase(key.as_typed, '.');
  key.lowered = key.as_typed;
  for (char& c : key.lowered) {
    if (c >= 'A' && c <= 'Z') c = static_cast<char>(c - 'A' + 'a');
  }
  return key;
}

bool spells(const UnitRow& row, const UnitKey& key) {
  return listed(row.spellings, row.exact_case ? key.as_typed : key.lowered);
}

bool knows(const UnitTable& table, const UnitKey& key) {
  return std::any_of(table.rows.begin(), table.rows.end(),
                     [&](const UnitRow& row) { return spells(row, key); });
}

const UnitTable& pressure_table() { return pressures; }
const UnitTable& temperature_table() { return temperatures; }
const UnitTable& temperature_difference_table() { return temperature_differences; }
const UnitTable& volume_table() { return volumes; }
const UnitTable& mass_table() { return masses; }
const UnitTable& length_table() { return lengths; }
const UnitTable& bore_table() { return bores; }
const UnitTable& co2_table() { return co2_amounts; }
const UnitTable& gravity_table() { return gravities; }
const UnitTable& fraction_table() { return shares; }
const UnitTable& duration_table() { return times; }

std::span<const UnitTable* const> all_unit_tables() { return every_table; }

}  // namespace ullage::units
