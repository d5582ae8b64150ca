// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/report/csv_reader.h"

#include <fmt/format.h>

#include <algorithm>
#include <array>
#include <optional>

namespace ullage::report {

namespace {

using Kind = CsvFaultKind;

// How many bytes the well-formed UTF-8 character at the front has (RFC 3629: no
// overlong forms, no surrogates, nothing above U+10FFFF); 0 when it is none.
std::size_t character_length(std::string_view s) {
  const auto byte = [&](std::size_t i) { return static_cast<unsigned char>(s[i]); };
  const unsigned char first = byte(0);
  if (first < 0x80) return 1;
  const std::size_t length = first >= 0xF0 ? 4 : first >= 0xE0 ? 3 : 2;
  if (first < 0xC2 || first > 0xF4 || s.size() < length) return 0;
  for (std::size_t i = 1; i < length; ++i) {
    if ((byte(i) & 0xC0U) != 0x80U) return 0;
  }
  if ((first == 0xE0 && byte(1) < 0xA0) || (first == 0xED && byte(1) > 0x9F) ||
      (first == 0xF0 && byte(1) < 0x90) || (first == 0xF4 && byte(1) > 0x8F)) {
    return 0;
  }
  return length;
}

char delimiter_of(std::string_view bytes) {
  const std::string_view first = bytes.substr(0, bytes.find_first_of("\r\n"));
  char best = ',';
  for (const char c : {',', ';', '\t'}) {
    if (std::count(first.begin(), first.end(), c) > std::count(first.begin(), first.end(), best)) {
      best = c;
    }
  }
  return best;
}

std::string without_blanks_around(const std::string& text) {
  constexpr std::string_view blank = " \t\r\n";
  const auto first = text.find_first_not_of(blank);
  if (first == std::string::npos) return {};
  return text.substr(first, text.find_last_not_of(blank) - first + 1);
}

class CsvScanner {
 public:
  explicit CsvScanner(std::string_view bytes) : rest_(bytes), delimiter_(delimiter_of(bytes)) {}

  std::expected<std::vector<CsvLine>, CsvFault> all() {
    while (!rest_.empty() && !fault_) step();
    if (!fault_ && quoted_) refuse(Kind::quote_not_closed, quote_opened_);
    if (!fault_ && (!field_.empty() || !line_.fields.empty() || closed_)) end_line();
    if (fault_) return std::unexpected(*fault_);
    return std::move(lines_);
  }

 private:
  void refuse(Kind kind, std::size_t line) {
    if (!fault_) fault_ = CsvFault{kind, line, 0, 0};
  }
  void take(std::size_t length) {
    field_.append(rest_.substr(0, length));
    rest_.remove_prefix(length);
    if (field_.size() > csv_longest_field) refuse(Kind::field_too_long, number_);
  }
  // CR, LF and CR LF are one line end.
  void take_line_end() {
    const bool both = rest_.size() > 1 && rest_[0] == '\r' && rest_[1] == '\n';
    rest_.remove_prefix(both ? 2 : 1);
    ++number_;
  }
  void end_field() {
    line_.fields.push_back(without_blanks_around(field_));
    field_.clear();
    closed_ = false;
    if (line_.fields.size() > csv_most_columns) refuse(Kind::too_many_columns, number_);
  }
  void end_line() {
    end_field();
    const bool nothing = std::all_of(line_.fields.begin(), line_.fields.end(),
                                     [](const std::string& f) { return f.empty(); });
    if (!nothing) lines_.push_back(std::move(line_));
    line_ = CsvLine{number_, {}};
    if (lines_.size() > csv_most_lines) refuse(Kind::too_many_lines, number_);
  }
  void step() {
    const char c = rest_.front();
    const std::size_t length = character_length(rest_);
    if (length == 0) return refuse(Kind::not_utf8, number_);
    const bool line_end = c == '\n' || c == '\r';
    if (!line_end && c != '\t' && (static_cast<unsigned char>(c) < 0x20 || c == 0x7F)) {
      return refuse(Kind::control_character, number_);
    }
    if (quoted_) return step_quoted(c, length, line_end);
    if (line_end) {
      take_line_end();
      end_line();
    } else if (c == delimiter_) {
      rest_.remove_prefix(1);
      end_field();
    } else if (closed_) {
      // Blanks may stand between a closing quote and the next comma.
      if (c != ' ' && c != '\t') return refuse(Kind::text_after_quote, number_);
      rest_.remove_prefix(1);
    } else if (c == '"' && without_blanks_around(field_).empty()) {
      field_.clear();
      rest_.remove_prefix(1);
      quoted_ = true;
      quote_opened_ = number_;
    } else {
      take(length);
    }
  }
  void step_quoted(char c, std::size_t length, bool line_end) {
    if (c == '"' && rest_.size() > 1 && rest_[1] == '"') {
      rest_.remove_prefix(1);
      take(1);
    } else if (c == '"') {
      rest_.remove_prefix(1);
      quoted_ = false;
      closed_ = true;
    } else if (line_end) {
      field_ += '\n';
      take_line_end();
    } else {
      take(length);
    }
  }

  std::string_view rest_;
  char delimiter_;
  std::size_t number_ = 1, quote_opened_ = 1;
  bool quoted_ = false, closed_ = false;
  std::string field_;
  CsvLine line_;
  std::vector<CsvLine> lines_;
  std::optional<CsvFault> fault_;
};

}  // namespace

std::expected<CsvFile, CsvFault> read_csv(std::string_view bytes) {
  if (bytes.size() > csv_most_bytes) return std::unexpected(CsvFault{Kind::too_large, 1, 0, 0});
  if (bytes.starts_with("\xEF\xBB\xBF")) bytes.remove_prefix(3);
  auto lines = CsvScanner(bytes).all();
  if (!lines) return std::unexpected(lines.error());
  if (lines->size() < 2) return std::unexpected(CsvFault{Kind::empty, 1, 0, 0});
  CsvFile file;
  file.header = std::move(lines->front());
  lines->erase(lines->begin());
  for (const CsvLine& line : *lines) {
    if (line.fields.size() == file.header.fields.size()) continue;
    return std::unexpected(
        CsvFault{Kind::uneven, line.number, line.fields.size(), file.header.fields.size()});
  }
  file.lines = std::move(*lines);
  return file;
}

std::string say(const CsvFault& fault) {
  switch (fault.kind) {
    case Kind::empty:
      return "There are no lines below the headings.";
    case Kind::too_large:
      return fmt::format("The file is larger than {} MB: that is no list of kegs.",
                         csv_most_bytes / (std::size_t{1024} * 1024));
    case Kind::too_many_lines:
      return fmt::format("There are more than {} lines.", csv_most_lines);
    case Kind::too_many_columns:
      return fmt::format("Line {} has more than {} columns.", fault.line, csv_most_columns);
    case Kind::field_too_long:
      return fmt::format("Line {} holds a text of more than {} bytes.", fault.line,
                         csv_longest_field);
    case Kind::not_utf8:
      return fmt::format("Line {} is not UTF-8. Save the file as UTF-8 and try again.", fault.line);
    case Kind::control_character:
      return fmt::format("Line {} holds a control character: this is no text file.", fault.line);
    case Kind::quote_not_closed:
      return fmt::format("The quote opened in line {} is never closed: was the file cut off?",
                         fault.line);
    case Kind::text_after_quote:
      return fmt::format("Line {} goes on after a closing quote.", fault.line);
    case Kind::uneven:
      return fmt::format("Line {} has {} fields, the headings have {}.", fault.line, fault.found,
                         fault.expected);
  }
  return {};
}

}  // namespace ullage::report
