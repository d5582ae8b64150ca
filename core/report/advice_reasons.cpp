// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/report/advice_reasons.h"

#include "core/report/grounds.h"
#include "core/report/laws_slate.h"

namespace ullage::report {
namespace {

using K = cellar::MessageKey;

const Law* law_of_keg_advice(K headline) {
  switch (headline) {
    case K::adv_drop:
    case K::adv_drop_overdue:
    case K::adv_still_below:
      return &laws::carbonation;
    case K::adv_over_carbonated:
      return &laws::rescue;
    case K::adv_too_high:
    case K::adv_too_low:
    case K::adv_no_gas:
      return &laws::equilibrium;
    case K::adv_gas_to_come:
      return &laws::gravity;
    case K::adv_hold_failed:
    case K::adv_hold_again:
      return &laws::hold_test;
    case K::adv_level_conflict:
    case K::adv_should_be_empty:
      return &laws::level_fusion;
    default:
      return nullptr;
  }
}

const Law* law_of_pour_advice(K headline) {
  switch (headline) {
    case K::adv_pour_breaks_out:
      return &laws::break_out;
    case K::adv_pour_over_gasses:
    case K::adv_pour_goes_flat:
    case K::adv_pour_cant_tell:
    case K::adv_pour_blend:
    case K::adv_pour_altitude:
      return &laws::equilibrium;
    case K::adv_pour_over_gasses_by:
    case K::adv_pour_shared:
      return &laws::carbonation;
    case K::adv_pour_contradicts:
    case K::adv_pour_fast:
    case K::adv_pour_slow:
      return &laws::line_flow;
    case K::adv_pour_warm:
    case K::adv_pour_still_warm:
      return &laws::cooling;
    default:
      return nullptr;
  }
}

const Law* law_of_gas_advice(K headline) {
  switch (headline) {
    case K::adv_bottle_low:
    case K::adv_gas_loss:
      return &laws::gas_account;
    case K::adv_bottle_warm:
      return &laws::bottle_gauge;
    case K::adv_line_overdue:
      return &laws::work_rules;
    default:
      return nullptr;
  }
}

}  // namespace

const Law* law_of(const cellar::Advice& advice) {
  const K headline = advice.headline.key;
  if (const Law* law = law_of_keg_advice(headline)) return law;
  if (const Law* law = law_of_pour_advice(headline)) return law;
  return law_of_gas_advice(headline);
}

std::vector<std::string> advice_reasons(const cellar::Advice& advice, const Speaker& speaker) {
  std::vector<std::string> lines;
  for (const cellar::InputUsed& input : advice.inputs) {
    std::string line = say(input.what, speaker);
    if (input.read) line += ", " + say_age(*input.read, speaker);
    lines.push_back(std::move(line));
  }
  if (const Law* law = law_of(advice)) {
    lines.emplace_back(law->words);
    lines.push_back(source_line(grounds_by(*law, {}, {})));
  }
  return lines;
}

}  // namespace ullage::report
