// SPDX-License-Identifier: GPL-3.0-or-later
//
// How much gas a keg takes and how many a bottle does; what gas makes of a room's
// air, all at once or leaking; cleaning solution by its label.
#include <algorithm>
#include <array>
#include <cmath>

#include "core/physics/gas_use.h"
#include "core/physics/room_air.h"
#include "core/physics/room_leak.h"
#include "core/report/laws_slate.h"
#include "core/report/slate/fields.h"
#include "core/units/number_text.h"
#include "core/units/paper_text.h"

namespace ullage::report::slate {
namespace {

using physics::Subject;
using units::Estimate;
using units::Printer;

constexpr auto gas_subjects = std::to_array<SubjectField>({{Subject::temperature, "temperature"},
                                                           {Subject::gauge_pressure, "pressure"},
                                                           {Subject::beer_volume, "beer"},
                                                           {Subject::volume, "beer"},
                                                           {Subject::co2, "to"},
                                                           {Subject::mass, "gas"}});
constexpr auto room_subjects = std::to_array<SubjectField>({{Subject::volume, "long"},
                                                            {Subject::temperature, "temperature"},
                                                            {Subject::mass, "gas"},
                                                            {Subject::air_changes, "changes"},
                                                            {Subject::duration, "after"},
                                                            {Subject::co2_fraction, "share"}});
constexpr int leak_points = 60;
constexpr auto shift_limit = units::mole_fraction(0.005);  // over a working day, in most countries
constexpr auto high_limit = units::mole_fraction(0.03);    // for minutes, and a room's size

Field gas_mass_field(std::string_view label, units::Mass start) {
  return {.key = "gas",
          .label = label,
          .kind = FieldKind::mass,
          .start = start,
          .least = units::kilograms(0.1),
          .greatest = units::kilograms(500)};
}

Outcome gas_for_a_keg(const Inputs& in, const Printer& printer) {
  const physics::SupplyState supply{on_dial(in, "pressure"),
                                    Estimate(in.get<units::Temperature>("temperature")),
                                    air_at(in).value()};
  const auto beer = Estimate(in.get<units::Volume>("beer"));
  const units::ErrorSource method{"method of reckoning gas"};
  const auto push = physics::gas_to_push(beer, supply, method);
  if (!push) return std::unexpected(problem_of(push.error(), gas_subjects, in, printer));
  const auto dissolve = physics::gas_to_carbonate(beer, Estimate(in.get<units::Co2Volumes>("from")),
                                                  Estimate(in.get<units::Co2Volumes>("to")),
                                                  units::mole_fraction(1), method);
  if (!dissolve) return std::unexpected(problem_of(dissolve.error(), gas_subjects, in, printer));
  const auto all = units::propagate([](units::Mass a, units::Mass b) { return units::Mass(a + b); },
                                    *push, *dissolve);
  const auto gas = in.get<units::Mass>("gas");
  Answer a;
  a.values.push_back(estimated("A keg takes", all, true));
  a.values.push_back(estimated("To push the beer out", *push));
  a.values.push_back(estimated("To carbonate it", *dissolve));
  if (units::in_grams(all.value()) > 1) {
    const double kegs = units::in_grams(gas) / units::in_grams(all.value());
    a.values.push_back(exactly("Kegs from so much gas", Count{std::floor(kegs)}));
  }
  a.sentences.emplace_back("Purging comes on top, and so does what leaks: weigh the bottle.");
  return a;
}

units::Volume net_volume(const Inputs& in) {
  return units::Volume(in.get<units::Length>("long") * in.get<units::Length>("wide") *
                       in.get<units::Length>("high") *
                       (1 - in.get<units::Fraction>("stock").count()));
}

physics::Room room_of(const Inputs& in) {
  return {net_volume(in), in.get<units::Temperature>("temperature"), air_at(in).value()};
}

constexpr std::string_view never_even =
    "If evenly mixed, which it never is: low spots and pits stand far higher.";
constexpr std::string_view no_all_clear =
    "A caution, never an all-clear. CO₂ is not noticed and kills; nitrogen takes the oxygen’s "
    "place. Air the room, mind the alarm, and keep to your local code.";

Outcome room_air(const Inputs& in, const Printer& printer) {
  const std::array gas{physics::EscapingGas{in.get<units::Mass>("gas"), gas_share(in)}};
  const physics::Room room = room_of(in);
  const auto out = physics::if_all_escapes(gas, room);
  if (!out) return std::unexpected(problem_of(out.error(), room_subjects, in, printer));
  Answer a;
  a.values.push_back(exactly("CO₂ if all escapes, evenly mixed", out->co2, true));
  a.values.push_back(exactly("Oxygen then", out->oxygen));
  const auto needed = physics::room_for(high_limit, gas, room);
  if (needed) {
    a.values.push_back(in_words("A room in which it is 3 %", units::print_room(*needed, printer)));
  }
  a.values.push_back(in_words("This room’s air", units::print_room(room.net_volume, printer)));
  a.sentences.emplace_back(never_even);
  a.cautions.emplace_back(no_all_clear);
  return a;
}

// The curve up to where it has nearly settled, or to the time asked for.
void draw_leak(const physics::EscapingGas& leak, const physics::Room& room, units::Rate changes,
               units::Duration after, Answer& a) {
  a.chart.title = "CO₂ in the room’s air over time, evenly mixed";
  a.chart.x_title = "After";
  a.chart.y_title = "CO₂";
  const double n = units::in_per_second(changes);
  const double nearly_settled = n > 0 ? 3 / n : 0;
  const units::Duration until = units::seconds(
      std::max({units::in_seconds(after), std::min(nearly_settled, 30 * 86400.0), 3600.0}));
  double highest = 0;
  for (int i = 0; i <= leak_points; ++i) {
    const units::Duration t = until * (static_cast<double>(i) / leak_points);
    const auto co2 = physics::steady_release(leak, room, changes, t);
    if (!co2) return;
    highest = std::max(highest, co2->count());
    a.chart.points.push_back({t, *co2, *co2, *co2});
  }
  a.chart.points_label = "CO₂";
  // A line far above would leave the curve flat along the floor.
  constexpr double worth_drawing = 0.2;
  for (const auto& [limit, label] :
       {std::pair{shift_limit, "0.5 %"}, std::pair{high_limit, "3 %"}}) {
    if (highest < worth_drawing * limit.count()) continue;
    a.chart.lines.push_back({label, true, {{units::seconds(0), limit}, {until, limit}}});
  }
  a.chart.marks.push_back({after, "asked"});
}

std::string reached_words(const physics::Result<std::optional<units::Duration>>& when,
                          const Printer& printer) {
  if (!when || !*when) return "never";
  constexpr double beyond_telling = 3650;  // days
  return units::in_days(**when) > beyond_telling ? "after years" : "after " + printer.print(**when);
}

Outcome steady_leak(const Inputs& in, const Printer& printer) {
  const physics::EscapingGas leak{in.get<units::Mass>("gas"), gas_share(in)};
  const physics::Room room = room_of(in);
  const units::Rate changes = units::per_second(in.number("changes") / 3600);
  const auto after = in.get<units::Duration>("after");
  const auto then = physics::steady_release(leak, room, changes, after);
  const auto oxygen = physics::oxygen_by_steady_release(leak, room, changes, after);
  if (!then || !oxygen) {
    return std::unexpected(
        problem_of(!then ? then.error() : oxygen.error(), room_subjects, in, printer));
  }
  Answer a;
  a.values.push_back(exactly("CO₂ after " + printer.print(after) + ", evenly mixed", *then, true));
  const auto settles = physics::steady_release(leak, room, changes);
  a.values.push_back(settles ? exactly("It settles at", *settles)
                             : in_words("It settles at", "nothing: it goes on rising"));
  for (const auto& [limit, name] : {std::pair{shift_limit, "0.5 %, the limit for a working day"},
                                    std::pair{high_limit, "3 %, the limit for minutes"}}) {
    const auto when = physics::steady_release_reaches(limit, leak, room, changes);
    a.values.push_back(in_words(name, reached_words(when, printer)));
  }
  a.values.push_back(exactly("Oxygen then", *oxygen));
  if (const auto needed = physics::air_changes_for(shift_limit, leak, room)) {
    const double an_hour = units::in_per_second(*needed) * 3600;
    a.values.push_back(in_words("Air changes an hour that keep it at 0.5 %",
                                printer.number(an_hour, an_hour < 1 ? 2 : 1)));
  }
  a.values.push_back(in_words("This room’s air", units::print_room(room.net_volume, printer)));
  a.sentences.emplace_back(never_even);
  a.sentences.emplace_back(
      "What fresh air brings itself, 0.04 %, is left out. The limits are those most countries "
      "list; yours may be others.");
  a.cautions.emplace_back(no_all_clear);
  draw_leak(leak, room, changes, after, a);
  return a;
}

// In the order of the choices of "measure"; gallons are US ones.
constexpr int ounces_a_gallon = 2;

std::string cleaner_words(const Inputs& in, const Printer& printer) {
  const auto volume = in.get<units::Volume>("volume");
  const int measure = in.choice("measure");
  const bool by_litre = measure < ounces_a_gallon;
  const double amount =
      in.number("strength") * (by_litre ? units::in_litres(volume) : units::in_us_gallons(volume));
  constexpr std::array measured{" g", " mL", " oz", " fl oz"};
  return units::write_number(amount, {0, amount < 20 ? 1 : 0}, printer.style) +
         measured.at(static_cast<std::size_t>(measure));
}

Outcome cleaning_solution(const Inputs& in, const Printer& printer) {
  Answer a;
  a.values.push_back(in_words("Cleaner", cleaner_words(in, printer), true));
  a.values.push_back(exactly("Into water", in.get<units::Volume>("volume")));
  a.sentences.emplace_back("By the label, whatever it says elsewhere. Water first, cleaner after.");
  a.cautions.emplace_back(
      "Gloves and goggles. Never let an acid meet a chlorine cleaner, and rinse between caustic "
      "and acid.");
  return a;
}

// Length, width, height, and what of it is no air.
std::vector<Field> room_fields() {
  const auto side = [](std::string_view key, std::string_view label, double metres, double most) {
    return Field{.key = key,
                 .label = label,
                 .kind = FieldKind::length,
                 .start = units::metres(metres),
                 .least = units::metres(0.3),
                 .greatest = units::metres(most)};
  };
  Field stock{.key = "stock",
              .label = "Of it kegs and stock",
              .kind = FieldKind::fraction,
              .start = units::fraction(0.1),
              .least = units::fraction(0),
              .greatest = units::fraction(0.9)};
  Field temperature{.key = "temperature",
                    .label = "Room at",
                    .kind = FieldKind::temperature,
                    .start = units::celsius(12),
                    .least = units::celsius(-5),
                    .greatest = units::celsius(45)};
  return {side("long", "The room is long", 5, 100),
          side("wide", "and wide", 3.5, 100),
          side("high", "and high", 2.4, 20),
          further(std::move(stock)),
          further(std::move(temperature)),
          altitude_field(),
          co2_share_field()};
}

std::vector<Field> with_room(std::vector<Field> fields) {
  for (Field& f : room_fields()) fields.push_back(std::move(f));
  return fields;
}

std::vector<Field> leak_fields() {
  Field gas = mass_field("gas", "Gas let go in a day", units::grams(500), units::grams(1),
                         units::kilograms(500));
  gas.hint = "What a hold test or two weighings say a leak loses, or what beer gives off.";
  Field changes = number_field("changes", "Air changes an hour", 0.5, 0, 100);
  changes.hint = "What a fan moves in an hour over the room’s air; shut, take 0.";
  return with_room(
      {std::move(gas), std::move(changes),
       duration_field("after", "And after", units::hours(8), units::minutes(1), units::days(365))});
}

std::vector<Field> solution_fields() {
  Field strength = number_field("strength", "By the label, so much", 20, 0.1, 500);
  strength.us_start = Count{2};
  Field measure = choice_field(
      "measure", "which is",
      {"grams a litre", "millilitres a litre", "ounces a gallon", "fluid ounces a gallon"});
  measure.us_start = Choice{ounces_a_gallon};
  return {{.key = "volume",
           .label = "Solution to make",
           .kind = FieldKind::volume,
           .start = units::litres(10),
           .least = units::litres(0.1),
           .greatest = units::litres(1000),
           .us_start = units::us_gallons(2.5)},
          std::move(strength),
          std::move(measure)};
}

}  // namespace

void add_gas_computations(std::vector<Computation>& all) {
  const auto volumes = units::volumes_of_co2;
  all.push_back(
      {"gas_for_a_keg",
       "How much gas does a keg take?",
       "Gas",
       "co2 bottle cylinder grams use kegs per bottle carbonate push how many",
       {gas_mass_field("Gas in the bottle", units::kilograms(6)),
        beer_volume_field("Beer in a keg", units::litres(18.5)),
        co2_field("from", "CO₂ before", volumes(0.85)), co2_field("to", "CO₂ after", volumes(2.5)),
        pressure_field("pressure", "Served at", units::gauge_psi(12)),
        beer_temperature_field("temperature", "Beer at", units::celsius(4)), altitude_field(),
        dial_error_field()},
       &laws::gas_use,
       gas_for_a_keg});
  all.push_back({"room_air", "What if a gas bottle empties into the room?", "Gas",
                 "room air safety escape ppm percent oxygen co2 cylinder ventilation",
                 with_room({gas_mass_field("Gas in all bottles", units::kilograms(12))}),
                 &laws::room_air, room_air});
  all.push_back(
      {"steady_leak", "What if gas leaks steadily into the room?", "Gas",
       "room air safety steady leak release fermenting ventilation air changes ppm percent co2",
       leak_fields(), &laws::steady_release, steady_leak});
  all.push_back({"cleaning_solution", "How much cleaner for so much water?", "Lines",
                 "cleaning solution caustic acid sanitiser sanitizer strength label mix dose grams",
                 solution_fields(), &laws::cleaning_solution, cleaning_solution});
}

}  // namespace ullage::report::slate
