// SPDX-License-Identifier: GPL-3.0-or-later
//
// Draught lines without a line of the register: how fast one pours, and the length,
// pressure or bore that a wanted pour takes.
#include <algorithm>
#include <array>
#include <cmath>

#include "core/physics/draught_line.h"
#include "core/physics/handbook_restriction.h"
#include "core/physics/line_balance.h"
#include "core/report/slate/fields.h"

namespace ullage::report::slate {
namespace {

using physics::HoseMaterial;
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

const std::array materials{HoseMaterial::vinyl, HoseMaterial::barrier, HoseMaterial::polyethylene,
                           HoseMaterial::stainless, HoseMaterial::other};

Field material_field() {
  return {.key = "material",
          .label = "Hose",
          .kind = FieldKind::choice,
          .start = Choice{0},
          .least = Choice{0},
          .greatest = Choice{static_cast<int>(materials.size()) - 1},
          .choices = {"vinyl", "barrier", "polyethylene", "stainless", "other"}};
}

Field length_field(std::string_view key, std::string_view label, units::Length start,
                   units::Length least, units::Length greatest, FieldKind kind) {
  return {.key = key,
          .label = label,
          .kind = kind,
          .start = start,
          .least = least,
          .greatest = greatest};
}

Field bore_field() {
  return length_field("bore", "Bore", units::inches(0.1875), units::millimetres(2),
                      units::millimetres(25), FieldKind::bore);
}

std::vector<Field> common_line_fields() {
  Field rise = length_field("rise", "Tap above the keg", units::metres(0.8), units::metres(-20),
                            units::metres(20), FieldKind::length);
  rise.hint = "From the middle of the beer in the keg.";
  Field fittings{.key = "fittings",
                 .label = "Coupler, shank and tap lose",
                 .kind = FieldKind::pressure_difference,
                 .start = units::psi(1),
                 .least = units::psi(0),
                 .greatest = units::psi(20),
                 .detail = true,
                 .hint = "At a usual pour. A flow-control tap loses more."};
  Field temperature = beer_temperature_field("temperature", "Beer at", units::celsius(4));
  temperature.detail = true;
  return {std::move(rise), std::move(fittings), std::move(temperature)};
}

// A hose is rarely as wide as it is sold.
units::ErrorSource hose_bore() { return {"bore of the hose"}; }

struct TypedLine {
  physics::FlowingBeer beer;
  Estimate<physics::BoreFactor> factor;
};

physics::Result<TypedLine> typed_line(const Inputs& in) {
  const auto beer = physics::flowing_beer(in.get<units::Temperature>("temperature"));
  if (!beer) return std::unexpected(beer.error());
  const HoseMaterial material = materials.at(static_cast<std::size_t>(in.choice("material")));
  return TypedLine{
      *beer, physics::bore_prior(material, in.get<units::Length>("bore"), *beer, hose_bore())};
}

physics::Result<physics::LineFlow> flow_through(const Inputs& in, const TypedLine& line,
                                                units::Length length, double factor) {
  physics::Hose hose;
  hose.length = length;
  hose.bore = in.get<units::Length>("bore") * factor;
  hose.rise = in.get<units::Length>("rise");
  physics::Fitting fittings;
  fittings.loss = in.get<units::PressureDifference>("fittings");
  return physics::LineFlow::make({hose, fittings}, line.beer);
}

std::string print_flow(units::VolumeFlow flow, const Printer& printer) {
  if (printer.units.volume == units::VolumeUnit::us_gallon) {
    return printer.number(units::in_us_fluid_ounces_per_second(flow), 1) + " fl oz/s";
  }
  return printer.number(units::in_litres_per_second(flow) * 1000, 0) + " mL/s";
}

units::VolumeFlow wanted_flow(const Inputs& in) {
  return in.get<units::Volume>("glass") / units::seconds(in.number("seconds"));
}

std::string seconds_words(units::Duration d, const Printer& printer) {
  const double s = units::in_seconds(d);
  return printer.number(s, s < 20 ? 1 : 0) + " s";
}

void draw_profile(const physics::LineFlow& line, units::GaugePressure pressure, Answer& a) {
  const auto points = line.profile_pouring(pressure);
  if (!points) return;
  a.chart.title = "Pressure along the line while it pours";
  a.chart.x_title = "From the keg";
  a.chart.y_title = "Pressure";
  for (const physics::ProfilePoint& p : *points) {
    a.chart.points.push_back({p.along, p.pressure, p.pressure, p.pressure});
  }
}

Outcome pour(const Inputs& in, const Printer& printer) {
  const auto line = typed_line(in);
  if (!line) return std::unexpected(problem_of(line.error(), pouring_subjects, in, printer));
  const auto pressure = in.get<units::GaugePressure>("pressure");
  const auto length = in.get<units::Length>("length");
  std::array<units::VolumeFlow, 3> flows{};
  const std::array factors{line->factor.low(), line->factor.value(), line->factor.high()};
  for (std::size_t i = 0; i < factors.size(); ++i) {
    const auto through = flow_through(in, *line, length, factors[i].count());
    if (!through) {
      return std::unexpected(problem_of(through.error(), pouring_subjects, in, printer));
    }
    const auto flow = through->flow_at(pressure);
    if (!flow) return std::unexpected(problem_of(flow.error(), pouring_subjects, in, printer));
    flows[i] = *flow;
  }
  const auto glass = in.get<units::Volume>("glass");
  Answer a;
  const auto told = [](const std::string& likely, const std::string& low, const std::string& high) {
    return likely + " (" + low + " to " + high + ")";
  };
  a.values.push_back(because(
      hose_bore(), in_words("It pours about",
                            told(print_flow(flows[1], printer), print_flow(flows[0], printer),
                                 print_flow(flows[2], printer)),
                            true)));
  a.values.push_back(
      because(hose_bore(), in_words("A glass of " + printer.print(glass) + " takes",
                                    told(seconds_words(glass / flows[1], printer),
                                         seconds_words(glass / flows[2], printer),
                                         seconds_words(glass / flows[0], printer)))));
  a.sentences.emplace_back(
      "A hose’s bore is rarely known better: time a pour, and the line can be calibrated.");
  if (const auto through = flow_through(in, *line, length, factors[1].count())) {
    draw_profile(*through, pressure, a);
  }
  return a;
}

void tell_handbook(const Inputs& in, const Printer& printer, Answer& a) {
  const HoseMaterial material = materials.at(static_cast<std::size_t>(in.choice("material")));
  const auto figure = physics::handbook_restriction(material, in.get<units::Length>("bore"));
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
  const auto line = typed_line(in);
  if (!line) return std::unexpected(problem_of(line.error(), line_flow_subjects, in, printer));
  const auto pressure = in.get<units::GaugePressure>("pressure");
  const std::array factors{line->factor.low(), line->factor.value(), line->factor.high()};
  std::array<units::Length, 3> lengths{};
  for (std::size_t i = 0; i < factors.size(); ++i) {
    const auto through = flow_through(in, *line, units::metres(1), factors[i].count());
    if (!through) {
      return std::unexpected(problem_of(through.error(), line_flow_subjects, in, printer));
    }
    const auto length = through->length_for(0, pressure, wanted_flow(in));
    if (!length) {
      if (length.error().subject == Subject::length) {
        return std::unexpected(impossible(
            "pressure", length.error().value < 0
                            ? "Too little pressure: lift and fittings alone take more."
                            : "No hose of this bore is long enough for so much pressure."));
      }
      return std::unexpected(problem_of(length.error(), line_flow_subjects, in, printer));
    }
    lengths[i] = *length;
  }
  Answer a;
  a.values.push_back(
      because(hose_bore(), between("Hose", lengths[1], lengths[0], lengths[2], true)));
  a.values.push_back(in_words("For a pour of", print_flow(wanted_flow(in), printer)));
  tell_handbook(in, printer, a);
  a.sentences.emplace_back(
      "Cut it long: a hose is shortened in a minute. Then time a pour and calibrate the line.");
  const auto through = flow_through(in, *line, lengths[1], factors[1].count());
  if (through) draw_profile(*through, pressure, a);
  return a;
}

Outcome line_pressure(const Inputs& in, const Printer& printer) {
  const auto line = typed_line(in);
  if (!line) return std::unexpected(problem_of(line.error(), pressing_subjects, in, printer));
  std::array<units::GaugePressure, 3> needed{};
  const std::array factors{line->factor.high(), line->factor.value(), line->factor.low()};
  for (std::size_t i = 0; i < factors.size(); ++i) {
    const auto through =
        flow_through(in, *line, in.get<units::Length>("length"), factors[i].count());
    if (!through) {
      return std::unexpected(problem_of(through.error(), pressing_subjects, in, printer));
    }
    const auto p = through->pressure_for(wanted_flow(in));
    if (!p) return std::unexpected(problem_of(p.error(), pressing_subjects, in, printer));
    needed[i] = *p;
  }
  Answer a;
  a.values.push_back(
      because(hose_bore(), between("On the keg", needed[1], needed[0], needed[2], true)));
  a.values.push_back(in_words("For a pour of", print_flow(wanted_flow(in), printer)));
  a.sentences.emplace_back(
      "The beer’s own CO₂ sets the pressure first: see “What pressure holds this CO₂?”. Where the "
      "two differ, change the hose, or the gas.");
  if (needed[1] > units::gauge_psi(30)) {
    a.cautions.emplace_back("Look at the pressure stamped on the keg before you set this much.");
  }
  const auto through = flow_through(in, *line, in.get<units::Length>("length"), factors[1].count());
  if (through) draw_profile(*through, needed[1], a);
  return a;
}

// The bore it takes, as made; hoses of the material run narrower or wider than sold.
Outcome line_bore(const Inputs& in, const Printer& printer) {
  const auto beer = physics::flowing_beer(in.get<units::Temperature>("temperature"));
  if (!beer) return std::unexpected(problem_of(beer.error(), boring_subjects, in, printer));
  physics::Hose hose;
  hose.length = in.get<units::Length>("length");
  hose.bore = units::inches(0.25);
  hose.rise = in.get<units::Length>("rise");
  const auto line = physics::LineFlow::make(
      {hose, physics::Fitting{in.get<units::PressureDifference>("fittings")}}, *beer);
  if (!line) return std::unexpected(problem_of(line.error(), boring_subjects, in, printer));
  const auto bore = line->bore_for(0, in.get<units::GaugePressure>("pressure"), wanted_flow(in));
  if (!bore) {
    if (bore.error().subject != Subject::bore) {
      return std::unexpected(problem_of(bore.error(), boring_subjects, in, printer));
    }
    return std::unexpected(impossible(
        "pressure", bore.error().value < bore.error().low
                        ? "So much pressure over so short a line takes a bore below any hose’s."
                        : "Too little pressure for this length: no hose is wide enough."));
  }
  const HoseMaterial material = materials.at(static_cast<std::size_t>(in.choice("material")));
  const auto factor = physics::bore_prior(material, *bore, *beer, hose_bore());
  Answer a;
  a.values.push_back(
      because(hose_bore(), in_words("Bore that it takes", printer.print_bore(*bore), true)));
  a.values.push_back(because(
      hose_bore(), in_words("Sold as", printer.print_bore(*bore / factor.high().count()) + " to " +
                                           printer.print_bore(*bore / factor.low().count()))));
  a.sentences.emplace_back("Hose comes in few bores: take the next one, then work out its length.");
  return a;
}

}  // namespace

void add_line_computations(std::vector<Computation>& all) {
  const Field glass = glass_field();
  Field seconds = number_field("seconds", "Poured in, seconds", 9, 1, 300);
  seconds.hint = "About 9 for {} is a usual pour.";
  seconds.hint_values = {units::litres(0.5)};
  const auto run = [] {
    return length_field("length", "Length", units::metres(3), units::metres(0.1),
                        units::metres(200), FieldKind::length);
  };
  std::vector<Field> pouring{
      pressure_field("pressure", "Pressure on the keg", units::gauge_psi(12)), material_field(),
      bore_field(), run(), glass};
  std::vector<Field> balancing{
      pressure_field("pressure", "Pressure on the keg", units::gauge_psi(12)), material_field(),
      bore_field(), glass, seconds};
  std::vector<Field> pressing{run(), material_field(), bore_field(), glass, seconds};
  std::vector<Field> boring{pressure_field("pressure", "Pressure on the keg", units::gauge_psi(12)),
                            material_field(), run(), glass, seconds};
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
