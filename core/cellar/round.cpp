// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/cellar/round.h"

#include <algorithm>
#include <ranges>
#include <tuple>

#include "core/cellar/cellar_status.h"
#include "core/cellar/keg_weight.h"
#include "core/cellar/pour_setting.h"
#include "core/cellar/readings.h"
#include "core/cellar/round_limits.h"
#include "core/physics/line_calibration.h"

namespace ullage::cellar {
namespace {

// By lifting a keg, of a full one, 95 % (assumed, as for every such reading).
constexpr double heft_within = 0.15;

struct LastRead {
  RoundValue value;
  std::optional<InstrumentId> on;
};

// Writes the questions of stations: what was read last and on what, from the
// journal.
class Questioner {
 public:
  Questioner(const CellarStatus& cellar, const Journal& journal)
      : cellar_(cellar), journal_(journal), lookup_(journal), readings_(lookup_) {}

  [[nodiscard]] RoundStation keg(const KegStatus& keg);
  [[nodiscard]] RoundStation bottle(const BottleStatus& bottle);
  [[nodiscard]] RoundStation place(const PlaceStatus& place);
  [[nodiscard]] RoundStation tap(const LineStatus& line);

 private:
  void tell_place(RoundStation& s, const std::optional<PlaceId>& at) const {
    const PlaceStatus* place = at ? cellar_.find(*at) : nullptr;
    if (place == nullptr) return;
    s.place = place->record.name;
    s.place_out_of_use = !place->record.in_use;
  }
  RoundQuestion question(RoundAsk ask) {
    const AskLimits& l = ask_limits_of(ask);
    RoundQuestion q;
    q.ask = ask;
    q.least = l.least;
    q.greatest = l.greatest;
    q.step = l.step;
    const std::vector<InstrumentKind> kinds = kinds_for(ask);
    for (const InstrumentRecord& i : cellar_.instruments) {
      const bool fits = std::find(kinds.begin(), kinds.end(), i.instrument_kind) != kinds.end();
      if (i.in_use && fits) q.instruments.push_back(instrument(ask, i));
    }
    return q;
  }
  RoundInstrument instrument(RoundAsk ask, const InstrumentRecord& i) {
    RoundInstrument told{i.instrument, i.name, Mass{}};
    visit(
        [&]<class Q>(const units::Estimate<Q>& e) {
          if constexpr (requires { told.within = e.error(); }) told.within = e.error();
        },
        reading(ask, ask_limits_of(ask).least, i.instrument, 0));
    return told;
  }
  // With the errors of the instrument, or the usual ones where none is named. A
  // bottle's gauge has no usual one.
  RoundReading reading(RoundAsk ask, const RoundValue& v, std::optional<InstrumentId> on,
                       std::int64_t sequence) {
    switch (ask) {
      case RoundAsk::place_temperature:
        return readings_.temperature(get<Temperature>(v), on, sequence);
      case RoundAsk::bottle_gauge:
        if (!on) return units::Estimate<GaugePressure>(get<GaugePressure>(v));
        break;
      case RoundAsk::share_left:
        return units::Estimate<units::Fraction>(get<units::Fraction>(v))
            .with({"lifting"}, heft_within);
      case RoundAsk::keg_weight:
      case RoundAsk::bottle_weight:
        return readings_.mass(get<Mass>(v), on, sequence);
      case RoundAsk::pour_time:
        return units::Estimate<units::Duration>(get<units::Duration>(v))
            .with({"watch"}, physics::watch_half_width_seconds);
      case RoundAsk::gas_pressure:
      case RoundAsk::rest_pressure:
      case RoundAsk::hold_pressure:
        break;
    }
    return readings_.pressure(get<GaugePressure>(v), on, sequence);
  }
  void tell_last(RoundQuestion& q, const LastRead& last, std::optional<Instant> at,
                 std::int64_t sequence) {
    q.last = last.value;
    q.last_read = reading(q.ask, last.value, last.on, sequence);
    q.last_at = at;
    const bool there =
        std::any_of(q.instruments.begin(), q.instruments.end(),
                    [&](const RoundInstrument& i) { return i.instrument == last.on; });
    if (there) q.instrument = last.on;
  }
  // The last time the value was read, from the thing's own story.
  template <class P, class Read>
  RoundQuestion last_read(RoundAsk ask, SubjectRef about, Read&& read) {
    RoundQuestion q = question(ask);
    const auto story = journal_.story(about);
    for (const Entry* e : std::views::reverse(story)) {
      const auto* p = get_if<P>(&e->payload);
      if (p == nullptr) continue;
      if (const std::optional<LastRead> v = read(*p)) {
        tell_last(q, *v, e->header.happened_at, e->header.sequence);
        break;
      }
    }
    return q;
  }
  // As the gas was set; the dial is the regulator's own where none was named.
  void tell_set(RoundQuestion& q, const KegStatus& keg, bool at_the_regulator) {
    if (!keg.gas.set) return;
    std::optional<InstrumentId> dial;
    if (keg.gas.regulator && at_the_regulator) {
      if (const auto r = lookup_.find(*keg.gas.regulator)) dial = r->dial;
    }
    const auto story = journal_.story(subject(keg.record.keg));
    const auto set = std::find_if(story.rbegin(), story.rend(), [](const Entry* e) {
      return holds_alternative<GasSet>(e->payload);
    });
    if (set != story.rend()) {
      if (const auto& named = get<GasSet>((*set)->payload).instrument) dial = named;
    }
    tell_last(q, {*keg.gas.set, dial}, keg.gas.since, 0);
  }
  RoundQuestion gas(const KegStatus& keg) {
    RoundQuestion q = question(RoundAsk::gas_pressure);
    tell_set(q, keg, true);
    return q;
  }
  // Read on the closed keg; until it has been, the pressure it was set to.
  template <class P>
  RoundQuestion closed(RoundAsk ask, const KegStatus& keg) {
    RoundQuestion q =
        last_read<P>(ask, subject(keg.record.keg), [](const P& r) -> std::optional<LastRead> {
          if constexpr (std::is_same_v<P, CarbonationReading>) {
            if (!r.pressure) return std::nullopt;
            return LastRead{*r.pressure, r.instrument};
          } else {
            return LastRead{r.pressure, r.instrument};
          }
        });
    const bool older = q.last_at && keg.gas.since && *q.last_at < *keg.gas.since;
    if (!q.last || older) tell_set(q, keg, false);
    return q;
  }
  RoundQuestion heft(SubjectRef keg) {
    return last_read<LevelReading>(RoundAsk::share_left, keg,
                                   [](const LevelReading& l) -> std::optional<LastRead> {
                                     if (l.method != LevelMethod::heft || !l.fraction_left)
                                       return std::nullopt;
                                     return LastRead{*l.fraction_left, std::nullopt};
                                   });
  }
  RoundQuestion weight(const KegStatus& keg) {
    RoundQuestion q = last_read<LevelReading>(RoundAsk::keg_weight, subject(keg.record.keg),
                                              [](const LevelReading& l) -> std::optional<LastRead> {
                                                if (!l.gross_mass) return std::nullopt;
                                                return LastRead{*l.gross_mass, l.scale};
                                              });
    if (const auto can = keg_weights(keg.record)) {
      q.least = can->least;
      q.greatest = can->most;
    }
    const Volume left = keg.level.left ? keg.level.left->value() : units::litres(0);
    if (const auto about = usual_weight(keg.record, left)) q.begins = *about;
    return q;
  }
  RoundQuestion pour(LineId line) {
    std::optional<Volume> glass;
    RoundQuestion q =
        last_read<TimedPour>(RoundAsk::pour_time, subject(line), [&](const TimedPour& p) {
          glass = p.volume;
          return std::optional<LastRead>({p.duration, std::nullopt});
        });
    const UnitsPreset units = cellar_.cellar ? cellar_.cellar->units : UnitsPreset::metric;
    q.glass = glass ? *glass : glass_of(units);
    return q;
  }
  void ask_how_full(RoundStation& s, const KegStatus& keg) {
    RoundQuestion lifted = heft(s.about);
    if (!keg.record.tare) return s.questions.push_back(std::move(lifted));
    RoundQuestion weighed = weight(keg);
    if (!s.line) {
      s.questions.push_back(std::move(lifted));
      s.questions.push_back(std::move(weighed));
      return;
    }
    const bool by_scale =
        weighed.last_at && (!lifted.last_at || *weighed.last_at > *lifted.last_at);
    s.questions.push_back(by_scale ? std::move(weighed) : std::move(lifted));
  }

  const CellarStatus& cellar_;
  const Journal& journal_;
  Lookup lookup_;
  Readings readings_;
};

RoundStation Questioner::keg(const KegStatus& keg) {
  RoundStation s;
  s.about = subject(keg.record.keg);
  s.name = keg.record.tag;
  tell_place(s, keg.place ? std::optional(keg.place->place) : std::nullopt);
  if (!keg.contents) {
    s.questions.push_back(closed<HoldReading>(RoundAsk::hold_pressure, keg));
    return s;
  }
  if (keg.line) s.line = keg.line->line;
  s.questions.push_back(keg.gas.on ? gas(keg)
                                   : closed<CarbonationReading>(RoundAsk::rest_pressure, keg));
  ask_how_full(s, keg);
  const LineStatus* line = s.line ? cellar_.find(*s.line) : nullptr;
  s.do_not_serve = keg.lock.has_value() || (line != nullptr && line->do_not_serve());
  return s;
}

RoundStation Questioner::bottle(const BottleStatus& bottle) {
  RoundStation s;
  s.about = subject(bottle.record.bottle);
  s.name = bottle.record.name;
  tell_place(s, bottle.record.place);
  std::optional<RegulatorId> on_it;
  RoundQuestion weight = last_read<BottleWeighed>(
      RoundAsk::bottle_weight, s.about, [&](const BottleWeighed& w) -> std::optional<LastRead> {
        on_it = w.with_regulator;
        return LastRead{w.gross_mass, w.scale};
      });
  const bool still_on =
      on_it && std::find(bottle.feeds.begin(), bottle.feeds.end(), *on_it) != bottle.feeds.end();
  if (still_on) weight.with_regulator = on_it;
  s.questions.push_back(std::move(weight));
  s.questions.push_back(last_read<GaugeRead>(RoundAsk::bottle_gauge, s.about,
                                             [](const GaugeRead& g) -> std::optional<LastRead> {
                                               return LastRead{g.pressure, g.instrument};
                                             }));
  return s;
}

RoundStation Questioner::place(const PlaceStatus& place) {
  RoundStation s;
  s.about = subject(place.record.place);
  s.name = place.record.name;
  s.place = place.record.name;
  RoundQuestion q =
      last_read<TemperatureRead>(RoundAsk::place_temperature, s.about,
                                 [](const TemperatureRead& t) -> std::optional<LastRead> {
                                   return LastRead{t.temperature, t.thermometer};
                                 });
  if (!q.last) q.last = place.temperature;  // as it is set
  s.questions.push_back(std::move(q));
  return s;
}

RoundStation Questioner::tap(const LineStatus& line) {
  RoundStation s;
  s.about = subject(line.record.line);
  s.name = line.record.name;
  s.line = line.record.line;
  s.do_not_serve = line.do_not_serve();
  const KegStatus* keg = line.keg ? cellar_.find(*line.keg) : nullptr;
  const bool pours = keg != nullptr && keg->contents && !keg->lock;
  RoundQuestion glass = pour(line.record.line);
  s.last_pour = glass.last_at;
  if (pours && !s.do_not_serve) s.questions.push_back(std::move(glass));
  return s;
}

// Kegs worth stopping at: with beer, or kept under gas. What is dirty or clean
// and open has nothing to read.
bool worth_a_stop(const KegStatus& keg) {
  if (!keg.registered_now || keg.lent_to) return false;
  return keg.contents.has_value() || (keg.phase == Phase::purged && keg.gas.set.has_value());
}

std::vector<const KegStatus*> kegs_in(const std::optional<PlaceId>& place,
                                      const CellarStatus& cellar) {
  std::vector<const KegStatus*> kegs;
  for (const KegStatus& keg : cellar.kegs) {
    const bool here = place ? keg.place && keg.place->place == *place : !keg.place.has_value();
    if (here && worth_a_stop(keg)) kegs.push_back(&keg);
  }
  std::stable_sort(kegs.begin(), kegs.end(), [](const KegStatus* a, const KegStatus* b) {
    if (a->line.has_value() != b->line.has_value()) return a->line.has_value();
    return a->line && natural_less(a->line->tap, b->line->tap);
  });
  return kegs;
}

// As one walks: by the order given, then those without one as they are listed.
std::vector<const PlaceStatus*> places_in_order(const CellarStatus& cellar) {
  std::vector<const PlaceStatus*> places;
  for (const PlaceStatus& place : cellar.places) {
    if (place.record.in_use) places.push_back(&place);
  }
  std::stable_sort(places.begin(), places.end(), [](const PlaceStatus* a, const PlaceStatus* b) {
    const auto& x = a->record.walk_order;
    const auto& y = b->record.walk_order;
    return x.has_value() != y.has_value() ? x.has_value() : x && *x < *y;
  });
  return places;
}

std::vector<const LineStatus*> taps_in_order(const CellarStatus& cellar) {
  std::vector<const LineStatus*> taps;
  for (const LineStatus& line : cellar.lines) {
    if (line.record.in_use) taps.push_back(&line);
  }
  std::stable_sort(taps.begin(), taps.end(), [](const LineStatus* a, const LineStatus* b) {
    return natural_less(a->record.tap, b->record.tap);
  });
  return taps;
}

void add_place(const std::optional<PlaceId>& place, const CellarStatus& cellar, Questioner& ask,
               std::vector<RoundStation>& out) {
  for (const KegStatus* keg : kegs_in(place, cellar)) out.push_back(ask.keg(*keg));
  for (const BottleStatus& bottle : cellar.bottles) {
    if (bottle.record.in_use && bottle.record.place == place) out.push_back(ask.bottle(bottle));
  }
}

}  // namespace

std::vector<RoundStation> round_stations(const CellarStatus& cellar, const Journal& journal) {
  std::vector<RoundStation> out;
  Questioner ask(cellar, journal);
  for (const PlaceStatus* place : places_in_order(cellar)) {
    out.push_back(ask.place(*place));
    add_place(place->record.place, cellar, ask, out);
  }
  // What was left behind in a place taken out of use is still there to be read.
  for (const PlaceStatus& place : cellar.places) {
    if (!place.record.in_use) add_place(place.record.place, cellar, ask, out);
  }
  add_place(std::nullopt, cellar, ask, out);
  for (const LineStatus* line : taps_in_order(cellar)) out.push_back(ask.tap(*line));
  return out;
}

}  // namespace ullage::cellar
