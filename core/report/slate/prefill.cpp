// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/report/slate/prefill.h"

#include <algorithm>

#include "core/cellar/hold_test.h"
#include "core/report/slate/prefiller.h"
#include "core/units/present.h"

namespace ullage::report::slate {
namespace {

using cellar::KegStatus;
using cellar::Phase;

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
    add_level_offers(s, offers);
    add_line_offers(s, offers);
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

}  // namespace ullage::report::slate
