// SPDX-License-Identifier: GPL-3.0-or-later
//
// The program itself, as a shell starts it on a machine without a display.
#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include <QFile>
#include <QProcess>
#include <QTemporaryDir>
#include <nlohmann/json.hpp>

#include "app/demo_cellar.h"
#include "app/exit_codes.h"
#include "app/session.h"
#include "app/surroundings.h"

namespace ullage {
namespace {

using ::testing::HasSubstr;

struct Ended {
  int code;
  std::string out, err;
};

Ended run(const QString& program, const QStringList& words) {
  QProcess process;
  QProcessEnvironment plain = QProcessEnvironment::systemEnvironment();
  for (const char* name : {"DISPLAY", "WAYLAND_DISPLAY", "QT_QPA_PLATFORM"}) plain.remove(name);
  process.setProcessEnvironment(plain);
  process.start(program, words);
  if (!process.waitForFinished(60'000)) return {-1, {}, "did not end"};
  return {process.exitCode(), process.readAllStandardOutput().toStdString(),
          process.readAllStandardError().toStdString()};
}

TEST(Program, without_a_display_says_so_and_names_the_commands_that_need_none) {
  const Ended ended = run(ULLAGE_PROGRAM, {"--demo"});
  EXPECT_EQ(ended.code, app::exit_no_display);
  EXPECT_THAT(ended.err, HasSubstr("no display"));
  EXPECT_THAT(ended.err, HasSubstr("sheet"));
  EXPECT_THAT(ended.err, HasSubstr("export"));
}

TEST(Program, prints_the_sheet_without_a_display_in_its_own_typeface) {
  const QTemporaryDir folder;
  const QString file = folder.filePath("demo.cellar");
  const QString pdf = folder.filePath("sheet.pdf");
  const app::SystemClock clock;
  app::RandomIds ids;
  ASSERT_TRUE(app::make_demo(file.toStdString(), {clock, ids}));
  const Ended ended = run(ULLAGE_PROGRAM, {"sheet", file, "--pdf", pdf});
  EXPECT_EQ(ended.code, app::exit_ok) << ended.err;
  EXPECT_THAT(run("pdffonts", {pdf}).out, HasSubstr("Inter"));
  EXPECT_THAT(run("pdftotext", {"-layout", pdf, "-"}).out, HasSubstr("K01"));
}

// Scripts are written against these numbers.
static_assert(app::exit_ok == 0 && app::exit_refused == 1 && app::exit_usage == 2 &&
              app::exit_no_display == 3 && app::exit_file_problem == 4);

// The demo cellar, in which work is overdue, and an empty one, made once.
class ExitCodes : public ::testing::Test {
 protected:
  static void SetUpTestSuite() {
    folder_ = new QTemporaryDir;
    const app::SystemClock clock;
    app::RandomIds ids;
    ASSERT_TRUE(app::make_demo(demo().toStdString(), {clock, ids}));
    ASSERT_TRUE(app::CellarSession::create(fresh().toStdString(), {.name = "Shed"}, {clock, ids}));
  }
  static void TearDownTestSuite() {
    delete folder_;
    folder_ = nullptr;
  }
  static QString in_folder(const char* name) { return folder_->filePath(QLatin1String(name)); }
  static QString demo() { return in_folder("demo.cellar"); }
  static QString fresh() { return in_folder("fresh.cellar"); }
  static QString absent() { return in_folder("absent.cellar"); }
  static QString no_folder() { return in_folder("no/such/file"); }

  // What was asked for goes to the one stream, what went wrong to the other.
  static std::string expect_code(int code, const QStringList& words) {
    const Ended ended = run(ULLAGE_PROGRAM, words);
    EXPECT_EQ(ended.code, code) << words.join(' ').toStdString() << "\n" << ended.err;
    const bool failed = code == 2 || code == 4;
    EXPECT_EQ(ended.out.empty(), failed) << words.join(' ').toStdString() << "\n" << ended.out;
    EXPECT_EQ(!ended.err.empty(), failed) << words.join(' ').toStdString() << "\n" << ended.err;
    return ended.out;
  }
  // Refused: the text says what, and nothing was told or written.
  static void expect_refused(const QStringList& words, const char* says) {
    const Ended ended = run(ULLAGE_PROGRAM, words);
    EXPECT_EQ(ended.code, 1) << words.join(' ').toStdString();
    EXPECT_THAT(ended.err, HasSubstr(says));
    EXPECT_EQ(ended.out, "");
  }
  static void expect_json(const std::string& text) {
    EXPECT_FALSE(nlohmann::json::parse(text, nullptr, false).is_discarded()) << text;
  }

 private:
  static inline QTemporaryDir* folder_ = nullptr;
};

TEST_F(ExitCodes, due_tells_by_it_whether_something_is_overdue) {
  expect_code(0, {"due", fresh()});
  expect_code(1, {"due", demo()});
  expect_json(expect_code(1, {"due", demo(), "--json"}));
  expect_code(2, {"due"});
  expect_code(2, {"due", demo(), "--within", "soon"});
  expect_code(2, {"due", demo(), "--json", "--csv"});
  expect_code(4, {"due", absent()});
}

TEST_F(ExitCodes, tags_refuse_what_there_is_not) {
  const QString pdf = in_folder("tags.pdf");
  expect_json(expect_code(0, {"tags", demo(), "--json"}));
  expect_json(expect_code(0, {"tags", fresh(), "--json"}));
  expect_refused({"tags", demo(), "--pdf", pdf, "--keg", "NONE"}, "No keg is called NONE");
  expect_refused({"tags", fresh(), "--pdf", pdf}, "nothing to print");
  EXPECT_FALSE(QFile::exists(pdf));
  expect_code(0, {"tags", demo(), "--pdf", pdf, "--keg", "K01"});
  EXPECT_TRUE(QFile::exists(pdf));
  const QStringList vent = {"tags", demo(), "--json", "--warnings", "--kind", "vent-first"};
  EXPECT_THAT(expect_code(0, vent + QStringList{"--keg", "K01"}), HasSubstr("UNDER PRESSURE"));
  expect_refused(vent + QStringList{"--line", "None"}, "No line is called None");
  expect_code(2, {"tags", demo()});
  expect_code(2, {"tags", demo(), "--json", "--warnings", "--kind", "beer"});
  expect_code(2, {"tags", demo(), "--json", "--kind", "gas"});
  expect_code(4, {"tags", absent(), "--json"});
  expect_code(4, {"tags", demo(), "--pdf", no_folder()});
}

TEST_F(ExitCodes, log_refuses_what_there_is_not) {
  expect_code(0, {"log", "kegs", demo()});
  expect_json(expect_code(0, {"log", "cleaning", demo(), "--json"}));
  EXPECT_THAT(expect_code(0, {"log", "all", fresh(), "--csv"}), HasSubstr("\r\n"));
  expect_code(0, {"log", "due", demo()});  // whatever is due: `due` tells by its code
  for (const char* list : {"bottles", "regulators", "places", "instruments", "hose", "beers"}) {
    const std::string csv = expect_code(0, {"log", list, demo(), "--csv"});
    EXPECT_GT(std::count(csv.begin(), csv.end(), '\n'), 1) << list << ": " << csv;
  }
  expect_code(0, {"log", "temperature", demo(), "--pdf", in_folder("log.pdf")});
  expect_refused({"log", "recall", demo(), "--batch", "None"}, "No batch is called None");
  expect_code(2, {"log", "beer", demo()});
  expect_code(2, {"log", "gas", demo(), "--from", "yesterday"});
  expect_code(2, {"log", "gas", demo(), "--csv", "--json"});
  expect_code(4, {"log", "gas", absent()});
  expect_code(4, {"log", "gas", demo(), "--pdf", no_folder()});
}

TEST_F(ExitCodes, calendar_is_written_or_told) {
  const QString ics = in_folder("cellar.ics");
  expect_code(0, {"calendar", demo(), ics});
  EXPECT_TRUE(QFile::exists(ics));
  expect_json(expect_code(0, {"calendar", demo(), "--json"}));
  expect_code(2, {"calendar", demo()});
  expect_code(2, {"calendar", demo(), ics, "--json"});
  expect_code(4, {"calendar", absent(), "--json"});
  expect_code(4, {"calendar", demo(), no_folder()});
}

TEST_F(ExitCodes, sheet_is_written_or_told) {
  expect_json(expect_code(0, {"sheet", demo(), "--json"}));
  expect_code(2, {"sheet", demo()});
  expect_code(4, {"sheet", absent(), "--json"});
  expect_code(4, {"sheet", demo(), "--pdf", no_folder()});
}

}  // namespace
}  // namespace ullage
