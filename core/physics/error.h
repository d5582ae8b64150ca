// SPDX-License-Identifier: GPL-3.0-or-later
//
// How the physics refuses: every function takes values within a stated range
// and answers a RangeError that names the limit otherwise. NaN and infinities
// are outside every range. Nothing is clamped.
#pragma once

#include <expected>
#include <string>

namespace ullage::physics {

// What the refused number is. The unit of `value`, `low` and `high` goes with it.
enum class Subject {
  temperature,        // K
  ambient_pressure,   // Pa, absolute
  absolute_pressure,  // Pa
  gauge_pressure,     // Pa above ambient
  altitude,           // m
  co2,                // volumes
  co2_above_water,    // volumes: a beer equation asked for more than pure water holds
  co2_fraction,       // mole fraction of the gas
  oxygen_fraction,    // mole fraction
  gravity,            // specific gravity 20/20
  extract,            // degrees Plato
  alcohol,            // % by volume
  volume,             // m3
  beer_volume,        // m3, against the vessel it is in
  headspace,          // m3
  mass,               // kg
  density,            // kg/m3
  length,             // m
  cycles,             // count
  vessel_volumes,     // count of swept volumes
  glasses,            // count
  duration,           // s
  step_time,          // s since the start of a history: steps must be in order
  time_constant,      // s
  fraction,           // 0 to 1
  final_gravity,      // final gravity above original

  // beer lines
  bore,                // m
  roughness,           // m
  relative_roughness,  // of the bore
  reynolds,            // Reynolds number
  rise,                // m
  flow,                // m3/s
  pressure_loss,       // Pa
  factor,              // a plain ratio
  parts,               // count: of a line, of kegs on a regulator
  weighings,           // count
  air_changes,         // 1/s
};

struct RangeError {
  Subject subject{};
  double value = 0;
  double low = 0;
  double high = 0;
  friend bool operator==(const RangeError&, const RangeError&) = default;
};

template <class T>
using Result = std::expected<T, RangeError>;

struct Range {
  double low = 0;
  double high = 0;
};

// Holds the error when `value` is not a finite number inside `range` (ends
// included): `if (auto bad = outside(...)) return std::unexpected(*bad);`
class Outside {
 public:
  Outside(Subject subject, double value, Range range)
      : error_{subject, value, range.low, range.high},
        outside_(!(value >= range.low && value <= range.high)) {}
  explicit operator bool() const { return outside_; }
  const RangeError& operator*() const { return error_; }

 private:
  RangeError error_;
  bool outside_;
};

[[nodiscard]] inline Outside outside(Subject subject, double value, Range range) {
  return Outside(subject, value, range);
}

// lower_snake_case name of the subject, and the SI unit its numbers are in
// ("" for counts and fractions).
[[nodiscard]] std::string subject_name(Subject);
[[nodiscard]] std::string subject_unit(Subject);
// "temperature 363.15 K is outside 270.15 to 308.15 K": for logs and the
// command line; screens print the numbers in the units people chose.
[[nodiscard]] std::string describe(const RangeError&);

}  // namespace ullage::physics
