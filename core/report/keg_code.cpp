// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/report/keg_code.h"

#include <fmt/format.h>

#include <algorithm>
#include <charconv>

namespace ullage::report {

namespace {

bool stands_for_itself(char c) {
  return (c >= 'a' && c <= 'z') || (c >= 'A' && c <= 'Z') || (c >= '0' && c <= '9') || c == '-' ||
         c == '.' || c == '_';
}

char low(char c) { return c >= 'A' && c <= 'Z' ? static_cast<char>(c - 'A' + 'a') : c; }

// Takes `word` off the front, ignoring case.
bool take(std::string_view& text, std::string_view word) {
  if (text.size() < word.size()) return false;
  for (std::size_t i = 0; i < word.size(); ++i) {
    if (low(text[i]) != word[i]) return false;
  }
  text.remove_prefix(word.size());
  return true;
}

// Takes one character, of however many bytes, that is neither letter nor digit
// of ASCII.
bool take_mark(std::string_view& text) {
  if (text.empty()) return false;
  const char first = text.front();
  if (stands_for_itself(first) && first != '.' && first != '-' && first != '_') return false;
  text.remove_prefix(1);
  while (!text.empty() && (static_cast<unsigned char>(text.front()) & 0xC0U) == 0x80U) {
    text.remove_prefix(1);
  }
  return true;
}

std::optional<std::string> decoded(std::string_view text) {
  std::string tag;
  while (!text.empty()) {
    if (text.front() != '%') {
      if (!stands_for_itself(text.front())) return std::nullopt;
      tag += text.front();
      text.remove_prefix(1);
      continue;
    }
    if (text.size() < 3) return std::nullopt;
    unsigned value = 0;
    const auto [end, fault] = std::from_chars(text.data() + 1, text.data() + 3, value, 16);
    if (fault != std::errc() || end != text.data() + 3) return std::nullopt;
    tag += static_cast<char>(value);
    text.remove_prefix(3);
  }
  return tag.empty() ? std::nullopt : std::optional(tag);
}

std::string_view trimmed(std::string_view text) {
  constexpr std::string_view blank = " \t\r\n";
  const auto first = text.find_first_not_of(blank);
  if (first == std::string_view::npos) return {};
  return text.substr(first, text.find_last_not_of(blank) - first + 1);
}

}  // namespace

std::string keg_code(std::string_view tag) {
  std::string code = "ullage:keg:";
  for (const char c : tag) {
    if (stands_for_itself(c)) {
      code += c;
    } else {
      code += fmt::format("%{:02X}", static_cast<unsigned>(static_cast<unsigned char>(c)));
    }
  }
  return code;
}

std::optional<std::string> keg_from_scan(std::string_view typed) {
  std::string_view text = trimmed(typed);
  if (!take(text, keg_code_start) || !take_mark(text) || !take(text, "keg") || !take_mark(text)) {
    return std::nullopt;
  }
  return decoded(text);
}

}  // namespace ullage::report
