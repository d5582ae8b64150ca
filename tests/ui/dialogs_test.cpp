// SPDX-License-Identifier: GPL-3.0-or-later
//
// The dialogs that stand before and beside a cellar, by mouse and keyboard.
#include <gtest/gtest.h>

#include <QApplication>
#include <QComboBox>
#include <QLabel>
#include <QLineEdit>
#include <QPushButton>
#include <QScrollArea>
#include <QScrollBar>
#include <QSignalSpy>
#include <QTest>
#include <QTimer>
#include <algorithm>
#include <functional>
#include <string>
#include <vector>

#include "core/physics/atmosphere.h"
#include "core/units/present.h"
#include "tests/support/own_preferences.h"
#include "ui/dialogs/backups.h"
#include "ui/dialogs/box_prompts.h"
#include "ui/dialogs/first_start.h"
#include "ui/dialogs/message_box.h"
#include "ui/dialogs/new_cellar.h"
#include "ui/dialogs/settings.h"
#include "ui/theme/theme.h"
#include "ui/theme/theme_switch.h"

namespace ullage::ui {
namespace {

template <class W>
W* part(QWidget& window, const char* name) {
  W* found = window.findChild<W*>(QString::fromLatin1(name));
  EXPECT_NE(found, nullptr) << name;
  return found;
}

void click(QWidget& window, const char* button) {
  QTest::mouseClick(part<QPushButton>(window, button), Qt::LeftButton);
}

TEST(FirstStartDialog, GivesEachOfItsThreeWays) {
  using Choice = FirstStart::Choice;
  for (const auto& [name, choice] :
       std::initializer_list<std::pair<const char*, Choice>>{{"start_create", Choice::create},
                                                             {"start_open", Choice::open},
                                                             {"start_demo", Choice::demo}}) {
    FirstStart dialog;
    dialog.show();
    EXPECT_EQ(dialog.choice(), Choice::none);
    click(dialog, name);
    EXPECT_EQ(dialog.choice(), choice);
    EXPECT_EQ(dialog.result(), QDialog::Accepted);
  }
}

TEST(FirstStartDialog, EscapeChoosesNothing) {
  FirstStart dialog;
  dialog.show();
  QTest::keyClick(&dialog, Qt::Key_Escape);
  EXPECT_EQ(dialog.choice(), FirstStart::Choice::none);
  EXPECT_EQ(dialog.result(), QDialog::Rejected);
}

class NewCellarDialog : public ::testing::Test {
 protected:
  void SetUp() override {
    dialog.show();
    part<QComboBox>(dialog, "cellar_zone")->setCurrentText("Europe/London");
  }
  void type(const char* field, const char* text) {
    auto* edit = part<QLineEdit>(dialog, field);
    edit->clear();
    QTest::keyClicks(edit, text);
  }
  NewCellar dialog;
};

TEST_F(NewCellarDialog, AsksForPlaceAltitudeZoneAndUnits) {
  type("cellar_name", "Back room");
  type("cellar_altitude", "400 ft");
  click(dialog, "make_cellar");
  ASSERT_TRUE(dialog.described());
  EXPECT_EQ(present(dialog.described()).name, "Back room");
  EXPECT_DOUBLE_EQ(units::in_feet(present(dialog.described()).altitude), 400);
  EXPECT_EQ(present(dialog.described()).time_zone, "Europe/London");
}

TEST_F(NewCellarDialog, KeepsWhatWasTypedWhenSomethingIsMissing) {
  type("cellar_name", "Back room");
  type("cellar_altitude", "high");
  click(dialog, "make_cellar");
  EXPECT_FALSE(dialog.described());
  EXPECT_TRUE(dialog.isVisible());
  EXPECT_EQ(part<QLineEdit>(dialog, "cellar_altitude")->text(), "high");
  EXPECT_EQ(part<QLineEdit>(dialog, "cellar_name")->text(), "Back room");
  EXPECT_FALSE(part<QLineEdit>(dialog, "cellar_altitude")->accessibleDescription().isEmpty());
}

TEST_F(NewCellarDialog, RefusesAnAltitudeNobodyLivesAtAndAZoneThatIsNot) {
  type("cellar_name", "Back room");
  type("cellar_altitude", "90000 ft");
  click(dialog, "make_cellar");
  EXPECT_FALSE(dialog.described());
  type("cellar_altitude", "10 m");
  part<QComboBox>(dialog, "cellar_zone")->setCurrentText("Middle/Earth");
  click(dialog, "make_cellar");
  EXPECT_FALSE(dialog.described());
  part<QComboBox>(dialog, "cellar_zone")->setCurrentText("Europe/Paris");
  click(dialog, "make_cellar");
  EXPECT_TRUE(dialog.described());
}

// What it lets pass, the register takes and the physics can work with.
TEST_F(NewCellarDialog, HoldsToTheLimitsOfTheRegister) {
  type("cellar_altitude", "10 m");
  type("cellar_name", std::string(61, 'x').c_str());
  click(dialog, "make_cellar");
  EXPECT_FALSE(dialog.described());
  type("cellar_name", std::string(60, 'x').c_str());
  type("cellar_altitude", "5600 m");
  click(dialog, "make_cellar");
  EXPECT_FALSE(dialog.described()) << "no air pressure can be told up there";
  type("cellar_altitude", "5500 m");
  click(dialog, "make_cellar");
  ASSERT_TRUE(dialog.described());
  EXPECT_TRUE(physics::ambient_pressure(present(dialog.described()).altitude));
}

TEST_F(NewCellarDialog, TabWalksTheFieldsInTheOrderInWhichTheyStand) {
  ASSERT_TRUE(QTest::qWaitForWindowActive(&dialog));
  std::vector<int> heights;
  for (int i = 0; i < 4; ++i) {
    const QWidget* at = QApplication::focusWidget();
    ASSERT_NE(at, nullptr);
    heights.push_back(at->mapTo(&dialog, QPoint(0, 0)).y());
    QTest::keyClick(QApplication::focusWidget(), Qt::Key_Tab);
  }
  EXPECT_TRUE(std::is_sorted(heights.begin(), heights.end()));
  EXPECT_LT(heights.front(), heights.back());
}

TEST_F(NewCellarDialog, SentencesBelowTheFieldsMakeItGrowAndSqueezeNoField) {
  const int before = dialog.height();
  click(dialog, "make_cellar");  // nothing filled in
  QTest::qWait(50);
  EXPECT_GT(dialog.height(), before);
  for (const char* field : {"cellar_name", "cellar_altitude"}) {
    const auto* edit = part<QLineEdit>(dialog, field);
    EXPECT_GE(edit->height(), edit->sizeHint().height()) << field;
    EXPECT_FALSE(edit->accessibleDescription().isEmpty()) << field;
  }
}

TEST_F(NewCellarDialog, AnAltitudeBeyondAllTownsIsToldWhatIsPossible) {
  type("cellar_altitude", "99999");
  click(dialog, "make_cellar");
  EXPECT_TRUE(
      part<QLineEdit>(dialog, "cellar_altitude")->accessibleDescription().contains("between"));
}

class Settings : public ::testing::Test {
 protected:
  testing::OwnPreferences own;
};

TEST_F(Settings, APresetSwitchesEveryUnitAndTheExample) {
  SettingsDialog dialog(own.preferences);
  dialog.show();
  const QString before = dialog.example();
  const QSignalSpy changed(&own.preferences, &Preferences::changed);
  click(dialog, "preset_us");
  EXPECT_EQ(own.preferences.units(), units::DisplayUnits::us());
  EXPECT_EQ(changed.count(), 1);
  EXPECT_NE(dialog.example(), before);
  EXPECT_EQ(part<QLabel>(dialog, "units_example")->text(), dialog.example());
  for (const char* old : {" L", "°C", " kg", " mm"}) {
    EXPECT_FALSE(dialog.example().contains(old)) << dialog.example().toStdString();
  }
}

TEST_F(Settings, OneUnitAtATime) {
  SettingsDialog dialog(own.preferences);
  dialog.show();
  auto* pressure = part<QWidget>(dialog, "unit_pressure");
  for (QPushButton* button : pressure->findChildren<QPushButton*>()) {
    if (button->text() == "kPa") QTest::mouseClick(button, Qt::LeftButton);
  }
  units::DisplayUnits wanted = units::DisplayUnits::british();
  wanted.pressure = units::PressureUnit::kilopascal;
  EXPECT_EQ(own.preferences.units(), wanted);
}

TEST_F(Settings, ThemeSwitchesTheOpenWindowsAtOnce) {
  const ThemeSwitch theme(own.preferences);
  SettingsDialog dialog(own.preferences);
  dialog.show();
  // Qt hands a new palette on in its own time, not within the call.
  own.preferences.set_theme(ThemeChoice::dark);
  EXPECT_TRUE(QTest::qWaitFor([&] { return theme_of(&dialog).dark; }));
  own.preferences.set_theme(ThemeChoice::light);
  EXPECT_TRUE(QTest::qWaitFor([&] { return !theme_of(&dialog).dark; }));
}

TEST(Backups, TheNewestIsChosenFirst) {
  BackupsDialog dialog(
      {{"25 November 2026", "daily", "1 MB"}, {"24 November 2026", "daily", "1 MB"}});
  dialog.show();
  EXPECT_EQ(dialog.chosen(), 0U);
  click(dialog, "restore_backup");
  EXPECT_EQ(dialog.result(), QDialog::Accepted);
}

TEST(Backups, WithNoneThereIsNothingToRestore) {
  BackupsDialog dialog({});
  EXPECT_FALSE(dialog.chosen());
  EXPECT_FALSE(part<QPushButton>(dialog, "restore_backup")->isEnabled());
}

TEST(MessageBoxes, TellWhichWayWasTaken) {
  for (const int wanted : {0, 1, -1}) {
    MessageBox box("The file is damaged.", "", nullptr);
    box.add_way("Restore", ButtonRole::primary);
    box.add_way("Recover", ButtonRole::plain);
    box.add_cancel();
    QMetaObject::invokeMethod(
        &box,
        [&] {
          const auto buttons = box.findChildren<QPushButton*>();
          QTest::mouseClick(buttons.at(wanted < 0 ? 2 : wanted), Qt::LeftButton);
        },
        Qt::QueuedConnection);
    EXPECT_EQ(box.ask(), wanted);
  }
}

// Two hundred lines of what is wrong with an import: all can be read, by keyboard too, on a
// small screen.
TEST(MessageBoxes, ALongListIsScrolledAndFitsASmallScreen) {
  QStringList lines;
  for (int i = 1; i <= 200; ++i) {
    lines << QStringLiteral("Line %1, entry %1, kind: “exploded” is not a kind of entry.").arg(i);
  }
  MessageBox box("Nothing was imported.", lines.join('\n'), nullptr);
  box.add_way("Close", ButtonRole::plain);
  box.show();
  ASSERT_TRUE(QTest::qWaitForWindowActive(&box));
  EXPECT_LE(box.height(), 600);
  auto* room = part<QScrollArea>(box, "long_words");
  EXPECT_EQ(room->accessibleName(), "Nothing was imported.");
  EXPECT_GE(room->widget()->height(), 200 * room->fontMetrics().height()) << "no line is squeezed";
  room->setFocus();
  for (int page = 0; page < 60; ++page) QTest::keyClick(room, Qt::Key_PageDown);
  EXPECT_GT(room->verticalScrollBar()->value(), 0);
  EXPECT_EQ(room->verticalScrollBar()->value(), room->verticalScrollBar()->maximum());
  const MessageBox brief("There is no backup of this cellar.", "home backups", nullptr);
  EXPECT_EQ(brief.findChild<QScrollArea*>(), nullptr);
}

// Escape, then Enter on what has the focus: nobody loses what they typed because
// another button was the default.
TEST(AskingBox, EnterTakesTheWayThatHasTheFocus) {
  MessageBox box("Leave?", "What you typed would be lost.", nullptr);
  box.add_way("Leave", ButtonRole::primary);
  box.add_cancel();
  QTimer::singleShot(0, &box, [&box] {
    EXPECT_TRUE(QTest::qWaitForWindowActive(&box));
    for (QPushButton* button : box.findChildren<QPushButton*>()) {
      if (button->text() == "Cancel") button->setFocus();
    }
    QTest::keyClick(&box, Qt::Key_Return);
  });
  EXPECT_EQ(box.ask(), -1);
}

// Enter in the box that is in front, and whether the action was confirmed.
bool confirmed_by_enter(const std::function<bool(Prompts&)>& question) {
  BoxPrompts prompts;
  QTimer::singleShot(0, qApp, [] {
    QWidget* box = QApplication::activeModalWidget();
    ASSERT_NE(box, nullptr);
    EXPECT_TRUE(QTest::qWaitForWindowActive(box));
    QTest::keyClick(box->focusWidget() ? box->focusWidget() : box, Qt::Key_Return);
  });
  return question(prompts);
}

TEST(AskingBox, EnterGoesTheHarmlessWay) {
  EXPECT_TRUE(confirmed_by_enter(
      [](Prompts& prompts) { return prompts.confirm(nullptr, "Log this?", "", "Log it"); }));
  EXPECT_FALSE(confirmed_by_enter([](Prompts& prompts) {
    return prompts.confirm_risk(nullptr, "Leave?", "What you typed would be lost.", "Leave",
                                "Go on typing");
  }));
}

}  // namespace
}  // namespace ullage::ui
