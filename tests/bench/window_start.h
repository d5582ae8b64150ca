// SPDX-License-Identifier: GPL-3.0-or-later
//
// The program's start, for a process of its own: shows a window and ends once it
// is painted and waits for its person.
#pragma once

#include <string>

namespace ullage::bench {

// "empty": a bare window of Qt's; "demo": the demo cellar, made anew; otherwise
// the cellar in that file. The exit code of the process.
[[nodiscard]] int show_a_window_and_leave(const std::string& what, int& argc, char** argv);

}  // namespace ullage::bench
