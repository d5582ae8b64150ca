// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/cellar/freshness.h"

#include <algorithm>
#include <cmath>
#include <limits>

#include "core/cellar/keg_timeline.h"
#include "core/units/present.h"

namespace ullage::cellar {
namespace {

constexpr double cold_up_to = 5.5;  // °C
constexpr double cool_up_to = 9.0;
constexpr std::array<double, 2> regime_ends{cold_up_to, cool_up_to};
constexpr std::array<Storage, 3> regimes{Storage::cold, Storage::cool, Storage::cellar};
// Beer this near its place counts as there: it only creeps on.
constexpr double arrived_within_kelvin = 0.05;
constexpr double endless = std::numeric_limits<double>::infinity();

double seconds_kept(Storage s) {
  return static_cast<double>(std::chrono::seconds(keeps_on_tap(s)).count());
}

// Lets beer stand and age, one stretch of one place after another. All in seconds
// and °C; the beer follows its place by Newton's law, so when it passes from one
// regime into the next is exact.
class Ageing {
 public:
  Ageing(double beer, double time_constant) : beer_(beer), tau_(time_constant) {}

  // Until all is used up or the time is over, whichever comes first unless `beyond`.
  void stand(double place, double seconds, bool beyond) {
    while (seconds > 0 && (beyond || used_ < 1)) {
      const Stretch s = next(place);
      double lasts = std::min(s.lasts, seconds);
      const double keeps = seconds_kept(s.regime);
      if (!beyond) lasts = std::min(lasts, (1 - used_) * keeps);
      const bool to_the_end = lasts == s.lasts;
      beer_ = to_the_end ? s.to : place + (beer_ - place) * std::exp(-lasts / tau_);
      used_ += lasts / keeps;
      if (!beyond && 1 - used_ < 1e-12) used_ = 1;
      stood_[s.regime] += lasts;
      gone_ += lasts;
      seconds -= lasts;
    }
  }
  [[nodiscard]] double used() const { return used_; }
  [[nodiscard]] double gone() const { return gone_; }
  [[nodiscard]] const std::map<Storage, double>& stood() const { return stood_; }

 private:
  struct Stretch {
    Storage regime = Storage::cold;
    double lasts = endless;
    double to = 0;  // the beer at its end
  };
  // How long the beer stays in the regime it is in, on its way to its place.
  [[nodiscard]] Stretch next(double place) {
    if (std::abs(beer_ - place) < arrived_within_kelvin) beer_ = place;
    const bool warming = place > beer_;
    Stretch s;
    std::size_t regime = 0;
    for (const double end : regime_ends) regime += warming ? end <= beer_ : end < beer_;
    s.regime = regimes.at(regime);
    if (warming && regime < regime_ends.size() && regime_ends.at(regime) < place) {
      s.to = regime_ends.at(regime);
    } else if (!warming && regime > 0 && regime_ends.at(regime - 1) > place) {
      s.to = regime_ends.at(regime - 1);
    } else {
      return s;
    }
    s.lasts = tau_ * std::log((beer_ - place) / (s.to - place));
    return s;
  }

  double beer_, tau_;
  double used_ = 0, gone_ = 0;
  std::map<Storage, double> stood_;
};

double shifted(const TemperatureEstimate& t, double errors) {
  return units::in_celsius(t.value()) + errors * t.half_width();
}

// From `since` to `until`; without it until all is used up.
Ageing aged(const BeerWarmth& warmth, Instant since, std::optional<Instant> until, double errors) {
  const auto at_first = warmth.at(since);
  const auto& steps = warmth.steps;
  Ageing beer(shifted(at_first ? *at_first : steps.front().place, errors),
              units::in_seconds(warmth.time_constant.median()));
  for (std::size_t i = 0; i < steps.size(); ++i) {
    const bool last = i + 1 == steps.size();
    const Instant from = std::max(steps[i].at, since);
    Instant to = last ? Instant::max() : steps[i + 1].at;
    if (until) to = std::min(to, *until);
    if (to <= from) continue;
    const double seconds = last && !until ? endless : units::in_seconds(between(from, to));
    beer.stand(shifted(steps[i].place, errors), seconds, until.has_value());
  }
  return beer;
}

Instant used_up(const BeerWarmth& warmth, Instant since, double errors) {
  return since +
         std::chrono::seconds(std::llround(aged(warmth, since, std::nullopt, errors).gone()));
}

}  // namespace

Storage storage_at(std::optional<Temperature> beer) {
  if (!beer) return Storage::unknown;
  const double celsius = units::in_celsius(*beer);
  if (celsius <= cold_up_to) return Storage::cold;
  return celsius <= cool_up_to ? Storage::cool : Storage::cellar;
}

std::chrono::days keeps_on_tap(Storage storage) {
  switch (storage) {
    case Storage::cool:
      return std::chrono::days(21);
    case Storage::cellar:
      return std::chrono::days(7);
    case Storage::cold:
    case Storage::unknown:
      break;
  }
  return std::chrono::days(45);
}

std::optional<TappedPast> tapped_past(KegId keg, const Journal& journal,
                                      const PlaceLookup& places) {
  std::optional<Instant> since;
  for (const Entry* e : journal.story(subject(keg))) {
    const auto* found = get_if<Found>(&e->payload);
    const bool begins = holds_alternative<Filled>(e->payload) ||
                        holds_alternative<Received>(e->payload) ||
                        holds_alternative<Emptied>(e->payload);
    if (begins || (found && !found->line)) since.reset();
    if (since) continue;
    if (holds_alternative<Tapped>(e->payload)) since = e->header.happened_at;
    if (found && found->line) since = found->since.value_or(e->header.happened_at);
  }
  if (!since) return std::nullopt;
  KegTimeline told = keg_timeline(keg, journal, places);
  if (!told.filling) return std::nullopt;
  return TappedPast{std::max(*since, told.filling->at), std::move(told.warmth)};
}

FreshClock fresh_clock(const KegStatus& keg, const std::optional<TappedPast>& past, Instant now) {
  FreshClock clock;
  clock.storage = storage_at(keg.beer_temperature ? std::optional(keg.beer_temperature->value())
                                                  : std::nullopt);
  clock.since = present(keg.contents).since;
  clock.best_by = present(keg.contents).best_by;
  if (!past) return clock;
  clock.tapped = true;
  clock.since = past->since;
  if (!past->warmth || past->warmth->steps.empty() || now < past->since) return clock;
  const Ageing so_far = aged(*past->warmth, past->since, now, 0);
  clock.used = units::fraction(so_far.used());
  for (const auto& [storage, seconds] : so_far.stood()) {
    clock.stood[storage] = std::chrono::seconds(std::llround(seconds));
  }
  Window w;
  w.earliest = used_up(*past->warmth, past->since, 1);
  w.likely = used_up(*past->warmth, past->since, 0);
  w.latest = used_up(*past->warmth, past->since, -1);
  clock.keeps_until = w;
  return clock;
}

}  // namespace ullage::cellar
