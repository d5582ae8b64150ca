// SPDX-License-Identifier: GPL-3.0-or-later
//
// The units a cellar's preset stands for, until the person chooses others.
#pragma once

#include "core/cellar/records.h"
#include "core/units/display_units.h"

namespace ullage::report {

[[nodiscard]] units::DisplayUnits units_of(cellar::UnitsPreset preset);

}  // namespace ullage::report
