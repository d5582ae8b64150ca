// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/cellar/place_history.h"

#include <algorithm>
#include <cmath>
#include <map>
#include <memory>
#include <utility>

namespace ullage::cellar {

namespace {

constexpr double air_against_beer = 1.0;  // K, 95 %
constexpr double set_against_beer = 2.0;  // K, 95 %
constexpr double worth_a_step = 0.2;      // K

void add_reading(PlaceHistory& history, const Entry& entry, const TemperatureRead& read,
                 Lookup& lookup, std::optional<InstrumentId>& thermometer) {
  if (read.of == TemperatureOf::glass) return;  // says more of the pour than of the keg
  const Instant at = entry.header.happened_at;
  history.last_read = at;
  history.last_reading = read.temperature;
  if (!history.warmth.empty()) {
    const PlaceWarmth& last = history.warmth.back();
    const double change =
        units::in_kelvin(read.temperature) - units::in_kelvin(last.temperature.value());
    if (last.read && thermometer == read.thermometer && std::abs(change) < worth_a_step) return;
  }
  thermometer = read.thermometer;
  TemperatureEstimate t =
      Readings(lookup).temperature(read.temperature, read.thermometer, entry.header.sequence);
  bool display = false;  // a fridge display's bias is already stated against beer
  if (read.thermometer) {
    const auto i = lookup.find(*read.thermometer);
    display = i && i->instrument_kind == InstrumentKind::fridge_display;
  }
  if (read.of == TemperatureOf::air && !display) {
    const std::string name = history.record ? history.record->name : "place";
    t = std::move(t).with({name + ": air against beer"}, air_against_beer);
  }
  history.warmth.push_back({at, t, true, entry.header.id});
}

}  // namespace

const PlaceWarmth* PlaceHistory::at(Instant when) const {
  if (warmth.empty()) return nullptr;
  const auto later = std::upper_bound(warmth.begin(), warmth.end(), when,
                                      [](Instant t, const PlaceWarmth& w) { return t < w.from; });
  return later == warmth.begin() ? &warmth.front() : &*std::prev(later);
}

PlaceHistory place_history(PlaceId id, const Journal& journal) {
  Lookup lookup(journal);
  PlaceHistory history;
  history.record = lookup.find(id);
  std::optional<InstrumentId> thermometer;
  std::optional<Temperature> set;
  bool ever_read = false;
  for (const Entry* entry : lookup.story(subject(id))) {
    if (const auto* read = get_if<TemperatureRead>(&entry->payload)) {
      add_reading(history, *entry, *read, lookup, thermometer);
      ever_read = true;
    } else if (const auto* record = get_if<PlaceRecord>(&entry->payload)) {
      if (!record->set_temperature || record->place != id) continue;
      // A thermostat turned counts until the next reading; a record that only
      // repeats the setting doesn't.
      if (set == record->set_temperature) continue;
      const bool first = !set.has_value();
      set = record->set_temperature;
      if (ever_read && first) continue;
      history.warmth.push_back(
          {entry->header.happened_at,
           TemperatureEstimate(*set).with({record->name + ": as set"}, set_against_beer), false,
           entry->header.id});
    }
  }
  history.relies_on = lookup.relies_on();
  return history;
}

PlaceLookup places_of(const Journal& journal) {
  return [&journal, kept = std::make_shared<std::map<PlaceId, PlaceHistory>>()](
             PlaceId id) -> const PlaceHistory& {
    const auto at = kept->find(id);
    return at != kept->end() ? at->second
                             : kept->emplace(id, place_history(id, journal)).first->second;
  };
}

}  // namespace ullage::cellar
