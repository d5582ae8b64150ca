// SPDX-License-Identifier: GPL-3.0-or-later
//
// What follows from a line's setting, and the what-if on it.
#include <algorithm>
#include <array>
#include <cmath>

#include "core/cellar/pour_state.h"
#include "core/physics/gas_blend.h"
#include "core/physics/line_balance.h"
#include "core/physics/line_volume.h"

namespace ullage::cellar {

namespace {

constexpr double stands_warm_by = 3.0;  // K above the keg's beer

const units::ErrorSource& equation_source() {
  static const units::ErrorSource source{"equilibrium equation"};
  return source;
}

template <class T>
std::optional<T> told(const physics::Result<T>& r) {
  return r ? std::optional<T>(*r) : std::nullopt;
}

std::optional<units::Co2Volumes> target_of(const PourSetting& s) {
  if (!s.target_low || !s.target_high) return std::nullopt;
  return units::volumes_of_co2((s.target_low->count() + s.target_high->count()) / 2);
}

void tell_pour(const PourSetting& s, const physics::LineFlow& line, PourOutlook& out) {
  const GaugePressure p = s.pressure.value();
  out.lift = line.lift();
  if (auto profile = line.profile_at_rest(p)) out.at_rest = std::move(*profile);
  if (auto profile = line.profile_pouring(p)) out.pouring = std::move(*profile);
  const auto flow = physics::pour_flow(
      s.line.parts, {s.bores, s.pressure, s.beer, s.gravity,
                     physics::ordinary_viscosity_factor({s.keg_tag + ": viscosity"})});
  if (!flow) {
    const bool weak = flow.error().subject == physics::Subject::gauge_pressure;
    out.cant_tell = weak ? message(MessageKey::pour_too_weak, p, out.lift)
                         : message(MessageKey::pour_out_of_range);
    return;
  }
  out.flow = *flow;
  out.glass_time = told(physics::pour_time(*flow, s.glass));
}

std::optional<units::Estimate<MoleFraction>> right_blend(
    const PourSetting& s, const units::Estimate<GaugePressure>& pure) {
  if (!physics::blend_for(pure.value(), s.pressure.value(), s.ambient.value())) return std::nullopt;
  return units::propagate(
      [](GaugePressure b, GaugePressure a, units::AbsolutePressure air) -> MoleFraction {
        return physics::blend_for(b, a, air).value_or(units::mole_fraction(1));
      },
      pure, s.pressure, s.ambient);
}

void tell_gas(const PourSetting& s, const physics::LineFlow& line, PourOutlook& out) {
  const auto target = target_of(s);
  if (target) {
    out.should_be =
        told(physics::equilibrium_gauge(*target, s.beer.value(), s.ambient.value(), s.co2_share));
    const units::Estimate<units::Co2Volumes> middle(*target);
    out.should_be_known = told(physics::equilibrium_gauge_estimate(middle, s.beer, s.ambient,
                                                                   equation_source(), s.co2_share));
    const auto pure =
        physics::equilibrium_gauge_estimate(middle, s.beer, s.ambient, equation_source());
    if (pure) out.right_blend = right_blend(s, *pure);
  }
  out.settles = told(physics::equilibrium_co2_estimate(s.pressure, s.beer, s.ambient,
                                                       equation_source(), s.co2_share));
  if (!s.co2) return;
  if (auto places = physics::break_out_at_rest(line, s.pressure, s.standing,
                                               {*s.co2, s.ambient, equation_source()})) {
    out.places = std::move(*places);
    // Whether gas breaks out where nobody told how warm it is, nobody can say.
    std::erase_if(out.places, [&](const auto& place) { return !s.told(place.part); });
  }
  out.journey = told(physics::break_out_pouring(line, s.pressure.value(), s.co2->value(),
                                                s.beer.value(), s.ambient.value()));
}

void tell_right(const PourSetting& s, const physics::LineFlow& line, PourOutlook& out) {
  const units::VolumeFlow nominal = physics::nominal_pour();
  const GaugePressure p = s.pressure.value();
  const std::size_t hose = s.line.main_hose;
  out.right_pressure = told(line.pressure_for(nominal));
  if (const auto bore = line.bore_for(hose, p, nominal))
    out.right_bore = *bore / physics::range_of_bores(s.bores).likely.count();
  const auto length = physics::balance_length(line, hose, p, nominal, hose_lengths(s.in_feet));
  if (!length) return;
  out.right_length = length->exact;
  const physics::BoreRange bores = physics::range_of_bores(s.bores);
  const auto right_by = [&](physics::BoreFactor factor) -> std::optional<Length> {
    const auto as = line.with_parts(physics::with_bores(s.line.parts, factor));
    return as ? told(as->length_for(hose, p, nominal)) : std::nullopt;
  };
  out.shortest_right = right_by(bores.low);
  if (bores.high) out.longest_right = right_by(*bores.high);
  out.at_hand = length->at_hand;
  if (length->flow) out.at_hand_time = s.glass / *length->flow;
}

void tell_untold(const PourSetting& s, std::size_t part, PourOutlook& out) {
  out.standing_untold = physics::as_hoses_hold(
      out.standing_untold.value() + physics::total_volume({s.line.parts[part]}), s.line_name);
  const std::string& name = s.place_names[part];
  for (std::size_t i = 0; i < part; ++i)
    if (!s.told(i) && s.place_names[i] == name) return;
  out.untold_places += (out.untold_places.empty() ? "" : " and ") + name;
}

void tell_standing(const PourSetting& s, PourOutlook& out) {
  out.contents = physics::as_hoses_hold(physics::total_volume(s.line.parts), s.line_name);
  const Temperature limit = units::kelvin(units::in_kelvin(s.beer.value()) + stands_warm_by);
  if (const auto warm = physics::standing_warm(s.line.parts, s.standing, limit))
    out.standing_warm = physics::as_hoses_hold(*warm, s.line_name);
  for (std::size_t i = 0; i < s.standing.size(); ++i) {
    const Temperature t = s.standing[i].value();
    if (!holds_alternative<physics::Hose>(s.line.parts[i])) continue;
    if (!s.told(i)) {
      tell_untold(s, i, out);
      continue;
    }
    if (out.warmest && t.value() <= out.warmest->value()) continue;
    out.warmest = t;
    out.warmest_place = s.place_names[i];
  }
}

}  // namespace

PourSetting with(PourSetting s, const WhatIf& change) {
  physics::Hose& hose = *get_if<physics::Hose>(&s.line.parts[s.line.main_hose]);
  if (change.pressure)
    s.pressure = units::Estimate<GaugePressure>(*change.pressure, s.pressure.contributions());
  if (change.pressure) s.gas_since.reset();
  if (change.length) hose.length = *change.length;
  if (change.bore) hose.bore = *change.bore;
  if (change.temperature) {
    const auto changed = units::Estimate<Temperature>(*change.temperature, s.beer.contributions());
    // Pieces that run through a place of their own stay as warm as that place.
    for (std::size_t i = 0; i < s.standing.size(); ++i)
      if (s.place_names[i].empty()) s.standing[i] = changed;
    s.beer = changed;
    if (s.keg_place) s.keg_place = changed;
    s.place_read.reset();
  }
  if (change.target) {
    const double half =
        s.target_low && s.target_high ? (s.target_high->count() - s.target_low->count()) / 2 : 0.1;
    s.target_low = units::volumes_of_co2(change.target->count() - half);
    s.target_high = units::volumes_of_co2(change.target->count() + half);
    s.co2 = units::Estimate<units::Co2Volumes>(*change.target);
  }
  return s;
}

PourOutlook pour_outlook(const PourSetting& s) {
  PourOutlook out;
  const auto beer = physics::flowing_beer(s.beer.value(), s.gravity);
  if (!beer) {
    out.cant_tell = message(MessageKey::pour_out_of_range);
    return out;
  }
  const auto line = physics::LineFlow::make(
      physics::with_bores(s.line.parts, physics::range_of_bores(s.bores).likely), *beer);
  if (!line) {
    out.cant_tell = message(MessageKey::pour_out_of_range);
    return out;
  }
  tell_pour(s, *line, out);
  tell_gas(s, *line, out);
  tell_right(s, *line, out);
  tell_standing(s, out);
  if (const auto figure = physics::handbook_restriction(hose_material(s.line.hose_piece().material),
                                                        s.line.hose().bore)) {
    out.handbook = told(physics::compare_restriction(*figure, *beer));
  }
  return out;
}

std::vector<Length> hose_lengths(bool feet) {
  std::vector<Length> all;
  if (feet) {
    for (const double ft : {2., 3., 4., 5., 6., 7., 8., 10., 12., 15., 20., 25.})
      all.push_back(units::feet(ft));
  } else {
    for (const double m : {0.5, 1., 1.5, 2., 2.5, 3., 3.5, 4., 5., 6., 8.})
      all.push_back(units::metres(m));
  }
  return all;
}

}  // namespace ullage::cellar
