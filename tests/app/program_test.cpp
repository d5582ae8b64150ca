// SPDX-License-Identifier: GPL-3.0-or-later
//
// The program itself, as a shell starts it on a machine without a display.
#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include <QProcess>
#include <QTemporaryDir>

#include "app/demo_cellar.h"
#include "app/exit_codes.h"
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

}  // namespace
}  // namespace ullage
