// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/physics/room_air.h"

#include <algorithm>
#include <array>
#include <cmath>

#include "core/physics/atmosphere.h"
#include "core/physics/co2_gas.h"
#include "core/physics/room_leak.h"

namespace ullage::physics {

using namespace units;

namespace {

constexpr double nitrogen_molar_kilograms = 28.0134e-3;

struct GasVolumes {
  double co2 = 0;  // m3
  double all = 0;
};

Result<GasVolumes> volumes_of(std::span<const EscapingGas> gases, const Room& room) {
  if (auto bad =
          outside(Subject::ambient_pressure, in_pascals(room.ambient), ambient_pressure_range))
    return std::unexpected(*bad);
  GasVolumes out;
  for (const EscapingGas& g : gases) {
    if (auto bad = outside(Subject::mass, in_kilograms(g.mass), escaping_mass_range))
      return std::unexpected(*bad);
    if (auto bad = outside(Subject::co2_fraction, g.co2.count(), {0.0, 1.0}))
      return std::unexpected(*bad);
    const auto molar = gas_amount(room.ambient, cubic_metres(1), room.temperature, g.co2);
    if (!molar) return std::unexpected(molar.error());
    const double x = g.co2.count();
    const double moles =
        in_kilograms(g.mass) / (x * co2_kilograms_per_mole + (1 - x) * nitrogen_molar_kilograms);
    const double m3 = moles / in_moles(*molar);
    out.all += m3;
    out.co2 += m3 * x;
  }
  return out;
}

Outside bad_room(const Room& room) {
  return outside(Subject::volume, in_cubic_metres(room.net_volume), room_volume_range);
}

// What a steady leak adds, as a share of the room each second.
struct RoomShares {
  double co2 = 0;
  double all = 0;
};

Result<RoomShares> growth_of(const EscapingGas& per_day, const Room& room, Rate air_changes) {
  if (auto bad = bad_room(room)) return std::unexpected(*bad);
  if (auto bad = outside(Subject::air_changes, in_per_second(air_changes), air_changes_range))
    return std::unexpected(*bad);
  const std::array one{per_day};
  const auto v = volumes_of(one, room);
  if (!v) return std::unexpected(v.error());
  const double rooms = 86400.0 * in_cubic_metres(room.net_volume);
  return RoomShares{v->co2 / rooms, v->all / rooms};
}

Result<RoomShares> released_shares(const EscapingGas& per_day, const Room& room, Rate air_changes,
                                   std::optional<Duration> after) {
  const auto growth = growth_of(per_day, room, air_changes);
  if (!growth) return growth;
  const double n = in_per_second(air_changes);
  const double seconds = after ? in_seconds(*after) : 0.0;
  if (auto bad = outside(Subject::duration, seconds, {0.0, 3.2e8})) return std::unexpected(*bad);
  if (!after && n == 0)
    return std::unexpected(RangeError{Subject::air_changes, 0.0, 1e-9, air_changes_range.high});
  const double time = !after ? 1 / n : (n > 0 ? -std::expm1(-n * seconds) / n : seconds);
  // More gas than the room holds comes out of the arithmetic only because a
  // stream that large would not leave with the air: then it fills the room.
  return RoomShares{std::min(growth->co2 * time, 1.0), std::min(growth->all * time, 1.0)};
}

constexpr std::array published_limits{
    ExposureLimit{"AU", LimitKind::working_day, mole_fraction(0.005), "workplace exposure standard",
                  "8 h", "national exposure standards", SourceCertainty::from_memory},
    ExposureLimit{"AU", LimitKind::short_time, mole_fraction(0.03), "workplace exposure standard",
                  "15 min", "national exposure standards", SourceCertainty::from_memory},
    ExposureLimit{"DE", LimitKind::working_day, mole_fraction(0.005), "workplace limit (AGW)",
                  "8 h", "TRGS 900", SourceCertainty::from_memory},
    ExposureLimit{"DE", LimitKind::short_time, mole_fraction(0.01), "workplace limit (AGW), peak",
                  "15 min", "TRGS 900", SourceCertainty::from_memory},
    ExposureLimit{"DE", LimitKind::room_size, mole_fraction(0.03), "room size for drink dispensing",
                  "", "BGN ASI 6.80", SourceCertainty::verified},
    ExposureLimit{"DE", LimitKind::symptoms, mole_fraction(0.04), "dizziness from 4 %", "",
                  "BGN ASI 6.80, table 1", SourceCertainty::verified},
    ExposureLimit{"DE", LimitKind::symptoms, mole_fraction(0.08), "cramps, soon death, from 8 %",
                  "", "BGN ASI 6.80, table 1", SourceCertainty::verified},
    ExposureLimit{"EU", LimitKind::working_day, mole_fraction(0.005), "indicative limit", "8 h",
                  "Directive 2006/15/EC", SourceCertainty::from_memory},
    ExposureLimit{"GB", LimitKind::working_day, mole_fraction(0.005),
                  "workplace exposure limit (WEL)", "8 h", "EH40", SourceCertainty::from_memory},
    ExposureLimit{"GB", LimitKind::short_time, mole_fraction(0.015),
                  "workplace exposure limit (WEL)", "15 min", "EH40", SourceCertainty::from_memory},
    ExposureLimit{"US", LimitKind::working_day, mole_fraction(0.005), "OSHA PEL", "8 h",
                  "NIOSH IDLH documentation 124-38-9 (1994)", SourceCertainty::verified},
    ExposureLimit{"US", LimitKind::working_day, mole_fraction(0.005), "NIOSH REL TWA", "10 h",
                  "NIOSH IDLH documentation 124-38-9 (1994)", SourceCertainty::verified},
    ExposureLimit{"US", LimitKind::working_day, mole_fraction(0.005), "ACGIH TLV-TWA", "8 h",
                  "NIOSH IDLH documentation 124-38-9 (1994)", SourceCertainty::verified},
    ExposureLimit{"US", LimitKind::alarm, mole_fraction(0.005), "fire code alarm, at most", "",
                  "IFC 5307.5.2, as quoted", SourceCertainty::verified},
    ExposureLimit{"US", LimitKind::short_time, mole_fraction(0.03), "NIOSH REL STEL", "15 min",
                  "NIOSH IDLH documentation 124-38-9 (1994)", SourceCertainty::verified},
    ExposureLimit{"US", LimitKind::short_time, mole_fraction(0.03), "ACGIH TLV-STEL", "15 min",
                  "NIOSH IDLH documentation 124-38-9 (1994)", SourceCertainty::verified},
    ExposureLimit{"US", LimitKind::high_alarm, mole_fraction(0.03), "fire code high alarm (2018)",
                  "", "IFC 5307.5.2, as quoted", SourceCertainty::verified},
    ExposureLimit{"US", LimitKind::immediate_danger, mole_fraction(0.04), "NIOSH IDLH", "",
                  "NIOSH IDLH documentation 124-38-9 (1994)", SourceCertainty::verified},
    ExposureLimit{"US", LimitKind::oxygen_below, mole_fraction(0.195), "oxygen-deficient air", "",
                  "29 CFR 1910.134", SourceCertainty::from_memory},
};

}  // namespace

Result<RoomOutcome> if_all_escapes(std::span<const EscapingGas> gases, const Room& room) {
  if (auto bad = bad_room(room)) return std::unexpected(*bad);
  const auto v = volumes_of(gases, room);
  if (!v) return std::unexpected(v.error());
  const double ratio = v->all / in_cubic_metres(room.net_volume);
  const double co2_share = v->all > 0 ? v->co2 / v->all : 0.0;
  // Gas can't take the place of more air than there is.
  const double at_once = std::min(ratio, 1.0);
  const double flowing = -std::expm1(-ratio);
  const double fresh = ordinary_oxygen.count();
  return RoomOutcome{cubic_metres(v->all),
                     ratio > 1,
                     mole_fraction(at_once * co2_share),
                     mole_fraction(flowing * co2_share),
                     mole_fraction(fresh * (1 - at_once)),
                     mole_fraction(fresh * (1 - flowing))};
}

Result<Volume> room_for(MoleFraction limit, std::span<const EscapingGas> gases,
                        const Room& conditions) {
  if (auto bad = outside(Subject::co2_fraction, limit.count(), {1e-4, 1.0}))
    return std::unexpected(*bad);
  const auto v = volumes_of(gases, conditions);
  if (!v) return std::unexpected(v.error());
  return cubic_metres(v->co2 / limit.count());
}

Result<MoleFraction> steady_release(const EscapingGas& per_day, const Room& room, Rate air_changes,
                                    const std::optional<Duration>& after) {
  const auto shares = released_shares(per_day, room, air_changes, after);
  if (!shares) return std::unexpected(shares.error());
  return mole_fraction(shares->co2);
}

Result<MoleFraction> oxygen_by_steady_release(const EscapingGas& per_day, const Room& room,
                                              Rate air_changes,
                                              const std::optional<Duration>& after) {
  const auto shares = released_shares(per_day, room, air_changes, after);
  if (!shares) return std::unexpected(shares.error());
  return mole_fraction(ordinary_oxygen.count() * (1 - shares->all));
}

Result<std::optional<Duration>> steady_release_reaches(MoleFraction limit,
                                                       const EscapingGas& per_day, const Room& room,
                                                       Rate air_changes) {
  if (auto bad = outside(Subject::co2_fraction, limit.count(), {1e-6, 1.0}))
    return std::unexpected(*bad);
  const auto growth = growth_of(per_day, room, air_changes);
  if (!growth) return std::unexpected(growth.error());
  const double n = in_per_second(air_changes);
  if (!(growth->co2 > 0)) return std::nullopt;
  const double without_air = limit.count() / growth->co2;  // s
  if (n * without_air >= 1) return std::nullopt;
  return seconds(n > 0 ? -std::log1p(-n * without_air) / n : without_air);
}

Result<Rate> air_changes_for(MoleFraction limit, const EscapingGas& per_day, const Room& room) {
  if (auto bad = outside(Subject::co2_fraction, limit.count(), {1e-6, 1.0}))
    return std::unexpected(*bad);
  const auto growth = growth_of(per_day, room, per_second(0));
  if (!growth) return std::unexpected(growth.error());
  const double n = growth->co2 / limit.count();
  if (auto bad = outside(Subject::air_changes, n, usual_ventilation)) return std::unexpected(*bad);
  return per_second(n);
}

std::span<const ExposureLimit> exposure_limits() { return published_limits; }

}  // namespace ullage::physics
