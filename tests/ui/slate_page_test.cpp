// SPDX-License-Identifier: GPL-3.0-or-later
//
// The slate as people use it: found by typing, answered while typing, told at
// the field when it makes no sense, filled from a keg, in the reader's units.
#include "ui/pages/slate_page.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>
#include <qcustomplot.h>

#include <QApplication>
#include <QComboBox>
#include <QLabel>
#include <QLineEdit>
#include <QListWidget>
#include <QPushButton>
#include <QSettings>
#include <QTemporaryDir>
#include <QTest>
#include <QToolButton>

#include "core/units/present.h"
#include "tests/support/accessibility.h"
#include "tests/support/fake_facade.h"
#include "tests/support/fake_surroundings.h"
#include "tests/support/sample_status.h"
#include "ui/charts/answer_chart.h"
#include "ui/pages/slate_answer.h"
#include "ui/pages/slate_form.h"
#include "ui/preferences.h"
#include "ui/theme/theme.h"
#include "ui/theme/theme_switch.h"
#include "ui/widgets/figure.h"
#include "ui/widgets/quantity_edits.h"

namespace ullage::testing {
namespace {

using ::testing::IsEmpty;

class SlateWindow : public ::testing::Test {
 protected:
  SlateWindow()
      : settings_(folder_.filePath("settings.ini"), QSettings::IniFormat),
        preferences_(settings_),
        cellar_(sample_cellar()) {
    ui::dress(ui::light_theme());
    preferences_.set_units(units::DisplayUnits::us());
    page_ = std::make_unique<ui::SlatePage>(context_);
    page_->resize(1100, 800);
    page_->show();
    EXPECT_TRUE(QTest::qWaitForWindowActive(page_.get()));
  }
  template <class Widget>
  [[nodiscard]] Widget* part(const char* name) const {
    auto* found = page_->findChild<Widget*>(QLatin1String(name));
    EXPECT_NE(found, nullptr) << name;
    return found;
  }
  void find(const QString& words) {
    auto* edit = part<QLineEdit>("slate_words");
    edit->setFocus();
    edit->clear();
    for (const QChar c : words) QTest::keyClick(edit, c.toLatin1());
  }
  void type(const char* field, const QString& text) {
    auto* editor = part<ui::QuantityEdit>((std::string("field_") + field).c_str());
    QLineEdit* edit = editor->line_edit();
    edit->setFocus();
    edit->selectAll();
    for (const QChar c : text) QTest::keyClick(edit, c.toLatin1());
  }
  // K01 with all that its computations ask for.
  void know_temperatures() {
    cellar::CellarStatus status = sample_cellar();
    for (cellar::KegStatus& keg : status.kegs) {
      if (keg.record.tag != "K01") continue;
      keg.beer_temperature = units::Estimate<units::Temperature>(units::celsius(2));
      status.places.push_back({present(keg.place), units::celsius(1), {}, 1});
    }
    cellar_.show(std::move(status));
  }
  [[nodiscard]] QString title() const { return part<QLabel>("slate_title")->text(); }
  [[nodiscard]] QString answer() const {
    return part<ui::SlateAnswer>("slate_answer")->main_text();
  }
  [[nodiscard]] QString fault_at(const char* field) const {
    return part<ui::QuantityEdit>((std::string("field_") + field).c_str())->fault();
  }
  // Rows made just now are shown by the next turn of the event loop.
  [[nodiscard]] std::string all_text() const {
    QApplication::processEvents();
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
  FakeFacade cellar_;
  RecordingNavigator navigator_;
  QueuedPrompts prompts_;
  ui::Context context_{cellar_, preferences_, prompts_, navigator_};
  std::unique_ptr<ui::SlatePage> page_;
};

TEST_F(SlateWindow, FindsAComputationWhileTypingAndEnterGoesToItsFields) {
  find("purge cyc");
  EXPECT_EQ(title(), "How clean does filling and venting purge?");
  EXPECT_EQ(part<QListWidget>("slate_list")->count(), 1);
  QTest::keyClick(part<QLineEdit>("slate_words"), Qt::Key_Return);
  EXPECT_EQ(QApplication::focusWidget(), part<ui::QuantityEdit>("field_pressure")->line_edit());
  find("abv");
  EXPECT_EQ(title(), "How much alcohol?");
  find("abvxyz");  // read letter by letter: no computation is found from "abvx" on
  EXPECT_EQ(title(), "How much alcohol?");  // stays until something else is found
  EXPECT_FALSE(part<QListWidget>("slate_list")->isVisible());
}

TEST_F(SlateWindow, ArrowKeysMoveAmongWhatWasFound) {
  find("purge");
  const QString first = title();
  QTest::keyClick(part<QLineEdit>("slate_words"), Qt::Key_Down);
  EXPECT_NE(title(), first);
  QTest::keyClick(part<QLineEdit>("slate_words"), Qt::Key_Up);
  EXPECT_EQ(title(), first);
}

TEST_F(SlateWindow, AnswersWhileTypingInTheUnitsOfTheReader) {
  find("set pressure");
  const QString before = answer();
  EXPECT_TRUE(before.contains("psi")) << before.toStdString();
  type("co2", "2.8");
  EXPECT_NE(answer(), before);
  type("temperature", "4C");  // a typed unit wins
  const QString in_psi = answer();
  preferences_.set_units(units::DisplayUnits::metric());
  EXPECT_TRUE(answer().contains("bar")) << answer().toStdString();
  EXPECT_THAT(all_text(), ::testing::Not(::testing::HasSubstr("°F")));
  EXPECT_THAT(all_text(), ::testing::Not(::testing::HasSubstr("psi")));
  preferences_.set_units(units::DisplayUnits::us());
  EXPECT_EQ(answer(), in_psi);
}

// An open form turns to other units and words: what was typed is converted, labels,
// hints and choices are said anew, and nothing that was typed is lost.
TEST_F(SlateWindow, AnOpenFormFollowsUnitsAndRegion) {
  preferences_.set_words(report::RegionalWords::us);
  find("how long must a line be");
  type("rise", "5 ft");
  type("seconds", "12");
  EXPECT_EQ(part<ui::QuantityEdit>("field_glass")->text(), "16");  // fl oz
  EXPECT_THAT(all_text(), ::testing::HasSubstr("Faucet above the keg"));
  EXPECT_THAT(all_text(), ::testing::HasSubstr("About 9 for 16.9 fl oz"));
  const QString feet = answer();
  preferences_.set_units(units::DisplayUnits::metric());
  preferences_.set_words(report::RegionalWords::british);
  EXPECT_EQ(part<ui::QuantityEdit>("field_rise")->text(), "1.52");
  EXPECT_EQ(part<ui::QuantityEdit>("field_seconds")->text(), "12");
  EXPECT_EQ(part<ui::QuantityEdit>("field_glass")->text(), "0.47");
  EXPECT_THAT(all_text(), ::testing::HasSubstr("Tap above the keg"));
  EXPECT_THAT(all_text(), ::testing::HasSubstr("About 9 for 0.5 L"));
  EXPECT_EQ(part<ui::QuantityEdit>("field_rise")->line_edit()->accessibleName(),
            "Tap above the keg");
  EXPECT_TRUE(answer().contains(" m")) << answer().toStdString();
  preferences_.set_units(units::DisplayUnits::us());
  EXPECT_EQ(answer(), feet);
  find("cleaner for so much");
  preferences_.set_words(report::RegionalWords::us);
  const auto* measure = part<QWidget>("field_measure")->findChild<QComboBox*>();
  ASSERT_NE(measure, nullptr);
  EXPECT_EQ(measure->itemText(0), "grams a liter");
}

// The sentence at a refused field stays, in the units chosen meanwhile.
TEST_F(SlateWindow, ARefusalIsSaidInTheNewUnits) {
  find("set pressure");
  type("temperature", "200");
  EXPECT_TRUE(fault_at("temperature").contains("°F")) << fault_at("temperature").toStdString();
  preferences_.set_units(units::DisplayUnits::metric());
  EXPECT_TRUE(fault_at("temperature").contains("°C")) << fault_at("temperature").toStdString();
  EXPECT_EQ(answer(), "");
}

TEST_F(SlateWindow, TellsNonsenseAtItsField) {
  find("what co2 pressure give");
  ASSERT_EQ(title(), "What CO₂ does a pressure give?");
  for (const char* nonsense : {"500", "-3", "frogs", "nan", "1e400", ""}) {
    type("pressure", nonsense);
    if (!*nonsense) {
      part<ui::QuantityEdit>("field_pressure")->set_text("");
    }
    EXPECT_EQ(answer(), "") << nonsense;
    EXPECT_FALSE(fault_at("pressure").isEmpty()) << nonsense;
    // What was typed is said back in quotes; no other word of it.
    const QString told = QString::fromStdString(all_text()).remove(QStringLiteral("“nan”"));
    EXPECT_FALSE(told.contains(QLatin1String("nan"))) << nonsense;
  }
  type("pressure", "12");
  EXPECT_EQ(fault_at("pressure"), "");
  EXPECT_NE(answer(), "");
}

TEST_F(SlateWindow, TellsAContradictionAtOneOfItsFields) {
  find("alcohol");
  type("final", "1.060");
  EXPECT_EQ(answer(), "");
  EXPECT_EQ(fault_at("final"), "The final gravity can’t be above the original.");
  EXPECT_EQ(fault_at("original"), "");
  type("original", "1.070");
  EXPECT_EQ(fault_at("final"), "");
  EXPECT_NE(answer(), "");
}

TEST_F(SlateWindow, ShowsAChartWhereThereIsOne) {
  find("purge cycles");
  auto* chart = part<ui::AnswerChart>("answer_chart");
  EXPECT_TRUE(chart->isVisible());
  EXPECT_THAT(chart->accessibleDescription().toStdString(), ::testing::HasSubstr("0 cycles"));
  find("alcohol");
  EXPECT_FALSE(chart->isVisible());
}

TEST_F(SlateWindow, JudgesAHoldTestWhileItIsTyped) {
  find("hold test");
  ASSERT_EQ(title(), "Does a keg hold its gas?");
  type("pressure1", "30 psi");
  type("temperature1", "20C");
  type("temperature2", "20C");
  type("pressure2", "20 psi");
  EXPECT_EQ(answer(), "It leaks");
  auto* chart = part<ui::AnswerChart>("answer_chart");
  EXPECT_TRUE(chart->isVisible());
  EXPECT_THAT(chart->accessibleDescription().toStdString(), ::testing::HasSubstr("no leak"));
  type("after2", "2 min");
  EXPECT_EQ(answer(), "Can’t tell yet");
  EXPECT_THAT(all_text(), ::testing::HasSubstr("Too soon"));
  part<ui::QuantityEdit>("field_after2")->set_text("");
  part<ui::QuantityEdit>("field_pressure2")->set_text("");
  EXPECT_EQ(answer(), "Can’t tell yet");
  EXPECT_THAT(all_text(), ::testing::HasSubstr("One reading tells nothing"));
  EXPECT_FALSE(chart->isVisible());
  for (const char* nonsense : {"500 psi", "-3", "nan"}) {
    type("pressure1", nonsense);
    EXPECT_EQ(answer(), "") << nonsense;
    EXPECT_FALSE(fault_at("pressure1").isEmpty()) << nonsense;
  }
}

// A reading that is out of order lies among the further fields: they open for it.
TEST_F(SlateWindow, UnfoldsTheFieldThatIsWrong) {
  find("hold test");
  auto* further = part<QToolButton>("further_fields");
  further->setChecked(true);
  type("pressure3", "29 psi");
  EXPECT_FALSE(fault_at("after3").isEmpty());  // a reading takes its time
  type("after3", "1 h");
  type("temperature3", "20C");
  EXPECT_THAT(fault_at("after3").toStdString(), ::testing::HasSubstr("order"));
  further->setChecked(false);
  type("pressure1", "31 psi");
  EXPECT_TRUE(further->isChecked());
  QApplication::processEvents();
  EXPECT_TRUE(part<ui::QuantityEdit>("field_after3")->isVisible());
}

TEST_F(SlateWindow, RescuesAndPrimes) {
  find("overcarbonated");
  EXPECT_FALSE(answer().isEmpty());
  auto* chart = part<ui::AnswerChart>("answer_chart");
  EXPECT_TRUE(chart->isVisible());
  EXPECT_THAT(chart->accessibleDescription().toStdString(), ::testing::HasSubstr("wanted"));
  type("target", "4 vol");
  EXPECT_THAT(fault_at("target").toStdString(), ::testing::HasSubstr("nothing to get rid of"));
  find("priming");
  const QString sugar = answer();
  EXPECT_FALSE(sugar.isEmpty());
  type("brimful", "30 L");  // more headspace takes more sugar
  EXPECT_NE(answer(), sugar);
  type("beer", "40 L");
  EXPECT_FALSE(fault_at("beer").isEmpty());
}

TEST_F(SlateWindow, EveryComputationIsReadableAndUnclipped) {
  for (const bool dark : {false, true}) {
    ui::dress(dark ? ui::dark_theme() : ui::light_theme());
    page_->resize(dark ? QSize(860, 560) : QSize(1100, 800));
    for (const report::slate::Computation& c : report::slate::computations()) {
      page_->work_out(std::string(c.key), std::nullopt);
      for (int i = 0; i < 3; ++i) QApplication::processEvents();
      EXPECT_NE(answer(), "") << c.key;
      EXPECT_THAT(unnamed_controls(*page_), IsEmpty()) << c.key;
      EXPECT_THAT(clipped_texts(*page_), IsEmpty()) << c.key;
      EXPECT_THAT(contrast_faults(*page_), IsEmpty()) << c.key;
      auto* chart = part<ui::AnswerChart>("answer_chart");
      if (!chart->isVisible()) continue;
      // The axes fill the chart but for their numbers, whatever stands beneath them.
      const auto* plot = chart->findChild<QCustomPlot*>();
      EXPECT_GT(plot->axisRect()->width(), chart->width() - 130) << c.key;
      EXPECT_GT(plot->axisRect()->height(), 80) << c.key;
    }
  }
  ui::dress(ui::light_theme());
}

TEST_F(SlateWindow, KeepsWhatWasTypedWhenComingBack) {
  find("alcohol");
  type("original", "1.070");
  const QString strong = answer();
  find("purge cycles");
  find("alcohol");
  EXPECT_EQ(answer(), strong);
}

TEST_F(SlateWindow, OpensWithAKegsFiguresAndOffersTheAct) {
  know_temperatures();
  const auto keg = numbered<cellar::KegId>(1);
  page_->work_out("burst", keg);
  EXPECT_EQ(title(), "How long at high pressure?");
  EXPECT_TRUE(part<QWidget>("about_keg")->isVisible());
  EXPECT_EQ(part<ui::GaugePressureEdit>("field_pressure")->value(), units::gauge_psi(30));
  auto* act = part<QPushButton>("slate_act");
  ASSERT_TRUE(act->isVisible());
  EXPECT_EQ(act->text(), "K01: Set gas…");
  QTest::mouseClick(act, Qt::LeftButton);
  ASSERT_EQ(navigator_.tasks.size(), 1U);
  EXPECT_EQ(navigator_.tasks[0].kind, "gas_set");
  EXPECT_EQ(navigator_.tasks[0].about, cellar::subject(keg));
  EXPECT_EQ(get<cellar::GasSet>(present(navigator_.tasks[0].prefill)).pressure,
            units::gauge_psi(30));
  QTest::mouseClick(part<QPushButton>("forget_keg"), Qt::LeftButton);
  EXPECT_FALSE(act->isVisible());
}

TEST_F(SlateWindow, SaysWhichFiguresOfAKegAreMissing) {
  page_->work_out("left_by_weight", numbered<cellar::KegId>(4));  // a 50 L keg
  EXPECT_FALSE(part<ui::MassEdit>("field_gross")->value());
  EXPECT_THAT(part<QLabel>("about_keg_words")->text().toStdString(),
              ::testing::HasSubstr("To be filled in: On the scale"));
}

TEST_F(SlateWindow, SaysWhichFiguresAreWhoseInTheReasons) {
  know_temperatures();
  page_->work_out("burst", numbered<cellar::KegId>(1));
  type("pressure", "25");
  const report::Grounds g = part<ui::Figure>("main_answer")->grounds();
  const auto lines = report::lines_of(g);
  EXPECT_THAT(lines, ::testing::Contains("Pressure now 25 psi: typed in"));
  EXPECT_THAT(lines, ::testing::Contains(::testing::HasSubstr("CO₂ in it at the start 1.7")));
}

TEST_F(SlateWindow, IsReachableReadableAndUnclippedInBothThemes) {
  for (const bool dark : {false, true}) {
    ui::dress(dark ? ui::dark_theme() : ui::light_theme());
    for (const QSize size : {QSize(1100, 800), QSize(860, 560)}) {
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
