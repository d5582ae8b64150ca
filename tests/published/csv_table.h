// SPDX-License-Identifier: GPL-3.0-or-later
//
// Reading a reference table that stands beside the tests.
#pragma once

#include <fstream>
#include <string>
#include <vector>

namespace ullage::published {

// Fields in quotes may hold commas.
inline std::vector<std::string> csv_fields(const std::string& line) {
  std::vector<std::string> fields(1);
  bool quoted = false;
  for (const char c : line) {
    if (c == '"') {
      quoted = !quoted;
    } else if (c == ',' && !quoted) {
      fields.emplace_back();
    } else if (c != '\r') {
      fields.back() += c;
    }
  }
  return fields;
}

// The rows of tests/published/<name> without the heading.
inline std::vector<std::vector<std::string>> csv_rows(const std::string& name) {
  std::ifstream file(std::string(ULLAGE_TESTS_DIR) + "/published/" + name);
  std::vector<std::vector<std::string>> rows;
  std::string line;
  std::getline(file, line);
  while (std::getline(file, line)) rows.push_back(csv_fields(line));
  return rows;
}

}  // namespace ullage::published
