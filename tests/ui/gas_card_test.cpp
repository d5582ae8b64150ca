// SPDX-License-Identifier: GPL-3.0-or-later
//
// Gas cards of more than one bottle or regulator, what bottles ask for, gas that
// counts for no bottle, and kegs still to fill.
#include <gtest/gtest.h>

#include <QLineEdit>
#include <QPushButton>

#include "core/cellar/presets.h"
#include "core/units/present.h"
#include "tests/support/accessibility.h"
#include "tests/ui/gas_fixture.h"
#include "ui/pages/gas_page.h"
#include "ui/widgets/fact_list.h"
#include "ui/widgets/gas_drawing.h"

namespace ullage::testing {
namespace {

class GasCards : public GasPages {};

// A second bottle, a second regulator fed by the first.
std::shared_ptr<GasAccount> manifold_account(const GasAccount& one) {
  auto account = std::make_shared<GasAccount>(one);
  account->bottles.push_back(bottle_of(2, "CO2 bottle 2"));
  account->bottles.back().co2 = units::mole_fraction(0.6);
  account->name = "CO2 bottle 1 + CO2 bottle 2";
  cellar::ToldBottle told;
  told.gauge = cellar::message(cellar::MessageKey::gauge_tells_mixed, kilos(1.2, 0.1));
  account->told.push_back(told);
  account->branches[0].stands_on = account->bottles[0].bottle;
  cellar::GasBranch secondary;
  secondary.regulator.regulator = numbered<cellar::RegulatorId>(2);
  secondary.regulator.name = "Bar regulator";
  secondary.regulator.fed_by = numbered<cellar::RegulatorId>(1);
  secondary.kegs.push_back({numbered<cellar::KegId>(2), "K02", units::gauge_psi(30), days_on(-9),
                            cellar::HoldKind::holds});
  // Before the one that feeds it, as names go.
  account->branches.insert(account->branches.begin(), secondary);
  return account;
}

TEST_F(GasCards, ASecondaryRegulatorIsDrawnFromTheOneThatFeedsIt) {
  cellar::CellarStatus status = gas_cellar();
  status.bottles[0].account = manifold_account(*status.bottles[0].account);
  facade_.show(std::move(status));
  const auto page = open<ui::GasPage>();
  EXPECT_EQ(page->findChild<ui::GasDrawing*>()->accessibleDescription(),
            QStringLiteral("CO2 bottle 1 feeds Serving regulator, which feeds K01 at 12 psi. "
                           "Serving regulator feeds Bar regulator, which feeds K02 at 30 psi."));
}

TEST_F(GasCards, EveryBottleOfAManifoldHasItsFactsAndItsForms) {
  cellar::CellarStatus status = gas_cellar();
  status.bottles[0].account = manifold_account(*status.bottles[0].account);
  facade_.show(std::move(status));
  const auto page = open<ui::GasPage>({1284, 1400});
  const QString words = all_words(*page);
  for (const char* said : {"CO2 bottle 1 gauge", "CO2 bottle 2 gauge", "Mixed gas, so the gauge",
                           "CO2 bottle 1: CO₂, CO2 bottle 2: CO₂ 60 % / N₂ 40 %"})
    EXPECT_TRUE(words.contains(QString::fromUtf8(said))) << said << "\nin\n" << words.toStdString();
  std::vector<std::optional<cellar::BottleId>> weighed;
  for (QPushButton* b : page->findChildren<QPushButton*>(QStringLiteral("supply_bottle_weighed"))) {
    QTest::mouseClick(b, Qt::LeftButton);
    weighed.emplace_back(
        get<cellar::BottleWeighed>(present(navigator_.tasks.back().prefill)).bottle);
  }
  ASSERT_EQ(weighed.size(), 2u);
  EXPECT_EQ(weighed[0], numbered<cellar::BottleId>(1));
  EXPECT_EQ(weighed[1], numbered<cellar::BottleId>(2));
  EXPECT_EQ(unnamed_controls(*page), std::vector<std::string>{});
  EXPECT_EQ(clipped_texts(*page), std::vector<std::string>{});
}

TEST_F(GasCards, KeepItCoolerIsSaidOnlyOfAPlaceThatIsWarm) {
  EXPECT_FALSE(all_words(*open<ui::GasPage>()).contains(QStringLiteral("Keep it cooler")));
  cellar::CellarStatus status = gas_cellar();
  auto account = std::make_shared<GasAccount>(*status.bottles[0].account);
  account->told[0].place = cellar::TemperatureEstimate(units::celsius(21.5)).with({"air"}, 1);
  account->told[0].too_warm = true;
  status.bottles[0].account = account;
  facade_.show(std::move(status));
  const QString words = all_words(*open<ui::GasPage>());
  EXPECT_TRUE(words.contains(QStringLiteral("Keep it cooler"))) << words.toStdString();
  EXPECT_TRUE(words.contains(QStringLiteral("A full CO2 bottle 1 is all liquid at")))
      << words.toStdString();
}

TEST_F(GasCards, ATestThatIsSoonOrOverdueIsMarkedAndSaid) {
  const auto words_when_due = [&](int days) {
    cellar::CellarStatus status = gas_cellar();
    auto account = std::make_shared<GasAccount>(*status.bottles[0].account);
    account->told[0].test_due = facade_.calendar().date_of(facade_.now()) + std::chrono::days(days);
    status.bottles[0].account = account;
    facade_.show(std::move(status));
    return all_words(*open<ui::GasPage>());
  };
  const QString later = words_when_due(60), soon = words_when_due(10), late = words_when_due(-10);
  EXPECT_TRUE(later.contains(QStringLiteral("Retest due")));
  EXPECT_FALSE(later.contains(QStringLiteral("its test")));
  EXPECT_TRUE(soon.contains(QStringLiteral("CO2 bottle 1 is due for its test")));
  EXPECT_TRUE(soon.contains(QStringLiteral(": soon")));
  EXPECT_TRUE(late.contains(QStringLiteral("CO2 bottle 1 was due for its test")));
  EXPECT_TRUE(late.contains(QStringLiteral(": overdue")));
}

TEST_F(GasCards, WhatCountsForNoBottleIsSaid) {
  EXPECT_FALSE(all_words(*open<ui::GasPage>()).contains(QStringLiteral("Counts for no bottle")));
  cellar::CellarStatus status = gas_cellar();
  cellar::BottleStatus other;
  other.record = bottle_of(2, "CO2 bottle 2");
  auto account = std::make_shared<GasAccount>();
  account->bottles = {other.record};
  account->name = other.record.name;
  other.account = account;
  status.bottles.push_back(other);
  cellar::RegulatorRecord spare;
  spare.regulator = numbered<cellar::RegulatorId>(9);
  spare.name = "Spare regulator";
  status.regulators.push_back(spare);
  cellar::KegStatus keg;
  keg.record.keg = numbered<cellar::KegId>(77);
  keg.record.tag = "K77";
  keg.gas.on = true;
  keg.gas.set = units::gauge_psi(12);
  status.kegs = {keg};
  facade_.show(std::move(status));
  const QString words = all_words(*open<ui::GasPage>());
  EXPECT_TRUE(words.contains(QStringLiteral("On no bottle: Spare regulator.")))
      << words.toStdString();
  EXPECT_TRUE(words.contains(QStringLiteral("no regulator named: K77.")));
}

TEST_F(GasCards, WhatTheKegsOnItTakeIsSaidWithWhetherItIsEnough) {
  const auto words_with = [&](double enough) {
    cellar::CellarStatus status = gas_cellar();
    auto account = std::make_shared<GasAccount>(*status.bottles[0].account);
    account->planned = kilos(0.5, 0.05);
    account->planned_enough = units::fraction(enough);
    status.bottles[0].account = account;
    facade_.show(std::move(status));
    return all_words(*open<ui::GasPage>());
  };
  const QString plenty = words_with(0.99), half = words_with(0.6), little = words_with(0.01);
  EXPECT_TRUE(plenty.contains(QStringLiteral("For the kegs on it"))) << plenty.toStdString();
  EXPECT_TRUE(plenty.contains(QStringLiteral(": enough")));
  EXPECT_FALSE(plenty.contains(QStringLiteral(": enough with")));
  EXPECT_TRUE(half.contains(QStringLiteral(": enough with 60 % certainty")));
  EXPECT_TRUE(little.contains(QStringLiteral(": not enough")));
}

TEST_F(GasCards, KegsStillToFillAreAnsweredAndWriteNothing) {
  cellar::CellarStatus status = gas_cellar();
  auto account = std::make_shared<GasAccount>(*status.bottles[0].account);
  account->alarm = false;
  account->next_keg =
      physics::SupplyState{cellar::PressureEstimate(units::gauge_psi(12)),
                           cellar::TemperatureEstimate(units::celsius(4)),
                           units::pascals_absolute(101325), units::mole_fraction(1)};
  status.bottles[0].account = account;
  facade_.show(std::move(status));
  const auto page = open<ui::GasPage>();
  EXPECT_FALSE(all_words(*page).contains(QStringLiteral("They take")));
  auto* count = page->findChild<QWidget*>(QStringLiteral("kegs_to_fill_count"));
  ASSERT_NE(count, nullptr);
  QTest::keyClicks(count->findChild<QLineEdit*>(), QStringLiteral("10"));
  const QString words = all_words(*page);
  // Ten times 130 g, of the 5.1 kg there are: and 9 g a day last for months.
  for (const char* said :
       {"They take", "about 1.3", ": enough", "At the use so far that is", "days"})
    EXPECT_TRUE(words.contains(QString::fromUtf8(said))) << said << "\nin\n" << words.toStdString();
  auto* part = page->findChild<QWidget*>(QStringLiteral("kegs_to_fill"));
  EXPECT_FALSE(
      part->findChild<ui::FactList*>()->figure(QStringLiteral("They take"))->grounds().empty());
  EXPECT_TRUE(facade_.logged().empty());
  EXPECT_TRUE(navigator_.tasks.empty());
}

// The kegs that stand empty are counted once a batch waits for them; what is typed stays.
TEST_F(GasCards, KegsStillToFillStartFromTheJournal) {
  cellar::CellarStatus status = gas_cellar();
  status.kegs.clear();
  auto account = std::make_shared<GasAccount>(*status.bottles[0].account);
  account->next_keg =
      physics::SupplyState{cellar::PressureEstimate(units::gauge_psi(12)),
                           cellar::TemperatureEstimate(units::celsius(4)),
                           units::pascals_absolute(101325), units::mole_fraction(1)};
  status.bottles[0].account = account;
  cellar::KegStatus empty;
  empty.record = cellar::keg_from_preset(cellar::KegKind::ball_lock_19);
  empty.record.tag = "K09";
  empty.phase = cellar::Phase::clean;
  status.kegs.push_back(empty);
  status.batches.clear();
  facade_.show(status);
  {
    const auto page = open<ui::GasPage>();
    const QString words = all_words(*page);
    EXPECT_TRUE(words.contains(QStringLiteral("Standing empty (1): K09."))) << words.toStdString();
    EXPECT_TRUE(words.contains(QStringLiteral("No batch is logged")));
    EXPECT_FALSE(words.contains(QStringLiteral("They take")));
  }
  cellar::BatchRecord waiting;
  waiting.name = "Stout 4";
  status.batches.push_back(waiting);
  facade_.show(status);
  const auto page = open<ui::GasPage>();
  auto* edit =
      page->findChild<QWidget*>(QStringLiteral("kegs_to_fill_count"))->findChild<QLineEdit*>();
  EXPECT_EQ(edit->text(), QStringLiteral("1"));
  const QString words = all_words(*page);
  EXPECT_TRUE(words.contains(QStringLiteral("Not in a keg yet: Stout 4."))) << words.toStdString();
  EXPECT_TRUE(words.contains(QStringLiteral("They take")));
  edit->selectAll();
  QTest::keyClicks(edit, QStringLiteral("3"));
  facade_.show(status);
  EXPECT_EQ(edit->text(), QStringLiteral("3")) << "typed";
}

}  // namespace
}  // namespace ullage::testing
