// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/cellar/gas_branches.h"

#include <algorithm>

#include "core/cellar/cellar_status.h"
#include "core/cellar/gas_given.h"

namespace ullage::cellar {

namespace {

void add_bottle_once(std::vector<BottleId>& to, BottleId id) {
  const auto at = std::lower_bound(to.begin(), to.end(), id);
  if (at == to.end() || *at != id) to.insert(at, id);
}

bool share_any(const std::vector<BottleId>& a, const std::vector<BottleId>& b) {
  return std::any_of(a.begin(), a.end(),
                     [&](BottleId id) { return std::binary_search(b.begin(), b.end(), id); });
}

}  // namespace

std::vector<BottleId> bottles_behind(RegulatorId id, std::optional<Instant> when, Lookup& lookup) {
  std::vector<BottleId> out;
  std::optional<RegulatorId> at = id;
  for (int depth = 0; at && depth < longest_chain_of_regulators; ++depth) {
    if (const auto behind = bottle_behind(*at, when, lookup); behind.bottle)
      add_bottle_once(out, *behind.bottle);
    const auto record = lookup.find(*at);
    at = record ? record->fed_by : std::nullopt;
  }
  return out;
}

std::vector<GasSupply> gas_supplies(const std::vector<BottleId>& bottles,
                                    const std::vector<RegulatorId>& regulators, Lookup& lookup) {
  std::vector<GasSupply> out;
  for (const BottleId bottle : bottles) {
    const auto record = lookup.find(bottle);
    if (record && record->in_use) out.push_back({{bottle}, {}, false});
  }
  for (const RegulatorId regulator : regulators) {
    const auto record = lookup.find(regulator);
    if (!record || !record->in_use) continue;
    const std::vector<BottleId> behind = bottles_behind(regulator, {}, lookup);
    GasSupply joined;
    joined.regulators.push_back(regulator);
    // Whatever supplies it draws from become one.
    for (auto s = out.begin(); s != out.end();) {
      if (!share_any(s->bottles, behind)) {
        ++s;
        continue;
      }
      for (const BottleId b : s->bottles) add_bottle_once(joined.bottles, b);
      joined.regulators.insert(joined.regulators.end(), s->regulators.begin(), s->regulators.end());
      s = out.erase(s);
    }
    if (!joined.bottles.empty()) out.push_back(std::move(joined));
  }
  for (GasSupply& s : out) {
    s.only_one = out.size() == 1;
    std::sort(s.regulators.begin(), s.regulators.end(), [&](RegulatorId a, RegulatorId b) {
      return natural_less(lookup.find(a)->name, lookup.find(b)->name);
    });
  }
  return out;
}

}  // namespace ullage::cellar
