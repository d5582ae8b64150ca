// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/widgets/when_text.h"

#include <fmt/format.h>

#include <array>

#include "ui/widgets/when_scan.h"

namespace ullage::ui {

namespace {

using cellar::Date;
using cellar::Instant;
using cellar::LocalTime;
using std::chrono::days;
using std::chrono::seconds;
using std::chrono::year;
using std::chrono::year_month_day;

constexpr seconds noon = std::chrono::hours(12);

// A day as typed. How freely it may be moved back: a weekday by a week and a
// date without a year by a year, when it would lie ahead otherwise.
struct TypedDay {
  Date day{};
  enum class Moves { fixed, by_day, by_week, by_year } moves = Moves::fixed;
  std::optional<seconds> usual_time;  // "last night"
};

WhenError wrong(WhenFault fault, std::string_view typed, std::string hint = {}) {
  return {fault, std::string(typed), std::move(hint)};
}

std::expected<Date, WhenFault> make_day(int y, std::chrono::month m, int d) {
  const year_month_day day(year(y), m, std::chrono::day(static_cast<unsigned>(d)));
  if (d < 1 || d > 31 || !day.ok()) return std::unexpected(WhenFault::no_such_day);
  return Date(std::chrono::local_days(day));
}

std::expected<TypedDay, WhenFault> fixed_day(std::expected<Date, WhenFault> day) {
  if (!day) return std::unexpected(day.error());
  return TypedDay{*day, TypedDay::Moves::fixed, {}};
}

int year_of(Date day) { return static_cast<int>(year_month_day(day).year()); }

// A leap day without a year is looked for in the nearest year that has one.
std::expected<TypedDay, WhenFault> day_without_year(std::chrono::month m, int d, Date today) {
  for (int y = year_of(today); y > year_of(today) - 8; --y) {
    if (const auto day = make_day(y, m, d)) return TypedDay{*day, TypedDay::Moves::by_year, {}};
  }
  return std::unexpected(WhenFault::no_such_day);
}

// A year: four digits that are not the hour of a time.
std::optional<int> take_year(WhenScanner& scan) {
  const auto y = scan.peek_number();
  if (!y || *y < 1900 || *y > 9999 || scan.peek_mark(':', 1)) return std::nullopt;
  return scan.number();
}

std::expected<TypedDay, WhenFault> take_month_and_day(WhenScanner& scan, std::chrono::month m,
                                                      int d, Date today) {
  if (const auto y = take_year(scan)) {
    return fixed_day(make_day(*y, m, d));
  }
  return day_without_year(m, d, today);
}

// ISO: 2026-11-24, with T or a blank before the time.
std::optional<std::expected<TypedDay, WhenFault>> take_iso(WhenScanner& scan) {
  if (!scan.peek_mark('-', 1) || !scan.peek_mark('-', 3)) return std::nullopt;
  const auto y = scan.peek_number();
  const auto m = scan.peek_number(2);
  const auto d = scan.peek_number(4);
  if (!y || !m || !d || *y < 1900) return std::nullopt;
  for (int i = 0; i < 2; ++i) {
    scan.number();
    scan.mark('-');
  }
  scan.number();
  scan.word("t");
  if (*m < 1 || *m > 12) return std::unexpected(WhenFault::no_such_day);
  return fixed_day(make_day(*y, std::chrono::month(static_cast<unsigned>(*m)), *d));
}

// nullopt: no day stands here.
std::optional<std::expected<TypedDay, WhenFault>> take_day(WhenScanner& scan, Date today) {
  using Moves = TypedDay::Moves;
  if (scan.word("today") || scan.word("this")) return TypedDay{today, Moves::fixed, {}};
  if (scan.word("yesterday")) return TypedDay{today - days(1), Moves::fixed, {}};
  if (scan.word("tomorrow")) return TypedDay{today + days(1), Moves::fixed, {}};
  const std::size_t start = scan.position();
  const bool last = scan.word("last");
  if (last && scan.word("night")) {
    return TypedDay{today - days(1), Moves::fixed, std::chrono::hours(22)};
  }
  if (const auto weekday = scan.weekday()) {
    const days back = std::chrono::weekday(today) - *weekday;
    return TypedDay{today - back, Moves::by_week, {}};
  }
  scan.back_to(start);
  if (auto iso = take_iso(scan)) return iso;
  if (const auto m = scan.month()) {
    const auto d = scan.number();
    if (!d) return std::unexpected(WhenFault::not_understood);
    return take_month_and_day(scan, *m, *d, today);
  }
  if (scan.peek_number() && (scan.peek_mark('/', 1) || scan.peek_mark('.', 1))) {
    return std::unexpected(WhenFault::ambiguous_day);
  }
  if (const auto d = scan.peek_number(); d && !scan.peek_mark(':', 1)) {
    scan.number();
    for (const char* ending : {"st", "nd", "rd", "th"}) {
      if (scan.word(ending)) break;
    }
    if (const auto m = scan.month()) return take_month_and_day(scan, *m, *d, today);
    scan.back_to(start);
  }
  return std::nullopt;
}

Date moved_back(Date day, TypedDay::Moves moves) {
  switch (moves) {
    case TypedDay::Moves::by_day:
      return day - days(1);
    case TypedDay::Moves::by_week:
      return day - days(7);
    case TypedDay::Moves::by_year: {
      const year_month_day old(day);
      for (int back = 1; back <= 8; ++back) {
        const year_month_day earlier(old.year() - std::chrono::years(back), old.month(), old.day());
        if (earlier.ok()) return Date(std::chrono::local_days(earlier));
      }
      return day;
    }
    case TypedDay::Moves::fixed:
      break;
  }
  return day;
}

std::string clock_text(LocalTime t) {
  const std::chrono::hh_mm_ss time(t - std::chrono::floor<days>(t));
  return fmt::format("{:02}:{:02}", time.hours().count(), time.minutes().count());
}

// The instant of a wall-clock time, or the fault that names the end of the gap.
std::expected<Instant, WhenError> on_calendar(LocalTime local,
                                              const cellar::LocalCalendar& calendar,
                                              std::string_view typed) {
  if (const auto instant = calendar.to_instant(local)) return *instant;
  LocalTime next = std::chrono::floor<std::chrono::minutes>(local);
  constexpr int longest_gap_minutes = 24 * 60;
  for (int i = 0; i < longest_gap_minutes && !calendar.to_instant(next); ++i) {
    next += std::chrono::minutes(1);
  }
  return std::unexpected(wrong(WhenFault::skipped_hour, typed, clock_text(next)));
}

std::expected<Instant, WhenError> resolve(const TypedDay& day, std::optional<seconds> time,
                                          const cellar::LocalCalendar& calendar, Instant now,
                                          std::string_view typed) {
  const Date today = calendar.date_of(now);
  const auto usual = day.usual_time.value_or(noon);
  if (!time && !day.usual_time && day.day == today) return now;
  Date on = day.day;
  auto at = on_calendar(LocalTime(on.time_since_epoch()) + time.value_or(usual), calendar, typed);
  if (at && *at > now && day.moves != TypedDay::Moves::fixed) {
    on = moved_back(on, day.moves);
    at = on_calendar(LocalTime(on.time_since_epoch()) + time.value_or(usual), calendar, typed);
  }
  if (at && *at > now) return std::unexpected(wrong(WhenFault::in_future, typed));
  return at;
}

std::optional<std::expected<Instant, WhenError>> relative(WhenScanner& scan, Instant now,
                                                          std::string_view typed) {
  const std::size_t start = scan.position();
  const bool minus = scan.mark('-');
  const auto span = scan.span();
  const bool ago = scan.word("ago");
  if (!span || !(minus || ago) || !scan.at_end()) {
    scan.back_to(start);
    return std::nullopt;
  }
  constexpr seconds longest = days(366 * 200);
  if (*span > longest) return std::unexpected(wrong(WhenFault::not_understood, typed));
  return now - *span;
}

std::string plain_minus(std::string_view typed) {
  std::string text(typed);
  constexpr std::string_view true_minus = "\u2212";
  for (auto at = text.find(true_minus); at != std::string::npos; at = text.find(true_minus)) {
    text.replace(at, true_minus.size(), "-");
  }
  return text;
}

}  // namespace

std::expected<Instant, WhenError> read_when(std::string_view typed,
                                            const cellar::LocalCalendar& calendar, Instant now) {
  WhenScanner scan(scan_when(plain_minus(typed)));
  if (scan.at_end()) return std::unexpected(wrong(WhenFault::empty, typed));
  if (scan.word("now") && scan.at_end()) return now;
  if (const auto past = relative(scan, now, typed)) return *past;

  const Date today = calendar.date_of(now);
  auto time = scan.time_of_day();  // "22:00 yesterday" is as good as the other way round
  const auto day = take_day(scan, today);
  if (day && !*day) return std::unexpected(wrong(day->error(), typed));
  if (!time) time = scan.time_of_day();
  const bool utc = scan.word("z") || scan.word("utc");
  if (!scan.at_end() || (!day && !time)) {
    return std::unexpected(wrong(WhenFault::not_understood, typed));
  }
  if (utc) {
    if (!day || !time) return std::unexpected(wrong(WhenFault::not_understood, typed));
    const Instant at{(*day)->day.time_since_epoch() + *time};
    if (at > now) return std::unexpected(wrong(WhenFault::in_future, typed));
    return at;
  }
  const TypedDay on = day ? **day : TypedDay{today, TypedDay::Moves::by_day, {}};
  return resolve(on, time, calendar, now, typed);
}

std::expected<Date, WhenError> read_date(std::string_view typed, Date today) {
  WhenScanner scan(scan_when(typed));
  if (scan.at_end()) return std::unexpected(wrong(WhenFault::empty, typed));
  const bool ahead = scan.word("in");
  if (const auto span = scan.span(); span && scan.at_end()) {
    const days whole = std::chrono::floor<days>(*span);
    return ahead ? today + whole : today - whole;
  }
  const auto day = take_day(scan, today);
  if (day && !*day) return std::unexpected(wrong(day->error(), typed));
  if (ahead || !day || !scan.at_end()) {
    return std::unexpected(wrong(WhenFault::not_understood, typed));
  }
  TypedDay on = **day;
  if (on.moves == TypedDay::Moves::by_week && on.day != today) on.day += days(7);
  if (on.moves == TypedDay::Moves::by_year) {
    constexpr days half_a_year(183);
    const year_month_day chosen(on.day);
    const year_month_day next(chosen.year() + std::chrono::years(1), chosen.month(), chosen.day());
    if (today - on.day > half_a_year && next.ok()) on.day = Date(std::chrono::local_days(next));
    if (on.day - today > half_a_year) on.day = moved_back(on.day, on.moves);
  }
  return on.day;
}

std::string write_date(Date day) {
  static constexpr std::array<const char*, 12> months = {"Jan", "Feb", "Mar", "Apr", "May", "Jun",
                                                         "Jul", "Aug", "Sep", "Oct", "Nov", "Dec"};
  const year_month_day parts(day);
  return fmt::format("{} {} {}", static_cast<unsigned>(parts.day()),
                     months.at(static_cast<unsigned>(parts.month()) - 1),
                     static_cast<int>(parts.year()));
}

std::string write_when(Instant at, const cellar::LocalCalendar& calendar) {
  return write_date(calendar.date_of(at)) + " " + clock_text(calendar.to_local(at));
}

std::string say_day_of(Date day) {
  static constexpr std::array<const char*, 7> names = {"Sun", "Mon", "Tue", "Wed",
                                                       "Thu", "Fri", "Sat"};
  return std::string(names.at(std::chrono::weekday(day).c_encoding())) + " " + write_date(day);
}

std::string say_when(Instant at, const cellar::LocalCalendar& calendar) {
  return say_day_of(calendar.date_of(at)) + ", " + clock_text(calendar.to_local(at));
}

std::string sentence(const WhenError& error) {
  switch (error.fault) {
    case WhenFault::empty:
      return "Fill this in: “now”, “22:00” or “24 Nov 18:00”, say.";
    case WhenFault::not_understood:
      return fmt::format(
          "“{}” is not understood. Type it like “yesterday 22:00” or “24 Nov 18:00”.", error.typed);
    case WhenFault::no_such_day:
      return fmt::format("There is no such day as “{}”.", error.typed);
    case WhenFault::ambiguous_day:
      return "Day first or month first differs by country. Write the month in letters: “3 Apr”.";
    case WhenFault::skipped_hour:
      return fmt::format("That hour was skipped when the clocks went forward. Type {} or later.",
                         error.hint);
    case WhenFault::in_future:
      return "That lies ahead. Only what has happened is logged.";
  }
  return {};
}

}  // namespace ullage::ui
