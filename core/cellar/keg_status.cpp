// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/cellar/keg_moment.h"

namespace ullage::cellar {

namespace {

std::optional<Message> leaks(const KegTimeline& keg) {
  if (keg.leak) {
    return keg.leak->where.empty() ? message(MessageKey::keg_lock_leak_seen)
                                   : message(MessageKey::keg_lock_leak_found, keg.leak->where);
  }
  const bool put_right = keg.tight_since && *keg.tight_since > keg.hold.last;
  if (keg.hold.kind == HoldKind::falls && !put_right) return message(MessageKey::keg_lock_leaking);
  return std::nullopt;
}

}  // namespace

void tell_facts(Moment& m) {
  const KegTimeline& keg = m.keg;
  KegStatus& s = m.status;
  s.record = keg.record;
  s.registered_now = keg.registered && keg.record.in_use;
  if (keg.place_history) s.place = keg.place_history->record;
  s.phase_since = keg.stage_since;
  s.contents = keg.contents;
  s.gas = keg.gas.now;
  s.preparation = keg.preparation;
  s.chemicals = keg.chemicals;
  s.hold_result = keg.hold.result;
  s.hold_result_from = keg.hold.study;
  s.hold_failed = keg.hold.kind == HoldKind::falls;
  s.leaks = leaks(keg);
  s.hold_study = m.full() ? keg.hold_with_beer : keg.hold.study;
  s.doesnt_fit = keg.doesnt_fit;
  s.cold_since = keg.cold_since;
  s.lent_to = keg.custody.lent_to;
  if (keg.custody.quarantine_reason) {
    s.quarantined = message(MessageKey::adv_held_back, *keg.custody.quarantine_reason);
    s.quarantined_since = keg.custody.quarantined_since;
  }
  if (keg.line) {
    s.line = keg.line->record;
    s.lock = keg.line->lock;
  }
  if (keg.warmth) s.beer_temperature = keg.warmth->at(m.now);
  if (m.full()) s.level = keg.level.at(m.now, keg.record.brimful);
  if (keg.stage != Stage::on_tap) return;
  if (const auto out = keg.level.runs_out(m.now, m.calendar)) {
    s.level.runs_out = out->when;
    s.level.drawn_today = out->drawn_today;
  }
}

void tell_phase(Moment& m) {
  const KegTimeline& keg = m.keg;
  Phase& phase = m.status.phase;
  switch (keg.stage) {
    case Stage::unknown:
      phase = Phase::unknown;
      return;
    case Stage::dirty:
      phase = Phase::dirty;
      return;
    case Stage::clean:
      phase = Phase::clean;
      return;
    case Stage::sanitised:
      phase = Phase::sanitised;
      return;
    case Stage::purged:
      phase = Phase::purged;
      return;
    case Stage::on_tap:
      phase = Phase::on_tap;
      return;
    case Stage::full:
      break;
  }
  const Co2State& co2 = m.status.co2;
  if (m.status.readiness.kind == ReadinessKind::ready_now) {
    phase = Phase::ready;
    if (m.status.readiness.when) m.status.phase_since = m.status.readiness.when->likely;
  } else if (co2.verdict == Co2Verdict::below && co2.in_range && !m.received()) {
    phase = Phase::carbonating;
  } else if (co2.verdict == Co2Verdict::within && m.reached && !m.received() &&
             keg.custody.quarantine_reason) {
    phase = Phase::ready;  // held back, but its CO2 is there
  } else {
    phase = Phase::conditioning;
  }
}

KegStatus keg_status_at(const KegTimeline& keg, Instant now, const LocalCalendar& calendar) {
  Moment m{keg, now, calendar, {}, {}, {}, {}, {}};
  tell_facts(m);
  tell_co2(m);
  tell_readiness(m);
  tell_phase(m);
  tell_words(m);
  tell_advice(m);
  tell_life(m);
  return std::move(m.status);
}

}  // namespace ullage::cellar
