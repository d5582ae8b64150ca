// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/physics/carbonation_solver.h"

#include <algorithm>
#include <array>
#include <cmath>
#include <optional>
#include <span>

#include "core/physics/co2_gas.h"
#include "core/physics/equilibrium.h"

namespace ullage::physics {

using namespace units;

namespace {

const double chart_half_width = equation_half_width(Equation::fitted_chart).count();
constexpr double same_temperature_k = 0.002;  // 0.0002 volumes
constexpr double shortest_piece_s = 1.0;      // events closer than this are one
constexpr double pressure_slack = 1e-9;       // relative
constexpr double never_s = 1e300;

struct Supply {
  double set_pa = 0;
  double co2 = 1;
};

// The keg as it stands at `now_s`, and how it moves on from there.
class Keg {
 public:
  Keg(const PlainHistory& history, std::span<const double> offsets)
      : history_(history),
        offsets_(offsets),
        resting_s_(PlainHistory::at(history.resting, offsets)),
        rocking_s_(PlainHistory::at(history.rocking, offsets)),
        cooling_s_(PlainHistory::at(history.cooling, offsets)),
        equation_shift_(offsets[history.equation] * chart_half_width),
        ambient_pa_(at(history.ambient)),
        beer_m3_(history.beer_m3),
        first_beer_m3_(beer_m3_),
        headspace_m3_(history.brimful_m3 - beer_m3_),
        temperature_k_(at(history.start)),
        place_k_(temperature_k_),
        c_(std::max(0.0, at(history.initial)) * moles_per_m3_per_volume) {
    share_squared_ = history.headspace_co2 * history.headspace_co2;
    const double total = moles_at(history.headspace_pa + ambient_pa_);
    co2_mol_ = history.headspace_co2 * total;
    inert_mol_ = total - co2_mol_;
  }

  void apply(const PlainStep&);
  // Each piece on the way is handed to `keep`.
  template <class Keep>
  void run_to(double end_s, const Keep& keep);
  [[nodiscard]] double volumes() const { return c_ / moles_per_m3_per_volume; }

 private:
  [[nodiscard]] double at(const Uncertain& e) const { return history_.at(e, offsets_); }
  void gas_on(double set_pa, double co2_share);
  void vent_to(double pa);

  [[nodiscard]] double virial() const {
    return co2_second_virial(kelvin(temperature_k_)) * share_squared_;
  }
  [[nodiscard]] double moles_at(double pa) const {
    return pa * headspace_m3_ / (gas_constant * temperature_k_ + virial() * pa);
  }
  [[nodiscard]] double pressure() const {
    const double total = co2_mol_ + inert_mol_;
    return gas_constant * temperature_k_ * total / (headspace_m3_ - virial() * total);
  }
  void refresh_share() {
    const double share = co2_mol_ / (co2_mol_ + inert_mol_);
    share_squared_ = share * share;
  }
  void fill_from_supply();
  [[nodiscard]] double longest_piece(double end_s) const;
  [[nodiscard]] KegPiece unshaped(bool flowing, double length_s) const;
  [[nodiscard]] KegPiece piece(bool flowing, double length_s) const;
  [[nodiscard]] double rate() const {
    // Surface over volume grows as beer is drawn.
    return rocked_until_s_ > now_s_ ? 1 / rocking_s_ : first_beer_m3_ / beer_m3_ / resting_s_;
  }
  void know_start();
  [[nodiscard]] KegPiece next_piece(double length_s) const;
  void take(const KegPiece&);

  const PlainHistory& history_;
  std::span<const double> offsets_;
  double resting_s_;
  double rocking_s_;
  double cooling_s_;
  double equation_shift_;  // volumes
  double ambient_pa_;
  double beer_m3_;
  double first_beer_m3_;
  double headspace_m3_;
  double temperature_k_;
  double place_k_;
  double c_;  // mol/m3
  double share_squared_ = 1;
  double co2_mol_ = 0;
  double inert_mol_ = 0;
  double now_s_ = 0;
  double rocked_until_s_ = -1;
  std::optional<Supply> supply_;
  ThermalNode start_node_;  // at the start of the next piece
};

void Keg::apply(const PlainStep& step) {
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
      place_k_ = at(step.uncertain);
      break;
    case PlainStep::Kind::beer_read:
      temperature_k_ = at(step.uncertain);
      break;
    case PlainStep::Kind::rocked:
      rocked_until_s_ = now_s_ + step.exact;
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

void Keg::gas_on(double set_pa, double co2_share) {
  supply_ = Supply{set_pa, co2_share};
  if (co2_share < 1) share_squared_ = co2_share * co2_share;
}

void Keg::vent_to(double pa) {
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
void Keg::fill_from_supply() {
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

// The cube-root rule keeps the parabola's error about equal from piece to piece.
double Keg::longest_piece(double end_s) const {
  double length = end_s - now_s_;
  if (rocked_until_s_ > now_s_) length = std::min(length, rocked_until_s_ - now_s_);
  const double offset = std::abs(temperature_k_ - place_k_);
  if (offset > same_temperature_k) {
    const double constants = offset < 0.2 ? 2.0 : std::min(2.0, 1.2 / std::cbrt(offset));
    length = std::min(length, cooling_s_ * constants);
  }
  return length;
}

KegPiece Keg::unshaped(bool flowing, double length_s) const {
  KegPiece p;
  p.start_s = now_s_;
  p.length_s = length_s;
  p.place_k = place_k_;
  const double offset = temperature_k_ - place_k_;
  p.offset_k = std::abs(offset) > same_temperature_k ? offset : 0;
  p.cooling_s = cooling_s_;
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

KegPiece Keg::piece(bool flowing, double length_s) const {
  KegPiece p = unshaped(flowing, length_s);
  p.shape(rate(), equation_shift_, start_node_);
  return p;
}

// The temperature at which the next piece starts is mostly that at which the one
// before ended.
void Keg::know_start() {
  const double offset = temperature_k_ - place_k_;
  const double start_k = std::abs(offset) > same_temperature_k ? place_k_ + offset : place_k_;
  if (!start_node_.is_at(start_k)) start_node_ = ThermalNode::at(kelvin(start_k));
}

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

KegPiece Keg::next_piece(double length_s) const {
  if (supply_ && pressure() <= supply_->set_pa * (1 + pressure_slack)) {
    if (unshaped(true, length_s).flow_at_start(rate(), equation_shift_, start_node_) >= 0) {
      const KegPiece flowing = piece(true, length_s);
      // At a steady temperature the beer comes to rest from below: gas never stops.
      if (flowing.offset_k == 0) return flowing;
      return cut_where([this](double length) { return piece(true, length); }, flowing,
                       [](const KegPiece& p, double t) { return p.flow_in(t); });
    }
  }
  const KegPiece shut = piece(false, length_s);
  if (!supply_) return shut;
  const double opens_at = supply_->set_pa * (1 - pressure_slack);
  return cut_where(
      [this](double length) { return piece(false, length); }, shut,
      [opens_at](const KegPiece& p, double t) { return p.gas(t).pressure_pa - opens_at; });
}

void Keg::take(const KegPiece& p) {
  const KegPiece::Gas gas = p.gas(p.length_s);
  co2_mol_ = gas.co2_mol;
  inert_mol_ = gas.inert_mol;
  c_ = p.concentration(p.length_s);
  temperature_k_ = p.temperature(p.length_s);
  start_node_ = p.end_node;
  now_s_ += p.length_s;
}

template <class Keep>
void Keg::run_to(double end_s, const Keep& keep) {
  while (now_s_ < end_s) {
    // Only as time goes on: acts of one moment (vent, lower the regulator) count
    // together, in whichever order they were written down.
    fill_from_supply();
    know_start();
    const KegPiece p = next_piece(longest_piece(end_s));
    keep(p);
    take(p);
    if (end_s - now_s_ < 1e-6) now_s_ = end_s;
  }
}

// Through the whole history; what it settles at, where that is asked, in volumes.
template <class Keep>
double run(const PlainHistory& history, std::span<const double> offsets, double until_s,
           Settling settling, const Keep& keep) {
  Keg keg(history, offsets);
  for (const PlainStep& step : history.steps) {
    if (step.at_s > until_s) break;
    keg.run_to(step.at_s, keep);
    keg.apply(step);
  }
  keg.run_to(until_s, keep);
  if (settling == Settling::skip) return 0;
  // Far enough for the slowest keg and cold room to come to rest.
  keg.run_to(until_s + 100 * history.resting.high_s() + 100 * history.cooling.high_s(),
             [](const KegPiece&) {});
  return keg.volumes();
}

// The piece that a time falls into.
template <class Piece>
const Piece& piece_at(const std::vector<Piece>& pieces, double t) {
  const auto after = std::upper_bound(pieces.begin(), pieces.end(), t,
                                      [](double at, const Piece& p) { return at < p.start_s; });
  return after == pieces.begin() ? pieces.front() : *std::prev(after);
}

}  // namespace

Co2Run Co2Run::solve(const PlainHistory& history, std::span<const double> offsets, Duration until,
                     Settling settling) {
  Co2Run result;
  result.pieces_.reserve(32 + 2 * history.steps.size());
  result.settles_at_ = run(history, offsets, in_seconds(until), settling,
                           [&](const KegPiece& p) { result.pieces_.push_back(p); });
  return result;
}

double Co2Run::volumes_at(Duration time) const {
  const Co2Piece& p = piece_at(pieces_, in_seconds(time));
  const double t = std::clamp(in_seconds(time) - p.start_s, 0.0, p.length_s);
  return p.concentration(t) / moles_per_m3_per_volume;
}

Trajectory Trajectory::solve(const PlainHistory& history, std::span<const double> offsets,
                             Duration until, Settling settling) {
  Trajectory result;
  result.pieces_.reserve(32 + 2 * history.steps.size());
  result.settles_at_ = volumes_of_co2(run(history, offsets, in_seconds(until), settling,
                                          [&](const KegPiece& p) { result.pieces_.push_back(p); }));
  return result;
}

Trajectory Trajectory::solve(const CarbonationHistory& history, const CarbonationRates& rates,
                             std::span<const Shift> shifts, Duration until) {
  const PlainHistory plain(history, rates);
  return solve(plain, plain.offsets(shifts), until);
}

KegState Trajectory::at(Duration time) const {
  const KegPiece& p = piece_at(pieces_, in_seconds(time));
  const double t = std::clamp(in_seconds(time) - p.start_s, 0.0, p.length_s);
  return {volumes_of_co2(p.concentration(t) / moles_per_m3_per_volume),
          pascals_absolute(p.gas(t).pressure_pa), kelvin(p.temperature(t))};
}

Amount Trajectory::co2_in_keg(Duration time) const {
  const KegPiece& p = piece_at(pieces_, in_seconds(time));
  const double t = std::clamp(in_seconds(time) - p.start_s, 0.0, p.length_s);
  return moles(p.gas(t).co2_mol + p.beer_m3 * p.concentration(t));
}

}  // namespace ullage::physics
