// SPDX-License-Identifier: GPL-3.0-or-later
//
// What was asked for on the command line. Reading it opens nothing and prints
// nothing.
#pragma once

#include <expected>
#include <filesystem>
#include <optional>
#include <string>
#include <vector>

#include "core/units/display_units.h"
#include "ui/print/paper.h"

namespace ullage::app {

struct ShowWindow {
  std::optional<std::filesystem::path> cellar;  // else the last one, or a first start
  bool demo = false;
};
struct PrintSheet {
  std::filesystem::path cellar, pdf;
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
using Command = boost::variant2::variant<ShowWindow, PrintSheet, ExportCellar, ImportCellar, CheckCellar>;

// Text to print instead of doing anything: help, the version, or what was wrong.
struct SaidInstead {
  int exit_code = 0;
  std::string text;
};

// `arguments` without the program's name.
[[nodiscard]] std::expected<Command, SaidInstead> read_command_line(
    std::vector<std::string> arguments);

// The commands that need no display, one a line, for when there is none.
[[nodiscard]] std::string headless_commands();

}  // namespace ullage::app
