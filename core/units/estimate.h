// SPDX-License-Identifier: GPL-3.0-or-later
//
// An estimate: a value with the error it carries, split by where the error
// comes from. Two estimates that share a source (the same dial's bias, the same
// keg's tare) stay correlated: their errors cancel in a difference and add in a
// sum, as they do in life.
//
// Each contribution is a signed 95 % half-width: how far the value moves when
// its source moves up by its own 95 % half-width. Sources are independent of
// one another and taken as normal; the total half-width is the root of the sum
// of squares. `propagate` carries estimates through a smooth function by a
// central difference over each source. Where the function bends within the
// error (a time to reach a level, a ratio with a wide divisor) use
// `propagate_quantiles` (quantiles.h), which is deterministic too.
//
// See docs/physics-uncertainty.md.
#pragma once

#include <algorithm>
#include <array>
#include <cmath>
#include <expected>
#include <string>
#include <tuple>
#include <utility>
#include <vector>

#include "core/units/magnitude.h"

namespace ullage::units {

// Names one independent cause of error, e.g. "dial R1: bias". Equal names are
// the same cause.
struct ErrorSource {
  std::string name;
  friend auto operator<=>(const ErrorSource&, const ErrorSource&) = default;
};

struct Contribution {
  ErrorSource source;
  double half_width = 0;  // signed, 95 %, in the magnitude of the estimate's quantity
};

template <Quantity Q>
class Estimate {
 public:
  Estimate() = default;
  explicit Estimate(Q value) : value_(value) {}
  // Each source at most once; `with` merges.
  Estimate(Q value, std::vector<Contribution> contributions)
      : value_(value), contributions_(std::move(contributions)) {}

  [[nodiscard]] static Estimate exact(Q value) { return Estimate(value); }

  // The same estimate with one more cause of error. `half_width` is the 95 %
  // half-width in the magnitude of Q (pascals for a pressure, cubic metres for a
  // volume); with_error() takes it as a quantity. A cause that is there already
  // adds to its half-width, with its sign: it moves the value once, by both.
  [[nodiscard]] Estimate with(ErrorSource source, double half_width) const& {
    return Estimate(*this).with(std::move(source), half_width);
  }
  [[nodiscard]] Estimate with(ErrorSource source, double half_width) && {
    auto at = std::find_if(contributions_.begin(), contributions_.end(),
                           [&](const Contribution& c) { return c.source == source; });
    if (at != contributions_.end()) {
      at->half_width += half_width;
    } else {
      contributions_.push_back({std::move(source), half_width});
    }
    return std::move(*this);
  }

  [[nodiscard]] Q value() const { return value_; }
  [[nodiscard]] const std::vector<Contribution>& contributions() const { return contributions_; }

  [[nodiscard]] Estimate with_error(ErrorSource source, Difference<Q> half_width) const& {
    return with(std::move(source), to_magnitude(half_width));
  }
  [[nodiscard]] Estimate with_error(ErrorSource source, Difference<Q> half_width) && {
    return std::move(*this).with(std::move(source), to_magnitude(half_width));
  }

  // 95 % half-width, in the magnitude of Q.
  [[nodiscard]] double half_width() const {
    double sum = 0;
    for (const Contribution& c : contributions_) sum += c.half_width * c.half_width;
    return std::sqrt(sum);
  }
  [[nodiscard]] Difference<Q> error() const { return from_magnitude<Difference<Q>>(half_width()); }
  [[nodiscard]] Q low() const { return from_magnitude<Q>(to_magnitude(value_) - half_width()); }
  [[nodiscard]] Q high() const { return from_magnitude<Q>(to_magnitude(value_) + half_width()); }

  // The contribution that widens this estimate the most: what would narrow it.
  [[nodiscard]] const Contribution* largest() const {
    auto at = std::max_element(contributions_.begin(), contributions_.end(),
                               [](const Contribution& a, const Contribution& b) {
                                 return std::abs(a.half_width) < std::abs(b.half_width);
                               });
    return at == contributions_.end() ? nullptr : &*at;
  }

  // The value as it would read if `source` stood `half_widths` of its own 95 %
  // half-widths off.
  [[nodiscard]] Q shifted(const ErrorSource& source, double half_widths) const {
    double v = to_magnitude(value_);
    for (const Contribution& c : contributions_) {
      if (c.source == source) v += c.half_width * half_widths;
    }
    return from_magnitude<Q>(v);
  }

 private:
  Q value_{};
  std::vector<Contribution> contributions_;
};

// Every source named by any of the estimates, once, in order of name.
template <class... Qs>
[[nodiscard]] std::vector<ErrorSource> sources_of(const Estimate<Qs>&... estimates) {
  std::vector<ErrorSource> all;
  (
      [&] {
        for (const Contribution& c : estimates.contributions()) all.push_back(c.source);
      }(),
      ...);
  std::sort(all.begin(), all.end());
  all.erase(std::unique(all.begin(), all.end()), all.end());
  return all;
}

// f(values...) with the inputs' errors carried through. f takes the plain
// quantities and returns a quantity.
template <class F, class... Qs>
[[nodiscard]] auto propagate(F&& f, const Estimate<Qs>&... inputs) {
  using R = std::decay_t<decltype(f(inputs.value()...))>;
  const R centre = f(inputs.value()...);
  std::vector<Contribution> out;
  for (const ErrorSource& s : sources_of(inputs...)) {
    const double up = to_magnitude(f(inputs.shifted(s, 1.0)...));
    const double down = to_magnitude(f(inputs.shifted(s, -1.0)...));
    out.push_back({s, (up - down) / 2.0});
  }
  return Estimate<R>(centre, std::move(out));
}

// An outcome of several quantities: as the inputs are stated, and with each source a
// half-width up and down.
template <class Outcome>
struct OutcomeRuns {
  struct Sides {
    ErrorSource source;
    Outcome up, down;
  };
  Outcome centre;
  std::vector<Sides> sides;

  // The quantity that `take` finds in an outcome, with its error.
  template <class Take>
  [[nodiscard]] auto taken(Take&& take) const {
    using R = std::decay_t<decltype(take(centre))>;
    std::vector<Contribution> out;
    out.reserve(sides.size());
    for (const Sides& s : sides)
      out.push_back({s.source, (to_magnitude(take(s.up)) - to_magnitude(take(s.down))) / 2.0});
    return Estimate<R>(take(centre), std::move(out));
  }
};

// The runs of an f that can refuse: f returns std::expected<Outcome, E>. The value
// itself must be in range; a shifted point that is refused makes the whole
// refused, since half of the error would be made up otherwise.
template <class F, class... Qs>
[[nodiscard]] auto try_runs(F&& f, const Estimate<Qs>&... inputs)
    -> std::expected<OutcomeRuns<typename std::decay_t<decltype(f(inputs.value()...))>::value_type>,
                     typename std::decay_t<decltype(f(inputs.value()...))>::error_type> {
  using X = std::decay_t<decltype(f(inputs.value()...))>;
  X centre = f(inputs.value()...);
  if (!centre) return std::unexpected(centre.error());
  OutcomeRuns<typename X::value_type> runs{*std::move(centre), {}};
  for (const ErrorSource& s : sources_of(inputs...)) {
    X up = f(inputs.shifted(s, 1.0)...);
    if (!up) return std::unexpected(up.error());
    X down = f(inputs.shifted(s, -1.0)...);
    if (!down) return std::unexpected(down.error());
    runs.sides.push_back({s, *std::move(up), *std::move(down)});
  }
  return runs;
}

// As propagate, for an f that can refuse.
template <class F, class... Qs>
[[nodiscard]] auto try_propagate(F&& f, const Estimate<Qs>&... inputs)
    -> std::expected<Estimate<typename std::decay_t<decltype(f(inputs.value()...))>::value_type>,
                     typename std::decay_t<decltype(f(inputs.value()...))>::error_type> {
  const auto runs = try_runs(f, inputs...);
  if (!runs) return std::unexpected(runs.error());
  return runs->taken([](const auto& q) { return q; });
}

}  // namespace ullage::units
