// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/report/text_columns.h"

#include <algorithm>
#include <numeric>

namespace ullage::report {

std::size_t characters_in(std::string_view utf8) {
  return static_cast<std::size_t>(std::count_if(utf8.begin(), utf8.end(), [](char c) {
    return (static_cast<unsigned char>(c) & 0xC0U) != 0x80U;  // not a continuation byte
  }));
}

std::vector<std::string> lines_of(std::string_view text) {
  std::vector<std::string> lines;
  while (true) {
    const auto end = text.find('\n');
    lines.emplace_back(text.substr(0, end));
    if (end == std::string_view::npos) return lines;
    text.remove_prefix(end + 1);
  }
}

void TextColumns::add(const std::vector<std::string>& cells, std::string_view margin) {
  std::vector<std::vector<std::string>> parts;
  std::size_t height = 1;
  widths_.resize(std::max(widths_.size(), cells.size()));
  for (std::size_t i = 0; i < cells.size(); ++i) {
    parts.push_back(lines_of(cells[i]));
    height = std::max(height, parts.back().size());
    for (const std::string& line : parts.back()) {
      widths_[i] = std::max(widths_[i], characters_in(line));
    }
  }
  for (std::size_t row = 0; row < height; ++row) {
    Line line{
        Line::Kind::cells, row == 0 ? std::string(margin) : std::string(margin.size(), ' '), {}};
    for (const auto& part : parts) {
      line.cells.push_back(row < part.size() ? part[row] : std::string());
    }
    lines_.push_back(std::move(line));
  }
}

void TextColumns::add_rule() { lines_.push_back({Line::Kind::rule, {}, {}}); }

void TextColumns::add_line(std::string_view line) {
  lines_.push_back({Line::Kind::across, {}, {std::string(line)}});
}

std::string TextColumns::text() const {
  const std::size_t whole =
      std::accumulate(widths_.begin(), widths_.end(), 2 * std::max<std::size_t>(1, widths_.size()));
  std::string out;
  for (const Line& line : lines_) {
    std::string drawn = line.margin;
    if (line.kind == Line::Kind::rule) {
      drawn.append(whole, '-');
    } else if (line.kind == Line::Kind::across) {
      drawn += line.cells.front();
    } else {
      for (std::size_t i = 0; i < line.cells.size(); ++i) {
        drawn += line.cells[i];
        drawn.append(widths_[i] + 2 - characters_in(line.cells[i]), ' ');
      }
    }
    drawn.erase(drawn.find_last_not_of(' ') + 1);
    out += drawn + "\n";
  }
  return out;
}

}  // namespace ullage::report
