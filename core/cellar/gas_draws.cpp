// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/cellar/gas_draws.h"

#include <algorithm>
#include <cmath>

#include "core/cellar/beer_level.h"
#include "core/cellar/gas_given.h"
#include "core/cellar/keg_story.h"
#include "core/physics/atmosphere.h"
#include "core/physics/gas_use.h"
#include "core/physics/purge.h"

namespace ullage::cellar {

namespace {

constexpr double unknown_uptake_volumes = 0.8;   // still beer to an ordinary range, 0.8 either way
constexpr double supplied_uptake_volumes = 0.2;  // delivered beer up or down, either way
constexpr std::chrono::days unknown_uptake_over{14};
constexpr double gas_celsius = 10, gas_celsius_error = 8;  // where no temperature was told

// One filling of the keg: its timeline while it lasted.
struct GasFilling {
  Instant from{};
  std::optional<Instant> emptied, tapped;
  KegTimeline timeline;
  bool by_us = false;
};

struct Spell {
  Instant from{};
  PressureEstimate pressure;
  std::optional<RegulatorId> regulator;
  MoleFraction co2 = units::mole_fraction(1);
};

class KegDraws {
 public:
  KegDraws(const KegTimeline& now, const Journal& journal, Lookup& lookup,
           const std::vector<Instant>& moments)
      : now_(now), journal_(journal), lookup_(lookup), readings_(lookup), moments_(moments) {
    const auto cellar = lookup.cellar();
    const auto air = physics::ambient_pressure(cellar ? cellar->altitude : units::metres(0));
    ambient_ = air ? *air : physics::sea_level();
  }

  std::vector<GasDraw> run() {
    const auto story = lookup_.story(subject(now_.record.keg));
    for (const Entry* entry : story) {
      if (entry->header.happened_at > moments_.back()) break;
      entry_ = entry;
      visit([this](const auto& p) { on(p); }, entry->payload);
    }
    close(moments_.back());
    return std::move(out_);
  }

 private:
  template <class Other>
  void on(const Other&) {}
  void on(const GasSet& g) {
    close(at());
    usual_ = g.regulator ? g.regulator : usual_;
    if (units::in_pascals(g.pressure) <= 0) return;
    std::optional<InstrumentId> dial = g.instrument;
    if (!dial && usual_) {
      if (const auto r = lookup_.find(*usual_)) dial = r->dial;
    }
    Spell spell{at(), readings_.pressure(g.pressure, dial, entry_->header.sequence), usual_,
                gas_given(g.co2, usual_, at(), lookup_)};
    fill_headspace(spell, GasWork::headspace);
    spell_ = std::move(spell);
  }
  void on(const GasOff&) { close(at()); }
  void on(const Vented& v) {
    standing_ = v.to_pressure.value_or(units::gauge_pascals(0));
    if (spell_) fill_headspace(*spell_, GasWork::headspace);
  }
  void on(const HoldReading& h) {
    if (filling_ || spell_ || h.pressure <= standing_.value_or(units::gauge_pascals(0))) return;
    Spell test{at(), readings_.pressure(h.pressure, h.instrument, entry_->header.sequence), usual_,
               gas_given({}, usual_, at(), lookup_)};
    fill_headspace(test, GasWork::pressure_test);
  }
  void on(const Purged& p) {
    if (at() < moments_.front()) return;
    const Volume space = headspace(at()).value();
    const auto used = purge_use(p, space);
    if (used) emit(at(), at(), GasWork::purging, usual_, physics::gas_to_purge(*used, method()));
    standing_ = units::gauge_pascals(0);
  }
  void on(const Filled& f) {
    begin_filling(true);
    standing_ = f.spund_pressure.value_or(units::gauge_pascals(0));
  }
  void on(const Received&) {
    begin_filling(false);
    standing_.reset();  // at whatever it was delivered
  }
  void on(const Found& f) {
    if (f.contents == FoundContents::beer) {
      begin_filling(false);
      standing_ = f.pressure;
      if (f.line) filling_->tapped = at();
    }
    usual_ = f.regulator ? f.regulator : usual_;
    if (f.gas_on && f.pressure) {
      spell_ = Spell{at(), readings_.pressure(*f.pressure, f.instrument, entry_->header.sequence),
                     usual_, gas_given({}, usual_, at(), lookup_)};
    }
  }
  void on(const Tapped&) {
    if (filling_ && !filling_->tapped) filling_->tapped = at();
  }
  void on(const Untapped&) {
    if (!has_two_posts(now_.record.keg_kind)) close(at());
  }
  void on(const Emptied&) { end_filling(); }
  void on(const Cleaned&) { opened(); }
  void on(const Sanitised&) { opened(); }
  void on(const Inspected& i) {
    if (i.seals_renewed) opened();
  }

  [[nodiscard]] Instant at() const { return entry_->header.happened_at; }
  [[nodiscard]] const std::string& tag() const { return now_.record.tag; }
  [[nodiscard]] units::ErrorSource method() const { return {"gas use: method"}; }

  void opened() {
    if (filling_) return;
    close(at());
    standing_ = units::gauge_pascals(0);
  }

  void begin_filling(bool by_us) {
    if (filling_) end_filling();
    close(at());
    filling_.emplace();
    filling_->from = at();
    filling_->by_us = by_us;
    co2_before_.reset();
    const Entry* end = end_of_filling();
    if (end) filling_->emptied = end->header.happened_at;
    // Fillings that were over before the first moment need no timeline.
    if (end && end->header.happened_at < moments_.front()) return;
    filling_->timeline =
        end ? keg_timeline_before(now_.record.keg, journal_, *end) : KegTimeline(now_);
  }

  void end_filling() {
    const auto spell = spell_;
    close(at());
    filling_.reset();
    co2_before_.reset();
    if (spell) {  // empty, it still hangs on the gas
      spell_ = *spell;
      spell_->from = at();
    }
  }

  // The entry that ends the filling which `entry_` begins.
  [[nodiscard]] const Entry* end_of_filling() {
    bool after = false;
    for (const Entry* e : lookup_.story(subject(now_.record.keg))) {
      if (e == entry_) {
        after = true;
      } else if (after &&
                 (holds_alternative<Emptied>(e->payload) || holds_alternative<Filled>(e->payload) ||
                  holds_alternative<Received>(e->payload))) {
        return e->header.happened_at <= moments_.back() ? e : nullptr;
      }
    }
    return nullptr;
  }

  [[nodiscard]] std::optional<VolumeEstimate> beer(Instant t) const {
    if (!filling_ || !filling_->timeline.filling) return std::nullopt;
    return beer_in_keg(filling_->timeline, t, filling_->tapped, filling_->emptied);
  }
  [[nodiscard]] VolumeEstimate headspace(Instant t) const {
    const Volume brimful =
        now_.record.brimful.value() > 0 ? now_.record.brimful : now_.record.nominal;
    const VolumeEstimate all = VolumeEstimate(brimful).with_error({tag() + ": brimful volume"},
                                                                  now_.record.brimful_half_width);
    const auto held = beer(t);
    if (!held) return filling_ ? VolumeEstimate(0.05 * brimful) : all;
    return units::propagate([](Volume a, Volume b) -> Volume { return a > b ? a - b : 0.0 * a; },
                            all, *held);
  }
  [[nodiscard]] TemperatureEstimate temperature(Instant t) const {
    if (filling_ && filling_->timeline.warmth) {
      if (const auto known = filling_->timeline.warmth->at(t)) return *known;
    }
    return TemperatureEstimate(units::celsius(gas_celsius))
        .with({tag() + ": temperature of its gas"}, gas_celsius_error);
  }
  [[nodiscard]] physics::SupplyState supply(const Spell& s, Instant t) const {
    return {s.pressure, temperature(t), ambient_, s.co2};
  }

  void fill_headspace(const Spell& s, GasWork work) {
    const bool up = standing_ && s.pressure.value() > *standing_;
    if (up && at() >= moments_.front()) {
      const auto used =
          physics::gas_to_fill_headspace(headspace(at()), *standing_, supply(s, at()), method());
      if (used) emit(at(), at(), work, s.regulator, *used);
    }
    if (!standing_ || up) standing_ = s.pressure.value();
  }

  [[nodiscard]] std::optional<Mass> purge_use(const Purged& p, Volume space) const {
    const physics::Vessel vessel{space, now_.record.nominal, ambient_, units::celsius(15)};
    physics::Result<physics::PurgeOutcome> out = std::unexpected(physics::RangeError{});
    if (p.method == PurgeMethod::cycles && p.cycles && p.pressure) {
      out = physics::purge_by_cycles(vessel, {static_cast<int>(*p.cycles), *p.pressure, {}});
    } else if (p.method == PurgeMethod::swept && p.vessel_volumes) {
      out = physics::purge_by_sweep(vessel, *p.vessel_volumes);
    } else if (p.method == PurgeMethod::pushed_liquid) {
      out = physics::purge_by_liquid(vessel, {p.pressure.value_or(units::gauge_psi(5))});
    }
    return out ? std::optional(out->co2_used) : std::nullopt;
  }

  // The gas is taken off, or its setting ends: what it gave meanwhile.
  void close(Instant end) {
    if (!spell_) return;
    const Spell spell = *std::exchange(spell_, std::nullopt);
    if (!filling_ || !filling_->timeline.filling || end < moments_.front()) {
      if (filling_) co2_before_.reset();
      return;
    }
    Instant a = std::max(spell.from, moments_.front());
    while (a < end) {
      const auto next = std::upper_bound(moments_.begin(), moments_.end(), a);
      const Instant b = next == moments_.end() ? end : std::min(*next, end);
      if (b <= a) break;
      between(spell, a, b);
      a = b;
    }
  }

  void between(const Spell& s, Instant a, Instant b) {
    const auto before = beer(a), after = beer(b);
    if (!before || !after) return;
    const VolumeEstimate drawn =
        units::propagate([](Volume x, Volume y) -> Volume { return x - y; }, *before, *after);
    if (drawn.value().value() > 0) {
      const auto pushed = physics::gas_to_push(drawn, supply(s, a), method());
      if (pushed) emit(a, b, GasWork::pushing, s.regulator, *pushed);
    }
    carbonate(s, a, b, *before);
  }

  void carbonate(const Spell& s, Instant a, Instant b, const VolumeEstimate& held) {
    const CarbonationTrack& track = filling_->timeline.co2;
    const auto end = track.at(b);
    // What it took out of its own headspace while the gas was off comes in now.
    const auto start = co2_before_ ? co2_before_ : track.at(a);
    if (start && end) {
      co2_before_ = end;
      const auto taken = physics::gas_to_carbonate(held, *start, *end, s.co2, method());
      if (taken) emit(a, b, GasWork::carbonating, s.regulator, *taken);
      return;
    }
    const Instant last = filling_->from + unknown_uptake_over;
    const double days = std::max(0.0, units::in_days(between_times(a, std::min(b, last))));
    const double share = days / static_cast<double>(unknown_uptake_over.count());
    const double likely = filling_->by_us ? unknown_uptake_volumes : 0.0;
    const double either_way = filling_->by_us ? unknown_uptake_volumes : supplied_uptake_volumes;
    const double grams_a_volume =
        units::in_litres(held.value()) * units::grams_per_litre_per_volume;
    emit(a, b, GasWork::carbonating, s.regulator,
         MassEstimate(units::grams(likely * share * grams_a_volume))
             .with({tag() + ": CO₂ taken up"}, either_way * share * grams_a_volume / 1000));
  }

  static units::Duration between_times(Instant a, Instant b) { return cellar::between(a, b); }

  void emit(Instant from, Instant to, GasWork work, std::optional<RegulatorId> regulator,
            const MassEstimate& mass) {
    if (from < moments_.front() || mass.value().value() < 0) return;
    if (mass.value().value() == 0 && mass.half_width() == 0) return;
    out_.push_back({from, to, now_.record.keg, work, regulator, mass});
  }

  const KegTimeline& now_;
  const Journal& journal_;
  Lookup& lookup_;
  Readings readings_;
  const std::vector<Instant>& moments_;
  units::AbsolutePressure ambient_;
  const Entry* entry_ = nullptr;
  std::vector<GasDraw> out_;

  std::optional<GasFilling> filling_;
  std::optional<Spell> spell_;
  std::optional<RegulatorId> usual_;
  std::optional<GaugePressure> standing_ = units::gauge_pascals(0);  // nullopt: not known
  std::optional<Co2Estimate> co2_before_;
};

}  // namespace

KegTimeline keg_timeline_before(KegId id, const Journal& journal, const Entry& stop) {
  KegTimeline out;
  Lookup lookup(journal);
  KegStory story(id, journal, lookup, out);
  for (const Entry* entry : lookup.story(subject(id))) {
    if (entry == &stop) break;
    story.take(*entry);
  }
  story.finish();
  out.relies_on = lookup.relies_on();
  return out;
}

std::vector<GasDraw> gas_draws(const KegTimeline& now, const Journal& journal, Lookup& lookup,
                               const std::vector<Instant>& moments) {
  lookup.rely_on(now.relies_on);
  return KegDraws(now, journal, lookup, moments).run();
}

}  // namespace ullage::cellar
