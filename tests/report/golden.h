// SPDX-License-Identifier: GPL-3.0-or-later
//
// Golden files: a sheet as text, kept in tests/report/golden and read by a person
// whenever it changes. With ULLAGE_GOLDEN=write in the environment the files are
// written anew instead of compared; look at the difference before committing it.
#pragma once

#include <gmock/gmock.h>

#include <cstdlib>
#include <filesystem>
#include <fstream>
#include <sstream>
#include <string>

namespace ullage::testing {

inline void expect_golden(const std::string& name, const std::string& text) {
  const std::filesystem::path path =
      std::filesystem::path(ULLAGE_TESTS_DIR) / "report/golden" / name;
  const char* wish = std::getenv("ULLAGE_GOLDEN");
  if (wish != nullptr && std::string(wish) == "write") {
    std::ofstream(path, std::ios::binary) << text;
    GTEST_SKIP() << "written: " << path;
  }
  const std::ifstream file(path, std::ios::binary);
  ASSERT_TRUE(file) << path << " is missing";
  std::ostringstream kept;
  kept << file.rdbuf();
  EXPECT_EQ(kept.str(), text) << "differs from " << path;
}

}  // namespace ullage::testing
