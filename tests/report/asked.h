// SPDX-License-Identifier: GPL-3.0-or-later
//
// A computation of the slate as a test asks it: as it stands, with some fields
// changed, its values found by their names.
#pragma once

#include <gtest/gtest.h>

#include <optional>
#include <stdexcept>
#include <string>
#include <string_view>

#include "core/report/slate/computation.h"

namespace ullage::testing::asking {

using report::slate::Answer;
using report::slate::AnswerValue;
using report::slate::Computation;
using report::slate::Inputs;
using report::slate::Outcome;
using report::slate::Problem;
using report::slate::Value;

inline const units::Printer in_metric_units{units::DisplayUnits::metric(), {}};
inline const units::Printer in_us_units{units::DisplayUnits::us(), {}};

inline const Computation& the(std::string_view key) {
  const Computation* c = report::slate::find_computation(key);
  if (c == nullptr) throw std::out_of_range(std::string(key));
  return *c;
}

// One computation with some fields changed.
class Asked {
 public:
  explicit Asked(std::string_view key)
      : computation_(the(key)), in_(report::slate::starting_inputs(computation_)) {}
  Asked& with(std::string_view field, std::optional<Value> value) {
    in_.set(field, std::move(value));
    return *this;
  }
  [[nodiscard]] Outcome outcome(const units::Printer& printer = in_us_units) const {
    return report::slate::work_out(computation_, in_, printer);
  }
  [[nodiscard]] Answer answer(const units::Printer& printer = in_us_units) const {
    const Outcome out = outcome(printer);
    if (!out) {
      ADD_FAILURE() << out.error().field << ": " << out.error().sentence;
      return {};
    }
    return *out;
  }
  [[nodiscard]] Problem problem() const {
    const Outcome out = outcome();
    if (out) ADD_FAILURE() << "answered";
    return out ? Problem{} : out.error();
  }
  [[nodiscard]] report::Grounds grounds(const AnswerValue& v) const {
    return report::slate::grounds_of(computation_, in_, v, in_us_units);
  }

 private:
  const Computation& computation_;
  Inputs in_;
};

inline const AnswerValue* value_named(const Answer& a, std::string_view name) {
  for (const AnswerValue& v : a.values) {
    if (v.name == name) return &v;
  }
  return nullptr;
}
template <class Q>
Q number_of(const Answer& a, std::string_view name) {
  const AnswerValue* v = value_named(a, name);
  if (v == nullptr || !v->value) {
    ADD_FAILURE() << "no value " << name;
    return Q{};
  }
  return get<Q>(*v->value);
}

}  // namespace ullage::testing::asking
