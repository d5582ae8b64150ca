// SPDX-License-Identifier: GPL-3.0-or-later
//
// A cellar status made by hand, with one keg in each state that a screen must be
// able to show. All of it is invented; nothing here was derived from a journal,
// so tests that use it say nothing about what is derived.
#pragma once

#include <chrono>
#include <cstdint>
#include <string>
#include <utility>

#include "core/cellar/status.h"
#include "core/units/present.h"

namespace ullage::testing {

using namespace std::chrono_literals;

inline constexpr cellar::Instant sample_now =
    std::chrono::sys_days(std::chrono::year(2026) / 11 / 25) + 14h + 30min;

// Words as they stand, for statuses made by hand.
inline cellar::Message words(std::string sentence) {
  return cellar::message(cellar::MessageKey::fault_store, std::move(sentence));
}

template <class AnyId>
AnyId numbered(std::uint16_t n) {
  AnyId id;
  id.uuid.bytes[1] = 0x5a;
  id.uuid.bytes[14] = static_cast<std::uint8_t>(n >> 8U);
  id.uuid.bytes[15] = static_cast<std::uint8_t>(n);
  return id;
}

inline cellar::Instant days_on(double days) {
  return sample_now + std::chrono::seconds(static_cast<long long>(days * 86400));
}

inline units::Estimate<units::Co2Volumes> co2_about(double volumes, double half_width) {
  return units::Estimate<units::Co2Volumes>(units::volumes_of_co2(volumes))
      .with({"sample"}, half_width);
}

class SampleKeg {
 public:
  SampleKeg(std::uint16_t n, std::string tag, cellar::KegKind kind, double nominal_l) {
    k_.record.keg = numbered<cellar::KegId>(n);
    k_.record.tag = std::move(tag);
    k_.record.keg_kind = kind;
    k_.record.nominal = units::litres(nominal_l);
    k_.record.brimful = units::litres(nominal_l * 1.03);
    k_.record.brimful_half_width = units::litres(0.2);
    k_.record.rated_pressure = units::gauge_psi(130);
    k_.place = cellar::PlaceRecord{};
    k_.place->place = numbered<cellar::PlaceId>(1);
    k_.place->name = "Back room";
    k_.record.place = k_.place->place;
  }
  SampleKeg& phase(cellar::Phase phase, double since_days) {
    k_.phase = phase;
    k_.phase_since = days_on(since_days);
    return *this;
  }
  SampleKeg& beer(std::uint16_t n, std::string name, double litres_left, double half_width_l) {
    cellar::Contents c;
    c.batch = numbered<cellar::BatchId>(n);
    c.beer.beer = numbered<cellar::BeerId>(n);
    c.beer.name = std::move(name);
    c.batch_record.batch = c.batch;
    c.batch_record.beer = c.beer.beer;
    c.batch_record.name = std::to_string(n);
    c.filled_by_us = true;
    c.since = days_on(-4);
    c.abv = units::percent_abv(5.4);
    c.best_by = std::chrono::local_days(std::chrono::year(2027) / 2 / 24);
    k_.contents = c;
    k_.level.left = units::Estimate<units::Volume>(units::litres(litres_left))
                        .with({"scale"}, half_width_l * 1e-3);
    k_.level.of_brimful = units::fraction(litres_left * 1e-3 / k_.record.brimful.value());
    k_.level.measured_at = days_on(-1);
    return *this;
  }
  SampleKeg& co2(double volumes, double half_width, double low, double high,
                 cellar::Co2Verdict verdict) {
    k_.co2.now = co2_about(volumes, half_width);
    k_.co2.target_low = units::volumes_of_co2(low);
    k_.co2.target_high = units::volumes_of_co2(high);
    k_.co2.verdict = verdict;
    return *this;
  }
  SampleKeg& co2_unknown(std::string why) {
    k_.co2.cant_tell = words(std::move(why));
    return *this;
  }
  SampleKeg& gas(double psi, double should_be_psi) {
    k_.gas.on = true;
    k_.gas.set = units::gauge_psi(psi);
    k_.gas.since = days_on(-1.8);
    k_.gas.should_be = units::gauge_psi(should_be_psi);
    return *this;
  }
  SampleKeg& span(double from, double to, cellar::Phase phase, bool forecast = false) {
    k_.life.push_back({days_on(from), days_on(to), phase, forecast});
    return *this;
  }
  SampleKeg& says(std::string state, std::string next = {}) {
    k_.state = words(std::move(state));
    if (!next.empty()) k_.next_step = words(std::move(next));
    return *this;
  }
  SampleKeg& readiness(cellar::ReadinessKind kind, std::string headline) {
    k_.readiness.kind = kind;
    k_.readiness.headline = words(std::move(headline));
    return *this;
  }
  SampleKeg& ready_at(double earliest, double likely, double latest) {
    k_.readiness.when = cellar::Window{days_on(earliest), days_on(likely), days_on(latest)};
    return *this;
  }
  SampleKeg& because(std::string reason) {
    k_.readiness.reasons.push_back(words(std::move(reason)));
    return *this;
  }
  SampleKeg& use_next(std::int64_t rank) {
    k_.use_next_rank = rank;
    return *this;
  }
  SampleKeg& on_line(std::uint16_t n) {
    cellar::LineRecord line;
    line.line = numbered<cellar::LineId>(n);
    line.name = "Line " + std::to_string(n);
    line.tap = std::to_string(n);
    k_.line = line;
    return *this;
  }
  SampleKeg& locked(std::string by) {
    const cellar::LineRecord& line = present(k_.line);
    k_.lock = cellar::LineLock{line.line,
                               line.name,
                               "caustic",
                               cellar::LineAgent::caustic,
                               sample_now - 20min,
                               std::move(by),
                               numbered<cellar::EntryId>(77)};
    return *this;
  }
  SampleKeg& quarantined(std::string why) {
    k_.quarantined = words(std::move(why));
    k_.quarantined_since = days_on(-2);
    return *this;
  }
  SampleKeg& advice(cellar::Severity severity, std::string headline, std::string detail,
                    std::string task) {
    cellar::Advice a;
    a.severity = severity;
    a.about = cellar::subject(k_.record.keg);
    a.headline = words(std::move(headline));
    a.detail = words(std::move(detail));
    a.inputs.push_back({words("Regulator dial R1, 30 psi"), days_on(-1.8)});
    a.inputs.push_back({words("Back room, 1.1 °C"), days_on(-0.2)});
    if (!task.empty()) a.action = cellar::SuggestedTask{std::move(task), a.about, std::nullopt};
    k_.advice.push_back(std::move(a));
    return *this;
  }
  SampleKeg& step(std::string kind, double done_days, bool counts, std::string result = {}) {
    cellar::PreparationStep p;
    p.kind = std::move(kind);
    p.entry = numbered<cellar::EntryId>(50);
    p.done_at = days_on(done_days);
    p.still_counts = counts;
    if (!result.empty()) p.result = words(std::move(result));
    k_.preparation.push_back(std::move(p));
    return *this;
  }
  SampleKeg& step_missing(std::string kind) {
    k_.preparation.push_back({std::move(kind), {}, {}, false, {}});
    return *this;
  }
  [[nodiscard]] const cellar::KegStatus& status() const { return k_; }

 private:
  cellar::KegStatus k_;
};

// K01 to K12, one in each state worth showing.
cellar::CellarStatus sample_cellar();

// The same dozen over and over, until there are `kegs` of them.
cellar::CellarStatus sample_cellar_of(std::size_t kegs);

// A rising curve with a reading and a planned drop, for K01.
cellar::CarbonationCurveData sample_curve();

}  // namespace ullage::testing
