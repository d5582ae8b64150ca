// SPDX-License-Identifier: GPL-3.0-or-later
//
// Answers of the what-if computations that a printed figure or a definition says, the
// field a contradiction is told at, and what an answer's reasons name.
#include <gmock/gmock.h>

#include "core/report/laws_slate.h"
#include "core/report/slate/computation.h"
#include "core/units/present.h"
#include "tests/report/asked.h"

namespace ullage::testing::slate_answers {
namespace {

using namespace report::slate;  // NOLINT(google-build-using-namespace): the whole file is about it
using ::testing::Contains;
using ::testing::HasSubstr;
using ::testing::Not;

using asking::the;

const units::Printer& metric = asking::in_metric_units;
const units::Printer& american = asking::in_us_units;

// Brewers' chart (D. Miller 1994, tests/published): 2.57 volumes at 38 °F and 12
// psi, printed to 0.01, the chart itself rough by 0.03; the default equation is
// within 0.06 of every cell (docs/physics.md).
TEST(SlateAnswers, AgreeWithThePrintedChart) {
  const Computation& c = the("co2_at_pressure");
  Inputs in = starting_inputs(c);
  in.set("pressure", units::gauge_psi(12));
  in.set("temperature", units::fahrenheit(38));
  const Outcome out = work_out(c, in, american);
  ASSERT_TRUE(out);
  EXPECT_NEAR(magnitude_of(present(out->values[0].value)), 2.57, 0.06 + 0.005);

  const Computation& back = the("pressure_to_set");
  Inputs in_back = starting_inputs(back);
  in_back.set("co2", units::volumes_of_co2(2.57));
  in_back.set("temperature", units::fahrenheit(38));
  const Outcome set = work_out(back, in_back, american);
  ASSERT_TRUE(set);
  // 0.065 volumes at some 0.096 volumes a psi there: 0.7 psi.
  EXPECT_NEAR(units::in_psi(get<units::GaugePressure>(present(set->values[0].value))), 12.0, 0.7);
}

// Trade figure: a metre of 3/16 in line holds 18 mL (docs/physics.md, from memory).
TEST(SlateAnswers, AgreeWithTheTradesLineVolumes) {
  const Computation& c = the("line_contents");
  Inputs in = starting_inputs(c);
  in.set("length", units::metres(10));
  const Outcome out = work_out(c, in, metric);
  ASSERT_TRUE(out);
  EXPECT_NEAR(units::in_litres(get<units::Volume>(present(out->values[0].value))), 0.18, 0.005);
}

// Exact by definition: 1 psi is 6894.757 Pa, 38 °F is 3 1/3 °C.
TEST(SlateAnswers, ConvertByDefinition) {
  const Computation& c = the("convert");
  Inputs in = starting_inputs(c);
  in.set("pressure", units::gauge_psi(30));
  in.set("temperature", units::fahrenheit(38));
  const Outcome out = work_out(c, in, metric);
  ASSERT_TRUE(out);
  EXPECT_THAT(out->values[0].words, HasSubstr("2.07 bar"));
  EXPECT_THAT(out->values[0].words, HasSubstr("30 psi"));
  EXPECT_THAT(out->values[0].words, HasSubstr("207 kPa"));
  EXPECT_THAT(out->values[1].words, HasSubstr("3.3 °C"));
  EXPECT_THAT(out->values[1].words, HasSubstr("38 °F"));
}

TEST(SlateProblems, ContradictionsAreToldAtAField) {
  const auto problem = [](std::string_view key, std::string_view field, Value v) {
    const Computation& c = the(key);
    Inputs in = starting_inputs(c);
    in.set(field, v);
    const Outcome out = work_out(c, in, american);
    return out ? Problem{} : out.error();
  };
  EXPECT_EQ(problem("burst", "beer", units::litres(40)).field, "beer");
  EXPECT_EQ(problem("burst", "high", units::volumes_of_co2(1.0)).field, "high");
  EXPECT_EQ(problem("alcohol", "final", units::specific_gravity(1.06)).field, "final");
  EXPECT_EQ(problem("cooling", "target", units::celsius(-1)).field, "target");
  EXPECT_EQ(problem("left_by_weight", "gross", units::kilograms(60)).field, "gross");
  EXPECT_EQ(problem("blend_to_order", "pressure", units::gauge_psi(1)).field, "pressure");
  EXPECT_EQ(problem("purge_cycles", "target", Count{5}).field, "target");  // the gas has 30 ppm
  EXPECT_EQ(problem("co2_at_pressure", "pressure", units::gauge_psi(500)).field, "pressure");
}

TEST(SlateGrounds, TellWhatWasTypedAndWhatWasAssumed) {
  const Computation& c = the("pressure_to_set");
  Inputs in = starting_inputs(c);
  in.set("temperature", units::celsius(3), report::InputOrigin::read, "2 d ago");
  const Outcome out = work_out(c, in, metric);
  ASSERT_TRUE(out);
  const report::Grounds g = grounds_of(c, in, out->values[0], metric);
  const std::vector<std::string> lines = report::lines_of(g);
  EXPECT_THAT(lines, Contains("Beer at 3 °C: read, 2 d ago"));
  EXPECT_THAT(lines, Contains("Altitude 0 m: assumed"));
  EXPECT_THAT(g.narrow, Contains(HasSubstr("dial: bias")));
}

// The widest cause of each main answer, with what somebody can do about it.
TEST(SlateGrounds, TellWhatWouldNarrowIt) {
  using Row = std::pair<const char*, const char*>;
  for (const auto& [key, cause] :
       {Row{"burst", "carbonation rate"}, Row{"set_and_wait", "carbonation rate"},
        Row{"cooling", "cooling rate"}, Row{"purge_cycles", "mixing"}, Row{"purge_sweep", "mixing"},
        Row{"purge_push", "air left on top"}, Row{"purge_cheapest", "mixing"},
        Row{"rescue", "level"}, Row{"pour", "bore of the hose"},
        Row{"line_length", "bore of the hose"}, Row{"line_pressure", "bore of the hose"},
        Row{"line_bore", "dial: bias"}, Row{"run_out", "draw by weekday"}}) {
    const Computation& c = the(key);
    const Inputs in = starting_inputs(c);
    const Outcome out = work_out(c, in, metric);
    ASSERT_TRUE(out) << key;
    const report::Grounds g = grounds_of(c, in, out->values.front(), metric);
    ASSERT_FALSE(g.narrow.empty()) << key;
    EXPECT_THAT(g.narrow,
                Contains(::testing::AllOf(HasSubstr(cause), Not(::testing::EndsWith("±.")))))
        << key;
  }
}

}  // namespace
}  // namespace ullage::testing::slate_answers
