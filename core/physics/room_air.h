// SPDX-License-Identifier: GPL-3.0-or-later
//
// The air of a room when gas escapes into it, if it were evenly mixed.
//
//   all at once:        share = v / V           (never more than the whole room)
//   while air leaves:   share = 1 - exp(-v / V)  the gas drives mixed air out
//   steady release:     share = G / (n V) (1 - exp(-n t)), n air changes
//   oxygen:             20.946 % (1 - share displaced)
//
// v is the gas at the room's pressure and temperature (real gas), V the room's
// net volume, without kegs and stock. These are figures for a caution, never for
// an all-clear: CO2 is half as heavy again as air, gathers in low spots and
// pits, and stands far above the even mixture there; nobody mixes a cellar. The
// CO2 of fresh air (0.04 %) is left out.
//
// The first form is the published basis of a German trade insurer (10 kg want
// 170 m3 for 3 %); docs/physics-gas.md, "Room air".
#pragma once

#include <optional>
#include <span>
#include <string_view>

#include "core/physics/error.h"
#include "core/units/quantities.h"
#include "core/units/scales.h"

namespace ullage::physics {

inline constexpr Range room_volume_range{0.05, 1.0e5};          // m3, a chest freezer to a hall
inline constexpr Range air_changes_range{0.0, 600.0 / 3600.0};  // 1/s; a clean room's
inline constexpr Range usual_ventilation{0.0, 100.0 / 3600.0};  // 1/s; what may be called for
inline constexpr Range escaping_mass_range{0.0, 5000.0};        // kg
inline constexpr units::MoleFraction ordinary_oxygen = units::mole_fraction(0.20946);

// What one bottle may let go; a manifold's bottles are a list, all summed.
struct EscapingGas {
  units::Mass mass;
  units::MoleFraction co2 = units::mole_fraction(1);  // the rest nitrogen
};
struct Room {
  units::Volume net_volume;
  units::Temperature temperature;
  units::AbsolutePressure ambient;
};

struct RoomOutcome {
  units::Volume gas;                // all of it, at the room's pressure and temperature
  bool more_than_the_room = false;  // then it fills it
  units::MoleFraction co2;          // all at once, evenly mixed
  units::MoleFraction co2_flowing;  // with mixed air driven out meanwhile
  units::MoleFraction oxygen;       // all at once
  units::MoleFraction oxygen_flowing;
};
[[nodiscard]] Result<RoomOutcome> if_all_escapes(std::span<const EscapingGas>, const Room&);

// The net volume in which all of it, mixed, is just at `limit` of CO2.
[[nodiscard]] Result<units::Volume> room_for(units::MoleFraction limit,
                                             std::span<const EscapingGas>, const Room& conditions);

// A steady leak of `per_day` into a room with so many air changes; `after` absent:
// what it settles at. Without air changes it never settles: refused (air_changes).
[[nodiscard]] Result<units::MoleFraction> steady_release(
    const EscapingGas& per_day, const Room&, units::Rate air_changes,
    const std::optional<units::Duration>& after = {});

// --- published limits, to stand beside it

enum class LimitKind {
  working_day,       // averaged over a shift
  short_time,        // averaged over minutes
  immediate_danger,  // to life and health
  alarm,             // of a fixed detector
  high_alarm,
  room_size,    // all the gas mixed may reach this at most
  symptoms,     // what is reported to happen at that share
  oxygen_below  // short of oxygen
};
enum class SourceCertainty { verified, from_memory };
struct ExposureLimit {
  std::string_view country;  // ISO 3166 two letters, "EU"; empty: of no country
  LimitKind kind = LimitKind::working_day;
  units::MoleFraction value;   // of CO2; of oxygen for oxygen_below
  std::string_view name;       // of the figure
  std::string_view averaging;  // "8 h", "15 min"; empty where none
  std::string_view source;
  SourceCertainty certainty = SourceCertainty::verified;
};
// By country, then by rising value.
[[nodiscard]] std::span<const ExposureLimit> exposure_limits();

}  // namespace ullage::physics
