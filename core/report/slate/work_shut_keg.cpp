// SPDX-License-Identifier: GPL-3.0-or-later
//
// A keg of beer with its gas off: what its dial comes to. And what pure CO2 a blend is
// like.
#include <algorithm>
#include <array>
#include <cmath>

#include "core/physics/closed_keg.h"
#include "core/physics/co2_gas.h"
#include "core/physics/equilibrium.h"
#include "core/physics/gas_blend.h"
#include "core/report/laws_slate.h"
#include "core/report/slate/fields.h"

namespace ullage::report::slate {
namespace {

using physics::Subject;
using units::Estimate;
using units::Printer;

constexpr double known_co2_half_width = 0.15;  // volumes: what a person knows of it
constexpr int shut_points = 80;

constexpr auto shut_subjects =
    std::to_array<SubjectField>({{Subject::gauge_pressure, "pressure"},
                                 {Subject::absolute_pressure, "pressure"},
                                 {Subject::temperature, "place"},
                                 {Subject::volume, "brimful"},
                                 {Subject::beer_volume, "beer"},
                                 {Subject::headspace, "beer"},
                                 {Subject::co2, "co2"},
                                 {Subject::co2_above_water, "co2"},
                                 {Subject::time_constant, "days"}});
constexpr auto blend_subjects =
    std::to_array<SubjectField>({{Subject::gauge_pressure, "pressure"},
                                 {Subject::absolute_pressure, "pressure"},
                                 {Subject::co2_fraction, "share"},
                                 {Subject::co2, "pressure"},
                                 {Subject::co2_above_water, "pressure"},
                                 {Subject::temperature, "temperature"}});

struct ShutInputs {
  Estimate<units::GaugePressure> pressure;
  Estimate<units::Temperature> now, later;
  Estimate<units::AbsolutePressure> air;
  Estimate<units::Co2Volumes> co2;
  Estimate<units::Co2Volumes> equation_off;
};

ShutInputs shut_inputs(const Inputs& in) {
  const double miss = physics::equation_half_width(physics::Equation::fitted_chart).count();
  return {
      on_dial(in, "pressure"),
      on_thermometer(in, "temperature"),
      on_thermometer(in, "place"),
      air_at(in),
      Estimate(in.get<units::Co2Volumes>("co2")).with({"CO₂ in the beer"}, known_co2_half_width),
      Estimate(units::volumes_of_co2(0)).with({"equilibrium equation"}, miss)};
}

// Where headspace and beer come to rest together, warmed or cooled to `later`. An
// equation that is off by so much is as if the beer held that much less.
physics::Result<physics::KegAtRest> shut_at_rest(const Inputs& in, units::GaugePressure p,
                                                 units::Temperature now, units::Temperature later,
                                                 units::AbsolutePressure air, units::Co2Volumes co2,
                                                 units::Co2Volumes equation_off) {
  const physics::ClosedKeg then{in.get<units::Volume>("brimful"), in.get<units::Volume>("beer"),
                                later};
  physics::ClosedKeg first = then;
  first.temperature = now;
  const auto total = physics::co2_in_keg(first, {p.at_ambient(air), co2});
  if (!total) return std::unexpected(total.error());
  const auto rest =
      physics::at_rest(then, *total - physics::dissolved_amount(equation_off, then.beer));
  if (!rest) return rest;
  return physics::KegAtRest{rest->headspace,
                            units::volumes_of_co2(rest->co2.count() + equation_off.count())};
}

template <class Of>
auto shut_answer(const Inputs& in, const ShutInputs& known, const Of& of) {
  using Q =
      decltype(of(std::declval<physics::KegAtRest>(), std::declval<units::AbsolutePressure>()));
  return units::try_propagate(
      [&](units::GaugePressure p, units::Temperature now, units::Temperature later,
          units::AbsolutePressure air, units::Co2Volumes co2,
          units::Co2Volumes off) -> physics::Result<Q> {
        const auto rest = shut_at_rest(in, p, now, later, air, co2, off);
        if (!rest) return std::unexpected(rest.error());
        return of(*rest, air);
      },
      known.pressure, known.now, known.later, known.air, known.co2, known.equation_off);
}

// The dial over time, by what is likely.
void draw_shut(const Inputs& in, const ShutInputs& known, const physics::CarbonationRates& rates,
               units::Duration until, Answer& a) {
  physics::CarbonationHistory h;
  h.brimful = in.get<units::Volume>("brimful");
  h.beer = in.get<units::Volume>("beer");
  h.initial = known.co2;
  h.ambient = known.air;
  h.start = known.now;
  h.headspace = known.pressure.value();
  h.steps.push_back({units::seconds(0), physics::PlaceChanged{known.later}});
  h.steps.push_back({units::seconds(0), physics::GasOff{}});
  const auto model = physics::CarbonationModel::make(h, rates, until);
  if (!model) return;
  const auto curve = model->curve(units::seconds(0), until, shut_points);
  if (!curve) return;
  a.chart.title = "The dial over time, gas off";
  a.chart.x_title = "After";
  a.chart.y_title = "Pressure";
  for (const physics::CarbonationPoint& p : *curve)
    a.chart.points.push_back({p.time, p.headspace, p.headspace, p.headspace});
}

Outcome shut_keg(const Inputs& in, const Printer& printer) {
  const auto refused = [&](const physics::RangeError& e) {
    return std::unexpected(problem_of(e, shut_subjects, in, printer));
  };
  const ShutInputs known = shut_inputs(in);
  const auto reads =
      shut_answer(in, known, [](const physics::KegAtRest& r, units::AbsolutePressure air) {
        return units::GaugePressure::from_absolute(r.headspace, air);
      });
  if (!reads) return refused(reads.error());
  const auto co2 = shut_answer(
      in, known, [](const physics::KegAtRest& r, units::AbsolutePressure) { return r.co2; });
  if (!co2) return refused(co2.error());
  const auto rates = uptake_rates(in);
  if (!rates) return refused(rates.error());
  const auto share =
      physics::closed_time_share({in.get<units::Volume>("brimful"), in.get<units::Volume>("beer"),
                                  in.get<units::Temperature>("place")});
  if (!share) return refused(share.error());
  const auto shorter = [&](units::Duration d) { return units::Duration(d * share->count()); };
  Answer a;
  a.values.push_back(estimated(
      "At rest the dial reads",
      reads->with_error({"dial: reading"}, in.get<units::PressureDifference>("dial") * 0.25),
      true));
  a.values.push_back(estimated("The beer then holds", *co2));
  a.values.push_back(
      because(rates->resting.source(),
              between("Two thirds of the way takes", shorter(rates->resting.median()),
                      shorter(rates->resting.low()), shorter(rates->resting.high()))));
  a.sentences.emplace_back(
      "A full keg’s headspace holds next to nothing: the dial goes to what the beer has, and the "
      "beer stays as it is. That is how CO₂ is read by a dial.");
  a.sentences.emplace_back(
      "A tight keg does this; one that falls on and on leaks. The beer’s own "
      "warming or cooling takes its time on top.");
  if (reads->value() > units::gauge_psi(30)) {
    a.cautions.emplace_back("Look at the pressure stamped on the keg before it gets that warm.");
  }
  draw_shut(in, known, *rates, units::Duration(std::max(rates->resting.median(), units::days(2))),
            a);
  return a;
}

Outcome blend_like(const Inputs& in, const Printer& printer) {
  const auto refused = [&](const physics::RangeError& e) {
    return std::unexpected(problem_of(e, blend_subjects, in, printer));
  };
  const auto share = gas_share(in);
  const auto air = air_at(in);
  const auto pure = units::try_propagate(
      [&](units::GaugePressure p, units::AbsolutePressure ambient) {
        // A dial that reads high shows some pressure where there is none.
        return physics::pure_equivalent(std::max(p, units::gauge_psi(0)), share, ambient);
      },
      on_dial(in, "pressure"), air);
  if (!pure) return refused(pure.error());
  const auto holds =
      physics::equilibrium_co2_estimate(on_dial(in, "pressure"), on_thermometer(in, "temperature"),
                                        air, {"equilibrium equation"}, share);
  if (!holds) return refused(holds.error());
  Answer a;
  a.values.push_back(estimated("Like pure CO₂ at", *pure, true));
  a.values.push_back(estimated("At rest the beer holds", *holds));
  const physics::GasAbove gas{in.get<units::GaugePressure>("pressure"), air.value(), share};
  const auto other = physics::equilibrium_co2(gas, in.get<units::Temperature>("temperature"),
                                              physics::Equation::exponential);
  if (other) {
    a.sentences.push_back("A second published equation says " + printer.print(*other) + ".");
  }
  if (pure->value() < units::gauge_psi(0)) {
    a.sentences.emplace_back(
        "Below the air’s own pressure: by itself such a blend lets beer go nearly flat.");
  }
  a.sentences.emplace_back(
      "The beer feels the CO₂’s share of the absolute pressure; the line feels all of it.");
  a.cautions.emplace_back(
      "Nitrogen too takes the air’s place in a room, and nothing about it is noticed.");
  return a;
}

}  // namespace

void add_shut_keg_computations(std::vector<Computation>& all) {
  Field later = place_temperature_field(units::celsius(4));
  later.label = "It comes to";
  all.push_back(
      {"shut_keg",
       "What does a keg read with its gas off?",
       "CO₂",
       "gas off shut closed sealed disconnected warm cold pressure rises falls rest dial",
       {pressure_field("pressure", "On the dial now", units::gauge_psi(30)),
        beer_temperature_field("temperature", "Beer now at", units::celsius(4)), std::move(later),
        co2_field("co2", "CO₂ in it", units::volumes_of_co2(2.5)), brimful_field(),
        beer_volume_field("Beer in it", units::litres(18.5)), altitude_field(), dial_error_field(),
        thermometer_error_field(), uptake_field(), uptake_factor_field()},
       &laws::closed_keg,
       shut_keg});
  Field share = co2_share_field();
  share.detail = false;
  share.start = units::fraction(0.6);
  share.hint = "CO₂ first: a bare ratio is read both ways.";
  all.push_back(
      {"blend_like",
       "What pure CO₂ is a blend like?",
       "CO₂",
       "mixed gas beer gas nitrogen blend equivalent pure partial pressure share stout",
       {pressure_field("pressure", "Pressure of the blend", units::gauge_psi(25)), std::move(share),
        beer_temperature_field("temperature", "Beer at", units::celsius(4)), altitude_field(),
        dial_error_field(), thermometer_error_field()},
       &laws::blends,
       blend_like});
}

}  // namespace ullage::report::slate
