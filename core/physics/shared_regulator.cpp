// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/physics/shared_regulator.h"

#include <algorithm>
#include <numeric>

#include "core/physics/equilibrium.h"

namespace ullage::physics {

using namespace units;

namespace {

Result<std::vector<PressureSpan>> spans_of(const std::vector<SharingKeg>& kegs) {
  if (auto bad = outside(Subject::parts, static_cast<double>(kegs.size()), {1.0, 1000.0}))
    return std::unexpected(*bad);
  std::vector<PressureSpan> spans;
  spans.reserve(kegs.size());
  for (const SharingKeg& keg : kegs) {
    const auto span = suiting_pressures(keg);
    if (!span) return std::unexpected(span.error());
    spans.push_back(*span);
  }
  return spans;
}

// Volumes out of its range that a keg settles at; nothing to a refused pressure.
Result<double> misfit(const SharingKeg& keg, GaugePressure p) {
  const auto c =
      equilibrium_co2(GasAbove{p, keg.ambient.value(), keg.co2}, keg.temperature.value());
  if (!c) return std::unexpected(c.error());
  return std::max({0.0, keg.low.count() - c->count(), c->count() - keg.high.count()});
}

Result<double> worst_misfit(const std::vector<SharingKeg>& kegs, GaugePressure p) {
  double worst = 0;
  for (const SharingKeg& keg : kegs) {
    const auto m = misfit(keg, p);
    if (!m) return m;
    worst = std::max(worst, *m);
  }
  return worst;
}

Result<CarbonationModel> left_to_it(const SharingKeg& keg, const Estimate<GaugePressure>& pressure,
                                    Duration time) {
  CarbonationHistory history;
  history.brimful = keg.brimful;
  history.beer = keg.beer;
  history.initial = keg.now;
  history.ambient = keg.ambient;
  history.start = keg.temperature;
  history.headspace = std::max(keg.headspace, pressure.value());
  history.headspace_co2 = keg.co2;
  history.steps.push_back({seconds(0), GasOn{pressure, keg.co2}});
  const auto rates = carbonation_priors(keg.brimful, keg.beer, keg.name);
  if (!rates) return std::unexpected(rates.error());
  return CarbonationModel::make(history, *rates, std::max(time, hours(1)));
}

}  // namespace

Result<PressureSpan> suiting_pressures(const SharingKeg& keg) {
  if (keg.high < keg.low)
    return std::unexpected(RangeError{Subject::co2, keg.high.count(), keg.low.count(), 6.0});
  const auto low =
      equilibrium_gauge(keg.low, keg.temperature.value(), keg.ambient.value(), keg.co2);
  if (!low) return std::unexpected(low.error());
  const auto high =
      equilibrium_gauge(keg.high, keg.temperature.value(), keg.ambient.value(), keg.co2);
  if (!high) return std::unexpected(high.error());
  return PressureSpan{*low, *high};
}

Result<CarbonationPoint> co2_after(const SharingKeg& keg, const Estimate<GaugePressure>& pressure,
                                   Duration time) {
  const auto model = left_to_it(keg, pressure, time);
  if (!model) return std::unexpected(model.error());
  return model->at(time);
}

Result<Estimate<Co2Volumes>> co2_estimate_after(const SharingKeg& keg,
                                                const Estimate<GaugePressure>& pressure,
                                                Duration time) {
  const auto model = left_to_it(keg, pressure, time);
  if (!model) return std::unexpected(model.error());
  return model->co2_at(time);
}

Result<SharedSetting> best_shared_pressure(const std::vector<SharingKeg>& kegs) {
  const auto spans = spans_of(kegs);
  if (!spans) return std::unexpected(spans.error());
  GaugePressure highest_low = spans->front().low;
  GaugePressure lowest_high = spans->front().high;
  for (const PressureSpan& s : *spans) {
    highest_low = std::max(highest_low, s.low);
    lowest_high = std::min(lowest_high, s.high);
  }
  SharedSetting best;
  best.suits_all = highest_low <= lowest_high;
  if (best.suits_all) {
    best.pressure = highest_low + (lowest_high - highest_low) * 0.5;
  } else {
    // The worst misfit is convex in pressure (largest of straight lines): a
    // golden-section search between the two pressures that pull.
    double a = in_pascals(lowest_high);
    double b = in_pascals(highest_low);
    constexpr double golden = 0.6180339887498949;
    for (int step = 0; step < 60; ++step) {
      const double x = b - golden * (b - a);
      const double y = a + golden * (b - a);
      const auto at_x = worst_misfit(kegs, gauge_pascals(x));
      if (!at_x) return std::unexpected(at_x.error());
      const auto at_y = worst_misfit(kegs, gauge_pascals(y));
      if (!at_y) return std::unexpected(at_y.error());
      (*at_x < *at_y ? b : a) = *at_x < *at_y ? y : x;
    }
    best.pressure = gauge_pascals(0.5 * (a + b));
  }
  for (const SharingKeg& keg : kegs) {
    const auto c = equilibrium_co2(GasAbove{best.pressure, keg.ambient.value(), keg.co2},
                                   keg.temperature.value());
    if (!c) return std::unexpected(c.error());
    best.settles.push_back(*c);
  }
  return best;
}

// Taking spans by their upper end and setting each regulator as high as the first
// allows is the fewest there can be (interval stabbing); the pressure is then
// moved to the middle of what the group shares.
Result<std::vector<RegulatorGroup>> fewest_regulators(const std::vector<SharingKeg>& kegs) {
  const auto spans = spans_of(kegs);
  if (!spans) return std::unexpected(spans.error());
  std::vector<std::size_t> order(kegs.size());
  std::iota(order.begin(), order.end(), std::size_t{0});
  std::stable_sort(order.begin(), order.end(), [&](std::size_t x, std::size_t y) {
    return (*spans)[x].high < (*spans)[y].high;
  });
  std::vector<RegulatorGroup> groups;
  std::vector<PressureSpan> shared;
  for (const std::size_t i : order) {
    const PressureSpan& s = (*spans)[i];
    if (groups.empty() || shared.back().high < s.low) {
      groups.push_back({});
      shared.push_back(s);
    }
    groups.back().kegs.push_back(i);
    shared.back().low = std::max(shared.back().low, s.low);
  }
  for (std::size_t g = 0; g < groups.size(); ++g) {
    groups[g].pressure = shared[g].low + (shared[g].high - shared[g].low) * 0.5;
    std::sort(groups[g].kegs.begin(), groups[g].kegs.end());
  }
  return groups;
}

}  // namespace ullage::physics
