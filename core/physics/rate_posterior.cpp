// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/physics/rate_posterior.h"

#include <algorithm>
#include <array>
#include <boost/math/special_functions/gamma.hpp>
#include <cmath>
#include <map>
#include <numeric>

#include "core/physics/carbonation_solver.h"
#include "core/physics/conditioning.h"
#include "core/physics/reading_spread.h"
#include "core/physics/small_matrix.h"

namespace ullage::physics {

using namespace units;

namespace {

// x is counted in the prior's half-widths, as every offset is.
constexpr double rate_sigmas = 1.959963984540054;  // of a 95 % half-width
constexpr double furthest_x = 2.2;                 // 4.3 standard deviations either way
constexpr std::size_t node_count = 9;              // runs of the model
constexpr double node_spacing = 2 * furthest_x / (node_count - 1);
constexpr std::size_t grid_count = 89;
constexpr double grid_spacing = 2 * furthest_x / (grid_count - 1);
constexpr double least_own_error = 1e-4;  // volumes: no reading is exact
constexpr double conflict_below = 0.001;

double grid_x(std::size_t i) { return -furthest_x + grid_spacing * static_cast<double>(i); }

// What the sources are to the model alone: those that move it, the rate apart.
std::vector<std::size_t> followed_sources(const PlainHistory& history) {
  std::vector<std::size_t> out;
  for (std::size_t i = 0; i < history.source_count(); ++i) {
    if (i != history.resting.source && history.used(i) && !history.pooled(i)) out.push_back(i);
  }
  return out;
}

// The readings against the model, at one x: misfit y - C, and how each followed
// source moves it.
struct Misfit {
  std::vector<double> values;  // reading by reading
  SmallMatrix by_source;       // reading, source
};

class RateReadings {
 public:
  RateReadings(const PlainHistory& history, const std::vector<Co2Reading>& readings)
      : history_(history),
        readings_(readings),
        sources_(followed_sources(history)),
        in_reading_(readings.size(), sources_.size()),
        own_(readings.size(), readings.size()) {
    take_apart();
    run_nodes();
    add_pooled();
  }

  [[nodiscard]] std::size_t count() const { return readings_.size(); }
  [[nodiscard]] const std::vector<std::size_t>& sources() const { return sources_; }
  [[nodiscard]] const SmallMatrix& own() const { return own_; }

  [[nodiscard]] Misfit at(double x) const {
    Misfit out{std::vector<double>(count()), SmallMatrix(count(), sources_.size())};
    const double place = std::clamp((x + furthest_x) / node_spacing, 0.0, node_count - 1.0);
    const std::size_t first =
        std::min<std::size_t>(node_count - 4, static_cast<std::size_t>(std::max(0.0, place - 1)));
    const std::array<double, 4> w = weights(place - static_cast<double>(first));
    for (std::size_t i = 0; i < count(); ++i) {
      double model = 0;
      for (std::size_t k = 0; k < 4; ++k) model += w[k] * nodes_[first + k].co2[i];
      out.values[i] = readings_[i].co2.value().count() - model;
      for (std::size_t s = 0; s < sources_.size(); ++s) {
        double moved = -in_reading_(i, s);
        for (std::size_t k = 0; k < 4; ++k) moved += w[k] * nodes_[first + k].moved(i, s);
        out.by_source(i, s) = moved;
      }
    }
    return out;
  }

 private:
  struct Node {
    std::vector<double> co2;
    SmallMatrix moved;
  };

  // Lagrange's cubic through four even points, `t` from the first.
  static std::array<double, 4> weights(double t) {
    return {-(t - 1) * (t - 2) * (t - 3) / 6, t * (t - 2) * (t - 3) / 2, -t * (t - 1) * (t - 3) / 2,
            t * (t - 1) * (t - 2) / 6};
  }

  // Each reading's error: the part it shares with the model, and the rest, which
  // readings may share among themselves (one meter's bias).
  void take_apart() {
    std::map<ErrorSource, std::vector<double>> rest;
    for (std::size_t i = 0; i < count(); ++i) {
      for (const Contribution& c : readings_[i].co2.contributions()) {
        const auto known = history_.index_of(c.source);
        const auto at =
            known ? std::find(sources_.begin(), sources_.end(), *known) : sources_.end();
        if (at != sources_.end()) {
          in_reading_(i, static_cast<std::size_t>(at - sources_.begin())) += c.half_width;
        } else {
          auto& row = rest[c.source];
          row.resize(count());
          row[i] += c.half_width;
        }
      }
      own_(i, i) += least_own_error * least_own_error;
    }
    for (const auto& [source, row] : rest) {
      for (std::size_t i = 0; i < count(); ++i) {
        for (std::size_t j = 0; j < count(); ++j) own_(i, j) += row[i] * row[j];
      }
    }
  }

  // Rate by rate: plain, and with each source moved. All together, as most share the
  // beer's temperature.
  void run_nodes() {
    std::vector<Offsets> each;
    for (std::size_t n = 0; n < node_count; ++n) {
      Offsets offsets(history_.source_count(), 0.0);
      offsets[history_.resting.source] = -furthest_x + node_spacing * static_cast<double>(n);
      each.push_back(offsets);
      for (const std::size_t source : sources_) {
        each.push_back(offsets);
        each.back()[source] = 1;
      }
    }
    std::vector<double> times;
    for (const Co2Reading& r : readings_) times.push_back(in_seconds(r.at));
    auto runs = co2_of_runs(history_, each, times);
    auto run = runs.begin();
    for (std::size_t n = 0; n < node_count; ++n) {
      Node node{std::move(*run++), SmallMatrix(count(), sources_.size())};
      for (std::size_t s = 0; s < sources_.size(); ++s, ++run) {
        for (std::size_t i = 0; i < count(); ++i) node.moved(i, s) = (*run)[i] - node.co2[i];
      }
      nodes_.push_back(std::move(node));
    }
  }

  // What is followed together has no offset of its own: it blurs the model.
  void add_pooled() {
    if (!history_.pools()) return;
    double last = 0;
    for (const Co2Reading& r : readings_) last = std::max(last, in_seconds(r.at));
    const Trajectory centre = Trajectory::solve(history_, Offsets(history_.source_count(), 0.0),
                                                seconds(last + 1), Settling::skip);
    const ReadingSpread spread(centre, pooled_steps(history_));
    for (std::size_t i = 0; i < count(); ++i)
      own_(i, i) += std::pow(spread.half_width(readings_[i].at), 2);
  }

  const PlainHistory& history_;
  const std::vector<Co2Reading>& readings_;
  std::vector<std::size_t> sources_;
  SmallMatrix in_reading_;
  SmallMatrix own_;
  std::vector<Node> nodes_;
};

// At one x: how likely the readings are, and what they say of the other sources.
struct Judged {
  double log_likelihood = 0;
  double squares = 0;  // of the misfit in its own standard deviations
};

Cholesky spread_of(const Misfit& m, const RateReadings& readings) {
  SmallMatrix s = readings.own();
  for (std::size_t i = 0; i < readings.count(); ++i) {
    for (std::size_t j = 0; j < readings.count(); ++j) {
      for (std::size_t k = 0; k < readings.sources().size(); ++k)
        s(i, j) += m.by_source(i, k) * m.by_source(j, k);
    }
  }
  return {s, readings.count()};
}

double sum_of_squares(const std::vector<double>& v) {
  return std::inner_product(v.begin(), v.end(), v.begin(), 0.0);
}

Judged judge_rate(const RateReadings& readings, double x) {
  const Misfit m = readings.at(x);
  const Cholesky spread = spread_of(m, readings);
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
  const Misfit m = readings.at(x);
  const Cholesky spread = spread_of(m, readings);
  const std::size_t n = readings.sources().size();
  const std::vector<double> misfit = spread.forward(m.values);
  std::vector<std::vector<double>> column(n);
  std::vector<double> by_reading(readings.count());
  for (std::size_t s = 0; s < n; ++s) {
    for (std::size_t i = 0; i < readings.count(); ++i) by_reading[i] = m.by_source(i, s);
    column[s] = spread.forward(by_reading);
  }
  Others out{std::vector<double>(n), SmallMatrix(n, n)};
  for (std::size_t s = 0; s < n; ++s) {
    out.mean[s] = std::inner_product(column[s].begin(), column[s].end(), misfit.begin(), 0.0);
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
