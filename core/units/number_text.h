// SPDX-License-Identifier: GPL-3.0-or-later
//
// Numbers as text, before any unit is put behind them. One place decides:
//   - the decimal mark follows NumberStyle and thousands are never grouped;
//   - a negative number has the true minus sign U+2212, and nothing prints as
//     minus zero;
//   - a number that is not finite prints as an en dash, never as "nan".
#pragma once

#include <string>

#include "core/units/display_units.h"

namespace ullage::units {

// Stands wherever there is no number to show.
inline constexpr const char* no_number = "–";

// How many digits follow the mark: rounded to `most`, then trailing zeros are
// dropped down to `least`. {0, 1} writes 12 and 12.5; {2, 2} writes 2.10.
struct Decimals {
  int least = 0;
  int most = 0;
};

[[nodiscard]] std::string write_number(double v, Decimals decimals, NumberStyle style);

// The place the error rule rounds to, as a power of ten: -1 is tenths, 1 is
// tens. The half-width keeps one significant digit, two when its rounded value
// starts with 1. `half_width` must be finite and above zero.
[[nodiscard]] int place_of_error(double half_width);

// `v` rounded to a power of ten: write_to_place(1743, 2) is "1700".
[[nodiscard]] std::string write_to_place(double v, int place, NumberStyle style);

}  // namespace ullage::units
