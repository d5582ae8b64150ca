// SPDX-License-Identifier: GPL-3.0-or-later
//
// The published tables beside these tests, row by row. Quoted fields may hold
// commas. A table or column that is absent ends the test program: a check that
// reads nothing must not pass.
#pragma once

#include <map>
#include <optional>
#include <string>
#include <vector>

namespace ullage::published {

class Row {
 public:
  explicit Row(std::map<std::string, std::string> fields) : fields_(std::move(fields)) {}
  [[nodiscard]] const std::string& text(const std::string& column) const;
  [[nodiscard]] double number(const std::string& column) const;
  [[nodiscard]] std::optional<double> maybe(const std::string& column) const;

 private:
  std::map<std::string, std::string> fields_;
};

[[nodiscard]] std::vector<Row> table(const std::string& file);

}  // namespace ullage::published
