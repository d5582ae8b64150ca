// SPDX-License-Identifier: GPL-3.0-or-later
//
// Every command of the window in one table: what it is called, in which menu it
// stands, its shortcut and what it does. Menus, the list of shortcuts and the
// check that no shortcut is given twice all come from here.
#pragma once

#include <QString>
#include <span>

namespace ullage::ui {

enum class Command {
  new_cellar,
  open_cellar,
  open_demo,
  back_up,
  backups,
  export_json,
  import_json,
  import_kegs,
  export_calendar,
  check_file,
  status_sheet,
  keg_tags,
  warning_tags,
  paper_round,
  paper_kegs,
  paper_lines,
  paper_rules,
  paper_batches,
  paper_register,
  paper_due,
  paper_cleaning_list,
  paper_line_cleaning,
  paper_temperature,
  paper_gas,
  paper_wastage,
  paper_all,
  paper_custody,
  paper_recall,
  quit,
  undo,
  redo,
  settings,
  any_task,
  transfer,
  keg_received,
  keg_change,
  gas_set,
  level_reading,
  temperature_read,
  logger_import,
  bottle_weighed,
  bottle_changed,
  line_locked,
  stock_take,
  round,
  register_kegs,
  register_place,
  register_instrument,
  register_beer,
  register_batch,
  register_line,
  register_regulator,
  register_bottle,
  register_rule,
  register_list,
  describe_cellar,
  page_kegs,
  page_lines,
  page_gas,
  page_safety,
  page_cleaning,
  page_beers,
  page_slate,
  page_log,
  shortcuts,
  about
};

enum class Menu { cellar, edit, log, the_register, paper, view, help };

struct CommandSpec {
  Command command{};
  Menu menu{};
  const char* text = "";      // with a mnemonic
  const char* shortcut = "";  // QKeySequence's portable form
  const char* does = "";      // one plain line for the list of shortcuts
  bool writes = false;        // off while the cellar is read-only
  bool starts_group = false;  // a separator above it in its menu
  // The task it opens, for those that only do that.
  const char* task = "";
};

[[nodiscard]] std::span<const CommandSpec> commands();
[[nodiscard]] const CommandSpec& spec_of(Command);
[[nodiscard]] QString title_of(Menu);
// In the language of the windows.
[[nodiscard]] QString text_of(const CommandSpec&);  // with its mnemonic
[[nodiscard]] QString does_of(const CommandSpec&);  // empty when the text says it all

}  // namespace ullage::ui
