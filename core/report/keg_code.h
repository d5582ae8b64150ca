// SPDX-License-Identifier: GPL-3.0-or-later
//
// What the code on a keg's tag says, and how it is read back from a scanner that
// types it. The text is "ullage:keg:" and the keg's tag; of the tag, letters and
// digits of ASCII and - . _ stand for themselves, every other byte of its UTF-8
// is written %XX. So the code holds nothing but the keg's number: no beer, no
// person, nothing that goes stale while the tag hangs.
//
// A scanner is a keyboard, and a computer set to another country's keyboard
// gets another character for ":". Reading therefore takes any one character
// where the colons stand, and ignores the case of "ullage" and "keg".
#pragma once

#include <optional>
#include <string>
#include <string_view>

namespace ullage::report {

inline constexpr std::string_view keg_code_start = "ullage";

[[nodiscard]] std::string keg_code(std::string_view tag);

// The keg's tag; nullopt for a text that is no keg code. Spaces and line ends
// around it do not matter.
[[nodiscard]] std::optional<std::string> keg_from_scan(std::string_view typed);

}  // namespace ullage::report
