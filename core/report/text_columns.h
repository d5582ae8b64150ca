// SPDX-License-Identifier: GPL-3.0-or-later
//
// A table in plain text: columns as wide as their widest line, cells of several
// lines, no spaces at the ends of lines. Widths count characters, not bytes.
#pragma once

#include <string>
#include <string_view>
#include <vector>

namespace ullage::report {

class TextColumns {
 public:
  void add(const std::vector<std::string>& cells, std::string_view margin = "  ");
  void add_rule();                       // a rule under the headings
  void add_line(std::string_view line);  // across the columns
  [[nodiscard]] std::string text() const;

 private:
  struct Line {
    enum class Kind { cells, rule, across } kind = Kind::cells;
    std::string margin;
    std::vector<std::string> cells;
  };
  std::vector<Line> lines_;
  std::vector<std::size_t> widths_;
};

[[nodiscard]] std::size_t characters_in(std::string_view utf8);
[[nodiscard]] std::vector<std::string> lines_of(std::string_view text);

}  // namespace ullage::report
