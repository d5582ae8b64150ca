// SPDX-License-Identifier: GPL-3.0-or-later
//
// Replay: from the journal to the state of everything at a moment. A pure
// function of (journal, calendar, now): the same three give the same status,
// whatever was asked before. What is kept between calls only saves work: each
// keg's timeline is kept until an entry about something it read (the keg, its
// batch, beer, place, line, regulator, bottle or instruments, or the cellar)
// changes that thing's revision in the journal. Of things of which only the
// record was read only a new record counts; of the stories behind a filling that
// is over (what it drew from a gas bottle) only what happened by its end.
//
// Entries later than `now` count as having happened; to look back, hand in a
// journal made with Journal::as_of. Replay never fails and drops nothing: what
// doesn't fit the story is kept and marked (KegStatus::doesnt_fit), and what
// can't be told says so and what would help.
//
// The journal and the calendar must outlive the Replay. Not for use from two
// threads at once.
#pragma once

#include <memory>
#include <optional>

#include "core/cellar/journal.h"
#include "core/cellar/status.h"
#include "core/cellar/time.h"

namespace ullage::cellar {

class Replay {
 public:
  Replay(const Journal&, const LocalCalendar&);
  ~Replay();
  Replay(Replay&&) noexcept;
  Replay& operator=(Replay&&) noexcept;
  Replay(const Replay&) = delete;
  Replay& operator=(const Replay&) = delete;

  [[nodiscard]] CellarStatus status(Instant now) const;
  // One keg alone; for an id that was never registered, an empty status with
  // registered_now false. use_next_rank needs the whole cellar and is empty here.
  [[nodiscard]] KegStatus keg_status(KegId, Instant now) const;

  // CO2 over time with its band, readings, and marks of what was done or is
  // planned. Without `from` and `to`: from filling to a little past the forecast.
  [[nodiscard]] CarbonationCurveData carbonation_curve(KegId, Instant now,
                                                       std::optional<Instant> from = {},
                                                       std::optional<Instant> to = {}) const;

 private:
  struct Memory;
  std::unique_ptr<Memory> memory_;
};

}  // namespace ullage::cellar
