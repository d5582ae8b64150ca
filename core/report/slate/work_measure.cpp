// SPDX-License-Identifier: GPL-3.0-or-later
//
// What a line holds, and units.
#include <algorithm>
#include <array>
#include <cmath>
#include <utility>

#include "core/physics/line_volume.h"
#include "core/report/slate/fields.h"
#include "core/units/present.h"

namespace ullage::report::slate {
namespace {

using physics::Subject;
using units::Printer;

constexpr auto line_subjects =
    std::to_array<SubjectField>({{Subject::bore, "bore"}, {Subject::length, "length"}});

Outcome line_contents(const Inputs& in, const Printer& printer) {
  const auto bore = in.get<units::Length>("bore");
  const auto volume = physics::line_volume_estimate(
      units::Estimate(bore).with_error({"bore of the hose"},
                                       units::Length(physics::hose_drawn_to * bore)),
      units::Estimate(in.get<units::Length>("length")));
  if (!volume) return std::unexpected(problem_of(volume.error(), line_subjects, in, printer));
  const bool feet = printer.units.length == units::LengthUnit::foot;
  const auto each = physics::line_volume(bore, feet ? units::feet(1) : units::metres(1));
  Answer a;
  a.values.push_back(estimated("It holds", *volume, true));
  if (each && feet) {
    const double ounces = *each / units::us_fluid_ounces(1);
    a.values.push_back(
        in_words("Each foot", printer.number(ounces, ounces < 1 ? 2 : 1) + " fl oz"));
  } else if (each) {
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
    a.values.push_back(in_words(
        std::string(name), in_all_units(present(in.held(key)->value), printer), a.values.empty()));
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
          .start = std::move(start),
          .least = std::move(least),
          .greatest = std::move(greatest),
          .optional = true};
}

}  // namespace

void add_measure_computations(std::vector<Computation>& all) {
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
