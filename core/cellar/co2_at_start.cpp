// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/cellar/co2_at_start.h"

#include <cmath>

#include "core/physics/equilibrium.h"

namespace ullage::cellar {

namespace {

using units::Co2Volumes;

// All "common practice, no source", 95 %.
constexpr double supplied_error = 0.2;      // volumes, as a brewery states it
constexpr double found_error = 0.3;         // volumes, stated without an error
constexpr double not_at_rest_error = 0.2;   // a pressure read without knowing it was at rest
constexpr double residual_error = 0.1;      // on top of the temperature's
constexpr double fermented_at_most = 24.0;  // °C, warm end of usual fermentations
constexpr double fermented_usually = 20.0;  // °C, when nothing is known
constexpr double fermented_error = 6.0;     // K about it
constexpr std::chrono::days settled_on_gas{14};

physics::Result<Co2Estimate> residual(const TemperatureEstimate& warmest, const Surroundings& s) {
  return physics::equilibrium_co2_estimate(units::Estimate<GaugePressure>(GaugePressure{}), warmest,
                                           s.ambient, s.equation);
}

InputUsed still_input(MessageKey key, Temperature t, Instant at) { return {message(key, t), at}; }

std::expected<Co2AtStart, Message> still(const Filled& f, const Entry& entry, const Surroundings& s,
                                         Lookup& lookup) {
  const units::ErrorSource leftover{s.tag + ": CO₂ left from fermentation"};
  const Instant at = entry.header.happened_at;
  const auto batch = lookup.find(f.batch);
  Co2AtStart out;
  out.at_ambient = f.transfer == Transfer::open;
  if (batch && batch->warmest_after_fermentation) {
    const Temperature warmest = *batch->warmest_after_fermentation;
    const auto c = residual(TemperatureEstimate(warmest).with(leftover, 1.0), s);
    if (!c) return std::unexpected(message(MessageKey::co2_out_of_range));
    out.co2 = c->with({s.tag + ": CO₂ left, general"}, residual_error);
    out.input = still_input(MessageKey::input_warmest, warmest, at);
    return out;
  }
  if (f.temperature && units::in_celsius(*f.temperature) < fermented_at_most) {
    // Between what beer this cold can keep and what it kept if it had been warm.
    const auto most = residual(TemperatureEstimate(*f.temperature), s);
    const auto least = residual(TemperatureEstimate(units::celsius(fermented_at_most)), s);
    if (!most || !least) return std::unexpected(message(MessageKey::co2_out_of_range));
    const double high = most->value().count(), low = least->value().count();
    out.co2 =
        Co2Estimate(Co2Volumes((high + low) / 2)).with(leftover, (high - low) / 2 + residual_error);
    out.input = still_input(MessageKey::input_fill_temperature, *f.temperature, at);
    return out;
  }
  const auto c = residual(
      TemperatureEstimate(units::celsius(fermented_usually)).with(leftover, fermented_error), s);
  if (!c) return std::unexpected(message(MessageKey::co2_out_of_range));
  out.co2 = c->with({s.tag + ": CO₂ left, general"}, residual_error);
  out.input = still_input(MessageKey::input_assumed_warmest, units::celsius(fermented_usually), at);
  return out;
}

std::expected<Co2AtStart, Message> filled(const Filled& f, const Entry& entry,
                                          const Surroundings& s, Lookup& lookup) {
  Readings readings(lookup);
  const std::int64_t n = entry.header.sequence;
  if (f.co2_at_fill == Co2AtFill::still) return still(f, entry, s, lookup);
  Co2AtStart out;
  out.at_ambient = f.transfer == Transfer::open;
  if (f.co2_at_fill == Co2AtFill::measured && f.co2) {
    out.co2 = readings.co2(*f.co2, std::nullopt, std::nullopt, n);
    return out;
  }
  if (f.co2_at_fill == Co2AtFill::spunded && f.spund_pressure && f.temperature) {
    const auto c = physics::equilibrium_co2_estimate(
        readings.pressure(*f.spund_pressure, f.spund_dial, n),
        readings.temperature(*f.temperature, f.thermometer, n), s.ambient, s.equation);
    if (!c) return std::unexpected(message(MessageKey::co2_out_of_range));
    out.co2 = *c;
    return out;
  }
  return std::unexpected(message(MessageKey::co2_fill_incomplete));
}

std::expected<Co2AtStart, Message> received(const Received& r, const Surroundings& s) {
  if (!r.co2) return std::unexpected(message(MessageKey::co2_not_stated));
  const double error =
      r.co2_half_width ? units::to_volumes(*r.co2_half_width).count() : supplied_error;
  Co2AtStart out;
  out.co2 = Co2Estimate(units::to_volumes(*r.co2)).with({s.tag + ": CO₂ as supplied"}, error);
  return out;
}

std::expected<Co2AtStart, Message> found(const Found& f, const Entry& entry, const KegTimeline& keg,
                                         const Surroundings& s, Lookup& lookup) {
  Co2AtStart out;
  out.headspace = f.pressure;
  if (f.co2) {
    const double error =
        f.co2_half_width ? units::to_volumes(*f.co2_half_width).count() : found_error;
    out.co2 = Co2Estimate(units::to_volumes(*f.co2)).with({s.tag + ": CO₂ as found"}, error);
    return out;
  }
  if (!f.pressure) return std::unexpected(message(MessageKey::co2_not_stated));
  Readings readings(lookup);
  const std::int64_t n = entry.header.sequence;
  std::optional<TemperatureEstimate> t;
  if (f.temperature) {
    t = readings.temperature(*f.temperature, f.thermometer, n);
  } else if (keg.warmth) {
    t = keg.warmth->at(entry.header.happened_at);
  }
  if (!t) return std::unexpected(message(MessageKey::co2_no_temperature));
  if (f.gas_on && (!f.since || entry.header.happened_at - *f.since < settled_on_gas)) {
    return std::unexpected(message(MessageKey::co2_since_when));
  }
  const auto c = physics::equilibrium_co2_estimate(readings.pressure(*f.pressure, f.instrument, n),
                                                   *t, s.ambient, s.equation);
  if (!c) return std::unexpected(message(MessageKey::co2_out_of_range));
  out.co2 = c->with({s.tag + ": not known to be at rest"}, not_at_rest_error);
  return out;
}

}  // namespace

std::expected<Co2AtStart, Message> co2_at_start(const Entry& entry, const KegTimeline& keg,
                                                const Surroundings& s, Lookup& lookup) {
  if (const auto* f = get_if<Filled>(&entry.payload)) {
    return filled(*f, entry, s, lookup);
  }
  if (const auto* r = get_if<Received>(&entry.payload)) return received(*r, s);
  if (const auto* f = get_if<Found>(&entry.payload)) {
    return found(*f, entry, keg, s, lookup);
  }
  return std::unexpected(message(MessageKey::co2_not_stated));
}

std::optional<Co2Estimate> co2_read(const CarbonationReading& r, const Entry& entry,
                                    const Surroundings& s, Lookup& lookup) {
  Readings readings(lookup);
  const std::int64_t n = entry.header.sequence;
  if (r.co2) return readings.co2(*r.co2, r.co2_half_width, r.meter, n);
  if (!r.pressure || !r.temperature) return std::nullopt;
  const auto c = physics::equilibrium_co2_estimate(
      readings.pressure(*r.pressure, r.instrument, n),
      readings.temperature(*r.temperature, r.thermometer, n), s.ambient, s.equation);
  return c ? std::optional(*c) : std::nullopt;
}

}  // namespace ullage::cellar
