// SPDX-License-Identifier: GPL-3.0-or-later
//
// Room air (room_air.h, room_leak.h) with the errors of what it stands on: the room as it
// was measured, the gas as it was weighed or filled, the temperature, the air's pressure,
// the air changes.
//
// What empties at once goes nearly straight with all of them: each source by a central
// difference. A leak goes with 1 / n, and a time may never come: the middle 95 % of 256
// points (ranged.h). Air changes are known to a factor, so their error is normal in the
// logarithm.
//
// That the air is evenly mixed is no error of this kind. It is wrong by factors, to one
// side, and in none of these figures: whoever shows one says so. docs/physics-gas.md,
// "Room air".
#pragma once

#include <optional>
#include <vector>

#include "core/physics/ranged.h"
#include "core/physics/room_air.h"
#include "core/units/estimate.h"

namespace ullage::physics {

using ShareEstimate = units::Estimate<units::MoleFraction>;

struct KnownRoom {
  units::Estimate<units::Volume> net_volume;
  units::Estimate<units::Temperature> temperature;
  units::Estimate<units::AbsolutePressure> ambient;
};

// A box measured by tape, each side by itself, less what kegs and stock take of it.
struct TapedRoom {
  units::Length length, width, height;
  units::Difference<units::Length> tape;  // what each side may be off by
  units::Estimate<units::Fraction> stock;
};
[[nodiscard]] units::Estimate<units::Volume> net_volume(const TapedRoom&);

struct KnownGas {
  std::vector<EscapingGas> bottles;
  units::Estimate<units::Fraction> there{units::fraction(1)};  // of what is stated, in all alike
};

struct RoomAirEstimate {
  RoomOutcome outcome;
  ShareEstimate co2, co2_flowing, oxygen;
};
[[nodiscard]] Result<RoomAirEstimate> room_air_estimate(const KnownGas&, const KnownRoom&);
// room_for(); the room's own volume plays no part.
[[nodiscard]] Result<units::Estimate<units::Volume>> room_for_estimate(units::MoleFraction limit,
                                                                       const KnownGas&,
                                                                       const KnownRoom&);

struct KnownLeak {
  units::Estimate<units::Mass> per_day;
  units::MoleFraction co2 = units::mole_fraction(1);
  units::Rate air_changes;
  double known_to_factor = 1;  // air changes, 95 %; at least 1
};
// As steady_release(), oxygen_by_steady_release() and air_changes_for().
[[nodiscard]] Result<Ranged<units::MoleFraction>> steady_release_range(
    const KnownLeak&, const KnownRoom&, std::optional<units::Duration> after = {});
[[nodiscard]] Result<Ranged<units::MoleFraction>> oxygen_range(
    const KnownLeak&, const KnownRoom&, std::optional<units::Duration> after = {});
[[nodiscard]] Result<units::Estimate<units::Rate>> air_changes_estimate(units::MoleFraction limit,
                                                                        const KnownLeak&,
                                                                        const KnownRoom&);

// When the CO2 comes to `limit`; each is empty where it never does.
struct ReachedWhen {
  std::optional<units::Duration> likely, earliest, latest;
  std::vector<units::Contribution> errors;  // empty where some of it never does
};
[[nodiscard]] Result<ReachedWhen> steady_release_reaches(units::MoleFraction limit,
                                                         const KnownLeak&, const KnownRoom&);

}  // namespace ullage::physics
