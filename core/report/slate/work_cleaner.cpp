// SPDX-License-Identifier: GPL-3.0-or-later
//
// Cleaner by its label's dose, and by its strength: how much of a concentrate makes a
// solution of so many per cent by weight.
#include <array>

#include "core/physics/cleaning_solution.h"
#include "core/report/laws.h"
#include "core/report/slate/fields.h"
#include "core/units/number_text.h"

namespace ullage::report::slate {
namespace {

using physics::Subject;
using units::Estimate;
using units::Printer;

constexpr auto cleaner_subjects = std::to_array<SubjectField>(
    {{Subject::volume, "volume"}, {Subject::fraction, "strength"}, {Subject::density, "density"}});

// In the order of the choices of "measure"; gallons are US ones.
constexpr int ounces_a_gallon = 2;

std::string cleaner_words(const Inputs& in, const Printer& printer) {
  const auto volume = in.get<units::Volume>("volume");
  const int measure = in.choice("measure");
  const bool by_litre = measure < ounces_a_gallon;
  const double amount =
      in.number("strength") * (by_litre ? units::in_litres(volume) : units::in_us_gallons(volume));
  constexpr std::array measured{" g", " mL", " oz", " fl oz"};
  const double off = amount * in.get<units::Fraction>("marks").count();
  return (off > 0 ? units::value_with_error(amount, off, printer.style)
                  : units::write_number(amount, {0, amount < 20 ? 1 : 0}, printer.style)) +
         measured.at(static_cast<std::size_t>(measure));
}

Estimate<units::Volume> by_the_marks(const Inputs& in) {
  const auto volume = in.get<units::Volume>("volume");
  return Estimate(volume).with_error(
      {"marks of the vessel"}, units::Volume(in.get<units::Fraction>("marks").count() * volume));
}

Outcome cleaning_solution(const Inputs& in, const Printer& printer) {
  Answer a;
  const auto volume = by_the_marks(in);
  a.values.push_back(
      because(volume.contributions(), in_words("Cleaner", cleaner_words(in, printer), true)));
  a.values.push_back(estimated("Into water", volume));
  a.sentences.emplace_back("By the label, whatever it says elsewhere. Water first, cleaner after.");
  a.cautions.emplace_back(
      "Gloves and goggles. Never let an acid meet a chlorine cleaner, and rinse between caustic "
      "and acid.");
  return a;
}

Outcome cleaner_strength(const Inputs& in, const Printer& printer) {
  physics::Concentrate concentrate{in.get<units::Fraction>("label"), std::nullopt};
  if (in.has("density")) {
    concentrate.density = units::kilograms_per_cubic_metre(1000 * in.number("density"));
  }
  const auto volume = in.get<units::Volume>("volume");
  const auto strength = in.get<units::Fraction>("strength");
  const physics::SolutionErrors errors{in.get<units::Fraction>("label_error"),
                                       in.get<units::Fraction>("marks"),
                                       in.get<units::Fraction>("measured")};
  const auto parts = physics::solution_estimate(volume, strength, concentrate, errors);
  if (!parts) {
    if (parts.error().subject == Subject::fraction && strength > concentrate.active) {
      return std::unexpected(beyond("strength", in, concentrate.active,
                                    "The concentrate itself is weaker than that."));
    }
    return std::unexpected(problem_of(parts.error(), cleaner_subjects, in, printer));
  }
  Answer a;
  if (parts->concentrate_volume) {
    a.values.push_back(estimated("Concentrate", *parts->concentrate_volume, true));
    a.values.push_back(estimated("Which weighs", parts->concentrate));
  } else {
    a.values.push_back(estimated("Concentrate", parts->concentrate, true));
  }
  a.values.push_back(estimated("Into water", parts->water));
  a.values.push_back(estimated("So made, it has by weight", parts->strength));
  const physics::LineCleaningPractice& practice = physics::line_cleaning_practice;
  a.sentences.push_back(
      "For lines " + printer.print(practice.caustic) +
      " caustic is usual, 3 % for old or problem lines, standing or flowing for " +
      printer.print(practice.standing) + " at " +
      printer.print_range(practice.coldest, practice.hottest) + ".");
  a.sentences.emplace_back("The label’s own instructions come first. Water first, cleaner after.");
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

Field off_by_field(std::string_view key, std::string_view label, double start) {
  Field f = further(strength_field(key, label, start, 0, 0.5));
  f.hint = "Of itself.";
  return f;
}
Field marks_field() { return off_by_field("marks", "The vessel’s marks may be off by", 0.05); }
Field solution_field() {
  return {.key = "volume",
          .label = "Solution to make",
          .kind = FieldKind::volume,
          .start = units::litres(10),
          .least = units::litres(0.1),
          .greatest = units::litres(1000),
          .us_start = units::us_gallons(2.5)};
}

std::vector<Field> solution_fields() {
  Field strength = number_field("strength", "By the label, so much", 20, 0.1, 500);
  strength.us_start = Count{2};
  Field measure = choice_field(
      "measure", "which is",
      {"grams a litre", "millilitres a litre", "ounces a gallon", "fluid ounces a gallon"});
  measure.us_start = Choice{ounces_a_gallon};
  return {solution_field(), std::move(strength), std::move(measure), marks_field()};
}

}  // namespace

void add_cleaner_computations(std::vector<Computation>& all) {
  all.push_back({"cleaning_solution", "How much cleaner for so much water?", "Lines",
                 "cleaning solution caustic acid sanitiser sanitizer strength label mix dose grams",
                 solution_fields(), &laws::cleaning_solution, cleaning_solution});
  Field density = may_be_blank(number_field("density", "It weighs, kg a litre", 1.3, 0.5, 2.5));
  density.hint = "Off the label or its data sheet; water is 1. Blank: it is weighed.";
  Field label = strength_field("label", "The concentrate has, by weight", 0.3, 0.001, 1);
  label.hint = "Active substance; a pure powder has 100 %.";
  all.push_back(
      {"cleaner_strength",
       "How much concentrate for a strength?",
       "Lines",
       "cleaning cleaner caustic acid percent strength dilute dilution weight label mix",
       {solution_field(), strength_field("strength", "Wanted, by weight", 0.02, 0.0001, 0.2),
        std::move(label), std::move(density),
        off_by_field("label_error", "The label’s strength may be off by", 0.05), marks_field(),
        off_by_field("measured", "The cleaner measured out, off by", 0.03)},
       &laws::cleaning_solution,
       cleaner_strength});
}

}  // namespace ullage::report::slate
