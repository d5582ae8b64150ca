// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/file_rescue.h"

#include <QLocale>
#include <QObject>

#include "app/desk.h"
#include "app/lost_words.h"
#include "core/store/backups.h"
#include "core/store/recover.h"
#include "core/units/present.h"
#include "ui/context.h"
#include "ui/dialogs/backups.h"
#include "ui/main_window.h"

namespace ullage::app {
namespace {

using store::StoreFault;

QString reason_words(store::BackupReason reason) {
  switch (reason) {
    case store::BackupReason::daily:
      return QObject::tr("daily");
    case store::BackupReason::before_migration:
      return QObject::tr("before the file was brought up to date");
    case store::BackupReason::put_aside:
      return QObject::tr("put aside by a restore");
    case store::BackupReason::by_hand:
      return QObject::tr("made by hand");
  }
  return {};
}

QString day_words(cellar::Date day) {
  const QDate date = QDate(1970, 1, 1).addDays(day.time_since_epoch().count());
  return QLocale().toString(date, QLocale::LongFormat);
}

}  // namespace

bool FileRescue::lead_on(const store::StoreError& error, QWidget* parent) {
  const std::vector<WayOut> ways = ways_out(error, parent);
  QStringList words;
  for (const WayOut& way : ways) words << way.words;
  const int chosen = desk_.tools().prompts.choose(parent, ui::q(store::describe(error)),
                                                  ui::q(error.detail), words);
  if (chosen < 0 || chosen >= static_cast<int>(ways.size())) return false;
  return ways[static_cast<std::size_t>(chosen)].take();
}

std::vector<FileRescue::WayOut> FileRescue::ways_out(const store::StoreError& error,
                                                     QWidget* parent) {
  std::vector<WayOut> ways;
  const std::filesystem::path file = error.file;
  const auto reopen = [this, file, parent](bool network) {
    store::OpenOptions options;
    options.read_only = true;
    options.allow_network_read_only = network;
    return desk_.open(file, parent, options);
  };
  switch (error.fault) {
    case StoreFault::locked_by_other:
      ways.push_back({QObject::tr("Try again"), [=, this] { return desk_.open(file, parent); }});
      ways.push_back({QObject::tr("Open read-only"), [=] { return reopen(false); }});
      break;
    case StoreFault::network_file_system:
      ways.push_back({QObject::tr("Open read-only"), [=] { return reopen(true); }});
      break;
    case StoreFault::damaged:
    case StoreFault::migration_failed:
      ways.push_back({QObject::tr("Restore a backup…"),
                      [=, this] { return restore(file, parent) && desk_.open(file, parent); }});
      ways.push_back(
          {QObject::tr("Save what can be read…"), [=, this] { return recover(file, parent); }});
      break;
    case StoreFault::unreadable:
    case StoreFault::absent:
      if (!store::list_backups(file).empty()) {
        ways.push_back({QObject::tr("Restore a backup…"),
                        [=, this] { return restore(file, parent) && desk_.open(file, parent); }});
      }
      break;
    default:
      break;
  }
  ways.push_back(
      {QObject::tr("Choose another file…"), [=, this] { return desk_.ask_open(parent); }});
  return ways;
}

bool FileRescue::restore(const std::filesystem::path& file, QWidget* parent) {
  const std::vector<store::Backup> backups = store::list_backups(file);
  if (backups.empty()) {
    desk_.tools().prompts.tell(parent, QObject::tr("There is no backup of this cellar."),
                               ui::q(store::backup_folder(file).string()));
    return false;
  }
  std::vector<ui::BackupRow> rows;
  rows.reserve(backups.size());
  for (const store::Backup& backup : backups) {
    rows.push_back({day_words(backup.day), reason_words(backup.reason),
                    QLocale().formattedDataSize(static_cast<qint64>(backup.size))});
  }
  ui::BackupsDialog ask(std::move(rows), parent);
  if (ask.exec() != QDialog::Accepted || !ask.chosen()) return false;
  const auto restored =
      store::restore_from(file, backups[present(ask.chosen())].file, desk_.moment().today);
  if (!restored) {
    desk_.tools().prompts.tell(parent, ui::q(store::describe(restored.error())),
                               ui::q(restored.error().detail));
    return false;
  }
  if (!restored->put_aside.empty()) {
    desk_.tools().prompts.tell(parent, QObject::tr("The backup is in place."),
                               QObject::tr("What the file was before is kept as %1.")
                                   .arg(ui::q(restored->put_aside.string())));
  }
  return true;
}

bool FileRescue::recover(const std::filesystem::path& file, QWidget* parent) {
  const std::filesystem::path proposed =
      file.parent_path() / (file.stem().string() + " recovered.cellar");
  const std::optional<QString> target =
      desk_.tools().prompts.save_file(parent, QObject::tr("Where to put what can be read"),
                                      ui::q(proposed.string()), QObject::tr("Cellar (*.cellar)"));
  if (!target) return false;
  const auto report = store::recover(file, ui::s(*target));
  if (!report) {
    desk_.tools().prompts.tell(parent, ui::q(store::describe(report.error())),
                               ui::q(report.error().detail));
    return false;
  }
  // Opened first: what was lost is told by the names that the saved cellar knows.
  const bool opened = desk_.open(report->new_file, parent);
  ui::MainWindow* window = opened ? desk_.windows().back() : nullptr;
  desk_.tools().prompts.tell(
      window ? window : parent,
      QObject::tr("%n entries were saved", nullptr, static_cast<int>(report->saved)),
      window ? lost_words(*report, window->context()) : ui::q(store::summary(*report)));
  return opened;
}

}  // namespace ullage::app
