// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/dialogs/papers.h"

#include <QCoreApplication>
#include <optional>

#include "core/report/calendar_feed.h"
#include "ui/dialogs/import_kegs.h"
#include "ui/dialogs/log_preview.h"
#include "ui/dialogs/tag_preview.h"
#include "ui/print/whole_file.h"
#include "ui/prompts.h"

namespace ullage::ui {
namespace {

struct PapersText {
  Q_DECLARE_TR_FUNCTIONS(PapersText)
};

std::optional<report::LogBook> log_of(Command command) {
  switch (command) {
    case Command::paper_line_cleaning:
      return report::LogBook::line_cleaning;
    case Command::paper_temperature:
      return report::LogBook::temperature;
    case Command::paper_gas:
      return report::LogBook::gas;
    case Command::paper_wastage:
      return report::LogBook::wastage;
    case Command::paper_round:
      return report::LogBook::round;
    case Command::paper_custody:
      return report::LogBook::custody;
    case Command::paper_kegs:
      return report::LogBook::kegs;
    case Command::paper_lines:
      return report::LogBook::lines;
    case Command::paper_rules:
      return report::LogBook::rules;
    case Command::paper_batches:
      return report::LogBook::batches;
    case Command::paper_register:
      return report::LogBook::bottles;
    case Command::paper_all:
      return report::LogBook::all;
    case Command::paper_due:
      return report::LogBook::due;
    case Command::paper_recall:
      return report::LogBook::recall;
    default:
      return std::nullopt;
  }
}

void ask_and_export_calendar(const Context& context, QWidget* parent) {
  const std::optional<QString> path =
      context.prompts.save_file(parent, PapersText::tr("Export due work and ready dates"),
                                QStringLiteral("cellar.ics"), PapersText::tr("Calendar (*.ics)"));
  if (path) save_calendar(context, *path);
}

void ask_and_import_kegs(const Context& context, QWidget* parent) {
  const std::optional<QString> path = context.prompts.open_file(
      parent, PapersText::tr("Import a keg list"), PapersText::tr("CSV (*.csv *.txt)"));
  if (!path) return;
  ImportKegs dialog(context, *path, parent);
  dialog.exec();
}

}  // namespace

bool is_paper(Command command) {
  return log_of(command) || command == Command::keg_tags || command == Command::warning_tags ||
         command == Command::export_calendar || command == Command::import_kegs;
}

void open_paper(Command command, const Context& context, QWidget* parent) {
  if (const auto log = log_of(command)) {
    LogPreview(context, *log, parent).exec();
  } else if (command == Command::keg_tags) {
    TagPreview(context, TagKind::kegs, parent).exec();
  } else if (command == Command::warning_tags) {
    TagPreview(context, TagKind::warnings, parent).exec();
  } else if (command == Command::export_calendar) {
    ask_and_export_calendar(context, parent);
  } else if (command == Command::import_kegs) {
    ask_and_import_kegs(context, parent);
  }
}

bool save_calendar(const Context& context, const QString& path) {
  const auto status = context.cellar.status();
  const auto items = report::calendar_items(*status, context.cellar.journal(), context.speaker());
  const std::string name = status->cellar ? status->cellar->name : context.cellar.file_name();
  const std::string text = report::icalendar_of(items, name, context.cellar.now());
  const auto written = write_whole(path, text);
  context.navigator.announce(
      written ? PapersText::tr("%n date(s) exported", nullptr, static_cast<int>(items.size()))
              : written.error(),
      false);
  return written.has_value();
}

}  // namespace ullage::ui
