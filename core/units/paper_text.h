// SPDX-License-Identifier: GPL-3.0-or-later
//
// Figures beside those of printing.h: rooms, and numbers that stay with their units
// where text is laid out in lines.
#pragma once

#include <string>
#include <string_view>

#include "core/units/printing.h"

namespace ullage::units {

// What a room holds, to three figures: "40 m³", "1410 ft³" where lengths are in feet.
[[nodiscard]] std::string print_room(Volume, const Printer&);
// "40 m³ ± 6 %"
[[nodiscard]] std::string print_room(const Estimate<Volume>&, const Printer&);

// The same words with their numbers held to their units, signs and further words of
// a unit ("13.5 fl oz", "2.4 ± 0.2 vol") by spaces that no line breaks at (U+00A0).
// For what is laid out in lines; what a machine reads keeps plain spaces.
[[nodiscard]] std::string held_together(std::string_view text);

}  // namespace ullage::units
