// SPDX-License-Identifier: GPL-3.0-or-later
//
// Ready now, ready at a time, blocked because, or can't tell: with the reasons.
// A keg we filled is judged by its CO2, its temperature and its hops; a
// delivered one by date, seal and hours in the cold (readiness_received.cpp).
#include "core/cellar/readiness.h"

#include <algorithm>

#include "core/cellar/suggest.h"
#include "core/units/present.h"

namespace ullage::cellar {

namespace {

bool blocked(Moment& m, Message why, std::optional<Message> to_do) {
  Readiness& r = m.status.readiness;
  r.kind = ReadinessKind::blocked;
  r.headline = std::move(why);
  r.to_do = std::move(to_do);
  return true;
}

// What stops any keg, however good the beer.
bool stopped(Moment& m) {
  const KegTimeline& keg = m.keg;
  if (keg.custody.quarantine_reason) {
    return blocked(m, message(MessageKey::blocked_held_back, *keg.custody.quarantine_reason),
                   message(MessageKey::next_decide));
  }
  if (keg.recalled) {
    return blocked(m, message(MessageKey::blocked_recalled, keg.recall_reason),
                   message(MessageKey::next_decide));
  }
  if (m.status.lock && keg.stage == Stage::on_tap) {
    const std::string agent =
        m.status.lock->agent.empty() ? plain_word(m.status.lock->agent_kind) : m.status.lock->agent;
    return blocked(m, message(MessageKey::blocked_line_locked, m.status.lock->line_name, agent),
                   message(MessageKey::next_release_line, m.status.lock->line_name));
  }
  if (keg.custody.lent_to) {
    return blocked(m, message(MessageKey::blocked_lent, *keg.custody.lent_to), {});
  }
  return false;
}

void cant_tell(Moment& m, Message why, Message to_do) {
  Readiness& r = m.status.readiness;
  r.kind = ReadinessKind::cant_tell;
  r.headline = std::move(why);
  r.to_do = std::move(to_do);
}

void give_reasons(Moment& m) {
  const KegTimeline& keg = m.keg;
  std::vector<Message>& reasons = m.status.readiness.reasons;
  const Co2State& co2 = m.status.co2;
  if (co2.now && keg.range) {
    reasons.push_back(message(MessageKey::reason_co2, *co2.now, keg.range->low, keg.range->high));
    if (keg.range->from_style) {
      reasons.push_back(
          message(MessageKey::reason_range_of_style, present(keg.contents).beer.style));
    }
  } else if (co2.cant_tell) {
    reasons.push_back(*co2.cant_tell);
  }
  if (m.status.gas.on && m.status.gas.set && m.status.beer_temperature) {
    reasons.push_back(
        message(MessageKey::reason_gas, *m.status.gas.set, *m.status.beer_temperature));
  }
  if (m.drop) reasons.push_back(message(MessageKey::reason_drop, m.drop->to, m.drop->when.likely));
  if (co2.overshoots && keg.range) {
    reasons.push_back(
        message(MessageKey::reason_overshoots, keg.range->high, co2.overshoots->likely));
  }
  if (m.cooled) {
    reasons.push_back(message(MessageKey::reason_cooling, present(m.status.beer_temperature),
                              present(keg.warmth).place_now().value()));
  }
  const bool unprepared = std::any_of(keg.faults.begin(), keg.faults.end(), [](const Advice& a) {
    return a.headline.key == MessageKey::bad_filled_uncleaned ||
           a.headline.key == MessageKey::bad_filled_unsanitised;
  });
  if (unprepared) reasons.push_back(message(MessageKey::reason_unprepared));
}

void find_cooling(Moment& m) {
  const auto& warmth = m.keg.warmth;
  if (!warmth || !warmth->start_known || !m.status.beer_temperature) return;
  const double place = units::in_celsius(warmth->place_now().value());
  const double beer = units::in_celsius(m.status.beer_temperature->value());
  if (beer - place <= near_its_place) return;
  m.cooled = warmth->comes_to(units::celsius(place + near_its_place), m.now);
}

void below_range(Moment& m) {
  const Co2State& co2 = m.status.co2;
  const auto& should_be = m.status.gas.should_be;
  Readiness& r = m.status.readiness;
  const std::optional<Message> set_gas = should_be ? message(MessageKey::next_set_gas, *should_be)
                                                   : message(MessageKey::next_set_gas_to);
  if (co2.in_range) {
    Window when = *co2.in_range;
    if (m.cooled) when = later_of(when, *m.cooled);
    r.kind = ReadinessKind::ready_at;
    r.when = when;
    r.headline = message(MessageKey::ready_at, when);
    if (m.drop) r.to_do = message(MessageKey::next_drop_and_vent, m.drop->to, m.drop->when.likely);
  } else if (!m.status.gas.on) {
    blocked(m, message(MessageKey::blocked_no_gas), set_gas);
  } else {
    blocked(m,
            message(MessageKey::blocked_too_low, present(co2.settles_at), present(m.keg.range).low),
            set_gas);
  }
}

void within_range(Moment& m) {
  Readiness& r = m.status.readiness;
  if (m.keg.hops_since) {
    blocked(m, message(MessageKey::blocked_hops, *m.keg.hops_since),
            message(MessageKey::next_hops_out));
    return;
  }
  if (m.cooled) {
    r.kind = ReadinessKind::ready_at;
    r.when = m.cooled;
    r.headline = message(MessageKey::ready_at, *m.cooled);
    return;
  }
  r.kind = ReadinessKind::ready_now;
  if (m.reached) {
    r.when = Window{*m.reached, *m.reached, m.reached};
    r.headline = message(MessageKey::ready_since, *m.reached);
  } else {
    r.headline = message(MessageKey::ready_now);
  }
}

bool filled_on_top(const KegTimeline& keg) {
  return std::any_of(keg.faults.begin(), keg.faults.end(), [](const Advice& a) {
    return a.headline.key == MessageKey::bad_filled_not_empty;
  });
}

void judge_ours(Moment& m) {
  const Co2State& co2 = m.status.co2;
  if (filled_on_top(m.keg)) {
    cant_tell(m, message(MessageKey::cant_tell_mixed), message(MessageKey::next_decide));
  } else if (!co2.now) {
    cant_tell(m, message(MessageKey::cant_tell_co2), what_would_tell(m));
  } else if (!m.keg.range) {
    const std::string beer = m.keg.contents ? m.keg.contents->beer.name : std::string();
    cant_tell(m, message(MessageKey::cant_tell_range, beer),
              message(MessageKey::next_give_range, beer));
  } else if (co2.verdict == Co2Verdict::below) {
    below_range(m);
  } else if (co2.verdict == Co2Verdict::above) {
    blocked(m, message(MessageKey::blocked_too_high, *co2.now, m.keg.range->high),
            message(MessageKey::next_vent_down));
  } else {
    within_range(m);
  }
}

}  // namespace

Window later_of(const Window& a, const Window& b) {
  Window out;
  out.earliest = std::max(a.earliest, b.earliest);
  out.likely = std::max(a.likely, b.likely);
  if (a.latest && b.latest) out.latest = std::max(*a.latest, *b.latest);
  return out;
}

Message what_would_tell(const Moment& m) {
  const auto& why = m.status.co2.cant_tell;
  if (!m.keg.place) return message(MessageKey::next_say_place);
  if (!m.keg.warmth) {
    const std::string place = m.status.place ? m.status.place->name : std::string();
    return message(MessageKey::next_read_temperature, place);
  }
  if (why && why->key == MessageKey::co2_not_stated) return message(MessageKey::next_say_co2);
  return message(MessageKey::next_read_co2);
}

void tell_readiness(Moment& m) {
  Readiness& r = m.status.readiness;
  r.headline = message(MessageKey::ready_nothing);
  if (!m.full()) return;
  find_cooling(m);
  if (stopped(m)) {
    give_reasons(m);
    return;
  }
  if (m.keg.stage == Stage::on_tap) {
    r.kind = ReadinessKind::ready_now;
    r.headline = message(MessageKey::ready_on_tap);
    give_reasons(m);
    return;
  }
  if (m.received()) {
    judge_received(m);
  } else {
    judge_ours(m);
    give_reasons(m);
  }
}

}  // namespace ullage::cellar
