// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/command_line.h"

#include <CLI/CLI.hpp>
#include <algorithm>
#include <map>

#include "app/exit_codes.h"

namespace ullage::app {

namespace {

constexpr const char* closing_words =
    R"(Exit codes: 0 done; 1 something was found or refused, and the text says what;
2 the command line made no sense; 3 there is no display to show a window on;
4 a file could not be read or written.)";

const std::map<std::string, ui::Paper> papers = {{"a4", ui::Paper::a4},
                                                 {"letter", ui::Paper::letter}};
const std::map<std::string, units::DisplayUnits> unit_presets = {
    {"metric", units::DisplayUnits::metric()},
    {"us", units::DisplayUnits::us()},
    {"british", units::DisplayUnits::british()}};

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
};

void describe_window(CLI::App& app, Arguments& a) {
  app.add_option("FILE", a.window_cellar, "The cellar to open, or to create");
  app.add_flag("--demo", a.demo, "Open a made-up cellar to try things on");
}

CLI::App* describe_sheet(CLI::App& app, Arguments& a) {
  auto* sheet = app.add_subcommand("sheet", "Print the status sheet to a PDF");
  sheet->add_option("CELLAR", a.sheet.cellar, "The cellar file")->required();
  sheet->add_option("--pdf", a.sheet.pdf, "Where to write it")->required();
  sheet->add_option("--paper", a.paper, "a4 or letter")
      ->check(CLI::IsMember(papers, CLI::ignore_case))
      ->default_str("a4");
  sheet->add_option("--units", a.units, "metric, us or british; else as the cellar was set up")
      ->check(CLI::IsMember(unit_presets, CLI::ignore_case));
  sheet->add_option("--by", a.sheet.by, "Initials to print on it");
  return sheet;
}

CLI::App* describe_export(CLI::App& app, Arguments& a) {
  auto* command = app.add_subcommand("export", "Write the whole cellar as JSON");
  command->add_option("CELLAR", a.exported.cellar, "The cellar file")->required();
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
  auto* command =
      app.add_subcommand("check", "Look a cellar over: is the file whole, does its story fit");
  command->add_option("CELLAR", a.checked.cellar, "The cellar file")->required();
  return command;
}

std::string lower(std::string text) {
  std::transform(text.begin(), text.end(), text.begin(),
                 [](unsigned char c) { return static_cast<char>(std::tolower(c)); });
  return text;
}

}  // namespace

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
  std::reverse(arguments.begin(), arguments.end());
  try {
    app.parse(std::move(arguments));
  } catch (const CLI::ParseError& e) {
    std::ostringstream out;
    const bool asked_for = app.exit(e, out, out) == 0;  // help or version
    return std::unexpected(SaidInstead{asked_for ? exit_ok : exit_usage, out.str()});
  }
  if (sheet->parsed()) {
    a.sheet.paper = papers.at(lower(a.paper));
    if (!a.units.empty()) a.sheet.units = unit_presets.at(lower(a.units));
    return a.sheet;
  }
  if (exported->parsed()) return a.exported;
  if (imported->parsed()) return a.imported;
  if (checked->parsed()) return a.checked;
  ShowWindow window{.cellar = std::nullopt, .demo = a.demo};
  if (!a.window_cellar.empty()) window.cellar = a.window_cellar;
  return window;
}

std::string headless_commands() {
  return "  ullage sheet CELLAR --pdf FILE   the status sheet as a PDF\n"
         "  ullage export CELLAR FILE        the whole cellar as JSON\n"
         "  ullage import FILE CELLAR        a new cellar from such a file\n"
         "  ullage check CELLAR              is the file whole, does its story fit\n";
}

}  // namespace ullage::app
