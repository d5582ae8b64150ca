// SPDX-License-Identifier: GPL-3.0-or-later
//
// A leak into a room's air and the level by several readings on the slate: right where
// a printed figure or plain arithmetic says what is right.
#include <gmock/gmock.h>

#include <cmath>

#include "core/physics/co2_gas.h"
#include "core/units/present.h"
#include "tests/report/asked.h"

namespace ullage::testing::slates {
namespace {

using namespace report::slate;  // NOLINT(google-build-using-namespace): the whole file is about it
using namespace asking;         // NOLINT(google-build-using-namespace)
using ::testing::AnyOf;
using ::testing::Contains;
using ::testing::HasSubstr;
using ::testing::Not;
using ::testing::StartsWith;

double percent(const Value& v) { return get<units::MoleFraction>(v).count() * 100; }

// The room and stream of a machine manual (tests/published/co2_room_examples.csv): 3.5 m3
// an hour into 330 m3 at one air change settle at 1.06 %, 0.67 % after the first hour. All
// of it taken as known but the weather, which no field has.
TEST(SlateRoomLeak, AgreesWithTheManualsRoom) {
  const auto rho = *physics::co2_gas_density(units::pascals_absolute(101325), units::celsius(20));
  const double kg_a_day = 3.5 * 24 * units::in_kilograms_per_cubic_metre(rho);
  Asked asked("steady_leak");
  asked.with("gas", units::kilograms(kg_a_day))
      .with("long", units::metres(11))
      .with("wide", units::metres(10))
      .with("high", units::metres(3))
      .with("stock", units::fraction(0))
      .with("temperature", units::celsius(20))
      .with("changes", Count{1})
      .with("after", units::hours(1))
      .with("tape", units::metres(0))
      .with("stock_error", units::fraction(0))
      .with("gas_error", units::fraction(0))
      .with("thermometer", units::kelvin_difference(0))
      .with("changes_factor", Count{1});
  const Answer a = asked.answer(in_metric_units);
  EXPECT_NEAR(percent(present(a.values.front().value)), 0.67, 0.005);
  EXPECT_THAT(a.values.front().name, HasSubstr("evenly mixed"));
  EXPECT_NEAR(percent(present(value_named(a, "It settles at")->value)), 1.06, 0.005);
  EXPECT_EQ(value_named(a, "This room’s air")->words, "330 m³");
  // 3.5 / (330 × 0.005)
  EXPECT_THAT(value_named(a, "Air changes an hour that keep it at 0.5 %")->words,
              StartsWith("2.12 ± "));
  EXPECT_EQ(value_named(a, "3 %, the limit for minutes")->words, "never");
  EXPECT_THAT(a.sentences, Contains(HasSubstr("low spots")));
  EXPECT_THAT(a.cautions, Contains(HasSubstr("local code")));
  EXPECT_FALSE(a.chart.empty());
  EXPECT_EQ(value_named(asked.answer(), "This room’s air")->words, "11700 ft³");
}

double half_width_of(const AnswerValue& v) {
  double sum = 0;
  for (const units::Contribution& e : v.errors) sum += e.half_width * e.half_width;
  return std::sqrt(sum);
}

// 12 kg in 5 by 3.5 by 2.4 m less a tenth: by hand the shares of its sides (5 cm), of what
// is stock (5 % of 90 %), of the filling (5 %) and of the weather (2 %).
TEST(SlateRoom, CarriesWhatTapeAndScaleLeaveOpen) {
  const Answer a = Asked("room_air").answer(in_metric_units);
  const double sides = std::hypot(0.05 / 5, 0.05 / 3.5, 0.05 / 2.4);
  const double share = std::hypot(std::hypot(sides, 0.05 / 0.9), std::hypot(0.05, 0.0197));
  const AnswerValue& co2 = a.values.front();
  EXPECT_NEAR(half_width_of(co2) / magnitude_of(present(co2.value)), share, 0.002);
  EXPECT_EQ(print(co2, in_metric_units), "16.8 ± 1.4 %");
  EXPECT_THAT(print(*value_named(a, "Oxygen then"), in_metric_units), HasSubstr(" ± "));
  for (const char* room : {"This room’s air", "A room in which it is 3 %"})
    EXPECT_THAT(value_named(a, room)->words, HasSubstr(" m³ ± ")) << room;
  EXPECT_THAT(a.sentences, Contains(HasSubstr("no margin of safety")));
  EXPECT_THAT(Asked("room_air").grounds(co2).narrow, Contains(HasSubstr("kegs and stock")));
}

// Twice the air, half of what it settles at: the range by the factor alone.
TEST(SlateRoomLeak, AirChangesKnownToAFactorGiveARange) {
  Asked asked("steady_leak");
  asked.with("tape", units::metres(0))
      .with("stock_error", units::fraction(0))
      .with("gas_error", units::fraction(0))
      .with("changes_factor", Count{2});
  const Answer a = asked.answer(in_metric_units);
  const AnswerValue* settles = value_named(a, "It settles at");
  ASSERT_TRUE(settles && settles->low && settles->high);
  EXPECT_NEAR(percent(present(settles->high)) / percent(present(settles->value)), 2, 0.06);
  EXPECT_NEAR(percent(present(settles->low)) / percent(present(settles->value)), 0.5, 0.03);
  EXPECT_THAT(asked.grounds(*settles).narrow, Contains(HasSubstr("air changes")));
  // The band of the curve is that of the answer.
  EXPECT_LT(a.chart.points.back().low, a.chart.points.back().likely);
  EXPECT_GT(a.chart.points.back().high, a.chart.points.back().likely);
  // A limit just above what it settles at is reached if the air changes less.
  asked.with("gas", units::kilograms(8));
  EXPECT_THAT(value_named(asked.answer(), "0.5 %, the limit for a working day")->words,
              HasSubstr(" to never)"));
}

TEST(SlateRoomLeak, ShutTightItGoesOnRising) {
  Asked asked("steady_leak");
  asked.with("changes", Count{0});
  const Answer a = asked.answer();
  EXPECT_THAT(value_named(a, "It settles at")->words, HasSubstr("rising"));
  EXPECT_THAT(value_named(a, "3 %, the limit for minutes")->words, StartsWith("after "));
  const double one = percent(present(a.values.front().value));
  asked.with("after", units::hours(16));
  EXPECT_NEAR(percent(present(asked.answer().values.front().value)), 2 * one, 1e-9);
}

// Half nitrogen: as much oxygen displaced, half the CO2.
TEST(SlateRoomLeak, NitrogenTakesTheOxygensPlaceToo) {
  Asked asked("steady_leak");
  asked.with("gas", units::kilograms(50));
  const Answer pure = asked.answer();
  asked.with("share", units::fraction(0.3));
  const Answer mixed = asked.answer();
  EXPECT_LT(percent(present(mixed.values.front().value)),
            percent(present(pure.values.front().value)));
  EXPECT_LT(percent(present(value_named(mixed, "Oxygen then")->value)),
            percent(present(value_named(pure, "Oxygen then")->value)));  // nitrogen is lighter
}

Asked only_glasses() {
  Asked asked("left_by_readings");
  asked.with("gross", std::nullopt).with("dew", std::nullopt);
  return asked;
}

double litres_left(const Answer& a) {
  return units::in_litres(get<units::Volume>(present(a.values.front().value)));
}
double width_of(const AnswerValue& v) {
  double sum = 0;
  for (const units::Contribution& e : v.errors) sum += e.half_width * e.half_width;
  return std::sqrt(sum) * 1e3;
}

// 12 glasses of half a litre with 5 % lost are 6.3 L.
TEST(SlateLevel, GlassesAloneAreTheStartLessThem) {
  const Answer a = only_glasses().answer();
  EXPECT_NEAR(litres_left(a), 18.5 - 6.3, 0.01);
  EXPECT_EQ(a.values.front().name, "Left, by all of it");
}

// Two independent readings join by the inverse of their variances.
TEST(SlateLevel, ReadingsThatAgreeNarrowIt) {
  Asked asked = only_glasses();
  const Answer before = asked.answer();
  asked.with("float", units::litres(12.6));
  const Answer joined = asked.answer();
  const double w1 = width_of(before.values.front());
  const double w2 = 1;  // litres, as the field has it
  const double weight = (1 / (w1 * w1)) / (1 / (w1 * w1) + 1 / (w2 * w2));
  EXPECT_NEAR(litres_left(joined), weight * 12.2 + (1 - weight) * 12.6, 0.02);
  EXPECT_NEAR(width_of(joined.values.front()), std::sqrt(1 / (1 / (w1 * w1) + 1 / (w2 * w2))),
              0.02);
  EXPECT_THAT(joined.sentences, Contains(HasSubstr("fits together")));
  EXPECT_NE(value_named(joined, "The float alone"), nullptr);
}

TEST(SlateLevel, ContradictionsAreToldAndNotAveraged) {
  Asked asked = only_glasses();
  asked.with("float", units::litres(4));
  const Answer less = asked.answer(in_metric_units);
  EXPECT_NEAR(litres_left(less), 4, 0.1);
  EXPECT_NE(less.values.front().name, "Left, by all of it");
  EXPECT_THAT(less.sentences, Contains(HasSubstr("The float says 4.0 ± 1.0 L")));
  EXPECT_THAT(less.sentences, Contains(HasSubstr("reads less")));
  EXPECT_THAT(less.sentences, Not(Contains(HasSubstr("fits together"))));
  EXPECT_NE(value_named(less, "The float alone, which does not fit"), nullptr);
  // A less sure one that reads more is left out.
  asked.with("float", units::litres(19)).with("float_error", units::litres(3));
  const Answer more = asked.answer(in_metric_units);
  EXPECT_NEAR(litres_left(more), 12.2, 0.05);
  EXPECT_THAT(more.sentences, Contains(HasSubstr("left out")));
}

// A conflict that a later reading would close is told all the same.
TEST(SlateLevel, TheOddOneIsTold) {
  Asked asked = only_glasses();
  asked.with("heft", units::fraction(0.05)).with("gross", units::kilograms(16.6));
  const Answer a = asked.answer(in_metric_units);
  EXPECT_NEAR(litres_left(a), 12.2, 0.6);
  EXPECT_THAT(a.sentences, Contains(HasSubstr("The hand says")));
}

TEST(SlateLevel, WithNothingReadItSaysSo) {
  Asked asked = only_glasses();
  asked.with("glasses", std::nullopt);
  const Answer a = asked.answer();
  EXPECT_THAT(a.sentences, Contains(HasSubstr("ten days")));
  EXPECT_GT(width_of(a.values.front()), 5);
  asked.with("beer", units::litres(40));
  EXPECT_EQ(asked.problem().field, "beer");
  asked.with("beer", units::litres(18)).with("float", units::litres(30));
  EXPECT_EQ(asked.problem().field, "float");
}

TEST(SlateLevel, MoreGlassesThanItHeldIsAnEmptyKeg) {
  Asked asked = only_glasses();
  asked.with("glasses", Count{60});
  const Answer a = asked.answer();
  EXPECT_EQ(litres_left(a), 0);
  EXPECT_THAT(a.sentences, Contains(HasSubstr("should be empty")));
}

}  // namespace
}  // namespace ullage::testing::slates
