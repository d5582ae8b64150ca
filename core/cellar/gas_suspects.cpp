// SPDX-License-Identifier: GPL-3.0-or-later
//
// Where to look first when gas is lost.
// Rank: a leak somebody found and nobody put right, a keg whose hold test failed,
// then what was touched shortly before the loss showed, then what was never
// tested. Common practice; no source measures how often each is to blame.
#include <algorithm>
#include <set>

#include "core/cellar/gas_account.h"
#include "core/cellar/suggest.h"
#include "core/units/present.h"

namespace ullage::cellar {

namespace {

enum class Rank { leak_found, hold_failed, touched, untested, rest };
constexpr std::chrono::days touched_shortly_before{2};

struct Ranked {
  Rank rank = Rank::rest;
  GasSuspect suspect;
};

struct TouchedWhen {
  const GasAccount& account;
  [[nodiscard]] bool operator()(Instant at) const {
    if (!account.loss_from || !account.loss_to) return false;
    return at >= *account.loss_from - touched_shortly_before && at <= *account.loss_to;
  }
};

template <class Id>
SuggestedTask leak_test(std::optional<Id> LeakTested::* which, Id id) {
  LeakTested prefill;
  prefill.*which = id;
  return {std::string(LeakTested::kind), subject(id), Payload(prefill)};
}

// The last leak test of a thing: nullptr when there was none.
const Entry* last_leak_test(SubjectRef about, Lookup& lookup) {
  const Entry* last = nullptr;
  for (const Entry* e : lookup.story(about)) {
    if (holds_alternative<LeakTested>(e->payload)) last = e;
  }
  return last;
}

Message leak_words(const std::string& name, const std::string& where) {
  return where.empty() ? message(MessageKey::suspect_leak_seen, name)
                       : message(MessageKey::suspect_leak_found, name, where);
}

// What works on a keg's joints, and how it is said; nothing of an entry that does not.
std::optional<MessageKey> handled(const Payload& p) {
  if (holds_alternative<GasSet>(p)) return MessageKey::suspect_touched;
  if (holds_alternative<Tapped>(p) || holds_alternative<Untapped>(p))
    return MessageKey::suspect_coupled;
  if (holds_alternative<Moved>(p)) return MessageKey::suspect_moved;
  if (const auto* looked = get_if<Inspected>(&p))
    return looked->seals_renewed ? std::optional(MessageKey::suspect_seals) : std::nullopt;
  const bool opened = holds_alternative<Filled>(p) || holds_alternative<Primed>(p) ||
                      holds_alternative<HopsIn>(p) || holds_alternative<HopsOut>(p) ||
                      holds_alternative<Cleaned>(p) || holds_alternative<Sanitised>(p);
  return opened ? std::optional(MessageKey::suspect_opened) : std::nullopt;
}

struct Handling {
  MessageKey how = MessageKey::suspect_touched;
  Instant at{};
  Instant last{};  // with the gas put back on after it
};
// When a keg was last worked on: within the time asked about, else at all.
struct LastHandled {
  std::optional<Handling> shortly_before, ever;
};
LastHandled last_handled(const BranchKeg& keg, const TouchedWhen& touched, Lookup& lookup) {
  LastHandled out;
  for (const Entry* e : lookup.story(subject(keg.keg))) {
    const auto how = handled(e->payload);
    if (!how) continue;
    const Instant at = e->header.happened_at;
    out.ever = Handling{*how, at, at};
    if (!touched(at)) continue;
    auto& before = out.shortly_before;
    // Who opened it puts the gas back on: the lid is the likelier place.
    const bool back_on =
        *how == MessageKey::suspect_touched && before &&
        (before->how == MessageKey::suspect_opened || before->how == MessageKey::suspect_seals);
    if (back_on) {
      before->last = at;
    } else {
      before = out.ever;
    }
  }
  if (!out.ever) out.ever = Handling{MessageKey::suspect_touched, keg.since, keg.since};
  return out;
}

Ranked judge_keg(const BranchKeg& keg, const KegTimeline& timeline, const TouchedWhen& touched,
                 Lookup& lookup) {
  Ranked out;
  out.suspect.about = subject(keg.keg);
  out.suspect.check = leak_test(&LeakTested::keg, keg.keg);
  const LastHandled handling = last_handled(keg, touched, lookup);
  out.suspect.touched = present(handling.ever).at;
  const auto& tight = timeline.tight_since;
  // Who fits new seals looks the keg over: that is no test of them.
  const auto tested_since = [&](const Handling& h) {
    return tight && (h.how == MessageKey::suspect_seals ? *tight > h.last : *tight >= h.last);
  };
  const bool held = keg.hold == HoldKind::holds;
  const bool failed = keg.hold == HoldKind::falls && !(tight && *tight > timeline.hold.last);
  if (timeline.leak) {
    out.rank = Rank::leak_found;
    out.suspect.touched = timeline.leak->at;
    out.suspect.why = leak_words(keg.tag, timeline.leak->where);
  } else if (failed) {
    out.rank = Rank::hold_failed;
    out.suspect.why = message(MessageKey::suspect_hold_failed, keg.tag);
  } else if (handling.shortly_before && !tested_since(*handling.shortly_before)) {
    const Handling& last = *handling.shortly_before;
    const bool held_before = held && last.how == MessageKey::suspect_touched;
    out.rank = Rank::touched;
    out.suspect.touched = last.at;
    out.suspect.why =
        message(held_before ? MessageKey::suspect_touched_held : last.how, keg.tag, last.at);
  } else if (!held && !tested_since(*handling.ever)) {
    out.rank = Rank::untested;
    out.suspect.why = message(MessageKey::suspect_untested, keg.tag);
  } else {
    out.suspect.why = message(MessageKey::suspect_rest, keg.tag);
  }
  return out;
}

Ranked judge_joint(const RegulatorRecord& regulator, const TouchedWhen& touched, Lookup& lookup) {
  Ranked out;
  const SubjectRef about = subject(regulator.regulator);
  out.suspect.about = about;
  out.suspect.check = leak_test(&LeakTested::regulator, regulator.regulator);
  const Entry* changed = nullptr;
  for (const Entry* e : lookup.story(about)) {
    if (holds_alternative<BottleChanged>(e->payload)) changed = e;
  }
  if (changed) out.suspect.touched = changed->header.happened_at;
  const Entry* test = last_leak_test(about, lookup);
  const LeakTested* result = test ? &get<LeakTested>(test->payload) : nullptr;
  const bool tight_since = result && !result->leak_found &&
                           (!changed || test->header.happened_at >= changed->header.happened_at);
  if (result && result->leak_found) {
    out.rank = Rank::leak_found;
    out.suspect.touched = test->header.happened_at;
    out.suspect.why = leak_words(regulator.name, result->where);
  } else if (changed && !tight_since) {
    out.rank = touched(changed->header.happened_at) ? Rank::touched : Rank::untested;
    out.suspect.why =
        message(MessageKey::suspect_bottle_changed, regulator.name, changed->header.happened_at);
  } else if (!tight_since) {
    out.rank = Rank::untested;
    out.suspect.why = message(MessageKey::suspect_joint, regulator.name);
  } else {
    out.suspect.why = message(MessageKey::suspect_rest, regulator.name);
  }
  return out;
}

// A leak that somebody found on a bottle or a line, and no test since found gone.
template <class Id>
void add_leak(std::vector<Ranked>& to, std::optional<Id> LeakTested::* which, Id id,
              const std::string& name, Lookup& lookup) {
  const Entry* test = last_leak_test(subject(id), lookup);
  if (!test) return;
  const auto& result = get<LeakTested>(test->payload);
  if (!result.leak_found) return;
  to.push_back({Rank::leak_found,
                {subject(id), leak_words(name, result.where), test->header.happened_at,
                 leak_test(which, id)}});
}

// Lines that its regulators drive or its kegs are on.
std::set<LineId> lines_on(const GasAccount& account, const GasAccountInput& in, Lookup& lookup) {
  std::set<LineId> out;
  for (const GasBranch& b : account.branches) {
    const RegulatorId regulator = b.regulator.regulator;
    for (const Entry* e : lookup.story(subject(regulator))) {
      const auto* line = get_if<LineRecord>(&e->payload);
      if (!line) continue;
      const auto now = lookup.find(line->line);
      if (now && now->regulator == regulator) out.insert(line->line);
    }
  }
  for_each_keg(account, [&](const BranchKeg& k) {
    if (const auto& on = in.timeline(k.keg).on_line) out.insert(on->line);
  });
  return out;
}

}  // namespace

void tell_suspects(GasAccount& out, const GasAccountInput& in, Lookup& lookup) {
  const TouchedWhen touched{out};
  std::vector<Ranked> ranked;
  for (const BottleRecord& b : out.bottles)
    add_leak(ranked, &LeakTested::bottle, b.bottle, b.name, lookup);
  for (const LineId id : lines_on(out, in, lookup)) {
    const auto line = lookup.find(id);
    if (line && line->in_use) add_leak(ranked, &LeakTested::line, id, line->name, lookup);
  }
  for (const GasBranch& b : out.branches)
    ranked.push_back(judge_joint(b.regulator, touched, lookup));
  for_each_keg(out, [&](const BranchKeg& k) {
    ranked.push_back(judge_keg(k, in.timeline(k.keg), touched, lookup));
  });
  std::stable_sort(ranked.begin(), ranked.end(), [](const Ranked& a, const Ranked& b) {
    if (a.rank != b.rank) return a.rank < b.rank;
    return a.suspect.touched.value_or(Instant::min()) > b.suspect.touched.value_or(Instant::min());
  });
  for (const Ranked& r : ranked) {
    if (out.alarm || r.rank == Rank::leak_found) out.suspects.push_back(r.suspect);
    if (r.rank == Rank::leak_found && r.suspect.about.kind != SubjectKind::keg)
      out.leaks.push_back(r.suspect);
  }
  if (out.alarm) plan_isolation(out, lookup);
}

// Of a keg its own story tells.
void advise_leaks(const GasAccount& account, std::vector<Advice>& out) {
  for (const GasSuspect& leak : account.leaks) {
    Advice a;
    a.severity = Severity::warning;
    a.about = leak.about;
    a.headline = leak.why;
    a.detail = message(MessageKey::adv_gas_loss_detail);
    a.action = leak.check;
    out.push_back(std::move(a));
  }
}

}  // namespace ullage::cellar
