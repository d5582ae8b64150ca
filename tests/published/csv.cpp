// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/published/csv.h"

#include <fstream>
#include <stdexcept>

namespace ullage::published {

namespace {

std::vector<std::string> split(const std::string& line) {
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

}  // namespace

const std::string& Row::text(const std::string& column) const { return fields_.at(column); }

double Row::number(const std::string& column) const { return std::stod(text(column)); }

std::optional<double> Row::maybe(const std::string& column) const {
  return text(column).empty() ? std::nullopt : std::optional(number(column));
}

std::vector<Row> table(const std::string& file) {
  std::ifstream in(std::string(ULLAGE_TESTS_DIR) + "/published/" + file);
  std::string line;
  if (!std::getline(in, line)) throw std::runtime_error("no table " + file);
  const std::vector<std::string> columns = split(line);
  std::vector<Row> rows;
  while (std::getline(in, line)) {
    const std::vector<std::string> fields = split(line);
    if (fields.size() != columns.size()) throw std::runtime_error(file + ": " + line);
    std::map<std::string, std::string> row;
    for (std::size_t i = 0; i < columns.size(); ++i) row[columns[i]] = fields[i];
    rows.emplace_back(std::move(row));
  }
  if (rows.empty()) throw std::runtime_error("empty table " + file);
  return rows;
}

}  // namespace ullage::published
