// SPDX-License-Identifier: GPL-3.0-or-later
//
// What a carbonation history must satisfy before it is solved.
#include <cmath>

#include "core/physics/atmosphere.h"
#include "core/physics/carbonation_solver.h"
#include "core/physics/equilibrium.h"
#include "core/physics/keg_cooling.h"

namespace ullage::physics {

using namespace units;

namespace {

using Refusal = std::optional<RangeError>;

constexpr Range gas_share{1e-3, 1.0};
constexpr Range any_share{0.0, 1.0};
constexpr Range start_headspace_range{-2.0e4, 4.5e5};
constexpr Range rocking_range{0.0, 86400.0};
constexpr Range factor_range{1.0, 100.0};
constexpr Range half_width_range{0.0, 1e9};  // finite, in any magnitude

Refusal check(Subject subject, double value, Range range) {
  if (auto bad = outside(subject, value, range)) return *bad;
  return std::nullopt;
}

template <class Q>
Refusal check(Subject subject, const Estimate<Q>& e, Range range) {
  if (auto bad = check(subject, to_magnitude(e.value()), range)) return bad;
  return check(subject, e.half_width(), half_width_range);
}

Refusal check_rate(const LogEstimate<Duration>& rate) {
  if (auto bad =
          check(Subject::time_constant, in_seconds(rate.median()), resting_time_constant_range))
    return bad;
  return check(Subject::time_constant, rate.factor(), factor_range);
}

class HistoryCheck {
 public:
  explicit HistoryCheck(const CarbonationHistory& history) : history_(history) {}

  Refusal start() {
    const double brimful = in_cubic_metres(history_.brimful);
    if (auto bad = check(Subject::volume, brimful, vessel_volume_range)) return bad;
    beer_ = in_cubic_metres(history_.beer);
    if (auto bad = beer_left()) return bad;
    if (auto bad = check(Subject::co2, history_.initial, initial_co2_range)) return bad;
    if (auto bad = check(Subject::ambient_pressure, history_.ambient, ambient_pressure_range))
      return bad;
    if (auto bad = check(Subject::temperature, history_.start, beer_temperature_range)) return bad;
    if (auto bad =
            check(Subject::gauge_pressure, in_pascals(history_.headspace), start_headspace_range))
      return bad;
    place_ = history_.start.value();
    return check(Subject::co2_fraction, history_.headspace_co2.count(), any_share);
  }

  Refusal step(const Step& step) {
    const double at = in_seconds(step.at);
    if (auto bad = check(Subject::step_time, at, {last_, history_range.high})) return bad;
    last_ = at;
    return visit([this](const auto& what) { return one(what); }, step.what);
  }

 private:
  Refusal one(const GasOn& gas) {
    if (auto bad = check(Subject::gauge_pressure, gas.pressure, set_pressure_range)) return bad;
    if (auto bad = check(Subject::co2_fraction, gas.co2.count(), gas_share)) return bad;
    gas_ = &gas;
    return at_rest();
  }
  Refusal one(const GasOff&) {
    gas_ = nullptr;
    return std::nullopt;
  }
  Refusal one(const Vented& vented) {
    return check(Subject::gauge_pressure, in_pascals(vented.to), set_pressure_range);
  }
  Refusal one(const PlaceChanged& place) {
    if (auto bad = check(Subject::temperature, place.temperature, beer_temperature_range))
      return bad;
    place_ = place.temperature.value();
    return at_rest();
  }
  Refusal one(const BeerTemperatureRead& read) {
    return check(Subject::temperature, read.temperature, beer_temperature_range);
  }
  Refusal one(const Rocked& rocked) {
    return check(Subject::duration, in_seconds(rocked.how_long), rocking_range);
  }
  Refusal one(const BeerDrawn& drawn) {
    if (auto bad = check(Subject::beer_volume, in_cubic_metres(drawn.beer), {0.0, beer_}))
      return bad;
    beer_ -= in_cubic_metres(drawn.beer);
    return beer_left();
  }
  Refusal one(const Co2Read& read) { return check(Subject::co2, read.co2, initial_co2_range); }

  [[nodiscard]] Refusal beer_left() const {
    const double brimful = in_cubic_metres(history_.brimful);
    return check(
        Subject::beer_volume, beer_,
        {brimful * (1 - headspace_share_range.high), brimful * (1 - headspace_share_range.low)});
  }
  // The equilibrium the keg heads for must be one the equation can tell.
  [[nodiscard]] Refusal at_rest() const {
    if (gas_ == nullptr) return std::nullopt;
    const auto co2 = equilibrium_co2(
        GasAbove{gas_->pressure.value(), history_.ambient.value(), gas_->co2}, place_);
    if (!co2) return co2.error();
    return std::nullopt;
  }

  const CarbonationHistory& history_;
  const GasOn* gas_ = nullptr;  // in force
  Temperature place_{};
  double beer_ = 0;
  double last_ = 0;
};

}  // namespace

std::optional<RangeError> check_history(const CarbonationHistory& history,
                                        const CarbonationRates& rates, Duration horizon) {
  HistoryCheck checking(history);
  if (auto bad = checking.start()) return bad;
  for (const Step& step : history.steps) {
    if (auto bad = checking.step(step)) return bad;
  }
  const double end =
      (history.steps.empty() ? 0.0 : in_seconds(history.steps.back().at)) + in_seconds(horizon);
  for (const Co2Reading& reading : history.readings) {
    if (auto bad = check(Subject::step_time, in_seconds(reading.at), {0.0, end})) return bad;
    if (auto bad = check(Subject::co2, reading.co2, initial_co2_range)) return bad;
  }
  for (const LogEstimate<Duration>* rate : {&rates.resting, &rates.rocking, &rates.cooling}) {
    if (auto bad = check_rate(*rate)) return bad;
  }
  return check(Subject::duration, in_seconds(horizon), {1.0, history_range.high});
}

}  // namespace ullage::physics
