// SPDX-License-Identifier: GPL-3.0-or-later
#include <array>
#include <cmath>

#include "core/physics/carbonation_solver.h"
#include "core/physics/co2_gas.h"
#include "core/physics/equilibrium.h"

namespace ullage::physics {

namespace {

// The chord of a shut piece is drawn anew until it ends where the piece does: each round
// leaves a hundredth at most of what the one before was off by.
constexpr int chord_rounds = 3;
constexpr double chord_near_enough = 1e-4;  // of the headspace's CO2, moved by the last round

// A thermal node with the keg's own share of CO2 and the equation's offset.
struct Node {
  double solubility;  // mol/(m3 Pa)
  double intercept;   // mol/m3
  double rt;          // J/mol
  double virial;      // m3/mol, for the headspace's mixture
};

Node node_of(const ThermalNode& at, double share_squared, double equation_shift) {
  return {at.solubility, at.intercept + equation_shift * moles_per_m3_per_volume,
          gas_constant * at.kelvin, at.pure_virial * share_squared};
}

// Partial pressure of `co2_mol` in the headspace of a piece.
double partial_pressure(const KegPiece& p, const Node& node, double co2_mol) {
  return co2_mol * node.rt / (p.headspace_m3 - node.virial * (co2_mol + p.inert_mol));
}

using Pull = KegPiece::Pull;

// Flowing, p_CO2 = p n_CO2 / N.
Pull flowing_pull(const KegPiece& p, const Node& node) {
  const double n = p.set_pa * p.headspace_m3 / (node.rt + node.virial * p.set_pa);
  const double inert_in = (1 - p.supply_co2) * (n - p.co2_mol - p.inert_mol - p.beer_m3 * p.c0);
  return {node.solubility * p.set_pa * (1 - (p.inert_mol + inert_in) / n) + node.intercept,
          node.solubility * p.set_pa * (1 - p.supply_co2) * p.beer_m3 / n};
}

// Shut, p_CO2 bends slightly in n_CO2 (real gas): the chord from the piece's start
// to its end, so that where it comes to rest is exact.
class ShutPull {
 public:
  ShutPull(const KegPiece& p, const Node& node)
      : node_(node), start_(partial_pressure(p, node, p.co2_mol)) {}
  // `per_end` is 1 / (end_co2_mol - p.co2_mol), or 0 where they are too close to tell.
  [[nodiscard]] Pull at(const KegPiece& p, double end_co2_mol, double per_end) const {
    double per_mol = 0;
    if (per_end != 0) {
      per_mol = (partial_pressure(p, node_, end_co2_mol) - start_) * per_end;
    } else {
      const double room = p.headspace_m3 - node_.virial * (p.co2_mol + p.inert_mol);
      per_mol = node_.rt / room * (1 + p.co2_mol * node_.virial / room);
    }
    return {node_.solubility * (start_ + per_mol * p.beer_m3 * p.c0) + node_.intercept,
            node_.solubility * per_mol * p.beer_m3};
  }

 private:
  const Node& node_;
  double start_;
};

}  // namespace

double Co2Piece::concentration(double t) const { return concentration(t, Decay::over(lambda * t)); }

double Co2Piece::concentration(double t, const Decay& d) const {
  if (f1 == 0 && f2 == 0) return d.left * c0 + t * f0 * d.one;
  const double x = length_s > 0 ? t / length_s : 0;
  return d.left * c0 + t * (f0 * d.one + x * (f1 * d.two + 2 * f2 * x * d.three));
}

// Where shape() has been, its middle and end are known.
double KegPiece::temperature(double t) const {
  if (offset_k == 0) return place_k;
  if (t == length_s) return end.kelvin;
  if (t == 0.5 * length_s) return half.kelvin;
  return place_k + offset_k * std::exp(-t / cooling_s);
}

double KegPiece::concentration(double t) const {
  if (t == 0) return c0;
  if (t == length_s) return end.concentration;
  if (t == 0.5 * length_s) return half.concentration;
  return Co2Piece::concentration(t);
}

// Finds lambda and f: f = k (a - (d - dm) c), lambda = k (1 + dm), with dm at the
// middle; how d changes over the piece is carried in f by repeating on the c it
// gives.
void KegPiece::shape(double k, double equation_offset, const PieceHeat& heat,
                     ThermalSpan::LastDecay* last) {
  half.kelvin = heat.half.kelvin;
  end.kelvin = heat.end.kelvin;
  if (offset_k == 0) {
    shape_steady(k, equation_offset, heat.start, last);
    return;
  }
  const std::array<Node, 3> nodes{node_of(heat.start, share_squared, equation_offset),
                                  node_of(heat.half, share_squared, equation_offset),
                                  node_of(heat.end, share_squared, equation_offset)};
  if (flowing) {
    const std::array<Pull, 3> pulls{flowing_pull(*this, nodes[0]), flowing_pull(*this, nodes[1]),
                                    flowing_pull(*this, nodes[2])};
    // Where d is the same all along, c does not come into f.
    const bool d_is_constant = supply_co2 == 1;
    std::array<double, 3> c{c0, c0, c0};
    for (int rounds = d_is_constant ? 1 : 3; rounds > 0; --rounds) {
      draw_curve(k, pulls, c, d_is_constant ? last : nullptr);
      c = {c0, half.concentration, end.concentration};
    }
    return;
  }
  const std::array<ShutPull, 3> shut{ShutPull(*this, nodes[0]), ShutPull(*this, nodes[1]),
                                     ShutPull(*this, nodes[2])};
  std::array<double, 3> c{c0, c0, c0};
  double end_co2_mol = co2_mol;
  for (int rounds = chord_rounds; rounds > 0; --rounds) {
    const double per_end = per_taken(end_co2_mol);
    draw_curve(k,
               {shut[0].at(*this, end_co2_mol, per_end), shut[1].at(*this, end_co2_mol, per_end),
                shut[2].at(*this, end_co2_mol, per_end)},
               c, nullptr);
    c = {c0, half.concentration, end.concentration};
    const double before = end_co2_mol;
    end_co2_mol = co2_mol - beer_m3 * (c[2] - c0);
    if (std::abs(end_co2_mol - before) < chord_near_enough * co2_mol) break;
  }
}

// At one temperature the beer is drawn the same way all along: f = k a, lambda = k (1 + d).
void KegPiece::shape_steady(double k, double equation_offset, const ThermalNode& all_along,
                            ThermalSpan::LastDecay* last) {
  const Node node = node_of(all_along, share_squared, equation_offset);
  f1 = f2 = 0;
  const auto draw = [&](const Pull& there) {
    lambda = k * (1 + there.d);
    f0 = k * there.a;
  };
  if (flowing) {
    draw(flowing_pull(*this, node));
    come_to_end(last);
    return;
  }
  const ShutPull shut(*this, node);
  double end_co2_mol = co2_mol;
  for (int rounds = chord_rounds; rounds > 1; --rounds) {
    draw(shut.at(*this, end_co2_mol, per_taken(end_co2_mol)));
    const double before = end_co2_mol;
    end_co2_mol = co2_mol - beer_m3 * (Co2Piece::concentration(length_s) - c0);
    if (std::abs(end_co2_mol - before) < chord_near_enough * co2_mol) break;
  }
  draw(shut.at(*this, end_co2_mol, per_taken(end_co2_mol)));
  come_to_end(nullptr);
}

// Shut: one over what the headspace gained by the end; 0 where that is too little to tell.
double KegPiece::per_taken(double end_co2_mol) const {
  const double taken = end_co2_mol - co2_mol;
  return std::abs(taken) > 1e-6 * co2_mol ? 1 / taken : 0;
}

// c at middle and end.
void KegPiece::come_to_end(ThermalSpan::LastDecay* last) {
  const double z = lambda * length_s;
  ThermalSpan::LastDecay own;
  ThermalSpan::LastDecay& decay = last != nullptr ? *last : own;
  if (decay.z != z) {
    decay.z = z;
    decay.half = Decay::over(0.5 * z);
    decay.whole = decay.half.doubled();
  }
  half.concentration = Co2Piece::concentration(length_s / 2, decay.half);
  end.concentration = Co2Piece::concentration(length_s, decay.whole);
}

// lambda and f from how strongly and where to the beer is drawn at start, middle and
// end, given c there; then c at middle and end.
void KegPiece::draw_curve(double k, const std::array<Pull, 3>& at, const std::array<double, 3>& c,
                          ThermalSpan::LastDecay* last) {
  lambda = k * (1 + at[1].d);
  std::array<double, 3> f{};
  for (std::size_t i = 0; i < 3; ++i) f[i] = k * (at[i].a - (at[i].d - at[1].d) * c[i]);
  f0 = f[0];
  f1 = -3 * f[0] + 4 * f[1] - f[2];
  f2 = 2 * f[0] - 4 * f[1] + 2 * f[2];
  come_to_end(last);
}

KegPiece::Moles KegPiece::moles(double t) const {
  const double taken_up = beer_m3 * (concentration(t) - c0);
  if (!flowing) return {co2_mol - taken_up, inert_mol};
  const double k = temperature(t);
  const double virial = co2_second_virial(units::kelvin(k)) * share_squared;
  const double total = set_pa * headspace_m3 / (gas_constant * k + virial * set_pa);
  const double inert = inert_mol + (1 - supply_co2) * (taken_up + total - co2_mol - inert_mol);
  return {total - inert, inert};
}

double KegPiece::pressure(double t) const {
  if (flowing) return set_pa;
  const double k = temperature(t);
  const double total = co2_mol - beer_m3 * (concentration(t) - c0) + inert_mol;
  const double virial = co2_second_virial(units::kelvin(k)) * share_squared;
  return gas_constant * k * total / (headspace_m3 - virial * total);
}

// What the headspace takes in as it cools, mol/s, at a temperature and its virial
// coefficient.
double KegPiece::cooling_inflow(double k, double virial) const {
  const double virial_slope =
      (12.0408 - 2 * 0.0327957 * k + 3 * 3.16528e-5 * k * k) * 1e-6 * share_squared;
  const double molar = gas_constant * k + virial * set_pa;
  const double per_kelvin =
      -set_pa * headspace_m3 * (gas_constant + virial_slope * set_pa) / (molar * molar);
  return per_kelvin * (place_k - k) / cooling_s;
}

double KegPiece::flow_in(double t) const {
  const double x = length_s > 0 ? t / length_s : 0;
  const double uptake = beer_m3 * (f0 + x * (f1 + x * f2) - lambda * concentration(t));
  if (offset_k == 0) return uptake;
  const double k = temperature(t);
  return uptake + cooling_inflow(k, co2_second_virial(units::kelvin(k)) * share_squared);
}

double KegPiece::flow_at_start(double k, double equation_offset, const ThermalNode& start) const {
  const Node node = node_of(start, share_squared, equation_offset);
  const Pull there = flowing_pull(*this, node);
  const double uptake = beer_m3 * k * (there.a - (1 + there.d) * c0);
  if (offset_k == 0) return uptake;
  return uptake + cooling_inflow(start.kelvin, node.virial);
}

}  // namespace ullage::physics
