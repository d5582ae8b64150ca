// SPDX-License-Identifier: GPL-3.0-or-later
//
// The two short lines of a keg's row: its state, and its next step.
#include "core/cellar/due_work.h"
#include "core/cellar/keg_moment.h"
#include "core/cellar/readiness.h"
#include "core/units/present.h"

namespace ullage::cellar {

namespace {

struct Words {
  Message state;
  std::optional<Message> next;
};

bool sealed_by_us(const Moment& m) { return m.keg.record.owner != Owner::supplier; }

Words empty_words(const Moment& m) {
  const KegTimeline& keg = m.keg;
  if (keg.unfit) return {message(MessageKey::state_not_fit), message(MessageKey::next_inspect)};
  if (keg.hold.kind == HoldKind::falls) {
    return {message(MessageKey::state_fix_seal),
            keg.hold.result && keg.hold.result->args.size() == 3
                ? std::optional(Message{MessageKey::next_loses, {keg.hold.result->args[2]}})
                : std::nullopt};
  }
  switch (keg.stage) {
    case Stage::clean:
      return {message(MessageKey::state_clean), message(MessageKey::next_sanitise)};
    case Stage::sanitised:
      return {message(MessageKey::state_sanitised), message(MessageKey::next_purge)};
    case Stage::purged: {
      if (keg.hold.kind == HoldKind::holds) {
        return {message(MessageKey::state_ready_to_fill),
                message(MessageKey::next_holds, keg.hold.pressure,
                        between(keg.hold.first, keg.hold.last))};
      }
      return {message(MessageKey::state_ready_to_fill), message(MessageKey::next_fill)};
    }
    default:
      break;
  }
  if (!sealed_by_us(m)) {
    return {message(MessageKey::state_go_back), message(MessageKey::next_send_back)};
  }
  const Message state =
      message(keg.only_rinsed ? MessageKey::state_rinsed : MessageKey::state_dirty);
  if (keg.gas.now.unvented) {
    return {state, message(MessageKey::next_vent_and_clean, *keg.gas.now.unvented)};
  }
  return {state, message(MessageKey::next_clean)};
}

Words on_tap_words(const Moment& m) {
  const KegTimeline& keg = m.keg;
  const LineRecord& line = present(keg.line).record;
  Words w{message(MessageKey::state_on_tap, line.tap.empty() ? line.name : line.tap), {}};
  if (m.status.lock) {
    w.state = message(MessageKey::state_do_not_serve, line.name);
    w.next = message(MessageKey::next_release_line, line.name);
  } else if (const auto& out = m.status.level.runs_out) {
    w.next = out->likely <= m.now ? message(MessageKey::next_empty_soon)
                                  : message(MessageKey::next_empty_about, *out);
  } else if (m.status.level.cant_tell) {
    w.next = message(MessageKey::next_read_level);
  }
  return w;
}

std::optional<Message> use_by(const Moment& m) {
  if (!m.status.contents || !m.status.contents->best_by) return std::nullopt;
  return message(MessageKey::next_use_by, *m.status.contents->best_by);
}

std::optional<Message> waiting_next(const Moment& m) {
  if (m.drop) {
    return m.drop->when.likely <= m.now
               ? message(MessageKey::next_drop_now, m.drop->to)
               : message(MessageKey::next_drop_and_vent, m.drop->to, m.drop->when.likely);
  }
  if (m.status.readiness.to_do) return m.status.readiness.to_do;
  if (m.status.gas.on && m.status.gas.set) {
    return message(MessageKey::next_holding, *m.status.gas.set);
  }
  return std::nullopt;
}

Message blocked_state(const Readiness& r) {
  switch (r.headline.key) {
    case MessageKey::blocked_too_high:
      return message(MessageKey::state_over_range);
    case MessageKey::blocked_hops:
      return message(MessageKey::state_hops_in);
    case MessageKey::blocked_past_best_by:
      return message(MessageKey::state_past_best_by);
    case MessageKey::blocked_seal:
      return message(MessageKey::state_seal_broken);
    case MessageKey::blocked_warm:
      return message(MessageKey::state_warm);
    default:
      return message(MessageKey::state_below_range);
  }
}

Words full_words(const Moment& m) {
  const Readiness& r = m.status.readiness;
  switch (r.kind) {
    case ReadinessKind::ready_now:
      return {r.when ? message(MessageKey::state_ready_since, r.when->likely)
                     : message(MessageKey::state_ready),
              m.drop ? waiting_next(m) : (use_by(m) ? use_by(m) : message(MessageKey::next_tap))};
    case ReadinessKind::ready_at:
      return {message(MessageKey::state_ready_at, present(r.when)), waiting_next(m)};
    case ReadinessKind::blocked:
      return {blocked_state(r), r.to_do};
    default:
      return {message(MessageKey::state_cant_tell), r.to_do};
  }
}

Words overlaid(const Moment& m) {
  const KegTimeline& keg = m.keg;
  if (keg.registered && !keg.record.in_use) return {message(MessageKey::state_retired), {}};
  if (keg.recalled && m.full()) {
    return {message(MessageKey::state_recalled), message(MessageKey::next_decide)};
  }
  if (keg.custody.quarantine_reason) {
    return {message(MessageKey::state_held_back), message(MessageKey::next_decide)};
  }
  if (keg.custody.lent_to) {
    std::optional<Message> next;
    if (keg.custody.due_back) next = message(MessageKey::next_due_back, *keg.custody.due_back);
    return {message(MessageKey::state_lent, *keg.custody.lent_to), next};
  }
  if (keg.stage == Stage::on_tap && keg.line) return on_tap_words(m);
  if (keg.stage == Stage::full) return full_words(m);
  if (keg.stage == Stage::unknown) {
    return {message(MessageKey::state_unknown), message(MessageKey::next_say_contents)};
  }
  return empty_words(m);
}

}  // namespace

void tell_words(Moment& m) {
  Words w = overlaid(m);
  m.status.state = std::move(w.state);
  m.status.next_step = std::move(w.next);
}

void tell_next_by_line(KegStatus& keg, const LineStatus& line, Date today) {
  if (keg.state.key != MessageKey::state_on_tap || !line.clean_due || *line.clean_due > today)
    return;
  const std::string& name = line.record.name;
  keg.next_step = *line.clean_due == today
                      ? message(MessageKey::next_line_due, name)
                      : message(MessageKey::next_line_overdue, name, *line.clean_due);
}

}  // namespace ullage::cellar
