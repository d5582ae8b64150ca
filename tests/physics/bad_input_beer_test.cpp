// SPDX-License-Identifier: GPL-3.0-or-later
//
// Bad input to what is asked of beer in a keg.
#include <array>

#include "core/physics/carbonation_answers.h"
#include "core/physics/closed_keg.h"
#include "core/physics/co2_gas.h"
#include "core/physics/density.h"
#include "core/physics/diffusion.h"
#include "core/physics/equilibrium.h"
#include "core/physics/gas_blend.h"
#include "core/physics/gravity.h"
#include "core/physics/keg_cooling.h"
#include "core/physics/priming.h"
#include "core/physics/purge_plan.h"
#include "core/physics/rescue.h"
#include "tests/physics/bad_input.h"
#include "tests/physics/keg_cases.h"

namespace ullage::physics {
namespace {

using namespace units;
using cases::BadRow;
using cases::expect_refusals;
using cases::Refusal;
using cases::refusal_of;
using cases::with_error;

GasAbove gas_above(double psi_gauge, double share = 1) {
  return {gauge_psi(psi_gauge), sea_level(), mole_fraction(share)};
}

const std::vector<BadRow> equilibrium_and_air_rows{
    {"altitude m",
     1000,
     {-900, 9000},
     [](double v) { return refusal_of(ambient_pressure(metres(v))); }},
    {"gauge psi",
     12,
     {-20, 500},
     [](double v) { return refusal_of(equilibrium_co2(gas_above(v), celsius(4))); }},
    {"beer C",
     4,
     {-20, 90},
     [](double v) { return refusal_of(equilibrium_co2(gas_above(12), celsius(v))); }},
    {"share",
     0.6,
     {0, -1, 1.5},
     [](double v) { return refusal_of(equilibrium_co2(gas_above(30, v), celsius(4))); }},
    {"volumes",
     2.5,
     {0, -1, 30},
     [](double v) {
       return refusal_of(equilibrium_gauge(volumes_of_co2(v), celsius(4), sea_level()));
     }},
    {"air Pa",
     1e5,
     {0, -1, 1e6},
     [](double v) {
       return refusal_of(equilibrium_gauge(volumes_of_co2(2.5), celsius(4), pascals_absolute(v)));
     }},
    {"gauge psi, second opinion",
     12,
     {-20, 500},
     [](double v) { return refusal_of(equilibrium_answer(gas_above(v), celsius(4))); }},
    {"blend: applied psi",
     22,
     {-5, 500},
     [](double v) { return refusal_of(blend_for(gauge_psi(11.8), gauge_psi(v), sea_level())); }},
    {"blend: share",
     0.7,
     {0, -1, 1.5},
     [](double v) {
       return refusal_of(applied_for(gauge_psi(11.8), mole_fraction(v), sea_level()));
     }},
    {"gas: Pa",
     3e5,
     {-1, 4e6},
     [](double v) { return refusal_of(gas_amount(pascals_absolute(v), litres(19), celsius(20))); }},
    {"gas: litres",
     19,
     {0, -1, 1e6},
     [](double v) { return refusal_of(gas_amount(sea_level(), litres(v), celsius(20))); }},
    {"gas: C",
     20,
     {-60, 90},
     [](double v) { return refusal_of(gas_amount(sea_level(), litres(19), celsius(v))); }},
    {"gas: mol",
     1,
     {-1, 1e9},
     [](double v) { return refusal_of(gas_pressure(moles(v), litres(19), celsius(20))); }},
    {"diffusion: depth m",
     0.5,
     {0, -1, 100},
     [](double v) { return refusal_of(diffusion_time(metres(v), celsius(10))); }},
};
TEST(BadInput, EquilibriumAndAir) { expect_refusals(equilibrium_and_air_rows); }

ClosedKeg shut_keg(double beer, double c = 4) { return {litres(19.9), litres(beer), celsius(c)}; }

OverCarbonated rescue_of(double beer, double co2, double target, double c) {
  return {litres(19.9),
          with_error(litres(beer), 4e-4),
          with_error(volumes_of_co2(co2), 0.1),
          with_error(celsius(c), 0.5),
          sea_level(),
          volumes_of_co2(target),
          LogEstimate<Duration>(days(4), 2, {"uptake"})};
}

PrimingQuestion prime(double target, double warmest, double beer) {
  return {litres(19),  litres(beer),           with_error(celsius(warmest), 1.0),
          sea_level(), volumes_of_co2(target), celsius(18),
          celsius(20)};
}

const std::vector<BadRow> closed_kegs_rescue_and_sugar_rows{
    {"shut keg: beer L",
     18,
     {0, -1, 19.9, 50},
     [](double v) { return refusal_of(resting_at(shut_keg(v), volumes_of_co2(2.5))); }},
    {"shut keg: C",
     4,
     {-20, 90},
     [](double v) { return refusal_of(resting_at(shut_keg(18, v), volumes_of_co2(2.5))); }},
    {"shut keg: volumes",
     2.5,
     {0, -1, 30},
     [](double v) { return refusal_of(resting_at(shut_keg(18), volumes_of_co2(v))); }},
    {"vents: beer L",
     18,
     {0, -1, 50},
     [](double v) { return refusal_of(vents_to_target(rescue_of(v, 3.2, 2.5, 4))); }},
    {"vents: volumes",
     3.2,
     {0, -1, 2.4, 30},
     [](double v) { return refusal_of(vents_to_target(rescue_of(18, v, 2.5, 4))); }},
    {"vents: target",
     2.5,
     {0, -1, 3.3, 30},
     [](double v) { return refusal_of(vents_to_target(rescue_of(18, 3.2, v, 4))); }},
    {"vents: C",
     4,
     {-20, 90},
     [](double v) { return refusal_of(vents_to_target(rescue_of(18, 3.2, 2.5, v))); }},
    {"held: target",
     2.5,
     {0, -1, 3.3},
     [](double v) { return refusal_of(hold_at_target(rescue_of(18, 3.2, v, 4))); }},
    {"served: C",
     4,
     {-20, 90},
     [](double v) { return refusal_of(serve_to_target(rescue_of(18, 2.7, 2.5, v))); }},
    {"sugar: target",
     2.5,
     {0, -1, 0.5, 30},
     [](double v) { return refusal_of(priming(prime(v, 20, 18))); }},
    {"sugar: warmest C",
     20,
     {-20, 90},
     [](double v) { return refusal_of(priming(prime(2.5, v, 18))); }},
    {"sugar: beer L",
     18,
     {0, -1, 19, 50},
     [](double v) { return refusal_of(priming(prime(2.5, 20, v))); }},
    {"sugar: grams",
     100,
     {-1, 1e6},
     [](double v) { return refusal_of(primed_to(prime(2.5, 20, 18), grams(v))); }},
    {"sugar: gravity now",
     1.014,
     {0, -1, 1.5},
     [](double v) {
       return refusal_of(co2_still_to_come(specific_gravity(v), specific_gravity(1.010)));
     }},
    {"OG",
     1.050,
     {0, -1, 1.5},
     [](double v) { return refusal_of(fermented(specific_gravity(v), specific_gravity(1.0))); }},
    {"FG",
     1.010,
     {0, -1, 1.2},
     [](double v) { return refusal_of(fermented(specific_gravity(1.05), specific_gravity(v))); }},
    {"density: C",
     20,
     {-20, 90},
     [](double v) { return refusal_of(beer_density(specific_gravity(1.01), celsius(v))); }},
};
TEST(BadInput, ClosedKegsRescueAndSugar) { expect_refusals(closed_kegs_rescue_and_sugar_rows); }

Vessel purged(double space, double oxygen = 0.209) {
  return {litres(space), litres(19), sea_level(), celsius(20), mole_fraction(oxygen)};
}

const std::vector<BadRow> purge_rows{
    {"cycles",
     5,
     {-1, 1000},
     [](double v) {
       // No number of cycles is not a number: an int carries what it can.
       const int n = std::isfinite(v) ? static_cast<int>(v) : -1;
       return refusal_of(purge_by_cycles(purged(19), {n, gauge_psi(30), {}}));
     }},
    {"purge psi",
     30,
     {-5, 500},
     [](double v) { return refusal_of(purge_by_cycles(purged(19), {5, gauge_psi(v), {}})); }},
    {"gas space L",
     19,
     {0, -1, 1e6},
     [](double v) { return refusal_of(purge_by_cycles(purged(v), {5, gauge_psi(30), {}})); }},
    {"oxygen",
     0.2,
     {-0.1, 2},
     [](double v) { return refusal_of(purge_by_cycles(purged(19, v), {5, gauge_psi(30), {}})); }},
    {"swept volumes",
     5,
     {-1, 1000},
     [](double v) { return refusal_of(purge_by_sweep(purged(19), v)); }},
    {"push psi",
     5,
     {-5, 500},
     [](double v) { return refusal_of(purge_by_liquid(purged(19), {gauge_psi(v)})); }},
    {"target ppm",
     200,
     {0, -1, 20},
     [](double v) { return refusal_of(purge_plans(ppm(v), purged(19))); }},
    {"planned psi",
     30,
     {-5, 500},
     [](double v) {
       PurgeMeans means;
       means.pressures = {gauge_psi(v)};
       return refusal_of(purge_plans(ppm(200), purged(19), means));
     }},
};
TEST(BadInput, Purge) { expect_refusals(purge_rows); }

Refusal carbonated(const std::function<void(CarbonationHistory&)>& spoil) {
  CarbonationHistory h = cases::soda_keg(3, {{hours(1), GasOn{cases::dial(12)}}});
  spoil(h);
  return refusal_of(CarbonationModel::make(h, cases::rates()));
}

CarbonationModel on_thirty_psi() {
  return CarbonationModel::make(cases::soda_keg(3, {{hours(1), GasOn{cases::dial(30)}}}),
                                cases::rates())
      .value();
}

const std::vector<BadRow> carbonation_and_cooling_rows{
    {"keg L",
     19.6,
     {0, -1, 18, 1e5},
     [](double v) { return carbonated([v](auto& h) { h.brimful = litres(v); }); }},
    {"beer L",
     18,
     {0, -1, 25},
     [](double v) { return carbonated([v](auto& h) { h.beer = litres(v); }); }},
    {"step h",
     1,
     {-1},
     [](double v) { return carbonated([v](auto& h) { h.steps[0].at = hours(v); }); }},
    {"gas psi",
     12,
     {-5, 500},
     [](double v) {
       return carbonated([v](auto& h) { h.steps[0].what = GasOn{cases::dial(v)}; });
     }},
    {"start C",
     3,
     {-40, 90},
     [](double v) { return carbonated([v](auto& h) { h.start = cases::thermometer(v); }); }},
    {"read on day",
     3,
     {-1},
     [](double v) {
       return carbonated(
           [v](auto& h) { h.readings = {{days(v), with_error(volumes_of_co2(2), 0.1)}}; });
     }},
    {"prior: keg L",
     19.6,
     {0, -1, 1e5},
     [](double v) { return refusal_of(carbonation_priors(litres(v), litres(18), "K")); }},
    {"drop: target",
     2.5,
     {0, -1, 30},
     [](double v) {
       return refusal_of(drop_plan(on_thirty_psi(), volumes_of_co2(v), cases::dial(11), days(2)));
     }},
    {"drop: serving psi",
     11,
     {-5, 500},
     [](double v) {
       return refusal_of(drop_plan(on_thirty_psi(), volumes_of_co2(2.5), cases::dial(v), days(2)));
     }},
    {"drift: days",
     7,
     {0, -1, 1e5},
     [](double v) {
       return refusal_of(drift_at(on_thirty_psi(), cases::dial(11), days(2), days(v)));
     }},
    {"cooling: beer C",
     20,
     {-40, 90},
     [](double v) {
       return refusal_of(time_to_temperature(celsius(v), celsius(2), celsius(5),
                                             *cooling_time_constant(litres(19), {"cooling"})));
     }},
    {"cooling: keg L",
     19,
     {0, -1, 1e5},
     [](double v) { return refusal_of(cooling_time_constant(litres(v), {"cooling"})); }},
};
TEST(BadInput, CarbonationAndCooling) { expect_refusals(carbonation_and_cooling_rows); }

}  // namespace
}  // namespace ullage::physics
