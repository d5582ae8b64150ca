// SPDX-License-Identifier: GPL-3.0-or-later
//
// The fit of a hold test and its verdict, against a bare root solve.
#include <benchmark/benchmark.h>

#include <boost/math/tools/toms748_solve.hpp>
#include <cstdint>

#include "core/physics/atmosphere.h"
#include "core/physics/hold.h"
#include "core/physics/rescue.h"
#include "tests/bench/floor.h"

namespace ullage::bench {
namespace {

using namespace units;
using namespace physics;

physics::HoldReading bench_reading(int i, double hours_at, double psi_read) {
  return {hours(hours_at),
          Estimate<GaugePressure>(gauge_psi(psi_read))
              .with({"dial: bias"}, in_pascals(psi(2)))
              .with({"dial: reading " + std::to_string(i)}, in_pascals(psi(0.5))),
          Estimate<Temperature>(celsius(20 - i))
              .with({"thermometer: bias"}, 0.5)
              .with({"thermometer: reading " + std::to_string(i)}, 0.2)};
}

void hold_fit(benchmark::State& state) {
  HoldTest test;
  test.gas_space = litres(19.6);
  test.ambient = sea_level();
  for (int i = 0; i < state.range(0); ++i)
    test.readings.push_back(bench_reading(i, 24.0 * i, 30 - 1.5 * i));
  const AgainstFloor ratio(state);
  for (auto _ : state) benchmark::DoNotOptimize(judge_hold(test));
}
BENCHMARK(hold_fit)->Arg(2)->Arg(5)->Unit(benchmark::kMicrosecond);

void vents(benchmark::State& state) {
  const OverCarbonated keg{litres(19.9),
                           Estimate<Volume>(litres(18.9)).with({"level"}, 4e-4),
                           Estimate<Co2Volumes>(volumes_of_co2(3.7)).with({"CO2"}, 0.1),
                           Estimate<Temperature>(celsius(4)).with({"thermometer"}, 0.5),
                           sea_level(),
                           volumes_of_co2(2.5),
                           LogEstimate<Duration>(days(4), 2, {"uptake"})};
  const AgainstFloor ratio(state);
  for (auto _ : state) benchmark::DoNotOptimize(vents_to_target(keg));
}
BENCHMARK(vents)->Unit(benchmark::kMicrosecond);

void hold_floor_bare_root_solve(benchmark::State& state) {
  double target = 2;
  for (auto _ : state) {
    benchmark::DoNotOptimize(target);
    std::uintmax_t most = 50;
    benchmark::DoNotOptimize(boost::math::tools::toms748_solve(
        [target](double x) { return x * x * x - target; }, 0.0, 4.0,
        boost::math::tools::eps_tolerance<double>(40), most));
  }
}
BENCHMARK(hold_floor_bare_root_solve)->Unit(benchmark::kMicrosecond);

}  // namespace
}  // namespace ullage::bench
