// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/cellar/pour_setting.h"

#include <algorithm>
#include <iterator>
#include <memory>

#include "core/cellar/gas_given.h"
#include "core/cellar/pour_advice.h"
#include "core/cellar/readings.h"

namespace ullage::cellar {

namespace {

constexpr double glass_fill = 0.03;  // of a measured glass, 95 %, assumed
constexpr double least_drawn_litres = 0.1;

// The pressure as last set, with the errors of its dial: the same names as in
// the keg's CO2, so that what both share cancels.
std::optional<units::Estimate<GaugePressure>> set_pressure(const KegTimeline& keg, Lookup& lookup) {
  if (!keg.gas.now.on || !keg.gas.now.set) return std::nullopt;
  const Entry* entry = lookup.entry(keg.gas.entry);
  return Readings(lookup).pressure(*keg.gas.now.set, keg.gas.now.dial,
                                   entry ? entry->header.sequence : 0);
}

// One logged pour as measured; empty where its pressure or temperature was
// neither read nor known from the keg then.
std::optional<physics::MeasuredPour> measured(const Entry& entry, const PourSetting& s,
                                              const KegTimeline& keg, Lookup& lookup) {
  const auto& pour = *get_if<TimedPour>(&entry.payload);
  const std::int64_t n = entry.header.sequence;
  const Instant at = entry.header.happened_at;
  Readings readings(lookup);
  std::optional<units::Estimate<GaugePressure>> pressure;
  if (pour.pressure) {
    pressure = readings.pressure(*pour.pressure,
                                 dial_of(pour.instrument, keg.gas.now.regulator, lookup), n);
  } else if (keg.gas.now.since && *keg.gas.now.since <= at) {
    pressure = s.pressure;
  }
  std::optional<units::Estimate<Temperature>> temperature;
  if (pour.temperature) {
    temperature = readings.temperature(*pour.temperature, pour.thermometer, n);
  } else if (keg.warmth) {
    temperature = keg.warmth->at(at);
  }
  if (!pressure || !temperature) return std::nullopt;
  const std::string name = "pour " + std::to_string(n);
  return physics::MeasuredPour{
      units::Estimate<Volume>(pour.volume)
          .with({name + ": fill of the glass"}, glass_fill * pour.volume.value()),
      units::Estimate<units::Duration>(pour.duration)
          .with({name + ": watch"}, physics::watch_half_width_seconds),
      *pressure, *temperature};
}

void calibrate(PourSetting& s, const LineTimeline& line, const KegTimeline& keg, Lookup& lookup) {
  const auto thick = physics::ordinary_viscosity_factor({s.keg_tag + ": viscosity"});
  const auto beer = physics::flowing_beer(s.beer.value(), s.gravity);
  s.bores = units::Estimate<physics::BoreFactor>(physics::BoreFactor(1))
                .with({s.line_name + ": hose"}, 0.1);
  if (beer) {
    s.bores = physics::bore_prior(hose_material(s.line.hose_piece().material), s.line.hose().bore,
                                  *beer, {s.line_name + ": hose"});
  }
  std::vector<units::Estimate<physics::HoseResistance>> factors;
  for (const Entry* entry : line.pours) {
    s.last_pour = entry->header.happened_at;
    const auto pour = measured(*entry, s, keg, lookup);
    if (!pour) continue;
    const auto factor = physics::calibrate_bore(s.line.parts, *pour, s.gravity, thick);
    if (factor) factors.push_back(*factor);
    s.pour_contradicts = !factor;
  }
  s.timed_pours = static_cast<std::int64_t>(factors.size());
  if (const auto all = physics::combine(factors)) s.bores = *all;
}

// When its level was last found lower: that beer was poured by then.
std::optional<Instant> last_drawn(const KegTimeline& keg) {
  std::optional<Instant> out;
  const std::vector<LevelPoint>& points = keg.level.points();
  for (std::size_t i = 1; i < points.size(); ++i) {
    const Volume went = points[i - 1].left.value() - points[i].left.value();
    if (points[i].measured && units::in_litres(went) > least_drawn_litres) out = points[i].at;
  }
  return out;
}

void tell_places(PourSetting& s, const KegStatus& keg, Instant now, const PlaceLookup& places) {
  if (keg.place) {
    const PlaceHistory& history = places(keg.place->place);
    if (const PlaceWarmth* about = history.at(now)) {
      s.keg_place = about->temperature;
      s.place_read = about->read ? history.last_read : about->from;
    }
  }
  for (const PieceOfLine& piece : s.line.pieces) {
    units::Estimate<Temperature> stands = s.beer;
    std::string name;
    bool untold = false;
    const bool elsewhere = piece.place && (!keg.place || keg.place->place != *piece.place);
    if (elsewhere) {
      const PlaceHistory& history = places(*piece.place);
      name = history.record ? history.record->name : std::string("another place");
      const PlaceWarmth* warmth = history.at(now);
      untold = warmth == nullptr;
      stands = warmth ? warmth->temperature : s.beer;
    }
    s.untold.push_back(untold);
    s.standing.push_back(std::move(stands));
    s.place_names.push_back(std::move(name));
  }
  // A fitting stands with the hose before it; the coupler with the keg.
  for (std::size_t i = 1; i < s.standing.size(); ++i) {
    if (holds_alternative<physics::Hose>(s.line.parts[i])) continue;
    s.standing[i] = s.standing[i - 1];
    s.place_names[i] = s.place_names[i - 1];
    s.untold[i] = s.untold[i - 1];
  }
}

}  // namespace

Volume glass_of(UnitsPreset units) {
  switch (units) {
    case UnitsPreset::us:
      return units::us_pints(1);
    case UnitsPreset::british:
      return units::imperial_pints(1);
    case UnitsPreset::metric:
      break;
  }
  return units::litres(0.5);
}

std::expected<PourSetting, Message> pour_setting(const LineTimeline& line, const KegTimeline& keg,
                                                 const KegStatus& status, Instant now,
                                                 Lookup& lookup, const PlaceLookup& places) {
  auto set_up = line_set_up(line.record, line.segments);
  if (!set_up) return std::unexpected(set_up.error());
  const auto pressure = set_pressure(keg, lookup);
  if (!pressure) return std::unexpected(message(MessageKey::pour_no_gas, status.record.tag));
  if (!status.beer_temperature)
    return std::unexpected(message(MessageKey::pour_no_temperature, status.record.tag));
  if (!keg.ambient) return std::unexpected(message(MessageKey::pour_out_of_range));

  PourSetting s;
  s.line_id = line.record.line;
  s.line_name = line.record.name;
  s.keg = status.record.keg;
  s.keg_tag = status.record.tag;
  s.line = std::move(*set_up);
  s.pressure = *pressure;
  s.co2_share = keg.gas.now.co2;
  s.gas_since = keg.gas.now.since;
  s.last_drawn = last_drawn(keg);
  s.beer = *status.beer_temperature;
  s.ambient = *keg.ambient;
  if (const auto cellar = lookup.cellar()) {
    s.altitude = cellar->altitude;
    s.glass = glass_of(cellar->units);
    s.in_feet = cellar->units == UnitsPreset::us;
  }
  if (status.contents && status.contents->batch_record.final_gravity)
    s.gravity = *status.contents->batch_record.final_gravity;
  s.co2 = status.co2.now;
  s.target_low = status.co2.target_low;
  s.target_high = status.co2.target_high;
  s.rated = status.record.rated_pressure;
  tell_places(s, status, now, places);
  calibrate(s, line, keg, lookup);
  return s;
}

void tell_pour(LineStatus& out, const KegStatus& keg, const LineTimeline& line,
               const KegTimeline& story, Instant now, Lookup& lookup, const PlaceLookup& places) {
  auto setting = pour_setting(line, story, keg, now, lookup, places);
  if (!setting) {
    out.no_pour = setting.error();
    return;
  }
  auto state = std::make_shared<PourState>();
  state->setting = std::move(*setting);
  state->outlook = pour_outlook(state->setting);
  PourAdvice advice = pour_advice(state->setting, state->outlook, &keg, now);
  for (const Advice& a : advice.of_line)
    if (a.severity >= Severity::advice) out.advice.push_back(a);
  state->advice = std::move(advice.also_of_keg);
  std::move(advice.of_line.begin(), advice.of_line.end(), std::back_inserter(state->advice));
  std::stable_sort(state->advice.begin(), state->advice.end(),
                   [](const Advice& a, const Advice& b) { return a.severity > b.severity; });
  out.pour = std::move(state);
}

}  // namespace ullage::cellar
