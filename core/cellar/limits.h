// SPDX-License-Identifier: GPL-3.0-or-later
//
// What each field of an entry can hold at most: the bounds beyond which a value
// is a slip of the finger, not a fact. They are wide on purpose: bad practice (30
// psi on a keg rated 20) is a fact and must pass. A form may ask for them to
// limit its fields as one types.
#pragma once

#include <cstddef>
#include <string_view>

namespace ullage::cellar {

// In the magnitude of the field's type (core/units/magnitude.h): its SI unit, or
// its own scale. Both ends are allowed.
struct NumberLimits {
  double low = 0;
  double high = 0;
};

// The names by which limits are kept where a field has none of its own.
enum class Measure {
  length,
  volume,
  mass,
  duration,
  gauge_pressure,
  pressure_difference,
  temperature,
  temperature_difference,
  co2_concentration,
  specific_gravity,
  abv,
  mole_fraction,
  fraction,
  plain_number,
  count
};

// `kind` and `column` are those of the payload's fields().
[[nodiscard]] NumberLimits number_limits(std::string_view kind, std::string_view column, Measure);

// Characters, not bytes. Header texts have the kind "" and the columns "note", "by".
[[nodiscard]] std::size_t text_limit(std::string_view kind, std::string_view column);
// Whether an empty text is refused there.
[[nodiscard]] bool text_required(std::string_view kind, std::string_view column);

}  // namespace ullage::cellar
