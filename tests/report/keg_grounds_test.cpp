// SPDX-License-Identifier: GPL-3.0-or-later
//
// What a keg's numbers say they stand on, from a journal told entry by entry: all that
// made them, by its method and value, with its age, and what would narrow them.
#include "core/report/keg_grounds.h"

#include <gmock/gmock.h>

#include <algorithm>

#include "core/report/advice_reasons.h"
#include "core/report/laws_slate.h"
#include "tests/cellar/scenario.h"

namespace ullage::testing {
namespace {

using report::Grounds;
using ::testing::AllOf;
using ::testing::Contains;
using ::testing::HasSubstr;
using ::testing::Not;
using ::testing::StartsWith;

class KegReasons : public ::testing::Test {
 protected:
  KegReasons() {
    s_.read(box_, day(0), 4.0);
    s_.prepare(keg_, day(1));
    s_.fill(keg_, beer_, day(2), 18.6, 4.0);
    s_.gas(keg_, day(2, 1), 30, GasPurpose::burst);
  }
  template <class Ask>
  Grounds ask(Ask grounds, Instant now) {
    cellar_ = s_.cellar(now);
    speaker_ = {
        {units::DisplayUnits::british(), {}}, &s_.calendar, report::RegionalWords::british, now};
    return grounds(report::KegSubject{cellar_, *cellar_.find(keg_), speaker_});
  }
  static std::vector<std::string> from(const Grounds& g) {
    std::vector<std::string> lines;
    lines.reserve(g.inputs.size());
    for (const report::GroundsInput& input : g.inputs) lines.push_back(line_of(input));
    return lines;
  }
  EntryId metered(Instant when, double volumes) {
    CarbonationReading r;
    r.keg = keg_;
    r.co2 = units::to_concentration(units::volumes_of_co2(volumes));
    r.co2_half_width = units::to_concentration(units::volumes_of_co2(0.08));
    return s_.log(when, r);
  }

  Scenario s_;
  PlaceId box_ = s_.place("Cold box", 4.0);
  KegId keg_ = s_.keg("K07", box_);
  BatchId beer_ = s_.batch("Red Rye", 2.3, 2.7);
  CellarStatus cellar_;
  report::Speaker speaker_;
};

TEST_F(KegReasons, Co2TellsItsReadingsVentsRockingAndItsRate) {
  const Grounds usual = ask(report::co2_grounds, day(3));
  EXPECT_THAT(from(usual), Contains(AllOf(StartsWith("Two thirds of what is missing in "),
                                          HasSubstr("as usual for a keg like this: assumed"))));
  s_.log(day(3), Vented{keg_, units::gauge_psi(12)});
  s_.log(day(4), Vented{keg_, units::gauge_psi(12)});
  s_.log(day(4, 1), Rocked{keg_, units::minutes(5)});
  metered(day(4), 2.05);
  const Grounds g = ask(report::co2_grounds, day(6));
  EXPECT_THAT(from(g), Contains(StartsWith("CO₂ read, 2.05")));
  EXPECT_THAT(from(g), Contains("Vented 2 times, last: typed in, 2 d ago"));
  EXPECT_THAT(from(g), Contains(StartsWith("Rocked: typed in, ")));
  EXPECT_THAT(from(g), Contains(HasSubstr("by its readings: worked out")));
  EXPECT_THAT(from(g), Contains(HasSubstr("altitude")));
  EXPECT_FALSE(g.narrow.empty());
}

TEST_F(KegReasons, WhereItSettlesAndWhatItShouldBeAtHaveAnErrorAndAltitude) {
  for (const auto grounds : {&report::settles_grounds, &report::serving_pressure_grounds}) {
    const Grounds g = ask(grounds, day(3));
    EXPECT_THAT(g.answer, HasSubstr("±")) << g.name;
    EXPECT_THAT(from(g), Contains(HasSubstr("altitude"))) << g.name;
    EXPECT_FALSE(g.narrow.empty()) << g.name;
  }
}

TEST_F(KegReasons, TheRateTellsWhatIsUsualAndWhatWasLearned) {
  const Grounds usual = ask(report::uptake_grounds, day(5));
  EXPECT_THAT(usual.notes, Contains(StartsWith("Usual for a keg like this: ")));
  EXPECT_THAT(usual.notes, Not(Contains(StartsWith("By its readings"))));
  EXPECT_THAT(usual.narrow, Contains(HasSubstr("pressure at rest")));
  metered(day(4), 2.05);
  const Grounds learned = ask(report::uptake_grounds, day(5));
  EXPECT_THAT(learned.notes, Contains(StartsWith("By its readings (1): ")));
  EXPECT_NE(learned.answer, usual.answer);
}

TEST_F(KegReasons, TheGasIsAsItWasLoggedOnItsDial) {
  const Grounds g = ask(report::gas_set_grounds, day(3));
  EXPECT_EQ(g.section, report::laws::as_logged.section);
  EXPECT_THAT(from(g), Contains(StartsWith("Gas set to ")));
  EXPECT_THAT(from(g), Contains(AllOf(StartsWith("The dial, not registered, may be off by "),
                                      HasSubstr("assumed"))));
  EXPECT_THAT(g.narrow, Contains(HasSubstr("Register the dial")));
  s_.log(day(3), GasOff{keg_});
  EXPECT_TRUE(ask(report::gas_set_grounds, day(4)).empty());
}

TEST_F(KegReasons, TheLevelTellsEachWordOnItByMethodAndValue) {
  const LineId line = s_.line("Line 1", "1");
  s_.log(day(10), Tapped{keg_, line});
  LevelReading glasses;
  glasses.keg = keg_;
  glasses.method = LevelMethod::glasses;
  glasses.glasses = 10;
  glasses.glass_volume = units::litres(0.5);
  s_.log(day(12), glasses);
  LevelReading heft;
  heft.keg = keg_;
  heft.method = LevelMethod::heft;
  heft.fraction_left = units::fraction(0.6);
  s_.log(day(13), heft);
  s_.log(day(13, 1), Wasted{.keg = keg_, .volume = units::litres(0.5)});
  const Grounds g = ask(report::level_grounds, day(14));
  EXPECT_THAT(from(g), Contains(StartsWith("At first in it: 18.6")));
  EXPECT_THAT(from(g), Contains(AllOf(StartsWith("Glasses counted: "), HasSubstr("L drawn: read"),
                                      HasSubstr("2 d ago"))));
  EXPECT_THAT(from(g), Contains(AllOf(StartsWith("Hefted: "), HasSubstr("L left: read"))));
  EXPECT_THAT(from(g), Contains(HasSubstr("L lost: typed in")));
  EXPECT_THAT(from(g), Contains(StartsWith("Drawn on a day like today: ")));

  const Grounds out = ask(report::run_out_grounds, day(14));
  EXPECT_EQ(out.section, report::laws::run_out.section);
  EXPECT_THAT(from(out), Contains(StartsWith("Beer in it: ")));
  EXPECT_THAT(from(out), Contains(StartsWith("Drawn on a day like today: ")));
  EXPECT_FALSE(out.narrow.empty());
}

TEST_F(KegReasons, ALevelThatDisagreesSaysSo) {
  LevelReading heft;
  heft.keg = keg_;
  heft.method = LevelMethod::heft;
  heft.fraction_left = units::fraction(0.2);
  s_.log(day(3), heft);
  const Grounds g = ask(report::level_grounds, day(4));
  EXPECT_THAT(report::lines_of(g), Contains(HasSubstr("disagree"))) << g.answer;
}

// What is reckoned says by what; what was only logged has no equation.
TEST_F(KegReasons, AdviceTellsItsEquationAndItsSource) {
  s_.log(day(20), Quarantined{keg_, "tastes of butter"});
  cellar_ = s_.cellar(day(20, 1));
  const auto& advice = cellar_.find(keg_)->advice;
  speaker_ = {{units::DisplayUnits::british(), {}}, &s_.calendar, {}, day(20, 1)};
  const auto find = [&](MessageKey key) {
    return std::find_if(advice.begin(), advice.end(),
                        [&](const Advice& a) { return a.headline.key == key; });
  };
  const auto over = find(MessageKey::adv_over_carbonated);
  ASSERT_NE(over, advice.end());
  const auto lines = report::advice_reasons(*over, speaker_);
  EXPECT_THAT(lines, Contains(HasSubstr("gas set to ")));
  EXPECT_THAT(lines, Contains(std::string(report::laws::rescue.words)));
  EXPECT_THAT(lines, Contains(StartsWith("Source: ")));
  const auto held = find(MessageKey::adv_held_back);
  ASSERT_NE(held, advice.end());
  EXPECT_EQ(report::law_of(*held), nullptr);
}

TEST_F(KegReasons, APurgeTellsWhatItsOxygenStandsOn) {
  const KegId empty = s_.keg("K08", box_);
  s_.log(day(0), Emptied{empty});
  s_.prepare(empty, day(1));
  keg_ = empty;
  const Grounds g = ask(
      [](const report::KegSubject& s) {
        const auto& steps = s.keg.preparation;
        const auto purged = std::find_if(steps.begin(), steps.end(),
                                         [](const auto& each) { return each.kind == "purged"; });
        return report::step_grounds(s, *purged);
      },
      day(2));
  EXPECT_THAT(g.answer, HasSubstr("ppm"));
  EXPECT_EQ(g.section, report::laws::purging.section);
  EXPECT_THAT(from(g), Contains("How it was purged: typed in, 23 h ago"));
  EXPECT_THAT(from(g), Contains(HasSubstr("The dial and how warm the keg stood")));
  EXPECT_THAT(g.narrow, Contains(HasSubstr("oxygen")));
}

TEST_F(KegReasons, AHoldTestTellsItsReadings) {
  const KegId empty = s_.keg("K08", box_);
  s_.log(day(0), Emptied{empty});
  s_.prepare(empty, day(1));
  const auto reading = [&](Instant when, double psi, bool first) {
    s_.log(when, HoldReading{empty, units::gauge_psi(psi), {}, units::celsius(15), {}, first});
  };
  reading(day(2), 30, true);
  reading(day(3), 20, false);
  keg_ = empty;
  const Grounds g = ask(report::hold_result_grounds, day(4));
  EXPECT_EQ(g.section, report::laws::hold_test.section);
  EXPECT_EQ(std::count_if(g.inputs.begin(), g.inputs.end(),
                          [](const auto& input) { return input.what.starts_with("Read "); }),
            2);
  EXPECT_FALSE(g.narrow.empty());
}

}  // namespace
}  // namespace ullage::testing
