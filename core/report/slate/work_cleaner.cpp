// SPDX-License-Identifier: GPL-3.0-or-later
//
// Cleaner by its strength: how much of a concentrate makes a solution of so many per
// cent by weight.
#include <array>

#include "core/physics/cleaning_solution.h"
#include "core/report/slate/fields.h"

namespace ullage::report::slate {
namespace {

using physics::Subject;
using units::Printer;

constexpr auto cleaner_subjects = std::to_array<SubjectField>(
    {{Subject::volume, "volume"}, {Subject::fraction, "strength"}, {Subject::density, "density"}});

Outcome cleaner_strength(const Inputs& in, const Printer& printer) {
  physics::Concentrate concentrate{in.get<units::Fraction>("label"), std::nullopt};
  if (in.has("density")) {
    concentrate.density = units::kilograms_per_cubic_metre(1000 * in.number("density"));
  }
  const auto volume = in.get<units::Volume>("volume");
  const auto strength = in.get<units::Fraction>("strength");
  const auto parts = physics::cleaning_solution(volume, strength, concentrate);
  if (!parts) {
    if (parts.error().subject == Subject::fraction && strength > concentrate.active) {
      return std::unexpected(beyond("strength", in, concentrate.active,
                                    "The concentrate itself is weaker than that."));
    }
    return std::unexpected(problem_of(parts.error(), cleaner_subjects, in, printer));
  }
  Answer a;
  if (parts->concentrate_volume) {
    a.values.push_back(exactly("Concentrate", *parts->concentrate_volume, true));
    a.values.push_back(exactly("Which weighs", parts->concentrate));
  } else {
    a.values.push_back(exactly("Concentrate", parts->concentrate, true));
  }
  a.values.push_back(exactly("Into water", parts->water));
  const physics::LineCleaningPractice& practice = physics::line_cleaning_practice;
  a.sentences.push_back(
      "For lines " + printer.print(practice.caustic) +
      " caustic is usual, 3 % for old or problem lines, standing or flowing for " +
      printer.print(practice.standing) + " at " +
      printer.print_range(practice.coldest, practice.hottest) + ".");
  a.sentences.emplace_back(
      "The label’s own instructions come first. Water first, cleaner after. The solution is taken "
      "as no denser than water: 2 % too little at most.");
  a.cautions.emplace_back(
      "Gloves and goggles. Never let an acid meet a chlorine cleaner, and rinse between caustic "
      "and acid.");
  return a;
}

Field strength_field(std::string_view key, std::string_view label, double start, double least,
                     double greatest) {
  return {.key = key,
          .label = label,
          .kind = FieldKind::fraction,
          .start = units::fraction(start),
          .least = units::fraction(least),
          .greatest = units::fraction(greatest)};
}

}  // namespace

void add_cleaner_computations(std::vector<Computation>& all) {
  Field density = may_be_blank(number_field("density", "It weighs, kg a litre", 1.3, 0.5, 2.5));
  density.hint = "Off the label or its data sheet; water is 1. Blank: it is weighed.";
  Field label = strength_field("label", "The concentrate has, by weight", 0.3, 0.001, 1);
  label.hint = "Active substance; a pure powder has 100 %.";
  all.push_back({"cleaner_strength",
                 "How much concentrate for a strength?",
                 "Lines",
                 "cleaning cleaner caustic acid percent strength dilute dilution weight label mix",
                 {{.key = "volume",
                   .label = "Solution to make",
                   .kind = FieldKind::volume,
                   .start = units::litres(10),
                   .least = units::litres(0.1),
                   .greatest = units::litres(1000),
                   .us_start = units::us_gallons(2.5)},
                  strength_field("strength", "Wanted, by weight", 0.02, 0.0001, 0.2),
                  std::move(label),
                  std::move(density)},
                 &laws::cleaning_solution,
                 cleaner_strength});
}

}  // namespace ullage::report::slate
