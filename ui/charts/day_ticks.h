// SPDX-License-Identifier: GPL-3.0-or-later
//
// Where a time axis is marked: at the cellar's midnights, every day, or every
// few days or weeks when there is no room for more.
#pragma once

#include <QString>
#include <vector>

#include "core/cellar/time.h"
#include "core/report/say.h"

namespace ullage::ui {

struct DayTick {
  cellar::Instant at{};
  QString label;
};
[[nodiscard]] std::vector<DayTick> day_ticks(cellar::Instant from, cellar::Instant to, int at_most,
                                             const report::Speaker&);

}  // namespace ullage::ui
