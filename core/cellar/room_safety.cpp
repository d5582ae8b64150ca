// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/cellar/room_safety.h"

#include <algorithm>

#include "core/cellar/cellar_status.h"
#include "core/cellar/gas_account.h"
#include "core/physics/atmosphere.h"

namespace ullage::cellar {

namespace {

constexpr double insurers_share = 0.03;
constexpr double nearly_all_co2 = 0.995;

BottleInRoom in_room(const BottleStatus& b) {
  BottleInRoom out{b.record, b.record.content, true};
  if (!out.gas && b.gas_left && b.gas_left->value().value() > 0) {
    out.gas = b.gas_left->value();
    out.full = false;
  }
  return out;
}

// The loss of the supplies whose bottles stand here, each counted once.
std::optional<physics::EscapingGas> leak_here(const CellarStatus& cellar, PlaceId place) {
  std::vector<const GasAccount*> seen;
  double kilograms = 0;
  for (const BottleStatus& b : cellar.bottles) {
    if (b.record.place != place || !b.account || !b.account->alarm) continue;
    if (std::find(seen.begin(), seen.end(), b.account.get()) != seen.end()) continue;
    seen.push_back(b.account.get());
    kilograms += b.account->loss->per_day.value().value();
  }
  if (kilograms <= 0) return std::nullopt;
  return physics::EscapingGas{units::kilograms(kilograms)};
}

void tell_alarm(PlaceSafety& out, const Journal& journal) {
  for (const Entry* e : journal.story(subject(out.place.place))) {
    if (const auto* checked = get_if<AlarmChecked>(&e->payload)) {
      out.alarm_checked = e->header.happened_at;
      out.alarm_passed = checked->passed;
    }
  }
}

void tell_air(PlaceSafety& out, const CellarStatus& cellar) {
  const auto ambient =
      physics::ambient_pressure(cellar.cellar ? cellar.cellar->altitude : units::metres(0));
  std::vector<physics::EscapingGas> gases;
  for (const BottleInRoom& b : out.bottles) {
    out.holds_nitrogen = out.holds_nitrogen || b.record.co2.count() < nearly_all_co2;
    if (b.gas) gases.push_back({*b.gas, b.record.co2});
  }
  if (!ambient || gases.empty()) return;
  physics::Room room{out.place.net_air_volume.value_or(units::cubic_metres(0)), out.temperature,
                     *ambient};
  if (const auto v = physics::room_for(units::mole_fraction(insurers_share), gases, room))
    out.room_for_three_percent = *v;
  if (!out.place.net_air_volume) return;
  if (const auto air = physics::if_all_escapes(gases, room)) out.outcome = *air;
  const auto leak = leak_here(cellar, out.place.place);
  if (!leak || !out.place.air_changes_per_hour) return;
  const auto settled = physics::steady_release(
      *leak, room, units::per_second(*out.place.air_changes_per_hour / 3600.0));
  if (settled) out.leak_settles_at = *settled;
}

int order_of(const PlaceSafety& p) {
  if (!p.bottles.empty()) return 0;
  return p.place.below_ground.value_or(false) ? 1 : 2;
}

}  // namespace

std::vector<PlaceSafety> room_safety(const CellarStatus& cellar, const Journal& journal) {
  std::vector<PlaceSafety> out;
  for (const PlaceStatus& p : cellar.places) {
    if (!p.record.in_use) continue;
    PlaceSafety s;
    s.place = p.record;
    if (p.temperature) {
      s.temperature = *p.temperature;
      s.temperature_known = true;
    }
    for (const BottleStatus& b : cellar.bottles) {
      if (b.record.in_use && b.record.place == p.record.place) s.bottles.push_back(in_room(b));
    }
    tell_alarm(s, journal);
    tell_air(s, cellar);
    out.push_back(std::move(s));
  }
  std::stable_sort(out.begin(), out.end(), [](const PlaceSafety& a, const PlaceSafety& b) {
    if (order_of(a) != order_of(b)) return order_of(a) < order_of(b);
    return natural_less(a.place.name, b.place.name);
  });
  PlaceSafety nowhere;
  for (const BottleStatus& b : cellar.bottles) {
    if (b.record.in_use && !b.record.place) nowhere.bottles.push_back(in_room(b));
  }
  if (!nowhere.bottles.empty()) out.push_back(std::move(nowhere));
  return out;
}

std::vector<physics::ExposureLimit> limits_for(const std::optional<std::string>& country) {
  std::vector<physics::ExposureLimit> all(physics::exposure_limits().begin(),
                                          physics::exposure_limits().end());
  std::vector<physics::ExposureLimit> own;
  for (const auto& l : all) {
    if (country && l.country == *country) own.push_back(l);
  }
  return own.empty() ? all : own;
}

bool reaches(const physics::RoomOutcome& air, const physics::ExposureLimit& limit) {
  if (limit.kind == physics::LimitKind::oxygen_below) return air.oxygen < limit.value;
  return air.co2 >= limit.value;
}

}  // namespace ullage::cellar
