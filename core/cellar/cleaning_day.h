// SPDX-License-Identifier: GPL-3.0-or-later
//
// Inside of cleaning_plan.h: which of the due work a day takes on, and why it leaves
// out what it does.
#pragma once

#include <optional>
#include <vector>

#include "core/cellar/cleaning_plan.h"

namespace ullage::cellar {

// Puts the tasks of `planned.day` on it, and what is due by then and left out.
void fill_day(PlannedDay& planned, const std::vector<DueWork>& all, const CellarStatus&,
              const LocalCalendar&, const PlanWishes&);

// Work for which a keg has to be empty, which it is not now.
[[nodiscard]] bool keg_has_beer(const DueWork&, const CellarStatus&);
// When a keg is expected to run empty; null where no forecast tells.
[[nodiscard]] const EmptyForecast* forecast_of(KegId, const PlanWishes&);
// The first day on which the work can be done: a keg with beer in it has to run
// empty before. Nothing when that can't be told.
[[nodiscard]] std::optional<Date> doable_from(const DueWork&, const CellarStatus&,
                                              const LocalCalendar&, const PlanWishes&);

}  // namespace ullage::cellar
