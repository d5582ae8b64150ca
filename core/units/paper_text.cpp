// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/units/paper_text.h"

#include <algorithm>
#include <array>
#include <cmath>

#include "core/units/number_text.h"

namespace ullage::units {

namespace {

constexpr std::string_view no_break_space = "\u00A0";
constexpr std::string_view plus_minus = "±";

// What stands behind a number. Of a unit in two words the first is here, too.
constexpr auto unit_words = std::to_array<std::string_view>(
    {"psi", "bar",  "kPa",   "°C",   "°F",    "L",  "mL",  "gal",  "fl",  "imp",
     "US",  "pint", "pints", "half", "third", "kg", "g",   "lb",   "oz",  "m",
     "ft",  "mm",   "in",    "vol",  "g/L",   "°P", "%",   "s",    "min", "h",
     "d",   "day",  "days",  "ppm",  "mg/L",  "m³", "ft³", "mL/s", "L/s", "g/day"});
struct UnitPair {
  std::string_view first, second;
};
constexpr auto unit_pairs = std::to_array<UnitPair>({{"fl", "oz"},
                                                     {"fl", "oz/s"},
                                                     {"imp", "gal"},
                                                     {"US", "pint"},
                                                     {"US", "pints"},
                                                     {"half", "litre"},
                                                     {"half", "litres"},
                                                     {"half", "liter"},
                                                     {"half", "liters"},
                                                     {"third", "litre"},
                                                     {"third", "litres"},
                                                     {"third", "liter"},
                                                     {"third", "liters"}});

bool is_figure(char c) { return c >= '0' && c <= '9'; }

// Without what closes a sentence or a bracket behind it.
std::string_view word_alone(std::string_view word) {
  while (!word.empty() && std::string_view(".,;:!?)").find(word.back()) != std::string_view::npos) {
    word.remove_suffix(1);
  }
  return word;
}

bool is_unit_word(std::string_view word) {
  return std::find(unit_words.begin(), unit_words.end(), word_alone(word)) != unit_words.end();
}

bool ends_in_number(std::string_view word) { return !word.empty() && is_figure(word.back()); }

bool are_pair(std::string_view first, std::string_view second) {
  return std::any_of(unit_pairs.begin(), unit_pairs.end(), [&](const UnitPair& pair) {
    return pair.first == first && pair.second == word_alone(second);
  });
}

}  // namespace

std::string print_room(Volume room, const Printer& printer) {
  constexpr double litres_per_cubic_foot = 28.316846592;
  const bool feet = printer.units.length == LengthUnit::foot;
  const double size = feet ? in_litres(room) / litres_per_cubic_foot : in_cubic_metres(room);
  if (!std::isfinite(size)) return no_number;
  const int place =
      size < 10 ? -1 : std::max(0, static_cast<int>(std::floor(std::log10(size))) - 2);
  return write_to_place(size, place, printer.style) + (feet ? " ft³" : " m³");
}

std::string print_room(const Estimate<Volume>& room, const Printer& printer) {
  if (!(room.half_width() > 0)) return print_room(room.value(), printer);
  const double share = room.half_width() / room.value().value();
  return print_room(room.value(), printer) + " ± " + printer.number(share * 100, 0) + " %";
}

std::string held_together(std::string_view text) {
  std::string out;
  out.reserve(text.size() + 8);
  bool before_is_held = false;  // to a number before it
  while (true) {
    const std::size_t space = text.find(' ');
    const std::string_view word = text.substr(0, space);
    out += word;
    if (space == std::string_view::npos) return out;
    text.remove_prefix(space + 1);
    const std::string_view next = text.substr(0, text.find(' '));
    const bool to_unit = ends_in_number(word) && (is_unit_word(next) || next == plus_minus);
    const bool to_error =
        word == plus_minus && before_is_held && !next.empty() && is_figure(next[0]);
    const bool to_second_word = before_is_held && are_pair(word, next);
    before_is_held = to_unit || to_error || to_second_word;
    out += before_is_held ? no_break_space : std::string_view(" ");
  }
}

}  // namespace ullage::units
