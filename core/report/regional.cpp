// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/report/regional.h"

#include <algorithm>
#include <array>
#include <cctype>

namespace ullage::report {
namespace {

struct RegionalWord {
  std::string_view british, us;
};
constexpr auto regional_words = std::to_array<RegionalWord>({{"tap", "faucet"},
                                                             {"taps", "faucets"},
                                                             {"sanitise", "sanitize"},
                                                             {"sanitises", "sanitizes"},
                                                             {"sanitised", "sanitized"},
                                                             {"sanitiser", "sanitizer"},
                                                             {"sanitisers", "sanitizers"},
                                                             {"sanitising", "sanitizing"},
                                                             {"litre", "liter"},
                                                             {"litres", "liters"},
                                                             {"millilitre", "milliliter"},
                                                             {"millilitres", "milliliters"},
                                                             {"metre", "meter"},
                                                             {"metres", "meters"}});
// A tap that is no beer faucet, by the word before it or after it.
constexpr auto before_other_tap = std::to_array<std::string_view>({"on", "off", "picnic"});
constexpr auto after_other_tap = std::to_array<std::string_view>({"water"});

// How long the sign at `at` is that parts words: quotes, dashes and the apostrophe
// take three bytes. 0: it is of a word, a letter of any language or the mark of the
// letter that reaches a field.
std::size_t parting_sign(std::string_view text, std::size_t at) {
  if (text.substr(at).starts_with("\xE2\x80")) return std::min<std::size_t>(3, text.size() - at);
  const auto u = static_cast<unsigned char>(text[at]);
  return std::isalnum(u) != 0 || u >= 0x80 || u == '&' || u == '_' ? 0 : 1;
}

std::string plain(std::string_view word) {
  std::string out;
  for (const char c : word) {
    if (c != '&') out += static_cast<char>(std::tolower(static_cast<unsigned char>(c)));
  }
  return out;
}

std::size_t end_of_word(std::string_view text, std::size_t at) {
  while (at < text.size() && parting_sign(text, at) == 0) ++at;
  return at;
}

// The word that stands right behind, with a space between.
std::string next_word(std::string_view text, std::size_t at) {
  if (at >= text.size() || text[at] != ' ') return {};
  return plain(text.substr(at + 1, end_of_word(text, at + 1) - at - 1));
}

template <std::size_t N>
bool holds(const std::array<std::string_view, N>& words, std::string_view word) {
  return std::find(words.begin(), words.end(), word) != words.end();
}

// In the other spelling, with the capital and the mark it had.
std::string in_place_of(std::string_view word, std::string_view us) {
  std::string out(us);
  const auto mark = word.find('&');
  const auto at_first = static_cast<unsigned char>(word[mark == 0 ? 1 : 0]);
  if (std::isupper(at_first) != 0) {
    out.front() = static_cast<char>(std::toupper(static_cast<unsigned char>(out.front())));
  }
  if (mark == std::string_view::npos) return out;
  // At the same letter where the word still has it.
  const auto letter = mark == 0 ? std::string_view() : word.substr(mark + 1, 1);
  const auto at = letter.empty() ? std::string::npos : out.find(letter, mark);
  out.insert(at == std::string::npos ? 0 : at, "&");
  return out;
}

}  // namespace

std::string regional(std::string_view said, RegionalWords words) {
  if (words != RegionalWords::us) return std::string(said);
  std::string out;
  std::string before;  // the word before, right next to this one
  for (std::size_t at = 0; at < said.size();) {
    if (const std::size_t sign = parting_sign(said, at); sign > 0) {
      if (said[at] != ' ') before.clear();
      out += said.substr(at, sign);
      at += sign;
      continue;
    }
    const std::size_t end = end_of_word(said, at);
    const std::string_view word = said.substr(at, end - at);
    const std::string known = plain(word);
    const auto* to = std::find_if(regional_words.begin(), regional_words.end(),
                                  [&](const RegionalWord& w) { return w.british == known; });
    const bool other_tap = known == "tap" && (holds(before_other_tap, before) ||
                                              holds(after_other_tap, next_word(said, end)));
    const bool change = to != regional_words.end() && !other_tap;
    out += change ? in_place_of(word, to->us) : std::string(word);
    before = known;
    at = end;
  }
  return out;
}

}  // namespace ullage::report
