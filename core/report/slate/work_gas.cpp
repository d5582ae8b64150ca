// SPDX-License-Identifier: GPL-3.0-or-later
//
// How much gas a keg takes, and how many kegs a bottle does.
#include <array>
#include <cmath>

#include "core/physics/gas_use.h"
#include "core/report/laws.h"
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
  // Fewer the more one takes: the ends of the one are those of the other.
  const auto kegs = [&](units::Mass a_keg) {
    return Count{std::floor(units::in_grams(gas) / units::in_grams(a_keg))};
  };
  if (units::in_grams(all.low()) > 1) {
    a.values.push_back(because(
        all.contributions(),
        between("Kegs from so much gas", kegs(all.value()), kegs(all.high()), kegs(all.low()))));
  }
  a.sentences.emplace_back("Purging comes on top, and so does what leaks: weigh the bottle.");
  return a;
}

}  // namespace

void add_gas_computations(std::vector<Computation>& all) {
  const auto volumes = units::volumes_of_co2;
  all.push_back(
      {"gas_for_a_keg",
       "How much gas does a keg take?",
       "Gas",
       "co2 bottle cylinder grams use kegs per bottle carbonate push how many",
       {mass_field("gas", "Gas in the bottle", units::kilograms(6), units::kilograms(0.1),
                   units::kilograms(500)),
        beer_volume_field("Beer in a keg", units::litres(18.5)),
        co2_field("from", "CO₂ before", volumes(0.85)), co2_field("to", "CO₂ after", volumes(2.5)),
        pressure_field("pressure", "Served at", units::gauge_psi(12)),
        beer_temperature_field("temperature", "Beer at", units::celsius(4)), altitude_field(),
        dial_error_field()},
       &laws::gas_use,
       gas_for_a_keg});
}

}  // namespace ullage::report::slate
