// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/architecture/documents.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include <string>

namespace ullage::architecture {
namespace {

using testing::IsEmpty;
using testing::SizeIs;

TEST(Documents, SourcesCarryTheirLicence) {
  EXPECT_THAT(missing_licence_lines(project()), IsEmpty());
}
TEST(Documents, FoldersHaveReadmes) { EXPECT_THAT(missing_readmes(project()), IsEmpty()); }
TEST(Documents, TopDocumentsExist) { EXPECT_THAT(missing_documents(project()), IsEmpty()); }
TEST(Documents, TheTopHoldsOnlyTheHouse) {
  EXPECT_THAT(strangers_at_the_top(project()), IsEmpty());
}
TEST(Documents, LinksLeadSomewhere) {
  EXPECT_THAT(dead_links(project(), project_paths()), IsEmpty());
}

constexpr const char* licence_comment = "// SPDX-License-Identifier: GPL-3.0-or-later\n";

TEST(DocumentRules, SeeAMissingLicenceLine) {
  EXPECT_THAT(missing_licence_lines({{"core/a.cpp", "int a;\n"}}), SizeIs(1));
  EXPECT_THAT(missing_licence_lines({{"core/a.cpp", std::string("\n") + licence_comment}}),
              SizeIs(1));
  EXPECT_THAT(missing_licence_lines({{"app/run", "#!/bin/sh\necho\n"}}), SizeIs(1));
  EXPECT_THAT(missing_licence_lines({{"core/a.cpp", licence_comment}}), IsEmpty());
  EXPECT_THAT(missing_licence_lines({{"app/run",
                                      "#!/bin/sh\n# SPDX-License-Identifier: "
                                      "GPL-3.0-or-later\n"}}),
              IsEmpty());
}

TEST(DocumentRules, SeeAMissingOrShortReadme) {
  EXPECT_THAT(missing_readmes({{"core/units/a.h", ""}}), SizeIs(1));
  const auto with_readme = [](const char* text) {
    return missing_readmes({{"core/units/a.h", ""}, {"core/units/README.md", text}});
  };
  EXPECT_THAT(with_readme("Owns it.\nMust not know.\n"), SizeIs(1));
  EXPECT_THAT(with_readme("Owns it.\n    : a table\n      and more.Must not know.\n"), SizeIs(1));
  EXPECT_THAT(with_readme("Owns it.\nMust not know.\nRead it.\n"), IsEmpty());
  EXPECT_THAT(missing_readmes({{"docs/handbook.md", "text"}}), SizeIs(1));
}

TEST(DocumentRules, SeeMissingDocumentsAndCommands) {
  EXPECT_THAT(missing_documents({}), SizeIs(3));
  EXPECT_THAT(missing_documents({{"DEVELOPERS.md", "x"},
                                 {"README.md", "`app/run` and `tests/run`"},
                                 {"docs/COPYING", "GNU GENERAL PUBLIC LICENSE"}}),
              IsEmpty());
  EXPECT_THAT(missing_documents({{"DEVELOPERS.md", "x"},
                                 {"README.md", "`app/run`" + std::string(40, '\n') + "`tests/run`"},
                                 {"docs/COPYING", "all rights reserved"}}),
              SizeIs(2));
}

TEST(DocumentRules, SeeStrangersAtTheTop) {
  EXPECT_THAT(strangers_at_the_top({{"NOTES.md", "x"}, {"lib/a.h", "x"}}), SizeIs(2));
  EXPECT_THAT(strangers_at_the_top({{"README.md", "x"}, {".ci/run", "x"}, {"ui/a.h", "x"}}),
              IsEmpty());
}

TEST(DocumentRules, SeeDeadLinks) {
  const SourceTree tree = {{"docs/a.md", "See [b](b.md#part), [top](../README.md) and [c](c.md)."}};
  EXPECT_THAT(dead_links(tree, {"docs/b.md", "README.md"}), SizeIs(1));
  EXPECT_THAT(dead_links(tree, {"docs/b.md", "docs/c.md", "README.md"}), IsEmpty());
}

}  // namespace
}  // namespace ullage::architecture
