// SPDX-License-Identifier: GPL-3.0-or-later
//
// The Beers page over a journal made by hand: sections, tracing, recalling.
#include "ui/pages/beers_page.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include <QApplication>
#include <QLabel>
#include <QLineEdit>
#include <QPushButton>
#include <QSettings>
#include <QTemporaryDir>
#include <QTest>

#include "core/cellar/replay.h"
#include "tests/cellar/scenario.h"
#include "tests/support/accessibility.h"
#include "tests/support/fake_facade.h"
#include "tests/support/fake_surroundings.h"
#include "ui/dialogs/recall.h"
#include "ui/dialogs/trace.h"
#include "ui/preferences.h"
#include "ui/theme/theme.h"
#include "ui/theme/theme_switch.h"
#include "ui/widgets/figure.h"

namespace ullage::testing {
namespace {

using ::testing::HasSubstr;
using ::testing::IsEmpty;
using ::testing::Not;

class BeersWindow : public ::testing::Test {
 protected:
  BeersWindow()
      : settings_(folder_.filePath("settings.ini"), QSettings::IniFormat),
        preferences_(settings_),
        cellar_(told()) {
    ui::dress(ui::light_theme());
    cellar_.journal_to_fill() = s_.journal.as_of({});
    preferences_.set_initials("MK");
    page_ = std::make_unique<ui::BeersPage>(context_);
    page_->resize(960, 800);
    page_->show();
    EXPECT_TRUE(QTest::qWaitForWindowActive(page_.get()));
  }
  // Two kegs of rye (one on tap), mild gone, one keg lent, hops in, beer lost.
  cellar::CellarStatus told() {
    const auto box = s_.place("Cold box", 3);
    rye_ = s_.batch("Red Rye");
    const auto mild = s_.batch("Mild");
    const auto a = s_.keg("K01", box);
    const auto b = s_.keg("K02", box);
    const auto c = s_.keg("K03", box);
    // Eight hours ago at 18 °C: with the documented time constant of 9 h some 6 K to go.
    s_.fill(a, rye_, day(0, 22), 18.0, 18);
    s_.fill(b, rye_, day(0), 17.0, 3);
    s_.log(day(0, 1), cellar::HopsIn{b, "Goldings", units::grams(30)});
    s_.log(day(0, 4), cellar::Tapped{b, s_.line("Line 1", "1")});
    cellar::LevelReading by_scale;  // two litres in a day on tap
    by_scale.keg = b;
    by_scale.fraction_left = units::fraction(0.79);
    s_.log(day(1, 5), by_scale);
    s_.fill(c, mild, day(-20));
    s_.log(day(0, 23), cellar::BestByChanged{rye_, date(9), "lab"});
    s_.log(day(-2), cellar::Emptied{c});
    s_.log(day(0), cellar::Lent{c, "The Anchor", 3000, date(1)});
    s_.log(day(0, 5), cellar::Wasted{b, {}, cellar::WasteReason::foam, units::litres(0.8)});
    return s_.cellar(day(0, 30));
  }
  [[nodiscard]] std::string all_text() const {
    QStringList words;
    for (const QLabel* label : page_->findChildren<QLabel*>()) {
      if (label->isVisible()) words << label->text();
    }
    for (const ui::Figure* figure : page_->findChildren<ui::Figure*>()) {
      if (figure->isVisible()) words << figure->text();
    }
    return words.join('\n').toStdString();
  }

  QTemporaryDir folder_;
  QSettings settings_;
  ui::Preferences preferences_;
  Scenario s_;
  cellar::BatchId rye_;
  FakeFacade cellar_;
  RecordingNavigator navigator_;
  QueuedPrompts prompts_;
  ui::Context context_{cellar_, preferences_, prompts_, navigator_};
  std::unique_ptr<ui::BeersPage> page_;
};

TEST_F(BeersWindow, TellsWhereEachBatchIsAndWhatWantsDoing) {
  const std::string text = all_text();
  EXPECT_THAT(text, HasSubstr("Red Rye, batch Red Rye 1"));
  EXPECT_THAT(text, HasSubstr("K01, Cold box"));
  EXPECT_THAT(text, HasSubstr("K02, on tap 1"));
  EXPECT_THAT(text, HasSubstr("was in 1 keg"));
  EXPECT_THAT(text, HasSubstr("with The Anchor"));
  EXPECT_THAT(text, HasSubstr("deposit 30.00"));
  EXPECT_THAT(text, HasSubstr("Goldings in since"));
  EXPECT_THAT(text, HasSubstr("no price known"));
  EXPECT_THAT(text, HasSubstr("Cooling"));
}

TEST_F(BeersWindow, ForecastsWhenAKegOnTapRunsOutWithRangeAndReasons) {
  const ui::Figure* forecast = nullptr;
  for (const ui::Figure* each : page_->findChildren<ui::Figure*>()) {
    if (each->isVisible() && each->text().startsWith("runs out ")) forecast = each;
  }
  ASSERT_NE(forecast, nullptr) << all_text();
  EXPECT_THAT(forecast->text().toStdString(), HasSubstr(" to "));
  EXPECT_THAT(forecast->text().toStdString(), HasSubstr("four times in five"));
  ASSERT_TRUE(forecast->has_reasons());
  const report::Grounds why = forecast->grounds();
  EXPECT_EQ(why.section, "When it runs out");
  EXPECT_THAT(why.inputs, Not(IsEmpty()));
  EXPECT_THAT(why.narrow, Not(IsEmpty()));
}

TEST_F(BeersWindow, TellsHowFreshEachKegIsAndWhy) {
  const ui::Figure* keeps = nullptr;
  for (const ui::Figure* each : page_->findChildren<ui::Figure*>()) {
    if (each->isVisible() && each->text().startsWith("keeps about ")) keeps = each;
  }
  ASSERT_NE(keeps, nullptr) << all_text();
  EXPECT_EQ(keeps->grounds().section, "Freshness");
  EXPECT_THAT(keeps->grounds().inputs, Not(IsEmpty()));
  EXPECT_THAT(all_text(), HasSubstr("not tapped"));
  EXPECT_THAT(all_text(), HasSubstr("8 days to its best by"));
}

TEST_F(BeersWindow, ATraceShowsBothWays) {
  ui::TraceDialog trace(context_, rye_);
  trace.show();
  QStringList words;
  for (const QLabel* label : trace.findChildren<QLabel*>()) words << label->text();
  const std::string text = words.join('\n').toStdString();
  EXPECT_THAT(text, HasSubstr("K01: has it, since"));
  EXPECT_THAT(text, HasSubstr("served through Line 1"));
  EXPECT_THAT(text, HasSubstr("What else K02 held"));
  EXPECT_THAT(clipped_texts(trace), IsEmpty());
  EXPECT_THAT(contrast_faults(trace), IsEmpty());
}

TEST_F(BeersWindow, ARecallNeedsAReasonAndHoldsThemAllInOneAct) {
  ui::RecallDialog recall(context_, rye_);
  recall.show();
  EXPECT_FALSE(recall.recall());
  EXPECT_THAT(cellar_.logged(), IsEmpty());
  auto* reason = recall.findChild<QWidget*>("recall_reason")->findChild<QLineEdit*>();
  QTest::keyClicks(reason, "glass found");
  EXPECT_TRUE(recall.recall());
  ASSERT_EQ(cellar_.logged().size(), 1U);
  EXPECT_EQ(cellar_.logged()[0].drafts.size(), 3U);  // the recall and two kegs
  EXPECT_EQ(cellar_.logged()[0].by, "MK");
  EXPECT_EQ(navigator_.announced.back(), "Recalled. 2 kegs are held back.");
  EXPECT_THAT(clipped_texts(recall), IsEmpty());
  EXPECT_THAT(contrast_faults(recall), IsEmpty());
  EXPECT_THAT(unnamed_controls(recall), IsEmpty());
}

TEST_F(BeersWindow, RowsLeadToTheirForms) {
  auto* out = page_->findChild<QPushButton*>("hops_out");
  ASSERT_NE(out, nullptr);
  QTest::mouseClick(out, Qt::LeftButton);
  ASSERT_EQ(navigator_.tasks.size(), 1U);
  EXPECT_EQ(navigator_.tasks[0].kind, "hops_out");
}

TEST_F(BeersWindow, IsReachableReadableAndUnclippedInBothThemes) {
  for (const bool dark : {false, true}) {
    ui::dress(dark ? ui::dark_theme() : ui::light_theme());
    for (const QSize size : {QSize(960, 800), QSize(820, 560)}) {
      page_->resize(size);
      for (int i = 0; i < 3; ++i) QApplication::processEvents();
      EXPECT_THAT(unnamed_controls(*page_), IsEmpty());
      EXPECT_THAT(clipped_texts(*page_), IsEmpty());
      EXPECT_THAT(contrast_faults(*page_), IsEmpty());
      EXPECT_THAT(tab_order_faults(*page_), IsEmpty());
    }
  }
  ui::dress(ui::light_theme());
}

}  // namespace
}  // namespace ullage::testing
