// SPDX-License-Identifier: GPL-3.0-or-later
//
// How much gas a keg takes and how many a bottle does; what escaping gas makes of
// a room's air; cleaning solution by its label.
#include <array>
#include <cmath>

#include "core/physics/gas_use.h"
#include "core/physics/room_air.h"
#include "core/report/slate/fields.h"

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
constexpr auto room_subjects = std::to_array<SubjectField>({{Subject::volume, "room"},
                                                            {Subject::temperature, "temperature"},
                                                            {Subject::mass, "gas"},
                                                            {Subject::co2_fraction, "share"}});

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

Outcome room_air(const Inputs& in, const Printer& printer) {
  const std::array gas{physics::EscapingGas{in.get<units::Mass>("gas"), gas_share(in)}};
  const physics::Room room{in.get<units::Volume>("room"), in.get<units::Temperature>("temperature"),
                           air_at(in).value()};
  const auto out = physics::if_all_escapes(gas, room);
  if (!out) return std::unexpected(problem_of(out.error(), room_subjects, in, printer));
  Answer a;
  a.values.push_back(exactly("CO₂ if all escapes, evenly mixed", out->co2, true));
  a.values.push_back(exactly("Oxygen then", out->oxygen));
  const auto needed = physics::room_for(units::mole_fraction(0.03), gas, room);
  if (needed) a.values.push_back(exactly("A room in which it is 3 %", *needed));
  a.sentences.emplace_back(
      "If evenly mixed, which it never is: low spots and pits stand far higher.");
  a.cautions.emplace_back(
      "A caution, never an all-clear. CO₂ is not noticed and kills; nitrogen takes the oxygen’s "
      "place. Air the room, mind the alarm, and keep to your local code.");
  return a;
}

Outcome cleaning_solution(const Inputs& in, const Printer& printer) {
  const auto volume = in.get<units::Volume>("volume");
  const double per_litre = in.number("strength");
  Answer a;
  a.values.push_back(
      in_words("Cleaner",
               printer.number(per_litre * units::in_litres(volume), per_litre < 2 ? 1 : 0) +
                   (in.choice("measure") == 0 ? " g" : " mL"),
               true));
  a.values.push_back(exactly("Into water", volume));
  a.sentences.emplace_back("By the label, whatever it says elsewhere. Water first, cleaner after.");
  a.cautions.emplace_back(
      "Gloves and goggles. Never let an acid meet a chlorine cleaner, and rinse between caustic "
      "and acid.");
  return a;
}

Field room_field() {
  return {.key = "room",
          .label = "The room’s air",
          .kind = FieldKind::volume,
          .start = units::cubic_metres(40),
          .least = units::cubic_metres(0.1),
          .greatest = units::cubic_metres(50000),
          .hint =
              "Length times width times height, less what stands in it; 1000 L to the cubic "
              "metre."};
}

}  // namespace

void add_gas_computations(std::vector<Computation>& all) {
  Field share = co2_share_field();
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
  all.push_back({"room_air",
                 "What if a gas bottle empties into the room?",
                 "Gas",
                 "room air safety leak escape ppm percent oxygen co2 cylinder ventilation",
                 {gas_mass_field("Gas in all bottles", units::kilograms(12)),
                  room_field(),
                  {.key = "temperature",
                   .label = "Room at",
                   .kind = FieldKind::temperature,
                   .start = units::celsius(12),
                   .least = units::celsius(-5),
                   .greatest = units::celsius(45),
                   .detail = true},
                  altitude_field(),
                  std::move(share)},
                 &laws::room_air,
                 room_air});
  all.push_back({"cleaning_solution",
                 "How much cleaner for so much water?",
                 "Lines",
                 "cleaning solution caustic acid sanitiser sanitizer strength label mix dose grams",
                 {{.key = "volume",
                   .label = "Solution to make",
                   .kind = FieldKind::volume,
                   .start = units::litres(10),
                   .least = units::litres(0.1),
                   .greatest = units::litres(1000)},
                  number_field("strength", "By the label, for each litre", 20, 0.1, 500),
                  {.key = "measure",
                   .label = "Measured in",
                   .kind = FieldKind::choice,
                   .start = Choice{0},
                   .least = Choice{0},
                   .greatest = Choice{1},
                   .choices = {"grams", "millilitres"}}},
                 &laws::cleaning_solution,
                 cleaning_solution});
}

}  // namespace ullage::report::slate
