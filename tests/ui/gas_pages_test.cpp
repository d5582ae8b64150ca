// SPDX-License-Identifier: GPL-3.0-or-later
//
// The Gas and Safety pages and the bottle change, over a cellar made by hand.
#include <gtest/gtest.h>

#include <QApplication>
#include <QCheckBox>
#include <QLabel>
#include <QLineEdit>
#include <QPushButton>
#include <QTest>
#include <memory>

#include "core/units/present.h"
#include "tests/support/accessibility.h"
#include "tests/ui/gas_fixture.h"
#include "ui/charts/gas_chart.h"
#include "ui/dialogs/bottle_change.h"
#include "ui/pages/gas_page.h"
#include "ui/pages/safety_page.h"
#include "ui/widgets/enum_picker.h"
#include "ui/widgets/fact_list.h"
#include "ui/widgets/gas_drawing.h"
#include "ui/widgets/reasons_popup.h"

namespace ullage::testing {
namespace {

TEST_F(GasPages, TellsTheLossTheSuspectsAndThePlan) {
  const auto page = open<ui::GasPage>();
  const QString words = all_words(*page);
  for (const char* said : {"loses 30 ± 2 g a day", "more than 99.9 % sure",
                           "K01 has no passed hold", "While liquid remains the gauge tells nothing",
                           "3.69 ± 0.25 every 30 days", "one branch at a time, 2 days each"}) {
    EXPECT_TRUE(words.contains(QString::fromUtf8(said))) << said << "\nin\n" << words.toStdString();
  }
  EXPECT_TRUE(page->findChild<ui::GasChart*>()->has_curve());
  EXPECT_TRUE(page->findChild<ui::GasDrawing*>()->accessibleDescription().contains(
      QStringLiteral("Serving regulator, which feeds K01 at 12 psi")));
}

TEST_F(GasPages, ButtonsOpenTheFormsAboutTheBottle) {
  const auto page = open<ui::GasPage>();
  const auto click = [&](const char* name) {
    auto* button = page->findChild<QPushButton*>(QLatin1String(name));
    ASSERT_NE(button, nullptr) << name;
    QTest::mouseClick(button, Qt::LeftButton);
  };
  click("supply_bottle_weighed");
  click("supply_gauge_read");
  click("change_bottle");
  ASSERT_EQ(navigator_.tasks.size(), 3u);
  EXPECT_EQ(navigator_.tasks[0].kind, "bottle_weighed");
  EXPECT_EQ(get<cellar::BottleWeighed>(present(navigator_.tasks[0].prefill)).bottle,
            numbered<cellar::BottleId>(1));
  EXPECT_EQ(navigator_.tasks[2].kind, "bottle_changed");
  auto* suspects = page->findChild<QWidget*>(QStringLiteral("suspects"));
  QTest::mouseClick(suspects->findChild<QPushButton*>(), Qt::LeftButton);
  EXPECT_EQ(navigator_.tasks.back().kind, "leak_tested");
}

// Inputs with their age, the equation, its source, what would narrow it.
TEST_F(GasPages, EveryWorkedOutNumberHasItsReasons) {
  const auto page = open<ui::GasPage>();
  auto* facts = page->findChild<ui::FactList*>();
  ASSERT_NE(facts, nullptr);
  for (const char* name : {"In it now", "Lasts until", "Used by the kegs", "Unexplained", "Costs",
                           "Its gauge", "Full of liquid at"}) {
    const ui::Figure* figure = facts->figure(QLatin1String(name));
    ASSERT_NE(figure, nullptr) << name;
    const report::Grounds g = figure->grounds();
    EXPECT_FALSE(g.answer.empty()) << name;
    EXPECT_FALSE(g.equation.empty()) << name;
    EXPECT_FALSE(g.source.empty()) << name;
    EXPECT_FALSE(g.section.empty()) << name;
  }
  const auto inputs = [&](const char* name) {
    std::string all;
    for (const auto& input : facts->figure(QLatin1String(name))->grounds().inputs)
      all += report::line_of(input) + "\n";
    return all;
  };
  EXPECT_NE(inputs("Unexplained").find("Gas in it 6.0"), std::string::npos)
      << inputs("Unexplained");
  EXPECT_NE(inputs("Unexplained").find("read, 21 d ago"), std::string::npos)
      << inputs("Unexplained");
  EXPECT_NE(inputs("Used by the kegs").find("K01 on gas at 12 psi"), std::string::npos);
  EXPECT_NE(inputs("Costs").find("26.00"), std::string::npos) << inputs("Costs");
  EXPECT_FALSE(facts->figure("Unexplained")->grounds().narrow.empty());
}

// 3 x 20 g at 30 g a day.
TEST_F(GasPages, TheWaitForEachBranchOpensItsReasons) {
  const auto page = open<ui::GasPage>();
  auto* wait = page->findChild<ui::Figure*>(QStringLiteral("isolation_wait"));
  ASSERT_NE(wait, nullptr);
  ASSERT_TRUE(wait->isVisible());
  EXPECT_EQ(wait->focusPolicy(), Qt::StrongFocus);
  EXPECT_TRUE(wait->text().contains(QStringLiteral("2 days each")));
  wait->setFocus();
  QTest::keyClick(wait, Qt::Key_Return);
  ui::ReasonsPopup* reasons = nullptr;
  for (QWidget* top : QApplication::topLevelWidgets()) {
    auto* popup = qobject_cast<ui::ReasonsPopup*>(top);
    if (popup && popup->isVisible()) reasons = popup;
  }
  ASSERT_NE(reasons, nullptr);
  const QString words = all_words(*reasons);
  for (const char* said : {"Each branch shut for", "2 days", "Unexplained, 30 ± 2 g a day",
                           "Lighter between the last two weighings by", "read, just now", "60 g",
                           "common practice", "One branch at a time", "A finer scale"})
    EXPECT_TRUE(words.contains(QString::fromUtf8(said))) << said << "\nin\n" << words.toStdString();
  reasons->close();
}

// At the width of a small screen, a long name wraps and is whole.
TEST_F(GasPages, LongNamesOfTheDrawingAreNotCut) {
  ui::DrawnSupply supply;
  supply.bottles = {"CO2 bottle 1, left"};
  supply.branches = {{"Serving regulator, four outlets", {{"K01", "12 psi"}}}};
  ui::GasDrawing drawing;
  drawing.show_supply(supply);
  const QFontMetrics small(ui::font_of(ui::TextRole::small));
  const int whole = small.horizontalAdvance("Serving regulator, four outlets");
  EXPECT_GE(drawing.sizeHint().width(), whole);
  EXPECT_GT(drawing.heightForWidth(380), drawing.heightForWidth(700)) << "it wraps";
  EXPECT_GE(drawing.heightForWidth(380), 2 * small.height());
}

TEST_F(GasPages, WithoutAnAlarmNothingIsSuspected) {
  cellar::CellarStatus calm = gas_cellar();
  auto account = std::make_shared<GasAccount>(*calm.bottles[0].account);
  account->alarm = false;
  account->suspects.clear();
  account->isolation.clear();
  account->loss->per_day = cellar::MassEstimate(units::grams(25)).with({"scale"}, 0.022);
  account->loss->confidence = units::fraction(0.987);
  account->loss->smallest_visible_per_day = units::grams(40);
  calm.bottles[0].account = account;
  facade_.show(std::move(calm));
  const auto page = open<ui::GasPage>();
  const QString words = all_words(*page);
  EXPECT_FALSE(words.contains(QStringLiteral("Where to look first")));
  EXPECT_TRUE(
      words.contains(QStringLiteral("30 ± 20 g a day: not enough to call it a loss. A steady "
                                    "loss of 40 g a day would be called one 9 times in 10.")))
      << words.toStdString();
  EXPECT_FALSE(words.contains(QStringLiteral("none to be seen"))) << "no all-clear";
  const report::Grounds why =
      page->findChild<ui::FactList*>()->figure(QStringLiteral("Unexplained"))->grounds();
  std::string notes;
  for (const std::string& n : why.notes) notes += n + "\n";
  EXPECT_NE(notes.find("not to say that there is none"), std::string::npos) << notes;
  EXPECT_NE(notes.find("40 g a day would be called one 9 times in 10"), std::string::npos) << notes;
}

TEST_F(GasPages, ASureLossBelowTheCellarsLimitIsNotCalledNone) {
  cellar::CellarStatus calm = gas_cellar();
  auto account = std::make_shared<GasAccount>(*calm.bottles[0].account);
  account->alarm = false;
  account->loss->per_day = cellar::MassEstimate(units::grams(4)).with({"scale"}, 0.001);
  calm.bottles[0].account = account;
  facade_.show(std::move(calm));
  const QString words = all_words(*open<ui::GasPage>());
  EXPECT_TRUE(words.contains(QStringLiteral("more than 99.9 % sure, but less than this cellar")))
      << words.toStdString();
}

TEST_F(GasPages, UnweighedBottleSaysWhatToDo) {
  cellar::CellarStatus status = gas_cellar();
  auto account = std::make_shared<GasAccount>();
  account->bottles = {status.bottles[0].record};
  account->name = "CO2 bottle 1";
  account->cant_tell = cellar::message(cellar::MessageKey::gas_never_weighed);
  status.bottles[0].account = account;
  facade_.show(std::move(status));
  const auto page = open<ui::GasPage>();
  EXPECT_TRUE(all_words(*page).contains(QStringLiteral("Not weighed yet")));
}

TEST_F(GasPages, EmptyCellarSaysTheNextStep) {
  facade_.show(cellar::CellarStatus{sample_now});
  EXPECT_TRUE(all_words(*open<ui::GasPage>()).contains(QStringLiteral("No gas bottles yet")));
  EXPECT_TRUE(all_words(*open<ui::SafetyPage>()).contains(QStringLiteral("No gas bottle stands")));
}

TEST_F(GasPages, TheEmptySafetyPageOffersWhatItSays) {
  facade_.show(cellar::CellarStatus{sample_now});
  const auto empty = open<ui::SafetyPage>();
  for (const char* kind : {"place_record", "bottle_record"}) {
    auto* add = empty->findChild<QPushButton*>(QLatin1String("add_") + QLatin1String(kind));
    ASSERT_NE(add, nullptr) << kind;
    EXPECT_TRUE(add->isVisible()) << kind;
    QTest::mouseClick(add, Qt::LeftButton);
    ASSERT_FALSE(navigator_.tasks.empty()) << kind;
    EXPECT_EQ(navigator_.tasks.back().kind, kind);
  }
  facade_.show(gas_cellar());
  const auto told = open<ui::SafetyPage>();
  EXPECT_FALSE(told->findChild<QPushButton*>(QStringLiteral("add_bottle_record"))->isVisible());
}

// 6.35 kg in 20 m3 at 20 °C: 17.3 % computed elsewhere from 1.8393 kg/m3.
TEST_F(GasPages, SafetyTellsTheAirAndNeverAnAllClear) {
  const auto page = open<ui::SafetyPage>();
  const QString words = all_words(*page);
  for (const char* said :
       {"17 ± 2 % carbon dioxide, if evenly mixed", "Low spots far higher", "never an all-clear",
        "gathers low: is that right", "EH40", "Local code", "OSHA PEL"}) {
    EXPECT_TRUE(words.contains(QString::fromUtf8(said))) << said << "\nin\n" << words.toStdString();
  }
  EXPECT_FALSE(words.contains(QStringLiteral("safe to"), Qt::CaseInsensitive));
}

TEST_F(GasPages, EveryWorkedOutNumberOfTheSafetyPageOpensItsReasons) {
  const auto page = open<ui::SafetyPage>();
  int with_reasons = 0;
  for (const ui::Figure* figure : page->findChildren<ui::Figure*>()) {
    if (figure->isHidden()) continue;
    const report::Grounds grounds = figure->grounds();
    EXPECT_FALSE(grounds.empty()) << figure->text().toStdString();
    EXPECT_FALSE(grounds.equation.empty()) << figure->text().toStdString();
    ++with_reasons;
  }
  EXPECT_GE(with_reasons, 6);
  auto* facts = page->findChild<ui::FactList*>();
  for (const char* name : {"If all escapes", "Oxygen then", "For 3 % at most", "If air can leave"})
    EXPECT_NE(facts->figure(QString::fromUtf8(name)), nullptr) << name;
}

// The numbered sentences of one card of the Safety page, in order.
QStringList steps_of_card(const QWidget& page, const QString& title) {
  QStringList out;
  for (const QWidget* card : page.findChildren<QWidget*>()) {
    if (card->accessibleName() != title) continue;
    for (const QLabel* label : card->findChildren<QLabel*>()) {
      bool number = false;
      const int n = label->text().toInt(&number);
      if (number) {
        EXPECT_EQ(n, out.size() + 1);
      } else if (label->text() != title) {
        out << label->text();
      }
    }
  }
  return out;
}

TEST_F(GasPages, TheSafeOrdersStandInTheirOrder) {
  const auto page = open<ui::SafetyPage>();
  const auto expect = [&](const char* title, std::initializer_list<const char*> begin) {
    const QStringList steps = steps_of_card(*page, QString::fromUtf8(title));
    ASSERT_EQ(steps.size(), static_cast<qsizetype>(begin.size())) << title;
    qsizetype i = 0;
    for (const char* words : begin) {
      EXPECT_TRUE(steps[i].contains(QString::fromUtf8(words))) << steps[i].toStdString();
      ++i;
    }
  };
  expect("Letting pressure out, in this order",
         {"Air the room: door open", "Shut the bottle’s valve, then turn the regulator down.",
          "Take the gas off the keg.", "Face away from the relief valve. Let it down slowly",
          "Only then open the keg."});
  expect("Cleaning agents, in this order",
         {"Goggles and gloves first. Water into the bucket, then the agent",
          "Let the carbon dioxide out and rinse before caustic goes in",
          "Rinse with water after every agent", "Never acid after a chlorinated cleaner",
          "Caustic is a cleaner, not a disinfectant."});
}

TEST_F(GasPages, LimitsFollowTheCountry) {
  cellar::CellarStatus status = gas_cellar();
  status.cellar = cellar::CellarDescribed{};
  status.cellar->country = "DE";
  facade_.show(std::move(status));
  const QString words = all_words(*open<ui::SafetyPage>());
  EXPECT_TRUE(words.contains(QStringLiteral("TRGS 900")) ||
              words.contains(QStringLiteral("workplace limit (AGW)")));
  EXPECT_FALSE(words.contains(QStringLiteral("OSHA")));
  // A member state has the EU's besides, and is told whose oxygen limit it sees.
  EXPECT_TRUE(words.contains(QStringLiteral("Directive 2006/15/EC"))) << words.toStdString();
  EXPECT_TRUE(words.contains(QStringLiteral("no figure for oxygen of DE. Of other countries:")));
  EXPECT_TRUE(words.contains(QStringLiteral("US: oxygen-deficient air")));
}

TEST_F(GasPages, WithoutACountryItsLackIsSaid) {
  EXPECT_TRUE(all_words(*open<ui::SafetyPage>())
                  .contains(QStringLiteral("No country is stated in This cellar…")));
  cellar::CellarStatus status = gas_cellar();
  status.cellar = cellar::CellarDescribed{};
  status.cellar->country = "NZ";
  facade_.show(std::move(status));
  const QString words = all_words(*open<ui::SafetyPage>());
  EXPECT_TRUE(words.contains(QStringLiteral("no figure of NZ at all"))) << words.toStdString();
  EXPECT_TRUE(words.contains(QStringLiteral("EH40")));
}

TEST_F(GasPages, AccessibleAndUnclippedInBothThemes) {
  for (const ui::Theme* theme : {&ui::light_theme(), &ui::dark_theme()}) {
    ui::dress(*theme);
    const auto gas = open<ui::GasPage>({968, 600});
    const auto safety = open<ui::SafetyPage>({968, 600});
    for (QWidget* page : {static_cast<QWidget*>(gas.get()), static_cast<QWidget*>(safety.get())}) {
      EXPECT_EQ(unnamed_controls(*page), std::vector<std::string>{});
      EXPECT_EQ(tab_order_faults(*page), std::vector<std::string>{});
      EXPECT_EQ(contrast_faults(*page), std::vector<std::string>{});
      EXPECT_EQ(clipped_texts(*page), std::vector<std::string>{});
    }
  }
}

TEST_F(GasPages, BottleChangeIsOneActWithTagAndLeakTest) {
  ui::BottleChange form(context_, numbered<cellar::RegulatorId>(1), numbered<cellar::BottleId>(1));
  form.show();
  auto* tag = form.findChild<QWidget*>(QStringLiteral("co2_on_tag"))->findChild<QLineEdit*>();
  QTest::keyClicks(tag, QStringLiteral("60"));
  QTest::keyClick(tag, Qt::Key_Tab);
  EXPECT_TRUE(
      form.warned_of().contains(QStringLiteral("The tag says 60 % CO₂, the register 100 %")));
  form.findChild<QCheckBox*>(QStringLiteral("washer"))->setChecked(true);
  form.findChild<ui::ChoiceBar*>(QStringLiteral("leak_test"))->set_index(0);
  ASSERT_TRUE(form.log());
  ASSERT_EQ(facade_.logged().size(), 1u);
  const cellar::Act& act = facade_.logged().front();
  ASSERT_EQ(act.drafts.size(), 2u);
  const auto& changed = get<cellar::BottleChanged>(act.drafts[0].payload);
  EXPECT_NEAR(present(changed.co2_on_tag).count(), 0.6, 1e-9);
  EXPECT_TRUE(changed.washer_renewed);
  const auto& tested = get<cellar::LeakTested>(act.drafts[1].payload);
  EXPECT_EQ(tested.regulator, numbered<cellar::RegulatorId>(1));
  EXPECT_FALSE(tested.leak_found);
}

TEST_F(GasPages, BottleChangeWithoutABottleIsRefusedAtItsField) {
  ui::BottleChange form(context_, {}, {});
  form.show();
  EXPECT_FALSE(form.log());
  EXPECT_TRUE(facade_.logged().empty());
}

}  // namespace
}  // namespace ullage::testing
