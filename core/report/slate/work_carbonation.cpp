// SPDX-License-Identifier: GPL-3.0-or-later
//
// Carbonation over time without a keg's history: a burst ended in time, and a
// pressure left to do its work.
#include <algorithm>

#include "core/physics/carbonation.h"
#include "core/physics/carbonation_answers.h"
#include "core/physics/equilibrium.h"
#include "core/report/slate/typed_keg.h"

namespace ullage::report::slate {
namespace {

using physics::CarbonationModel;
using units::Estimate;
using units::Printer;

constexpr int curve_points = 80;

constexpr auto burst_subjects = keg_subjects("burst", "start");

Field burst_pressure_field() {
  return pressure_field("pressure", "Pressure now", units::gauge_psi(30));
}

}  // namespace

std::vector<Field> keg_fields() {
  Field start = co2_field("start", "CO₂ in it at the start", units::volumes_of_co2(0.85));
  start.hint = "Beer that fermented at room temperature keeps about {}.";
  start.hint_values = {units::volumes_of_co2(0.85)};
  Field share = co2_share_field();
  Field dial = dial_error_field();
  // One thermometer for beer and place; a degree, as a fridge display is read.
  Field thermometer = thermometer_error_field();
  thermometer.start = units::kelvin_difference(1);
  thermometer.us_start = units::fahrenheit_difference(2);
  thermometer.hint = "For a fridge display take twice as much.";
  return {co2_field("low", "Wanted, from", units::volumes_of_co2(2.4)),
          co2_field("high", "Wanted, to", units::volumes_of_co2(2.6)),
          beer_temperature_field("temperature", "Beer now at", units::celsius(20)),
          place_temperature_field(units::celsius(3)),
          brimful_field(),
          beer_volume_field("Beer in it", units::litres(18.5)),
          std::move(start),
          co2_error_field("start_error", "The CO₂ in it may be off by"),
          altitude_field(),
          std::move(share),
          std::move(dial),
          std::move(thermometer),
          uptake_field(),
          uptake_factor_field()};
}

physics::CarbonationHistory history_of(const Inputs& in) {
  const auto share = gas_share(in);
  physics::CarbonationHistory h;
  h.brimful = in.get<units::Volume>("brimful");
  h.beer = in.get<units::Volume>("beer");
  h.initial =
      Estimate(in.get<units::Co2Volumes>("start"))
          .with({"CO₂ in it at the start"}, in.get<units::Co2Volumes>("start_error").count());
  h.ambient = air_at(in);
  h.start = on_thermometer(in, "temperature");
  h.headspace_co2 = share;
  h.steps.push_back({units::seconds(0), physics::PlaceChanged{on_thermometer(in, "place")}});
  h.steps.push_back({units::seconds(0), physics::GasOn{on_dial(in, "pressure"), share}});
  return h;
}

std::optional<Problem> check_range(const Inputs& in, const Printer& printer) {
  const auto low = in.get<units::Co2Volumes>("low");
  const auto high = in.get<units::Co2Volumes>("high");
  if (low <= high) return std::nullopt;
  Problem p =
      impossible("high", "The range ends below where it begins, at " + printer.print(low) + ".");
  p.value = Value(high);
  p.limit = Value(low);
  return p;
}

namespace {

// What its CO2 is unsure of at that time makes the time unsure.
std::vector<units::Contribution> causes_at(const CarbonationModel& model,
                                           const std::optional<units::Duration>& when) {
  const auto co2 = when ? model.co2_at(*when) : model.equilibrium_end();
  return co2 ? co2->contributions() : std::vector<units::Contribution>{};
}

}  // namespace

AnswerValue window_value(std::string name, const physics::Window& w, const CarbonationModel& model,
                         bool main) {
  auto causes = causes_at(model, w.likely);
  if (!w.likely)
    return because(std::move(causes), in_words(std::move(name), "not at this setting", main));
  if (w.earliest && w.latest)
    return because(std::move(causes),
                   between(std::move(name), *w.likely, *w.earliest, *w.latest, main));
  AnswerValue value = because(std::move(causes), exactly(std::move(name), *w.likely, main));
  if (w.earliest) value.low = Value(*w.earliest);
  return value;
}

void draw_co2(const CarbonationModel& model, const Inputs& in, units::Duration until, Answer& a) {
  a.chart.title = "CO₂ over time";
  a.chart.x_title = "After";
  a.chart.y_title = "CO₂";
  a.chart.band_low = Value(in.get<units::Co2Volumes>("low"));
  a.chart.band_high = Value(in.get<units::Co2Volumes>("high"));
  const auto curve = model.curve(units::seconds(0), std::min(until, model.end()), curve_points);
  if (!curve) return;
  for (const physics::CarbonationPoint& p : *curve) {
    a.chart.points.push_back({p.time, p.low, p.median, p.high});
  }
}

namespace {

// A window whose slow edge never arrives says so.
void tell_open_window(const physics::Window& w, const std::string& what, Answer& a) {
  if (w.likely && !w.latest) {
    a.sentences.push_back("A slow keg, or a dial that reads high, may never " + what + ".");
  }
}

units::Co2Volumes middle_of(const Inputs& in) {
  return units::volumes_of_co2(
      (in.get<units::Co2Volumes>("low").count() + in.get<units::Co2Volumes>("high").count()) / 2);
}

Outcome set_and_wait(const Inputs& in, const Printer& printer) {
  if (auto bad = check_range(in, printer)) return std::unexpected(std::move(*bad));
  const auto rates = uptake_rates(in);
  if (!rates) return std::unexpected(problem_of(rates.error(), burst_subjects, in, printer));
  const auto model = CarbonationModel::make(history_of(in), *rates, units::days(90));
  if (!model) return std::unexpected(problem_of(model.error(), burst_subjects, in, printer));
  const auto low = in.get<units::Co2Volumes>("low");
  const auto high = in.get<units::Co2Volumes>("high");
  const physics::Window reaches = model->time_to_reach(low, units::seconds(0));
  const physics::Window leaves = model->time_leaving(high, units::seconds(0));
  const auto settles = model->equilibrium_end();
  Answer a;
  a.values.push_back(window_value("In its range after", reaches, *model, true));
  a.values.push_back(estimated("It settles at", settles));
  tell_open_window(reaches, "get there", a);
  if (leaves.likely) {
    a.values.push_back(window_value("Past its range after", leaves, *model, false));
    a.sentences.emplace_back(
        "This pressure leads past the range: lower it in time, and vent, since lowering a "
        "regulator lets no gas out.");
  } else if (!reaches.likely) {
    a.sentences.emplace_back("It stops short of the range: set more pressure, or cool it.");
  }
  const units::Duration shown = reaches.latest
                                    ? *reaches.latest * 1.3
                                    : (reaches.likely ? *reaches.likely * 2.0 : units::days(21));
  draw_co2(*model, in, std::clamp(shown, units::days(4), units::days(60)), a);
  return a;
}

// The burst as asked, followed by venting to the serving pressure.
physics::Result<CarbonationModel> burst_then_serve(const Inputs& in,
                                                   const physics::CarbonationRates& rates,
                                                   units::Duration burst) {
  physics::CarbonationHistory h = history_of(in);
  const auto serving = in.get<units::GaugePressure>("serving");
  h.steps.push_back({burst, physics::Vented{serving}});
  h.steps.push_back({burst, physics::GasOn{on_dial(in, "serving"), gas_share(in)}});
  return CarbonationModel::make(h, rates, units::days(45));
}

void tell_drop(const physics::DropPlan& plan, const CarbonationModel& model, const Inputs& in,
               const Printer& printer, Answer& a) {
  a.values.push_back(window_value("Lower and vent after", plan.drop, model, true));
  if (!plan.drop.likely) {
    a.sentences.emplace_back("At this pressure it does not get there: no need to lower it.");
    return;
  }
  a.sentences.push_back("Then set " + printer.print(in.get<units::GaugePressure>("serving")) +
                        " and open the relief valve until the keg stands at it: about " +
                        printer.print(plan.vent_by) + " to let out.");
  a.sentences.push_back("With the regulator lowered only, it would go on to " +
                        printer.print(plan.if_not_vented) + ".");
}

Outcome burst(const Inputs& in, const Printer& printer) {
  if (auto bad = check_range(in, printer)) return std::unexpected(std::move(*bad));
  const auto rates = uptake_rates(in);
  if (!rates) return std::unexpected(problem_of(rates.error(), burst_subjects, in, printer));
  const auto model = CarbonationModel::make(history_of(in), *rates, units::days(60));
  if (!model) return std::unexpected(problem_of(model.error(), burst_subjects, in, printer));
  const auto plan =
      physics::drop_plan(*model, middle_of(in), on_dial(in, "serving"), units::seconds(0));
  if (!plan) return std::unexpected(problem_of(plan.error(), burst_subjects, in, printer));
  const auto length = in.maybe<units::Duration>("burst");
  const units::Duration burst_for = length ? *length : plan->drop.likely.value_or(units::days(7));
  const auto served = burst_then_serve(in, *rates, burst_for);
  if (!served) return std::unexpected(problem_of(served.error(), burst_subjects, in, printer));
  const auto then = served->co2_at(burst_for);
  if (!then) return std::unexpected(problem_of(then.error(), burst_subjects, in, printer));
  Answer a;
  tell_drop(*plan, *model, in, printer, a);
  if (length) {
    a.values.push_back(estimated("CO₂ after " + printer.print(*length), *then));
  }
  a.values.push_back(estimated("At serving pressure it settles at", served->equilibrium_end()));
  if (in.get<units::GaugePressure>("pressure") > units::gauge_psi(30)) {
    a.cautions.emplace_back("Look at the pressure stamped on the keg before you set this much.");
  }
  draw_co2(*served, in, std::clamp(burst_for * 3.0, units::days(4), units::days(40)), a);
  a.chart.marks.push_back({burst_for, "lower and vent"});
  return a;
}

Outcome drift(const Inputs& in, const Printer& printer) {
  if (auto bad = check_range(in, printer)) return std::unexpected(std::move(*bad));
  const auto over = in.get<units::Duration>("over");
  const auto rates = uptake_rates(in);
  if (!rates) return std::unexpected(problem_of(rates.error(), burst_subjects, in, printer));
  const auto model = CarbonationModel::make(history_of(in), *rates, over);
  if (!model) return std::unexpected(problem_of(model.error(), burst_subjects, in, printer));
  const auto d = physics::drift_at(*model, on_dial(in, "pressure"), units::seconds(0), over);
  if (!d) return std::unexpected(problem_of(d.error(), burst_subjects, in, printer));
  Answer a;
  a.values.push_back(estimated("CO₂ after " + printer.print(over), d->then, true));
  a.values.push_back(estimated("More or less by", d->change));
  a.values.push_back(estimated("In the end", d->in_the_end));
  const physics::Window leaves =
      model->time_leaving(in.get<units::Co2Volumes>("high"), units::seconds(0));
  if (leaves.likely)
    a.values.push_back(window_value("Past its range after", leaves, *model, false));
  a.sentences.emplace_back(
      "Left alone at one pressure and temperature. Drawing beer makes room for gas and hardly "
      "changes where it ends.");
  draw_co2(*model, in, over, a);
  return a;
}

}  // namespace

void add_carbonation_computations(std::vector<Computation>& all) {
  std::vector<Field> bursting{burst_pressure_field()};
  Field serving = pressure_field("serving", "Then serve at", units::gauge_psi(11));
  Field length{.key = "burst",
               .label = "Left at it for",
               .kind = FieldKind::duration,
               .start = {},
               .least = units::minutes(1),
               .greatest = units::days(30),
               .optional = true,
               .hint = "Leave it blank to be told when to stop."};
  bursting.push_back(std::move(serving));
  bursting.push_back(std::move(length));
  for (Field& f : keg_fields()) bursting.push_back(std::move(f));
  std::vector<Field> waiting{pressure_field("pressure", "Pressure", units::gauge_psi(12))};
  for (Field& f : keg_fields()) waiting.push_back(std::move(f));
  Field over = duration_field("over", "For", units::days(14), units::minutes(5), units::days(300));
  std::vector<Field> drifting{pressure_field("pressure", "Served at", units::gauge_psi(12)),
                              std::move(over)};
  for (Field& f : keg_fields()) {
    if (f.key == "start") {
      f.label = "CO₂ in it now";
      f.start = units::volumes_of_co2(2.5);
      f.hint = {};
    }
    if (f.key == "temperature") f.start = units::celsius(3);
    drifting.push_back(std::move(f));
  }
  all.push_back({"burst", "How long at high pressure?", "CO₂",
                 "burst force quick carbonate fast 30 psi drop vent overshoot carbonation",
                 std::move(bursting), &laws::carbonation, burst});
  all.push_back({"set_and_wait", "How long at a pressure?", "CO₂",
                 "set and wait forget carbonate days ready time carbonation serving slow",
                 std::move(waiting), &laws::carbonation, set_and_wait});
  all.push_back({"drift", "How far does CO₂ drift on tap?", "CO₂",
                 "drift serving pressure weeks goes flat over carbonates days later tap",
                 std::move(drifting), &laws::carbonation, drift});
}

}  // namespace ullage::report::slate
