// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/report/grounds.h"

#include <fmt/format.h>

#include <algorithm>
#include <array>
#include <cmath>

#include "core/report/laws_slate.h"

namespace ullage::report {
namespace {

// By what the name of a source ends in or holds; names are given where errors
// arise (core/units/instrument_errors.h, core/physics, core/cellar).
struct Remedy {
  std::string_view in_name;
  std::string_view words;
};
constexpr std::array remedies{
    Remedy{
        "carbonation rate",
        "Read the pressure at rest, gas off, with its temperature: it tells how fast this keg is."},
    Remedy{"rocking rate", "Read the pressure at rest after rocking."},
    Remedy{"cooling rate", "Read the beer’s own temperature."},
    Remedy{"unnamed dial", "Register the dial and say how far off it is."},
    Remedy{"unnamed thermometer", "Register the thermometer and say how far off it is."},
    Remedy{"dial: bias", "Check the dial against a better one."},
    Remedy{"tare", "Weigh the keg empty."},
    Remedy{"brimful", "Fill the keg with water once and weigh it."},
    Remedy{"weather", "Read a barometer; weather moves the air’s pressure by up to 2 %."},
    Remedy{"barometer", "Read a barometer at both readings."},
    Remedy{"wet residue", "Dry the keg out, or test it again."},
    Remedy{"warmest", "Log how warm the beer was after fermentation."},
    Remedy{"gas used", "Weigh the bottle before and after."},
    Remedy{"level", "Weigh the keg."},
    Remedy{"mixing", "Measure the oxygen, or push liquid out: that leaves less to guess."},
    Remedy{"air left on top", "Fill it until liquid comes out of the relief valve."},
    Remedy{"the room’s ", "Measure the room again; in one that is no box, in parts."},
    Remedy{"kegs and stock", "Measure what stands in the room, and take it off."},
    Remedy{"net volume", "Measure the room, and take off what kegs and stock fill."},
    Remedy{"content of the bottles", "Weigh the bottles."},
    Remedy{"air changes", "Look up what the fan moves, or have it measured."},
    Remedy{"what leaks", "Weigh the bottle twice, or time a hold test."},
    Remedy{"label’s strength", "Take the strength off the product’s data sheet."},
    Remedy{"marks of the vessel", "Weigh the water: a litre is a kilogram."},
    Remedy{"bore of the hose", "Time a pour: it tells the bore that the hose has."},
    Remedy{"CO₂ in it at the start",
           "Read the pressure at rest, gas off, with its temperature: it tells its CO₂."},
    Remedy{"CO2 in the beer",
           "Read the pressure at rest, gas off, with its temperature: it tells its CO₂."},
    Remedy{"CO₂ in the beer",
           "Read the pressure at rest, gas off, with its temperature: it tells its CO₂."},
    Remedy{"the CO₂ reading", "Read it again after a longer rest, or by a meter."},
    Remedy{"what was poured", "Pour into a measuring jug, and more of it."},
    Remedy{"watch", "Time a larger pour, or several."},
    Remedy{"draw by weekday", "A longer time on tap tells more."},
    Remedy{"sugar yield", "Read the pressure at rest once it has fermented: it tells what came."},
    Remedy{"beer density", "Read the gravity."},
    Remedy{"loss", "Weigh the keg instead of counting glasses."},
    Remedy{"glass", "Weigh the keg instead of counting glasses."},
    Remedy{"heft", "Weigh the keg."},
    Remedy{"condensation", "Weigh the keg."},
    Remedy{": bias", "Check the instrument against a better one and log how far off it is."},
    Remedy{": reading", "Read it again: single readings scatter."},
    Remedy{"repeatability", "Read it again: single readings scatter."},
};

constexpr double worth_telling = 0.1;  // of the variance

}  // namespace

std::string_view say(InputOrigin origin) {
  switch (origin) {
    case InputOrigin::read:
      return "read";
    case InputOrigin::typed:
      return "typed in";
    case InputOrigin::assumed:
      return "assumed";
    case InputOrigin::worked_out:
      return "worked out";
  }
  return {};
}

Grounds grounds_by(const Law& law, std::string name, std::string answer) {
  Grounds g;
  g.name = std::move(name);
  g.answer = std::move(answer);
  g.equation = law.words;
  g.section = law.section;
  g.document = law.document;
  g.source = law.source;
  g.certainty = say(law.certainty);
  return g;
}

std::string line_of(const GroundsInput& input) {
  if (input.age.empty()) return fmt::format("{}: {}", input.what, say(input.origin));
  return fmt::format("{}: {}, {}", input.what, say(input.origin), input.age);
}

std::string source_line(const Grounds& g) {
  return fmt::format("Source: {} ({}). Written out in {}, “{}”.", g.source, g.certainty, g.document,
                     g.section);
}

std::vector<std::string> lines_of(const Grounds& g) {
  std::vector<std::string> lines{g.name + ": " + g.answer};
  if (!g.inputs.empty()) {
    lines.emplace_back("From");
    for (const GroundsInput& input : g.inputs) lines.push_back(line_of(input));
  }
  lines.emplace_back("How");
  lines.push_back(g.equation);
  for (const std::string& note : g.notes) lines.push_back(note);
  lines.push_back(source_line(g));
  if (!g.narrow.empty()) {
    lines.emplace_back("What would narrow it");
    for (const std::string& narrow : g.narrow) lines.push_back(narrow);
  }
  return lines;
}

std::string remedy_for(const units::ErrorSource& source) {
  const auto* at = std::find_if(remedies.begin(), remedies.end(), [&](const Remedy& r) {
    return source.name.find(r.in_name) != std::string::npos;
  });
  return at == remedies.end() ? std::string() : std::string(at->words);
}

std::vector<ErrorShare> shares_of(const std::vector<units::Contribution>& errors) {
  double all = 0;
  for (const units::Contribution& e : errors) all += e.half_width * e.half_width;
  std::vector<ErrorShare> shares;
  if (!(all > 0)) return shares;
  for (const units::Contribution& e : errors) {
    shares.push_back({e.source, units::fraction(e.half_width * e.half_width / all)});
  }
  return shares;
}

std::vector<std::string> narrowing_of(std::vector<ErrorShare> shares) {
  std::sort(shares.begin(), shares.end(),
            [](const ErrorShare& a, const ErrorShare& b) { return b.share < a.share; });
  std::vector<std::string> lines;
  for (const ErrorShare& s : shares) {
    if (!(s.share.count() >= worth_telling)) break;
    std::string line = fmt::format("“{}” makes {} % of the ±.", s.source.name,
                                   static_cast<int>(std::lround(s.share.count() * 100)));
    if (const std::string remedy = remedy_for(s.source); !remedy.empty()) line += " " + remedy;
    lines.push_back(std::move(line));
  }
  return lines;
}

std::string_view say(Certainty certainty) {
  switch (certainty) {
    case Certainty::verified:
      return "verified";
    case Certainty::from_memory:
      return "from memory";
    case Certainty::common_practice:
      return "common practice, no source";
    case Certainty::by_definition:
      return "by definition";
  }
  return {};
}

std::span<const Law* const> all_laws() {
  static constexpr auto all = std::to_array<const Law*>(
      {&laws::gas_use,         &laws::room_air,     &laws::cleaning_solution, &laws::line_flow,
       &laws::equilibrium,     &laws::carbonation,  &laws::purging,           &laws::cooling,
       &laws::level,           &laws::gravity,      &laws::hold_test,         &laws::line_contents,
       &laws::unit_conversion, &laws::rescue,       &laws::priming,           &laws::cheapest_purge,
       &laws::break_out,       &laws::bottles,      &laws::gas_account,       &laws::run_out,
       &laws::handbook_lines,  &laws::work_rules,   &laws::as_logged,         &laws::bottle_gauge,
       &laws::steady_release,  &laws::level_fusion, &laws::published_limits,  &laws::isolation_wait,
       &laws::freshness,       &laws::learned_rate, &laws::closed_keg,        &laws::blends,
       &laws::line_calibration});
  return all;
}

}  // namespace ullage::report
