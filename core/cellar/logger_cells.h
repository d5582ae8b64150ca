// SPDX-License-Identifier: GPL-3.0-or-later
//
// The cells of a logger's file: bytes to UTF-8 lines, lines to cells, cells to
// numbers, dates and hours. See logger_file.h.
#pragma once

#include <array>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "core/cellar/logger_file.h"

namespace ullage::cellar::logger {

// UTF-8 of whatever the bytes are; nullopt for binary content.
[[nodiscard]] std::optional<std::string> as_utf8(std::string_view bytes);
// The first characters of a line for a list: no control characters.
[[nodiscard]] std::string shown_beginning(std::string_view line);

// Cells without the blanks and quotes around them; "" within quotes is a quote.
[[nodiscard]] std::vector<std::string> cells_of(std::string_view line, char delimiter);

struct CellNumber {
  double value = 0;
  std::optional<DegreesOf> degrees;  // "3.5 °C"
};
[[nodiscard]] std::optional<CellNumber> number_in(std::string_view cell, bool decimal_comma);

struct CellClock {
  std::chrono::seconds since_midnight{};
  std::optional<UtcOffset> offset;
};
// "14:05", "2:05:30 PM", "T14:05:00.000Z", "14:05+01:00"; empty is midnight.
[[nodiscard]] std::optional<CellClock> clock_in(std::string_view text);

// A date as its three numbers in the order written: "02.11.2026", "2026-11-02", and
// with its month in words "2 Nov 2026", "02-Nov-2026", "November 2, 2026" (English
// and German), which counts as year first since nothing of it is in doubt.
struct CellDate {
  std::array<int, 3> parts{};
  bool year_first = false;
  std::string_view rest;           // what follows it
  std::optional<CellClock> clock;  // of a count of seconds, which has no rest
};
[[nodiscard]] std::optional<CellDate> date_in(std::string_view cell);
// A count of seconds (or thousandths) since 1970, of this century: "1793613600".
[[nodiscard]] std::optional<CellDate> counted_date_in(std::string_view cell);
[[nodiscard]] std::optional<std::chrono::local_days> day_of(const CellDate&, DateOrder);

// "Temp (°F)", "temperature", "Temp C": what a heading says.
[[nodiscard]] bool speaks_of_temperature(std::string_view heading);
[[nodiscard]] std::optional<DegreesOf> degrees_in_heading(std::string_view heading);

}  // namespace ullage::cellar::logger
