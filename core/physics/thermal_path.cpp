// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/physics/thermal_path.h"

#include <algorithm>
#include <cmath>

#include "core/physics/carbonation_solver.h"
#include "core/physics/co2_gas.h"
#include "core/physics/equilibrium.h"

namespace ullage::physics {

namespace {

constexpr double same_temperature_k = 0.002;  // 0.0002 volumes

}  // namespace

ThermalNode ThermalNode::at(units::Temperature t) {
  const SolubilityLine line = fitted_chart_line(t);
  return {units::in_kelvin(t), line.volumes_per_pascal * moles_per_m3_per_volume,
          line.intercept_volumes * moles_per_m3_per_volume, co2_second_virial(t)};
}

// By series where the closed forms cancel: phi_3 to z^8 / 11!, the others from it,
// exact to the last digits.
Decay Decay::over(double z) {
  if (z < 0.3) {
    const double three =
        1.0 / 6 +
        z * (-1.0 / 24 +
             z * (1.0 / 120 +
                  z * (-1.0 / 720 +
                       z * (1.0 / 5040 +
                            z * (-1.0 / 40320 + z * (1.0 / 362880 + z * (-1.0 / 3628800)))))));
    const double two = 0.5 - z * three;
    const double one = 1.0 - z * two;
    return {1.0 - z * one, one, two, three};
  }
  const double per_z = 1 / z;
  const double one = -std::expm1(-z) * per_z;
  const double two = (1.0 - one) * per_z;
  return {1.0 - z * one, one, two, (0.5 - two) * per_z};
}

// Of phi_n(2 z) by phi_n(z), as scaling and squaring has it.
Decay Decay::doubled() const {
  return {left * left, 0.5 * one * (1 + left), 0.25 * (one * one + 2 * two),
          0.125 * (one * two + 2 * three + two)};
}

void KegWarmth::apply(const PlainStep& step, double now_s, const PlainHistory& history,
                      std::span<const double> offsets) {
  if (step.kind == PlainStep::Kind::place) place_k = history.at(step.uncertain, offsets);
  if (step.kind == PlainStep::Kind::beer_read) temperature_k = history.at(step.uncertain, offsets);
  if (step.kind == PlainStep::Kind::rocked) rocked_until_s = now_s + step.exact;
}

double KegWarmth::offset() const {
  const double off = temperature_k - place_k;
  return std::abs(off) > same_temperature_k ? off : 0;
}

// The cube-root rule keeps the parabola's error about equal from piece to piece.
double KegWarmth::longest_piece(double now_s, double end_s) const {
  double most = end_s - now_s;
  if (rocked_until_s > now_s) most = std::min(most, rocked_until_s - now_s);
  const double off = std::abs(temperature_k - place_k);
  if (off <= same_temperature_k) return most;
  const double constants = off < 0.2 ? 2.0 : std::min(2.0, 1.2 / std::cbrt(off));
  return std::min(most, cooling_s * constants);
}

PieceHeat PieceHeat::of(const KegWarmth& warmth, double length_s, const ThermalNode& start) {
  const double off = warmth.offset();
  PieceHeat out;
  const double start_k = warmth.place_k + off;
  out.start = start.is_at(start_k) ? start : ThermalNode::at(units::kelvin(start_k));
  if (off == 0) {
    out.half = out.end = out.start;
    out.half.kelvin = out.end.kelvin = warmth.place_k;
    return out;
  }
  const double left = std::exp(-0.5 * length_s / warmth.cooling_s);
  out.half = ThermalNode::at(units::kelvin(warmth.place_k + off * left));
  out.end = ThermalNode::at(units::kelvin(warmth.place_k + off * left * left));
  return out;
}

ThermalWalk::ThermalWalk(const PlainHistory& history, std::span<const double> offsets)
    : history_(history), offsets_(offsets) {
  warmth_.temperature_k = warmth_.place_k = history.at(history.start, offsets);
  warmth_.cooling_s = PlainHistory::at(history.cooling, offsets);
}

void ThermalWalk::apply(const PlainStep& step) { warmth_.apply(step, now_s_, history_, offsets_); }

void ThermalWalk::run_to(double end_s, std::vector<ThermalSpan>& out) {
  out.clear();
  while (now_s_ < end_s) {
    const double length = warmth_.longest_piece(now_s_, end_s);
    const PieceHeat heat = PieceHeat::of(warmth_, length, start_node_);
    out.push_back({now_s_, length, warmth_.temperature_k, heat, {}});
    warmth_.temperature_k = heat.end.kelvin;
    start_node_ = heat.end;
    now_s_ += length;
    if (end_s - now_s_ < 1e-6) now_s_ = end_s;
  }
}

}  // namespace ullage::physics
