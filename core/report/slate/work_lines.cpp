// SPDX-License-Identifier: GPL-3.0-or-later
//
// Draught lines without a line of the register: how fast one pours, how long it
// must be, and two beers on one regulator.
#include <algorithm>
#include <array>
#include <cmath>

#include "core/physics/draught_line.h"
#include "core/physics/handbook_restriction.h"
#include "core/physics/line_balance.h"
#include "core/physics/shared_regulator.h"
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
constexpr auto sharing_subjects =
    std::to_array<SubjectField>({{Subject::temperature, "temperature"},
                                 {Subject::co2, "high"},
                                 {Subject::co2_above_water, "high"},
                                 {Subject::gauge_pressure, "high"},
                                 {Subject::absolute_pressure, "high"}});

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
  Field rise = length_field("rise", "Faucet above the keg", units::metres(0.8), units::metres(-20),
                            units::metres(20), FieldKind::length);
  rise.hint = "From the middle of the beer in the keg.";
  Field fittings{.key = "fittings",
                 .label = "Coupler, shank and faucet lose",
                 .kind = FieldKind::pressure_difference,
                 .start = units::psi(1),
                 .least = units::psi(0),
                 .greatest = units::psi(20),
                 .detail = true,
                 .hint = "At a usual pour. A flow-control faucet loses more."};
  Field temperature = beer_temperature_field("temperature", "Beer at", units::celsius(4));
  temperature.detail = true;
  return {std::move(rise), std::move(fittings), std::move(temperature)};
}

struct TypedLine {
  physics::FlowingBeer beer;
  Estimate<physics::BoreFactor> factor;
};

physics::Result<TypedLine> typed_line(const Inputs& in) {
  const auto beer = physics::flowing_beer(in.get<units::Temperature>("temperature"));
  if (!beer) return std::unexpected(beer.error());
  const HoseMaterial material = materials.at(static_cast<std::size_t>(in.choice("material")));
  return TypedLine{*beer, physics::bore_prior(material, in.get<units::Length>("bore"), *beer,
                                              {"bore of the hose"})};
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
  a.values.push_back(in_words("It pours about",
                              print_flow(flows[1], printer) + " (" + print_flow(flows[0], printer) +
                                  " to " + print_flow(flows[2], printer) + ")",
                              true));
  a.values.push_back(in_words("A glass of " + printer.print(glass) + " takes",
                              seconds_words(glass / flows[1], printer) + " (" +
                                  seconds_words(glass / flows[2], printer) + " to " +
                                  seconds_words(glass / flows[0], printer) + ")"));
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
  a.values.push_back(between("Hose", lengths[1], lengths[0], lengths[2], true));
  a.values.push_back(in_words("For a pour of", print_flow(wanted_flow(in), printer)));
  tell_handbook(in, printer, a);
  a.sentences.emplace_back(
      "Cut it long: a hose is shortened in a minute. Then time a pour and calibrate the line.");
  const auto through = flow_through(in, *line, lengths[1], factors[1].count());
  if (through) draw_profile(*through, pressure, a);
  return a;
}

physics::SharingKeg sharing(const Inputs& in, std::string_view low, std::string_view high,
                            std::string_view temperature) {
  physics::SharingKeg keg;
  keg.name = std::string(low);
  keg.brimful = units::litres(19.9);
  keg.beer = units::litres(18);
  keg.now = Estimate(in.get<units::Co2Volumes>(low));
  keg.temperature = Estimate(in.get<units::Temperature>(temperature));
  keg.ambient = air_at(in);
  keg.low = in.get<units::Co2Volumes>(low);
  keg.high = in.get<units::Co2Volumes>(high);
  return keg;
}

Outcome one_regulator(const Inputs& in, const Printer& printer) {
  for (const auto& [low, high] : {std::pair{"low", "high"}, std::pair{"low2", "high2"}}) {
    if (in.get<units::Co2Volumes>(low) <= in.get<units::Co2Volumes>(high)) continue;
    Problem p = impossible(high, "The range ends below where it begins.");
    p.value = Value(in.get<units::Co2Volumes>(high));
    p.limit = Value(in.get<units::Co2Volumes>(low));
    return std::unexpected(std::move(p));
  }
  const auto best = physics::best_shared_pressure(
      {sharing(in, "low", "high", "temperature"), sharing(in, "low2", "high2", "temperature2")});
  if (!best) return std::unexpected(problem_of(best.error(), sharing_subjects, in, printer));
  Answer a;
  a.values.push_back(exactly("Set the regulator to", best->pressure, true));
  a.values.push_back(exactly("The first then settles at", best->settles.at(0)));
  a.values.push_back(exactly("The second then settles at", best->settles.at(1)));
  a.sentences.emplace_back(best->suits_all
                               ? "Both stay in their ranges."
                               : "No one pressure suits both: this is the least wrong. A second "
                                 "regulator, or another temperature for one of them, would.");
  return a;
}

Field named(Field f, std::string_view key, std::string_view label) {
  f.key = key;
  f.label = label;
  return f;
}

}  // namespace

void add_line_computations(std::vector<Computation>& all) {
  Field glass{.key = "glass",
              .label = "A glass holds",
              .kind = FieldKind::volume,
              .start = units::litres(0.5),
              .least = units::litres(0.05),
              .greatest = units::litres(3)};
  Field seconds = number_field("seconds", "Poured in, seconds", 9, 1, 300);
  seconds.hint = "About 9 for half a litre is a usual pour.";
  std::vector<Field> pouring{
      pressure_field("pressure", "Pressure on the keg", units::gauge_psi(12)), material_field(),
      bore_field(),
      length_field("length", "Length", units::metres(3), units::metres(0.1), units::metres(200),
                   FieldKind::length),
      glass};
  std::vector<Field> balancing{
      pressure_field("pressure", "Pressure on the keg", units::gauge_psi(12)), material_field(),
      bore_field(), glass, seconds};
  for (auto* fields : {&pouring, &balancing}) {
    for (Field& f : common_line_fields()) fields->push_back(std::move(f));
  }
  all.push_back({"pour", "How fast does a line pour?", "Lines",
                 "draught draft flow rate foam fast slow hose pour seconds glass",
                 std::move(pouring), &laws::line_flow, pour});
  all.push_back({"line_length", "How long must a line be?", "Lines",
                 "balance balanced draught draft hose length restriction foam pour",
                 std::move(balancing), &laws::line_flow, line_length});
  const auto volumes = units::volumes_of_co2;
  all.push_back({"one_regulator",
                 "One regulator for two beers?",
                 "Lines",
                 "shared regulator manifold same pressure two kegs compromise",
                 {co2_field("low", "First beer, from", volumes(2.2)),
                  co2_field("high", "First beer, to", volumes(2.6)),
                  beer_temperature_field("temperature", "First beer at", units::celsius(4)),
                  co2_field("low2", "Second beer, from", volumes(2.5)),
                  co2_field("high2", "Second beer, to", volumes(2.9)),
                  named(beer_temperature_field("temperature", "", units::celsius(4)),
                        "temperature2", "Second beer at"),
                  altitude_field()},
                 &laws::equilibrium,
                 one_regulator});
}

}  // namespace ullage::report::slate
