// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/physics/carbonation_solver.h"

#include <algorithm>
#include <array>
#include <cmath>
#include <functional>
#include <optional>

#include "core/physics/co2_gas.h"
#include "core/physics/equilibrium.h"

namespace ullage::physics {

using namespace units;

namespace {

constexpr double moles_per_m3_per_volume = grams_per_litre_per_volume / co2_kilograms_per_mole;
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
  Keg(const CarbonationHistory& history, const CarbonationRates& rates, const Shift& shift)
      : shift_(shift),
        resting_s_(in_seconds(rates.resting.shifted(shift.source, shift.half_widths))),
        rocking_s_(in_seconds(rates.rocking.shifted(shift.source, shift.half_widths))),
        cooling_s_(in_seconds(rates.cooling.shifted(shift.source, shift.half_widths))),
        equation_shift_(rates.equation == shift.source
                            ? shift.half_widths *
                                  equation_half_width(Equation::fitted_chart).count()
                            : 0),
        ambient_pa_(in_pascals(shifted(history.ambient))),
        beer_m3_(in_cubic_metres(history.beer)),
        first_beer_m3_(beer_m3_),
        headspace_m3_(in_cubic_metres(history.brimful) - beer_m3_),
        temperature_k_(in_kelvin(shifted(history.start))),
        place_k_(temperature_k_),
        c_(std::max(0.0, shifted(history.initial).count()) * moles_per_m3_per_volume) {
    const double share = history.headspace_co2.count();
    share_squared_ = share * share;
    const double total = moles_at(in_pascals(history.headspace) + ambient_pa_);
    co2_mol_ = share * total;
    inert_mol_ = total - co2_mol_;
  }

  void apply(const What& what) {
    visit([this](const auto& happened) { on(happened); }, what);
  }
  void run_to(double end_s, std::vector<KegPiece>& pieces);
  [[nodiscard]] double volumes() const { return c_ / moles_per_m3_per_volume; }

 private:
  template <class Q>
  [[nodiscard]] Q shifted(const Estimate<Q>& e) const {
    return e.shifted(shift_.source, shift_.half_widths);
  }
  void on(const GasOn& gas) {
    supply_ = Supply{in_pascals(shifted(gas.pressure)) + ambient_pa_, gas.co2.count()};
    if (gas.co2.count() < 1) share_squared_ = gas.co2.count() * gas.co2.count();
  }
  void on(const GasOff&) { supply_.reset(); }
  void on(const Vented& vented) {
    const double to = in_pascals(vented.to) + ambient_pa_;
    if (pressure() <= to) return;
    const double kept = moles_at(to) / (co2_mol_ + inert_mol_);
    co2_mol_ *= kept;
    inert_mol_ *= kept;
  }
  void on(const PlaceChanged& place) { place_k_ = in_kelvin(shifted(place.temperature)); }
  void on(const BeerTemperatureRead& read) {
    temperature_k_ = in_kelvin(shifted(read.temperature));
  }
  void on(const Rocked& rocked) { rocked_until_s_ = now_s_ + in_seconds(rocked.how_long); }
  void on(const BeerDrawn& drawn) {
    beer_m3_ -= in_cubic_metres(drawn.beer);
    headspace_m3_ += in_cubic_metres(drawn.beer);
  }
  void on(const Co2Read& read) {
    c_ = std::max(0.0, shifted(read.co2).count()) * moles_per_m3_per_volume;
  }

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
  [[nodiscard]] KegPiece piece(bool flowing, double length_s) const;
  void shape(KegPiece&) const;
  [[nodiscard]] KegPiece next_piece(double length_s) const;
  void take(const KegPiece&);

  const Shift& shift_;
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
};

// Gas flows in until the headspace stands at the set pressure. What the virial
// coefficient is weighted with: under pure CO2 the headspace's own share, which
// then stays; it depends on what came in, and a few rounds settle it. Under mixed
// gas the share drifts as the beer takes up CO2, by less than the virial rule for
// mixtures is good for, and the supply's share is kept.
void Keg::fill_from_supply() {
  if (!supply_ || pressure() >= supply_->set_pa) return;
  const double co2_before = co2_mol_;
  const double inert_before = inert_mol_;
  for (int round = 0; round < 4; ++round) {
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
  if (offset > same_temperature_k)
    length = std::min(length, cooling_s_ * std::min(2.0, 0.8 / std::cbrt(offset)));
  return length;
}

KegPiece Keg::piece(bool flowing, double length_s) const {
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
  if (flowing) {
    p.set_pa = supply_->set_pa;
    p.supply_co2 = supply_->co2;
  }
  p.c0 = c_;
  shape(p);
  return p;
}

// What temperature alone decides, at one time of a piece.
struct Node {
  double solubility;  // mol/(m3 Pa)
  double intercept;   // mol/m3
  double rt;          // J/mol
  double virial;      // m3/mol, for the headspace's mixture
};

std::array<Node, 3> nodes_of(const KegPiece& p, double equation_shift) {
  std::array<Node, 3> nodes{};
  for (std::size_t i = 0; i < 3; ++i) {
    if (i > 0 && p.offset_k == 0) {
      nodes[i] = nodes[0];
      continue;
    }
    const double k = p.temperature(p.length_s / 2 * static_cast<double>(i));
    const SolubilityLine line = fitted_chart_line(kelvin(k));
    nodes[i] = {line.volumes_per_pascal * moles_per_m3_per_volume,
                (line.intercept_volumes + equation_shift) * moles_per_m3_per_volume,
                gas_constant * k, co2_second_virial(kelvin(k)) * p.share_squared};
  }
  return nodes;
}

// Partial pressure of `co2_mol` in the headspace of a piece.
double partial_pressure(const KegPiece& p, const Node& node, double co2_mol) {
  return co2_mol * node.rt / (p.headspace_m3 - node.virial * (co2_mol + p.inert_mol));
}

// Ceq = a - d c at one node, from Ceq = s p_CO2 + b. Flowing, p_CO2 = p n_CO2 / N.
// Shut, p_CO2 bends slightly in n_CO2 (real gas): the chord from the piece's start
// to its end, so that where it comes to rest is exact.
struct Pull {
  double a;
  double d;
};

Pull pull(const KegPiece& p, const Node& node, double end_co2_mol) {
  if (!p.flowing) {
    const double start = partial_pressure(p, node, p.co2_mol);
    double per_mol = 0;
    if (std::abs(end_co2_mol - p.co2_mol) > 1e-6 * p.co2_mol) {
      per_mol = (partial_pressure(p, node, end_co2_mol) - start) / (end_co2_mol - p.co2_mol);
    } else {
      const double room = p.headspace_m3 - node.virial * (p.co2_mol + p.inert_mol);
      per_mol = node.rt / room * (1 + p.co2_mol * node.virial / room);
    }
    return {node.solubility * (start + per_mol * p.beer_m3 * p.c0) + node.intercept,
            node.solubility * per_mol * p.beer_m3};
  }
  const double n = p.set_pa * p.headspace_m3 / (node.rt + node.virial * p.set_pa);
  const double inert_in = (1 - p.supply_co2) * (n - p.co2_mol - p.inert_mol - p.beer_m3 * p.c0);
  return {node.solubility * p.set_pa * (1 - (p.inert_mol + inert_in) / n) + node.intercept,
          node.solubility * p.set_pa * (1 - p.supply_co2) * p.beer_m3 / n};
}

// Finds lambda and f: f = k (a - (d - dm) c), lambda = k (1 + dm), with dm at the
// middle; how d changes over the piece is carried in f by repeating on the c it
// gives.
void Keg::shape(KegPiece& p) const {
  const bool rocking = rocked_until_s_ > now_s_;
  // Surface over volume grows as beer is drawn.
  const double k = rocking ? 1 / rocking_s_ : first_beer_m3_ / beer_m3_ / resting_s_;
  const std::array<Node, 3> nodes = nodes_of(p, equation_shift_);
  const bool steady = p.offset_k == 0;
  const bool d_is_constant = p.flowing && (steady || p.supply_co2 == 1);
  std::array<double, 3> c{c_, c_, c_};
  double end_co2_mol = co2_mol_;
  for (int rounds = d_is_constant ? 1 : 3; rounds > 0; --rounds) {
    std::array<Pull, 3> at{};
    for (std::size_t i = 0; i < 3; ++i) at[i] = pull(p, nodes[i], end_co2_mol);
    p.lambda = k * (1 + at[1].d);
    std::array<double, 3> f{};
    for (std::size_t i = 0; i < 3; ++i) f[i] = k * (at[i].a - (at[i].d - at[1].d) * c[i]);
    p.f0 = f[0];
    p.f1 = -3 * f[0] + 4 * f[1] - f[2];
    p.f2 = 2 * f[0] - 4 * f[1] + 2 * f[2];
    if (rounds == 1) break;
    c[1] = p.concentration(p.length_s / 2);
    c[2] = p.concentration(p.length_s);
    end_co2_mol = co2_mol_ - beer_m3_ * (c[2] - c_);
  }
}

// The piece shortened to where `gone` first holds, if it does at its middle or end.
KegPiece cut_where(const std::function<KegPiece(double)>& make, KegPiece whole,
                   const std::function<bool(const KegPiece&, double)>& gone) {
  double high = 0;
  if (gone(whole, whole.length_s / 2)) {
    high = whole.length_s / 2;
  } else if (gone(whole, whole.length_s)) {
    high = whole.length_s;
  } else {
    return whole;
  }
  double low = 0;
  for (int i = 0; i < 40 && high - low > 0.01; ++i) {
    const double mid = 0.5 * (low + high);
    (gone(whole, mid) ? high : low) = mid;
  }
  return make(std::min(whole.length_s, std::max(high, shortest_piece_s)));
}

KegPiece Keg::next_piece(double length_s) const {
  const auto make = [this](bool flowing) {
    return [this, flowing](double length) { return piece(flowing, length); };
  };
  if (supply_ && pressure() <= supply_->set_pa * (1 + pressure_slack)) {
    const KegPiece flowing = piece(true, length_s);
    if (flowing.flow_in(0) >= 0) {
      // At a steady temperature the beer comes to rest from below: gas never stops.
      if (flowing.offset_k == 0) return flowing;
      return cut_where(make(true), flowing,
                       [](const KegPiece& p, double t) { return p.flow_in(t) < 0; });
    }
  }
  const KegPiece shut = piece(false, length_s);
  if (!supply_) return shut;
  return cut_where(make(false), shut, [this](const KegPiece& p, double t) {
    return p.gas(t).pressure_pa < supply_->set_pa * (1 - pressure_slack);
  });
}

void Keg::take(const KegPiece& p) {
  const KegPiece::Gas gas = p.gas(p.length_s);
  co2_mol_ = gas.co2_mol;
  inert_mol_ = gas.inert_mol;
  c_ = p.concentration(p.length_s);
  temperature_k_ = p.temperature(p.length_s);
  now_s_ += p.length_s;
}

void Keg::run_to(double end_s, std::vector<KegPiece>& pieces) {
  while (now_s_ < end_s) {
    // Only as time goes on: acts of one moment (vent, lower the regulator) count
    // together, in whichever order they were written down.
    fill_from_supply();
    const KegPiece p = next_piece(longest_piece(end_s));
    pieces.push_back(p);
    take(p);
    if (end_s - now_s_ < 1e-6) now_s_ = end_s;
  }
}

}  // namespace

Trajectory Trajectory::solve(const CarbonationHistory& history, const CarbonationRates& rates,
                             const Shift& shift, Duration until) {
  Trajectory result;
  Keg keg(history, rates, shift);
  result.pieces_.reserve(32 + 4 * history.steps.size());
  for (const Step& step : history.steps) {
    keg.run_to(in_seconds(step.at), result.pieces_);
    keg.apply(step.what);
  }
  keg.run_to(in_seconds(until), result.pieces_);
  // Far enough for the slowest keg and cold room to come to rest.
  std::vector<KegPiece> beyond;
  keg.run_to(in_seconds(until) + 100 * in_seconds(rates.resting.high()) +
                 100 * in_seconds(rates.cooling.high()),
             beyond);
  result.settles_at_ = volumes_of_co2(keg.volumes());
  return result;
}

const KegPiece& Trajectory::piece_at(double t) const {
  const auto after = std::upper_bound(pieces_.begin(), pieces_.end(), t,
                                      [](double at, const KegPiece& p) { return at < p.start_s; });
  return after == pieces_.begin() ? pieces_.front() : *std::prev(after);
}

KegState Trajectory::at(Duration time) const {
  const KegPiece& p = piece_at(in_seconds(time));
  const double t = std::clamp(in_seconds(time) - p.start_s, 0.0, p.length_s);
  return {volumes_of_co2(p.concentration(t) / moles_per_m3_per_volume),
          pascals_absolute(p.gas(t).pressure_pa), kelvin(p.temperature(t))};
}

Amount Trajectory::co2_in_keg(Duration time) const {
  const KegPiece& p = piece_at(in_seconds(time));
  const double t = std::clamp(in_seconds(time) - p.start_s, 0.0, p.length_s);
  return moles(p.gas(t).co2_mol + p.beer_m3 * p.concentration(t));
}

}  // namespace ullage::physics
