// SPDX-License-Identifier: GPL-3.0-or-later
//
// The verdict on a keg's hold test, from its first and last reading. A reading
// without a temperature is taken at 15 °C within 3 °C either way, which widens
// the verdict as it should.
#pragma once

#include <vector>

#include "core/cellar/keg_timeline.h"

namespace ullage::cellar {

// `readings` are HoldReading entries of one test on an empty keg, in order; not empty.
[[nodiscard]] HoldState hold_test(const std::vector<const Entry*>& readings, const KegRecord&,
                                  Lookup&);

}  // namespace ullage::cellar
