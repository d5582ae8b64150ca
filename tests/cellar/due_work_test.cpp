// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/cellar/due_work.h"

#include <gmock/gmock.h>

#include "core/units/present.h"
#include "tests/cellar/routine_cellar.h"
#include "tests/published/csv.h"

namespace ullage::testing {
namespace {

using ::testing::ElementsAre;
using ::testing::IsEmpty;
using ::testing::SizeIs;

TEST(DueWork, CountsFromTheLastCleaningThatWasOfThatKind) {
  RoutineCellar c;
  const LineId line = c.hose("1");
  c.rule(RuleScope::line, WorkKind::caustic, 14);
  c.rule(RuleScope::line, WorkKind::acid, 90);
  c.cleaned(line, day(0, 10));
  c.cleaned(line, day(5, 10), LineAgent::water);  // a rinse cleans nothing
  const auto rows = c.due(day(6));
  ASSERT_THAT(rows, SizeIs(2));
  EXPECT_EQ(rows[0].work, WorkKind::caustic);
  EXPECT_EQ(rows[0].due, date(14));
  EXPECT_EQ(rows[0].last_done, day(0, 10));
  EXPECT_EQ(rows[1].work, WorkKind::acid);
  EXPECT_EQ(rows[1].due, date(30)) << "never done: from when the line was registered";
  EXPECT_FALSE(rows[1].last_done);
}

TEST(DueWork, IsOverdueFromTheDayAfterAndSoonForAWeekBefore) {
  RoutineCellar c;
  const LineId line = c.hose("1");
  c.rule(RuleScope::line, WorkKind::caustic, 14);
  c.cleaned(line, day(0, 10));
  const auto state = [&](int on) { return c.due(day(on, 12)).at(0).state; };
  EXPECT_EQ(state(6), DueState::later);
  EXPECT_EQ(state(7), DueState::soon);
  EXPECT_EQ(state(14), DueState::soon) << "on the day itself";
  EXPECT_EQ(state(15), DueState::overdue);
  EXPECT_EQ(c.due(day(17, 12)).at(0).days_over, 3);
}

TEST(DueWork, TheRuleThatFallsDueFirstGovernsAndTheOthersAreToldAfterIt) {
  RoutineCellar c;
  const LineId line = c.hose("1");
  const RuleId month = c.rule(RuleScope::line, WorkKind::caustic, 28, "a regulator, 4 weeks");
  const RuleId week = c.rule(RuleScope::line, WorkKind::caustic, 7, "national practice, 7 days");
  c.cleaned(line, day(0, 10));
  const auto rows = c.due(day(1));
  ASSERT_THAT(rows, SizeIs(1));
  EXPECT_EQ(rows[0].governing.rule, week);
  EXPECT_EQ(rows[0].governing.source, "national practice, 7 days");
  EXPECT_EQ(rows[0].due, date(7));
  ASSERT_THAT(rows[0].also, SizeIs(1));
  EXPECT_EQ(rows[0].also[0].rule, month);
}

TEST(DueWork, ALinesOwnIntervalIsARuleLikeTheOthers) {
  RoutineCellar c;
  const LineId line = c.line("Line 1", "1", 10);
  c.rule(RuleScope::line, WorkKind::caustic, 14, "handbook");
  c.cleaned(line, day(0, 10));
  const auto rows = c.due(day(1));
  ASSERT_THAT(rows, SizeIs(1));
  EXPECT_FALSE(rows[0].governing.rule);
  EXPECT_EQ(rows[0].due, date(10));
  EXPECT_THAT(rows[0].also, SizeIs(1));
}

// Cleaning, Lines and the keg on the line tell the same day.
TEST(DueWork, TheStatusOfALineTellsWhatTheRulesCallFor) {
  RoutineCellar c;
  const LineId line = c.line("Line 1", "1", 28);
  c.rule(RuleScope::line, WorkKind::caustic, 7, "national practice, 7 days");
  c.cleaned(line, day(0, 10));
  const CellarStatus soon = c.cellar(day(3));
  EXPECT_EQ(soon.find(line)->clean_due, date(7));
  EXPECT_EQ(soon.find(line)->clean_due, c.due(day(3)).at(0).due);
  EXPECT_FALSE(soon.find(line)->overdue);
  const CellarStatus late = c.cellar(day(9));
  EXPECT_TRUE(late.find(line)->overdue);
  EXPECT_EQ(late.find(line)->state.key, MessageKey::line_overdue);
  ASSERT_TRUE(says(late.find(line)->advice, MessageKey::adv_line_overdue));
  const Advice& told = late.find(line)->advice.front();
  EXPECT_EQ(*get_if<std::int64_t>(&present(told.detail).args.at(0)), 7);
  EXPECT_NE(get_if<std::string>(&present(told.detail).args.at(1))->find("national practice"),
            std::string::npos);
  EXPECT_EQ(*get_if<std::int64_t>(&told.headline.args.at(1)), 2) << "days overdue";
  EXPECT_EQ(*get_if<std::int64_t>(&told.headline.args.at(2)), 9) << "days since the last";
  EXPECT_EQ(told.inputs.at(0).read, day(0, 10));
  const auto rule = line_cleaning_rule(line, late);
  ASSERT_TRUE(rule);
  EXPECT_EQ(present(rule).interval_days, 7);
}

TEST(DueWork, ALineWithoutAnyRuleIsNeverDue) {
  RoutineCellar c;
  const LineId line = c.hose("1");
  c.cleaned(line, day(0, 10));
  EXPECT_FALSE(c.cellar(day(300)).find(line)->clean_due);
  EXPECT_FALSE(line_cleaning_rule(line, c.cellar(day(300))));
}

// Done by a contractor and ticked off: the line is not overdue any more, and the
// keg on it, alone or with all, says so too.
TEST(DueWork, WorkTickedOffMovesTheLinesDayToo) {
  RoutineCellar c;
  const LineId line = c.line("Line 1", "1", 7);
  const KegId keg = c.keg("K1", c.bar);
  c.log(day(0), c.receive(keg, c.batch("Pale"), 4.0, date(90)));
  c.log(day(2), Tapped{keg, line});
  c.cleaned(line, day(0, 10));
  EXPECT_EQ(present(c.cellar(day(9)).find(keg)->next_step).key, MessageKey::next_line_overdue);
  EXPECT_EQ(present(c.status(keg, day(9)).next_step).key, MessageKey::next_line_overdue);
  WorkDone w;
  w.work = WorkKind::caustic;
  w.line = line;
  w.complete = true;
  c.log(day(9, 1), w);
  const CellarStatus after = c.cellar(day(9, 2));
  EXPECT_EQ(after.find(line)->clean_due, date(16));
  EXPECT_EQ(after.find(line)->last_cleaned, day(9, 1));
  const auto& next = after.find(keg)->next_step;
  EXPECT_TRUE(!next || next->key != MessageKey::next_line_overdue);
}

TEST(DueWork, ARuleThatIsNoLongerInForceCallsForNothing) {
  RoutineCellar c;
  c.hose("1");
  RuleRecord r;
  r.rule = c.rule(RuleScope::line, WorkKind::caustic, 14);
  r.interval_days = 14;
  r.in_force = false;
  c.log(day(-1), r);
  EXPECT_THAT(c.due(day(1)), IsEmpty());
}

TEST(DueWork, AKegIsToBeCleanedOnceEmptiedAndNotBefore) {
  RoutineCellar c;
  const KegId keg = c.keg("K1", c.bar);
  c.rule(RuleScope::keg, WorkKind::keg_clean, std::nullopt);
  const BatchId batch = c.batch("Pale");
  c.prepare(keg, day(0, 8));
  c.fill(keg, batch, day(0, 12));
  EXPECT_THAT(c.due(day(1)), IsEmpty());
  c.log(day(3, 20), Emptied{keg});
  const auto rows = c.due(day(5));
  ASSERT_THAT(rows, SizeIs(1));
  EXPECT_EQ(rows[0].due, date(3));
  EXPECT_EQ(rows[0].state, DueState::overdue);
  c.log(day(5, 1), Cleaned{keg, CleaningMethod::rinse, "", {}, {}, {}});
  EXPECT_THAT(c.due(day(5, 2)), SizeIs(1)) << "a rinse alone does not make it clean";
  c.log(day(5, 3), Cleaned{keg, CleaningMethod::caustic, "", {}, {}, {}});
  EXPECT_THAT(c.due(day(5, 4)), IsEmpty());
}

TEST(DueWork, ABottlesTestIsDueOnItsStampedDateUntilANewOneIsCertified) {
  RoutineCellar c;
  BottleRecord b;
  b.bottle = c.made_id<BottleId>();
  b.name = "B1";
  b.retest_due = date(20);
  c.log(day(-10), b);
  c.rule(RuleScope::bottle, WorkKind::bottle_retest, std::nullopt);
  EXPECT_EQ(c.due(day(1)).at(0).due, date(20));
  WorkDone w;
  w.work = WorkKind::bottle_retest;
  w.bottle = b.bottle;
  w.next_due = date(20 + 3650);
  c.log(day(15), w);
  EXPECT_EQ(c.due(day(16)).at(0).due, date(20 + 3650));
}

TEST(DueWork, AlarmsAreForThePlacesThatHaveOne) {
  RoutineCellar c;
  c.rule(RuleScope::alarm, WorkKind::alarm_check, 30);
  EXPECT_THAT(c.due(day(1)), IsEmpty());
  c.log(day(0), AlarmChecked{c.bar, false});
  EXPECT_EQ(c.due(day(1)).at(0).due, date(-30)) << "an alarm that failed was not done";
  c.log(day(1), AlarmChecked{c.bar, true});
  EXPECT_EQ(c.due(day(2)).at(0).due, date(31));
}

TEST(DueWork, PartlyDoneStaysDueAndIsTold) {
  RoutineCellar c;
  const LineId line = c.hose("1");
  c.rule(RuleScope::line, WorkKind::strip_down, 14);
  WorkDone w;
  w.work = WorkKind::strip_down;
  w.line = line;
  w.complete = false;
  c.log(day(2), w);
  auto rows = c.due(day(3));
  EXPECT_EQ(rows.at(0).partly_done, day(2));
  EXPECT_EQ(rows.at(0).due, date(-46));
  w.complete = true;
  c.log(day(3), w);
  rows = c.due(day(4));
  EXPECT_FALSE(rows.at(0).partly_done);
  EXPECT_EQ(rows.at(0).due, date(17));
}

TEST(DueWork, PuttingItOffDoesNotMakeItLessDue) {
  RoutineCellar c;
  const LineId line = c.hose("1");
  c.rule(RuleScope::line, WorkKind::caustic, 14);
  c.cleaned(line, day(0, 10));
  WorkMoved m;
  m.work = WorkKind::caustic;
  m.line = line;
  m.to_day = date(17);
  m.reason = "keg nearly empty";
  const EntryId moved = c.log(day(10), m);
  auto rows = c.due(day(16));
  EXPECT_EQ(rows.at(0).state, DueState::overdue);
  EXPECT_EQ(rows.at(0).put_off_to, date(17));
  EXPECT_EQ(rows.at(0).put_off_because, "keg nearly empty");
  c.strike(moved);
  EXPECT_FALSE(c.due(day(16)).at(0).put_off_to);
  c.cleaned(line, day(17, 9));
  EXPECT_FALSE(c.due(day(18)).at(0).put_off_to);
}

TEST(DueWork, MovingTellsWhatBecomesOverdueWithTheAcidThatFollows) {
  RoutineCellar c;
  const LineId line = c.hose("1");
  c.rule(RuleScope::line, WorkKind::caustic, 14);
  c.rule(RuleScope::line, WorkKind::acid, 75);
  c.cleaned(line, day(0, 10));
  const auto rows = c.due(day(10));
  ASSERT_THAT(rows, SizeIs(2));
  ASSERT_EQ(rows[0].work, WorkKind::caustic);  // due day 14; the acid on day 15
  EXPECT_THAT(overdue_if_moved(rows, rows[0], date(14)), IsEmpty());
  EXPECT_THAT(overdue_if_moved(rows, rows[0], date(15)), SizeIs(1));
  const auto over = overdue_if_moved(rows, rows[0], date(18));
  ASSERT_THAT(over, SizeIs(2));
  EXPECT_EQ(over[0].days_over, 4);
  EXPECT_EQ(over[1].work, WorkKind::acid);
  EXPECT_EQ(over[1].days_over, 3);
}

TEST(WorkRules, ReadySetsNameWhereTheirFiguresComeFromAndMakeSense) {
  std::int64_t shortest_before = 0;
  for (const ReadySet& set : ready_rule_sets()) {
    EXPECT_FALSE(set.name.empty());
    for (const ReadyRule& r : set.rules) {
      EXPECT_TRUE(fits(r.scope, r.work)) << set.name;
      EXPECT_FALSE(r.source.empty()) << set.name;
      EXPECT_FALSE(r.reason.empty()) << set.name;
    }
    const ReadyRule& first = set.rules.front();
    if (first.work != WorkKind::caustic) continue;
    EXPECT_GT(present(first.interval_days), shortest_before) << "strictest first";
    shortest_before = present(first.interval_days);
  }
  EXPECT_EQ(shortest_before, 28);
}

TEST(WorkRules, TakingASetTwiceAddsNothing) {
  CountingIds ids;
  const ReadySet& set = ready_rule_sets().front();
  const auto first = rules_to_add(set, {}, ids);
  EXPECT_EQ(first.size(), set.rules.size());
  EXPECT_THAT(rules_to_add(set, first, ids), IsEmpty());
}

TEST(ReadyRules, OfTheHandbookAreThePrintedOnes) {
  const auto printed = [](const std::string& item) {
    for (const published::Row& row : published::table("cleaning_practice.csv")) {
      if (row.text("item") == item) return row.number("value_max");
    }
    ADD_FAILURE() << "no row " << item;
    return 0.0;
  };
  const ReadySet& set = ready_rule_sets()[1];
  EXPECT_EQ(set.rules[0].work, WorkKind::caustic);
  EXPECT_EQ(static_cast<double>(present(set.rules[0].interval_days)),
            printed("routine line clean interval"));
  EXPECT_EQ(set.rules[1].work, WorkKind::acid);
  // Three months: a quarter of a year, to the week.
  EXPECT_NEAR(static_cast<double>(present(set.rules[1].interval_days)) / 365.25 * 12,
              printed("acid clean interval"), 0.25);
}

}  // namespace
}  // namespace ullage::testing
