// SPDX-License-Identifier: GPL-3.0-or-later
//
// Cooling, gravity, alcohol.
#include <algorithm>
#include <array>

#include "core/physics/density.h"
#include "core/physics/gravity.h"
#include "core/physics/keg_cooling.h"
#include "core/report/slate/fields.h"
#include "core/units/gravity_scale.h"

namespace ullage::report::slate {
namespace {

using physics::Subject;
using units::Estimate;
using units::Printer;

constexpr int cooling_points = 60;

constexpr auto cooling_subjects = std::to_array<SubjectField>(
    {{Subject::volume, "brimful"}, {Subject::temperature, "temperature"}});
constexpr auto gravity_subjects = std::to_array<SubjectField>({{Subject::gravity, "original"},
                                                               {Subject::final_gravity, "final"},
                                                               {Subject::extract, "original"}});

physics::Result<units::Temperature> beer_after(const Inputs& in, units::Duration tau,
                                               units::Duration after) {
  const std::array places{
      physics::PlaceTemperature{units::seconds(0), in.get<units::Temperature>("place")}};
  return physics::keg_temperature(in.get<units::Temperature>("temperature"), places, tau, after);
}

void draw_cooling(const Inputs& in, const physics::LogEstimate<units::Duration>& tau,
                  units::Duration until, Answer& a) {
  a.chart.title = "Beer over time";
  a.chart.x_title = "After";
  a.chart.y_title = "Beer";
  for (int i = 0; i <= cooling_points; ++i) {
    const units::Duration t = until * (static_cast<double>(i) / cooling_points);
    const auto fast = beer_after(in, tau.low(), t);
    const auto likely = beer_after(in, tau.median(), t);
    const auto slow = beer_after(in, tau.high(), t);
    if (!fast || !likely || !slow) return;
    a.chart.points.push_back({t, std::min(*fast, *slow), *likely, std::max(*fast, *slow)});
  }
}

Outcome cooling(const Inputs& in, const Printer& printer) {
  const auto tau =
      physics::cooling_time_constant(in.get<units::Volume>("brimful"), {"this keg: cooling rate"});
  if (!tau) return std::unexpected(problem_of(tau.error(), cooling_subjects, in, printer));
  const auto window = physics::time_to_temperature(in.get<units::Temperature>("temperature"),
                                                   in.get<units::Temperature>("place"),
                                                   in.get<units::Temperature>("target"), *tau);
  if (!window) return std::unexpected(problem_of(window.error(), cooling_subjects, in, printer));
  if (!*window) {
    return std::unexpected(impossible(
        "target", "It never comes to this: it lies outside of where beer and air stand."));
  }
  Answer a;
  const physics::CoolingWindow& w = **window;
  a.values.push_back(
      because(tau->source(), between("There after", w.likely, w.earliest, w.latest, true)));
  a.sentences.emplace_back(
      "In still air, the keg standing free. Moving air or a water bath is faster; kegs packed "
      "together are slower.");
  a.chart.marks.push_back({w.likely, "there"});
  draw_cooling(in, *tau, std::max(units::Duration(w.latest * 1.2), units::hours(6)), a);
  return a;
}

Outcome alcohol(const Inputs& in, const Printer& printer) {
  const auto original = in.get<units::SpecificGravity>("original");
  const auto final_gravity = in.get<units::SpecificGravity>("final");
  const auto f = physics::fermented(original, final_gravity);
  if (!f) return std::unexpected(problem_of(f.error(), gravity_subjects, in, printer));
  const double off = in.number("hydrometer") / 1000;
  const auto first = Estimate(original).with({"hydrometer: reading at the start"}, off);
  const auto last = Estimate(final_gravity).with({"hydrometer: reading at the end"}, off);
  const auto abv = physics::alcohol(first, last, {"alcohol formula"});
  const auto attenuation = units::try_propagate(
      [](units::SpecificGravity o, units::SpecificGravity e) -> physics::Result<units::Fraction> {
        const auto of = physics::fermented(o, e);
        if (!of) return std::unexpected(of.error());
        return of->apparent_attenuation;
      },
      first, last);
  const auto extract = units::try_propagate(
      [](units::SpecificGravity o, units::SpecificGravity e) -> physics::Result<units::Plato> {
        const auto of = physics::fermented(o, e);
        if (!of) return std::unexpected(of.error());
        return of->real_extract;
      },
      first, last);
  Answer a;
  a.values.push_back(abv ? estimated("Alcohol", *abv, true) : exactly("Alcohol", f->abv, true));
  a.values.push_back(attenuation ? estimated("Apparent attenuation", *attenuation)
                                 : exactly("Apparent attenuation", f->apparent_attenuation));
  if (extract && extract->half_width() > 0) {
    a.values.push_back(because(
        extract->contributions(),
        in_words("Real extract", units::value_with_error(extract->value().count(),
                                                         extract->half_width(), printer.style) +
                                     " °P")));
  } else {
    a.values.push_back(
        in_words("Real extract", printer.number(f->real_extract.count(), 1) + " °P"));
  }
  if (f->abv_by_factor) {
    a.sentences.push_back("A duty office’s factor table says " + printer.print(*f->abv_by_factor) +
                          ".");
  }
  a.sentences.emplace_back("For a label the law of your country says how it is to be found.");
  return a;
}

Outcome gravity_scales(const Inputs& in, const Printer& printer) {
  const auto sg = in.get<units::SpecificGravity>("gravity");
  const auto plato = units::to_plato(sg);
  if (!plato) return std::unexpected(impossible("gravity", "There is no Plato for this gravity."));
  Answer a;
  a.values.push_back(in_words("Extract", printer.number(plato->count(), 2) + " °P", true));
  a.values.push_back(in_words("Specific gravity", printer.number(sg.count(), 4)));
  a.values.push_back(in_words("Gravity points", printer.number((sg.count() - 1) * 1000, 1)));
  if (const auto density = physics::beer_density(sg)) {
    const double grams_a_litre = units::in_kilograms_per_cubic_metre(*density);
    const bool pounds = printer.units.mass == units::MassUnit::pound;
    const double pounds_a_gallon =
        units::in_pounds(units::grams(grams_a_litre)) / units::in_us_gallons(units::litres(1));
    a.values.push_back(in_words("Density", pounds ? printer.number(pounds_a_gallon, 2) + " lb/gal"
                                                  : printer.number(grams_a_litre, 0) + " g/L"));
  }
  a.sentences.push_back("All at " + printer.print(units::celsius(20)) +
                        ". Type it either way, as 1.048 or as 12 P.");
  return a;
}

Field gravity_field(std::string_view key, std::string_view label, double start,
                    physics::Range range) {
  return {.key = key,
          .label = label,
          .kind = FieldKind::gravity,
          .start = units::specific_gravity(start),
          .least = units::specific_gravity(range.low),
          .greatest = units::specific_gravity(range.high)};
}

}  // namespace

void add_beer_computations(std::vector<Computation>& all) {
  Field target = beer_temperature_field("target", "Wanted", units::celsius(4));
  all.push_back({"cooling",
                 "How long to cool a keg?",
                 "Beer",
                 "cool warm chill temperature fridge cold room time hours lag",
                 {beer_temperature_field("temperature", "Beer now at", units::celsius(20)),
                  place_temperature_field(units::celsius(2)), std::move(target), brimful_field()},
                 &laws::cooling,
                 cooling});
  Field hydrometer = number_field("hydrometer", "The hydrometer may be off by, points", 1, 0, 20);
  hydrometer.detail = true;
  all.push_back(
      {"alcohol",
       "How much alcohol?",
       "Beer",
       "abv gravity og fg original final attenuation strength extract alcohol",
       {gravity_field("original", "Original gravity", 1.048, physics::original_gravity_range),
        gravity_field("final", "Final gravity", 1.011, physics::final_gravity_range),
        std::move(hydrometer)},
       &laws::gravity,
       alcohol});
  all.push_back({"gravity_scales",
                 "Plato or specific gravity?",
                 "Beer",
                 "convert degrees plato sg extract points gravity",
                 {gravity_field("gravity", "Gravity", 1.048, {0.985, 1.17})},
                 &laws::gravity,
                 gravity_scales});
}

}  // namespace ullage::report::slate
