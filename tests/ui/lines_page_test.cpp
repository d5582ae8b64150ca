// SPDX-License-Identifier: GPL-3.0-or-later
//
// The Lines page in a real window, over a cellar told entry by entry.
#include "ui/pages/lines_page.h"

#include <gtest/gtest.h>

#include <QApplication>
#include <QComboBox>
#include <QLabel>
#include <QPushButton>
#include <QSlider>
#include <QTableWidget>
#include <QTest>
#include <QTimer>
#include <memory>

#include "core/units/present.h"
#include "tests/support/accessibility.h"
#include "tests/ui/lines_fixture.h"
#include "ui/charts/profile_chart.h"
#include "ui/dialogs/log_preview.h"
#include "ui/dialogs/tag_preview.h"
#include "ui/pages/line_panel.h"
#include "ui/widgets/banner.h"
#include "ui/widgets/fact_list.h"
#include "ui/widgets/figure.h"
#include "ui/widgets/quantity_slider.h"
#include "ui/widgets/reasons_popup.h"

namespace ullage::testing {
namespace {

TEST_F(LinesWindow, ARowSaysTapBeerPressureGlassCleaningAndState) {
  open();
  EXPECT_EQ(cell(0, 0), "Faucet 1\nLine 1");
  EXPECT_EQ(cell(0, 1), "House ale\nK01");
  EXPECT_TRUE(cell(0, 2).startsWith("11.5 psi\nshould be ")) << cell(0, 2).toStdString();
  EXPECT_TRUE(cell(0, 3).contains(" to ")) << cell(0, 3).toStdString();
  EXPECT_TRUE(cell(0, 4).contains("No cleaning logged"));
  EXPECT_EQ(cell(0, 5), "Serves K01");
}

TEST_F(LinesWindow, AControlRecomputesAsItMovesAndWritesNothing) {
  open();
  const QString before = part<ui::ProfileChart>("profile_chart")->accessibleDescription();
  EXPECT_FALSE(part<QPushButton>("apply_what_if")->isEnabled());
  slide("try_length", 8);
  const auto change = page_->panel()->tried();
  ASSERT_TRUE(change.length);
  EXPECT_NEAR(units::in_feet(present(change.length)), 10, 1e-6);
  EXPECT_TRUE(part<QLabel>("what_if_words")->text().startsWith("A glass would take "));
  slide("try_pressure", -6);
  EXPECT_NE(part<ui::ProfileChart>("profile_chart")->accessibleDescription(), before);
  EXPECT_TRUE(cellar_.logged().empty());
  QTest::mouseClick(part<QPushButton>("reset_what_if"), Qt::LeftButton);
  EXPECT_TRUE(page_->panel()->tried().empty());
  EXPECT_EQ(part<ui::ProfileChart>("profile_chart")->accessibleDescription(), before);
}

TEST_F(LinesWindow, ApplyLogsOneActAfterAskingAndNothingWhenDeclined) {
  open();
  slide("try_length", 4);
  slide("try_pressure", 2);
  prompts_.confirmations = {false, true};
  QTest::mouseClick(part<QPushButton>("apply_what_if"), Qt::LeftButton);
  EXPECT_TRUE(cellar_.logged().empty());
  QTest::mouseClick(part<QPushButton>("apply_what_if"), Qt::LeftButton);
  ASSERT_EQ(cellar_.logged().size(), 1U);
  const Act& act = cellar_.logged().front();
  ASSERT_EQ(act.drafts.size(), 2U);
  EXPECT_EQ(kind_of(act.drafts[0].payload), "gas_set");
  EXPECT_EQ(kind_of(act.drafts[1].payload), "line_record");
  EXPECT_EQ(navigator_.announced.size(), 1);
  EXPECT_TRUE(page_->panel()->tried().empty());
}

TEST_F(LinesWindow, WhatWasMovedStaysWhenTheCellarIsToldAnew) {
  open();
  slide("try_bore", 3);
  const auto before = page_->panel()->tried().bore;
  tell(day(22, 1));
  EXPECT_EQ(page_->panel()->tried().bore, before);
}

TEST_F(LinesWindow, AHeldBackKegLocksItsLineAndOffersNoPour) {
  Quarantined hold;
  hold.keg = scene_.keg;
  hold.reason = "smells of vinegar";
  scene_.log(day(22, 1), hold);
  tell(day(22, 2));
  open();
  EXPECT_EQ(part<ui::Banner>("line_lock")->headline(), "DO NOT SERVE");
  EXPECT_TRUE(cell(0, 5).startsWith("Do not serve"));
  EXPECT_FALSE(page_->findChild<QPushButton*>("timed_pour"));
  QTest::mouseClick(part<QPushButton>("cleared"), Qt::LeftButton);
  ASSERT_EQ(navigator_.tasks.size(), 1U);
  EXPECT_EQ(navigator_.tasks[0].kind, "cleared");
}

TEST_F(LinesWindow, AdviceIsShownWithItsReasons) {
  scene_.gas(scene_.keg, day(21, 1), 4);
  tell(day(21, 2));
  open();
  QStringList said;
  for (const auto* banner : page_->findChildren<ui::Banner*>()) said << banner->headline();
  EXPECT_TRUE(said.join("|").contains("Gas breaks out")) << said.join("|").toStdString();
}

TEST_F(LinesWindow, SaysWhatIsMissingWhereItCannotTell) {
  LineRecord r = scene_.record;
  r.bore.reset();
  scene_.log(day(21, 5), r);
  tell();
  open();
  EXPECT_TRUE(part<QLabel>("no_pour")->isVisible());
  EXPECT_TRUE(part<QLabel>("no_pour")->text().contains("length and bore"));
  EXPECT_EQ(cell(0, 3), "–");
}

TEST_F(LinesWindow, EveryControlIsNamedReachedByTabReadableAndWhole) {
  for (const QSize size : {QSize(1240, 820), QSize(840, 640)}) {
    open(size);
    QTest::qWait(30);
    EXPECT_EQ(unnamed_controls(*page_), std::vector<std::string>{});
    EXPECT_EQ(tab_order_faults(*page_), std::vector<std::string>{});
    EXPECT_EQ(contrast_faults(*page_), std::vector<std::string>{});
    EXPECT_EQ(clipped_texts(*page_), std::vector<std::string>{});
  }
}

[[nodiscard]] QString reasons_shown() {
  for (QWidget* top : QApplication::topLevelWidgets()) {
    auto* popup = qobject_cast<ui::ReasonsPopup*>(top);
    if (!popup || !popup->isVisible()) continue;
    QStringList words;
    for (const QLabel* label : popup->findChildren<QLabel*>()) words << label->text();
    popup->close();
    return words.join('\n');
  }
  return {};
}

// Each number opens what it stands on, by mouse and by Enter in the table.
TEST_F(LinesWindow, EveryNumberOpensItsReasons) {
  open();
  int opened = 0;
  for (auto* figure : part<ui::FactList>("line_facts")->findChildren<ui::Figure*>()) {
    if (!figure->isVisible()) continue;
    page_->panel()->ensureWidgetVisible(figure);
    QTest::mouseClick(figure, Qt::LeftButton);
    const QString words = reasons_shown();
    EXPECT_TRUE(words.contains("Worked out from")) << figure->text().toStdString();
    EXPECT_TRUE(words.contains("Source")) << figure->text().toStdString();
    ++opened;
  }
  EXPECT_GE(opened, 7);
  QTest::mouseClick(part<ui::Figure>("profile_title"), Qt::LeftButton);
  EXPECT_TRUE(reasons_shown().contains("Beer at"));
  auto* table = part<QTableWidget>("lines_table");
  table->setFocus();
  table->setCurrentCell(0, 2);
  QTest::keyClick(table, Qt::Key_Return);
  EXPECT_TRUE(reasons_shown().contains("Regulator at 11.5"));
  table->setFocus();
  table->setCurrentCell(0, 3);
  QTest::keyClick(table, Qt::Key_Return);
  EXPECT_TRUE(reasons_shown().contains("Time a pour"));
}

TEST_F(LinesWindow, ReasonsOfATriedChangeSayThatItIsTried) {
  open();
  slide("try_pressure", 3);
  auto* table = part<QTableWidget>("lines_table");
  table->setFocus();
  table->setCurrentCell(0, 2);
  QTest::keyClick(table, Qt::Key_Return);
  EXPECT_TRUE(reasons_shown().contains("as tried"));
}

// The day by the cellar's rule, with who says so.
TEST_F(LinesWindow, CleaningIsDueByTheRuleThatGoverns) {
  RuleRecord rule;
  rule.rule = scene_.counted.make<RuleId>();
  rule.scope = RuleScope::line;
  rule.work = WorkKind::caustic;
  rule.interval_days = 14;
  rule.reason = "yeast grows back";
  rule.source = "trade handbook";
  scene_.log(day(0), rule);
  LineCleaned cleaned;
  cleaned.line = scene_.line;
  cleaned.flush_check = FlushCheck::litmus;
  cleaned.flush_passed = true;
  scene_.log(day(20), cleaned);
  tell();
  for (const Entry& e : scene_.journal.entries()) cellar_.journal_to_fill().append(e);
  open();
  EXPECT_TRUE(cell(0, 4).contains("\ndue ")) << cell(0, 4).toStdString();
  auto* table = part<QTableWidget>("lines_table");
  table->setFocus();
  table->setCurrentCell(0, 4);
  QTest::keyClick(table, Qt::Key_Return);
  const QString words = reasons_shown();
  EXPECT_TRUE(words.contains("every 14 days")) << words.toStdString();
  EXPECT_TRUE(words.contains("yeast grows back"));
  EXPECT_TRUE(words.contains("trade handbook"));
}

TEST_F(LinesWindow, TabGoesThroughThePanelFromTopToBottom) {
  open();
  part<QPushButton>("timed_pour")->setFocus();
  const QWidget* facts = part<ui::FactList>("line_facts");
  int slider = -1, fact = -1, profile = -1;
  for (int i = 0; i < 40; ++i) {
    QTest::keyClick(page_->focusWidget(), Qt::Key_Tab);
    const QWidget* here = page_->focusWidget();
    ASSERT_NE(here, nullptr);
    if (slider < 0 && here->objectName() == "try_pressure_slider") slider = i;
    if (profile < 0 && here->objectName() == "profile_title") profile = i;
    if (fact < 0 && facts->isAncestorOf(here)) fact = i;
  }
  EXPECT_GE(profile, 0);
  EXPECT_GT(slider, profile);
  EXPECT_GT(fact, slider);
}

TEST_F(LinesWindow, ALockedLineOffersATagForItsTap) {
  Quarantined hold;
  hold.keg = scene_.keg;
  hold.reason = "smells of vinegar";
  scene_.log(day(22, 1), hold);
  tell(day(22, 2));
  open();
  QTimer::singleShot(0, [] {
    ui::TagPreview* preview = nullptr;
    ASSERT_TRUE(QTest::qWaitFor([&] {
      preview = qobject_cast<ui::TagPreview*>(QApplication::activeModalWidget());
      return preview != nullptr;
    }));
    EXPECT_EQ(preview->findChild<QComboBox*>("which")->currentText(), "Do not serve: Line 1");
    QTest::keyClick(preview, Qt::Key_Escape);
  });
  QTest::mouseClick(part<QPushButton>("print_line_tag"), Qt::LeftButton);
  EXPECT_EQ(QApplication::activeModalWidget(), nullptr);
}

TEST_F(LinesWindow, ALineThatServesOffersNoTag) {
  open();
  EXPECT_FALSE(page_->findChild<QPushButton*>("print_line_tag"));
}

TEST_F(LinesWindow, NoLinesYet) {
  cellar_.show(CellarStatus{});
  open();
  EXPECT_FALSE(part<QTableWidget>("lines_table")->isVisible());
}

TEST_F(LinesWindow, TheTableOpensAsAListToPrintOrSaveAsCsv) {
  open();
  bool seen = false;
  QTimer::singleShot(0, [&seen] {
    ui::LogPreview* preview = nullptr;
    ASSERT_TRUE(QTest::qWaitFor([&] {
      preview = qobject_cast<ui::LogPreview*>(QApplication::activeModalWidget());
      return preview != nullptr;
    }));
    seen = true;
    EXPECT_EQ(preview->sheet().title, "Lines");
    EXPECT_FALSE(preview->sheet().rows.empty());
    EXPECT_TRUE(preview->findChild<QPushButton*>("save_csv")->isVisible());
    QTest::keyClick(preview, Qt::Key_Escape);
  });
  QTest::mouseClick(part<QPushButton>("line_list"), Qt::LeftButton);
  EXPECT_TRUE(seen);
}

}  // namespace
}  // namespace ullage::testing
