// SPDX-License-Identifier: GPL-3.0-or-later
//
// A line that is locked is released by a check. A strike, an undo or a correction that
// would end the lock without one is asked about before, and Enter keeps the line locked.
#pragma once

#include <vector>

#include "core/cellar/entry.h"

class QWidget;

namespace ullage::ui {

struct Context;

// True when the act would end no lock, or the person says that no cleaner went in.
[[nodiscard]] bool may_strike(const Context&, QWidget* parent,
                              const std::vector<cellar::EntryId>& entries);
[[nodiscard]] bool may_correct(const Context&, QWidget* parent, cellar::EntryId entry,
                               cellar::Draft as);
// The same of all that undo would take back, or redo bring again.
[[nodiscard]] bool may_undo(const Context&, QWidget* parent);
[[nodiscard]] bool may_redo(const Context&, QWidget* parent);

}  // namespace ullage::ui
