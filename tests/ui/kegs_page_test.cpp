// SPDX-License-Identifier: GPL-3.0-or-later
#include <QLineEdit>
#include <QMenu>
#include <QPushButton>
#include <QScrollBar>
#include <QStackedWidget>
#include <QTest>
#include <QToolButton>

#include "tests/ui/kegs_fixture.h"
#include "ui/models/keg_row.h"
#include "ui/pages/keg_panel.h"
#include "ui/widgets/banner.h"
#include "ui/widgets/empty_state.h"
#include "ui/widgets/figure.h"

namespace ullage::testing {

using ui::KegFilter;

TEST_F(KegsWindow, ShowsARowForEachKegAndTheChosenOneBesideIt) {
  open();
  EXPECT_EQ(tags().size(), 12);
  EXPECT_EQ(chosen_tag(), "K01");
  EXPECT_EQ(part<QLabel>("panel_contents")->text(), "Red Rye");
  EXPECT_EQ(part<QLabel>("readiness_headline")->text(), "Ready Fri 27 Nov (1 to 3 days)");
}

TEST_F(KegsWindow, AChipShowsItsKegsAndPressedAgainShowsAll) {
  open();
  click_chip(KegFilter::on_tap);
  EXPECT_EQ(tags(), (QStringList{"K03", "K11"}));
  EXPECT_EQ(part<QLabel>("shown_count")->text(), "2 of 12 kegs");
  click_chip(KegFilter::empty);
  EXPECT_EQ(tags(), (QStringList{"K05", "K09", "K12"}));
  click_chip(KegFilter::empty);
  EXPECT_EQ(tags().size(), 12);
}

TEST_F(KegsWindow, ReadyToUseLeavesOutWhatIsHeldBack) {
  open();
  click_chip(KegFilter::ready);
  EXPECT_EQ(tags(), QStringList{"K07"});  // K06 is ready too, but held back
  click_chip(KegFilter::attention);
  EXPECT_TRUE(tags().contains("K06"));
  EXPECT_TRUE(tags().contains("K11"));
}

TEST_F(KegsWindow, SortsByWhatToUseNextAndKeepsTheOrderForNextTime) {
  open();
  for (QAction* action : part<QMenu>("keg_order_menu")->actions()) {
    if (action->text() == "Use next") action->trigger();
  }
  EXPECT_EQ(tags().mid(0, 5), (QStringList{"K03", "K07", "K01", "K02", "K04"}));
  open();
  EXPECT_EQ(tags().mid(0, 2), (QStringList{"K03", "K07"}));
  EXPECT_EQ(part<QToolButton>("keg_order")->text(), "Sort: Use next");
}

TEST_F(KegsWindow, TypingAnywhereFindsByTagBeerStateAndPlace) {
  open();
  table()->setFocus();
  type("saison");
  EXPECT_EQ(part<QLineEdit>("keg_search")->text(), "saison");
  EXPECT_EQ(tags(), QStringList{"K07"});
  press(Qt::Key_Escape);
  EXPECT_EQ(tags().size(), 12);
  EXPECT_TRUE(table()->hasFocus());
  type("on tap");
  EXPECT_EQ(tags(), (QStringList{"K03", "K11"}));
  press(Qt::Key_Escape);
  type("back room rye");  // words need not stand together
  EXPECT_EQ(tags(), QStringList{"K01"});
  press(Qt::Key_Escape);
  part<QPushButton>("status_sheet")->setFocus();
  type("k12");
  EXPECT_EQ(tags(), QStringList{"K12"});
}

TEST_F(KegsWindow, FilteringAwayTheChosenKegBringsItBackAfterwards) {
  open();
  page_->show_keg(numbered<cellar::KegId>(7));
  click_chip(KegFilter::empty);
  EXPECT_EQ(chosen_tag(), "K05");
  click_chip(KegFilter::all);
  EXPECT_EQ(chosen_tag(), "K07");
}

TEST_F(KegsWindow, ArrowsHomeAndEndWalkTheRowsAndEnterGoesToThePanel) {
  open();
  table()->setFocus();
  press(Qt::Key_Down);
  EXPECT_EQ(chosen_tag(), "K02");
  EXPECT_EQ(part<QLabel>("panel_contents")->text(), "Ginger Beer");
  press(Qt::Key_End);
  EXPECT_EQ(chosen_tag(), "K12");
  press(Qt::Key_Home);
  EXPECT_EQ(chosen_tag(), "K01");
  press(Qt::Key_Return);
  EXPECT_TRUE(part<QWidget>("keg_panel")->hasFocus());
  press(Qt::Key_Escape);
  EXPECT_TRUE(table()->hasFocus());
}

TEST_F(KegsWindow, TabGoesRoundAllControlsAndComesBack) {
  open();
  table()->setFocus();
  QSet<QWidget*> seen;
  for (int i = 0; i < 200 && !(seen.size() > 1 && table()->hasFocus()); ++i) {
    seen.insert(QApplication::focusWidget());
    press(Qt::Key_Tab);
  }
  EXPECT_TRUE(table()->hasFocus())
      << "a control keeps the focus: " << QApplication::focusWidget()->metaObject()->className();
  for (const char* name : {"keg_search", "keg_order", "keg_density", "log_transfer"}) {
    EXPECT_TRUE(seen.contains(part<QWidget>(name))) << name;
  }
}

TEST_F(KegsWindow, AChangeKeepsTheChoiceThoughTheOrderChanges) {
  open();
  page_->show_keg(numbered<cellar::KegId>(3));
  cellar::CellarStatus status = sample_cellar();
  std::rotate(status.kegs.begin(), status.kegs.begin() + 5, status.kegs.end());
  cellar_.show(status);
  EXPECT_EQ(chosen_tag(), "K03");
  EXPECT_EQ(part<QLabel>("panel_contents")->text(), "Harbour Bitter");
}

TEST_F(KegsWindow, AChangeKeepsTheScroll) {
  cellar_.show(sample_cellar_of(60));
  open();
  QScrollBar* bar = table()->verticalScrollBar();
  bar->setValue(bar->maximum() / 2);
  const int before = bar->value();
  ASSERT_GT(before, 0);
  cellar::CellarStatus status = sample_cellar_of(60);
  status.kegs[0].phase = cellar::Phase::dirty;
  cellar_.show(status);
  EXPECT_EQ(bar->value(), before);
}

TEST_F(KegsWindow, AHiddenPageCatchesUpWhenShown) {
  open();
  page_->hide();
  cellar_.show(sample_cellar_of(3));
  page_->show();
  EXPECT_EQ(tags().size(), 3);
}

TEST_F(KegsWindow, ALockedLineIsSaidOnTheRowAndReleasedFromThePanel) {
  open();
  page_->show_keg(numbered<cellar::KegId>(11));
  const QString row = table()->currentIndex().siblingAtColumn(5).data().toString();
  EXPECT_TRUE(row.startsWith("Do not serve – caustic since")) << row.toStdString();
  EXPECT_TRUE(row.contains("JB"));
  const auto banners = part<QWidget>("keg_panel")->findChildren<ui::Banner*>();
  ASSERT_FALSE(banners.isEmpty());
  EXPECT_TRUE(banners.first()->headline().startsWith("Do not serve"));
  click(banners.first()->findChild<QAbstractButton*>());
  ASSERT_EQ(navigator_.tasks.size(), 1U);
  EXPECT_EQ(navigator_.tasks[0].kind, "line_released");
  EXPECT_EQ(navigator_.tasks[0].about, cellar::subject(numbered<cellar::LineId>(2)));
}

TEST_F(KegsWindow, SaysWhyThereIsNoEstimate) {
  open();
  page_->show_keg(numbered<cellar::KegId>(4));
  EXPECT_EQ(table()->currentIndex().siblingAtColumn(3).data().toString(),
            "Can’t tell yet: no temperature known for the back room");
  EXPECT_EQ(part<ui::Figure>("carbonation_words")->text(),
            "Can’t tell yet: no temperature known for the back room");
  EXPECT_FALSE(part<QWidget>("carbonation_chart")->isVisible());
}

// The chips of the head wrap as the page narrows, and move what stands below them.
TEST_F(KegsWindow, NarrowedAndWidenedThePanelChangesItsPlace) {
  open();
  for (const int width : {1100, 640, 1284, 980, 640, 1000, 700, 1284}) {
    page_->resize(width, 700);
    QApplication::processEvents();
    EXPECT_EQ(part<QWidget>("keg_panel")->isVisible(), width >= 1000) << width;
    EXPECT_TRUE(table()->isVisible());
  }
}

TEST_F(KegsWindow, WithoutKegsTheNextStepIsToRegisterThem) {
  cellar_.show(sample_cellar_of(0));
  open();
  EXPECT_FALSE(table()->isVisible());
  EXPECT_FALSE(part<QWidget>("keg_panel")->isVisible());
  EXPECT_FALSE(part<QWidget>("keg_search")->isVisible());
  QPushButton* register_kegs = nullptr;
  for (auto* state : page_->findChildren<ui::EmptyState*>()) {
    if (state->isVisible()) register_kegs = state->findChild<QPushButton*>();
  }
  ASSERT_NE(register_kegs, nullptr);
  click(register_kegs);
  ASSERT_EQ(navigator_.tasks.size(), 1U);
  EXPECT_EQ(navigator_.tasks[0].kind, "register_kegs");
}

TEST_F(KegsWindow, RegisteredKegsThatNobodyCountedOfferAStockTaking) {
  open();
  EXPECT_FALSE(part<QWidget>("stock_row")->isVisible());  // something is known of each
  cellar::CellarStatus fresh = sample_cellar();
  for (std::size_t i = 0; i < 3; ++i) fresh.kegs.at(i).phase = cellar::Phase::unknown;
  cellar_.show(fresh);
  EXPECT_TRUE(part<QWidget>("stock_row")->isVisible());
  click(part<QPushButton>("take_stock"));
  ASSERT_EQ(navigator_.tasks.size(), 1U);
  EXPECT_EQ(navigator_.tasks[0].kind, "stock_take");
}

TEST_F(KegsWindow, AKegHeldBackSaysSoOnce) {
  cellar::CellarStatus held = sample_cellar();
  cellar::KegStatus& keg = held.kegs.front();
  keg.lock.reset();
  keg.quarantined =
      cellar::message(cellar::MessageKey::adv_held_back, std::string("smells of vinegar"));
  cellar_.show(held);
  open();
  const ui::StopSign sign = ui::caution_of(keg, context_.speaker());
  EXPECT_EQ(sign.head, "Held back");
  EXPECT_EQ(sign.rest, "smells of vinegar");
}

TEST_F(KegsWindow, NothingMatchingSaysSoAndOffersAll) {
  open();
  table()->setFocus();
  type("zzz");
  EXPECT_FALSE(table()->isVisible());
  for (auto* state : page_->findChildren<ui::EmptyState*>()) {
    if (state->isVisible()) click(state->findChild<QPushButton*>());
  }
  EXPECT_EQ(tags().size(), 12);
  EXPECT_TRUE(table()->isVisible());
  EXPECT_TRUE(part<QLineEdit>("keg_search")->text().isEmpty());
}

TEST_F(KegsWindow, ButtonsOpenTheSheetTheTransferAndLikelyTasks) {
  open();
  click(part<QPushButton>("status_sheet"));
  EXPECT_EQ(navigator_.status_sheets, 1);
  click(part<QPushButton>("log_transfer"));
  ASSERT_EQ(navigator_.tasks.size(), 1U);
  EXPECT_EQ(navigator_.tasks[0].kind, "transfer");
  page_->show_keg(numbered<cellar::KegId>(12));  // dirty
  QCoreApplication::processEvents();
  for (auto* button : part<QWidget>("keg_panel")->findChildren<QPushButton*>()) {
    if (button->isVisible() && button->text() == "Clean…") click(button);
  }
  ASSERT_EQ(navigator_.tasks.size(), 2U);
  EXPECT_EQ(navigator_.tasks[1].kind, "cleaned");
  EXPECT_EQ(navigator_.tasks[1].about, cellar::subject(numbered<cellar::KegId>(12)));
}

TEST_F(KegsWindow, NarrowWindowsOpenThePanelOverTheTable) {
  open({868, 560});
  auto* panel = part<QWidget>("keg_panel");
  EXPECT_FALSE(panel->isVisible());
  table()->setFocus();
  press(Qt::Key_Return);
  EXPECT_TRUE(panel->isVisible());
  EXPECT_TRUE(page_->rect().contains(panel->geometry()));
  press(Qt::Key_Escape);
  EXPECT_FALSE(panel->isVisible());
  EXPECT_TRUE(table()->hasFocus());
}

TEST_F(KegsWindow, OverTheTableThePanelHangsBelowTheHead) {
  open({868, 560});
  part<QToolButton>("keg_panel_toggle")->click();
  auto* panel = part<QWidget>("keg_panel");
  const auto* below = page_->findChild<QStackedWidget*>();
  ASSERT_TRUE(panel->isVisible());
  const auto hangs = [&] {
    return QTest::qWaitFor(
        [&] { return panel->y() == below->mapTo(page_.get(), QPoint(0, 0)).y(); }, 500);
  };
  EXPECT_TRUE(hangs());
  const int before = panel->y();
  cellar::CellarStatus fresh = sample_cellar();
  for (std::size_t i = 0; i < 3; ++i) fresh.kegs.at(i).phase = cellar::Phase::unknown;
  cellar_.show(fresh);  // the head offers to count them
  EXPECT_TRUE(hangs());
  EXPECT_GT(panel->y(), before);
  preferences_.set_compact_rows(true);
  EXPECT_TRUE(hangs());
}

TEST_F(KegsWindow, NothingInTheHeadIsClippedInANarrowWindow) {
  open({868, 560});
  for (const char* name :
       {"keg_search", "status_sheet", "log_transfer", "keg_order", "keg_density", "chip_5"}) {
    auto* control = part<QWidget>(name);
    const QRect there(control->mapTo(page_.get(), QPoint(0, 0)), control->size());
    EXPECT_TRUE(page_->rect().contains(there)) << name;
    EXPECT_GE(control->width(), control->minimumSizeHint().width()) << name;
  }
}

TEST_F(KegsWindow, SixtyKegsFitACompactPageOfAFullScreen) {
  cellar_.show(sample_cellar_of(60));
  preferences_.set_compact_rows(true);
  open({1764, 1080});
  EXPECT_EQ(table()->verticalScrollBar()->maximum(), 0);
  EXPECT_GE(table()->rowHeight(0), 15);
}

}  // namespace ullage::testing
