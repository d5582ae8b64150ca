// SPDX-License-Identifier: GPL-3.0-or-later
//
// How names, tags and initials that people type are compared: letters of ASCII
// without case, blanks around them left out.
#pragma once

#include <string>
#include <string_view>

namespace ullage::cellar {

[[nodiscard]] bool is_blank_text(std::string_view);  // nothing, or nothing but blanks

// " ab " and "AB" fold to the same.
[[nodiscard]] std::string folded_name(std::string_view);

}  // namespace ullage::cellar
