// SPDX-License-Identifier: GPL-3.0-or-later
//
// Advice about what may not be served, dates, and who has the keg.
#include "core/cellar/advice.h"
#include "core/cellar/beers_status.h"
#include "core/cellar/suggest.h"
#include "core/units/present.h"

namespace ullage::cellar {

namespace {

constexpr std::chrono::days best_by_near{7};
constexpr std::chrono::days hops_too_long{10};  // sources disagree, 2 to 10 days

void advise_not_to_serve(const Moment& m, AdviceList& out) {
  const KegTimeline& keg = m.keg;
  const KegId id = keg.record.keg;
  if (keg.recalled && m.full()) {
    Quarantined hold;
    hold.reason = keg.recall_reason;
    Advice a =
        keg_advice(m, Severity::danger,
                   message(MessageKey::adv_recalled, present(keg.contents).batch_record.name),
                   message(MessageKey::adv_recalled_detail, keg.recall_reason),
                   keg.custody.quarantine_reason ? std::nullopt
                                                 : std::optional(keg_task<Quarantined>(id, hold)));
    a.because_of.push_back(*keg.recalled);
    out.push_back(std::move(a));
  }
  if (m.status.lock && keg.stage == Stage::on_tap) {
    const LineLock& lock = *m.status.lock;
    const std::string agent = lock.agent.empty() ? plain_word(lock.agent_kind) : lock.agent;
    Advice a = keg_advice(m, Severity::danger, message(MessageKey::adv_line_locked, lock.line_name),
                          message(MessageKey::adv_line_locked_detail, agent, lock.since, lock.by),
                          line_task<LineReleased>(lock.line));
    a.because_of.push_back(lock.entry);
    out.push_back(std::move(a));
  }
  if (keg.custody.quarantine_reason) {
    out.push_back(keg_advice(
        m, Severity::warning, message(MessageKey::adv_held_back, *keg.custody.quarantine_reason),
        message(MessageKey::adv_held_back_detail, keg.custody.quarantined_since),
        keg_task<Cleared>(id)));
  }
  if (m.full() && keg.filling && keg.filling->seal_intact == false) {
    out.push_back(keg_advice(m, Severity::warning, message(MessageKey::adv_seal_broken),
                             message(MessageKey::adv_seal_detail), keg_task<Quarantined>(id)));
  }
}

void advise_dates(const Moment& m, AdviceList& out) {
  if (!m.full() || !m.status.contents || !m.status.contents->best_by) return;
  const Date best_by = *m.status.contents->best_by;
  BestByChanged change;
  change.batch = m.status.contents->batch;
  change.best_by = best_by;
  const SuggestedTask action{"best_by_changed", subject(change.batch), Payload(change)};
  if (best_by < m.today()) {
    out.push_back(keg_advice(m, Severity::warning, message(MessageKey::adv_past_best_by, best_by),
                             message(MessageKey::adv_past_detail), action));
  } else if (best_by <= m.today() + best_by_near) {
    out.push_back(keg_advice(m, Severity::advice, message(MessageKey::adv_near_best_by, best_by),
                             message(MessageKey::adv_near_detail)));
  }
}

void advise_on_tap(const Moment& m, AdviceList& out) {
  const KegTimeline& keg = m.keg;
  if (keg.stage != Stage::on_tap || !keg.on_line) return;
  const KegId id = keg.record.keg;
  if (keg.on_line->displaced_by) {
    out.push_back(keg_advice(m, Severity::advice,
                             message(MessageKey::adv_displaced, present(keg.line).record.name),
                             message(MessageKey::adv_displaced_detail), keg_task<Untapped>(id)));
  }
  const auto limit = keeps_on_tap(storage_at(m.status.beer_temperature
                                                 ? std::optional(m.status.beer_temperature->value())
                                                 : std::nullopt));
  if (m.now - keg.on_line->since > limit) {
    out.push_back(keg_advice(m, Severity::advice,
                             message(MessageKey::adv_long_on_tap, m.since(keg.on_line->since),
                                     units::days(static_cast<double>(limit.count()))),
                             message(MessageKey::adv_long_on_tap_detail)));
  }
}

}  // namespace

void advise_custody(const Moment& m, AdviceList& out) {
  const KegTimeline& keg = m.keg;
  const KegId id = keg.record.keg;
  advise_not_to_serve(m, out);
  if (keg.custody.lent_to && keg.custody.due_back && *keg.custody.due_back < m.today()) {
    out.push_back(keg_advice(
        m, Severity::advice,
        message(MessageKey::adv_lent_overdue, *keg.custody.lent_to, present(keg.custody.due_back)),
        message(MessageKey::adv_lent_detail), keg_task<Returned>(id)));
  }
  advise_dates(m, out);
  advise_on_tap(m, out);
  if (m.full() && keg.hops_since && m.now - *keg.hops_since > hops_too_long) {
    out.push_back(keg_advice(m, Severity::advice,
                             message(MessageKey::adv_hops_long, m.since(*keg.hops_since)),
                             message(MessageKey::adv_hops_detail), keg_task<HopsOut>(id)));
  }
}

}  // namespace ullage::cellar
