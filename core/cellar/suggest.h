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

template <class P>
[[nodiscard]] SuggestedTask line_task(LineId line, P prefill = {}) {
  prefill.line = line;
  return {std::string(P::kind), subject(line), Payload(std::move(prefill))};
}

}  // namespace ullage::cellar
