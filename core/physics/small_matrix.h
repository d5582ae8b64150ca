// SPDX-License-Identifier: GPL-3.0-or-later
//
// Symmetric matrices of a few rows, as sums of squares of errors make them.
// Internal to core/physics.
#pragma once

#include <cmath>
#include <cstddef>
#include <span>
#include <vector>

namespace ullage::physics {

class SmallMatrix {
 public:
  SmallMatrix() = default;
  SmallMatrix(std::size_t rows, std::size_t columns)
      : columns_(columns), values_(rows * columns, 0.0) {}

  [[nodiscard]] double& operator()(std::size_t row, std::size_t column) {
    return values_[row * columns_ + column];
  }
  [[nodiscard]] double operator()(std::size_t row, std::size_t column) const {
    return values_[row * columns_ + column];
  }

 private:
  std::size_t columns_ = 0;
  std::vector<double> values_;
};

// S = L L^T of a positive semi-definite S; a direction without any extent gets
// a column of zeros.
class Cholesky {
 public:
  Cholesky(const SmallMatrix& s, std::size_t rows) : rows_(rows), lower_(rows, rows) {
    for (std::size_t j = 0; j < rows; ++j) {
      double left = s(j, j);
      for (std::size_t k = 0; k < j; ++k) left -= lower_(j, k) * lower_(j, k);
      if (left <= 1e-12 * s(j, j) || left <= 0) continue;
      lower_(j, j) = std::sqrt(left);
      for (std::size_t i = j + 1; i < rows; ++i) {
        double sum = s(i, j);
        for (std::size_t k = 0; k < j; ++k) sum -= lower_(i, k) * lower_(j, k);
        lower_(i, j) = sum / lower_(j, j);
      }
    }
  }

  [[nodiscard]] const SmallMatrix& lower() const { return lower_; }
  // L^-1 b: its sum of squares is b^T S^-1 b.
  [[nodiscard]] std::vector<double> forward(std::span<const double> b) const {
    std::vector<double> y(b.begin(), b.end());
    for (std::size_t i = 0; i < rows_; ++i) {
      for (std::size_t k = 0; k < i; ++k) y[i] -= lower_(i, k) * y[k];
      y[i] = lower_(i, i) > 0 ? y[i] / lower_(i, i) : 0;
    }
    return y;
  }
  // Half the logarithm of the determinant.
  [[nodiscard]] double half_log_determinant() const {
    double sum = 0;
    for (std::size_t i = 0; i < rows_; ++i) {
      if (lower_(i, i) > 0) sum += std::log(lower_(i, i));
    }
    return sum;
  }

 private:
  std::size_t rows_;
  SmallMatrix lower_;
};

}  // namespace ullage::physics
