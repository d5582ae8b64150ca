// SPDX-License-Identifier: GPL-3.0-or-later
//
// The grounds of what Lines and Gas show, and what paper says of a line that may
// not be served from, over cellars told entry by entry.
#include "core/report/line_grounds.h"

#include <gmock/gmock.h>

#include <algorithm>

#include "core/report/gas_grounds.h"
#include "core/report/status_sheet.h"
#include "core/report/tags.h"
#include "core/units/present.h"
#include "tests/cellar/gas_cellar.h"
#include "tests/cellar/pour_scene.h"

namespace ullage::testing {
namespace {

using report::Grounds;
using report::Speaker;
using ::testing::AllOf;
using ::testing::Contains;
using ::testing::HasSubstr;

Speaker speaker_at(const Scenario& scene, Instant now) {
  return {units::Printer{units::DisplayUnits::us(), {}}, &scene.calendar,
          report::RegionalWords::british, now};
}
std::vector<std::string> inputs_of(const Grounds& g) {
  std::vector<std::string> lines;
  lines.reserve(g.inputs.size());
  for (const auto& input : g.inputs) lines.push_back(report::line_of(input));
  return lines;
}
std::string words_of_sheet(const report::StatusSheet& sheet, std::string_view box) {
  std::string words;
  for (const report::SheetBox& b : sheet.boxes)
    if (b.title == box)
      for (const std::string& line : b.lines) words += line + "\n";
  return words;
}

struct LineReasons : ::testing::Test {
  PourScene scene;
  CellarStatus cellar = scene.cellar(day(22));
  Speaker speaker = speaker_at(scene, day(22));
  report::LineSubject subject = report::line_subject(*cellar.find(scene.line), cellar, speaker);
};

TEST_F(LineReasons, OfTheSetPressureAreTheDialAndItsAge) {
  const Grounds g = report::set_pressure_grounds(subject);
  EXPECT_THAT(g.answer, AllOf(HasSubstr("11.5 psi"), HasSubstr("psi off")));
  EXPECT_THAT(inputs_of(g), Contains(AllOf(HasSubstr("Regulator at"), HasSubstr("ago"))));
  EXPECT_FALSE(g.narrow.empty());
}

TEST_F(LineReasons, OfTheRightPressureAreRangeTemperatureAndAir) {
  const auto lines = inputs_of(report::should_be_grounds(subject));
  EXPECT_THAT(lines, Contains(HasSubstr("CO₂ wanted")));
  EXPECT_THAT(lines, Contains(HasSubstr("Beer at")));
  EXPECT_THAT(lines, Contains(HasSubstr("Air pressure")));
  EXPECT_THAT(lines, Contains(AllOf(HasSubstr("Temperature of Cold box"), HasSubstr("read"))));
}

TEST_F(LineReasons, OfAGlassAskForATimedPourUntilThereIsOne) {
  Grounds g = report::glass_grounds(subject);
  EXPECT_THAT(g.narrow, Contains(HasSubstr("Time a pour")));
  EXPECT_THAT(inputs_of(g), Contains(HasSubstr("assumed")));
  TimedPour pour;
  pour.line = scene.line;
  pour.volume = units::us_pints(1);
  pour.duration = units::seconds(9);
  scene.log(day(22), pour);
  cellar = scene.cellar(day(22, 2));
  g = report::glass_grounds(report::line_subject(*cellar.find(scene.line), cellar, speaker));
  EXPECT_THAT(g.narrow, Not(Contains(HasSubstr("Time a pour"))));
  EXPECT_THAT(inputs_of(g), Contains(HasSubstr("Timed pours that count: 1")));
}

TEST_F(LineReasons, OfWhatWasTriedSaySo) {
  subject.tried.length = units::feet(9);
  EXPECT_THAT(inputs_of(report::glass_grounds(subject)),
              Contains(AllOf(HasSubstr("Hose"), HasSubstr("as tried"))));
}

TEST_F(LineReasons, EveryOneIsComplete) {
  for (const Grounds& g :
       {report::set_pressure_grounds(subject), report::should_be_grounds(subject),
        report::line_settles_grounds(subject), report::glass_grounds(subject),
        report::profile_grounds(subject), report::right_length_grounds(subject),
        report::right_pressure_grounds(subject), report::right_bore_grounds(subject),
        report::contents_grounds(subject), report::lift_grounds(subject),
        report::handbook_grounds(subject), report::supersaturated_grounds(subject)}) {
    EXPECT_FALSE(g.empty());
    EXPECT_FALSE(g.inputs.empty()) << g.name;
    EXPECT_FALSE(g.equation.empty()) << g.name;
    EXPECT_FALSE(g.source.empty()) << g.name;
  }
}

TEST_F(LineReasons, OfAPlaceNobodyToldAreNeverAReading) {
  scene.segment(1, 5, 3.0 / 16, {});
  scene.segment(2, 1, 3.0 / 16, scene.place("Bar"), 1);
  cellar = scene.cellar(day(22));
  subject = report::line_subject(*cellar.find(scene.line), cellar, speaker);
  const auto lines = inputs_of(report::profile_grounds(subject));
  EXPECT_THAT(lines,
              Contains(AllOf(HasSubstr("Bar"), HasSubstr("never told"), HasSubstr("assumed"))));
  EXPECT_THAT(lines, Not(Contains(AllOf(HasSubstr("Bar at"), HasSubstr("read")))));
}

// What makes the width is named as the reasons name it.
TEST_F(LineReasons, WhatCantBeToldApartSaysByWhat) {
  const Message m = message(MessageKey::adv_pour_cant_tell, units::volumes_of_co2(2.2),
                            units::volumes_of_co2(2.6), std::string("Cold box: as set"));
  EXPECT_THAT(report::say(m, speaker),
              AllOf(HasSubstr("2.2"), HasSubstr("2.6"), HasSubstr("“Cold box: as set”"),
                    Not(HasSubstr("dial"))));
}

TEST(LineCleaning, TellsItsRuleItsSourceAndTheOthers) {
  Scenario scene;
  LineRecord own;
  own.line = scene.line("Line 1", "1", 28);
  RuleRecord rule;
  rule.rule = CountingIds{9}.make<RuleId>();
  rule.scope = RuleScope::line;
  rule.work = WorkKind::caustic;
  rule.interval_days = 14;
  rule.reason = "yeast grows back";
  rule.source = "trade handbook";
  scene.log(day(-60), rule);
  const CellarStatus cellar = scene.cellar(day(-50));
  const auto due = due_line_cleaning(scene.journal, cellar, scene.calendar);
  ASSERT_EQ(due.size(), 1U);
  const Speaker speaker = speaker_at(scene, day(-50));
  const Grounds g = report::line_cleaning_grounds(*cellar.find(own.line), &due.front(), speaker);
  EXPECT_THAT(inputs_of(g), Contains(HasSubstr("every 14 days")));
  EXPECT_THAT(g.notes, Contains(HasSubstr("yeast grows back")));
  EXPECT_THAT(g.notes, Contains(HasSubstr("trade handbook")));
  EXPECT_THAT(g.notes, Contains(HasSubstr("28 days")));
  // The sheet tells the same day and rule.
  const auto sheet = report::status_sheet(cellar, speaker, "");
  EXPECT_THAT(words_of_sheet(sheet, "Lines"), HasSubstr("every 14 days"));
  EXPECT_THAT(words_of_sheet(sheet, "Lines"),
              HasSubstr(report::say_date(due.front().due, speaker)));
}

// The advice in words: days overdue, days since, the rule and who says so.
TEST(LineCleaning, AnOverdueOneIsAdvisedInWordsWithNumbers) {
  Scenario scene;
  const LineId line = scene.line("Line 1", "1", 14);
  const auto told = [&](Instant now) {
    const CellarStatus cellar = scene.cellar(now);
    const Advice& a = cellar.find(line)->advice.at(0);
    const Speaker speaker = speaker_at(scene, now);
    return report::say(a.headline, speaker) + " | " + report::say(*a.detail, speaker);
  };
  EXPECT_EQ(told(day(-45)),
            "Line 1: no cleaning is logged, 1 day overdue | Dirt makes beer foam. Rule: every 14 "
            "days, counted from when it was registered; own rule");
  LineCleaned cleaned;
  cleaned.line = line;
  cleaned.flush_check = FlushCheck::litmus;
  cleaned.flush_passed = true;
  scene.log(day(-40), cleaned);
  EXPECT_EQ(told(day(-20)),
            "Line 1: cleaning is 6 days overdue, 20 days since the last | Dirt makes beer foam. "
            "Rule: every 14 days; own rule");
}

// Held back, the keg locks its line: sheet, round and tag say so and why.
TEST_F(LineReasons, ALineLockedByItsKegIsToldOnPaper) {
  Quarantined hold;
  hold.keg = scene.keg;
  hold.reason = "smells of vinegar";
  scene.log(day(22, 1), hold);
  cellar = scene.cellar(day(22, 2));
  const auto sheet = report::status_sheet(cellar, speaker, "");
  EXPECT_THAT(words_of_sheet(sheet, "Out of service"),
              HasSubstr("Line 1: DO NOT SERVE, K01: Held back: smells of vinegar"));
  const auto row = std::find_if(sheet.rows.begin(), sheet.rows.end(),
                                [](const report::SheetRow& r) { return r.keg == "K01"; });
  ASSERT_NE(row, sheet.rows.end());
  EXPECT_EQ(row->state, "HELD BACK, do not use: smells of vinegar");
  const auto tag = report::do_not_serve_tag(*cellar.find(scene.line), speaker);
  EXPECT_EQ(tag.title, "DO NOT SERVE");
  EXPECT_EQ(tag.subtitle, "The keg on it is held back");
  bool why = false;
  for (const auto& fact : tag.facts) why = why || fact.value.ends_with("smells of vinegar");
  EXPECT_TRUE(why);
  const auto tags = report::warning_tags(scene.journal, cellar, speaker);
  EXPECT_TRUE(std::any_of(tags.begin(), tags.end(), [](const report::WarningTag& t) {
    return t.warning == report::Warning::do_not_serve && t.subject.starts_with("Line 1");
  }));
}

// 3.1 volumes are half a volume above 2.6.
TEST_F(LineReasons, OverGassingSaysByHowMuchAndInWhatTime) {
  const Message m =
      message(MessageKey::adv_pour_over_gasses_by, units::gauge_psi(22),
              units::Estimate<units::Co2Volumes>(units::volumes_of_co2(3.1)).with({"rate"}, 0.2),
              units::volumes_of_co2(2.6), units::days(7));
  EXPECT_THAT(report::say(m, speaker), AllOf(HasSubstr("Over-gassed by 0.5"), HasSubstr("7 days"),
                                             HasSubstr("22 psi"), HasSubstr("2.6")));
}

TEST(GasReasons, OfALossAreItsWeighingsAndUse) {
  GasCellar c;
  const KegId keg = c.delivered("K01", c.batch("Ale"), day(0));
  c.set_gas(keg, day(0, 1), 12);
  for (int week = 0; week < 4; ++week) c.weigh(day(7 * week, 2), 2 - 0.2 * week);
  const GasAccount& a = c.account(day(22));
  ASSERT_TRUE(a.loss);
  const Speaker speaker = speaker_at(c, day(22));
  const Grounds loss = report::gas_loss_grounds(a, speaker);
  EXPECT_THAT(inputs_of(loss), Contains(AllOf(HasSubstr("Gas in it"), HasSubstr("read"))));
  EXPECT_THAT(loss.notes, Contains(HasSubstr("99 %")));
  EXPECT_FALSE(loss.narrow.empty());
  const Grounds use = report::gas_use_grounds(a, speaker);
  EXPECT_THAT(inputs_of(use), Contains(HasSubstr("K01 on gas at 12 psi")));
  // A gram for a cent: 28 g a day are 8.40 in 30 days, less what the keg explains.
  const Grounds cost = report::gas_cost_grounds(a, speaker);
  EXPECT_THAT(inputs_of(cost), Contains(HasSubstr("22.70")));
  EXPECT_FALSE(report::gas_now_grounds(a, speaker).inputs.empty());
  EXPECT_FALSE(report::gas_lasts_grounds(a, speaker).inputs.empty());
}

// 20 g a day by a parcel scale: three times what the last difference may be off, by 20.
TEST(GasReasons, OfTheWaitAreTheLossAndTheScale) {
  GasCellar c;
  for (int week = 0; week < 4; ++week) c.weigh(day(7 * week), 2.0 - 0.14 * week);
  const GasAccount& a = c.account(day(22));
  ASSERT_TRUE(a.isolation_wait);
  const Speaker speaker = speaker_at(c, day(22));
  const Grounds g = report::isolation_wait_grounds(a, speaker);
  EXPECT_EQ(g.answer, speaker.printer.print(present(a.isolation_wait)));
  EXPECT_THAT(inputs_of(g), Contains(AllOf(HasSubstr("Unexplained"), HasSubstr("a day"),
                                           HasSubstr("worked out"))));
  EXPECT_THAT(inputs_of(g),
              Contains(AllOf(HasSubstr("last two weighings"), HasSubstr("read, 1 d ago"))));
  EXPECT_EQ(g.section, "One branch at a time");
  EXPECT_EQ(g.certainty, "common practice, no source");
  EXPECT_THAT(g.narrow, Contains(HasSubstr("finer scale")));
  EXPECT_THAT(g.narrow, Contains(HasSubstr("% of the ±")));
  const double off = present(a.loss).between.back().weighed.half_width();
  EXPECT_NEAR(units::in_days(present(a.isolation_wait)),
              std::max(3 * off / present(a.loss).per_day.value().value(), 0.5), 1e-9);
}

// Half a day is the least, and said to be where the scale would do with less.
TEST(GasReasons, OfTheShortestWaitSayThatItIsTheLeast) {
  GasCellar c;
  for (int step = 0; step < 3; ++step) c.weigh(day(3 * step), 2.2 - 1.0 * step);
  const GasAccount& a = c.account(day(7));
  ASSERT_TRUE(a.isolation_wait);
  EXPECT_DOUBLE_EQ(units::in_days(present(a.isolation_wait)), 0.5);
  const Speaker speaker = speaker_at(c, day(7));
  EXPECT_THAT(report::isolation_wait_grounds(a, speaker).notes,
              Contains(HasSubstr("half a day is the least")));
}

TEST(GasReasons, WithoutAWeighingSayWhyNothingCanBeTold) {
  GasCellar c;
  const GasAccount& a = c.account(day(22));
  const Speaker speaker = speaker_at(c, day(22));
  EXPECT_THAT(report::gas_loss_grounds(a, speaker).answer, HasSubstr("can’t tell"));
  EXPECT_TRUE(report::gas_now_grounds(a, speaker).empty());
  EXPECT_TRUE(report::gas_cost_grounds(a, speaker).empty());
  EXPECT_TRUE(report::isolation_wait_grounds(a, speaker).empty());
}

}  // namespace
}  // namespace ullage::testing
