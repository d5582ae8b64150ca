// SPDX-License-Identifier: GPL-3.0-or-later
//
// One keg on its way through one run of a carbonation history: as it stands, and how
// it moves on from there (carbonation_solver.h). Internal to core/physics; numbers
// are plain SI.
#pragma once

#include <optional>
#include <span>

#include "core/physics/carbonation_solver.h"

namespace ullage::physics {

// The keg as it stands at `now_s`, and how it moves on from there.
class MovingKeg {
 public:
  MovingKeg(const PlainHistory&, std::span<const double> offsets);

  void apply(const PlainStep&);
  // Along the thermal path's pieces up to there, as far as no valve cuts them. Each
  // piece on the way is handed to `keep`.
  template <class Keep>
  void run_to(double end_s, std::span<const ThermalSpan> path, const Keep& keep);
  [[nodiscard]] double volumes() const { return c_ / moles_per_m3_per_volume; }

 private:
  struct Supply {
    double set_pa = 0;
    double co2 = 1;
  };
  [[nodiscard]] double at(const Uncertain& e) const { return history_.at(e, offsets_); }
  void gas_on(double set_pa, double co2_share);
  void vent_to(double pa);

  [[nodiscard]] double virial() const {
    return co2_second_virial(units::kelvin(warmth_.temperature_k)) * share_squared_;
  }
  [[nodiscard]] double moles_at(double pa) const {
    return pa * headspace_m3_ / (gas_constant * warmth_.temperature_k + virial() * pa);
  }
  [[nodiscard]] double pressure() const {
    const double total = co2_mol_ + inert_mol_;
    return gas_constant * warmth_.temperature_k * total / (headspace_m3_ - virial() * total);
  }
  void refresh_share() {
    const double share = co2_mol_ / (co2_mol_ + inert_mol_);
    share_squared_ = share * share;
  }
  void fill_from_supply();
  // The time until the next thing that is known beforehand.
  struct Stretch {
    double length_s = 0;
    PieceHeat heat;
    ThermalSpan::LastDecay* decay = nullptr;  // where others go along the same
  };
  [[nodiscard]] Stretch next_stretch(double end_s, std::span<const ThermalSpan>& path);
  [[nodiscard]] KegPiece unshaped(bool flowing, double length_s) const;
  [[nodiscard]] KegPiece piece(bool flowing, double length_s, const Stretch&) const;
  [[nodiscard]] double rate() const {
    // Surface over volume grows as beer is drawn.
    return warmth_.rocked_until_s > now_s_ ? 1 / rocking_s_
                                           : first_beer_m3_ / beer_m3_ / resting_s_;
  }
  [[nodiscard]] KegPiece next_piece(const Stretch&) const;
  void take(const KegPiece&, const Stretch&);

  const PlainHistory& history_;
  std::span<const double> offsets_;
  double resting_s_;
  double rocking_s_;
  double equation_shift_;  // volumes
  double ambient_pa_;
  double beer_m3_;
  double first_beer_m3_;
  double headspace_m3_;
  KegWarmth warmth_;
  double c_;  // mol/m3
  double share_squared_ = 1;
  double co2_mol_ = 0;
  double inert_mol_ = 0;
  double now_s_ = 0;
  std::optional<Supply> supply_;
  ThermalNode start_node_;  // at the start of the next piece
};

template <class Keep>
void MovingKeg::run_to(double end_s, std::span<const ThermalSpan> path, const Keep& keep) {
  while (now_s_ < end_s) {
    // Only as time goes on: acts of one moment (vent, lower the regulator) count
    // together, in whichever order they were written down.
    fill_from_supply();
    const Stretch stretch = next_stretch(end_s, path);
    const KegPiece p = next_piece(stretch);
    keep(p);
    take(p, stretch);
    if (end_s - now_s_ < 1e-6) now_s_ = end_s;
  }
}

}  // namespace ullage::physics
