// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/cellar/level_track.h"

#include <algorithm>
#include <cmath>

namespace ullage::cellar {

namespace {

using units::Volume;

VolumeEstimate less(const VolumeEstimate& from, const VolumeEstimate& gone) {
  return units::propagate([](Volume a, Volume b) -> Volume { return a - b; }, from, gone);
}

bool clearly_below(const VolumeEstimate& a, const VolumeEstimate& b) { return a.high() < b.low(); }

// Nobody asks again before a keg has been on tap this long.
constexpr std::chrono::hours unread_on_tap{24};
constexpr std::chrono::hours shortest_rate{24};

}  // namespace

void LevelTrack::start(Instant at, std::optional<VolumeEstimate> left) {
  stop();
  full_ = true;
  if (left) {
    points_.push_back({at, *left, false});
  } else {
    cant_tell_ = message(MessageKey::level_not_stated);
  }
}

void LevelTrack::stop() { *this = LevelTrack{}; }

void LevelTrack::tapped(Instant at) {
  if (!tapped_at_) tapped_at_ = at;
}

void LevelTrack::poured(Instant at, const VolumeEstimate& amount) {
  if (!points_.empty()) points_.push_back({at, less(points_.back().left, amount), true});
}

void LevelTrack::refused(Instant, Message why) { conflict_ = std::move(why); }

void LevelTrack::read(Instant at, const VolumeEstimate& amount) {
  cant_tell_.reset();
  conflict_.reset();
  if (points_.empty()) {
    points_.push_back({at, amount, true});
    return;
  }
  const VolumeEstimate& before = points_.back().left;
  const bool stronger = amount.half_width() <= before.half_width();
  if (clearly_below(before, amount)) {
    conflict_ = message(MessageKey::level_reads_more, amount, before);
    if (!stronger) return;
  }
  if (stronger || clearly_below(amount, before)) {
    points_.push_back({at, amount, true});
  } else if (tapped_at_) {
    // It agrees: what was known holds up to now.
    points_.push_back({at, before, true});
  }
}

std::optional<VolumeEstimate> LevelTrack::last() const {
  return points_.empty() ? std::nullopt : std::optional(points_.back().left);
}

std::optional<LevelTrack::DrawRate> LevelTrack::rate() const {
  if (!tapped_at_ || points_.size() < 2 || !points_.back().measured) return std::nullopt;
  const LevelPoint& end = points_.back();
  // From the last evidence before it was tapped, or the first after.
  auto begin = points_.begin();
  for (auto p = points_.begin(); p != points_.end() && p->at <= *tapped_at_; ++p) begin = p;
  const Instant from = std::max(begin->at, *tapped_at_);
  if (end.at - from < shortest_rate) return std::nullopt;
  const double days = units::in_days(between(from, end.at));
  const VolumeEstimate gone = less(begin->left, end.left);
  const double litres = units::in_litres(gone.value());
  if (litres <= 0) return std::nullopt;
  const double of_measurement = units::in_litres(units::cubic_metres(gone.half_width()));
  // Days differ: a third either way, less over a longer time.
  const double of_days = litres * 0.33 * 2 / std::sqrt(std::max(days, 1.0));
  return DrawRate{litres / days, std::hypot(of_measurement, of_days) / days, end.at};
}

Level LevelTrack::at(Instant now, Volume brimful) const {
  Level level;
  if (!full_) return level;
  level.cant_tell = cant_tell_ ? cant_tell_ : conflict_;
  if (points_.empty()) {
    if (!level.cant_tell) level.cant_tell = message(MessageKey::level_not_stated);
    return level;
  }
  const LevelPoint& last = points_.back();
  level.measured_at = last.at;
  if (tapped_at_ && last.at <= *tapped_at_ && now - *tapped_at_ > unread_on_tap) {
    level.cant_tell =
        message(MessageKey::level_unread_since_tapped, last.left.value(), *tapped_at_);
    return level;
  }
  VolumeEstimate left = last.left;
  if (const auto r = rate(); r && now > r->from) {
    const double days = units::in_days(between(r->from, now));
    const Volume gone = units::litres(r->litres_per_day * days);
    left = less(left, VolumeEstimate(gone).with({"draw since the last reading"},
                                                units::litres(r->half_width * days).value()));
    if (left.high().value() <= 0) {
      level.cant_tell = message(MessageKey::level_should_be_empty);
      return level;
    }
    if (left.value().value() < 0) {
      left = VolumeEstimate(units::litres(0))
                 .with({"draw since the last reading"}, left.high().value());
    }
  }
  if (left.value().value() < 0) {
    level.cant_tell = message(MessageKey::level_more_drawn_than_held);
    return level;
  }
  level.left = left;
  if (brimful.value() > 0) level.of_brimful = units::fraction(left.value() / brimful);
  return level;
}

std::optional<Window> LevelTrack::runs_out(Instant now) const {
  const auto r = rate();
  if (!r || points_.empty()) return std::nullopt;
  const VolumeEstimate& left = points_.back().left;
  const double litres = units::in_litres(left.value());
  if (litres <= 0) return std::nullopt;
  const auto after_days = [&](double days) {
    return std::max(now, after(r->from, units::days(std::max(days, 0.0))));
  };
  Window w;
  const double fast = r->litres_per_day + r->half_width;
  const double slow = r->litres_per_day - r->half_width;
  w.likely = after_days(litres / r->litres_per_day);
  w.earliest = after_days(units::in_litres(left.low()) / fast);
  if (slow > 0) w.latest = after_days(units::in_litres(left.high()) / slow);
  return w;
}

}  // namespace ullage::cellar
