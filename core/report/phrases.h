// SPDX-License-Identifier: GPL-3.0-or-later
//
// The words of every message. {0}, {1} ... stand for its arguments; a time may
// say how: {0:day} without the hour, {0:age} "3 d ago", and a window {0:likely}
// for its likely day alone; a length {0:bore} in the unit of bores; a count {0:days}
// "1 day"; CO2 {0:over 1} by how much it is more than another argument. Where the trade says it
// differently in the US, the second text is used there.
#pragma once

#include <span>
#include <string_view>

#include "core/cellar/message_keys.h"
#include "core/report/say.h"

namespace ullage::report {

struct Phrase {
  cellar::MessageKey key{};
  std::string_view text;
  std::string_view us = {};
};

[[nodiscard]] std::span<const Phrase> phrases_of_entries();  // faults, steps, evidence
[[nodiscard]] std::span<const Phrase> phrases_of_kegs();     // state, readiness, advice
[[nodiscard]] std::span<const Phrase> phrases_of_lines();    // how a line pours
[[nodiscard]] std::span<const Phrase> phrases_of_gas();      // supplies, suspects, gauges

// Empty when a message has no words (a test sees to it that none is).
[[nodiscard]] std::string_view phrase(cellar::MessageKey, RegionalWords);

}  // namespace ullage::report
