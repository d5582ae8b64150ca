// SPDX-License-Identifier: GPL-3.0-or-later
//
// Whole tasks on the real demo cellar: a recall and its undo, a round broken off
// and gone on with, a keg worked out on the slate and the act logged.
#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include <QApplication>
#include <QDialog>
#include <QLabel>
#include <QLineEdit>
#include <QProcess>
#include <QPushButton>
#include <QTest>
#include <QTimer>
#include <memory>

#include "core/cellar/trace.h"
#include "core/units/present.h"
#include "tests/journeys/demo_journey.h"
#include "tests/support/accessibility.h"
#include "ui/dialogs/log_preview.h"
#include "ui/dialogs/recall.h"
#include "ui/dialogs/round.h"
#include "ui/pages/slate_answer.h"

namespace ullage {
namespace {

class BeersJourney : public DemoJourney {
 protected:
  BeersJourney() : DemoJourney(QStringLiteral("MK")) {}
  void SetUp() override {
    DemoJourney::SetUp();
    ASSERT_TRUE(QTest::qWaitForWindowActive(window_.get()));
  }
  [[nodiscard]] std::size_t entries() const { return cellar_->journal().entries().size(); }
};

TEST_F(BeersJourney, ARecallHoldsEveryKegOfTheBatchAndOneUndoLetsThemGo) {
  const cellar::BatchId batch = present(keg("K01").contents).batch;
  std::size_t with_it = 0;
  for (const cellar::KegStatus& k : cellar_->status()->kegs) {
    with_it += k.contents && k.contents->batch == batch ? 1U : 0U;
  }
  ui::RecallDialog recall(context(), batch, window_.get());
  recall.show();
  auto* reason =
      recall.findChild<QWidget*>(QStringLiteral("recall_reason"))->findChild<QLineEdit*>();
  reason->setFocus();
  QTest::keyClicks(reason, QStringLiteral("glass found at the maltings"));
  QTest::mouseClick(recall.findChild<QPushButton*>(QStringLiteral("recall_and_hold")),
                    Qt::LeftButton);
  EXPECT_TRUE(recall.isVisible()) << "the list is still to be printed";
  EXPECT_THAT(testing::clipped_texts(recall), ::testing::IsEmpty());
  auto* again = recall.findChild<QPushButton*>(QStringLiteral("recall_and_hold"));
  EXPECT_FALSE(again->isEnabled()) << "once is enough";
  QString listed;
  QTimer::singleShot(0, [&] {
    auto* preview = qobject_cast<ui::LogPreview*>(QApplication::activeModalWidget());
    if (preview == nullptr) return;
    const QString path = folder_.filePath(QStringLiteral("recall.pdf"));
    if (preview->save_pdf(path)) {
      QProcess text;
      text.start(QStringLiteral("pdftotext"), {QStringLiteral("-layout"), path, "-"});
      text.waitForFinished();
      listed = QString::fromUtf8(text.readAllStandardOutput());
    }
    preview->reject();
  });
  QTest::mouseClick(recall.findChild<QPushButton*>(QStringLiteral("print_recall")), Qt::LeftButton);
  EXPECT_TRUE(listed.contains(QStringLiteral("glass found at the maltings"))) << ui::s(listed);
  EXPECT_EQ(listed.count(QStringLiteral("STILL IN IT")), static_cast<int>(with_it));
  recall.reject();
  std::size_t held = 0;
  for (const cellar::KegStatus& k : cellar_->status()->kegs) {
    if (!k.contents || k.contents->batch != batch) continue;
    EXPECT_TRUE(k.quarantined.has_value()) << k.record.tag;
    EXPECT_EQ(k.readiness.kind, cellar::ReadinessKind::blocked) << k.record.tag;
    ++held;
  }
  EXPECT_EQ(held, with_it);
  ASSERT_TRUE(cellar::recall_of(batch, cellar_->journal()));
  window_->run(ui::Command::undo);
  EXPECT_FALSE(cellar::recall_of(batch, cellar_->journal()));
  EXPECT_FALSE(keg("K01").quarantined.has_value());
}

TEST_F(BeersJourney, ARoundBrokenOffGoesOnWhereItWasLeft) {
  QString left_at;
  {
    ui::RoundDialog round(context(), window_.get());
    // Modal, as the program shows it. It has the keyboard only once its own window
    // is in front: it counts as active with its parent.
    round.open();
    ASSERT_TRUE(QTest::qWaitFor([&] { return round.isAncestorOf(QApplication::focusWidget()); }));
    const std::size_t before = entries();
    QTest::keyClicks(QApplication::focusWidget(), QStringLiteral("4"));  // the first place, in °C
    QTest::keyClick(QApplication::focusWidget(), Qt::Key_Return);
    EXPECT_EQ(entries(), before + 1);
    QTest::keyClick(QApplication::focusWidget(), Qt::Key_PageDown);
    left_at = round.station_name();
    ASSERT_FALSE(left_at.isEmpty());
    QTest::keyClick(QApplication::focusWidget(), Qt::Key_Escape);
    EXPECT_FALSE(round.isVisible());
  }
  ui::RoundDialog again(context(), window_.get());
  again.open();
  ASSERT_TRUE(QTest::qWaitFor([&] { return again.isAncestorOf(QApplication::focusWidget()); }));
  EXPECT_EQ(again.station_name(), left_at);
  for (int i = 0; i < 200 && !again.at_end(); ++i) {
    QTest::keyClick(QApplication::focusWidget(), Qt::Key_PageDown);
  }
  ASSERT_TRUE(again.at_end());
  QTest::keyClick(QApplication::focusWidget(), Qt::Key_Return);  // to what was skipped
  EXPECT_FALSE(again.at_end());
}

void walk_to(const ui::RoundDialog& round, const char* name) {
  for (int i = 0; i < 100 && round.station_name() != QLatin1String(name); ++i) {
    QTest::keyClick(QApplication::focusWidget(), Qt::Key_PageDown);
  }
  ASSERT_EQ(round.station_name(), QLatin1String(name));
}

// What the first value of the station is read on, as a screen reader says it.
QString read_on(const ui::RoundDialog& round) {
  for (auto* button : round.findChildren<QPushButton*>(QStringLiteral("read_on"))) {
    if (button->isVisible()) return button->accessibleName();
  }
  return {};
}

// What it is read on is named, remembered for the station and recorded; at a tap a
// glass is timed.
TEST_F(BeersJourney, ARoundRecordsWhatWasReadOnWhatAndTimesAGlass) {
  QString taken;
  {
    ui::RoundDialog round(context(), window_.get());
    round.open();
    ASSERT_TRUE(QTest::qWaitFor([&] { return round.isAncestorOf(QApplication::focusWidget()); }));
    walk_to(round, "K03");
    EXPECT_TRUE(read_on(round).contains(QStringLiteral("Serving dial"))) << "that hangs there";
    QTest::keyClick(QApplication::focusWidget(), Qt::Key_F2);  // none named
    QTest::keyClick(QApplication::focusWidget(), Qt::Key_F2);
    taken = read_on(round);
    EXPECT_TRUE(taken.contains(QStringLiteral("Burst dial"))) << taken.toStdString();
    const std::size_t before = entries();
    // Pressure, how full, seconds: ten keys for a keg. At 1.2 s for a key by an
    // unskilled typist (keystroke-level model, from memory) 12 s, so far under 30.
    int keys = 0;
    const auto key = [&](Qt::Key k) {
      QTest::keyClick(QApplication::focusWidget(), k);
      ++keys;
    };
    const auto type = [&](const QString& text) {
      QTest::keyClicks(QApplication::focusWidget(), text);
      keys += static_cast<int>(text.size());
    };
    type(QStringLiteral("12"));
    key(Qt::Key_Tab);
    type(QStringLiteral("40"));
    key(Qt::Key_Return);
    EXPECT_LE(keys * 1.2, 30.0);
    ASSERT_EQ(entries(), before + 2);
    const auto& all = cellar_->journal().entries();
    const auto* gas = get_if<cellar::GasSet>(&all.at(before).payload);
    ASSERT_NE(gas, nullptr);
    EXPECT_TRUE(gas->instrument.has_value());
    EXPECT_EQ(all.at(before).header.act, all.at(before + 1).header.act) << "one act a station";
    const std::string tap = "Tap " + present(keg("K03").line).tap;
    walk_to(round, tap.c_str());
    QTest::keyClicks(QApplication::focusWidget(), QStringLiteral("11"));
    QTest::keyClick(QApplication::focusWidget(), Qt::Key_Return);
    ASSERT_EQ(entries(), before + 3);
    const auto* pour = get_if<cellar::TimedPour>(&all.at(before + 2).payload);
    ASSERT_NE(pour, nullptr);
    EXPECT_EQ(pour->duration, units::seconds(11));
    EXPECT_EQ(pour->pressure, gas->pressure);
    round.reject();
  }
  ui::RoundDialog again(context(), window_.get());
  again.open();
  ASSERT_TRUE(QTest::qWaitFor([&] { return again.isAncestorOf(QApplication::focusWidget()); }));
  for (int i = 0; i < 100 && again.station_name() != QStringLiteral("K03"); ++i) {
    QTest::keyClick(QApplication::focusWidget(), Qt::Key_PageUp);
  }
  ASSERT_EQ(again.station_name(), QStringLiteral("K03"));
  EXPECT_EQ(read_on(again), taken);
  // Line 2 stands full of cleaner: nothing is poured from it.
  walk_to(again, "Tap 2");
  EXPECT_EQ(again.findChild<QWidget*>(QStringLiteral("round_value_0")), nullptr);
}

// Back at a station, also after closing, a value typed again corrects the first; Ctrl+Z
// takes the last station back without leaving the round.
TEST_F(BeersJourney, ARoundCorrectsWhatIsTypedAgainAndTakesBackTheLast) {
  const auto press = [](Qt::Key k) { QTest::keyClick(QApplication::focusWidget(), k); };
  const auto type = [](const char* text) {
    QTest::keyClicks(QApplication::focusWidget(), QLatin1String(text));
  };
  const std::size_t before = entries();
  const auto& all = cellar_->journal().entries();
  {
    ui::RoundDialog round(context(), window_.get());
    round.open();
    ASSERT_TRUE(QTest::qWaitFor([&] { return round.isAncestorOf(QApplication::focusWidget()); }));
    const QString place = round.station_name();
    type("4");
    press(Qt::Key_Return);
    press(Qt::Key_PageUp);
    ASSERT_EQ(round.station_name(), place);
    type("4");  // the same: it is there already
    press(Qt::Key_Return);
    EXPECT_EQ(entries(), before + 1);
    press(Qt::Key_PageUp);
    type("5");
    press(Qt::Key_Return);
    ASSERT_EQ(entries(), before + 2);
    EXPECT_EQ(all.at(before + 1).header.replaces, all.at(before).header.id);
    EXPECT_EQ(all.at(before + 1).header.happened_at, all.at(before).header.happened_at);
    round.reject();
  }
  ui::RoundDialog again(context(), window_.get());
  again.open();
  ASSERT_TRUE(QTest::qWaitFor([&] { return again.isAncestorOf(QApplication::focusWidget()); }));
  press(Qt::Key_PageUp);
  type("6");
  press(Qt::Key_Return);
  ASSERT_EQ(entries(), before + 3);
  EXPECT_EQ(cellar_->journal().replaced_by(all.at(before).header.id), &all.at(before + 2));
  const QString here = again.station_name();
  QTest::keyClick(QApplication::focusWidget(), Qt::Key_Z, Qt::ControlModifier);
  EXPECT_NE(again.station_name(), here) << "at the station that was taken back";
  EXPECT_EQ(cellar_->journal().standing(all.at(before + 2).header.id), cellar::Standing::struck);
  EXPECT_EQ(cellar_->journal().standing(all.at(before + 1).header.id), cellar::Standing::in_force);
  EXPECT_FALSE(again.findChild<QPushButton*>(QStringLiteral("round_take_back"))->isEnabled())
      << "what was logged before it was opened is not taken back unseen";
}

TEST_F(BeersJourney, AKegIsWorkedOutOnTheSlateAndTheActIsItsForm) {
  const cellar::KegId id = keg("K01").record.keg;
  window_->show_keg(id);
  auto* offer = window_->findChild<QPushButton*>(QStringLiteral("work_out_pressure_to_set"));
  ASSERT_NE(offer, nullptr);
  offer->click();
  EXPECT_EQ(window_->page(), ui::PageId::slate);
  auto* answer = window_->findChild<ui::SlateAnswer*>();
  ASSERT_NE(answer, nullptr);
  EXPECT_FALSE(answer->main_text().isEmpty());
  auto* act = window_->findChild<QPushButton*>(QStringLiteral("slate_act"));
  ASSERT_TRUE(act->isVisible());
  bool opened = false;
  QTimer::singleShot(0, [&] {
    auto* form = qobject_cast<QDialog*>(QApplication::activeModalWidget());
    opened = form != nullptr;
    if (form) form->reject();
  });
  const std::size_t before = entries();
  act->click();
  EXPECT_TRUE(opened);
  EXPECT_EQ(entries(), before);  // looking something up logs nothing
}

}  // namespace
}  // namespace ullage
