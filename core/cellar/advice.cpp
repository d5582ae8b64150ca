// SPDX-License-Identifier: GPL-3.0-or-later
#include <algorithm>

#include "core/cellar/keg_moment.h"

namespace ullage::cellar {

void tell_advice(Moment& m) {
  std::vector<Advice>& advice = m.status.advice;
  if (m.keg.registered && !m.keg.record.in_use) return;
  advice.insert(advice.end(), m.keg.faults.begin(), m.keg.faults.end());
  std::stable_sort(advice.begin(), advice.end(),
                   [](const Advice& a, const Advice& b) { return a.severity > b.severity; });
}

}  // namespace ullage::cellar
