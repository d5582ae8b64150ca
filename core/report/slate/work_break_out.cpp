// SPDX-License-Identifier: GPL-3.0-or-later
//
// Whether beer that stands in a line keeps its CO2: judged at rest, at the warmest
// and highest place.
#include <algorithm>
#include <array>
#include <cmath>

#include "core/physics/break_out.h"
#include "core/report/laws_slate.h"
#include "core/report/slate/fields.h"

namespace ullage::report::slate {
namespace {

using physics::Subject;
using units::Estimate;
using units::Printer;

constexpr auto break_out_subjects =
    std::to_array<SubjectField>({{Subject::temperature, "place"},
                                 {Subject::co2, "co2"},
                                 {Subject::co2_above_water, "co2"},
                                 {Subject::absolute_pressure, "co2"},
                                 {Subject::gauge_pressure, "pressure"},
                                 {Subject::rise, "rise"},
                                 {Subject::length, "rise"}});

// A hose up to that place: only its height counts at rest.
physics::Result<physics::LineFlow> standing_line(const Inputs& in) {
  const auto beer = physics::flowing_beer(in.get<units::Temperature>("temperature"));
  if (!beer) return std::unexpected(beer.error());
  physics::Hose hose;
  hose.rise = in.get<units::Length>("rise");
  hose.length = units::metres(std::abs(units::in_metres(hose.rise)) + 1);
  hose.bore = units::inches(0.25);
  return physics::LineFlow::make({hose}, *beer);
}

void tell_standing(const physics::StandingPlace& place, const Inputs& in, const Printer& printer,
                   Answer& a) {
  const auto words = [&]() -> std::string {
    switch (place.verdict) {
      case physics::AtRest::stays:
        return "It keeps its CO₂";
      case physics::AtRest::breaks_out:
        return "It breaks out";
      case physics::AtRest::cant_tell:
        break;
    }
    return "Can’t tell";
  };
  a.values.push_back(
      because(place.margin.contributions(), in_words("Standing there, the beer", words(), true)));
  a.values.push_back(
      estimated("Pressure on it there",
                Estimate(place.pressure)
                    .with_error({"dial: bias"}, in.get<units::PressureDifference>("dial"))));
  a.values.push_back(estimated("Pressure that keeps its CO₂ there", place.needed));
  a.values.push_back(estimated("To spare", place.margin));
  if (place.verdict == physics::AtRest::breaks_out) {
    a.sentences.push_back(
        "Gas leaves it while nobody pours, and the first glass foams. Cool that "
        "place, or put more pressure on with a blend: at " +
        printer.print(in.get<units::Temperature>("temperature")) +
        " more CO₂ would over-carbonate it.");
  } else if (place.verdict == physics::AtRest::cant_tell) {
    a.sentences.emplace_back("The margin lies within the errors: watch the first glass.");
  }
  a.sentences.emplace_back(
      "Judged at rest. While it pours every line ends at the air’s own pressure, and most pour "
      "well.");
}

Outcome break_out(const Inputs& in, const Printer& printer) {
  const auto line = standing_line(in);
  if (!line) return std::unexpected(problem_of(line.error(), break_out_subjects, in, printer));
  const physics::CarbonatedBeer beer{
      Estimate(in.get<units::Co2Volumes>("co2"))
          .with({"CO₂ in the beer"}, in.get<units::Co2Volumes>("co2_error").count()),
      air_at(in),
      {"equilibrium equation"}};
  const auto places = physics::break_out_at_rest(*line, on_dial(in, "pressure"),
                                                 {on_thermometer(in, "place")}, beer);
  if (!places) return std::unexpected(problem_of(places.error(), break_out_subjects, in, printer));
  Answer a;
  tell_standing(places->front(), in, printer, a);
  return a;
}

}  // namespace

void add_break_out_computations(std::vector<Computation>& all) {
  Field place = place_temperature_field(units::celsius(8));
  place.label = "Warmest place of the line";
  Field rise{.key = "rise",
             .label = "That place above the keg",
             .kind = FieldKind::length,
             .start = units::metres(1),
             .least = units::metres(-20),
             .greatest = units::metres(20)};
  rise.hint = "From the middle of the beer in the keg.";
  all.push_back({"break_out",
                 "Does beer foam in a warm line?",
                 "Lines",
                 "break out breakout foam foamy first glass tower warm line rest bubbles",
                 {pressure_field("pressure", "Pressure on the keg", units::gauge_psi(12)),
                  co2_field("co2", "CO₂ in the beer", units::volumes_of_co2(2.5)),
                  beer_temperature_field("temperature", "Beer in the keg at", units::celsius(4)),
                  std::move(place), std::move(rise),
                  co2_error_field("co2_error", "The beer’s CO₂ may be off by"), dial_error_field(),
                  thermometer_error_field(), altitude_field()},
                 &laws::break_out,
                 break_out});
}

}  // namespace ullage::report::slate
