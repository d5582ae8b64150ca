// SPDX-License-Identifier: GPL-3.0-or-later
//
// The cards in a keg's panel: shown where they belong, worked by keyboard, in the
// person's units.
#include <QComboBox>
#include <QPushButton>

#include "core/units/present.h"
#include "tests/ui/kegs_fixture.h"
#include "ui/charts/answer_chart.h"
#include "ui/pages/keg_panel_card.h"
#include "ui/widgets/figure.h"
#include "ui/widgets/form_section.h"

namespace ullage::testing {
namespace {

class KegCardsPanel : public KegsWindow {
 protected:
  void choose(const char* tag) {
    for (int row = 0; row < table()->model()->rowCount(); ++row) {
      const QModelIndex at = table()->model()->index(row, 0);
      if (at.data().toString() == QLatin1String(tag)) table()->setCurrentIndex(at);
    }
    ASSERT_EQ(chosen_tag(), QLatin1String(tag));
  }
  // K01 with far too much CO2, the gas off.
  void open_over_carbonated() {
    cellar::CellarStatus status = sample_cellar();
    for (cellar::KegStatus& keg : status.kegs) {
      if (keg.record.tag != "K01") continue;
      keg.co2.now = co2_about(3.4, 0.1);
      keg.co2.settles_at = units::volumes_of_co2(3.4);
      keg.co2.verdict = cellar::Co2Verdict::above;
      keg.gas.on = false;
      keg.beer_temperature =
          units::Estimate<units::Temperature>(units::celsius(4)).with({"thermometer"}, 0.5);
    }
    cellar_.show(std::move(status));
    open();
    choose("K01");
  }
  QString words(const char* card) {
    QStringList all;
    for (const QLabel* label : part<ui::KegPanelCard>(card)->findChildren<QLabel*>())
      if (label->isVisible()) all << label->text();
    for (const ui::Figure* figure : part<ui::KegPanelCard>(card)->findChildren<ui::Figure*>())
      if (figure->isVisible()) all << figure->text();
    return all.join(' ');
  }
};

TEST_F(KegCardsPanel, StayAwayWhereNothingIsAsked) {
  open();
  choose("K01");
  EXPECT_FALSE(part<QWidget>("rescue")->isVisible());
  EXPECT_FALSE(part<QWidget>("purge")->isVisible());
}

TEST_F(KegCardsPanel, RescueShowsVentsAndOpensTheVentForm) {
  open_over_carbonated();
  ASSERT_TRUE(part<QWidget>("rescue")->isVisible());
  EXPECT_TRUE(words("rescue").contains("Wait after each")) << words("rescue").toStdString();
  EXPECT_FALSE(part<QWidget>("rescue")->findChildren<ui::Caution*>().isEmpty());
  click(part<QPushButton>("rescue_vented"));
  ASSERT_FALSE(navigator_.tasks.empty());
  EXPECT_EQ(navigator_.tasks.back().kind, "vented");
  ASSERT_TRUE(navigator_.tasks.back().prefill);
  const auto& vent = get<cellar::Vented>(present(navigator_.tasks.back().prefill));
  EXPECT_TRUE(vent.to_pressure.has_value());
}

TEST_F(KegCardsPanel, EveryNumberOpensItsReasonsByKeyboard) {
  open_over_carbonated();
  const auto figures = part<QWidget>("rescue")->findChildren<ui::Figure*>();
  ASSERT_GE(figures.size(), 6);
  for (ui::Figure* figure : figures) {
    EXPECT_FALSE(figure->grounds().empty()) << figure->text().toStdString();
    EXPECT_TRUE(figure->focusPolicy() & Qt::TabFocus);
    EXPECT_FALSE(figure->accessibleName().isEmpty());
  }
  EXPECT_TRUE(part<QPushButton>("rescue_vented")->focusPolicy() & Qt::TabFocus);
}

TEST_F(KegCardsPanel, FollowTheUnits) {
  open_over_carbonated();
  EXPECT_TRUE(words("rescue").contains("psi"));
  preferences_.set_units(units::DisplayUnits::metric());
  EXPECT_TRUE(words("rescue").contains("bar"));
  EXPECT_FALSE(words("rescue").contains("psi"));
}

TEST_F(KegCardsPanel, ShownAnewTheButtonKeepsTheKeyboard) {
  open_over_carbonated();
  auto* vent = part<QPushButton>("rescue_vented");
  vent->setFocus();
  cellar_.show(cellar::CellarStatus(*cellar_.status()));
  EXPECT_EQ(QApplication::focusWidget(), vent);
}

TEST_F(KegCardsPanel, PurgeShowsItsChartAndFollowsTheOxygenWanted) {
  open();
  choose("K05");
  ASSERT_TRUE(part<QWidget>("purge")->isVisible());
  auto* chart = part<ui::AnswerChart>("purge_chart");
  EXPECT_TRUE(chart->isVisible());
  EXPECT_FALSE(chart->accessibleDescription().isEmpty());
  const QString before = part<QLabel>("purge_verdict")->text();
  auto* target = part<QComboBox>("purge_target");
  EXPECT_FALSE(target->accessibleName().isEmpty());
  target->setFocus();
  QTest::keyClick(target, Qt::Key_Home);
  EXPECT_NE(part<QLabel>("purge_verdict")->text(), before);
  EXPECT_TRUE(part<QLabel>("purge_verdict")->text().contains("100 ppm"));
  click(part<QPushButton>("purge_purged"));
  ASSERT_FALSE(navigator_.tasks.empty());
  EXPECT_EQ(navigator_.tasks.back().kind, "purged");
}

TEST_F(KegCardsPanel, OxygenWantedIsRememberedFromOneOpeningToTheNext) {
  open();
  choose("K05");
  EXPECT_EQ(part<QComboBox>("purge_target")->currentData().toInt(), 1000);
  part<QComboBox>("purge_target")->setFocus();
  QTest::keyClick(part<QComboBox>("purge_target"), Qt::Key_Home);
  open();
  choose("K05");
  EXPECT_EQ(part<QComboBox>("purge_target")->currentData().toInt(), 100);
  EXPECT_TRUE(part<QLabel>("purge_verdict")->text().contains("100 ppm"));
  preferences_.remember(QStringLiteral("kegs/purge_target"), 77);  // no choice of ours
  open();
  choose("K05");
  EXPECT_EQ(part<QComboBox>("purge_target")->currentData().toInt(), 1000);
}

TEST_F(KegCardsPanel, DriftStandsUnderTheCurve) {
  cellar::CarbonationCurveData ahead = sample_curve();
  const cellar::CurvePoint last = ahead.points.back();
  for (int d = 5; d <= 31; ++d) {
    ahead.points.push_back(last);
    ahead.points.back().at = days_on(d);
  }
  cellar_.show_curve(numbered<cellar::KegId>(1), ahead);
  open();
  choose("K01");
  ASSERT_TRUE(part<QWidget>("drift")->isVisible());
  EXPECT_TRUE(words("drift").contains("In 14 days")) << words("drift").toStdString();
  EXPECT_TRUE(words("drift").contains("If it stays at 30 psi"));
}

}  // namespace
}  // namespace ullage::testing
