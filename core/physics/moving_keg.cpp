// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/physics/moving_keg.h"

#include <algorithm>
#include <cmath>

#include "core/physics/co2_gas.h"
#include "core/physics/equilibrium.h"

namespace ullage::physics {

using namespace units;

namespace {

const double chart_half_width = equation_half_width(Equation::fitted_chart).count();
constexpr double shortest_piece_s = 1.0;  // events closer than this are one
constexpr double pressure_slack = 1e-9;   // relative
constexpr double same_path_k = 1e-9;      // of rounding

// The piece shortened to where `margin` first falls below zero, if it has at its
// middle or end: false position with Illinois' halving, to a tenth of a second.
template <class Make, class Margin>
KegPiece cut_where(const Make& make, const KegPiece& whole, const Margin& margin) {
  double high = whole.length_s / 2;
  double at_high = margin(whole, high);
  if (at_high >= 0) {
    high = whole.length_s;
    at_high = margin(whole, high);
    if (at_high >= 0) return whole;
  }
  // Above zero at its middle and below at its end: look between them.
  const bool second_half = high == whole.length_s;
  double low = second_half ? whole.length_s / 2 : 0;
  double at_low = std::max(0.0, margin(whole, low));
  int side = 0;
  for (int i = 0; i < 60 && high - low > 0.1; ++i) {
    const double width = high - low;
    const double t = std::clamp(low + width * at_low / (at_low - at_high), low + 0.01 * width,
                                high - 0.01 * width);
    const double at_t = margin(whole, t);
    if (at_t < 0) {
      if (side < 0) at_low *= 0.5;
      high = t;
      at_high = at_t;
      side = -1;
    } else {
      if (side > 0) at_high *= 0.5;
      low = t;
      at_low = at_t;
      side = 1;
    }
  }
  return make(std::min(whole.length_s, std::max(high, shortest_piece_s)));
}

}  // namespace

MovingKeg::MovingKeg(const PlainHistory& history, std::span<const double> offsets)
    : history_(history),
      offsets_(offsets),
      resting_s_(PlainHistory::at(history.resting, offsets)),
      rocking_s_(PlainHistory::at(history.rocking, offsets)),
      equation_shift_(offsets[history.equation] * chart_half_width),
      ambient_pa_(at(history.ambient)),
      beer_m3_(history.beer_m3),
      first_beer_m3_(beer_m3_),
      headspace_m3_(history.brimful_m3 - beer_m3_),
      warmth_{at(history.start), at(history.start), PlainHistory::at(history.cooling, offsets)},
      c_(std::max(0.0, at(history.initial)) * moles_per_m3_per_volume) {
  share_squared_ = history.headspace_co2 * history.headspace_co2;
  const double total = moles_at(history.headspace_pa + ambient_pa_);
  co2_mol_ = history.headspace_co2 * total;
  inert_mol_ = total - co2_mol_;
}

void MovingKeg::apply(const PlainStep& step) {
  switch (step.kind) {
    case PlainStep::Kind::gas_on:
      gas_on(at(step.uncertain) + ambient_pa_, step.exact);
      break;
    case PlainStep::Kind::gas_off:
      supply_.reset();
      break;
    case PlainStep::Kind::vented:
      vent_to(step.exact + ambient_pa_);
      break;
    case PlainStep::Kind::place:
    case PlainStep::Kind::beer_read:
    case PlainStep::Kind::rocked:
      warmth_.apply(step, now_s_, history_, offsets_);
      break;
    case PlainStep::Kind::drawn:
      beer_m3_ -= step.exact;
      headspace_m3_ += step.exact;
      break;
    case PlainStep::Kind::co2_read:
      c_ = std::max(0.0, at(step.uncertain)) * moles_per_m3_per_volume;
      break;
  }
}

void MovingKeg::gas_on(double set_pa, double co2_share) {
  supply_ = Supply{set_pa, co2_share};
  if (co2_share < 1) share_squared_ = co2_share * co2_share;
}

void MovingKeg::vent_to(double pa) {
  if (pressure() <= pa) return;
  const double kept = moles_at(pa) / (co2_mol_ + inert_mol_);
  co2_mol_ *= kept;
  inert_mol_ *= kept;
}

// Gas flows in until the headspace stands at the set pressure. What the virial
// coefficient is weighted with: under pure CO2 the headspace's own share, which
// then stays; it depends on what came in, and a few rounds settle it. Under mixed
// gas the share drifts as the beer takes up CO2, by less than the virial rule for
// mixtures is good for, and the supply's share is kept.
void MovingKeg::fill_from_supply() {
  if (!supply_ || pressure() >= supply_->set_pa) return;
  const double co2_before = co2_mol_;
  const double inert_before = inert_mol_;
  // Pure CO2 in, nothing else there: the first round is the last.
  const int rounds = supply_->co2 == 1 && inert_before == 0 && share_squared_ == 1 ? 1 : 4;
  for (int round = 0; round < rounds; ++round) {
    const double came_in = moles_at(supply_->set_pa) - co2_before - inert_before;
    co2_mol_ = co2_before + supply_->co2 * came_in;
    inert_mol_ = inert_before + (1 - supply_->co2) * came_in;
    if (supply_->co2 == 1) refresh_share();
  }
}

// Along the path as long as no valve has cut it; off it until the path's next piece
// begins, at the next step of the history at the latest.
MovingKeg::Stretch MovingKeg::next_stretch(double end_s, std::span<const ThermalSpan>& path) {
  while (!path.empty() && path.front().start_s < now_s_) path = path.subspan(1);
  if (!path.empty()) {
    const ThermalSpan& span = path.front();
    if (span.start_s == now_s_ && std::abs(span.start_k - warmth_.temperature_k) < same_path_k) {
      warmth_.temperature_k = span.start_k;
      return {span.length_s, span.heat, &span.decay};
    }
  }
  const double length = warmth_.longest_piece(now_s_, end_s);
  return {length, PieceHeat::of(warmth_, length, start_node_), nullptr};
}

KegPiece MovingKeg::unshaped(bool flowing, double length_s) const {
  KegPiece p;
  p.start_s = now_s_;
  p.length_s = length_s;
  p.place_k = warmth_.place_k;
  p.offset_k = warmth_.offset();
  p.cooling_s = warmth_.cooling_s;
  p.beer_m3 = beer_m3_;
  p.headspace_m3 = headspace_m3_;
  p.co2_mol = co2_mol_;
  p.inert_mol = inert_mol_;
  p.share_squared = share_squared_;
  p.flowing = flowing;
  if (flowing && supply_) {
    p.set_pa = supply_->set_pa;
    p.supply_co2 = supply_->co2;
  }
  p.c0 = c_;
  return p;
}

KegPiece MovingKeg::piece(bool flowing, double length_s, const Stretch& stretch) const {
  KegPiece p = unshaped(flowing, length_s);
  if (length_s == stretch.length_s) {
    p.shape(rate(), equation_shift_, stretch.heat, stretch.decay);
  } else {
    p.shape(rate(), equation_shift_, PieceHeat::of(warmth_, length_s, stretch.heat.start), nullptr);
  }
  return p;
}

KegPiece MovingKeg::next_piece(const Stretch& s) const {
  if (supply_ && pressure() <= supply_->set_pa * (1 + pressure_slack)) {
    KegPiece flowing = unshaped(true, s.length_s);
    if (flowing.flow_at_start(rate(), equation_shift_, s.heat.start) >= 0) {
      flowing.shape(rate(), equation_shift_, s.heat, s.decay);
      // At a steady temperature the beer comes to rest from below: gas never stops.
      if (flowing.offset_k == 0) return flowing;
      return cut_where([&](double length) { return piece(true, length, s); }, flowing,
                       [](const KegPiece& p, double t) { return p.flow_in(t); });
    }
  }
  const KegPiece shut = piece(false, s.length_s, s);
  if (!supply_) return shut;
  const double opens_at = supply_->set_pa * (1 - pressure_slack);
  return cut_where([&](double length) { return piece(false, length, s); }, shut,
                   [opens_at](const KegPiece& p, double t) { return p.pressure(t) - opens_at; });
}

void MovingKeg::take(const KegPiece& p, const Stretch& s) {
  const KegPiece::Moles gas = p.moles(p.length_s);
  co2_mol_ = gas.co2;
  inert_mol_ = gas.inert;
  c_ = p.concentration(p.length_s);
  warmth_.temperature_k = p.temperature(p.length_s);
  if (p.length_s == s.length_s) start_node_ = s.heat.end;  // else worked out where it is asked
  now_s_ += p.length_s;
}

}  // namespace ullage::physics
