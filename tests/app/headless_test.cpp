// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/headless.h"

#include <QFile>
#include <fstream>
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

}  // namespace
}  // namespace ullage::app
