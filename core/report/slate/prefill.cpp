// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/report/slate/prefill.h"

#include <algorithm>
#include <cmath>

#include "core/cellar/hold_test.h"
#include "core/cellar/suggest.h"

namespace ullage::report::slate {
namespace {

using cellar::KegStatus;
using cellar::Phase;

// Puts a keg's figures into the fields that have them; fields that the
// computation lacks, and values outside its limits, are left alone.
class Prefiller {
 public:
  Prefiller(std::string_view key, const KegSubject& subject)
      : computation_(*find_computation(key)),
        s_(subject),
        in_(starting_inputs(computation_, subject.speaker.printer.units)) {}

  Prefiller& put(std::string_view field, const std::optional<Value>& value, InputOrigin origin,
                 std::optional<cellar::Instant> at = {}) {
    if (!value) return *this;
    const auto f = std::find_if(computation_.fields.begin(), computation_.fields.end(),
                                [&](const Field& each) { return each.key == field; });
    if (f == computation_.fields.end() || value->index() != f->least.index()) return *this;
    const double m = magnitude_of(*value);
    if (!(m >= magnitude_of(f->least) && m <= magnitude_of(f->greatest))) return *this;
    in_.set(field, value, origin, at ? say_age(*at, s_.speaker) : std::string());
    return *this;
  }

  Prefiller& blank(std::string_view field) {
    in_.set(field, std::nullopt);
    return *this;
  }

  // What nearly every computation about a keg asks for.
  Prefiller& keg() {
    const KegStatus& k = s_.keg;
    put("brimful", Value(k.record.brimful), InputOrigin::typed);
    if (k.level.left) {
      put("beer", Value(k.level.left->value()), InputOrigin::worked_out, k.level.measured_at);
    }
    if (k.beer_temperature) {
      put("temperature", Value(k.beer_temperature->value()), InputOrigin::worked_out);
    }
    if (k.place) {
      const cellar::PlaceStatus* place = s_.cellar.find(k.place->place);
      if (place != nullptr && place->temperature) {
        put("place", Value(*place->temperature),
            place->read_at ? InputOrigin::read : InputOrigin::typed, place->read_at);
      }
    }
    if (s_.cellar.cellar) put("altitude", Value(s_.cellar.cellar->altitude), InputOrigin::typed);
    put("share", Value(units::fraction(k.gas.co2.count())), InputOrigin::typed, k.gas.since);
    return *this;
  }
  Prefiller& gas() {
    const cellar::GasOnKeg& gas = s_.keg.gas;
    if (gas.on && gas.set) put("pressure", Value(*gas.set), InputOrigin::typed, gas.since);
    return *this;
  }
  Prefiller& range() {
    const cellar::Co2State& co2 = s_.keg.co2;
    if (!co2.target_low || !co2.target_high) return *this;
    put("low", Value(*co2.target_low), InputOrigin::typed);
    put("high", Value(*co2.target_high), InputOrigin::typed);
    put("co2",
        Value(units::volumes_of_co2((co2.target_low->count() + co2.target_high->count()) / 2)),
        InputOrigin::typed);
    return *this;
  }
  Prefiller& co2_now() {
    if (s_.keg.co2.now) put("start", Value(s_.keg.co2.now->value()), InputOrigin::worked_out);
    return *this;
  }

  [[nodiscard]] Offer offer(std::string label) const {
    return {computation_.key, std::move(label), in_};
  }

 private:
  const Computation& computation_;
  const KegSubject& s_;
  Inputs in_;
};

Offer serving_offer(const KegSubject& s) {
  return Prefiller("pressure_to_set", s).keg().range().offer("What pressure to set");
}

Offer waiting_offer(const KegSubject& s) {
  return Prefiller("set_and_wait", s)
      .keg()
      .range()
      .gas()
      .co2_now()
      .offer("How long at this pressure");
}

Offer burst_offer(const KegSubject& s) {
  Prefiller p("burst", s);
  p.keg().range().co2_now();
  if (s.keg.gas.should_be) {
    p.put("serving", Value(*s.keg.gas.should_be), InputOrigin::worked_out);
    if (s.keg.gas.set && *s.keg.gas.set > *s.keg.gas.should_be) p.gas();
  }
  return p.offer("How long at high pressure");
}

Offer weighing_offer(const KegSubject& s) {
  Prefiller p("left_by_weight", s);
  p.keg().gas();
  if (s.keg.record.tare) p.put("tare", Value(*s.keg.record.tare), InputOrigin::typed);
  if (s.keg.record.tare_half_width) {
    p.put("tare_error", Value(*s.keg.record.tare_half_width), InputOrigin::typed);
  }
  if (s.keg.contents && s.keg.contents->batch_record.final_gravity) {
    p.put("gravity", Value(*s.keg.contents->batch_record.final_gravity), InputOrigin::typed);
  }
  return p.offer("How much by weight");
}

Offer rescue_offer(const KegSubject& s) {
  Prefiller p("rescue", s);
  p.keg();
  const cellar::Co2State& co2 = s.keg.co2;
  if (co2.now) {
    p.put("co2", Value(co2.now->value()), InputOrigin::worked_out);
    p.put("co2_error", Value(units::volumes_of_co2(co2.now->half_width())),
          InputOrigin::worked_out);
  }
  if (co2.target_low && co2.target_high) {
    p.put("target",
          Value(units::volumes_of_co2((co2.target_low->count() + co2.target_high->count()) / 2)),
          InputOrigin::typed);
  }
  return p.offer("How to get CO₂ out of it");
}

Offer drift_offer(const KegSubject& s) {
  return Prefiller("drift", s).keg().range().gas().co2_now().offer("How far it drifts on tap");
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
  p.put("limit", Value(study->limit_per_day), InputOrigin::typed);
  return p.offer("Whether it holds");
}

bool is_warm(const KegSubject& s) {
  if (!s.keg.beer_temperature || !s.keg.place) return false;
  const cellar::PlaceStatus* place = s.cellar.find(s.keg.place->place);
  return place != nullptr && place->temperature &&
         *place->temperature < s.keg.beer_temperature->low();
}

double answered(const Answer& a) { return magnitude_of(*a.values.front().value); }

cellar::SuggestedTask set_gas(const KegStatus& keg, units::GaugePressure to,
                              cellar::GasPurpose purpose) {
  cellar::GasSet prefill;
  prefill.pressure = to;
  prefill.purpose = purpose;
  prefill.regulator = keg.gas.regulator;
  return cellar::keg_task<cellar::GasSet>(keg.record.keg, prefill);
}

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
  return offers;
}

std::optional<cellar::SuggestedTask> leads_to(const Computation& c, const Inputs& in,
                                              const Answer& a, const KegStatus& keg) {
  const cellar::KegId id = keg.record.keg;
  if (c.key == "pressure_to_set") {
    if (answered(a) <= 0) return std::nullopt;
    return set_gas(keg, to_set(answered(a)), cellar::GasPurpose::serving);
  }
  if (c.key == "burst") {
    return set_gas(keg, in.get<units::GaugePressure>("pressure"), cellar::GasPurpose::burst);
  }
  if (c.key == "set_and_wait") {
    return set_gas(keg, in.get<units::GaugePressure>("pressure"), cellar::GasPurpose::set_and_wait);
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
