// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/cellar/limits.h"

#include <array>
#include <limits>

#include "core/units/quantities.h"

namespace ullage::cellar {

namespace {

using units::kelvin_at_zero_celsius;

constexpr double one_bar = units::pascals_per_bar;
constexpr double litre = 1e-3;
constexpr double seconds_a_day = 86400;
constexpr double zero_celsius = kelvin_at_zero_celsius;
// A vacuum reads this on a gauge at sea level.
constexpr double vacuum = -units::pascals_per_atmosphere;
// Things that cannot be nothing: a keg, a glass, a hose.
constexpr double some_volume = 0.01 * litre;

struct NumberRow {
  std::string_view kind;  // empty: in every kind
  std::string_view column;
  NumberLimits limits;
};

// The first row that matches counts: rows with a kind stand first.
constexpr auto number_rows = std::to_array<NumberRow>({
    {"cellar_described", "altitude_m", {-500, 5500}},  // where air pressure can be told
    {"keg_record", "nominal_m3", {some_volume, 1}},
    {"keg_record", "brimful_m3", {some_volume, 1}},
    {"keg_record", "rated_pressure_pa", {0, 60 * one_bar}},
    {"place_record", "set_temperature_k", {zero_celsius - 40, zero_celsius + 60}},
    {"place_record", "net_air_volume_m3", {10 * litre, 1e6}},
    {"place_record", "air_changes_per_hour", {0, 200}},
    {"place_record", "walk_order", {0, 10'000}},
    {"place_record", "sensor_height_m", {0, 20}},
    {"cellar_described", "leak_limit_kg_per_day", {1e-6, 10}},
    {"line_record", "coupler_loss_pa", {0, 10 * one_bar}},
    {"line_record", "shank_loss_pa", {0, 10 * one_bar}},
    {"line_record", "faucet_loss_pa", {0, 10 * one_bar}},
    {"line_record", "restrictor_length_m", {0.001, 50}},
    {"line_record", "restrictor_bore_m", {0.0005, 0.1}},
    {"segment_record", "position", {1, 99}},
    {"segment_record", "length_m", {0.01, 500}},
    {"segment_record", "bore_m", {0.0005, 0.1}},
    {"segment_record", "rise_m", {-50, 50}},
    {"rule_record", "interval_days", {1, 3650}},
    {"work_done", "concentrate_m3", {0, 100 * litre}},
    {"work_done", "concentrate_kg", {0, 100}},
    {"line_record", "length_m", {0.01, 500}},
    {"line_record", "bore_m", {0.0005, 0.1}},
    {"line_record", "rise_m", {-50, 50}},
    {"line_record", "clean_every_days", {1, 3650}},
    {"bottle_record", "water_capacity_m3", {some_volume, 1}},
    {"filled", "gross_mass_kg", {0.1, 2000}},
    {"level_reading", "gross_mass_kg", {0.1, 2000}},
    {"level_reading", "glass_volume_m3", {some_volume, 5 * litre}},
    {"bottle_weighed", "gross_mass_kg", {0.1, 2000}},
    {"gauge_read", "pressure_pa", {0, 300 * one_bar}},
    {"gauge_read", "temperature_k", {zero_celsius - 40, zero_celsius + 80}},
    {"temperature_read", "temperature_k", {zero_celsius - 40, zero_celsius + 60}},
    {"purged", "cycles", {1, 1000}},
    {"timed_pour", "volume_m3", {some_volume, 100 * litre}},
    {"timed_pour", "duration_s", {0.1, 3600}},
    {"primed", "mass_kg", {0.0001, 50}},
    {"", "strength_percent", {0, 100}},
    {"", "relative_bias_percent", {0, 100}},
    {"", "relative_repeatability_percent", {0, 100}},
});

constexpr NumberLimits limits_of(Measure measure) {
  switch (measure) {
    case Measure::length:
      return {0, 1000};
    case Measure::volume:
      return {0, 1};
    case Measure::mass:
      return {0, 2000};
    case Measure::duration:
      return {0, 30 * seconds_a_day};
    case Measure::gauge_pressure:
      return {vacuum, 20 * one_bar};
    case Measure::pressure_difference:
      return {0, 300 * one_bar};
    case Measure::temperature:
      return {zero_celsius - 10, zero_celsius + 110};
    case Measure::temperature_difference:
      return {0, 50};
    case Measure::co2_concentration:
      return {0, 20};  // ten volumes
    case Measure::specific_gravity:
      return {0.95, 1.3};
    case Measure::abv:
      return {0, 80};
    case Measure::mole_fraction:
    case Measure::fraction:
      return {0, 1};
    case Measure::plain_number:
      return {0, 1e5};
    case Measure::count:
      return {0, 1e9};
  }
  return {std::numeric_limits<double>::lowest(), std::numeric_limits<double>::max()};
}

struct TextRow {
  std::string_view kind;
  std::string_view column;
  std::size_t limit;
  bool required = false;
};

constexpr std::size_t usual_text_limit = 60;

constexpr auto text_rows = std::to_array<TextRow>({
    {"", "note", 2000},
    {"", "by", 8},
    {"", "reason", 200},
    {"cellar_described", "name", 60, true},
    {"cellar_described", "time_zone", 60, true},
    {"keg_record", "tag", 12, true},
    {"keg_record", "coupler", 30},
    {"beer_record", "name", 60, true},
    {"beer_record", "allergens", 300},
    {"place_record", "name", 60, true},
    {"line_record", "name", 60, true},
    {"line_record", "tap", 30},
    {"line_record", "clean_reason", 200},
    {"line_record", "clean_source", 200},
    {"bottle_record", "name", 60, true},
    {"regulator_record", "name", 60, true},
    {"instrument_record", "name", 60, true},
    {"instrument_record", "check_note", 300},
    {"leak_tested", "where", 200},
    {"line_released", "checked_by", 30},
    {"line_released", "countersigned_by", 30},
    {"lent", "to", 60, true},
    {"cellar_described", "country", 2},
    {"rule_record", "source", 200, true},
    {"work_done", "done_by", 30},
    {"work_done", "countersigned_by", 30},
});

// A row of the kind itself, else one that counts in every kind.
template <std::size_t N, class Row>
const Row* find_row(const std::array<Row, N>& rows, std::string_view kind,
                    std::string_view column) {
  const Row* general = nullptr;
  for (const Row& row : rows) {
    if (row.column != column) continue;
    if (row.kind == kind) return &row;
    if (row.kind.empty()) general = &row;
  }
  return general;
}

}  // namespace

NumberLimits number_limits(std::string_view kind, std::string_view column, Measure measure) {
  const NumberRow* row = find_row(number_rows, kind, column);
  return row == nullptr ? limits_of(measure) : row->limits;
}

std::size_t text_limit(std::string_view kind, std::string_view column) {
  const TextRow* row = find_row(text_rows, kind, column);
  return row == nullptr ? usual_text_limit : row->limit;
}

bool text_required(std::string_view kind, std::string_view column) {
  const TextRow* row = find_row(text_rows, kind, column);
  return row != nullptr && row->required;
}

}  // namespace ullage::cellar
