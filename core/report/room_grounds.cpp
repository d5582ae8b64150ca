// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/report/room_grounds.h"

#include <fmt/format.h>

#include <algorithm>
#include <cmath>

#include "core/units/paper_text.h"

namespace ullage::report {
namespace {

using cellar::PlaceSafety;

constexpr std::string_view uneven =
    "Carbon dioxide does not mix evenly: it gathers low, far above the figure.";

void add_bottles(Grounds& g, const PlaceSafety& p, const Speaker& speaker) {
  for (const cellar::BottleInRoom& b : p.bottles) {
    if (!b.gas) {
      g.inputs.push_back(
          {b.record.name + ": its content is not known and left out", InputOrigin::typed, {}});
      continue;
    }
    const double co2 = b.record.co2.count();
    const std::string gas =
        co2 < 0.995 ? fmt::format(", {} CO₂", speaker.printer.print(units::fraction(co2))) : "";
    g.inputs.push_back({fmt::format("{} holds {}{}{}", b.record.name, speaker.printer.print(*b.gas),
                                    b.full ? " when full" : "", gas),
                        b.full ? InputOrigin::typed : InputOrigin::worked_out,
                        {}});
  }
}

void add_room(Grounds& g, const PlaceSafety& p, const Speaker& speaker) {
  if (!p.place.net_air_volume) return;
  g.inputs.push_back({fmt::format("Net volume of {}, {}", p.place.name,
                                  units::print_room(*p.place.net_air_volume, speaker.printer)),
                      InputOrigin::typed,
                      {}});
}

void add_conditions(Grounds& g, const PlaceSafety& p, const Speaker& speaker) {
  g.inputs.push_back({"Air at " + speaker.printer.print(p.temperature),
                      p.temperature_known ? InputOrigin::read : InputOrigin::assumed,
                      {}});
  g.inputs.push_back({"Air pressure by the cellar’s altitude", InputOrigin::typed, {}});
}

Grounds of_room(std::string name, std::string answer, const PlaceSafety& p,
                const Speaker& speaker) {
  Grounds g = grounds_by(laws::room_air, std::move(name), std::move(answer));
  add_bottles(g, p, speaker);
  add_room(g, p, speaker);
  add_conditions(g, p, speaker);
  g.notes.emplace_back(uneven);
  g.notes.emplace_back("A caution, never an all-clear. Local code decides.");
  g.notes.emplace_back(
      "The ± is of the room's volume (taken at 10 %), the bottles' content (5 %), the "
      "temperature and the weather.");
  g.narrow.emplace_back("Measure the room, and take off what kegs and stock fill.");
  return g;
}

}  // namespace

std::string say_share(units::MoleFraction share, const Speaker& speaker) {
  const double percent = share.count() * 100;
  const int decimals = percent >= 9.95 ? 0 : percent >= 0.995 ? 1 : 2;
  return speaker.printer.number(percent, decimals) + " %";
}

std::string say_share(const std::optional<cellar::ShareEstimate>& share, units::MoleFraction plain,
                      const Speaker& speaker) {
  if (!share || share->half_width() <= 0) return say_share(plain, speaker);
  const double percent = share->value().count() * 100, off = share->half_width() * 100;
  // As many decimals as show the error.
  const int decimals = off >= 0.95 ? 0 : off >= 0.095 ? 1 : 2;
  return fmt::format("{} ± {} %", speaker.printer.number(percent, decimals),
                     speaker.printer.number(off, decimals));
}

std::string say_leak_share(const cellar::ShareEstimate& share, const Speaker& speaker) {
  const auto ppm = [&](double of_all) { return speaker.printer.number(of_all * 1e6, 0); };
  if (share.value().count() <= 0) return fmt::format("at most {} ppm", ppm(share.high().count()));
  return fmt::format("{} ± {} ppm", ppm(share.value().count()), ppm(share.half_width()));
}

std::string say_room(const cellar::VolumeEstimate& room, const Speaker& speaker) {
  return units::print_room(room, speaker.printer);
}

std::string say_published_share(units::MoleFraction share, const Speaker& speaker) {
  const double percent = share.count() * 100;
  int decimals = 0;
  for (double scaled = percent; decimals < 2 && std::abs(scaled - std::round(scaled)) > 1e-6;
       scaled *= 10) {
    ++decimals;
  }
  return speaker.printer.number(percent, decimals) + " %";
}

Grounds room_co2_grounds(const PlaceSafety& p, const Speaker& speaker) {
  if (!p.outcome) return {};
  Grounds g = of_room("Carbon dioxide, if all escapes", say_share(p.co2, p.outcome->co2, speaker),
                      p, speaker);
  g.inputs.push_back({"That is " + units::print_room(p.outcome->gas, speaker.printer) + " of gas",
                      InputOrigin::worked_out,
                      {}});
  if (p.bottles.size() > 1) g.notes.emplace_back("All bottles of the place are counted together.");
  return g;
}

Grounds room_oxygen_grounds(const PlaceSafety& p, const Speaker& speaker) {
  if (!p.outcome) return {};
  Grounds g = of_room("Oxygen left, if all escapes",
                      say_share(p.oxygen, p.outcome->oxygen, speaker), p, speaker);
  g.notes.push_back("Of the " + say_published_share(units::mole_fraction(0.209), speaker) +
                    " in fresh air, what the gas does not push aside.");
  return g;
}

Grounds room_flowing_grounds(const PlaceSafety& p, const Speaker& speaker) {
  if (!p.outcome) return {};
  Grounds g = of_room("Carbon dioxide, if air can leave",
                      say_share(p.co2_flowing, p.outcome->co2_flowing, speaker), p, speaker);
  g.notes.emplace_back(
      "The gas drives out air that it has mixed with already, so some of it leaves, too.");
  return g;
}

Grounds room_wanted_grounds(const PlaceSafety& p, const Speaker& speaker) {
  if (!p.room_for_three_percent) return {};
  Grounds g = grounds_by(laws::room_air, "Room for 3 % at most",
                         say_room(*p.room_for_three_percent, speaker));
  add_bottles(g, p, speaker);
  add_conditions(g, p, speaker);
  g.notes.emplace_back("The room in which all of it, mixed, is just at 3 %.");
  g.notes.emplace_back(uneven);
  return g;
}

Grounds room_leak_grounds(const PlaceSafety& p, const Speaker& speaker) {
  if (!p.leak_settles_at) return {};
  Grounds g = grounds_by(laws::room_air, "The loss settles at",
                         say_leak_share(*p.leak_settles_at, speaker));
  g.inputs.push_back({p.leak_called_one ? "The unexplained loss of the bottles here"
                                        : "What is unexplained of the bottles here: not enough to "
                                          "call it a loss",
                      InputOrigin::worked_out,
                      {}});
  add_room(g, p, speaker);
  if (p.place.air_changes_per_hour)
    g.inputs.push_back({fmt::format("{} air changes an hour",
                                    speaker.printer.number(*p.place.air_changes_per_hour, 1)),
                        InputOrigin::typed,
                        {}});
  add_conditions(g, p, speaker);
  g.notes.emplace_back(uneven);
  g.narrow = narrowing(*p.leak_settles_at);
  return g;
}

Grounds limit_grounds(const physics::ExposureLimit& l, const PlaceSafety& p,
                      const Speaker& speaker) {
  Grounds g = grounds_by(laws::published_limits, fmt::format("{}: {}", l.country, l.name),
                         say_published_share(l.value, speaker));
  if (!l.source.empty()) g.source = l.source;
  g.certainty = say(l.certainty == physics::SourceCertainty::verified ? Certainty::verified
                                                                      : Certainty::from_memory);
  if (!l.averaging.empty()) g.notes.push_back(fmt::format("Averaged over {}.", l.averaging));
  if (p.outcome) {
    const bool oxygen = l.kind == physics::LimitKind::oxygen_below;
    g.inputs.push_back({(oxygen ? "Oxygen here if all escapes, " : "Here if all escapes, ") +
                            (oxygen ? say_share(p.oxygen, p.outcome->oxygen, speaker)
                                    : say_share(p.co2, p.outcome->co2, speaker)),
                        InputOrigin::worked_out,
                        {}});
  }
  g.notes.emplace_back("Local code and licensed practice decide what counts.");
  return g;
}

}  // namespace ullage::report
