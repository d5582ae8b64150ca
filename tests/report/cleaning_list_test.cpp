// SPDX-License-Identifier: GPL-3.0-or-later
//
// The cleaning list as words: what is to be ticked, and what was done before.
#include "core/report/cleaning_list.h"

#include <gmock/gmock.h>

#include <algorithm>
#include <nlohmann/json.hpp>

#include "core/report/due_sheet.h"
#include "core/report/tags.h"
#include "tests/cellar/routine_cellar.h"

namespace ullage::testing {
namespace {

using ::testing::HasSubstr;
using ::testing::Not;

struct ListCellar : RoutineCellar {
  Journal told() const {
    Journal all;
    for (const Entry& e : journal.entries()) {
      Entry copy = e;
      copy.header.by = "MK";
      all.append(std::move(copy));
    }
    return all;
  }
  [[nodiscard]] report::Speaker speaker(Instant now) const {
    return {{units::DisplayUnits::metric(), {}}, &calendar, report::RegionalWords::british, now};
  }
  [[nodiscard]] report::CleaningList list(Instant now) const {
    const Journal all = told();
    const CellarStatus status = Replay(all, calendar).status(now);
    PlanWishes wishes;
    wishes.from = calendar.date_of(now);
    wishes.kit = usual_kit();
    const PlannedDay planned =
        plan_cleaning_day(wishes.from, due_work(all, status, calendar), status, calendar, wishes);
    return report::cleaning_list(planned, status, speaker(now), "MK");
  }
};

TEST(CleaningList, SaysSinceWhenAndByWhomALineStandsLocked) {
  ListCellar c;
  const LineId one = c.hose("Line 1");
  c.hose("Line 2");
  c.rule(RuleScope::line, WorkKind::caustic, 14);
  c.log(day(0, 7), LineLocked{one, LineAgent::caustic, "", ""});
  const report::CleaningList list = c.list(day(0, 8));
  const auto lock = std::ranges::find_if(list.steps, [](const report::CleaningListStep& s) {
    return s.what.find("Lock the lines") != std::string::npos;
  });
  ASSERT_NE(lock, list.steps.end());
  ASSERT_EQ(lock->things.size(), 2U);
  const auto& locked = lock->things[lock->things[0].done ? 0 : 1];
  const auto& open = lock->things[lock->things[0].done ? 1 : 0];
  EXPECT_TRUE(locked.done);
  EXPECT_THAT(locked.name, HasSubstr("Line 1, locked since "));
  EXPECT_THAT(locked.name, HasSubstr("by MK"));
  EXPECT_EQ(open.name, "Line 2");
  EXPECT_FALSE(open.done);
  for (const report::CleaningListStep& step : list.steps) {
    if (&step == &*lock) continue;
    for (const auto& thing : step.things) {
      EXPECT_FALSE(thing.done) << step.what;
      EXPECT_THAT(thing.name, Not(HasSubstr("locked since"))) << step.what;
    }
  }
}

const report::CleaningListStep* step_of(const report::CleaningList& list, const char* what) {
  const auto at = std::ranges::find_if(list.steps, [&](const report::CleaningListStep& s) {
    return s.what.find(what) != std::string::npos;
  });
  return at == list.steps.end() ? nullptr : &*at;
}

TEST(CleaningList, SaysAtTheStepThatLinesAreNotInItsAmounts) {
  ListCellar c;
  for (const char* name : {"Line 8", "Line 9"}) {
    LineRecord r;
    r.line = c.made_id<LineId>();
    r.name = name;
    r.place = c.bar;
    c.log(day(-60), r);
  }
  c.rule(RuleScope::line, WorkKind::caustic, 14);
  const report::CleaningList bare = c.list(day(0, 8));
  EXPECT_THAT(step_of(bare, "Fill the lines")->takes,
              HasSubstr("and for 2 lines whose contents are not known"));
  EXPECT_THAT(step_of(bare, "Flush the beer out")->takes,
              HasSubstr("water for 2 lines whose contents are not known"));
  c.hose("Line 1");
  EXPECT_THAT(step_of(c.list(day(0, 8)), "Rinse the lines")->takes,
              HasSubstr("of water, and for 2 lines whose contents are not known"));
}

TEST(CleaningList, SaysTheGasThatTheDayTakes) {
  ListCellar c;
  const KegId keg = c.keg("K1", c.bar);
  c.rule(RuleScope::keg, WorkKind::keg_clean, std::nullopt);
  c.log(day(-1), Emptied{keg});
  EXPECT_THAT(c.list(day(0, 8)).costs, ::testing::Contains(HasSubstr("of CO₂ to purge kegs")));
}

TEST(CleaningList, SaysWhyWorkIsNotOnIt) {
  ListCellar c;
  const LineId line = c.hose("Line 1");
  c.rule(RuleScope::line, WorkKind::caustic, 14);
  c.rule(RuleScope::line, WorkKind::acid, 60);
  WorkMoved m;
  m.work = WorkKind::caustic;
  m.line = line;
  m.to_day = date(4);
  c.log(day(-1), m);
  const auto left = c.list(day(1, 8)).left_out;
  EXPECT_THAT(left, ::testing::UnorderedElementsAre(
                        HasSubstr("Clean the line, Line 1: put off to 6 Nov"),
                        HasSubstr("follows the line’s cleaning, put off to 6 Nov")));
}

TEST(CleaningList, NamesTheCleanersItAssumes) {
  ListCellar c;
  c.hose("Line 1");
  c.rule(RuleScope::line, WorkKind::caustic, 14);
  EXPECT_THAT(c.list(day(0, 8)).assumed, ::testing::IsEmpty());
  const CleaningKit kit = usual_kit();
  const Instant now = day(0, 8);
  const CellarStatus status = c.cellar(now);
  const PlanWishes wishes = usual_wishes(status, c.calendar);
  const PlannedDay planned = plan_cleaning_day(wishes.from, due_work(c.journal, status, c.calendar),
                                               status, c.calendar, wishes);
  const auto list = report::cleaning_list(planned, status, c.speaker(now), "MK", &kit);
  ASSERT_EQ(list.assumed.size(), 1U) << "no acid is on it";
  EXPECT_THAT(list.assumed[0], HasSubstr("line cleaner with 30 % of active by weight"));
  EXPECT_THAT(list.assumed[0], HasSubstr("used at 2 %"));
  const auto told = nlohmann::json::parse(report::json_of(list));
  EXPECT_EQ(told["assumed_cleaners"][0], list.assumed[0]);
}

TEST(KegTag, TellsSealsThatWereTickedOnACleaningDay) {
  ListCellar c;
  const KegId keg = c.keg("K1", c.bar);
  WorkDone seals;
  seals.work = WorkKind::seals;
  seals.keg = keg;
  c.log(day(-2), seals);
  seals.complete = false;
  c.log(day(-1), seals);
  const Instant now = day(0, 8);
  const CellarStatus status = c.cellar(now);
  const report::KegTag tag = report::keg_tag(*status.find(keg), c.journal, status, c.speaker(now));
  const auto row = std::ranges::find_if(
      tag.back, [](const auto& r) { return r.label.find("Seals") != std::string::npos; });
  ASSERT_NE(row, tag.back.end());
  EXPECT_EQ(row->value, "2026-10-31");
}

TEST(CleaningList, IsToldToProgramsToo) {
  ListCellar c;
  c.hose("Line 1");
  EXPECT_TRUE(nlohmann::json::parse(report::json_of(c.list(day(0, 8))))["steps"].empty());
  c.rule(RuleScope::line, WorkKind::caustic, 14);
  const auto told = nlohmann::json::parse(report::json_of(c.list(day(0, 8))));
  ASSERT_FALSE(told["steps"].empty());
  EXPECT_EQ(told["steps"][0]["things"][0]["name"], "Line 1");
  EXPECT_EQ(told["steps"][0]["things"][0]["done"], false);
  EXPECT_THAT(told["steps"][3]["caution"].get<std::string>(), HasSubstr("Caustic burns"));
}

TEST(DueList, HasALineForEachDueWorkAsTheCommandTellsIt) {
  ListCellar c;
  c.hose("Line 1");
  c.rule(RuleScope::line, WorkKind::caustic, 14);
  c.rule(RuleScope::place, WorkKind::place_clean, 60, "own, \"weekly\" rule");
  const Instant now = day(0, 8);
  const CellarStatus status = c.cellar(now);
  const auto lines = report::due_lines(status, c.journal, c.speaker(now), 14);
  const auto sheet = report::due_list(report::due_lines(status, c.journal, c.speaker(now), 14),
                                      status, c.speaker(now), 14, "MK");
  ASSERT_EQ(lines.size(), 2U);
  ASSERT_EQ(sheet.rows.size(), 2U);
  // Registered on day -60, so due on day -46: 46 days over.
  const std::string csv = report::csv_of(sheet);
  EXPECT_EQ(csv.substr(0, csv.find("\r\n")),
            "due,overdue,days_over,what,why,planned_for,uid,struck,standing");
  EXPECT_THAT(csv, HasSubstr("2026-09-17,yes,46,Clean Line 1,"));
  EXPECT_THAT(csv, HasSubstr("\"Every 60 days: own, \"\"weekly\"\" rule\""));
  EXPECT_TRUE(sheet.rows[0].marked);
  EXPECT_THAT(sheet.rows[0].cells[0], HasSubstr("OVERDUE"));
}

}  // namespace
}  // namespace ullage::testing
