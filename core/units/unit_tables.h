// SPDX-License-Identifier: GPL-3.0-or-later
//
// The units a person may type, one table per dimension: how each is spelled and
// what one of it is. parsing.cpp reads by these tables and knows no unit itself.
#pragma once

#include <span>
#include <string>
#include <string_view>

#include "core/units/display_units.h"

namespace ullage::units {

// Which of two customary systems a spelling belongs to. "gal" stands in the
// table twice; what the person has chosen to see decides.
enum class Customary { either, us, imperial };

struct UnitRow {
  // Spellings separated by '|', without spaces and in lower case. Letter case is
  // ignored unless exact_case is set.
  std::string_view spellings;
  double (*magnitude)(double);  // the number in this unit as a magnitude (magnitude.h)
  Customary customary = Customary::either;
  bool exact_case = false;
};

struct UnitTable {
  std::string_view noun;      // "a pressure", for a message
  std::string_view accepted;  // "psi, bar, kPa", for a message
  std::span<const UnitRow> rows;
  double least = 0;        // smallest possible magnitude
  double greatest = 0;     // greatest possible magnitude
  bool fractions = false;  // "3/16" is a number here
  bool compound = false;   // "3 ft 6 in" is one quantity
};

// "Fl. OZ" -> "Fl.OZ" -> "fl.oz": how a spelling is compared. `lowered` is empty
// for nothing but spaces.
struct UnitKey {
  std::string as_typed;
  std::string lowered;
};
[[nodiscard]] UnitKey unit_key(std::string_view typed);

[[nodiscard]] bool spells(const UnitRow&, const UnitKey&);
[[nodiscard]] bool knows(const UnitTable&, const UnitKey&);

[[nodiscard]] const UnitTable& pressure_table();
[[nodiscard]] const UnitTable& temperature_table();
[[nodiscard]] const UnitTable& temperature_difference_table();
[[nodiscard]] const UnitTable& volume_table();
[[nodiscard]] const UnitTable& mass_table();
[[nodiscard]] const UnitTable& length_table();
[[nodiscard]] const UnitTable& bore_table();
[[nodiscard]] const UnitTable& co2_table();
[[nodiscard]] const UnitTable& gravity_table();
[[nodiscard]] const UnitTable& fraction_table();
[[nodiscard]] const UnitTable& duration_table();

// Every table once, for telling a unit of another dimension from no unit.
[[nodiscard]] std::span<const UnitTable* const> all_unit_tables();

}  // namespace ullage::units
