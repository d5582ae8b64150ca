// SPDX-License-Identifier: GPL-3.0-or-later
//
// What a tick on a cleaning day's list puts into the journal. What hands the
// line back to the bar, or has an outcome that somebody must state (a release, an
// alarm's trial, a leak test, a bottle's test), is no tick: it has a form. Steps that
// leave no trace (pressure let off a line, flushing, rinsing) log nothing.
#pragma once

#include <functional>
#include <optional>

#include "core/cellar/cleaning_plan.h"

namespace ullage::cellar {

enum class TickMeans { logs, opens_form, leaves_no_trace };

[[nodiscard]] TickMeans means(const PlanStep&, SubjectRef thing);

// The entry of one thing of a step; nullopt where the tick logs nothing. For a
// step with a form, what the form starts from. `beer_lost` is told on the first
// chemical of a line. `stood`: how long the cleaner was in, where a timer measured it;
// else the entry states no contact time, for nobody knows it.
[[nodiscard]] std::optional<Payload> entry_for(const PlanStep&, SubjectRef thing,
                                               const CellarStatus&, const CleaningKit&,
                                               const std::optional<units::Duration>& stood = {});

// The entry by which the journal has it already (the line locked, the keg washed),
// since the list was begun; null when it has not.
[[nodiscard]] const Entry* done_since(const PlanStep&, SubjectRef thing, const Journal&,
                                      Instant since);

// The first step before this one, about the same thing, that is not `done` and has
// to be: lock and vent before a chemical, the caustic rinsed out before acid, a
// chemical rinsed out before the release. Nullopt when the way is free.
[[nodiscard]] std::optional<std::size_t> step_before(const std::vector<PlanStep>&, std::size_t step,
                                                     SubjectRef thing,
                                                     const std::function<bool(std::size_t)>& done);

}  // namespace ullage::cellar
