// SPDX-License-Identifier: GPL-3.0-or-later
//
// Inside of cleaning_plan.h: the tasks of a day as steps in the safe order, with
// what each takes.
#pragma once

#include "core/cellar/cleaning_plan.h"

namespace ullage::cellar {

// `standing`: lines that are locked already, whose cleaner has to come out as well.
[[nodiscard]] std::vector<PlanStep> steps_of(const std::vector<DueWork>& tasks, const CellarStatus&,
                                             const CleaningKit&,
                                             const std::vector<LineLock>& standing);

// Minutes at the thing itself.
[[nodiscard]] units::Duration hands_on(WorkKind, const WorkMinutes&);
[[nodiscard]] inline bool is_keg(const DueWork& w) { return w.about.kind == SubjectKind::keg; }

}  // namespace ullage::cellar
