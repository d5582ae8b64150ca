// SPDX-License-Identifier: GPL-3.0-or-later
//
// Where the CO2 goes if nothing is changed.
#include <fmt/format.h>

#include <algorithm>
#include <array>

#include "core/report/cards/card_parts.h"
#include "core/units/present.h"

namespace ullage::report {
namespace {

using cellar::CurvePoint;
using cellar::Instant;
using Edge = units::Co2Volumes CurvePoint::*;

constexpr std::array drift_days{7, 14, 30};
constexpr std::chrono::hours drift_slack{1};  // the curve's last point is at the horizon or so

double share_between(Instant from, Instant to, Instant at) {
  return std::chrono::duration<double>(at - from) / std::chrono::duration<double>(to - from);
}

std::optional<CurvePoint> drift_at_time(const std::vector<CurvePoint>& points, Instant at) {
  if (points.size() < 2 || at < points.front().at || at > points.back().at + drift_slack)
    return std::nullopt;
  const auto next =
      std::find_if(points.begin() + 1, points.end(), [&](const auto& p) { return p.at >= at; });
  if (next == points.end()) return points.back();
  const CurvePoint& a = *(next - 1);
  const double share = share_between(a.at, next->at, at);
  const auto mix = [&](Edge e) {
    return units::volumes_of_co2((a.*e).count() + share * ((*next.*e).count() - (a.*e).count()));
  };
  return CurvePoint{at, mix(&CurvePoint::low), mix(&CurvePoint::likely), mix(&CurvePoint::high)};
}

// First time that an edge of the band is beyond the limit, on its side.
std::optional<Instant> drift_crosses(const std::vector<CurvePoint>& points, Edge edge,
                                     units::Co2Volumes limit, bool upwards) {
  const auto beyond = [&](const CurvePoint& p) {
    return upwards ? p.*edge > limit : p.*edge < limit;
  };
  for (std::size_t i = 0; i < points.size(); ++i) {
    if (!beyond(points[i])) continue;
    if (i == 0) return points[0].at;
    const double a = (points[i - 1].*edge).count(), b = (points[i].*edge).count();
    const double share = b == a ? 0 : (limit.count() - a) / (b - a);
    return points[i - 1].at +
           std::chrono::seconds(static_cast<long long>(
               share * static_cast<double>((points[i].at - points[i - 1].at).count())));
  }
  return std::nullopt;
}

struct DriftLeaves {
  std::optional<Instant> earliest, likely, latest;
};

DriftLeaves drift_leaves(const std::vector<CurvePoint>& points, units::Co2Volumes limit,
                         bool upwards) {
  const Edge fast = upwards ? &CurvePoint::high : &CurvePoint::low;
  const Edge slow = upwards ? &CurvePoint::low : &CurvePoint::high;
  return {drift_crosses(points, fast, limit, upwards),
          drift_crosses(points, &CurvePoint::likely, limit, upwards),
          drift_crosses(points, slow, limit, upwards)};
}

std::string say_leaves(const DriftLeaves& w, bool upwards, const Speaker& speaker) {
  const char* side = upwards ? "above it" : "below it";
  const auto day = [&](Instant t) { return say_day(t, speaker); };
  if (!w.likely)
    return fmt::format("may be {} from {} on, likely not", side, day(present(w.earliest)));
  const std::string words = fmt::format("{} from {}", side, day(*w.likely));
  const std::string first = day(w.earliest.value_or(*w.likely));
  if (!w.latest) return words + fmt::format(" ({} at the earliest, or not at all)", first);
  const std::string last = day(*w.latest);
  return first == last ? words : words + fmt::format(" ({} to {})", first, last);
}

// What would narrow what it will have then: on the way the gas and the equation take
// over from what was put in.
std::vector<std::string> narrowing_then(const std::vector<cellar::CurveSources>& sources,
                                        Instant then) {
  const auto apart = [&](const cellar::CurveSources& s) {
    return s.at > then ? s.at - then : then - s.at;
  };
  const auto nearest =
      std::min_element(sources.begin(), sources.end(),
                       [&](const auto& a, const auto& b) { return apart(a) < apart(b); });
  return nearest == sources.end() ? std::vector<std::string>() : narrowing(nearest->co2);
}

// Of what the beer has at `then`.
Grounds drift_grounds(const KegSubject& s, const cellar::CarbonationCurveData& ahead, Instant then,
                      std::string name, std::string answer) {
  Grounds g = co2_grounds(s);
  g.narrow = narrowing_then(ahead.sources, then);
  g.name = std::move(name);
  g.answer = std::move(answer);
  g.inputs.push_back(
      {"CO₂ now " + s.speaker.printer.print(present(s.keg.co2.now)), InputOrigin::worked_out, {}});
  g.notes.emplace_back(s.keg.gas.on
                           ? "With the gas and the temperature as they are, and nothing poured."
                           : "With the gas off, the temperature as it is, and nothing poured.");
  return g;
}

struct DriftSaid {
  std::string words;
  Instant about{};  // the moment that the words turn on
};

DriftSaid drift_said(const DriftLeaves& leaves, bool upwards, const Speaker& speaker) {
  return {say_leaves(leaves, upwards, speaker),
          leaves.likely ? *leaves.likely : present(leaves.earliest)};
}

// When it leaves the range; from outside of it, nothing is said here.
std::optional<DriftSaid> drift_out_of_range(const KegSubject& s,
                                            const std::vector<CurvePoint>& points) {
  const cellar::Co2State& co2 = s.keg.co2;
  if (!co2.target_low || !co2.target_high) return std::nullopt;
  const units::Co2Volumes now = points.front().likely;
  if (now > *co2.target_high) return std::nullopt;
  const DriftLeaves up = drift_leaves(points, *co2.target_high, true);
  if (up.likely) return drift_said(up, true, s.speaker);
  if (now < *co2.target_low) return std::nullopt;
  const DriftLeaves down = drift_leaves(points, *co2.target_low, false);
  if (down.likely) return drift_said(down, false, s.speaker);
  // Both edges may be out already, by the error of what it has now.
  if (up.earliest && *up.earliest > points.front().at) return drift_said(up, true, s.speaker);
  if (down.earliest && *down.earliest > points.front().at)
    return drift_said(down, false, s.speaker);
  const auto whole = cellar::between(points.front().at, points.back().at);
  return DriftSaid{fmt::format("not in {}", s.speaker.printer.print(whole)), points.back().at};
}

}  // namespace

std::optional<KegCard> drift_card(const KegSubject& s, const cellar::CarbonationCurveData& ahead) {
  if (!s.keg.contents || !s.keg.co2.now) return std::nullopt;
  const auto& points = ahead.points;
  KegCard card;
  const units::Printer& print = s.speaker.printer;
  card.verdict = s.keg.gas.on && s.keg.gas.set
                     ? fmt::format("If it stays at {}", print.print(*s.keg.gas.set))
                     : std::string("If the gas stays off");
  for (const int days : drift_days) {
    const Instant when = s.speaker.now + std::chrono::days(days);
    const auto then = drift_at_time(points, when);
    if (!then) continue;
    const std::string value =
        fmt::format("{} ({})", print.print(then->likely), print.print_range(then->low, then->high));
    const std::string name = fmt::format("In {} days", days);
    card.figures.push_back(
        {name,
         value,
         drift_grounds(s, ahead, when, "CO₂ in " + std::to_string(days) + " days", value),
         {}});
  }
  if (card.figures.empty()) return std::nullopt;
  if (const auto said = drift_out_of_range(s, points)) {
    card.figures.push_back(
        {"Out of its range",
         said->words,
         drift_grounds(s, ahead, said->about, "When it leaves its range", said->words),
         {}});
  }
  return card;
}

}  // namespace ullage::report
