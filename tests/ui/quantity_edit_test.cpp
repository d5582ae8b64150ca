// SPDX-License-Identifier: GPL-3.0-or-later
#include <gtest/gtest.h>

#include <QLabel>
#include <QLineEdit>
#include <QSignalSpy>
#include <QTest>
#include <bit>
#include <cstdint>

#include "core/units/present.h"
#include "tests/support/own_preferences.h"
#include "ui/widgets/quantity_edits.h"

namespace ullage::ui {
namespace {

using units::DisplayUnits;

class QuantityEdits : public ::testing::Test {
 protected:
  testing::OwnPreferences own;
  Preferences& preferences = own.preferences;  // British: psi, C, L, imperial pints
};

std::uint64_t bits(double v) { return std::bit_cast<std::uint64_t>(v); }

TEST_F(QuantityEdits, BareNumberMeansTheShownUnit) {
  const GaugePressureEdit edit(preferences);
  QTest::keyClicks(edit.line_edit(), "12");
  ASSERT_TRUE(edit.value());
  EXPECT_DOUBLE_EQ(units::in_psi(present(edit.value())), 12.0);
}

TEST_F(QuantityEdits, TypedUnitWinsAndStaysAsTyped) {
  const GaugePressureEdit edit(preferences);
  QTest::keyClicks(edit.line_edit(), "2.1 bar");
  ASSERT_TRUE(edit.value());
  EXPECT_DOUBLE_EQ(units::in_bar(present(edit.value())), 2.1);
  EXPECT_EQ(edit.text(), "2.1 bar");
}

// "500 g" in a field of kilograms would else read "500 g kg".
TEST_F(QuantityEdits, TheFieldsUnitStepsBackWhenTheTextBringsItsOwn) {
  MassEdit edit(preferences);
  const auto unit_shown = [&] {
    for (const QLabel* label : edit.line_edit()->findChildren<QLabel*>()) {
      if (!label->text().isEmpty()) return label->text();
    }
    return QString();
  };
  EXPECT_EQ(unit_shown(), "kg");
  edit.set_value(units::kilograms(0.5));
  EXPECT_EQ(edit.text(), "500 g");
  EXPECT_EQ(unit_shown(), QString());
  edit.set_text("4.5");
  EXPECT_EQ(unit_shown(), "kg");
}

// Hops are weighed in ounces, a cellar measured in cubic feet, a pour timed in seconds.
TEST_F(QuantityEdits, ABareNumberMeansTheUnitOfItsField) {
  SmallMassEdit hops(preferences);
  RoomAirEdit air(preferences);
  SecondsEdit pour(preferences);
  const auto type = [](QuantityEdit& edit, const char* text) {
    edit.set_text(QString::fromUtf8(text));
  };
  type(hops, "60");
  type(air, "36");
  type(pour, "8.5");
  ASSERT_TRUE(hops.value() && air.value() && pour.value());
  EXPECT_DOUBLE_EQ(units::in_grams(present(hops.value())), 60);
  EXPECT_DOUBLE_EQ(units::in_cubic_metres(present(air.value())), 36);
  EXPECT_DOUBLE_EQ(units::in_seconds(present(pour.value())), 8.5);
  preferences.set_units(DisplayUnits::us());
  type(hops, "2");
  type(air, "1000");
  ASSERT_TRUE(hops.value() && air.value());
  EXPECT_DOUBLE_EQ(units::in_pounds(present(hops.value())), 0.125);
  EXPECT_NEAR(units::in_cubic_metres(present(air.value())), 28.316846592,
              1e-9);  // a foot is 0.3048 m
  type(hops, "60 g");
  type(air, "36 m³");
  type(pour, "1 min");
  ASSERT_TRUE(hops.value() && air.value() && pour.value());
  EXPECT_DOUBLE_EQ(units::in_grams(present(hops.value())), 60);
  EXPECT_DOUBLE_EQ(units::in_cubic_metres(present(air.value())), 36);
  EXPECT_DOUBLE_EQ(units::in_seconds(present(pour.value())), 60);
}

// One unit at a time: the field's own gives way to the one that is typed or printed.
TEST_F(QuantityEdits, TheFieldsUnitGivesWayToTheOneInItsText) {
  preferences.set_units(DisplayUnits::us());
  GlassEdit glass(preferences);
  glass.show();
  const auto unit_on_show = [&] {
    for (const QLabel* label : glass.line_edit()->findChildren<QLabel*>()) {
      if (label->isVisible()) return label->text();
    }
    return QString();
  };
  EXPECT_EQ(unit_on_show(), "fl oz");
  QTest::keyClicks(glass.line_edit(), "12");  // a bare number means that unit
  ASSERT_TRUE(glass.value());
  EXPECT_DOUBLE_EQ(units::in_us_gallons(present(glass.value())) * 128, 12);
  EXPECT_EQ(unit_on_show(), "fl oz");
  QTest::keyClicks(glass.line_edit(), " cl");
  EXPECT_EQ(unit_on_show(), "");
  EXPECT_DOUBLE_EQ(units::in_litres(present(glass.value())), 0.12);
  VolumeEdit volume(preferences);
  volume.set_value(units::litres(0.5));
  EXPECT_EQ(volume.text(), "16.9 fl oz");
  for (const QLabel* label : volume.line_edit()->findChildren<QLabel*>()) {
    EXPECT_TRUE(label->isHidden() || label->text().isEmpty()) << label->text().toStdString();
  }
}

TEST_F(QuantityEdits, EmptyIsNoValueAndNoFaultUnlessRequired) {
  VolumeEdit edit(preferences);
  EXPECT_FALSE(edit.value());
  EXPECT_TRUE(edit.fault().isEmpty());
  edit.set_required(true);
  EXPECT_FALSE(edit.fault().isEmpty());
  QTest::keyClicks(edit.line_edit(), "18");
  EXPECT_TRUE(edit.fault().isEmpty());
}

TEST_F(QuantityEdits, NonsenseStaysAsTypedWithASentenceOnceTheFieldIsLeft) {
  TemperatureEdit edit(preferences);
  edit.show();
  QTest::keyClicks(edit.line_edit(), "30 frogs");
  EXPECT_FALSE(edit.value());
  EXPECT_FALSE(edit.fault().isEmpty());
  const auto on_show = [&] {
    for (const QLabel* label : edit.findChildren<QLabel*>()) {
      if (label->isVisible() && label->text() == edit.fault()) return true;
    }
    return false;
  };
  EXPECT_FALSE(on_show()) << "half a word is no mistake yet";
  QTest::keyClick(edit.line_edit(), Qt::Key_Return);
  EXPECT_TRUE(on_show());
  EXPECT_EQ(edit.text(), "30 frogs");
  EXPECT_EQ(edit.line_edit()->accessibleDescription(), edit.fault());
  edit.line_edit()->selectAll();
  QTest::keyClicks(edit.line_edit(), "4");
  EXPECT_FALSE(on_show());
  EXPECT_TRUE(edit.value());
}

TEST_F(QuantityEdits, UnitsOfAnotherKindAreRefused) {
  TemperatureEdit edit(preferences);
  edit.set_text("30 psi");
  EXPECT_FALSE(edit.value());
  EXPECT_FALSE(edit.fault().isEmpty());
}

TEST_F(QuantityEdits, DecimalCommaIsRead) {
  VolumeEdit edit(preferences);
  edit.set_text("1,5");
  ASSERT_TRUE(edit.value());
  EXPECT_DOUBLE_EQ(units::in_litres(present(edit.value())), 1.5);
}

TEST_F(QuantityEdits, RangeIsToldWithItsLimit) {
  GaugePressureEdit edit(preferences);
  edit.set_range(units::gauge_psi(0), units::gauge_psi(60));
  edit.set_text("61");
  EXPECT_FALSE(edit.value());
  EXPECT_TRUE(edit.fault().contains("60 psi")) << edit.fault().toStdString();
  edit.set_text("60");
  EXPECT_TRUE(edit.value());
}

TEST_F(QuantityEdits, SwitchingUnitsAndBackLeavesTheValueBitIdentical) {
  GaugePressureEdit pressure(preferences);
  pressure.set_value(units::gauge_psi(12.3456789));
  TemperatureEdit temperature(preferences);
  temperature.set_value(units::celsius(3.3333));
  VolumeEdit volume(preferences);
  volume.set_value(units::litres(18.6666));
  GravityEdit gravity(preferences);
  gravity.set_value(units::specific_gravity(1.01234));
  const auto p = bits(units::in_pascals(present(pressure.value())));
  const auto t = bits(units::in_kelvin(present(temperature.value())));
  const auto v = bits(units::in_cubic_metres(present(volume.value())));
  const auto g = bits(present(gravity.value()).count());
  const QString before = pressure.text();
  for (const DisplayUnits& other :
       {DisplayUnits::metric(), DisplayUnits::us(), DisplayUnits::british()}) {
    preferences.set_units(other);
    EXPECT_EQ(bits(units::in_pascals(present(pressure.value()))), p);
    EXPECT_EQ(bits(units::in_kelvin(present(temperature.value()))), t);
    EXPECT_EQ(bits(units::in_cubic_metres(present(volume.value()))), v);
    EXPECT_EQ(bits(present(gravity.value()).count()), g);
  }
  EXPECT_EQ(pressure.text(), before);
}

TEST_F(QuantityEdits, SwitchingUnitsRewritesTextUnitAndLastValue) {
  GaugePressureEdit edit(preferences);
  edit.set_last(units::gauge_psi(30));
  EXPECT_TRUE(edit.line_edit()->placeholderText().contains("30 psi"));
  edit.set_text("14.5");
  const auto typed = bits(units::in_pascals(present(edit.value())));
  preferences.set_units(DisplayUnits::metric());
  EXPECT_EQ(edit.text(), "1.00");
  EXPECT_TRUE(edit.line_edit()->placeholderText().contains("2.07 bar"));
  EXPECT_EQ(bits(units::in_pascals(present(edit.value()))), typed);
  for (const QLabel* label : edit.findChildren<QLabel*>()) {
    EXPECT_FALSE(label->text().contains("psi")) << label->text().toStdString();
  }
}

TEST_F(QuantityEdits, UnreadableTextStaysWhenUnitsAreSwitched) {
  GaugePressureEdit edit(preferences);
  edit.set_text("twelve");
  preferences.set_units(DisplayUnits::metric());
  EXPECT_EQ(edit.text(), "twelve");
  EXPECT_FALSE(edit.value());
}

TEST_F(QuantityEdits, WhatIsShownReadsBackInEveryUnit) {
  for (const DisplayUnits& shown :
       {DisplayUnits::metric(), DisplayUnits::us(), DisplayUnits::british()}) {
    preferences.set_units(shown);
    TemperatureEdit cold(preferences);
    cold.set_value(units::celsius(-18));  // printed with a true minus sign
    const QString text = cold.text();
    TemperatureEdit again(preferences);
    again.set_text(text);
    ASSERT_TRUE(again.value()) << text.toStdString();
    EXPECT_NEAR(units::in_celsius(present(again.value())), -18, 0.06);
    BoreEdit bore(preferences);
    bore.set_value(units::inches(3.0 / 16));
    BoreEdit bore_again(preferences);
    bore_again.set_text(bore.text());
    ASSERT_TRUE(bore_again.value()) << bore.text().toStdString();
    EXPECT_NEAR(units::in_inches(present(bore_again.value())), 3.0 / 16, 0.003);
    MassEdit small(preferences);
    small.set_value(units::grams(120));
    MassEdit small_again(preferences);
    small_again.set_text(small.text());
    ASSERT_TRUE(small_again.value()) << small.text().toStdString();
    EXPECT_NEAR(units::in_grams(present(small_again.value())), 120, 3);
    DurationEdit time(preferences);
    time.set_value(units::hours(2));
    DurationEdit time_again(preferences);
    time_again.set_text(time.text());
    ASSERT_TRUE(time_again.value()) << time.text().toStdString();
    EXPECT_DOUBLE_EQ(units::in_hours(present(time_again.value())), 2);
  }
}

TEST_F(QuantityEdits, PercentagesAndWholeNumbers) {
  AbvEdit abv(preferences);
  abv.set_text("5.4 %");
  ASSERT_TRUE(abv.value());
  EXPECT_DOUBLE_EQ(present(abv.value()).count(), 5.4);
  abv.set_text("101");
  EXPECT_FALSE(abv.value());
  FractionEdit fraction(preferences);
  fraction.set_text("62");
  ASSERT_TRUE(fraction.value());
  EXPECT_DOUBLE_EQ(present(fraction.value()).count(), 0.62);
  WholeNumberEdit cycles(preferences);
  cycles.set_text("5");
  EXPECT_EQ(cycles.value(), 5);
  cycles.set_text("5.5");
  EXPECT_FALSE(cycles.value());
}

TEST_F(QuantityEdits, RefusalFromElsewhereShowsUntilTheNextEdit) {
  VolumeEdit edit(preferences);
  edit.set_text("30");
  edit.set_refusal("More than the keg holds.");
  EXPECT_EQ(edit.fault(), "More than the keg holds.");
  QTest::keyClicks(edit.line_edit(), "0");
  EXPECT_TRUE(edit.fault().isEmpty());
}

TEST_F(QuantityEdits, TellsOfEachChange) {
  MassEdit edit(preferences);
  const QSignalSpy changed(&edit, &QuantityEdit::changed);
  QTest::keyClicks(edit.line_edit(), "23");
  EXPECT_EQ(changed.count(), 2);
}

TEST(PreferencesFile, KeepsEveryChoice) {
  const QTemporaryDir folder;
  QSettings settings(folder.filePath("settings.ini"), QSettings::IniFormat);
  {
    Preferences first(settings);
    EXPECT_FALSE(first.units_chosen());
    first.set_units(DisplayUnits::us());
    first.set_theme(ThemeChoice::dark);
    first.set_words(report::RegionalWords::us);
    first.set_initials("MK");
    first.set_compact_rows(true);
  }
  const Preferences second(settings);
  EXPECT_TRUE(second.units_chosen());
  EXPECT_EQ(second.units(), DisplayUnits::us());
  EXPECT_EQ(second.theme(), ThemeChoice::dark);
  EXPECT_EQ(second.words(), report::RegionalWords::us);
  EXPECT_EQ(second.initials(), "MK");
  EXPECT_TRUE(second.compact_rows());
}

}  // namespace
}  // namespace ullage::ui
