// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/command_line.h"

#include <gmock/gmock.h>

#include <map>

#include "app/display.h"
#include "app/exit_codes.h"
#include "core/units/present.h"

namespace ullage::app {
namespace {

using ::testing::HasSubstr;

template <class C>
C read(std::vector<std::string> arguments) {
  auto command = read_command_line(std::move(arguments));
  EXPECT_TRUE(command) << command.error().text;
  return command ? get<C>(*command) : C{};
}

int refused_with(std::vector<std::string> arguments) {
  const auto command = read_command_line(std::move(arguments));
  EXPECT_FALSE(command);
  if (command) return -1;
  EXPECT_FALSE(command.error().text.empty());
  return command.error().exit_code;
}

TEST(CommandLine, opens_windows) {
  EXPECT_FALSE(read<ShowWindow>({}).cellar);
  EXPECT_TRUE(read<ShowWindow>({"--demo"}).demo);
  EXPECT_EQ(read<ShowWindow>({"home.ullage"}).cellar, "home.ullage");
}

TEST(CommandLine, reads_the_commands) {
  const auto sheet = read<PrintSheet>(
      {"sheet", "home.ullage", "--pdf", "out.pdf", "--paper", "Letter", "--units", "us"});
  EXPECT_EQ(sheet.cellar, "home.ullage");
  EXPECT_EQ(sheet.pdf, "out.pdf");
  EXPECT_EQ(sheet.paper, ui::Paper::letter);
  EXPECT_EQ(sheet.units, units::DisplayUnits::us());
  const auto plain = read<PrintSheet>({"sheet", "home.ullage", "--pdf", "out.pdf"});
  EXPECT_EQ(plain.paper, ui::Paper::a4);
  EXPECT_FALSE(plain.units);
  EXPECT_EQ(read<ExportCellar>({"export", "a.ullage", "a.json"}).file, "a.json");
  EXPECT_EQ(read<ImportCellar>({"import", "a.json", "a.ullage"}).cellar, "a.ullage");
  EXPECT_EQ(read<CheckCellar>({"check", "a.ullage"}).cellar, "a.ullage");
}

TEST(CommandLine, reads_the_commands_for_paper) {
  const auto due = read<TellDue>({"due", "a.ullage", "--within", "3", "--json"});
  EXPECT_EQ(due.cellar, "a.ullage");
  EXPECT_EQ(due.within_days, 3);
  EXPECT_TRUE(due.json);
  EXPECT_EQ(read<TellDue>({"due", "a.ullage"}).within_days, 14);
  EXPECT_TRUE(read<TellDue>({"due", "a.ullage", "--csv"}).csv);
  EXPECT_EQ(refused_with({"due", "a.ullage", "--csv", "--json"}), exit_usage);
  EXPECT_EQ(read<WriteLog>({"log", "due", "a.ullage"}).book, LogBook::due);
  const auto day = read<PlanDay>({"cleaning-day", "a.ullage", "--pdf", "d.pdf", "--on",
                                  "2026-11-24", "--minutes", "90", "--paper", "letter"});
  EXPECT_EQ(day.on, "2026-11-24");
  EXPECT_EQ(day.minutes, 90);
  EXPECT_EQ(day.paper, ui::Paper::letter);
  EXPECT_TRUE(read<PlanDay>({"cleaning-day", "a.ullage", "--json"}).pdf.empty());
  EXPECT_EQ(refused_with({"cleaning-day", "a.ullage"}), exit_usage);
  EXPECT_EQ(refused_with({"cleaning-day", "a.ullage", "--json", "--minutes", "0"}), exit_usage);
  EXPECT_EQ(refused_with({"cleaning-day", "a.ullage", "--json", "--on", "24.11."}), exit_usage);
  const auto tags = read<PrintTags>({"tags", "a.ullage", "--pdf", "t.pdf", "--keg", "K01", "--keg",
                                     "K02", "--single", "--no-backs", "--paper", "letter"});
  EXPECT_EQ(tags.kegs, (std::vector<std::string>{"K01", "K02"}));
  EXPECT_TRUE(tags.single);
  EXPECT_FALSE(tags.backs);
  EXPECT_EQ(tags.paper, ui::Paper::letter);
  const auto log = read<WriteLog>({"log", "wastage", "a.ullage", "--from", "2026-11-01", "--csv"});
  EXPECT_EQ(log.book, LogBook::wastage);
  EXPECT_EQ(log.form, LogForm::csv);
  EXPECT_EQ(log.from, "2026-11-01");
  EXPECT_EQ(read<WriteLog>({"log", "gas", "a.ullage"}).form, LogForm::text);
  EXPECT_EQ(read<WriteLog>({"log", "gas", "a.ullage", "--pdf", "g.pdf"}).form, LogForm::pdf);
  EXPECT_EQ(read<WriteCalendar>({"calendar", "a.ullage", "a.ics"}).file, "a.ics");
  EXPECT_TRUE(read<PrintTags>({"tags", "a.ullage", "--json"}).pdf.empty());
  EXPECT_TRUE(read<PrintSheet>({"sheet", "a.ullage", "--json"}).pdf.empty());
  EXPECT_TRUE(read<WriteCalendar>({"calendar", "a.ullage", "--json"}).file.empty());
  EXPECT_EQ(read<WriteLog>({"log", "gas", "a.ullage", "--json"}).form, LogForm::json);
  EXPECT_EQ(refused_with({"calendar", "a.ullage"}), exit_usage);
  EXPECT_EQ(refused_with({"calendar", "a.ullage", "a.ics", "--json"}), exit_usage);
  EXPECT_EQ(refused_with({"sheet", "a.ullage", "--pdf", "s.pdf", "--json"}), exit_usage);
  EXPECT_EQ(refused_with({"tags", "a.ullage", "--pdf", "t.pdf", "--json"}), exit_usage);
  EXPECT_EQ(refused_with({"log", "beer", "a.ullage"}), exit_usage);
  EXPECT_EQ(refused_with({"log", "gas", "a.ullage", "--from", "1.11.2026"}), exit_usage);
  EXPECT_EQ(refused_with({"log", "gas", "a.ullage", "--from", "2026-02-30"}), exit_usage);
  EXPECT_EQ(refused_with({"log", "gas", "a.ullage", "--csv", "--json"}), exit_usage);
  EXPECT_EQ(refused_with({"tags", "a.ullage"}), exit_usage);
  EXPECT_EQ(refused_with({"due", "a.ullage", "--within", "-1"}), exit_usage);
}

TEST(CommandLine, refuses_what_makes_no_sense) {
  EXPECT_EQ(refused_with({"sheet", "home.ullage"}), exit_usage);
  EXPECT_EQ(refused_with({"sheet", "home.ullage", "--pdf", "x", "--paper", "a5"}), exit_usage);
  EXPECT_EQ(refused_with({"export", "a.ullage"}), exit_usage);
  EXPECT_EQ(refused_with({"--pour"}), exit_usage);
  EXPECT_EQ(refused_with({"a.ullage", "b.ullage"}), exit_usage);
}

TEST(CommandLine, help_tells_the_commands_and_the_exit_codes) {
  const auto help = read_command_line({"--help"});
  ASSERT_FALSE(help);
  EXPECT_EQ(help.error().exit_code, exit_ok);
  for (const char* word : {"due", "sheet", "tags", "log", "cleaning-day", "calendar", "export",
                           "import", "check", "--demo", "Exit codes"}) {
    EXPECT_THAT(help.error().text, HasSubstr(word));
  }
  EXPECT_EQ(refused_with({"--version"}), exit_ok);
}

DisplayQuestions a_machine(const std::map<std::string, std::string>& environment, bool x,
                           bool wayland) {
  return {[environment](const char* name) {
            const auto found = environment.find(name);
            return found == environment.end() ? std::string() : found->second;
          },
          [x] { return x; }, [wayland](const std::string&) { return wayland; }};
}

TEST(Display, is_there_when_something_answers) {
  EXPECT_FALSE(why_no_display(a_machine({{"DISPLAY", ":0"}}, true, false)));
  EXPECT_FALSE(why_no_display(a_machine({{"WAYLAND_DISPLAY", "wayland-0"}}, false, true)));
  EXPECT_FALSE(why_no_display(
      a_machine({{"DISPLAY", ":0"}, {"WAYLAND_DISPLAY", "wayland-0"}}, true, false)));
  EXPECT_FALSE(why_no_display(a_machine({{"QT_QPA_PLATFORM", "offscreen"}}, false, false)));
}

TEST(Display, is_missing_with_a_reason) {
  EXPECT_THAT(present(why_no_display(a_machine({}, true, true))), HasSubstr("no display"));
  EXPECT_THAT(present(why_no_display(a_machine({{"DISPLAY", ":7"}}, false, false))),
              HasSubstr("\":7\" does not answer"));
  EXPECT_TRUE(why_no_display(
      a_machine({{"QT_QPA_PLATFORM", "xcb"}, {"WAYLAND_DISPLAY", "w"}}, false, true)));
}

}  // namespace
}  // namespace ullage::app
