// SPDX-License-Identifier: GPL-3.0-or-later
//
// The reasons behind a number: complete, honest about what is assumed, and
// pointing at a section of the docs that exists.
#include "core/report/grounds.h"

#include <gmock/gmock.h>

#include <fstream>
#include <sstream>

#include "core/report/keg_grounds.h"
#include "core/units/printing.h"

namespace ullage::testing {
namespace {

using report::Grounds;
using ::testing::Contains;
using ::testing::ElementsAre;
using ::testing::HasSubstr;
using ::testing::IsEmpty;

std::string text_of(const std::string& path) {
  const std::ifstream file(path);
  std::stringstream all;
  all << file.rdbuf();
  return all.str();
}

TEST(Laws, PointAtSectionsThatAreWritten) {
  for (const report::Law* law : report::all_laws()) {
    const std::string page =
        text_of(std::string(ULLAGE_SOURCE_DIR "/docs/") + std::string(law->document));
    ASSERT_FALSE(page.empty()) << law->document;
    EXPECT_TRUE(page.find("## " + std::string(law->section) + "\n") != std::string::npos ||
                page.starts_with("# " + std::string(law->section) + "\n"))
        << law->section;
  }
}

TEST(Grounds, SayWhatWouldNarrowTheAnswerMostUsefulFirst) {
  const auto co2 = units::Estimate<units::Co2Volumes>(units::volumes_of_co2(2.4))
                       .with({"dial R1: bias"}, 0.1)
                       .with({"K07: carbonation rate"}, 0.2)
                       .with({"weather"}, 0.02);
  const std::vector<std::string> lines = report::narrowing(co2);
  // Shares of the variance: 0.04 and 0.01 of 0.0504; the weather's 0.0004 is under a tenth.
  ASSERT_EQ(lines.size(), 2U);
  EXPECT_THAT(lines[0], HasSubstr("“K07: carbonation rate” makes 79 % of the ±."));
  EXPECT_THAT(lines[0], HasSubstr("Read the pressure at rest"));
  EXPECT_THAT(lines[1], HasSubstr("“dial R1: bias” makes 20 % of the ±."));
}

TEST(Grounds, OfAnExactNumberHaveNothingToNarrow) {
  EXPECT_THAT(report::narrowing(units::Estimate<units::Mass>::exact(units::grams(3))), IsEmpty());
}

TEST(Grounds, AreReadAloudWhole) {
  Grounds g = report::grounds_by(report::laws::equilibrium, "Pressure", "12 psi");
  g.inputs = {{"Beer at 3 °C", report::InputOrigin::read, "2 d ago"},
              {"Altitude 0 m", report::InputOrigin::assumed, ""}};
  g.narrow = {"Read it again."};
  EXPECT_THAT(report::lines_of(g),
              ElementsAre("Pressure: 12 psi", "From", "Beer at 3 °C: read, 2 d ago",
                          "Altitude 0 m: assumed", "How", HasSubstr("Beer at rest holds CO₂"),
                          HasSubstr("physics.md, “Equilibrium”"), "What would narrow it",
                          "Read it again."));
}

class KegGrounds : public ::testing::Test {
 protected:
  KegGrounds() {
    speaker_.printer.units = units::DisplayUnits::us();
    speaker_.now = cellar::Instant{std::chrono::seconds(1'800'000'000)};
  }
  [[nodiscard]] report::KegSubject subject() const { return {cellar_, keg_, speaker_}; }
  cellar::CellarStatus cellar_;
  cellar::KegStatus keg_;
  report::Speaker speaker_;
};

TEST_F(KegGrounds, TellTheEstimateItsInputsWithAgeAndItsRange) {
  keg_.co2.now = units::Estimate<units::Co2Volumes>(units::volumes_of_co2(1.7))
                     .with({"K01: carbonation rate"}, 0.3);
  keg_.co2.target_low = units::volumes_of_co2(2.4);
  keg_.co2.target_high = units::volumes_of_co2(2.6);
  keg_.gas.on = true;
  keg_.gas.set = units::gauge_psi(30);
  keg_.gas.since = speaker_.now - std::chrono::days(3);
  const Grounds g = report::co2_grounds(subject());
  EXPECT_EQ(g.answer, "1.7 ± 0.3 vol");
  ASSERT_EQ(g.inputs.size(), 2U);
  EXPECT_EQ(g.inputs[1].what, "Air as at sea level");
  EXPECT_EQ(g.inputs[0].what, "Gas set to 30 psi");
  EXPECT_EQ(g.inputs[0].age, "3 d ago");
  EXPECT_EQ(g.inputs[0].origin, report::InputOrigin::typed);
  EXPECT_THAT(g.notes, Contains(HasSubstr("2.4 to 2.6 vol")));
  EXPECT_THAT(g.narrow, ElementsAre(HasSubstr("100 %")));
  EXPECT_EQ(g.certainty, "common practice, no source");
}

TEST_F(KegGrounds, SayWhyNothingCanBeTold) {
  EXPECT_TRUE(report::co2_grounds(subject()).empty());
  keg_.co2.cant_tell = cellar::message(cellar::MessageKey::co2_no_temperature);
  EXPECT_THAT(report::co2_grounds(subject()).answer, HasSubstr("can’t tell: "));
}

}  // namespace
}  // namespace ullage::testing
