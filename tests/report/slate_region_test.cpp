// SPDX-License-Identifier: GPL-3.0-or-later
//
// The slate in the words and units of its reader: hints, what stands in the fields at
// first, and reasons.
#include <gmock/gmock.h>

#include "tests/report/asked.h"

namespace ullage::testing::slates {
namespace {

using namespace report::slate;  // NOLINT(google-build-using-namespace): the whole file is about it
using namespace asking;         // NOLINT(google-build-using-namespace)
using report::slate::Field;     // the cellar has a Field, too
using ::testing::Contains;
using ::testing::HasSubstr;

TEST(SlateHints, FollowUnitsAndRegion) {
  const auto british = report::RegionalWords::british;
  const auto us = report::RegionalWords::us;
  const auto field = [](std::string_view computation, std::string_view key) {
    for (const Field& f : the(computation).fields) {
      if (f.key == key) return f;
    }
    throw std::out_of_range(std::string(key));
  };
  const Field seconds = field("line_length", "seconds");
  EXPECT_EQ(hint_of(seconds, in_metric_units, british), "About 9 for 0.5 L is a usual pour.");
  EXPECT_EQ(hint_of(seconds, in_us_units, us), "About 9 for 16.9 fl oz is a usual pour.");
  const Field start = field("burst", "start");
  EXPECT_THAT(hint_of(start, in_metric_units, british), HasSubstr("1.68 g/L"));
  EXPECT_THAT(hint_of(start, in_us_units, us), HasSubstr("0.85 vol"));
  const Field fittings = field("pour", "fittings");
  EXPECT_EQ(label_of(fittings, british), "Coupler, shank and tap lose");
  EXPECT_EQ(label_of(fittings, us), "Coupler, shank and faucet lose");
  const Field measure = field("cleaning_solution", "measure");
  EXPECT_EQ(choices_of(measure, british).front(), "grams a litre");
  EXPECT_EQ(choices_of(measure, us).front(), "grams a liter");
}

// A form starts with the glass and the label of its reader.
TEST(SlateStart, IsTheReadersOwn) {
  const auto glass = [](const units::DisplayUnits& units) {
    return starting_inputs(the("pour"), units).get<units::Volume>("glass");
  };
  EXPECT_EQ(glass(units::DisplayUnits::us()), units::us_pints(1));
  EXPECT_EQ(glass(units::DisplayUnits::british()), units::imperial_pints(1));
  EXPECT_EQ(glass(units::DisplayUnits::metric()), units::litres(0.5));
  const Computation& cleaner = the("cleaning_solution");
  const Outcome ounces =
      work_out(cleaner, starting_inputs(cleaner, in_us_units.units), in_us_units);
  ASSERT_TRUE(ounces);
  EXPECT_EQ(ounces->values.front().words, "5.0 ± 0.2 oz");  // 2 oz a gallon, 2.5 gal
  const Outcome grams =
      work_out(cleaner, starting_inputs(cleaner, in_metric_units.units), in_metric_units);
  ASSERT_TRUE(grams);
  EXPECT_EQ(grams->values.front().words, "200 ± 10 g");  // 20 g a litre, 10 L
}

TEST(SlateGrounds, SpeakTheWordsOfTheRegion) {
  const Computation& c = the("pour");
  const Inputs in = starting_inputs(c, in_us_units.units);
  const Outcome out = work_out(c, in, in_us_units, report::RegionalWords::us);
  ASSERT_TRUE(out);
  const auto lines = report::lines_of(
      grounds_of(c, in, out->values.front(), in_us_units, report::RegionalWords::us));
  EXPECT_THAT(lines, Contains(::testing::StartsWith("Faucet above the keg")));
  const auto british = report::lines_of(grounds_of(c, in, out->values.front(), in_us_units));
  EXPECT_THAT(british, Contains(::testing::StartsWith("Tap above the keg")));
}

}  // namespace
}  // namespace ullage::testing::slates
