// SPDX-License-Identifier: GPL-3.0-or-later
//
// The spread that the many small, independent errors of single readings (a
// dial's repeatability at each setting, a thermometer's at each look) leave in
// the beer's CO2. Running the whole history once up and once down for each would
// cost as many runs as there are readings; their effect is small and nearly
// linear, so it is followed along the centre run instead:
//
//   while gas flows   da/dt = -lambda a + k (dCeq/dx) e    for the reading in force
//                     dV/dt = -2 lambda V                  for those before it
//   while shut        nothing moves (the closed keg keeps what it has)
//
// with e the reading's half-width. Internal to core/physics.
#pragma once

#include <vector>

#include "core/physics/carbonation_solver.h"

namespace ullage::physics {

// For each step, the summed squares of the half-widths followed this way.
struct PooledStep {
  units::Duration at;
  enum class Kind { pressure, place, co2_read } kind = Kind::pressure;
  double squared_half_width = 0;  // a CO2 reading wipes out what was there before it
};

[[nodiscard]] std::vector<PooledStep> pooled_steps(const PlainHistory&);
// What they come out as, together.
[[nodiscard]] inline units::ErrorSource repeatability_of_readings() {
  return {"repeatability of readings"};
}

class ReadingSpread {
 public:
  ReadingSpread() = default;
  ReadingSpread(const Trajectory& centre, const std::vector<PooledStep>& steps);

  // 95 % half-width in volumes.
  [[nodiscard]] double half_width(units::Duration) const;
  [[nodiscard]] double half_width_at_rest() const;
  [[nodiscard]] bool empty() const { return nodes_.empty(); }

 private:
  // Amplitudes in volumes at the start of a piece of the centre run.
  struct Node {
    double start_s = 0;
    double lambda = 0;  // 0 where shut
    double pressure = 0;
    double pressure_rest = 0;  // where `pressure` heads for
    double place = 0;
    double place_rest = 0;
    double before_squared = 0;
  };
  [[nodiscard]] static Node after(const Node&, double seconds);
  std::vector<Node> nodes_;
};

}  // namespace ullage::physics
