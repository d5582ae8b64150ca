// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/window_commands.h"

#include <QObject>
#include <QTimer>

#include "app/desk.h"
#include "app/file_rescue.h"
#include "app/import_new.h"
#include "core/store/backups.h"
#include "core/store/exchange.h"
#include "ui/commands/shortcut_sheet.h"
#include "ui/dialogs/settings.h"

namespace ullage::app {
namespace {

const QString json_filter = QStringLiteral("JSON (*.json)");

void export_json(Desk& desk, QWidget* window) {
  const CellarSession* session = desk.session_of(window);
  if (!session) return;
  ui::Prompts& prompts = desk.tools().prompts;
  const auto file = prompts.save_file(window, QObject::tr("Export the cellar"),
                                      QStringLiteral("cellar.json"), json_filter);
  if (!file) return;
  if (const auto written = store::export_to(session->file(), ui::s(*file)); written) {
    prompts.tell(window,
                 QObject::tr("%n entries were exported", nullptr, static_cast<int>(*written)),
                 *file);
  } else {
    prompts.tell(window, ui::q(store::describe(written.error())), ui::q(written.error().detail));
  }
}

// Into a cellar of its own: an import never mixes with what is open.
void import_json(Desk& desk, QWidget* window) {
  ui::Prompts& prompts = desk.tools().prompts;
  const auto from = prompts.open_file(window, QObject::tr("Import a cellar"), json_filter);
  if (!from) return;
  const auto to =
      prompts.save_file(window, QObject::tr("Where to keep the imported cellar"),
                        QStringLiteral("imported.cellar"), QObject::tr("Cellar (*.cellar)"));
  if (!to) return;
  const std::filesystem::path target = ui::s(*to);
  const auto imported = import_new(ui::s(*from), target, {desk.tools().clock, desk.tools().ids});
  if (imported) {
    desk.open(target, window);
  } else if (const auto& file = imported.error().file) {
    prompts.tell(window, ui::q(store::describe(*file)), ui::q(file->detail));
  } else {
    QStringList lines;
    for (const store::ImportProblem& problem : imported.error().refused.problems) {
      lines << ui::q(store::describe(problem));
    }
    if (imported.error().refused.more) lines << QObject::tr("… and more");
    prompts.tell(window, QObject::tr("Nothing was imported."), lines.join(QLatin1Char('\n')));
  }
}

// Once the menu is done with the window it stands in: the window will close.
void restore_backup(Desk& desk, QWidget* window) {
  QTimer::singleShot(0, window, [&desk, window] { desk.restore_backup_of(window); });
}

void back_up(Desk& desk, QWidget* window) {
  const CellarSession* session = desk.session_of(window);
  if (!session) return;
  ui::Prompts& prompts = desk.tools().prompts;
  const cellar::Date today = session->calendar().date_of(session->now());
  if (const auto backup = store::backup_by_hand(session->file(), today); backup) {
    prompts.tell(window, QObject::tr("The cellar is backed up."), ui::q(backup->file.string()));
  } else {
    prompts.tell(window, ui::q(store::describe(backup.error())), ui::q(backup.error().detail));
  }
}

void about(Desk& desk, QWidget* window) {
  desk.tools().prompts.tell(
      window, QObject::tr("Ullage %1").arg(QStringLiteral(ULLAGE_VERSION)),
      QObject::tr("A cellar manager for kegs. Free software under the GNU General Public License, "
                  "version 3 or later; it comes without any warranty. Its figures are estimates: "
                  "local codes and licensed practice come first."));
}

}  // namespace

ui::AppCommands window_commands(Desk& desk) {
  using ui::Command;
  return {
      {Command::new_cellar, [&desk](QWidget* w) { desk.ask_new(w); }},
      {Command::open_cellar, [&desk](QWidget* w) { desk.ask_open(w); }},
      {Command::open_demo, [&desk](QWidget* w) { desk.open_demo(w); }},
      {Command::back_up, [&desk](QWidget* w) { back_up(desk, w); }},
      {Command::backups, [&desk](QWidget* w) { restore_backup(desk, w); }},
      {Command::export_json, [&desk](QWidget* w) { export_json(desk, w); }},
      {Command::import_json, [&desk](QWidget* w) { import_json(desk, w); }},
      {Command::check_file, [&desk](QWidget* w) { desk.check_in_background(w, true); }},
      {Command::settings,
       [&desk](QWidget* w) { ui::SettingsDialog(desk.preferences(), w).exec(); }},
      {Command::shortcuts, [](QWidget* w) { ui::ShortcutSheet(w).exec(); }},
      {Command::about, [&desk](QWidget* w) { about(desk, w); }},
  };
}

}  // namespace ullage::app
