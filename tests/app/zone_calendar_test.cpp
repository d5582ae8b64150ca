// SPDX-License-Identifier: GPL-3.0-or-later
//
// Dates of clock changes are those of the law: European Union Directive 2000/84/EC
// (last Sundays of March and October at 01:00 UTC) and the US Energy Policy Act of
// 2005 (second Sunday of March, first of November, 02:00 local). Verified against
// a calendar: 29 March and 25 October 2026, 8 March and 1 November 2026 are Sundays.
#include "app/zone_calendar.h"

#include <gtest/gtest.h>

#include "core/units/present.h"

namespace ullage::app {
namespace {

using cellar::Instant;
using cellar::LocalTime;
using std::chrono::hours;
using std::chrono::minutes;
using std::chrono::year;

Instant utc(int y, unsigned m, unsigned d, int h, int min = 0) {
  return Instant(std::chrono::sys_days(year(y) / static_cast<int>(m) / static_cast<int>(d))) +
         hours(h) + minutes(min);
}
LocalTime wall(int y, unsigned m, unsigned d, int h, int min = 0) {
  return LocalTime(std::chrono::local_days(year(y) / static_cast<int>(m) / static_cast<int>(d))) +
         hours(h) + minutes(min);
}

TEST(ZoneCalendar, knows_winter_and_summer) {
  const ZoneCalendar london("Europe/London");
  EXPECT_EQ(london.offset_at(utc(2026, 1, 15, 12)), minutes(0));
  EXPECT_EQ(london.offset_at(utc(2026, 7, 15, 12)), minutes(60));
  EXPECT_EQ(london.offset_at(utc(2026, 3, 29, 0, 59)), minutes(0));
  EXPECT_EQ(london.offset_at(utc(2026, 3, 29, 1)), minutes(60));
  const ZoneCalendar denver("America/Denver");
  EXPECT_EQ(denver.offset_at(utc(2026, 1, 15, 12)), minutes(-7 * 60));
  EXPECT_EQ(denver.offset_at(utc(2026, 7, 15, 12)), minutes(-6 * 60));
  const ZoneCalendar kathmandu("Asia/Kathmandu");
  EXPECT_EQ(kathmandu.offset_at(utc(2026, 7, 15, 12)), minutes(5 * 60 + 45));
}

// Qt tells changes of the clock up to 2037: enough for a keg.
TEST(ZoneCalendar, knows_the_changes_of_the_next_ten_years) {
  const ZoneCalendar london("Europe/London");
  for (int y = 2026; y <= 2036; ++y) {
    EXPECT_EQ(london.offset_at(utc(y, 7, 15, 12)), minutes(60)) << y;
    EXPECT_EQ(london.offset_at(utc(y, 1, 15, 12)), minutes(0)) << y;
  }
}

TEST(ZoneCalendar, the_hour_that_spring_skips_is_no_time) {
  const ZoneCalendar london("Europe/London");
  EXPECT_EQ(london.to_instant(wall(2026, 3, 29, 0, 30)), utc(2026, 3, 29, 0, 30));
  EXPECT_EQ(london.to_instant(wall(2026, 3, 29, 1, 30)), std::nullopt);
  EXPECT_EQ(london.to_instant(wall(2026, 3, 29, 2, 30)), utc(2026, 3, 29, 1, 30));
  const ZoneCalendar denver("America/Denver");
  EXPECT_EQ(denver.to_instant(wall(2026, 3, 8, 2, 30)), std::nullopt);
}

TEST(ZoneCalendar, the_hour_that_autumn_repeats_is_the_first_of_the_two) {
  const ZoneCalendar london("Europe/London");
  EXPECT_EQ(london.to_instant(wall(2026, 10, 25, 1, 30)), utc(2026, 10, 25, 0, 30));
  const ZoneCalendar denver("America/Denver");
  EXPECT_EQ(denver.to_instant(wall(2026, 11, 1, 1, 30)), utc(2026, 11, 1, 7, 30));
}

TEST(ZoneCalendar, every_instant_comes_back_except_in_the_repeated_hour) {
  for (const char* zone : {"Europe/London", "America/Denver", "Australia/Lord_Howe", "UTC"}) {
    const ZoneCalendar calendar(zone);
    for (Instant t = utc(2026, 1, 1, 0); t < utc(2027, 1, 1, 0); t += minutes(30)) {
      const auto back = calendar.to_instant(calendar.to_local(t));
      ASSERT_TRUE(back) << zone;
      if (present(back) != t) {
        EXPECT_LT(present(back), t);
        EXPECT_LE(t - present(back), hours(1));
        EXPECT_EQ(calendar.to_local(present(back)), calendar.to_local(t));
      }
    }
  }
}

TEST(ZoneCalendar, a_day_belongs_to_the_cellars_calendar) {
  const ZoneCalendar denver("America/Denver");
  EXPECT_EQ(denver.date_of(utc(2026, 1, 2, 3)),
            cellar::Date(std::chrono::local_days(year(2026) / 1 / 1)));
}

TEST(ZoneCalendar, takes_an_unknown_zone_as_utc_and_says_so) {
  const ZoneCalendar nowhere("Mars/Base");
  EXPECT_FALSE(nowhere.known());
  EXPECT_EQ(nowhere.offset_at(utc(2026, 7, 1, 0)), minutes(0));
  EXPECT_FALSE(is_known_zone("Mars/Base"));
  EXPECT_FALSE(is_known_zone(""));
  EXPECT_TRUE(is_known_zone("Europe/Berlin"));
  EXPECT_TRUE(is_known_zone(system_zone()));
}

}  // namespace
}  // namespace ullage::app
