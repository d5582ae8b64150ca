// SPDX-License-Identifier: GPL-3.0-or-later
//
// Switching units says every number on the Kegs page anew.
#include <QAbstractButton>
#include <QAccessible>
#include <QLabel>
#include <QRegularExpression>

#include "tests/ui/kegs_fixture.h"
#include "ui/charts/carbonation_chart.h"

namespace ullage::testing {

namespace {

// Everything a person can read or hear on the page.
QStringList texts_of(const QWidget& page) {
  QStringList all;
  for (const auto* label : page.findChildren<QLabel*>()) {
    if (label->isVisible()) all << label->text();
  }
  for (const auto* button : page.findChildren<QAbstractButton*>()) {
    if (button->isVisible()) all << button->text() << button->accessibleName();
  }
  for (const auto* table : page.findChildren<ui::KegTableView*>()) {
    for (int row = 0; row < table->model()->rowCount(); ++row) {
      for (int column = 0; column < table->model()->columnCount(); ++column) {
        const QModelIndex cell = table->model()->index(row, column);
        all << cell.data().toString() << cell.data(Qt::AccessibleTextRole).toString();
      }
    }
  }
  for (const auto* chart : page.findChildren<ui::CarbonationChart*>()) {
    all << chart->accessibleDescription();
  }
  return all;
}

bool any_has(const QStringList& texts, const char* unit) {
  const QRegularExpression pattern(
      QStringLiteral("\\d\\s*%1(?![\\w/])").arg(QString::fromUtf8(unit)));
  for (const QString& text : texts) {
    if (text.contains(pattern)) return true;
  }
  return false;
}

// Only quantities, no unit written out by hand.
cellar::CellarStatus measured_cellar() {
  SampleKeg keg(1, "K01", cellar::KegKind::custom, 19);
  keg.phase(cellar::Phase::carbonating, -1).beer(1, "Red Rye", 18.6, 0.2).gas(30, 11);
  keg.co2(1.7, 0.3, 2.4, 2.6, cellar::Co2Verdict::below).says("Carbonating");
  keg.span(-1, 0, cellar::Phase::carbonating).readiness(cellar::ReadinessKind::cant_tell, "Soon");
  cellar::CellarStatus status;
  status.now = sample_now;
  status.kegs.push_back(keg.status());
  status.kegs[0].beer_temperature = units::Estimate<units::Temperature>(units::celsius(1.1));
  status.kegs[0].record.tare = units::kilograms(4.1);
  return status;
}

}  // namespace

TEST_F(KegsWindow, NoTextStaysInTheOldUnit) {
  cellar_.show(measured_cellar());
  cellar::CarbonationCurveData curve = sample_curve();
  curve.marks.clear();
  cellar_.show_curve(numbered<cellar::KegId>(1), curve);
  open();
  const QStringList british = texts_of(*page_);
  for (const char* unit : {"L", "psi", "vol", "°C", "kg"})
    EXPECT_TRUE(any_has(british, unit)) << unit;

  preferences_.set_units(units::DisplayUnits::us());
  const QStringList us = texts_of(*page_);
  for (const char* unit : {"gal", "°F", "lb"}) EXPECT_TRUE(any_has(us, unit)) << unit;
  for (const char* unit : {"L", "°C", "kg"}) EXPECT_FALSE(any_has(us, unit)) << unit;

  const units::DisplayUnits metric = units::DisplayUnits::metric();
  preferences_.set_units(metric);
  const QStringList in_metric = texts_of(*page_);
  for (const char* unit : {"bar", "g/L", "L"}) EXPECT_TRUE(any_has(in_metric, unit)) << unit;
  for (const char* unit : {"psi", "vol", "gal", "°F", "lb"}) {
    EXPECT_FALSE(any_has(in_metric, unit)) << unit;
  }
}

TEST_F(KegsWindow, TheCurveIsToldInWords) {
  open();
  const QString words = part<QWidget>("carbonation_chart")->accessibleDescription();
  EXPECT_TRUE(words.contains("drop to 11 psi")) << words.toStdString();
  EXPECT_TRUE(words.contains("2.4 to 2.6 vol")) << words.toStdString();
  EXPECT_TRUE(words.contains("08:30: 1.6 ± 0.2 vol")) << words.toStdString();
}

TEST_F(KegsWindow, EachCellSpeaksInWholeWords) {
  open();
  QAccessibleInterface* table_seen = QAccessible::queryAccessibleInterface(table());
  ASSERT_NE(table_seen, nullptr);
  ASSERT_NE(table_seen->tableInterface(), nullptr);
  EXPECT_EQ(table_seen->text(QAccessible::Name), "Kegs");
  const QAbstractItemModel* model = table()->model();
  for (int row = 0; row < model->rowCount(); ++row) {
    for (int column = 0; column < model->columnCount(); ++column) {
      const QString spoken = model->index(row, column).data(Qt::AccessibleTextRole).toString();
      EXPECT_FALSE(spoken.trimmed().isEmpty()) << row << ", " << column;
    }
  }
  EXPECT_EQ(model->index(2, 3).data(Qt::AccessibleTextRole).toString(),
            "CO₂: 2.00 ± 0.10 vol, in its range 1.9 to 2.2 vol");
}

}  // namespace ullage::testing
