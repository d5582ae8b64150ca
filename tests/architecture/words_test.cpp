// SPDX-License-Identifier: GPL-3.0-or-later
//
// The bad samples are written in two halves wherever this file would otherwise break
// the rule that it tries.
#include "tests/architecture/words.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

namespace ullage::architecture {
namespace {

using testing::IsEmpty;
using testing::SizeIs;

TEST(Words, AllBelong) { EXPECT_THAT(words_that_do_not_belong(project()), IsEmpty()); }
TEST(Words, CoreNeverReadsTheClock) { EXPECT_THAT(clock_in_core(project()), IsEmpty()); }
TEST(Words, PhysicalValuesAreQuantities) {
  EXPECT_THAT(bare_physical_numbers(project()), IsEmpty());
}
TEST(Words, SilencedFindingsNameTheirCheck) {
  EXPECT_THAT(unnamed_lint_silences(project()), IsEmpty());
}
TEST(Words, HeadersOpenNoNamespace) {
  EXPECT_THAT(opened_namespaces_in_headers(project()), IsEmpty());
}

TEST(WordRules, SeeUnfinishedWork) {
  EXPECT_THAT(words_that_do_not_belong({{"core/a.cpp",
                                         "// TO"
                                         "DO: later"}}),
              SizeIs(1));
  EXPECT_THAT(words_that_do_not_belong({{"docs/a.md",
                                         "FIX"
                                         "ME"}}),
              SizeIs(1));
  EXPECT_THAT(words_that_do_not_belong({{"core/a.cpp", "mkstemp(\"XXXXXX\");"}}), IsEmpty());
}

TEST(WordRules, SeePlacesOfOneMachine) {
  for (const char* text : {"/wo"
                           "rk/main",
                           "/ho"
                           "me/me/src",
                           "/t"
                           "mp/thing",
                           "the Trans"
                           "cript",
                           "as iss"
                           "ue #12 asks",
                           "<<<<"
                           "<<< HEAD"}) {
    EXPECT_THAT(words_that_do_not_belong({{"docs/a.md", text}}), SizeIs(1)) << text;
  }
  EXPECT_THAT(
      words_that_do_not_belong({{"docs/a.md", "an issue of taste; work/life; framework/x"}}),
      IsEmpty());
}

TEST(WordRules, SeeTheClockReadInCore) {
  for (const char* text :
       {"auto n = std::chrono::system_clock::now();", "time(nullptr)",
        "QDateTime::currentDateTimeUtc()", "strftime('%s', 'now')", "DEFAULT CURRENT_TIMESTAMP"}) {
    EXPECT_THAT(clock_in_core({{"core/store/a.cpp", text}}), SizeIs(1)) << text;
    EXPECT_THAT(clock_in_core({{"app/a.cpp", text}}), IsEmpty()) << text;
  }
  EXPECT_THAT(clock_in_core({{"core/cellar/a.h", "// never system_clock::now() here"}}), IsEmpty());
}

TEST(WordRules, SeeBarePhysicalNumbers) {
  EXPECT_THAT(bare_physical_numbers({{"core/physics/a.h", "double f(double gauge_pressure);"}}),
              SizeIs(1));
  EXPECT_THAT(
      bare_physical_numbers({{"core/cellar/a.h", "void g(double temperature_c,\n       int n);"}}),
      SizeIs(1));
  EXPECT_THAT(bare_physical_numbers({{"core/physics/a.h", "double f(double pressure_ratio);"}}),
              IsEmpty());
  EXPECT_THAT(bare_physical_numbers({{"core/physics/a.h", "double in_psi(Pressure pressure);"}}),
              IsEmpty());
  EXPECT_THAT(bare_physical_numbers({{"core/units/a.h", "Volume litres(double volume);"}}),
              IsEmpty());
}

TEST(WordRules, SeeUnnamedLintSilences) {
  EXPECT_THAT(unnamed_lint_silences({{"core/a.cpp",
                                      "f();  // NO"
                                      "LINT"}}),
              SizeIs(1));
  EXPECT_THAT(unnamed_lint_silences({{"core/a.cpp",
                                      "f();  // NO"
                                      "LINT(bugprone-branch-clone)"}}),
              IsEmpty());
}

TEST(WordRules, SeeOpenedNamespaces) {
  EXPECT_THAT(opened_namespaces_in_headers({{"core/a.h", "using namespace std;"}}), SizeIs(1));
  EXPECT_THAT(opened_namespaces_in_headers({{"core/a.cpp", "using namespace std;"}}), IsEmpty());
}

}  // namespace
}  // namespace ullage::architecture
