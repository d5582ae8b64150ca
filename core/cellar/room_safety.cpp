// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/cellar/room_safety.h"

#include <algorithm>
#include <array>
#include <cmath>
#include <iterator>
#include <string_view>

#include "core/cellar/cellar_status.h"
#include "core/cellar/gas_account.h"
#include "core/physics/atmosphere.h"
#include "core/physics/room_errors.h"
#include "core/units/present.h"

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

// How well what the figures rest on is known (assumed): a room measured with a tape,
// kegs and stock taken off by eye; what a filler puts in; air changes, mostly guessed.
constexpr double room_volume_share = 0.10;
constexpr double content_share = 0.05;
constexpr double air_changes_share = 0.5;
constexpr double read_kelvin = 2, assumed_kelvin = 8;

// CO2 of a supply's gas; of unlike bottles on one manifold by what they hold.
MoleFraction gas_of(const GasAccount& account) {
  double co2 = 0, all = 0;
  for (const BottleRecord& b : account.bottles) {
    const double weight = b.content ? units::in_kilograms(*b.content) : 1.0;
    co2 += weight * b.co2.count();
    all += weight;
  }
  return units::mole_fraction(all > 0 ? co2 / all : 1.0);
}

// Supplies with a bottle here that lose gas, or may: each once.
std::vector<const GasAccount*> losing_here(const CellarStatus& cellar, PlaceId place) {
  std::vector<const GasAccount*> out;
  for (const BottleStatus& b : cellar.bottles) {
    if (b.record.place != place || !b.account || !b.account->loss) continue;
    const bool may = b.account->loss->per_day.high().value() > 0;
    if (may && std::find(out.begin(), out.end(), b.account.get()) == out.end())
      out.push_back(b.account.get());
  }
  return out;
}

// What one gram a day settles at times the loss: the shares are so small that they add.
void tell_leak(PlaceSafety& out, const CellarStatus& cellar, const physics::Room& room) {
  if (!out.place.air_changes_per_hour) return;
  const auto air_changes = units::per_second(*out.place.air_changes_per_hour / 3600.0);
  double share = 0, loss_squared = 0;
  bool any = false;
  for (const GasAccount* account : losing_here(cellar, out.place.place)) {
    const auto of_a_gram =
        physics::steady_release({units::grams(1), gas_of(*account)}, room, air_changes);
    if (!of_a_gram) continue;
    any = true;
    const double a_kilogram = of_a_gram->count() * 1e3;
    const MassEstimate& per_day = present(account->loss).per_day;
    share += a_kilogram * per_day.value().value();
    const double off = a_kilogram * per_day.half_width();
    loss_squared += off * off;
    out.leak_called_one = out.leak_called_one || account->alarm;
  }
  if (!any) return;
  out.leak_settles_at = ShareEstimate(units::mole_fraction(share))
                            .with({"the loss"}, std::sqrt(loss_squared))
                            .with({"net volume of the room"}, room_volume_share * share)
                            .with({"air changes"}, air_changes_share * share);
}

void tell_alarm(PlaceSafety& out, const Journal& journal) {
  for (const Entry* e : journal.story(subject(out.place.place))) {
    if (const auto* checked = get_if<AlarmChecked>(&e->payload)) {
      out.alarm_checked = e->header.happened_at;
      out.alarm_passed = checked->passed;
    }
  }
}

physics::KnownRoom known_room(const PlaceSafety& place,
                              const units::Estimate<units::AbsolutePressure>& air) {
  const VolumeEstimate volume(place.place.net_air_volume.value_or(units::cubic_metres(0)));
  return {
      volume.with({"net volume of the room"}, room_volume_share * volume.value().value()),
      TemperatureEstimate(place.temperature)
          .with({"temperature of the air"}, place.temperature_known ? read_kelvin : assumed_kelvin),
      air};
}

void tell_air(PlaceSafety& out, const CellarStatus& cellar) {
  const auto air = physics::ambient_pressure_estimate(
      cellar.cellar ? cellar.cellar->altitude : units::metres(0), {"weather"});
  physics::KnownGas gas;
  gas.there = gas.there.with({"content of the bottles"}, content_share);
  for (const BottleInRoom& b : out.bottles) {
    out.holds_nitrogen = out.holds_nitrogen || b.record.co2.count() < nearly_all_co2;
    if (b.gas) gas.bottles.push_back({*b.gas, b.record.co2});
  }
  if (!air || gas.bottles.empty()) return;
  const physics::KnownRoom known = known_room(out, *air);
  if (const auto room =
          physics::room_for_estimate(units::mole_fraction(insurers_share), gas, known)) {
    out.room_for_three_percent = *room;
  }
  if (!out.place.net_air_volume) return;
  if (const auto told = physics::room_air_estimate(gas, known)) {
    out.outcome = told->outcome;
    out.co2 = told->co2;
    out.co2_flowing = told->co2_flowing;
    out.oxygen = told->oxygen;
  }
  const physics::Room room{*out.place.net_air_volume, out.temperature, air->value()};
  if (!out.outcome) {  // some end of the errors is beyond what the equation covers
    if (const auto plain = physics::if_all_escapes(gas.bottles, room)) out.outcome = *plain;
  }
  tell_leak(out, cellar, room);
}

constexpr std::string_view union_code = "EU";

bool is_member_state(std::string_view country) {
  constexpr std::array<std::string_view, 27> members{
      "AT", "BE", "BG", "CY", "CZ", "DE", "DK", "EE", "ES", "FI", "FR", "GR", "HR", "HU",
      "IE", "IT", "LT", "LU", "LV", "MT", "NL", "PL", "PT", "RO", "SE", "SI", "SK"};
  return std::binary_search(members.begin(), members.end(), country);
}

// As ISO 3166 has it: small letters raised, and the two codes that people write
// for another.
std::string country_code(std::string_view typed) {
  std::string code;
  for (const char c : typed) {
    if (c == ' ') continue;
    code += c >= 'a' && c <= 'z' ? static_cast<char>(c - 'a' + 'A') : c;
  }
  return code == "UK" ? "GB" : code == "EL" ? "GR" : code;
}

bool of_oxygen(const physics::ExposureLimit& l) {
  return l.kind == physics::LimitKind::oxygen_below;
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

LimitsOfCountry limits_for(const std::optional<std::string>& country,
                           std::span<const physics::ExposureLimit> published) {
  LimitsOfCountry out;
  const std::string own = country ? country_code(*country) : std::string();
  const bool member = is_member_state(own);
  const auto add = [&](auto wanted, std::vector<physics::ExposureLimit>& to) {
    std::copy_if(published.begin(), published.end(), std::back_inserter(to), wanted);
  };
  if (own.empty()) {
    add([](const auto&) { return true; }, out.here);
  } else {
    add([&](const auto& l) { return l.country == own; }, out.here);
    add([&](const auto& l) { return l.country == union_code && member && own != union_code; },
        out.here);
    add([](const auto& l) { return l.country.empty(); }, out.here);
  }
  out.oxygen_here = std::any_of(out.here.begin(), out.here.end(), of_oxygen);
  out.co2_here = !std::all_of(out.here.begin(), out.here.end(), of_oxygen);
  if (own.empty()) return out;
  add(
      [&](const auto& l) {
        const bool counts =
            l.country == own || l.country.empty() || (l.country == union_code && member);
        return !counts && !(of_oxygen(l) ? out.oxygen_here : out.co2_here);
      },
      out.elsewhere);
  return out;
}

bool reaches(const physics::RoomOutcome& air, const physics::ExposureLimit& limit) {
  if (limit.kind == physics::LimitKind::oxygen_below) return air.oxygen < limit.value;
  return air.co2 >= limit.value;
}

}  // namespace ullage::cellar
