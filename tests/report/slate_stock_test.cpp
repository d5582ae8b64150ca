// SPDX-License-Identifier: GPL-3.0-or-later
//
// Purges, drift, lines, bottles and run-out on the slate: right where a printed figure
// or plain arithmetic says what is right.
#include <gmock/gmock.h>

#include <cmath>

#include "core/units/present.h"
#include "tests/report/asked.h"

namespace ullage::testing::slates {
namespace {

using namespace report::slate;  // NOLINT(google-build-using-namespace): the whole file is about it
using namespace asking;         // NOLINT(google-build-using-namespace)
using report::slate::Fault;     // the cellar has a Fault and a Field, too
using report::slate::Field;
using ::testing::Contains;
using ::testing::HasSubstr;
using ::testing::Not;

double half_width_by(const AnswerValue* v, std::string_view source) {
  if (v == nullptr) return std::nan("");
  // Of a ±, or of a range with its ends.
  for (const auto* from : {&v->errors, &v->causes}) {
    for (const units::Contribution& e : *from) {
      if (e.source.name == source) return std::abs(e.half_width);
    }
  }
  return 0;
}

TEST(SlatePurge, TheCheapestWayReachesTheTarget) {
  Asked asked("purge_cheapest");
  const Answer a = asked.answer();
  EXPECT_THAT(a.values.front().words, HasSubstr("pushed out"));
  asked.with("liquid", Choice{1});
  for (const AnswerValue& v : asked.answer().values) EXPECT_THAT(v.name, Not(HasSubstr("pushed")));
  // Grams with the method's 15 % and the dial's part; oxygen with mixing, dial and air.
  for (std::size_t i = 1; i < a.values.size(); ++i) {
    EXPECT_THAT(a.values[i].words, HasSubstr(" ± ")) << a.values[i].name;
    EXPECT_THAT(a.values[i].words, HasSubstr(" to ")) << a.values[i].name;
    EXPECT_FALSE(a.values[i].causes.empty()) << a.values[i].name;
  }
  asked.with("target", Count{20});  // the gas itself has 30 ppm
  EXPECT_EQ(asked.problem().field, "target");
}

// A degree's error of the thermometer is in all three. Miller's chart at 12 psi: 2.67
// volumes at 36 °F, 2.47 at 40 °F, each to 0.01: 0.05 volumes a °F; the fit is a straight
// line to the pressure, within a fifth of that slope.
TEST(SlateCarbonation, TakesTheThermometersErrorIn) {
  const auto by_thermometer = [](const Asked& asked, std::string_view name) {
    return half_width_by(value_named(asked.answer(), name), "thermometer: bias");
  };
  const auto chilled = [](std::string_view key) {
    Asked asked(key);
    asked.with("place", units::fahrenheit(38)).with("temperature", units::fahrenheit(38));
    return asked;
  };
  const double two_degrees = 2 * 0.05;  // °F: 1.1 °C
  const auto two = units::fahrenheit_difference(2);
  EXPECT_NEAR(by_thermometer(chilled("set_and_wait").with("thermometer", two), "It settles at"),
              two_degrees, 0.02);
  EXPECT_NEAR(by_thermometer(chilled("drift").with("thermometer", two), "In the end"), two_degrees,
              0.02);
  EXPECT_NEAR(by_thermometer(
                  chilled("burst").with("serving", units::gauge_psi(12)).with("thermometer", two),
                  "At serving pressure it settles at"),
              two_degrees, 0.02);
  // The wait widens with it.
  const auto width = [&](double kelvin) {
    const Answer a = chilled("set_and_wait")
                         .with("thermometer", units::kelvin_difference(kelvin))
                         .with("dial", units::psi(0))
                         .with("low", units::volumes_of_co2(2.2))
                         .answer();
    return magnitude_of(*a.values.front().high) - magnitude_of(*a.values.front().low);
  };
  EXPECT_GT(width(2), 1.02 * width(0));
}

// A slow keg on a dial that reads high never gets into its range: the time has its early
// end and says so, and never stands there alone.
TEST(SlateCarbonation, ATimeThatMayNeverComeSaysSo) {
  const Answer a = Asked("set_and_wait").answer(in_metric_units);
  const AnswerValue& reaches = a.values.front();
  ASSERT_TRUE(reaches.value && reaches.low && !reaches.high);
  EXPECT_LT(present(reaches.low), present(reaches.value));
  EXPECT_THAT(print(reaches, in_metric_units), HasSubstr(" at the earliest, perhaps never)"));
  EXPECT_THAT(Asked("set_and_wait").grounds(reaches).notes, Contains(HasSubstr("never comes")));
}

// 3/16 in and 10 m: 178 mL, and 6 % of it for a bore drawn to 3 %.
TEST(SlateLines, WhatALineHoldsIsAsSureAsItsBore) {
  const Answer a = Asked("line_contents").with("length", units::metres(10)).answer();
  EXPECT_NEAR(half_width_by(&a.values.front(), "bore of the hose") /
                  magnitude_of(present(a.values.front().value)),
              0.06, 0.001);
}

// Five fills to 30 psi by a dial 2 psi off, nine tenths mixed: each leaves
// 1 - 0.9 (1 - 14.7 / 44.7) = 0.396, and 2 psi are 0.9 x 14.7 x 2 / 44.7^2 of it.
TEST(SlatePurge, TakesTheDialIn) {
  const auto range = [](double psi) {
    const Answer a = Asked("purge_cycles").with("dial", units::psi(psi)).answer();
    const AnswerValue& left = a.values.front();
    return std::pair{std::log(magnitude_of(*left.high) / magnitude_of(*left.value)),
                     half_width_by(&left, "dial: bias")};
  };
  EXPECT_NEAR(range(2).second, 5 * 0.9 * 14.7 * 2 / (44.7 * 44.7) / 0.396, 0.005);
  EXPECT_NEAR(range(2).first, std::hypot(range(0).first, range(2).second), 1e-6);
}

// The polynomial is printed for 2 to 3 volumes and 32 to 80 °F (docs/physics.md).
TEST(SlateEquilibrium, TellsASecondEquationAndWhyAnotherCant) {
  const auto said = [](double psi, double fahrenheit) {
    return Asked("co2_at_pressure")
        .with("pressure", units::gauge_psi(psi))
        .with("temperature", units::fahrenheit(fahrenheit))
        .answer()
        .sentences;
  };
  EXPECT_THAT(said(12, 38), Contains(HasSubstr("A second published equation says 2.")));
  // Its own table at 38 °F: 12 psi is 2.57 volumes to a hundredth or two.
  EXPECT_THAT(said(12, 38), Contains(HasSubstr("The printed polynomial says 2.")));
  EXPECT_THAT(said(25, 34), Contains(HasSubstr("can’t tell: it is printed for 2")));
  EXPECT_THAT(said(12, 30), Contains(HasSubstr("can’t tell: it is printed for 32")));
}

// A third beer that shares no pressure with the others takes a second regulator; and
// each ends up as surely as dial and thermometer have it.
TEST(SlateRegulators, TellHowFewSuitAll) {
  Asked asked("one_regulator");
  EXPECT_THAT(asked.answer().sentences, Contains(HasSubstr("All stay in their ranges")));
  asked.with("low3", units::volumes_of_co2(3.4))
      .with("high3", units::volumes_of_co2(3.8))
      .with("temperature3", units::celsius(4));
  const Answer a = asked.answer();
  const AnswerValue* groups = value_named(a, "2 regulators would suit all");
  ASSERT_NE(groups, nullptr);
  EXPECT_THAT(groups->words, HasSubstr("for the first and the second; "));
  EXPECT_THAT(groups->words, HasSubstr("for the third"));
  const AnswerValue* third = value_named(a, "The third then settles at");
  ASSERT_NE(third, nullptr);
  EXPECT_NE(half_width_by(third, "dial: bias"), 0);
  EXPECT_NE(half_width_by(third, "thermometer: bias"), 0);
  asked.with("temperature3", std::nullopt);
  EXPECT_EQ(asked.problem().field, "temperature3");
  asked.with("temperature3", units::celsius(4)).with("high3", units::volumes_of_co2(3));
  EXPECT_EQ(asked.problem().field, "high3");
}

// Miller's chart: 2.57 volumes at 38 °F and 12 psi: there it stays, within what the
// equation is off the chart (0.06) and the chart's own rounding.
TEST(SlateDrift, StaysWhereTheChartHasIt) {
  Asked asked("drift");
  asked.with("pressure", units::gauge_psi(12))
      .with("temperature", units::fahrenheit(38))
      .with("place", units::fahrenheit(38))
      .with("start", units::volumes_of_co2(2.57));
  EXPECT_NEAR(magnitude_of(present(value_named(asked.answer(), "More or less by")->value)), 0,
              0.065);
  asked.with("pressure", units::gauge_psi(25)).with("over", units::days(60));
  EXPECT_GT(magnitude_of(present(value_named(asked.answer(), "More or less by")->value)), 0.5);
}

// The length for 12 psi needs 12 psi; the bore for that length is the bore.
TEST(SlateLines, PressureAndBoreAreTheLengthAskedTheOtherWay) {
  const auto length = number_of<units::Length>(Asked("line_length").answer(), "Hose");
  Asked pressure("line_pressure");
  pressure.with("length", length);
  EXPECT_NEAR(units::in_psi(number_of<units::GaugePressure>(pressure.answer(), "On the keg")), 12,
              0.01);
  Asked bore("line_bore");
  bore.with("length", length).with("pressure", units::gauge_psi(500));
  EXPECT_EQ(bore.problem().field, "pressure");
  bore.with("pressure", units::gauge_psi(12));
  // The hose was 3/16 in: 4.76 mm lies in what it is sold as.
  const std::string sold = value_named(bore.answer(in_metric_units), "Sold as")->words;
  EXPECT_LT(std::stod(sold), 4.7625) << sold;
  EXPECT_GT(std::stod(sold.substr(sold.find(" to ") + 4)), 4.7625) << sold;
}

// Every error of a pour is in it: Blasius has the pour go with the pressure left over the
// lift (0.8 m of beer, 1.15 psi) to the power 1 / 1.75 in the hose and 1 / 2 in fittings.
TEST(SlateLines, APourTakesDialThermometerAndBeerIn) {
  Asked asked("pour");
  asked.with("dial", units::psi(1));
  const Answer a = asked.answer(in_metric_units);
  const AnswerValue& pours = a.values.front();
  const double millilitres = std::stod(pours.words);
  const double by_dial = half_width_by(&pours, "dial: bias") * 1e6 / millilitres;
  EXPECT_GT(by_dial, 0.98 * 0.5 / (12 - 1.15));
  EXPECT_LT(by_dial, 1.04 / 1.75 / (12 - 1.15));
  EXPECT_GT(half_width_by(&pours, "bore of the hose"), 0);
  // Friction goes with the viscosity to the power 1/4: a factor of 1.25 is 3 % of flow.
  EXPECT_NEAR(half_width_by(&pours, "the beer’s viscosity") * 1e6 / millilitres, 0.03, 0.01);
  EXPECT_GT(half_width_by(&pours, "thermometer: bias"), 0);
  // What narrows it is told, and the range widens with the dial.
  EXPECT_THAT(asked.grounds(pours).narrow, Contains(HasSubstr("bore of the hose")));
  const auto slowest = [&](double psi) {
    const std::string words =
        Asked("pour").with("dial", units::psi(psi)).answer(in_metric_units).values.front().words;
    return std::stod(words.substr(words.find('(') + 1));
  };
  EXPECT_LT(slowest(4), slowest(0));
  // Off by all it has, the dial may show pressure where the line stands still.
  Asked still("pour");
  still.with("pressure", units::gauge_psi(2)).with("dial", units::psi(3));
  EXPECT_THAT(still.answer(in_metric_units).values[1].words, HasSubstr("never"));
}

// At one pour the length goes straight with what pressure is left over lift (1.15 psi)
// and fittings (1 psi at 59 mL/s; 56 mL/s here: 0.9).
TEST(SlateLines, LengthPressureAndBoreTakeTheDialIn) {
  const Answer length = Asked("line_length").with("dial", units::psi(1)).answer(in_metric_units);
  const double metres = magnitude_of(present(length.values.front().value));
  EXPECT_NEAR(half_width_by(&length.values.front(), "dial: bias") / metres, 1 / (12 - 1.15 - 0.88),
              0.003);
  const Answer pressure = Asked("line_pressure").with("dial", units::psi(1)).answer();
  EXPECT_NEAR(half_width_by(&pressure.values.front(), "dial: bias"), 6894.757, 1);
  const Answer bore = Asked("line_bore").with("dial", units::psi(1)).answer(in_metric_units);
  EXPECT_GT(half_width_by(&bore.values.front(), "dial: bias"), 0);
  const AnswerValue* pours = value_named(bore, "A hose so sold pours");
  ASSERT_NE(pours, nullptr);
  EXPECT_THAT(pours->words, HasSubstr(" to "));
  EXPECT_GT(half_width_by(pours, "bore of the hose"), 0);
}

// Chart again: 12 psi at 38 °F holds 2.57 volumes, so that much keeps at 38 °F under
// 20 psi, and at 50 °F it needs 18 psi, far over 12 (Miller: 2.50 at 50 °F and 18 psi).
TEST(SlateBreakOut, WarmLinesBreakOut) {
  Asked asked("break_out");
  asked.with("co2", units::volumes_of_co2(2.57))
      .with("temperature", units::fahrenheit(38))
      .with("rise", units::metres(0));
  asked.with("place", units::fahrenheit(38)).with("pressure", units::gauge_psi(20));
  EXPECT_EQ(asked.answer().values.front().words, "It keeps its CO₂");
  asked.with("place", units::fahrenheit(50)).with("pressure", units::gauge_psi(12));
  EXPECT_EQ(asked.answer().values.front().words, "It breaks out");
  asked.with("place", units::fahrenheit(38));
  EXPECT_EQ(asked.answer().values.front().words, "Can’t tell");
  // A metre of beer is 1.01 t/m3 x 9.81 m/s2 = 9.9 kPa = 1.44 psi.
  asked.with("rise", units::metres(1));
  EXPECT_NEAR(
      units::in_psi(number_of<units::GaugePressure>(asked.answer(), "Pressure on it there")),
      12 - 1.44, 0.02);
}

// CO2 saturation at 20 °C is 57.29 bar absolute (verified), 816 psi on a gauge; filled
// to 68 % a bottle is full of liquid at 26.8 °C.
TEST(SlateBottle, AGaugeTellsNothingWhileThereIsLiquid) {
  Asked asked("bottle_gauge");
  const Answer liquid = asked.answer(in_metric_units);
  EXPECT_THAT(liquid.values.front().words, HasSubstr("Can’t tell"));
  EXPECT_NEAR(units::in_psi(number_of<units::GaugePressure>(liquid, "With liquid it would show")),
              (57.29e5 - 101325) / 6894.757, 1);
  EXPECT_THAT(liquid.cautions, Contains(HasSubstr("26.8 °C")));
  asked.with("pressure", units::gauge_psi(400));
  const Answer gas = asked.answer();
  const auto left = units::in_kilograms(number_of<units::Mass>(gas, "Left in the bottle"));
  EXPECT_GT(left, 0.1);
  EXPECT_LT(left, 0.65);  // less than what stands at saturation
  asked.with("pressure", units::gauge_psi(1500));
  EXPECT_EQ(asked.answer().values.front().words, "Can’t tell");
}

// Plain arithmetic: 500 g lighter, 250 g of it used, in 14 days.
TEST(SlateBottle, WhatIsGoneAndNotUsedIsLost) {
  Asked asked("gas_lost");
  const Answer a = asked.answer();
  EXPECT_NEAR(units::in_grams(number_of<units::Mass>(a, "Unexplained, a day")), 250.0 / 14, 0.05);
  EXPECT_EQ(value_named(a, "Gas for another"), nullptr);
  asked.with("tare", units::kilograms(6.7));
  // A kilogram left, 500 g in 14 days: four weeks.
  EXPECT_NEAR(units::in_days(number_of<units::Duration>(asked.answer(), "Gas for another")), 28,
              1.5);
  asked.with("tare", units::kilograms(9));
  EXPECT_EQ(asked.problem().field, "tare");
  Asked tight("gas_lost");
  tight.with("second", units::kilograms(7.95));
  EXPECT_THAT(tight.answer().sentences, Contains(HasSubstr("Not enough to call it a loss")));
}

// 12 L at 1.5 L a day is eight days by the mean; what is not yet known of the weekdays
// moves that, and the day itself scatters.
TEST(SlateRunOut, GoesByWhatWasDrawn) {
  Asked asked("run_out");
  const Answer a = asked.answer();
  EXPECT_THAT(a.values.front().words, HasSubstr("days"));
  EXPECT_NEAR(units::in_litres(number_of<units::Volume>(a, "Drawn a day, so far")), 1.5, 1e-9);
  const double days = std::stod(a.values.front().words);
  EXPECT_GT(days, 5);
  EXPECT_LT(days, 12);
  asked.with("drawn", units::litres(0));
  EXPECT_EQ(asked.problem().field, "drawn");
}

TEST(SlateKegs, FindsTheKegsQuestions) {
  for (const auto& [typed, key] :
       std::vector<std::pair<const char*, const char*>>{{"leak", "hold_test"},
                                                        {"hold test", "hold_test"},
                                                        {"overcarbonated", "rescue"},
                                                        {"too much co2", "rescue"},
                                                        {"prime", "priming_sugar"},
                                                        {"dextrose", "priming_sugar"},
                                                        {"drift", "drift"},
                                                        {"run out", "run_out"},
                                                        {"bottle gauge", "bottle_gauge"},
                                                        {"losing gas", "gas_lost"},
                                                        {"tower foam", "break_out"},
                                                        {"least gas", "purge_cheapest"},
                                                        {"hose bore", "line_bore"}}) {
    const auto found = find_by_words(typed);
    ASSERT_FALSE(found.empty()) << typed;
    EXPECT_EQ(found.front()->key, key) << typed;
  }
}

}  // namespace
}  // namespace ullage::testing::slates
