// SPDX-License-Identifier: GPL-3.0-or-later
//
// CO2 in the beer of a keg over its history of gas, temperature and handling.
//
//   dC/dt = k (Ceq(p_CO2(t), T(t)) - C)
//
// Ceq is the default equilibrium equation, p_CO2 the CO2 partial pressure of the
// headspace, T the beer following its place with a lag (keg_cooling.h). Lowering
// a regulator does not vent: while the headspace stands above the set pressure
// the regulator's check valve is shut and headspace and beer are one closed
// system (CO2 mass balance, real gas) until the headspace has fallen to the set
// pressure. Gas off is the same closed system; venting lowers the headspace at
// once. With mixed gas the inert share that stays behind is counted.
//
// k: no published measurement was found for a resting keg. The prior is a time
// constant of 4 days, 95 % 2 to 8, for an undisturbed 19 L soda keg, scaled by
// surface over volume; "common practice, no source". See docs/physics.md.
#pragma once

#include <boost/variant2/variant.hpp>
#include <memory>
#include <optional>
#include <span>
#include <string_view>
#include <vector>

#include "core/physics/error.h"
#include "core/physics/log_estimate.h"
#include "core/units/estimate.h"
#include "core/units/gauge_pressure.h"
#include "core/units/quantities.h"
#include "core/units/scales.h"

namespace ullage::physics {

// --- what happened

struct GasOn {  // connected, or the regulator turned to another pressure
  units::Estimate<units::GaugePressure> pressure;
  units::MoleFraction co2 = units::mole_fraction(1);
};
struct GasOff {};
struct Vented {  // relief valve opened until the headspace stood at `to`
  units::GaugePressure to;
};
struct PlaceChanged {  // the air about the keg, from now on
  units::Estimate<units::Temperature> temperature;
};
struct BeerTemperatureRead {  // the beer itself, now
  units::Estimate<units::Temperature> temperature;
};
struct Rocked {
  units::Duration how_long;
};
struct BeerDrawn {
  units::Volume beer;
};
struct Co2Read {  // a carbonation reading: the model goes on from it
  units::Estimate<units::Co2Volumes> co2;
};

using What = boost::variant2::variant<GasOn, GasOff, Vented, PlaceChanged, BeerTemperatureRead,
                                      Rocked, BeerDrawn, Co2Read>;
struct Step {
  units::Duration at;  // since the start; steps are in order of time
  What what;
};

// Causes of error are the named sources of the estimates; equal names shift
// together, so give every reading of one dial the same bias source. Where more
// than six sources enter one setting of gas or place each (the repeatability of
// every reading), those are followed together and come out as one source,
// "repeatability of readings".
// A reading of the beer's CO2 beside the model, which learns from it.
struct Co2Reading {
  units::Duration at;
  units::Estimate<units::Co2Volumes> co2;
};

struct CarbonationHistory {
  units::Volume brimful;
  units::Volume beer;  // at the start
  units::Estimate<units::Co2Volumes> initial;
  units::Estimate<units::AbsolutePressure> ambient;
  units::Estimate<units::Temperature> start;  // beer and place, until a PlaceChanged
  units::GaugePressure headspace;             // at the start
  units::MoleFraction headspace_co2 = units::mole_fraction(1);
  std::vector<Step> steps;
  std::vector<Co2Reading> readings = {};
};

// --- how fast, and how sure

struct CarbonationRates {
  LogEstimate<units::Duration> resting;  // 1/k with the beer volume at the start
  LogEstimate<units::Duration> rocking;  // 1/k while rocked
  LogEstimate<units::Duration> cooling;
  units::ErrorSource equation;  // the equilibrium's half-width goes under this
};

// The priors for a keg: `keg` names its sources ("K07: carbonation rate", ...).
// `surface` is the beer's free surface; without it, the shape of a soda keg.
// rocking: 10 min, 95 % 3 to 33 (common practice, no source).
[[nodiscard]] Result<CarbonationRates> carbonation_priors(
    units::Volume brimful, units::Volume beer, std::string_view keg,
    std::optional<units::Area> surface = std::nullopt);

// The time constant at rest with the beer volume at the start: median and 95 %.
struct RateBand {
  units::Duration low, median, high;
};

// What the readings taught about it (rate_posterior.h).
struct RatePosterior {
  RateBand prior, posterior;  // the same where the readings don't fit
  int readings = 0;
  // How often readings of this history would lie as far off as these or farther.
  double agreement = 1;
  bool fits = true;  // agreement of 0.001 or more
};

inline constexpr Range initial_co2_range{0.0, 6.0};             // volumes
inline constexpr Range set_pressure_range{0.0, 4.5e5};          // Pa gauge: 65 psi
inline constexpr Range resting_time_constant_range{60.0, 1e8};  // s
inline constexpr Range history_range{0.0, 20 * 366 * 86400.0};  // s
inline constexpr Range headspace_share_range{0.002, 0.995};     // of the brimful volume

// --- what follows

struct CarbonationPoint {
  units::Duration time;
  units::Co2Volumes low;  // 95 % band
  units::Co2Volumes median;
  units::Co2Volumes high;
  units::GaugePressure headspace;  // of the median
  units::Temperature temperature;  // of the median
};

// When something happens: by the fast edge of the band, by its middle, by the
// slow edge. Empty where that edge never gets there at this setting.
struct Window {
  std::optional<units::Duration> earliest;
  std::optional<units::Duration> likely;
  std::optional<units::Duration> latest;
};

class PlainHistory;  // plain_history.h

class CarbonationModel {
 public:
  // `horizon` is how far past the last step the model looks. Refuses histories
  // out of order or out of range, naming the limit.
  [[nodiscard]] static Result<CarbonationModel> make(const CarbonationHistory&,
                                                     const CarbonationRates&,
                                                     units::Duration horizon = units::days(120));

  // At a time between the start and last step + horizon.
  [[nodiscard]] Result<CarbonationPoint> at(units::Duration) const;
  // The same as an estimate: value and what each source contributes.
  [[nodiscard]] Result<units::Estimate<units::Co2Volumes>> co2_at(units::Duration) const;
  // `count` >= 2 points evenly from `from` to `to`.
  [[nodiscard]] Result<std::vector<CarbonationPoint>> curve(units::Duration from,
                                                            units::Duration to, int count) const;

  // First time, not before `from`, at which the beer has `low_target` or more.
  [[nodiscard]] Window time_to_reach(units::Co2Volumes low_target, units::Duration from) const;
  // The same of several targets in one go, which costs little more than one.
  [[nodiscard]] std::vector<Window> times_to_reach(std::span<const units::Co2Volumes> targets,
                                                   units::Duration from) const;
  // First time, not before `from`, above `high_target`: it overshoots.
  [[nodiscard]] Window time_leaving(units::Co2Volumes high_target, units::Duration from) const;
  // Where it settles if nothing more is done.
  [[nodiscard]] units::Estimate<units::Co2Volumes> equilibrium_end() const;
  [[nodiscard]] units::Duration end() const;  // last step + horizon

  // What the history's readings taught; empty without readings. Where they don't
  // fit, the model is the one without them.
  [[nodiscard]] const std::optional<RatePosterior>& learned() const;
  // The same keg with what was learned, under another history (its readings are
  // not asked again): "what if the gas is turned to ...".
  [[nodiscard]] Result<CarbonationModel> under(const CarbonationHistory&,
                                               units::Duration horizon) const;

  [[nodiscard]] const CarbonationHistory& history() const;
  [[nodiscard]] const CarbonationRates& rates() const;

 private:
  struct Members;
  class Asked;
  explicit CarbonationModel(std::shared_ptr<const Members>);
  [[nodiscard]] static CarbonationModel solved(std::shared_ptr<Members>, const PlainHistory&);
  std::shared_ptr<const Members> members_;
};

// --- burst, then drop

struct DropPlan {
  Window drop;                                    // lower the regulator and vent in this window
  units::Estimate<units::Co2Volumes> settles_at;  // after the drop, at serving pressure
  units::PressureDifference vent_by;  // headspace above serving pressure at the likely drop
  units::Co2Volumes if_not_vented;    // where it goes with the regulator lowered only
};

// When to lower to `serving` and vent so that the beer stops near `target`, from
// `now` on. The plan's `drop` is empty when the target isn't reached.
[[nodiscard]] Result<DropPlan> drop_plan(const CarbonationModel&, units::Co2Volumes target,
                                         const units::Estimate<units::GaugePressure>& serving,
                                         units::Duration now);

}  // namespace ullage::physics
