// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/units/typed_text.h"

#include <algorithm>
#include <array>
#include <utility>

namespace ullage::units {

namespace {

using Replacement = std::pair<std::string_view, std::string_view>;

constexpr std::array replacements = {
    Replacement{"\t", " "},
    Replacement{"\n", " "},
    Replacement{"\r", " "},
    Replacement{"\u00A0", " "},  // no-break space
    Replacement{"\u2002", " "},  // en space
    Replacement{"\u2003", " "},  // em space
    Replacement{"\u2007", " "},  // figure space
    Replacement{"\u2009", " "},  // thin space
    Replacement{"\u200A", " "},  // hair space
    Replacement{"\u202F", " "},  // narrow no-break space
    Replacement{"\u2212", "-"},  // minus
    Replacement{"\u2010", "-"},  // hyphen
    Replacement{"\u2011", "-"},  // no-break hyphen
    Replacement{"\u2012", "-"},  // figure dash
    Replacement{"\u2013", "-"},  // en dash
    Replacement{"\uFE63", "-"},  // small hyphen-minus
    Replacement{"\uFF0D", "-"},  // full-width hyphen-minus
    Replacement{"\u2044", "/"},  // fraction slash
    Replacement{"\u2032", "'"},
    Replacement{"\u2019", "'"},
    Replacement{"\u2033", "\""},
    Replacement{"\u201D", "\""},
    Replacement{"''", "\""},
    Replacement{"\u00BA", "\u00B0"},  // ordinal sign typed for a degree sign
    Replacement{"\u02DA", "\u00B0"},  // ring above, likewise
    Replacement{"\u2103",
                "\u00B0"
                "C"},
    Replacement{"\u2109",
                "\u00B0"
                "F"},
    Replacement{"\u00BD", " 1/2"},
    Replacement{"\u2153", " 1/3"},
    Replacement{"\u2154", " 2/3"},
    Replacement{"\u00BC", " 1/4"},
    Replacement{"\u00BE", " 3/4"},
    Replacement{"\u215B", " 1/8"},
    Replacement{"\u215C", " 3/8"},
    Replacement{"\u215D", " 5/8"},
    Replacement{"\u215E", " 7/8"},
};

// How many bytes the well-formed UTF-8 character at the front takes; 0 if it is
// not well-formed.
std::size_t character_length(std::string_view text) {
  const auto byte = [&](std::size_t i) { return static_cast<unsigned char>(text[i]); };
  const unsigned char first = byte(0);
  const std::size_t length = first < 0x80                     ? 1
                             : first >= 0xC2 && first <= 0xDF ? 2
                             : first >= 0xE0 && first <= 0xEF ? 3
                             : first >= 0xF0 && first <= 0xF4 ? 4
                                                              : 0;
  if (length == 0 || length > text.size()) return 0;
  for (std::size_t i = 1; i < length; ++i) {
    if ((byte(i) & 0xC0) != 0x80) return 0;
  }
  // Overlong forms, surrogates and what lies past U+10FFFF.
  if (first == 0xE0 && byte(1) < 0xA0) return 0;
  if (first == 0xED && byte(1) > 0x9F) return 0;
  if (first == 0xF0 && byte(1) < 0x90) return 0;
  if (first == 0xF4 && byte(1) > 0x8F) return 0;
  return length;
}

}  // namespace

std::string plain_text(std::string_view typed) {
  std::string out;
  while (!typed.empty()) {
    const auto* at = std::find_if(replacements.begin(), replacements.end(),
                                  [&](const Replacement& r) { return typed.starts_with(r.first); });
    const std::size_t taken = at == replacements.end() ? 1 : at->first.size();
    for (const char c : at == replacements.end() ? typed.substr(0, 1) : at->second) {
      if (c != ' ' || (!out.empty() && out.back() != ' ')) out.push_back(c);
    }
    typed.remove_prefix(taken);
  }
  if (out.ends_with(' ')) out.pop_back();
  return out;
}

std::string quotable(std::string_view typed) {
  constexpr std::size_t longest_quote = 40;
  std::string out;
  for (std::size_t characters = 0; !typed.empty(); ++characters) {
    if (characters == longest_quote) return out + "…";
    const std::size_t length = character_length(typed);
    const bool control =
        length == 1 && (static_cast<unsigned char>(typed[0]) < 0x20 || typed[0] == 0x7F);
    if (length == 0) {
      out += "\uFFFD";
    } else if (control) {
      out += ' ';
    } else {
      out += typed.substr(0, length);
    }
    typed.remove_prefix(std::max<std::size_t>(length, 1));
  }
  return out;
}

}  // namespace ullage::units
