// SPDX-License-Identifier: GPL-3.0-or-later
//
// The words of a typed moment, and the parts every such text is made of: a day
// (relative, weekday, or date) and a time of day. Used by when_text.cpp alone.
#pragma once

#include <chrono>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "core/cellar/time.h"

namespace ullage::ui {

struct WhenToken {
  enum class Kind { number, word, mark } kind = Kind::mark;
  std::string text;
};
// Lower case; blanks and commas part tokens and vanish.
[[nodiscard]] std::vector<WhenToken> scan_when(std::string_view);

// Reads tokens from the front; each reader moves on only when it succeeds.
class WhenScanner {
 public:
  explicit WhenScanner(std::vector<WhenToken> tokens) : tokens_(std::move(tokens)) {}

  [[nodiscard]] bool at_end() const { return next_ >= tokens_.size(); }
  bool word(std::string_view);
  bool mark(char);
  std::optional<int> number();  // up to six digits
  std::optional<int> peek_number(std::size_t ahead = 0) const;
  [[nodiscard]] bool peek_mark(char, std::size_t ahead) const;
  std::optional<std::chrono::month> month();
  std::optional<std::chrono::weekday> weekday();
  // "2 h", "1 h 30 min", "3 days"; nullopt when it does not start so.
  std::optional<std::chrono::seconds> span();
  // "22:00", "9am", "7:30 pm", "noon", "evening"; past midnight is refused.
  std::optional<std::chrono::seconds> time_of_day();
  [[nodiscard]] std::size_t position() const { return next_; }
  void back_to(std::size_t position) { next_ = position; }

 private:
  std::optional<std::chrono::seconds> clock_time();
  [[nodiscard]] const WhenToken* peek(std::size_t ahead = 0) const;
  std::vector<WhenToken> tokens_;
  std::size_t next_ = 0;
};

}  // namespace ullage::ui
