// SPDX-License-Identifier: GPL-3.0-or-later
//
// A scanner at the real window: a keyboard that types a tag's code and Enter.
#include <gtest/gtest.h>

#include <QApplication>
#include <QDialog>
#include <QLabel>
#include <QLineEdit>
#include <QPushButton>
#include <QTest>
#include <QTimer>
#include <memory>

#include "core/report/keg_code.h"
#include "tests/journeys/demo_journey.h"
#include "ui/commands/scan_catcher.h"
#include "ui/dialogs/forms/entry_form.h"
#include "ui/dialogs/round.h"
#include "ui/dialogs/scan_offer.h"
#include "ui/dialogs/stock_take.h"
#include "ui/widgets/banner.h"

namespace ullage {
namespace {

class Scan : public DemoJourney {
 protected:
  void SetUp() override {
    DemoJourney::SetUp();
    window_->activateWindow();
    ASSERT_TRUE(QTest::qWaitForWindowActive(window_.get()));
  }
  // As the scanner's keys come in: to whatever has the focus.
  static void key_in(const QString& text, Qt::Key end, QWidget& window) {
    const auto target = [&] { return window.focusWidget() ? window.focusWidget() : &window; };
    for (const QChar c : text) {
      if (c.unicode() < 0x80) {
        QTest::keyClick(target(), c.toLatin1());
      } else {
        QTest::sendKeyEvent(QTest::Click, target(), Qt::Key_Odiaeresis, QString(c), Qt::NoModifier);
      }
    }
    if (end != Qt::Key_unknown) QTest::keyClick(target(), end);
  }
  void scan(const std::string& tag) {
    key_in(QString::fromStdString(report::keg_code(tag)), Qt::Key_Return, *window_);
  }
  [[nodiscard]] ui::ScanOffer* offer() const {
    auto* found = window_->findChild<ui::ScanOffer*>();
    return found && found->isVisible() ? found : nullptr;
  }
  [[nodiscard]] QString offered() const {
    return offer() ? offer()->findChild<QLabel*>(QStringLiteral("tag"))->text() : QString();
  }
  // A field of the page on show that can be typed into.
  [[nodiscard]] QLineEdit* field() const {
    for (QLineEdit* each : window_->findChildren<QLineEdit*>()) {
      if (each->isVisible() && each->isEnabled() && !each->isReadOnly()) return each;
    }
    return nullptr;
  }
};

TEST_F(Scan, IsCaughtOnEveryPageAndShowsTheKeg) {
  for (const ui::PageId page : {ui::PageId::kegs, ui::PageId::lines, ui::PageId::log}) {
    window_->show_page(page);
    scan("K04");
    EXPECT_EQ(offered(), QStringLiteral("K04"));
    EXPECT_EQ(window_->page(), ui::PageId::kegs);
    if (offer()) offer()->reject();
  }
}

TEST_F(Scan, LeavesNothingInTheFieldThatHasTheFocus) {
  window_->show_page(ui::PageId::log);
  QLineEdit* words = field();
  ASSERT_NE(words, nullptr);
  words->setFocus();
  QTest::keyClicks(words, QStringLiteral("bitter"));
  scan("K01");
  EXPECT_EQ(offered(), QStringLiteral("K01"));
  EXPECT_EQ(words->text(), QStringLiteral("bitter"));
}

TEST_F(Scan, WorksWithAnotherCountrysKeyboardAndWithoutEnter) {
  key_in(QStringLiteral("ullageÖkegÖP03"), Qt::Key_Return, *window_);
  EXPECT_EQ(offered(), QStringLiteral("P03"));
  offer()->reject();
  key_in(QStringLiteral("ullage:keg:K06"), Qt::Key_unknown, *window_);
  EXPECT_EQ(offered(), QString());
  QTest::qWait(3 * ui::ScanCatcher::longest_pause_ms);
  EXPECT_EQ(offered(), QStringLiteral("K06"));
}

TEST_F(Scan, ASecondTagTakesThePlaceOfTheFirst) {
  scan("K01");
  ASSERT_NE(offer(), nullptr);
  key_in(QStringLiteral("ullage:keg:K02"), Qt::Key_Return, *offer());
  EXPECT_EQ(offered(), QStringLiteral("K02"));
}

TEST_F(Scan, EnterOpensTheLikelyTaskOfThatKeg) {
  scan("K08");  // ran empty, not cleaned yet
  ASSERT_NE(offer(), nullptr);
  const auto status = cellar_->status();
  const cellar::KegStatus* keg = status->keg_by_tag("K08");
  const cellar::SuggestedTask expected = ui::next_task(*keg, report::RegionalWords::british);
  std::string opened;
  std::optional<cellar::SubjectRef> about;
  QTimer::singleShot(400, window_.get(), [&] {
    auto* form = qobject_cast<ui::EntryForm*>(QApplication::activeModalWidget());
    if (form) {
      opened = cellar::kind_of(form->payload());
      const auto subjects = cellar::subjects_of(form->payload());
      if (!subjects.empty()) about = subjects.front();
    }
    if (QWidget* modal = QApplication::activeModalWidget()) modal->close();
  });
  QTest::keyClick(offer()->findChild<QPushButton*>(QStringLiteral("likely")), Qt::Key_Return);
  QTest::qWait(900);
  EXPECT_EQ(opened, expected.kind);
  EXPECT_EQ(about, cellar::subject(keg->record.keg));
}

// In a form: nothing goes into the field, nothing is opened, and the form says so.
TEST_F(Scan, InAFormIsSwallowedAndToldOf) {
  QString typed;
  QString told;
  bool offered_meanwhile = true;
  QTimer::singleShot(400, window_.get(), [&] {
    auto* modal = qobject_cast<QDialog*>(QApplication::activeModalWidget());
    ASSERT_NE(modal, nullptr);
    auto* form = qobject_cast<ui::EntryForm*>(modal);
    if (form == nullptr) return modal->done(QDialog::Rejected);
    auto* remark = form->findChild<QWidget*>(QStringLiteral("note"))->findChild<QLineEdit*>();
    remark->setFocus();
    QTest::keyClicks(remark, QStringLiteral("wet lid"));
    key_in(QString::fromStdString(report::keg_code("K04")), Qt::Key_Return, *form);
    typed = remark->text();
    if (auto* note = form->findChild<ui::Banner*>(QStringLiteral("scan_note"))) {
      told = note->headline();
      EXPECT_TRUE(note->isVisible());
      EXPECT_TRUE(form->rect().contains(note->geometry()));
    }
    EXPECT_TRUE(form->isVisible()) << "the scanner's Enter does not log it";
    offered_meanwhile = offer() != nullptr;
    form->done(QDialog::Rejected);  // without asking about what was typed
  });
  window_->open_task({"noted", {}, {}, {}});
  EXPECT_EQ(typed, QStringLiteral("wet lid"));
  EXPECT_TRUE(told.startsWith(QStringLiteral("K04"))) << told.toStdString();
  EXPECT_FALSE(offered_meanwhile);
}

TEST_F(Scan, InTheStockTakeIsSwallowedToo) {
  ui::StockTake stock(context(), {keg("K01").record.keg}, window_.get());
  stock.open();
  QLineEdit* first = nullptr;
  for (QLineEdit* each : stock.findChildren<QLineEdit*>()) {
    if (first == nullptr && each->isVisible() && each->isEnabled()) first = each;
  }
  ASSERT_NE(first, nullptr);
  first->setFocus();
  const QString before = first->text();
  key_in(QString::fromStdString(report::keg_code("K04")), Qt::Key_Return, stock);
  EXPECT_EQ(first->text(), before);
  EXPECT_TRUE(stock.isVisible());
  EXPECT_NE(stock.findChild<ui::Banner*>(QStringLiteral("scan_note")), nullptr);
}

// On the round a scan walks to that keg's station, unless something is typed here.
TEST_F(Scan, OnTheRoundGoesToThatKeg) {
  ui::RoundDialog round(context(), window_.get());
  round.open();
  ASSERT_TRUE(QTest::qWaitFor([&] { return round.isAncestorOf(QApplication::focusWidget()); }));
  const std::size_t before = cellar_->journal().entries().size();
  key_in(QString::fromStdString(report::keg_code("K03")), Qt::Key_Return, round);
  EXPECT_EQ(round.station_name(), QStringLiteral("K03"));
  auto* first = round.findChild<QWidget*>(QStringLiteral("round_value_0"))->findChild<QLineEdit*>();
  EXPECT_EQ(first->text(), QString());
  QTest::keyClicks(QApplication::focusWidget(), QStringLiteral("12"));
  key_in(QString::fromStdString(report::keg_code("P01")), Qt::Key_Return, round);
  EXPECT_EQ(round.station_name(), QStringLiteral("K03")) << "what is typed is not lost";
  EXPECT_EQ(first->text(), QStringLiteral("12"));
  EXPECT_TRUE(round.findChild<ui::Banner*>(QStringLiteral("refusal"))->isVisible());
  EXPECT_EQ(cellar_->journal().entries().size(), before);
}

TEST_F(Scan, OfAKegThatIsNotHereSaysSo) {
  scan("X99");
  EXPECT_EQ(offer(), nullptr);
  EXPECT_TRUE(window_->notice().contains(QStringLiteral("X99")));
}

TEST_F(Scan, APersonsTypingGoesWhereItBelongs) {
  window_->show_page(ui::PageId::log);
  QLineEdit* words = field();
  ASSERT_NE(words, nullptr);
  words->setFocus();
  // As quick as a machine, but no code.
  QTest::keyClicks(words, QStringLiteral("ullr use ullage kegs"));
  EXPECT_EQ(words->text(), QStringLiteral("ullr use ullage kegs"));
  words->clear();
  // The very letters of a code, at a person's pace.
  for (const QChar c : QStringLiteral("ullage")) {
    QTest::keyClick(words, c.toLatin1());
    QTest::qWait(2 * ui::ScanCatcher::longest_pause_ms);
  }
  EXPECT_EQ(words->text(), QStringLiteral("ullage"));
  EXPECT_EQ(offer(), nullptr);
}

TEST_F(Scan, HeldKeysComeBackInOrderBeforeWhatFollows) {
  window_->show_page(ui::PageId::log);
  QLineEdit* words = field();
  ASSERT_NE(words, nullptr);
  words->setFocus();
  QTest::keyClicks(words, QStringLiteral("ull"));
  QTest::keyClick(words, Qt::Key_Backspace);
  QTest::keyClicks(words, QStringLiteral("x"));
  EXPECT_EQ(words->text(), QStringLiteral("ulx"));
}

}  // namespace
}  // namespace ullage
