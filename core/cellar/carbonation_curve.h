// SPDX-License-Identifier: GPL-3.0-or-later
//
// A keg's CO2 over time, as the chart shows it.
#pragma once

#include <optional>

#include "core/cellar/keg_moment.h"

namespace ullage::cellar {

[[nodiscard]] CarbonationCurveData carbonation_curve_of(const KegTimeline&, Instant now,
                                                        const LocalCalendar&,
                                                        std::optional<Instant> from,
                                                        std::optional<Instant> to);

}  // namespace ullage::cellar
