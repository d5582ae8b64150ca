// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/cellar/level_track.h"

#include <algorithm>
#include <cmath>
#include <utility>

#include "core/cellar/weekdays.h"
#include "core/physics/run_out.h"
#include "core/units/present.h"

namespace ullage::cellar {

namespace {

using units::Volume;

// Nobody asks again before a keg has been on tap this long.
constexpr std::chrono::hours unread_on_tap{24};
// Two pours of one evening tell nothing of a day: draws are joined to this.
constexpr std::chrono::hours shortest_span{18};

std::vector<physics::SpanOnTap> spans_of(const std::vector<BeerDraw>& draws,
                                         const LocalCalendar& calendar) {
  std::vector<physics::SpanOnTap> out;
  std::optional<BeerDraw> open;
  const auto close = [&] {
    if (open && open->to - open->from >= shortest_span)
      out.push_back({weekday_shares(open->from, open->to, calendar), open->amount});
    open.reset();
  };
  for (const BeerDraw& d : draws) {
    if (open && open->to == d.from) {
      open->to = d.to;
      open->amount = units::propagate([](Volume a, Volume b) { return Volume(a + b); },
                                      open->amount, d.amount);
    } else {
      close();
      open = d;
    }
    if (open->to - open->from >= shortest_span) close();
  }
  close();
  return out;
}

}  // namespace

void LevelTrack::start(Instant at, std::optional<VolumeEstimate> left) {
  stop();
  full_ = true;
  if (left) {
    origin_ = at;
    told_.push_back({at, LevelTold::What::in_it_at_first, {}, *left});
    start_ = std::move(left);
  } else {
    cant_tell_ = message(MessageKey::level_not_stated);
  }
}

void LevelTrack::stop() { *this = LevelTrack{}; }

void LevelTrack::tapped(Instant at) {
  if (!tapped_at_) tapped_at_ = at;
  steps_.push_back({at, physics::PutOnTap{}});
}

void LevelTrack::untapped(Instant at) { steps_.push_back({at, physics::TakenOffTap{}}); }

void LevelTrack::poured(Instant at, VolumeEstimate amount, LevelMethod method) {
  told_.push_back({at, LevelTold::What::drawn, method, amount});
  steps_.push_back({at, physics::BeerCounted{std::move(amount)}});
  if (tapped_at_) drawn_evidence_ = at;
}

void LevelTrack::lost(Instant at, VolumeEstimate amount) {
  told_.push_back({at, LevelTold::What::lost, {}, amount});
  steps_.push_back({at, physics::BeerLost{std::move(amount)}});
}

void LevelTrack::refused(Instant, Message why) { refused_ = std::move(why); }

void LevelTrack::read(Instant at, VolumeEstimate amount, LevelMethod method) {
  told_.push_back({at, LevelTold::What::left, method, amount});
  cant_tell_.reset();
  refused_.reset();
  if (tapped_at_) drawn_evidence_ = at;
  if (origin_) {
    steps_.push_back({at, physics::LevelRead{std::move(amount)}});
    return;
  }
  // The first that is known of it. What was counted before came off something
  // unknown; whether it was on tap by then still counts.
  origin_ = at;
  start_ = std::move(amount);
  const bool on_tap =
      !steps_.empty() && std::any_of(steps_.begin(), steps_.end(), [](const Step& s) {
        return holds_alternative<physics::PutOnTap>(s.what);
      });
  steps_.clear();
  if (on_tap) steps_.push_back({at, physics::PutOnTap{}});
}

void LevelTrack::finish(Volume brimful, std::vector<BeerDraw> before) {
  before_ = std::move(before);
  if (!full_ || !start_) return;
  physics::LevelHistory history{brimful, *start_, {}};
  const Instant origin = present(origin_);
  for (const Step& s : steps_)
    history.steps.push_back({between(origin, std::max(s.at, origin)), s.what});
  auto filter = physics::LevelFilter::make(history);
  if (!filter) {
    cant_tell_ = message(MessageKey::level_reading_impossible);
    return;
  }
  for (const physics::LevelThen& p : filter->points())
    points_.push_back({after(origin, p.at), p.left, p.told_by_evidence});
  points_.front().measured = false;
  filter_ = std::move(*filter);
}

std::optional<Message> LevelTrack::conflict() const {
  if (refused_) return refused_;
  if (!filter_ || filter_->conflicts().empty()) return std::nullopt;
  const physics::LevelConflict& last = filter_->conflicts().back();
  const bool more = last.reads.value() > last.expected.value();
  // Less than expected on tap is beer that was poured; shut, it went somewhere.
  return message(more ? MessageKey::level_reads_more : MessageKey::level_reads_less, last.reads,
                 last.expected);
}

std::optional<VolumeEstimate> LevelTrack::left_at(Instant now) const {
  if (!filter_) return std::nullopt;
  // As long as nothing tells of a draw, the last that was told stands.
  if (!filter_->draw_a_day()) return points_.back().left;
  return filter_->at(between(present(origin_), std::max(now, points_.back().at)));
}

Level LevelTrack::at(Instant now, Volume brimful) const {
  Level level;
  if (!full_) return level;
  level.told = told_;
  level.cant_tell = cant_tell_ ? cant_tell_ : conflict();
  auto left = left_at(now);
  if (!left) {
    if (!level.cant_tell) level.cant_tell = message(MessageKey::level_not_stated);
    return level;
  }
  for (const LevelPoint& p : points_) {
    if (p.measured || !level.measured_at) level.measured_at = p.at;
  }
  if (tapped_at_ && !drawn_evidence_ && now - *tapped_at_ > unread_on_tap) {
    level.cant_tell =
        message(MessageKey::level_unread_since_tapped, points_.back().left.value(), *tapped_at_);
    return level;
  }
  if (left->high().value() <= 0) {
    const bool by_evidence = points_.back().left.high().value() <= 0;
    level.cant_tell = message(by_evidence ? MessageKey::level_more_drawn_than_held
                                          : MessageKey::level_should_be_empty);
    return level;
  }
  if (left->value().value() < 0) {
    left = VolumeEstimate(units::litres(0))
               .with({"draw since the last reading"}, left->high().value());
  }
  level.left = left;
  if (brimful.value() > 0) level.of_brimful = units::fraction(left->value() / brimful);
  return level;
}

std::optional<LevelTrack::RunsOut> LevelTrack::runs_out(Instant now,
                                                        const LocalCalendar& calendar) const {
  if (!filter_ || !filter_->on_tap()) return std::nullopt;
  const auto left = left_at(now);
  if (!left || left->value().value() < 0) return std::nullopt;
  std::vector<BeerDraw> draws = before_;
  const Instant origin = present(origin_);
  for (const physics::DrawSeen& d : filter_->draws())
    draws.push_back({after(origin, d.from), after(origin, d.to), d.amount});
  const auto local = calendar.to_local(now);
  const auto today = std::chrono::floor<std::chrono::days>(local);
  physics::RunOutQuestion question{*left, spans_of(draws, calendar), 0, 0};
  question.weekday = static_cast<int>(std::chrono::weekday(today).c_encoding());
  question.day_gone = static_cast<double>((local - today).count()) / 86400.0;
  const auto out = physics::run_out(question);
  if (!out || !out->likely) return std::nullopt;
  Window w;
  w.likely = after(now, *out->likely);
  w.earliest = out->earliest ? after(now, *out->earliest) : w.likely;
  if (out->latest) w.latest = after(now, *out->latest);
  return RunsOut{w, out->a_day.at(static_cast<std::size_t>(question.weekday))};
}

}  // namespace ullage::cellar
