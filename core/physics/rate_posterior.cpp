// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/physics/rate_posterior.h"

#include <algorithm>
#include <boost/math/special_functions/gamma.hpp>
#include <cmath>
#include <numeric>
#include <span>
#include <utility>

#include "core/physics/carbonation_solver.h"
#include "core/physics/conditioning.h"
#include "core/physics/rate_readings.h"
#include "core/physics/reading_spread.h"
#include "core/physics/small_matrix.h"

namespace ullage::physics {

using namespace units;

namespace {

// x is counted in the prior's half-widths, as every offset is.
constexpr double rate_sigmas = 1.959963984540054;  // of a 95 % half-width
constexpr std::size_t grid_count = 89;
constexpr double grid_spacing = 2 * furthest_x / (grid_count - 1);
constexpr double conflict_below = 0.001;

double grid_x(std::size_t i) { return -furthest_x + grid_spacing * static_cast<double>(i); }

// At one x: how likely the readings are, and what they say of the other sources.
struct Judged {
  double log_likelihood = 0;
  double squares = 0;  // of the misfit in its own standard deviations
};

double sum_of_squares(const std::vector<double>& v) {
  return std::inner_product(v.begin(), v.end(), v.begin(), 0.0);
}

Judged judge_rate(const RateReadings& readings, double x) {
  const Misfit m = readings.at(x);
  const Cholesky spread = readings.spread_of(m);
  const double squares = rate_sigmas * rate_sigmas * sum_of_squares(spread.forward(m.values));
  return {-0.5 * squares - spread.half_log_determinant(), squares};
}

struct XBand {
  double low, median, high;
  double agreement;
};

// Quantiles of the posterior, by the trapezoid rule on the grid.
XBand posterior_of_x(const RateReadings& readings) {
  std::vector<double> log_density(grid_count);
  double least_squares = 1e300;
  for (std::size_t i = 0; i < grid_count; ++i) {
    const double prior_squares = std::pow(rate_sigmas * grid_x(i), 2);
    const Judged j = judge_rate(readings, grid_x(i));
    log_density[i] = j.log_likelihood - 0.5 * prior_squares;
    least_squares = std::min(least_squares, j.squares + prior_squares);
  }
  const double top = *std::max_element(log_density.begin(), log_density.end());
  std::vector<double> below(grid_count, 0.0);
  for (std::size_t i = 1; i < grid_count; ++i) {
    below[i] =
        below[i - 1] + 0.5 * (std::exp(log_density[i - 1] - top) + std::exp(log_density[i] - top));
  }
  const auto quantile = [&](double p) {
    const double wanted = p * below.back();
    const auto at = std::lower_bound(below.begin() + 1, below.end() - 1, wanted);
    const auto i = static_cast<std::size_t>(at - below.begin());
    const double step = below[i] - below[i - 1];
    return grid_x(i - 1) + grid_spacing * (step > 0 ? (wanted - below[i - 1]) / step : 0.5);
  };
  const double half_count = 0.5 * static_cast<double>(readings.count());
  return {quantile(0.025), quantile(0.5), quantile(0.975),
          boost::math::gamma_q(half_count, 0.5 * least_squares)};
}

// Given x: where the other sources stand, and how they may still vary (L L^T, in
// squared half-widths).
struct Others {
  std::vector<double> mean;
  SmallMatrix covariance;
};

Others others_at(const RateReadings& readings, double x) {
  const std::size_t n = readings.sources().size();
  const InSpread there = readings.in_spread(readings.at(x));
  const std::vector<std::vector<double>>& column = there.columns;
  Others out{there.wanted(), SmallMatrix(n, n)};
  for (std::size_t s = 0; s < n; ++s) {
    for (std::size_t r = 0; r < n; ++r)
      out.covariance(s, r) =
          (s == r ? 1.0 : 0.0) -
          std::inner_product(column[s].begin(), column[s].end(), column[r].begin(), 0.0);
  }
  return out;
}

std::vector<Shift> shifts_at(const PlainHistory& history, const RateReadings& readings, double x,
                             const std::vector<double>& others) {
  std::vector<Shift> out{{history.source(history.resting.source), x}};
  for (std::size_t s = 0; s < others.size(); ++s)
    out.push_back({history.source(readings.sources()[s]), others[s]});
  return out;
}

Conditioning conditioning_of(const PlainHistory& history, const RateReadings& readings,
                             const XBand& x) {
  const Others middle = others_at(readings, x.median);
  Conditioning out{shifts_at(history, readings, x.median, middle.mean), {}};
  // Along the rate the other sources go where the readings then want them.
  out.directions.push_back({history.source(history.resting.source),
                            shifts_at(history, readings, x.high, others_at(readings, x.high).mean),
                            shifts_at(history, readings, x.low, others_at(readings, x.low).mean)});
  const std::size_t n = readings.sources().size();
  const Cholesky spread(middle.covariance, n);
  for (std::size_t s = 0; s < n; ++s) {
    std::vector<double> up = middle.mean;
    std::vector<double> down = middle.mean;
    for (std::size_t r = s; r < n; ++r) {
      up[r] += spread.lower()(r, s);
      down[r] -= spread.lower()(r, s);
    }
    out.directions.push_back({history.source(readings.sources()[s]),
                              shifts_at(history, readings, x.median, up),
                              shifts_at(history, readings, x.median, down)});
  }
  return out;
}

RateBand band_of(const PlainRate& rate, double low, double median, double high) {
  const auto at = [&](double x) { return seconds(rate.median_s * std::exp(rate.log_factor * x)); };
  return {at(low), at(median), at(high)};
}

}  // namespace

Conditioning unconditioned(const PlainHistory& history) {
  Conditioning out;
  for (std::size_t i = 0; i < history.source_count(); ++i) {
    if (!history.used(i) || history.pooled(i)) continue;
    const ErrorSource& source = history.source(i);
    std::vector<Shift> down;
    if (!history.straight(i)) down.push_back({source, -1});
    out.directions.push_back({source, {{source, 1}}, std::move(down)});
  }
  return out;
}

Learned learn(const PlainHistory& history, const std::vector<Co2Reading>& readings) {
  RatePosterior rate;
  rate.readings = static_cast<int>(readings.size());
  rate.prior = rate.posterior = band_of(history.resting, -1, 0, 1);
  const RateReadings against(history, readings);
  const XBand x = posterior_of_x(against);
  rate.agreement = x.agreement;
  rate.fits = x.agreement >= conflict_below;
  if (!rate.fits) return {rate, unconditioned(history)};
  rate.posterior = band_of(history.resting, x.low, x.median, x.high);
  return {rate, conditioning_of(history, against, x)};
}

Result<Estimate<Co2Volumes>> co2_by_history(const CarbonationHistory& history,
                                            const CarbonationRates& rates, Duration at) {
  const Duration last = history.steps.empty() ? seconds(0) : history.steps.back().at;
  const Duration left = std::max(Duration(at - last), seconds(0));
  if (const auto bad = check_history(history, rates, left + minutes(1)))
    return std::unexpected(*bad);
  if (auto bad = outside(Subject::duration, in_seconds(at), {0.0, in_seconds(last + left)}))
    return std::unexpected(*bad);
  const PlainHistory plain(history, rates);
  const Conditioning each_alone = unconditioned(plain);
  std::vector<Offsets> runs{Offsets(plain.source_count(), 0.0)};
  for (const Conditioning::Direction& d : each_alone.directions) {
    runs.push_back(plain.offsets(d.up));
    if (!d.down.empty()) runs.push_back(plain.offsets(d.down));
  }
  const double time = in_seconds(at);
  const auto co2 = co2_of_runs(plain, runs, std::span(&time, 1));
  const double centre = co2.front().front();
  std::vector<Contribution> out;
  auto run = co2.begin() + 1;
  for (const Conditioning::Direction& d : each_alone.directions) {
    const double up = (*run++).front();
    const double down = d.down.empty() ? 2 * centre - up : (*run++).front();
    out.push_back({d.name, (up - down) / 2});
  }
  if (plain.pools()) {
    const auto way = Trajectory::solve(plain, runs.front(), seconds(time + 1), Settling::skip);
    out.push_back(
        {repeatability_of_readings(), ReadingSpread(way, pooled_steps(plain)).half_width(at)});
  }
  return Estimate<Co2Volumes>(volumes_of_co2(centre), std::move(out));
}

Result<RatePosterior> rate_posterior(const CarbonationHistory& history,
                                     const CarbonationRates& rates) {
  Duration horizon = days(1);
  const Duration last = history.steps.empty() ? seconds(0) : history.steps.back().at;
  for (const Co2Reading& r : history.readings)
    horizon = std::max(horizon, Duration(r.at - last + seconds(1)));
  if (const auto bad = check_history(history, rates, horizon)) return std::unexpected(*bad);
  if (auto bad = outside(Subject::cycles, static_cast<double>(history.readings.size()), {1.0, 1e6}))
    return std::unexpected(*bad);
  return learn(PlainHistory(history, rates), history.readings).rate;
}

}  // namespace ullage::physics
