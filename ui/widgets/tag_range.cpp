// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/widgets/tag_range.h"

#include <fmt/format.h>

#include <algorithm>
#include <cctype>
#include <charconv>

#include "core/cellar/entry.h"
#include "core/cellar/limits.h"

namespace ullage::ui {

namespace {

struct SplitTag {
  std::string letters;
  std::string digits;
};

SplitTag split(std::string_view tag) {
  std::size_t digits = tag.size();
  while (digits > 0 && std::isdigit(static_cast<unsigned char>(tag[digits - 1]))) --digits;
  return {std::string(tag.substr(0, digits)), std::string(tag.substr(digits))};
}

std::size_t longest_tag() { return cellar::text_limit(cellar::KegRecord::kind, "tag"); }

std::size_t characters(std::string_view utf8) {
  return static_cast<std::size_t>(std::count_if(utf8.begin(), utf8.end(), [](char c) {
    return (static_cast<unsigned char>(c) & 0xC0U) != 0x80U;  // not a continuation
  }));
}

bool same_tag(const std::string& a, const std::string& b) {
  return std::equal(a.begin(), a.end(), b.begin(), b.end(), [](unsigned char x, unsigned char y) {
    return std::tolower(x) == std::tolower(y);
  });
}

std::string_view trimmed(std::string_view text) {
  while (!text.empty() && text.front() == ' ') text.remove_prefix(1);
  while (!text.empty() && text.back() == ' ') text.remove_suffix(1);
  return text;
}

using Tags = std::vector<std::string>;
std::unexpected<TagError> refuse(TagFault fault, std::string_view typed) {
  return std::unexpected(TagError{fault, std::string(typed)});
}

std::expected<Tags, TagError> expand_range(std::string_view first, std::string_view last,
                                           std::string_view item) {
  SplitTag from = split(first);
  SplitTag to = split(last);
  if (to.letters.empty()) to.letters = from.letters;  // "K01..08"
  if (from.digits.empty() || to.digits.empty()) return refuse(TagFault::range_no_number, item);
  if (!same_tag(from.letters, to.letters)) return refuse(TagFault::range_mixed, item);
  constexpr std::size_t most_digits = 9;
  if (from.digits.size() > most_digits || to.digits.size() > most_digits) {
    return refuse(TagFault::too_long, item);
  }
  int low = 0;
  int high = 0;
  std::from_chars(from.digits.data(), from.digits.data() + from.digits.size(), low);
  std::from_chars(to.digits.data(), to.digits.data() + to.digits.size(), high);
  if (high < low) return refuse(TagFault::range_backward, item);
  if (static_cast<std::size_t>(high - low) >= most_tags_at_once) {
    return refuse(TagFault::too_many, item);
  }
  Tags tags;
  for (int n = low; n <= high; ++n) {
    tags.push_back(fmt::format("{}{:0{}}", from.letters, n, from.digits.size()));
  }
  return tags;
}

std::expected<Tags, TagError> expand_item(std::string_view item) {
  const auto dots = item.find("..");
  if (dots != std::string_view::npos) {
    return expand_range(trimmed(item.substr(0, dots)), trimmed(item.substr(dots + 2)), item);
  }
  const auto dash = item.find('-');
  if (dash != std::string_view::npos && dash > 0) {
    const std::string_view first = trimmed(item.substr(0, dash));
    const std::string_view last = trimmed(item.substr(dash + 1));
    // "BAR-2" is one tag; "K01-K08" and "K01-08" are ranges.
    if (!split(first).digits.empty() && !split(last).digits.empty()) {
      return expand_range(first, last, item);
    }
  }
  return Tags{std::string(item)};
}

// Blanks around ".." belong to the range; elsewhere they part items.
std::vector<std::string> items_of(std::string_view text) {
  std::string joined(text);
  for (std::size_t at = joined.find(".."); at != std::string::npos;
       at = joined.find("..", at + 2)) {
    while (at > 0 && joined[at - 1] == ' ') joined.erase(--at, 1);
    while (at + 2 < joined.size() && joined[at + 2] == ' ') joined.erase(at + 2, 1);
  }
  std::vector<std::string> items;
  std::string item;
  for (const char c : joined + ",") {
    if (c == ',' || c == ';' || c == ' ' || c == '\n' || c == '\t') {
      if (!item.empty()) items.push_back(item);
      item.clear();
    } else {
      item += c;
    }
  }
  return items;
}

}  // namespace

std::expected<Tags, TagError> expand_tags(std::string_view text) {
  Tags all;
  for (const std::string& item : items_of(text)) {
    const auto tags = expand_item(item);
    if (!tags) return std::unexpected(tags.error());
    for (const std::string& tag : *tags) {
      if (characters(tag) > longest_tag()) return refuse(TagFault::too_long, tag);
      if (std::any_of(all.begin(), all.end(), [&](const auto& t) { return same_tag(t, tag); })) {
        return refuse(TagFault::repeated, tag);
      }
      all.push_back(tag);
    }
    if (all.size() > most_tags_at_once) return refuse(TagFault::too_many, item);
  }
  if (all.empty()) return refuse(TagFault::empty, text);
  return all;
}

std::string sentence(const TagError& error) {
  switch (error.fault) {
    case TagFault::empty:
      return "Type a tag, or several: “K01..K08”.";
    case TagFault::too_long:
      return fmt::format("“{}” is too long: a tag has at most {} characters.", error.typed,
                         longest_tag());
    case TagFault::range_mixed:
      return fmt::format("“{}”: both ends of a range must begin alike.", error.typed);
    case TagFault::range_backward:
      return fmt::format("“{}” runs backwards.", error.typed);
    case TagFault::range_no_number:
      return fmt::format("“{}”: both ends of a range must end in a number.", error.typed);
    case TagFault::too_many:
      return fmt::format("“{}” is more than {} kegs at once.", error.typed, most_tags_at_once);
    case TagFault::repeated:
      return fmt::format("“{}” is there twice.", error.typed);
  }
  return {};
}

}  // namespace ullage::ui
