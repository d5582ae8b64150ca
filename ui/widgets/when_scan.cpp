// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/widgets/when_scan.h"

#include <array>
#include <cctype>
#include <charconv>

namespace ullage::ui {

namespace {

bool is_digit(char c) { return c >= '0' && c <= '9'; }
bool is_letter(char c) { return (c >= 'a' && c <= 'z') || (c >= 'A' && c <= 'Z'); }

// Months and weekdays go by three letters or more of their name: "Sept", "Thurs".
template <std::size_t N>
std::optional<unsigned> by_name(const std::string& typed,
                                const std::array<std::string_view, N>& names) {
  if (typed.size() < 3) return std::nullopt;
  for (unsigned i = 0; i < N; ++i) {
    if (names.at(i).starts_with(typed)) return i;
  }
  return std::nullopt;
}

constexpr std::array<std::string_view, 12> month_names = {
    "january", "february", "march",     "april",   "may",      "june",
    "july",    "august",   "september", "october", "november", "december"};
constexpr std::array<std::string_view, 7> weekday_names = {
    "sunday", "monday", "tuesday", "wednesday", "thursday", "friday", "saturday"};

std::optional<std::chrono::seconds> span_unit(std::string_view word) {
  using namespace std::chrono;
  if (word == "m" || word == "min" || word == "mins" || word == "minute" || word == "minutes")
    return minutes(1);
  if (word == "h" || word == "hr" || word == "hrs" || word == "hour" || word == "hours")
    return hours(1);
  if (word == "d" || word == "day" || word == "days") return days(1);
  if (word == "w" || word == "week" || word == "weeks") return weeks(1);
  return std::nullopt;
}

}  // namespace

std::vector<WhenToken> scan_when(std::string_view text) {
  std::vector<WhenToken> tokens;
  for (std::size_t i = 0; i < text.size();) {
    const char c = text[i];
    const auto run = [&](bool (*belongs)(char)) {
      std::size_t end = i;
      while (end < text.size() && belongs(text[end])) ++end;
      std::string word(text.substr(i, end - i));
      for (char& letter : word) letter = static_cast<char>(std::tolower(letter));
      i = end;
      return word;
    };
    if (c == ' ' || c == '\t' || c == ',') {
      ++i;
    } else if (is_digit(c)) {
      tokens.push_back({WhenToken::Kind::number, run(is_digit)});
    } else if (is_letter(c)) {
      tokens.push_back({WhenToken::Kind::word, run(is_letter)});
    } else {
      tokens.push_back({WhenToken::Kind::mark, std::string(1, c)});
      ++i;
    }
  }
  return tokens;
}

const WhenToken* WhenScanner::peek(std::size_t ahead) const {
  return next_ + ahead < tokens_.size() ? &tokens_[next_ + ahead] : nullptr;
}

bool WhenScanner::word(std::string_view expected) {
  const WhenToken* token = peek();
  if (!token || token->kind != WhenToken::Kind::word || token->text != expected) return false;
  ++next_;
  return true;
}

bool WhenScanner::peek_mark(char expected, std::size_t ahead) const {
  const WhenToken* token = peek(ahead);
  return token && token->kind == WhenToken::Kind::mark && token->text.front() == expected;
}

bool WhenScanner::mark(char expected) {
  if (!peek_mark(expected, 0)) return false;
  ++next_;
  return true;
}

std::optional<int> WhenScanner::peek_number(std::size_t ahead) const {
  const WhenToken* token = peek(ahead);
  constexpr std::size_t most_digits = 6;
  if (!token || token->kind != WhenToken::Kind::number || token->text.size() > most_digits)
    return std::nullopt;
  int value = 0;
  std::from_chars(token->text.data(), token->text.data() + token->text.size(), value);
  return value;
}

std::optional<int> WhenScanner::number() {
  const auto value = peek_number();
  if (value) ++next_;
  return value;
}

std::optional<std::chrono::month> WhenScanner::month() {
  const WhenToken* token = peek();
  if (!token || token->kind != WhenToken::Kind::word) return std::nullopt;
  const auto index = by_name(token->text, month_names);
  if (!index) return std::nullopt;
  ++next_;
  mark('.');
  return std::chrono::month(*index + 1);
}

std::optional<std::chrono::weekday> WhenScanner::weekday() {
  const WhenToken* token = peek();
  if (!token || token->kind != WhenToken::Kind::word) return std::nullopt;
  const auto index = by_name(token->text, weekday_names);
  if (!index) return std::nullopt;
  ++next_;
  mark('.');
  return std::chrono::weekday(*index);
}

std::optional<std::chrono::seconds> WhenScanner::span() {
  std::chrono::seconds total{0};
  bool any = false;
  while (const auto count = peek_number()) {
    const WhenToken* unit = peek(1);
    const auto one =
        unit && unit->kind == WhenToken::Kind::word ? span_unit(unit->text) : std::nullopt;
    if (!one) break;
    total += *count * *one;
    next_ += 2;
    any = true;
  }
  return any ? std::optional(total) : std::nullopt;
}

std::optional<std::chrono::seconds> WhenScanner::clock_time() {
  using namespace std::chrono;
  const std::size_t start = next_;
  const auto hour = number();
  if (!hour) return std::nullopt;
  int minute = 0;
  int second = 0;
  const bool has_minutes = mark(':');
  if (has_minutes) {
    minute = number().value_or(-1);
    if (mark(':')) second = number().value_or(-1);
  }
  int h = *hour;
  const bool pm = word("pm");
  const bool am = !pm && word("am");
  const bool twelve_hour = am || pm;
  if (twelve_hour && (h < 1 || h > 12)) h = -1;
  if (twelve_hour && h >= 0) h = h % 12 + (pm ? 12 : 0);
  const bool fits = h >= 0 && h < 24 && minute >= 0 && minute < 60 && second >= 0 && second < 60;
  if (!fits || !(has_minutes || twelve_hour)) {
    next_ = start;
    return std::nullopt;
  }
  return hours(h) + minutes(minute) + seconds(second);
}

std::optional<std::chrono::seconds> WhenScanner::time_of_day() {
  using namespace std::chrono;
  const std::size_t start = next_;
  word("at");
  if (word("morning")) return hours(8);
  if (word("noon") || word("midday")) return hours(12);
  if (word("afternoon")) return hours(15);
  if (word("evening")) return hours(20);
  if (word("night")) return hours(22);
  if (auto time = clock_time()) return time;
  next_ = start;
  return std::nullopt;
}

}  // namespace ullage::ui
