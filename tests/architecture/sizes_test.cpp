// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/architecture/sizes.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include <string>

namespace ullage::architecture {
namespace {

using testing::IsEmpty;
using testing::SizeIs;

TEST(Sizes, FilesAreShort) { EXPECT_THAT(long_files(project()), IsEmpty()); }
TEST(Sizes, FunctionsAreShort) { EXPECT_THAT(long_functions(project()), IsEmpty()); }

std::string function_of_lines(std::size_t count) {
  std::string text = "int f(int a) {\n";
  for (std::size_t i = 2; i < count; ++i) text += "  ++a;\n";
  return text + "}\n";
}

TEST(SizeRules, SeeAFileOneLineTooLong) {
  EXPECT_THAT(long_files({{"core/a.cpp", std::string(longest_source, '\n')}}), IsEmpty());
  EXPECT_THAT(long_files({{"core/a.cpp", std::string(longest_source + 1, '\n')}}), SizeIs(1));
  EXPECT_THAT(long_files({{"core/a.h", std::string(longest_header, '\n')}}), IsEmpty());
  EXPECT_THAT(long_files({{"core/a.h", std::string(longest_header + 1, '\n')}}), SizeIs(1));
}

TEST(SizeRules, SeeAFunctionOneLineTooLong) {
  EXPECT_THAT(long_functions({{"core/a.cpp", function_of_lines(longest_function)}}), IsEmpty());
  EXPECT_THAT(long_functions({{"core/a.cpp", function_of_lines(longest_function + 1)}}), SizeIs(1));
}

TEST(SizeRules, SeeALongFunctionInsideAClassInsideANamespace) {
  const std::string text = "namespace n {\nclass C final : public B {\n public:\n" +
                           function_of_lines(longest_function + 1) + "};\n}\n";
  const auto findings = long_functions({{"ui/a.h", text}});
  ASSERT_THAT(findings, SizeIs(1));
  EXPECT_EQ(findings.front().line, 4U);
}

TEST(SizeRules, AreNotFooledByBracesInCommentsAndLiterals) {
  const auto bodies = function_bodies(
      "int f() {\n  // }\n  auto s = \"}\";\n  auto c = '}';\n  auto r = R\"x(}\")x\";\n"
      "  return 1'000;\n}\nint g() { return 0; }\n");
  ASSERT_THAT(bodies, SizeIs(2));
  EXPECT_EQ(bodies[0].first_line, 1U);
  EXPECT_EQ(bodies[0].last_line, 7U);
  EXPECT_EQ(bodies[1].first_line, 8U);
}

TEST(SizeRules, TakeTablesForNoFunctions) {
  EXPECT_THAT(function_bodies("const std::array<int, 2> rows = {\n1,\n2};\n"
                              "enum class E { a, b };\nstruct S {\n int a = 0;\n};\n"),
              IsEmpty());
}

TEST(SizeRules, CountTemplatesConstructorsAndTests) {
  EXPECT_THAT(
      function_bodies("template <class T, class U = std::vector<T>>\nT f(T t) { return t; }\n"
                      "Foo::Foo(int a) : Bar(a), b_(a) { go(); }\n"
                      "auto g() const noexcept -> int { return 1; }\n"
                      "TEST(A, B) { EXPECT_TRUE([] { return true; }()); }\n"),
      SizeIs(4));
}

}  // namespace
}  // namespace ullage::architecture
