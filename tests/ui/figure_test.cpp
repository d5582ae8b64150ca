// SPDX-License-Identifier: GPL-3.0-or-later
//
// A number opens its reasons by mouse and by keyboard, and says so to a screen
// reader.
#include "ui/widgets/figure.h"

#include <gmock/gmock.h>

#include <QAccessible>
#include <QApplication>
#include <QLabel>
#include <QLineEdit>
#include <QPushButton>
#include <QTest>
#include <QVBoxLayout>

#include "tests/support/accessibility.h"
#include "ui/theme/theme.h"
#include "ui/theme/theme_switch.h"
#include "ui/widgets/ink_label.h"
#include "ui/widgets/reasons_popup.h"

namespace ullage::ui {
namespace {

using ::testing::HasSubstr;
using ::testing::IsEmpty;

report::Grounds sample_grounds() {
  report::Grounds g = report::grounds_by(report::laws::carbonation, "CO₂ now", "2.4 ± 0.2 vol");
  g.inputs = {{"Regulator at 12 psi", report::InputOrigin::read, "3 d ago"}};
  g.narrow = {"“dial R1: bias” makes 64 % of the ±."};
  return g;
}

class FigureTest : public ::testing::TestWithParam<bool> {
 protected:
  void SetUp() override {
    dress(GetParam() ? dark_theme() : light_theme());
    auto* column = new QVBoxLayout(&window_);
    column->addWidget(new QLineEdit);
    window_.findChild<QLineEdit*>()->setAccessibleName("before");
    figure_ = new Figure(TextRole::body, Ink::text, &window_);
    figure_->show_number("CO₂ now", "2.4 ± 0.2 vol", sample_grounds);
    column->addWidget(figure_);
    window_.resize(300, 120);
    window_.show();
    ASSERT_TRUE(QTest::qWaitForWindowActive(&window_));
  }
  void TearDown() override { dress(light_theme()); }
  [[nodiscard]] ReasonsPopup* popup() const {
    for (QWidget* top : QApplication::topLevelWidgets()) {
      auto* found = qobject_cast<ReasonsPopup*>(top);
      if (found && found->isVisible()) return found;
    }
    return nullptr;
  }
  [[nodiscard]] static QString all_text(const QWidget& widget) {
    QStringList words;
    for (const QLabel* label : widget.findChildren<QLabel*>()) words << label->text();
    return words.join('\n');
  }

  QWidget window_;
  Figure* figure_ = nullptr;
};

TEST_P(FigureTest, OpensItsReasonsByMouse) {
  QTest::mouseClick(figure_, Qt::LeftButton);
  ASSERT_NE(popup(), nullptr);
  const std::string words = all_text(*popup()).toStdString();
  EXPECT_THAT(words, HasSubstr("2.4 ± 0.2 vol"));
  EXPECT_THAT(words, HasSubstr("Regulator at 12 psi: read, 3 d ago"));
  EXPECT_THAT(words, HasSubstr("“dial R1: bias” makes 64 % of the ±."));
  EXPECT_THAT(words, HasSubstr("physics.md, “Carbonation over time”"));
  EXPECT_THAT(testing::clipped_texts(*popup()), IsEmpty());
  EXPECT_THAT(testing::contrast_faults(*popup()), IsEmpty());
  EXPECT_THAT(testing::unnamed_controls(*popup()), IsEmpty());
  popup()->close();
}

TEST_P(FigureTest, OpensByKeyboardAndGivesTheKeyboardBack) {
  window_.findChild<QLineEdit*>()->setFocus();
  QTest::keyClick(QApplication::focusWidget(), Qt::Key_Tab);
  ASSERT_TRUE(figure_->hasFocus());
  QTest::keyClick(figure_, Qt::Key_Return);
  ASSERT_NE(popup(), nullptr);
  QTest::keyClick(popup(), Qt::Key_Escape);
  EXPECT_EQ(popup(), nullptr);
  QTest::keyClick(figure_, Qt::Key_Space);
  ASSERT_NE(popup(), nullptr);
  QTest::mouseClick(popup()->findChild<QPushButton*>("close_reasons"), Qt::LeftButton);
  EXPECT_EQ(popup(), nullptr);
  EXPECT_EQ(window_.focusWidget(), figure_);
}

TEST_P(FigureTest, SaysWhatItIs) {
  QAccessibleInterface* spoken = QAccessible::queryAccessibleInterface(figure_);
  ASSERT_NE(spoken, nullptr);
  EXPECT_EQ(spoken->role(), QAccessible::Button);
  EXPECT_EQ(spoken->text(QAccessible::Name), "CO₂ now: 2.4 ± 0.2 vol");
  EXPECT_EQ(spoken->text(QAccessible::Description), "Opens the reasons for this number");
  EXPECT_THAT(testing::contrast_faults(window_), IsEmpty());
  EXPECT_THAT(testing::clipped_texts(window_), IsEmpty());
}

TEST_P(FigureTest, NeverPartsAUnitNorANumberFromIt) {
  const QString text = "Now 4.7 ± 0.3 g/L, and 0.5 g/L a day at 0.8 bar";
  figure_->show_number("CO₂ now", text, sample_grounds);
  const QFontMetrics letters = figure_->fontMetrics();
  const int longest = letters.horizontalAdvance("4.7 ± 0.3 g/L,");
  const int all = letters.horizontalAdvance(text);
  EXPECT_EQ(figure_->lines_at(all), QStringList(text));
  for (int width = figure_->minimumSizeHint().width(); width <= all; ++width) {
    const QStringList lines = figure_->lines_at(width);
    EXPECT_EQ(lines.join(' '), text);
    for (const QString& line : lines) {
      EXPECT_FALSE(line.endsWith('/')) << line.toStdString();
      EXPECT_LE(letters.horizontalAdvance(line), width) << line.toStdString();
      if (width < longest) continue;
      EXPECT_FALSE(line.back().isDigit()) << line.toStdString();
      EXPECT_FALSE(line.endsWith(QStringLiteral("±"))) << line.toStdString();
    }
  }
  EXPECT_GT(figure_->heightForWidth(longest), figure_->heightForWidth(all + 10));
}

TEST_P(FigureTest, WithoutReasonsTakesNoFocus) {
  figure_->show_number({}, "not known", {});
  EXPECT_EQ(figure_->focusPolicy(), Qt::NoFocus);
  QTest::mouseClick(figure_, Qt::LeftButton);
  EXPECT_EQ(popup(), nullptr);
}

// The words of a label wrap as a figure's do; who asks for its text gets what was set.
TEST(WrappingLabel, NeverPartsAUnitNorANumberFromIt) {
  const QString text = "It takes up 0.5 g/L a day and holds 4.7 ± 0.3 g/L of CO₂ now";
  InkLabel label(text);
  label.setWordWrap(true);
  const QFontMetrics letters = label.fontMetrics();
  const int longest = letters.horizontalAdvance("4.7 ± 0.3 g/L");
  const int all = letters.horizontalAdvance(text);
  for (int width = longest; width <= all; ++width) {
    label.resize(width, label.heightForWidth(width));
    const QStringList lines = label.lines();
    EXPECT_EQ(lines.join(' '), text);
    EXPECT_GE(label.height(), static_cast<int>(lines.size()) * letters.height());
    for (const QString& line : lines) {
      EXPECT_LE(letters.horizontalAdvance(line), width) << line.toStdString();
      EXPECT_FALSE(line.endsWith('/')) << line.toStdString();
      EXPECT_FALSE(line.back().isDigit()) << line.toStdString();
    }
  }
  EXPECT_EQ(label.text(), text);
  QAccessibleInterface* spoken = QAccessible::queryAccessibleInterface(&label);
  ASSERT_NE(spoken, nullptr);
  EXPECT_EQ(spoken->text(QAccessible::Name), text);
  EXPECT_GE(label.sizeHint().height(), label.heightForWidth(label.sizeHint().width()));
}

// A path has no spaces to break at and is not cut off all the same.
TEST(WrappingLabel, PartsOnlyWhatIsWiderThanItself) {
  const QString path = "/media/stick/cellar-of-mine/of-the-back-room.cellar";
  InkLabel label(path);
  label.setWordWrap(true);
  const int width = label.minimumSizeHint().width();
  ASSERT_LT(width, label.fontMetrics().horizontalAdvance(path));
  label.resize(width, label.heightForWidth(width));
  EXPECT_GT(label.lines().size(), 1);
  EXPECT_EQ(label.lines().join(QString()), path);
  for (const QString& line : label.lines())
    EXPECT_LE(label.fontMetrics().horizontalAdvance(line), width) << line.toStdString();
}

INSTANTIATE_TEST_SUITE_P(BothThemes, FigureTest, ::testing::Bool());

}  // namespace
}  // namespace ullage::ui
