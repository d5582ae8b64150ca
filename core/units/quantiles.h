// SPDX-License-Identifier: GPL-3.0-or-later
//
// Errors carried through a function that bends: a time to reach a level, a
// ratio, a function that has no answer in part of the span ("never reached").
// Where `propagate` (estimate.h) assumes a straight line, this looks at the
// function itself at 256 fixed points of the joint normal distribution of the
// error sources, and reads the quantiles of what comes out. Nothing is random:
// the same inputs give the same answer to the last bit.
//
// Method: the joint normal distribution of the inputs (as many dimensions as
// inputs at most, however many sources), met at evenly spread points through the
// inverse normal distribution, turned so that the strictly even first axis lies
// along the steepest change of f at the centre. A straight f is then exact but
// for the spacing of 256 points. Against brute force the three default quantiles
// are within 2 % of the 95 % span for a function that keeps rising or falling
// along its errors, and within 10 % where the inputs straddle its top or bottom
// (docs/physics-uncertainty.md has the figures). Cost: 257 calls of f and two
// more for each dimension.
//
// f takes the plain quantities and returns a quantity, or a std::optional or
// std::expected of one where it may have no answer. No answer counts as later
// (greater) than every answer, so a high quantile may be missing while the
// median is known. A result that is not finite counts as no answer.
#pragma once

#include <algorithm>
#include <concepts>
#include <cstddef>
#include <limits>
#include <optional>
#include <span>
#include <tuple>
#include <utility>
#include <vector>

#include "core/units/estimate.h"
#include "core/units/quantile_points.h"

namespace ullage::units {

// The middle 95 % of a result and its median.
template <class R>
struct Spread {
  R low{};
  R median{};
  R high{};
};

// The whole distribution of a result.
template <Quantity Q>
class Distribution {
 public:
  explicit Distribution(SortedAnswers answers) : answers_(std::move(answers)) {}

  // The value that the result stays below with this probability, 0.01 to 0.99
  // (std::out_of_range beyond: a bug in the caller); nothing: it has no answer
  // that often.
  [[nodiscard]] std::optional<Q> at(double probability) const {
    const std::optional<double> v = answers_.at(probability);
    return v ? std::optional<Q>(from_magnitude<Q>(*v)) : std::nullopt;
  }
  // How probable an answer is at all, 0 to 1, in steps of 1/256.
  [[nodiscard]] Fraction probability_of_answer() const {
    return Fraction(answers_.share_answered());
  }

 private:
  SortedAnswers answers_;
};

namespace quantile_detail {

template <class R>
struct Answer {
  using quantity = R;
  static std::optional<double> of(const R& r) { return to_magnitude(r); }
};
template <class R>
  requires requires(R r) {
    typename R::value_type;
    { r.has_value() } -> std::same_as<bool>;
  }
struct Answer<R> {
  using quantity = typename R::value_type;
  static constexpr bool may_be_missing = true;
  static std::optional<double> of(const R& r) {
    return r.has_value() ? std::optional<double>(to_magnitude(*r)) : std::nullopt;
  }
};
template <class R>
concept MayBeMissing = requires { Answer<R>::may_be_missing; };

// The contributions of one input, in the order of the sources.
template <Quantity Q>
std::vector<double> by_source(const Estimate<Q>& e, const std::vector<ErrorSource>& sources) {
  std::vector<double> row(sources.size(), 0.0);
  for (const Contribution& c : e.contributions()) {
    const auto at = std::lower_bound(sources.begin(), sources.end(), c.source);
    row[static_cast<std::size_t>(at - sources.begin())] += c.half_width;
  }
  return row;
}

}  // namespace quantile_detail

// f(values...) as a distribution over the inputs' errors.
template <class F, class... Qs>
[[nodiscard]] auto distribution_of(F&& f, const Estimate<Qs>&... inputs) {
  using R = std::decay_t<decltype(f(inputs.value()...))>;
  using Answer = quantile_detail::Answer<R>;
  const std::vector<ErrorSource> sources = sources_of(inputs...);
  const JointErrors errors({quantile_detail::by_source(inputs, sources)...});
  const auto answer_at = [&]<std::size_t... is>(std::span<const double> offsets,
                                                std::index_sequence<is...>) {
    return Answer::of(
        f(from_magnitude<Qs>(to_magnitude(inputs.value()) + errors.shift(is, offsets))...));
  };
  return Distribution<typename Answer::quantity>(
      sample_answers(errors.dimensions(), [&](std::span<const double> offsets) {
        return answer_at(offsets, std::index_sequence_for<Qs...>());
      }));
}

// The 2.5, 50 and 97.5 % quantiles of f(values...): a Spread of the quantity, or
// of std::optional of it where f may have no answer.
template <class F, class... Qs>
[[nodiscard]] auto propagate_quantiles(F&& f, const Estimate<Qs>&... inputs) {
  using R = std::decay_t<decltype(f(inputs.value()...))>;
  using Q = typename quantile_detail::Answer<R>::quantity;
  const Distribution<Q> all = distribution_of(std::forward<F>(f), inputs...);
  const auto low = all.at(0.025);
  const auto median = all.at(0.5);
  const auto high = all.at(0.975);
  if constexpr (quantile_detail::MayBeMissing<R>) {
    return Spread<std::optional<Q>>{low, median, high};
  } else {
    const Q unknown = from_magnitude<Q>(std::numeric_limits<double>::quiet_NaN());
    return Spread<Q>{low.value_or(unknown), median.value_or(unknown), high.value_or(unknown)};
  }
}

}  // namespace ullage::units
