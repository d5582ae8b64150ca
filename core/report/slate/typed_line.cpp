// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/report/slate/typed_line.h"

#include <array>

namespace ullage::report::slate {
namespace {

using physics::HoseMaterial;
using physics::Subject;
using units::Estimate;
using units::Printer;

const std::array hose_materials{HoseMaterial::vinyl, HoseMaterial::barrier,
                                HoseMaterial::polyethylene, HoseMaterial::stainless,
                                HoseMaterial::other};

}  // namespace

Field material_field() {
  return choice_field("material", "Hose",
                      {"vinyl", "barrier", "polyethylene", "stainless", "other"});
}

Field length_like_field(std::string_view key, std::string_view label, units::Length start,
                        units::Length least, units::Length greatest, FieldKind kind) {
  return {.key = key,
          .label = label,
          .kind = kind,
          .start = start,
          .least = least,
          .greatest = greatest};
}

Field bore_field() {
  return length_like_field("bore", "Bore", units::inches(0.1875), units::millimetres(2),
                           units::millimetres(25), FieldKind::bore);
}

Field run_field() {
  return length_like_field("length", "Length", units::metres(3), units::metres(0.1),
                           units::metres(200), FieldKind::length);
}

Field seconds_field() {
  Field seconds = number_field("seconds", "Poured in, seconds", 9, 1, 300);
  seconds.hint = "About 9 for {} is a usual pour.";
  seconds.hint_values = {units::litres(0.5)};
  return seconds;
}

std::vector<Field> common_line_fields() {
  Field rise = length_like_field("rise", "Tap above the keg", units::metres(0.8),
                                 units::metres(-20), units::metres(20), FieldKind::length);
  rise.hint = "From the middle of the beer in the keg.";
  Field fittings{.key = "fittings",
                 .label = "Coupler, shank and tap lose",
                 .kind = FieldKind::pressure_difference,
                 .start = units::psi(1),
                 .least = units::psi(0),
                 .greatest = units::psi(20),
                 .detail = true,
                 .hint = "At a usual pour. A flow-control tap loses more."};
  return {std::move(rise), std::move(fittings),
          further(beer_temperature_field("temperature", "Beer at", units::celsius(4))),
          dial_error_field(), thermometer_error_field()};
}

HoseMaterial typed_material(const Inputs& in) {
  return hose_materials.at(static_cast<std::size_t>(in.choice("material")));
}

physics::LineParts typed_parts(const Inputs& in, units::Length length) {
  physics::Hose hose;
  hose.length = length;
  hose.bore = in.get<units::Length>("bore");
  hose.rise = in.get<units::Length>("rise");
  physics::Fitting fittings;
  fittings.loss = in.get<units::PressureDifference>("fittings");
  return {hose, fittings};
}

physics::Result<LineKnown> typed_line(const Inputs& in, physics::LineParts parts,
                                      units::GaugePressure pressure) {
  const auto beer = physics::flowing_beer(in.get<units::Temperature>("temperature"));
  if (!beer) return std::unexpected(beer.error());
  units::Length bore = units::metres(0);
  for (const physics::LinePart& part : parts) {
    const auto* hose = get_if<physics::Hose>(&part);
    if (hose != nullptr && bore == units::metres(0)) bore = hose->bore;
  }
  return LineKnown{
      std::move(parts), physics::bore_prior(typed_material(in), bore, *beer, {"bore of the hose"}),
      Estimate(pressure).with_error({"dial: bias"}, in.get<units::PressureDifference>("dial")),
      on_thermometer(in, "temperature"),
      physics::ordinary_viscosity_factor({"the beer’s viscosity"})};
}

physics::Result<LineAnswer<units::VolumeFlow>> pour_of(const LineKnown& known) {
  return over_line_errors<units::VolumeFlow>(
      known,
      [](const physics::LineFlow& line, units::GaugePressure p, physics::BoreFactor) {
        return line.flow_at(p);
      },
      [](const physics::RangeError& e) -> std::optional<units::VolumeFlow> {
        if (e.subject != Subject::gauge_pressure || !(e.value <= e.high)) return std::nullopt;
        return units::VolumeFlow::from_value(0);
      });
}

units::VolumeFlow wanted_flow(const Inputs& in) {
  return in.get<units::Volume>("glass") / units::seconds(in.number("seconds"));
}

std::string print_flow(units::VolumeFlow flow, const Printer& printer) {
  if (printer.units.volume == units::VolumeUnit::us_gallon) {
    return printer.number(units::in_us_fluid_ounces_per_second(flow), 1) + " fl oz/s";
  }
  return printer.number(units::in_litres_per_second(flow) * 1000, 0) + " mL/s";
}

std::string print_flow(const LineAnswer<units::VolumeFlow>& flow, const Printer& printer) {
  std::string words = print_flow(flow.likely, printer);
  if (!flow.low) return words;
  words += " (" + print_flow(*flow.low, printer) + " to ";
  return words + (flow.high ? print_flow(*flow.high, printer) : std::string("more")) + ")";
}

std::string seconds_words(units::Duration d, const Printer& printer) {
  const double s = units::in_seconds(d);
  return printer.number(s, s < 20 ? 1 : 0) + " s";
}

std::string glass_words(const LineAnswer<units::VolumeFlow>& flow, units::Volume glass,
                        const Printer& printer) {
  std::string words = seconds_words(glass / flow.likely, printer);
  if (!flow.low || !flow.high) return words;
  words += " (" + seconds_words(glass / *flow.high, printer) + " to ";
  return words +
         (flow.low->value() > 0 ? seconds_words(glass / *flow.low, printer)
                                : std::string("never")) +
         ")";
}

void tell_pour(const LineAnswer<units::VolumeFlow>& flow, units::Volume glass,
               const Printer& printer, Answer& a) {
  a.values.push_back(in_words("It pours about", print_flow(flow, printer), true));
  a.values.push_back(
      in_words("A glass of " + printer.print(glass) + " takes", glass_words(flow, glass, printer)));
  for (AnswerValue& v : a.values) v = because(flow.errors, std::move(v));
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

void draw_profile(const LineKnown& known, units::GaugePressure pressure, Answer& a) {
  const auto beer = physics::flowing_beer(known.temperature.value());
  if (!beer) return;
  const auto line =
      physics::LineFlow::make(physics::with_bores(known.parts, known.bores.value()), *beer);
  if (line) draw_profile(*line, pressure, a);
}

}  // namespace ullage::report::slate
