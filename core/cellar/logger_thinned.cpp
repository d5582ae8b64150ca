// SPDX-License-Identifier: GPL-3.0-or-later
//
// What of a logger's readings is worth keeping (logger_file.h).
#include <algorithm>

#include "core/cellar/logger_file.h"

namespace ullage::cellar {

std::vector<TimedTemperature> on_calendar(const std::vector<LoggerReading>& readings,
                                          const LocalCalendar& calendar, std::size_t* skipped) {
  std::vector<TimedTemperature> out;
  out.reserve(readings.size());
  std::size_t lost = 0;
  for (const LoggerReading& r : readings) {
    const std::optional<Instant> at =
        r.offset ? std::optional(Instant(r.local.time_since_epoch()) - *r.offset)
                 : calendar.to_instant(r.local);
    if (at) {
      out.push_back({*at, r.temperature});
    } else {
      ++lost;
    }
  }
  if (skipped) *skipped = lost;
  std::stable_sort(out.begin(), out.end(),
                   [](const auto& a, const auto& b) { return a.at < b.at; });
  out.erase(std::unique(out.begin(), out.end(),
                        [](const auto& a, const auto& b) { return a.at == b.at; }),
            out.end());
  return out;
}

namespace {

constexpr std::chrono::days longest_gap{1};

// From each kept reading a line is drawn on as far as it passes within `step` of
// all readings it spans: the cone of slopes that do narrows with each of them.
std::vector<TimedTemperature> thin_by(const std::vector<TimedTemperature>& all, double step) {
  if (all.size() < 3) return all;
  std::vector<TimedTemperature> kept{all.front()};
  double low = -1e300, high = 1e300;
  for (std::size_t i = 1; i < all.size(); ++i) {
    const auto run = [&](const TimedTemperature& to) {
      return units::in_seconds(between(kept.back().at, to.at));
    };
    const auto rise = [&](const TimedTemperature& to) {
      return units::in_kelvin(to.temperature) - units::in_kelvin(kept.back().temperature);
    };
    const double slope = rise(all[i]) / run(all[i]);
    const bool fits = slope >= low && slope <= high && all[i].at - kept.back().at <= longest_gap;
    if (!fits && all[i - 1].at > kept.back().at) {
      kept.push_back(all[i - 1]);
      low = -1e300;
      high = 1e300;
    }
    const double t = run(all[i]);
    low = std::max(low, (rise(all[i]) - step) / t);
    high = std::min(high, (rise(all[i]) + step) / t);
  }
  if (kept.back().at < all.back().at) kept.push_back(all.back());
  return kept;
}

}  // namespace

Thinned thinned(const std::vector<TimedTemperature>& all, units::TemperatureDifference step,
                std::size_t most) {
  Thinned out;
  out.step = step;
  out.kept = thin_by(all, units::in_kelvin(step));
  for (int round = 0; round < 12 && out.kept.size() > most; ++round) {
    out.step = 1.5 * out.step;
    out.kept = thin_by(all, units::in_kelvin(out.step));
  }
  return out;
}

}  // namespace ullage::cellar
