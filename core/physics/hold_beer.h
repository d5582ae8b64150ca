// SPDX-License-Identifier: GPL-3.0-or-later
//
// A hold test of a keg with beer in it: mostly not decidable, and then it says so.
//
// The beer takes up and gives off gas: 1 psi in the litre above a full 19 L keg is
// 0.13 g, which the beer takes up by 0.004 volumes; 1 C moves its equilibrium by
// some 1 psi. What is lost is the fall of the sum of both,
//
//   lost = n_head(p1, T1) - n_head(p2, T2) + beer (C1 - C2),
//   C2 from dC/dt = (Ceq(p, T) - C) / tau along the readings, straight between
//
// with C1 and tau as uncertain as they are (quantiles of all errors). Pure CO2.
#pragma once

#include "core/physics/hold.h"
#include "core/physics/log_estimate.h"
#include "core/units/scales.h"

namespace ullage::physics {

struct BeerInside {
  units::Volume beer;
  units::Estimate<units::Co2Volumes> co2;  // in the beer at the first reading
  LogEstimate<units::Duration> resting;    // time constant of uptake at rest
  units::ErrorSource equation;             // name of the equilibrium's own error
};

// `test.gas_space` is the headspace; the residue and both leak laws play no part
// (`laws` stays empty). cant_tell with HoldReason::absorption where the beer
// could hide a leak at the limit, or took up less than its rate says it should have
// (a keg has one rate only on the average); HoldReason::rose where no rate explains
// how much gas there is. Readings between shape the course of the uptake; their
// errors are carried along a straight line.
[[nodiscard]] Result<HoldOutcome> judge_hold_with_beer(
    const HoldTest& test, const BeerInside&,
    units::Mass limit_per_day = units::grams(leak_limit_grams_per_day));

// The course of a tight keg, as hold_lines has it for one without beer, with a 95 %
// band for what is not known of the beer: each source one run up and one down, sides
// apart. What the dial of the readings is always off by moves all of them and is not
// in the band.
[[nodiscard]] Result<std::vector<HoldPoint>> hold_beer_lines(const HoldTest&, const BeerInside&,
                                                             int count);

}  // namespace ullage::physics
