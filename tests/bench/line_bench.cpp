// SPDX-License-Identifier: GPL-3.0-or-later
//
// Solving a pour and its profile, beside the floor: the same bracketing solver on
// a function of one logarithm. Target: a pour under 20 us.
#include <benchmark/benchmark.h>

#include <boost/math/tools/toms748_solve.hpp>
#include <cmath>
#include <cstdint>

#include "core/physics/atmosphere.h"
#include "core/physics/break_out.h"
#include "core/physics/line_calibration.h"
#include "tests/bench/floor.h"

namespace ullage::bench {
namespace {

using namespace physics;

// Coupler, cold hose, warm tower, shank and faucet: an ordinary line in full.
LineFlow ordinary_line() {
  const units::Length wall = drawn_tube_roughness();
  return LineFlow::make({Fitting{units::psi(0.3)},
                         Hose{units::feet(6), units::inches(0.1875), wall, units::feet(0.5)},
                         Hose{units::feet(2), units::inches(0.25), wall, units::feet(2)},
                         Fitting{units::psi(0.2)}, Fitting{units::psi(0.5)}},
                        *flowing_beer(units::celsius(4)))
      .value();
}

void bare_root_solve(benchmark::State& state) {
  double target = 12;
  for (auto _ : state) {
    benchmark::DoNotOptimize(target);
    std::uintmax_t steps = 60;
    const auto f = [&](double x) { return 1.8 * x + std::log(1 + std::exp(x)) - target; };
    benchmark::DoNotOptimize(boost::math::tools::toms748_solve(
        f, -20.0, 20.0, boost::math::tools::eps_tolerance<double>(40), steps));
  }
}
BENCHMARK(bare_root_solve);

void pour_solve(benchmark::State& state) {
  const LineFlow line = ordinary_line();
  double psi = 12;
  const AgainstFloor ratio(state);
  for (auto _ : state) {
    benchmark::DoNotOptimize(psi);
    benchmark::DoNotOptimize(line.flow_at(units::gauge_psi(psi)));
  }
}
BENCHMARK(pour_solve);

void pour_profile(benchmark::State& state) {
  const LineFlow line = ordinary_line();
  double psi = 12;
  const AgainstFloor ratio(state);
  for (auto _ : state) {
    benchmark::DoNotOptimize(psi);
    benchmark::DoNotOptimize(line.profile_pouring(units::gauge_psi(psi)));
  }
}
BENCHMARK(pour_profile);

void bore_solve(benchmark::State& state) {
  const LineFlow line = ordinary_line();
  const AgainstFloor ratio(state);
  for (auto _ : state) {
    benchmark::DoNotOptimize(line.bore_for(1, units::gauge_psi(12), nominal_pour()));
  }
}
BENCHMARK(bore_solve);

void pour_with_error(benchmark::State& state) {
  const LineFlow line = ordinary_line();
  using units::Estimate;
  const PourInputs in{
      Estimate<BoreFactor>(BoreFactor(0.95)).with({"bore"}, 0.08),
      Estimate<units::GaugePressure>(units::gauge_psi(12)).with({"dial"}, units::psi(2).value()),
      Estimate<units::Temperature>(units::celsius(4)).with({"thermometer"}, 0.5),
      units::specific_gravity(1.010), ordinary_viscosity_factor({"viscosity"})};
  const AgainstFloor ratio(state);
  for (auto _ : state) benchmark::DoNotOptimize(pour_flow(line.parts(), in));
}
BENCHMARK(pour_with_error);

}  // namespace
}  // namespace ullage::bench
