// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/cellar/gas_draw_story.h"

#include <algorithm>
#include <tuple>
#include <utility>

#include "core/cellar/beer_level.h"
#include "core/cellar/purge_story.h"
#include "core/physics/atmosphere.h"
#include "core/units/present.h"

namespace ullage::cellar {

namespace {

constexpr double unknown_uptake_volumes = 0.8;   // still beer to an ordinary range, 0.8 either way
constexpr double supplied_uptake_volumes = 0.2;  // delivered beer up or down, either way
constexpr std::chrono::days unknown_uptake_over{14};
constexpr double gas_celsius = 10, gas_celsius_error = 8;  // where no temperature was told

bool same_spell(const GasSpell& a, const GasSpell& b) {
  const auto parts = [](const PressureEstimate& p) {
    std::vector<std::pair<std::string, double>> out;
    for (const units::Contribution& c : p.contributions())
      out.emplace_back(c.source.name, c.half_width);
    return out;
  };
  return std::tie(a.from, a.regulator, a.set_by) == std::tie(b.from, b.regulator, b.set_by) &&
         a.pressure.value() == b.pressure.value() && a.co2.count() == b.co2.count() &&
         parts(a.pressure) == parts(b.pressure);
}

}  // namespace

bool same(const GasDrawState& a, const GasDrawState& b) {
  if (a.filling || b.filling || a.spell.has_value() != b.spell.has_value()) return false;
  if (a.spell && !same_spell(*a.spell, *b.spell)) return false;
  return a.usual == b.usual && a.line == b.line && a.standing == b.standing;
}

GasDrawStory::GasDrawStory(const KegRecord& record, Lookup& lookup, SourceTable& sources,
                           Instant first, const std::vector<Instant>& moments, GasDrawState state)
    : record_(record),
      lookup_(lookup),
      sources_(sources),
      readings_(lookup),
      first_(first),
      moments_(moments),
      s_(std::move(state)) {
  const auto cellar = lookup.cellar();
  const auto air = physics::ambient_pressure(cellar ? cellar->altitude : units::metres(0));
  ambient_ = air ? *air : physics::sea_level();
}

void GasDrawStory::take(const Entry& entry) {
  entry_ = &entry;
  visit([this](const auto& p) { on(p); }, entry.payload);
}

void GasDrawStory::on(const GasSet& g) {
  close(at());
  GasSpell spell = spell_set_now(g.pressure);
  if (units::in_pascals(g.pressure) <= 0) return;
  fill_headspace(spell, GasWork::headspace);
  s_.spell = std::move(spell);
}

void GasDrawStory::on(const Vented& v) {
  s_.standing = v.to_pressure.value_or(units::gauge_pascals(0));
  if (s_.spell) fill_headspace(*s_.spell, GasWork::headspace);
}

void GasDrawStory::on(const HoldReading& h) {
  if (s_.filling || s_.spell || h.pressure <= s_.standing.value_or(units::gauge_pascals(0))) return;
  const GasSpell test{at(),
                      readings_.pressure(h.pressure, h.instrument, entry_->header.sequence),
                      s_.usual,
                      gas_given({}, s_.usual, at(), lookup_),
                      {}};
  fill_headspace(test, GasWork::pressure_test);
}

void GasDrawStory::on(const Purged& p) {
  const auto used = at() < first_ ? std::nullopt : purge_use(p, headspace(at()).value());
  if (used)
    note_draw(at(), at(), GasWork::purging, s_.usual, physics::gas_to_purge(*used, method()));
  s_.standing = units::gauge_pascals(0);
}

void GasDrawStory::on(const Filled& f) {
  begin_filling(true);
  s_.standing = f.spund_pressure.value_or(units::gauge_pascals(0));
}

void GasDrawStory::on(const Received&) {
  begin_filling(false);
  s_.standing.reset();  // at whatever it was delivered
}

void GasDrawStory::on(const Found& f) {
  if (f.contents == FoundContents::beer) {
    begin_filling(false);
    s_.standing = f.pressure;
    if (f.line) present(s_.filling).tapped = at();
  }
  s_.line = f.line;
  GasSpell spell = spell_set_now(f.pressure.value_or(units::gauge_pascals(0)));
  if (f.gas_on && f.pressure) s_.spell = std::move(spell);
}

// By the entry of now, where nothing is stated by the line's regulator, else by the usual.
GasSpell GasDrawStory::spell_set_now(GaugePressure pressure) {
  const auto of_line = regulator_of(s_.line, at(), lookup_);
  return spell_by(gas_coming(stated_gas(*entry_), of_line ? of_line : s_.usual, at(), lookup_),
                  *entry_, pressure);
}

// From now on. The regulator is remembered: what nobody states comes from there.
GasSpell GasDrawStory::spell_by(const GasComing& by, const Entry& set, GaugePressure pressure) {
  s_.usual = by.regulator;
  return {at(), readings_.pressure(pressure, by.dial, set.header.sequence), by.regulator, by.co2,
          set.header.id};
}

void GasDrawStory::on(const Tapped& t) {
  if (s_.filling && !s_.filling->tapped) s_.filling->tapped = at();
  s_.line = t.line;
  const Entry* set = s_.spell ? lookup_.entry(s_.spell->set_by) : nullptr;
  if (!s_.spell || !set) return;
  const auto by = gas_once_tapped(*set, s_.spell->regulator, t.line, at(), lookup_);
  if (!by || !by->regulator) return;  // of a line that names none the usual one is expected
  GasSpell spell = spell_by(*by, *set, s_.spell->pressure.value());
  close(at());
  s_.spell = std::move(spell);
}

void GasDrawStory::on(const Untapped&) {
  s_.line.reset();
  if (!has_two_posts(record_.keg_kind)) close(at());
}

void GasDrawStory::opened() {
  if (s_.filling) return;
  close(at());
  s_.standing = units::gauge_pascals(0);
}

std::optional<VolumeEstimate> GasDrawStory::beer(Instant t) const {
  if (!s_.filling || !s_.filling->timeline || !s_.filling->timeline->filling) return std::nullopt;
  return beer_in_keg(*s_.filling->timeline, t, s_.filling->tapped, s_.filling->emptied);
}

VolumeEstimate GasDrawStory::headspace(Instant t) const {
  const Volume brimful = record_.holds();
  const VolumeEstimate all =
      VolumeEstimate(brimful).with_error({tag() + ": brimful volume"}, record_.brimful_half_width);
  const auto held = beer(t);
  if (!held) return s_.filling ? VolumeEstimate(0.05 * brimful) : all;
  return units::propagate([](Volume a, Volume b) -> Volume { return a > b ? a - b : 0.0 * a; }, all,
                          *held);
}

TemperatureEstimate GasDrawStory::temperature(Instant t) const {
  const KegTimeline* timeline = s_.filling ? s_.filling->timeline : nullptr;
  if (timeline && timeline->warmth) {
    if (const auto known = timeline->warmth->at(t)) return *known;
  }
  return TemperatureEstimate(units::celsius(gas_celsius))
      .with({tag() + ": temperature of its gas"}, gas_celsius_error);
}

physics::SupplyState GasDrawStory::supply(const GasSpell& s, Instant t) const {
  return {s.pressure, temperature(t), ambient_, s.co2};
}

void GasDrawStory::fill_headspace(const GasSpell& s, GasWork work) {
  const bool up = s_.standing && s.pressure.value() > *s_.standing;
  if (up && at() >= first_) {
    const auto used =
        physics::gas_to_fill_headspace(headspace(at()), *s_.standing, supply(s, at()), method());
    if (used) note_draw(at(), at(), work, s.regulator, *used);
  }
  if (!s_.standing || up) s_.standing = s.pressure.value();
}

std::optional<Mass> GasDrawStory::purge_use(const Purged& p, Volume space) const {
  const auto act = purge_act(p);
  if (!act) return std::nullopt;
  const auto out =
      physics::purge_on(std::nullopt, {space, record_.nominal, ambient_, units::celsius(15)}, *act);
  return out ? std::optional(out->co2_used) : std::nullopt;
}

void GasDrawStory::close(Instant end) {
  if (!s_.spell) return;
  const GasSpell spell = std::move(*s_.spell);
  s_.spell.reset();
  if (!s_.filling || !s_.filling->timeline || !s_.filling->timeline->filling || end < first_) {
    if (s_.filling) s_.co2_before.reset();
    return;
  }
  Instant a = std::max(spell.from, first_);
  while (a < end) {
    const auto next = std::upper_bound(moments_.begin(), moments_.end(), a);
    const Instant b = next == moments_.end() ? end : std::min(*next, end);
    if (b <= a) break;
    between(spell, a, b);
    a = b;
  }
}

void GasDrawStory::between(const GasSpell& s, Instant a, Instant b) {
  const auto before = beer(a), after = beer(b);
  if (!before || !after) return;
  const VolumeEstimate drawn =
      units::propagate([](Volume x, Volume y) -> Volume { return x - y; }, *before, *after);
  if (drawn.value().value() > 0) {
    const auto pushed = physics::gas_to_push(drawn, supply(s, a), method());
    if (pushed) note_draw(a, b, GasWork::pushing, s.regulator, *pushed);
  }
  carbonate(s, a, b, *before);
}

void GasDrawStory::carbonate(const GasSpell& s, Instant a, Instant b, const VolumeEstimate& held) {
  const GasFilling& filling = present(s_.filling);
  const CarbonationTrack& track = filling.timeline->co2;
  const auto end = track.at(b);
  // What it took out of its own headspace while the gas was off comes in now.
  const auto start = s_.co2_before ? s_.co2_before : track.at(a);
  if (start && end) {
    s_.co2_before = end;
    const auto taken = physics::gas_to_carbonate(held, *start, *end, s.co2, method());
    if (taken) note_draw(a, b, GasWork::carbonating, s.regulator, *taken);
    return;
  }
  const Instant last = filling.from + unknown_uptake_over;
  const double days = std::max(0.0, units::in_days(cellar::between(a, std::min(b, last))));
  const double share = days / static_cast<double>(unknown_uptake_over.count());
  const double likely = filling.by_us ? unknown_uptake_volumes : 0.0;
  const double either_way = filling.by_us ? unknown_uptake_volumes : supplied_uptake_volumes;
  const double grams_a_volume = units::in_litres(held.value()) * units::grams_per_litre_per_volume;
  note_draw(a, b, GasWork::carbonating, s.regulator,
            MassEstimate(units::grams(likely * share * grams_a_volume))
                .with({tag() + ": CO₂ taken up"}, either_way * share * grams_a_volume / 1000));
}

void GasDrawStory::begin_filling(bool by_us) {
  if (s_.filling) end_filling(at());
  close(at());
  s_.filling = GasFilling{at(), next_emptied_, {}, next_timeline_, by_us};
  s_.co2_before.reset();
}

void GasDrawStory::end_filling(Instant when) {
  const auto spell = s_.spell;
  close(when);
  s_.line.reset();
  s_.filling.reset();
  s_.co2_before.reset();
  if (spell) {  // empty, it still hangs on the gas
    s_.spell = *spell;
    s_.spell->from = when;
  }
}

void GasDrawStory::flush(Instant end) {
  if (!s_.spell) return;
  const GasSpell spell = *s_.spell;
  close(end);
  s_.spell = spell;
  s_.spell->from = std::max(spell.from, end);
}

void GasDrawStory::note_draw(Instant from, Instant to, GasWork work,
                             std::optional<RegulatorId> regulator, const MassEstimate& mass) {
  if (from < first_ || mass.value().value() < 0) return;
  if (mass.value().value() == 0 && mass.half_width() == 0) return;
  out_.add({from, to, work, regulator}, mass, sources_);
}

}  // namespace ullage::cellar
