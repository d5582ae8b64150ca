// SPDX-License-Identifier: GPL-3.0-or-later
//
// Equilibrium both ways, at altitude, under blends.
#include <array>
#include <cmath>

#include "core/physics/carbonation_answers.h"
#include "core/physics/equilibrium.h"
#include "core/report/slate/fields.h"

namespace ullage::report::slate {
namespace {

using physics::Subject;
using units::Estimate;
using units::Printer;

const units::ErrorSource chart_fit{"equilibrium equation"};

constexpr auto pressure_subjects =
    std::to_array<SubjectField>({{Subject::temperature, "temperature"},
                                 {Subject::co2, "co2"},
                                 {Subject::co2_above_water, "co2"},
                                 {Subject::co2_fraction, "share"},
                                 {Subject::absolute_pressure, "co2"}});
constexpr auto co2_subjects =
    std::to_array<SubjectField>({{Subject::temperature, "temperature"},
                                 {Subject::gauge_pressure, "pressure"},
                                 {Subject::co2_above_water, "pressure"},
                                 {Subject::co2_fraction, "share"},
                                 {Subject::absolute_pressure, "pressure"}});

constexpr int chart_steps = 28;

// The pressure that holds the CO2, from the coldest to the warmest in steps.
Chart pressure_over_temperature(units::Co2Volumes co2, units::AbsolutePressure air,
                                units::MoleFraction share) {
  Chart chart{
      .title = "Pressure that holds it, by temperature", .x_title = "Beer", .y_title = "Pressure"};
  for (int i = 0; i <= chart_steps; ++i) {
    const units::Temperature t = units::celsius(0.75 * i);
    const auto p = physics::equilibrium_gauge(co2, t, air, share);
    if (p && *p >= units::gauge_psi(0)) chart.points.push_back({t, *p, *p, *p});
  }
  return chart;
}

std::string second_opinion(const Inputs& in, units::AbsolutePressure air, const Printer& printer) {
  const auto other = physics::equilibrium_gauge(in.get<units::Co2Volumes>("co2"),
                                                in.get<units::Temperature>("temperature"), air,
                                                gas_share(in), physics::Equation::exponential);
  if (!other) return {};
  return "A second published equation says " + printer.print(*other) + ".";
}

Outcome pressure_to_set(const Inputs& in, const Printer& printer) {
  const auto air = air_at(in);
  const auto co2 = in.get<units::Co2Volumes>("co2");
  const auto p = physics::equilibrium_gauge_estimate(
      Estimate(co2), on_thermometer(in, "temperature"), air, chart_fit, gas_share(in));
  if (!p) return std::unexpected(problem_of(p.error(), pressure_subjects, in, printer));
  // What the dial shows may itself be off.
  const auto shown = p->with_error({"dial: bias"}, in.get<units::PressureDifference>("dial"));
  Answer a;
  a.values.push_back(estimated("Set the regulator to", shown, true));
  if (p->value() < units::gauge_psi(0)) {
    a.sentences.emplace_back(
        "Below the air’s own pressure: beer this flat keeps its CO₂ with the gas off.");
  }
  if (const std::string other = second_opinion(in, air.value(), printer); !other.empty()) {
    a.sentences.push_back(other);
  }
  if (p->value() > units::gauge_psi(30)) {
    a.cautions.emplace_back("Look at the pressure stamped on the keg before you set this much.");
  }
  a.chart = pressure_over_temperature(co2, air.value(), gas_share(in));
  return a;
}

// Why an equation has no answer there.
std::string why_not(const physics::RangeError& e, const Printer& printer) {
  switch (e.subject) {
    case Subject::co2_above_water:
      return "there it would have beer hold more than pure water does, " +
             printer.print(units::volumes_of_co2(e.high));
    case Subject::co2:
      return "it is printed for " + printer.print(units::volumes_of_co2(e.low)) + " to " +
             printer.print(units::volumes_of_co2(e.high));
    case Subject::temperature:
      return "it is printed for " + printer.print(units::kelvin(e.low)) + " to " +
             printer.print(units::kelvin(e.high));
    default:
      return "it does not reach this pressure";
  }
}

// What a second equation says, and what the printed polynomial does or why it can't.
void tell_other_equations(const physics::GasAbove& gas, units::Temperature t,
                          const Printer& printer, Answer& a) {
  const auto both = physics::equilibrium_answer(gas, t);
  if (both && both->second) {
    a.sentences.push_back("A second published equation says " + printer.print(*both->second) + ".");
  }
  const auto printed = physics::equilibrium_answer(gas, t, physics::Equation::polynomial);
  if (!printed) return;
  if (printed->instead_because) {
    a.sentences.push_back(
        "The printed polynomial can’t tell: " + why_not(*printed->instead_because, printer) + ".");
  } else {
    a.sentences.push_back("The printed polynomial says " + printer.print(printed->co2) + ".");
  }
}

Outcome co2_at_pressure(const Inputs& in, const Printer& printer) {
  const auto air = air_at(in);
  const auto c = physics::equilibrium_co2_estimate(
      on_dial(in, "pressure"), on_thermometer(in, "temperature"), air, chart_fit, gas_share(in));
  if (!c) return std::unexpected(problem_of(c.error(), co2_subjects, in, printer));
  Answer a;
  a.values.push_back(estimated("At rest the beer holds", *c, true));
  const physics::GasAbove gas{in.get<units::GaugePressure>("pressure"), air.value(), gas_share(in)};
  tell_other_equations(gas, in.get<units::Temperature>("temperature"), printer, a);
  a.sentences.emplace_back(
      "That is where it ends up; getting there takes days. See “How long at a pressure?”.");
  return a;
}

Outcome blend_to_order(const Inputs& in, const Printer& printer) {
  const auto air = air_at(in).value();
  const auto needed = physics::equilibrium_pressure(in.get<units::Co2Volumes>("co2"),
                                                    in.get<units::Temperature>("temperature"));
  if (!needed) return std::unexpected(problem_of(needed.error(), pressure_subjects, in, printer));
  const auto total = in.get<units::GaugePressure>("pressure").at_ambient(air);
  const double share = units::in_pascals(*needed) / units::in_pascals(total);
  if (share > 1) {
    const auto least = units::GaugePressure::from_absolute(*needed, air);
    Problem p = impossible("pressure", "Even pure CO₂ at this pressure holds less; it takes " +
                                           printer.print(least) + ".");
    p.fault = Fault::too_small;
    p.value = Value(in.get<units::GaugePressure>("pressure"));
    p.limit = Value(least);
    return std::unexpected(std::move(p));
  }
  const auto percent = printer.number(share * 100, 0);
  const auto known = units::try_propagate(
      [&](units::Temperature t, units::AbsolutePressure outside,
          units::GaugePressure p) -> physics::Result<units::Fraction> {
        const auto wanted = physics::equilibrium_pressure(in.get<units::Co2Volumes>("co2"), t);
        if (!wanted) return std::unexpected(wanted.error());
        return units::fraction(units::in_pascals(*wanted) /
                               units::in_pascals(p.at_ambient(outside)));
      },
      on_thermometer(in, "temperature"), air_at(in), on_dial(in, "pressure"));
  Answer a;
  a.values.push_back(known ? estimated("CO₂ in the blend", *known, true)
                           : exactly("CO₂ in the blend", Value(units::fraction(share)), true));
  a.sentences.push_back("Ask for CO₂ " + percent + " % / N₂ " +
                        printer.number(100 - std::round(share * 100), 0) + " %.");
  a.sentences.emplace_back(
      "Always say which is which: a bare ratio is read both ways, and the wrong one ruins the "
      "beer.");
  a.cautions.emplace_back(
      "Nitrogen too takes the air’s place in a room, and nothing about it is noticed.");
  return a;
}

}  // namespace

void add_co2_computations(std::vector<Computation>& all) {
  all.push_back(
      {"pressure_to_set",
       "What pressure holds this CO₂?",
       "CO₂",
       "set regulator equilibrium volumes psi bar serving altitude co2 balance",
       {co2_field("co2", "CO₂ wanted", units::volumes_of_co2(2.5)),
        beer_temperature_field("temperature", "Beer at", units::celsius(4)), altitude_field(),
        co2_share_field(), thermometer_error_field(), dial_error_field()},
       &laws::equilibrium,
       pressure_to_set});
  all.push_back(
      {"co2_at_pressure",
       "What CO₂ does a pressure give?",
       "CO₂",
       "equilibrium volumes carbonation level rest psi bar altitude co2",
       {pressure_field("pressure", "Pressure on the dial", units::gauge_psi(12)),
        beer_temperature_field("temperature", "Beer at", units::celsius(4)), altitude_field(),
        co2_share_field(), thermometer_error_field(), dial_error_field()},
       &laws::equilibrium,
       co2_at_pressure});
  all.push_back({"blend_to_order",
                 "Which CO₂ and nitrogen blend?",
                 "CO₂",
                 "mixed gas beer gas n2 share percent ratio push long line co2 nitro",
                 {co2_field("co2", "CO₂ to keep", units::volumes_of_co2(2.4)),
                  beer_temperature_field("temperature", "Beer at", units::celsius(4)),
                  pressure_field("pressure", "Pressure the line needs", units::gauge_psi(25)),
                  altitude_field(), thermometer_error_field(), dial_error_field()},
                 &laws::equilibrium,
                 blend_to_order});
}

}  // namespace ullage::report::slate
