// SPDX-License-Identifier: GPL-3.0-or-later
//
// The calendar file, read by python3-icalendar: a reader that shares no code with
// the library that wrote it.
#include "core/report/calendar_feed.h"

#include <gmock/gmock.h>

#include <algorithm>
#include <array>
#include <cstdio>
#include <filesystem>
#include <fstream>
#include <memory>
#include <nlohmann/json.hpp>

#include "core/cellar/due_work.h"
#include "core/report/names.h"
#include "tests/report/book.h"

namespace ullage::testing {
namespace {

using report::CalendarItem;

// What tests/report/read_calendar.py makes of the file. The system's own Python is
// the one that Debian's package of the reader belongs to.
nlohmann::json read_by_python(const std::string& ics) {
  const std::filesystem::path path =
      std::filesystem::temp_directory_path() /
      ("calendar-" + std::to_string(::testing::UnitTest::GetInstance()->random_seed()) + "-" +
       ::testing::UnitTest::GetInstance()->current_test_info()->name() + ".ics");
  std::ofstream(path, std::ios::binary) << ics;
  const std::string command = std::string("/usr/bin/python3 ") + ULLAGE_TESTS_DIR +
                              "/report/read_calendar.py " + path.string();
  const std::unique_ptr<FILE, int (*)(FILE*)> pipe(popen(command.c_str(), "r"), pclose);
  std::string out;
  std::array<char, 4096> buffer{};
  while (const std::size_t n = fread(buffer.data(), 1, buffer.size(), pipe.get())) {
    out.append(buffer.data(), n);
  }
  std::filesystem::remove(path);
  return nlohmann::json::parse(out, nullptr, false);
}

TEST(CalendarFeed, IsReadByAnotherReader) {
  const std::vector<CalendarItem> items = {
      {"a-clean@ullage", date(0), "Clean Line 1", "Every 14 days, trade handbook"},
      {"b-ready@ullage", date(3), "Ready: K07, Käse; \"odd\", \\ name",
       "Likely; between 2026-11-04 and 2026-11-07\nsecond line"},
      {"c-long@ullage", date(4), std::string(300, 'x') + " ✓ end", ""}};
  const std::string ics = report::icalendar_of(items, "Test cellar", day(1, 14.5));
  const nlohmann::json read = read_by_python(ics);
  ASSERT_TRUE(read.is_object()) << ics;
  EXPECT_EQ(read["version"], "2.0");
  EXPECT_EQ(read["name"], "Test cellar");
  EXPECT_TRUE(read["errors"].empty()) << read["errors"];
  EXPECT_NE(read["prodid"], "");
  ASSERT_EQ(read["events"].size(), items.size());
  const std::array days = {"2026-11-02", "2026-11-05", "2026-11-06"};
  for (std::size_t i = 0; i < items.size(); ++i) {
    EXPECT_EQ(read["events"][i]["uid"], items[i].uid);
    EXPECT_EQ(read["events"][i]["start"], days.at(i));
    EXPECT_EQ(read["events"][i]["summary"], items[i].summary);
    EXPECT_EQ(read["events"][i]["description"], items[i].description);
    EXPECT_EQ(read["events"][i]["stamp"], "2026-11-03T14:30:00+00:00");
  }
}

TEST(CalendarFeed, TheWholeCellarsIsReadWithoutAFault) {
  const Book book;
  const Journal journal = book.journal();
  const CellarStatus now = Replay(journal, book.s.calendar).status(Book::now());
  const auto items = report::calendar_items(now, journal, book.speaker());
  ASSERT_FALSE(items.empty());
  const auto read = read_by_python(report::icalendar_of(items, "Test cellar", Book::now()));
  ASSERT_TRUE(read.is_object());
  EXPECT_EQ(read["errors"], nlohmann::json::array());
  EXPECT_EQ(read["events"].size(), items.size());
}

// That the reader would tell: a day that is none, in an event of ours.
TEST(CalendarFeed, TheOtherReaderTellsOfAFault) {
  std::string ics = report::icalendar_of({{"a@ullage", date(0), "Clean", ""}}, "C", day(0));
  const std::string good = "UID:a@ullage";
  const auto at = ics.find(good);
  ASSERT_NE(at, std::string::npos);
  ics.insert(at, "DUE;VALUE=DATE:20261399\r\n");
  const auto read = read_by_python(ics);
  ASSERT_TRUE(read.is_object()) << ics;
  EXPECT_EQ(read["errors"].size(), 1U) << read["errors"];
}

// RFC 5545, 3.1: lines end with CR LF and have at most 75 octets.
TEST(CalendarFeed, FoldsItsLines) {
  const std::string ics =
      report::icalendar_of({{"a@ullage", date(0), std::string(500, 'y') + "äöü", ""}}, "C", day(0));
  std::size_t at = 0;
  while (at < ics.size()) {
    const auto end = ics.find("\r\n", at);
    ASSERT_NE(end, std::string::npos);
    EXPECT_LE(end - at, 75U);
    EXPECT_EQ(ics.substr(at, end - at).find('\n'), std::string::npos);
    at = end + 2;
  }
}

TEST(CalendarFeed, TellsWhatIsDueAndWhatIsOverdueStandsOnToday) {
  const Book book;
  const Journal journal = book.journal();
  const CellarStatus now = Replay(journal, book.s.calendar).status(Book::now());
  const auto items = report::calendar_items(now, journal, book.speaker());
  const auto find = [&](const std::string& summary) -> const CalendarItem* {
    for (const CalendarItem& item : items) {
      if (item.summary == summary) return &item;
    }
    return nullptr;
  };
  // Cleaned on 12 November, rule 14 days.
  ASSERT_NE(find("Clean Line 1"), nullptr);
  EXPECT_EQ(find("Clean Line 1")->day, date(24));
  // Due back on 20 November; today is the 24th.
  ASSERT_NE(find("Keg due back: K04"), nullptr);
  EXPECT_EQ(find("Keg due back: K04")->day, date(22));
  EXPECT_THAT(find("Keg due back: K04")->description, ::testing::HasSubstr("Was due 2026-11-20"));
  EXPECT_NE(find("Retest due: Bottle 1"), nullptr);
  EXPECT_NE(find("Use by: K01, Tern Bitter"), nullptr);
  EXPECT_EQ(find("Clean Line 3"), nullptr);  // no rule
  std::set<std::string> uids;
  for (const CalendarItem& item : items) {
    EXPECT_TRUE(uids.insert(item.uid).second) << item.uid;
    EXPECT_GE(item.day, date(22)) << item.summary;
  }
  // Told again tomorrow, the same things keep their UIDs.
  const CellarStatus later = Replay(journal, book.s.calendar).status(day(23, 9));
  report::Speaker tomorrow = book.speaker();
  tomorrow.now = later.now;
  for (const CalendarItem& item : report::calendar_items(later, journal, tomorrow)) {
    EXPECT_TRUE(uids.contains(item.uid)) << item.summary;
  }
}

// Day 0 and an hour: a taste on day 5, out by day 10 (design: two to ten days).
TEST(CalendarFeed, RemindsOfHopsToTasteAndToTakeOut) {
  Scenario s;
  const PlaceId box = s.place("Cold box");
  const KegId k = s.keg("K01", box);
  const BatchId batch = s.batch("Red Rye");
  s.fill(k, batch, day(0));
  s.log(day(0, 1), HopsIn{k, "Goldings", units::grams(40)});
  const auto items_at = [&](Instant t) {
    const report::Speaker speaker{{units::DisplayUnits::metric(), {}}, &s.calendar, {}, t};
    std::vector<CalendarItem> hops;
    for (CalendarItem& item : report::calendar_items(s.cellar(t), s.journal, speaker)) {
      if (item.uid.find("hops") != std::string::npos) hops.push_back(std::move(item));
    }
    return hops;
  };
  const auto soon = items_at(day(2));
  ASSERT_EQ(soon.size(), 2U);
  EXPECT_EQ(soon[0].summary, "Taste for hops: K01, Red Rye");
  EXPECT_EQ(soon[0].day, date(5));
  EXPECT_EQ(soon[1].summary, "Hops out: K01, Red Rye");
  EXPECT_EQ(soon[1].day, date(10));
  EXPECT_THAT(soon[1].description, ::testing::HasSubstr("Goldings in since 2026-11-02"));
  const auto late = items_at(day(12));
  ASSERT_EQ(late.size(), 1U);
  EXPECT_EQ(late[0].day, date(12)) << "still to do: it stands on today";
  EXPECT_EQ(late[0].due, date(10));
  s.log(day(12, 1), HopsOut{k});
  EXPECT_TRUE(items_at(day(13)).empty());
}

// The calendar and what the cleaning page lists are one: each due work is there,
// on its day, and one that was put off on the day it was put off to.
TEST(CalendarFeed, TellsEveryDueWorkOfTheCellarsRules) {
  Book book;
  RuleRecord strip;
  strip.rule = CountingIds(99).make<RuleId>();
  strip.scope = RuleScope::line;
  strip.work = WorkKind::strip_down;
  strip.interval_days = 28;
  strip.reason = "the house";
  book.s.log(day(-30), strip);
  WorkMoved moved{.work = WorkKind::strip_down};
  moved.line = book.two;
  moved.to_day = date(40);
  moved.reason = "parts on order";
  book.s.log(day(20), moved);
  const Journal journal = book.journal();
  const CellarStatus now = Replay(journal, book.s.calendar).status(Book::now());
  const auto items = report::calendar_items(now, journal, book.speaker());
  const auto work = due_work(journal, now, book.s.calendar);
  ASSERT_GE(work.size(), 4U);
  bool put_off = false;
  for (const DueWork& w : work) {
    const auto at = std::find_if(items.begin(), items.end(), [&](const CalendarItem& item) {
      return item.due == w.due && item.uid.starts_with(to_text(w.about.uuid)) &&
             item.summary.ends_with(report::name_of(w.about, now));
    });
    ASSERT_NE(at, items.end()) << report::name_of(w.about, now);
    if (!w.put_off_to) continue;
    put_off = true;
    EXPECT_EQ(at->day, date(40));
    EXPECT_THAT(at->description, ::testing::HasSubstr("parts on order"));
  }
  EXPECT_TRUE(put_off);
}

}  // namespace
}  // namespace ullage::testing
