// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/physics/break_out.h"

#include <algorithm>
#include <numbers>

namespace ullage::physics {

using namespace units;

namespace {

double hose_volume(const Hose& h) {
  return std::numbers::pi / 4.0 * h.bore.value() * h.bore.value() * h.length.value();
}

std::optional<RangeError> miscounted(std::size_t given, std::size_t parts) {
  if (given == parts) return std::nullopt;
  const auto n = static_cast<double>(parts);
  return RangeError{Subject::parts, static_cast<double>(given), n, n};
}

AtRest judge_place(const Estimate<PressureDifference>& margin) {
  const double m = in_pascals(margin.value());
  if (m - margin.half_width() >= 0) return AtRest::stays;
  if (m + margin.half_width() < 0) return AtRest::breaks_out;
  return AtRest::cant_tell;
}

}  // namespace

Result<std::vector<StandingPlace>> break_out_at_rest(
    const LineFlow& line, const Estimate<GaugePressure>& applied,
    const std::vector<Estimate<Temperature>>& standing, const CarbonatedBeer& beer) {
  if (const auto bad = miscounted(standing.size(), line.parts().size()))
    return std::unexpected(*bad);
  const auto profile = line.profile_at_rest(applied.value());
  if (!profile) return std::unexpected(profile.error());
  const Estimate<Co2Volumes> held =
      beer.co2.with(beer.equation, -equation_half_width(Equation::fitted_chart).count());
  std::vector<StandingPlace> places;
  places.reserve(standing.size());
  for (std::size_t i = 0; i < standing.size(); ++i) {
    const ProfilePoint& from = (*profile)[i];
    const ProfilePoint& to = (*profile)[i + 1];
    const ProfilePoint& worst = to.pressure < from.pressure ? to : from;
    const PressureDifference below_keg = applied.value() - worst.pressure;
    const auto need =
        try_propagate([](Co2Volumes c, Temperature t,
                         AbsolutePressure air) { return equilibrium_gauge(c, t, air); },
                      held, standing[i], beer.ambient);
    if (!need) return std::unexpected(need.error());
    const auto margin = try_propagate(
        [&](GaugePressure p, Co2Volumes c, Temperature t,
            AbsolutePressure air) -> Result<PressureDifference> {
          const auto e = equilibrium_gauge(c, t, air);
          if (!e) return std::unexpected(e.error());
          return p - below_keg - *e;
        },
        applied, held, standing[i], beer.ambient);
    if (!margin) return std::unexpected(margin.error());
    places.push_back({i, worst.along, standing[i].value(), worst.pressure, *need, *margin,
                      judge_place(*margin)});
  }
  return places;
}

Result<PourJourney> break_out_pouring(const LineFlow& line, GaugePressure applied, Co2Volumes co2,
                                      Temperature beer, AbsolutePressure ambient) {
  const auto flow = line.flow_at(applied);
  if (!flow) return std::unexpected(flow.error());
  const auto profile = line.profile_pouring(applied);
  if (!profile) return std::unexpected(profile.error());
  const auto equilibrium = equilibrium_pressure(co2, beer);
  if (!equilibrium) return std::unexpected(equilibrium.error());
  const double needed = in_pascals(*equilibrium);
  const auto absolute = [&](const ProfilePoint& p) {
    return in_pascals(p.pressure.at_ambient(ambient));
  };

  PourJourney journey;
  for (std::size_t i = 0; i < line.parts().size(); ++i) {
    const ProfilePoint& from = (*profile)[i];
    const ProfilePoint& to = (*profile)[i + 1];
    const double before = absolute(from);
    const double after = absolute(to);
    const Hose* hose = get_if<Hose>(&line.parts()[i]);
    const double residence = hose == nullptr ? 0.0 : hose_volume(*hose) / flow->value();
    journey.places.push_back({i, Supersaturation(needed / after), seconds(residence)});
    journey.whole += seconds(residence);
    // Pressure runs straight along a hose: the share of it below equilibrium.
    double share = 0;
    if (before < needed && after < needed) {
      share = 1;
    } else if (after < needed || before < needed) {
      const double crossing = (before - needed) / (before - after);
      share = after < needed ? 1 - crossing : crossing;
    }
    if (share > 0 && !journey.supersaturated_from) {
      const double into = before < needed ? 0.0 : 1.0 - share;
      journey.supersaturated_from = from.along + (to.along - from.along) * into;
    }
    journey.supersaturated += seconds(residence * share);
  }
  return journey;
}

Result<Volume> standing_warm(const LineParts& parts,
                             const std::vector<Estimate<Temperature>>& standing,
                             Temperature limit) {
  if (const auto bad = miscounted(standing.size(), parts.size())) return std::unexpected(*bad);
  double sum = 0;
  for (std::size_t i = 0; i < parts.size(); ++i) {
    const Hose* h = get_if<Hose>(&parts[i]);
    if (h != nullptr && standing[i].value().value() > limit.value()) sum += hose_volume(*h);
  }
  return cubic_metres(sum);
}

}  // namespace ullage::physics
