// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/physics/room_errors.h"

#include <algorithm>
#include <cmath>

#include "core/physics/room_leak.h"

namespace ullage::physics {

using namespace units;

namespace {

// ln of the factor by which air changes differ from what is stated.
using AirChangesLog = OnScale<struct AirChangesLogTag>;

Estimate<AirChangesLog> spread_of(const KnownLeak& leak) {
  return Estimate<AirChangesLog>(AirChangesLog(0))
      .with({"air changes"}, std::log(std::max(leak.known_to_factor, 1.0)));
}

std::vector<EscapingGas> so_full(const KnownGas& gas, Fraction there) {
  std::vector<EscapingGas> out = gas.bottles;
  for (EscapingGas& g : out) g.mass = there.count() * g.mass;
  return out;
}

template <class Of>
Result<ShareEstimate> share_of(const KnownGas& gas, const KnownRoom& room, const Of& of) {
  return try_propagate(
      [&](Fraction there, Volume v, Temperature t,
          AbsolutePressure ambient) -> Result<MoleFraction> {
        const auto air = if_all_escapes(so_full(gas, there), {v, t, ambient});
        if (!air) return std::unexpected(air.error());
        return of(*air);
      },
      gas.there, room.net_volume, room.temperature, room.ambient);
}

// `release(leak, room, air changes)` over all errors of both.
template <class Release>
Result<Ranged<MoleFraction>> leak_range(const KnownLeak& leak, const KnownRoom& room,
                                        const Release& release) {
  return ranged<MoleFraction>(
      [&](Mass per_day, Volume v, Temperature t, AbsolutePressure ambient, AirChangesLog off) {
        const EscapingGas gas{per_day, leak.co2};
        return release(gas, Room{v, t, ambient}, Rate(std::exp(off.count()) * leak.air_changes));
      },
      nothing_instead, leak.per_day, room.net_volume, room.temperature, room.ambient,
      spread_of(leak));
}

}  // namespace

Estimate<Volume> net_volume(const TapedRoom& room) {
  const auto side = [&](Length l, const char* name) {
    return Estimate(l).with_error({name}, room.tape);
  };
  return propagate([](Length l, Length w, Length h,
                      Fraction stock) { return Volume(l * w * h * (1 - stock.count())); },
                   side(room.length, "the room’s length"), side(room.width, "the room’s width"),
                   side(room.height, "the room’s height"), room.stock);
}

Result<RoomAirEstimate> room_air_estimate(const KnownGas& gas, const KnownRoom& room) {
  const auto outcome =
      if_all_escapes(so_full(gas, gas.there.value()),
                     {room.net_volume.value(), room.temperature.value(), room.ambient.value()});
  if (!outcome) return std::unexpected(outcome.error());
  const auto co2 = share_of(gas, room, [](const RoomOutcome& o) { return o.co2; });
  if (!co2) return std::unexpected(co2.error());
  const auto flowing = share_of(gas, room, [](const RoomOutcome& o) { return o.co2_flowing; });
  if (!flowing) return std::unexpected(flowing.error());
  const auto oxygen = share_of(gas, room, [](const RoomOutcome& o) { return o.oxygen; });
  if (!oxygen) return std::unexpected(oxygen.error());
  return RoomAirEstimate{*outcome, *co2, *flowing, *oxygen};
}

Result<Estimate<Volume>> room_for_estimate(MoleFraction limit, const KnownGas& gas,
                                           const KnownRoom& room) {
  return try_propagate(
      [&](Fraction there, Temperature t, AbsolutePressure ambient) {
        return room_for(limit, so_full(gas, there), {room.net_volume.value(), t, ambient});
      },
      gas.there, room.temperature, room.ambient);
}

Result<Ranged<MoleFraction>> steady_release_range(const KnownLeak& leak, const KnownRoom& room,
                                                  std::optional<Duration> after) {
  return leak_range(leak, room, [&](const EscapingGas& g, const Room& r, Rate n) {
    return steady_release(g, r, n, after);
  });
}

Result<Ranged<MoleFraction>> oxygen_range(const KnownLeak& leak, const KnownRoom& room,
                                          std::optional<Duration> after) {
  return leak_range(leak, room, [&](const EscapingGas& g, const Room& r, Rate n) {
    return oxygen_by_steady_release(g, r, n, after);
  });
}

Result<Estimate<Rate>> air_changes_estimate(MoleFraction limit, const KnownLeak& leak,
                                            const KnownRoom& room) {
  return try_propagate(
      [&](Mass per_day, Volume v, Temperature t, AbsolutePressure ambient) {
        return air_changes_for(limit, {per_day, leak.co2}, {v, t, ambient});
      },
      leak.per_day, room.net_volume, room.temperature, room.ambient);
}

Result<ReachedWhen> steady_release_reaches(MoleFraction limit, const KnownLeak& leak,
                                           const KnownRoom& room) {
  const auto reaches = [&](Mass per_day, Volume v, Temperature t, AbsolutePressure ambient,
                           AirChangesLog off) {
    return steady_release_reaches(limit, EscapingGas{per_day, leak.co2}, Room{v, t, ambient},
                                  Rate(std::exp(off.count()) * leak.air_changes));
  };
  const Estimate<AirChangesLog> off = spread_of(leak);
  const auto likely = reaches(leak.per_day.value(), room.net_volume.value(),
                              room.temperature.value(), room.ambient.value(), off.value());
  if (!likely) return std::unexpected(likely.error());
  const auto spread = propagate_quantiles(
      [&](auto... q) -> std::optional<Duration> {
        const auto when = reaches(q...);
        return when ? *when : std::nullopt;
      },
      leak.per_day, room.net_volume, room.temperature, room.ambient, off);
  ReachedWhen out{*likely, spread.low, spread.high, {}};
  const auto straight = try_propagate(
      [&](auto... q) -> Result<Duration> {
        const auto when = reaches(q...);
        if (!when) return std::unexpected(when.error());
        if (!*when) return std::unexpected(RangeError{Subject::duration, 0, 0, 0});
        return **when;
      },
      leak.per_day, room.net_volume, room.temperature, room.ambient, off);
  if (straight) out.errors = straight->contributions();
  return out;
}

}  // namespace ullage::physics
