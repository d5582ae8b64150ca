// SPDX-License-Identifier: GPL-3.0-or-later
//
// More about a steady leak into a room taken as evenly mixed (steady_release of
// room_air.h, which has the balance, the ranges and what to mind):
//
//   oxygen            20.946 % (1 - share of all that leaks)
//   reaches c after   t = -ln(1 - c n V / G) / n, or never
//   stays at c with   n = G / (c V) air changes
//
// The same mass balance solved for another unknown; docs/physics-gas.md, "Room air".
#pragma once

#include <optional>

#include "core/physics/room_air.h"

namespace ullage::physics {

// The oxygen beside it: all that leaks takes the place of air, nitrogen as well.
// `after` absent: once it has settled.
[[nodiscard]] Result<units::MoleFraction> oxygen_by_steady_release(
    const EscapingGas& per_day, const Room&, units::Rate air_changes,
    const std::optional<units::Duration>& after = {});

// When the CO2 comes to `limit`; nothing where it settles below.
[[nodiscard]] Result<std::optional<units::Duration>> steady_release_reaches(
    units::MoleFraction limit, const EscapingGas& per_day, const Room&, units::Rate air_changes);

// The air changes with which it settles at `limit`; refused (air_changes) where no
// ventilation does that many.
[[nodiscard]] Result<units::Rate> air_changes_for(units::MoleFraction limit,
                                                  const EscapingGas& per_day, const Room&);

}  // namespace ullage::physics
