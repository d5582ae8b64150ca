// SPDX-License-Identifier: GPL-3.0-or-later
//
// Where to look first when gas is lost, and in which order to shut branches off.
// Rank: a leak somebody found and nobody put right, a keg whose hold test failed,
// then what was touched shortly before the loss showed, then what was never
// tested. Common practice; no source measures how often each is to blame.
#include <algorithm>
#include <cmath>

#include "core/cellar/gas_account.h"
#include "core/cellar/suggest.h"

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

SuggestedTask leak_test(std::optional<KegId> keg, std::optional<RegulatorId> regulator) {
  LeakTested prefill;
  prefill.keg = keg;
  prefill.regulator = regulator;
  const SubjectRef about = keg ? subject(*keg) : subject(*regulator);
  return {std::string(LeakTested::kind), about, Payload(prefill)};
}

// The last leak test of a thing: nullptr when there was none.
const Entry* last_leak_test(SubjectRef about, Lookup& lookup) {
  const Entry* last = nullptr;
  for (const Entry* e : lookup.story(about)) {
    if (holds_alternative<LeakTested>(e->payload)) last = e;
  }
  return last;
}

Ranked judge_keg(const BranchKeg& keg, const TouchedWhen& touched, Lookup& lookup) {
  Ranked out;
  out.suspect.about = subject(keg.keg);
  out.suspect.touched = keg.since;
  out.suspect.check = leak_test(keg.keg, {});
  const Entry* test = last_leak_test(subject(keg.keg), lookup);
  const LeakTested* result = test ? &get<LeakTested>(test->payload) : nullptr;
  const bool tight_since = result && !result->leak_found && test->header.happened_at >= keg.since;
  if (result && result->leak_found) {
    out.rank = Rank::leak_found;
    out.suspect.why = message(MessageKey::suspect_leak_found, keg.tag, result->where);
  } else if (keg.hold == HoldKind::falls) {
    out.rank = Rank::hold_failed;
    out.suspect.why = message(MessageKey::suspect_hold_failed, keg.tag);
  } else if (touched(keg.since) && !tight_since) {
    out.rank = Rank::touched;
    out.suspect.why = message(keg.hold == HoldKind::holds ? MessageKey::suspect_touched_held
                                                          : MessageKey::suspect_touched,
                              keg.tag, keg.since);
  } else if (keg.hold != HoldKind::holds && !tight_since) {
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
  out.suspect.check = leak_test({}, regulator.regulator);
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
    out.suspect.why = message(MessageKey::suspect_leak_found, regulator.name, result->where);
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

// How long a branch must stay shut for a loss of this size to show in two
// weighings on the scale used.
std::optional<units::Duration> wait_to_see(const GasAccount& a) {
  if (!a.loss || a.loss->between.empty() || a.loss->per_day.value().value() <= 0)
    return std::nullopt;
  const double error = a.loss->between.back().weighed.half_width();
  const double days = isolation_shows_at * error / a.loss->per_day.value().value();
  return std::max(units::days(days), isolation_least);
}

void plan_isolation(GasAccount& out, const std::vector<Ranked>& ranked) {
  out.isolation_wait = wait_to_see(out);
  if (!out.isolation_wait) return;
  const units::Duration wait = *out.isolation_wait;
  const BottleId bottle = out.bottles.front().bottle;
  BottleWeighed weigh;
  weigh.bottle = bottle;
  const SuggestedTask weigh_task{std::string(BottleWeighed::kind), subject(bottle), Payload(weigh)};
  out.isolation.push_back({message(MessageKey::isolate_weigh, out.name), weigh_task});
  out.isolation.push_back({message(MessageKey::isolate_bottle, out.name, wait), weigh_task});
  for (const Ranked& r : ranked) {
    if (r.suspect.about.kind != SubjectKind::keg) continue;
    const KegId keg{r.suspect.about.uuid};
    std::string tag;
    for (const GasBranch& b : out.branches) {
      for (const BranchKeg& k : b.kegs) {
        if (k.keg == keg) tag = k.tag;
      }
    }
    for (const BranchKeg& k : out.unassigned) {
      if (k.keg == keg) tag = k.tag;
    }
    out.isolation.push_back({message(MessageKey::isolate_keg, tag, wait), keg_task<GasOff>(keg)});
  }
}

}  // namespace

void tell_suspects(GasAccount& out, Lookup& lookup) {
  if (!out.alarm) return;
  const TouchedWhen touched{out};
  std::vector<Ranked> ranked;
  for (const GasBranch& b : out.branches) {
    ranked.push_back(judge_joint(b.regulator, touched, lookup));
    for (const BranchKeg& k : b.kegs) ranked.push_back(judge_keg(k, touched, lookup));
  }
  for (const BranchKeg& k : out.unassigned) ranked.push_back(judge_keg(k, touched, lookup));
  std::stable_sort(ranked.begin(), ranked.end(), [](const Ranked& a, const Ranked& b) {
    if (a.rank != b.rank) return a.rank < b.rank;
    return a.suspect.touched.value_or(Instant::min()) > b.suspect.touched.value_or(Instant::min());
  });
  for (const Ranked& r : ranked) out.suspects.push_back(r.suspect);
  plan_isolation(out, ranked);
}

}  // namespace ullage::cellar
