// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/cellar/advice.h"

#include <algorithm>

#include "core/cellar/suggest.h"
#include "core/units/present.h"

namespace ullage::cellar {

namespace {

constexpr std::chrono::hours gas_left_on{12};
constexpr std::chrono::hours hold_reading_due{48};

// The entry that would most likely make the story fit.
std::optional<SuggestedTask> mending(MessageKey misfit, KegId keg) {
  switch (misfit) {
    case MessageKey::misfit_cleaned_while_full:
    case MessageKey::misfit_sanitised_while_full:
    case MessageKey::misfit_opened_while_full:
    case MessageKey::misfit_filled_while_full:
    case MessageKey::misfit_received_while_full:
      return keg_task<Emptied>(keg);
    case MessageKey::misfit_tapped_lent:
      return keg_task<Returned>(keg);
    case MessageKey::misfit_lent_on_tap:
      return keg_task<Untapped>(keg);
    case MessageKey::misfit_hops_out_none:
      return keg_task<HopsIn>(keg);
    default:
      return std::nullopt;
  }
}

void advise_misfits(const Moment& m, AdviceList& out) {
  for (const DoesntFit& d : m.keg.doesnt_fit) {
    Advice a = keg_advice(m, Severity::advice, d.why, message(MessageKey::adv_doesnt_fit_detail),
                          mending(d.why.key, m.keg.record.keg));
    a.because_of.push_back(d.entry);
    out.push_back(std::move(a));
  }
}

void advise_level(const Moment& m, AdviceList& out) {
  if (!m.full() || !m.status.level.cant_tell) return;
  const KegId keg = m.keg.record.keg;
  const MessageKey why = m.status.level.cant_tell->key;
  if (why == MessageKey::level_should_be_empty) {
    out.push_back(keg_advice(m, Severity::advice, message(MessageKey::adv_should_be_empty),
                             message(MessageKey::adv_should_be_detail), keg_task<Emptied>(keg)));
  } else if (why == MessageKey::level_reads_more || why == MessageKey::level_reads_less ||
             why == MessageKey::level_reading_impossible ||
             why == MessageKey::level_more_drawn_than_held) {
    out.push_back(keg_advice(m, Severity::advice, message(MessageKey::adv_level_conflict),
                             m.status.level.cant_tell, keg_task<LevelReading>(keg)));
  }
}

}  // namespace

Advice keg_advice(const Moment& m, Severity severity, Message headline,
                  std::optional<Message> detail, std::optional<SuggestedTask> action) {
  Advice a;
  a.severity = severity;
  a.about = subject(m.keg.record.keg);
  a.headline = std::move(headline);
  a.detail = std::move(detail);
  a.action = std::move(action);
  return a;
}

void advise_empty(const Moment& m, AdviceList& out) {
  const KegTimeline& keg = m.keg;
  const KegId id = keg.record.keg;
  if (keg.hold.kind == HoldKind::falls && keg.hold.result) {
    Advice a =
        keg_advice(m, Severity::warning,
                   message(m.full() ? MessageKey::bad_filled_leaky : MessageKey::adv_hold_failed),
                   Message{MessageKey::adv_hold_failed_detail, keg.hold.result->args},
                   keg_task<LeakTested>(id));
    if (keg.hold.entry) a.because_of.push_back(*keg.hold.entry);
    out.push_back(std::move(a));
  }
  if (m.full()) return;
  if (keg.hold.result && keg.hold.result->key == MessageKey::hold_gas_on && keg.gas.now.on) {
    out.push_back(keg_advice(m, Severity::advice,
                             message(MessageKey::adv_hold_again, keg.hold.pressure),
                             keg.hold.result, keg_task<GasOff>(id)));
  } else if (keg.hold.kind == HoldKind::cant_tell && m.now - keg.hold.last > hold_reading_due) {
    HoldReading again;
    again.pressure = keg.hold.pressure;
    out.push_back(
        keg_advice(m, Severity::advice, message(MessageKey::adv_hold_again, keg.hold.pressure),
                   message(MessageKey::adv_hold_again_detail), keg_task<HoldReading>(id, again)));
  }
  const GasOnKeg& gas = m.status.gas;
  const auto& set = gas.set;
  if (keg.stage == Stage::dirty && gas.on && set &&
      m.now - present(keg.stage_since) > gas_left_on) {
    out.push_back(keg_advice(m, Severity::advice,
                             message(MessageKey::adv_gas_on_empty, present(set)),
                             message(MessageKey::adv_gas_on_empty_detail), keg_task<GasOff>(id)));
  }
}

void tell_advice(Moment& m) {
  if (m.keg.registered && !m.keg.record.in_use) return;
  AdviceList advice = m.keg.faults;
  advise_custody(m, advice);
  advise_co2(m, advice);
  advise_empty(m, advice);
  advise_level(m, advice);
  advise_misfits(m, advice);
  std::stable_sort(advice.begin(), advice.end(),
                   [](const Advice& a, const Advice& b) { return a.severity > b.severity; });
  m.status.advice = std::move(advice);
}

}  // namespace ullage::cellar
