// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/cellar/loose_gas.h"

#include <set>

#include "core/cellar/gas_account.h"

namespace ullage::cellar {

LooseGas loose_gas(const CellarStatus& status) {
  LooseGas out;
  std::set<RegulatorId> counted;
  std::set<KegId> shown;
  std::set<const GasAccount*> supplies;
  for (const BottleStatus& b : status.bottles) {
    if (!b.account) continue;
    supplies.insert(b.account.get());
    for (const GasBranch& branch : b.account->branches) counted.insert(branch.regulator.regulator);
    for_each_keg(*b.account, [&](const BranchKeg& k) { shown.insert(k.keg); });
  }
  for (const RegulatorRecord& r : status.regulators) {
    if (r.in_use && counted.count(r.regulator) == 0) out.regulators.push_back(r);
  }
  for (const KegStatus& k : status.kegs) {
    if (!k.gas.on || !k.gas.set || shown.count(k.record.keg) != 0) continue;
    if (k.gas.regulator) {
      out.on_those.push_back(k.record.tag);
    } else if (supplies.size() > 1) {
      out.unnamed.push_back(k.record.tag);
    }
  }
  return out;
}

}  // namespace ullage::cellar
