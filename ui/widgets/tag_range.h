// SPDX-License-Identifier: GPL-3.0-or-later
//
// "K01..K08, K12" as the tags it stands for.
#pragma once

#include <expected>
#include <string>
#include <string_view>
#include <vector>

namespace ullage::ui {

inline constexpr std::size_t most_tags_at_once = 200;

enum class TagFault {
  empty,
  too_long,         // one tag over what the register takes
  range_mixed,      // "K01..B08": the letters before the number differ
  range_backward,   // "K08..K01"
  range_no_number,  // "K..L"
  too_many,
  repeated  // the same tag twice in the list
};
struct TagError {
  TagFault fault = TagFault::empty;
  std::string typed;
};

// Items are separated by commas, semicolons or spaces; a range is written with
// ".." or "-" between two tags that end in digits and keeps leading zeros.
[[nodiscard]] std::expected<std::vector<std::string>, TagError> expand_tags(std::string_view);
[[nodiscard]] std::string sentence(const TagError&);

}  // namespace ullage::ui
