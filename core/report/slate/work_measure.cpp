// SPDX-License-Identifier: GPL-3.0-or-later
//
// What is left by weight or by glasses, what a line holds, and units.
#include <algorithm>
#include <array>
#include <cmath>

#include "core/physics/level.h"
#include "core/physics/line_volume.h"
#include "core/report/slate/fields.h"

namespace ullage::report::slate {
namespace {

using physics::Subject;
using units::Estimate;
using units::Printer;

constexpr auto weight_subjects =
    std::to_array<SubjectField>({{Subject::mass, "gross"},
                                 {Subject::gravity, "gravity"},
                                 {Subject::temperature, "temperature"},
                                 {Subject::beer_volume, "gross"},
                                 {Subject::volume, "brimful"},
                                 {Subject::gauge_pressure, "pressure"}});
constexpr auto glass_subjects = std::to_array<SubjectField>(
    {{Subject::glasses, "glasses"}, {Subject::volume, "glass"}, {Subject::beer_volume, "glasses"}});
constexpr auto line_subjects = std::to_array<SubjectField>({{Subject::length, "bore"}});

Outcome left_by_weight(const Inputs& in, const Printer& printer) {
  physics::Weighing w;
  w.gross = Estimate(in.get<units::Mass>("gross"))
                .with_error({"scale: bias"}, in.get<units::Mass>("scale"));
  w.tare = Estimate(in.get<units::Mass>("tare"))
               .with_error({"tare of the keg"}, in.get<units::Mass>("tare_error"));
  w.gravity = in.get<units::SpecificGravity>("gravity");
  w.temperature = in.get<units::Temperature>("temperature");
  w.brimful = in.get<units::Volume>("brimful");
  w.headspace = in.get<units::GaugePressure>("pressure");
  w.ambient = air_at(in).value();
  const auto left = physics::beer_from_weight(w);
  if (!left) return std::unexpected(problem_of(left.error(), weight_subjects, in, printer));
  Answer a;
  a.values.push_back(estimated("Beer in it", *left, true));
  a.values.push_back(in_words("That is", printer.print_glasses(left->value())));
  a.values.push_back(exactly("Of the keg", units::fraction(units::in_litres(left->value()) /
                                                           units::in_litres(w.brimful))));
  return a;
}

Outcome left_by_glasses(const Inputs& in, const Printer& printer) {
  physics::Glasses glasses;
  glasses.count = in.number("glasses");
  glasses.glass = in.get<units::Volume>("glass");
  glasses.fill = {"fill of the glass"};
  glasses.loss = {"loss at the tap"};
  const auto start = Estimate(in.get<units::Volume>("beer"));
  const auto left = physics::beer_after_glasses(start, glasses);
  if (!left) return std::unexpected(problem_of(left.error(), glass_subjects, in, printer));
  const auto poured = physics::poured_by_glasses(glasses);
  Answer a;
  a.values.push_back(estimated("Left", *left, true));
  if (poured) a.values.push_back(estimated("Poured, with loss", *poured));
  a.sentences.emplace_back("Counted glasses drift: weigh it now and then.");
  return a;
}

Outcome line_contents(const Inputs& in, const Printer& printer) {
  const auto bore = in.get<units::Length>("bore");
  const auto volume = physics::line_volume(bore, in.get<units::Length>("length"));
  if (!volume) return std::unexpected(problem_of(volume.error(), line_subjects, in, printer));
  const auto each = physics::line_volume(bore, units::metres(1));
  Answer a;
  a.values.push_back(exactly("It holds", *volume, true));
  if (each) {
    a.values.push_back(
        in_words("Each metre", printer.number(units::in_litres(*each) * 1000, 0) + " mL"));
  }
  a.sentences.emplace_back(
      "Beer lost with each cleaning, and the least that fills it with cleaner.");
  return a;
}

std::string in_all_units(const Value& v, const Printer& printer) {
  static const std::array systems{units::DisplayUnits::metric(), units::DisplayUnits::us(),
                                  units::DisplayUnits::british()};
  std::vector<std::string> seen;
  const auto add = [&](units::DisplayUnits u) {
    std::string text = print(v, Printer{u, printer.style});
    if (std::find(seen.begin(), seen.end(), text) == seen.end()) seen.push_back(std::move(text));
  };
  for (const units::DisplayUnits& u : systems) add(u);
  units::DisplayUnits others = systems[0];
  others.pressure = units::PressureUnit::kilopascal;
  others.volume = units::VolumeUnit::imperial_gallon;
  others.co2 = units::Co2Unit::volumes;
  add(others);
  std::string out;
  for (const std::string& text : seen) out += (out.empty() ? "" : " = ") + text;
  return out;
}

Outcome convert(const Inputs& in, const Printer& printer) {
  constexpr std::array<std::pair<std::string_view, std::string_view>, 6> parts{
      {{"pressure", "Pressure"},
       {"temperature", "Temperature"},
       {"volume", "Volume"},
       {"mass", "Weight"},
       {"length", "Length"},
       {"co2", "CO₂"}}};
  Answer a;
  for (const auto& [key, name] : parts) {
    if (!in.has(key)) continue;
    a.values.push_back(
        in_words(std::string(name), in_all_units(*in.held(key)->value, printer), a.values.empty()));
  }
  if (a.values.empty()) {
    return std::unexpected(impossible("", "Type one of them, in any unit: 30 psi, 38F, 5 gal."));
  }
  return a;
}

Field free_field(std::string_view key, std::string_view label, FieldKind kind,
                 std::optional<Value> start, Value least, Value greatest) {
  return {.key = key,
          .label = label,
          .kind = kind,
          .start = start,
          .least = least,
          .greatest = greatest,
          .optional = true};
}

std::vector<Field> weight_fields() {
  Field headspace = pressure_field("pressure", "Gas in it at", units::gauge_psi(12));
  headspace.detail = true;
  Field gravity{.key = "gravity",
                .label = "The beer’s gravity now",
                .kind = FieldKind::gravity,
                .start = units::specific_gravity(1.011),
                .least = units::specific_gravity(0.985),
                .greatest = units::specific_gravity(1.15),
                .detail = true};
  Field temperature = beer_temperature_field("temperature", "Beer at", units::celsius(4));
  temperature.detail = true;
  using units::kilograms;
  return {mass_field("gross", "On the scale", kilograms(16), kilograms(0.5), kilograms(300)),
          mass_field("tare", "The empty keg", kilograms(4.3), kilograms(0.5), kilograms(90)),
          brimful_field(),
          further(mass_field("scale", "The scale may be off by", kilograms(0.3), kilograms(0),
                             kilograms(10))),
          further(mass_field("tare_error", "The empty weight may be off by", kilograms(0.5),
                             kilograms(0), kilograms(10))),
          std::move(gravity),
          std::move(temperature),
          std::move(headspace),
          altitude_field()};
}

}  // namespace

void add_measure_computations(std::vector<Computation>& all) {
  all.push_back({"left_by_weight", "How much beer by weight?", "Level",
                 "weigh scale left remaining level keg tare litres", weight_fields(), &laws::level,
                 left_by_weight});
  all.push_back({"left_by_glasses",
                 "How much is left after so many glasses?",
                 "Level",
                 "poured pints glasses left remaining level count",
                 {beer_volume_field("Beer at the start", units::litres(18.5)),
                  number_field("glasses", "Glasses poured", 12, 0, 5000),
                  {.key = "glass",
                   .label = "A glass holds",
                   .kind = FieldKind::volume,
                   .start = units::litres(0.5),
                   .least = units::litres(0.05),
                   .greatest = units::litres(3)}},
                 &laws::level,
                 left_by_glasses});
  all.push_back({"line_contents",
                 "How much does a line hold?",
                 "Lines",
                 "line hose volume bore length cleaning solution contents beer lost",
                 {{.key = "bore",
                   .label = "Bore",
                   .kind = FieldKind::bore,
                   .start = units::inches(0.1875),
                   .least = units::millimetres(1),
                   .greatest = units::millimetres(50)},
                  {.key = "length",
                   .label = "Length",
                   .kind = FieldKind::length,
                   .start = units::metres(3),
                   .least = units::metres(0),
                   .greatest = units::metres(500)}},
                 &laws::line_contents,
                 line_contents});
  all.push_back(
      {"convert",
       "What is that in other units?",
       "Units",
       "convert conversion psi bar kpa celsius fahrenheit gallon litre pound kilogram volumes "
       "grams",
       {free_field("pressure", "Pressure", FieldKind::gauge_pressure, Value(units::gauge_psi(30)),
                   units::gauge_psi(-14), units::gauge_bar(400)),
        free_field("temperature", "Temperature", FieldKind::temperature, std::nullopt,
                   units::celsius(-100), units::celsius(400)),
        free_field("volume", "Volume", FieldKind::volume, std::nullopt, units::litres(0),
                   units::litres(1e6)),
        free_field("mass", "Weight", FieldKind::mass, std::nullopt, units::kilograms(0),
                   units::kilograms(1e5)),
        free_field("length", "Length", FieldKind::length, std::nullopt, units::metres(-9000),
                   units::metres(9000)),
        free_field("co2", "CO₂", FieldKind::co2, std::nullopt, units::volumes_of_co2(0),
                   units::volumes_of_co2(30))},
       &laws::unit_conversion,
       convert});
}

}  // namespace ullage::report::slate
