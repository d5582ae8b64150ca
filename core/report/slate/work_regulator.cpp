// SPDX-License-Identifier: GPL-3.0-or-later
//
// Several beers on one regulator: the pressure that suits them best, and how few
// regulators would suit all.
#include <array>
#include <utility>
#include <vector>

#include "core/physics/equilibrium.h"
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

// The fields of one beer, and what it is called.
struct SharingKeys {
  std::string_view low, high, temperature, now, name;
};
constexpr std::array<SharingKeys, 4> sharing_beers{
    {{"low", "high", "temperature", "now", "first"},
     {"low2", "high2", "temperature2", "now2", "second"},
     {"low3", "high3", "temperature3", "now3", "third"},
     {"low4", "high4", "temperature4", "now4", "fourth"}}};

physics::SharingKeg sharing(const Inputs& in, const SharingKeys& keys) {
  physics::SharingKeg keg;
  keg.name = std::string(keys.name);
  keg.brimful = units::litres(19.9);
  keg.beer = units::litres(18);
  keg.now = Estimate(in.get<units::Co2Volumes>(keys.now));
  keg.temperature = on_thermometer(in, keys.temperature);
  keg.ambient = air_at(in);
  keg.low = in.get<units::Co2Volumes>(keys.low);
  keg.high = in.get<units::Co2Volumes>(keys.high);
  return keg;
}

struct Sharing {
  std::vector<physics::SharingKeg> kegs;
  std::vector<std::string> names;
};

// A beer that is begun must be whole, and its range the right way round.
std::expected<Sharing, Problem> beers_in(const Inputs& in) {
  Sharing out;
  for (const SharingKeys& keys : sharing_beers) {
    if (!in.has(keys.low) && !in.has(keys.high) && !in.has(keys.temperature)) continue;
    for (const std::string_view key : {keys.low, keys.high, keys.temperature}) {
      if (in.has(key)) continue;
      Problem p = impossible(key, "A beer takes its range and its temperature.");
      p.fault = Fault::missing;
      return std::unexpected(std::move(p));
    }
    const auto low = in.get<units::Co2Volumes>(keys.low);
    if (low > in.get<units::Co2Volumes>(keys.high)) {
      return std::unexpected(beyond(keys.high, in, low, "The range ends below where it begins."));
    }
    out.kegs.push_back(sharing(in, keys));
    out.names.emplace_back(keys.name);
  }
  return out;
}

// Where each ends up, by a dial and a thermometer that may be off.
physics::Result<std::vector<AnswerValue>> settling(const Sharing& sharing,
                                                   const Estimate<units::GaugePressure>& set) {
  std::vector<AnswerValue> out;
  for (std::size_t i = 0; i < sharing.kegs.size(); ++i) {
    const physics::SharingKeg& keg = sharing.kegs[i];
    const auto settles = physics::equilibrium_co2_estimate(set, keg.temperature, keg.ambient,
                                                           {"equilibrium equation"}, keg.co2);
    if (!settles) return std::unexpected(settles.error());
    out.push_back(estimated("The " + sharing.names[i] + " then settles at", *settles));
  }
  return out;
}

// "12 psi for the first and the third; 15 psi for the second"
std::string regulators_words(const std::vector<physics::RegulatorGroup>& groups,
                             const Sharing& sharing, const Printer& printer) {
  std::string words;
  for (const physics::RegulatorGroup& group : groups) {
    words += (words.empty() ? "" : "; ") + printer.print(group.pressure) + " for";
    for (std::size_t i = 0; i < group.kegs.size(); ++i) {
      words += (i == 0 ? " the " : " and the ") + sharing.names[group.kegs[i]];
    }
  }
  return words;
}

Outcome one_regulator(const Inputs& in, const Printer& printer) {
  const auto sharing = beers_in(in);
  if (!sharing) return std::unexpected(sharing.error());
  const auto refused = [&](const physics::RangeError& e) {
    return std::unexpected(problem_of(e, sharing_subjects, in, printer));
  };
  const auto best = physics::best_shared_pressure(sharing->kegs);
  if (!best) return refused(best.error());
  const auto set = Estimate(best->pressure)
                       .with_error({"dial: bias"}, in.get<units::PressureDifference>("dial"));
  const auto settles = settling(*sharing, set);
  if (!settles) return refused(settles.error());
  Answer a;
  a.values.push_back(exactly("Set the regulator to", best->pressure, true));
  a.values.insert(a.values.end(), settles->begin(), settles->end());
  const auto after = in.get<units::Duration>("after");
  for (std::size_t i = 0; i < sharing->kegs.size(); ++i) {
    const auto then = physics::co2_after(sharing->kegs[i], set, after);
    const auto unsure = physics::co2_estimate_after(sharing->kegs[i], set, after);
    if (!then || !unsure) continue;
    a.values.push_back(
        because(unsure->contributions(),
                between("The " + sharing->names[i] + " after " + printer.print(after), then->median,
                        then->low, then->high)));
  }
  if (best->suits_all) {
    a.sentences.emplace_back("All stay in their ranges.");
    return a;
  }
  const auto fewest = physics::fewest_regulators(sharing->kegs);
  if (!fewest) return refused(fewest.error());
  a.values.push_back(in_words(std::to_string(fewest->size()) + " regulators would suit all",
                              regulators_words(*fewest, *sharing, printer)));
  a.sentences.emplace_back(
      "No one pressure suits them all: this is the least wrong. Another temperature for one of "
      "them may do, too; no fewer regulators would.");
  return a;
}

Field for_key(Field f, std::string_view key, std::string_view label) {
  f.key = key;
  f.label = label;
  return f;
}

Field further_beer(Field f) { return further(may_be_blank(std::move(f))); }

}  // namespace

void add_regulator_computations(std::vector<Computation>& all) {
  const auto volumes = units::volumes_of_co2;
  const auto at = [](std::string_view key, std::string_view label) {
    return for_key(beer_temperature_field("temperature", "", units::celsius(4)), key, label);
  };
  all.push_back(
      {"one_regulator",
       "One regulator for several beers?",
       "Lines",
       "shared regulator manifold same pressure two three kegs compromise fewest regulators how "
       "many",
       {co2_field("low", "First beer, from", volumes(2.2)),
        co2_field("high", "First beer, to", volumes(2.6)),
        beer_temperature_field("temperature", "First beer at", units::celsius(4)),
        co2_field("low2", "Second beer, from", volumes(2.5)),
        co2_field("high2", "Second beer, to", volumes(2.9)),
        at("temperature2", "Second beer at"),
        duration_field("after", "And after", units::days(14), units::minutes(5), units::days(120)),
        further_beer(co2_field("low3", "Third beer, from", volumes(2.4))),
        further_beer(co2_field("high3", "Third beer, to", volumes(2.6))),
        further_beer(at("temperature3", "Third beer at")),
        further_beer(co2_field("low4", "Fourth beer, from", volumes(2.4))),
        further_beer(co2_field("high4", "Fourth beer, to", volumes(2.6))),
        further_beer(at("temperature4", "Fourth beer at")),
        further(co2_field("now", "In the first now", volumes(2.4))),
        further(co2_field("now2", "In the second now", volumes(2.4))),
        further(co2_field("now3", "In the third now", volumes(2.4))),
        further(co2_field("now4", "In the fourth now", volumes(2.4))),
        altitude_field(),
        dial_error_field(),
        thermometer_error_field()},
       &laws::equilibrium,
       one_regulator});
}

}  // namespace ullage::report::slate
