// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/cellar/logger_file.h"

#include <algorithm>
#include <cmath>
#include <map>

#include "core/cellar/logger_cells.h"

namespace ullage::cellar {

namespace {

using logger::CellDate;

constexpr std::size_t looked_at = 200;  // lines from which the layout is found out
constexpr double lowest_celsius = -60, highest_celsius = 120;
constexpr double fahrenheit_from = 32;  // a median above it in a cellar is in °F

struct TextLine {
  std::string_view text;
  std::size_t number = 0;
};

std::vector<TextLine> lines_of(std::string_view text, std::size_t& count) {
  std::vector<TextLine> out;
  count = 0;
  for (std::size_t at = 0; at < text.size();) {
    std::size_t end = text.find('\n', at);
    if (end == std::string_view::npos) end = text.size();
    std::string_view line = text.substr(at, end - at);
    while (!line.empty() && line.back() == '\r') line.remove_suffix(1);
    ++count;
    const bool blank = line.find_first_not_of(" \t\r") == std::string_view::npos;
    if (!blank) out.push_back({line, count});
    at = end + 1;
  }
  return out;
}

// The part of the lines from which the layout is found out: some from everywhere,
// since the first day of a file may say nothing about day and month.
std::vector<TextLine> sample(const std::vector<TextLine>& lines) {
  if (lines.size() <= looked_at) return lines;
  std::vector<TextLine> out;
  out.reserve(looked_at);
  for (std::size_t i = 0; i < looked_at; ++i) out.push_back(lines[i * lines.size() / looked_at]);
  return out;
}

std::optional<CellDate> date_as(const std::string& cell, bool counted) {
  return counted ? logger::counted_date_in(cell) : logger::date_in(cell);
}

bool has_time(const std::vector<std::string>& cells, bool counted) {
  return std::any_of(cells.begin(), cells.end(),
                     [&](const std::string& c) { return date_as(c, counted).has_value(); });
}

char find_delimiter(const std::vector<TextLine>& lines, bool counted) {
  char best = '\0';
  std::size_t most = 0;
  for (const char d : {';', '\t', ',', '|'}) {
    std::map<std::size_t, std::size_t> by_count;  // lines with a date, by their cells
    for (const TextLine& l : lines) {
      const auto cells = logger::cells_of(l.text.substr(0, logger_line_limit), d);
      if (cells.size() > 1 && has_time(cells, counted)) ++by_count[cells.size()];
    }
    std::size_t alike = 0;
    for (const auto& [cells, n] : by_count) alike = std::max(alike, n);
    if (alike > most) {
      most = alike;
      best = d;
    }
  }
  return best;
}

// Cells of the sampled lines that carry a date: those the layout is read off.
using Rows = std::vector<std::vector<std::string>>;

std::size_t width_of(const Rows& rows) {
  std::size_t widest = 0;
  for (const auto& r : rows) widest = std::max(widest, r.size());
  return widest;
}

template <class Test>
double share_of(const Rows& rows, std::size_t column, Test&& test) {
  std::size_t yes = 0;
  for (const auto& r : rows) yes += column < r.size() && test(r[column]) ? 1 : 0;
  return rows.empty() ? 0 : static_cast<double>(yes) / static_cast<double>(rows.size());
}

// Where commas divide the columns, too, one within a number stands in quotes.
bool find_decimal_comma(const Rows& rows) {
  std::size_t comma = 0, point = 0;
  for (const auto& r : rows) {
    for (const std::string& c : r) {
      if (logger::date_in(c)) continue;
      const bool by_comma = logger::number_in(c, true).has_value();
      const bool by_point = logger::number_in(c, false).has_value();
      if (by_comma && !by_point) ++comma;
      if (by_point && !by_comma) ++point;
    }
  }
  return comma > point;
}

// A column of numbers; a heading that speaks of temperature wins, then one with a
// sign of degrees, then one whose values change and are no running number.
std::optional<std::size_t> find_temperature(const Rows& rows, const std::vector<std::string>& names,
                                            const LoggerLayout& layout) {
  std::optional<std::size_t> best;
  double best_score = 0;
  for (std::size_t c = 0; c < width_of(rows); ++c) {
    if (c == layout.time_column || c == layout.clock_column) continue;
    const double numbers = share_of(rows, c, [&](const std::string& s) {
      return logger::number_in(s, layout.decimal_comma).has_value();
    });
    if (numbers < 0.5) continue;
    double score = numbers;
    if (c < names.size() && logger::speaks_of_temperature(names[c])) score += 4;
    score += 2 * share_of(rows, c, [&](const std::string& s) {
               const auto n = logger::number_in(s, layout.decimal_comma);
               return n && n->degrees;
             });
    score += share_of(rows, c, [&](const std::string& s) {
      const auto n = logger::number_in(s, layout.decimal_comma);
      return n && n->value != std::floor(n->value);
    });
    if (score > best_score + 1e-9) {
      best_score = score;
      best = c;
    }
  }
  return best;
}

void find_date_order(LoggerLayout& layout, const Rows& rows, const LoggerChoices& choices) {
  bool day_first = false, month_first = false, any = false, points = false;
  for (const auto& r : rows) {
    if (layout.time_column >= r.size()) continue;
    const auto d = logger::date_in(r[layout.time_column]);
    if (!d || d->year_first) continue;
    any = true;
    points = points || r[layout.time_column].find('.') < 3;
    day_first = day_first || d->parts[0] > 12;
    month_first = month_first || d->parts[1] > 12;
  }
  if (!any) return;
  layout.order_certain = day_first != month_first || points;
  layout.order = month_first && !day_first ? DateOrder::month_day_year
                 : day_first || points     ? DateOrder::day_month_year
                                           : choices.order_if_uncertain;
}

void find_degrees(LoggerLayout& layout, const Rows& rows, const std::vector<std::string>& names) {
  std::vector<double> values;
  for (const auto& r : rows) {
    if (layout.temperature_column >= r.size()) continue;
    const auto n = logger::number_in(r[layout.temperature_column], layout.decimal_comma);
    if (!n) continue;
    if (n->degrees) {
      layout.degrees = *n->degrees;
      layout.degrees_stated = true;
      return;
    }
    values.push_back(n->value);
  }
  if (layout.temperature_column < names.size()) {
    if (const auto d = logger::degrees_in_heading(names[layout.temperature_column])) {
      layout.degrees = *d;
      layout.degrees_stated = true;
      return;
    }
  }
  if (values.empty()) return;
  const auto middle = values.begin() + static_cast<std::ptrdiff_t>(values.size() / 2);
  std::nth_element(values.begin(), middle, values.end());
  layout.degrees = *middle > fahrenheit_from ? DegreesOf::fahrenheit : DegreesOf::celsius;
}

void name_columns(std::vector<std::string>& columns, std::size_t width) {
  for (std::string& name : columns) name = logger::shown_beginning(name);
  for (std::size_t c = 0; c < width; ++c) {
    if (c >= columns.size()) columns.emplace_back();
    if (columns[c].empty()) columns[c] = "column " + std::to_string(c + 1);
  }
}

// The last line before the data that splits into as many cells and has no date.
void find_heading(LoggerFile& file, const std::vector<TextLine>& lines, std::size_t width) {
  for (const TextLine& l : lines) {
    const auto cells = logger::cells_of(l.text.substr(0, logger_line_limit), file.layout.delimiter);
    if (has_time(cells, file.layout.counted_seconds)) break;
    if (cells.size() + 1 < width || cells.size() < 2) continue;
    file.layout.heading_line = l.number;
    file.columns = cells;
  }
  name_columns(file.columns, width);
}

// A date alone has its hour in a column of its own, mostly the next one.
std::optional<std::size_t> find_clock(const Rows& rows, std::size_t time_column) {
  const auto alone = [](const std::string& s) {
    const auto d = logger::date_in(s);
    return d && d->rest.find_first_not_of(" \t") == std::string_view::npos;
  };
  if (share_of(rows, time_column, alone) <= 0.5) return std::nullopt;
  for (std::size_t c = 0; c < width_of(rows); ++c) {
    const double hours = share_of(rows, c, [](const std::string& s) {
      return s.find(':') != std::string::npos && logger::clock_in(s).has_value();
    });
    if (c != time_column && hours > 0.5) return c;
  }
  return std::nullopt;
}

Rows rows_with_time(const std::vector<TextLine>& lines, const LoggerLayout& layout) {
  Rows rows;
  if (layout.delimiter == '\0') return rows;
  for (const TextLine& l : lines) {
    auto cells = logger::cells_of(l.text.substr(0, logger_line_limit), layout.delimiter);
    if (cells.size() > 1 && has_time(cells, layout.counted_seconds))
      rows.push_back(std::move(cells));
  }
  return rows;
}

std::expected<Rows, LoggerFault> find_layout(LoggerFile& file, const std::vector<TextLine>& lines,
                                             const LoggerChoices& choices) {
  const std::vector<TextLine> seen = sample(lines);
  LoggerLayout& layout = file.layout;
  const auto by = [&](bool counted) {
    layout.counted_seconds = counted;
    layout.delimiter = choices.delimiter.value_or(find_delimiter(seen, counted));
    return rows_with_time(seen, layout);
  };
  Rows rows = by(false);
  if (rows.empty()) rows = by(true);  // only then: a serial number looks like it, too
  if (layout.delimiter == '\0') return std::unexpected(LoggerFault::no_columns);
  if (rows.empty()) return std::unexpected(LoggerFault::no_time_column);
  const std::size_t width = width_of(rows);
  find_heading(file, lines, width);
  const auto hour_in = choices.clock ? choices.clock->column : std::nullopt;
  for (const auto& chosen : {choices.time_column, choices.temperature_column, hour_in}) {
    if (chosen && *chosen >= width) return std::unexpected(LoggerFault::no_such_column);
  }
  layout.decimal_comma = choices.decimal_comma.value_or(find_decimal_comma(rows));
  const auto is_date = [&](const std::string& s) {
    return date_as(s, layout.counted_seconds).has_value();
  };
  std::size_t time = 0;
  double most = -1;
  for (std::size_t c = 0; c < width; ++c) {
    if (const double share = share_of(rows, c, is_date); share > most + 1e-9) {
      most = share;
      time = c;
    }
  }
  layout.time_column = choices.time_column.value_or(time);
  layout.clock_column =
      choices.clock ? choices.clock->column : find_clock(rows, layout.time_column);
  return rows;
}

// One line read by the layout.
std::expected<LoggerReading, BadLineReason> read_line(const TextLine& line,
                                                      const LoggerLayout& layout) {
  if (line.text.size() > logger_line_limit) return std::unexpected(BadLineReason::too_long);
  const auto cells = logger::cells_of(line.text, layout.delimiter);
  if (std::max(layout.time_column, layout.temperature_column) >= cells.size())
    return std::unexpected(BadLineReason::too_few_columns);
  const auto date = date_as(cells[layout.time_column], layout.counted_seconds);
  const auto day = date ? logger::day_of(*date, layout.order) : std::nullopt;
  if (!day) return std::unexpected(BadLineReason::no_time);
  std::string_view hour = date->rest;
  if (layout.clock_column)
    hour = *layout.clock_column < cells.size() ? std::string_view(cells[*layout.clock_column])
                                               : std::string_view("?");
  const auto clock = date->clock ? date->clock : logger::clock_in(hour);
  if (!clock) return std::unexpected(BadLineReason::no_time);
  const auto number = logger::number_in(cells[layout.temperature_column], layout.decimal_comma);
  if (!number) return std::unexpected(BadLineReason::no_temperature);
  const bool fahrenheit = number->degrees.value_or(layout.degrees) == DegreesOf::fahrenheit;
  const units::Temperature t =
      fahrenheit ? units::fahrenheit(number->value) : units::celsius(number->value);
  if (!(units::in_celsius(t) >= lowest_celsius && units::in_celsius(t) <= highest_celsius))
    return std::unexpected(BadLineReason::impossible_temperature);
  return LoggerReading{LocalTime(*day) + clock->since_midnight, clock->offset, t, line.number};
}

}  // namespace

std::expected<LoggerFile, LoggerFault> read_logger_file(std::string_view bytes,
                                                        const LoggerChoices& choices) {
  if (bytes.size() > logger_file_limit) return std::unexpected(LoggerFault::too_large);
  const auto text = logger::as_utf8(bytes);
  if (!text) return std::unexpected(LoggerFault::not_text);
  LoggerFile file;
  const std::vector<TextLine> lines = lines_of(*text, file.lines);
  if (lines.empty()) return std::unexpected(LoggerFault::empty);
  if (lines.size() > logger_lines_limit) return std::unexpected(LoggerFault::too_many_lines);
  const auto rows = find_layout(file, lines, choices);
  if (!rows) return std::unexpected(rows.error());
  LoggerLayout& layout = file.layout;
  const auto column = choices.temperature_column ? choices.temperature_column
                                                 : find_temperature(*rows, file.columns, layout);
  if (!column) return std::unexpected(LoggerFault::no_temperature_column);
  layout.temperature_column = *column;
  find_date_order(layout, *rows, choices);
  if (choices.order) {
    layout.order = *choices.order;
    layout.order_certain = true;
  }
  find_degrees(layout, *rows, file.columns);
  if (choices.degrees) {
    layout.degrees = *choices.degrees;
    layout.degrees_stated = true;
  }
  for (const TextLine& line : lines) {
    // What stands above the data is a heading, not a bad line.
    if (layout.heading_line && line.number <= *layout.heading_line) continue;
    auto reading = read_line(line, layout);
    if (reading) {
      file.readings.push_back(*reading);
      continue;
    }
    ++file.bad_lines;
    if (file.bad.size() < bad_lines_listed)
      file.bad.push_back({line.number, reading.error(), logger::shown_beginning(line.text)});
  }
  return file;
}

std::optional<LoggerColumns> logger_columns(std::string_view bytes, std::optional<char> delimiter) {
  if (bytes.size() > logger_file_limit) return std::nullopt;
  const auto text = logger::as_utf8(bytes);
  if (!text) return std::nullopt;
  std::size_t count = 0;
  const std::vector<TextLine> all = lines_of(*text, count);
  if (all.empty()) return std::nullopt;
  LoggerColumns best;
  for (const char d : {';', '\t', ',', '|'}) {
    if (delimiter && d != *delimiter) continue;
    LoggerColumns by{d, {}};
    for (const TextLine& l : sample(all)) {
      auto cells = logger::cells_of(l.text.substr(0, logger_line_limit), d);
      if (cells.size() > by.names.size()) by.names = std::move(cells);
    }
    if (by.names.size() > best.names.size()) best = std::move(by);
  }
  name_columns(best.names, best.names.size());
  return best;
}

}  // namespace ullage::cellar
