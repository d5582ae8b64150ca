// SPDX-License-Identifier: GPL-3.0-or-later
//
// What the program tells a script. These numbers do not change.
#pragma once

namespace ullage::app {

enum ExitCode : int {
  exit_ok = 0,
  exit_refused = 1,       // something was found or refused: the text says what
  exit_usage = 2,         // the command line made no sense
  exit_no_display = 3,    // a window was asked for and there is nothing to show it on
  exit_file_problem = 4,  // a file could not be read or written
};

}  // namespace ullage::app
