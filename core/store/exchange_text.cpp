// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/store/exchange_text.h"

#include <fmt/format.h>

namespace ullage::store {

namespace {

std::optional<int> fixed_digits(std::string_view text) {
  int value = 0;
  for (const char c : text) {
    if (c < '0' || c > '9') return {};
    value = value * 10 + (c - '0');
  }
  return value;
}

}  // namespace

std::string date_text(cellar::Date day) {
  const std::chrono::year_month_day date(day);
  return fmt::format("{:04}-{:02}-{:02}", static_cast<int>(date.year()),
                     static_cast<unsigned>(date.month()), static_cast<unsigned>(date.day()));
}

std::string instant_text(cellar::Instant at) {
  const auto day = std::chrono::floor<std::chrono::days>(at);
  const std::chrono::hh_mm_ss time(at - day);
  return fmt::format("{}T{:02}:{:02}:{:02}Z", date_text(cellar::Date(day.time_since_epoch())),
                     time.hours().count(), time.minutes().count(), time.seconds().count());
}

std::optional<cellar::Date> date_from_text(std::string_view text) {
  if (text.size() != 10 || text[4] != '-' || text[7] != '-') return {};
  const auto year = fixed_digits(text.substr(0, 4));
  const auto month = fixed_digits(text.substr(5, 2));
  const auto day = fixed_digits(text.substr(8, 2));
  if (!year || !month || !day || *year < 1) return {};
  const std::chrono::year_month_day date{std::chrono::year(*year),
                                         std::chrono::month(static_cast<unsigned>(*month)),
                                         std::chrono::day(static_cast<unsigned>(*day))};
  if (!date.ok()) return {};
  return cellar::Date(date);
}

std::optional<cellar::Instant> instant_from_text(std::string_view text) {
  if (text.size() != 20 || text[10] != 'T' || text[13] != ':' || text[16] != ':' ||
      text[19] != 'Z') {
    return {};
  }
  const auto day = date_from_text(text.substr(0, 10));
  const auto hour = fixed_digits(text.substr(11, 2));
  const auto minute = fixed_digits(text.substr(14, 2));
  const auto second = fixed_digits(text.substr(17, 2));
  if (!day || !hour || !minute || !second) return {};
  if (*hour > 23 || *minute > 59 || *second > 59) return {};
  return cellar::Instant(day->time_since_epoch() + std::chrono::hours(*hour) +
                         std::chrono::minutes(*minute) + std::chrono::seconds(*second));
}

}  // namespace ullage::store
