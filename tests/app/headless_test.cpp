// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/headless.h"

#include <sys/resource.h>

#include <QFile>
#include <csignal>
#include <fstream>
#include <functional>
#include <nlohmann/json.hpp>
#include <sstream>

#include "app/exit_codes.h"
#include "tests/app/session_fixture.h"

namespace ullage::app {
namespace {

using ::testing::HasSubstr;
using ullage::testing::minute;

class Headless : public ullage::testing::SessionFixture {
 protected:
  [[nodiscard]] std::filesystem::path in_folder(const char* name) const {
    return path().parent_path() / name;
  }
  std::ostringstream out, err;
  Terminal terminal{out, err};
};

TEST_F(Headless, exports_and_imports_the_same_entries) {
  log(cellar::Cleaned{.keg = keg});
  ASSERT_EQ(export_cellar({path(), in_folder("a.json")}, terminal), exit_ok);
  ASSERT_EQ(
      import_cellar({in_folder("a.json"), in_folder("b.ullage")}, {clock, other_ids}, terminal),
      exit_ok)
      << err.str();
  const auto copy = CellarSession::open(in_folder("b.ullage"), {clock, other_ids});
  ASSERT_TRUE(copy);
  const auto& there = (*copy)->journal().entries();
  const auto& here = session->journal().entries();
  ASSERT_EQ(there.size(), here.size());
  for (std::size_t i = 0; i < here.size(); ++i) EXPECT_TRUE(same(here[i], there[i])) << i;
}

TEST_F(Headless, an_import_never_replaces_a_cellar_nor_leaves_half_of_one) {
  ASSERT_EQ(export_cellar({path(), in_folder("a.json")}, terminal), exit_ok);
  EXPECT_EQ(import_cellar({in_folder("a.json"), path()}, {clock, other_ids}, terminal),
            exit_file_problem);
  std::ofstream(in_folder("bad.json")) << "{\"format\": \"ullage-cellar\", \"version\": 1, "
                                          "\"entries\": [\n{\"sequence\": 1}\n]}";
  EXPECT_EQ(
      import_cellar({in_folder("bad.json"), in_folder("c.ullage")}, {clock, other_ids}, terminal),
      exit_refused);
  EXPECT_THAT(err.str(), HasSubstr("2"));  // the line
  EXPECT_THAT(err.str(), HasSubstr("Nothing was imported"));
  std::size_t files = 0;
  for (const auto& file : std::filesystem::directory_iterator(path().parent_path())) {
    if (file.path().filename().string().starts_with("c.ullage")) ++files;
  }
  EXPECT_EQ(files, 0U);
}

TEST_F(Headless, checks_a_sound_cellar) {
  EXPECT_EQ(check_cellar({path()}, {clock, other_ids}, terminal), exit_ok) << err.str();
  EXPECT_THAT(out.str(), HasSubstr("2 entries"));
  EXPECT_THAT(out.str(), HasSubstr("1 keg"));
}

TEST_F(Headless, tells_of_entries_that_do_not_fit) {
  log(cellar::Untapped{keg});  // it was never on
  EXPECT_EQ(check_cellar({path()}, {clock, other_ids}, terminal), exit_refused);
  EXPECT_THAT(out.str(), HasSubstr("K01"));
  EXPECT_THAT(out.str(), HasSubstr("1 entry does not fit"));
}

TEST_F(Headless, tells_files_that_are_not_there_or_not_ours) {
  EXPECT_EQ(check_cellar({in_folder("absent")}, {clock, other_ids}, terminal), exit_file_problem);
  std::ofstream(in_folder("text.ullage")) << "not a cellar at all, and long enough to be one\n";
  EXPECT_EQ(check_cellar({in_folder("text.ullage")}, {clock, other_ids}, terminal),
            exit_file_problem);
  EXPECT_EQ(export_cellar({in_folder("absent"), in_folder("x.json")}, terminal), exit_file_problem);
  EXPECT_FALSE(err.str().empty());
  EXPECT_FALSE(std::filesystem::exists(in_folder("x.json")));
}

TEST_F(Headless, prints_the_sheet_as_a_pdf) {
  const auto pdf = in_folder("sheet.pdf");
  ASSERT_EQ(print_sheet({.cellar = path(), .pdf = pdf}, {clock, other_ids}, terminal), exit_ok)
      << err.str();
  QFile file(QString::fromStdString(pdf.string()));
  ASSERT_TRUE(file.open(QIODevice::ReadOnly));
  EXPECT_TRUE(file.readAll().startsWith("%PDF-"));
  EXPECT_THAT(out.str(), HasSubstr("1 keg on 1 page"));
  EXPECT_EQ(print_sheet({.cellar = path(), .pdf = in_folder("no/such/folder.pdf")},
                        {clock, other_ids}, terminal),
            exit_file_problem);
}

// A line cleaned 20 days ago by a rule of 14 days.
cellar::LineRecord overdue_line(cellar::LineId line) {
  cellar::LineRecord r;
  r.line = line;
  r.name = "Line 1";
  r.tap = "1";
  r.clean_every_days = 14;
  r.clean_source = "own rule";
  return r;
}

TEST_F(Headless, tells_what_is_due_by_its_exit_code) {
  EXPECT_EQ(tell_due({.cellar = path()}, {clock, other_ids}, terminal), exit_ok);
  EXPECT_THAT(out.str(), HasSubstr("Nothing is due"));
  const auto line = session->fresh<cellar::LineId>();
  log(overdue_line(line));
  log(cellar::LineCleaned{.line = line});
  clock.time += std::chrono::days(10);
  out.str("");
  EXPECT_EQ(tell_due({.cellar = path()}, {clock, other_ids}, terminal), exit_ok);
  EXPECT_THAT(out.str(), HasSubstr("Clean Line 1"));
  clock.time += std::chrono::days(10);
  out.str("");
  EXPECT_EQ(tell_due({.cellar = path(), .json = true}, {clock, other_ids}, terminal), exit_refused);
  const auto told = nlohmann::json::parse(out.str());
  ASSERT_EQ(told["items"].size(), 1U);
  EXPECT_EQ(told["items"][0]["overdue"], true);
  EXPECT_EQ(told["items"][0]["what"], "Clean Line 1");
  EXPECT_EQ(told["items"][0]["day"], "2026-03-15");  // 1 March and 14 days
  EXPECT_EQ(told["today"], "2026-03-21");
  out.str("");
  EXPECT_EQ(tell_due({.cellar = path(), .csv = true}, {clock, other_ids}, terminal), exit_refused);
  const std::string csv = out.str();
  EXPECT_THAT(csv, HasSubstr("2026-03-15,yes,6,Clean Line 1,"));
  out.str("");
  EXPECT_EQ(write_log({.cellar = path(), .book = LogBook::due, .form = LogForm::csv},
                      {clock, other_ids}, terminal),
            exit_ok);
  EXPECT_EQ(out.str(), csv) << "one table, asked for in two ways";
  out.str("");
  EXPECT_EQ(tell_due({.cellar = in_folder("absent")}, {clock, other_ids}, terminal),
            exit_file_problem);
}

TEST_F(Headless, plans_a_cleaning_day) {
  const auto pdf = in_folder("day.pdf");
  EXPECT_EQ(plan_day({.cellar = path(), .pdf = pdf}, {clock, other_ids}, terminal), exit_refused);
  EXPECT_THAT(err.str(), HasSubstr("Nothing is due"));
  EXPECT_FALSE(std::filesystem::exists(pdf));
  EXPECT_EQ(plan_day({.cellar = path()}, {clock, other_ids}, terminal), exit_ok);
  EXPECT_TRUE(nlohmann::json::parse(out.str())["steps"].empty());
  const auto line = session->fresh<cellar::LineId>();
  log(overdue_line(line));
  log(cellar::LineCleaned{
      .line = line, .flush_check = cellar::FlushCheck::litmus, .flush_passed = true});
  clock.time += std::chrono::days(20);
  out.str("");
  EXPECT_EQ(plan_day({.cellar = path(), .pdf = pdf}, {clock, other_ids}, terminal), exit_ok)
      << err.str();
  EXPECT_TRUE(std::filesystem::exists(pdf));
  EXPECT_THAT(out.str(), HasSubstr("steps on 1 page"));
  out.str("");
  EXPECT_EQ(plan_day({.cellar = path(), .on = "2026-03-24"}, {clock, other_ids}, terminal),
            exit_ok);
  const auto told = nlohmann::json::parse(out.str());
  EXPECT_EQ(told["day"], "2026-03-24");
  EXPECT_THAT(told["steps"][0]["what"].get<std::string>(), HasSubstr("Lock the lines"));
  out.str("");
  EXPECT_EQ(plan_day({.cellar = path(), .minutes = 5}, {clock, other_ids}, terminal), exit_ok);
  EXPECT_TRUE(nlohmann::json::parse(out.str())["steps"].empty());
  EXPECT_FALSE(nlohmann::json::parse(out.str())["not_on_the_list"].empty()) << "no time, and said";
  EXPECT_EQ(plan_day({.cellar = in_folder("absent")}, {clock, other_ids}, terminal),
            exit_file_problem);
}

TEST_F(Headless, writes_logs_in_every_form) {
  const auto line = session->fresh<cellar::LineId>();
  log(overdue_line(line));
  log(cellar::LineCleaned{.line = line, .agent_name = "caustic"});
  for (const LogBook book :
       {LogBook::line_cleaning, LogBook::temperature, LogBook::gas, LogBook::wastage,
        LogBook::custody, LogBook::kegs, LogBook::lines, LogBook::rules, LogBook::batches,
        LogBook::round, LogBook::due, LogBook::all}) {
    for (const LogForm form : {LogForm::text, LogForm::csv, LogForm::json, LogForm::pdf}) {
      const WriteLog asked{
          .cellar = path(), .pdf = in_folder("log.pdf"), .book = book, .form = form};
      out.str("");
      EXPECT_EQ(write_log(asked, {clock, other_ids}, terminal), exit_ok) << err.str();
      EXPECT_FALSE(out.str().empty());
    }
  }
  out.str("");
  const WriteLog asked{.cellar = path(), .book = LogBook::line_cleaning, .form = LogForm::json};
  ASSERT_EQ(write_log(asked, {clock, other_ids}, terminal), exit_ok);
  EXPECT_EQ(nlohmann::json::parse(out.str())["rows"][0]["agent"], "caustic");
  const WriteLog before{
      .cellar = path(), .form = LogForm::json, .from = "2026-01-01", .to = "2026-01-31"};
  out.str("");
  ASSERT_EQ(write_log(before, {clock, other_ids}, terminal), exit_ok);
  EXPECT_TRUE(nlohmann::json::parse(out.str())["rows"].empty());
  EXPECT_EQ(write_log({.cellar = path(), .book = LogBook::recall}, {clock, other_ids}, terminal),
            exit_refused);
}

TEST_F(Headless, prints_tags_and_refuses_numbers_that_no_keg_has) {
  const auto pdf = in_folder("tags.pdf");
  ASSERT_EQ(print_tags({.cellar = path(), .pdf = pdf}, {clock, other_ids}, terminal), exit_ok);
  EXPECT_THAT(out.str(), HasSubstr("1 tag on 2 pages"));
  const auto none = in_folder("none.pdf");
  EXPECT_EQ(print_tags({.cellar = path(), .pdf = none, .kegs = {"K01", "K99"}}, {clock, other_ids},
                       terminal),
            exit_refused);
  EXPECT_THAT(err.str(), HasSubstr("K99"));
  EXPECT_FALSE(std::filesystem::exists(none));
}

TEST_F(Headless, tells_sheet_tags_and_calendar_as_json) {
  const auto line = session->fresh<cellar::LineId>();
  log(overdue_line(line));
  log(cellar::LineCleaned{
      .line = line, .flush_check = cellar::FlushCheck::litmus, .flush_passed = true});
  ASSERT_EQ(print_sheet({.cellar = path()}, {clock, other_ids}, terminal), exit_ok) << err.str();
  const auto sheet = nlohmann::json::parse(out.str());
  EXPECT_EQ(sheet["cellar"], "Shed");
  EXPECT_EQ(sheet["kegs"][0]["tag"], "K01");
  EXPECT_TRUE(sheet["boxes"].contains("Gas"));
  out.str("");
  ASSERT_EQ(print_tags({.cellar = path()}, {clock, other_ids}, terminal), exit_ok);
  const auto tags = nlohmann::json::parse(out.str());
  ASSERT_EQ(tags.size(), 1U);
  EXPECT_EQ(tags[0]["code"], "ullage:keg:K01");
  out.str("");
  ASSERT_EQ(print_tags({.cellar = path(), .warnings = true}, {clock, other_ids}, terminal),
            exit_ok);
  EXPECT_TRUE(nlohmann::json::parse(out.str()).empty()) << "no reason for a warning";
  out.str("");
  ASSERT_EQ(write_calendar({path(), {}}, {clock, other_ids}, terminal), exit_ok);
  const auto calendar = nlohmann::json::parse(out.str());
  ASSERT_EQ(calendar["items"].size(), 1U);
  EXPECT_EQ(calendar["items"][0]["what"], "Clean Line 1");
  EXPECT_EQ(calendar["items"][0]["day"], "2026-03-15");  // 1 March and 14 days
  for (const auto& absent : {in_folder("absent")}) {
    EXPECT_EQ(print_sheet({.cellar = absent}, {clock, other_ids}, terminal), exit_file_problem);
    EXPECT_EQ(print_tags({.cellar = absent}, {clock, other_ids}, terminal), exit_file_problem);
    EXPECT_EQ(write_calendar({absent, {}}, {clock, other_ids}, terminal), exit_file_problem);
  }
}

TEST_F(Headless, tells_warning_tags_of_what_is_asked_for) {
  log(overdue_line(session->fresh<cellar::LineId>()));
  const auto second = session->fresh<cellar::LineId>();
  cellar::LineRecord unchecked = overdue_line(second);
  unchecked.name = "Line 2";
  unchecked.tap = "2";
  log(unchecked);
  log(cellar::LineCleaned{.line = second});  // no flush check
  out.str("");
  ASSERT_EQ(print_tags({.cellar = path(), .warnings = true}, {clock, other_ids}, terminal),
            exit_ok);
  const auto warnings = nlohmann::json::parse(out.str());
  ASSERT_EQ(warnings.size(), 1U);
  EXPECT_EQ(warnings[0]["warning"], "DO NOT SERVE");
  EXPECT_EQ(warnings[0]["about"], "Line 2, tap 2");
  const auto told = [&](PrintTags asked) {
    out.str("");
    asked.cellar = path();
    asked.warnings = true;
    EXPECT_EQ(print_tags(asked, {clock, other_ids}, terminal), exit_ok) << err.str();
    std::vector<std::string> all;
    for (const auto& tag : nlohmann::json::parse(out.str())) {
      all.push_back(tag["warning"].get<std::string>() + ": " + tag["about"].get<std::string>());
    }
    return all;
  };
  using Warnings = std::vector<std::string>;
  EXPECT_EQ(told({.kegs = {"K01"}}), Warnings());
  EXPECT_EQ(told({.lines = {"2"}}), Warnings{"DO NOT SERVE: Line 2, tap 2"});
  EXPECT_EQ(told({.kind = report::Warning::vent_first}), Warnings());
  EXPECT_EQ(told({.kegs = {"k01"}, .kind = report::Warning::vent_first}),
            Warnings{"UNDER PRESSURE: K01"});
  EXPECT_EQ(told({.kind = report::Warning::do_not_serve, .lines = {"Line 1"}}),
            Warnings{"DO NOT SERVE: Line 1, tap 1"});
  out.str("");
  EXPECT_EQ(print_tags({.cellar = path(),
                        .warnings = true,
                        .kind = report::Warning::vent_first,
                        .lines = {"Line 1"}},
                       {clock, other_ids}, terminal),
            exit_refused);
  EXPECT_EQ(out.str(), "");
  EXPECT_EQ(print_tags({.cellar = path(), .warnings = true, .lines = {"Line 9"}},
                       {clock, other_ids}, terminal),
            exit_refused);
}

// No file may grow beyond so many bytes while this lives: a disk without room.
class NoRoom {
 public:
  explicit NoRoom(rlim_t bytes) : signal_before_(std::signal(SIGXFSZ, SIG_IGN)) {
    ::getrlimit(RLIMIT_FSIZE, &before_);
    const rlimit tight{bytes, before_.rlim_max};
    ::setrlimit(RLIMIT_FSIZE, &tight);
  }
  NoRoom(const NoRoom&) = delete;
  NoRoom& operator=(const NoRoom&) = delete;
  ~NoRoom() {
    ::setrlimit(RLIMIT_FSIZE, &before_);
    std::signal(SIGXFSZ, signal_before_);
  }

 private:
  rlimit before_{};
  void (*signal_before_)(int);
};

TEST_F(Headless, a_full_disk_is_said_and_leaves_what_was_there) {
  const auto line = session->fresh<cellar::LineId>();
  log(overdue_line(line));
  log(cellar::LineCleaned{.line = line});
  const auto target = in_folder("out");
  const std::pair<const char*, std::function<int()>> writers[] = {
      {"sheet",
       [&] {
         return print_sheet({.cellar = path(), .pdf = target}, {clock, other_ids}, terminal);
       }},
      {"tags",
       [&] { return print_tags({.cellar = path(), .pdf = target}, {clock, other_ids}, terminal); }},
      {"log",
       [&] {
         return write_log({.cellar = path(), .pdf = target, .form = LogForm::pdf},
                          {clock, other_ids}, terminal);
       }},
      {"calendar", [&] { return write_calendar({path(), target}, {clock, other_ids}, terminal); }},
      {"export", [&] { return export_cellar({path(), target}, terminal); }}};
  for (const auto& [what, write] : writers) {
    std::ofstream(target) << "old";
    const auto files_before =
        std::distance(std::filesystem::directory_iterator(path().parent_path()),
                      std::filesystem::directory_iterator());
    err.str("");
    int code = 0;
    {
      const NoRoom tight(100);
      code = write();
    }
    EXPECT_EQ(code, exit_file_problem) << what;
    EXPECT_THAT(err.str(), HasSubstr("out")) << what;
    std::string left;
    std::getline(std::ifstream(target), left);
    EXPECT_EQ(left, "old") << what;
    EXPECT_EQ(std::distance(std::filesystem::directory_iterator(path().parent_path()),
                            std::filesystem::directory_iterator()),
              files_before)
        << what << " left something half-written";
    EXPECT_EQ(write(), exit_ok) << what << ": with room again\n" << err.str();
  }
}

TEST_F(Headless, an_import_without_room_leaves_no_cellar) {
  ASSERT_EQ(export_cellar({path(), in_folder("a.json")}, terminal), exit_ok);
  int code = 0;
  {
    const NoRoom tight(20'000);
    code =
        import_cellar({in_folder("a.json"), in_folder("b.ullage")}, {clock, other_ids}, terminal);
  }
  EXPECT_NE(code, exit_ok);
  EXPECT_FALSE(err.str().empty());
  for (const auto& file : std::filesystem::directory_iterator(path().parent_path())) {
    EXPECT_FALSE(file.path().filename().string().starts_with("b.ullage")) << file.path();
  }
  EXPECT_EQ(
      import_cellar({in_folder("a.json"), in_folder("b.ullage")}, {clock, other_ids}, terminal),
      exit_ok);
}

TEST_F(Headless, writes_a_calendar) {
  const auto ics = in_folder("cellar.ics");
  ASSERT_EQ(write_calendar({path(), ics}, {clock, other_ids}, terminal), exit_ok);
  std::ifstream file(ics);
  std::string first;
  std::getline(file, first);
  EXPECT_EQ(first, "BEGIN:VCALENDAR\r");
  EXPECT_EQ(write_calendar({path(), in_folder("no/such/folder.ics")}, {clock, other_ids}, terminal),
            exit_file_problem);
}

}  // namespace
}  // namespace ullage::app
