// SPDX-License-Identifier: GPL-3.0-or-later
//
// Reads a CSV file as a whole or not at all. RFC 4180, and what programs write
// in its place: LF or CR for CR LF, a byte order mark, and semicolons or tabs
// for commas (whichever parts the first line most). Every line must have as many
// fields as the first one; lines without anything in them are passed over.
#pragma once

#include <cstddef>
#include <expected>
#include <string>
#include <string_view>
#include <vector>

namespace ullage::report {

inline constexpr std::size_t csv_most_bytes = std::size_t{2} * 1024 * 1024;
inline constexpr std::size_t csv_most_lines = 5000;
inline constexpr std::size_t csv_most_columns = 64;
inline constexpr std::size_t csv_longest_field = 2000;  // bytes

enum class CsvFaultKind {
  empty,      // nothing in it, or a header alone
  too_large,  // more bytes than csv_most_bytes
  too_many_lines,
  too_many_columns,
  field_too_long,
  not_utf8,
  control_character,  // a zero byte or another that no text holds
  quote_not_closed,   // the file ends within a quoted field: it was cut off
  text_after_quote,   // "a"b
  uneven              // more or fewer fields than the first line has
};
struct CsvFault {
  CsvFaultKind kind = CsvFaultKind::empty;
  std::size_t line = 1;                 // as an editor counts
  std::size_t found = 0, expected = 0;  // of `uneven`
};
[[nodiscard]] std::string say(const CsvFault&);  // "Line 7 has 3 fields, the first line has 5."

struct CsvLine {
  std::size_t number = 1;           // where it begins, as an editor counts
  std::vector<std::string> fields;  // without blanks around them
};
struct CsvFile {
  CsvLine header;
  std::vector<CsvLine> lines;
};

[[nodiscard]] std::expected<CsvFile, CsvFault> read_csv(std::string_view bytes);

}  // namespace ullage::report
