// SPDX-License-Identifier: GPL-3.0-or-later
//
// What a keg's own readings teach about how fast it takes up CO2.
//
// Prior: the time constant of CarbonationRates (4 days, 95 % 2 to 8, for an
// undisturbed 19 L soda keg; carbonation.h), normal in its logarithm. A reading
// y_i of the beer's CO2 at a time t_i (by meter, or pressure and temperature at
// rest) and the history agree when
//
//   y_i - C_i(x) = sum_s (J_is(x) - H_is) u_s + own error of the reading
//
// x the logarithm of the time constant, u_s the other named sources (a dial's
// bias, CO2 at the fill ...), J what they do to the model and H to the reading:
// the bias of the dial that set the gas and was read at rest counts once. Given
// x all of it is normal, so u is integrated out exactly and the posterior of x is
// known on a grid of 89 points. Nothing is random. Given the readings, u and x
// are correlated; the model's band follows both (docs/physics-carbonation.md).
//
// Readings that a history could give less than once in a thousand times are a
// conflict: something is missing or mistyped. Nothing is learned from them; the history
// may go on from a reading that tells more than it does by then (co2_by_history).
#pragma once

#include "core/physics/carbonation.h"

namespace ullage::physics {

// What a history's readings teach, alone. Refuses what CarbonationModel::make
// refuses, and a history without readings (Subject::cycles).
[[nodiscard]] Result<RatePosterior> rate_posterior(const CarbonationHistory&,
                                                   const CarbonationRates&);

// What CarbonationModel::co2_at makes of a history whose readings are not asked, at one
// time: without all the days after it, which are most of a model's work.
[[nodiscard]] Result<units::Estimate<units::Co2Volumes>> co2_by_history(const CarbonationHistory&,
                                                                        const CarbonationRates&,
                                                                        units::Duration at);

}  // namespace ullage::physics
