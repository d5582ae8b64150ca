// SPDX-License-Identifier: GPL-3.0-or-later
//
// Purging planned: what each cycle leaves, what purges one after another leave, and
// which way to a target takes the least gas. The equations are purge.h's.
//
// Small cycles take less gas than large ones (at the limit a sweep: ln(y0/yt)
// volumes), but more of the keeper's time; a keg pushed out with liquid takes one
// filling and no air to speak of. So a plan states both gas and how many times the
// valve is opened.
#pragma once

#include <boost/variant2/variant.hpp>
#include <optional>
#include <span>
#include <vector>

#include "core/physics/purge.h"

namespace ullage::physics {

// After 0, 1, 2 ... cycles.
[[nodiscard]] Result<std::vector<PurgeOutcome>> purge_series(const Vessel&, const PressureCycles&,
                                                             const SupplyGas& gas = {},
                                                             const Mixing& mixing = cycle_mixing());

// --- one purge after another, the vessel shut in between

struct Sweep {
  double vessel_volumes = 0;
};
using PurgeAct = boost::variant2::variant<PressureCycles, Sweep, LiquidPush>;

// How well each way mixes.
struct PurgeMixing {
  Mixing cycle = cycle_mixing();
  Mixing sweep = sweep_mixing();
};

// What `act` leaves of what the acts before it left; best, likely and worst each go
// on from their own, and the gas is that of all. Cycles and sweeps begin from
// `before`, or from `vessel.oxygen` where that is empty. A push begins from air
// always: the vessel was opened and filled.
[[nodiscard]] Result<PurgeOutcome> purge_on(const std::optional<PurgeOutcome>& before,
                                            const Vessel&, const PurgeAct& act,
                                            const SupplyGas& gas = {},
                                            const PurgeMixing& mixing = {});
// Several in their order, and what there is after each. Empty for none.
[[nodiscard]] Result<std::vector<PurgeOutcome>> purge_in_order(const Vessel&,
                                                               std::span<const PurgeAct>,
                                                               const SupplyGas& gas = {},
                                                               const PurgeMixing& mixing = {});

// --- planned

enum class PurgeWay { cycles, sweep, liquid_push, push_then_cycles };

struct PurgePlan {
  PurgeWay way = PurgeWay::cycles;
  PressureCycles cycles;      // where the way has any
  double vessel_volumes = 0;  // swept
  PurgeOutcome outcome;
};

// What there is to purge with.
struct PurgeMeans {
  // Pressures at which cycles may be made, the highest one the keg's rating or the
  // regulator's end.
  std::vector<units::GaugePressure> pressures{units::gauge_psi(10), units::gauge_psi(20),
                                              units::gauge_psi(30)};
  bool liquid = true;  // the keg can be filled with sanitiser and pushed out
  units::GaugePressure push = units::gauge_psi(5);
  SupplyGas gas;
  PurgeMixing mixing;
  LiquidPush liquid_push;  // its pressure is `push`
};

// Every way that gets to the target or under by its likely value, within 60 cycles
// or volumes, the one taking least gas first. Empty when none does. Refuses a
// target at or under the supply's own oxygen, which nothing gets to. `done`: what
// purges left so far, from which cycles and sweeps go on; the plans tell the gas
// that is still to come.
[[nodiscard]] Result<std::vector<PurgePlan>> purge_plans(
    units::MoleFraction target, const Vessel&, const PurgeMeans& means = {},
    const std::optional<PurgeOutcome>& done = std::nullopt);

// What a plan does, in its order.
[[nodiscard]] std::vector<PurgeAct> acts_of(const PurgePlan&, const PurgeMeans&);

}  // namespace ullage::physics
