// SPDX-License-Identifier: GPL-3.0-or-later
//
// What a keg can weigh with all that is in it: no less than the empty keg, no more than
// filled to the brim with the densest wort (1300 kg/m³). What it weighs empty may be a
// preset's figure, so half as much again is let pass either way.
#pragma once

#include <optional>

#include "core/cellar/records.h"

namespace ullage::cellar {

struct KegWeights {
  Mass least, most;
};

// Nothing where nobody stated what the empty keg weighs.
[[nodiscard]] std::optional<KegWeights> keg_weights(const KegRecord&);

// About what it weighs with so much beer in it, a kilogram a litre: where one begins to
// look for the reading, no answer.
[[nodiscard]] std::optional<Mass> usual_weight(const KegRecord&, Volume beer);

}  // namespace ullage::cellar
