// SPDX-License-Identifier: GPL-3.0-or-later
//
// The log books and lists, as text against golden files, and the facts in them
// one by one.
#include <gmock/gmock.h>

#include <set>

#include "core/report/cellar_lists.h"
#include "core/report/log_book.h"
#include "core/report/period_logs.h"
#include "core/report/recall_list.h"
#include "core/report/tags.h"
#include "tests/report/golden.h"
#include "tests/report/logs_fixture.h"

namespace ullage::testing {
namespace {

using ::testing::AllOf;
using ::testing::Contains;
using ::testing::ElementsAre;
using ::testing::HasSubstr;
using ::testing::Not;

TEST_F(Logs, LineCleaningReadsAsAgreed) { expect_golden("line_cleaning.txt", text_of(cleaning())); }
TEST_F(Logs, TemperatureReadsAsAgreed) {
  expect_golden("temperature.txt",
                text_of(report::temperature_log(journal, now, november, speaker, "MK")));
}
// Box and cellar as book.h has them: set to 3 and to 12 °C.
TEST_F(Logs, AReadingOutOfRangeSaysSoInWordsWithTheLimitOfThen) {
  const auto read = [this](PlaceId place, double celsius, TemperatureOf of = TemperatureOf::air) {
    book.s.log(day(14, 8), TemperatureRead{place, units::celsius(celsius), {}, of});
  };
  read(book.box, 4.0);
  read(book.box, 4.1);
  read(book.cellar_room, 10.9);
  read(book.box, 7.0, TemperatureOf::glass);
  PlaceRecord warmer{.place = book.box, .name = "Cold box"};
  warmer.set_temperature = units::celsius(6);
  book.s.log(day(15), warmer);
  warmer.set_temperature.reset();
  book.s.log(day(17), warmer);
  book.s.log(day(16, 8), TemperatureRead{book.box, units::celsius(6.5), {}});
  book.s.log(day(18, 8), TemperatureRead{book.box, units::celsius(6.5), {}});
  tell_anew();
  const auto sheet = report::temperature_log(journal, now, november, speaker, "");
  std::vector<std::string> judged;
  std::size_t marked = 0;
  for (const report::TableRow& row : sheet.rows) {
    judged.push_back(row.cells.at(5));
    marked += row.marked ? 1U : 0U;
  }
  EXPECT_THAT(judged, ElementsAre("within", "within", "within", "OUT: above 4 °C", "" /* struck */,
                                  "within", "OUT: above 4 °C", "OUT: below 11 °C", "not judged",
                                  "within", "not judged"));
  EXPECT_EQ(marked, 3U);
  EXPECT_THAT(sheet.boxes.front().lines,
              Contains(AllOf(HasSubstr("Cold box"), HasSubstr("2 out of range"))));
  EXPECT_THAT(text_of(sheet), HasSubstr("the width that trade guides give a cellar"));
  EXPECT_EQ(number(sheet, 3, "high_c"), 4);
}
TEST_F(Logs, GasReadsAsAgreed) {
  expect_golden("gas.txt", text_of(report::gas_log(journal, now, november, speaker, "MK")));
}
TEST_F(Logs, WastageReadsAsAgreed) {
  expect_golden("wastage.txt",
                text_of(report::wastage_book(journal, now, november, speaker, "MK")));
}
TEST_F(Logs, CustodyReadsAsAgreed) {
  expect_golden("custody.txt", text_of(report::custody_list(journal, now, speaker, "MK")));
}
TEST_F(Logs, RecallReadsAsAgreed) {
  expect_golden("recall.txt",
                text_of(report::recall_list(journal, now, book.lager, speaker, "MK")));
}
TEST_F(Logs, KegTagsReadAsAgreed) {
  std::string all;
  for (const report::KegTag& tag : report::keg_tags(journal, now, speaker)) all += text_of(tag);
  expect_golden("keg_tags.txt", all);
}
// The reading that showed it was taken on day 2; the tag says so.
TEST_F(Logs, ALeakingKegsTagSaysSinceWhen) {
  Scenario s;
  const KegId k = s.keg("K01", s.place("Cold box"));
  s.log(day(0), Cleaned{k, CleaningMethod::caustic, "caustic", {}, {}, {}});
  s.log(day(1), HoldReading{k, units::gauge_psi(30), {}, units::celsius(20), {}, true});
  s.log(day(2), HoldReading{k, units::gauge_psi(18), {}, units::celsius(20), {}, false});
  const KegStatus keg = s.status(k, day(4));
  ASSERT_TRUE(keg.hold_failed);
  const report::Speaker then{{units::DisplayUnits::metric(), {}}, &s.calendar, {}, day(4)};
  const report::WarningTag tag = report::out_of_service_tag(keg, then);
  EXPECT_EQ(tag.subtitle, "Leaking: do not fill");
  ASSERT_EQ(tag.facts.at(1).label, "Since");
  EXPECT_EQ(tag.facts.at(1).value, report::say_clock(day(2), then));
}

TEST_F(Logs, WarningTagsReadAsAgreed) {
  std::string all;
  for (const report::WarningTag& tag : report::warning_tags(journal, now, speaker)) {
    all += text_of(tag);
  }
  all += text_of(report::vent_first_tag(*now.keg_by_tag("K01"), speaker));
  expect_golden("warning_tags.txt", all);
}
TEST_F(Logs, CsvAndJsonReadAsAgreed) {
  expect_golden("line_cleaning.csv", report::csv_of(cleaning()));
  expect_golden("line_cleaning.json", report::json_of(cleaning()));
}

TEST_F(Logs, ACleaningCarriesEveryFieldAnInspectorAsksFor) {
  const report::TableSheet sheet = cleaning();
  ASSERT_EQ(sheet.rows.size(), 4U);  // one of them struck
  // Tuesday 4 November 2026 09:30, Line 1: as told in book.h.
  EXPECT_EQ(words(sheet, 0, "line"), "Line 1");
  EXPECT_EQ(words(sheet, 0, "tap"), "1");
  EXPECT_EQ(words(sheet, 0, "beer_before"), "Tern Bitter, Brew 41");
  EXPECT_EQ(words(sheet, 0, "beer_after"), "Tern Bitter, Brew 41");
  EXPECT_EQ(words(sheet, 0, "locked_at"), "2026-11-04T09:00+00:00");
  EXPECT_EQ(words(sheet, 0, "cleaned_at"), "2026-11-04T09:30+00:00");
  EXPECT_EQ(words(sheet, 0, "agent"), "caustic line cleaner");
  EXPECT_EQ(number(sheet, 0, "strength_percent"), 2);
  EXPECT_EQ(number(sheet, 0, "soak_min"), 20);
  EXPECT_EQ(number(sheet, 0, "water_c"), 45);
  EXPECT_EQ(number(sheet, 0, "beer_lost_l"), 0.4);
  EXPECT_EQ(words(sheet, 0, "flush_check"), "litmus");
  EXPECT_EQ(words(sheet, 0, "by"), "AB");
  EXPECT_EQ(words(sheet, 0, "released_by"), "AB");
  EXPECT_EQ(words(sheet, 0, "countersigned_by"), "JB");
  EXPECT_EQ(words(sheet, 0, "next_due"), "2026-11-18");  // 4 + 14
  EXPECT_THAT(words(sheet, 0, "rule"), AllOf(HasSubstr("14"), HasSubstr("trade handbook")));
  EXPECT_EQ(words(sheet, 0, "remarks"), "Nozzle worn, order one");
  EXPECT_EQ(sheet.signatures.size(), 2U);
}

TEST_F(Logs, WhatWasStruckIsShownSaidAndNotCounted) {
  const report::TableSheet sheet = cleaning();
  const auto struck = std::find_if(sheet.rows.begin(), sheet.rows.end(),
                                   [](const report::TableRow& r) { return r.struck; });
  ASSERT_NE(struck, sheet.rows.end());
  EXPECT_THAT(struck->standing,
              AllOf(HasSubstr("struck 2026-11-12 09:15 by JB"), HasSubstr("it was line 1")));
  EXPECT_THAT(sheet.boxes.front().lines,
              Contains(AllOf(HasSubstr("Line 3"), HasSubstr("0 cleanings"))));
  // Spilt half a litre once, typed twice: 0.5 L.
  const report::TableSheet losses = report::wastage_book(journal, now, november, speaker, "");
  EXPECT_THAT(losses.boxes.front().lines, Contains(AllOf(HasSubstr("spill"), HasSubstr("0.5 L"))));
}

TEST_F(Logs, WastageCostsWhatTheBeerCostThen) {
  // The price went up afterwards; the loss of day 3 stays at 4.50 a litre.
  BeerRecord dearer;
  for (const BeerRecord& beer : now.beers) {
    if (beer.beer == book.bitter_beer) dearer = beer;
  }
  dearer.price_minor_per_litre = 600;
  book.s.log(day(15), dearer);
  tell_anew();
  const report::TableSheet sheet = report::wastage_book(journal, now, november, speaker, "");
  bool seen = false;
  for (std::size_t i = 0; i < sheet.rows.size(); ++i) {
    if (words(sheet, i, "reason") != "fob") continue;
    EXPECT_DOUBLE_EQ(number(sheet, i, "cost"), 6.75);  // 1.5 L at 4.50
    seen = true;
  }
  EXPECT_TRUE(seen);
}

TEST_F(Logs, OtherWorkOnALineAndOnABottleIsTold) {
  WorkDone apart{.work = WorkKind::strip_down};
  apart.line = book.one;
  apart.done_by = "CD";
  apart.countersigned_by = "EF";
  book.s.log(day(12), apart);
  WorkDone retest{.work = WorkKind::bottle_retest};
  retest.bottle = book.bottle;
  retest.next_due = date(1000);
  book.s.log(day(13), retest);
  tell_anew();
  const auto lines = cleaning();
  ASSERT_EQ(lines.rows.size(), 5U);
  EXPECT_EQ(words(lines, 4, "method"), "strip_down");
  EXPECT_EQ(words(lines, 4, "by"), "CD");
  EXPECT_EQ(words(lines, 4, "countersigned_by"), "EF");
  EXPECT_THAT(text_of(lines), HasSubstr("strip down"));
  const auto gas = report::gas_log(journal, now, november, speaker, "");
  EXPECT_THAT(text_of(gas), AllOf(HasSubstr("bottle retest"), HasSubstr("next due 2029-07-29")));
}

// Nothing of the journal is left out of the whole log, and what was struck is told as such.
TEST_F(Logs, TheWholeLogHasEveryEntry) {
  const report::Period always{date(-400), date(400)};
  const auto sheet = report::entry_log(journal, now, always, speaker, "MK");
  ASSERT_EQ(sheet.rows.size(), journal.entries().size());
  std::size_t struck = 0;
  for (const report::TableRow& row : sheet.rows) {
    EXPECT_FALSE(row.cells.at(2).empty());
    struck += row.struck ? 1U : 0U;
  }
  std::size_t out_of_force = 0;
  for (const Entry& e : journal.entries()) {
    out_of_force += journal.standing(e.header.id) == Standing::in_force ? 0U : 1U;
  }
  EXPECT_GT(out_of_force, 0U);
  EXPECT_THAT(text_of(sheet), HasSubstr("K01"));  // what it is about, too
  EXPECT_EQ(struck, out_of_force);
  EXPECT_EQ(report::entry_log(journal, now, {date(390), date(400)}, speaker, "").rows.size(), 0U);
}

// One choice for the previews and the command line.
TEST_F(Logs, EachBookIsATableOfItsOwn) {
  using report::LogBook;
  const report::Period day{date(2), date(2)};
  const std::string told = report::temperature_log(journal, now, day, speaker, "").period;
  std::set<std::string> titles;
  int books = 0;
  for (LogBook each = LogBook::line_cleaning; each <= LogBook::all;
       each = static_cast<LogBook>(static_cast<int>(each) + 1)) {
    const auto sheet = report::book_sheet({.book = each, .period = day}, journal, now, speaker, "");
    titles.insert(sheet.title);
    EXPECT_EQ(report::over_a_period(each), sheet.period == told) << sheet.title;
    ++books;
  }
  EXPECT_EQ(titles.size(), static_cast<std::size_t>(books));
  const auto recall = report::book_sheet({.book = LogBook::recall}, journal, now, speaker, "");
  EXPECT_TRUE(recall.rows.empty());
  EXPECT_EQ(recall.when_empty, "No batch is registered.");
}

TEST_F(Logs, OnlyThePeriodIsTold) {
  const report::Period one_day{date(2), date(2)};
  const auto sheet = report::line_cleaning_log(journal, now, one_day, speaker, "");
  EXPECT_EQ(sheet.rows.size(), 1U);
  const auto none = report::line_cleaning_log(journal, now, {date(30), date(40)}, speaker, "");
  EXPECT_TRUE(none.rows.empty());
  EXPECT_THAT(text_of(none), HasSubstr("No line was cleaned"));
}

TEST_F(Logs, ACorrectedCleaningIsShownBothWays) {
  const Entry* first = nullptr;
  for (const Entry& e : journal.entries()) {
    if (holds_alternative<LineCleaned>(e.payload) && e.header.happened_at == day(2, 9.5))
      first = &e;
  }
  ASSERT_NE(first, nullptr);
  Entry better = *first;
  better.header.id = EntryId{Uuid{{9, 9}}};
  better.header.replaces = first->header.id;
  better.header.sequence = journal.last_sequence() + 1;
  better.header.recorded_at = day(3);
  get<LineCleaned>(better.payload).strength_percent = 3;
  journal.append(better);
  const auto sheet = cleaning();
  ASSERT_EQ(sheet.rows.size(), 5U);
  EXPECT_TRUE(sheet.rows[0].struck);
  EXPECT_THAT(sheet.rows[0].standing, HasSubstr("corrected 2026-11-05"));
  EXPECT_FALSE(sheet.rows[1].struck);
  EXPECT_EQ(number(sheet, 1, "strength_percent"), 3);
}

TEST_F(Logs, NoLogNamesWhatItDoesNotKnow) {
  for (const auto& sheet :
       {cleaning(), report::gas_log(journal, now, november, speaker, ""),
        report::temperature_log(journal, now, november, speaker, ""),
        report::wastage_book(journal, now, november, speaker, ""),
        report::custody_list(journal, now, speaker, ""), report::keg_list(now, speaker, ""),
        report::recall_list(journal, now, book.bitter, speaker, "")}) {
    for (const report::TableRow& row : sheet.rows) {
      EXPECT_EQ(row.cells.size(), sheet.columns.size()) << sheet.title;
      EXPECT_EQ(row.data.size(), sheet.keys.size()) << sheet.title;
      for (const std::string& cell : row.cells) {
        EXPECT_THAT(cell, Not(HasSubstr("unknown"))) << sheet.title;
        EXPECT_THAT(cell, Not(HasSubstr("_"))) << sheet.title;
      }
    }
    EXPECT_FALSE(sheet.rows.empty()) << sheet.title;
  }
}

TEST_F(Logs, TheWordsFollowTheRegion) {
  speaker = book.speaker(report::RegionalWords::us);
  EXPECT_THAT(text_of(cleaning()), AllOf(HasSubstr("faucet"), Not(HasSubstr("Line, tap"))));
}

TEST_F(Logs, ARecallFindsTheKegThatStillHoldsItAndTheLineItRanThrough) {
  const auto sheet = report::recall_list(journal, now, book.lager, speaker, "");
  ASSERT_EQ(sheet.rows.size(), 1U);
  EXPECT_TRUE(sheet.rows[0].marked);
  EXPECT_EQ(words(sheet, 0, "keg"), "P01");
  EXPECT_THAT(words(sheet, 0, "served_on"), HasSubstr("Line 2"));
  EXPECT_EQ(words(sheet, 0, "supplier"), "Hillside brewery");
  EXPECT_THAT(sheet.period, HasSubstr("recalled 2026-11-23"));
}

TEST_F(Logs, CustodyCountsCalendarDaysAndMarksWhatIsLate) {
  const auto sheet = report::custody_list(journal, now, speaker, "");
  ASSERT_EQ(sheet.rows.size(), 2U);
  EXPECT_EQ(words(sheet, 0, "whom"), "Village hall");
  EXPECT_EQ(number(sheet, 0, "days"), 10);  // 14 to 24 November
  EXPECT_EQ(words(sheet, 0, "due_back"), "2026-11-20");
  EXPECT_TRUE(sheet.rows[0].marked);
  EXPECT_EQ(number(sheet, 1, "deposit"), 40.00);
  EXPECT_FALSE(sheet.rows[1].marked);
}

TEST_F(Logs, ATagNeverNamesAPerson) {
  for (const report::KegTag& tag : report::keg_tags(journal, now, speaker)) {
    EXPECT_NE(tag.tag, "K04");  // lent: its tag hangs elsewhere
    const std::string text = text_of(tag);
    for (const char* initials : {"AB", "JB", "MK", "Village"}) {
      for (auto at = text.find(initials); at != std::string::npos;
           at = text.find(initials, at + 1)) {
        const bool word = at == 0 || std::isspace(static_cast<unsigned char>(text[at - 1])) != 0;
        EXPECT_FALSE(word && text.compare(at, 3, std::string(initials) + "V") != 0) << text;
      }
    }
  }
}

TEST(Csv, QuotesAsTheStandardAsksAndDefusesFormulas) {
  EXPECT_EQ(report::csv_field("plain"), "plain");
  EXPECT_EQ(report::csv_field("a,b"), "\"a,b\"");
  EXPECT_EQ(report::csv_field("say \"hi\""), "\"say \"\"hi\"\"\"");
  EXPECT_EQ(report::csv_field("two\nlines"), "\"two\nlines\"");
  EXPECT_EQ(report::csv_field("=1+1"), "'=1+1");
  EXPECT_EQ(report::csv_field("@cmd"), "'@cmd");
}

}  // namespace
}  // namespace ullage::testing
