// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/cellar/logger_cells.h"

#include <algorithm>
#include <charconv>
#include <cmath>

namespace ullage::cellar::logger {

namespace {

bool is_blank(char c) { return c == ' ' || c == '\t'; }
bool is_digit(char c) { return c >= '0' && c <= '9'; }

std::string_view without_blanks(std::string_view s) {
  while (!s.empty() && is_blank(s.front())) s.remove_prefix(1);
  while (!s.empty() && is_blank(s.back())) s.remove_suffix(1);
  return s;
}

std::string lower(std::string_view s) {
  std::string out(s);
  for (char& c : out) {
    if (c >= 'A' && c <= 'Z') c = static_cast<char>(c - 'A' + 'a');
  }
  return out;
}

void put_utf8(std::string& out, char32_t c) {
  if (c < 0x80) {
    out += static_cast<char>(c);
  } else if (c < 0x800) {
    out += static_cast<char>(0xC0 | (c >> 6));
    out += static_cast<char>(0x80 | (c & 0x3F));
  } else {
    out += static_cast<char>(0xE0 | (c >> 12));
    out += static_cast<char>(0x80 | ((c >> 6) & 0x3F));
    out += static_cast<char>(0x80 | (c & 0x3F));
  }
}

// Length of a valid UTF-8 sequence at `at`, 0 when there is none.
std::size_t utf8_length(std::string_view s, std::size_t at) {
  const auto byte = [&](std::size_t i) { return static_cast<unsigned char>(s[i]); };
  const unsigned char first = byte(at);
  if (first < 0x80) return 1;
  const std::size_t n = first >= 0xF0 && first < 0xF5 ? 4 : first >= 0xE0 ? 3 : 2;
  if (first < 0xC2 || first >= 0xF5 || at + n > s.size()) return 0;
  for (std::size_t i = 1; i < n; ++i) {
    if ((byte(at + i) & 0xC0) != 0x80) return 0;
  }
  const unsigned char second = byte(at + 1);
  if ((first == 0xE0 && second < 0xA0) || (first == 0xED && second >= 0xA0) ||
      (first == 0xF0 && second < 0x90) || (first == 0xF4 && second >= 0x90))
    return 0;
  return n;
}

bool is_utf8(std::string_view s) {
  for (std::size_t i = 0; i < s.size();) {
    const std::size_t n = utf8_length(s, i);
    if (n == 0) return false;
    i += n;
  }
  return true;
}

std::string from_utf16(std::string_view bytes, bool little) {
  std::string out;
  for (std::size_t i = 0; i + 1 < bytes.size(); i += 2) {
    const auto a = static_cast<unsigned char>(bytes[i]);
    const auto b = static_cast<unsigned char>(bytes[i + 1]);
    const char32_t c =
        little ? static_cast<char32_t>(b) << 8 | a : static_cast<char32_t>(a) << 8 | b;
    put_utf8(out, c >= 0xD800 && c < 0xE000 ? 0xFFFD : c);  // no logger writes beyond the plane
  }
  return out;
}

// Digits at the front, at most `most`; -1 when there are none or too many.
int take_number(std::string_view& s, std::size_t most) {
  std::size_t n = 0;
  int value = 0;
  while (n < s.size() && is_digit(s[n])) {
    if (n == most) return -1;
    value = value * 10 + (s[n] - '0');
    ++n;
  }
  if (n == 0) return -1;
  s.remove_prefix(n);
  return value;
}

bool take(std::string_view& s, char c) {
  if (s.empty() || s.front() != c) return false;
  s.remove_prefix(1);
  return true;
}

std::optional<DegreesOf> degrees_sign(std::string_view s) {
  std::string text = lower(without_blanks(s));
  for (const std::string_view sign : {"\xC2\xB0", "\xC2\xBA", "deg", "grad"}) {
    for (auto at = text.find(sign); at != std::string::npos; at = text.find(sign))
      text.erase(at, sign.size());
  }
  const std::string_view left = without_blanks(text);
  if (left == "c" || left == "celsius") return DegreesOf::celsius;
  if (left == "f" || left == "fahrenheit") return DegreesOf::fahrenheit;
  return std::nullopt;
}

// "Nov", "november", "Mär": 11, 11, 3; takes the whole word and a point after it.
int take_month(std::string_view& s) {
  std::size_t n = 0;
  const auto letter = [&](char c) {
    const auto u = static_cast<unsigned char>(c);
    return (c >= 'a' && c <= 'z') || (c >= 'A' && c <= 'Z') || u >= 0x80;
  };
  while (n < s.size() && letter(s[n])) ++n;
  const std::string word = lower(s.substr(0, n));
  constexpr std::array<std::string_view, 17> names{"jan",        "feb", "mar", "apr", "may", "jun",
                                                   "jul",        "aug", "sep", "oct", "nov", "dec",
                                                   "m\xC3\xA4r", "mrz", "mai", "okt", "dez"};
  constexpr std::array<int, 17> months{1, 2, 3, 4, 5, 6, 7, 8, 9, 10, 11, 12, 3, 3, 5, 10, 12};
  for (std::size_t i = 0; i < names.size(); ++i) {
    if (!word.starts_with(names[i]) || n > 10) continue;
    s.remove_prefix(n);
    take(s, '.');
    return months[i];
  }
  return -1;
}

void skip_between(std::string_view& s) {
  while (!s.empty() && (is_blank(s.front()) || s.front() == '-' || s.front() == '/' ||
                        s.front() == '.' || s.front() == ','))
    s.remove_prefix(1);
}

std::optional<CellDate> date_in_words(std::string_view s) {
  int month = take_month(s);
  const bool month_first = month > 0;
  if (month_first) skip_between(s);
  const int day = take_number(s, 2);
  if (day < 0) return std::nullopt;
  skip_between(s);
  if (!month_first) {
    month = take_month(s);
    skip_between(s);
  }
  const std::size_t before = s.size();
  const int year = take_number(s, 4);
  const std::size_t digits = before - s.size();
  if (month < 0 || year < 0 || (digits != 4 && digits != 2)) return std::nullopt;
  return CellDate{{digits == 2 ? 2000 + year : year, month, day}, true, s, {}};
}

}  // namespace

std::optional<std::string> as_utf8(std::string_view bytes) {
  if (bytes.starts_with("\xFF\xFE")) return from_utf16(bytes.substr(2), true);
  if (bytes.starts_with("\xFE\xFF")) return from_utf16(bytes.substr(2), false);
  if (bytes.starts_with("\xEF\xBB\xBF")) bytes.remove_prefix(3);
  std::size_t control = 0;
  for (const char c : bytes) {
    if (c == '\0') return std::nullopt;
    const auto u = static_cast<unsigned char>(c);
    if (u < 0x20 && c != '\n' && c != '\r' && c != '\t') ++control;
  }
  // A form feed or two is a printer's; more is no text.
  if (control > 8 && control > bytes.size() / 1000) return std::nullopt;
  if (is_utf8(bytes)) return std::string(bytes);
  std::string out;
  out.reserve(bytes.size() + bytes.size() / 8);
  for (const char c : bytes) put_utf8(out, static_cast<unsigned char>(c));
  return out;
}

std::string shown_beginning(std::string_view line) {
  constexpr std::size_t most = 60;
  std::string out;
  for (std::size_t i = 0; i < line.size();) {
    const std::size_t n = std::max<std::size_t>(utf8_length(line, i), 1);
    if (out.size() + n > most) return out + "…";
    const auto u = static_cast<unsigned char>(line[i]);
    if (n == 1 && (u < 0x20 || u == 0x7F || u >= 0x80)) {
      out += ' ';
    } else {
      out += line.substr(i, n);
    }
    i += n;
  }
  return out;
}

std::vector<std::string> cells_of(std::string_view line, char delimiter) {
  std::vector<std::string> out;
  std::size_t at = 0;
  while (true) {
    while (at < line.size() && is_blank(line[at]) && line[at] != delimiter) ++at;
    std::string cell;
    if (at < line.size() && line[at] == '"') {
      for (++at; at < line.size(); ++at) {
        if (line[at] != '"') {
          cell += line[at];
        } else if (at + 1 < line.size() && line[at + 1] == '"') {
          cell += '"';
          ++at;
        } else {
          ++at;
          break;
        }
      }
      while (at < line.size() && line[at] != delimiter) ++at;
      out.emplace_back(without_blanks(cell));
    } else {
      const std::size_t end = std::min(line.find(delimiter, at), line.size());
      out.emplace_back(without_blanks(line.substr(at, end - at)));
      at = end;
    }
    if (at >= line.size()) return out;
    ++at;  // the delimiter
  }
}

std::optional<CellNumber> number_in(std::string_view cell, bool decimal_comma) {
  cell = without_blanks(cell);
  std::string number;
  std::size_t at = 0;
  if (cell.starts_with("\xE2\x88\x92")) {  // a typographic minus
    number = "-";
    at = 3;
  }
  if (at < cell.size() && cell[at] == '+') ++at;
  const char mark = decimal_comma ? ',' : '.';
  for (; at < cell.size(); ++at) {
    const char c = cell[at];
    if (is_digit(c) || (c == '-' && number.empty())) {
      number += c;
    } else if (c == mark && number.find('.') == std::string::npos) {
      number += '.';
    } else {
      break;
    }
    if (number.size() > 24) return std::nullopt;
  }
  CellNumber out;
  const auto [end, error] =
      std::from_chars(number.data(), number.data() + number.size(), out.value);
  if (error != std::errc{} || end != number.data() + number.size() || !std::isfinite(out.value))
    return std::nullopt;
  const std::string_view rest = without_blanks(cell.substr(at));
  if (rest.empty()) return out;
  out.degrees = degrees_sign(rest);
  return out.degrees ? std::optional(out) : std::nullopt;
}

std::optional<CellDate> date_in(std::string_view cell) {
  std::string_view s = without_blanks(cell);
  CellDate out;
  const std::string_view whole = s;
  if (auto in_words = date_in_words(s)) return in_words;
  out.parts[0] = take_number(s, 4);
  out.year_first = out.parts[0] >= 0 && whole.size() - s.size() == 4;
  if (out.parts[0] < 0 || s.empty()) return std::nullopt;
  const char between = s.front();
  if (between != '-' && between != '/' && between != '.') return std::nullopt;
  s.remove_prefix(1);
  out.parts[1] = take_number(s, 2);
  if (out.parts[1] < 0 || !take(s, between)) return std::nullopt;
  const std::size_t before = s.size();
  out.parts[2] = take_number(s, out.year_first ? 2 : 4);
  const std::size_t digits = before - s.size();
  if (out.parts[2] < 0 || (!out.year_first && digits != 2 && digits != 4)) return std::nullopt;
  if (!out.year_first && digits == 2) out.parts[2] += 2000;
  out.rest = s;
  return out;
}

std::optional<CellDate> counted_date_in(std::string_view cell) {
  using namespace std::chrono;
  constexpr std::int64_t from = 946'684'800, to = 4'102'444'800;  // 2000 to 2100
  const std::string_view s = without_blanks(cell);
  std::int64_t count = 0;
  const auto [end, error] = std::from_chars(s.data(), s.data() + s.size(), count);
  if (error != std::errc{}) return std::nullopt;
  const std::string_view fraction(end, static_cast<std::size_t>(s.data() + s.size() - end));
  if (!fraction.empty() &&
      (fraction.front() != '.' || !std::all_of(fraction.begin() + 1, fraction.end(), is_digit)))
    return std::nullopt;
  if (count > to) count /= 1000;
  if (count < from || count > to) return std::nullopt;
  const local_seconds at{seconds(count)};
  const local_days midnight = floor<days>(at);
  const year_month_day day(midnight);
  CellDate out;
  out.parts = {static_cast<int>(day.year()), static_cast<int>(static_cast<unsigned>(day.month())),
               static_cast<int>(static_cast<unsigned>(day.day()))};
  out.year_first = true;
  out.clock = CellClock{at - midnight, UtcOffset(0)};
  return out;
}

std::optional<std::chrono::local_days> day_of(const CellDate& d, DateOrder order) {
  const bool year_first = d.year_first;
  const int y = year_first ? d.parts[0] : d.parts[2];
  int m = d.parts[1], day = year_first ? d.parts[2] : d.parts[0];
  if (!year_first && order == DateOrder::month_day_year) std::swap(m, day);
  using namespace std::chrono;
  const year_month_day ymd{year(y), month(static_cast<unsigned>(m)),
                           std::chrono::day(static_cast<unsigned>(day))};
  if (!ymd.ok() || y < 1990 || y > 2200) return std::nullopt;
  return local_days(ymd);
}

std::optional<CellClock> clock_in(std::string_view text) {
  std::string_view s = without_blanks(text);
  CellClock out;
  if (!s.empty() && (s.front() == 'T' || s.front() == ',')) s.remove_prefix(1);
  s = without_blanks(s);
  if (s.empty()) return out;
  int h = take_number(s, 2), m = 0, sec = 0;
  if (h < 0 || !take(s, ':')) return std::nullopt;
  m = take_number(s, 2);
  if (m < 0) return std::nullopt;
  if (take(s, ':')) sec = take_number(s, 2);
  if (sec < 0) return std::nullopt;
  if (!s.empty() && (s.front() == '.' || s.front() == ',')) {  // parts of a second
    s.remove_prefix(1);
    while (!s.empty() && is_digit(s.front())) s.remove_prefix(1);
  }
  s = without_blanks(s);
  const std::string half = lower(s.substr(0, 2));
  if (half == "am" || half == "pm") {
    if (h < 1 || h > 12) return std::nullopt;
    h = h % 12 + (half == "pm" ? 12 : 0);
    s = without_blanks(s.substr(2));
  }
  if (h > 23 || m > 59 || sec > 59) return std::nullopt;
  out.since_midnight = std::chrono::hours(h) + std::chrono::minutes(m) + std::chrono::seconds(sec);
  if (s.empty()) return out;
  if (s == "Z" || s == "z" || s == "UTC") {
    out.offset = UtcOffset(0);
    return out;
  }
  const int sign = s.front() == '-' ? -1 : s.front() == '+' ? 1 : 0;
  if (sign == 0) return std::nullopt;
  s.remove_prefix(1);
  const int oh = take_number(s, 2);
  int om = 0;
  take(s, ':');
  if (!s.empty()) om = take_number(s, 2);
  if (oh < 0 || oh > 14 || om < 0 || om > 59 || !s.empty()) return std::nullopt;
  out.offset = UtcOffset(sign * (oh * 60 + om));
  return out;
}

bool speaks_of_temperature(std::string_view heading) {
  const std::string h = lower(heading);
  return h.find("temp") != std::string::npos || h.find("\xC2\xB0") != std::string::npos ||
         h.find("celsius") != std::string::npos || h.find("fahrenheit") != std::string::npos;
}

std::optional<DegreesOf> degrees_in_heading(std::string_view heading) {
  const std::string h = lower(heading);
  if (h.find("fahrenheit") != std::string::npos) return DegreesOf::fahrenheit;
  if (h.find("celsius") != std::string::npos) return DegreesOf::celsius;
  // The last word of it, without brackets.
  std::string last;
  for (const char c : h) {
    if (c == ' ' || c == '(' || c == '[' || c == '_' || c == ',' || c == '/') {
      last.clear();
    } else if (c != ')' && c != ']') {
      last += c;
    }
  }
  return degrees_sign(last);
}

}  // namespace ullage::cellar::logger
