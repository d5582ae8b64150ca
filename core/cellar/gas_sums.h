// SPDX-License-Identifier: GPL-3.0-or-later
//
// What many draws add up to by one moment after another, with the errors that
// they share. A cellar of 200 kegs names thousands of sources of error; those that
// matter most, and those that the weighings name too, keep their names. All others
// go together, as many "smaller causes" as there are moments asked for, so that
// what the sums of two moments share is exactly what it was.
#pragma once

#include <vector>

#include "core/cellar/plain_draws.h"
#include "core/cellar/readings.h"

namespace ullage::cellar {

class GasSums {
 public:
  // `moments` in rising order; by the first nothing is drawn.
  GasSums(std::vector<Instant> moments, const SourceTable& sources);
  void add(const PlainDraws&, const PlainDraws::Row&);
  // Sources of other estimates, which keep their names.
  void keep_names_of(const MassEstimate&);
  // All is added; sums are asked for at these of the moments.
  void finish(const std::vector<Instant>& asked);

  struct Left {
    double value = 0, half_width = 0;  // kg
  };
  // `start` (whose names are kept) less what was drawn by the i-th moment.
  [[nodiscard]] Left left(const MassEstimate& start, std::size_t moment) const;
  // Drawn by the i-th of the moments asked for.
  [[nodiscard]] MassEstimate drawn(std::size_t asked) const;

 private:
  struct Source {
    units::ErrorSource name;
    bool named = false;
    std::size_t first = 0;           // moment
    std::vector<double> half_width;  // added by that moment and those after it; finished, summed
    [[nodiscard]] double by(std::size_t moment) const;  // once finished
  };
  [[nodiscard]] std::size_t local(std::uint32_t source);
  [[nodiscard]] double& rest(std::size_t i, std::size_t j) {
    return rest_[i * moments_.size() + j];
  }
  [[nodiscard]] double rest(std::size_t i, std::size_t j) const {
    return rest_[i * moments_.size() + j];
  }
  void name_the_widest();
  void gather_rest();
  void factor_asked();

  std::vector<Instant> moments_;
  const SourceTable& table_;
  std::vector<std::int32_t> index_;  // of the table's sources among all_
  std::vector<Source> all_;
  std::vector<std::string> kept_;
  std::vector<double> value_;  // kg, by moment
  std::vector<double> rest_;   // covariance of the unnamed, by moment
  std::vector<std::size_t> asked_;
  std::vector<std::vector<double>> root_;  // its lower root at those asked for
};

// The same with all "smaller causes" as one: to be told, no more to be summed.
[[nodiscard]] MassEstimate smaller_causes_together(const MassEstimate&);

}  // namespace ullage::cellar
