// SPDX-License-Identifier: GPL-3.0-or-later
//
// The round in its window: targets for fingers, keyboard equal, sanity at once,
// skipped and come back to, closed and gone on with.
#include "ui/dialogs/round.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include <QApplication>
#include <QLabel>
#include <QLineEdit>
#include <QPushButton>
#include <QScreen>
#include <QSettings>
#include <QTemporaryDir>
#include <QTest>

#include "core/cellar/replay.h"
#include "core/units/present.h"
#include "tests/cellar/scenario.h"
#include "tests/support/accessibility.h"
#include "tests/support/fake_facade.h"
#include "tests/support/fake_surroundings.h"
#include "ui/dialogs/round_value.h"
#include "ui/preferences.h"
#include "ui/theme/theme.h"
#include "ui/theme/theme_switch.h"
#include "ui/widgets/number_pad.h"
#include "ui/widgets/touch.h"
#include "ui/widgets/when_edit.h"

namespace ullage::testing {
namespace {

using ::testing::IsEmpty;

class RoundWindow : public ::testing::Test {
 protected:
  RoundWindow()
      : settings_(folder_.filePath("settings.ini"), QSettings::IniFormat),
        preferences_(settings_),
        cellar_(told()) {
    ui::dress(ui::light_theme());
    preferences_.set_units(units::DisplayUnits::us());
    cellar_.journal_to_fill() = s_.journal.as_of({});
    open();
  }
  cellar::CellarStatus told() {
    const auto box = s_.place("Cold box", 3);
    const auto rye = s_.batch("Red Rye");
    const auto a = s_.keg("K01", box);
    const auto b = s_.keg("K02", box);
    s_.fill(a, rye, day(0));
    s_.fill(b, rye, day(0));
    s_.gas(a, day(0, 1), 12);
    s_.gas(b, day(0, 1), 12);
    return s_.cellar(day(1));
  }
  void open() {
    round_ = std::make_unique<ui::RoundDialog>(context_);
    round_->show();
    EXPECT_TRUE(QTest::qWaitForWindowActive(round_.get()));
  }
  [[nodiscard]] ui::RoundValueEdit* value(int i) const {
    return round_->findChild<ui::RoundValueEdit*>(QStringLiteral("round_value_%1").arg(i));
  }
  void press(int key) { QTest::keyClick(QApplication::focusWidget(), static_cast<Qt::Key>(key)); }
  void type(const QString& text) { QTest::keyClicks(QApplication::focusWidget(), text); }
  void tap(const char* name) {
    // The station before is hidden and goes when events are next dealt with.
    for (auto* button : round_->findChildren<QPushButton*>(QLatin1String(name))) {
      if (button->isVisible()) return QTest::mouseClick(button, Qt::LeftButton);
    }
    FAIL() << name;
  }

  QTemporaryDir folder_;
  QSettings settings_;
  ui::Preferences preferences_;
  Scenario s_;
  FakeFacade cellar_;
  RecordingNavigator navigator_;
  QueuedPrompts prompts_;
  ui::Context context_{cellar_, preferences_, prompts_, navigator_};
  std::unique_ptr<ui::RoundDialog> round_;
};

TEST_F(RoundWindow, StartsAtThePlaceAndLogsAStationAsOneActByKeyboardAlone) {
  EXPECT_EQ(round_->station_name(), "Cold box");
  type("38");
  press(Qt::Key_Return);
  ASSERT_EQ(cellar_.logged().size(), 1U);
  const auto& read = get<cellar::TemperatureRead>(cellar_.logged()[0].drafts.at(0).payload);
  EXPECT_NEAR(units::in_fahrenheit(read.temperature), 38, 1e-9);
  EXPECT_EQ(round_->station_name(), "K01");
  type("14");
  ASSERT_TRUE(value(0)->has_keyboard());
  press(Qt::Key_Tab);
  ASSERT_TRUE(value(1)->has_keyboard());
  type("80");
  press(Qt::Key_Return);
  ASSERT_EQ(cellar_.logged().size(), 2U);
  EXPECT_EQ(cellar_.logged()[1].drafts.size(), 2U);
  EXPECT_EQ(round_->station_name(), "K02");
}

TEST_F(RoundWindow, TheSameByFingers) {
  tap("pad_3");
  tap("pad_9");
  tap("round_next");
  ASSERT_EQ(cellar_.logged().size(), 1U);
  tap("more");  // from what it read last: as it was set
  EXPECT_EQ(get<units::GaugePressure>(present(value(0)->value())), units::gauge_psi(12));
  tap("more");
  tap("round_next");
  ASSERT_EQ(cellar_.logged().size(), 2U);
  EXPECT_NEAR(units::in_psi(get<cellar::GasSet>(cellar_.logged()[1].drafts.at(0).payload).pressure),
              13, 1e-9);
}

// Ice water, glycol and a freezer are below zero; no pressure or weight is.
TEST_F(RoundWindow, TypesBelowZeroOnThePadWhereThatCanBe) {
  preferences_.set_units(units::DisplayUnits::metric());
  auto* sign = round_->findChild<QPushButton*>("pad_sign");
  auto* one = round_->findChild<QPushButton*>("pad_1");
  ASSERT_TRUE(sign->isVisible());
  for (int i = 0; i < 3; ++i) QApplication::processEvents();
  const int side = ui::touch_pixels(round_.get());
  EXPECT_GE(sign->width(), side);
  EXPECT_GE(sign->height(), side);
  const int across = one->mapTo(round_.get(), QPoint()).x();
  tap("pad_4");
  tap("pad_sign");
  EXPECT_NEAR(units::in_celsius(get<units::Temperature>(present(value(0)->value()))), -4, 1e-9);
  tap("pad_sign");
  EXPECT_NEAR(units::in_celsius(get<units::Temperature>(present(value(0)->value()))), 4, 1e-9);
  tap("pad_take back");
  ASSERT_TRUE(value(0)->is_empty());
  tap("pad_sign");  // or the sign first
  tap("pad_2");
  tap("round_next");
  ASSERT_EQ(cellar_.logged().size(), 1U);
  const auto& read = get<cellar::TemperatureRead>(cellar_.logged()[0].drafts.at(0).payload);
  EXPECT_NEAR(units::in_celsius(read.temperature), -2, 1e-9);
  ASSERT_EQ(round_->station_name(), "K01");
  EXPECT_FALSE(sign->isVisible()) << "a dial";
  for (int i = 0; i < 3; ++i) QApplication::processEvents();
  EXPECT_EQ(one->mapTo(round_.get(), QPoint()).x(), across) << "the digits stay under the finger";
  tap("round_back");
  EXPECT_TRUE(sign->isVisible());
}

TEST_F(RoundWindow, LooksTwiceAtOnceAndRefusesTheImpossible) {
  press(Qt::Key_PageDown);
  ASSERT_EQ(round_->station_name(), "K01");
  type("40");
  auto* doubt = value(0)->findChild<QLabel*>("doubt");
  EXPECT_TRUE(doubt->isVisible());
  EXPECT_TRUE(doubt->text().startsWith("Much more than the last 12 ± 2 psi"));
  type("00");
  EXPECT_TRUE(value(0)->is_wrong());
  press(Qt::Key_Return);
  EXPECT_EQ(round_->station_name(), "K01");
  EXPECT_THAT(cellar_.logged(), IsEmpty());
}

TEST_F(RoundWindow, ComesBackToWhatWasSkipped) {
  press(Qt::Key_PageDown);  // Cold box
  type("12");
  press(Qt::Key_Return);    // K01, as set: nothing to log, but looked at
  press(Qt::Key_PageDown);  // K02
  EXPECT_TRUE(round_->at_end());
  EXPECT_EQ(round_->findChild<QLabel*>("round_progress")->text(), "1 logged, 2 skipped");
  press(Qt::Key_Return);
  EXPECT_EQ(round_->station_name(), "Cold box");
  press(Qt::Key_PageDown);
  EXPECT_EQ(round_->station_name(), "K02");
  press(Qt::Key_PageUp);
  EXPECT_EQ(round_->station_name(), "Cold box");
}

TEST_F(RoundWindow, SaysOfWhatWasLeftBehindWhereItStands) {
  const auto cold_box = s_.cellar(day(1)).places.at(0).record.place;
  cellar::PlaceRecord closed{.place = cold_box, .name = "Cold box"};
  closed.in_use = false;
  s_.log(day(0, 3), closed);
  const auto lost = s_.keg("K03");
  s_.fill(lost, s_.batch("Pale"), day(0));
  cellar_.show(s_.cellar(day(1)));
  cellar_.journal_to_fill() = s_.journal.as_of({});
  open();
  const auto* progress = round_->findChild<QLabel*>("round_progress");
  EXPECT_EQ(round_->station_name(), "K01");
  EXPECT_EQ(progress->text(), "1 of 3 · Place out of use: Cold box");
  press(Qt::Key_PageDown);
  press(Qt::Key_PageDown);
  EXPECT_EQ(round_->station_name(), "K03");
  EXPECT_EQ(progress->text(), "3 of 3 · Place not known");
}

// A glass at the tap is timed by the round itself: one large target, or F3.
TEST_F(RoundWindow, TimesTheGlassAndFillsInTheSeconds) {
  const auto keg = s_.cellar(day(1)).keg_by_tag("K01")->record.keg;
  s_.log(day(0, 4), cellar::Tapped{keg, s_.line("Line 1", "1")});
  cellar_.show(s_.cellar(day(1)));
  cellar_.journal_to_fill() = s_.journal.as_of({});
  open();
  press(Qt::Key_PageDown);
  EXPECT_EQ(value(0)->findChild<QPushButton*>("watch"), nullptr) << "a dial";
  press(Qt::Key_PageDown);
  press(Qt::Key_PageDown);
  ASSERT_EQ(round_->station_name(), "Tap 1");
  ASSERT_NE(value(0), nullptr);
  auto* watch = value(0)->findChild<QPushButton*>("watch");
  ASSERT_NE(watch, nullptr);
  for (int i = 0; i < 3; ++i) QApplication::processEvents();
  EXPECT_GE(watch->width(), ui::touch_pixels(round_.get()));
  EXPECT_GE(watch->height(), ui::touch_pixels(round_.get()));
  const auto seconds = [&] {
    return value(0)->value() ? units::in_seconds(get<units::Duration>(*value(0)->value())) : 0;
  };
  tap("watch");
  QTest::qWait(1200);
  EXPECT_TRUE(value(0)->is_empty()) << "still pouring";
  tap("watch");
  EXPECT_GE(seconds(), 1.1);
  EXPECT_LT(seconds(), 5);
  press(Qt::Key_F3);
  EXPECT_TRUE(value(0)->is_empty()) << "once more";
  QTest::qWait(1400);
  press(Qt::Key_Return);
  EXPECT_EQ(round_->station_name(), "Tap 1") << "stopped, and shown before it is logged";
  EXPECT_GE(seconds(), 1.3);
  press(Qt::Key_Return);
  ASSERT_EQ(cellar_.logged().size(), 1U);
  EXPECT_GE(
      units::in_seconds(get<cellar::TimedPour>(cellar_.logged()[0].drafts.at(0).payload).duration),
      1.3);
}

// A tap is a station of its own, also with nothing on it: what is on, the lock, the cleaning.
TEST_F(RoundWindow, WalksToEachTapAndTellsHowItStands) {
  const auto keg = s_.cellar(day(1)).keg_by_tag("K01")->record.keg;
  const auto one = s_.line("Line 1", "1", 7);
  const auto two = s_.line("Line 2", "2");
  s_.log(day(0, 4), cellar::Tapped{keg, one});
  s_.log(day(0, 5), cellar::LineLocked{two, cellar::LineAgent::caustic, "Lye", ""});
  cellar_.show(s_.cellar(day(1)));
  cellar_.journal_to_fill() = s_.journal.as_of({});
  open();
  for (int i = 0; i < 3; ++i) press(Qt::Key_PageDown);
  ASSERT_EQ(round_->station_name(), "Tap 1");
  const auto about = [&] {
    return round_->findChild<QLabel*>("round_about")->text().toStdString();
  };
  EXPECT_THAT(about(), ::testing::HasSubstr("Red Rye, K01"));
  EXPECT_THAT(about(), ::testing::HasSubstr("not cleaned yet"));
  EXPECT_THAT(about(), ::testing::HasSubstr("cleaning was due"));
  EXPECT_THAT(about(), ::testing::HasSubstr("no glass timed yet"));
  type("9");
  press(Qt::Key_Return);
  EXPECT_TRUE(holds_alternative<cellar::TimedPour>(cellar_.logged().at(0).drafts.at(0).payload));
  ASSERT_EQ(round_->station_name(), "Tap 2");
  EXPECT_THAT(about(), ::testing::HasSubstr("DO NOT SERVE: Lye"));
  EXPECT_THAT(about(), ::testing::HasSubstr("nothing on it"));
  EXPECT_EQ(value(0), nullptr) << "nothing to be read";
  type("drips");  // the remark has the keyboard
  press(Qt::Key_Return);
  ASSERT_EQ(cellar_.logged().size(), 2U);
  EXPECT_EQ(get<cellar::Noted>(cellar_.logged()[1].drafts.at(0).payload).line, two);
  EXPECT_EQ(cellar_.logged()[1].drafts[0].note, "drips");
  EXPECT_TRUE(round_->at_end());
}

// From paper: one time for the round, and what was written in its last column.
TEST_F(RoundWindow, TakesTheTimeOfThePaperAndItsRemarks) {
  auto* when = round_->findChild<ui::WhenEdit*>("round_when");
  ASSERT_NE(when, nullptr);
  when->set_text("1 h ago");
  type("38");
  press(Qt::Key_Return);
  ASSERT_EQ(round_->station_name(), "K01");
  for (int i = 0; value(i) != nullptr; ++i) press(Qt::Key_Tab);
  type("lid wet");
  press(Qt::Key_Return);
  ASSERT_EQ(cellar_.logged().size(), 2U);
  EXPECT_EQ(cellar_.logged()[0].drafts.at(0).happened_at, day(1) - std::chrono::hours(1));
  ASSERT_EQ(cellar_.logged()[1].drafts.size(), 1U);
  EXPECT_EQ(cellar_.logged()[1].drafts[0].note, "lid wet");
  EXPECT_EQ(cellar_.logged()[1].drafts[0].happened_at, day(1) - std::chrono::hours(1));
  when->set_text("tomorrow");
  type("12");
  press(Qt::Key_Return);
  EXPECT_EQ(round_->station_name(), "K02") << "a time that cannot be is put right first";
  EXPECT_EQ(cellar_.logged().size(), 2U);
}

TEST_F(RoundWindow, GoesOnWhereItWasLeft) {
  type("38");
  press(Qt::Key_Return);
  press(Qt::Key_PageDown);
  ASSERT_EQ(round_->station_name(), "K02");
  press(Qt::Key_Escape);
  open();
  EXPECT_EQ(round_->station_name(), "K02");
  tap("round_back");
  EXPECT_TRUE(round_->findChild<QLabel*>("round_progress")->text().contains("skipped before"));
}

TEST_F(RoundWindow, HasTargetsOfTwentyMillimetresOnThisScreen) {
  const QScreen& screen = *round_->screen();
  const double dots_per_millimetre = screen.physicalDotsPerInch() / 25.4;
  const int side = ui::touch_pixels(screen);
  if (screen.physicalDotsPerInch() >= 50 && screen.physicalDotsPerInch() <= 400) {
    EXPECT_GE(side / dots_per_millimetre, 20.0);
  }
  press(Qt::Key_PageDown);
  for (int i = 0; i < 3; ++i) QApplication::processEvents();
  for (const QPushButton* button : round_->findChildren<QPushButton*>()) {
    if (!button->isVisible()) continue;
    EXPECT_GE(button->width(), side) << button->objectName().toStdString();
    EXPECT_GE(button->height(), side) << button->objectName().toStdString();
  }
  EXPECT_GE(value(0)->findChild<QLineEdit*>()->height(), side);
}

TEST_F(RoundWindow, IsReachableReadableAndUnclippedInBothThemes) {
  press(Qt::Key_PageDown);
  for (const bool dark : {false, true}) {
    ui::dress(dark ? ui::dark_theme() : ui::light_theme());
    for (int i = 0; i < 3; ++i) QApplication::processEvents();
    EXPECT_THAT(unnamed_controls(*round_), IsEmpty());
    EXPECT_THAT(clipped_texts(*round_), IsEmpty());
    EXPECT_THAT(contrast_faults(*round_), IsEmpty());
    EXPECT_THAT(tab_order_faults(*round_), IsEmpty());
  }
  ui::dress(ui::light_theme());
}

}  // namespace
}  // namespace ullage::testing
