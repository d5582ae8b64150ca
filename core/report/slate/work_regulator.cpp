// SPDX-License-Identifier: GPL-3.0-or-later
//
// Two beers on one regulator.
#include <array>
#include <utility>

#include "core/physics/shared_regulator.h"
#include "core/report/slate/fields.h"

namespace ullage::report::slate {
namespace {

using physics::Subject;
using units::Estimate;
using units::Printer;

constexpr auto sharing_subjects =
    std::to_array<SubjectField>({{Subject::temperature, "temperature"},
                                 {Subject::co2, "high"},
                                 {Subject::co2_above_water, "high"},
                                 {Subject::gauge_pressure, "high"},
                                 {Subject::absolute_pressure, "high"}});

physics::SharingKeg sharing(const Inputs& in, std::string_view low, std::string_view high,
                            std::string_view temperature, std::string_view now) {
  physics::SharingKeg keg;
  keg.name = std::string(low);
  keg.brimful = units::litres(19.9);
  keg.beer = units::litres(18);
  keg.now = Estimate(in.get<units::Co2Volumes>(now));
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
  const std::array kegs{sharing(in, "low", "high", "temperature", "now"),
                        sharing(in, "low2", "high2", "temperature2", "now2")};
  const auto best = physics::best_shared_pressure({kegs[0], kegs[1]});
  if (!best) return std::unexpected(problem_of(best.error(), sharing_subjects, in, printer));
  Answer a;
  a.values.push_back(exactly("Set the regulator to", best->pressure, true));
  a.values.push_back(exactly("The first then settles at", best->settles.at(0)));
  a.values.push_back(exactly("The second then settles at", best->settles.at(1)));
  const auto after = in.get<units::Duration>("after");
  for (std::size_t i = 0; i < kegs.size(); ++i) {
    const auto pressure = Estimate<units::GaugePressure>(best->pressure);
    const auto then = physics::co2_after(kegs.at(i), pressure, after);
    const auto unsure = physics::co2_estimate_after(kegs.at(i), pressure, after);
    if (!then || !unsure) continue;
    a.values.push_back(
        because(unsure->contributions(),
                between((i == 0 ? "The first after " : "The second after ") + printer.print(after),
                        then->median, then->low, then->high)));
  }
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

void add_regulator_computations(std::vector<Computation>& all) {
  const auto volumes = units::volumes_of_co2;
  all.push_back(
      {"one_regulator",
       "One regulator for two beers?",
       "Lines",
       "shared regulator manifold same pressure two kegs compromise",
       {co2_field("low", "First beer, from", volumes(2.2)),
        co2_field("high", "First beer, to", volumes(2.6)),
        beer_temperature_field("temperature", "First beer at", units::celsius(4)),
        co2_field("low2", "Second beer, from", volumes(2.5)),
        co2_field("high2", "Second beer, to", volumes(2.9)),
        named(beer_temperature_field("temperature", "", units::celsius(4)), "temperature2",
              "Second beer at"),
        duration_field("after", "And after", units::days(14), units::minutes(5), units::days(120)),
        further(co2_field("now", "In the first now", volumes(2.4))),
        further(co2_field("now2", "In the second now", volumes(2.4))), altitude_field()},
       &laws::equilibrium,
       one_regulator});
}

}  // namespace ullage::report::slate
