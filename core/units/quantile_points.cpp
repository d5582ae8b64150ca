// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/units/quantile_points.h"

#include <algorithm>
#include <boost/math/distributions/normal.hpp>
#include <cmath>
#include <numeric>
#include <stdexcept>
#include <utility>

namespace ullage::units {

namespace {

// A 95 % half-width in standard deviations.
const double sigmas_per_half_width = boost::math::quantile(boost::math::normal(), 0.975);

std::optional<double> finite_answer(const OffsetFunction& f, std::span<const double> offsets) {
  const std::optional<double> answer = f(offsets);
  return answer && std::isfinite(*answer) ? answer : std::nullopt;
}

// Which way in the space of errors the answer moves, as a unit vector; empty where it
// does not move. One side stands in for the other where that has no answer.
std::vector<double> steepest(std::size_t dimensions, const OffsetFunction& f) {
  std::vector<double> offsets(dimensions, 0.0);
  const std::optional<double> centre = finite_answer(f, offsets);
  std::vector<double> slope(dimensions, 0.0);
  double squares = 0;
  for (std::size_t i = 0; i < dimensions; ++i) {
    offsets[i] = 1.0;
    const auto up = finite_answer(f, offsets);
    offsets[i] = -1.0;
    const auto down = finite_answer(f, offsets);
    offsets[i] = 0.0;
    if (up && down) {
      slope[i] = (*up - *down) / 2.0;
    } else if (centre && (up || down)) {
      slope[i] = up ? *up - *centre : *centre - *down;
    }
    squares += slope[i] * slope[i];
  }
  if (!(squares > 0) || !std::isfinite(squares)) return {};
  for (double& s : slope) s /= std::sqrt(squares);
  return slope;
}

// The reflection that takes the first axis onto `direction`, applied in place.
// A rotation of independent normals leaves them independent normals.
void turn_first_axis_to(const std::vector<double>& direction, std::vector<double>& point) {
  std::vector<double> mirror = direction;
  mirror[0] -= 1.0;
  double length2 = 0;
  double along = 0;
  for (std::size_t i = 0; i < mirror.size(); ++i) {
    length2 += mirror[i] * mirror[i];
    along += mirror[i] * point[i];
  }
  if (length2 < 1e-24) return;  // the axis lies that way already
  for (std::size_t i = 0; i < point.size(); ++i) point[i] -= 2.0 * along / length2 * mirror[i];
}

// Points spread evenly over the unit cube: the first coordinate steps through the
// middles of equal strips, the others by the powers of 1 / g, where g is the
// root of g^dimensions = g + 1 (the golden ratio, generalised: the additive
// sequence R of M. Roberts). It was chosen over Sobol's sequence by measurement:
// with this few points its tails are two to three times closer.
class EvenPoints {
 public:
  explicit EvenPoints(std::size_t dimensions) : point_(dimensions, 0.0) {
    constexpr int enough = 64;  // each turn gains at least a bit
    for (int i = 0; i < enough; ++i) {
      root_ = std::pow(1.0 + root_, 1.0 / static_cast<double>(dimensions));
    }
  }

  const std::vector<double>& at(std::size_t index) {
    const double k = static_cast<double>(index) + 0.5;
    point_[0] = k / quantile_points;
    double step = 1.0;
    for (std::size_t i = 1; i < point_.size(); ++i) {
      step /= root_;
      const double along = 0.5 + k * step;
      point_[i] = along - std::floor(along);
    }
    return point_;
  }

 private:
  double root_ = 2.0;
  std::vector<double> point_;
};

}  // namespace

SortedAnswers::SortedAnswers(std::vector<double> answers, std::size_t points)
    : answers_(std::move(answers)), points_(points) {
  std::sort(answers_.begin(), answers_.end());
}

double SortedAnswers::share_answered() const {
  return static_cast<double>(answers_.size()) / static_cast<double>(points_);
}

std::optional<double> SortedAnswers::at(double probability) const {
  if (!(probability >= 0.01 && probability <= 0.99)) {
    throw std::out_of_range("a quantile is asked for outside 0.01 to 0.99");
  }
  if (points_ == 1) return answers_.empty() ? std::nullopt : std::optional(answers_.front());
  // The k-th of n answers stands for the probability (k + 1/2) / n.
  const double rank = probability * static_cast<double>(points_) - 0.5;
  const double below = std::floor(rank);
  const auto index = static_cast<std::size_t>(below);
  const double share = rank - below;
  if (index >= answers_.size()) return std::nullopt;
  if (share == 0) return answers_[index];
  if (index + 1 >= answers_.size()) return std::nullopt;
  return answers_[index] + share * (answers_[index + 1] - answers_[index]);
}

SortedAnswers sample_answers(std::size_t dimensions, const OffsetFunction& f) {
  if (dimensions == 0) {
    const auto only = finite_answer(f, {});
    return {only ? std::vector{*only} : std::vector<double>{}, 1};
  }
  const std::vector<double> direction = steepest(dimensions, f);
  const boost::math::normal standard;
  EvenPoints even(dimensions);
  std::vector<double> answers;
  answers.reserve(quantile_points);
  std::vector<double> point(dimensions);
  for (std::size_t k = 0; k < quantile_points; ++k) {
    const std::vector<double>& share = even.at(k);
    for (std::size_t i = 0; i < dimensions; ++i) {
      point[i] = boost::math::quantile(standard, share[i]) / sigmas_per_half_width;
    }
    if (!direction.empty()) turn_first_axis_to(direction, point);
    if (const auto answer = finite_answer(f, point)) answers.push_back(*answer);
  }
  return {std::move(answers), quantile_points};
}

// The lower triangular root of the inputs' correlation matrix, column by column
// (Cholesky); an input that the ones before it determine adds no column.
JointErrors::JointErrors(const std::vector<std::vector<double>>& half_widths_by_input)
    : rows_(half_widths_by_input.size()) {
  constexpr double determined = 1e-12;  // of a correlation of 1: rounding
  const std::size_t inputs = half_widths_by_input.size();
  const auto inner = [&](std::size_t a, std::size_t b) {
    return std::inner_product(half_widths_by_input[a].begin(), half_widths_by_input[a].end(),
                              half_widths_by_input[b].begin(), 0.0);
  };
  std::vector<double> width(inputs);
  for (std::size_t i = 0; i < inputs; ++i) width[i] = std::sqrt(inner(i, i));
  for (std::size_t i = 0; i < inputs; ++i) {
    if (!(width[i] > 0)) continue;
    // What the directions found so far leave of each input's correlation with i.
    const auto left_over = [&](std::size_t j) {
      const double known =
          std::inner_product(rows_[i].begin(), rows_[i].end(), rows_[j].begin(), 0.0);
      return inner(i, j) / (width[i] * width[j]) - known;
    };
    const double own = left_over(i);
    if (own < determined) continue;
    std::vector<double> column(inputs, 0.0);
    for (std::size_t j = 0; j < inputs; ++j) {
      if (j >= i && width[j] > 0) column[j] = left_over(j) / std::sqrt(own);
    }
    for (std::size_t j = 0; j < inputs; ++j) rows_[j].push_back(column[j]);
    ++dimensions_;
  }
  for (std::size_t i = 0; i < inputs; ++i) {
    for (double& r : rows_[i]) r *= width[i];
  }
}

double JointErrors::shift(std::size_t input, std::span<const double> offsets) const {
  return std::inner_product(rows_[input].begin(), rows_[input].end(), offsets.begin(), 0.0);
}

}  // namespace ullage::units
