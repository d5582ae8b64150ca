// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/physics/draught_line.h"

#include <boost/math/tools/toms748_solve.hpp>
#include <cmath>
#include <cstdint>
#include <numbers>
#include <optional>
#include <utility>

namespace ullage::physics {

using namespace units;

namespace {

constexpr double gravity_m_s2 = 9.80665;

std::optional<RangeError> fault_of(const Hose& h) {
  if (auto bad = outside(Subject::length, in_metres(h.length), line_length_range)) return *bad;
  if (auto bad = outside(Subject::bore, in_metres(h.bore), bore_range)) return *bad;
  if (auto bad = outside(Subject::roughness, in_metres(h.roughness), hose_roughness_range))
    return *bad;
  if (auto bad = outside(Subject::relative_roughness, h.roughness.value() / h.bore.value(),
                         relative_roughness_range))
    return *bad;
  if (auto bad = outside(Subject::rise, in_metres(h.rise), rise_range)) return *bad;
  return std::nullopt;
}

std::optional<RangeError> fault_of(const Fitting& f) {
  if (auto bad = outside(Subject::pressure_loss, in_pascals(f.loss), fitting_loss_range))
    return *bad;
  if (auto bad = outside(Subject::flow, f.at.value(), pour_flow_range)) return *bad;
  return std::nullopt;
}

// Where `f` over the logarithm of its argument crosses zero. f rises or falls
// all the way and has opposite signs at the ends; as pressures go with powers of
// what is asked for, it is nearly straight and a handful of calls is enough.
template <class F>
double root_in_log(F&& f, double low, double at_low, double high, double at_high) {
  std::uintmax_t steps = 60;
  const auto [a, b] = boost::math::tools::toms748_solve(
      [&](double ln) { return f(std::exp(ln)); }, std::log(low), std::log(high), at_low, at_high,
      boost::math::tools::eps_tolerance<double>(40), steps);
  return std::exp(0.5 * (a + b));
}

}  // namespace

VolumeFlow nominal_pour() { return us_fluid_ounces_per_second(2.0); }

LineFlow::Terms LineFlow::terms_of(const LinePart& part, const FlowingBeer& beer) {
  Terms t;
  if (const Hose* h = get_if<Hose>(&part)) {
    const double d = h->bore.value();
    const double area = std::numbers::pi / 4.0 * d * d;
    t.inertia = h->length.value() / d * beer.density.value() / 2.0 / (area * area);
    t.reynolds_per_flow = beer.density.value() * d / (area * beer.viscosity.value());
    t.roughness = h->roughness.value() / d;
    t.lift = beer.density.value() * gravity_m_s2 * h->rise.value();
  } else {
    const Fitting& f = *get_if<Fitting>(&part);
    t.inertia = f.loss.value() / (f.at.value() * f.at.value());
  }
  return t;
}

Result<LineFlow> LineFlow::make(LineParts parts, const FlowingBeer& beer) {
  const auto count = static_cast<double>(parts.size());
  if (auto bad = outside(Subject::parts, count, {1.0, static_cast<double>(most_line_parts)}))
    return std::unexpected(*bad);
  LineFlow line;
  line.beer_ = beer;
  double resistance = 0;
  for (const LinePart& part : parts) {
    const auto fault = visit([](const auto& p) { return fault_of(p); }, part);
    if (fault) return std::unexpected(*fault);
    line.terms_.push_back(terms_of(part, beer));
    line.lift_ += line.terms_.back().lift;
    resistance += line.terms_.back().inertia;
  }
  if (!(resistance > 0))
    return std::unexpected(RangeError{Subject::length, 0.0, 1e-3, line_length_range.high});
  line.parts_ = std::move(parts);
  return line;
}

double LineFlow::loss(const Terms& t, double flow) {
  if (t.inertia == 0 || flow == 0) return 0;
  const double square = t.inertia * flow * flow;
  if (t.reynolds_per_flow == 0) return square;
  return square * pipe_detail::friction(t.reynolds_per_flow * flow, t.roughness);
}

double LineFlow::loss(double flow) const {
  double sum = 0;
  for (const Terms& t : terms_) sum += loss(t, flow);
  return sum;
}

PressureDifference LineFlow::lift() const { return pascals(lift_); }

Result<VolumeFlow> LineFlow::flow_at(GaugePressure p) const {
  if (auto bad = outside(Subject::gauge_pressure, in_pascals(p), pour_pressure_range))
    return std::unexpected(*bad);
  const double available = in_pascals(p) - lift_;
  const auto short_by = [&](double q) { return std::log(loss(q) / available); };
  // What stands still or drips slower than the range is said as the pressure missing.
  if (!(available > 0) || short_by(pour_flow_range.low) > 0)
    return std::unexpected(
        RangeError{Subject::gauge_pressure, in_pascals(p), lift_, pour_pressure_range.high});
  const double at_high = short_by(pour_flow_range.high);
  if (at_high < 0)
    return std::unexpected(RangeError{Subject::flow, pour_flow_range.high * 2, pour_flow_range.low,
                                      pour_flow_range.high});
  return VolumeFlow::from_value(root_in_log(
      short_by, pour_flow_range.low, short_by(pour_flow_range.low), pour_flow_range.high, at_high));
}

Result<GaugePressure> LineFlow::pressure_for(VolumeFlow flow) const {
  if (auto bad = outside(Subject::flow, flow.value(), pour_flow_range))
    return std::unexpected(*bad);
  const double p = lift_ + loss(flow.value());
  if (auto bad = outside(Subject::gauge_pressure, p, pour_pressure_range))
    return std::unexpected(*bad);
  return gauge_pascals(p);
}

Result<Length> LineFlow::length_for(std::size_t part, GaugePressure p, VolumeFlow flow) const {
  if (auto bad = outside(Subject::flow, flow.value(), pour_flow_range))
    return std::unexpected(*bad);
  if (auto bad = outside(Subject::gauge_pressure, in_pascals(p), pour_pressure_range))
    return std::unexpected(*bad);
  const Hose* hose = part < parts_.size() ? get_if<Hose>(&parts_[part]) : nullptr;
  if (hose == nullptr)
    return std::unexpected(RangeError{Subject::parts, static_cast<double>(part), 0.0,
                                      static_cast<double>(parts_.size()) - 1.0});
  Hose metre = *hose;
  metre.length = metres(1);
  const double per_metre = loss(terms_of(metre, beer_), flow.value());
  const double others = loss(flow.value()) - loss(terms_[part], flow.value());
  const double length = (in_pascals(p) - lift_ - others) / per_metre;
  if (auto bad = outside(Subject::length, length, line_length_range)) return std::unexpected(*bad);
  return metres(length);
}

Result<Length> LineFlow::bore_for(std::size_t part, GaugePressure p, VolumeFlow flow) const {
  if (auto bad = outside(Subject::flow, flow.value(), pour_flow_range))
    return std::unexpected(*bad);
  if (auto bad = outside(Subject::gauge_pressure, in_pascals(p), pour_pressure_range))
    return std::unexpected(*bad);
  const Hose* hose = part < parts_.size() ? get_if<Hose>(&parts_[part]) : nullptr;
  if (hose == nullptr || hose->length.value() <= 0)
    return std::unexpected(RangeError{Subject::parts, static_cast<double>(part), 0.0,
                                      static_cast<double>(parts_.size()) - 1.0});
  const double others = loss(flow.value()) - loss(terms_[part], flow.value());
  const double available = in_pascals(p) - lift_ - others;
  if (!(available > 0))
    return std::unexpected(RangeError{Subject::gauge_pressure, in_pascals(p), lift_ + others,
                                      pour_pressure_range.high});
  const auto short_by = [&](double bore) {
    Hose h = *hose;
    h.bore = metres(bore);
    return std::log(loss(terms_of(h, beer_), flow.value()) / available);
  };
  // A rough hose has no answer narrower than its roughness allows.
  const double low =
      std::max(bore_range.low, hose->roughness.value() / relative_roughness_range.high);
  const double at_low = short_by(low);
  const double at_high = short_by(bore_range.high);
  if (at_low < 0)
    return std::unexpected(RangeError{Subject::bore, low / 2.0, low, bore_range.high});
  if (at_high > 0)
    return std::unexpected(RangeError{Subject::bore, bore_range.high * 2.0, low, bore_range.high});
  return metres(root_in_log(short_by, low, at_low, bore_range.high, at_high));
}

Result<PressureDifference> LineFlow::loss_in(std::size_t part, VolumeFlow flow) const {
  if (part >= parts_.size())
    return std::unexpected(RangeError{Subject::parts, static_cast<double>(part), 0.0,
                                      static_cast<double>(parts_.size()) - 1.0});
  if (auto bad = outside(Subject::flow, flow.value(), {0.0, pour_flow_range.high}))
    return std::unexpected(*bad);
  return pascals(loss(terms_[part], flow.value()));
}

Result<std::vector<ProfilePoint>> LineFlow::profile(GaugePressure p, double flow) const {
  if (auto bad = outside(Subject::gauge_pressure, in_pascals(p), pour_pressure_range))
    return std::unexpected(*bad);
  std::vector<ProfilePoint> points{{metres(0), metres(0), p, 0}};
  points.reserve(parts_.size() + 1);
  for (std::size_t i = 0; i < parts_.size(); ++i) {
    ProfilePoint next = points.back();
    next.part = i;
    if (const Hose* h = get_if<Hose>(&parts_[i])) {
      next.along += h->length;
      next.height += h->rise;
    }
    next.pressure = next.pressure - pascals(terms_[i].lift + loss(terms_[i], flow));
    points.push_back(next);
  }
  return points;
}

Result<std::vector<ProfilePoint>> LineFlow::profile_at_rest(GaugePressure p) const {
  return profile(p, 0.0);
}

Result<std::vector<ProfilePoint>> LineFlow::profile_pouring(GaugePressure p) const {
  const auto flow = flow_at(p);
  if (!flow) return std::unexpected(flow.error());
  return profile(p, flow->value());
}

Length total_length(const LineParts& parts) {
  Length sum = metres(0);
  for (const LinePart& part : parts)
    if (const Hose* h = get_if<Hose>(&part)) sum += h->length;
  return sum;
}

Length total_rise(const LineParts& parts) {
  Length sum = metres(0);
  for (const LinePart& part : parts)
    if (const Hose* h = get_if<Hose>(&part)) sum += h->rise;
  return sum;
}

Volume total_volume(const LineParts& parts) {
  double sum = 0;
  for (const LinePart& part : parts)
    if (const Hose* h = get_if<Hose>(&part))
      sum += std::numbers::pi / 4.0 * h->bore.value() * h->bore.value() * h->length.value();
  return cubic_metres(sum);
}

}  // namespace ullage::physics
