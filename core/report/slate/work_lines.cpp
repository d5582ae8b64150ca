// SPDX-License-Identifier: GPL-3.0-or-later
//
// Draught lines without a line of the register: how fast one pours, and the length,
// pressure or bore that a wanted pour takes.
#include <array>

#include "core/physics/line_balance.h"
#include "core/report/slate/typed_line.h"

namespace ullage::report::slate {
namespace {

using physics::Subject;
using units::Estimate;
using units::Printer;

constexpr auto line_flow_subjects =
    std::to_array<SubjectField>({{Subject::gauge_pressure, "pressure"},
                                 {Subject::length, "length"},
                                 {Subject::bore, "bore"},
                                 {Subject::rise, "rise"},
                                 {Subject::flow, "seconds"},
                                 {Subject::pressure_loss, "fittings"},
                                 {Subject::temperature, "temperature"},
                                 {Subject::roughness, "bore"},
                                 {Subject::relative_roughness, "bore"}});
// What it pours is the answer there: of what is typed, the length sets it most.
constexpr auto pouring_subjects = [] {
  auto subjects = line_flow_subjects;
  for (SubjectField& s : subjects) {
    if (s.subject == Subject::flow) s.field = "length";
  }
  return subjects;
}();
// Where the pressure, or the bore, is the answer.
constexpr auto pressing_subjects = [] {
  auto subjects = line_flow_subjects;
  for (SubjectField& s : subjects) {
    if (s.subject == Subject::gauge_pressure) s.field = "seconds";
  }
  return subjects;
}();
constexpr auto boring_subjects = [] {
  auto subjects = line_flow_subjects;
  for (SubjectField& s : subjects) {
    if (s.field == "bore") s.field = "length";
  }
  return subjects;
}();

Outcome pour(const Inputs& in, const Printer& printer) {
  const auto refused = [&](const physics::RangeError& e) {
    return std::unexpected(problem_of(e, pouring_subjects, in, printer));
  };
  const auto pressure = in.get<units::GaugePressure>("pressure");
  const auto line = typed_line(in, typed_parts(in, in.get<units::Length>("length")), pressure);
  if (!line) return refused(line.error());
  const auto flow = pour_of(*line);
  if (!flow) return refused(flow.error());
  Answer a;
  tell_pour(*flow, in.get<units::Volume>("glass"), printer, a);
  a.sentences.emplace_back(
      "A hose’s bore is rarely known better: time a pour, and the line can be calibrated.");
  draw_profile(*line, pressure, a);
  return a;
}

// With its range; where one end of the errors has no answer, with what a straight line
// makes of them, and said so.
template <class Q>
AnswerValue line_value(std::string name, const LineAnswer<Q>& answer, Answer& a) {
  if (!answer.high) {
    a.sentences.emplace_back(
        "With bore and dial off by as much as they may be, no answer is in reach: take it as "
        "rough.");
  }
  return within(std::move(name), answer, true);
}

void tell_handbook(const Inputs& in, const Printer& printer, Answer& a) {
  const auto figure =
      physics::handbook_restriction(typed_material(in), in.get<units::Length>("bore"));
  if (!figure) return;
  const auto balance = physics::handbook_balance(in.get<units::GaugePressure>("pressure"),
                                                 in.get<units::Length>("rise"), {});
  if (!balance) return;
  const auto length = physics::restrictor_length(
      balance->left - in.get<units::PressureDifference>("fittings"), figure->usual);
  if (!length) return;
  a.sentences.push_back(
      "By the handbook’s pressure per length, for its usual pour: " + printer.print(*length) + ".");
}

Outcome line_length(const Inputs& in, const Printer& printer) {
  const auto refused = [&](const physics::RangeError& e) {
    if (e.subject == Subject::length) {
      return std::unexpected(impossible(
          "pressure", e.value < 0 ? "Too little pressure: lift and fittings alone take more."
                                  : "No hose of this bore is long enough for so much pressure."));
    }
    return std::unexpected(problem_of(e, line_flow_subjects, in, printer));
  };
  const auto pressure = in.get<units::GaugePressure>("pressure");
  auto line = typed_line(in, typed_parts(in, units::metres(1)), pressure);
  if (!line) return refused(line.error());
  const auto length = over_line_errors<units::Length>(
      *line,
      [&](const physics::LineFlow& l, units::GaugePressure p, physics::BoreFactor) {
        return l.length_for(0, p, wanted_flow(in));
      },
      // Where lift and fittings alone take more, none is left for a hose.
      [](const physics::RangeError& e) -> std::optional<units::Length> {
        if (e.subject != Subject::length || e.value >= 0) return std::nullopt;
        return units::metres(0);
      });
  if (!length) return refused(length.error());
  Answer a;
  a.values.push_back(line_value("Hose", *length, a));
  a.values.push_back(in_words("For a pour of", print_flow(wanted_flow(in), printer)));
  tell_handbook(in, printer, a);
  a.sentences.emplace_back(
      "Cut it long: a hose is shortened in a minute. Then time a pour and calibrate the line.");
  line->parts = typed_parts(in, length->likely);
  draw_profile(*line, pressure, a);
  return a;
}

Outcome line_pressure(const Inputs& in, const Printer& printer) {
  const auto refused = [&](const physics::RangeError& e) {
    return std::unexpected(problem_of(e, pressing_subjects, in, printer));
  };
  // From nothing on the dial: what is added to the answer is what the dial is off by.
  const auto line =
      typed_line(in, typed_parts(in, in.get<units::Length>("length")), units::gauge_psi(0));
  if (!line) return refused(line.error());
  const auto needed = over_line_errors<units::GaugePressure>(
      *line,
      [&](const physics::LineFlow& l, units::GaugePressure off,
          physics::BoreFactor) -> physics::Result<units::GaugePressure> {
        const auto p = l.pressure_for(wanted_flow(in));
        if (!p) return p;
        return *p + off.above_ambient();
      },
      physics::nothing_instead);
  if (!needed) return refused(needed.error());
  Answer a;
  a.values.push_back(line_value("On the keg", *needed, a));
  a.values.push_back(in_words("For a pour of", print_flow(wanted_flow(in), printer)));
  a.sentences.emplace_back(
      "The beer’s own CO₂ sets the pressure first: see “What pressure holds this CO₂?”. Where the "
      "two differ, change the hose, or the gas.");
  if (needed->likely > units::gauge_psi(30)) {
    a.cautions.emplace_back("Look at the pressure stamped on the keg before you set this much.");
  }
  draw_profile(*line, needed->likely, a);
  return a;
}

// As made, not as sold: the prior of the bore is left out.
physics::Result<LineKnown> line_to_bore(const Inputs& in) {
  physics::Hose hose;
  hose.length = in.get<units::Length>("length");
  hose.bore = units::inches(0.25);
  hose.rise = in.get<units::Length>("rise");
  auto line =
      typed_line(in, {hose, physics::Fitting{in.get<units::PressureDifference>("fittings")}},
                 in.get<units::GaugePressure>("pressure"));
  if (line) line->bores = Estimate(physics::BoreFactor(1));
  return line;
}

// What a hose sold by this bore pours, with what hoses of its kind differ by.
void tell_pour_by_bore(const Inputs& in, LineKnown line, units::Length bore,
                       const Estimate<physics::BoreFactor>& factor, const Printer& printer,
                       Answer& a) {
  get<physics::Hose>(line.parts.front()).bore = bore / factor.value().count();
  line.bores = factor;
  const auto flow = pour_of(line);
  if (!flow) return;
  a.values.push_back(
      because(flow->errors, in_words("A hose so sold pours", print_flow(*flow, printer))));
  const auto glass = in.get<units::Volume>("glass");
  a.values.push_back(
      because(flow->errors, in_words("A glass of " + printer.print(glass) + " then takes",
                                     glass_words(*flow, glass, printer))));
}

// The bore it takes, as made; hoses of the material run narrower or wider than sold.
Outcome line_bore(const Inputs& in, const Printer& printer) {
  const auto refused = [&](const physics::RangeError& e) {
    if (e.subject != Subject::bore) {
      return std::unexpected(problem_of(e, boring_subjects, in, printer));
    }
    return std::unexpected(impossible(
        "pressure", e.value < e.low
                        ? "So much pressure over so short a line takes a bore below any hose’s."
                        : "Too little pressure for this length: no hose is wide enough."));
  };
  const auto line = line_to_bore(in);
  if (!line) return refused(line.error());
  const auto bore = over_line_errors<units::Length>(
      *line,
      [&](const physics::LineFlow& l, units::GaugePressure p, physics::BoreFactor) {
        return l.bore_for(0, p, wanted_flow(in));
      },
      [](const physics::RangeError& e) -> std::optional<units::Length> {
        if (e.subject != Subject::bore || e.value >= e.low) return std::nullopt;
        return units::metres(0);
      });
  if (!bore) return refused(bore.error());
  const auto beer = physics::flowing_beer(in.get<units::Temperature>("temperature"));
  if (!beer) return refused(beer.error());
  const auto factor =
      physics::bore_prior(typed_material(in), bore->likely, *beer, {"bore of the hose"});
  Answer a;
  const auto range = [&](units::Length low, units::Length high) {
    return printer.print_bore(low) + " to " + printer.print_bore(high);
  };
  std::string words = printer.print_bore(bore->likely);
  if (bore->low && bore->high) words += " (" + range(*bore->low, *bore->high) + ")";
  a.values.push_back(because(bore->errors, in_words("Bore that it takes", words, true)));
  a.values.push_back(because(factor.contributions(),
                             in_words("Sold as", range(bore->likely / factor.high().count(),
                                                       bore->likely / factor.low().count()))));
  tell_pour_by_bore(in, *line, bore->likely, factor, printer, a);
  a.sentences.emplace_back("Hose comes in few bores: take the next one, then work out its length.");
  return a;
}

}  // namespace

void add_line_computations(std::vector<Computation>& all) {
  const Field glass = glass_field();
  std::vector<Field> pouring{
      pressure_field("pressure", "Pressure on the keg", units::gauge_psi(12)), material_field(),
      bore_field(), run_field(), glass};
  std::vector<Field> balancing{
      pressure_field("pressure", "Pressure on the keg", units::gauge_psi(12)), material_field(),
      bore_field(), glass, seconds_field()};
  std::vector<Field> pressing{run_field(), material_field(), bore_field(), glass, seconds_field()};
  std::vector<Field> boring{pressure_field("pressure", "Pressure on the keg", units::gauge_psi(12)),
                            material_field(), run_field(), glass, seconds_field()};
  for (auto* fields : {&pouring, &balancing, &pressing, &boring}) {
    for (Field& f : common_line_fields()) fields->push_back(std::move(f));
  }
  all.push_back({"pour", "How fast does a line pour?", "Lines",
                 "draught draft flow rate foam fast slow hose pour seconds glass",
                 std::move(pouring), &laws::line_flow, pour});
  all.push_back({"line_length", "How long must a line be?", "Lines",
                 "balance balanced draught draft hose length restriction foam pour",
                 std::move(balancing), &laws::line_flow, line_length});
  all.push_back({"line_pressure", "What pressure does a line need?", "Lines",
                 "draught draft pour flow psi push hose pressure", std::move(pressing),
                 &laws::line_flow, line_pressure});
  all.push_back({"line_bore", "Which bore must a hose have?", "Lines",
                 "draught draft hose bore diameter inside width restriction", std::move(boring),
                 &laws::line_flow, line_bore});
}

}  // namespace ullage::report::slate
