// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/cellar/logger_file.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>
#include <rapidcheck/gtest.h>

#include <cmath>
#include <random>

#include "core/units/present.h"
#include "tests/cellar/scenario.h"

namespace ullage::testing {
namespace {

using namespace std::chrono_literals;

LocalTime local(int month, int d, int hour, int minute = 0) {
  using namespace std::chrono;
  return local_days(year(2026) / month / d) + hours(hour) + minutes(minute);
}

double first_celsius(const LoggerFile& f) {
  return units::in_celsius(f.readings.at(0).temperature);
}

TEST(LoggerFile, PlainCommasAndPoints) {
  const auto f = read_logger_file(
      "Time,Temperature (°C),Humidity (%)\n2026-11-02 10:00:00,4.5,81.2\n"
      "2026-11-02 10:15:00,4.7,80.9\n");
  ASSERT_TRUE(f);
  EXPECT_EQ(f->layout.delimiter, ',');
  EXPECT_FALSE(f->layout.decimal_comma);
  EXPECT_EQ(f->layout.temperature_column, 1u);
  EXPECT_TRUE(f->layout.degrees_stated);
  ASSERT_EQ(f->readings.size(), 2u);
  EXPECT_EQ(f->readings[0].local, local(11, 2, 10));
  EXPECT_NEAR(first_celsius(*f), 4.5, 1e-9);
  EXPECT_EQ(f->bad_lines, 0u);
  EXPECT_EQ(f->columns[2], "Humidity (%)");
}

TEST(LoggerFile, SemicolonsDecimalCommaDayFirst) {
  const auto f = read_logger_file(
      "\xEF\xBB\xBFNr;Datum;Uhrzeit;Temp. "
      "[°C]\r\n1;02.11.2026;10:00;4,5\r\n2;02.11.2026;10:15;-0,7\r\n");
  ASSERT_TRUE(f);
  EXPECT_EQ(f->layout.delimiter, ';');
  EXPECT_TRUE(f->layout.decimal_comma);
  EXPECT_EQ(f->layout.time_column, 1u);
  EXPECT_EQ(f->layout.clock_column, 2u);
  EXPECT_EQ(f->layout.temperature_column, 3u);
  EXPECT_EQ(f->layout.order, DateOrder::day_month_year);
  ASSERT_EQ(f->readings.size(), 2u);
  EXPECT_EQ(f->readings[1].local, local(11, 2, 10, 15));
  EXPECT_NEAR(units::in_celsius(f->readings[1].temperature), -0.7, 1e-9);
}

TEST(LoggerFile, DecimalCommaWithinQuotesWhereCommasDivide) {
  const auto f = read_logger_file(
      "\"Time\",\"Temp. [°C]\"\n\"2026-11-02 10:00\",\"4,5\"\n\"2026-11-02 10:15\",\"7\"\n");
  ASSERT_TRUE(f);
  EXPECT_EQ(f->layout.delimiter, ',');
  EXPECT_TRUE(f->layout.decimal_comma);
  ASSERT_EQ(f->readings.size(), 2u);
  EXPECT_NEAR(first_celsius(*f), 4.5, 1e-9);
  // Points within quotes are points.
  const auto points = read_logger_file("\"2026-11-02 10:00\",\"4.5\"\n");
  ASSERT_TRUE(points);
  EXPECT_FALSE(points->layout.decimal_comma);
}

TEST(LoggerFile, MonthsInWords) {
  for (const char* written : {"2 Nov 2026 10:15", "02-Nov-2026 10:15", "2. November 2026 10:15",
                              "Nov 2 2026 10:15", "02/NOV/26 10:15:00"}) {
    const auto f = read_logger_file(std::string("t;temp\n") + written + ";4.5\n");
    ASSERT_TRUE(f) << written;
    ASSERT_EQ(f->readings.size(), 1u) << written;
    EXPECT_EQ(f->readings[0].local, local(11, 2, 10, 15)) << written;
    EXPECT_TRUE(f->layout.order_certain) << written;
  }
  const auto german = read_logger_file("t;temp\n3. März 2026 08:00;4,5\n1 Okt 2026;4,5\n");
  ASSERT_TRUE(german);
  ASSERT_EQ(german->readings.size(), 2u);
  EXPECT_EQ(german->readings[0].local, local(3, 3, 8));
  EXPECT_EQ(german->readings[1].local, local(10, 1, 0));
  EXPECT_EQ(read_logger_file("2 Nov;4.5\n3 Nov;4.6\n").error(), LoggerFault::no_columns);
}

// 1793613600 s since 1970 are 2026-11-02 10:00 in UTC (date -u -d @1793613600).
TEST(LoggerFile, SecondsSince1970) {
  const auto f = read_logger_file("ts,temp\n1793613600,4.5\n1793614500,4.7\n");
  ASSERT_TRUE(f);
  EXPECT_TRUE(f->layout.counted_seconds);
  ASSERT_EQ(f->readings.size(), 2u);
  EXPECT_EQ(f->readings[0].local, local(11, 2, 10));
  EXPECT_EQ(f->readings[0].offset, UtcOffset(0));
  EXPECT_EQ(f->readings[1].local, local(11, 2, 10, 15));
  const auto thousandths = read_logger_file("ts,temp\n1793613600000,4.5\n1793614500000,4.7\n");
  ASSERT_TRUE(thousandths);
  EXPECT_EQ(thousandths->readings.at(1).local, local(11, 2, 10, 15));
  // Beside a real date such a number is a serial one.
  const auto serial = read_logger_file("id,t,temp\n1793613600,2026-11-03 09:00,4.5\n");
  ASSERT_TRUE(serial);
  EXPECT_FALSE(serial->layout.counted_seconds);
  EXPECT_EQ(serial->readings.at(0).local, local(11, 3, 9));
}

TEST(LoggerFile, TheHoursColumnCanBeTold) {
  const std::string text =
      "Date;Start;End;Temp\n2026-11-02;10:00;10:05;4.5\n2026-11-02;10:15;10:20;4.7\n";
  EXPECT_EQ(read_logger_file(text)->layout.clock_column, 1u);
  LoggerChoices choices;
  choices.clock.emplace().column = 2;
  const auto end = read_logger_file(text, choices);
  ASSERT_TRUE(end);
  EXPECT_EQ(end->layout.clock_column, 2u);
  EXPECT_EQ(end->readings.at(0).local, local(11, 2, 10, 5));
  choices.clock->column.reset();  // with the date: there is none, so midnight
  EXPECT_EQ(read_logger_file(text, choices)->readings.at(0).local, local(11, 2, 0));
  choices.clock->column = 9;
  EXPECT_EQ(read_logger_file(text, choices).error(), LoggerFault::no_such_column);
}

TEST(LoggerFile, ColumnsToChooseFromWhereNothingWasFound) {
  const auto columns = logger_columns("a;b,c;d\n1;2;3\n");
  ASSERT_TRUE(columns);
  EXPECT_EQ(present(columns).delimiter, ';');
  EXPECT_THAT(present(columns).names, ::testing::ElementsAre("a", "b,c", "d"));
  EXPECT_THAT(present(logger_columns("a;b,c;d\n", ',')).names,
              ::testing::ElementsAre("a;b", "c;d"));
  EXPECT_THAT(present(logger_columns("x;;z\n")).names,
              ::testing::ElementsAre("x", "column 2", "z"));
  EXPECT_FALSE(logger_columns(""));
  EXPECT_FALSE(logger_columns(std::string_view("PK\x03\x04\0\0", 6)));
}

TEST(LoggerFile, MonthFirstFahrenheitAndHalfDays) {
  const auto f = read_logger_file(
      "Cellar probe 3\nExported by keeper\n\n\"#\"\t\"Date Time\"\t\"Temp, °F\"\n"
      "1\t11/02/26 12:05:00 AM\t39.2\n2\t11/13/26 01:05:00 PM\t41.0\n");
  ASSERT_TRUE(f);
  EXPECT_EQ(f->layout.delimiter, '\t');
  EXPECT_EQ(f->layout.degrees, DegreesOf::fahrenheit);
  EXPECT_EQ(f->layout.order, DateOrder::month_day_year);
  EXPECT_TRUE(f->layout.order_certain);
  EXPECT_EQ(f->layout.heading_line, 4u);
  ASSERT_EQ(f->readings.size(), 2u);
  EXPECT_EQ(f->readings[0].local, local(11, 2, 0, 5));
  EXPECT_EQ(f->readings[1].local, local(11, 13, 13, 5));
  EXPECT_NEAR(first_celsius(*f), 4.0, 1e-9);
}

TEST(LoggerFile, DayOrMonthFirstCanBeUncertain) {
  const std::string text = "time;t\n03/04/2026 10:00;4.5\n04/04/2026 10:00;4.6\n";
  const auto guessed = read_logger_file(text);
  ASSERT_TRUE(guessed);
  EXPECT_FALSE(guessed->layout.order_certain);
  EXPECT_EQ(guessed->readings[0].local, local(4, 3, 10));
  LoggerChoices us;
  us.order = DateOrder::month_day_year;
  const auto told = read_logger_file(text, us);
  ASSERT_TRUE(told);
  EXPECT_TRUE(told->layout.order_certain);
  EXPECT_EQ(told->readings[0].local, local(3, 4, 10));
}

TEST(LoggerFile, ZonesAndFahrenheitByItsValues) {
  const auto f = read_logger_file("2026-11-02T10:00:00Z,38.1\n2026-11-02T11:00:00+01:00,38.3\n");
  ASSERT_TRUE(f);
  EXPECT_EQ(f->layout.degrees, DegreesOf::fahrenheit);
  EXPECT_FALSE(f->layout.degrees_stated);
  EXPECT_EQ(f->columns[1], "column 2");
  const LondonCalendar london;
  const auto times = on_calendar(f->readings, london);
  ASSERT_EQ(times.size(), 1u);  // both are the same moment
}

TEST(LoggerFile, UnitBesideTheNumberAndLatin1) {
  const auto f = read_logger_file(
      "Zeit;Wert\n2026-11-02 10:00;4,5 \xB0"
      "C\n2026-11-02 11:00;4,6 \xB0"
      "C\n");
  ASSERT_TRUE(f);
  EXPECT_TRUE(f->layout.degrees_stated);
  EXPECT_NEAR(first_celsius(*f), 4.5, 1e-9);
}

TEST(LoggerFile, Utf16) {
  const std::string plain = "time,temp\n2026-11-02 10:00,4.5\n2026-11-02 11:00,4.6\n";
  std::string wide = "\xFF\xFE";
  for (const char c : plain) {
    wide += c;
    wide += '\0';
  }
  const auto f = read_logger_file(wide);
  ASSERT_TRUE(f);
  EXPECT_EQ(f->readings.size(), 2u);
}

TEST(LoggerFile, BadLinesByTheirNumber) {
  const auto f = read_logger_file(
      "time,temp\n2026-11-02 10:00,4.5\n2026-11-02 10:15,--\n2026-13-02 10:30,4.5\n"
      "2026-11-02 10:45\n2026-11-02 11:00,451\n\nend of file\n2026-11-02 11:15,4.4\n");
  ASSERT_TRUE(f);
  EXPECT_EQ(f->readings.size(), 2u);
  EXPECT_EQ(f->bad_lines, 5u);
  ASSERT_EQ(f->bad.size(), 5u);
  EXPECT_EQ(f->bad[0].line, 3u);
  EXPECT_EQ(f->bad[0].reason, BadLineReason::no_temperature);
  EXPECT_EQ(f->bad[1].line, 4u);
  EXPECT_EQ(f->bad[1].reason, BadLineReason::no_time);
  EXPECT_EQ(f->bad[2].reason, BadLineReason::too_few_columns);
  EXPECT_EQ(f->bad[3].reason, BadLineReason::impossible_temperature);
  EXPECT_EQ(f->bad[4].line, 8u);
  EXPECT_EQ(f->bad[4].text, "end of file");
}

TEST(LoggerFile, RefusedWithAReason) {
  EXPECT_EQ(read_logger_file("").error(), LoggerFault::empty);
  EXPECT_EQ(read_logger_file("\n\n  \n").error(), LoggerFault::empty);
  EXPECT_EQ(read_logger_file(std::string("PK\x03\x04\0\0", 6)).error(), LoggerFault::not_text);
  EXPECT_EQ(read_logger_file("a letter to a friend\nabout beer\n").error(),
            LoggerFault::no_columns);
  EXPECT_EQ(read_logger_file("2026-11-02 10:00,cold\n2026-11-02 11:00,warm\n").error(),
            LoggerFault::no_temperature_column);
  EXPECT_EQ(read_logger_file(std::string(logger_file_limit + 1, 'x')).error(),
            LoggerFault::too_large);
  LoggerChoices choices;
  choices.temperature_column = 9;
  EXPECT_EQ(read_logger_file("2026-11-02 10:00,4.5\n", choices).error(),
            LoggerFault::no_such_column);
}

// Whatever a file holds: it is read or refused, never more than promised is kept,
// and what is shown of it is clean text.
void expect_sane(const std::string& bytes) {
  const auto f = read_logger_file(bytes);
  if (!f) return;
  EXPECT_LE(f->bad.size(), bad_lines_listed);
  EXPECT_LE(f->bad.size(), f->bad_lines);
  for (const LoggerReading& r : f->readings) {
    const double c = units::in_celsius(r.temperature);
    EXPECT_TRUE(c >= -61 && c <= 121) << c;
    EXPECT_LE(r.line, f->lines);
  }
  for (const BadLine& b : f->bad) {
    EXPECT_LE(b.text.size(), 70u);
    for (const char c : b.text) EXPECT_GE(static_cast<unsigned char>(c), 0x20) << b.line;
  }
}

TEST(LoggerFileHostile, HugeAndStrange) {
  expect_sane(std::string(1 << 20, ','));
  expect_sane(std::string(1 << 20, '\n'));
  expect_sane(std::string(1 << 20, '"'));
  expect_sane("2026-11-02 10:00," + std::string(1 << 20, '9') + "\n2026-11-02 10:00,4\n");
  expect_sane("2026-11-02 10:00,1e999\n2026-11-02 10:01,nan\n2026-11-02 10:02,inf\n");
  expect_sane("99999999-11-02 10:00,4\n0000-00-00 99:99,4\n2026-02-30 10:00,4\n");
  expect_sane("\xFF\xFE\xD8");
  expect_sane("time,temp\n2026-11-02 10:00,\xC3\x28 4\n\xF0\x9F,1\n\xED\xA0\x80,2026-11-02\n");
  std::string many;
  for (int i = 0; i < 100000; ++i) many += "2026-11-02 10:00,4.5\n";
  const auto f = read_logger_file(many);
  ASSERT_TRUE(f);
  EXPECT_EQ(f->readings.size(), 100000u);
  const std::string long_line =
      "2026-11-02 10:00,4.5\n2026-11-02 11:00,4.5" + std::string(2 * logger_line_limit, ' ') + "\n";
  const auto g = read_logger_file(long_line);
  ASSERT_TRUE(g);
  EXPECT_EQ(g->bad.at(0).reason, BadLineReason::too_long);
}

RC_GTEST_PROP(LoggerFileHostile, AnyBytes, ()) {
  expect_sane(*rc::gen::container<std::string>(rc::gen::arbitrary<char>()));
}

// Damage to a good file: bytes put in, taken out, turned over.
TEST(LoggerFileHostile, DamagedFiles) {
  const std::string good =
      "Nr;Datum;Uhrzeit;Temp. [°C]\r\n1;02.11.2026;10:00;4,5\r\n2;02.11.2026;10:15;-0,7\r\n"
      "\"3\";\"03.11.2026\";\"10:15\";\"4,5 °C\"\r\n";
  std::mt19937 random(11);
  for (int round = 0; round < 3000; ++round) {
    std::string bad = good;
    for (int hits = 0; hits < 1 + round % 6; ++hits) {
      const std::size_t at = random() % bad.size();
      switch (random() % 3) {
        case 0:
          bad[at] = static_cast<char>(random());
          break;
        case 1:
          bad.insert(at, 1, static_cast<char>(random()));
          break;
        default:
          bad.erase(at, 1 + random() % 4);
      }
      if (bad.empty()) bad = good;
    }
    expect_sane(bad);
  }
}

std::vector<TimedTemperature> wavy(int count, double noise, unsigned seed) {
  std::mt19937 random(seed);
  std::uniform_real_distribution<double> any(-noise, noise);
  std::vector<TimedTemperature> out;
  out.reserve(static_cast<std::size_t>(count));
  for (int i = 0; i < count; ++i) {
    out.push_back({day(0) + std::chrono::minutes(10 * i),
                   units::celsius(4 + std::sin(i / 40.0) + any(random))});
  }
  return out;
}

// The promise of the header: the line through what is kept is within the step of
// every reading, and no gap is longer than a day.
TEST(LoggerThinned, LineStaysWithinTheStep) {
  for (unsigned seed = 1; seed < 20; ++seed) {
    const auto all = wavy(2000, 0.2, seed);
    const Thinned t = thinned(all, units::kelvin_difference(0.3), 5000);
    EXPECT_LT(t.kept.size(), all.size());
    EXPECT_EQ(t.kept.front().at, all.front().at);
    EXPECT_EQ(t.kept.back().at, all.back().at);
    std::size_t k = 0;
    for (const TimedTemperature& r : all) {
      while (t.kept[k + 1].at < r.at) ++k;
      const TimedTemperature &a = t.kept[k], &b = t.kept[k + 1];
      EXPECT_LE(b.at - a.at, std::chrono::days(1) + 10min);
      const double w =
          units::in_seconds(between(a.at, r.at)) / units::in_seconds(between(a.at, b.at));
      const double line =
          (1 - w) * units::in_celsius(a.temperature) + w * units::in_celsius(b.temperature);
      EXPECT_NEAR(line, units::in_celsius(r.temperature), 0.3 + 1e-6);
    }
  }
}

TEST(LoggerThinned, NeverMoreThanAsked) {
  const auto all = wavy(5000, 3, 5);
  const Thinned t = thinned(all, units::kelvin_difference(0.3), 300);
  EXPECT_LE(t.kept.size(), 300u);
  EXPECT_GT(t.step, units::kelvin_difference(0.3));
  EXPECT_TRUE(thinned({}).kept.empty());
  EXPECT_EQ(thinned(wavy(1, 0, 1)).kept.size(), 1u);
}

TEST(LoggerTimes, HourThatSpringSkipsIsCounted) {
  const LondonCalendar london;
  std::vector<LoggerReading> r(3);
  r[0].local = local(3, 29, 0, 30);
  r[1].local = local(3, 29, 1, 30);
  r[2].local = local(3, 29, 2, 30);
  std::size_t skipped = 0;
  EXPECT_EQ(on_calendar(r, london, &skipped).size(), 2u);
  EXPECT_EQ(skipped, 1u);
}

}  // namespace
}  // namespace ullage::testing
