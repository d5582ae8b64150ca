// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/physics/line_calibration.h"

#include <boost/math/tools/toms748_solve.hpp>
#include <cmath>
#include <cstdint>
#include <limits>
#include <optional>
#include <utility>

namespace ullage::physics {

using namespace units;

namespace {

constexpr double friction_power = 4.75;  // Blasius: loss over length at one flow, d^-4.75

BoreFactor bores_of(BoreFactor f) { return f; }

std::optional<RangeError> fault_of(const MeasuredPour& pour) {
  if (auto bad = outside(Subject::volume, pour.volume.value().value(), pour_volume_range))
    return *bad;
  if (auto bad = outside(Subject::duration, pour.duration.value().value(), pour_time_range))
    return *bad;
  if (auto bad = outside(Subject::gauge_pressure, in_pascals(pour.pressure.value().above_ambient()),
                         pour_pressure_range))
    return *bad;
  return std::nullopt;
}

// ln(pressure lost at this flow / pressure there is) with `parts`: falls as the
// hoses widen or get smoother.
Result<double> shortfall(const LineParts& parts, const FlowingBeer& beer, GaugePressure p,
                         VolumeFlow flow) {
  const auto line = LineFlow::make(parts, beer);
  if (!line) return std::unexpected(line.error());
  const auto needed = line->pressure_for(flow);
  const double lift = in_pascals(line->lift());
  if (!needed) {
    if (needed.error().subject != Subject::gauge_pressure) return std::unexpected(needed.error());
    return 10.0;  // far more than any pressure here: too narrow
  }
  const double available = in_pascals(p) - lift;
  if (!(available > 0))
    return std::unexpected(
        RangeError{Subject::gauge_pressure, in_pascals(p), lift, pour_pressure_range.high});
  return std::log((in_pascals(*needed) - lift) / available);
}

// The parameter in `range` at which the shortfall of `parts_for(parameter)` is
// nothing; refuses as `subject` where there is none.
template <class PartsFor>
Result<double> solve_pour(Subject subject, Range range, PartsFor&& parts_for,
                          const FlowingBeer& beer, GaugePressure p, VolumeFlow flow) {
  const auto at = [&](double v) { return shortfall(parts_for(v), beer, p, flow); };
  const auto low = at(range.low);
  if (!low) return std::unexpected(low.error());
  const auto high = at(range.high);
  if (!high) return std::unexpected(high.error());
  if (*low * *high > 0) {
    const bool beyond_high = std::abs(*high) < std::abs(*low);
    return std::unexpected(RangeError{subject, beyond_high ? 2 * range.high : range.low / 2 - 1e-9,
                                      range.low, range.high});
  }
  std::uintmax_t steps = 80;
  const auto [a, b] = boost::math::tools::toms748_solve(
      [&](double v) { return at(v).value_or(0.0); }, range.low, range.high, *low, *high,
      boost::math::tools::eps_tolerance<double>(40), steps);
  return 0.5 * (a + b);
}

template <class Q>
Result<Estimate<VolumeFlow>> pour_flow_through(const Estimate<Q>& bores, const LineParts& parts,
                                               const PourInputs& in) {
  return try_propagate(
      [&](Q known, GaugePressure p, Temperature t, ViscosityFactor thick) -> Result<VolumeFlow> {
        const auto beer = flowing_beer(t, in.gravity, thick);
        if (!beer) return std::unexpected(beer.error());
        const auto line = LineFlow::make(with_bores(parts, bores_of(known)), *beer);
        if (!line) return std::unexpected(line.error());
        return line->flow_at(p);
      },
      bores, in.pressure, in.temperature, in.viscosity);
}

}  // namespace

HoseResistance resistance_of(BoreFactor f) {
  return HoseResistance(std::pow(f.count(), -friction_power));
}

BoreFactor bores_of(HoseResistance r) {
  return BoreFactor(r.count() > 0 ? std::pow(r.count(), -1 / friction_power)
                                  : std::numeric_limits<double>::quiet_NaN());
}

BoreRange range_of_bores(const KnownBores& known) {
  if (const auto* factor = get_if<Estimate<BoreFactor>>(&known))
    return {factor->low(), factor->value(), factor->high()};
  const auto& resists = get<Estimate<HoseResistance>>(known);
  BoreRange out{bores_of(resists.high()), bores_of(resists.value()), std::nullopt};
  if (resists.low().count() > 0) out.high = bores_of(resists.low());
  return out;
}

LineParts with_bores(LineParts parts, BoreFactor factor) {
  for (LinePart& part : parts)
    if (Hose* h = get_if<Hose>(&part)) h->bore *= factor.count();
  return parts;
}

LineParts with_roughness(LineParts parts, Length roughness) {
  for (LinePart& part : parts)
    if (Hose* h = get_if<Hose>(&part)) h->roughness = roughness;
  return parts;
}

Result<Estimate<HoseResistance>> calibrate_bore(const LineParts& parts, const MeasuredPour& pour,
                                                SpecificGravity gravity,
                                                const Estimate<ViscosityFactor>& viscosity) {
  if (const auto bad = fault_of(pour)) return std::unexpected(*bad);
  return try_propagate(
      [&](Volume v, Duration s, GaugePressure p, Temperature t,
          ViscosityFactor thick) -> Result<HoseResistance> {
        const auto beer = flowing_beer(t, gravity, thick);
        if (!beer) return std::unexpected(beer.error());
        const auto factor = solve_pour(
            Subject::factor, bore_factor_range,
            [&](double f) { return with_bores(parts, BoreFactor(f)); }, *beer, p, v / s);
        if (!factor) return std::unexpected(factor.error());
        return resistance_of(BoreFactor(*factor));
      },
      pour.volume, pour.duration, pour.pressure, pour.temperature, viscosity);
}

Result<Length> calibrate_roughness(const LineParts& parts, const MeasuredPour& pour,
                                   SpecificGravity gravity, ViscosityFactor viscosity) {
  if (const auto bad = fault_of(pour)) return std::unexpected(*bad);
  const auto beer = flowing_beer(pour.temperature.value(), gravity, viscosity);
  if (!beer) return std::unexpected(beer.error());
  double roughest = hose_roughness_range.high;
  for (const LinePart& part : parts)
    if (const Hose* h = get_if<Hose>(&part))
      roughest = std::min(roughest, h->bore.value() * relative_roughness_range.high);
  const auto e = solve_pour(
      Subject::roughness, {0.0, roughest},
      [&](double r) { return with_roughness(parts, metres(r)); }, *beer, pour.pressure.value(),
      pour.volume.value() / pour.duration.value());
  if (!e) return std::unexpected(e.error());
  return metres(*e);
}

Result<Estimate<HoseResistance>> combine(const std::vector<Estimate<HoseResistance>>& pours) {
  if (pours.empty()) return std::unexpected(RangeError{Subject::parts, 0, 1, 1e6});
  double weights = 0;
  double value = 0;
  for (const auto& p : pours) {
    const double own = std::max(p.half_width(), 1e-6);
    weights += 1 / (own * own);
    value += p.value().count() / (own * own);
  }
  Estimate<HoseResistance> all(HoseResistance(value / weights));
  for (const auto& p : pours) {
    const double own = std::max(p.half_width(), 1e-6);
    for (const Contribution& c : p.contributions())
      all = all.with(c.source, c.half_width / (own * own) / weights);
  }
  return all;
}

Result<Estimate<VolumeFlow>> pour_flow(const LineParts& parts, const PourInputs& in) {
  return visit([&](const auto& bores) { return pour_flow_through(bores, parts, in); }, in.bores);
}

Result<PourTime> pour_time(const Estimate<VolumeFlow>& flow, Volume glass) {
  if (auto bad = outside(Subject::volume, glass.value(), pour_volume_range))
    return std::unexpected(*bad);
  if (auto bad = outside(Subject::flow, flow.value().value(), pour_flow_range))
    return std::unexpected(*bad);
  const double likely = glass.value() / flow.value().value();
  const double spread = std::exp(flow.half_width() / flow.value().value());
  return PourTime{seconds(likely / spread), seconds(likely), seconds(likely * spread)};
}

}  // namespace ullage::physics
