// SPDX-License-Identifier: GPL-3.0-or-later
//
// What was asked for on the command line. Reading it opens nothing and prints
// nothing.
#pragma once

#include <boost/variant2/variant.hpp>
#include <chrono>
#include <expected>
#include <filesystem>
#include <optional>
#include <string>
#include <vector>

#include "core/report/due_sheet.h"
#include "core/report/log_book.h"
#include "core/report/tags.h"
#include "core/units/display_units.h"
#include "ui/print/paper.h"

namespace ullage::app {

struct ShowWindow {
  std::optional<std::filesystem::path> cellar;  // else the last one, or a first start
  bool demo = false;
};
struct PrintSheet {
  std::filesystem::path cellar, pdf;  // no PDF: JSON is told instead
  ui::Paper paper = ui::Paper::a4;
  std::optional<units::DisplayUnits> units;  // else as the cellar was set up
  std::string by;
};
struct ExportCellar {
  std::filesystem::path cellar, file;
};
struct ImportCellar {
  std::filesystem::path file, cellar;
};
struct CheckCellar {
  std::filesystem::path cellar;
};
struct TellDue {
  std::filesystem::path cellar;
  int within_days = report::usually_due_within;
  bool json = false, csv = false;
};
struct PrintTags {
  std::filesystem::path cellar, pdf;  // no PDF: JSON is told instead
  std::vector<std::string> kegs;      // tags; all at hand when empty
  bool warnings = false;              // in place of keg tags
  // Warnings of this kind alone, and about these kegs and lines (by name or tap) alone:
  // with a kind, whether or not there is reason for them.
  std::optional<report::Warning> kind;
  std::vector<std::string> lines;
  bool single = false;
  bool backs = true;
  ui::Paper paper = ui::Paper::a4;
  std::optional<units::DisplayUnits> units;
};
using report::LogBook;
enum class LogForm { text, pdf, csv, json };
struct WriteLog {
  std::filesystem::path cellar, pdf;
  LogBook book = LogBook::line_cleaning;
  LogForm form = LogForm::text;
  std::string from, to;  // "2026-11-24"; empty when not said
  std::string batch;
  ui::Paper paper = ui::Paper::a4;
  std::optional<units::DisplayUnits> units;
  std::string by;
};
struct PlanDay {
  std::filesystem::path cellar, pdf;  // no PDF: JSON is told instead
  std::string on;                     // "2026-11-24"; the day proposed first when empty
  std::optional<int> minutes;         // at hand
  ui::Paper paper = ui::Paper::a4;
  std::optional<units::DisplayUnits> units;
  std::string by;
};
struct WriteCalendar {
  std::filesystem::path cellar, file;  // no file: JSON is told instead
};
using Command =
    boost::variant2::variant<ShowWindow, PrintSheet, ExportCellar, ImportCellar, CheckCellar,
                             TellDue, PrintTags, WriteLog, PlanDay, WriteCalendar>;

// Text to print instead of doing anything: help, the version, or what was wrong.
struct SaidInstead {
  int exit_code = 0;
  std::string text;
};

// `arguments` without the program's name.
[[nodiscard]] std::expected<Command, SaidInstead> read_command_line(
    std::vector<std::string> arguments);

// "2026-11-24"; nullopt for anything else, and for days that no calendar has.
[[nodiscard]] std::optional<std::chrono::year_month_day> parse_day(const std::string&);

// The commands that need no display, one a line, for when there is none.
[[nodiscard]] std::string headless_commands();

}  // namespace ullage::app
