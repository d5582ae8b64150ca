// SPDX-License-Identifier: GPL-3.0-or-later
//
// Sugar to carbonate a keg by a second fermentation.
#include <array>

#include "core/physics/priming.h"
#include "core/report/laws_slate.h"
#include "core/report/slate/fields.h"

namespace ullage::report::slate {
namespace {

using physics::Subject;
using physics::Sugar;
using units::Estimate;
using units::Printer;

constexpr double hydrometer_within = 0.001;  // of a gravity, 95 %, common practice
constexpr auto priming_subjects =
    std::to_array<SubjectField>({{Subject::volume, "brimful"},
                                 {Subject::beer_volume, "beer"},
                                 {Subject::headspace, "beer"},
                                 {Subject::temperature, "warmest"},
                                 {Subject::co2, "target"},
                                 {Subject::co2_above_water, "target"},
                                 {Subject::absolute_pressure, "target"},
                                 {Subject::gravity, "gravity"},
                                 {Subject::mass, "given"}});

constexpr std::array sugars{Sugar::sucrose, Sugar::glucose, Sugar::glucose_monohydrate,
                            Sugar::dry_malt_extract};

physics::PrimingQuestion priming_question_in(const Inputs& in) {
  physics::PrimingQuestion q;
  q.brimful = in.get<units::Volume>("brimful");
  q.beer = in.get<units::Volume>("beer");
  q.warmest = on_thermometer(in, "warmest");
  q.ambient = air_at(in).value();
  q.target = in.get<units::Co2Volumes>("target");
  q.holds_at = in.get<units::Temperature>("serve");
  q.conditions_at = in.get<units::Temperature>("condition");
  q.sugar = sugars.at(static_cast<std::size_t>(in.choice("sugar")));
  q.headspace_purged = in.choice("headspace") == 0;
  return q;
}

Problem priming_problem(const physics::RangeError& e, const Inputs& in, const Printer& printer) {
  if (e.subject == Subject::co2 && e.value < e.low) {
    const auto left = units::volumes_of_co2(e.low);
    Problem p =
        beyond("target", in, left,
               "Fermentation left about " + printer.print(left) + " already: this takes no sugar.");
    p.fault = Fault::too_small;
    return p;
  }
  return problem_of(e, priming_subjects, in, printer);
}

// What gravity above the final one will still make, which is gas beside the sugar's.
std::optional<Problem> tell_gas_to_come(const Inputs& in, const physics::PrimingPlan& plan,
                                        const Printer& printer, Answer& a) {
  const auto now = in.maybe<units::SpecificGravity>("gravity");
  const auto end = in.maybe<units::SpecificGravity>("final");
  if (!now && !end) return std::nullopt;
  if (!now || !end) {
    Problem p = impossible(now ? "final" : "gravity", "Both gravities, or neither.");
    p.fault = Fault::missing;
    return p;
  }
  const auto more = physics::co2_still_to_come(*now, *end);
  if (!more) return priming_problem(more.error(), in, printer);
  const auto known = units::try_propagate(
      [](units::SpecificGravity n, units::SpecificGravity e) {
        return physics::co2_still_to_come(n, e);
      },
      Estimate(*now).with({"hydrometer: reading now"}, hydrometer_within),
      Estimate(*end).with({"hydrometer: reading at the end"}, hydrometer_within));
  a.values.push_back(known ? estimated("Still to come by itself", *known)
                           : exactly("Still to come by itself", *more));
  if (more->count() < 0.05) return std::nullopt;
  const bool enough =
      plan.residual.value().count() + more->count() >= in.get<units::Co2Volumes>("target").count();
  a.cautions.push_back("It has not fermented out: " + printer.print(*more) +
                       " come on top of the sugar’s. " +
                       (enough ? "That alone is enough, or too much: no sugar."
                               : "Let it finish, or take that much less."));
  return std::nullopt;
}

Outcome priming_sugar(const Inputs& in, const Printer& printer) {
  const physics::PrimingQuestion q = priming_question_in(in);
  const auto plan = physics::priming(q);
  if (!plan) return std::unexpected(priming_problem(plan.error(), in, printer));
  Answer a;
  a.values.push_back(estimated("Sugar", plan->sugar, true));
  // By the same errors as all of it, each as a share.
  const double part = plan->for_headspace.value() / plan->sugar.value().value();
  a.values.push_back(estimated(
      "Of that for the headspace",
      units::propagate([part](units::Mass m) { return units::Mass(part * m); }, plan->sugar)));
  a.values.push_back(estimated("CO₂ that fermentation left", plan->residual));
  a.values.push_back(estimated("While it conditions it stands at", plan->while_conditioning));
  if (const auto given = in.maybe<units::Mass>("given")) {
    const auto comes_to = physics::primed_to(q, *given);
    if (!comes_to) return std::unexpected(priming_problem(comes_to.error(), in, printer));
    a.values.push_back(estimated("With " + printer.print(*given) + " it comes to", *comes_to));
  }
  if (auto problem = tell_gas_to_come(in, *plan, printer, a)) {
    return std::unexpected(std::move(*problem));
  }
  a.sentences.emplace_back(
      "Weigh it, dissolve it in a little boiled water, and mix it in. A full keg needs about what "
      "bottles need; it is the headspace that makes the difference.");
  a.cautions.push_back("It conditions warm, at about " +
                       printer.print(plan->while_conditioning.value()) +
                       ": compare that with the pressure stamped on the keg.");
  return a;
}

std::vector<Field> priming_fields() {
  Field warmest =
      beer_temperature_field("warmest", "Warmest since it fermented", units::celsius(20));
  warmest.hint = "Gas that left then does not come back.";
  const auto gravity = [](std::string_view key, std::string_view label) {
    return further(may_be_blank({.key = key,
                                 .label = label,
                                 .kind = FieldKind::gravity,
                                 .start = {},
                                 .least = units::specific_gravity(0.985),
                                 .greatest = units::specific_gravity(1.15)}));
  };
  Field now = gravity("gravity", "Gravity now");
  now.hint = "If it has not fermented out, gas is still to come.";
  return {co2_field("target", "CO₂ wanted", units::volumes_of_co2(2.5)),
          beer_temperature_field("serve", "Served at", units::celsius(4)),
          beer_volume_field("Beer", units::litres(18)),
          brimful_field(),
          choice_field(
              "sugar", "Sugar",
              {"table sugar (sucrose)", "glucose, dry", "glucose monohydrate", "dry malt extract"}),
          choice_field("headspace", "Headspace", {"purged with CO₂", "air"}),
          std::move(warmest),
          beer_temperature_field("condition", "Conditions at", units::celsius(20)),
          further(may_be_blank(mass_field("given", "What if you put in", units::grams(100),
                                          units::grams(1), units::kilograms(20)))),
          std::move(now),
          gravity("final", "Final gravity"),
          thermometer_error_field(),
          altitude_field()};
}

}  // namespace

void add_priming_computations(std::vector<Computation>& all) {
  all.push_back({"priming_sugar", "How much priming sugar?", "CO₂",
                 "prime priming co2 sugar sucrose glucose dextrose corn malt extract natural keg "
                 "condition conditioning carbonate",
                 priming_fields(), &laws::priming, priming_sugar});
}

}  // namespace ullage::report::slate
