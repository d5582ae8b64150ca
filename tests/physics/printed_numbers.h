// SPDX-License-Identifier: GPL-3.0-or-later
//
// The numbers as a page of docs/ prints them, to hold the code against: a sentence
// by its words, its numbers by groups of the expression.
//
//   const auto n = printed("physics-purge.md", R"(leave (\d+) ppm)");
//   EXPECT_PRINTED(in_ppm(out.oxygen), n[0], 3);   // 3 digits that count
#pragma once

#include <gtest/gtest.h>

#include <algorithm>
#include <cmath>
#include <fstream>
#include <regex>
#include <sstream>
#include <string>
#include <vector>

namespace ullage::physics::cases {

// As they stand on the page, spaces between thousands taken out. Empty, and the test
// fails, where the page no longer says this.
inline std::vector<std::string> printed(const std::string& page, const std::string& sentence) {
  const std::ifstream file(std::string(ULLAGE_SOURCE_DIR "/docs/") + page);
  std::stringstream all;
  all << file.rdbuf();
  const std::string text = all.str();
  std::smatch found;
  if (!std::regex_search(text, found, std::regex(sentence))) {
    ADD_FAILURE() << page << " says nothing like: " << sentence;
    return {};
  }
  std::vector<std::string> numbers;
  for (std::size_t i = 1; i < found.size(); ++i) {
    std::string number = found[i].str();
    std::erase(number, ' ');
    numbers.push_back(std::move(number));
  }
  return numbers;
}

// Half a unit of the last digit that counts: of a decimal fraction the last one
// printed, of a whole number the `digits`-th (0: the last).
inline double half_unit(const std::string& number, int digits = 0) {
  const auto mark = number.find('.');
  if (mark != std::string::npos) {
    return 0.5 * std::pow(10.0, -static_cast<double>(number.size() - mark - 1));
  }
  const int size = static_cast<int>(number.size());
  return 0.5 * std::pow(10.0, digits > 0 ? std::max(0, size - digits) : 0);
}

}  // namespace ullage::physics::cases

// `computed` rounds to what is printed; `digits` of a whole number count.
#define EXPECT_PRINTED(computed, number, digits) \
  EXPECT_NEAR(computed, std::stod(number),       \
              ::ullage::physics::cases::half_unit(number, digits) * (1 + 1e-9))
