// SPDX-License-Identifier: GPL-3.0-or-later
//
// A beer line from the keg to the open air at the faucet: how fast it pours, what
// pressure, length or bore a wanted pour needs, and the pressure along it.
//
//   p_keg = rho g sum(rise) + sum over hoses f (L/d) rho v^2/2 + sum over
//           fittings loss (Q / Q_at)^2
//
// Darcy-Weisbach with the friction of pipe_friction.h; fittings (coupler, shank,
// faucet, foam detector, in-line restrictor) lose pressure with the square of
// the flow and are stated as what they lose at some flow, the trade's nominal
// pour unless said otherwise. Gauge pressures throughout: air is the same at keg
// and faucet (a metre of air is 12 Pa). The beer runs as one liquid: once gas
// breaks out the real pour is slower. Not in it: the extra loss of a tight coil,
// the first moment of a pour. Calibrate by a timed pour (line_calibration.h): the
// bore of a hose is rarely known to 5 %, and the pour goes with its power of 2.7.
#pragma once

#include <boost/variant2/variant.hpp>
#include <cstddef>
#include <utility>
#include <vector>

#include "core/physics/beer_viscosity.h"
#include "core/physics/error.h"
#include "core/physics/line_volume.h"
#include "core/physics/pipe_friction.h"
#include "core/units/flow.h"
#include "core/units/gauge_pressure.h"

namespace ullage::physics {

// "A gallon a minute": 2 US fl oz a second, 59 mL/s. Trade pages, verified.
[[nodiscard]] units::VolumeFlow nominal_pour();

struct Hose {  // a run of one bore: hose, trunk line, shank bore, restrictor hose
  units::Length length = units::metres(0);
  units::Length bore = units::metres(0);
  units::Length roughness = drawn_tube_roughness();
  units::Length rise = units::metres(0);  // of its end above its start; negative where it falls
};
struct Fitting {
  units::PressureDifference loss = units::pascals(0);
  units::VolumeFlow at = nominal_pour();
};
using LinePart = boost::variant2::variant<Hose, Fitting>;
// In order from the keg. The keg's end is the middle of the beer in it.
using LineParts = std::vector<LinePart>;

inline constexpr Range hose_roughness_range{0.0, 1e-3};   // m, and at most 5 % of the bore
inline constexpr Range rise_range{-100.0, 100.0};         // m
inline constexpr Range fitting_loss_range{0.0, 1.0e6};    // Pa
inline constexpr Range pour_flow_range{1e-9, 5e-3};       // m3/s: to 5 L/s
inline constexpr Range pour_pressure_range{-1e5, 1.0e6};  // Pa gauge: to 145 psi
inline constexpr std::size_t most_line_parts = 200;

// Where the pressure is known along the line. Between two points it is a
// straight line.
struct ProfilePoint {
  units::Length along = units::metres(0);   // from the keg
  units::Length height = units::metres(0);  // above the keg's end
  units::GaugePressure pressure;
  std::size_t part = 0;  // the part that begins or ends here
};

// A checked line with a beer in it.
class LineFlow {
 public:
  // Refuses parts out of range (`bore`, `length`, `roughness`, `rise`,
  // `pressure_loss`, `flow`), no part at all or more than 200, and a line that
  // resists nothing.
  [[nodiscard]] static Result<LineFlow> make(LineParts, const FlowingBeer&);

  [[nodiscard]] const LineParts& parts() const { return parts_; }
  // The same beer through other parts.
  [[nodiscard]] Result<LineFlow> with_parts(LineParts parts) const {
    return make(std::move(parts), beer_);
  }
  // What stands against the pour before anything runs: rho g rise.
  [[nodiscard]] units::PressureDifference lift() const;
  // Refuses, as `gauge_pressure` with `low` what the lift takes, where nothing runs.
  [[nodiscard]] Result<units::VolumeFlow> flow_at(units::GaugePressure) const;
  [[nodiscard]] Result<units::GaugePressure> pressure_for(units::VolumeFlow) const;
  // With everything else as it is, the length or bore of hose `part` at which the
  // line pours `flow` under `pressure`. Refuses a part that is no hose (`parts`)
  // and an answer out of range (`length`, `bore`): then no length will do.
  [[nodiscard]] Result<units::Length> length_for(std::size_t part, units::GaugePressure,
                                                 units::VolumeFlow) const;
  [[nodiscard]] Result<units::Length> bore_for(std::size_t part, units::GaugePressure,
                                               units::VolumeFlow) const;

  // What part `part` loses to friction at this flow (its rise apart).
  [[nodiscard]] Result<units::PressureDifference> loss_in(std::size_t part,
                                                          units::VolumeFlow) const;
  // Nothing running: applied pressure less the height.
  [[nodiscard]] Result<std::vector<ProfilePoint>> profile_at_rest(units::GaugePressure) const;
  // Pouring freely under the pressure: ends at 0 at the faucet.
  [[nodiscard]] Result<std::vector<ProfilePoint>> profile_pouring(units::GaugePressure) const;

 private:
  // Per part: friction pressure = f(reynolds_per_flow Q) inertia Q^2; a fitting
  // has inertia alone.
  struct Terms {
    double inertia = 0;            // Pa / (m3/s)^2, times the friction factor for a hose
    double reynolds_per_flow = 0;  // 0 for a fitting
    double roughness = 0;          // relative
    double lift = 0;               // Pa
  };
  [[nodiscard]] static Terms terms_of(const LinePart&, const FlowingBeer&);
  [[nodiscard]] static double loss(const Terms&, double flow);
  [[nodiscard]] double loss(double flow) const;
  [[nodiscard]] Result<std::vector<ProfilePoint>> profile(units::GaugePressure, double flow) const;

  LineParts parts_;
  FlowingBeer beer_;
  std::vector<Terms> terms_;
  double lift_ = 0;
};

[[nodiscard]] units::Length total_length(const LineParts&);
[[nodiscard]] units::Length total_rise(const LineParts&);
[[nodiscard]] units::Volume total_volume(const LineParts&);

}  // namespace ullage::physics
