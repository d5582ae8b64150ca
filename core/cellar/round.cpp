// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/cellar/round.h"

#include <algorithm>
#include <cmath>
#include <tuple>

#include "core/cellar/cellar_status.h"
#include "core/units/magnitude.h"

namespace ullage::cellar {
namespace {

constexpr double as_set_within_pascals = 700;  // a tenth of a psi: the same setting

double magnitude(const RoundValue& v) {
  return visit([](auto q) { return units::to_magnitude(q); }, v);
}

struct AskLimits {
  RoundAsk ask;
  RoundValue least, greatest, step;
  double jump;  // a change beyond this is worth a second look, in SI
};

const std::vector<AskLimits>& ask_limits() {
  static const std::vector<AskLimits> all{
      {RoundAsk::place_temperature, units::celsius(-20), units::celsius(45), units::kelvin(0.5), 4},
      {RoundAsk::gas_pressure, units::gauge_psi(0), units::gauge_psi(130), units::gauge_psi(1),
       35000},
      {RoundAsk::rest_pressure, units::gauge_psi(0), units::gauge_psi(130), units::gauge_psi(1),
       35000},
      {RoundAsk::hold_pressure, units::gauge_psi(0), units::gauge_psi(130), units::gauge_psi(1),
       35000},
      {RoundAsk::share_left, units::fraction(0), units::fraction(1), units::fraction(0.1), 0.5},
      {RoundAsk::keg_weight, units::kilograms(1), units::kilograms(150), units::kilograms(0.5), 10},
      {RoundAsk::bottle_weight, units::kilograms(1), units::kilograms(150), units::kilograms(0.1),
       4},
      {RoundAsk::bottle_gauge, units::gauge_bar(0), units::gauge_bar(330), units::gauge_bar(5),
       5e6}};
  return all;
}

const AskLimits& ask_limits_of(RoundAsk ask) {
  return *std::find_if(ask_limits().begin(), ask_limits().end(),
                       [&](const AskLimits& l) { return l.ask == ask; });
}

RoundQuestion question(RoundAsk ask) {
  const AskLimits& l = ask_limits_of(ask);
  return {ask, {}, {}, l.least, l.greatest, l.step};
}

RoundQuestion pressure_question(RoundAsk ask, const KegStatus& keg) {
  RoundQuestion q = question(ask);
  if (keg.gas.set) {
    q.last = *keg.gas.set;
    q.last_at = keg.gas.since;
  }
  return q;
}

// The last time the value was read, from the thing's own story.
template <class P, class Read>
RoundQuestion last_read(RoundAsk ask, SubjectRef about, const Journal& journal, Read&& read) {
  RoundQuestion q = question(ask);
  for (const Entry* e : journal.story(about)) {
    const auto* p = get_if<P>(&e->payload);
    if (p == nullptr) continue;
    if (const std::optional<RoundValue> v = read(*p)) {
      q.last = v;
      q.last_at = e->header.happened_at;
    }
  }
  return q;
}

RoundStation keg_station(const KegStatus& keg, const Journal& journal) {
  RoundStation s;
  s.about = subject(keg.record.keg);
  s.name = keg.record.tag;
  if (keg.place) s.place = keg.place->name;
  if (!keg.contents) {
    s.questions.push_back(pressure_question(RoundAsk::hold_pressure, keg));
    return s;
  }
  s.questions.push_back(
      pressure_question(keg.gas.on ? RoundAsk::gas_pressure : RoundAsk::rest_pressure, keg));
  s.questions.push_back(
      last_read<LevelReading>(RoundAsk::share_left, s.about, journal,
                              [](const LevelReading& l) -> std::optional<RoundValue> {
                                if (l.method != LevelMethod::heft || !l.fraction_left)
                                  return std::nullopt;
                                return RoundValue(*l.fraction_left);
                              }));
  if (keg.record.tare) {
    s.questions.push_back(
        last_read<LevelReading>(RoundAsk::keg_weight, s.about, journal,
                                [](const LevelReading& l) -> std::optional<RoundValue> {
                                  if (!l.gross_mass) return std::nullopt;
                                  return RoundValue(*l.gross_mass);
                                }));
  }
  return s;
}

RoundStation bottle_station(const BottleStatus& bottle, const CellarStatus& cellar,
                            const Journal& journal) {
  RoundStation s;
  s.about = subject(bottle.record.bottle);
  s.name = bottle.record.name;
  if (bottle.record.place) {
    if (const PlaceStatus* place = cellar.find(*bottle.record.place)) s.place = place->record.name;
  }
  s.questions.push_back(
      last_read<BottleWeighed>(RoundAsk::bottle_weight, s.about, journal,
                               [](const BottleWeighed& w) -> std::optional<RoundValue> {
                                 return RoundValue(w.gross_mass);
                               }));
  s.questions.push_back(last_read<GaugeRead>(
      RoundAsk::bottle_gauge, s.about, journal,
      [](const GaugeRead& g) -> std::optional<RoundValue> { return RoundValue(g.pressure); }));
  return s;
}

RoundStation place_station(const PlaceStatus& place) {
  RoundStation s;
  s.about = subject(place.record.place);
  s.name = place.record.name;
  s.place = place.record.name;
  RoundQuestion q = question(RoundAsk::place_temperature);
  if (place.temperature) q.last = *place.temperature;
  q.last_at = place.read_at;
  s.questions.push_back(std::move(q));
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

void add_place(const std::optional<PlaceId>& place, const CellarStatus& cellar,
               const Journal& journal, std::vector<RoundStation>& out) {
  for (const KegStatus* keg : kegs_in(place, cellar)) {
    out.push_back(keg_station(*keg, journal));
  }
  for (const BottleStatus& bottle : cellar.bottles) {
    if (bottle.record.in_use && bottle.record.place == place) {
      out.push_back(bottle_station(bottle, cellar, journal));
    }
  }
}

LevelReading level_by_heft(KegId keg, units::Fraction share) {
  LevelReading l;
  l.keg = keg;
  l.method = LevelMethod::heft;
  l.fraction_left = share;
  return l;
}

LevelReading level_by_weight(KegId keg, Mass gross) {
  LevelReading l;
  l.keg = keg;
  l.method = LevelMethod::weight;
  l.gross_mass = gross;
  return l;
}

std::optional<Payload> gas_payload(KegId id, GaugePressure read, const CellarStatus& cellar) {
  const KegStatus* keg = cellar.find(id);
  if (keg == nullptr) return std::nullopt;
  if (keg->gas.set && std::abs(units::in_pascals(read) - units::in_pascals(*keg->gas.set)) <
                          as_set_within_pascals) {
    return std::nullopt;
  }
  GasSet g;
  g.keg = id;
  g.pressure = read;
  g.regulator = keg->gas.regulator;
  if (keg->gas.co2 != units::mole_fraction(1)) g.co2 = keg->gas.co2;
  return Payload(g);
}

std::optional<Payload> payload_of(RoundAsk ask, const RoundValue& value, SubjectRef about,
                                  const CellarStatus& cellar) {
  const KegId keg{about.uuid};
  const BottleId bottle{about.uuid};
  switch (ask) {
    case RoundAsk::place_temperature:
      return Payload(
          TemperatureRead{PlaceId{about.uuid}, get<Temperature>(value), {}, TemperatureOf::air});
    case RoundAsk::gas_pressure:
      return gas_payload(keg, get<GaugePressure>(value), cellar);
    case RoundAsk::rest_pressure: {
      const KegStatus* status = cellar.find(keg);
      CarbonationReading r;
      r.keg = keg;
      r.pressure = get<GaugePressure>(value);
      if (status != nullptr && status->beer_temperature) {
        r.temperature = status->beer_temperature->value();
      }
      return Payload(r);
    }
    case RoundAsk::hold_pressure: {
      HoldReading r;
      r.keg = keg;
      r.pressure = get<GaugePressure>(value);
      return Payload(r);
    }
    case RoundAsk::share_left:
      return Payload(level_by_heft(keg, get<units::Fraction>(value)));
    case RoundAsk::keg_weight:
      return Payload(level_by_weight(keg, get<Mass>(value)));
    case RoundAsk::bottle_weight:
      return Payload(BottleWeighed{bottle, get<Mass>(value), {}, {}});
    case RoundAsk::bottle_gauge:
      return Payload(GaugeRead{bottle, get<GaugePressure>(value), {}, {}, {}});
  }
  return std::nullopt;
}

}  // namespace

std::vector<RoundStation> round_stations(const CellarStatus& cellar, const Journal& journal) {
  std::vector<RoundStation> out;
  for (const PlaceStatus* place : places_in_order(cellar)) {
    out.push_back(place_station(*place));
    add_place(place->record.place, cellar, journal, out);
  }
  add_place(std::nullopt, cellar, journal, out);
  return out;
}

RoundDoubt doubt_about(const RoundQuestion& q, const RoundValue& value) {
  const double v = magnitude(value);
  if (!(v >= magnitude(q.least))) return RoundDoubt::below_range;
  if (!(v <= magnitude(q.greatest))) return RoundDoubt::above_range;
  if (!q.last) return RoundDoubt::none;
  const double change = v - magnitude(*q.last);
  // What is left of a keg or a bottle goes one way only.
  if (q.ask == RoundAsk::share_left && change > 0.05) return RoundDoubt::fuller;
  const bool weighed = q.ask == RoundAsk::keg_weight || q.ask == RoundAsk::bottle_weight;
  if (weighed && change > 0.3) return RoundDoubt::heavier;
  const double jump = ask_limits_of(q.ask).jump;
  if (change > jump) return RoundDoubt::much_higher;
  return change < -jump ? RoundDoubt::much_lower : RoundDoubt::none;
}

bool refuses(RoundDoubt doubt) {
  return doubt == RoundDoubt::below_range || doubt == RoundDoubt::above_range;
}

std::vector<Draft> round_drafts(const RoundStation& station,
                                const std::vector<std::optional<RoundValue>>& read, Instant when,
                                const CellarStatus& cellar) {
  std::vector<Draft> drafts;
  for (std::size_t i = 0; i < station.questions.size() && i < read.size(); ++i) {
    if (!read[i]) continue;
    auto payload = payload_of(station.questions[i].ask, *read[i], station.about, cellar);
    if (payload) drafts.push_back({std::move(*payload), when, {}, {}});
  }
  return drafts;
}

}  // namespace ullage::cellar
