// SPDX-License-Identifier: GPL-3.0-or-later
//
// A cellar made by hand whose one supply loses gas, for tests of the Gas and Safety
// pages.
#pragma once

#include <gtest/gtest.h>

#include <QApplication>
#include <QLabel>
#include <QTest>
#include <memory>

#include "core/cellar/gas_account.h"
#include "tests/support/fake_facade.h"
#include "tests/support/fake_surroundings.h"
#include "tests/support/own_preferences.h"
#include "tests/support/sample_status.h"
#include "ui/theme/theme.h"
#include "ui/theme/theme_switch.h"
#include "ui/widgets/figure.h"

namespace ullage::testing {

using cellar::BottleRecord;
using cellar::GasAccount;

inline cellar::MassEstimate kilos(double kilograms, double half_width) {
  return cellar::MassEstimate(units::kilograms(kilograms)).with({"scale"}, half_width);
}

inline BottleRecord bottle_of(std::uint16_t n, const char* name) {
  BottleRecord b;
  b.bottle = numbered<cellar::BottleId>(n);
  b.name = name;
  b.tare = units::kilograms(3.5);
  b.content = units::kilograms(6.35);
  b.price_minor = 2600;
  b.place = numbered<cellar::PlaceId>(1);
  return b;
}

// Loses 30 g a day since the second weighing.
inline std::shared_ptr<GasAccount> leaking_account(const BottleRecord& bottle) {
  auto a = std::make_shared<GasAccount>();
  a->bottles = {bottle};
  a->name = bottle.name;
  cellar::GasBranch branch;
  branch.regulator.regulator = numbered<cellar::RegulatorId>(1);
  branch.regulator.name = "Serving regulator";
  branch.kegs.push_back({numbered<cellar::KegId>(1), "K01", units::gauge_psi(12), days_on(-9),
                         cellar::HoldKind::untested});
  a->branches.push_back(branch);
  for (int week = 0; week < 4; ++week) {
    const double days = 7.0 * week - 21;
    a->weighings.push_back({days_on(days), kilos(6 - 0.27 * week, 0.03), kilos(0.06 * week, 0.01)});
    const auto mass = [&](double off) { return units::kilograms(6 - 0.06 * week + off); };
    a->expected.push_back({days_on(days), mass(-0.05), mass(0), mass(0.05)});
  }
  physics::UnexplainedLoss loss;
  loss.per_day = cellar::MassEstimate(units::grams(30)).with({"scale"}, 0.002);
  loss.confidence = units::fraction(0.9999);
  loss.smallest_visible_per_day = units::grams(2);
  loss.verdict = physics::LossVerdict::unexplained;
  loss.between.push_back(
      {units::days(0), units::days(7), kilos(0.27, 0.02), kilos(0.06, 0.01), kilos(0.21, 0.022)});
  a->loss = loss;
  a->alarm = true;
  a->tare_known = true;
  a->gas_now = kilos(5.1, 0.1);
  a->use_per_day = cellar::MassEstimate(units::grams(9)).with({"method"}, 0.001);
  a->runs_out = cellar::Window{days_on(110), days_on(130), days_on(150)};
  a->cost_minor_per_30_days = 369;
  cellar::ToldBottle told;
  told.gauge = cellar::message(cellar::MessageKey::gauge_tells_nothing, units::kilograms(0.9));
  told.liquid_full_at = units::celsius(22);
  a->told = {told};
  cellar::LeakTested test;
  test.keg = numbered<cellar::KegId>(1);
  a->suspects.push_back(
      {cellar::subject(numbered<cellar::KegId>(1)),
       cellar::message(cellar::MessageKey::suspect_untested, std::string("K01")),
       days_on(-9),
       {"leak_tested", cellar::subject(numbered<cellar::KegId>(1)), cellar::Payload(test), {}}});
  a->isolation_wait = units::days(2);
  a->isolation.push_back({cellar::message(cellar::MessageKey::isolate_weigh, bottle.name),
                          {"bottle_weighed", cellar::subject(bottle.bottle), {}, {}}});
  return a;
}

inline cellar::CellarStatus gas_cellar() {
  cellar::CellarStatus status = sample_cellar();
  cellar::PlaceStatus place;
  place.record.place = numbered<cellar::PlaceId>(1);
  place.record.name = "Back room";
  place.record.net_air_volume = units::cubic_metres(20);
  place.record.sensor_height = units::metres(1.6);
  place.temperature = units::celsius(20);
  status.places = {place};
  status.bottles.clear();
  const BottleRecord bottle = bottle_of(1, "CO2 bottle 1");
  cellar::BottleStatus b;
  b.record = bottle;
  b.account = leaking_account(bottle);
  status.bottles.push_back(b);
  cellar::RegulatorRecord regulator;
  regulator.regulator = numbered<cellar::RegulatorId>(1);
  regulator.name = "Serving regulator";
  status.regulators = {regulator};
  return status;
}

class GasPages : public ::testing::Test {
 protected:
  GasPages() : facade_(gas_cellar()) { ui::dress(ui::light_theme()); }

  template <class Page>
  std::unique_ptr<Page> open(QSize size = {1284, 860}) {
    auto page = std::make_unique<Page>(context_);
    page->resize(size);
    page->show();
    EXPECT_TRUE(QTest::qWaitForWindowExposed(page.get()));
    return page;
  }
  static QString all_words(const QWidget& page) {
    QStringList words;
    for (const QLabel* label : page.findChildren<QLabel*>()) {
      if (label->isVisible()) words << label->text();
    }
    for (const ui::Figure* figure : page.findChildren<ui::Figure*>()) {
      if (figure->isVisible()) words << figure->text();
    }
    return words.join(QLatin1Char('\n'));
  }

  FakeFacade facade_;
  OwnPreferences own_;
  QueuedPrompts prompts_;
  RecordingNavigator navigator_;
  ui::Context context_{facade_, own_.preferences, prompts_, navigator_};
};

}  // namespace ullage::testing
