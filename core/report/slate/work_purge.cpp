// SPDX-License-Identifier: GPL-3.0-or-later
//
// Oxygen left after purging, the gas it takes, and how many cycles a target
// takes.
#include <algorithm>
#include <array>
#include <cmath>
#include <span>

#include "core/physics/gas_use.h"
#include "core/physics/purge.h"
#include "core/physics/purge_errors.h"
#include "core/physics/purge_plan.h"
#include "core/report/laws_slate.h"
#include "core/report/slate/fields.h"

namespace ullage::report::slate {
namespace {

using physics::Subject;
using units::Estimate;
using units::Printer;

// How far people know what a keg holds and what goes in, 95 % (assumed).
constexpr double keg_volume_share = 0.02;
constexpr double beer_volume_share = 0.03;
constexpr int cycles_drawn = 10;
constexpr int sweep_points = 40;

constexpr auto purge_subjects =
    std::to_array<SubjectField>({{Subject::temperature, "temperature"},
                                 {Subject::gauge_pressure, "pressure"},
                                 {Subject::volume, "brimful"},
                                 {Subject::beer_volume, "beer"},
                                 {Subject::cycles, "cycles"},
                                 {Subject::vessel_volumes, "volumes"},
                                 {Subject::oxygen_fraction, "target"},
                                 {Subject::fraction, "air_left"},
                                 {Subject::absolute_pressure, "pressure"}});

Field gas_temperature_field() {
  return {.key = "temperature",
          .label = "Keg and gas at",
          .kind = FieldKind::temperature,
          .start = units::celsius(15),
          .least = units::celsius(-5),
          .greatest = units::celsius(40),
          .detail = true};
}

Field supply_oxygen_field() {
  Field f = number_field("supply", "Oxygen in the gas, ppm", 30, 0, 5000);
  f.detail = true;
  f.hint = "Beverage grade is sold with at most 30; no purging gets below it.";
  return f;
}

std::vector<Field> vessel_fields() {
  return {brimful_field(),          beer_volume_field("Beer to go in", units::litres(18.5)),
          altitude_field(),         gas_temperature_field(),
          supply_oxygen_field(),    dial_error_field(),
          thermometer_error_field()};
}

physics::Vessel vessel_of(const Inputs& in) {
  return {.gas_space = in.get<units::Volume>("brimful"),
          .beer = in.get<units::Volume>("beer"),
          .ambient = air_at(in).value(),
          .temperature = in.get<units::Temperature>("temperature")};
}

physics::SupplyGas supply_of(const Inputs& in) { return {physics::ppm(in.number("supply"))}; }

// What the keg, the instruments and the weather leave open.
struct KnownPurge {
  physics::KnownVessel vessel;
  Estimate<units::PressureDifference> off;

  [[nodiscard]] physics::Result<physics::PurgeEstimate> by(std::span<const physics::PurgeAct> acts,
                                                           const Inputs& in) const {
    return physics::purge_estimate(vessel, acts, off, {"purge: gas used"}, supply_of(in));
  }
};

KnownPurge known_purge(const Inputs& in) {
  const auto keg = in.get<units::Volume>("brimful");
  const auto beer = in.get<units::Volume>("beer");
  return {{Estimate(keg).with_error({"keg: brimful"}, units::Volume(keg_volume_share * keg)),
           Estimate(beer).with_error({"how much beer goes in"},
                                     units::Volume(beer_volume_share * beer)),
           air_at(in), on_thermometer(in, "temperature")},
          Estimate(units::psi(0))
              .with_error({"dial: bias"}, in.get<units::PressureDifference>("dial"))};
}

physics::Result<physics::PurgeEstimate> purge_known(const Inputs& in,
                                                    const physics::PurgeAct& act) {
  return known_purge(in).by(std::span(&act, 1), in);
}

void tell(const physics::PurgeEstimate& known, Answer& a) {
  const physics::PurgeOutcome& out = known.outcome;
  a.values.push_back(
      because(known.oxygen_errors, between("Oxygen left", out.oxygen, out.best, out.worst, true)));
  a.values.push_back(
      because(known.in_beer_errors, between("In the beer, if it takes all up", out.if_all_in_beer,
                                            known.if_all_in_beer_best, out.if_all_in_beer_worst)));
  a.values.push_back(estimated("Gas used", known.co2_used));
  a.sentences.emplace_back("The beer’s own oxygen comes on top of it.");
}

Chart chart_by(std::string title, std::string x_title) {
  return {
      .title = std::move(title), .x_title = std::move(x_title), .y_title = "Oxygen", .log_y = true};
}

// Where a target was asked: so many cycles.
std::optional<Problem> tell_cycles(const Inputs& in, const Printer& printer, Answer& a) {
  if (!in.has("target")) return std::nullopt;
  const KnownPurge known = known_purge(in);
  const auto n =
      physics::cycles_needed(physics::ppm(in.number("target")), known.vessel,
                             in.get<units::GaugePressure>("pressure"), known.off, supply_of(in));
  if (!n) return problem_of(n.error(), purge_subjects, in, printer);
  const auto whole = [](double cycles) { return Count{std::ceil(cycles)}; };
  AnswerValue value =
      n->most
          ? between("Cycles to the target", whole(n->likely), whole(n->fewest), whole(*n->most))
          : in_words("Cycles to the target", print(Value(whole(n->likely)), printer) +
                                                 ", or none do: the dial may stand so without gas");
  a.values.push_back(because(n->errors, std::move(value)));
  return std::nullopt;
}

Outcome purge_cycles(const Inputs& in, const Printer& printer) {
  const auto high = in.get<units::GaugePressure>("pressure");
  const int cycles = static_cast<int>(std::lround(in.number("cycles")));
  const auto out = purge_known(in, physics::PressureCycles{cycles, high, {}});
  if (!out) return std::unexpected(problem_of(out.error(), purge_subjects, in, printer));
  Answer a;
  tell(*out, a);
  if (auto problem = tell_cycles(in, printer, a)) return std::unexpected(std::move(*problem));
  a.cautions.emplace_back("Vent outdoors or into a well-aired room; CO₂ collects low.");
  if (high > units::gauge_psi(30)) {
    a.cautions.emplace_back("Look at the pressure stamped on the keg before you set this much.");
  }
  a.chart = chart_by("Oxygen by cycle", "Cycles");
  a.chart.dots = true;
  for (int n = 0; n <= std::max(cycles, cycles_drawn); ++n) {
    const auto at = purge_known(in, physics::PressureCycles{n, high, {}});
    if (!at) break;
    const physics::PurgeOutcome& left = at->outcome;
    a.chart.points.push_back({Count{static_cast<double>(n)}, left.best, left.oxygen, left.worst});
  }
  return a;
}

Outcome purge_sweep(const Inputs& in, const Printer& printer) {
  const double volumes = in.number("volumes");
  const auto out = purge_known(in, physics::Sweep{volumes});
  if (!out) return std::unexpected(problem_of(out.error(), purge_subjects, in, printer));
  Answer a;
  tell(*out, a);
  a.sentences.emplace_back(
      "A sweep from post to relief valve short-cuts much of the keg; fills and vents mix better.");
  a.cautions.emplace_back("Vent outdoors or into a well-aired room; CO₂ collects low.");
  a.chart = chart_by("Oxygen by volumes swept", "Volumes swept");
  const double last = std::max(volumes, 5.0);
  for (int i = 0; i <= sweep_points; ++i) {
    const double n = last * i / sweep_points;
    const auto at = purge_known(in, physics::Sweep{n});
    if (!at) break;
    const physics::PurgeOutcome& left = at->outcome;
    a.chart.points.push_back({Count{n}, left.best, left.oxygen, left.worst});
  }
  return a;
}

Outcome purge_push(const Inputs& in, const Printer& printer) {
  physics::LiquidPush push{.pressure = in.get<units::GaugePressure>("pressure")};
  const double air = in.get<units::Fraction>("air_left").count();
  push.air_left = units::fraction(air);
  push.air_left_worst = units::fraction(std::min(1.0, air * 3));
  const auto out = purge_known(in, push);
  if (!out) return std::unexpected(problem_of(out.error(), purge_subjects, in, printer));
  Answer a;
  tell(*out, a);
  a.sentences.emplace_back(
      "Fill to the brim, through the relief valve: what air stays on top is what counts.");
  a.cautions.emplace_back("Push with little pressure and the relief valve at hand.");
  return a;
}

// "11 fills to 30 psi", "liquid pushed out, then 2 fills to 20 psi"
std::string purge_way_words(const physics::PurgePlan& plan, const Printer& printer) {
  const int n = plan.cycles.cycles;
  std::string fills = std::to_string(n) + (n == 1 ? " fill to " : " fills to ") +
                      printer.print(plan.cycles.high) + ", let down";
  switch (plan.way) {
    case physics::PurgeWay::cycles:
      return fills;
    case physics::PurgeWay::sweep:
      return "A sweep of " + print(Value(Count{plan.vessel_volumes}), printer) + " keg volumes";
    case physics::PurgeWay::liquid_push:
      return "Filled with liquid, pushed out";
    case physics::PurgeWay::push_then_cycles:
      break;
  }
  return "Filled with liquid, pushed out, then " + fills;
}

physics::PurgeMeans purge_means_in(const Inputs& in) {
  const auto highest = in.get<units::GaugePressure>("pressure");
  physics::PurgeMeans means;
  means.pressures = {highest};
  for (const double psi : {10.0, 20.0}) {
    if (units::gauge_psi(psi) < highest) means.pressures.push_back(units::gauge_psi(psi));
  }
  means.liquid = in.choice("liquid") == 0;
  means.push = std::min(means.push, highest);
  means.gas = supply_of(in);
  return means;
}

// Whether the second way may as well take less: both by one keg, dial and method.
bool may_be_turned_round(const Estimate<units::Mass>& first, const Estimate<units::Mass>& second) {
  const auto more = units::propagate(
      [](units::Mass a, units::Mass b) { return units::Mass(b - a); }, first, second);
  return units::in_grams(more.low()) <= 0;
}

Outcome purge_cheapest(const Inputs& in, const Printer& printer) {
  const auto target = physics::ppm(in.number("target"));
  const physics::PurgeMeans means = purge_means_in(in);
  const auto plans = physics::purge_plans(target, vessel_of(in), means);
  if (!plans) return std::unexpected(problem_of(plans.error(), purge_subjects, in, printer));
  if (plans->empty()) {
    return std::unexpected(
        impossible("target", "Nothing gets there within sixty fills or volumes of gas."));
  }
  const KnownPurge known = known_purge(in);
  std::vector<Estimate<units::Mass>> used;
  Answer a;
  for (const physics::PurgePlan& plan : *plans) {
    const auto told = known.by(physics::acts_of(plan, means), in);
    if (!told) return std::unexpected(problem_of(told.error(), purge_subjects, in, printer));
    const physics::PurgeOutcome& left = told->outcome;
    if (used.empty()) {
      a.values.push_back(because(
          told->oxygen_errors, in_words("Least gas takes", purge_way_words(plan, printer), true)));
    }
    used.push_back(told->co2_used);
    a.values.push_back(because(
        told->oxygen_errors,
        in_words(purge_way_words(plan, printer), printer.print(told->co2_used) + ", leaves " +
                                                     print_range(left.best, left.worst, printer))));
  }
  if (used.size() > 1 && may_be_turned_round(used[0], used[1])) {
    a.sentences.emplace_back(
        "The first two take as much gas as far as this can tell: choose by the work.");
  }
  a.sentences.emplace_back(
      "Counted by the likely mixing; the range has the best and the worst, and what dial, keg and "
      "weather leave open. Less gas may be more work: count how often the valve is turned.");
  a.cautions.emplace_back("Vent outdoors or into a well-aired room; CO₂ collects low.");
  return a;
}

}  // namespace

void add_purge_computations(std::vector<Computation>& all) {
  Field cycles = number_field("cycles", "Fills and vents", 5, 0, 60);
  cycles.kind = FieldKind::whole_number;
  Field target = number_field("target", "Oxygen wanted, ppm", 0, 1, 209000);
  target.start.reset();
  target.optional = true;
  target.hint = "Blank, or what to reach: the cycles it takes are told.";
  std::vector<Field> by_cycles{pressure_field("pressure", "Filled to", units::gauge_psi(30)),
                               cycles, target};
  std::vector<Field> by_sweep{number_field("volumes", "Keg volumes of gas passed", 5, 0, 60)};
  std::vector<Field> by_push{pressure_field("pressure", "Pushed with", units::gauge_psi(5)),
                             {.key = "air_left",
                              .label = "Air left on top",
                              .kind = FieldKind::fraction,
                              .start = units::fraction(0.01),
                              .least = units::fraction(0),
                              .greatest = units::fraction(0.3),
                              .hint = "Of the keg; 1 % of a soda keg is {}.",
                              .hint_values = {units::litres(0.19)}}};
  std::vector<Field> by_any{number_field("target", "Oxygen wanted, ppm", 200, 1, 209000),
                            pressure_field("pressure", "Filled to at most", units::gauge_psi(30)),
                            choice_field("liquid", "Can be filled with liquid", {"yes", "no"})};
  for (auto* fields : {&by_cycles, &by_sweep, &by_push, &by_any}) {
    for (Field& f : vessel_fields()) fields->push_back(std::move(f));
  }
  all.push_back({"purge_cycles", "How clean does filling and venting purge?", "Oxygen",
                 "purge cycles oxygen ppm fill vent headspace burp times how many",
                 std::move(by_cycles), &laws::purging, purge_cycles});
  all.push_back({"purge_sweep", "How clean does a sweep of gas purge?", "Oxygen",
                 "purge sweep flow through oxygen ppm", std::move(by_sweep), &laws::purging,
                 purge_sweep});
  all.push_back({"purge_push", "How clean does pushing liquid out purge?", "Oxygen",
                 "purge liquid sanitiser sanitizer water push oxygen ppm", std::move(by_push),
                 &laws::purging, purge_push});
  all.push_back({"purge_cheapest", "Which purge takes the least gas?", "Oxygen",
                 "purge cheapest plan target oxygen ppm gas grams best way", std::move(by_any),
                 &laws::cheapest_purge, purge_cheapest});
}

}  // namespace ullage::report::slate
