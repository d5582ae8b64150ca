// SPDX-License-Identifier: GPL-3.0-or-later
//
// What the line cleaning log tells an inspector of how long a line went without a
// cleaning, and by which rule that is late.
#include "core/report/line_rules.h"

#include <gmock/gmock.h>

#include "core/report/period_logs.h"
#include "tests/cellar/scenario.h"

namespace ullage::testing {
namespace {

using ::testing::AllOf;
using ::testing::ElementsAre;
using ::testing::EndsWith;
using ::testing::HasSubstr;
using ::testing::Not;
using ::testing::StartsWith;

struct CleaningLog : ::testing::Test {
  Scenario s;
  report::Period november{date(0), date(28)};

  [[nodiscard]] report::TableSheet log(Instant now) const {
    const report::Speaker speaker{{units::DisplayUnits::metric(), {}}, &s.calendar, {}, now};
    return report::line_cleaning_log(s.journal, Replay(s.journal, s.calendar).status(now), november,
                                     speaker, "");
  }
  [[nodiscard]] std::string box(Instant now = day(27, 12)) const {
    return log(now).boxes.front().lines.front();
  }
  [[nodiscard]] std::string next_due(std::size_t row) const {
    return log(day(27, 12)).rows.at(row).cells.at(10);
  }
  [[nodiscard]] std::vector<DueWork> due(Instant now) const {
    return due_work(s.journal, Replay(s.journal, s.calendar).status(now), s.calendar);
  }
  void clean(LineId line, int on, LineAgent agent = LineAgent::caustic) {
    LineCleaned c{.line = line};
    c.agent = agent;
    c.flush_check = FlushCheck::litmus;
    c.flush_passed = true;
    s.log(day(on, 9), c);
  }
  RuleId rule(int since, std::int64_t days, RuleId of = {}) {
    RuleRecord r;
    if (of == RuleId{})
      ids.fill(r.rule);
    else
      r.rule = of;
    r.interval_days = days;
    r.source = "house rule";
    s.log(day(since), r);
    return r.rule;
  }

 private:
  CountingIds ids{9};
};

// Caustic on days -1 and 23, acid between them: 24 days under a rule of 14.
TEST_F(CleaningLog, AcidBetweenTwoCleaningsDoesNotHideThatTheSecondWasLate) {
  const LineId line = s.line("Line 1", "1", 14);
  clean(line, -1);
  clean(line, 12, LineAgent::acid);
  clean(line, 23);
  EXPECT_EQ(box(), "Line 1: 1 cleaning, longest without one 24 days, rule 14 days: LATE");
  EXPECT_EQ(log(day(27)).rows.size(), 2U) << "the acid is told all the same";
}

TEST_F(CleaningLog, ALineNeverCleanedIsLateFromItsRegistrationAsTheCleaningPageHasIt) {
  static_cast<void>(s.line("Line 1", "1", 14));  // registered on day -60
  EXPECT_EQ(due(day(27)).front().state, DueState::overdue);
  EXPECT_EQ(box(),
            "Line 1: 0 cleanings, longest without one 87 days from its registration, "
            "rule 14 days: LATE");
}

TEST_F(CleaningLog, AStricterRuleOfTheCellarGovernsRowAndBoxAsItDoesTheCleaningPage) {
  const LineId line = s.line("Line 1", "1", 14);
  rule(-60, 7);
  clean(line, 5);
  const auto work = due(day(6));
  ASSERT_EQ(work.size(), 1U);
  EXPECT_EQ(work.front().due, date(12));
  EXPECT_EQ(next_due(0), "2026-11-14\nevery 7 days, house rule");
  EXPECT_THAT(box(day(12, 12)), EndsWith("rule 7 days: LATE")) << "65 days before the cleaning";
  clean(line, -1);
  EXPECT_THAT(box(day(12, 12)), EndsWith("longest without one 7 days, rule 7 days"));
  EXPECT_THAT(box(day(13, 12)), EndsWith("longest without one 8 days, rule 7 days: LATE"));
}

// 14 days until day 20, 7 from then on: twelve days between two cleanings were in time.
TEST_F(CleaningLog, ThePastIsJudgedByTheRuleOfThen) {
  const LineId line = s.line("Line 1", "1");
  const RuleId house = rule(-60, 14);
  clean(line, -1);
  clean(line, 11);
  clean(line, 19);
  rule(20, 7, house);
  EXPECT_EQ(next_due(0), "2026-11-27\nevery 14 days, house rule");
  EXPECT_EQ(box(day(25, 12)),
            "Line 1: 2 cleanings, longest without one 12 days, rule 14 days, "
            "from 2026-11-22 7 days");
  EXPECT_THAT(box(day(27, 12)), EndsWith(": LATE")) << "8 days under the rule of 7";
}

TEST_F(CleaningLog, NoRuleThenIsNoneInTheRow) {
  const LineId line = s.line("Line 1", "1");
  clean(line, 3);
  rule(10, 14);
  EXPECT_EQ(next_due(0), "no rule");
  EXPECT_THAT(box(day(12)), EndsWith("rule from 2026-11-12 14 days"));
}

// The stretch that reaches out of the period is counted up to its end, whenever the log
// is printed.
TEST_F(CleaningLog, WhatFollowsThePeriodDoesNotChangeIt) {
  const LineId line = s.line("Line 1", "1", 14);
  clean(line, -1);
  clean(line, 13);
  clean(line, 20);
  clean(line, 60);
  EXPECT_THAT(box(day(90)), EndsWith("longest without one 14 days, rule 14 days"));
}

TEST_F(CleaningLog, CausticTickedOffAsDoneCountsAsTheDueListCountsIt) {
  const LineId line = s.line("Line 1", "1", 14);
  clean(line, -1);
  WorkDone done{.work = WorkKind::caustic};
  done.line = line;
  done.complete = false;
  s.log(day(9, 10), done);
  done.complete = true;
  s.log(day(10, 10), done);
  EXPECT_EQ(due(day(12)).front().due, date(24));
  EXPECT_EQ(box(day(20)), "Line 1: 1 cleaning, longest without one 11 days, rule 14 days");
  const auto sheet = log(day(20));
  ASSERT_EQ(sheet.rows.size(), 2U);
  EXPECT_EQ(sheet.rows[0].cells[10], "") << "partly done: the rule's day stands";
  EXPECT_EQ(sheet.rows[1].cells[10], "2026-11-26\nevery 14 days, own rule");
  EXPECT_TRUE(sheet.rows[1].marked) << "nobody told of a check";
}

}  // namespace
}  // namespace ullage::testing
