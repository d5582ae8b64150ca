// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/physics/carbonation_solver.h"

#include <algorithm>
#include <iterator>
#include <numeric>

#include "core/physics/moving_keg.h"

namespace ullage::physics {

using namespace units;

namespace {

constexpr double rounded_s = 1e-5;  // of times

// The runs that share a thermal path.
std::vector<std::vector<std::size_t>> together(const PlainHistory& history,
                                               std::span<const Offsets> each) {
  std::vector<std::vector<std::size_t>> groups;
  const auto same = [&](std::size_t a, std::size_t b) {
    const auto& sources = history.thermal_sources();
    return std::all_of(sources.begin(), sources.end(),
                       [&](std::size_t s) { return each[a][s] == each[b][s]; });
  };
  for (std::size_t i = 0; i < each.size(); ++i) {
    const auto group = std::find_if(groups.begin(), groups.end(),
                                    [&](const auto& g) { return same(g.front(), i); });
    if (group != groups.end()) {
      group->push_back(i);
    } else {
      groups.push_back({i});
    }
  }
  return groups;
}

// All runs through the whole history: keep(run, piece) for each piece. What each
// settles at, in volumes, where that is asked.
template <class Keep>
std::vector<double> run_all(const PlainHistory& history, std::span<const Offsets> each,
                            double until_s, Settling settling, const Keep& keep) {
  std::vector<double> settles_at(each.size(), 0.0);
  std::vector<ThermalSpan> path;
  for (const std::vector<std::size_t>& group : together(history, each)) {
    ThermalWalk walk(history, each[group.front()]);
    std::vector<MovingKeg> kegs;
    kegs.reserve(group.size());
    for (const std::size_t run : group) kegs.emplace_back(history, each[run]);
    const auto run_to = [&](double end_s) {
      walk.run_to(end_s, path);
      for (std::size_t k = 0; k < kegs.size(); ++k)
        kegs[k].run_to(end_s, path, [&](const KegPiece& p) { keep(group[k], p); });
    };
    for (const PlainStep& step : history.steps) {
      if (step.at_s > until_s) break;
      run_to(step.at_s);
      walk.apply(step);
      for (MovingKeg& keg : kegs) keg.apply(step);
    }
    run_to(until_s);
    if (settling == Settling::skip) continue;
    const double rest_s = until_s + settling_seconds(history);
    walk.run_to(rest_s, path);
    for (std::size_t k = 0; k < kegs.size(); ++k) {
      kegs[k].run_to(rest_s, path, [](const KegPiece&) {});
      settles_at[group[k]] = kegs[k].volumes();
    }
  }
  return settles_at;
}

// The piece that a time falls into.
template <class Piece>
const Piece& piece_at(const std::vector<Piece>& pieces, double t, LastAsked& last) {
  const auto holds = [&](std::size_t i) {
    return pieces[i].start_s <= t && (i + 1 == pieces.size() || t < pieces[i + 1].start_s);
  };
  for (std::size_t i = last.piece; i < std::min(last.piece + 2, pieces.size()); ++i) {
    if (holds(i)) return pieces[last.piece = i];
  }
  const auto after = std::upper_bound(pieces.begin(), pieces.end(), t,
                                      [](double at, const Piece& p) { return at < p.start_s; });
  last.piece =
      after == pieces.begin() ? 0 : static_cast<std::size_t>(std::prev(after) - pieces.begin());
  return pieces[last.piece];
}

template <class Piece>
double volumes_in(const std::vector<Piece>& pieces, Duration time, LastAsked& last) {
  const Piece& p = piece_at(pieces, in_seconds(time), last);
  const double t = std::clamp(in_seconds(time) - p.start_s, 0.0, p.length_s);
  return p.concentration(t) / moles_per_m3_per_volume;
}

}  // namespace

std::vector<Co2Run> Co2Run::solve(const PlainHistory& history, std::span<const Offsets> each,
                                  Duration until) {
  std::vector<Co2Run> out(each.size());
  for (Co2Run& run : out) run.pieces_.reserve(32 + 2 * history.steps.size());
  const auto settles_at =
      run_all(history, each, in_seconds(until), Settling::find,
              [&](std::size_t run, const KegPiece& p) { out[run].pieces_.push_back(p); });
  for (std::size_t i = 0; i < out.size(); ++i) out[i].settles_at_ = settles_at[i];
  return out;
}

std::vector<std::vector<double>> co2_of_runs(const PlainHistory& history,
                                             std::span<const Offsets> each,
                                             std::span<const double> at_seconds) {
  std::vector<std::vector<double>> out(each.size(), std::vector<double>(at_seconds.size()));
  std::vector<std::size_t> in_order(at_seconds.size());
  std::iota(in_order.begin(), in_order.end(), 0U);
  std::stable_sort(in_order.begin(), in_order.end(),
                   [&](std::size_t a, std::size_t b) { return at_seconds[a] < at_seconds[b]; });
  const double last = at_seconds[in_order.back()];
  std::vector<std::size_t> next(each.size(), 0);  // of the times in order, run by run
  run_all(history, each, last + 1, Settling::skip, [&](std::size_t run, const KegPiece& p) {
    for (std::size_t n = next[run]; n < in_order.size(); ++n) {
      const std::size_t i = in_order[n];
      const double t = at_seconds[i] - p.start_s;
      if (t > p.length_s + rounded_s) break;
      if (t >= 0)
        out[run][i] = p.Co2Piece::concentration(std::min(t, p.length_s)) / moles_per_m3_per_volume;
      // Where one piece ends and the next begins the later one has the word.
      if (t < p.length_s) next[run] = n + 1;
    }
  });
  return out;
}

double Co2Run::volumes_at(Duration time, LastAsked& last) const {
  return volumes_in(pieces_, time, last);
}

Trajectory Trajectory::solve(const PlainHistory& history, const Offsets& offsets, Duration until,
                             Settling settling) {
  Trajectory result;
  result.pieces_.reserve(32 + 2 * history.steps.size());
  const auto settles_at =
      run_all(history, std::span(&offsets, 1), in_seconds(until), settling,
              [&](std::size_t, const KegPiece& p) { result.pieces_.push_back(p); });
  result.settles_at_ = volumes_of_co2(settles_at.front());
  return result;
}

Trajectory Trajectory::solve(const CarbonationHistory& history, const CarbonationRates& rates,
                             std::span<const Shift> shifts, Duration until) {
  const PlainHistory plain(history, rates);
  return solve(plain, plain.offsets(shifts), until);
}

double Trajectory::volumes_at(Duration time, LastAsked& last) const {
  return volumes_in(pieces_, time, last);
}

KegState Trajectory::at(Duration time) const {
  LastAsked anew;
  const KegPiece& p = piece_at(pieces_, in_seconds(time), anew);
  const double t = std::clamp(in_seconds(time) - p.start_s, 0.0, p.length_s);
  return {volumes_of_co2(p.concentration(t) / moles_per_m3_per_volume),
          pascals_absolute(p.pressure(t)), kelvin(p.temperature(t))};
}

Amount Trajectory::co2_in_keg(Duration time) const {
  LastAsked anew;
  const KegPiece& p = piece_at(pieces_, in_seconds(time), anew);
  const double t = std::clamp(in_seconds(time) - p.start_s, 0.0, p.length_s);
  return moles(p.moles(t).co2 + p.beer_m3 * p.concentration(t));
}

}  // namespace ullage::physics
