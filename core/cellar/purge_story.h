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
#include "core/physics/purge_plan.h"

namespace ullage::cellar {

// Pushed with this where nothing was logged (common practice, no source).
[[nodiscard]] inline GaugePressure usual_push() { return units::gauge_psi(5); }

// As physics names it; nothing where its amount was not logged.
[[nodiscard]] std::optional<physics::PurgeAct> purge_act(const Purged&);

// Those whose amount was logged, in their order; entries of other kinds are passed over.
[[nodiscard]] std::vector<physics::PurgeAct> purge_acts(std::span<const Entry* const> purges);

// After the last of them; nothing where none can be told. Entries of other kinds
// are passed over.
[[nodiscard]] std::optional<physics::PurgeOutcome> left_by_purges(
    const physics::Vessel&, std::span<const Entry* const> purges);

}  // namespace ullage::cellar
