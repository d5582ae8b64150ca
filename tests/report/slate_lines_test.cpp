// SPDX-License-Identifier: GPL-3.0-or-later
//
// A timed pour, the trade's restriction figures and lines of several pieces on the
// slate, and cleaner by its strength.
#include <gmock/gmock.h>

#include <cmath>

#include "core/physics/draught_line.h"
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

// A glass poured through a hose 5 % narrower than sold, timed: the 5 % come back.
TEST(SlateTimedPour, FindsTheBoreThatPouredSo) {
  physics::Hose hose;
  hose.length = units::metres(3);
  hose.bore = units::inches(0.1875) * 0.95;
  hose.rise = units::metres(0.8);
  const auto beer = physics::flowing_beer(units::celsius(4));
  const auto line = physics::LineFlow::make({hose, physics::Fitting{units::psi(1)}}, *beer);
  const auto flow = line->flow_at(units::gauge_psi(12));
  ASSERT_TRUE(flow);
  Asked asked("timed_pour");
  asked.with("glass", units::litres(0.5))
      .with("seconds", Count{units::in_seconds(units::Duration(units::litres(0.5) / *flow))});
  const Answer a = asked.answer(in_metric_units);
  EXPECT_NEAR(std::stod(a.values.front().words), 4.7625 * 0.95, 0.06) << a.values.front().words;
  EXPECT_THAT(a.values[1].words, HasSubstr("95 %"));
  for (const char* source : {"dial: bias", "watch", "what was poured", "thermometer: bias"}) {
    EXPECT_THAT(a.values.front().causes, Contains(::testing::Field(&units::Contribution::source,
                                                                   units::ErrorSource{source})));
  }
  // Slower than sold: rough walls would do the same; faster, none would.
  EXPECT_THAT(a.sentences, Contains(HasSubstr("walls as rough as")));
  EXPECT_THAT(Asked("timed_pour").with("seconds", Count{6}).answer().sentences,
              Contains(HasSubstr("No roughness")));
  EXPECT_EQ(Asked("timed_pour").with("seconds", Count{300}).problem().field, "seconds");
}

// Trade handbook: 3/16 in vinyl loses 3.0 psi a foot, other prints 2.2; friction of a
// smooth pipe explains 40 to 70 % of vinyl's figures (docs/physics-lines.md).
TEST(SlateRestriction, SetsTheTableBesideFriction) {
  const Answer a = Asked("restriction").answer();
  EXPECT_THAT(a.values.front().words, HasSubstr("3.00 psi/ft (prints 2.20 psi/ft to 3.00 psi/ft)"));
  const double explained = number_of<units::Fraction>(a, "Friction explains of it").count();
  EXPECT_GT(explained, 0.4);
  EXPECT_LT(explained, 0.7);
  EXPECT_NEAR(std::stod(value_named(a, "Pipe friction alone")->words), 3.0 * explained, 0.01);
  EXPECT_THAT(a.sentences, Contains(HasSubstr("time a pour")));
  const Answer other = Asked("restriction").with("material", Choice{4}).answer(in_metric_units);
  EXPECT_EQ(other.values.front().name, "Pipe friction alone");
  EXPECT_THAT(other.values.front().words, HasSubstr("bar/m"));
}

// One piece pours as the plain line does; two of one bore as one of their length. What
// is lost in all of it is the pressure.
TEST(SlatePieces, AddUpToTheWholeLine) {
  const auto poured = [](const Asked& asked) {
    return asked.answer(in_metric_units).values.front().words;
  };
  const auto bore = units::inches(0.25);
  Asked one("line_pieces");
  one.with("length", units::metres(6)).with("bore", bore);
  one.with("length2", std::nullopt).with("bore2", std::nullopt);
  Asked two("line_pieces");
  two.with("length", units::metres(4)).with("bore", bore);
  two.with("length2", units::metres(2)).with("bore2", bore);
  Asked plain("pour");
  plain.with("length", units::metres(6)).with("bore", bore).with("pressure", units::gauge_psi(25));
  EXPECT_EQ(poured(one), poured(plain));
  EXPECT_EQ(poured(one), poured(two));
  const Answer a = Asked("line_pieces").with("restrictor", units::psi(5)).answer();
  double lost = 0.8 * 1010 * 9.80665;  // the lift; beer at 1.010
  for (const AnswerValue& v : a.values) {
    if (v.name.starts_with("Lost in")) lost += magnitude_of(present(v.value));
  }
  EXPECT_NEAR(lost / 6894.757, 25, 0.05);
  EXPECT_NE(value_named(a, "Lost in the restrictor"), nullptr);
  EXPECT_THAT(a.sentences, Contains(HasSubstr("By the handbook’s figures")));
  Asked half("line_pieces");
  half.with("bore2", std::nullopt);
  EXPECT_EQ(half.problem().field, "bore2");
  EXPECT_EQ(half.problem().fault, Fault::missing);
}

// Mass balance: 10 kg of solution at 2 % hold 200 g, which is 667 g of a 30 % caustic,
// 0.5 L at 1.33 kg/L (cleaning_practice.csv has the 2 %).
TEST(SlateCleaner, ByItsStrength) {
  Asked asked("cleaner_strength");
  asked.with("density", Count{4.0 / 3});
  const Answer a = asked.answer(in_metric_units);
  EXPECT_NEAR(units::in_grams(number_of<units::Mass>(a, "Which weighs")), 666.7, 0.1);
  EXPECT_NEAR(units::in_litres(number_of<units::Volume>(a, "Concentrate")), 0.5, 1e-3);
  EXPECT_NEAR(units::in_litres(number_of<units::Volume>(a, "Into water")), 9.5, 1e-3);
  asked.with("density", std::nullopt);
  EXPECT_NEAR(units::in_grams(number_of<units::Mass>(asked.answer(), "Concentrate")), 666.7, 0.1);
  asked.with("strength", units::fraction(0.2)).with("label", units::fraction(0.1));
  EXPECT_EQ(asked.problem().field, "strength");
}

// Label, marks and density by their shares; what is made has the scale's, too.
TEST(SlateCleaner, CarriesLabelMarksAndScale) {
  Asked asked("cleaner_strength");
  asked.with("density", std::nullopt);
  const Answer a = asked.answer(in_metric_units);
  EXPECT_EQ(print(a.values.front(), in_metric_units), "670 ± 50 g");
  EXPECT_EQ(print(*value_named(a, "So made, it has by weight"), in_metric_units), "2.0 ± 0.2 %");
  EXPECT_THAT(asked.grounds(a.values.front()).narrow, Contains(HasSubstr("label’s strength")));
  // A dose is as sure as the vessel it goes into: 20 g a litre, 10 L within 5 %.
  EXPECT_EQ(Asked("cleaning_solution").answer(in_metric_units).values.front().words, "200 ± 10 g");
}

}  // namespace
}  // namespace ullage::testing::slates
