// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/cellar/carbonation_curve.h"

#include <algorithm>

namespace ullage::cellar {

namespace {

constexpr int curve_points = 121;
constexpr std::size_t points_a_source = 12;  // what makes up the band changes slowly
constexpr std::chrono::days past_the_forecast{3};
constexpr std::chrono::days without_forecast{7};

// A little past what is still to happen; a week when nothing is.
Instant end_of_interest(const Moment& m) {
  const Co2State& co2 = m.status.co2;
  std::optional<Instant> last;
  const auto see = [&](const std::optional<Window>& w) {
    if (!w) return;
    const Instant t = w->latest.value_or(w->likely);
    last = last ? std::max(*last, t) : t;
  };
  see(co2.in_range);
  if (m.drop) see(m.drop->when);
  const Instant end = last ? *last + past_the_forecast : m.now + without_forecast;
  return std::clamp(end, m.now + without_forecast, m.now + std::chrono::days(60));
}

}  // namespace

CarbonationCurveData carbonation_curve_of(const KegTimeline& keg, Instant now,
                                          const LocalCalendar& calendar,
                                          std::optional<Instant> from, std::optional<Instant> to) {
  CarbonationCurveData out;
  const CarbonationTrack& track = keg.co2;
  out.readings = track.readings;
  out.marks = track.marks;
  if (keg.range) {
    out.target_low = keg.range->low;
    out.target_high = keg.range->high;
  }
  if (!track.model) return out;
  Moment m{keg, now, calendar, {}, {}, {}, {}, {}};
  tell_facts(m);
  tell_co2(m);
  if (m.drop) {
    out.marks.push_back({m.drop->when.likely, message(MessageKey::mark_drop, m.drop->to), true});
  }
  const Instant begin = std::max(from.value_or(track.origin), track.origin);
  const Instant last = after(track.origin, track.model->end());
  const Instant end = std::min(to.value_or(end_of_interest(m)), last);
  if (end <= begin) return out;
  const auto curve = track.model->curve(track.time_of(begin), track.time_of(end), curve_points);
  if (!curve) return out;
  for (const physics::CarbonationPoint& p : *curve) {
    if (out.points.size() % points_a_source == 0) {
      if (auto co2 = track.model->co2_at(p.time))
        out.sources.push_back({after(track.origin, p.time), *std::move(co2)});
    }
    out.points.push_back({after(track.origin, p.time), p.low, p.median, p.high});
  }
  return out;
}

}  // namespace ullage::cellar
