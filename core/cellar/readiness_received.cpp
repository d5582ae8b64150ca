// SPDX-License-Identifier: GPL-3.0-or-later
#include <algorithm>

#include "core/cellar/readiness.h"
#include "core/units/present.h"

namespace ullage::cellar {

namespace {

constexpr double cold_enough_over_place = 2.0;  // K
constexpr double came_in_cold = 3.0;            // K above its place: only has to settle

// How long it has to stand, from the temperature it came with.
Window rest_in_cold(const Moment& m) {
  const Instant from = present(m.keg.cold_since);
  const auto& arrival = present(m.keg.filling).arrival;
  Window w{from + shortest_rest, from + usual_rest, from + longest_rest};
  if (!arrival || !m.keg.warmth) return w;
  const double place = units::in_celsius(m.keg.warmth->place_now().value());
  if (units::in_celsius(*arrival) - place <= came_in_cold) {
    w.likely = w.latest.emplace(from + shortest_rest);
    return w;
  }
  // Warm on arrival: until the model has it cold, not under 24 h.
  const auto cold = m.keg.warmth->comes_to(units::celsius(place + cold_enough_over_place), from);
  if (!cold) return w;
  w.earliest = std::max(w.earliest, cold->earliest);
  w.likely = std::max(w.earliest, cold->likely);
  w.latest = std::max({w.likely, present(cold->latest), from + usual_rest});
  return w;
}

void reasons_of_delivery(Moment& m, bool rested) {
  const Filling& filling = present(m.keg.filling);
  std::vector<Message>& reasons = m.status.readiness.reasons;
  if (m.keg.cold_since) {
    reasons.push_back(message(MessageKey::reason_in_cold, m.since(*m.keg.cold_since)));
  }
  reasons.push_back(filling.arrival ? message(MessageKey::reason_arrived, *filling.arrival)
                                    : message(MessageKey::reason_arrival_unread));
  if (!rested) reasons.push_back(message(MessageKey::reason_settle_rule));
  const auto best_by = m.keg.contents ? m.keg.contents->best_by : filling.best_by;
  reasons.push_back(best_by ? message(MessageKey::reason_best_by, *best_by)
                            : message(MessageKey::reason_no_best_by));
  reasons.push_back(message(filling.seal_intact == true ? MessageKey::reason_seal_intact
                                                        : MessageKey::reason_seal_unknown));
  const Co2State& co2 = m.status.co2;
  if (co2.now && m.keg.range) {
    reasons.push_back(
        message(MessageKey::reason_co2, *co2.now, m.keg.range->low, m.keg.range->high));
  }
}

void stop(Moment& m, Message why, Message to_do) {
  m.status.readiness.kind = ReadinessKind::blocked;
  m.status.readiness.headline = std::move(why);
  m.status.readiness.to_do = std::move(to_do);
}

}  // namespace

void judge_received(Moment& m) {
  Readiness& r = m.status.readiness;
  const auto best_by = m.keg.contents ? m.keg.contents->best_by : present(m.keg.filling).best_by;
  bool rested = false;
  if (present(m.keg.filling).seal_intact == false) {
    stop(m, message(MessageKey::blocked_seal), message(MessageKey::next_decide));
  } else if (best_by && *best_by < m.today()) {
    stop(m, message(MessageKey::blocked_past_best_by, *best_by), message(MessageKey::next_decide));
  } else if (!m.keg.cold_since) {
    if (m.keg.warmth) {
      stop(m, message(MessageKey::blocked_warm), message(MessageKey::next_put_in_cold));
    } else {
      r.kind = ReadinessKind::cant_tell;
      r.headline = message(MessageKey::cant_tell_cold);
      r.to_do = what_would_tell(m);
    }
  } else {
    const Window rest = rest_in_cold(m);
    m.settled = rest;
    rested = rest.likely <= m.now;
    r.when = rest;
    if (rested) {
      r.kind = ReadinessKind::ready_now;
      r.headline = message(MessageKey::ready_since, rest.likely);
    } else {
      r.kind = ReadinessKind::ready_at;
      r.headline = message(MessageKey::ready_at, rest);
      r.to_do = message(MessageKey::next_leave_cold, rest.likely);
    }
  }
  reasons_of_delivery(m, rested);
}

}  // namespace ullage::cellar
