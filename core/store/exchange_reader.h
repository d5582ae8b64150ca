// SPDX-License-Identifier: GPL-3.0-or-later
//
// Exchange text taken apart: objects of plain values with the lines they stand
// on. Knows the frame of the format, not what the fields of an entry mean.
#pragma once

#include <boost/variant2/variant.hpp>
#include <cstdint>
#include <functional>
#include <string>
#include <string_view>
#include <vector>

#include "core/store/exchange.h"

namespace ullage::store {

using RawValue =
    boost::variant2::variant<boost::variant2::monostate, bool, std::int64_t, double, std::string>;

struct RawField {
  std::string name;
  RawValue value;
  std::size_t line = 0;
};
struct RawEntry {
  std::size_t line = 0;    // of its opening brace
  std::size_t number = 0;  // from 1
  std::vector<RawField> fields;
  [[nodiscard]] const RawField* find(std::string_view name) const;
};

// Collects problems up to the limit.
class ProblemList {
 public:
  void add(ImportProblem);
  [[nodiscard]] bool full() const { return refusal_.more; }
  [[nodiscard]] bool empty() const { return refusal_.problems.empty(); }
  [[nodiscard]] ImportRefusal take() { return std::move(refusal_); }

 private:
  ImportRefusal refusal_;
};

// Calls `take` with each entry, in order. Stops early when the frame is broken
// or the list of problems is full.
void read_exchange(std::string_view text, ProblemList&,
                   const std::function<void(const RawEntry&)>& take);

}  // namespace ullage::store
