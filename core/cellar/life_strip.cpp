// SPDX-License-Identifier: GPL-3.0-or-later
//
// The keg's life as a strip: what it was and when, and pale what is to come:
// until it is ready; ready until its best-by date or a fortnight out; on tap
// until it runs out, only where there is evidence of how fast it goes.
#include <algorithm>

#include "core/cellar/keg_moment.h"

namespace ullage::cellar {

namespace {

constexpr std::chrono::days horizon{14};
constexpr std::chrono::days longest_shown{120};

Phase phase_of(Stage stage) {
  switch (stage) {
    case Stage::dirty:
      return Phase::dirty;
    case Stage::clean:
      return Phase::clean;
    case Stage::sanitised:
      return Phase::sanitised;
    case Stage::purged:
      return Phase::purged;
    case Stage::full:
      return Phase::conditioning;
    case Stage::on_tap:
      return Phase::on_tap;
    case Stage::unknown:
      break;
  }
  return Phase::unknown;
}

void add(std::vector<LifeSpan>& life, Instant from, Instant to, Phase phase, bool forecast) {
  if (to > from) life.push_back({from, to, phase, forecast});
}

// A full stretch of the keg now in it, split where its CO2 came into range.
void add_full(Moment& m, Instant from, Instant to) {
  std::vector<LifeSpan>& life = m.status.life;
  const Phase now = m.status.phase;
  std::optional<Instant> turned;
  if (m.received()) {
    if (m.settled && m.settled->likely < to) turned = m.settled->likely;
  } else if (m.keg.co2.enters && m.keg.co2.enters->likely < to) {
    turned = m.keg.co2.enters->likely;
  }
  const Phase before = m.received() || (now == Phase::conditioning && !turned) ? Phase::conditioning
                                                                               : Phase::carbonating;
  if (!turned) {
    add(life, from, to, before, false);
    return;
  }
  const Instant at = std::max(from, *turned);
  add(life, from, at, before, false);
  const bool waiting = now == Phase::conditioning && m.keg.stage == Stage::full;
  add(life, at, to, waiting ? Phase::conditioning : Phase::ready, false);
}

void add_past(Moment& m) {
  const auto& spans = m.keg.spans;
  for (std::size_t i = 0; i < spans.size(); ++i) {
    const Instant to = i + 1 < spans.size() ? std::min(spans[i + 1].from, m.now) : m.now;
    const bool of_this_filling =
        spans[i].stage == Stage::full && m.keg.filling && spans[i].from >= m.keg.filling->at;
    if (of_this_filling) {
      add_full(m, spans[i].from, to);
    } else {
      // What an earlier filling was like inside is not worked out again.
      const Phase phase = spans[i].stage == Stage::full ? Phase::ready : phase_of(spans[i].stage);
      add(m.status.life, spans[i].from, to, phase, false);
    }
  }
}

void add_forecast(Moment& m) {
  std::vector<LifeSpan>& life = m.status.life;
  const Readiness& r = m.status.readiness;
  Instant from = m.now;
  if (m.keg.stage == Stage::on_tap) {
    if (const auto& out = m.status.level.runs_out) {
      add(life, from, std::min(out->likely, m.now + longest_shown), Phase::on_tap, true);
    }
    return;
  }
  if (m.keg.stage != Stage::full) {
    const bool keeps = m.keg.stage == Stage::purged;
    if (keeps) add(life, from, m.now + horizon, Phase::purged, true);
    return;
  }
  if (r.kind == ReadinessKind::ready_at && r.when) {
    const Instant ready = std::min(r.when->likely, m.now + longest_shown);
    add(life, from, ready, m.status.phase, true);
    from = std::max(from, ready);
  } else if (r.kind != ReadinessKind::ready_now) {
    return;  // nobody knows what becomes of it
  }
  Instant until = m.now + horizon;
  if (m.status.contents && m.status.contents->best_by) {
    const auto end = m.calendar.to_instant(LocalTime(*m.status.contents->best_by));
    if (end) until = std::min(*end + std::chrono::days(1), m.now + longest_shown);
  }
  add(life, from, until, Phase::ready, true);
}

}  // namespace

void tell_life(Moment& m) {
  add_past(m);
  if (m.status.registered_now) add_forecast(m);
}

}  // namespace ullage::cellar
