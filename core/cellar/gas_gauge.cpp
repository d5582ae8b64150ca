// SPDX-License-Identifier: GPL-3.0-or-later
//
// Bottle by bottle: what the last reading of its own gauge tells, when it is full of
// liquid, and whether its place is near that.
#include <algorithm>

#include "core/cellar/gas_account.h"
#include "core/physics/atmosphere.h"
#include "core/physics/co2_bottle.h"
#include "core/units/present.h"

namespace ullage::cellar {

namespace {

constexpr double bottle_gauge_pascals = 5e5;  // 3 % of a 200 bar dial (common practice)
constexpr double room_celsius = 18, room_error = 6;

TemperatureEstimate bottle_temperature(const GaugeRead& g, const BottleRecord& bottle, Instant at,
                                       std::int64_t sequence, const GasAccountInput& in,
                                       Lookup& lookup) {
  if (g.temperature) return Readings(lookup).temperature(*g.temperature, g.thermometer, sequence);
  if (bottle.place) {
    const PlaceHistory& history = in.places(*bottle.place);
    lookup.rely_on(history.relies_on);
    if (const PlaceWarmth* w = history.at(at)) return w->temperature;
  }
  return TemperatureEstimate(units::celsius(room_celsius))
      .with({"bottle: temperature"}, room_error);
}

Message gauge_message(const physics::GaugeVerdict& v) {
  switch (v.tells) {
    case physics::GaugeTells::nothing_while_liquid:
      return message(MessageKey::gauge_tells_nothing, present(v.least));
    case physics::GaugeTells::vapour_only:
      return message(MessageKey::gauge_tells_vapour, present(v.gas));
    case physics::GaugeTells::mixed_gas:
      return message(MessageKey::gauge_tells_mixed, present(v.gas));
    case physics::GaugeTells::above_saturation:
      break;
  }
  return message(MessageKey::gauge_above_saturation);
}

}  // namespace

std::optional<Volume> bottle_water_capacity(const BottleRecord& bottle) {
  if (bottle.water_capacity && bottle.water_capacity->value() > 0) return bottle.water_capacity;
  if (!bottle.content || bottle.co2.count() < physics::pure_co2_from) return std::nullopt;
  const auto v = physics::water_capacity_for(
      *bottle.content, bottle.fill_ratio.value_or(units::fraction(physics::usual_fill_ratio)));
  return v ? std::optional(*v) : std::nullopt;
}

namespace {

std::optional<units::Fraction> fill_of(const BottleRecord& bottle) {
  if (bottle.fill_ratio) return bottle.fill_ratio;
  if (!bottle.content || !bottle.water_capacity || bottle.water_capacity->value() <= 0)
    return std::nullopt;
  return units::fraction(units::in_kilograms(*bottle.content) /
                         units::in_litres(*bottle.water_capacity));
}

void tell_warmth(ToldBottle& out, const BottleRecord& bottle, const GasAccountInput& in,
                 Lookup& lookup) {
  if (bottle.co2.count() < physics::pure_co2_from) return;
  const auto full_at = physics::liquid_full_temperature(
      fill_of(bottle).value_or(units::fraction(physics::usual_fill_ratio)));
  if (!full_at) return;
  out.liquid_full_at = *full_at;
  if (!bottle.place) return;
  const PlaceHistory& history = in.places(*bottle.place);
  lookup.rely_on(history.relies_on);
  const PlaceWarmth* warmth = history.at(in.now);
  if (!warmth) return;
  out.place = warmth->temperature;
  out.place_read = warmth->read;
  out.too_warm = out.place->high() >= *full_at;
}

void tell_reading(ToldBottle& out, const BottleRecord& bottle, const GasAccountInput& in,
                  Lookup& lookup) {
  const Entry* last = nullptr;
  for (const Entry* e : lookup.story(subject(bottle.bottle))) {
    if (holds_alternative<GaugeRead>(e->payload)) last = e;
  }
  if (!last) return;
  const auto& g = get<GaugeRead>(last->payload);
  out.gauge_read = last->header.happened_at;
  const auto capacity = bottle_water_capacity(bottle);
  const auto cellar = lookup.cellar();
  const auto ambient = physics::ambient_pressure(cellar ? cellar->altitude : units::metres(0));
  if (!capacity || !ambient) {
    out.gauge = message(MessageKey::gauge_needs_capacity);
    return;
  }
  PressureEstimate shown(g.pressure);
  shown = g.instrument ? Readings(lookup).pressure(g.pressure, g.instrument, last->header.sequence)
                       : shown.with({bottle.name + ": gauge"}, bottle_gauge_pascals);
  const physics::BottleGauge gauge{
      shown,
      bottle_temperature(g, bottle, last->header.happened_at, last->header.sequence, in, lookup),
      *ambient};
  const auto told = physics::what_gauge_tells(gauge, bottle.co2, *capacity, {"dense gas"});
  out.gauge = told ? gauge_message(*told) : message(MessageKey::gauge_cant_tell);
}

}  // namespace

void tell_bottles(GasAccount& out, const GasAccountInput& in, Lookup& lookup) {
  for (const BottleRecord& bottle : out.bottles) {
    ToldBottle told;
    tell_warmth(told, bottle, in, lookup);
    tell_reading(told, bottle, in, lookup);
    told.test_due = test_due(bottle, lookup);
    out.told.push_back(std::move(told));
  }
}

Message warm_words(const BottleRecord& bottle, const ToldBottle& told) {
  return message(MessageKey::adv_bottle_warm, bottle.name, present(told.liquid_full_at),
                 present(told.place));
}

void advise_warm_bottles(const GasAccount& account, std::vector<Advice>& out) {
  for (std::size_t i = 0; i < account.told.size(); ++i) {
    const ToldBottle& told = account.told[i];
    if (!told.too_warm) continue;
    Advice a;
    a.severity = Severity::warning;
    a.about = subject(account.bottles[i].bottle);
    a.headline = warm_words(account.bottles[i], told);
    a.detail = message(MessageKey::adv_bottle_warm_detail);
    TemperatureRead prefill;
    prefill.place = present(account.bottles[i].place);
    a.action =
        SuggestedTask{std::string(TemperatureRead::kind), subject(prefill.place), Payload(prefill)};
    out.push_back(std::move(a));
  }
}

}  // namespace ullage::cellar
