// SPDX-License-Identifier: GPL-3.0-or-later
//
// Several kegs on one regulator: what each becomes at its pressure.
#include <algorithm>
#include <memory>

#include "core/cellar/pour_advice.h"
#include "core/physics/equilibrium.h"
#include "core/physics/shared_regulator.h"
#include "core/units/present.h"

namespace ullage::cellar {

namespace {

constexpr double least_over_told = 0.05;  // volumes: what a figure with two digits shows

using Sharers = std::vector<physics::SharingKeg>;  // the line's own first

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

// On tap or not, it takes up what the regulator of that setting gives.
std::optional<physics::SharingKeg> sharing_keg(const KegStatus& keg, PourSetting with) {
  if (!keg.contents || !keg.beer_temperature) return std::nullopt;
  with.keg_tag = keg.record.tag;
  with.beer = *keg.beer_temperature;
  with.co2 = keg.co2.now;
  with.co2_share = keg.gas.co2;
  with.target_low = keg.co2.target_low;
  with.target_high = keg.co2.target_high;
  return sharing_keg(with, keg);
}

double off_range(const physics::SharingKeg& keg, units::Co2Volumes c) {
  return std::max(keg.low.count() - c.count(), c.count() - keg.high.count());
}

// Of all but the first, the one that is worst off at the best pressure.
const physics::SharingKeg& farthest_off(const Sharers& all, const physics::SharedSetting& best) {
  std::size_t worst = 1;
  for (std::size_t i = 2; i < all.size(); ++i)
    if (off_range(all[i], best.settles[i]) > off_range(all[worst], best.settles[worst])) worst = i;
  return all[worst];
}

std::string regulator_name(const CellarStatus& cellar, RegulatorId id) {
  for (const RegulatorRecord& r : cellar.regulators)
    if (r.regulator == id) return r.name;
  return "one regulator";
}

std::optional<units::Estimate<units::Co2Volumes>> becomes(
    const physics::SharingKeg& keg, const units::Estimate<GaugePressure>& pressure) {
  const auto out = physics::equilibrium_co2_estimate(pressure, keg.temperature, keg.ambient,
                                                     {"equilibrium equation"}, keg.co2);
  return out ? std::optional(*out) : std::nullopt;
}

// Where the line's own advice does not tell it already.
std::optional<Advice> over_gassed_advice(const LineStatus& line, const PourSetting& s,
                                         const KegStatus& keg, const std::vector<Advice>& told) {
  for (const Advice& a : told) {
    const MessageKey key = a.headline.key;
    if (key == MessageKey::adv_pour_over_gasses || key == MessageKey::adv_pour_over_gasses_by)
      return std::nullopt;
  }
  const auto over = over_gassed(s, keg);
  if (!over) return std::nullopt;
  Advice a;
  a.severity = Severity::advice;
  a.about = subject(line.record.line);
  a.headline = message(MessageKey::adv_pour_over_gasses_by, s.pressure.value(), over->then,
                       present(s.target_high), over->in);
  return a;
}

Advice shared_advice(const Sharers& all, const physics::SharedSetting& best, const PourSetting& s,
                     std::string regulator) {
  Advice a;
  a.severity = Severity::advice;
  a.about = subject(s.line_id);
  a.headline = message(MessageKey::adv_pour_shared, s.keg_tag, farthest_off(all, best).name,
                       std::move(regulator));
  const auto now = becomes(all.front(), s.pressure);
  const auto then = becomes(
      all.front(), units::Estimate<GaugePressure>(best.pressure, s.pressure.contributions()));
  if (now && then)
    a.detail = message(MessageKey::adv_pour_shared_detail, s.keg_tag, *now, s.pressure.value(),
                       best.pressure, *then);
  a.inputs.push_back({message(MessageKey::input_gas, s.pressure.value()), s.gas_since});
  for (const physics::SharingKeg& each : all) {
    if (const auto c = becomes(each, s.pressure))
      a.inputs.push_back(
          {message(MessageKey::input_keg_becomes, each.name, each.low, each.high, *c), {}});
  }
  return a;
}

}  // namespace

std::optional<OverGassed> over_gassed(const PourSetting& s, const KegStatus& status) {
  const auto keg = s.co2 ? sharing_keg(s, status) : std::nullopt;
  if (!keg) return std::nullopt;
  for (const double days : {7., 28.}) {
    const auto then = physics::co2_after(*keg, s.pressure, units::days(days));
    if (!then) return std::nullopt;
    if (then->median.count() - present(s.target_high).count() < least_over_told) continue;
    const double half = (then->high.count() - then->low.count()) / 2;
    return OverGassed{units::Estimate<units::Co2Volumes>(then->median)
                          .with({s.keg_tag + ": carbonation rate"}, half),
                      units::days(days)};
  }
  return std::nullopt;
}

std::vector<Advice> shared_regulator_advice(const CellarStatus& cellar, const LineStatus& line,
                                            const PourSetting& s, const std::vector<Advice>& told) {
  const KegStatus* own = line.keg ? cellar.find(*line.keg) : nullptr;
  const auto first = own ? sharing_keg(s, *own) : std::nullopt;
  if (!first) return {};
  Sharers all{*first};
  for (const KegStatus* keg : fed_with(*own, cellar))
    if (const auto as = sharing_keg(*keg, s)) all.push_back(*as);
  if (all.size() < 2) return {};
  const auto best = physics::best_shared_pressure(all);
  if (!best || best->suits_all) return {};
  std::vector<Advice> out{
      shared_advice(all, *best, s, regulator_name(cellar, present(own->gas.regulator)))};
  if (auto over = over_gassed_advice(line, s, *own, told)) out.push_back(std::move(*over));
  return out;
}

void advise_shared_regulators(CellarStatus& cellar) {
  for (LineStatus& line : cellar.lines) {
    if (!line.pour) continue;
    const std::vector<Advice> shared =
        shared_regulator_advice(cellar, line, line.pour->setting, line.pour->advice);
    if (shared.empty()) continue;
    auto told = std::make_shared<PourState>(*line.pour);
    told->advice.insert(told->advice.end(), shared.begin(), shared.end());
    line.pour = std::move(told);
    line.advice.push_back(shared.front());
  }
}

}  // namespace ullage::cellar
