// SPDX-License-Identifier: GPL-3.0-or-later
//
// The tables of the pages as lists: what stands in them, and that nothing in a name
// can break the CSV that is made of them.
#include "core/report/page_lists.h"

#include <gmock/gmock.h>

#include "core/report/csv_reader.h"
#include "tests/report/told_book.h"

namespace ullage::testing {
namespace {

using ::testing::Contains;
using ::testing::HasSubstr;
using ::testing::SizeIs;
using ::testing::StartsWith;

// One named fact of a row of CSV, as another program would find it.
std::string fact_of(const report::CsvFile& table, std::size_t row, const std::string& key) {
  const auto& keys = table.header.fields;
  const auto at = std::find(keys.begin(), keys.end(), key);
  if (at == keys.end()) return "no column " + key;
  return table.lines.at(row).fields.at(static_cast<std::size_t>(at - keys.begin()));
}

report::CsvFile read_back(const report::TableSheet& sheet) {
  const auto read = report::read_csv(report::csv_of(sheet));
  EXPECT_TRUE(read);
  if (!read) return {};
  EXPECT_EQ(read->lines.size(), sheet.rows.size());
  for (const report::TableRow& row : sheet.rows) {
    EXPECT_EQ(row.cells.size(), sheet.columns.size()) << sheet.title;
    EXPECT_EQ(row.data.size(), sheet.keys.size()) << sheet.title;
  }
  return *read;
}

using PageLists = ToldBook;

TEST_F(PageLists, ALineTellsWhatItServesAtWhatPressureAndWhenItIsCleaned) {
  const auto lines = read_back(report::line_list(now, speaker, "MK"));
  ASSERT_THAT(lines.lines, SizeIs(3));
  EXPECT_EQ(fact_of(lines, 0, "tap"), "1");
  EXPECT_EQ(fact_of(lines, 0, "line"), "Line 1");
  EXPECT_EQ(fact_of(lines, 0, "keg"), "K01");
  EXPECT_EQ(fact_of(lines, 0, "beer"), "Tern Bitter");
  EXPECT_THAT(fact_of(lines, 0, "set_kpa"), StartsWith("48.26")) << "7 psi";
  EXPECT_THAT(fact_of(lines, 0, "last_cleaned"), StartsWith("2026-11-12T09:30"));
  EXPECT_EQ(fact_of(lines, 0, "clean_due"), "2026-11-26");
  EXPECT_EQ(fact_of(lines, 0, "do_not_serve"), "no");
  EXPECT_EQ(fact_of(lines, 1, "do_not_serve"), "yes");
  EXPECT_EQ(fact_of(lines, 2, "keg"), "") << "nothing on it";
  EXPECT_EQ(fact_of(lines, 2, "set_kpa"), "");
  EXPECT_EQ(fact_of(lines, 2, "clean_due"), "") << "no rule";
  const auto sheet = report::line_list(now, speaker, "MK");
  EXPECT_FALSE(sheet.rows[0].marked);
  EXPECT_TRUE(sheet.rows[1].marked);
  EXPECT_THAT(sheet.rows[0].cells[2], HasSubstr("7 psi")) << "for people, in their unit";
}

TEST_F(PageLists, ALineOutOfUseIsLeftOut) {
  LineRecord gone{.line = book.three, .name = "Line 3"};
  gone.in_use = false;
  book.s.log(day(22, 14.5), gone);
  tell_anew();
  EXPECT_THAT(report::line_list(now, speaker, "").rows, SizeIs(2));
}

TEST_F(PageLists, ABatchTellsItsKegsWhatIsLeftAndItsRecall) {
  const auto batches = read_back(report::batch_list(journal, now, speaker, ""));
  ASSERT_THAT(batches.lines, SizeIs(2));
  const std::size_t bitter = fact_of(batches, 0, "batch") == "Brew 41" ? 0 : 1;
  const std::size_t lager = 1 - bitter;
  EXPECT_EQ(fact_of(batches, bitter, "beer"), "Tern Bitter");
  EXPECT_EQ(fact_of(batches, bitter, "kegs"), "K01, K02");
  EXPECT_EQ(fact_of(batches, bitter, "kegs_now"), "2");
  EXPECT_GT(std::stod(fact_of(batches, bitter, "left_l")), 18.3) << "the untouched keg at least";
  EXPECT_EQ(fact_of(batches, bitter, "best_by"), "2027-01-11");
  EXPECT_EQ(fact_of(batches, bitter, "recalled"), "");
  EXPECT_EQ(fact_of(batches, lager, "beer"), "Hillside Lager, \"new\"");
  EXPECT_THAT(fact_of(batches, lager, "recalled"), StartsWith("2026-11-23T09:00"));
  EXPECT_EQ(fact_of(batches, lager, "recalled_because"), "supplier’s notice, off flavour");
}

TEST_F(PageLists, ARuleTellsWhatForHowOftenAndWhereItComesFrom) {
  RuleRecord every{.rule = RuleId{book.one.uuid}};
  every.scope = RuleScope::line;
  every.work = WorkKind::caustic;
  every.interval_days = 14;
  every.source = "trade handbook";
  RuleRecord one{.rule = RuleId{book.two.uuid}};
  one.work = WorkKind::caustic;
  one.line = book.two;
  one.reason = "beer stone";
  one.in_force = false;
  now.rules = {every, one};
  const auto rules = read_back(report::rule_list(now, speaker, ""));
  ASSERT_THAT(rules.lines, SizeIs(2));
  EXPECT_EQ(fact_of(rules, 0, "every_days"), "14");
  EXPECT_EQ(fact_of(rules, 0, "source"), "trade handbook");
  EXPECT_EQ(fact_of(rules, 0, "in_force"), "yes");
  EXPECT_EQ(fact_of(rules, 1, "for"), "Line 2");
  EXPECT_EQ(fact_of(rules, 1, "every_days"), "") << "when called for";
  EXPECT_EQ(fact_of(rules, 1, "reason"), "beer stone");
  EXPECT_EQ(fact_of(rules, 1, "in_force"), "no");
}

TEST_F(PageLists, NoNameBreaksTheCsvOrRunsInASpreadsheet) {
  const std::string hostile = "=SUM(A1), \"x\"\nnext";
  const std::string defused = "'" + hostile;
  now.lines.at(0).record.name = hostile;
  now.batches.at(0).name = hostile;
  RuleRecord rule{.rule = RuleId{book.one.uuid}};
  rule.source = hostile;
  now.rules = {rule};
  EXPECT_EQ(fact_of(read_back(report::line_list(now, speaker, "")), 0, "line"), defused);
  EXPECT_EQ(fact_of(read_back(report::rule_list(now, speaker, "")), 0, "source"), defused);
  const auto batches = read_back(report::batch_list(journal, now, speaker, ""));
  std::vector<std::string> names;
  names.reserve(batches.lines.size());
  for (std::size_t i = 0; i < batches.lines.size(); ++i)
    names.push_back(fact_of(batches, i, "batch"));
  EXPECT_THAT(names, Contains(defused));
}

TEST_F(PageLists, TheWordsFollowTheRegion) {
  speaker = book.speaker(report::RegionalWords::us);
  EXPECT_EQ(report::line_list(now, speaker, "").columns.front().heading, "Faucet, line");
}

}  // namespace
}  // namespace ullage::testing
