// SPDX-License-Identifier: GPL-3.0-or-later
//
// Purges in words, planned and logged.
#pragma once

#include <string>

#include "core/cellar/entry.h"
#include "core/physics/purge_plan.h"
#include "core/units/printing.h"

namespace ullage::report::cards {

[[nodiscard]] std::string purge_times(int);  // "once", "3 times"
// "fill to 30 psi and vent, 3 times"
[[nodiscard]] std::string purge_way_words(const physics::PurgePlan&, const units::Printer&,
                                          units::GaugePressure push);
[[nodiscard]] std::string purge_short_name(const physics::PurgePlan&, const units::Printer&);
// Of an entry that tells a purge: "Filled to 30 psi and vented, 5 times".
[[nodiscard]] std::string purge_done_words(const cellar::Entry&, const units::Printer&);

}  // namespace ullage::report::cards
