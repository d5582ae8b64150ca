// SPDX-License-Identifier: GPL-3.0-or-later
//
// The temperature of a keg through its history, and what it alone decides: cut into
// the pieces in which the carbonation solver goes as long as no valve opens or shuts.
// Most runs of one history differ in gas, rate or CO2 only and go along the same
// path: they are taken along it together. Internal to core/physics.
#pragma once

#include <span>
#include <vector>

#include "core/physics/plain_history.h"

namespace ullage::physics {

// At one temperature.
struct ThermalNode {
  double kelvin = -1;      // below zero: not worked out
  double solubility = 0;   // mol/(m3 Pa)
  double intercept = 0;    // mol/m3, the equation's own
  double pure_virial = 0;  // m3/mol, of CO2 alone
  [[nodiscard]] static ThermalNode at(units::Temperature);
  [[nodiscard]] bool is_at(double k) const { return kelvin - k < 1e-11 && k - kelvin < 1e-11; }
};

// e^-z and phi_1..3 of the exponential integrators at -z: phi_1 = (1 - e^-z) / z,
// phi_n+1 = (1/n! - phi_n) / z.
struct Decay {
  double left = 1;  // e^-z
  double one = 1;
  double two = 0.5;
  double three = 1.0 / 6;
  [[nodiscard]] static Decay over(double z);
  [[nodiscard]] Decay doubled() const;  // over 2 z
};

// A beer on its way to the temperature of its place, at rest or rocked.
struct KegWarmth {
  double temperature_k = 0;
  double place_k = 0;
  double cooling_s = 1;
  double rocked_until_s = -1;

  // What a step changes of it; steps about gas and beer change nothing.
  void apply(const PlainStep&, double now_s, const PlainHistory&, std::span<const double> offsets);

  // T = place + offset exp(-t / cooling); 0 where it is as good as there.
  [[nodiscard]] double offset() const;
  // The longest piece up to the end, and to the end of rocking, over which a parabola
  // will do for what temperature moves.
  [[nodiscard]] double longest_piece(double now_s, double end_s) const;
};

struct PieceHeat {
  ThermalNode start, half, end;
  // `start` may be known from the piece before; else it is worked out.
  [[nodiscard]] static PieceHeat of(const KegWarmth&, double length_s, const ThermalNode& start);
};

struct ThermalSpan {
  double start_s = 0;
  double length_s = 0;
  double start_k = 0;
  PieceHeat heat;
  // Of the last run that went along with gas flowing: mostly the next has the same
  // rate. Not for two threads.
  struct LastDecay {
    double z = -1;
    Decay half, whole;
  };
  mutable LastDecay decay;
};

// The temperature alone, through the steps that move it.
class ThermalWalk {
 public:
  ThermalWalk(const PlainHistory&, std::span<const double> offsets);
  void apply(const PlainStep&);
  // The pieces on the way, in place of what `out` held.
  void run_to(double end_s, std::vector<ThermalSpan>& out);

 private:
  const PlainHistory& history_;
  std::span<const double> offsets_;
  KegWarmth warmth_;
  ThermalNode start_node_;
  double now_s_ = 0;
};

// How far past the end of a history the slowest keg and cold room come to rest.
[[nodiscard]] inline double settling_seconds(const PlainHistory& history) {
  return 100 * history.resting.high_s() + 100 * history.cooling.high_s();
}

}  // namespace ullage::physics
