// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/widgets/when_text.h"

#include <gtest/gtest.h>

namespace ullage::ui {
namespace {

using namespace std::chrono_literals;
using std::chrono::sys_days;
using std::chrono::year;

cellar::Instant utc(int y, unsigned m, unsigned d, int h, int min) {
  return sys_days(year(y) / static_cast<int>(m) / static_cast<int>(d)) + std::chrono::hours(h) +
         std::chrono::minutes(min);
}

// London in 2026. Clocks go forward 29 March at 01:00 UTC and back 25 October
// at 01:00 UTC (last Sundays, by EU and UK rule; certainty: verified).
class London2026 final : public cellar::LocalCalendar {
 public:
  [[nodiscard]] std::string zone_name() const override { return "Europe/London"; }
  [[nodiscard]] cellar::UtcOffset offset_at(cellar::Instant t) const override {
    return t >= utc(2026, 3, 29, 1, 0) && t < utc(2026, 10, 25, 1, 0) ? 60min : 0min;
  }
  [[nodiscard]] std::optional<cellar::Instant> to_instant(cellar::LocalTime t) const override {
    for (const auto offset : {60min, 0min}) {
      const cellar::Instant guess(t.time_since_epoch() - offset);
      if (offset_at(guess) == offset) return guess;
    }
    return std::nullopt;
  }
};

const London2026 london;
const cellar::Instant now = utc(2026, 11, 25, 14, 30);  // a Wednesday

struct Row {
  const char* typed;
  cellar::Instant means;
};

class WhenReads : public ::testing::TestWithParam<Row> {};
TEST_P(WhenReads, AsPeopleMeanIt) {
  const auto read = read_when(GetParam().typed, london, now);
  ASSERT_TRUE(read) << GetParam().typed << ": " << sentence(read.error());
  EXPECT_EQ(*read, GetParam().means) << GetParam().typed << " read as " << say_when(*read, london);
}
INSTANTIATE_TEST_SUITE_P(
    Rows, WhenReads,
    ::testing::Values(
        Row{"now", now}, Row{" NOW ", now}, Row{"-2h", now - 2h}, Row{"- 2 h", now - 2h},
        Row{"\u22122h", now - 2h}, Row{"2 h ago", now - 2h}, Row{"90 min ago", now - 90min},
        Row{"1 h 30 min ago", now - 90min}, Row{"3 days ago", now - 72h},
        Row{"1 week ago", now - 168h}, Row{"today", now},
        Row{"today 7:30", utc(2026, 11, 25, 7, 30)}, Row{"9am", utc(2026, 11, 25, 9, 0)},
        Row{"12 am", utc(2026, 11, 25, 0, 0)}, Row{"12pm", utc(2026, 11, 25, 12, 0)},
        Row{"22:00", utc(2026, 11, 24, 22, 0)},  // not yet today
        Row{"14:30", now}, Row{"yesterday", utc(2026, 11, 24, 12, 0)},
        Row{"yesterday 22:00", utc(2026, 11, 24, 22, 0)},
        Row{"22:00 yesterday", utc(2026, 11, 24, 22, 0)},
        Row{"yesterday at 10pm", utc(2026, 11, 24, 22, 0)},
        Row{"yesterday evening", utc(2026, 11, 24, 20, 0)},
        Row{"last night", utc(2026, 11, 24, 22, 0)}, Row{"this morning", utc(2026, 11, 25, 8, 0)},
        Row{"Tue 19:20", utc(2026, 11, 24, 19, 20)},
        Row{"tuesday 19:20", utc(2026, 11, 24, 19, 20)}, Row{"Wed 10:00", utc(2026, 11, 25, 10, 0)},
        Row{"Wed 19:20", utc(2026, 11, 18, 19, 20)},
        Row{"last Fri 19:20", utc(2026, 11, 20, 19, 20)}, Row{"Thu", utc(2026, 11, 19, 12, 0)},
        Row{"24 Nov 18:00", utc(2026, 11, 24, 18, 0)},
        Row{"Nov 24, 18:00", utc(2026, 11, 24, 18, 0)},
        Row{"24th November 18:00", utc(2026, 11, 24, 18, 0)},
        Row{"24 Dec 18:00", utc(2025, 12, 24, 18, 0)},
        Row{"24 Nov 2025 18:00", utc(2025, 11, 24, 18, 0)},
        Row{"29 Feb 12:00", utc(2024, 2, 29, 12, 0)},
        Row{"2026-11-24 19:20", utc(2026, 11, 24, 19, 20)},
        Row{"2026-11-24T19:20", utc(2026, 11, 24, 19, 20)},
        Row{"2026-11-24T19:20:30Z", utc(2026, 11, 24, 19, 20) + 30s},
        // Summer time: 12:00 on the wall is 11:00 UTC.
        Row{"1 Jul 12:00", utc(2026, 7, 1, 11, 0)},
        // The repeated hour: the first of the two.
        Row{"25 Oct 01:30", utc(2026, 10, 25, 0, 30)}));

struct BadRow {
  const char* typed;
  WhenFault fault;
};
class WhenRefuses : public ::testing::TestWithParam<BadRow> {};
TEST_P(WhenRefuses, WithItsReason) {
  const auto read = read_when(GetParam().typed, london, now);
  ASSERT_FALSE(read) << say_when(*read, london);
  EXPECT_EQ(read.error().fault, GetParam().fault) << sentence(read.error());
  EXPECT_FALSE(sentence(read.error()).empty());
}
INSTANTIATE_TEST_SUITE_P(
    Rows, WhenRefuses,
    ::testing::Values(
        BadRow{"", WhenFault::empty}, BadRow{"  ", WhenFault::empty},
        BadRow{"soon", WhenFault::not_understood}, BadRow{"22", WhenFault::not_understood},
        BadRow{"25:00", WhenFault::not_understood}, BadRow{"22:61", WhenFault::not_understood},
        BadRow{"13pm", WhenFault::not_understood},
        BadRow{"yesterday 22:00 or so", WhenFault::not_understood},
        BadRow{"2 h", WhenFault::not_understood}, BadRow{"31 Nov", WhenFault::no_such_day},
        BadRow{"2026-13-01", WhenFault::no_such_day}, BadRow{"29 Feb 2026", WhenFault::no_such_day},
        BadRow{"3/4 12:00", WhenFault::ambiguous_day},
        BadRow{"24.11. 12:00", WhenFault::ambiguous_day},
        BadRow{"today 23:00", WhenFault::in_future}, BadRow{"tomorrow 9:00", WhenFault::in_future},
        BadRow{"26 Nov 2026 9:00", WhenFault::in_future},
        BadRow{"29 Mar 01:30", WhenFault::skipped_hour}));

TEST(When, TheSkippedHourNamesTheHourAfter) {
  const auto read = read_when("29 Mar 2026 01:30", london, now);
  ASSERT_FALSE(read);
  EXPECT_NE(sentence(read.error()).find("02:00"), std::string::npos) << sentence(read.error());
  EXPECT_TRUE(read_when("29 Mar 2026 02:00", london, now));
  EXPECT_TRUE(read_when("29 Mar 2026 00:59", london, now));
}

TEST(When, WhatIsWrittenReadsBackToTheMinute) {
  for (cellar::Instant t = utc(2026, 1, 1, 0, 0); t < now; t += 131h + 17min) {
    const std::string text = write_when(t, london);
    const auto read = read_when(text, london, now);
    ASSERT_TRUE(read) << text;
    EXPECT_EQ(*read, t) << text;
  }
}

TEST(DateText, NearestWhenTheYearIsLeftOut) {
  const cellar::Date today = london.date_of(now);
  const auto day = [](int y, int m, int d) {
    return cellar::Date(std::chrono::local_days(year(y) / m / d));
  };
  EXPECT_EQ(read_date("24 Feb", today), day(2027, 2, 24));
  EXPECT_EQ(read_date("24 Nov", today), day(2026, 11, 24));
  EXPECT_EQ(read_date("24 Nov 2027", today), day(2027, 11, 24));
  EXPECT_EQ(read_date("2027-02-24", today), day(2027, 2, 24));
  EXPECT_EQ(read_date("in 10 days", today), day(2026, 12, 5));
  EXPECT_EQ(read_date("Fri", today), day(2026, 11, 27));
  EXPECT_EQ(read_date("tomorrow", today), day(2026, 11, 26));
  EXPECT_FALSE(read_date("24/02", today));
  EXPECT_FALSE(read_date("31 Feb", today));
}

}  // namespace
}  // namespace ullage::ui
