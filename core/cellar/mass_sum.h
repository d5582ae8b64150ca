// SPDX-License-Identifier: GPL-3.0-or-later
//
// Weighted sums of masses whose errors share sources: what two have in common
// cancels or adds as it should. Takes as long as there are sources; a cellar of
// 200 kegs has thousands of them.
#pragma once

#include <string>
#include <unordered_map>
#include <vector>

#include "core/units/estimate.h"
#include "core/units/quantities.h"

namespace ullage::cellar {

class MassSum {
 public:
  void add(const units::Estimate<units::Mass>& m, double weight = 1) {
    value_ += weight * m.value().value();
    for (const units::Contribution& c : m.contributions()) {
      const auto [at, fresh] = index_.try_emplace(c.source.name, all_.size());
      if (fresh) {
        all_.push_back({c.source, weight * c.half_width});
      } else {
        all_[at->second].half_width += weight * c.half_width;
      }
    }
  }
  [[nodiscard]] units::Estimate<units::Mass> sum() const {
    return units::Estimate<units::Mass>(units::kilograms(value_), all_);
  }

 private:
  double value_ = 0;
  std::unordered_map<std::string, std::size_t> index_;
  std::vector<units::Contribution> all_;
};

}  // namespace ullage::cellar
