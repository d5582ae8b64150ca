// SPDX-License-Identifier: GPL-3.0-or-later
//
// The hold test in a keg's panel.
#include <QPushButton>
#include <algorithm>
#include <cmath>

#include "core/cellar/hold_test.h"
#include "core/physics/atmosphere.h"
#include "tests/ui/kegs_fixture.h"
#include "ui/charts/hold_chart.h"
#include "ui/pages/keg_panel.h"
#include "ui/pages/keg_panel_hold.h"
#include "ui/widgets/figure.h"

namespace ullage::testing {
namespace {

physics::HoldReading reading_of(double hours, double psi, double celsius) {
  const std::string key = std::to_string(hours);
  return {units::hours(hours),
          units::Estimate<units::GaugePressure>(units::gauge_psi(psi))
              .with({"dial: bias"}, units::in_pascals(units::psi(2)))
              .with({"dial: reading " + key}, units::in_pascals(units::psi(0.5))),
          units::Estimate<units::Temperature>(units::celsius(celsius)).with({"thermometer"}, 0.5)};
}

std::shared_ptr<const cellar::HoldStudy> study_of(std::vector<physics::HoldReading> readings,
                                                  cellar::Instant origin,
                                                  std::optional<physics::BeerInside> beer = {}) {
  auto study = std::make_shared<cellar::HoldStudy>();
  study->origin = origin;
  study->limit_per_day = units::grams(2);
  study->test.gas_space = units::litres(19.6);
  study->test.ambient = physics::sea_level();
  study->test.readings = std::move(readings);
  for (std::size_t i = 0; i < study->test.readings.size(); ++i)
    study->entries.push_back(numbered<cellar::EntryId>(static_cast<std::uint16_t>(900 + i)));
  if (beer) study->test.gas_space -= beer->beer;
  study->beer = std::move(beer);
  study->outcome =
      study->beer ? *physics::judge_hold_with_beer(study->test, *study->beer, study->limit_per_day)
                  : *physics::judge_hold(study->test, study->limit_per_day);
  return study;
}

class HoldPanel : public KegsWindow {
 protected:
  // K05 stands empty.
  void show_test(std::vector<physics::HoldReading> readings,
                 const std::optional<physics::BeerInside>& beer = {}, bool judged = true) {
    cellar::CellarStatus status = sample_cellar();
    auto study = std::make_shared<cellar::HoldStudy>(
        *study_of(std::move(readings), status.now - std::chrono::hours(80), beer));
    if (!judged) study->outcome.reset();
    for (cellar::KegStatus& keg : status.kegs) {
      if (keg.record.tag == "K05") keg.hold_study = study;
    }
    cellar_.show(std::move(status));
    open();
    for (int row = 0; row < table()->model()->rowCount(); ++row) {
      const QModelIndex at = table()->model()->index(row, 0);
      if (at.data().toString() == "K05") table()->setCurrentIndex(at);
    }
    ASSERT_EQ(chosen_tag(), "K05");
  }
  std::vector<const ui::Figure*> figures() {
    std::vector<const ui::Figure*> shown;
    for (const ui::Figure* each : part<ui::KegPanelHold>("hold_test")->findChildren<ui::Figure*>())
      if (each->isVisible()) shown.push_back(each);
    return shown;
  }
  QString words() {
    QStringList all;
    for (const QLabel* label : part<ui::KegPanelHold>("hold_test")->findChildren<QLabel*>()) {
      if (label->isVisible()) all << label->text();
    }
    for (const ui::Figure* figure : figures()) all << figure->text();
    return all.join(' ');
  }
};

TEST_F(HoldPanel, AKegWithoutATestShowsNone) {
  open();
  EXPECT_FALSE(part<ui::KegPanelHold>("hold_test")->isVisible());
}

TEST_F(HoldPanel, ShowsVerdictChartAndWhatItProves) {
  show_test({reading_of(0, 30, 20), reading_of(72, 30, 20)});
  EXPECT_EQ(part<QLabel>("hold_verdict")->text(), "Held 30 psi for 3 days");
  auto* chart = part<ui::HoldChart>("hold_chart");
  EXPECT_TRUE(chart->isVisible());
  EXPECT_TRUE(chart->accessibleDescription().contains("2 readings")) << "for a screen reader";
  EXPECT_TRUE(chart->accessibleDescription().contains("Without a leak it would read 30 psi"));
  EXPECT_TRUE(part<QLabel>("hold_notes")->text().contains("down to 30 psi, not below"));
  EXPECT_TRUE(words().contains("Smallest leak seen"));
}

TEST_F(HoldPanel, ALeakIsToldAtTestAndInUse) {
  show_test({reading_of(0, 30, 20), reading_of(24, 20, 20)});
  EXPECT_TRUE(part<QLabel>("hold_verdict")->text().startsWith("Fell 10 psi in"))
      << part<QLabel>("hold_verdict")->text().toStdString();
  EXPECT_TRUE(words().contains("In use at 12 psi"));
  EXPECT_TRUE(words().contains("through a scratch"));
  preferences_.set_units(units::DisplayUnits::metric());
  EXPECT_TRUE(words().contains("bar")) << words().toStdString();
  EXPECT_FALSE(words().contains("psi"));
}

TEST_F(HoldPanel, EveryNumberOpensItsReasons) {
  show_test({reading_of(0, 30, 20), reading_of(6, 29.8, 20)});
  ASSERT_GE(figures().size(), 5U);
  for (const ui::Figure* figure : figures()) {
    ASSERT_TRUE(figure->has_reasons()) << figure->text().toStdString();
    const report::Grounds g = figure->grounds();
    EXPECT_EQ(g.section, report::laws::hold_test.section);
    const auto lines = report::lines_of(g);
    const auto says = [&](const char* words) {
      return std::any_of(lines.begin(), lines.end(), [&](const std::string& line) {
        return line.find(words) != std::string::npos;
      });
    };
    EXPECT_TRUE(says("Read 30 psi at 20 °C: read, 3 d ago") ||
                says("Read 30 psi at 68 °F: read, 3 d ago"))
        << lines.at(2);
    EXPECT_TRUE(says("A leak from "));
    EXPECT_TRUE(says("Read the same dial again")) << "what would narrow it";
  }
}

TEST_F(HoldPanel, DrawsReadingsAndTheExpectedCourseWithBeerInside) {
  show_test({reading_of(0, 20, 4), reading_of(24, 14, 4)},
            physics::BeerInside{units::litres(18),
                                units::Estimate<units::Co2Volumes>(units::volumes_of_co2(2.5))
                                    .with({"CO2 in the beer"}, 0.15),
                                {units::days(4), 2, {"uptake"}},
                                {"equation"}});
  auto* chart = part<ui::HoldChart>("hold_chart");
  EXPECT_TRUE(chart->isVisible());
  EXPECT_TRUE(chart->has_lines());
  EXPECT_TRUE(chart->accessibleDescription().contains("2 readings"));
  EXPECT_TRUE(chart->accessibleDescription().contains("Without a leak it would read"));
  EXPECT_TRUE(part<QLabel>("hold_legend")->text().contains("its beer takes up"));
}

// Readings that can't be right are still what was read.
TEST_F(HoldPanel, DrawsReadingsWithoutAVerdict) {
  show_test({reading_of(0, 30, 20), reading_of(72, 30, 20)}, {}, false);
  auto* chart = part<ui::HoldChart>("hold_chart");
  EXPECT_TRUE(chart->isVisible());
  EXPECT_FALSE(chart->has_lines());
  EXPECT_TRUE(chart->accessibleDescription().contains("2 readings"));
  EXPECT_FALSE(part<QLabel>("hold_legend")->isVisible());
}

TEST_F(HoldPanel, ReadsAgainInItsForm) {
  show_test({reading_of(0, 30, 20), reading_of(6, 29.8, 20)});
  EXPECT_TRUE(part<QLabel>("hold_verdict")->text().startsWith("Can’t tell yet"));
  click(part<QPushButton>("hold_read_again"));
  ASSERT_FALSE(navigator_.tasks.empty());
  EXPECT_EQ(navigator_.tasks.back().kind, "hold_reading");
}

// The bars are a reading's own error: what both share is left out.
TEST(HoldChartErrors, LeaveOutWhatReadingsShare) {
  physics::HoldTest test;
  test.readings = {reading_of(0, 30, 20), reading_of(6, 29.8, 20)};
  EXPECT_NEAR(units::in_psi(ui::own_error(test, 0)), 0.5, 1e-9);
  test.readings.pop_back();
  EXPECT_NEAR(units::in_psi(ui::own_error(test, 0)), std::hypot(2.0, 0.5), 1e-9);
}

}  // namespace
}  // namespace ullage::testing
