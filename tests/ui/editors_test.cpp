// SPDX-License-Identifier: GPL-3.0-or-later
#include <gtest/gtest.h>

#include <QApplication>
#include <QComboBox>
#include <QLineEdit>
#include <QPushButton>
#include <QSignalSpy>
#include <QTest>
#include <QVBoxLayout>

#include "core/units/present.h"
#include "tests/support/fake_facade.h"
#include "tests/support/fake_surroundings.h"
#include "tests/support/own_preferences.h"
#include "tests/support/sample_status.h"
#include "ui/widgets/entity_picker.h"
#include "ui/widgets/enum_picker.h"
#include "ui/widgets/tag_list_edit.h"
#include "ui/widgets/text_edit.h"
#include "ui/widgets/when_edit.h"

namespace ullage::ui {
namespace {

using namespace std::chrono_literals;

class Editors : public ::testing::Test {
 protected:
  testing::FakeFacade facade{testing::sample_cellar()};
  testing::OwnPreferences own;
  testing::QueuedPrompts prompts;
  testing::RecordingNavigator navigator;
  Context context{facade, own.preferences, prompts, navigator};
};

TEST_F(Editors, WhenStartsAtNowAndStaysNowAsTimePasses) {
  const WhenEdit edit(facade);
  EXPECT_EQ(edit.value(), facade.now());
  cellar::CellarStatus later = testing::sample_cellar();
  later.now += 5min;
  facade.show(later);
  EXPECT_EQ(edit.value(), testing::sample_now + 5min);
}

TEST_F(Editors, WhenOffersTheUsualTimesAsButtons) {
  WhenEdit edit(facade);
  edit.show();
  for (QPushButton* button : edit.findChildren<QPushButton*>()) {
    if (button->text() == "1 h ago") QTest::mouseClick(button, Qt::LeftButton);
  }
  EXPECT_EQ(edit.value(), facade.now() - 1h);
}

TEST_F(Editors, WhenRefusesTheFutureAndKeepsTheText) {
  WhenEdit edit(facade);
  edit.set_text("today 23:59");
  EXPECT_FALSE(edit.value());
  EXPECT_FALSE(edit.fault().isEmpty());
  EXPECT_EQ(edit.text(), "today 23:59");
}

TEST_F(Editors, WhenKeepsTheSecondsItWasGiven) {
  WhenEdit edit(facade);
  const cellar::Instant exact = testing::sample_now - 26h - 17s;
  edit.set_value(exact);
  EXPECT_EQ(edit.value(), exact);
}

TEST_F(Editors, DateIsOptionalUnlessRequired) {
  DateEdit edit(facade);
  EXPECT_TRUE(edit.fault().isEmpty());
  edit.set_required(true);
  EXPECT_FALSE(edit.fault().isEmpty());
  edit.set_text("24 Feb 2027");
  EXPECT_EQ(edit.value(), cellar::Date(std::chrono::local_days(std::chrono::year(2027) / 2 / 24)));
}

TEST_F(Editors, TextOverItsLimitStaysAndSaysByHowMuch) {
  TextEdit edit(5);
  edit.set_value("far too long");
  EXPECT_TRUE(edit.fault().contains("7")) << edit.fault().toStdString();
  EXPECT_EQ(edit.text(), "far too long");
}

TEST_F(Editors, TagsExpandAndATakenOneIsRefusedByName) {
  TagListEdit edit(facade);
  edit.set_text("B01..B08");
  EXPECT_EQ(edit.tags().size(), 8U);
  edit.set_text("B01, K07");
  EXPECT_TRUE(edit.tags().empty());
  EXPECT_TRUE(edit.fault().contains("K07"));
}

TEST_F(Editors, PickerFindsByTypingAndGivesTheTypedId) {
  KegPicker picker(context);
  picker.show();
  auto* line = picker.combo()->lineEdit();
  line->setText("k07");
  emit line->editingFinished();
  ASSERT_TRUE(picker.value());
  EXPECT_EQ(facade.status()->find(present(picker.value()))->record.tag, "K07");
}

TEST_F(Editors, PickerRefusesWhatIsNotThereAndKeepsTheText) {
  const KegPicker picker(context);
  auto* line = picker.combo()->lineEdit();
  line->setText("K99");
  emit line->editingFinished();
  EXPECT_FALSE(picker.value());
  EXPECT_TRUE(picker.fault().contains("K99"));
  EXPECT_EQ(line->text(), "K99");
}

TEST_F(Editors, PickerKeepsItsChoiceWhenTheCellarChanges) {
  KegPicker picker(context);
  const cellar::KegId keg = facade.status()->kegs.at(3).record.keg;
  picker.set_value(keg);
  const QSignalSpy changed(&picker, &EntityPicker::changed);
  facade.show(testing::sample_cellar());
  EXPECT_EQ(picker.value(), keg);
  EXPECT_EQ(changed.count(), 0);
}

TEST_F(Editors, PickerShowsOnlyWhatFitsAndNoneWhereOptional) {
  KegPicker picker(context);
  picker.set_shows([](const cellar::KegStatus& keg) { return !keg.contents; });
  picker.set_optional("From no keg");
  for (int i = 1; i < picker.combo()->count(); ++i) {
    EXPECT_FALSE(picker.combo()->itemText(i).startsWith("K01"));
  }
  EXPECT_EQ(picker.combo()->itemText(0), "From no keg");
  EXPECT_EQ(picker.combo()->currentText(), "From no keg");
  EXPECT_FALSE(picker.value());
}

TEST_F(Editors, ChoicesKeepTheirType) {
  enum class Method { cycles, pushed, swept };
  EnumPicker<Method> picker(
      {{Method::cycles, "Cycles"}, {Method::pushed, "Pushed"}, {Method::swept, "Swept"}});
  EXPECT_FALSE(picker.value());
  const QSignalSpy changed(&picker, &ChoiceBar::changed);
  picker.set_value(Method::swept);
  EXPECT_EQ(picker.value(), Method::swept);
  picker.set_value(std::nullopt);
  EXPECT_FALSE(picker.value());
  EXPECT_EQ(changed.count(), 2);
}

TEST_F(Editors, TabComesToTheChosenButtonOfARowAndArrowsGoOnFromThere) {
  QWidget window;
  auto* before = new QLineEdit(&window);
  auto* bar = new ChoiceBar({"Open", "Closed", "Sealed"}, ChoiceBar::Look::buttons, &window);
  auto* column = new QVBoxLayout(&window);
  column->addWidget(before);
  column->addWidget(bar);
  bar->set_index(1);
  window.show();
  ASSERT_TRUE(QTest::qWaitForWindowActive(&window));
  before->setFocus();
  QTest::keyClick(before, Qt::Key_Tab);
  const auto* at = qobject_cast<QPushButton*>(QApplication::focusWidget());
  ASSERT_NE(at, nullptr);
  EXPECT_EQ(at->text(), "Closed");
  EXPECT_EQ(bar->index(), 1);
  QTest::keyClick(QApplication::focusWidget(), Qt::Key_Right);
  EXPECT_EQ(bar->index(), 2);
  QTest::keyClick(QApplication::focusWidget(), Qt::Key_Tab);
  EXPECT_EQ(QApplication::focusWidget(), before);  // the row is one stop
}

}  // namespace
}  // namespace ullage::ui
