// SPDX-License-Identifier: GPL-3.0-or-later
//
// What a keg's purges left in it: all since it was last open, in their order, each
// going on from what the one before left (core/physics/purge_plan.h). A purge whose
// amount was not logged (cycles without a pressure) is passed over: it can only have
// lowered what is told.
#pragma once

#include <optional>
#include <span>
#include <vector>

#include "core/cellar/entry.h"
#include "core/physics/purge_errors.h"

namespace ullage::cellar {

// Pushed with this where nothing was logged (common practice, no source).
[[nodiscard]] inline GaugePressure usual_push() { return units::gauge_psi(5); }

// As physics names it; nothing where its amount was not logged.
[[nodiscard]] std::optional<physics::PurgeAct> purge_act(const Purged&);

// Those whose amount was logged, in their order; entries of other kinds are passed over.
[[nodiscard]] std::vector<physics::PurgeAct> purge_acts(std::span<const Entry* const> purges);

// What the keg, its place, the dial and the weather leave open.
struct PurgeKnown {
  physics::KnownVessel vessel;
  units::Estimate<units::PressureDifference> off;  // what the dial is off by

  [[nodiscard]] physics::Vessel plain() const;  // as likeliest
  [[nodiscard]] physics::Result<physics::PurgeEstimate> by(
      std::span<const physics::PurgeAct>,
      const std::optional<physics::PurgeOutcome>& before = std::nullopt) const;
};

// How far people know what a keg holds and what goes in (2 % where the register has no
// half-width, 3 %), how warm a place is (2 K as read, 8 K as assumed) and what a dial is
// off by (2 psi): assumed. Nothing where the altitude is out of range.
[[nodiscard]] std::optional<PurgeKnown> purge_known(const KegRecord&, units::Length altitude,
                                                    Temperature at, bool read);

// After the last of them; nothing where none can be told. Entries of other kinds
// are passed over.
[[nodiscard]] std::optional<physics::PurgeEstimate> left_by_purges(
    const PurgeKnown&, std::span<const Entry* const> purges);

}  // namespace ullage::cellar
