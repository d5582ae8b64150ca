// SPDX-License-Identifier: GPL-3.0-or-later
//
// Every page, form and dialog, on the demo and on an empty cellar, in both
// themes, in metric and US units, in both languages, wide and at 1024x640: every control says its
// name, Tab leads through all of them and out again, text stands out 7:1, none
// is clipped, and dialogs fit a small screen. Pages and forms are taken from the
// program's own lists, so that a new one is judged without being named here.
#include "tests/journeys/every_screen.h"

#include <QFile>

#include "core/cellar/due_work.h"
#include "ui/commands/commands.h"
#include "ui/commands/shortcut_sheet.h"
#include "ui/commands/task_palette.h"
#include "ui/dialogs/as_of_dialog.h"
#include "ui/dialogs/backups.h"
#include "ui/dialogs/cleaning_list_preview.h"
#include "ui/dialogs/first_start.h"
#include "ui/dialogs/forms/task_forms.h"
#include "ui/dialogs/import_kegs.h"
#include "ui/dialogs/kit_dialog.h"
#include "ui/dialogs/log_preview.h"
#include "ui/dialogs/message_box.h"
#include "ui/dialogs/new_cellar.h"
#include "ui/dialogs/put_off_dialog.h"
#include "ui/dialogs/recall.h"
#include "ui/dialogs/round.h"
#include "ui/dialogs/rules_dialog.h"
#include "ui/dialogs/scan_offer.h"
#include "ui/dialogs/settings.h"
#include "ui/dialogs/sheet_preview.h"
#include "ui/dialogs/tag_preview.h"
#include "ui/dialogs/trace.h"
#include "ui/pages/cleaning_page.h"

namespace ullage {
namespace {

INSTANTIATE_TEST_SUITE_P(Looks, EveryScreen, ::testing::ValuesIn(looks),
                         [](const auto& which) { return which.param.name; });

TEST_P(EveryScreen, OfThePages) {
  for (const ui::CommandSpec& spec : ui::commands()) {
    if (spec.menu != ui::Menu::view) continue;
    window_->run(spec.command);
    QTest::qWait(20);
    judge(*window_, spec.does);
  }
}

TEST_P(EveryScreen, OfTheForms) {
  for (const ui::TaskForm& form : ui::task_forms()) {
    const auto about = form.about ? first(*form.about) : std::nullopt;
    const std::unique_ptr<QDialog> dialog(
        ui::make_task_dialog(window_->context(), {form.kind, about, {}, {}}, nullptr));
    ASSERT_NE(dialog, nullptr) << form.kind;
    judge_dialog(*dialog, form.kind);
  }
}

TEST_P(EveryScreen, OfTheOtherDialogs) {
  const ui::Context& context = window_->context();
  ui::SettingsDialog settings(preferences_, nullptr);
  judge_dialog(settings, "settings");
  ui::NewCellar new_cellar;
  judge_dialog(new_cellar, "new cellar");
  ui::FirstStart first_start;
  judge_dialog(first_start, "first start");
  ui::BackupsDialog backups(
      {{"25 November 2026", "daily", "1.2 MB"},
       {"20 November 2026", "before the file was brought up to date", "1 MB"}});
  judge_dialog(backups, "backups");
  ui::MessageBox box("This file is damaged.", "Page 12 can’t be read.", nullptr);
  box.add_way("Restore a backup…", ui::ButtonRole::primary);
  box.add_way("Save what can be read…", ui::ButtonRole::plain);
  box.add_cancel();
  judge_dialog(box, "message box");
  ui::ShortcutSheet shortcuts;
  judge_dialog(shortcuts, "shortcuts");
  ui::TaskPalette palette(context, ui::task_forms());
  judge_dialog(palette, "task palette");
  ui::AsOfDialog as_of(context, nullptr);
  judge_dialog(as_of, "as of");
  ui::SheetPreview sheet(context);
  judge_dialog(sheet, "status sheet");
}

TEST_P(EveryScreen, OfTheDialogsThatPagesOpen) {
  const ui::Context& context = window_->context();
  ui::RoundDialog round(context);
  judge_dialog(round, "round");
  ui::RulesDialog rules(context);
  judge_dialog(rules, "rules");
  ui::KitDialog kit(context);
  judge_dialog(kit, "cleaner and time");
  ui::TagPreview tags(context, ui::TagKind::kegs);
  judge_dialog(tags, "keg tags");
  ui::TagPreview warnings(context, ui::TagKind::warnings);
  judge_dialog(warnings, "warning tags");
  for (const report::LogBook paper :
       {report::LogBook::line_cleaning, report::LogBook::kegs, report::LogBook::recall,
        report::LogBook::due, report::LogBook::bottles}) {
    ui::LogPreview log(context, paper);
    judge_dialog(log, "log on paper");
  }
  const auto status = cellar_->status();
  if (!status->batches.empty()) {
    ui::RecallDialog recall(context, status->batches.front().batch);
    judge_dialog(recall, "recall");
    ui::TraceDialog trace(context, status->batches.front().batch);
    judge_dialog(trace, "trace");
  }
  if (!status->kegs.empty()) {
    ui::ScanOffer offer(context);
    offer.show_keg(status->kegs.front().record.keg);
    judge_dialog(offer, "scanned keg");
  }
}

// A list that can be taken, and one whose every line has something wrong with it.
TEST_P(EveryScreen, OfTheKegListsImport) {
  const auto written = [&](const char* name, const QByteArray& bytes) {
    QFile file(folder_.filePath(QLatin1String(name)));
    EXPECT_TRUE(file.open(QIODevice::WriteOnly));
    file.write(bytes);
    return file.fileName();
  };
  ui::ImportKegs good(
      window_->context(),
      written("good.csv", "Number,Kind,Empty weight (kg)\nN01,ball_lock_19,4.1\nN02,keg_50,12\n"));
  EXPECT_TRUE(good.faults().isEmpty());
  judge_dialog(good, "keg list");
  QByteArray bad("Number,Kind,Empty weight (kg)\n");
  for (int i = 0; i < 60; ++i) bad += "N01,barrel of no kind that anybody knows,heavy\n";
  ui::ImportKegs refused(window_->context(), written("bad.csv", bad));
  EXPECT_FALSE(refused.faults().isEmpty());
  judge_dialog(refused, "keg list refused");
}

TEST_P(EveryScreen, OfTheCleaningDaysDialogs) {
  window_->run(ui::Command::page_cleaning);
  const auto* page = window_->findChild<ui::CleaningPage*>();
  ASSERT_NE(page, nullptr);
  const cellar::PlannedDay* day = page->shown_day();
  ASSERT_EQ(day != nullptr, GetParam().demo) << "nothing is due in an empty cellar";
  if (day == nullptr) return;
  ui::CleaningListPreview list(window_->context(), *day);
  judge_dialog(list, "cleaning list");
  const auto due = cellar::due_work(cellar_->journal(), *cellar_->status(), cellar_->calendar());
  ASSERT_FALSE(due.empty());
  ui::PutOffDialog move(window_->context(), due.front(), due);
  move.set_day(cellar_->calendar().date_of(cellar_->now()) + std::chrono::days(40));
  EXPECT_FALSE(move.consequence().isEmpty());
  judge_dialog(move, "move work");
}

}  // namespace
}  // namespace ullage
