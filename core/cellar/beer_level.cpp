// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/cellar/beer_level.h"

#include <algorithm>
#include <cmath>

namespace ullage::cellar {

namespace {

constexpr double uneven_days = 0.6;    // times w (1 - w) of what was drawn
constexpr double left_in_empty = 0.3;  // L, either way
constexpr double nominal_fill_error = 0.05;
constexpr double days_of_a_keg = 14;  // a keg on tap lasts that long or longer (assumed)

VolumeEstimate mixed(const VolumeEstimate& a, const VolumeEstimate& b, double w) {
  return units::propagate([w](Volume x, Volume y) -> Volume { return (1 - w) * x + w * y; }, a, b);
}

// The level's own nameless errors belong to this keg alone.
VolumeEstimate as_of_this_keg(const VolumeEstimate& v, const std::string& tag) {
  std::vector<units::Contribution> own = v.contributions();
  for (units::Contribution& c : own) {
    if (c.source.name == "draw since the last reading") c.source.name = tag + ": " + c.source.name;
  }
  return VolumeEstimate(v.value(), std::move(own));
}

}  // namespace

std::optional<VolumeEstimate> beer_in_keg(const KegTimeline& keg, Instant at,
                                          std::optional<Instant> tapped,
                                          std::optional<Instant> emptied) {
  if (!keg.filling) return std::nullopt;
  const std::string& tag = keg.record.tag;
  std::vector<LevelPoint> points = keg.level.points();
  if (points.empty()) {
    if (keg.record.nominal.value() <= 0) return std::nullopt;
    points.push_back(
        {keg.filling->at,
         VolumeEstimate(keg.record.nominal)
             .with_error({tag + ": filled volume"}, nominal_fill_error * keg.record.nominal),
         false});
  }
  if (emptied && points.back().at < *emptied) {
    points.push_back({*emptied,
                      VolumeEstimate(units::litres(0))
                          .with_error({tag + ": left when empty"}, units::litres(left_in_empty)),
                      true});
  }
  if (at <= points.front().at) return points.front().left;
  for (std::size_t i = 0; i + 1 < points.size(); ++i) {
    const LevelPoint &a = points[i], &b = points[i + 1];
    if (at >= b.at) continue;
    const Instant from = std::clamp(tapped.value_or(b.at), a.at, b.at);
    if (at <= from || b.at <= from) return a.left;
    const double w = units::in_seconds(between(from, at)) / units::in_seconds(between(from, b.at));
    const double drawn = std::abs((a.left.value() - b.left.value()).value());
    return mixed(a.left, b.left, w)
        .with({tag + ": uneven draw " + std::to_string(i)}, uneven_days * w * (1 - w) * drawn);
  }
  const LevelPoint& last = points.back();
  if (!tapped || at <= *tapped || emptied) return last.left;
  const Volume brimful = keg.record.brimful;
  if (const Level told = keg.level.at(at, brimful); told.left)
    return as_of_this_keg(*told.left, tag);
  const double days = units::in_days(between(std::max(last.at, *tapped), at));
  const double half = 0.5 * std::clamp(days / days_of_a_keg, 0.0, 1.0);
  return mixed(last.left, VolumeEstimate(units::litres(0)), half)
      .with({tag + ": not read since it was tapped"}, half * last.left.value().value());
}

}  // namespace ullage::cellar
