// SPDX-License-Identifier: GPL-3.0-or-later
//
// A line that is locked is released by a check. A strike, an undo or a correction can end
// the lock without one: of the entry that locked it, or of a moment, an agent or a line
// in it. Forms ask this before they let such an act through.
#pragma once

#include <vector>

#include "core/cellar/journal.h"
#include "core/cellar/status.h"

namespace ullage::cellar {

// The locks of lines that stand now and that would stand no more after the act, which
// strikes, brings back or corrects something. An act that only adds entries ends none
// here: a release is a check.
[[nodiscard]] std::vector<LineLock> locks_ended_by(const Act&, const Journal&);

// What undoing an act would log, and what bringing it back after that would.
[[nodiscard]] Act undoing(ActId, const Journal&);
[[nodiscard]] Act redoing(ActId, const Journal&);

}  // namespace ullage::cellar
