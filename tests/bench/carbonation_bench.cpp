// SPDX-License-Identifier: GPL-3.0-or-later
//
// What the beer's state costs: a carbonation model over six months of logged
// gas, places and pours; what its readings teach; level from mixed evidence; the
// run-out forecast. Beside them a bare root solve and a bare exponential, the
// least that anything of the kind can cost.
#include <benchmark/benchmark.h>

#include <algorithm>
#include <boost/math/tools/toms748_solve.hpp>
#include <cmath>
#include <string>
#include <utility>
#include <vector>

#include "core/physics/atmosphere.h"
#include "core/physics/carbonation.h"
#include "core/physics/level_filter.h"
#include "core/physics/rate_posterior.h"
#include "core/physics/run_out.h"
#include "tests/bench/floor.h"

namespace ullage::bench {
namespace {

using namespace units;

void floor_root_solve(benchmark::State& state) {
  double target = 2.5;
  for (auto _ : state) {
    benchmark::DoNotOptimize(target);
    std::uintmax_t steps = 50;
    const auto root = boost::math::tools::toms748_solve(
        [&](double p) { return std::expm1(0.1 * p) - target; }, 0.0, 40.0,
        boost::math::tools::eps_tolerance<double>(40), steps);
    benchmark::DoNotOptimize(root);
  }
}
BENCHMARK(floor_root_solve);

void floor_exponential(benchmark::State& state) {
  double x = 0.7;
  for (auto _ : state) {
    benchmark::DoNotOptimize(x);
    benchmark::DoNotOptimize(std::exp(-x));
  }
}
BENCHMARK(floor_exponential);

// Half a year: a place read every day, gas changed every ten, a pour a day from
// the tenth day on, rocked once.
physics::CarbonationHistory half_year() {
  physics::CarbonationHistory h;
  h.brimful = litres(50.8);
  h.beer = litres(50);
  h.initial = Estimate<Co2Volumes>(volumes_of_co2(0.85)).with({"CO2 at fill"}, 0.1);
  h.ambient = Estimate<AbsolutePressure>(physics::sea_level()).with({"weather"}, 2000);
  const auto place = [](double c, int n) {
    return Estimate<Temperature>(celsius(c))
        .with({"display: bias"}, 2.0)
        .with({"display: reading " + std::to_string(n)}, 0.5);
  };
  h.start = place(12, -1);
  for (int d = 0; d < 183; ++d) {
    h.steps.push_back({days(d), physics::PlaceChanged{place(3 + std::sin(d), d)}});
    if (d % 10 == 0) {
      h.steps.push_back(
          {days(d), physics::GasOn{Estimate<GaugePressure>(gauge_psi(11 + d % 3))
                                       .with({"dial: bias"}, in_pascals(psi(2)))
                                       .with({"dial: reading " + std::to_string(d)}, 3447)}});
    }
    if (d == 2) h.steps.push_back({days(d), physics::Rocked{minutes(5)}});
    if (d >= 10) h.steps.push_back({days(d + 0.5), physics::BeerDrawn{litres(0.25)}});
  }
  return h;
}

physics::CarbonationRates rates() {
  return physics::carbonation_priors(litres(50.8), litres(50), "K01").value();
}

void carbonation_half_year(benchmark::State& state) {
  const physics::CarbonationHistory h = half_year();
  const physics::CarbonationRates r = rates();
  const AgainstFloor ratio(state);
  for (auto _ : state) benchmark::DoNotOptimize(physics::CarbonationModel::make(h, r, days(200)));
}
BENCHMARK(carbonation_half_year)->Unit(benchmark::kMicrosecond);

// The same half year with more in it: closed for a day in each ten, on mixed gas in
// its second half, vented now and then, and its CO2 read every other week, which the
// model learns from.
physics::CarbonationHistory eventful_half_year() {
  physics::CarbonationHistory h = half_year();
  std::vector<physics::Step> steps;
  for (const physics::Step& step : h.steps) {
    const int day = static_cast<int>(in_days(step.at));
    if (const auto* gas = get_if<physics::GasOn>(&step.what)) {
      if (day > 0) {
        steps.push_back({days(day - 0.0001), physics::GasOff{}});
        steps.push_back({days(day), physics::Vented{gauge_psi(5)}});
      }
      physics::GasOn again = *gas;
      if (day >= 90) again.co2 = mole_fraction(0.7);
      steps.push_back({days(day + (day > 0 ? 0.9 : 0)), again});
      continue;
    }
    steps.push_back(step);
  }
  std::stable_sort(steps.begin(), steps.end(),
                   [](const auto& a, const auto& b) { return a.at < b.at; });
  h.steps = std::move(steps);
  for (int n = 0; n < 12; ++n) {
    const std::string name = "meter: reading " + std::to_string(n);
    h.readings.push_back(
        {days(5 + 14.0 * n), Estimate<Co2Volumes>(volumes_of_co2(2.3)).with({name}, 0.3)});
  }
  return h;
}

void carbonation_half_year_eventful(benchmark::State& state) {
  const physics::CarbonationHistory h = eventful_half_year();
  const physics::CarbonationRates r = rates();
  if (!physics::CarbonationModel::make(h, r, days(200))) state.SkipWithError("refused");
  const AgainstFloor ratio(state);
  for (auto _ : state) benchmark::DoNotOptimize(physics::CarbonationModel::make(h, r, days(200)));
}
BENCHMARK(carbonation_half_year_eventful)->Unit(benchmark::kMicrosecond);

void carbonation_half_year_now(benchmark::State& state) {
  const auto model = physics::CarbonationModel::make(half_year(), rates(), days(200)).value();
  const AgainstFloor ratio(state);
  for (auto _ : state) benchmark::DoNotOptimize(model.co2_at(days(190)));
}
BENCHMARK(carbonation_half_year_now)->Unit(benchmark::kMicrosecond);

void rate_fit(benchmark::State& state) {
  physics::CarbonationHistory h = half_year();
  for (int n = 0; n < state.range(0); ++n) {
    const std::string name = "meter: reading " + std::to_string(n);
    h.readings.push_back(
        {days(3 + 12.0 * n), Estimate<Co2Volumes>(volumes_of_co2(2.4)).with({name}, 0.3)});
  }
  const physics::CarbonationRates r = rates();
  const AgainstFloor ratio(state);
  for (auto _ : state) benchmark::DoNotOptimize(physics::rate_posterior(h, r));
}
BENCHMARK(rate_fit)->Arg(1)->Arg(4)->Arg(12)->Unit(benchmark::kMicrosecond);

void level_fusion(benchmark::State& state) {
  physics::LevelHistory h{litres(50.8), Estimate<Volume>(litres(50)).with({"fill"}, 1e-3), {}};
  h.steps.push_back({days(1), physics::PutOnTap{}});
  for (int d = 2; d < 32; ++d) {
    const std::string name = "scale: reading " + std::to_string(d);
    const auto left = Estimate<Volume>(litres(50 - 1.5 * d));
    h.steps.push_back(
        {days(d),
         physics::LevelRead{
             left.with({"tare"}, 1.5e-3).with({"scale: bias"}, 0.3e-3).with({name}, 0.1e-3)}});
  }
  const AgainstFloor ratio(state);
  for (auto _ : state) benchmark::DoNotOptimize(physics::LevelFilter::make(h));
}
BENCHMARK(level_fusion)->Unit(benchmark::kMicrosecond);

void run_out_forecast(benchmark::State& state) {
  physics::RunOutQuestion q{Estimate<Volume>(litres(30)).with({"left"}, 1e-3), {}, 3, 0.4};
  for (int i = 0; i < 60; ++i) {
    physics::SpanOnTap span;
    span.days[static_cast<std::size_t>(i % 7)] = 1;
    span.days[static_cast<std::size_t>((i + 1) % 7)] = 1;
    span.drawn = Estimate<Volume>(litres(4 + i % 5)).with({"read"}, 3e-4);
    q.seen.push_back(span);
  }
  const AgainstFloor ratio(state);
  for (auto _ : state) benchmark::DoNotOptimize(physics::run_out(q));
}
BENCHMARK(run_out_forecast)->Unit(benchmark::kMicrosecond);

}  // namespace
}  // namespace ullage::bench
