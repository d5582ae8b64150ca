// SPDX-License-Identifier: GPL-3.0-or-later
//
// Typed text made plain before anything reads it: any bytes in, and a short
// line with one kind of space, minus, slash and degree sign out.
#pragma once

#include <string>
#include <string_view>

namespace ullage::units {

// Longer input is not a quantity; parsing refuses it unread.
inline constexpr std::size_t longest_typed = 100;

// Every space (no-break, thin, tab ...) becomes ' ', every minus or dash '-',
// "½" becomes " 1/2", primes become ' and ", "º" and "℃" become "°" and "°C".
// Runs of spaces collapse and the ends are trimmed. Other bytes pass unchanged.
[[nodiscard]] std::string plain_text(std::string_view typed);

// Fit to quote in a message: valid UTF-8 (anything else is shown as U+FFFD), no
// control characters, at most 40 characters with "…" for the rest.
[[nodiscard]] std::string quotable(std::string_view typed);

}  // namespace ullage::units
