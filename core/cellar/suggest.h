// SPDX-License-Identifier: GPL-3.0-or-later
//
// The forms that put something right, prefilled with the keg they are about.
#pragma once

#include <algorithm>
#include <string>
#include <utility>

#include "core/cellar/status.h"

namespace ullage::cellar {

// "acid_sanitiser" as people write it.
template <WordedEnum E>
[[nodiscard]] std::string plain_word(E e) {
  std::string word(to_word(e));
  std::replace(word.begin(), word.end(), '_', ' ');
  return word;
}

template <class P>
[[nodiscard]] SuggestedTask keg_task(KegId keg, P prefill = {}) {
  prefill.keg = keg;
  return {std::string(P::kind), subject(keg), Payload(std::move(prefill))};
}

// Gas set on a keg, and the keg vented down to it where more stands on it now.
[[nodiscard]] inline SuggestedTask gas_task(const KegStatus& keg, GaugePressure to,
                                            GasPurpose purpose) {
  GasSet prefill;
  prefill.pressure = to;
  prefill.purpose = purpose;
  prefill.regulator = keg.gas.regulator;
  SuggestedTask task = keg_task<GasSet>(keg.record.keg, prefill);
  task.vent_to_it = keg.gas.on && keg.gas.set && *keg.gas.set > to;
  return task;
}

template <class P>
[[nodiscard]] SuggestedTask line_task(LineId line, P prefill = {}) {
  prefill.line = line;
  return {std::string(P::kind), subject(line), Payload(std::move(prefill))};
}

}  // namespace ullage::cellar
