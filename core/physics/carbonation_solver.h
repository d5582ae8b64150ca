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

#include <array>
#include <optional>
#include <span>
#include <vector>

#include "core/physics/carbonation.h"
#include "core/physics/co2_gas.h"
#include "core/physics/plain_history.h"
#include "core/physics/thermal_path.h"

namespace ullage::physics {

struct KegState {
  units::Co2Volumes co2;
  units::AbsolutePressure headspace;
  units::Temperature temperature;
};

// The beer's CO2 during one piece.
struct Co2Piece {
  double start_s = 0;
  double length_s = 0;
  double c0 = 0;
  double lambda = 0;
  double f0 = 0;  // f = f0 + f1 x + f2 x^2, x = t / length
  double f1 = 0;
  double f2 = 0;

  [[nodiscard]] double concentration(double t) const;
  [[nodiscard]] double concentration(double t, const Decay& over_t) const;
};

// What the keg is during one piece.
struct KegPiece : Co2Piece {
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
  struct Then {
    double kelvin = 0;
    double concentration = 0;
  };
  Then half, end;
  [[nodiscard]] double temperature(double t) const;
  [[nodiscard]] double concentration(double t) const;
  struct Moles {  // in the headspace
    double co2;
    double inert;
  };
  [[nodiscard]] Moles moles(double t) const;
  [[nodiscard]] double pressure(double t) const;  // of the headspace, Pa
  [[nodiscard]] double flow_in(double t) const;   // mol/s, where flowing
  // The same at its start, before shape(): k per second, the offset of the
  // equilibrium equation in volumes, `start` at the piece's first temperature.
  [[nodiscard]] double flow_at_start(double k, double equation_offset,
                                     const ThermalNode& start) const;
  // From all of the above to lambda, f, half and end. `last`: what another run along
  // this piece left, to be used and left again.
  void shape(double k, double equation_offset, const PieceHeat&, ThermalSpan::LastDecay* last);

  // Ceq = a - d c at one moment, from Ceq = s p_CO2 + b.
  struct Pull {
    double a = 0;
    double d = 0;
  };

 private:
  void shape_steady(double k, double equation_offset, const ThermalNode& all_along,
                    ThermalSpan::LastDecay* last);
  [[nodiscard]] double per_taken(double end_co2_mol) const;
  void come_to_end(ThermalSpan::LastDecay* last);
  void draw_curve(double k, const std::array<Pull, 3>& at, const std::array<double, 3>& c,
                  ThermalSpan::LastDecay* last);
  [[nodiscard]] double cooling_inflow(double k, double virial) const;
};

// Why the history can't be solved, if so.
[[nodiscard]] std::optional<RangeError> check_history(const CarbonationHistory&,
                                                      const CarbonationRates&,
                                                      units::Duration horizon);

// Moles of CO2 in a cubic metre of beer with one volume of it.
inline constexpr double moles_per_m3_per_volume =
    units::grams_per_litre_per_volume / co2_kilograms_per_mole;

// Where a run was last asked: asked again nearby, its piece is found at once.
struct LastAsked {
  std::size_t piece = 0;
};

// Whether to find where it settles, too.
enum class Settling { find, skip };

// The beer's CO2 alone: all that is asked of the runs beside the centre one.
class Co2Run {
 public:
  // One run for each of the offsets. The history must have been checked.
  [[nodiscard]] static std::vector<Co2Run> solve(const PlainHistory&, std::span<const Offsets> each,
                                                 units::Duration until);
  [[nodiscard]] double volumes_at(units::Duration, LastAsked&) const;
  [[nodiscard]] double settles_at_volumes() const { return settles_at_; }

 private:
  std::vector<Co2Piece> pieces_;
  double settles_at_ = 0;
};

// Only volumes at some times, in any order: [run][time].
[[nodiscard]] std::vector<std::vector<double>> co2_of_runs(const PlainHistory&,
                                                           std::span<const Offsets> each,
                                                           std::span<const double> seconds);

class Trajectory {
 public:
  // The history must have been checked (CarbonationModel::make does).
  [[nodiscard]] static Trajectory solve(const PlainHistory&, const Offsets&, units::Duration until,
                                        Settling settling = Settling::find);
  // Every value as stated but for the shifts.
  [[nodiscard]] static Trajectory solve(const CarbonationHistory&, const CarbonationRates&,
                                        std::span<const Shift>, units::Duration until);

  [[nodiscard]] KegState at(units::Duration) const;
  [[nodiscard]] double volumes_at(units::Duration, LastAsked&) const;  // the beer's CO2 alone
  [[nodiscard]] units::Co2Volumes settles_at() const { return settles_at_; }
  [[nodiscard]] const std::vector<KegPiece>& pieces() const { return pieces_; }
  // All CO2 in beer and headspace, for the mass balance.
  [[nodiscard]] units::Amount co2_in_keg(units::Duration) const;

 private:
  std::vector<KegPiece> pieces_;
  units::Co2Volumes settles_at_;
};

}  // namespace ullage::physics
