// SPDX-License-Identifier: GPL-3.0-or-later
//
// Advice that stands on the CO2 estimate, each with the inputs it stands on and
// what would narrow it.
#include <algorithm>

#include "core/cellar/advice.h"
#include "core/cellar/suggest.h"
#include "core/units/present.h"

namespace ullage::cellar {

namespace {

constexpr std::chrono::hours drop_announced{12};
constexpr std::chrono::days overshoot_minded{14};
constexpr std::chrono::days longest_carbonation{21};
constexpr double gravity_still_to_fall = 0.003;
constexpr double worth_changing = 0.1;  // volumes beyond the range

std::vector<InputUsed> inputs_of(const Moment& m) {
  std::vector<InputUsed> out;
  const KegTimeline& keg = m.keg;
  if (m.status.gas.on && m.status.gas.set) {
    out.push_back({keg.gas.dial.empty()
                       ? message(MessageKey::input_gas, *m.status.gas.set)
                       : message(MessageKey::input_gas_on_dial, keg.gas.dial, *m.status.gas.set),
                   m.status.gas.since});
  }
  if (keg.warmth && m.status.place) {
    const WarmthStep& w = keg.warmth->steps.back();
    const auto read = keg.place_history ? keg.place_history->last_read : std::nullopt;
    out.push_back({message(w.read ? MessageKey::input_place_read : MessageKey::input_place_set,
                           m.status.place->name, w.place.value()),
                   w.read ? read : std::optional(w.at)});
  }
  out.insert(out.end(), keg.co2.inputs.begin(), keg.co2.inputs.end());
  if (m.status.co2.now) {
    if (const units::Contribution* widest = m.status.co2.now->largest()) {
      out.push_back({message(MessageKey::input_narrow, widest->source.name), {}});
    }
  }
  return out;
}

Advice co2_advice(const Moment& m, Severity severity, Message headline,
                  std::optional<Message> detail, std::optional<SuggestedTask> action) {
  Advice a = keg_advice(m, severity, std::move(headline), std::move(detail), std::move(action));
  a.inputs = inputs_of(m);
  if (m.status.gas.on) a.because_of.push_back(m.keg.gas.entry);
  return a;
}

SuggestedTask set_gas(const Moment& m, GaugePressure to) {
  return gas_task(m.status, to, GasPurpose::serving);
}

void advise_drop(const Moment& m, AdviceList& out) {
  if (!m.drop || m.now + drop_announced < m.drop->when.likely) return;
  const bool overdue = m.drop->when.likely <= m.now;
  const Message detail =
      message(MessageKey::adv_drop_detail, m.drop->if_not_vented, present(m.keg.range).high);
  out.push_back(co2_advice(m, overdue ? Severity::warning : Severity::advice,
                           message(overdue ? MessageKey::adv_drop_overdue : MessageKey::adv_drop,
                                   m.drop->to, m.drop->when.likely),
                           detail, set_gas(m, m.drop->to)));
}

void advise_above(const Moment& m, AdviceList& out) {
  const Co2State& co2 = m.status.co2;
  const units::Co2Volumes high = present(m.keg.range).high;
  const units::Estimate<units::Co2Volumes>& now = present(co2.now);
  const bool surely = now.low() > high;
  out.push_back(co2_advice(m, surely ? Severity::warning : Severity::advice,
                           message(MessageKey::adv_over_carbonated, now, high),
                           message(MessageKey::adv_over_detail),
                           keg_task<Vented>(m.keg.record.keg)));
}

// Gas that leads past the range, where nobody means it as a burst.
void advise_course(const Moment& m, AdviceList& out) {
  const Co2State& co2 = m.status.co2;
  const auto& should_be = m.status.gas.should_be;
  if (!m.status.gas.on || !co2.settles_at || m.drop || !should_be) return;
  const double settles = co2.settles_at->count();
  const Co2Range& range = present(m.keg.range);
  const Message detail = message(MessageKey::adv_set_to_detail, *should_be);
  if (settles > range.high.count() + worth_changing && co2.overshoots &&
      co2.overshoots->likely < m.now + overshoot_minded) {
    out.push_back(co2_advice(m, Severity::advice,
                             message(MessageKey::adv_too_high, *co2.settles_at, range.high), detail,
                             set_gas(m, *should_be)));
  } else if (settles < range.low.count() - worth_changing) {
    out.push_back(co2_advice(m, Severity::advice,
                             message(MessageKey::adv_too_low, *co2.settles_at, range.low), detail,
                             set_gas(m, *should_be)));
  }
}

void advise_below(const Moment& m, AdviceList& out) {
  const Co2State& co2 = m.status.co2;
  if (!m.ours() || m.keg.stage != Stage::full) return;
  if (!m.status.gas.on && !co2.in_range && m.status.gas.should_be) {
    out.push_back(co2_advice(m, Severity::advice, message(MessageKey::adv_no_gas),
                             message(MessageKey::adv_no_gas_detail, *m.status.gas.should_be),
                             set_gas(m, *m.status.gas.should_be)));
  } else if (m.status.gas.on && m.now - present(m.keg.filling).at > longest_carbonation) {
    out.push_back(co2_advice(m, Severity::advice,
                             message(MessageKey::adv_still_below,
                                     m.since(present(m.keg.filling).at), present(m.keg.range).low),
                             message(MessageKey::adv_still_below_detail),
                             keg_task<CarbonationReading>(m.keg.record.keg)));
  }
}

void advise_fermenting(const Moment& m, AdviceList& out) {
  if (!m.ours() || !m.keg.fill_gravity || !m.keg.contents) return;
  const auto& final_gravity = m.keg.contents->batch_record.final_gravity;
  if (!final_gravity ||
      m.keg.fill_gravity->count() <= final_gravity->count() + gravity_still_to_fall) {
    return;
  }
  Advice a =
      keg_advice(m, Severity::warning,
                 message(MessageKey::adv_gas_to_come, *m.keg.fill_gravity, *final_gravity),
                 message(MessageKey::adv_gas_to_come_detail), keg_task<Vented>(m.keg.record.keg));
  a.because_of.push_back(present(m.keg.filling).entry);
  out.push_back(std::move(a));
}

}  // namespace

void advise_co2(const Moment& m, AdviceList& out) {
  if (!m.full()) return;
  advise_fermenting(m, out);
  if (!m.status.co2.now || !m.keg.range) return;
  advise_drop(m, out);
  if (m.status.co2.verdict == Co2Verdict::above) {
    advise_above(m, out);
    return;
  }
  if (m.status.co2.verdict == Co2Verdict::below) advise_below(m, out);
  advise_course(m, out);
}

}  // namespace ullage::cellar
