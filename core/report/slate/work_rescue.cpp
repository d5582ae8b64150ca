// SPDX-License-Identifier: GPL-3.0-or-later
//
// Too much CO2 in the beer: vents with waits, and the other ways down.
#include <array>
#include <cmath>

#include "core/physics/rescue.h"
#include "core/report/laws_slate.h"
#include "core/report/slate/fields.h"

namespace ullage::report::slate {
namespace {

using physics::Subject;
using units::Estimate;
using units::Printer;

constexpr auto rescue_subjects = std::to_array<SubjectField>({{Subject::temperature, "temperature"},
                                                              {Subject::gauge_pressure, "vent_to"},
                                                              {Subject::volume, "brimful"},
                                                              {Subject::beer_volume, "beer"},
                                                              {Subject::headspace, "beer"},
                                                              {Subject::length, "brimful"},
                                                              {Subject::co2, "co2"},
                                                              {Subject::co2_above_water, "co2"},
                                                              {Subject::absolute_pressure, "co2"},
                                                              {Subject::cycles, "beer"}});

physics::OverCarbonated over_carbonated_in(const Inputs& in, units::Temperature at,
                                           const physics::LogEstimate<units::Duration>& resting) {
  const auto off = in.get<units::TemperatureDifference>("thermometer");
  return {in.get<units::Volume>("brimful"),
          Estimate(in.get<units::Volume>("beer"))
              .with_error({"level"}, in.get<units::Volume>("level_error")),
          Estimate(in.get<units::Co2Volumes>("co2"))
              .with({"CO2 in the beer"}, in.get<units::Co2Volumes>("co2_error").count()),
          Estimate(at).with_error({"thermometer: bias"}, off),
          air_at(in).value(),
          in.get<units::Co2Volumes>("target"),
          resting};
}

Problem rescue_problem(const physics::RangeError& e, const Inputs& in, const Printer& printer) {
  if (e.subject == Subject::cycles) {
    return beyond("beer", in, in.get<units::Volume>("beer"),
                  "So full a keg takes more than " + std::to_string(physics::most_vents) +
                      " vents: draw some beer first, or warm it.");
  }
  if (e.subject == Subject::gauge_pressure && e.high < 0) {
    return impossible("target",
                      "Beer this flat rests below the air’s own pressure: no venting gets there. "
                      "Warm it first.");
  }
  return problem_of(e, rescue_subjects, in, printer);
}

// What makes the end of these vents unsure makes their number so.
std::vector<units::Contribution> vent_causes(const physics::OverCarbonated& over,
                                             const physics::VentPlan& plan, const Inputs& in) {
  const auto end = physics::end_of_vents(over, plan, in.get<units::GaugePressure>("vent_to"));
  return end ? end->co2.contributions() : over.co2.contributions();
}

void tell_vents(const physics::OverCarbonated& over, const physics::VentPlan& plan,
                const Inputs& in, Answer& a) {
  const auto causes = vent_causes(over, plan, in);
  const units::ErrorSource& pace = over.resting.source();
  const Count vents{static_cast<double>(plan.vents)};
  if (plan.most) {
    a.values.push_back(
        because(causes, between("Vents", vents, Count{static_cast<double>(plan.fewest)},
                                Count{static_cast<double>(*plan.most)}, true)));
  } else {
    a.values.push_back(because(causes, in_words("Vents",
                                                std::to_string(plan.vents) + " or more (at least " +
                                                    std::to_string(plan.fewest) + ")",
                                                true)));
  }
  a.values.push_back(because(
      pace, between("Wait after each", plan.wait.median(), plan.wait.low(), plan.wait.high())));
  const double times = plan.vents;
  a.values.push_back(
      because(pace, between("All in all", units::Duration(plan.wait.median() * times),
                            units::Duration(plan.wait.low() * times),
                            units::Duration(plan.wait.high() * times))));
  const auto end = physics::end_of_vents(over, plan, in.get<units::GaugePressure>("vent_to"));
  if (end) a.values.push_back(estimated("Gas let out", end->vented));
}

void draw_vents(const physics::VentPlan& plan, const Inputs& in, Answer& a) {
  a.chart.title = "CO₂ by vent, at rest again";
  a.chart.x_title = "Vents";
  a.chart.y_title = "CO₂";
  a.chart.dots = true;
  a.chart.points_label = "after each vent";
  const auto start = in.get<units::Co2Volumes>("co2");
  const auto target = in.get<units::Co2Volumes>("target");
  a.chart.points.push_back({Count{0}, start, start, start});
  for (std::size_t i = 0; i < plan.steps.size(); ++i) {
    const units::Co2Volumes after = plan.steps[i].after;
    a.chart.points.push_back({Count{static_cast<double>(i + 1)}, after, after, after});
  }
  a.chart.lines.push_back(
      {"wanted", true, {{Count{0}, target}, {a.chart.points.back().x, target}}});
}

// As `answer` has it of the keg, with the errors of its beer, CO2 and temperature; empty
// where an end of them has no answer.
template <class Answers>
auto over_its_errors(const physics::OverCarbonated& keg, const Answers& answer) {
  return units::try_propagate(
      [&](units::Volume beer, units::Co2Volumes co2, units::Temperature t) {
        physics::OverCarbonated at = keg;
        at.beer = Estimate(beer);
        at.co2 = Estimate(co2);
        at.temperature = Estimate(t);
        return answer(at);
      },
      keg.beer, keg.co2, keg.temperature);
}

void tell_held(const physics::OverCarbonated& keg, Answer& a) {
  const auto held = physics::hold_at_target(keg);
  if (!held) return;
  const auto setting = over_its_errors(
      keg, [](const physics::OverCarbonated& at) -> physics::Result<units::GaugePressure> {
        const auto plan = physics::hold_at_target(at);
        if (!plan) return std::unexpected(plan.error());
        return plan->setting;
      });
  a.values.push_back(
      setting ? estimated("Or a spunding valve at", *setting)
              : because({"thermometer: bias"}, exactly("Or a spunding valve at", held->setting)));
  a.values.push_back(because(
      keg.resting.source(),
      between("Left to it for", held->within.median(), held->within.low(), held->within.high())));
}

void tell_served(const physics::OverCarbonated& keg, const Inputs& in,
                 const physics::VentPlan& plan, const Printer& printer, Answer& a) {
  const auto served = physics::serve_to_target(keg);
  if (!served) {
    a.sentences.emplace_back("Pouring with the gas off does not get there: the beer runs out.");
    return;
  }
  const auto drawn =
      over_its_errors(keg, [](const physics::OverCarbonated& at) -> physics::Result<units::Volume> {
        const auto poured = physics::serve_to_target(at);
        if (!poured) return std::unexpected(poured.error());
        return poured->drawn;
      });
  a.values.push_back(
      drawn ? estimated("Or pour off, gas off", *drawn)
            : because(vent_causes(keg, plan, in), exactly("Or pour off, gas off", served->drawn)));
  a.sentences.push_back("Poured down with the gas off it ends at " +
                        printer.print(served->pressure) + ", with " + printer.print(served->left) +
                        " left.");
}

// The other ways: held, poured off, warmed. What can't be done is left out or said.
void tell_other_ways(const physics::OverCarbonated& cold, const Inputs& in,
                     const physics::VentPlan& plan, const Printer& printer, Answer& a) {
  tell_held(cold, a);
  tell_served(cold, in, plan, printer, a);
  const auto warm_at = in.maybe<units::Temperature>("warm");
  if (!warm_at || *warm_at <= in.get<units::Temperature>("temperature")) return;
  const auto warm = physics::vents_to_target(over_carbonated_in(in, *warm_at, cold.resting),
                                             in.get<units::GaugePressure>("vent_to"));
  if (!warm) {
    a.sentences.push_back("Warmed to " + printer.print(*warm_at) +
                          " it would stand above what the equation reaches.");
    return;
  }
  a.values.push_back(because(vent_causes(cold, plan, in),
                             exactly("Or warmed to " + printer.print(*warm_at) + " first, vents",
                                     Count{static_cast<double>(warm->vents)})));
  a.cautions.push_back("Warmed, it stands at " + printer.print(warm->steps.front().before) +
                       " before the first vent, instead of " +
                       printer.print(plan.steps.front().before) +
                       ": compare that with the pressure stamped on the keg.");
}

Outcome rescue(const Inputs& in, const Printer& printer) {
  const auto co2 = in.get<units::Co2Volumes>("co2");
  if (in.get<units::Co2Volumes>("target") >= co2) {
    return std::unexpected(beyond(
        "target", in, co2,
        "It holds no more than " + printer.print(co2) + ": there is nothing to get rid of."));
  }
  const auto rates = uptake_rates(in);
  if (!rates) return std::unexpected(rescue_problem(rates.error(), in, printer));
  const physics::OverCarbonated over =
      over_carbonated_in(in, in.get<units::Temperature>("temperature"), rates->resting);
  const auto plan = physics::vents_to_target(over, in.get<units::GaugePressure>("vent_to"));
  if (!plan) return std::unexpected(rescue_problem(plan.error(), in, printer));
  Answer a;
  tell_vents(over, *plan, in, a);
  a.sentences.emplace_back(
      "Gas off first. Let the headspace down, shut the valve, wait until the pressure is back, "
      "and again. Read the gauge at rest on the way: it tells when it is enough.");
  tell_other_ways(over, in, *plan, printer, a);
  a.cautions.emplace_back(
      "Vent outdoors or into a well-aired room, face away from the valve. Out of a full keg foam "
      "follows the gas.");
  if (plan->steps.front().before > units::gauge_psi(30)) {
    a.cautions.emplace_back("It stands high: look at the pressure stamped on the keg.");
  }
  draw_vents(*plan, in, a);
  return a;
}

std::vector<Field> rescue_fields() {
  Field warm = beer_temperature_field("warm", "Or warmed first, to", units::celsius(18));
  warm.optional = true;
  Field level_error{.key = "level_error",
                    .label = "The level may be off by",
                    .kind = FieldKind::volume,
                    .start = units::litres(0.4),
                    .least = units::litres(0),
                    .greatest = units::litres(20),
                    .detail = true};
  Field vent_to = further(pressure_field("vent_to", "Vented down to", units::gauge_psi(0)));
  vent_to.hint = "Less foam comes if you stop above nothing.";
  return {co2_field("co2", "CO₂ in it now", units::volumes_of_co2(3.7)),
          co2_field("target", "Wanted", units::volumes_of_co2(2.5)),
          beer_temperature_field("temperature", "Beer at", units::celsius(4)),
          brimful_field(),
          beer_volume_field("Beer in it", units::litres(18.5)),
          std::move(warm),
          std::move(vent_to),
          co2_error_field("co2_error", "The CO₂ may be off by"),
          std::move(level_error),
          thermometer_error_field(),
          altitude_field(),
          uptake_field(),
          uptake_factor_field()};
}

}  // namespace

void add_rescue_computations(std::vector<Computation>& all) {
  all.push_back(
      {"rescue", "Too much CO₂: how to get it out?", "CO₂",
       "over carbonated overcarbonated co2 rescue vent burp foamy spunding flat degas less",
       rescue_fields(), &laws::rescue, rescue});
}

}  // namespace ullage::report::slate
