// SPDX-License-Identifier: GPL-3.0-or-later
//
// Readings of a keg's CO2 against the model, as a straight line in every source of error
// but the rate, at each rate. Internal to core/physics; rate_posterior.h says what for.
//
// Readings and model are run at nine rates, once plain and once with each source moved;
// between them by cubics. A rate of rocking is known to a factor of three only, and what
// the beer takes up by it is no straight line in that. So where the keg was rocked before
// a reading the line is drawn again about where the readings want the sources, up to
// four times (Gauss and Newton).
#pragma once

#include <array>
#include <cstddef>
#include <vector>

#include "core/physics/plain_history.h"
#include "core/physics/small_matrix.h"

namespace ullage::physics {

// The rate is x, in its prior's half-widths, from -furthest_x up to it.
inline constexpr double furthest_x = 2.2;  // 4.3 standard deviations either way

// At one x: misfit y - C, and how each followed source moves it.
struct Misfit {
  std::vector<double> values;  // reading by reading
  SmallMatrix by_source;       // reading, source
};

// The same in units of the readings' own spread, all sources in it.
struct InSpread {
  std::vector<double> misfit;
  std::vector<std::vector<double>> columns;  // source by source
  // Where the readings want each source.
  [[nodiscard]] std::vector<double> wanted() const;
};

class RateReadings {
 public:
  // Both must outlive it.
  RateReadings(const PlainHistory&, const std::vector<Co2Reading>&);

  [[nodiscard]] std::size_t count() const { return readings_.size(); }
  // What moves the model, the rate apart.
  [[nodiscard]] const std::vector<std::size_t>& sources() const { return sources_; }
  [[nodiscard]] Misfit at(double x) const;
  // Covariance of the readings at an x, all sources in it, in squared half-widths.
  [[nodiscard]] Cholesky spread_of(const Misfit&) const;
  [[nodiscard]] InSpread in_spread(const Misfit&) const;

 private:
  // A straight line about `others`: what the model says where they are nothing, and
  // how far a half-width of each moves it.
  struct Node {
    std::vector<double> others;
    std::vector<double> co2;
    SmallMatrix moved;
    bool stands = false;  // about where the readings want the sources, near enough
  };
  // The misfit by what a node says, or what stands between nodes.
  [[nodiscard]] Misfit misfit_of(const std::vector<double>& co2, const SmallMatrix& moved) const;
  using Runs = std::vector<std::vector<double>>::const_iterator;

  void take_apart();
  void add_pooled();
  [[nodiscard]] bool rocks(std::size_t source) const { return source == history_.rocking.source; }
  // Else it comes in after the last reading, and no run need show that it moves none.
  [[nodiscard]] bool is_read(std::size_t source) const {
    return history_.moves_from(source) <= last_read_s_;
  }
  void run_nodes();
  Runs straighten(Node&, Runs) const;
  [[nodiscard]] bool rocking_tells() const;
  bool go_to_wanted(Node&) const;
  bool all_go_to_wanted();

  const PlainHistory& history_;
  const std::vector<Co2Reading>& readings_;
  std::vector<std::size_t> sources_;
  double last_read_s_ = 0;
  SmallMatrix in_reading_;
  SmallMatrix own_;
  std::vector<Node> nodes_;
};

}  // namespace ullage::physics
