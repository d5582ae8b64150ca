// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/physics/plain_history.h"

#include <algorithm>
#include <cmath>

namespace ullage::physics {

using namespace units;

namespace {

// Few readings are run each on its own; many are followed together.
constexpr std::ptrdiff_t single_readings_run = 6;

}  // namespace

std::size_t PlainHistory::source_index(const ErrorSource& source) {
  const auto [at, is_new] = index_.try_emplace(source.name, sources_.size());
  if (is_new) {
    sources_.push_back(&source);
    uses_.emplace_back();
  }
  return at->second;
}

template <class Q>
Uncertain PlainHistory::take(const Estimate<Q>& e, double at_s, bool setting, Enters how) {
  Uncertain out{to_magnitude(e.value()), static_cast<std::uint32_t>(leans_.size()), 0};
  for (const Contribution& c : e.contributions()) {
    if (c.half_width == 0) continue;
    const std::size_t i = source_index(c.source);
    uses_[i].bends = uses_[i].bends || how != Enters::straight;
    uses_[i].thermal = uses_[i].thermal || how == Enters::as_temperature;
    uses_[i].from_s = std::min(uses_[i].from_s, at_s);
    if (setting) {
      ++uses_[i].settings;
    } else {
      uses_[i].elsewhere = true;
    }
    leans_.push_back({i, c.half_width});
  }
  out.last = static_cast<std::uint32_t>(leans_.size());
  return out;
}

PlainRate PlainHistory::take(const LogEstimate<Duration>& rate, double from_s) {
  const std::size_t i = source_index(rate.source());
  if (std::isfinite(from_s) && rate.factor() > 1) {
    uses_[i].elsewhere = uses_[i].bends = true;
    uses_[i].from_s = std::min(uses_[i].from_s, from_s);
  }
  return {in_seconds(rate.median()), std::log(rate.factor()), i};
}

PlainHistory::PlainHistory(const CarbonationHistory& history, const CarbonationRates& rates)
    : brimful_m3(in_cubic_metres(history.brimful)),
      beer_m3(in_cubic_metres(history.beer)),
      headspace_pa(in_pascals(history.headspace)),
      headspace_co2(history.headspace_co2.count()) {
  using Kind = PlainStep::Kind;
  equation = source_index(rates.equation);
  uses_[equation].elsewhere = true;
  uses_[equation].from_s = 0;
  initial = take(history.initial, 0, false, Enters::straight);
  ambient = take(history.ambient, 0, false, Enters::straight);
  start = take(history.start, 0, false, Enters::as_temperature);
  double rocked_from_s = std::numeric_limits<double>::infinity();
  steps.reserve(history.steps.size());
  for (const Step& step : history.steps) {
    PlainStep plain{in_seconds(step.at), Kind::gas_off, {}, 0};
    if (const auto* gas = get_if<GasOn>(&step.what)) {
      plain.kind = Kind::gas_on;
      plain.uncertain = take(gas->pressure, plain.at_s, true, Enters::bent);
      plain.exact = gas->co2.count();
    } else if (const auto* vented = get_if<Vented>(&step.what)) {
      plain = {plain.at_s, Kind::vented, {}, in_pascals(vented->to)};
    } else if (const auto* place = get_if<PlaceChanged>(&step.what)) {
      plain.kind = Kind::place;
      plain.uncertain = take(place->temperature, plain.at_s, true, Enters::as_temperature);
    } else if (const auto* beer = get_if<BeerTemperatureRead>(&step.what)) {
      plain.kind = Kind::beer_read;
      plain.uncertain = take(beer->temperature, plain.at_s, false, Enters::as_temperature);
    } else if (const auto* rocking_now = get_if<Rocked>(&step.what)) {
      plain = {plain.at_s, Kind::rocked, {}, in_seconds(rocking_now->how_long)};
      rocked_from_s = std::min(rocked_from_s, plain.at_s);
    } else if (const auto* drawn = get_if<BeerDrawn>(&step.what)) {
      plain = {plain.at_s, Kind::drawn, {}, in_cubic_metres(drawn->beer)};
    } else if (const auto* read = get_if<Co2Read>(&step.what)) {
      plain.kind = Kind::co2_read;
      plain.uncertain = take(read->co2, plain.at_s, false, Enters::straight);
    }
    steps.push_back(plain);
  }
  resting = take(rates.resting, 0);
  rocking = take(rates.rocking, rocked_from_s);
  cooling = take(rates.cooling, 0);
  uses_[cooling.source].thermal = true;
  pools_ = std::count_if(uses_.begin(), uses_.end(), [](const SourceUse& use) {
             return use.single_reading();
           }) > single_readings_run;
  for (std::size_t i = 0; i < uses_.size(); ++i) {
    if (uses_[i].thermal && !pooled(i)) thermal_.push_back(i);
  }
}

std::optional<std::size_t> PlainHistory::index_of(const ErrorSource& source) const {
  const auto at = index_.find(source.name);
  if (at == index_.end() || pooled(at->second)) return std::nullopt;
  return at->second;
}

double PlainHistory::pooled_square(const Uncertain& e) const {
  double sum = 0;
  for (std::uint32_t i = e.first; i < e.last; ++i) {
    if (pooled(leans_[i].source)) sum += leans_[i].half_width * leans_[i].half_width;
  }
  return sum;
}

double PlainHistory::at(const PlainRate& rate, std::span<const double> offsets) {
  return rate.median_s * std::exp(rate.log_factor * offsets[rate.source]);
}

Offsets PlainHistory::offsets(std::span<const Shift> shifts) const {
  Offsets out(source_count(), 0.0);
  for (const Shift& s : shifts) {
    if (const auto i = index_of(s.source)) out[*i] += s.half_widths;
  }
  return out;
}

}  // namespace ullage::physics
