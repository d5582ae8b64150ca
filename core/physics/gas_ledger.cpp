// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/physics/gas_ledger.h"

#include <algorithm>
#include <boost/math/distributions/chi_squared.hpp>
#include <boost/math/distributions/normal.hpp>
#include <cmath>
#include <map>
#include <string_view>
#include <unordered_map>

#include "core/units/quantiles.h"

namespace ullage::physics {

using namespace units;

namespace {

constexpr double half_width_in_deviations = 1.959963984540054;
constexpr double rounding_kilograms = 1e-3;
constexpr double line_refused_below = 1e-3;  // probability
constexpr Range ledger_mass_range{-1.0e4, 1.0e4};
// Beyond it the grams of rounding would be lost in the arithmetic.
constexpr Range ledger_error_range{0.0, 1.0e3};

// A symmetric positive matrix by its lower root, rows packed one after another.
class LowerRoot {
 public:
  explicit LowerRoot(std::size_t n) : n_(n), cells_(n * (n + 1) / 2, 0.0) {}
  [[nodiscard]] double& at(std::size_t i, std::size_t j) { return cells_[i * (i + 1) / 2 + j]; }
  [[nodiscard]] double at(std::size_t i, std::size_t j) const {
    return cells_[i * (i + 1) / 2 + j];
  }
  void factor() {
    for (std::size_t i = 0; i < n_; ++i) {
      for (std::size_t j = 0; j <= i; ++j) {
        double sum = at(i, j);
        for (std::size_t k = 0; k < j; ++k) sum -= at(i, k) * at(j, k);
        at(i, j) = i == j ? std::sqrt(sum) : sum / at(j, j);
      }
    }
  }
  // root^-1 v
  [[nodiscard]] std::vector<double> whiten(std::vector<double> v) const {
    for (std::size_t i = 0; i < n_; ++i) {
      for (std::size_t k = 0; k < i; ++k) v[i] -= at(i, k) * v[k];
      v[i] /= at(i, i);
    }
    return v;
  }
  // root^-T v
  [[nodiscard]] std::vector<double> unwhiten(std::vector<double> v) const {
    for (std::size_t i = n_; i-- > 0;) {
      for (std::size_t k = i + 1; k < n_; ++k) v[i] -= at(k, i) * v[k];
      v[i] /= at(i, i);
    }
    return v;
  }

 private:
  std::size_t n_;
  std::vector<double> cells_;
};

double dot(const std::vector<double>& a, const std::vector<double>& b) {
  double sum = 0;
  for (std::size_t i = 0; i < a.size(); ++i) sum += a[i] * b[i];
  return sum;
}

// Of thousands of sources each: looked up, not searched for.
Estimate<Mass> sum_of(const Estimate<Mass>& a, const Estimate<Mass>& b, double sign) {
  std::vector<Contribution> all = a.contributions();
  std::unordered_map<std::string_view, std::size_t> index;
  for (std::size_t i = 0; i < a.contributions().size(); ++i)
    index.try_emplace(a.contributions()[i].source.name, i);
  for (const Contribution& c : b.contributions()) {
    const auto [at, fresh] = index.try_emplace(c.source.name, all.size());
    if (fresh) {
      all.push_back({c.source, sign * c.half_width});
    } else {
      all[at->second].half_width += sign * c.half_width;
    }
  }
  return Estimate<Mass>(a.value() + sign * b.value(), std::move(all));
}

struct StraightLine {
  Estimate<Mass> loss_per_day;
  double chi_squared = 0;
};

// One row of half-widths for each error source that any point names.
using SourceRows = std::map<ErrorSource, std::vector<double>>;

SourceRows rows_of(const std::vector<Estimate<Mass>>& y) {
  SourceRows rows;
  for (std::size_t i = 0; i < y.size(); ++i) {
    for (const Contribution& c : y[i].contributions()) {
      auto& row = rows.try_emplace(c.source, y.size(), 0.0).first->second;
      row[i] += c.half_width;
    }
  }
  return rows;
}

// What only one point names adds to the diagonal alone: nearly all of them.
void add_to(LowerRoot& covariance, const std::vector<double>& row) {
  std::vector<std::size_t> where;
  for (std::size_t i = 0; i < row.size(); ++i) {
    if (row[i] != 0) where.push_back(i);
  }
  for (std::size_t a = 0; a < where.size(); ++a) {
    for (std::size_t b = 0; b <= a; ++b) {
      covariance.at(where[a], where[b]) += row[where[a]] * row[where[b]];
    }
  }
}

StraightLine fit(const std::vector<double>& days_at, const std::vector<Estimate<Mass>>& y) {
  const std::size_t n = y.size();
  const SourceRows rows = rows_of(y);
  LowerRoot root(n);
  for (std::size_t i = 0; i < n; ++i) root.at(i, i) = rounding_kilograms * rounding_kilograms;
  for (const auto& [source, row] : rows) add_to(root, row);
  root.factor();
  std::vector<double> values(n), fall(n);
  for (std::size_t i = 0; i < n; ++i) {
    values[i] = in_kilograms(y[i].value());
    fall[i] = -days_at[i];
  }
  const std::vector<double> one = root.whiten(std::vector<double>(n, 1.0));
  const std::vector<double> slope = root.whiten(fall);
  const std::vector<double> seen = root.whiten(values);
  const double a = dot(one, one), b = dot(one, slope), c = dot(slope, slope);
  const double determinant = a * c - b * b;
  // The loss is a weighted sum of the points; the weights carry the errors.
  std::vector<double> weights(n);
  for (std::size_t i = 0; i < n; ++i) weights[i] = (a * slope[i] - b * one[i]) / determinant;
  const double loss = dot(weights, seen);
  const double start = (c * dot(one, seen) - b * dot(slope, seen)) / determinant;
  StraightLine out;
  for (std::size_t i = 0; i < n; ++i) {
    const double miss = seen[i] - start * one[i] - loss * slope[i];
    out.chi_squared += miss * miss;
  }
  // The covariance was in half-widths; chi squared is in deviations.
  out.chi_squared *= half_width_in_deviations * half_width_in_deviations;
  weights = root.unwhiten(std::move(weights));
  std::vector<Contribution> errors;
  double rounding = 0;
  for (const double w : weights) rounding += w * w * rounding_kilograms * rounding_kilograms;
  errors.push_back({{"rounding of the weighings"}, std::sqrt(rounding)});
  for (const auto& [source, row] : rows) errors.push_back({source, dot(weights, row)});
  out.loss_per_day = Estimate<Mass>(kilograms(loss), std::move(errors));
  return out;
}

double normal_below(double deviations) {
  return boost::math::cdf(boost::math::normal_distribution<>(0, 1), deviations);
}

// What is estimated scatters about the truth, and must come out above both the
// limit and what chance does.
Mass seen_nearly_always(Mass half_width, Mass limit) {
  const boost::math::normal_distribution<> standard(0, 1);
  const Mass deviation = half_width / half_width_in_deviations;
  const Mass called_from =
      std::max(limit, deviation * boost::math::quantile(standard, loss_sure_from));
  return called_from + deviation * boost::math::quantile(standard, loss_seen_chance);
}

std::optional<RangeError> check(std::span<const LedgerPoint> points) {
  if (auto bad =
          outside(Subject::weighings, static_cast<double>(points.size()), ledger_points_range))
    return *bad;
  for (std::size_t i = 0; i < points.size(); ++i) {
    for (const Estimate<Mass>* m : {&points[i].weighed, &points[i].expected_use}) {
      if (auto bad = outside(Subject::mass, in_kilograms(m->value()), ledger_mass_range))
        return *bad;
      if (auto bad = outside(Subject::mass, m->half_width(), ledger_error_range)) return *bad;
    }
    const double before = i == 0 ? -4e9 : std::nextafter(in_seconds(points[i - 1].at), 4e9);
    if (auto bad = outside(Subject::step_time, in_seconds(points[i].at), {before, 4e9}))
      return *bad;
  }
  const Duration span = points.back().at - points.front().at;
  if (auto bad = outside(Subject::duration, in_seconds(span), ledger_span_range)) return *bad;
  return std::nullopt;
}

}  // namespace

Result<UnexplainedLoss> unexplained_loss(std::span<const LedgerPoint> points, Mass limit_per_day) {
  if (const auto bad = check(points)) return std::unexpected(*bad);
  if (auto bad = outside(Subject::mass, in_kilograms(limit_per_day), {0.0, 100.0}))
    return std::unexpected(*bad);
  std::vector<double> days_at;
  std::vector<Estimate<Mass>> y;
  for (const LedgerPoint& p : points) {
    days_at.push_back(in_days(p.at - points.front().at));
    y.push_back(sum_of(p.weighed, p.expected_use, 1.0));
  }
  const StraightLine line = fit(days_at, y);
  UnexplainedLoss out;
  out.per_day = line.loss_per_day;
  const double deviation = out.per_day.half_width() / half_width_in_deviations;
  out.confidence = fraction(normal_below(in_kilograms(out.per_day.value()) / deviation));
  out.smallest_visible_per_day =
      seen_nearly_always(kilograms(out.per_day.half_width()), limit_per_day);
  if (out.confidence.count() >= loss_sure_from && out.per_day.value() >= limit_per_day)
    out.verdict = LossVerdict::unexplained;
  if (points.size() > 2) {
    const boost::math::chi_squared_distribution<> expected(static_cast<double>(points.size() - 2));
    out.steady =
        boost::math::cdf(boost::math::complement(expected, line.chi_squared)) >= line_refused_below;
  }
  for (std::size_t i = 1; i < points.size(); ++i) {
    const LedgerPoint &a = points[i - 1], &b = points[i];
    const auto weighed = sum_of(a.weighed, b.weighed, -1.0);
    const auto expected = sum_of(b.expected_use, a.expected_use, -1.0);
    out.between.push_back({a.at, b.at, weighed, expected, sum_of(weighed, expected, -1.0)});
  }
  return out;
}

Result<DaysLeft> days_left(const GasSpending& s) {
  for (const Estimate<Mass>* m : {&s.gas, &s.use_per_day, &s.loss_per_day}) {
    if (auto bad = outside(Subject::mass, in_kilograms(m->value()), ledger_mass_range))
      return std::unexpected(*bad);
    if (auto bad = outside(Subject::mass, m->half_width(), ledger_mass_range))
      return std::unexpected(*bad);
  }
  const auto spread = propagate_quantiles(
      [](Mass gas, Mass use, Mass loss) -> std::optional<Duration> {
        const double per_day = in_kilograms(use) + in_kilograms(loss);
        if (in_kilograms(gas) <= 0) return days(0);
        if (per_day <= 0) return std::nullopt;
        const Duration lasts = days(in_kilograms(gas) / per_day);
        return in_seconds(lasts) > ledger_span_range.high ? std::nullopt : std::optional(lasts);
      },
      s.gas, s.use_per_day, s.loss_per_day);
  return DaysLeft{spread.low, spread.median, spread.high};
}

Result<EnoughGas> enough_for(const Estimate<Mass>& gas, const Estimate<Mass>& planned,
                             const Estimate<Mass>& loss_per_day, Duration over) {
  for (const Estimate<Mass>* m : {&gas, &planned, &loss_per_day}) {
    if (auto bad = outside(Subject::mass, in_kilograms(m->value()), ledger_mass_range))
      return std::unexpected(*bad);
  }
  if (auto bad = outside(Subject::duration, in_seconds(over), {0.0, ledger_span_range.high}))
    return std::unexpected(*bad);
  EnoughGas out;
  out.left_after = sum_of(sum_of(gas, planned, -1.0), loss_per_day, -in_days(over));
  const double deviation = out.left_after.half_width() / half_width_in_deviations;
  const double left = in_kilograms(out.left_after.value());
  out.probability =
      fraction(deviation > 0 ? normal_below(left / deviation) : (left >= 0 ? 1.0 : 0.0));
  return out;
}

}  // namespace ullage::physics
