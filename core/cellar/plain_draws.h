// SPDX-License-Identifier: GPL-3.0-or-later
//
// Draws of gas in a form that thousands of them are kept and summed in: each
// source of error is a number in one table of names.
#pragma once

#include <cstddef>
#include <cstdint>
#include <deque>
#include <optional>
#include <span>
#include <string>
#include <unordered_map>
#include <vector>

#include "core/cellar/ids.h"
#include "core/cellar/time.h"
#include "core/units/estimate.h"
#include "core/units/quantities.h"

namespace ullage::cellar {

enum class GasWork { pushing, carbonating, headspace, purging, pressure_test };

class SourceTable {
 public:
  [[nodiscard]] std::uint32_t index(const units::ErrorSource& source) {
    const auto [at, fresh] =
        index_.try_emplace(source.name, static_cast<std::uint32_t>(sources_.size()));
    if (fresh) sources_.push_back(source);
    return at->second;
  }
  [[nodiscard]] const units::ErrorSource& source(std::uint32_t i) const { return sources_[i]; }
  [[nodiscard]] std::size_t size() const { return sources_.size(); }

 private:
  std::unordered_map<std::string, std::uint32_t> index_;
  std::deque<units::ErrorSource> sources_;
};

struct PlainPart {
  std::uint32_t source = 0;
  double half_width = 0;  // kg
};

class PlainDraws {
 public:
  struct Row {
    Instant from{}, to{};
    GasWork work = GasWork::pushing;
    std::optional<RegulatorId> regulator;
    double kilograms = 0;
    std::size_t first = 0, last = 0;  // of the parts
  };
  void add(Row row, const units::Estimate<units::Mass>& mass, SourceTable& sources) {
    row.kilograms = units::in_kilograms(mass.value());
    row.first = parts_.size();
    for (const units::Contribution& c : mass.contributions())
      parts_.push_back({sources.index(c.source), c.half_width});
    row.last = parts_.size();
    rows_.push_back(row);
  }
  [[nodiscard]] const std::vector<Row>& rows() const { return rows_; }
  [[nodiscard]] std::span<const PlainPart> parts(const Row& row) const {
    return std::span(parts_).subspan(row.first, row.last - row.first);
  }

 private:
  std::vector<Row> rows_;
  std::vector<PlainPart> parts_;
};

}  // namespace ullage::cellar
