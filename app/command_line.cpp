// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/command_line.h"

#include <CLI/CLI.hpp>
#include <algorithm>
#include <cstdio>
#include <map>

#include "app/exit_codes.h"

namespace ullage::app {

namespace {

constexpr const char* closing_words =
    R"(Exit codes: 0 done; 1 something was found, refused or is overdue, and the text says what;
2 the command line made no sense; 3 there is no display to show a window on;
4 a file could not be read or written.)";

const std::map<std::string, ui::Paper> papers = {{"a4", ui::Paper::a4},
                                                 {"letter", ui::Paper::letter}};
const std::map<std::string, units::DisplayUnits> unit_presets = {
    {"metric", units::DisplayUnits::metric()},
    {"us", units::DisplayUnits::us()},
    {"british", units::DisplayUnits::british()}};

const std::map<std::string, LogBook> books = {{"cleaning", LogBook::line_cleaning},
                                              {"temperature", LogBook::temperature},
                                              {"gas", LogBook::gas},
                                              {"wastage", LogBook::wastage},
                                              {"custody", LogBook::custody},
                                              {"kegs", LogBook::kegs},
                                              {"lines", LogBook::lines},
                                              {"rules", LogBook::rules},
                                              {"batches", LogBook::batches},
                                              {"round", LogBook::round},
                                              {"recall", LogBook::recall},
                                              {"due", LogBook::due},
                                              {"all", LogBook::all},
                                              {"bottles", LogBook::bottles},
                                              {"regulators", LogBook::regulators},
                                              {"places", LogBook::places},
                                              {"instruments", LogBook::instruments},
                                              {"hose", LogBook::hose},
                                              {"beers", LogBook::beers}};

const std::map<std::string, report::Warning> warning_kinds = {
    {"do-not-serve", report::Warning::do_not_serve},
    {"vent-first", report::Warning::vent_first},
    {"out-of-service", report::Warning::out_of_service},
    {"recalled", report::Warning::recalled},
    {"gas", report::Warning::gas}};

// CLI11 fills these while it parses.
struct Arguments {
  std::filesystem::path window_cellar;
  bool demo = false;
  PrintSheet sheet;
  std::string paper = "a4";
  std::string units;
  ExportCellar exported;
  ImportCellar imported;
  CheckCellar checked;
  TellDue due;
  PrintTags tags;
  bool no_backs = false;
  std::string warning_kind;
  WriteLog log;
  std::string book;
  bool csv = false, json = false;
  PlanDay day;
  WriteCalendar calendar;
};

void describe_window(CLI::App& app, Arguments& a) {
  app.add_option("FILE", a.window_cellar, "The cellar to open, or to create");
  app.add_flag("--demo", a.demo, "Open a made-up cellar to try things on");
}

void describe_paper(CLI::App& command, Arguments& a) {
  command.add_option("--paper", a.paper, "a4 or letter")
      ->check(CLI::IsMember(papers, CLI::ignore_case))
      ->default_str("a4");
  command.add_option("--units", a.units, "metric, us or british; else as the cellar was set up")
      ->check(CLI::IsMember(unit_presets, CLI::ignore_case));
}

CLI::App* on_a_cellar(CLI::App& app, const char* name, const char* does,
                      std::filesystem::path& cellar) {
  auto* command = app.add_subcommand(name, does);
  command->add_option("CELLAR", cellar, "The cellar file")->required();
  return command;
}

// A PDF or JSON, and which is said.
void describe_pdf_or_json(CLI::App& command, std::filesystem::path& pdf, Arguments& a) {
  auto* form = command.add_option_group("form");
  form->add_option("--pdf", pdf, "Where to write a PDF");
  form->add_flag("--json", a.json, "As JSON");
  form->require_option(1);
}

CLI::App* describe_sheet(CLI::App& app, Arguments& a) {
  auto* sheet = on_a_cellar(app, "sheet", "The status sheet as a PDF or JSON", a.sheet.cellar);
  describe_pdf_or_json(*sheet, a.sheet.pdf, a);
  describe_paper(*sheet, a);
  sheet->add_option("--by", a.sheet.by, "Initials to print on it");
  return sheet;
}

CLI::App* describe_export(CLI::App& app, Arguments& a) {
  auto* command = on_a_cellar(app, "export", "Write the whole cellar as JSON", a.exported.cellar);
  command->add_option("FILE", a.exported.file, "The JSON file to write")->required();
  return command;
}

CLI::App* describe_import(CLI::App& app, Arguments& a) {
  auto* command = app.add_subcommand("import", "Make a new cellar from exported JSON");
  command->add_option("FILE", a.imported.file, "The JSON file")->required();
  command->add_option("CELLAR", a.imported.cellar, "The cellar file to create")->required();
  return command;
}

CLI::App* describe_check(CLI::App& app, Arguments& a) {
  return on_a_cellar(app, "check", "Look a cellar over: is the file whole, does its story fit",
                     a.checked.cellar);
}

CLI::App* describe_due(CLI::App& app, Arguments& a) {
  auto* command =
      on_a_cellar(app, "due", "What is due; exit code 1 when something is overdue", a.due.cellar);
  command->add_option("--within", a.due.within_days, "Days to look ahead (14)")
      ->check(CLI::Range(0, 3660));
  auto* json = command->add_flag("--json", a.due.json, "As JSON");
  command->add_flag("--csv", a.due.csv, "As CSV")->excludes(json);
  return command;
}

CLI::App* describe_tags(CLI::App& app, Arguments& a) {
  auto* command =
      on_a_cellar(app, "tags", "Keg tags or warning tags as a PDF or JSON", a.tags.cellar);
  describe_pdf_or_json(*command, a.tags.pdf, a);
  command->add_option("--keg", a.tags.kegs, "Of this keg alone; may be given several times")
      ->allow_extra_args(false);
  auto* warnings =
      command->add_flag("--warnings", a.tags.warnings, "The warnings there is reason for");
  command
      ->add_option("--kind", a.warning_kind,
                   "Warnings of this kind alone: do-not-serve, vent-first, out-of-service, "
                   "recalled or gas; with --keg or --line, reason or not")
      ->check(CLI::IsMember(warning_kinds, CLI::ignore_case))
      ->needs(warnings);
  command->add_option("--line", a.tags.lines, "Warnings about this line alone, by name or tap")
      ->allow_extra_args(false)
      ->needs(warnings);
  command->add_flag("--single", a.tags.single, "One to an A6 page");
  command->add_flag("--no-backs", a.no_backs, "Fronts alone");
  describe_paper(*command, a);
  return command;
}

std::string wrong_day(const std::string& text) {
  return parse_day(text) ? std::string() : "write days like 2026-11-24";
}

CLI::App* describe_log(CLI::App& app, Arguments& a) {
  auto* command = app.add_subcommand("log", "A log book or list as text, PDF, CSV or JSON");
  command
      ->add_option(
          "BOOK", a.book,
          "cleaning, temperature, gas, wastage, custody, kegs, lines, rules, batches, bottles, "
          "regulators, places, instruments, hose, beers, round, recall, due or all")
      ->required()
      ->check(CLI::IsMember(books, CLI::ignore_case));
  command->add_option("CELLAR", a.log.cellar, "The cellar file")->required();
  command->add_option("--from", a.log.from, "First day, such as 2026-11-01")->check(wrong_day);
  command->add_option("--to", a.log.to, "Last day")->check(wrong_day);
  command->add_option("--batch", a.log.batch, "Of a recall list: the batch’s name");
  auto* pdf = command->add_option("--pdf", a.log.pdf, "Write a PDF there");
  auto* csv = command->add_flag("--csv", a.csv, "As CSV")->excludes(pdf);
  command->add_flag("--json", a.json, "As JSON")->excludes(pdf)->excludes(csv);
  command->add_option("--by", a.log.by, "Initials to print on it");
  describe_paper(*command, a);
  return command;
}

CLI::App* describe_day(CLI::App& app, Arguments& a) {
  auto* command =
      on_a_cellar(app, "cleaning-day", "The list of a cleaning day as a PDF or JSON", a.day.cellar);
  describe_pdf_or_json(*command, a.day.pdf, a);
  command->add_option("--on", a.day.on, "Which day; the next one proposed when not said")
      ->check(wrong_day);
  command->add_option("--minutes", a.day.minutes, "Time at hand (180)")->check(CLI::Range(1, 1440));
  command->add_option("--by", a.day.by, "Initials to print on it");
  describe_paper(*command, a);
  return command;
}

CLI::App* describe_calendar(CLI::App& app, Arguments& a) {
  auto* command = on_a_cellar(app, "calendar", "Due work and ready dates as iCalendar or JSON",
                              a.calendar.cellar);
  auto* file = command->add_option("FILE", a.calendar.file, "The .ics file to write");
  command->add_flag("--json", a.json, "As JSON, to the standard output")->excludes(file);
  return command;
}

std::string lower(std::string text) {
  std::transform(text.begin(), text.end(), text.begin(),
                 [](unsigned char c) { return static_cast<char>(std::tolower(c)); });
  return text;
}

template <class Printed>
void take_paper(Printed& printed, const Arguments& a) {
  printed.paper = papers.at(lower(a.paper));
  if (!a.units.empty()) printed.units = unit_presets.at(lower(a.units));
}

WriteLog log_of(const Arguments& a) {
  WriteLog log = a.log;
  take_paper(log, a);
  log.book = books.at(lower(a.book));
  log.form = a.csv               ? LogForm::csv
             : a.json            ? LogForm::json
             : a.log.pdf.empty() ? LogForm::text
                                 : LogForm::pdf;
  return log;
}

}  // namespace

std::optional<std::chrono::year_month_day> parse_day(const std::string& text) {
  int year = 0;
  unsigned month = 0;
  unsigned day = 0;
  int used = 0;
  if (text.size() != 10 ||
      std::sscanf(text.c_str(), "%4d-%2u-%2u%n", &year, &month, &day, &used) != 3 || used != 10) {
    return std::nullopt;
  }
  const std::chrono::year_month_day date{std::chrono::year(year), std::chrono::month(month),
                                         std::chrono::day(day)};
  return date.ok() && year > 0 ? std::optional(date) : std::nullopt;
}

std::expected<Command, SaidInstead> read_command_line(std::vector<std::string> arguments) {
  Arguments a;
  CLI::App app("Ullage keeps a cellar: which keg holds what, how it is doing, and what to do next.",
               "ullage");
  app.footer(closing_words);
  app.set_version_flag("--version", "ullage " ULLAGE_VERSION);
  app.require_subcommand(0, 1);
  describe_window(app, a);
  const auto* sheet = describe_sheet(app, a);
  const auto* exported = describe_export(app, a);
  const auto* imported = describe_import(app, a);
  const auto* checked = describe_check(app, a);
  const auto* due = describe_due(app, a);
  const auto* tags = describe_tags(app, a);
  const auto* log = describe_log(app, a);
  const auto* day = describe_day(app, a);
  const auto* calendar = describe_calendar(app, a);
  std::reverse(arguments.begin(), arguments.end());
  try {
    app.parse(std::move(arguments));
    if (calendar->parsed() && a.calendar.file.empty() && !a.json) {
      throw CLI::RequiredError("FILE or --json");
    }
  } catch (const CLI::ParseError& e) {
    std::ostringstream out;
    const bool asked_for = app.exit(e, out, out) == 0;  // help or version
    return std::unexpected(SaidInstead{asked_for ? exit_ok : exit_usage, out.str()});
  }
  if (sheet->parsed()) {
    take_paper(a.sheet, a);
    return a.sheet;
  }
  if (due->parsed()) return a.due;
  if (tags->parsed()) {
    take_paper(a.tags, a);
    a.tags.backs = !a.no_backs;
    if (!a.warning_kind.empty()) a.tags.kind = warning_kinds.at(lower(a.warning_kind));
    return a.tags;
  }
  if (log->parsed()) return log_of(a);
  if (day->parsed()) {
    take_paper(a.day, a);
    return a.day;
  }
  if (calendar->parsed()) return a.calendar;
  if (exported->parsed()) return a.exported;
  if (imported->parsed()) return a.imported;
  if (checked->parsed()) return a.checked;
  ShowWindow window{.cellar = std::nullopt, .demo = a.demo};
  if (!a.window_cellar.empty()) window.cellar = a.window_cellar;
  return window;
}

std::string headless_commands() {
  return "  ullage due CELLAR                what is due\n"
         "  ullage sheet CELLAR --pdf FILE   the status sheet as a PDF\n"
         "  ullage tags CELLAR --pdf FILE    keg tags as a PDF\n"
         "  ullage log BOOK CELLAR           a log book as text, PDF, CSV or JSON\n"
         "  ullage cleaning-day CELLAR --pdf FILE  the list of the next cleaning day\n"
         "  ullage calendar CELLAR FILE      due work and ready dates as iCalendar\n"
         "  ullage export CELLAR FILE        the whole cellar as JSON\n"
         "  ullage import FILE CELLAR        a new cellar from such a file\n"
         "  ullage check CELLAR              is the file whole, does its story fit\n";
}

}  // namespace ullage::app
