// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/physics/reading_spread.h"

#include <algorithm>
#include <cmath>
#include <iterator>

#include "core/physics/equilibrium.h"

namespace ullage::physics {

using namespace units;

namespace {

double total(double pressure, double place, double before_squared) {
  return std::sqrt(pressure * pressure + place * place + before_squared);
}

}  // namespace

std::vector<PooledStep> pooled_steps(const PlainHistory& history) {
  std::vector<PooledStep> out;
  for (const PlainStep& step : history.steps) {
    const Duration at = seconds(step.at_s);
    if (step.kind == PlainStep::Kind::gas_on)
      out.push_back({at, PooledStep::Kind::pressure, history.pooled_square(step.uncertain)});
    if (step.kind == PlainStep::Kind::place)
      out.push_back({at, PooledStep::Kind::place, history.pooled_square(step.uncertain)});
    if (step.kind == PlainStep::Kind::co2_read) out.push_back({at, PooledStep::Kind::co2_read, 0});
  }
  return out;
}

ReadingSpread::Node ReadingSpread::after(const Node& n, double seconds) {
  Node out = n;
  const double left = std::exp(-n.lambda * seconds);
  out.pressure = n.pressure_rest + (n.pressure - n.pressure_rest) * left;
  out.place = n.place_rest + (n.place - n.place_rest) * left;
  out.before_squared = n.before_squared * left * left;
  return out;
}

ReadingSpread::ReadingSpread(const Trajectory& centre, const std::vector<PooledStep>& steps) {
  if (steps.empty()) return;
  Node now;
  double dial_pa = 0;
  double place_k = 0;
  std::size_t next = 0;
  nodes_.reserve(centre.pieces().size());
  for (const KegPiece& piece : centre.pieces()) {
    if (!nodes_.empty()) now = after(nodes_.back(), piece.start_s - nodes_.back().start_s);
    // A new reading replaces the one in force, whose effect stays behind.
    for (; next < steps.size() && in_seconds(steps[next].at) <= piece.start_s + 1e-6; ++next) {
      const PooledStep& step = steps[next];
      if (step.kind == PooledStep::Kind::co2_read) {
        now.pressure = now.place = now.before_squared = 0;
        continue;
      }
      const bool dial = step.kind == PooledStep::Kind::pressure;
      double& amplitude = dial ? now.pressure : now.place;
      now.before_squared += amplitude * amplitude;
      amplitude = 0;
      (dial ? dial_pa : place_k) = std::sqrt(step.squared_half_width);
    }
    now.start_s = piece.start_s;
    now.lambda = piece.flowing ? piece.lambda : 0;
    if (piece.flowing) {
      const Temperature t = kelvin(piece.place_k);
      const SolubilityLine here = fitted_chart_line(t);
      const SolubilityLine warmer = fitted_chart_line(t + kelvin_difference(1));
      const double share = piece.co2_mol / (piece.co2_mol + piece.inert_mol);
      const double per_pascal = here.volumes_per_pascal * share;
      const double per_kelvin =
          (warmer.volumes_per_pascal - here.volumes_per_pascal) * piece.set_pa * share;
      now.pressure_rest = per_pascal * dial_pa;
      now.place_rest = std::abs(per_kelvin) * place_k;
    }
    nodes_.push_back(now);
  }
}

double ReadingSpread::half_width(Duration time) const {
  if (nodes_.empty()) return 0;
  const double t = in_seconds(time);
  const auto later = std::upper_bound(nodes_.begin(), nodes_.end(), t,
                                      [](double at, const Node& n) { return at < n.start_s; });
  const Node& n = later == nodes_.begin() ? nodes_.front() : *std::prev(later);
  const Node here = after(n, std::max(0.0, t - n.start_s));
  return total(here.pressure, here.place, here.before_squared);
}

double ReadingSpread::half_width_at_rest() const {
  if (nodes_.empty()) return 0;
  const Node& n = nodes_.back();
  return n.lambda > 0 ? total(n.pressure_rest, n.place_rest, 0)
                      : total(n.pressure, n.place, n.before_squared);
}

}  // namespace ullage::physics
