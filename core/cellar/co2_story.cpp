// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/cellar/co2_story.h"

#include <algorithm>
#include <array>
#include <expected>
#include <utility>

#include "core/cellar/co2_at_start.h"
#include "core/cellar/gas_given.h"
#include "core/physics/atmosphere.h"
#include "core/physics/equilibrium.h"
#include "core/physics/rate_posterior.h"
#include "core/units/present.h"

namespace ullage::cellar {

namespace {

// A keg is never filled to the very brim: at least this share is gas, and at
// the end some beer always stays below the dip tube.
constexpr double least_gas_share = 0.01;
constexpr double least_beer_share = 0.01;
units::Duration looks_ahead() { return units::days(200); }

UptakeRate uptake_of(const physics::CarbonationModel& model) {
  const auto band = [](const physics::RateBand& b) { return UptakeBand{b.low, b.median, b.high}; };
  if (const auto& learned = model.learned()) {
    return {band(learned->prior), band(learned->posterior), learned->readings, learned->fits};
  }
  const auto& usual = model.rates().resting;
  const UptakeBand prior{usual.low(), usual.median(), usual.high()};
  return {prior, prior, 0, true};
}

// Builds the history of one filling, step by step in story order.
class Co2Story {
 public:
  Co2Story(const std::vector<const Entry*>& entries, Lookup& lookup, KegTimeline& keg,
           std::optional<Instant> until)
      : entries_(entries), lookup_(lookup), readings_(lookup), keg_(keg), until_(until) {}

  std::expected<void, Message> begin(const Surroundings& s) {
    surroundings_ = s;
    std::size_t first = 0;
    if (keg_.primed) {  // sugar works at its own pace: only a reading tells
      while (first < entries_.size() &&
             !holds_alternative<CarbonationReading>(entries_[first]->payload)) {
        ++first;
      }
      if (first == entries_.size()) return std::unexpected(message(MessageKey::co2_primed));
    }
    const Entry& start = *entries_[first];
    keg_.co2.origin = start.header.happened_at;
    Co2AtStart at_start;
    if (const auto* read = get_if<CarbonationReading>(&start.payload)) {
      const auto c = co2_read(*read, start, s, lookup_);
      if (!c) return std::unexpected(message(MessageKey::co2_primed));
      at_start.co2 = *c;
      at_start.headspace = read->pressure;
      keg_.co2.readings.push_back({keg_.co2.origin, *c, start.header.id});
    } else {
      auto known = co2_at_start(start, keg_, s, lookup_);
      if (!known) return std::unexpected(known.error());
      at_start = *known;
    }
    if (at_start.input) keg_.co2.inputs.push_back(*at_start.input);
    first_ = first;
    return set_out(at_start);
  }

  std::expected<void, Message> go() {
    gather();
    read_all();
    auto model = make();
    if (!model) return std::unexpected(model.error());
    keg_.co2.uptake = uptake_of(*model);
    if (!keg_.co2.uptake->readings_fit) {
      const std::vector<physics::Co2Reading> readings = std::move(history_.readings);
      history_.readings.clear();
      for (const physics::Co2Reading& r : readings) {
        if (auto ok = start_again_from(r); !ok) return ok;
      }
      model = make();
      if (!model) return std::unexpected(model.error());
    }
    keg_.co2.model = *std::move(model);
    return {};
  }

 private:
  std::expected<void, Message> set_out(const Co2AtStart& at_start) {
    const Volume brimful = keg_.record.holds();
    if (brimful.value() <= 0) return std::unexpected(message(MessageKey::co2_no_size));
    if (!keg_.warmth) return std::unexpected(message(MessageKey::co2_no_temperature));
    const auto t = keg_.warmth->at(keg_.co2.origin);
    if (!t) return std::unexpected(message(MessageKey::co2_no_temperature));
    history_.brimful = brimful;
    const auto& points = keg_.level.points();
    Volume beer = points.empty() ? keg_.record.nominal : points.front().left.value();
    for (const LevelPoint& p : points) {
      if (p.at <= keg_.co2.origin) beer = p.left.value();
    }
    beer = std::min(beer, Volume((1 - least_gas_share) * brimful));
    beer = std::max(beer, Volume(least_beer_share * brimful));
    history_.beer = beer;
    history_.initial = at_start.co2;
    history_.ambient = surroundings_.ambient;
    history_.start = *t;
    if (at_start.headspace) {
      history_.headspace = *at_start.headspace;
    } else if (!at_start.at_ambient) {
      const auto rest = physics::equilibrium_gauge(at_start.co2.value(), t->value(),
                                                   surroundings_.ambient.value());
      if (rest && units::in_pascals(*rest) > 0) history_.headspace = *rest;
    }
    auto rates = physics::carbonation_priors(brimful, beer, surroundings_.tag,
                                             free_surface(keg_.record.keg_kind));
    if (!rates) return std::unexpected(message(MessageKey::co2_out_of_range));
    rates_ = *rates;
    rates_.equation = surroundings_.equation;
    return {};
  }

  void step(Instant at, physics::What what) {
    history_.steps.push_back(
        {between(keg_.co2.origin, std::max(at, keg_.co2.origin)), std::move(what)});
  }

  void gather() {
    for (const WarmthStep& w : present(keg_.warmth).steps)
      step(w.at, physics::PlaceChanged{w.place});
    for (std::size_t i = 0; i < first_; ++i) {
      if (const auto* t = get_if<Tapped>(&entries_[i]->payload)) line_ = t->line;
      if (const auto* f = get_if<Found>(&entries_[i]->payload)) line_ = f->line;
      if (holds_alternative<Untapped>(entries_[i]->payload)) line_.reset();
    }
    for (std::size_t i = first_; i < entries_.size(); ++i) {
      const Entry& e = *entries_[i];
      visit([&](const auto& p) { take(p, e, i == first_); }, e.payload);
    }
    draw();
    std::stable_sort(history_.steps.begin(), history_.steps.end(),
                     [](const auto& a, const auto& b) { return a.at < b.at; });
  }

  template <class Other>
  void take(const Other&, const Entry&, bool) {}
  void take(const Found& f, const Entry& e, bool) {
    line_ = f.line;
    if (f.gas_on && f.pressure) gas_set(*f.pressure, e);
  }
  void gas_set(GaugePressure p, const Entry& e) {
    const Instant at = e.header.happened_at;
    gas_comes(p, e, gas_coming(stated_gas(e), regulator_of(line_, at, lookup_), at, lookup_), at);
  }
  // What set the pressure, by the regulator that gives it from then on.
  void gas_comes(GaugePressure p, const Entry& set, const GasComing& by, Instant at) {
    step(at, physics::GasOn{readings_.pressure(p, by.dial, set.header.sequence), by.co2});
    on_ = Supplied{p, &set, by.regulator};
  }
  void take(const Tapped& t, const Entry& e, bool) {
    line_ = t.line;
    if (!on_) return;
    const Instant at = e.header.happened_at;
    const auto by = gas_once_tapped(*on_->set, on_->by, t.line, at, lookup_);
    if (by) gas_comes(on_->pressure, *on_->set, *by, at);
  }
  void take(const Untapped&, const Entry&, bool) { line_.reset(); }
  void take(const GasSet& g, const Entry& e, bool) {
    if (units::in_pascals(g.pressure) <= 0) {
      on_.reset();
      step(e.header.happened_at, physics::GasOff{});
    } else {
      gas_set(g.pressure, e);
    }
    mark(e, message(MessageKey::mark_gas_set, g.pressure));
  }
  void take(const GasOff&, const Entry& e, bool) {
    on_.reset();
    step(e.header.happened_at, physics::GasOff{});
    mark(e, message(MessageKey::mark_gas_off));
  }
  void take(const Vented& v, const Entry& e, bool) {
    step(e.header.happened_at, physics::Vented{v.to_pressure.value_or(GaugePressure{})});
    mark(e, message(MessageKey::mark_vented));
  }
  void take(const Rocked& r, const Entry& e, bool) {
    step(e.header.happened_at, physics::Rocked{r.duration});
    mark(e, message(MessageKey::mark_rocked));
  }
  void take(const CarbonationReading& r, const Entry& e, bool first) {
    if (first || !r.temperature) return;
    step(e.header.happened_at, physics::BeerTemperatureRead{readings_.temperature(
                                   *r.temperature, r.thermometer, e.header.sequence)});
  }

  void mark(const Entry& e, Message label) {
    keg_.co2.marks.push_back({e.header.happened_at, std::move(label), false});
  }

  // Beer that went, as far as the level tells.
  void draw() {
    const auto& points = keg_.level.points();
    Volume left = history_.beer;
    const Volume least = least_beer_share * history_.brimful;
    for (const LevelPoint& p : points) {
      if (p.at <= keg_.co2.origin) continue;
      const Volume target = std::max(p.left.value(), least);
      if (target < left - units::litres(0.05)) {
        step(p.at, physics::BeerDrawn{Volume(left - target)});
        left = target;
      }
    }
  }

  // Past the last step, and a minute more.
  [[nodiscard]] units::Duration left_until_the_end() const {
    units::Duration left = keg_.co2.time_of(present(until_));
    if (!history_.steps.empty()) left = left - history_.steps.back().at;
    return std::max(left, units::seconds(0)) + units::minutes(1);
  }

  std::expected<physics::CarbonationModel, Message> make() const {
    units::Duration horizon = until_ ? left_until_the_end() : looks_ahead();
    if (!history_.readings.empty() && !history_.steps.empty()) {
      const units::Duration read = history_.readings.back().at - history_.steps.back().at;
      horizon = std::max(horizon, units::Duration(read + units::days(1)));
    }
    auto model = physics::CarbonationModel::make(history_, rates_, horizon);
    if (!model) return std::unexpected(message(MessageKey::co2_out_of_range));
    return *std::move(model);
  }

  void read_all() {
    for (std::size_t i = first_ + 1; i < entries_.size(); ++i) {
      const auto* r = get_if<CarbonationReading>(&entries_[i]->payload);
      if (!r) continue;
      const auto read = co2_read(*r, *entries_[i], surroundings_, lookup_);
      if (!read) continue;
      const Instant at = entries_[i]->header.happened_at;
      keg_.co2.readings.push_back({at, *read, entries_[i]->header.id});
      history_.readings.push_back({keg_.co2.time_of(at), *read});
    }
  }

  std::expected<void, Message> start_again_from(const physics::Co2Reading& read) {
    const auto before = physics::co2_by_history(history_, rates_, read.at);
    if (!before) return std::unexpected(message(MessageKey::co2_out_of_range));
    if (before->half_width() <= read.co2.half_width()) return {};
    const auto after_all =
        std::upper_bound(history_.steps.begin(), history_.steps.end(), read.at,
                         [](units::Duration when, const physics::Step& s) { return when < s.at; });
    history_.steps.insert(after_all, {read.at, physics::Co2Read{read.co2}});
    return {};
  }

  const std::vector<const Entry*>& entries_;
  Lookup& lookup_;
  Readings readings_;
  KegTimeline& keg_;
  std::optional<Instant> until_;
  Surroundings surroundings_;
  std::size_t first_ = 0;
  struct Supplied {
    GaugePressure pressure;
    const Entry* set = nullptr;
    std::optional<RegulatorId> by;
  };
  std::optional<Supplied> on_;
  std::optional<LineId> line_;  // it is on
  physics::CarbonationHistory history_;
  physics::CarbonationRates rates_;
};

std::optional<TemperatureEstimate> start_temperature(const Entry& filling, Lookup& lookup) {
  Readings readings(lookup);
  const std::int64_t n = filling.header.sequence;
  const auto read = [&](const auto& p) -> std::optional<TemperatureEstimate> {
    if (!p.temperature) return std::nullopt;
    return readings.temperature(*p.temperature, p.thermometer, n);
  };
  if (const auto* f = get_if<Filled>(&filling.payload)) return read(*f);
  if (const auto* r = get_if<Received>(&filling.payload)) return read(*r);
  if (const auto* f = get_if<Found>(&filling.payload)) return read(*f);
  return std::nullopt;
}

// A keg that was found is taken to have stood there for as long as it held its beer.
void find_cold_since(KegTimeline& keg) {
  if (!keg.warmth) return;
  for (const WarmthStep& w : keg.warmth->steps) {
    if (w.place.value() > cold_enough()) {
      keg.cold_since.reset();
    } else if (!keg.cold_since) {
      const bool from_the_first = &w == &keg.warmth->steps.front();
      keg.cold_since =
          from_the_first ? present(keg.filling).at : std::max(w.at, present(keg.filling).at);
    }
  }
}

}  // namespace

void derive_co2(const std::vector<const Entry*>& since_filling, const std::vector<Stay>& stays,
                Lookup& lookup, KegTimeline& keg, std::optional<Instant> until) {
  if (since_filling.empty() || !keg.filling) return;
  const Entry& filling = *since_filling.front();
  keg.warmth = beer_warmth(filling.header.happened_at, start_temperature(filling, lookup), stays,
                           keg.record.holds(), keg.record.tag, until.value_or(Instant::max()));
  find_cold_since(keg);
  const auto cellar = lookup.cellar();
  const auto ambient =
      physics::ambient_pressure_estimate(cellar ? cellar->altitude : units::metres(0), {"weather"});
  if (!ambient) {
    keg.co2.cant_tell = message(MessageKey::co2_out_of_range);
    return;
  }
  keg.ambient = *ambient;
  Co2Story story(since_filling, lookup, keg, until);
  auto told = story.begin({*ambient, keg.record.tag, {"equilibrium equation"}});
  if (told) told = story.go();
  if (!told) keg.co2.cant_tell = told.error();
  if (keg.co2.model && keg.range) {
    const auto reached = keg.co2.model->times_to_reach(std::array{keg.range->low, keg.range->high},
                                                       units::seconds(0));
    keg.co2.enters = keg.co2.on_calendar(reached[0]);
    keg.co2.leaves = keg.co2.on_calendar(reached[1]);
  }
}

std::optional<Window> CarbonationTrack::on_calendar(const physics::Window& w) const {
  if (!w.likely) return std::nullopt;
  Window out;
  out.likely = after(origin, *w.likely);
  out.earliest = w.earliest ? after(origin, *w.earliest) : out.likely;
  if (w.latest) out.latest = after(origin, *w.latest);
  return out;
}

std::optional<Co2Estimate> CarbonationTrack::at(Instant when) const {
  if (!model || when < origin) return std::nullopt;
  const auto c = model->co2_at(time_of(when));
  return c ? std::optional(*c) : std::nullopt;
}

}  // namespace ullage::cellar
