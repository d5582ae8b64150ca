// SPDX-License-Identifier: GPL-3.0-or-later
//
// What the window's commands do to files and to the program as a whole.
#pragma once

#include "ui/main_window.h"

namespace ullage::app {

class Desk;

[[nodiscard]] ui::AppCommands window_commands(Desk& desk);

}  // namespace ullage::app
