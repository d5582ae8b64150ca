// SPDX-License-Identifier: GPL-3.0-or-later
//
// The cleaning day through the main window, on the real demo cellar: what is due, the plan,
// locks, ticks, one taken back, the release by a check, the list on paper; by keyboard alone;
// closed and started again amid it; a task moved by key; rules from a ready set.
#include <gmock/gmock.h>

#include <QApplication>
#include <QCheckBox>
#include <QComboBox>
#include <QLabel>
#include <QLineEdit>
#include <QProcess>
#include <QPushButton>
#include <QTest>
#include <QTimer>
#include <QTreeWidget>
#include <algorithm>
#include <memory>

#include "tests/journeys/cleaning_journey.h"
#include "tests/support/accessibility.h"
#include "ui/dialogs/cleaning_list_preview.h"
#include "ui/dialogs/forms/entry_form.h"
#include "ui/dialogs/put_off_dialog.h"
#include "ui/dialogs/rules_dialog.h"
#include "ui/pages/cleaning_page.h"

namespace ullage {
namespace {

using cellar::StepKind;

TEST_F(CleaningJourney, TheDayIsPlannedLockedTickedReleasedAndPrinted) {
  ASSERT_FALSE(page_->proposed().empty());
  const cellar::SubjectRef about = some_line();

  // The cleaner before the lock: said, and not ticked when the person thinks better of it.
  prompts_.confirmations.push_back(false);
  click(StepKind::caustic, about);
  ASSERT_EQ(prompts_.asked.size(), 1);
  EXPECT_EQ(prompts_.risks, prompts_.asked) << "Enter must not tick it";
  EXPECT_FALSE(page_->begun());
  EXPECT_FALSE(box(spot(StepKind::caustic, about))->isChecked());

  for (const StepKind kind : {StepKind::lock, StepKind::vent, StepKind::flush}) {
    click(kind, about);
  }
  EXPECT_TRUE(page_->begun());
  EXPECT_TRUE(line(about).lock) << "locked by the tick";
  click(StepKind::caustic, about);
  EXPECT_TRUE(box(spot(StepKind::caustic, about))->isChecked());
  const auto cleaned = line(about).last_cleaned;
  ASSERT_TRUE(cleaned);

  // A tick taken back is struck, not lost; ticked again it counts again.
  click(StepKind::caustic, about);
  EXPECT_NE(line(about).last_cleaned, cleaned);
  click(StepKind::caustic, about);
  click(StepKind::rinse, about);
  EXPECT_TRUE(line(about).lock) << "rinsing releases nothing";
  // With each cleaning, as the demo's rules have it.
  click(StepKind::strip_down, about);
  click(StepKind::coupler, about);
  EXPECT_EQ(prompts_.asked.size(), 1) << "no step was out of order";

  on_next<ui::EntryForm>([](ui::EntryForm& form) {
    auto* by = form.findChild<QWidget*>(QStringLiteral("checked_by"))->findChild<QLineEdit*>();
    by->setText(QStringLiteral("JB"));
    form.findChild<QCheckBox*>(QStringLiteral("passed"))->setChecked(true);
    EXPECT_TRUE(form.log()) << form.refusal().toStdString();
    form.accept();
  });
  const Spot release = spot(StepKind::release, about);
  auto* answer = page_->findChild<QPushButton*>(
      QStringLiteral("answer_%1_%2").arg(release.step).arg(release.thing));
  ASSERT_NE(answer, nullptr);
  answer->click();
  settle();
  EXPECT_FALSE(line(about).lock);
  EXPECT_TRUE(box(release)->isChecked());
}

// The demo's line that stands locked: no second lock is asked for, and no untick ends
// this one.
TEST_F(CleaningJourney, ALineThatStandsLockedIsTickedOnTheListWithSinceWhenAndByWhom) {
  const auto status = cellar_->status();
  const auto locked =
      std::ranges::find_if(status->lines, [](const auto& l) { return l.lock.has_value(); });
  ASSERT_NE(locked, status->lines.end());
  const cellar::SubjectRef about = cellar::subject(locked->record.line);
  const auto today = cellar_->calendar().date_of(cellar_->now());
  ASSERT_FALSE(page_->proposed().empty());
  ASSERT_EQ(page_->shown_day()->day, today) << "the demo has work overdue";
  QCheckBox* tick = box(spot(StepKind::lock, about));
  ASSERT_NE(tick, nullptr);
  EXPECT_TRUE(tick->isChecked());
  EXPECT_FALSE(tick->isEnabled());
  EXPECT_TRUE(tick->text().contains(QStringLiteral("locked since"))) << tick->text().toStdString();
  EXPECT_TRUE(tick->text().contains(ui::q(" by " + locked->lock->by)))
      << tick->text().toStdString();
  // The other steps about it may begin at once.
  click(StepKind::vent, about);
  EXPECT_TRUE(prompts_.asked.isEmpty());
  EXPECT_TRUE(page_->begun());
  EXPECT_TRUE(box(spot(StepKind::lock, about))->isChecked());
}

TEST_F(CleaningJourney, TheDayByKeyboardAlone) {
  ASSERT_TRUE(QTest::qWaitForWindowActive(window_.get()));
  const cellar::SubjectRef about = some_line();
  tab_to(QStringLiteral("day_0"));
  for (const StepKind kind : {StepKind::lock, StepKind::vent, StepKind::flush, StepKind::caustic}) {
    press_space_on(kind, about);
  }
  EXPECT_TRUE(prompts_.asked.isEmpty()) << "no step was out of order";
  EXPECT_TRUE(line(about).lock);
  EXPECT_TRUE(box(spot(StepKind::caustic, about))->isChecked());
  tab_to(QStringLiteral("timer_%1").arg(spot(StepKind::caustic, about).step));
  QTest::keyClick(QApplication::focusWidget(), Qt::Key_Space);
  settle();
  auto* left = page_->findChild<QLabel*>(
      QStringLiteral("timer_left_%1").arg(spot(StepKind::caustic, about).step));
  EXPECT_TRUE(left->text().contains(QStringLiteral("left"))) << left->text().toStdString();
  tab_to(QStringLiteral("close_list"));
  QTest::keyClick(QApplication::focusWidget(), Qt::Key_Space);
  settle();
  EXPECT_FALSE(page_->begun());
  EXPECT_TRUE(line(about).lock) << "closing a list releases nothing";
}

TEST_F(CleaningJourney, AListBegunGoesOnAfterTheProgramWasClosed) {
  const cellar::SubjectRef about = some_line();
  for (const StepKind kind : {StepKind::lock, StepKind::vent, StepKind::flush, StepKind::caustic}) {
    click(kind, about);
  }
  const Spot caustic = spot(StepKind::caustic, about);
  page_->findChild<QPushButton*>(QStringLiteral("timer_%1").arg(caustic.step))->click();
  settle();
  const auto before = *page_->shown_day();

  restart();
  ASSERT_TRUE(page_->begun());
  ASSERT_EQ(page_->shown_day()->steps.size(), before.steps.size());
  for (std::size_t i = 0; i < before.steps.size(); ++i) {
    EXPECT_EQ(page_->shown_day()->steps[i].kind, before.steps[i].kind);
    EXPECT_EQ(page_->shown_day()->steps[i].things, before.steps[i].things);
  }
  for (const StepKind kind : {StepKind::lock, StepKind::vent, StepKind::flush, StepKind::caustic}) {
    EXPECT_TRUE(box(spot(kind, about))->isChecked()) << "logged, or ticked by hand";
  }
  EXPECT_FALSE(box(spot(StepKind::rinse, about))->isChecked());
  auto* left = page_->findChild<QLabel*>(QStringLiteral("timer_left_%1").arg(caustic.step));
  EXPECT_TRUE(left->text().contains(QStringLiteral("left"))) << "the cleaner is still standing";
  // What was ticked before can be taken back, and partly done is fine.
  const auto cleaned = line(about).last_cleaned;
  click(StepKind::caustic, about);
  EXPECT_NE(line(about).last_cleaned, cleaned);

  page_->findChild<QPushButton*>(QStringLiteral("close_list"))->click();
  settle();
  restart();
  EXPECT_FALSE(page_->begun()) << "a list that was closed is not opened again";
}

TEST_F(CleaningJourney, TheListPrintsAsTextOnBothPapers) {
  ASSERT_NE(page_->shown_day(), nullptr);
  bool previewed = false;
  on_next<ui::CleaningListPreview>([&](ui::CleaningListPreview& preview) {
    previewed = true;
    auto* paper = preview.findChild<QComboBox*>();
    for (const char* width : {"595", "612"}) {
      paper->setCurrentIndex(QLatin1String(width) == QLatin1String("595") ? 0 : 1);
      const QString path =
          folder_.filePath(QStringLiteral("list-%1.pdf").arg(QLatin1String(width)));
      ASSERT_TRUE(preview.save_pdf(path));
      QProcess text;
      text.start(QStringLiteral("pdftotext"),
                 {QStringLiteral("-layout"), path, QStringLiteral("-")});
      ASSERT_TRUE(text.waitForFinished());
      const QString words = QString::fromUtf8(text.readAllStandardOutput());
      for (const char* expected :
           {"Cleaning list", "Lock the lines", "CAUTION", "Checked by", "of beer lost"}) {
        EXPECT_TRUE(words.contains(QLatin1String(expected))) << expected << words.toStdString();
      }
      QProcess info;
      info.start(QStringLiteral("pdfinfo"), {path});
      ASSERT_TRUE(info.waitForFinished());
      EXPECT_TRUE(QString::fromUtf8(info.readAllStandardOutput()).contains(QLatin1String(width)));
    }
    preview.reject();
  });
  page_->findChild<QPushButton*>(QStringLiteral("print_list"))->click();
  EXPECT_TRUE(previewed);
}

TEST_F(CleaningJourney, TheDemoHasAReadySetAndARuleOfItsOwn) {
  const auto rules = cellar_->status()->rules;
  EXPECT_GE(rules.size(), 6U);
  EXPECT_EQ(std::ranges::count(rules, std::string("own rule"), &cellar::RuleRecord::source), 1);
}

TEST_F(CleaningJourney, ThePaperMenuOpensTheDaysList) {
  window_->run(ui::Command::page_kegs);
  bool opened = false;
  QTimer::singleShot(0, [&] {
    auto* preview = qobject_cast<ui::CleaningListPreview*>(QApplication::activeModalWidget());
    opened = preview != nullptr;
    if (preview) preview->reject();
  });
  window_->run(ui::Command::paper_cleaning_list);
  EXPECT_TRUE(opened);
  EXPECT_EQ(window_->page(), ui::PageId::cleaning);
}

TEST_F(CleaningJourney, MovingATaskTellsWhatBecomesOverdueAndIsUndone) {
  auto* list = page_->findChild<QTreeWidget*>(QStringLiteral("due_list"));
  ASSERT_NE(list, nullptr);
  ASSERT_NE(list->currentItem(), nullptr) << "the first row is chosen";
  const std::size_t before = cellar_->journal().entries().size();
  QString told;
  on_next<ui::PutOffDialog>([&told](ui::PutOffDialog& dialog) {
    told = dialog.consequence();
    dialog.findChild<QPushButton*>(QStringLiteral("move_it"))->click();
  });
  list->setFocus();
  QTest::keyClick(list, Qt::Key_Return);
  settle();
  EXPECT_TRUE(told.contains(QStringLiteral("overdue"))) << told.toStdString();
  ASSERT_EQ(cellar_->journal().entries().size(), before + 1);
  const auto* moved = get_if<cellar::WorkMoved>(&cellar_->journal().entries().back().payload);
  ASSERT_NE(moved, nullptr);
  window_->run(ui::Command::undo);
  EXPECT_EQ(cellar_->journal().standing(cellar_->journal().entries().at(before).header.id),
            cellar::Standing::struck);
}

TEST_F(CleaningJourney, AReadySetGivesANewCellarItsRules) {
  cellar::CellarDescribed described;
  described.name = "New cellar";
  described.time_zone = "UTC";
  auto empty = app::CellarSession::create(
      folder_.filePath(QStringLiteral("empty.cellar")).toStdString(), described, {clock_, ids_});
  ASSERT_TRUE(empty);
  show(std::move(*empty));
  EXPECT_TRUE(page_->proposed().empty());
  ui::RulesDialog dialog(window_->context());
  dialog.show();
  dialog.findChild<QPushButton*>(QStringLiteral("rule_take_set"))->click();
  const auto rules = cellar_->status()->rules;
  EXPECT_GE(rules.size(), 4U);
  for (const cellar::RuleRecord& r : rules) EXPECT_FALSE(r.source.empty());
  auto* table = dialog.findChild<QTreeWidget*>(QStringLiteral("rules_table"));
  EXPECT_EQ(table->topLevelItemCount(), static_cast<int>(rules.size()));
  dialog.findChild<QPushButton*>(QStringLiteral("rule_take_set"))->click();
  EXPECT_EQ(cellar_->status()->rules.size(), rules.size()) << "a second time adds nothing";
  dialog.findChild<QPushButton*>(QStringLiteral("rule_force"))->click();
  EXPECT_EQ(std::ranges::count(cellar_->status()->rules, false, &cellar::RuleRecord::in_force), 1);
}

TEST_F(CleaningJourney, ThePageAndItsDialogsCanBeReadAndReachedByKey) {
  EXPECT_THAT(testing::unnamed_controls(*window_), ::testing::IsEmpty());
  EXPECT_THAT(testing::tab_order_faults(*window_), ::testing::IsEmpty());
  EXPECT_THAT(testing::contrast_faults(*window_), ::testing::IsEmpty());
  EXPECT_THAT(testing::clipped_texts(*window_), ::testing::IsEmpty());
  ui::RulesDialog rules(window_->context());
  rules.show();
  ASSERT_TRUE(QTest::qWaitForWindowExposed(&rules));
  EXPECT_THAT(testing::unnamed_controls(rules), ::testing::IsEmpty());
  EXPECT_THAT(testing::clipped_texts(rules), ::testing::IsEmpty());
}

// Long names and sources wrap, where the window is narrow too.
TEST_F(CleaningJourney, NoDueWorkAndNoRuleIsCutOff) {
  window_->resize(1024, 640);
  settle();
  const auto* list = page_->findChild<QTreeWidget*>(QStringLiteral("due_list"));
  ASSERT_NE(list, nullptr);
  ASSERT_GT(list->topLevelItemCount(), 0);
  EXPECT_THAT(testing::cut_cells(*list), ::testing::IsEmpty());
  ui::RulesDialog rules(window_->context());
  rules.show();
  ASSERT_TRUE(QTest::qWaitForWindowExposed(&rules));
  rules.findChild<QPushButton*>(QStringLiteral("rule_take_set"))->click();
  settle();
  const auto* table = rules.findChild<QTreeWidget*>(QStringLiteral("rules_table"));
  ASSERT_NE(table, nullptr);
  ASSERT_GE(table->topLevelItemCount(), 5);
  EXPECT_THAT(testing::cut_cells(*table), ::testing::IsEmpty());
}

}  // namespace
}  // namespace ullage
