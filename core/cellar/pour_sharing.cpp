// SPDX-License-Identifier: GPL-3.0-or-later
//
// Several kegs on one regulator: what each becomes at its pressure.
#include <algorithm>
#include <map>
#include <memory>

#include "core/cellar/pour_advice.h"
#include "core/physics/shared_regulator.h"

namespace ullage::cellar {

namespace {

constexpr double least_over_told = 0.05;  // volumes: what a figure with two digits shows

struct Sharer {
  LineStatus* line;
  const KegStatus* keg;
  physics::SharingKeg as;
};

std::optional<physics::SharingKeg> sharing_keg(const PourSetting& s, const KegStatus& keg) {
  if (!s.target_low || !s.target_high) return std::nullopt;
  physics::SharingKeg k;
  k.name = s.keg_tag;
  k.brimful = keg.record.brimful;
  k.beer = keg.level.left ? keg.level.left->value() : keg.record.nominal;
  if (s.co2) k.now = *s.co2;
  k.headspace = s.pressure.value();
  k.temperature = s.beer;
  k.ambient = s.ambient;
  k.co2 = s.co2_share;
  k.low = *s.target_low;
  k.high = *s.target_high;
  return k;
}

const Sharer* farthest_off(const std::vector<Sharer>& all, const physics::SharedSetting& best,
                           std::size_t but) {
  const Sharer* worst = nullptr;
  double most = 0;
  for (std::size_t i = 0; i < all.size(); ++i) {
    if (i == but) continue;
    const double c = best.settles[i].count();
    const double off = std::max(all[i].as.low.count() - c, c - all[i].as.high.count());
    if (worst && off <= most) continue;
    worst = &all[i];
    most = off;
  }
  return worst;
}

std::string regulator_name(const CellarStatus& cellar, RegulatorId id) {
  for (const RegulatorRecord& r : cellar.regulators)
    if (r.regulator == id) return r.name;
  return "one regulator";
}

// Where the line's own advice does not tell it already.
std::optional<Advice> over_gassed_advice(const Sharer& sharer, const std::vector<Advice>& told) {
  const PourSetting& s = sharer.line->pour->setting;
  for (const Advice& a : told) {
    const MessageKey key = a.headline.key;
    if (key == MessageKey::adv_pour_over_gasses || key == MessageKey::adv_pour_over_gasses_by)
      return std::nullopt;
  }
  const auto over = over_gassed(s, *sharer.keg);
  if (!over) return std::nullopt;
  Advice a;
  a.severity = Severity::advice;
  a.about = subject(sharer.line->record.line);
  a.headline = message(MessageKey::adv_pour_over_gasses_by, s.pressure.value(), over->then,
                       *s.target_high, over->in);
  return a;
}

void advise_group(CellarStatus& cellar, RegulatorId id, std::vector<Sharer>& all) {
  std::vector<physics::SharingKeg> kegs;
  for (const Sharer& s : all) kegs.push_back(s.as);
  const auto best = physics::best_shared_pressure(kegs);
  if (!best || best->suits_all) return;
  for (std::size_t i = 0; i < all.size(); ++i) {
    const Sharer* other = farthest_off(all, *best, i);
    const PourSetting& s = all[i].line->pour->setting;
    const auto becomes = physics::equilibrium_co2(
        physics::GasAbove{s.pressure.value(), s.ambient.value(), s.co2_share}, s.beer.value());
    Advice a;
    a.severity = Severity::advice;
    a.about = subject(all[i].line->record.line);
    a.headline =
        message(MessageKey::adv_pour_shared, s.keg_tag, other->as.name, regulator_name(cellar, id));
    if (becomes)
      a.detail = message(MessageKey::adv_pour_shared_detail, s.keg_tag, *becomes,
                         s.pressure.value(), best->pressure, best->settles[i]);
    auto told = std::make_shared<PourState>(*all[i].line->pour);
    told->advice.push_back(a);
    if (auto over = over_gassed_advice(all[i], told->advice)) told->advice.push_back(*over);
    all[i].line->pour = std::move(told);
    all[i].line->advice.push_back(std::move(a));
  }
}

}  // namespace

std::optional<OverGassed> over_gassed(const PourSetting& s, const KegStatus& status) {
  const auto keg = s.co2 ? sharing_keg(s, status) : std::nullopt;
  if (!keg) return std::nullopt;
  for (const double days : {7., 28.}) {
    const auto then = physics::co2_after(*keg, s.pressure, units::days(days));
    if (!then) return std::nullopt;
    if (then->median.count() - s.target_high->count() < least_over_told) continue;
    const double half = (then->high.count() - then->low.count()) / 2;
    return OverGassed{units::Estimate<units::Co2Volumes>(then->median)
                          .with({s.keg_tag + ": carbonation rate"}, half),
                      units::days(days)};
  }
  return std::nullopt;
}

void advise_shared_regulators(CellarStatus& cellar) {
  std::map<RegulatorId, std::vector<Sharer>> by_regulator;
  for (LineStatus& line : cellar.lines) {
    if (!line.pour || !line.keg) continue;
    const KegStatus* keg = cellar.find(*line.keg);
    if (!keg || !keg->gas.on || !keg->gas.regulator) continue;
    if (const auto as = sharing_keg(line.pour->setting, *keg))
      by_regulator[*keg->gas.regulator].push_back({&line, keg, *as});
  }
  for (auto& [id, all] : by_regulator)
    if (all.size() > 1) advise_group(cellar, id, all);
}

}  // namespace ullage::cellar
