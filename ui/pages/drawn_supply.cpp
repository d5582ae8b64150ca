// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/pages/drawn_supply.h"

#include <algorithm>

#include "ui/context.h"
#include "ui/pages/gas_supply_card.h"

namespace ullage::ui {
namespace {

using cellar::GasAccount;
using cellar::GasBranch;

// Where the branches that one regulator feeds come right after it.
class BranchOrder {
 public:
  explicit BranchOrder(const GasAccount& account) : account_(account) {
    for (std::size_t i = 0; i < account.branches.size(); ++i) {
      if (!feeder(i)) add(i);
    }
    // A ring of regulators has no first: shown as it comes.
    for (std::size_t i = 0; i < account.branches.size(); ++i) add(i);
  }
  [[nodiscard]] const std::vector<std::size_t>& order() const { return order_; }
  // Where the regulator that feeds it stands in the order, before it.
  [[nodiscard]] std::optional<std::size_t> fed_from(std::size_t place) const {
    const auto before = feeder(order_[place]);
    if (!before) return std::nullopt;
    const auto at = std::find(order_.begin(), order_.end(), *before);
    const auto index = static_cast<std::size_t>(at - order_.begin());
    return index < place ? std::optional(index) : std::nullopt;
  }

 private:
  [[nodiscard]] std::optional<std::size_t> feeder(std::size_t branch) const {
    const auto& by = account_.branches[branch].regulator.fed_by;
    for (std::size_t i = 0; by && i < account_.branches.size(); ++i) {
      if (i != branch && account_.branches[i].regulator.regulator == *by) return i;
    }
    return std::nullopt;
  }
  void add(std::size_t branch) {
    if (std::find(order_.begin(), order_.end(), branch) != order_.end()) return;
    order_.push_back(branch);
    for (std::size_t i = 0; i < account_.branches.size(); ++i) {
      if (feeder(i) == branch) add(i);
    }
  }
  const GasAccount& account_;
  std::vector<std::size_t> order_;
};

std::optional<std::size_t> place_of(const GasAccount& account, const GasBranch& branch) {
  for (std::size_t i = 0; i < account.bottles.size(); ++i) {
    if (branch.stands_on == account.bottles[i].bottle) return i;
  }
  return std::nullopt;
}

}  // namespace

DrawnSupply drawn_supply(const GasAccount& account, const units::Printer& print) {
  DrawnSupply out;
  for (const cellar::BottleRecord& b : account.bottles) out.bottles.push_back(q(b.name));
  const auto kegs = [&](const std::vector<cellar::BranchKeg>& from) {
    std::vector<DrawnKeg> to;
    to.reserve(from.size());
    for (const cellar::BranchKeg& k : from) to.push_back({q(k.tag), q(print.print(k.set))});
    return to;
  };
  const BranchOrder sorted(account);
  for (std::size_t i = 0; i < sorted.order().size(); ++i) {
    const GasBranch& b = account.branches[sorted.order()[i]];
    out.branches.push_back(
        {q(b.regulator.name), kegs(b.kegs), place_of(account, b), sorted.fed_from(i)});
  }
  if (!account.unassigned.empty())
    out.branches.push_back({GasSupplyCard::tr("no regulator named"), kegs(account.unassigned)});
  return out;
}

}  // namespace ullage::ui
