// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/report/slate/prefill.h"

#include <algorithm>
#include <cmath>

#include "core/cellar/hold_test.h"
#include "core/cellar/suggest.h"
#include "core/report/keg_inputs.h"
#include "core/units/present.h"

namespace ullage::report::slate {
namespace {

using cellar::KegStatus;
using cellar::Phase;

// Puts a keg's figures into the fields that the computation has. What the keg does
// not tell is never left looking like its own figure.
class Prefiller {
 public:
  Prefiller(std::string_view key, const KegSubject& subject)
      : computation_(*find_computation(key)),
        s_(subject),
        in_(starting_inputs(computation_, subject.speaker.printer.units)) {}

  // A figure that the keg should have.
  Prefiller& put(std::string_view field, const std::optional<Value>& value, InputOrigin origin,
                 std::optional<cellar::Instant> at = {}) {
    const Field* f = find(field);
    if (f == nullptr) return *this;
    if (value) return fill(*f, *value, origin, at);
    if (f->detail) {
      assumed_.push_back(label(*f));
    } else {
      in_.set(field, std::nullopt);
      to_fill_in_.push_back(label(*f));
    }
    return *this;
  }

  // A figure that it may have: without it the usual one is as good.
  Prefiller& put_known(std::string_view field, const std::optional<Value>& value,
                       InputOrigin origin, std::optional<cellar::Instant> at = {}) {
    const Field* f = find(field);
    return f == nullptr || !value ? *this : fill(*f, *value, origin, at);
  }

  Prefiller& blank(std::string_view field) {
    in_.set(field, std::nullopt);
    return *this;
  }

  // What nearly every computation about a keg asks for.
  Prefiller& keg() {
    const KegStatus& k = s_.keg;
    const bool sized = k.record.brimful > units::litres(0);
    put("brimful", sized ? std::optional<Value>(k.record.brimful) : std::nullopt,
        InputOrigin::typed);
    const cellar::PlaceStatus* place = k.place ? s_.cellar.find(k.place->place) : nullptr;
    const bool known = place != nullptr && place->temperature;
    const auto air = known ? std::optional<Value>(*place->temperature) : std::nullopt;
    const auto read_at = known ? place->read_at : std::nullopt;
    const InputOrigin read = read_at ? InputOrigin::read : InputOrigin::typed;
    put("place", air, read, read_at);
    if (k.contents) {
      put("beer", value_of(k.level.left), InputOrigin::worked_out, k.level.measured_at);
      put("temperature", value_of(k.beer_temperature), InputOrigin::worked_out);
    } else {
      put("beer", Value(k.record.nominal), InputOrigin::typed);
      put("temperature", air, read, read_at);
    }
    const auto& cellar = s_.cellar.cellar;
    put("altitude", cellar ? std::optional<Value>(cellar->altitude) : std::nullopt,
        InputOrigin::typed);
    put("share", Value(units::fraction(k.gas.co2.count())), InputOrigin::typed, k.gas.since);
    return *this;
  }
  // How far off the beer's temperature may be.
  Prefiller& temperature_error() {
    if (!s_.keg.beer_temperature) return *this;
    return put_known("thermometer", Value(s_.keg.beer_temperature->error()),
                     InputOrigin::worked_out);
  }
  Prefiller& gas() {
    const cellar::GasOnKeg& gas = s_.keg.gas;
    return put("pressure", gas.on && gas.set ? std::optional<Value>(*gas.set) : std::nullopt,
               InputOrigin::typed, gas.since);
  }
  // How far off the dial of its gas may be.
  Prefiller& dial_error() {
    const cellar::InstrumentRecord* dial = gas_dial(s_);
    if (dial == nullptr || !dial->pressure_bias) return *this;
    const double repeat =
        dial->pressure_repeatability ? units::in_pascals(*dial->pressure_repeatability) : 0.0;
    return put_known(
        "dial", Value(units::pascals(std::hypot(units::in_pascals(*dial->pressure_bias), repeat))),
        InputOrigin::typed);
  }
  Prefiller& range() {
    const cellar::Co2State& co2 = s_.keg.co2;
    const auto middle = middle_of_range();
    put("low", optional_value(co2.target_low), InputOrigin::typed);
    put("high", optional_value(co2.target_high), InputOrigin::typed);
    return put("co2", middle, InputOrigin::typed);
  }
  [[nodiscard]] std::optional<Value> middle_of_range() const {
    const cellar::Co2State& co2 = s_.keg.co2;
    if (!co2.target_low || !co2.target_high) return std::nullopt;
    return Value(units::volumes_of_co2((co2.target_low->count() + co2.target_high->count()) / 2));
  }
  // Its CO2 with the ± it has, in the fields of these names.
  Prefiller& co2_now(std::string_view field, std::string_view error) {
    const auto& now = s_.keg.co2.now;
    put(field, value_of(now), InputOrigin::worked_out);
    if (now) {
      put_known(error, Value(units::volumes_of_co2(now->half_width())), InputOrigin::worked_out);
    }
    return *this;
  }
  // How fast this keg is, by its readings where it has any.
  Prefiller& pace() {
    const auto& uptake = s_.keg.co2.uptake;
    if (!uptake) return *this;
    const cellar::UptakeBand& band = uptake->learned;
    const double factor = std::sqrt(units::in_seconds(band.high) / units::in_seconds(band.low));
    return put_known("days", Value(Count{units::in_days(band.likely)}), InputOrigin::worked_out)
        .put_known("days_factor", Value(Count{factor}), InputOrigin::worked_out);
  }

  [[nodiscard]] Offer offer(std::string label) const {
    return {computation_.key, std::move(label), in_, to_fill_in_, assumed_};
  }

 private:
  template <class Q>
  static std::optional<Value> optional_value(const std::optional<Q>& q) {
    return q ? std::optional<Value>(*q) : std::nullopt;
  }
  template <class Q>
  static std::optional<Value> value_of(const std::optional<units::Estimate<Q>>& e) {
    return e ? std::optional<Value>(e->value()) : std::nullopt;
  }
  [[nodiscard]] const Field* find(std::string_view field) const {
    const auto f = std::find_if(computation_.fields.begin(), computation_.fields.end(),
                                [&](const Field& each) { return each.key == field; });
    return f == computation_.fields.end() ? nullptr : &*f;
  }
  [[nodiscard]] std::string label(const Field& f) const { return label_of(f, s_.speaker.words); }
  Prefiller& fill(const Field& f, const Value& value, InputOrigin origin,
                  std::optional<cellar::Instant> at) {
    if (value.index() != f.least.index()) return *this;  // another thing of that name
    const double m = magnitude_of(value);
    if (m >= magnitude_of(f.least) && m <= magnitude_of(f.greatest)) {
      in_.set(f.key, value, origin, at ? say_age(*at, s_.speaker) : std::string());
    } else {
      in_.set(f.key, std::nullopt);
      to_fill_in_.push_back(label(f) + " (" + print(value, s_.speaker.printer) +
                            " is beyond this)");
    }
    return *this;
  }

  const Computation& computation_;
  const KegSubject& s_;
  Inputs in_;
  std::vector<std::string> to_fill_in_, assumed_;
};

Offer serving_offer(const KegSubject& s) {
  return Prefiller("pressure_to_set", s)
      .keg()
      .range()
      .temperature_error()
      .dial_error()
      .offer("What pressure to set");
}

// With no gas on it, the pressure that would hold its range.
Offer waiting_offer(const KegSubject& s) {
  Prefiller p("set_and_wait", s);
  p.keg().range().co2_now("start", "start_error").pace().dial_error();
  const cellar::GasOnKeg& gas = s.keg.gas;
  if (gas.on || !gas.should_be) {
    p.gas();
  } else {
    p.put("pressure", Value(*gas.should_be), InputOrigin::worked_out);
  }
  return p.offer("How long at this pressure");
}

// What to burst at is asked, not told, unless a burst is on.
Offer burst_offer(const KegSubject& s) {
  Prefiller p("burst", s);
  p.keg().range().co2_now("start", "start_error").pace().dial_error();
  const auto& should_be = s.keg.gas.should_be;
  p.put("serving", should_be ? std::optional<Value>(*should_be) : std::nullopt,
        InputOrigin::worked_out);
  if (should_be && s.keg.gas.set && *s.keg.gas.set > *should_be) p.gas();
  return p.offer("How long at high pressure");
}

Offer rocking_offer(const KegSubject& s) {
  Prefiller p("rocking", s);
  p.keg().range().co2_now("start", "start_error").dial_error();
  if (s.keg.gas.on) p.gas();
  p.blank("rocked");
  return p.offer("How long to rock it");
}

// The scale's reading is the person's to give.
Offer weighing_offer(const KegSubject& s) {
  Prefiller p("left_by_weight", s);
  const cellar::KegRecord& keg = s.keg.record;
  p.put("gross", std::nullopt, InputOrigin::typed).keg().gas();
  p.put("tare", keg.tare ? std::optional<Value>(*keg.tare) : std::nullopt, InputOrigin::typed);
  if (keg.tare_half_width) {
    p.put_known("tare_error", Value(*keg.tare_half_width), InputOrigin::typed);
  }
  const auto& gravity = present(s.keg.contents).batch_record.final_gravity;
  p.put("gravity", gravity ? std::optional<Value>(*gravity) : std::nullopt, InputOrigin::typed);
  return p.offer("How much by weight");
}

Offer rescue_offer(const KegSubject& s) {
  Prefiller p("rescue", s);
  p.keg().co2_now("co2", "co2_error").pace().temperature_error();
  if (s.keg.level.left) {
    p.put_known("level_error", Value(s.keg.level.left->error()), InputOrigin::worked_out);
  }
  p.put("target", p.middle_of_range(), InputOrigin::typed);
  return p.offer("How to get CO₂ out of it");
}

Offer drift_offer(const KegSubject& s) {
  return Prefiller("drift", s)
      .keg()
      .range()
      .gas()
      .co2_now("start", "start_error")
      .pace()
      .dial_error()
      .offer("How far it drifts on tap");
}

bool on_one_dial(const physics::HoldReading& a, const physics::HoldReading& b) {
  const auto& there = b.pressure.contributions();
  return std::any_of(a.pressure.contributions().begin(), a.pressure.contributions().end(),
                     [&](const units::Contribution& c) {
                       return std::any_of(there.begin(), there.end(),
                                          [&](const auto& o) { return o.source == c.source; });
                     });
}

// The readings of an empty keg's test, the last four of them. None where there was
// no test.
std::optional<Offer> hold_offer(const KegSubject& s) {
  constexpr std::size_t most = 4;
  const cellar::HoldStudy* study = s.keg.hold_study.get();
  if (study == nullptr || study->beer || study->test.readings.empty()) return std::nullopt;
  const auto& readings = study->test.readings;
  const std::size_t skipped = readings.size() > most ? readings.size() - most : 0;
  Prefiller p("hold_test", s);
  p.keg().blank("beer");
  for (const std::string_view key : {"after2", "pressure2", "temperature2"}) p.blank(key);
  for (std::size_t i = skipped; i < readings.size(); ++i) {
    const std::string n = std::to_string(i - skipped + 1);
    const physics::HoldReading& r = readings[i];
    const auto at = study->time_of(r.at);
    p.put("pressure" + n, Value(r.pressure.value()), InputOrigin::read, at);
    p.put("temperature" + n, Value(r.temperature.value()), InputOrigin::read, at);
    if (i > skipped) {
      p.put("after" + n, Value(units::Duration(r.at - readings[skipped].at)), InputOrigin::read,
            at);
    }
  }
  if (const auto& closed = study->test.closed_at) {
    p.put_known("shut", Value(units::Duration(readings[skipped].at - *closed)), InputOrigin::typed,
                study->time_of(*closed));
  }
  if (!on_one_dial(readings[skipped], readings.back()))
    p.put_known("dials", Value(Choice{1}), InputOrigin::typed);
  p.put("limit", Value(study->limit_per_day), InputOrigin::typed);
  return p.offer("Whether it holds");
}

bool is_warm(const KegSubject& s) {
  if (!s.keg.beer_temperature || !s.keg.place) return false;
  const cellar::PlaceStatus* place = s.cellar.find(s.keg.place->place);
  return place != nullptr && place->temperature &&
         *place->temperature < s.keg.beer_temperature->low();
}

double answered(const Answer& a) { return magnitude_of(present(a.values.front().value)); }

// What a dial can be set to: a tenth of a psi.
units::GaugePressure to_set(double pascals_above) {
  return units::gauge_psi(std::round(units::in_psi(units::pascals(pascals_above)) * 10) / 10);
}

}  // namespace

std::vector<Offer> offers_for(const KegSubject& s) {
  std::vector<Offer> offers;
  const Phase phase = s.keg.phase;
  if (phase == Phase::unknown) return offers;
  if (s.keg.contents) {
    const bool below = s.keg.co2.verdict == cellar::Co2Verdict::below;
    if (below) offers.push_back(burst_offer(s));
    if (below) offers.push_back(waiting_offer(s));
    if (below) offers.push_back(rocking_offer(s));
    if (s.keg.co2.verdict == cellar::Co2Verdict::above) offers.push_back(rescue_offer(s));
    offers.push_back(serving_offer(s));
    if (!below && s.keg.gas.on && s.keg.co2.now) offers.push_back(drift_offer(s));
    offers.push_back(weighing_offer(s));
    if (is_warm(s)) {
      offers.push_back(Prefiller("cooling", s).keg().offer("How long to cool it"));
    }
    return offers;
  }
  if (auto hold = hold_offer(s)) offers.push_back(std::move(*hold));
  offers.push_back(Prefiller("purge_cycles", s).keg().offer("How clean a purge leaves it"));
  offers.push_back(Prefiller("purge_push", s).keg().offer("Pushing liquid out"));
  offers.push_back(Prefiller("purge_cheapest", s).keg().offer("Which purge takes the least gas"));
  return offers;
}

std::optional<cellar::SuggestedTask> leads_to(const Computation& c, const Inputs& in,
                                              const Answer& a, const KegStatus& keg) {
  const cellar::KegId id = keg.record.keg;
  if (c.key == "pressure_to_set") {
    if (answered(a) <= 0) return std::nullopt;
    return cellar::gas_task(keg, to_set(answered(a)), cellar::GasPurpose::serving);
  }
  if (c.key == "burst") {
    return cellar::gas_task(keg, in.get<units::GaugePressure>("pressure"),
                            cellar::GasPurpose::burst);
  }
  if (c.key == "set_and_wait") {
    return cellar::gas_task(keg, in.get<units::GaugePressure>("pressure"),
                            cellar::GasPurpose::set_and_wait);
  }
  if (c.key == "rescue") {
    cellar::Vented prefill;
    prefill.to_pressure = in.get<units::GaugePressure>("vent_to");
    return cellar::keg_task<cellar::Vented>(id, prefill);
  }
  if (c.key == "left_by_weight") {
    cellar::LevelReading prefill;
    prefill.method = cellar::LevelMethod::weight;
    prefill.gross_mass = in.get<units::Mass>("gross");
    return cellar::keg_task<cellar::LevelReading>(id, prefill);
  }
  cellar::Purged purge;
  if (c.key == "purge_cycles") {
    purge.cycles = std::lround(in.number("cycles"));
    purge.pressure = in.get<units::GaugePressure>("pressure");
  } else if (c.key == "purge_push") {
    purge.method = cellar::PurgeMethod::pushed_liquid;
    purge.pressure = in.get<units::GaugePressure>("pressure");
  } else if (c.key == "purge_sweep") {
    purge.method = cellar::PurgeMethod::swept;
    purge.vessel_volumes = in.number("volumes");
  } else {
    return std::nullopt;
  }
  return cellar::keg_task<cellar::Purged>(id, purge);
}

}  // namespace ullage::report::slate
