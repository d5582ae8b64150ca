// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/physics/keg_cooling.h"

#include <algorithm>
#include <cmath>
#include <utility>

namespace ullage::physics {

using namespace units;

namespace {

constexpr double reference_hours = 9.0;
constexpr double reference_litres = 18.93;
constexpr double prior_factor = 1.8;
constexpr Range history_duration{0.0, 20 * 366 * 86400.0};

double toward(double from, double place, double elapsed, double tau) {
  return place + (from - place) * std::exp(-elapsed / tau);
}

}  // namespace

Result<LogEstimate<Duration>> cooling_time_constant(Volume brimful, ErrorSource source) {
  if (auto bad = outside(Subject::volume, in_cubic_metres(brimful), vessel_volume_range))
    return std::unexpected(*bad);
  const double scale = std::cbrt(in_litres(brimful) / reference_litres);
  return LogEstimate<Duration>(hours(reference_hours * scale), prior_factor, std::move(source));
}

Result<Temperature> keg_temperature(Temperature start, std::span<const PlaceTemperature> places,
                                    Duration time_constant, Duration after) {
  const double tau = in_seconds(time_constant);
  if (auto bad = outside(Subject::temperature, in_kelvin(start), place_temperature_range))
    return std::unexpected(*bad);
  if (auto bad = outside(Subject::time_constant, tau, cooling_time_constant_range))
    return std::unexpected(*bad);
  if (auto bad = outside(Subject::duration, in_seconds(after), history_duration))
    return std::unexpected(*bad);
  double temperature = in_kelvin(start);
  double now = 0;
  for (std::size_t i = 0; i < places.size(); ++i) {
    const double place = in_kelvin(places[i].temperature);
    const double ends = i + 1 < places.size() ? in_seconds(places[i + 1].at) : in_seconds(after);
    if (auto bad = outside(Subject::temperature, place, place_temperature_range))
      return std::unexpected(*bad);
    if (i + 1 < places.size()) {
      if (auto bad = outside(Subject::step_time, ends, {now, history_duration.high}))
        return std::unexpected(*bad);
    }
    const double until = std::min(ends, in_seconds(after));
    if (until > now) {
      temperature = toward(temperature, place, until - now, tau);
      now = until;
    }
  }
  return kelvin(temperature);
}

Result<std::optional<CoolingWindow>> time_to_temperature(
    Temperature beer, Temperature place, Temperature target,
    const LogEstimate<Duration>& time_constant) {
  for (const Temperature& t : {beer, place, target}) {
    if (auto bad = outside(Subject::temperature, in_kelvin(t), place_temperature_range))
      return std::unexpected(*bad);
  }
  if (auto bad = outside(Subject::time_constant, in_seconds(time_constant.median()),
                         cooling_time_constant_range))
    return std::unexpected(*bad);
  const double whole = in_kelvin(beer - place);
  const double left = in_kelvin(target - place);
  if (whole == left) return CoolingWindow{seconds(0), seconds(0), seconds(0)};
  // Between beer and place, and not at the place itself, which is never reached.
  const double share = left / whole;
  if (!(share > 0.0 && share < 1.0)) return std::nullopt;
  const double constants = -std::log(share);
  return CoolingWindow{seconds(constants * in_seconds(time_constant.low())),
                       seconds(constants * in_seconds(time_constant.median())),
                       seconds(constants * in_seconds(time_constant.high()))};
}

}  // namespace ullage::physics
