// SPDX-License-Identifier: GPL-3.0-or-later
//
// What usually follows a keg's state, as buttons. What the cellar advises is
// beside its advice and not repeated here.
#pragma once

#include <QString>
#include <vector>

#include "core/cellar/status.h"
#include "core/report/say.h"

namespace ullage::ui {

struct LikelyTask {
  QString label;  // "Set gas…"
  cellar::SuggestedTask task;
};

[[nodiscard]] std::vector<LikelyTask> likely_tasks(const cellar::KegStatus&, report::RegionalWords);

// What a button that opens the form of this kind says: "Log a purge…".
[[nodiscard]] QString task_label(std::string_view kind, report::RegionalWords);

}  // namespace ullage::ui
