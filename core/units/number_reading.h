// SPDX-License-Identifier: GPL-3.0-or-later
//
// The number at the front of a typed quantity. Expects plain_text().
#pragma once

#include <cstddef>
#include <expected>
#include <optional>
#include <string_view>

#include "core/units/display_units.h"
#include "core/units/parsing.h"

namespace ullage::units {

struct ReadNumber {
  double value = 0;
  // Where the mark could group thousands: what the number would then be.
  std::optional<double> if_grouped = std::nullopt;
  bool as_fraction = false;  // written "3/4" or "1 1/2"
  std::size_t length = 0;    // bytes taken from the front of the text
};

// [sign] digits with at most one decimal mark and perhaps an exponent; or, where
// `fractions` allows it, "3/4" and "1 1/2". Thousands may be grouped by the
// other mark where that leaves one reading: "1,234.5", "1.234.567".
// Errors: not_a_number, out_of_range (no finite double holds it).
[[nodiscard]] std::expected<ReadNumber, ParseFault> read_number(std::string_view plain,
                                                                NumberStyle style, bool fractions);

}  // namespace ullage::units
