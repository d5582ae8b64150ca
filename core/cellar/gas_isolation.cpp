// SPDX-License-Identifier: GPL-3.0-or-later
//
// In which order to shut things off when soapy water finds no leak: the bottles
// themselves, then one branch at a time, then one keg at a time, the likeliest
// first; what still loses with all of them off is the joints before them.
#include <algorithm>

#include "core/cellar/gas_account.h"
#include "core/cellar/gas_given.h"
#include "core/cellar/suggest.h"

namespace ullage::cellar {

namespace {

// How long a branch must stay shut for a loss of this size to show in two
// weighings on the scale used.
std::optional<units::Duration> wait_to_see(const GasAccount& a) {
  if (!a.loss || a.loss->between.empty() || a.loss->per_day.value().value() <= 0)
    return std::nullopt;
  const double error = a.loss->between.back().weighed.half_width();
  const double days = isolation_shows_at * error / a.loss->per_day.value().value();
  return std::max(units::days(days), isolation_least);
}

SuggestedTask weigh_task(BottleId bottle) {
  BottleWeighed weigh;
  weigh.bottle = bottle;
  return {std::string(BottleWeighed::kind), subject(bottle), Payload(weigh)};
}

bool stands_behind(const RegulatorRecord& regulator, RegulatorId before, Lookup& lookup) {
  std::optional<RegulatorId> at = regulator.fed_by;
  for (int depth = 0; at && depth < longest_chain_of_regulators; ++depth) {
    if (*at == before) return true;
    const auto record = lookup.find(*at);
    at = record ? record->fed_by : std::nullopt;
  }
  return false;
}

// Shutting it shuts all the others: that is the last step, and no branch.
bool feeds_all_others(const GasAccount& account, const RegulatorRecord& regulator, Lookup& lookup) {
  return std::all_of(account.branches.begin(), account.branches.end(), [&](const GasBranch& b) {
    return b.regulator.regulator == regulator.regulator ||
           stands_behind(b.regulator, regulator.regulator, lookup);
  });
}

// What a keg or regulator is called; empty for anything else.
std::string shut_off_name(const GasAccount& account, SubjectRef about) {
  std::string name;
  for (const GasBranch& b : account.branches) {
    if (subject(b.regulator.regulator) == about) name = b.regulator.name;
  }
  for_each_keg(account, [&](const BranchKeg& k) {
    if (subject(k.keg) == about) name = k.tag;
  });
  return name;
}

void shut_bottles(GasAccount& out, units::Duration wait) {
  for (const BottleRecord& b : out.bottles)
    out.isolation.push_back({message(MessageKey::isolate_weigh, b.name), weigh_task(b.bottle)});
  for (const BottleRecord& b : out.bottles) {
    out.isolation.push_back(
        {message(MessageKey::isolate_bottle, b.name, wait), weigh_task(b.bottle)});
  }
}

// The regulator that the rest hangs on: the first that no other feeds.
const RegulatorRecord& first_in_line(const GasAccount& account) {
  const auto at = std::find_if(account.branches.begin(), account.branches.end(),
                               [](const GasBranch& b) { return !b.regulator.fed_by.has_value(); });
  return (at != account.branches.end() ? *at : account.branches.front()).regulator;
}

}  // namespace

void plan_isolation(GasAccount& out, Lookup& lookup) {
  out.isolation_wait = wait_to_see(out);
  if (!out.isolation_wait) return;
  const units::Duration wait = *out.isolation_wait;
  shut_bottles(out, wait);
  if (out.branches.size() > 1) {
    for (const GasSuspect& s : out.suspects) {
      if (s.about.kind != SubjectKind::regulator) continue;
      const auto record = lookup.find(RegulatorId{s.about.uuid});
      if (!record || feeds_all_others(out, *record, lookup)) continue;
      const auto behind = bottles_behind(record->regulator, {}, lookup);
      out.isolation.push_back(
          {message(MessageKey::isolate_branch, shut_off_name(out, s.about), wait),
           weigh_task(behind.empty() ? out.bottles.front().bottle : behind.front())});
    }
  }
  for (const GasSuspect& s : out.suspects) {
    if (s.about.kind != SubjectKind::keg) continue;
    out.isolation.push_back({message(MessageKey::isolate_keg, shut_off_name(out, s.about), wait),
                             keg_task<GasOff>(KegId{s.about.uuid})});
  }
  if (out.branches.empty()) return;
  const RegulatorRecord& first = first_in_line(out);
  LeakTested joints;
  joints.regulator = first.regulator;
  out.isolation.push_back(
      {message(MessageKey::isolate_rest, wait, first.name),
       {std::string(LeakTested::kind), subject(first.regulator), Payload(joints)}});
}

}  // namespace ullage::cellar
