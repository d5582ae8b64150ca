// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/physics/rate_readings.h"

#include <algorithm>
#include <cmath>
#include <map>
#include <numeric>

#include "core/physics/carbonation_solver.h"
#include "core/physics/reading_spread.h"

namespace ullage::physics {

using namespace units;

namespace {

constexpr std::size_t node_count = 9;  // runs of the model
constexpr double node_spacing = 2 * furthest_x / (node_count - 1);
constexpr double least_own_error = 1e-4;  // volumes: no reading is exact
// Where a keg was rocked, in half-widths of the sources:
constexpr double rocking_step = 0.25;          // to either side, for what the rate does
constexpr double longest_way = 0.5;            // at once: beyond, a line tells little
constexpr double furthest_other = furthest_x;  // no source is further off
constexpr double near_enough = 0.05;
constexpr int most_straightenings = 4;

// What the sources are to the model alone: those that move it, the rate apart.
std::vector<std::size_t> followed_sources(const PlainHistory& history) {
  std::vector<std::size_t> out;
  for (std::size_t i = 0; i < history.source_count(); ++i) {
    if (i != history.resting.source && history.used(i) && !history.pooled(i)) out.push_back(i);
  }
  return out;
}

// Lagrange's cubic through four even points, `t` from the first.
std::array<double, 4> cubic_weights(double t) {
  return {-(t - 1) * (t - 2) * (t - 3) / 6, t * (t - 2) * (t - 3) / 2, -t * (t - 1) * (t - 3) / 2,
          t * (t - 1) * (t - 2) / 6};
}

}  // namespace

RateReadings::RateReadings(const PlainHistory& history, const std::vector<Co2Reading>& readings)
    : history_(history),
      readings_(readings),
      sources_(followed_sources(history)),
      in_reading_(readings.size(), sources_.size()),
      own_(readings.size(), readings.size()) {
  for (const Co2Reading& r : readings_) last_read_s_ = std::max(last_read_s_, in_seconds(r.at));
  take_apart();
  add_pooled();
  nodes_.resize(node_count);
  for (Node& node : nodes_) node.others.assign(sources_.size(), 0.0);
  run_nodes();
  for (int i = 0; i < most_straightenings && rocking_tells() && all_go_to_wanted(); ++i)
    run_nodes();
}

Misfit RateReadings::at(double x) const {
  std::vector<double> co2(count());
  SmallMatrix moved(count(), sources_.size());
  const double place = std::clamp((x + furthest_x) / node_spacing, 0.0, node_count - 1.0);
  const std::size_t first =
      std::min<std::size_t>(node_count - 4, static_cast<std::size_t>(std::max(0.0, place - 1)));
  const std::array<double, 4> w = cubic_weights(place - static_cast<double>(first));
  for (std::size_t i = 0; i < count(); ++i) {
    for (std::size_t k = 0; k < 4; ++k) {
      co2[i] += w[k] * nodes_[first + k].co2[i];
      for (std::size_t s = 0; s < sources_.size(); ++s)
        moved(i, s) += w[k] * nodes_[first + k].moved(i, s);
    }
  }
  return misfit_of(co2, moved);
}

Misfit RateReadings::misfit_of(const std::vector<double>& co2, const SmallMatrix& moved) const {
  Misfit out{std::vector<double>(count()), SmallMatrix(count(), sources_.size())};
  for (std::size_t i = 0; i < count(); ++i) {
    out.values[i] = readings_[i].co2.value().count() - co2[i];
    for (std::size_t s = 0; s < sources_.size(); ++s)
      out.by_source(i, s) = moved(i, s) - in_reading_(i, s);
  }
  return out;
}

Cholesky RateReadings::spread_of(const Misfit& m) const {
  const std::size_t sources = sources_.size();
  SmallMatrix s = own_;
  const std::size_t count = m.values.size();
  for (std::size_t i = 0; i < count; ++i) {
    for (std::size_t j = 0; j <= i; ++j) {  // the root is taken of the lower half
      for (std::size_t k = 0; k < sources; ++k) s(i, j) += m.by_source(i, k) * m.by_source(j, k);
    }
  }
  return {s, count};
}

InSpread RateReadings::in_spread(const Misfit& m) const {
  const Cholesky spread = spread_of(m);
  InSpread out{spread.forward(m.values), {}};
  std::vector<double> by_reading(m.values.size());
  for (std::size_t s = 0; s < sources_.size(); ++s) {
    for (std::size_t i = 0; i < by_reading.size(); ++i) by_reading[i] = m.by_source(i, s);
    out.columns.push_back(spread.forward(by_reading));
  }
  return out;
}

std::vector<double> InSpread::wanted() const {
  std::vector<double> out;
  out.reserve(columns.size());
  for (const std::vector<double>& column : columns)
    out.push_back(std::inner_product(column.begin(), column.end(), misfit.begin(), 0.0));
  return out;
}

// Each reading's error: the part it shares with the model, and the rest, which
// readings may share among themselves (one meter's bias).
void RateReadings::take_apart() {
  std::map<ErrorSource, std::vector<double>> rest;
  for (std::size_t i = 0; i < count(); ++i) {
    for (const Contribution& c : readings_[i].co2.contributions()) {
      const auto known = history_.index_of(c.source);
      const auto at = known ? std::find(sources_.begin(), sources_.end(), *known) : sources_.end();
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

// What is followed together has no offset of its own: it blurs the model.
void RateReadings::add_pooled() {
  if (!history_.pools()) return;
  const Trajectory centre = Trajectory::solve(history_, Offsets(history_.source_count(), 0.0),
                                              seconds(last_read_s_ + 1), Settling::skip);
  const ReadingSpread spread(centre, pooled_steps(history_));
  for (std::size_t i = 0; i < count(); ++i)
    own_(i, i) += std::pow(spread.half_width(readings_[i].at), 2);
}

// Rate by rate, where the line does not stand yet: plain, and with each source moved, that
// of rocking a little to both sides. All together, as most share the beer's temperature.
void RateReadings::run_nodes() {
  std::vector<Offsets> each;
  for (std::size_t n = 0; n < node_count; ++n) {
    if (nodes_[n].stands) continue;
    Offsets offsets(history_.source_count(), 0.0);
    offsets[history_.resting.source] = -furthest_x + node_spacing * static_cast<double>(n);
    for (std::size_t s = 0; s < sources_.size(); ++s) offsets[sources_[s]] = nodes_[n].others[s];
    each.push_back(offsets);
    for (const std::size_t source : sources_) {
      if (!is_read(source)) continue;
      each.push_back(offsets);
      each.back()[source] += rocks(source) ? rocking_step : 1.0;
      if (!rocks(source)) continue;
      each.push_back(offsets);
      each.back()[source] -= rocking_step;
    }
  }
  std::vector<double> times;
  times.reserve(readings_.size());
  for (const Co2Reading& r : readings_) times.push_back(in_seconds(r.at));
  const auto runs = co2_of_runs(history_, each, times);
  auto run = runs.begin();
  for (Node& node : nodes_) {
    if (!node.stands) run = straighten(node, run);
  }
}

RateReadings::Runs RateReadings::straighten(Node& node, Runs run) const {
  const std::vector<double>& plain = *run++;
  node.co2 = plain;
  node.moved = SmallMatrix(count(), sources_.size());
  for (std::size_t s = 0; s < sources_.size(); ++s) {
    if (!is_read(sources_[s])) continue;
    const std::vector<double>& up = *run++;
    const bool both = rocks(sources_[s]);
    const std::vector<double>& from = both ? *run++ : plain;
    for (std::size_t i = 0; i < count(); ++i) {
      node.moved(i, s) = (up[i] - from[i]) / (both ? 2 * rocking_step : 1.0);
      node.co2[i] -= node.moved(i, s) * node.others[s];
    }
  }
  return run;
}

bool RateReadings::rocking_tells() const {
  for (std::size_t s = 0; s < sources_.size(); ++s) {
    if (!rocks(sources_[s])) continue;
    for (std::size_t i = 0; i < count(); ++i) {
      if (std::abs(nodes_[node_count / 2].moved(i, s)) > least_own_error) return true;
    }
  }
  return false;
}

// Whether that was any way to go.
bool RateReadings::go_to_wanted(Node& node) const {
  const std::vector<double> wanted = in_spread(misfit_of(node.co2, node.moved)).wanted();
  double way = 0;
  for (std::size_t s = 0; s < wanted.size(); ++s)
    way = std::max(way, std::abs(wanted[s] - node.others[s]));
  if (way <= near_enough) return false;
  const double share = way > longest_way ? longest_way / way : 1.0;
  for (std::size_t s = 0; s < wanted.size(); ++s) {
    const double to = node.others[s] + share * (wanted[s] - node.others[s]);
    node.others[s] = std::clamp(to, -furthest_other, furthest_other);
  }
  return true;
}

bool RateReadings::all_go_to_wanted() {
  bool any = false;
  for (Node& node : nodes_) {
    if (node.stands) continue;
    node.stands = !go_to_wanted(node);
    any = any || !node.stands;
  }
  return any;
}

}  // namespace ullage::physics
