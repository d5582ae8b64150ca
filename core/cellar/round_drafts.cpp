// SPDX-License-Identifier: GPL-3.0-or-later
//
// What was read on a round as entries.
#include <algorithm>
#include <cmath>

#include "core/cellar/round.h"
#include "core/units/present.h"

namespace ullage::cellar {
namespace {

constexpr double as_set_within_pascals = 700;  // a tenth of a psi: the same setting

LevelReading level_by_heft(KegId keg, units::Fraction share) {
  LevelReading l;
  l.keg = keg;
  l.method = LevelMethod::heft;
  l.fraction_left = share;
  return l;
}

LevelReading level_by_weight(KegId keg, Mass gross, std::optional<InstrumentId> scale) {
  LevelReading l;
  l.keg = keg;
  l.method = LevelMethod::weight;
  l.gross_mass = gross;
  l.scale = scale;
  return l;
}

std::optional<Payload> gas_payload(KegId id, GaugePressure read, std::optional<InstrumentId> dial,
                                   const CellarStatus& cellar) {
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
  g.instrument = dial;
  if (keg->gas.co2 != units::mole_fraction(1)) g.co2 = keg->gas.co2;
  return Payload(g);
}

Payload rest_payload(KegId id, GaugePressure read, std::optional<InstrumentId> dial,
                     const CellarStatus& cellar) {
  const KegStatus* status = cellar.find(id);
  CarbonationReading r;
  r.keg = id;
  r.pressure = read;
  r.instrument = dial;
  if (status != nullptr && status->beer_temperature) {
    r.temperature = status->beer_temperature->value();
  }
  return Payload(r);
}

Payload hold_payload(KegId id, GaugePressure read, std::optional<InstrumentId> dial) {
  HoldReading r;
  r.keg = id;
  r.pressure = read;
  r.instrument = dial;
  return Payload(r);
}

// With the pressure that stood on its keg when it was poured.
std::optional<Payload> pour_payload(const RoundStation& station, const RoundQuestion& q,
                                    units::Duration took, Instant when,
                                    const CellarStatus& cellar) {
  if (!station.line || !q.glass) return std::nullopt;
  TimedPour p;
  p.line = *station.line;
  p.volume = *q.glass;
  p.duration = took;
  const LineStatus* line = cellar.find(*station.line);
  const KegStatus* keg = line != nullptr && line->keg ? cellar.find(*line->keg) : nullptr;
  if (keg != nullptr && keg->gas.on && keg->gas.since && *keg->gas.since <= when) {
    p.pressure = keg->gas.set;
  }
  return Payload(p);
}

std::optional<Payload> payload_of(const RoundStation& station, const RoundQuestion& q,
                                  const RoundValue& value, const CellarStatus& cellar) {
  const KegId keg{station.about.uuid};
  const BottleId bottle{station.about.uuid};
  switch (q.ask) {
    case RoundAsk::place_temperature:
      return Payload(TemperatureRead{PlaceId{station.about.uuid}, get<Temperature>(value),
                                     q.instrument, TemperatureOf::air});
    case RoundAsk::gas_pressure:
      return gas_payload(keg, get<GaugePressure>(value), q.instrument, cellar);
    case RoundAsk::rest_pressure:
      return rest_payload(keg, get<GaugePressure>(value), q.instrument, cellar);
    case RoundAsk::hold_pressure:
      return hold_payload(keg, get<GaugePressure>(value), q.instrument);
    case RoundAsk::share_left:
      return Payload(level_by_heft(keg, get<units::Fraction>(value)));
    case RoundAsk::keg_weight:
      return Payload(level_by_weight(keg, get<Mass>(value), q.instrument));
    case RoundAsk::bottle_weight:
      return Payload(BottleWeighed{bottle, get<Mass>(value), q.instrument, q.with_regulator});
    case RoundAsk::bottle_gauge:
      return Payload(GaugeRead{bottle, get<GaugePressure>(value), q.instrument, {}, {}});
    case RoundAsk::pour_time:
      break;
  }
  return std::nullopt;
}

Payload note_about(SubjectRef about) {
  Noted note;
  switch (about.kind) {
    case SubjectKind::keg:
      note.keg = KegId{about.uuid};
      break;
    case SubjectKind::line:
      note.line = LineId{about.uuid};
      break;
    case SubjectKind::place:
      note.place = PlaceId{about.uuid};
      break;
    case SubjectKind::bottle:
      note.bottle = BottleId{about.uuid};
      break;
    default:
      break;
  }
  return Payload(note);
}

// A keg's level is read by lifting and by weighing, two readings of one kind.
bool same_reading(const Payload& a, const Payload& b) {
  if (kind_of(a) != kind_of(b)) return false;
  const auto* level = get_if<LevelReading>(&a);
  return level == nullptr || level->method == get<LevelReading>(b).method;
}

// How warm the beer was is not read on the round: it stays as it was taken then.
void keep_what_was_not_read(Payload& again, const Payload& first) {
  if (auto* rest = get_if<CarbonationReading>(&again)) {
    rest->temperature = get<CarbonationReading>(first).temperature;
  }
}

// Those in force, and what corrected others meanwhile; each once.
std::vector<const Entry*> still_standing(const std::vector<EntryId>& ids, const Journal& journal) {
  std::vector<const Entry*> all;
  for (const EntryId id : ids) {
    const Entry* e = journal.find(id);
    if (e != nullptr && journal.standing(id) == Standing::replaced) e = journal.replaced_by(id);
    if (e == nullptr || journal.standing(e->header.id) != Standing::in_force) continue;
    if (std::find(all.begin(), all.end(), e) == all.end()) all.push_back(e);
  }
  return all;
}

}  // namespace

std::vector<Draft> round_drafts(const RoundStation& station,
                                const std::vector<std::optional<RoundValue>>& read, Instant when,
                                const CellarStatus& cellar, const std::string& remark) {
  std::vector<Draft> drafts;
  for (std::size_t i = 0; i < station.questions.size() && i < read.size(); ++i) {
    if (!read[i]) continue;
    const RoundQuestion& q = station.questions[i];
    auto payload =
        q.ask == RoundAsk::pour_time
            ? pour_payload(station, q, get<units::Duration>(present(read[i])), when, cellar)
            : payload_of(station, q, *read[i], cellar);
    if (payload) drafts.push_back({std::move(*payload), when, {}, {}});
  }
  if (!remark.empty()) drafts.push_back({note_about(station.about), when, remark, {}});
  return drafts;
}

void correct_instead(std::vector<Draft>& drafts, const std::vector<EntryId>& before,
                     const Journal& journal, bool at_its_own_time) {
  const std::vector<const Entry*> standing = still_standing(before, journal);
  std::vector<Draft> kept;
  for (Draft& draft : drafts) {
    const auto at = std::find_if(standing.begin(), standing.end(), [&](const Entry* e) {
      return same_reading(e->payload, draft.payload);
    });
    if (at != standing.end()) {
      const Entry& first = **at;
      if (!at_its_own_time) keep_what_was_not_read(draft.payload, first.payload);
      const bool remark = holds_alternative<Noted>(draft.payload);
      if (same(first.payload, draft.payload) && (!remark || first.header.note == draft.note)) {
        continue;
      }
      draft.replaces = first.header.id;
      if (!remark) draft.note = first.header.note;
      if (!at_its_own_time) draft.happened_at = first.header.happened_at;
    }
    kept.push_back(std::move(draft));
  }
  drafts = std::move(kept);
}

}  // namespace ullage::cellar
