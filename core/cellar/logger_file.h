// SPDX-License-Identifier: GPL-3.0-or-later
//
// The text file that a temperature logger writes: lines of a time and a
// temperature, in whatever delimiter, decimal mark, unit and order of columns
// its maker chose. What was found out is told, and may be told otherwise, before
// anything is taken over. Pure: bytes in, readings out; it knows no journal.
//
// Takes UTF-8, UTF-16 with its mark, and single-byte text (whatever is not valid
// UTF-8). Nothing of the file is trusted: its size, the length of its lines and
// their number are bounded, a line that can't be read is listed by its number,
// and binary content is refused.
#pragma once

#include <cstddef>
#include <expected>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "core/cellar/time.h"
#include "core/units/quantities.h"

namespace ullage::cellar {

enum class DegreesOf { celsius, fahrenheit };
enum class DateOrder { year_month_day, day_month_year, month_day_year };

// How the file is laid out: found out, or told by a person. Columns count from 0.
struct LoggerLayout {
  char delimiter = ',';
  bool decimal_comma = false;
  std::size_t time_column = 0;
  std::optional<std::size_t> clock_column;  // where the hour stands in a column of its own
  bool counted_seconds = false;             // times are seconds since 1970, no dates
  std::size_t temperature_column = 1;
  DegreesOf degrees = DegreesOf::celsius;
  bool degrees_stated = false;  // by the file; else guessed from the values
  DateOrder order = DateOrder::year_month_day;
  bool order_certain = true;  // false: no date in the file decides between day and month
  std::optional<std::size_t> heading_line;  // from 1
  friend bool operator==(const LoggerLayout&, const LoggerLayout&) = default;
};

// What a person says about it; the rest is found out.
struct LoggerChoices {
  std::optional<char> delimiter;
  std::optional<bool> decimal_comma;
  std::optional<std::size_t> time_column;
  std::optional<std::size_t> temperature_column;
  struct Clock {
    std::optional<std::size_t> column;  // none: the hour stands with the date
  };
  std::optional<Clock> clock;
  std::optional<DegreesOf> degrees;
  std::optional<DateOrder> order;
  DateOrder order_if_uncertain = DateOrder::day_month_year;
};

struct LoggerReading {
  LocalTime local{};                // as written
  std::optional<UtcOffset> offset;  // where the file states one
  units::Temperature temperature = units::celsius(0);
  std::size_t line = 0;  // from 1
};

enum class BadLineReason {
  too_few_columns,
  no_time,
  no_temperature,
  impossible_temperature,  // outside -60 to 120 C
  too_long
};
struct BadLine {
  std::size_t line = 0;
  BadLineReason reason = BadLineReason::no_time;
  std::string text;  // its beginning, as valid UTF-8 without control characters
};

struct LoggerFile {
  LoggerLayout layout;
  std::vector<std::string> columns;     // their headings, or "column 1" ...
  std::vector<LoggerReading> readings;  // in the order of the file
  std::vector<BadLine> bad;             // the first of them
  std::size_t bad_lines = 0;            // all
  std::size_t lines = 0;
};

enum class LoggerFault {
  empty,
  too_large,
  not_text,
  too_many_lines,
  no_columns,  // no delimiter splits its lines alike
  no_time_column,
  no_temperature_column,
  no_such_column  // a choice names a column that is not there
};

inline constexpr std::size_t logger_file_limit = 32u << 20;
inline constexpr std::size_t logger_line_limit = 4096;
inline constexpr std::size_t logger_lines_limit = 1'000'000;
inline constexpr std::size_t bad_lines_listed = 100;

[[nodiscard]] std::expected<LoggerFile, LoggerFault> read_logger_file(
    std::string_view bytes, const LoggerChoices& choices = {});

// What there is to choose from where the layout could not be found out: the columns
// of the widest line, by the delimiter told, else by the one that gives most of them.
struct LoggerColumns {
  char delimiter = ',';
  std::vector<std::string> names;  // as that line has them, "column 2" for an empty one
};
[[nodiscard]] std::optional<LoggerColumns> logger_columns(std::string_view bytes,
                                                          std::optional<char> delimiter = {});

// --- what of it is worth keeping

struct TimedTemperature {
  Instant at{};
  units::Temperature temperature = units::celsius(0);
};
// In order of time, each moment once; local times by the calendar (those of the
// hour that spring skips are left out and counted in `skipped`).
[[nodiscard]] std::vector<TimedTemperature> on_calendar(const std::vector<LoggerReading>&,
                                                        const LocalCalendar&,
                                                        std::size_t* skipped = nullptr);
// The first, the last, and enough between that the line through what is kept
// passes within `step` of every reading; none further apart than a day. Where
// more than `most` remain the step is widened until they fit.
struct Thinned {
  std::vector<TimedTemperature> kept;
  units::TemperatureDifference step = units::kelvin_difference(0);
};
[[nodiscard]] Thinned thinned(const std::vector<TimedTemperature>&,
                              units::TemperatureDifference step = units::kelvin_difference(0.3),
                              std::size_t most = 1000);

}  // namespace ullage::cellar
