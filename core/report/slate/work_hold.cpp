// SPDX-License-Identifier: GPL-3.0-or-later
//
// The hold test: readings of a keg with its gas turned off, and whether it loses
// gas. Up to four readings; a single one, or one too early, gets an honest "can't
// tell".
#include <algorithm>
#include <array>
#include <utility>

#include "core/physics/hold_beer.h"
#include "core/report/hold_report.h"
#include "core/report/laws_slate.h"
#include "core/report/slate/fields.h"
#include "core/report/slate/hold_chart.h"
#include "core/units/present.h"

namespace ullage::report::slate {
namespace {

using physics::HoldOutcome;
using physics::HoldReason;
using physics::HoldVerdict;
using physics::Subject;
using units::Estimate;
using units::Printer;

constexpr double beer_co2_half_width = 0.15;  // volumes: what a person knows of it

constexpr auto hold_subjects =
    std::to_array<SubjectField>({{Subject::gauge_pressure, "pressure1"},
                                 {Subject::absolute_pressure, "pressure1"},
                                 {Subject::temperature, "temperature1"},
                                 {Subject::headspace, "beer"},
                                 {Subject::beer_volume, "beer"},
                                 {Subject::time_constant, "beer"},
                                 {Subject::co2, "co2"},
                                 {Subject::co2_above_water, "co2"},
                                 {Subject::volume, "residue"},
                                 {Subject::duration, "after2"},
                                 {Subject::step_time, "after2"},
                                 {Subject::mass, "limit"}});

struct HoldFieldKeys {
  std::string_view after, pressure, temperature;
};
constexpr std::array<HoldFieldKeys, 4> hold_readings_fields{
    {{"", "pressure1", "temperature1"},
     {"after2", "pressure2", "temperature2"},
     {"after3", "pressure3", "temperature3"},
     {"after4", "pressure4", "temperature4"}}};

// What one dial is off by always cancels; a second one is off by itself.
physics::HoldReading hold_reading_in(const Inputs& in, const HoldFieldKeys& keys, int n) {
  const std::string number = std::to_string(n);
  const bool second_dial = n > 1 && in.choice("dials") == 1;
  return {keys.after.empty() ? units::seconds(0) : in.get<units::Duration>(keys.after),
          Estimate(in.get<units::GaugePressure>(keys.pressure))
              .with_error({second_dial ? "second dial: bias" : "dial: bias"},
                          in.get<units::PressureDifference>("dial"))
              .with_error({"dial: reading " + number}, in.get<units::PressureDifference>("repeat")),
          Estimate(in.get<units::Temperature>(keys.temperature))
              .with_error({"thermometer: reading " + number},
                          in.get<units::TemperatureDifference>("thermometer"))};
}

// The readings in order; a later one that is begun must be whole, and be later.
std::expected<std::vector<physics::HoldReading>, Problem> hold_readings_in(const Inputs& in) {
  std::vector<physics::HoldReading> out{hold_reading_in(in, hold_readings_fields[0], 1)};
  for (std::size_t i = 1; i < hold_readings_fields.size(); ++i) {
    const HoldFieldKeys& keys = hold_readings_fields[i];
    if (!in.has(keys.after) && !in.has(keys.pressure)) continue;
    for (const std::string_view key : {keys.after, keys.pressure, keys.temperature}) {
      if (in.has(key)) continue;
      Problem p = impossible(key, "A reading takes its time, its pressure and its temperature.");
      p.fault = Fault::missing;
      return std::unexpected(std::move(p));
    }
    const auto at = in.get<units::Duration>(keys.after);
    if (!(at > out.back().at)) {
      return std::unexpected(
          beyond(keys.after, in, out.back().at,
                 "Readings in order of time, please: this one is no later than the one before."));
    }
    out.push_back(hold_reading_in(in, keys, static_cast<int>(i) + 1));
  }
  return out;
}

physics::HoldTest hold_test_in(const Inputs& in, std::vector<physics::HoldReading> readings) {
  physics::HoldTest test;
  test.gas_space = in.get<units::Volume>("brimful");
  if (in.has("beer")) test.gas_space -= in.get<units::Volume>("beer");
  test.ambient = air_at(in).value();
  test.readings = std::move(readings);
  if (in.has("shut")) test.closed_at = units::Duration(-in.get<units::Duration>("shut"));
  test.wet_residue = in.get<units::Volume>("residue");
  test.service = {in.get<units::GaugePressure>("service"), in.get<units::Temperature>("cold"),
                  in.get<units::Mass>("bottle")};
  return test;
}

using HoldBeer = std::optional<physics::BeerInside>;

std::expected<HoldBeer, Problem> hold_beer_in(const Inputs& in, const Printer& printer) {
  if (!in.has("beer")) return HoldBeer();
  const auto rates = uptake_rates(in);
  if (!rates) return std::unexpected(problem_of(rates.error(), hold_subjects, in, printer));
  return physics::BeerInside{
      in.get<units::Volume>("beer"),
      Estimate(in.get<units::Co2Volumes>("co2")).with({"CO2 in the beer"}, beer_co2_half_width),
      rates->resting,
      {"equilibrium equation"}};
}

std::expected<HoldOutcome, Problem> hold_judged(const Inputs& in, const Printer& printer,
                                                const physics::HoldTest& test,
                                                const HoldBeer& beer) {
  const auto limit = in.get<units::Mass>("limit");
  auto out =
      beer ? physics::judge_hold_with_beer(test, *beer, limit) : physics::judge_hold(test, limit);
  if (!out) return std::unexpected(problem_of(out.error(), hold_subjects, in, printer));
  return *std::move(out);
}

std::string hold_verdict_words(const HoldOutcome& o) {
  switch (o.verdict) {
    case HoldVerdict::holds:
      return "It holds";
    case HoldVerdict::leaks:
      return "It leaks";
    case HoldVerdict::cant_tell:
      break;
  }
  return o.reason == HoldReason::none ? "Can’t tell" : "Can’t tell yet";
}

std::string hold_reason_words(const HoldOutcome& o, const Inputs& in, const Printer& printer) {
  const std::string limit = printer.print(in.get<units::Mass>("limit"));
  switch (o.reason) {
    case HoldReason::one_reading:
      return "One reading tells nothing of a leak: read the same dial again, a day later or more.";
    case HoldReason::too_soon:
      return "Too soon: gas and lid settle for half an hour, and before that nothing counts.";
    case HoldReason::no_pressure:
      return "There is next to no pressure in it: nothing to lose. Fill it to " +
             printer.print(units::gauge_psi(30)) + " or so.";
    case HoldReason::within_errors:
      return "A leak of " + limit +
             " a day could hide in the errors of these readings. Neither a leak nor its absence "
             "is shown.";
    case HoldReason::rose:
      return "The pressure rose by more than the errors explain. A shut keg makes no gas: look at "
             "the readings, and whether its gas was off.";
    case HoldReason::contradictory:
      return "No steady leak fits these readings: one of them is wrong, or something was done in "
             "between.";
    case HoldReason::absorption:
      return "What the beer takes up or gives off could hide a leak of " + limit +
             " a day. Test the keg empty, or wait for weeks.";
    case HoldReason::none:
      break;
  }
  return {};
}

// What either law leaves open.
physics::LeakRange hold_range_of_both(const std::vector<physics::LawFit>& laws) {
  physics::LeakRange out = laws.front().at_test;
  for (const physics::LawFit& f : laws) {
    out.low = std::min(out.low, f.at_test.low);
    out.high = out.high && f.at_test.high ? std::optional(std::max(*out.high, *f.at_test.high))
                                          : std::nullopt;
  }
  return out;
}

// Years are told as years: nobody counts a bottle's life in thousands of days.
std::string hold_bottle_words(units::Duration lasts, const Printer& printer) {
  constexpr double days_a_year = 365.25;
  const double years = units::in_days(lasts) / days_a_year;
  if (years < 2) return printer.print(lasts);
  return years > 10 ? "ten years" : printer.number(years, 0) + " years";
}

void tell_hold_laws(const physics::HoldTest& test, const HoldOutcome& o, const Printer& printer,
                    Answer& a) {
  if (o.laws.empty()) return;
  const auto both = hold_range_of_both(o.laws);
  const auto& causes = o.leak_per_day.contributions();
  if (both.high) {
    a.values.push_back(because(
        causes,
        in_words("At most (95 %)", both.high->value() > 0 ? printer.print(*both.high) + " a day"
                                                          : std::string("nothing"))));
  }
  const std::array<std::string, 2> states{
      "At " + printer.print(test.readings.front().pressure.value()),
      "In use at " + printer.print(test.service.pressure)};
  for (const physics::LawFit& fit : o.laws) {
    const std::string way = fit.law == physics::LeakLaw::viscous ? ", by a scratch" : ", by a hole";
    a.values.push_back(
        because(causes, in_words(states[0] + way, say_leak(fit.at_test, printer) + " a day")));
    a.values.push_back(
        because(causes, in_words(states[1] + way, say_leak(fit.at_service, printer) + " a day")));
  }
  if (o.bottle.soonest) {
    const std::string lasts = hold_bottle_words(*o.bottle.soonest, printer);
    const bool sooner = o.bottle.likely && *o.bottle.likely < units::days(3650);
    const std::string likely =
        sooner ? "; likely " + hold_bottle_words(*o.bottle.likely, printer) : std::string();
    a.values.push_back(because(
        causes, in_words("A bottle of " + printer.print(present(test.service.bottle)) + " lasts",
                         lasts + " at least" + likely)));
  }
}

void tell_hold(const Inputs& in, const physics::HoldTest& test, const HoldOutcome& o,
               const Printer& printer, Answer& a) {
  a.values.push_back(because(o.leak_per_day.contributions(),
                             in_words("By these readings", hold_verdict_words(o), true)));
  if (const std::string why = hold_reason_words(o, in, printer); !why.empty()) {
    a.sentences.push_back(why);
  }
  if (test.readings.size() < 2) return;
  a.values.push_back(
      because(o.change.contributions(), exactly("Without a leak it would read", o.expected)));
  a.values.push_back(estimated("The last reading is off that by", o.change));
  if (o.smallest_visible_per_day) {
    a.values.push_back(estimated("Lost a day, over the test", o.leak_per_day));
    tell_hold_laws(test, o, printer, a);
    a.values.push_back(
        because(o.leak_per_day.contributions(),
                exactly("Smallest leak it could see, a day", *o.smallest_visible_per_day)));
  }
  if (o.read_again_at && o.verdict == HoldVerdict::cant_tell) {
    a.values.push_back(because(o.leak_per_day.contributions(),
                               exactly("Read again, after the first reading", *o.read_again_at)));
  } else if (o.reason == HoldReason::within_errors) {
    a.sentences.emplace_back("With this dial no later reading would decide it: take a finer one.");
  }
  if (o.proven_down_to) {
    a.sentences.push_back("Lids seat with pressure: this proves it down to " +
                          printer.print(*o.proven_down_to) + ", not below.");
  }
}

Outcome hold_test(const Inputs& in, const Printer& printer) {
  if (in.has("beer") && in.get<units::Volume>("beer") >= in.get<units::Volume>("brimful")) {
    const auto holds = in.get<units::Volume>("brimful");
    return std::unexpected(
        beyond("beer", in, holds, "It holds no more than " + printer.print(holds) + "."));
  }
  auto readings = hold_readings_in(in);
  if (!readings) return std::unexpected(std::move(readings.error()));
  const physics::HoldTest test = hold_test_in(in, *std::move(readings));
  const auto beer = hold_beer_in(in, printer);
  if (!beer) return std::unexpected(beer.error());
  const auto outcome = hold_judged(in, printer, test, *beer);
  if (!outcome) return std::unexpected(outcome.error());
  Answer a;
  tell_hold(in, test, *outcome, printer, a);
  if (in.has("beer")) {
    a.sentences.emplace_back(
        "What the beer takes up and gives off is counted in. Tested empty, a keg tells more in a "
        "day.");
  }
  a.cautions.emplace_back(
      "Never loosen a lid or a post on a keg under pressure, whatever leaks: let the gas out "
      "first.");
  a.chart = hold_chart(in, test, *outcome, *beer);
  return a;
}

Field hold_temperature_field(std::string_view key, std::string_view label) {
  return {.key = key,
          .label = label,
          .kind = FieldKind::temperature,
          .start = units::celsius(20),
          .least = units::celsius(-5),
          .greatest = units::celsius(45)};
}

Field hold_difference_field(std::string_view key, std::string_view label, FieldKind kind,
                            Value start, Value greatest) {
  return {.key = key,
          .label = label,
          .kind = kind,
          .start = start,
          .least = with_magnitude(start, 0),
          .greatest = std::move(greatest)};
}

void add_hold_readings(std::vector<Field>& fields) {
  const auto after = [](std::string_view key, std::string_view label) {
    return duration_field(key, label, units::hours(24), units::minutes(1), units::days(90));
  };
  Field second = after("after2", "Second reading, after");
  second.optional = true;
  Field second_pressure = pressure_field("pressure2", "Second reading", units::gauge_psi(27.5));
  second_pressure.optional = true;
  Field second_temperature = hold_temperature_field("temperature2", "The keg then at");
  second_temperature.optional = true;
  second_temperature.start = units::celsius(4);
  fields.push_back(pressure_field("pressure1", "First reading, gas off", units::gauge_psi(30)));
  fields.push_back(hold_temperature_field("temperature1", "The keg at"));
  fields.push_back(std::move(second));
  fields.push_back(std::move(second_pressure));
  fields.push_back(std::move(second_temperature));
  const auto more = [&](std::string_view key, std::string_view label, std::string_view pressure,
                        std::string_view words, std::string_view temperature) {
    fields.push_back(further(may_be_blank(after(key, label))));
    fields.push_back(further(may_be_blank(pressure_field(pressure, words, units::gauge_psi(30)))));
    fields.push_back(further(may_be_blank(hold_temperature_field(temperature, "The keg then at"))));
  };
  more("after3", "Third reading, after", "pressure3", "Third reading", "temperature3");
  more("after4", "Fourth reading, after", "pressure4", "Fourth reading", "temperature4");
}

std::vector<Field> hold_fields() {
  std::vector<Field> fields;
  add_hold_readings(fields);
  Field repeat =
      hold_difference_field("repeat", "The dial repeats itself within",
                            FieldKind::pressure_difference, units::psi(0.5), units::psi(10));
  repeat.hint = "How finely you can read it: what it is off by always, cancels.";
  Field beer = may_be_blank(beer_volume_field("Beer in it", units::litres(18)));
  beer.hint = "Blank for an empty keg, which tells far more.";
  Field residue{.key = "residue",
                .label = "Water that may be left inside",
                .kind = FieldKind::volume,
                .start = units::litres(0.25),
                .least = units::litres(0),
                .greatest = units::litres(5)};
  residue.hint = "It takes up CO₂, which looks like a leak.";
  fields.push_back(std::move(repeat));
  fields.push_back(brimful_field());
  fields.push_back(std::move(beer));
  fields.push_back(further(co2_field("co2", "CO₂ in that beer", units::volumes_of_co2(2.5))));
  fields.push_back(further(std::move(residue)));
  fields.push_back(further(hold_difference_field(
      "thermometer", "The thermometer repeats itself within", FieldKind::temperature_difference,
      units::kelvin_difference(0.3), units::kelvin_difference(5))));
  fields.push_back(dial_error_field());
  Field dials = further(choice_field("dials", "Read on", {"one dial", "another dial later"}));
  dials.hint = "What one dial is off by always, cancels. What two are off by, does not.";
  fields.push_back(std::move(dials));
  Field shut =
      further(may_be_blank(duration_field("shut", "Gas turned off before the first reading by",
                                          units::hours(1), units::seconds(0), units::days(90))));
  shut.hint = "Blank: just then, and gas and lid still settle.";
  fields.push_back(std::move(shut));
  fields.push_back(further(mass_field("limit", "A leak from, a day",
                                      units::grams(physics::leak_limit_grams_per_day),
                                      units::grams(0.1), units::grams(1000))));
  fields.push_back(further(pressure_field("service", "Served at", units::gauge_psi(12))));
  fields.push_back(further(hold_temperature_field("cold", "And at")));
  fields.back().start = units::celsius(4);
  fields.push_back(further(mass_field("bottle", "Gas in a full bottle", units::kilograms(6),
                                      units::kilograms(0.2), units::kilograms(150))));
  fields.push_back(altitude_field());
  fields.push_back(uptake_field());
  fields.push_back(uptake_factor_field());
  return fields;
}

}  // namespace

void add_hold_computations(std::vector<Computation>& all) {
  all.push_back({"hold_test", "Does a keg hold its gas?", "Gas",
                 "hold test leak leaking tight seal lid pressure drop falls lost gas grams",
                 hold_fields(), &laws::hold_test, hold_test});
}

}  // namespace ullage::report::slate
