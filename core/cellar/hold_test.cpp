// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/cellar/hold_test.h"

#include <cmath>

#include "core/physics/atmosphere.h"
#include "core/units/present.h"

namespace ullage::cellar {

namespace {

constexpr double unread_temperature = 15.0;       // °C
constexpr double unread_temperature_error = 3.0;  // K
constexpr std::size_t most_hold_readings = 200;   // the latest ones of a longer test

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

// The test of a keg with so much gas space; none where the keg has no volume.
std::shared_ptr<HoldStudy> study_of(const HoldReadings& readings, Volume gas_space,
                                    Lookup& lookup) {
  const auto cellar = lookup.cellar();
  const auto ambient = physics::ambient_pressure(cellar ? cellar->altitude : units::metres(0));
  if (!ambient || gas_space.value() <= 0) return nullptr;
  auto out = std::make_shared<HoldStudy>();
  out->origin = readings.entries.front()->header.happened_at;
  out->limit_per_day = units::grams(physics::leak_limit_grams_per_day);
  if (cellar && cellar->leak_limit_per_day) out->limit_per_day = *cellar->leak_limit_per_day;
  out->test.gas_space = gas_space;
  out->test.ambient = *ambient;
  const std::size_t all = readings.entries.size();
  for (std::size_t i = all > most_hold_readings ? all - most_hold_readings : 0; i < all; ++i) {
    const Entry& entry = *readings.entries[i];
    // Of two readings in one moment the later entry is meant.
    const units::Duration at = between(out->origin, entry.header.happened_at);
    if (!out->test.readings.empty() && !(at > out->test.readings.back().at)) {
      out->test.readings.pop_back();
      out->entries.pop_back();
    }
    out->test.readings.push_back(hold_reading_of(entry, out->origin, lookup));
    out->entries.push_back(entry.header.id);
    out->temperature_assumed =
        out->temperature_assumed || !get<HoldReading>(entry.payload).temperature;
  }
  if (readings.closed_at && *readings.closed_at <= out->origin)
    out->test.closed_at = between(out->origin, *readings.closed_at);
  return out;
}

HoldKind kind_of_verdict(physics::HoldVerdict verdict) {
  switch (verdict) {
    case physics::HoldVerdict::holds:
      return HoldKind::holds;
    case physics::HoldVerdict::leaks:
      return HoldKind::falls;
    case physics::HoldVerdict::cant_tell:
      break;
  }
  return HoldKind::cant_tell;
}

Message cant_tell_words(const HoldStudy& study) {
  const physics::HoldOutcome& outcome = present(study.outcome);
  switch (outcome.reason) {
    case physics::HoldReason::one_reading:
      return message(MessageKey::hold_one_reading, study.test.readings.back().pressure.value(),
                     study.time_of(study.test.readings.back().at));
    case physics::HoldReason::rose:
      return message(MessageKey::hold_rose, outcome.change.value());
    case physics::HoldReason::contradictory:
      return message(MessageKey::hold_contradictory);
    case physics::HoldReason::no_pressure:
      return message(MessageKey::hold_no_pressure);
    case physics::HoldReason::absorption:
      return message(MessageKey::hold_absorption);
    case physics::HoldReason::too_soon:
    case physics::HoldReason::within_errors:
    case physics::HoldReason::none:
      break;
  }
  if (outcome.read_again_at)
    return message(MessageKey::hold_read_again, study.time_of(*outcome.read_again_at));
  return message(MessageKey::hold_too_coarse);
}

}  // namespace

Message hold_words(const HoldStudy& study) {
  if (!study.outcome) return message(MessageKey::hold_out_of_range);
  const physics::HoldOutcome& outcome = *study.outcome;
  switch (outcome.verdict) {
    case physics::HoldVerdict::holds:
      return message(MessageKey::hold_holds, study.test.readings.back().pressure.value(),
                     outcome.lasted);
    case physics::HoldVerdict::leaks:
      return message(MessageKey::hold_falls, units::PressureDifference(-outcome.change.value()),
                     outcome.lasted, outcome.leak_per_day);
    case physics::HoldVerdict::cant_tell:
      break;
  }
  return cant_tell_words(study);
}

HoldState hold_test(const HoldReadings& readings, const KegRecord& keg, Lookup& lookup) {
  HoldState out;
  const Entry* refused = readings.with_gas_on;
  if (readings.entries.empty() && refused == nullptr) return out;
  const Entry& last = refused != nullptr ? *refused : *readings.entries.back();
  out.last = last.header.happened_at;
  out.first = refused != nullptr ? out.last : readings.entries.front()->header.happened_at;
  out.entry = last.header.id;
  out.pressure = get<HoldReading>(last.payload).pressure;
  out.kind = HoldKind::cant_tell;
  if (refused != nullptr) {
    out.result = message(MessageKey::hold_gas_on, out.pressure);
    return out;
  }
  const auto study = study_of(readings, keg.holds(), lookup);
  if (!study) {
    out.result = message(MessageKey::hold_out_of_range);
    return out;
  }
  if (auto outcome = physics::judge_hold(study->test, study->limit_per_day))
    study->outcome = std::move(*outcome);
  if (study->outcome) out.kind = kind_of_verdict(study->outcome->verdict);
  out.result = hold_words(*study);
  out.study = study;
  return out;
}

std::shared_ptr<const HoldStudy> hold_test_with_beer(const HoldReadings& readings,
                                                     const KegTimeline& keg, Lookup& lookup) {
  if (readings.entries.size() < 2 || readings.with_gas_on != nullptr || !keg.co2.model)
    return nullptr;
  const Instant first = readings.entries.front()->header.happened_at;
  const Level level = keg.level.at(first, keg.record.brimful);
  const auto co2 = keg.co2.at(first);
  if (!level.left || !co2) return nullptr;
  const auto study = study_of(readings, keg.record.brimful - level.left->value(), lookup);
  if (!study) return nullptr;
  const physics::CarbonationRates& rates = keg.co2.model->rates();
  study->beer = physics::BeerInside{level.left->value(), *co2, rates.resting, rates.equation};
  if (auto outcome = physics::judge_hold_with_beer(study->test, *study->beer, study->limit_per_day))
    study->outcome = std::move(*outcome);
  return study;
}

}  // namespace ullage::cellar
