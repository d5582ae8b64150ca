// SPDX-License-Identifier: GPL-3.0-or-later
//
// The what-if of the Lines page: what it moves, what it keeps saying meanwhile and
// what applying it logs; and what the profile draws.
#include <qcustomplot.h>

#include <QPushButton>
#include <algorithm>

#include "core/units/present.h"
#include "tests/ui/lines_fixture.h"
#include "ui/charts/profile_chart.h"
#include "ui/pages/line_panel.h"
#include "ui/widgets/banner.h"
#include "ui/widgets/fact_list.h"
#include "ui/widgets/figure.h"

namespace ullage::testing {
namespace {

class LinesTried : public LinesWindow {
 protected:
  [[nodiscard]] QString advised() const {
    QStringList said;
    for (const auto* banner : page_->findChildren<ui::Banner*>())
      if (banner->isVisible()) said << banner->headline();
    return said.join('|');
  }
  // The line's keg and another on one regulator.
  RegulatorId share_a_regulator(double low, double high) {
    RegulatorRecord r;
    r.regulator = scene_.counted.make<RegulatorId>();
    r.name = "R1";
    scene_.log(day(-80), r);
    scene_.regulator = r.regulator;
    scene_.log(
        day(21, 1),
        GasSet{scene_.keg, units::gauge_psi(11.5), GasPurpose::serving, r.regulator, {}, {}});
    scene_.beer = scene_.batch("Wheat", low, high);
    const LineId shown = scene_.line;
    scene_.put_on(scene_.Scenario::keg("K02", scene_.box),
                  scene_.register_line("Line 2", scene_.figures), scene_.figures);
    scene_.line = shown;
    return r.regulator;
  }
};

TEST_F(LinesTried, TemperatureAndTargetMoveAndWriteNothing) {
  open();
  slide("try_temperature", 5);
  slide("try_target", 4);
  const WhatIf change = page_->panel()->tried();
  ASSERT_TRUE(change.temperature);
  ASSERT_TRUE(change.target);
  EXPECT_NEAR(present(change.target).count(), 2.7, 1e-6);  // 2.5 and four steps of 0.05
  EXPECT_FALSE(change.pressure || change.length || change.bore);
  EXPECT_TRUE(cellar_.logged().empty());
}

TEST_F(LinesTried, ApplyingAPressureSaysWhichOtherKegsItChangesAndLogsThem) {
  share_a_regulator(2.4, 2.6);
  tell();
  open();
  page_->show_line(scene_.line);
  slide("try_pressure", 2);
  prompts_.confirmations = {true};
  QTest::mouseClick(part<QPushButton>("apply_what_if"), Qt::LeftButton);
  ASSERT_EQ(prompts_.details.size(), 1);
  EXPECT_TRUE(prompts_.details.front().contains("R1 feeds K02"))
      << prompts_.details.front().toStdString();
  ASSERT_EQ(cellar_.logged().size(), 1U);
  ASSERT_EQ(cellar_.logged().front().drafts.size(), 2U);
  for (const Draft& d : cellar_.logged().front().drafts) EXPECT_EQ(kind_of(d.payload), "gas_set");
}

TEST_F(LinesTried, WhatCantBeLoggedIsSaidAndNotSwallowed) {
  CellarStatus nowhere = scene_.cellar(day(22));
  for (KegStatus& keg : nowhere.kegs) keg.place.reset();
  cellar_.show(nowhere);
  open();
  slide("try_temperature", 5);
  QTest::mouseClick(part<QPushButton>("apply_what_if"), Qt::LeftButton);
  EXPECT_TRUE(cellar_.logged().empty());
  ASSERT_EQ(prompts_.asked.size(), 1);
  EXPECT_EQ(prompts_.asked.front(), "Nothing to log.");
  EXPECT_TRUE(prompts_.details.front().contains("K01 stands in no place"));
  // With something else to log it is said beside it.
  slide("try_pressure", 2);
  prompts_.confirmations = {true};
  QTest::mouseClick(part<QPushButton>("apply_what_if"), Qt::LeftButton);
  EXPECT_EQ(cellar_.logged().size(), 1U);
  EXPECT_TRUE(prompts_.details.back().contains("K01 stands in no place"));
}

// Nobody is told by silence that a what-if cures what it doesn't touch.
TEST_F(LinesTried, AdviceThatNoControlMovesStaysWhileTrying) {
  share_a_regulator(3.3, 3.6);
  LineRecord ruled = scene_.record;
  ruled.line = scene_.line;
  ruled.name = "Line 1";
  ruled.tap = "1";
  ruled.clean_every_days = 14;
  ruled.clean_source = "own rule";
  scene_.log(day(-59), ruled);
  tell(day(32));
  open();
  page_->show_line(scene_.line);
  const auto kept = {"want different pressures", "Nothing is logged as poured",
                     "no cleaning is logged"};
  for (const char* words : kept)
    EXPECT_TRUE(advised().contains(words, Qt::CaseInsensitive))
        << words << " in " << advised().toStdString();
  slide("try_length", 1);
  ASSERT_FALSE(page_->panel()->tried().empty());
  for (const char* words : kept)
    EXPECT_TRUE(advised().contains(words, Qt::CaseInsensitive))
        << words << " in " << advised().toStdString();
}

TEST_F(LinesTried, OverGassedKeepsInHowManyDays) {
  open();
  slide("try_pressure", 21);  // 22 psi
  const QString said = advised();
  EXPECT_TRUE(said.contains("Over-gassed by")) << said.toStdString();
  EXPECT_TRUE(said.contains("in 7 days")) << said.toStdString();
}

TEST_F(LinesTried, RightBoreAndRightPressureAreFacts) {
  open();
  const auto* facts = part<ui::FactList>("line_facts");
  const auto* bore = facts->figure("Bore for a balanced pour");
  ASSERT_NE(bore, nullptr);
  EXPECT_TRUE(bore->text().contains("in")) << bore->text().toStdString();
  const auto* pressure = facts->figure("Pressure for a balanced pour");
  ASSERT_NE(pressure, nullptr);
  EXPECT_TRUE(pressure->text().contains("psi")) << pressure->text().toStdString();
  EXPECT_TRUE(facts->figure("Pressure should be")->text().contains("±"));
}

class ProfileDrawn : public LinesTried {
 protected:
  void show_tower(std::optional<double> celsius) {
    bar_ = scene_.place("Bar");
    if (celsius) scene_.read(bar_, day(20), *celsius);
    scene_.segment(1, 5, 3.0 / 16, {});
    scene_.segment(2, 3, 0.25, bar_, 1);
    tell();
    open();
    chart_ = part<ui::ProfileChart>("profile_chart");
    plot_ = chart_->findChild<QCustomPlot*>();
    ASSERT_NE(plot_, nullptr);
    for (int i = 0; i < plot_->plottableCount(); ++i)
      if (auto* curve = qobject_cast<QCPCurve*>(plot_->plottable(i))) curves_ << curve;
  }
  [[nodiscard]] QStringList texts() const {
    QStringList out;
    for (int i = 0; i < plot_->itemCount(); ++i)
      if (auto* text = qobject_cast<QCPItemText*>(plot_->item(i))) out << text->text();
    return out;
  }
  // Level lines: what the beer needs, with where each begins and ends.
  struct Step {
    double from, to, level;
  };
  [[nodiscard]] std::vector<Step> steps() const {
    std::vector<Step> out;
    for (const QCPCurve* c : curves_) {
      if (c->data()->size() != 2) continue;
      const auto a = c->data()->constBegin();
      const auto b = a + 1;
      if (std::abs(a->value - b->value) < 1e-9) out.push_back({a->key, b->key, a->value});
    }
    return out;
  }

  PlaceId bar_;
  ui::ProfileChart* chart_ = nullptr;
  QCustomPlot* plot_ = nullptr;
  QList<QCPCurve*> curves_;
};

TEST_F(ProfileDrawn, AWarmTowerIsDrawnAndSaid) {
  show_tower(21);
  // Two curves from the keg to the faucet: at rest the rise alone is lost, pouring all.
  std::vector<double> ends;
  for (const QCPCurve* c : curves_) {
    const auto first = c->data()->constBegin();
    const auto last = c->data()->constEnd() - 1;
    if (std::abs(first->value - 11.5) < 0.01 && first->key == 0) ends.push_back(last->value);
  }
  ASSERT_EQ(ends.size(), 2U);
  std::sort(ends.begin(), ends.end());
  EXPECT_NEAR(ends[0], 0, 0.01);
  EXPECT_NEAR(ends[1], 11.5 - 0.44, 0.03);  // a foot of beer
  // What the beer needs: a step for each place, far higher in the tower.
  const std::vector<Step> needed = steps();
  ASSERT_EQ(needed.size(), 2U);
  EXPECT_NEAR(needed[0].from, 0, 0.01);
  EXPECT_NEAR(needed[0].to, 5, 0.01);
  EXPECT_NEAR(needed[1].from, 5, 0.01);
  EXPECT_NEAR(needed[1].to, 8, 0.01);
  EXPECT_NEAR(needed[0].level, 11.5, 1);
  EXPECT_NEAR(needed[1].level, 29, 2);  // 2.5 volumes at 21 C by the wall chart
  const QStringList words = texts();
  for (const char* each : {"pouring", "at rest", "beer needs", "Bar"})
    EXPECT_TRUE(words.contains(QLatin1String(each))) << each;
  // Where it is worst: at the top of the tower, said once.
  EXPECT_EQ(chart_->in_words().count("Gas breaks out 8 ft from the keg"), 1)
      << chart_->in_words().toStdString();
  int tinted = 0;
  for (int i = 0; i < plot_->itemCount(); ++i) {
    auto* tint = qobject_cast<QCPItemRect*>(plot_->item(i));
    if (tint && tint->topLeft->typeX() == QCPItemPosition::ptPlotCoords) ++tinted;
  }
  EXPECT_EQ(tinted, 1);
}

// A place that nobody told of gets its name, but no level that nobody knows.
TEST_F(ProfileDrawn, ATowerNobodyToldOfHasNoStepAndSaysSo) {
  show_tower({});
  EXPECT_EQ(steps().size(), 1U);
  EXPECT_TRUE(texts().contains("Bar"));
  EXPECT_TRUE(chart_->in_words().contains("never told: Bar")) << chart_->in_words().toStdString();
  EXPECT_FALSE(chart_->in_words().contains("breaks out"));
}

TEST_F(ProfileDrawn, WhatIsTriedIsDrawnOverWhatIs) {
  show_tower(6);
  const auto before = curves_.size();
  slide("try_length", 4);
  qsizetype now = 0;
  for (int i = 0; i < plot_->plottableCount(); ++i)
    if (qobject_cast<QCPCurve*>(plot_->plottable(i))) ++now;
  EXPECT_EQ(now, before + 1);
  EXPECT_TRUE(texts().contains("as it is"));
}

}  // namespace
}  // namespace ullage::testing
