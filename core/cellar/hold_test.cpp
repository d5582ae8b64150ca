// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/cellar/hold_test.h"

#include "core/physics/atmosphere.h"
#include "core/physics/hold.h"

namespace ullage::cellar {

namespace {

constexpr double unread_temperature = 15.0;       // °C
constexpr double unread_temperature_error = 3.0;  // K
constexpr std::chrono::hours ask_again{24};

physics::HoldReading hold_reading_of(const Entry& entry, Instant start, Lookup& lookup) {
  const auto& h = get<HoldReading>(entry.payload);
  Readings readings(lookup);
  const std::int64_t n = entry.header.sequence;
  const TemperatureEstimate t =
      h.temperature
          ? readings.temperature(*h.temperature, h.thermometer, n)
          : TemperatureEstimate(units::celsius(unread_temperature))
                .with({"temperature not read " + std::to_string(n)}, unread_temperature_error);
  return {between(start, entry.header.happened_at), readings.pressure(h.pressure, h.instrument, n),
          t};
}

void judge(HoldState& out, const physics::HoldOutcome& outcome) {
  const units::Duration lasted = between(out.first, out.last);
  switch (outcome.verdict) {
    case physics::HoldVerdict::holds:
      out.kind = HoldKind::holds;
      out.result = message(MessageKey::hold_holds, out.pressure, lasted);
      break;
    case physics::HoldVerdict::leaks:
      out.kind = HoldKind::falls;
      out.result =
          message(MessageKey::hold_falls, units::PressureDifference(-outcome.change.value()),
                  lasted, outcome.leak_per_day);
      break;
    case physics::HoldVerdict::cant_tell: {
      out.kind = HoldKind::cant_tell;
      const Instant again =
          outcome.read_again_at ? after(out.first, *outcome.read_again_at) : out.last + ask_again;
      out.result = message(MessageKey::hold_read_again, again);
      break;
    }
  }
}

}  // namespace

HoldState hold_test(const std::vector<const Entry*>& readings, const KegRecord& keg,
                    Lookup& lookup) {
  HoldState out;
  out.first = readings.front()->header.happened_at;
  out.last = readings.back()->header.happened_at;
  out.entry = readings.back()->header.id;
  out.pressure = get<HoldReading>(readings.back()->payload).pressure;
  out.kind = HoldKind::cant_tell;
  if (readings.size() < 2) {
    out.result = message(MessageKey::hold_one_reading, out.pressure, out.first);
    return out;
  }
  const auto cellar = lookup.cellar();
  const auto ambient = physics::ambient_pressure(cellar ? cellar->altitude : units::metres(0));
  const Volume space = keg.brimful.value() > 0 ? keg.brimful : keg.nominal;
  if (!ambient || space.value() <= 0) {
    out.result = message(MessageKey::hold_out_of_range);
    return out;
  }
  physics::HoldTest test;
  test.gas_space = space;
  test.ambient = *ambient;
  for (const Entry* entry : readings) {
    physics::HoldReading read = hold_reading_of(*entry, out.first, lookup);
    // Of two readings in one moment the later entry is meant.
    if (!test.readings.empty() && !(read.at > test.readings.back().at)) test.readings.pop_back();
    test.readings.push_back(std::move(read));
  }
  const Mass limit = cellar && cellar->leak_limit_per_day
                         ? *cellar->leak_limit_per_day
                         : units::grams(physics::leak_limit_grams_per_day);
  if (const auto outcome = physics::judge_hold(test, limit)) {
    judge(out, *outcome);
  } else {
    out.result = message(MessageKey::hold_out_of_range);
  }
  return out;
}

}  // namespace ullage::cellar
