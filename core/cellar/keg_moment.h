// SPDX-License-Identifier: GPL-3.0-or-later
//
// One keg at one moment, while its status is being worked out: the folded story,
// the clock, and what has been found so far. The steps run in the order below;
// each reads what the ones before it filled in.
#pragma once

#include <optional>

#include "core/cellar/keg_timeline.h"
#include "core/physics/carbonation.h"

namespace ullage::cellar {

struct DropTime {
  GaugePressure to;  // the serving pressure
  Window when;
  units::Co2Volumes if_not_vented;
};

struct Moment {
  const KegTimeline& keg;
  Instant now{};
  const LocalCalendar& calendar;
  KegStatus status;

  std::optional<Instant> reached;  // its CO2 range, in the past
  std::optional<DropTime> drop;    // a burst to be ended
  std::optional<Window> cooled;    // still to come: near the temperature of its place
  std::optional<Window> settled;   // a delivered keg's rest in the cold

  [[nodiscard]] bool full() const { return keg.stage == Stage::full || keg.stage == Stage::on_tap; }
  [[nodiscard]] bool ours() const {
    return keg.filling && keg.filling->kind == FillingKind::filled;
  }
  // Came in full, or was found at a stock-taking with a delivered batch in it: it is
  // judged by date, seal and hours in the cold.
  [[nodiscard]] bool received() const {
    if (!keg.filling) return false;
    if (keg.filling->kind == FillingKind::received) return true;
    return keg.filling->kind == FillingKind::found && keg.contents &&
           keg.contents->batch_record.origin == BatchOrigin::delivered;
  }
  [[nodiscard]] units::Duration since(Instant t) const { return between(t, now); }
  [[nodiscard]] Date today() const { return calendar.date_of(now); }
};

void tell_facts(Moment&);      // keg_status.cpp: record, contents, gas, line, custody
void tell_co2(Moment&);        // co2_state.cpp
void tell_readiness(Moment&);  // readiness.cpp; needs co2
void tell_phase(Moment&);      // keg_status.cpp; needs readiness
void tell_words(Moment&);      // keg_words.cpp; state and next step
void tell_advice(Moment&);     // advice.cpp
void tell_life(Moment&);       // life_strip.cpp

[[nodiscard]] KegStatus keg_status_at(const KegTimeline&, Instant now, const LocalCalendar&);

}  // namespace ullage::cellar
