// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/report/line_grounds.h"

#include <fmt/format.h>

#include "core/report/cleaning_words.h"

namespace ullage::report {
namespace {

using cellar::PourOutlook;
using cellar::PourSetting;

const std::string& as_tried() {
  static const std::string words = "as tried, not as it is";
  return words;
}

void add_pressure(Grounds& g, const LineSubject& s) {
  const std::string at = say_set_pressure(s.setting, s.speaker);
  if (s.tried.pressure) {
    g.inputs.push_back({"Keg at " + at, InputOrigin::typed, as_tried()});
    return;
  }
  g.inputs.push_back({"Regulator at " + at, InputOrigin::typed,
                      s.gas_since ? say_age(*s.gas_since, s.speaker) : std::string()});
}

void add_gas_mixed(Grounds& g, const LineSubject& s) {
  const double share = s.setting.co2_share.count();
  if (share >= 0.999) return;
  g.inputs.push_back({"Gas with " + s.speaker.printer.print(units::fraction(share)) + " CO₂",
                      InputOrigin::typed,
                      {}});
}

void add_beer_at(Grounds& g, const LineSubject& s) {
  g.inputs.push_back({"Beer at " + s.speaker.printer.print(s.setting.beer),
                      s.tried.temperature ? InputOrigin::typed : InputOrigin::worked_out,
                      s.tried.temperature ? as_tried() : std::string()});
  if (s.tried.temperature || !s.place_read) return;
  g.inputs.push_back(
      {"Temperature of " + s.place, InputOrigin::read, say_age(*s.place_read, s.speaker)});
}

void add_range(Grounds& g, const LineSubject& s) {
  if (!s.setting.target_low || !s.setting.target_high) return;
  g.inputs.push_back({"CO₂ wanted, " + s.speaker.printer.print_range(*s.setting.target_low,
                                                                     *s.setting.target_high),
                      InputOrigin::typed, s.tried.target ? as_tried() : std::string()});
}

void add_air(Grounds& g, const LineSubject& s) {
  g.inputs.push_back(
      {"Air pressure at " + s.speaker.printer.print(s.setting.altitude), InputOrigin::typed, {}});
}

void add_co2(Grounds& g, const LineSubject& s) {
  if (!s.setting.co2) return;
  g.inputs.push_back({"CO₂ in the beer, " + s.speaker.printer.print(*s.setting.co2),
                      s.tried.target ? InputOrigin::typed : InputOrigin::worked_out,
                      s.tried.target ? as_tried() : std::string()});
}

// Each piece of hose with what it runs through.
void add_hoses(Grounds& g, const LineSubject& s) {
  const units::Printer& print = s.speaker.printer;
  for (std::size_t i = 0; i < s.setting.line.parts.size(); ++i) {
    const auto* hose = get_if<physics::Hose>(&s.setting.line.parts[i]);
    if (!hose) continue;
    const bool main = i == s.setting.line.main_hose;
    std::string words = "Hose " + print.print(hose->length) + " of " + print.print_bore(hose->bore);
    if (i < s.setting.place_names.size() && !s.setting.place_names[i].empty())
      words += ", through " + s.setting.place_names[i];
    const bool tried = main && (s.tried.length || s.tried.bore);
    g.inputs.push_back({words, InputOrigin::typed, tried ? as_tried() : std::string()});
  }
}

void add_fittings(Grounds& g, const LineSubject& s) {
  std::size_t assumed = 0, stated = 0;
  for (const cellar::PieceOfLine& piece : s.setting.line.pieces) {
    const bool fitting =
        piece.kind != cellar::LinePiece::hose && piece.kind != cellar::LinePiece::restrictor;
    if (fitting) ++(piece.assumed ? assumed : stated);
  }
  if (stated > 0) g.inputs.push_back({"What fittings take", InputOrigin::typed, {}});
  if (assumed > 0) g.inputs.push_back({"What usual fittings take", InputOrigin::assumed, {}});
}

void add_pours(Grounds& g, const LineSubject& s) {
  if (s.setting.timed_pours == 0) {
    g.inputs.push_back(
        {"True bore of the hose, between handbook and friction", InputOrigin::assumed, {}});
    return;
  }
  g.inputs.push_back(
      {"Timed pours that count: " + std::to_string(s.setting.timed_pours), InputOrigin::read,
       s.setting.last_pour ? say_age(*s.setting.last_pour, s.speaker) : std::string()});
  const physics::BoreRange bores = physics::range_of_bores(s.setting.bores);
  const units::Printer& print = s.speaker.printer;
  const auto share = [&](physics::BoreFactor f) { return print.print(units::fraction(f.count())); };
  g.inputs.push_back(
      {fmt::format("By them the bores are {} of what is stated ({} to {})", share(bores.likely),
                   share(bores.low), bores.high ? share(*bores.high) : std::string("any width")),
       InputOrigin::worked_out,
       {}});
}

void advise_timing(Grounds& g, const LineSubject& s) {
  if (s.setting.timed_pours == 0)
    g.narrow.emplace_back("Time a pour: a measured glass and its seconds tell the true bore.");
}

std::string print_or_cant(const LineSubject& s, const std::optional<std::string>& value) {
  if (value) return *value;
  return s.outlook.cant_tell ? "can’t tell: " + say(*s.outlook.cant_tell, s.speaker)
                             : std::string("can’t tell");
}

}  // namespace

LineSubject line_subject(const cellar::LineStatus& line, const cellar::CellarStatus& cellar,
                         const Speaker& speaker) {
  LineSubject s{line.pour->setting, line.pour->outlook, {}, line.record, {}, {}, {}, speaker};
  const cellar::KegStatus* keg = line.keg ? cellar.find(*line.keg) : nullptr;
  if (!keg) return s;
  s.gas_since = keg->gas.since;
  if (!keg->place) return s;
  s.place = keg->place->name;
  if (const cellar::PlaceStatus* place = cellar.find(keg->place->place))
    s.place_read = place->read_at;
  return s;
}

std::string say_set_pressure(const PourSetting& s, const Speaker& speaker) {
  std::string typed = speaker.printer.print(s.pressure.value());
  if (!(s.pressure.half_width() > 0)) return typed;
  return typed + ", may be " + speaker.printer.print(s.pressure.error()) + " off";
}

Grounds set_pressure_grounds(const LineSubject& s) {
  Grounds g = grounds_by(laws::as_logged, "Pressure set", say_set_pressure(s.setting, s.speaker));
  add_pressure(g, s);
  add_gas_mixed(g, s);
  g.narrow = narrowing(s.setting.pressure);
  return g;
}

Grounds should_be_grounds(const LineSubject& s) {
  if (!s.outlook.should_be) return {};
  Grounds g = grounds_by(laws::equilibrium, "Pressure should be",
                         s.speaker.printer.print(*s.outlook.should_be));
  add_range(g, s);
  add_beer_at(g, s);
  add_gas_mixed(g, s);
  add_air(g, s);
  g.notes.emplace_back(
      "For the middle of the range. At this pressure the beer neither gains nor "
      "loses CO₂.");
  g.narrow = narrowing(s.setting.beer);
  return g;
}

Grounds line_settles_grounds(const LineSubject& s) {
  if (!s.outlook.settles) return {};
  Grounds g = grounds_by(laws::equilibrium, "CO₂ it settles at",
                         s.speaker.printer.print(*s.outlook.settles));
  add_pressure(g, s);
  add_beer_at(g, s);
  add_gas_mixed(g, s);
  add_air(g, s);
  g.narrow = narrowing(*s.outlook.settles);
  return g;
}

Grounds glass_grounds(const LineSubject& s) {
  std::optional<std::string> value;
  if (s.outlook.glass_time) {
    const physics::PourTime& t = *s.outlook.glass_time;
    value = s.speaker.printer.print(t.likely) + ", " + s.speaker.printer.print_range(t.low, t.high);
  }
  Grounds g = grounds_by(laws::line_flow, "A glass of " + s.speaker.printer.print(s.setting.glass),
                         print_or_cant(s, value));
  add_pressure(g, s);
  add_hoses(g, s);
  g.inputs.push_back(
      {"Lift of " + s.speaker.printer.print(s.outlook.lift), InputOrigin::worked_out, {}});
  add_fittings(g, s);
  add_pours(g, s);
  add_beer_at(g, s);
  if (s.outlook.flow) g.narrow = narrowing(*s.outlook.flow);
  advise_timing(g, s);
  return g;
}

Grounds profile_grounds(const LineSubject& s) {
  const units::Printer& print = s.speaker.printer;
  Grounds g = grounds_by(laws::break_out, "Pressure along the line",
                         "from " + print.print(s.setting.pressure.value()) + " to the air");
  add_pressure(g, s);
  add_hoses(g, s);
  add_fittings(g, s);
  add_pours(g, s);
  add_co2(g, s);
  add_beer_at(g, s);
  for (std::size_t i = 0; i < s.setting.place_names.size(); ++i) {
    if (s.setting.place_names[i].empty()) continue;
    if (i > 0 && s.setting.place_names[i] == s.setting.place_names[i - 1]) continue;
    if (!s.setting.told(i)) {
      g.inputs.push_back({s.setting.place_names[i] + ", how warm was never told: taken as the keg",
                          InputOrigin::assumed,
                          {}});
      continue;
    }
    g.inputs.push_back({s.setting.place_names[i] + " at " + print.print(s.setting.standing[i]),
                        InputOrigin::read,
                        {}});
  }
  for (const physics::StandingPlace& place : s.outlook.places) {
    if (place.verdict != physics::AtRest::breaks_out) continue;
    g.notes.push_back("At rest gas breaks out where " + print.print(place.pressure) +
                      " stand on beer that needs " + print.print(place.needed) + ".");
    break;
  }
  if (s.setting.co2) g.narrow = narrowing(*s.setting.co2);
  advise_timing(g, s);
  return g;
}

namespace {

// What would give the trade's nominal pour.
Grounds balanced_grounds(const LineSubject& s, std::string name, std::string answer,
                         std::string note) {
  Grounds g = grounds_by(laws::line_flow, std::move(name), std::move(answer));
  add_pressure(g, s);
  add_hoses(g, s);
  add_fittings(g, s);
  add_pours(g, s);
  g.notes.push_back(std::move(note));
  advise_timing(g, s);
  return g;
}

}  // namespace

Grounds right_length_grounds(const LineSubject& s) {
  if (!s.outlook.right_length) return {};
  return balanced_grounds(s, "Hose for a balanced pour",
                          s.speaker.printer.print(*s.outlook.right_length),
                          "Of the longest piece, for the trade’s nominal pour; all else as it is.");
}

Grounds right_bore_grounds(const LineSubject& s) {
  if (!s.outlook.right_bore) return {};
  return balanced_grounds(s, "Bore for a balanced pour",
                          s.speaker.printer.print_bore(*s.outlook.right_bore),
                          "Of the longest piece at the length it has; all else as it is.");
}

Grounds right_pressure_grounds(const LineSubject& s) {
  if (!s.outlook.right_pressure) return {};
  return balanced_grounds(
      s, "Pressure for a balanced pour", s.speaker.printer.print(*s.outlook.right_pressure),
      "Through this hose, whatever that does to the beer’s CO₂: no pressure to set it to. Where it "
      "differs from what the pressure should be, change the hose or mix the gas.");
}

Grounds contents_grounds(const LineSubject& s) {
  Grounds g = grounds_by(laws::line_contents, "The line holds",
                         s.speaker.printer.print(s.outlook.contents));
  add_hoses(g, s);
  g.narrow = narrowing(s.outlook.contents);
  return g;
}

Grounds lift_grounds(const LineSubject& s) {
  Grounds g = grounds_by(laws::line_flow, "Lifting the beer takes",
                         s.speaker.printer.print(s.outlook.lift));
  units::Length rise = units::metres(0);
  for (const physics::LinePart& part : s.setting.line.parts)
    if (const auto* hose = get_if<physics::Hose>(&part)) rise += hose->rise;
  g.inputs.push_back({"Rise of " + s.speaker.printer.print(rise), InputOrigin::typed, {}});
  g.inputs.push_back(
      {"Gravity " + s.speaker.printer.print(s.setting.gravity), InputOrigin::typed, {}});
  return g;
}

Grounds handbook_grounds(const LineSubject& s) {
  if (!s.outlook.handbook) return {};
  Grounds g = grounds_by(laws::handbook_lines, "Handbook for this hose", "beside friction");
  add_hoses(g, s);
  add_beer_at(g, s);
  advise_timing(g, s);
  return g;
}

Grounds supersaturated_grounds(const LineSubject& s) {
  if (!s.outlook.journey) return {};
  Grounds g = grounds_by(
      laws::break_out, "Above equilibrium, pouring",
      s.speaker.printer.number(units::in_seconds(s.outlook.journey->supersaturated), 1) + " s");
  add_pressure(g, s);
  add_hoses(g, s);
  add_co2(g, s);
  g.notes.emplace_back("Every line ends at the air’s pressure: this is no fault by itself.");
  return g;
}

Grounds line_cleaning_grounds(const cellar::LineStatus& line, const cellar::DueWork* due,
                              const Speaker& speaker) {
  Grounds g = grounds_by(laws::work_rules, "Cleaning of " + line.record.name,
                         due ? say_due(*due, speaker) : std::string("no rule is set"));
  if (!due) {
    g.inputs.push_back({line.last_cleaned ? "Last cleaned" : "No cleaning in the journal",
                        InputOrigin::typed,
                        line.last_cleaned ? say_age(*line.last_cleaned, speaker) : std::string()});
    g.narrow.emplace_back(
        "Give the line an interval, or the cellar a rule: Rules, on the Cleaning "
        "page.");
    return g;
  }
  const cellar::AppliedRule& rule = due->governing;
  g.inputs.push_back({say_rule(rule, speaker), InputOrigin::typed, {}});
  g.inputs.push_back(
      {due->last_done ? "Last cleaned" : "Never cleaned; counted from when it was registered",
       due->last_done ? InputOrigin::typed : InputOrigin::assumed,
       due->last_done ? say_age(*due->last_done, speaker) : std::string()});
  if (!rule.reason.empty()) g.notes.push_back("Why: " + rule.reason + ".");
  if (!rule.source.empty()) g.notes.push_back("Who says so: " + rule.source + ".");
  for (const cellar::AppliedRule& other : due->also)
    g.notes.push_back("Also: " + say_rule(other, speaker) + ".");
  if (due->put_off_to) {
    g.notes.push_back("Planned for " + say_date(*due->put_off_to, speaker) +
                      (due->put_off_because.empty() ? "." : ": " + due->put_off_because + "."));
  }
  return g;
}

}  // namespace ullage::report
