// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/commands/commands.h"

#include <QCoreApplication>
#include <algorithm>
#include <array>

namespace ullage::ui {
namespace {

using enum Command;

constexpr CommandSpec at_cellar(Command c, const char* text, const char* keys, const char* does,
                                bool group = false) {
  return {c, Menu::cellar, text, keys, does, false, group, ""};
}
constexpr CommandSpec on_paper(Command c, const char* text, const char* keys, const char* does,
                               bool group = false) {
  return {c, Menu::paper, text, keys, does, false, group, ""};
}
constexpr CommandSpec task(Command c, Menu menu, const char* text, const char* keys,
                           const char* kind, bool group = false) {
  return {c, menu, text, keys, "", true, group, kind};
}

constexpr auto table = std::to_array<CommandSpec>({
    at_cellar(new_cellar, "&New cellar…", "Ctrl+N", "Make a new cellar file"),
    at_cellar(open_cellar, "&Open…", "Ctrl+O", "Open a cellar file"),
    at_cellar(open_demo, "Look at the &demo", "", "Open the demo cellar"),
    at_cellar(export_json, "&Export…", "", "Write the whole cellar out as JSON", true),
    at_cellar(import_json, "&Import…", "", "Read a cellar from JSON"),
    {import_kegs, Menu::cellar, "Import a &keg list…", "", "Register kegs from a CSV file", true,
     false, ""},
    at_cellar(export_calendar, "Export c&alendar…", "", "Due work and ready dates for a calendar"),
    at_cellar(back_up, "&Back up now", "", "Put a copy of the cellar among its backups", true),
    at_cellar(backups, "&Restore a backup…", "", "List the backups and restore one"),
    at_cellar(check_file, "&Check the file", "", "Look the file over for damage"),
    at_cellar(quit, "&Quit", "Ctrl+Q", "Close the window", true),
    {undo, Menu::edit, "&Undo", "Ctrl+Z", "Take back what was logged last", true, false, ""},
    {redo, Menu::edit, "&Redo", "Ctrl+Shift+Z", "Bring back what was undone", true, false, ""},
    {settings, Menu::edit, "&Settings…", "Ctrl+,", "Units, words, theme, initials", false, true,
     ""},
    {any_task, Menu::log, "&Any task…", "Ctrl+L", "Find a task by typing, such as: vent k7", true,
     false, ""},
    {Command::round, Menu::log, "R&ound…", "Ctrl+R", "Walk the cellar and read what matters", true,
     false, ""},
    task(transfer, Menu::log, "Log a &transfer…", "Ctrl+T", "transfer", true),
    task(keg_change, Menu::log, "&Keg change…", "Ctrl+K", "keg_change"),
    task(gas_set, Menu::log, "&Gas set…", "Ctrl+G", "gas_set"),
    task(level_reading, Menu::log, "&Level…", "", "level_reading"),
    task(temperature_read, Menu::log, "Temperature &read…", "", "temperature_read"),
    task(logger_import, Menu::log, "&Import temperatures…", "", "logger_import"),
    task(bottle_weighed, Menu::log, "Gas bottle &weighed…", "", "bottle_weighed", true),
    task(bottle_changed, Menu::log, "Gas bottle &changed…", "", "bottle_changed"),
    task(line_locked, Menu::log, "&Do not serve: lock a line…", "Ctrl+D", "line_locked"),
    task(stock_take, Menu::the_register, "&Stock-taking…", "", "stock_take"),
    task(register_kegs, Menu::the_register, "&Kegs…", "Ctrl+Shift+K", "register_kegs", true),
    task(register_place, Menu::the_register, "&Place…", "", "place_record"),
    task(register_instrument, Menu::the_register, "&Instrument…", "", "instrument_record"),
    task(register_beer, Menu::the_register, "&Beer…", "", "beer_record", true),
    task(register_batch, Menu::the_register, "B&atch…", "", "batch_record"),
    task(register_line, Menu::the_register, "&Line…", "", "line_record", true),
    task(register_regulator, Menu::the_register, "&Regulator…", "", "regulator_record"),
    task(register_bottle, Menu::the_register, "&Gas bottle…", "", "bottle_record"),
    task(register_rule, Menu::the_register, "R&ule…", "", "rule_record"),
    task(describe_cellar, Menu::the_register, "This &cellar…", "", "cellar_described", true),
    on_paper(status_sheet, "&Status sheet…", "Ctrl+P", "Preview and print the status sheet"),
    on_paper(paper_round, "&Round sheet…", "", "Blanks to walk round with, in walking order"),
    on_paper(paper_kegs, "K&eg list…", "", "All kegs, on paper or as CSV"),
    on_paper(keg_tags, "&Keg tags…", "Ctrl+Shift+P", "Tags to hang on kegs, with a code to scan",
             true),
    on_paper(warning_tags, "&Warning tags…", "", "Do not serve, vent first, out of service, gas"),
    on_paper(paper_cleaning_list, "Cleaning &day list…", "",
             "The next cleaning day’s steps, with boxes to tick", true),
    on_paper(paper_line_cleaning, "&Line cleaning log…", "", "Line cleanings over a period"),
    on_paper(paper_temperature, "&Temperature log…", "", "Temperatures over a period"),
    on_paper(paper_gas, "&Gas log…", "", "Bottles, leaks and alarms over a period"),
    on_paper(paper_wastage, "W&astage book…", "", "Beer lost over a period, and what it cost"),
    on_paper(paper_custody, "&Custody list…", "", "Kegs lent, rented and a supplier’s", true),
    on_paper(paper_recall, "Recall l&ist…", "", "Where a batch went"),
    {page_kegs, Menu::view, "&Kegs", "Ctrl+1", "Show the Kegs page", false, false, ""},
    {page_lines, Menu::view, "&Lines", "Ctrl+2", "Show the Lines page", false, false, ""},
    {page_gas, Menu::view, "&Gas", "Ctrl+3", "Show the Gas page", false, false, ""},
    {page_safety, Menu::view, "&Safety", "Ctrl+4", "Show the Safety page", false, false, ""},
    {page_cleaning, Menu::view, "&Cleaning", "Ctrl+5", "Show the Cleaning page", false, false, ""},
    {page_beers, Menu::view, "&Beers", "Ctrl+6", "Show the Beers page", false, false, ""},
    {page_slate, Menu::view, "Sl&ate", "Ctrl+7", "Show the Slate page: what if", false, false, ""},
    {page_log, Menu::view, "L&og", "Ctrl+8", "Show the Log page", false, false, ""},
    {shortcuts, Menu::help, "&Shortcuts", "F1", "Show this list", false, false, ""},
    {about, Menu::help, "&About Ullage", "", "Version and licence", false, true, ""},
});

}  // namespace

std::span<const CommandSpec> commands() { return table; }

const CommandSpec& spec_of(Command command) {
  return *std::find_if(table.begin(), table.end(),
                       [&](const CommandSpec& spec) { return spec.command == command; });
}

QString text_of(const CommandSpec& spec) {
  return QCoreApplication::translate("Command", spec.text);
}

QString does_of(const CommandSpec& spec) {
  return *spec.does ? QCoreApplication::translate("Command", spec.does) : QString();
}

QString title_of(Menu menu) {
  switch (menu) {
    case Menu::cellar:
      return QCoreApplication::translate("Menu", "&Cellar");
    case Menu::edit:
      return QCoreApplication::translate("Menu", "&Edit");
    case Menu::log:
      return QCoreApplication::translate("Menu", "&Log");
    case Menu::the_register:
      return QCoreApplication::translate("Menu", "&Register");
    case Menu::paper:
      return QCoreApplication::translate("Menu", "&Paper");
    case Menu::view:
      return QCoreApplication::translate("Menu", "&View");
    case Menu::help:
      return QCoreApplication::translate("Menu", "&Help");
  }
  return {};
}

}  // namespace ullage::ui
