// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/units/number_reading.h"

#include <algorithm>
#include <charconv>
#include <cmath>
#include <string>
#include <system_error>

namespace ullage::units {

namespace {

bool is_digit(char c) { return c >= '0' && c <= '9'; }

std::size_t count_digits(std::string_view text) {
  return static_cast<std::size_t>(std::find_if_not(text.begin(), text.end(), is_digit) -
                                  text.begin());
}

// Digits and '.' and perhaps an exponent, as they are written in C.
std::expected<double, ParseFault> to_double(std::string_view text) {
  double v = 0;
  const auto [end, error] = std::from_chars(text.data(), text.data() + text.size(), v);
  if (error == std::errc::result_out_of_range) return std::unexpected(ParseFault::out_of_range);
  if (error != std::errc() || end != text.data() + text.size()) {
    return std::unexpected(ParseFault::not_a_number);
  }
  if (!std::isfinite(v)) return std::unexpected(ParseFault::out_of_range);
  return v;
}

// "1,234,567" for mark ',': a first group of one to three digits that does not
// start with 0, then groups of three.
bool well_grouped(std::string_view text, char mark) {
  const std::size_t group = count_digits(text);
  if (group < 1 || group > 3 || text[0] == '0') return false;
  for (text.remove_prefix(group); !text.empty(); text.remove_prefix(4)) {
    if (text[0] != mark || count_digits(text.substr(1)) < 3) return false;
    if (text.size() > 4 && text[4] != mark) return false;
  }
  return true;
}

std::string without(std::string text, char mark) {
  std::erase(text, mark);
  return text;
}

// How the marks in a numeral are to be taken.
struct Marks {
  char decimal = 0;          // 0: none
  char thousands = 0;        // 0: none
  bool could_group = false;  // the decimal mark might be a thousands mark
};

std::optional<Marks> sort_marks(std::string_view numeral, NumberStyle style) {
  const auto dots = std::count(numeral.begin(), numeral.end(), '.');
  const auto commas = std::count(numeral.begin(), numeral.end(), ',');
  if (dots == 0 && commas == 0) return Marks{};
  if (dots > 0 && commas > 0) {
    const char last = numeral[numeral.find_last_of(".,")];
    const char first = last == '.' ? ',' : '.';
    const std::size_t end = numeral.find(last);
    if ((last == '.' ? dots : commas) > 1) return std::nullopt;
    if (!well_grouped(numeral.substr(0, end), first)) return std::nullopt;
    return Marks{.decimal = last, .thousands = first};
  }
  const char mark = dots > 0 ? '.' : ',';
  const bool grouped = well_grouped(numeral, mark);
  if (dots + commas > 1) {
    return grouped ? std::optional(Marks{.thousands = mark}) : std::nullopt;
  }
  return Marks{.decimal = mark, .could_group = grouped && mark != style.decimal_mark};
}

std::expected<ReadNumber, ParseFault> read_decimal(std::string_view text, NumberStyle style) {
  const auto is_numeral = [](char c) { return is_digit(c) || c == '.' || c == ','; };
  const auto numeral_end = std::find_if_not(text.begin(), text.end(), is_numeral);
  std::string numeral(text.begin(), numeral_end);
  std::size_t length = numeral.size();
  const std::optional<Marks> marks = sort_marks(numeral, style);
  if (!marks || std::none_of(numeral.begin(), numeral.end(), is_digit)) {
    return std::unexpected(ParseFault::not_a_number);
  }
  // "5." is a number being typed; "5," is a list.
  if (numeral.ends_with(',')) return std::unexpected(ParseFault::not_a_number);

  std::string exponent;
  const std::string_view rest = text.substr(length);
  if (rest.starts_with('e') || rest.starts_with('E')) {
    const std::size_t sign = rest.size() > 1 && (rest[1] == '-' || rest[1] == '+') ? 1 : 0;
    const std::size_t digits = count_digits(rest.substr(1 + sign));
    if (digits > 0) {
      exponent = "e" + std::string(sign == 1 && rest[1] == '-' ? "-" : "") +
                 std::string(rest.substr(1 + sign, digits));
      length += 1 + sign + digits;
    }
  }

  if (marks->thousands != 0) numeral = without(std::move(numeral), marks->thousands);
  ReadNumber read{.length = length};
  if (marks->could_group) {
    const auto grouped = to_double(without(numeral, marks->decimal) + exponent);
    if (!grouped) return std::unexpected(grouped.error());
    read.if_grouped = *grouped;
  }
  std::replace(numeral.begin(), numeral.end(), ',', '.');
  const auto value = to_double(numeral + exponent);
  if (!value) return std::unexpected(value.error());
  read.value = *value;
  return read;
}

// "3/4" or "1 1/2"; nothing where the text is no such thing.
std::optional<std::expected<ReadNumber, ParseFault>> read_fraction(std::string_view text) {
  std::string_view rest = text;
  double whole = 0;
  std::size_t digits = count_digits(rest);
  if (digits > 0 && digits < rest.size() && rest[digits] == ' ' &&
      count_digits(rest.substr(digits + 1)) > 0) {
    const auto read = to_double(rest.substr(0, digits));
    if (!read) return std::unexpected(read.error());
    whole = *read;
    rest.remove_prefix(digits + 1);
    digits = count_digits(rest);
  }
  if (digits == 0 || digits >= rest.size() || rest[digits] != '/') return std::nullopt;
  const std::size_t below = count_digits(rest.substr(digits + 1));
  if (below == 0) return std::nullopt;
  const auto numerator = to_double(rest.substr(0, digits));
  const auto denominator = to_double(rest.substr(digits + 1, below));
  if (!numerator || !denominator) return std::unexpected(ParseFault::out_of_range);
  if (*denominator == 0) return std::unexpected(ParseFault::not_a_number);
  rest.remove_prefix(digits + 1 + below);
  return ReadNumber{.value = whole + *numerator / *denominator,
                    .if_grouped = std::nullopt,
                    .as_fraction = true,
                    .length = text.size() - rest.size()};
}

}  // namespace

std::expected<ReadNumber, ParseFault> read_number(std::string_view plain, NumberStyle style,
                                                  bool fractions) {
  std::string_view text = plain;
  double sign = 1;
  if (text.starts_with('-') || text.starts_with('+')) {
    if (text[0] == '-') sign = -1;
    text.remove_prefix(1);
    if (text.starts_with(' ')) text.remove_prefix(1);
  }
  const std::size_t before = plain.size() - text.size();
  std::expected<ReadNumber, ParseFault> read = std::unexpected(ParseFault::not_a_number);
  const auto fraction = fractions ? read_fraction(text) : std::nullopt;
  read = fraction ? *fraction : read_decimal(text, style);
  if (!read) return read;
  read->value *= sign;
  if (read->if_grouped) *read->if_grouped *= sign;
  read->length += before;
  return read;
}

}  // namespace ullage::units
