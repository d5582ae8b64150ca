// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/architecture/layering.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

namespace ullage::architecture {
namespace {

using testing::AllOf;
using testing::ElementsAre;
using testing::Field;
using testing::HasSubstr;
using testing::IsEmpty;
using testing::SizeIs;

TEST(Layering, ArrowsHold) { EXPECT_THAT(wrong_arrows(project()), IsEmpty()); }
TEST(Layering, PureCoreKnowsNoQt) { EXPECT_THAT(qt_in_pure_core(project()), IsEmpty()); }
TEST(Layering, OnlyTheStoreSpeaksSql) { EXPECT_THAT(sql_outside_store(project()), IsEmpty()); }
TEST(Layering, NoUnwantedHeaders) { EXPECT_THAT(unwanted_headers(project()), IsEmpty()); }

// The rules above would pass on an empty tree, so the tree must be the real one.
TEST(Layering, ReadsTheRealTree) {
  const auto has = [](std::string_view path) {
    for (const SourceFile& file : project()) {
      if (file.path == path && !file.text.empty()) return true;
    }
    return false;
  };
  EXPECT_TRUE(has("core/units/quantities.h"));
  EXPECT_TRUE(has("tests/architecture/layering_test.cpp"));
  EXPECT_TRUE(has(".ci/packages"));
}

TEST(LayeringRules, SeesAnArrowThatPointsUp) {
  const SourceTree tree = {
      {"core/physics/a.h", "#pragma once\n#include \"core/cellar/entry.h\"\n"}};
  EXPECT_THAT(wrong_arrows(tree),
              ElementsAre(AllOf(Field(&Finding::line, 2U),
                                Field(&Finding::what, HasSubstr("core/cellar")))));
}

TEST(LayeringRules, SeesUiReachingIntoTheStore) {
  EXPECT_THAT(wrong_arrows({{"ui/pages/a.cpp", "#include \"core/store/journal_store.h\""}}),
              SizeIs(1));
  EXPECT_THAT(wrong_arrows({{"app/a.cpp", "#include \"core/store/journal_store.h\""}}), IsEmpty());
}

TEST(LayeringRules, SeesTheProgramReachingIntoTests) {
  EXPECT_THAT(wrong_arrows({{"app/a.cpp", "#include \"tests/store/journal.h\""}}), SizeIs(1));
}

TEST(LayeringRules, SeesAHeaderNamedFromItsOwnFolder) {
  EXPECT_THAT(wrong_arrows({{"core/units/a.cpp", "#include \"a.h\""}}), SizeIs(1));
  EXPECT_THAT(wrong_arrows({{"ui/pages/a.cpp", "#include \"a.moc\""}}), IsEmpty());
}

TEST(LayeringRules, SeesQtInThePureCore) {
  for (const char* line :
       {"#include <QString>", "#include <QtCore/QDate>", "  #  include <qdate.h>"}) {
    EXPECT_THAT(qt_in_pure_core({{"core/cellar/entries/a.h", line}}), SizeIs(1)) << line;
    EXPECT_THAT(qt_in_pure_core({{"core/store/a.h", line}}), IsEmpty()) << line;
  }
  EXPECT_THAT(qt_in_pure_core({{"core/cellar/a.h", "#include <queue>\n#include <fmt/core.h>"}}),
              IsEmpty());
}

TEST(LayeringRules, SeesSqlOutsideTheStore) {
  const std::string query = "auto q = \"SELECT tag FROM keg\";";
  EXPECT_THAT(sql_outside_store({{"ui/a.cpp", query}}), SizeIs(1));
  EXPECT_THAT(sql_outside_store({{"core/store/a.cpp", query}}), IsEmpty());
  EXPECT_THAT(sql_outside_store({{"core/report/a.cpp", "#include <sqlite3.h>"}}), SizeIs(1));
  EXPECT_THAT(sql_outside_store({{"app/a.cpp", "#include <QSqlQuery>"}}), SizeIs(1));
  EXPECT_THAT(sql_outside_store({{"ui/a.cpp", "enum { UPDATED };  // not an UPDATE"}}), IsEmpty());
}

TEST(LayeringRules, SeesUnwantedHeaders) {
  EXPECT_THAT(unwanted_headers({{"ui/a.cpp", "#include <QtWidgets>"}}), SizeIs(1));
  EXPECT_THAT(unwanted_headers({{"core/units/a.cpp", "#include <format>"}}), SizeIs(1));
  EXPECT_THAT(unwanted_headers({{"ui/a.cpp", "#include <QWidget>"}}), IsEmpty());
}

}  // namespace
}  // namespace ullage::architecture
