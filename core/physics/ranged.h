// SPDX-License-Identifier: GPL-3.0-or-later
//
// An answer that bends with what it stands on, or that has no answer at an end of the
// errors: its likely value, the middle 95 % of it by the 256 points of quantiles.h, and
// what each source moves it by where it is straight enough to say so.
#pragma once

#include <optional>
#include <vector>

#include "core/physics/error.h"
#include "core/units/estimate.h"
#include "core/units/quantiles.h"

namespace ullage::physics {

template <units::Quantity Q>
struct Ranged {
  Q likely{};
  std::optional<Q> low, high;  // 95 %; no high where it has no answer that often
  std::vector<units::Contribution> errors = {};
};

// f(values...) answers Result<Q>. The likely one must be within what f covers; what f
// refuses at an end of the errors counts as `instead(refusal)`, an optional Q, or where
// that is empty as more than any answer.
template <units::Quantity Q, class F, class Instead, class... Qs>
[[nodiscard]] Result<Ranged<Q>> ranged(const F& f, const Instead& instead,
                                       const units::Estimate<Qs>&... inputs) {
  const Result<Q> likely = f(inputs.value()...);
  if (!likely) return std::unexpected(likely.error());
  const auto spread = units::propagate_quantiles(
      [&](Qs... q) -> Result<Q> {
        const Result<Q> r = f(q...);
        if (r) return r;
        if (const std::optional<Q> in_place = instead(r.error())) return *in_place;
        return r;
      },
      inputs...);
  Ranged<Q> out{*likely, spread.low, spread.high};
  if (const auto straight = units::try_propagate(f, inputs...))
    out.errors = straight->contributions();
  return out;
}

// Where what is refused has no place among the answers.
inline constexpr auto nothing_instead = [](const RangeError&) { return std::nullopt; };

}  // namespace ullage::physics
