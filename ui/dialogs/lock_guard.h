// SPDX-License-Identifier: GPL-3.0-or-later
//
// A line that is locked is released by a check. Taking back the entry that locked it, by
// striking or undoing, would end the lock without one: that is asked before, and Enter
// keeps it locked.
#pragma once

#include <vector>

#include "core/cellar/entry.h"

class QWidget;

namespace ullage::ui {

struct Context;

// True when none of these entries keeps a line locked, or the person says that no cleaner
// went into it.
[[nodiscard]] bool may_strike(const Context&, QWidget* parent,
                              const std::vector<cellar::EntryId>& entries);

// The same of all that undo would take back.
[[nodiscard]] bool may_undo(const Context&, QWidget* parent);

}  // namespace ullage::ui
