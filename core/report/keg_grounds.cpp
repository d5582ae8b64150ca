// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/report/keg_grounds.h"

namespace ullage::report {
namespace {

using cellar::KegStatus;
using cellar::MessageKey;

// The gas as set, the place as read or as set, and since when the beer is in it.
void add_gas(Grounds& g, const KegSubject& s) {
  const cellar::GasOnKeg& gas = s.keg.gas;
  if (!gas.on || !gas.set) return;
  g.inputs.push_back({"Gas set to " + s.speaker.printer.print(*gas.set), InputOrigin::typed,
                      gas.since ? say_age(*gas.since, s.speaker) : std::string()});
}

void add_place(Grounds& g, const KegSubject& s) {
  if (!s.keg.place) return;
  const cellar::PlaceStatus* place = s.cellar.find(s.keg.place->place);
  if (place == nullptr || !place->temperature) return;
  g.inputs.push_back({place->record.name + " at " + s.speaker.printer.print(*place->temperature),
                      place->read_at ? InputOrigin::read : InputOrigin::typed,
                      place->read_at ? say_age(*place->read_at, s.speaker) : std::string()});
}

void add_filling(Grounds& g, const KegSubject& s) {
  if (!s.keg.contents) return;
  g.inputs.push_back({s.keg.contents->filled_by_us ? "How it was filled" : "How it was received",
                      InputOrigin::typed, say_age(s.keg.contents->since, s.speaker)});
}

void add_beer_temperature(Grounds& g, const KegSubject& s) {
  if (!s.keg.beer_temperature) return;
  g.inputs.push_back(
      {"Beer at " + s.speaker.printer.print(*s.keg.beer_temperature), InputOrigin::worked_out, {}});
}

std::string range_of(const KegSubject& s) {
  const cellar::Co2State& co2 = s.keg.co2;
  if (!co2.target_low || !co2.target_high) return {};
  return s.speaker.printer.print_range(*co2.target_low, *co2.target_high);
}

}  // namespace

Grounds co2_grounds(const KegSubject& s) {
  const cellar::Co2State& co2 = s.keg.co2;
  if (!co2.now && !co2.cant_tell) return {};
  Grounds g = grounds_by(laws::carbonation, "CO₂ now",
                         co2.now ? s.speaker.printer.print(*co2.now)
                                 : "can’t tell: " + say(*co2.cant_tell, s.speaker));
  add_gas(g, s);
  add_place(g, s);
  add_beer_temperature(g, s);
  add_filling(g, s);
  if (const std::string range = range_of(s); !range.empty()) {
    g.notes.push_back("Its range is " + range + ".");
  }
  if (co2.now) g.narrow = narrowing(*co2.now);
  return g;
}

Grounds settles_grounds(const KegSubject& s) {
  if (!s.keg.co2.settles_at) return {};
  Grounds g = grounds_by(laws::equilibrium, "CO₂ it settles at",
                         s.speaker.printer.print(*s.keg.co2.settles_at));
  add_gas(g, s);
  add_place(g, s);
  g.notes.emplace_back("At this gas and temperature, if nothing more is done.");
  return g;
}

Grounds level_grounds(const KegSubject& s) {
  const cellar::Level& level = s.keg.level;
  if (!level.left && !level.cant_tell) return {};
  Grounds g = grounds_by(laws::level, "Left in it",
                         level.left ? s.speaker.printer.print(*level.left)
                                    : "can’t tell: " + say(*level.cant_tell, s.speaker));
  if (level.measured_at) {
    g.inputs.push_back(
        {"The last word on its level", InputOrigin::read, say_age(*level.measured_at, s.speaker)});
  }
  add_filling(g, s);
  g.inputs.push_back({"Holds " + s.speaker.printer.print(s.keg.record.brimful) + " to the brim",
                      InputOrigin::typed,
                      {}});
  if (level.left) g.narrow = narrowing(*level.left);
  return g;
}

Grounds run_out_grounds(const KegSubject& s) {
  const cellar::Level& level = s.keg.level;
  if (!level.runs_out) return {};
  Grounds g =
      grounds_by(laws::run_out, "Runs out",
                 say(cellar::message(MessageKey::level_runs_out, *level.runs_out), s.speaker));
  if (level.left) {
    g.inputs.push_back(
        {"Left in it, " + s.speaker.printer.print(*level.left), InputOrigin::worked_out,
         level.measured_at ? say_age(*level.measured_at, s.speaker) : std::string()});
  }
  if (s.keg.phase_since) {
    g.inputs.push_back({"What was drawn from it since it was tapped", InputOrigin::worked_out,
                        say_age(*s.keg.phase_since, s.speaker)});
  }
  if (s.keg.line) {
    g.inputs.push_back({"What was drawn from the kegs before it on " + s.keg.line->name,
                        InputOrigin::worked_out,
                        {}});
  }
  g.notes.emplace_back("If it goes on as in the last weeks. The range holds four times in five.");
  if (level.left) g.narrow = narrowing(*level.left);
  g.narrow.emplace_back("Read its level again, some days apart.");
  return g;
}

Grounds temperature_grounds(const KegSubject& s) {
  if (!s.keg.beer_temperature) return {};
  Grounds g =
      grounds_by(laws::cooling, "Beer at", s.speaker.printer.print(*s.keg.beer_temperature));
  add_place(g, s);
  add_filling(g, s);
  g.narrow = narrowing(*s.keg.beer_temperature);
  return g;
}

Grounds serving_pressure_grounds(const KegSubject& s) {
  if (!s.keg.gas.should_be) return {};
  Grounds g = grounds_by(laws::equilibrium, "Pressure that holds its CO₂",
                         s.speaker.printer.print(*s.keg.gas.should_be));
  if (const std::string range = range_of(s); !range.empty()) {
    g.inputs.push_back({"Range " + range, InputOrigin::typed, {}});
  }
  add_place(g, s);
  g.notes.emplace_back("For the middle of the range, at the temperature of its place.");
  return g;
}

}  // namespace ullage::report
