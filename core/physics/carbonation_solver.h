// SPDX-License-Identifier: GPL-3.0-or-later
//
// One run of a carbonation history with every value fixed: the equation of
// carbonation.h solved piece by piece. Internal to core/physics; inside it
// numbers are plain SI (mol, m3, Pa, K, s; CO2 in beer as mol/m3).
//
// Over one piece the gas is either flowing (headspace held at the set pressure)
// or shut (no gas enters or leaves), and in both cases the headspace's CO2 is a
// straight line in the beer's CO2, so
//     dc/dt = f(t) - lambda c
// with f changing only through temperature. f is taken as a parabola through
// three points of the piece and integrated exactly against the exponential;
// pieces are as long as the cooling curve allows, and end where a check valve
// opens or shuts.
#pragma once

#include <optional>
#include <vector>

#include "core/physics/carbonation.h"

namespace ullage::physics {

// Which source is moved off its value, and by how many half-widths.
struct Shift {
  units::ErrorSource source;
  double half_widths = 0;
};

struct KegState {
  units::Co2Volumes co2;
  units::AbsolutePressure headspace;
  units::Temperature temperature;
};

// What the keg is during one piece.
struct KegPiece {
  double start_s = 0;
  double length_s = 0;
  double place_k = 0;  // T = place + offset exp(-t / cooling)
  double offset_k = 0;
  double cooling_s = 1;
  double beer_m3 = 0;
  double headspace_m3 = 0;
  double co2_mol = 0;  // headspace, at the start of the piece
  double inert_mol = 0;
  double share_squared = 1;  // of CO2 in the headspace: weight of its virial coefficient
  bool flowing = false;
  double set_pa = 0;      // absolute, where flowing
  double supply_co2 = 1;  // mole fraction, where flowing
  double c0 = 0;
  double lambda = 0;
  double f0 = 0;  // f = f0 + f1 x + f2 x^2, x = t / length
  double f1 = 0;
  double f2 = 0;

  [[nodiscard]] double temperature(double t) const;
  [[nodiscard]] double concentration(double t) const;
  struct Gas {
    double co2_mol;
    double inert_mol;
    double pressure_pa;
  };
  [[nodiscard]] Gas gas(double t) const;
  [[nodiscard]] double flow_in(double t) const;  // mol/s, where flowing
};

// Why the history can't be solved, if so.
[[nodiscard]] std::optional<RangeError> check_history(const CarbonationHistory&,
                                                      const CarbonationRates&,
                                                      units::Duration horizon);

class Trajectory {
 public:
  // The history must have been checked (CarbonationModel::make does).
  [[nodiscard]] static Trajectory solve(const CarbonationHistory&, const CarbonationRates&,
                                        const Shift&, units::Duration until);

  [[nodiscard]] KegState at(units::Duration) const;
  [[nodiscard]] units::Co2Volumes settles_at() const { return settles_at_; }
  [[nodiscard]] const std::vector<KegPiece>& pieces() const { return pieces_; }
  // All CO2 in beer and headspace, for the mass balance.
  [[nodiscard]] units::Amount co2_in_keg(units::Duration) const;

 private:
  [[nodiscard]] const KegPiece& piece_at(double t) const;
  std::vector<KegPiece> pieces_;
  units::Co2Volumes settles_at_;
};

}  // namespace ullage::physics
