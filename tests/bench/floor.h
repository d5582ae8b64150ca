// SPDX-License-Identifier: GPL-3.0-or-later
//
// How many bare root solves a measured computation costs, printed beside it as
// `root_solves`: a bracketed solve of a cubic to 40 bits, measured once in the same
// run. `const AgainstFloor ratio(state);` before the loop is all it takes.
#pragma once

#include <benchmark/benchmark.h>

#include <algorithm>
#include <boost/math/tools/toms748_solve.hpp>
#include <chrono>
#include <cstdint>

namespace ullage::bench {

inline double bare_root(double target) {
  std::uintmax_t most = 50;
  return boost::math::tools::toms748_solve([target](double x) { return x * x * x - target; }, 0.0,
                                           4.0, boost::math::tools::eps_tolerance<double>(40), most)
      .first;
}

// The best of some rounds: what the machine does otherwise only ever adds.
inline double root_solve_seconds() {
  static const double best = [] {
    constexpr int rounds = 20;
    constexpr int solves = 2000;
    double least = 1e9;
    for (int round = 0; round < rounds; ++round) {
      const auto start = std::chrono::steady_clock::now();
      for (int i = 0; i < solves; ++i) benchmark::DoNotOptimize(bare_root(2.0 + 1e-3 * i));
      const std::chrono::duration<double> taken = std::chrono::steady_clock::now() - start;
      least = std::min(least, taken.count() / solves);
    }
    return least;
  }();
  return best;
}

class AgainstFloor {
 public:
  explicit AgainstFloor(benchmark::State& state) : state_(state), floor_(root_solve_seconds()) {
    start_ = std::chrono::steady_clock::now();
  }
  AgainstFloor(const AgainstFloor&) = delete;
  AgainstFloor& operator=(const AgainstFloor&) = delete;
  ~AgainstFloor() {
    const std::chrono::duration<double> taken = std::chrono::steady_clock::now() - start_;
    const auto times =
        static_cast<double>(std::max<benchmark::IterationCount>(1, state_.iterations()));
    state_.counters["root_solves"] = taken.count() / times / floor_;
  }

 private:
  benchmark::State& state_;
  double floor_;
  std::chrono::steady_clock::time_point start_;
};

}  // namespace ullage::bench
