// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/cellar/cleaning_plan.h"

#include <gmock/gmock.h>

#include <algorithm>
#include <numbers>

#include "core/cellar/cleaning_log.h"
#include "core/units/present.h"
#include "tests/cellar/routine_cellar.h"

namespace ullage::testing {
namespace {

using ::testing::IsEmpty;
using ::testing::SizeIs;

struct PlanCellar : RoutineCellar {
  // A keg of a beer at 400 minor units a litre, on the line.
  KegId on_tap(const std::string& tag, LineId line, std::optional<std::int64_t> price = 400) {
    const KegId keg = this->keg(tag, bar);
    BeerRecord beer;
    beer.beer = made_id<BeerId>();
    beer.name = "Beer of " + tag;
    beer.price_minor_per_litre = price;
    log(day(-59), beer);
    BatchRecord batch;
    batch.batch = made_id<BatchId>();
    batch.beer = beer.beer;
    batch.name = "1";
    log(day(-59), batch);
    prepare(keg, day(-5));
    fill(keg, batch.batch, day(-4));
    log(day(-3), Tapped{keg, line});
    return keg;
  }
  [[nodiscard]] PlanWishes wishes(int from) const {
    PlanWishes w;
    w.from = date(from);
    w.kit = usual_kit();
    return w;
  }
  [[nodiscard]] std::vector<PlannedDay> propose(int now, const PlanWishes& w) const {
    return propose_cleaning_days(due(day(now, 8)), cellar(day(now, 8)), calendar, w);
  }
};

std::vector<StepKind> kinds_of(const std::vector<PlanStep>& steps) {
  std::vector<StepKind> kinds;
  kinds.reserve(steps.size());
  for (const PlanStep& s : steps) kinds.push_back(s.kind);
  return kinds;
}

TEST(CleaningPlan, NothingDueNothingProposed) {
  PlanCellar c;
  c.hose("1");
  EXPECT_THAT(c.propose(0, c.wishes(0)), IsEmpty());
}

TEST(CleaningPlan, ProposesTheDayTheFirstThingFallsDueAndOneAfter) {
  PlanCellar c;
  const LineId line = c.hose("1");
  c.rule(RuleScope::line, WorkKind::caustic, 14);
  c.cleaned(line, day(-4, 10));
  const auto days = c.propose(2, c.wishes(2));
  ASSERT_THAT(days, SizeIs(2));
  EXPECT_EQ(days[0].day, date(10));
  EXPECT_EQ(days[0].why, DayReason::first_falls_due);
  EXPECT_EQ(days[0].cost.late, 0);
  EXPECT_EQ(days[1].day, date(11));
  EXPECT_EQ(days[1].cost.late, 1);
  EXPECT_EQ(days[1].cost.most_days_late, 1);
}

TEST(CleaningPlan, OverdueWorkIsProposedForTheFirstDay) {
  PlanCellar c;
  const LineId line = c.hose("1");
  c.rule(RuleScope::line, WorkKind::caustic, 14);
  c.cleaned(line, day(-20, 10));
  const auto days = c.propose(2, c.wishes(3));
  ASSERT_FALSE(days.empty());
  EXPECT_EQ(days[0].day, date(3));
  EXPECT_EQ(days[0].why, DayReason::overdue_now);
}

// 5 m of 6 mm bore hold pi/4 (0.006 m)^2 5 m = 0.1414 L; at 400 a litre 57.
TEST(CleaningPlan, TellsTheBeerInTheLinesAndItsPrice) {
  PlanCellar c;
  const LineId line = c.hose("1");
  c.on_tap("K1", line);
  c.rule(RuleScope::line, WorkKind::caustic, 14);
  c.cleaned(line, day(-4, 10));
  const auto days = c.propose(2, c.wishes(2));
  const double litres = std::numbers::pi / 4 * 0.006 * 0.006 * 5 * 1000;
  const BeerLost& beer = days[0].cost.beer;
  EXPECT_NEAR(units::in_litres(beer.likely), litres, 1e-9);
  EXPECT_EQ(beer.price_minor, 57);
  // Bore within 3 % is volume within 6; with 5 % of length: the root of 36 + 25 is 7.81 %.
  EXPECT_NEAR(units::in_litres(beer.least), litres * (1 - 0.0781), 1e-4);
  EXPECT_NEAR(units::in_litres(beer.most), litres * (1 + 0.0781), 1e-4);
  EXPECT_EQ(beer.price_least, 52);
  EXPECT_EQ(beer.price_most, 61);
  EXPECT_EQ(days[0].cost.lines_unpriced, 0);
}

TEST(CleaningPlan, SaysWhatItCannotPrice) {
  PlanCellar c;
  const LineId bare = c.line("Line 9", "9", 14);
  const LineId measured = c.hose("1");
  c.on_tap("K1", bare);
  c.on_tap("K2", measured, std::nullopt);
  c.rule(RuleScope::line, WorkKind::caustic, 14);
  const auto days = c.propose(2, c.wishes(2));
  EXPECT_EQ(days[0].cost.lines_unmeasured, 1);
  EXPECT_EQ(days[0].cost.lines_unpriced, 1);
}

TEST(CleaningPlan, TheOtherDayWaitsForAKegThatRunsEmpty) {
  PlanCellar c;
  const LineId line = c.hose("1", 20, 10);  // 1.57 L
  const KegId keg = c.on_tap("K1", line);
  c.rule(RuleScope::line, WorkKind::caustic, 14);
  c.cleaned(line, day(-4, 10));
  PlanWishes w = c.wishes(2);
  w.empties = {{keg, {day(11, 20), day(13, 20), day(16, 20)}}};
  const auto days = c.propose(2, w);
  ASSERT_THAT(days, SizeIs(2));
  EXPECT_EQ(days[0].day, date(10));
  EXPECT_EQ(days[1].day, date(13));
  EXPECT_EQ(days[1].why, DayReason::least_beer_lost);
  EXPECT_EQ(days[1].cost.lines_run_empty, 1);
  EXPECT_EQ(days[1].cost.beer.price_minor, 0);
  EXPECT_EQ(units::in_litres(days[1].cost.beer.least), 0);
  EXPECT_NEAR(units::in_litres(days[1].cost.beer.most), 1.5708 * 1.0781, 1e-3)
      << "it may still have beer on that day";
  EXPECT_EQ(days[1].cost.most_days_late, 3);
}

TEST(CleaningPlan, AKegForecastToRunEmptyIsWashedOnTheDay) {
  PlanCellar c;
  const LineId line = c.hose("1", 20, 10);
  const KegId keg = c.on_tap("K1", line);
  c.rule(RuleScope::keg, WorkKind::keg_clean, std::nullopt);
  c.rule(RuleScope::keg, WorkKind::seals, 30);  // since day -60
  PlanWishes w = c.wishes(2);
  EXPECT_THAT(c.propose(2, w), IsEmpty()) << "nothing tells when it runs empty";
  w.empties = {{keg, {day(5, 20), day(6, 20), day(6, 23)}}};
  const auto days = c.propose(2, w);
  ASSERT_FALSE(days.empty());
  EXPECT_EQ(days[0].day, date(6));
  ASSERT_THAT(days[0].tasks, SizeIs(2));
  EXPECT_THAT(days[0].when_empty, ::testing::ElementsAre(keg));
  using enum StepKind;
  EXPECT_EQ(kinds_of(days[0].steps), (std::vector{vent, caustic, rinse, seals, purge}));
  const auto rows = c.due(day(2, 8));
  const auto before = plan_cleaning_day(date(5), rows, c.cellar(day(2, 8)), c.calendar, w);
  EXPECT_THAT(before.tasks, IsEmpty()) << "a keg with beer is not opened";
}

TEST(CleaningPlan, TheForecastIsTheOneTheKegsShow) {
  PlanCellar c;
  const KegId keg = c.on_tap("K1", c.hose("1"));
  EXPECT_THAT(kegs_running_empty(c.cellar(day(0))), IsEmpty()) << "nobody has read a level";
  for (const int at : {-2, -1, 0}) {
    LevelReading l;
    l.keg = keg;
    l.fraction_left = units::fraction(0.5 - 0.2 * (at + 2));
    c.log(day(at, 12), l);
  }
  const auto status = c.cellar(day(0, 13));
  const auto told = kegs_running_empty(status);
  ASSERT_THAT(told, SizeIs(1));
  EXPECT_EQ(told[0].keg, keg);
  EXPECT_EQ(told[0].when.likely, present(status.find(keg)->level.runs_out).likely);
}

TEST(CleaningPlan, ASuppliersKegGoesBackUnwashed) {
  PlanCellar c;
  const KegId keg = c.keg("K1", c.bar);
  KegRecord theirs = c.cellar(day(-3)).find(keg)->record;
  theirs.owner = Owner::supplier;
  c.log(day(-2), theirs);
  c.rule(RuleScope::keg, WorkKind::keg_clean, std::nullopt);
  c.log(day(-1), Emptied{keg});
  EXPECT_THAT(c.due(day(0, 8)), IsEmpty());
}

TEST(CleaningPlan, WorkPutOffWaitsForItsDay) {
  PlanCellar c;
  const LineId one = c.hose("1");
  const LineId two = c.hose("2");
  c.rule(RuleScope::line, WorkKind::caustic, 14);
  c.cleaned(one, day(-4, 10));
  c.cleaned(two, day(-4, 11));
  WorkMoved m;
  m.line = two;
  m.to_day = date(12);
  c.log(day(1), m);
  const auto rows = c.due(day(2, 8));
  const auto status = c.cellar(day(2, 8));
  const PlanWishes w = c.wishes(2);
  EXPECT_THAT(plan_cleaning_day(date(10), rows, status, c.calendar, w).tasks, SizeIs(1));
  EXPECT_THAT(plan_cleaning_day(date(12), rows, status, c.calendar, w).tasks, SizeIs(2));
}

TEST(CleaningPlan, TheOrderIsTheSafeOne) {
  PlanCellar c;
  c.hose("1");
  c.rule(RuleScope::line, WorkKind::acid, 60);
  c.rule(RuleScope::line, WorkKind::caustic, 14);
  c.rule(RuleScope::line, WorkKind::strip_down, 14);
  c.rule(RuleScope::coupler, WorkKind::coupler_clean, 14);
  c.rule(RuleScope::place, WorkKind::place_clean, 7);
  c.log(day(-40), AlarmChecked{c.bar, true});
  c.rule(RuleScope::alarm, WorkKind::alarm_check, 30);
  const auto days = c.propose(0, c.wishes(0));
  using enum StepKind;
  EXPECT_EQ(kinds_of(days.at(0).steps),
            (std::vector{check_alarm, lock, vent, flush, caustic, rinse, acid, rinse_acid,
                         strip_down, coupler, release, place_clean}));
}

TEST(CleaningPlan, AcidWaitsWhenTheCleanerIsChlorinated) {
  PlanCellar c;
  c.hose("1");
  c.rule(RuleScope::line, WorkKind::caustic, 14);
  c.rule(RuleScope::line, WorkKind::acid, 60);
  PlanWishes w = c.wishes(0);
  w.kit.caustic.kind = LineAgent::chlorinated;
  const auto days = c.propose(0, w);
  ASSERT_THAT(days.at(0).left_out, SizeIs(1));
  EXPECT_EQ(days[0].left_out[0].why, LeftOutWhy::acid_with_chlorine);
  EXPECT_EQ(std::ranges::count(kinds_of(days[0].steps), StepKind::acid), 0);
}

TEST(CleaningPlan, SealsOfAKegWithBeerWaitUntilItIsEmpty) {
  PlanCellar c;
  const LineId line = c.hose("1");
  c.on_tap("K1", line);
  c.rule(RuleScope::keg, WorkKind::seals, 30);
  const auto rows = c.due(day(0, 8));
  ASSERT_THAT(rows, SizeIs(1));
  const PlannedDay planned =
      plan_cleaning_day(date(0), rows, c.cellar(day(0, 8)), c.calendar, c.wishes(0));
  EXPECT_THAT(planned.tasks, IsEmpty());
  ASSERT_THAT(planned.left_out, SizeIs(1));
  EXPECT_EQ(planned.left_out[0].why, LeftOutWhy::keg_has_beer);
}

TEST(CleaningPlan, TheLongestOverdueComesFirstWhenTimeIsShort) {
  PlanCellar c;
  const LineId one = c.hose("1");
  const LineId two = c.hose("2");
  c.rule(RuleScope::line, WorkKind::caustic, 14);
  c.cleaned(one, day(-20, 10));
  c.cleaned(two, day(-30, 10));
  PlanWishes w = c.wishes(0);
  w.time_at_hand = units::minutes(35);  // one line: 12 min of work, 20 min standing
  const auto days = c.propose(0, w);
  ASSERT_THAT(days.at(0).tasks, SizeIs(1));
  EXPECT_EQ(days[0].tasks[0].about, subject(two));
  ASSERT_THAT(days[0].left_out, SizeIs(1));
  EXPECT_EQ(days[0].left_out[0].why, LeftOutWhy::no_time);
  EXPECT_LE(days[0].cost.time, w.time_at_hand);
}

// 2 lines of 0.1414 L and a pot of 2 L at 2 % from a 30 % cleaner of 1.33 kg/L:
// 2.2827 L of solution hold 45.65 g of active, so 152.2 g or 114.4 mL as sold.
TEST(CleaningPlan, AmountsFollowTheLabel) {
  PlanCellar c;
  c.hose("1");
  c.hose("2");
  c.rule(RuleScope::line, WorkKind::caustic, 14);
  const auto days = c.propose(0, c.wishes(0));
  const auto step = std::ranges::find(days.at(0).steps, StepKind::caustic, &PlanStep::kind);
  ASSERT_NE(step, days[0].steps.end());
  EXPECT_THAT(step->things, SizeIs(2));
  EXPECT_NEAR(units::in_litres(*step->solution), 2.28274, 1e-4);
  EXPECT_NEAR(units::in_grams(*step->concentrate_mass), 152.18, 0.01);
  EXPECT_NEAR(units::in_litres(*step->concentrate) * 1000, 114.42, 0.01);
  EXPECT_NEAR(units::in_minutes(*step->contact), 20, 1e-9) << "trade handbook, standing";
}

TEST(CleaningPlan, ALinesPiecesCountBeforeItsLength) {
  PlanCellar c;
  const LineId line = c.hose("1");
  SegmentRecord s;
  s.segment = c.made_id<SegmentId>();
  s.line = line;
  s.length = units::metres(2);
  s.bore = units::metres(0.01);
  c.log(day(-1), s);
  const auto held = volume_of_line(line, c.cellar(day(0)));
  ASSERT_TRUE(held);
  EXPECT_NEAR(units::in_litres(present(held)), std::numbers::pi / 4 * 0.01 * 0.01 * 2 * 1000, 1e-9);
}

TEST(CleaningPlan, ALineThatStandsLockedIsOnTodaysListToBeRinsedAndReleased) {
  PlanCellar c;
  const LineId line = c.hose("1");
  c.rule(RuleScope::place, WorkKind::place_clean, 7);
  c.log(day(0, 7), LineLocked{line, LineAgent::caustic, "", ""});
  const auto days = c.propose(0, c.wishes(0));
  using enum StepKind;
  EXPECT_EQ(kinds_of(days.at(0).steps), (std::vector{rinse, release, place_clean}));
  EXPECT_EQ(kinds_of(days.at(1).steps), (std::vector{place_clean})) << "not on a later day's";
}

TEST(CleaningPlan, ALineThatStandsLockedIsNotLockedAgainWhenItIsCleaned) {
  PlanCellar c;
  const LineId one = c.hose("1");
  const LineId two = c.hose("2");
  c.rule(RuleScope::line, WorkKind::caustic, 14);
  c.log(day(0, 7), LineLocked{one, LineAgent::caustic, "", ""});
  const auto days = c.propose(0, c.wishes(0));
  const PlanStep& lock = days.at(0).steps.at(0);
  ASSERT_EQ(lock.kind, StepKind::lock);
  EXPECT_THAT(lock.things, ::testing::UnorderedElementsAre(subject(one), subject(two)));
  const LineLock* before = lock.locked_before(subject(one));
  ASSERT_NE(before, nullptr);
  EXPECT_EQ(before->since, day(0, 7));
  EXPECT_EQ(lock.locked_before(subject(two)), nullptr);
  EXPECT_NEAR(units::in_minutes(lock.hands_on), 1, 1e-9) << "one line is left to lock";
  const PlanStep& release = days[0].steps.back();
  EXPECT_EQ(release.kind, StepKind::release);
  EXPECT_THAT(release.things, SizeIs(2));
  // Another day's list knows nothing of it: by then it may have been released.
  for (const PlanStep& step : days.at(1).steps) EXPECT_THAT(step.locked, IsEmpty());
}

TEST(CleaningLog, TicksLogWhatWasDoneAndFormsWhatNeedsAnAnswer) {
  PlanCellar c;
  const LineId line = c.hose("1");
  c.on_tap("K1", line);
  c.rule(RuleScope::line, WorkKind::caustic, 14);
  const auto days = c.propose(0, c.wishes(0));
  const CleaningKit kit = usual_kit();
  const auto status = c.cellar(day(0, 8));
  for (const PlanStep& step : days.at(0).steps) {
    const auto entry = entry_for(step, subject(line), status, kit);
    const TickMeans tick = means(step, subject(line));
    EXPECT_EQ(entry.has_value(), tick != TickMeans::leaves_no_trace);
    EXPECT_FALSE(done_since(step, subject(line), c.journal, day(0, 8)));
    if (step.kind == StepKind::release) {
      EXPECT_EQ(tick, TickMeans::opens_form);
    }
    if (tick != TickMeans::logs) continue;
    c.log(day(0, 9), present(entry));
    EXPECT_TRUE(done_since(step, subject(line), c.journal, day(0, 8)));
    EXPECT_FALSE(done_since(step, subject(line), c.journal, day(0, 10)));
  }
  const auto after = c.cellar(day(0, 10));
  ASSERT_TRUE(after.lines.at(0).lock) << "only a check releases it";
  const auto* cleaned = get_if<LineCleaned>(&c.journal.entries().back().payload);
  ASSERT_NE(cleaned, nullptr);
  EXPECT_NEAR(present(cleaned->strength_percent), 2, 1e-9);
  EXPECT_NEAR(units::in_litres(present(cleaned->beer_lost)), 0.14137, 1e-4);
}

TEST(CleaningPlan, AWashedKegIsClosedAndPurgedWithCo2) {
  PlanCellar c;
  const KegId keg = c.keg("K1", c.bar);
  c.rule(RuleScope::keg, WorkKind::keg_clean, std::nullopt);
  c.log(day(-1), Emptied{keg});
  const auto days = c.propose(0, c.wishes(0));
  using enum StepKind;
  EXPECT_EQ(kinds_of(days.at(0).steps), (std::vector{vent, caustic, rinse, purge}));
  // Five cycles to 2 bar over the air's 1.013 of a 19 L keg at 15 C: each brings
  // 2 bar times its volume, 5 * 2e5 Pa * 0.0193 m3 / (188.9 J/kg K * 288 K) = 0.35 kg.
  const auto gas = days[0].steps.back().gas;
  ASSERT_TRUE(gas);
  EXPECT_NEAR(units::in_kilograms(present(gas)), 0.36, 0.04);
}

}  // namespace
}  // namespace ullage::testing
