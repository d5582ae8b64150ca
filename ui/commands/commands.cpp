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
    at_cellar(new_cellar, QT_TRANSLATE_NOOP("Command", "&New cellar…"), "Ctrl+N",
              QT_TRANSLATE_NOOP("Command", "Make a new cellar file")),
    at_cellar(open_cellar, QT_TRANSLATE_NOOP("Command", "&Open…"), "Ctrl+O",
              QT_TRANSLATE_NOOP("Command", "Open a cellar file")),
    at_cellar(open_demo, QT_TRANSLATE_NOOP("Command", "Look at the &demo"), "",
              QT_TRANSLATE_NOOP("Command", "Open the demo cellar")),
    at_cellar(export_json, QT_TRANSLATE_NOOP("Command", "&Export…"), "",
              QT_TRANSLATE_NOOP("Command", "Write the whole cellar out as JSON"), true),
    at_cellar(import_json, QT_TRANSLATE_NOOP("Command", "&Import…"), "",
              QT_TRANSLATE_NOOP("Command", "Read a cellar from JSON")),
    {import_kegs, Menu::cellar, QT_TRANSLATE_NOOP("Command", "Import a &keg list…"), "",
     QT_TRANSLATE_NOOP("Command", "Register kegs from a CSV file"), true, false, ""},
    at_cellar(export_calendar, QT_TRANSLATE_NOOP("Command", "Export c&alendar…"), "",
              QT_TRANSLATE_NOOP("Command", "Due work and ready dates for a calendar")),
    at_cellar(back_up, QT_TRANSLATE_NOOP("Command", "&Back up now"), "",
              QT_TRANSLATE_NOOP("Command", "Put a copy of the cellar among its backups"), true),
    at_cellar(backups, QT_TRANSLATE_NOOP("Command", "&Restore a backup…"), "",
              QT_TRANSLATE_NOOP("Command", "List the backups and restore one")),
    at_cellar(check_file, QT_TRANSLATE_NOOP("Command", "&Check the file"), "",
              QT_TRANSLATE_NOOP("Command", "Look the file over for damage")),
    at_cellar(quit, QT_TRANSLATE_NOOP("Command", "&Quit"), "Ctrl+Q",
              QT_TRANSLATE_NOOP("Command", "Close the window"), true),
    {undo, Menu::edit, QT_TRANSLATE_NOOP("Command", "&Undo"), "Ctrl+Z",
     QT_TRANSLATE_NOOP("Command", "Take back what was logged last"), true, false, ""},
    {redo, Menu::edit, QT_TRANSLATE_NOOP("Command", "&Redo"), "Ctrl+Shift+Z",
     QT_TRANSLATE_NOOP("Command", "Bring back what was undone"), true, false, ""},
    {settings, Menu::edit, QT_TRANSLATE_NOOP("Command", "&Settings…"), "Ctrl+,",
     QT_TRANSLATE_NOOP("Command", "Units, words, theme, initials"), false, true, ""},
    {any_task, Menu::log, QT_TRANSLATE_NOOP("Command", "&Any task…"), "Ctrl+L",
     QT_TRANSLATE_NOOP("Command", "Find a task by typing, such as: vent k7"), true, false, ""},
    {Command::round, Menu::log, QT_TRANSLATE_NOOP("Command", "R&ound…"), "Ctrl+R",
     QT_TRANSLATE_NOOP("Command", "Walk the cellar and read what matters"), true, false, ""},
    task(transfer, Menu::log, QT_TRANSLATE_NOOP("Command", "Log a &transfer…"), "Ctrl+T",
         "transfer", true),
    task(keg_received, Menu::log, QT_TRANSLATE_NOOP("Command", "Keg recei&ved…"), "", "received"),
    task(keg_change, Menu::log, QT_TRANSLATE_NOOP("Command", "&Keg change…"), "Ctrl+K",
         "keg_change"),
    task(gas_set, Menu::log, QT_TRANSLATE_NOOP("Command", "&Gas set…"), "Ctrl+G", "gas_set"),
    task(level_reading, Menu::log, QT_TRANSLATE_NOOP("Command", "&Level…"), "", "level_reading"),
    task(temperature_read, Menu::log, QT_TRANSLATE_NOOP("Command", "Temperature &read…"), "",
         "temperature_read"),
    task(logger_import, Menu::log, QT_TRANSLATE_NOOP("Command", "&Import temperatures…"), "",
         "logger_import"),
    task(bottle_weighed, Menu::log, QT_TRANSLATE_NOOP("Command", "Gas bottle &weighed…"), "",
         "bottle_weighed", true),
    task(bottle_changed, Menu::log, QT_TRANSLATE_NOOP("Command", "Gas bottle &changed…"), "",
         "bottle_changed"),
    task(line_locked, Menu::log, QT_TRANSLATE_NOOP("Command", "&Do not serve: lock a line…"),
         "Ctrl+D", "line_locked"),
    task(register_kegs, Menu::the_register, QT_TRANSLATE_NOOP("Command", "&Kegs…"), "Ctrl+Shift+K",
         "register_kegs"),
    task(stock_take, Menu::the_register, QT_TRANSLATE_NOOP("Command", "&Stock-taking…"), "",
         "stock_take"),
    task(register_place, Menu::the_register, QT_TRANSLATE_NOOP("Command", "&Place…"), "",
         "place_record"),
    task(register_instrument, Menu::the_register, QT_TRANSLATE_NOOP("Command", "&Instrument…"), "",
         "instrument_record"),
    task(register_beer, Menu::the_register, QT_TRANSLATE_NOOP("Command", "&Beer…"), "",
         "beer_record", true),
    task(register_batch, Menu::the_register, QT_TRANSLATE_NOOP("Command", "B&atch…"), "",
         "batch_record"),
    task(register_line, Menu::the_register, QT_TRANSLATE_NOOP("Command", "&Line…"), "",
         "line_record", true),
    task(register_regulator, Menu::the_register, QT_TRANSLATE_NOOP("Command", "&Regulator…"), "",
         "regulator_record"),
    task(register_bottle, Menu::the_register, QT_TRANSLATE_NOOP("Command", "&Gas bottle…"), "",
         "bottle_record"),
    task(register_rule, Menu::the_register, QT_TRANSLATE_NOOP("Command", "R&ule…"), "",
         "rule_record"),
    task(Command::register_list, Menu::the_register,
         QT_TRANSLATE_NOOP("Command", "&Everything registered…"), "", "register_list", true),
    task(describe_cellar, Menu::the_register, QT_TRANSLATE_NOOP("Command", "This &cellar…"), "",
         "cellar_described"),
    on_paper(status_sheet, QT_TRANSLATE_NOOP("Command", "&Status sheet…"), "Ctrl+P",
             QT_TRANSLATE_NOOP("Command", "Preview and print the status sheet")),
    on_paper(paper_round, QT_TRANSLATE_NOOP("Command", "&Round sheet…"), "",
             QT_TRANSLATE_NOOP("Command", "Blanks to walk round with, in walking order")),
    on_paper(paper_kegs, QT_TRANSLATE_NOOP("Command", "K&eg list…"), "",
             QT_TRANSLATE_NOOP("Command", "All kegs, on paper or as CSV")),
    on_paper(paper_lines, QT_TRANSLATE_NOOP("Command", "Li&ne list…"), "",
             QT_TRANSLATE_NOOP("Command", "All lines, on paper or as CSV")),
    on_paper(paper_batches, QT_TRANSLATE_NOOP("Command", "&Batch list…"), "",
             QT_TRANSLATE_NOOP("Command", "All batches, on paper or as CSV")),
    on_paper(paper_register, QT_TRANSLATE_NOOP("Command", "&More lists…"), "",
             QT_TRANSLATE_NOOP("Command",
                               "Gas bottles, regulators, places, instruments, hose, beers, on "
                               "paper or as CSV")),
    on_paper(paper_rules, QT_TRANSLATE_NOOP("Command", "List &of rules…"), "",
             QT_TRANSLATE_NOOP("Command", "The rules of this cellar, on paper or as CSV")),
    on_paper(keg_tags, QT_TRANSLATE_NOOP("Command", "&Keg tags…"), "Ctrl+Shift+P",
             QT_TRANSLATE_NOOP("Command", "Tags to hang on kegs, with a code to scan"), true),
    on_paper(warning_tags, QT_TRANSLATE_NOOP("Command", "&Warning tags…"), "",
             QT_TRANSLATE_NOOP("Command", "Do not serve, vent first, out of service, gas")),
    on_paper(paper_due, QT_TRANSLATE_NOOP("Command", "D&ue list…"), "",
             QT_TRANSLATE_NOOP("Command", "What is due and by when, on paper or as CSV"), true),
    on_paper(paper_cleaning_list, QT_TRANSLATE_NOOP("Command", "Cleaning &day list…"), "",
             QT_TRANSLATE_NOOP("Command", "The next cleaning day’s steps, with boxes to tick")),
    on_paper(paper_line_cleaning, QT_TRANSLATE_NOOP("Command", "&Line cleaning log…"), "",
             QT_TRANSLATE_NOOP("Command", "Line cleanings over a period")),
    on_paper(paper_temperature, QT_TRANSLATE_NOOP("Command", "&Temperature log…"), "",
             QT_TRANSLATE_NOOP("Command", "Temperatures over a period")),
    on_paper(paper_gas, QT_TRANSLATE_NOOP("Command", "&Gas log…"), "",
             QT_TRANSLATE_NOOP("Command", "Bottles, leaks and alarms over a period")),
    on_paper(paper_wastage, QT_TRANSLATE_NOOP("Command", "W&astage book…"), "",
             QT_TRANSLATE_NOOP("Command", "Beer lost over a period, and what it cost")),
    on_paper(paper_all, QT_TRANSLATE_NOOP("Command", "W&hole log…"), "",
             QT_TRANSLATE_NOOP("Command", "Everything logged over a period, on paper or as CSV")),
    on_paper(paper_custody, QT_TRANSLATE_NOOP("Command", "&Custody list…"), "",
             QT_TRANSLATE_NOOP("Command", "Kegs lent, rented and a supplier’s"), true),
    on_paper(paper_recall, QT_TRANSLATE_NOOP("Command", "Recall l&ist…"), "",
             QT_TRANSLATE_NOOP("Command", "Where a batch went")),
    {page_kegs, Menu::view, QT_TRANSLATE_NOOP("Command", "&Kegs"), "Ctrl+1",
     QT_TRANSLATE_NOOP("Command", "Show the Kegs page"), false, false, ""},
    {page_lines, Menu::view, QT_TRANSLATE_NOOP("Command", "&Lines"), "Ctrl+2",
     QT_TRANSLATE_NOOP("Command", "Show the Lines page"), false, false, ""},
    {page_gas, Menu::view, QT_TRANSLATE_NOOP("Command", "&Gas"), "Ctrl+3",
     QT_TRANSLATE_NOOP("Command", "Show the Gas page"), false, false, ""},
    {page_safety, Menu::view, QT_TRANSLATE_NOOP("Command", "&Safety"), "Ctrl+4",
     QT_TRANSLATE_NOOP("Command", "Show the Safety page"), false, false, ""},
    {page_cleaning, Menu::view, QT_TRANSLATE_NOOP("Command", "&Cleaning"), "Ctrl+5",
     QT_TRANSLATE_NOOP("Command", "Show the Cleaning page"), false, false, ""},
    {page_beers, Menu::view, QT_TRANSLATE_NOOP("Command", "&Beers"), "Ctrl+6",
     QT_TRANSLATE_NOOP("Command", "Show the Beers page"), false, false, ""},
    {page_slate, Menu::view, QT_TRANSLATE_NOOP("Command", "Sl&ate"), "Ctrl+7",
     QT_TRANSLATE_NOOP("Command", "Show the Slate page: what if"), false, false, ""},
    {page_log, Menu::view, QT_TRANSLATE_NOOP("Command", "L&og"), "Ctrl+8",
     QT_TRANSLATE_NOOP("Command", "Show the Log page"), false, false, ""},
    {shortcuts, Menu::help, QT_TRANSLATE_NOOP("Command", "&Shortcuts"), "F1",
     QT_TRANSLATE_NOOP("Command", "Show this list"), false, false, ""},
    {about, Menu::help, QT_TRANSLATE_NOOP("Command", "&About Ullage"), "",
     QT_TRANSLATE_NOOP("Command", "Version and licence"), false, true, ""},
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
