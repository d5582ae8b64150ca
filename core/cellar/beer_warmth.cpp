// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/cellar/beer_warmth.h"

#include <algorithm>
#include <cmath>
#include <utility>

namespace ullage::cellar {

namespace {

constexpr double while_away_error = 8.0;  // K: nobody knows where it stood

// The temperatures one stay contributes from `from` on, up to `until`.
void add_stay(std::vector<WarmthStep>& steps, const PlaceHistory& place, Instant from,
              Instant until) {
  const PlaceWarmth* first = place.at(from);
  if (!first) return;
  steps.push_back({from, first->temperature, first->read});
  const auto later = std::upper_bound(place.warmth.begin(), place.warmth.end(), from,
                                      [](Instant t, const PlaceWarmth& w) { return t < w.from; });
  for (auto w = later; w != place.warmth.end() && w->from < until; ++w) {
    steps.push_back({w->from, w->temperature, w->read});
  }
}

}  // namespace

std::optional<TemperatureEstimate> BeerWarmth::at(Instant when) const {
  const Instant t = std::max(when, start_at);
  const double tau = units::in_seconds(time_constant.median());
  // T = start e^(-t/tau) + sum of each place's share of the approach: linear in
  // every temperature, so each source's part follows by the same weights.
  double value = 0;
  std::vector<units::Contribution> parts;
  const auto add = [&](const TemperatureEstimate& e, double weight) {
    value += weight * units::in_kelvin(e.value());
    for (const units::Contribution& c : e.contributions()) {
      auto same = std::find_if(parts.begin(), parts.end(),
                               [&](const units::Contribution& p) { return p.source == c.source; });
      if (same == parts.end()) {
        parts.push_back({c.source, weight * c.half_width});
      } else {
        same->half_width += weight * c.half_width;
      }
    }
  };
  const auto left_of = [&](Instant from) {
    return std::exp(-units::in_seconds(between(from, t)) / tau);
  };
  add(start, left_of(start_at));
  std::size_t reached = 0;  // the last step that had begun by then
  for (std::size_t i = 0; i < steps.size() && steps[i].at <= t; ++i) {
    reached = i;
    const Instant from = std::max(steps[i].at, start_at);
    const Instant until = i + 1 < steps.size() ? std::clamp(steps[i + 1].at, from, t) : t;
    add(steps[i].place, left_of(until) - left_of(from));
  }
  const TemperatureEstimate out(units::kelvin(value), std::move(parts));
  // How far the lag itself is off, for the last change still under way.
  const double gap = units::in_kelvin(steps[reached].place.value()) - value;
  const double since = units::in_seconds(between(std::max(start_at, steps[reached].at), t)) / tau;
  return std::move(out).with(time_constant.source(),
                             gap * since * std::log(time_constant.factor()));
}

std::optional<Window> BeerWarmth::comes_to(Temperature target, Instant now) const {
  const auto beer = at(now);
  if (!beer) return std::nullopt;
  const auto window =
      physics::time_to_temperature(beer->value(), place_now().value(), target, time_constant);
  if (!window || !*window) return std::nullopt;
  return Window{after(now, (*window)->earliest), after(now, (*window)->likely),
                after(now, (*window)->latest)};
}

std::optional<BeerWarmth> beer_warmth(Instant start_at,
                                      const std::optional<TemperatureEstimate>& start,
                                      const std::vector<Stay>& stays, Volume brimful,
                                      const std::string& tag, Instant until) {
  if (stays.empty() || !stays.back().place) return std::nullopt;
  BeerWarmth out;
  out.start_at = start_at;
  for (std::size_t i = 0; i < stays.size(); ++i) {
    const Instant left = i + 1 < stays.size() ? stays[i + 1].from : Instant::max();
    if (left <= start_at) continue;
    const Instant from = std::max(stays[i].from, start_at);
    if (stays[i].place) {
      add_stay(out.steps, *stays[i].place, from, std::min(left, until));
    } else if (!out.steps.empty()) {
      out.steps.push_back(
          {from, out.steps.back().place.with({tag + ": while away"}, while_away_error), false});
    }
  }
  const PlaceHistory& now_in = *stays.back().place;
  if (out.steps.empty() || !now_in.at(stays.back().from)) return std::nullopt;
  // Where it stood before the first known place is taken as that place.
  out.steps.front().at = std::min(out.steps.front().at, start_at);
  const auto tau = physics::cooling_time_constant(brimful, {tag + ": cooling"});
  if (!tau) return std::nullopt;
  out.time_constant = *tau;
  out.start_known = start.has_value();
  out.start = start.value_or(out.steps.front().place);
  return out;
}

}  // namespace ullage::cellar
