// SPDX-License-Identifier: GPL-3.0-or-later
//
// Whether a window can be shown. Asked before Qt is: its platform plugin ends
// the program when it finds no display.
#pragma once

#include <functional>
#include <optional>
#include <string>

namespace ullage::app {

// What the answer depends on; the machine's unless a test says otherwise.
struct DisplayQuestions {
  std::function<std::string(const char* variable)> environment;  // empty when unset
  std::function<bool()> x_answers;                               // the server DISPLAY names
  std::function<bool(const std::string& name)> wayland_answers;  // WAYLAND_DISPLAY
  [[nodiscard]] static DisplayQuestions of_this_machine();
};

// A sentence saying why there is no display; nullopt when there is one.
[[nodiscard]] std::optional<std::string> why_no_display(
    const DisplayQuestions& = DisplayQuestions::of_this_machine());

}  // namespace ullage::app
