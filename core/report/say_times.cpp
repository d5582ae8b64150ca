// SPDX-License-Identifier: GPL-3.0-or-later
//
// Times against the reader's now, on the cellar's calendar. Days are calendar
// days, so "yesterday" is right in the week the clocks change too.
#include <fmt/format.h>

#include <array>
#include <chrono>

#include "core/report/say.h"

namespace ullage::report {

namespace {

using cellar::Date;
using cellar::Instant;

constexpr std::array month_names = {"Jan", "Feb", "Mar", "Apr", "May", "Jun",
                                    "Jul", "Aug", "Sep", "Oct", "Nov", "Dec"};
constexpr std::array day_names = {"Sun", "Mon", "Tue", "Wed", "Thu", "Fri", "Sat"};

struct Days {
  std::chrono::year_month_day date;
  const char* weekday;
  int away;  // from today: -1 is yesterday
  bool this_year;
};

Days days_of(Date date, const Speaker& s) {
  const Date today = s.calendar->date_of(s.now);
  const std::chrono::year_month_day ymd{date};
  return {ymd, day_names[std::chrono::weekday(date).c_encoding()],
          static_cast<int>((date - today).count()),
          ymd.year() == std::chrono::year_month_day{today}.year()};
}

std::string day_and_month(const Days& d) {
  const std::string text = fmt::format("{} {}", static_cast<unsigned>(d.date.day()),
                                       month_names[static_cast<unsigned>(d.date.month()) - 1]);
  return d.this_year ? text : fmt::format("{} {}", text, static_cast<int>(d.date.year()));
}

std::string hour_of(Instant t, const Speaker& s) {
  const auto local = s.calendar->to_local(t);
  const std::chrono::hh_mm_ss clock(local - std::chrono::floor<std::chrono::days>(local));
  return fmt::format("{:02}:{:02}", clock.hours().count(), clock.minutes().count());
}

std::string say_day_of(const Days& d) {
  if (d.away == 0) return "today";
  if (d.away == -1) return "yesterday";
  if (d.away == 1) return "tomorrow";
  if (d.away < 0 && d.away > -7) return d.weekday;
  if (d.away > 0 && d.away < 7) return fmt::format("{} {}", d.weekday, day_and_month(d));
  return day_and_month(d);
}

}  // namespace

std::string say_time(Instant t, const Speaker& s) {
  const Days d = days_of(s.calendar->date_of(t), s);
  const bool near = d.away > 1 && d.away < 7;
  return fmt::format("{} {}", near ? std::string(d.weekday) : say_day_of(d), hour_of(t, s));
}

std::string say_day(Instant t, const Speaker& s) {
  return say_day_of(days_of(s.calendar->date_of(t), s));
}

std::string say_date(Date date, const Speaker& s) { return day_and_month(days_of(date, s)); }

std::string say_age(Instant t, const Speaker& s) {
  using namespace std::chrono_literals;
  const auto age = s.now - t;
  if (age < 0s) return say_time(t, s);
  if (age < 2min) return "just now";
  if (age < 1h) return fmt::format("{} min ago", age / 1min);
  if (age < 24h) return fmt::format("{} h ago", age / 1h);
  return fmt::format("{} d ago", age / 24h);
}

std::string say_clock(Instant t, const Speaker& s) {
  const std::chrono::year_month_day d{s.calendar->date_of(t)};
  return fmt::format("{:04}-{:02}-{:02} {}", static_cast<int>(d.year()),
                     static_cast<unsigned>(d.month()), static_cast<unsigned>(d.day()),
                     hour_of(t, s));
}

}  // namespace ullage::report
