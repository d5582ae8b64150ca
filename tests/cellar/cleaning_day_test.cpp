// SPDX-License-Identifier: GPL-3.0-or-later
//
// What a cleaning day takes on and leaves out: acid and chlorine, moved work; and what
// its ticks write.
#include "core/cellar/cleaning_day.h"

#include <gmock/gmock.h>

#include <algorithm>

#include "core/cellar/cleaning_log.h"
#include "core/units/present.h"
#include "tests/cellar/routine_cellar.h"

namespace ullage::testing {
namespace {

using ::testing::IsEmpty;
using ::testing::SizeIs;

struct DayCellar : RoutineCellar {
  PlanWishes wishes = [] {
    PlanWishes w;
    w.from = date(0);
    w.kit = usual_kit();
    return w;
  }();

  void chlorinated_kit() { wishes.kit.caustic.kind = LineAgent::chlorinated; }
  void locked(LineId line, LineAgent agent, Instant when) {
    log(when, LineLocked{line, agent, "", ""});
  }
  void move(LineId line, WorkKind work, Date to) {
    WorkMoved m;
    m.work = work;
    m.line = line;
    m.to_day = to;
    log(day(-1), m);
  }
  // As seen in the morning of day 0.
  [[nodiscard]] PlannedDay plan(int on) const {
    const Instant now = day(0, 12);
    return plan_cleaning_day(date(on), due(now), cellar(now), calendar, wishes);
  }
  [[nodiscard]] std::vector<PlannedDay> propose() const {
    const Instant now = day(0, 12);
    return propose_cleaning_days(due(now), cellar(now), calendar, wishes);
  }
};

bool has_step(const PlannedDay& day, StepKind kind) {
  return std::ranges::count(day.steps, kind, &PlanStep::kind) > 0;
}
std::vector<LeftOutWhy> reasons(const PlannedDay& day) {
  std::vector<LeftOutWhy> whys;
  whys.reserve(day.left_out.size());
  for (const LeftOut& l : day.left_out) whys.push_back(l.why);
  return whys;
}

TEST(CleaningDay, NoAcidWhileALineStandsWithChlorine) {
  DayCellar c;
  const LineId one = c.hose("1");
  const LineId two = c.hose("2");
  c.rule(RuleScope::line, WorkKind::acid, 60);  // due on day 0
  c.locked(one, LineAgent::chlorinated, day(-1, 20));
  EXPECT_FALSE(has_step(c.plan(0), StepKind::acid));
  EXPECT_THAT(reasons(c.plan(0)), ::testing::ElementsAre(LeftOutWhy::acid_with_chlorine,
                                                         LeftOutWhy::acid_with_chlorine));
  // Another day the other line may have its acid; this one not before it is released.
  const PlannedDay tomorrow = c.plan(1);
  ASSERT_THAT(tomorrow.tasks, SizeIs(1));
  EXPECT_EQ(tomorrow.tasks[0].about, subject(two));
  ASSERT_THAT(tomorrow.left_out, SizeIs(1));
  EXPECT_EQ(tomorrow.left_out[0].task.about, subject(one));
}

TEST(CleaningDay, NoChlorineWhileALineStandsWithAcid) {
  DayCellar c;
  const LineId one = c.hose("1");
  c.hose("2");
  c.rule(RuleScope::line, WorkKind::caustic, 14);
  c.locked(one, LineAgent::acid, day(-1, 20));
  EXPECT_TRUE(has_step(c.plan(0), StepKind::caustic)) << "caustic may follow acid once flushed";
  c.chlorinated_kit();
  EXPECT_FALSE(has_step(c.plan(0), StepKind::caustic));
  EXPECT_THAT(reasons(c.plan(0)), ::testing::Each(LeftOutWhy::chlorine_with_acid));
  EXPECT_THAT(c.plan(1).tasks, SizeIs(1));
}

// The list closed, the line released: caustic is no longer due, and acid still waits.
TEST(CleaningDay, ChlorineUsedThatDayKeepsAcidFromIt) {
  DayCellar c;
  const LineId one = c.hose("1");
  c.rule(RuleScope::line, WorkKind::caustic, 14);
  c.rule(RuleScope::line, WorkKind::acid, 60);
  c.cleaned(one, day(0, 9), LineAgent::chlorinated);
  ASSERT_FALSE(c.cellar(day(0, 12)).lines.at(0).lock);
  for (const bool still_in_kit : {false, true}) {
    if (still_in_kit) c.chlorinated_kit();
    EXPECT_THAT(c.plan(0).tasks, IsEmpty());
    EXPECT_THAT(reasons(c.plan(0)), ::testing::ElementsAre(LeftOutWhy::acid_with_chlorine));
    EXPECT_THAT(c.plan(1).tasks, SizeIs(1));
  }
}

TEST(CleaningDay, AcidUsedThatDayKeepsChlorineFromIt) {
  DayCellar c;
  const LineId one = c.hose("1");
  c.hose("2");
  c.rule(RuleScope::line, WorkKind::caustic, 14);
  c.cleaned(one, day(0, 9), LineAgent::acid);
  c.chlorinated_kit();
  EXPECT_THAT(c.plan(0).tasks, IsEmpty());
  EXPECT_THAT(c.plan(1).tasks, SizeIs(2));
}

TEST(CleaningDay, AKegWashedWithTheKitsChlorineCounts) {
  DayCellar c;
  c.hose("1");
  c.rule(RuleScope::line, WorkKind::acid, 60);
  const KegId keg = c.keg("K1", c.bar);
  c.log(day(-1), Emptied{keg});
  Cleaned washed;
  washed.keg = keg;
  washed.agent = c.wishes.kit.caustic.name;
  c.log(day(0, 9), washed);
  EXPECT_THAT(c.plan(0).tasks, SizeIs(1)) << "it holds none";
  c.chlorinated_kit();
  EXPECT_THAT(c.plan(0).tasks, IsEmpty());
}

TEST(CleaningDay, ChlorineThatIsNotOnTheListKeepsNoAcidFromIt) {
  DayCellar c;
  const LineId line = c.hose("1");
  c.rule(RuleScope::line, WorkKind::caustic, 14);
  c.rule(RuleScope::line, WorkKind::acid, 60);
  c.chlorinated_kit();
  c.wishes.kit.caustic.contact = units::minutes(100);
  c.wishes.time_at_hand = units::minutes(60);
  EXPECT_TRUE(has_step(c.plan(0), StepKind::acid));
  EXPECT_THAT(reasons(c.plan(0)), ::testing::ElementsAre(LeftOutWhy::no_time));
  // A cleaning that is not due yet is no reason either: it comes another day.
  c.wishes.time_at_hand = units::minutes(400);
  c.cleaned(line, day(-12, 10));
  EXPECT_TRUE(has_step(c.plan(0), StepKind::acid));
  EXPECT_FALSE(has_step(c.plan(0), StepKind::caustic));
  EXPECT_THAT(c.plan(0).left_out, IsEmpty());
}

TEST(CleaningDay, WorkBroughtForwardIsTakenOnFromItsNewDay) {
  DayCellar c;
  const LineId line = c.hose("1");
  c.rule(RuleScope::line, WorkKind::caustic, 14);
  c.cleaned(line, day(-4, 10));  // due on day 10, taken on from day 7 with the rest
  EXPECT_THAT(c.plan(5).tasks, IsEmpty());
  EXPECT_EQ(c.propose().at(0).day, date(10));
  c.move(line, WorkKind::caustic, date(5));
  EXPECT_THAT(c.plan(4).tasks, IsEmpty());
  EXPECT_THAT(c.plan(5).tasks, SizeIs(1));
  EXPECT_EQ(c.propose().at(0).day, date(5));
  c.wishes.time_at_hand = units::minutes(5);
  EXPECT_THAT(reasons(c.plan(5)), ::testing::ElementsAre(LeftOutWhy::no_time)) << "wanted that day";
}

TEST(CleaningDay, OverdueWorkPutOffIsNamedAsLeftOut) {
  DayCellar c;
  const LineId line = c.hose("1");
  c.rule(RuleScope::line, WorkKind::caustic, 14);
  c.cleaned(line, day(-20, 10));
  c.move(line, WorkKind::caustic, date(4));
  const PlannedDay planned = c.plan(2);
  EXPECT_THAT(planned.tasks, IsEmpty());
  ASSERT_THAT(planned.left_out, SizeIs(1));
  EXPECT_EQ(planned.left_out[0].why, LeftOutWhy::put_off);
  EXPECT_EQ(planned.left_out[0].until, date(4));
  EXPECT_EQ(planned.cost.most_days_late, 8) << "it is no less late";
}

TEST(CleaningDay, AcidFollowsTheCausticThatWasPutOff) {
  DayCellar c;
  const LineId line = c.hose("1");
  c.rule(RuleScope::line, WorkKind::caustic, 14);
  c.rule(RuleScope::line, WorkKind::acid, 60);  // due on day 0
  c.cleaned(line, day(-14, 10));                // due on day 0
  c.move(line, WorkKind::caustic, date(4));
  const PlannedDay before = c.plan(1);
  EXPECT_THAT(before.tasks, IsEmpty());
  EXPECT_THAT(reasons(before),
              ::testing::UnorderedElementsAre(LeftOutWhy::put_off, LeftOutWhy::follows_caustic));
  for (const LeftOut& left : before.left_out) EXPECT_EQ(left.until, date(4));
  EXPECT_THAT(c.plan(4).tasks, SizeIs(2));
  EXPECT_EQ(c.propose().at(0).day, date(4));
  // Caustic that comes before it is due holds no acid up.
  DayCellar other;
  const LineId two = other.hose("1");
  other.rule(RuleScope::line, WorkKind::caustic, 14);
  other.rule(RuleScope::line, WorkKind::acid, 60);
  other.cleaned(two, day(-4, 10));
  other.move(two, WorkKind::caustic, date(4));
  EXPECT_THAT(other.plan(1).tasks, SizeIs(1));
  const auto rows = other.due(day(0, 12));
  const auto caustic = std::ranges::find(rows, WorkKind::caustic, &DueWork::work);
  EXPECT_THAT(overdue_if_moved(rows, *caustic, date(4)), IsEmpty());
}

TEST(CleaningDay, CountsTheLinesWhoseContentsAreNotKnown) {
  DayCellar c;
  c.hose("1");
  c.line("Line 9", "9", 14);
  c.rule(RuleScope::line, WorkKind::caustic, 14);
  int counted = 0;
  for (const PlanStep& step : c.plan(0).steps) {
    const bool wet = step.kind == StepKind::flush || step.kind == StepKind::caustic ||
                     step.kind == StepKind::rinse;
    const auto bare = std::ranges::count_if(step.things, [&](const SubjectRef& thing) {
      return !volume_of_line(LineId{thing.uuid}, c.cellar(day(0, 12)));
    });
    EXPECT_EQ(step.lines_unmeasured, wet ? bare : 0);
    counted += static_cast<int>(step.lines_unmeasured);
  }
  EXPECT_EQ(counted, 3);
}

TEST(CleaningDay, MinutesOfWorkAreTheKits) {
  DayCellar c;
  c.hose("1");
  c.rule(RuleScope::line, WorkKind::caustic, 14);
  const auto time = [&] { return units::in_minutes(c.plan(0).cost.time); };
  const double usual = time();
  c.wishes.kit.minutes.line = units::minutes(14);
  c.wishes.kit.minutes.flush = units::minutes(5);
  EXPECT_NEAR(time(), usual + 13, 1e-9);
  const PlannedDay planned = c.plan(0);
  double sum = units::in_minutes(c.wishes.kit.caustic.contact);
  for (const PlanStep& step : planned.steps) sum += units::in_minutes(step.hands_on);
  EXPECT_NEAR(sum, time(), 1e-9) << "the steps and the whole agree";
}

TEST(CleaningLog, TheLockNamesTheChemicalThatGoesInFirst) {
  DayCellar c;
  const LineId acid_only = c.hose("1");
  const LineId both = c.hose("2");
  c.rule(RuleScope::line, WorkKind::caustic, 14);
  c.rule(RuleScope::line, WorkKind::acid, 60);
  c.cleaned(acid_only, day(-1, 10));
  const PlannedDay planned = c.plan(0);
  const auto lock = std::ranges::find(planned.steps, StepKind::lock, &PlanStep::kind);
  ASSERT_NE(lock, planned.steps.end());
  const auto status = c.cellar(day(0, 12));
  for (const LineId line : {acid_only, both}) {
    const auto entry = entry_for(*lock, subject(line), status, c.wishes.kit);
    ASSERT_TRUE(entry);
    const auto* locked = get_if<LineLocked>(&present(entry));
    ASSERT_NE(locked, nullptr);
    const Cleaner& first = line == acid_only ? c.wishes.kit.acid : c.wishes.kit.caustic;
    EXPECT_EQ(locked->agent, first.kind);
    EXPECT_EQ(locked->agent_name, first.name);
  }
}

// With a chlorinated kit, on a day that has acid alone.
TEST(CleaningLog, AnAcidDayRaisesNoFalseDanger) {
  DayCellar c;
  const LineId line = c.hose("1");
  c.rule(RuleScope::line, WorkKind::acid, 60);
  c.chlorinated_kit();
  const PlannedDay planned = c.plan(0);
  ASSERT_TRUE(has_step(planned, StepKind::acid));
  for (const PlanStep& step : planned.steps) {
    if (means(step, subject(line)) != TickMeans::logs) continue;
    c.log(day(0, 13), present(entry_for(step, subject(line), c.cellar(day(0, 12)), c.wishes.kit)));
  }
  const auto status = c.cellar(day(0, 14));
  ASSERT_TRUE(status.lines.at(0).lock);
  EXPECT_EQ(present(status.lines[0].lock).agent, c.wishes.kit.acid.name);
  for (const Advice& advice : status.lines[0].advice) {
    EXPECT_NE(advice.headline.key, MessageKey::adv_line_chemicals);
  }
}

TEST(CleaningLog, StatesNoContactTimeThatNobodyMeasured) {
  DayCellar c;
  const LineId line = c.hose("1");
  c.rule(RuleScope::line, WorkKind::caustic, 14);
  const PlannedDay planned = c.plan(0);
  const auto step = std::ranges::find(planned.steps, StepKind::caustic, &PlanStep::kind);
  ASSERT_NE(step, planned.steps.end());
  const auto contact = [&](const std::optional<units::Duration>& stood) {
    const auto entry = entry_for(*step, subject(line), c.cellar(day(0, 12)), c.wishes.kit, stood);
    return get_if<LineCleaned>(&*entry)->contact;
  };
  EXPECT_FALSE(contact(std::nullopt));
  ASSERT_TRUE(contact(units::minutes(27)));
  EXPECT_NEAR(units::in_minutes(present(contact(units::minutes(27)))), 27, 1e-9);
}

TEST(CleaningLog, RenewedSealsAreOneThingHoweverTheyWereLogged) {
  for (const bool by_tick : {false, true}) {
    DayCellar c;
    const KegId keg = c.keg("K1", c.bar);
    c.rule(RuleScope::keg, WorkKind::seals, 30);
    c.log(day(-2), Emptied{keg});
    c.prepare(keg, day(-1));
    ASSERT_EQ(c.status(keg, day(0, 8)).phase, Phase::purged);
    const PlannedDay planned = c.plan(0);
    const auto step = std::ranges::find(planned.steps, StepKind::seals, &PlanStep::kind);
    ASSERT_NE(step, planned.steps.end());
    if (by_tick) {
      c.log(day(0, 9), present(entry_for(*step, subject(keg), c.cellar(day(0, 8)), c.wishes.kit)));
    } else {
      Inspected renewed;
      renewed.keg = keg;
      renewed.seals_renewed = true;
      c.log(day(0, 9), renewed);
    }
    const KegStatus after = c.status(keg, day(0, 12));
    EXPECT_EQ(after.phase, Phase::clean) << "it was open";
    const auto seen = std::ranges::find_if(
        after.preparation, [](const PreparationStep& s) { return s.kind == "inspected"; });
    ASSERT_TRUE(seen != after.preparation.end() && seen->result);
    EXPECT_EQ(seen->result->key, MessageKey::step_seals_renewed);
    EXPECT_TRUE(done_since(*step, subject(keg), c.journal, day(0, 8)));
    EXPECT_EQ(c.due(day(0, 12)).at(0).due, date(30));
  }
}

}  // namespace
}  // namespace ullage::testing
