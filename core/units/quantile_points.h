// SPDX-License-Identifier: GPL-3.0-or-later
//
// The points at which propagate_quantiles looks, and the quantiles of what it
// finds: the part that knows nothing of quantities.
#pragma once

#include <cstddef>
#include <functional>
#include <optional>
#include <span>
#include <vector>

namespace ullage::units {

// How often the function is called for its distribution.
inline constexpr std::size_t quantile_points = 256;

// A function of independent normal numbers, each in units of its own 95 %
// half-width. Nothing: there is no answer there.
using OffsetFunction = std::function<std::optional<double>(std::span<const double>)>;

// The answers in rising order. A point without an answer counts as above every
// answer: a level that is never reached is reached later than any time.
class SortedAnswers {
 public:
  SortedAnswers(std::vector<double> answers, std::size_t points);

  // The value below which the share `probability` lies, between the two nearest
  // answers; nothing where that share is not answered. 0.01 to 0.99: further out
  // so few points know nothing (std::out_of_range, a bug in the caller).
  [[nodiscard]] std::optional<double> at(double probability) const;
  [[nodiscard]] double share_answered() const;

 private:
  std::vector<double> answers_;
  std::size_t points_;
};

// Calls f 1 + 2 dimensions + quantile_points times, or once for no dimension.
[[nodiscard]] SortedAnswers sample_answers(std::size_t dimensions, const OffsetFunction& f);

// The errors of several inputs, said with as few independent numbers as will do.
// Each input comes as a row of contributions, one entry a source; however many
// sources there are, their joint normal distribution has no more independent
// directions than there are inputs.
class JointErrors {
 public:
  explicit JointErrors(const std::vector<std::vector<double>>& half_widths_by_input);

  [[nodiscard]] std::size_t dimensions() const { return dimensions_; }
  // How far `input` stands off when the independent numbers are `offsets`.
  [[nodiscard]] double shift(std::size_t input, std::span<const double> offsets) const;

 private:
  std::vector<std::vector<double>> rows_;  // input by dimension
  std::size_t dimensions_ = 0;
};

}  // namespace ullage::units
