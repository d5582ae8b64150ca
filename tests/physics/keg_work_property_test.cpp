// SPDX-License-Identifier: GPL-3.0-or-later
//
// What must hold of cooling, gas used, blends, dropping the pressure and drift,
// whatever the numbers.
#include <gtest/gtest.h>
#include <rapidcheck/gtest.h>

#include <array>
#include <cmath>

#include "core/physics/atmosphere.h"
#include "core/physics/carbonation_answers.h"
#include "core/physics/gas_blend.h"
#include "core/physics/gas_use.h"
#include "core/physics/keg_cooling.h"
#include "core/units/present.h"
#include "tests/physics/keg_cases.h"
#include "tests/physics/property_draws.h"

namespace ullage::physics {
namespace {

using namespace units;
using cases::close_to;
using cases::exactly;
using cases::refuses;
using cases::work_in;
using cases::work_outside;

// --- cooling

struct Cooled {
  Temperature beer, place;
  Duration tau;
  [[nodiscard]] Temperature after(Duration d) const {
    const std::array in{PlaceTemperature{seconds(0), place}};
    return keg_temperature(beer, in, tau, d).value();
  }
};
Cooled random_cooled() {
  return {celsius(work_in(-2, 40)), celsius(work_in(-10, 40)), hours(work_in(0.5, 60))};
}

RC_GTEST_PROP(CoolingProperty, GoesToItsPlaceAndNeverPast, ()) {
  const Cooled keg = random_cooled();
  const double whole = in_kelvin(keg.beer - keg.place);
  RC_PRE(std::abs(whole) > 0.1);
  double before = 1;
  for (const double h : {0.0, 1.0, 5.0, 30.0, 200.0}) {
    const double left = in_kelvin(keg.after(hours(h)) - keg.place) / whole;
    RC_ASSERT(left >= 0 && left <= before + 1e-12);
    before = left;
  }
  RC_ASSERT(close_to(in_kelvin(keg.after(60.0 * keg.tau)), in_kelvin(keg.place)));
  RC_ASSERT(close_to(in_kelvin(keg.after(seconds(0))), in_kelvin(keg.beer)));
}

// Two stays of one place, told apart or together, are one stay.
RC_GTEST_PROP(CoolingProperty, StaysAddUp, ()) {
  const Cooled keg = random_cooled();
  const Duration first = hours(work_in(0, 40)), second = hours(work_in(0, 40));
  const Cooled later{keg.after(first), keg.place, keg.tau};
  RC_ASSERT(close_to(in_kelvin(later.after(second)), in_kelvin(keg.after(first + second))));
  const std::array twice{PlaceTemperature{seconds(0), keg.place},
                         PlaceTemperature{first, keg.place}};
  RC_ASSERT(close_to(in_kelvin(keg_temperature(keg.beer, twice, keg.tau, first + second).value()),
                     in_kelvin(keg.after(first + second))));
}

RC_GTEST_PROP(CoolingProperty, WindowIsTheInverse, ()) {
  const Cooled keg = random_cooled();
  const double share = work_in(0.02, 0.98);
  RC_PRE(std::abs(in_kelvin(keg.beer - keg.place)) > 0.1);
  const Temperature target = kelvin(in_kelvin(keg.place) + share * in_kelvin(keg.beer - keg.place));
  const LogEstimate<Duration> tau(keg.tau, 1.8, {"cooling"});
  const auto window = time_to_temperature(keg.beer, keg.place, target, tau);
  RC_ASSERT(window && *window);
  RC_ASSERT((*window)->earliest < (*window)->likely && (*window)->likely < (*window)->latest);
  RC_ASSERT(close_to(in_kelvin(keg.after((*window)->likely)), in_kelvin(target)));
  // Past its place, or on the other side of the beer, it never comes.
  for (const double never : {-0.2, 1.2}) {
    const auto beyond = time_to_temperature(
        keg.beer, keg.place, kelvin(in_kelvin(keg.place) + never * in_kelvin(keg.beer - keg.place)),
        tau);
    RC_ASSERT(!beyond || !*beyond);
  }
}

// Heat over surface: eight times the volume takes twice as long.
RC_GTEST_PROP(CoolingProperty, TimeConstantGrowsWithTheSize, ()) {
  const Volume v = litres(work_in(1.1, 120));
  const auto tau = [](Volume of) { return cooling_time_constant(of, {"cooling"}).value(); };
  RC_ASSERT(close_to(tau(8.0 * v).median() / tau(v).median(), 2));
  RC_ASSERT(close_to(in_cubic_metres(v), in_cubic_metres(us_gallons(in_us_gallons(v)))));
}

RC_GTEST_PROP(CoolingProperty, RefusesOutsideItsRange, ()) {
  const std::array here{PlaceTemperature{seconds(0), celsius(3)}};
  RC_ASSERT(refuses(
      keg_temperature(kelvin(work_outside(place_temperature_range)), here, hours(9), hours(1)),
      Subject::temperature));
  RC_ASSERT(refuses(keg_temperature(celsius(9), here,
                                    seconds(work_outside(cooling_time_constant_range)), hours(1)),
                    Subject::time_constant));
  RC_ASSERT(
      refuses(cooling_time_constant(cubic_metres(work_outside(vessel_volume_range)), {"cooling"}),
              Subject::volume));
}

// --- gas used

SupplyState supply(double psi_gauge, double c, double co2 = 1) {
  return {exactly(psi_gauge), Estimate<Temperature>(celsius(c)), sea_level(), mole_fraction(co2)};
}
double pushed_kg(double l, const SupplyState& s) {
  return in_kilograms(gas_to_push(Estimate<Volume>(litres(l)), s, {"method"})->value());
}

RC_GTEST_PROP(GasUseProperty, PushGrowsWithBeerAndPressureAndFallsWithWarmth, ()) {
  const double l = work_in(0.1, 60), p = work_in(0, 40), c = work_in(0, 30);
  const double used = pushed_kg(l, supply(p, c));
  RC_ASSERT(close_to(pushed_kg(2 * l, supply(p, c)), 2 * used));
  RC_ASSERT(pushed_kg(l, supply(p + 1, c)) > used);
  RC_ASSERT(pushed_kg(l, supply(p, c + 2)) < used);
  // Nitrogen is lighter.
  RC_ASSERT(pushed_kg(l, supply(p, c, 0.6)) < used);
  RC_ASSERT(pushed_kg(0, supply(p, c)) == 0);
}

// A litre pushed out is the room of a headspace filled from nothing, so from air it is
// less by the air's share; filling in two steps takes as much as in one.
RC_GTEST_PROP(GasUseProperty, HeadspaceFillsAddUp, ()) {
  const double l = work_in(0.1, 20), c = work_in(0, 30);
  const double low = work_in(1, 15), high = low + work_in(1, 25);
  const auto fill = [&](double from, double to) {
    return in_kilograms(gas_to_fill_headspace(Estimate<Volume>(litres(l)), gauge_psi(from),
                                              supply(to, c), {"method"})
                            ->value());
  };
  RC_ASSERT(close_to(fill(0, low) + fill(low, high), fill(0, high), 1e-6));
  RC_ASSERT(fill(0, high) < pushed_kg(l, supply(high, c)));
  RC_ASSERT(fill(high, low) == 0);
}

RC_GTEST_PROP(GasUseProperty, UptakeIsTheDissolvedCo2AndNeverNegative, ()) {
  const double l = work_in(1, 60), from = work_in(0, 3), to = work_in(0, 4);
  const auto used = [&](double a, double b) {
    return in_grams(
        gas_to_carbonate(Estimate<Volume>(litres(l)), Estimate<Co2Volumes>(volumes_of_co2(a)),
                         Estimate<Co2Volumes>(volumes_of_co2(b)), mole_fraction(1), {"method"})
            ->value());
  };
  if (to > from) {
    RC_ASSERT(close_to(used(from, to), l * grams_per_litre_per_volume * (to - from), 1e-6));
  } else {
    RC_ASSERT(used(from, to) == 0);
  }
}

RC_GTEST_PROP(GasUseProperty, RefusesOutsideItsRange, ()) {
  const Estimate<Volume> beer(cubic_metres(work_outside(gas_use_volume_range)));
  RC_ASSERT(refuses(gas_to_push(beer, supply(12, 4), {"method"}), Subject::beer_volume));
  RC_ASSERT(
      refuses(gas_to_fill_headspace(beer, gauge_psi(0), supply(12, 4), {"m"}), Subject::headspace));
  SupplyState high_up = supply(12, 4);
  high_up.ambient = pascals_absolute(work_outside(ambient_pressure_range));
  RC_ASSERT(
      refuses(gas_to_push(Estimate<Volume>(litres(1)), high_up, {"m"}), Subject::ambient_pressure));
}

// --- blends

RC_GTEST_PROP(BlendProperty, ThreeWaysOfOneEquation, ()) {
  const AbsolutePressure air = pascals_absolute(work_in(6e4, 1.05e5));
  const GaugePressure pure = gauge_psi(work_in(0, 30));
  const MoleFraction share = mole_fraction(work_in(0.2, 1));
  const auto applied = applied_for(pure, share, air);
  RC_ASSERT(applied.has_value());
  RC_PRE(in_pascals(applied->above_ambient()) <= blend_pressure_range.high);
  RC_ASSERT(*applied >= pure);
  RC_ASSERT(close_to(blend_for(pure, *applied, air)->count(), share.count()));
  RC_ASSERT(std::abs(in_psi(*pure_equivalent(*applied, share, air)) - in_psi(pure)) < 1e-9);
  // Less CO2 in the gas asks for more of it; pure gas for no more.
  RC_ASSERT(*applied_for(pure, mole_fraction(0.9 * share.count()), air) > *applied);
  RC_ASSERT(std::abs(in_psi(*applied_for(pure, mole_fraction(1), air)) - in_psi(pure)) < 1e-9);
}

RC_GTEST_PROP(BlendProperty, RefusesWhatNoGasHas, ()) {
  const GaugePressure pure = gauge_psi(work_in(5, 30));
  const AbsolutePressure air = sea_level();
  RC_ASSERT(refuses(blend_for(pure, gauge_psi(in_psi(pure) - work_in(0.01, 5)), air),
                    Subject::gauge_pressure));
  const double share = work_outside(blend_share_range);
  RC_ASSERT(refuses(applied_for(pure, mole_fraction(share), air), Subject::co2_fraction));
  RC_ASSERT(refuses(pure_equivalent(pure, mole_fraction(share), air), Subject::co2_fraction));
  RC_ASSERT(refuses(
      applied_for(gauge_pascals(work_outside(blend_pressure_range)), mole_fraction(0.7), air),
      Subject::gauge_pressure));
}

// --- dropping the pressure, and what follows

CarbonationModel burst(double psi_gauge, double c) {
  return CarbonationModel::make(cases::soda_keg(c, {{hours(0), GasOn{cases::dial(psi_gauge)}}}),
                                cases::rates())
      .value();
}

RC_GTEST_PROP(DropProperty, HigherTargetComesLaterAndVentingTakes, ()) {
  const double c = work_in(1, 6);
  const CarbonationModel model = burst(work_in(26, 40), c);
  const Co2Volumes target = volumes_of_co2(work_in(1.8, 2.4));
  const auto serving = cases::dial(work_in(7, 13));
  const auto plan = drop_plan(model, target, serving, hours(0));
  const auto later = drop_plan(model, volumes_of_co2(target.count() + 0.2), serving, hours(0));
  RC_ASSERT(plan && later);
  RC_ASSERT(plan->drop.likely && later->drop.likely);
  RC_ASSERT(present(plan->drop.likely) < present(later->drop.likely));
  RC_ASSERT(!plan->drop.earliest || present(plan->drop.earliest) <= present(plan->drop.likely));
  RC_ASSERT(!plan->drop.latest || present(plan->drop.latest) >= present(plan->drop.likely));
  RC_ASSERT(plan->vent_by >= pascals(0));
  RC_ASSERT(plan->if_not_vented.count() >= plan->settles_at.value().count() - 1e-6);
}

RC_GTEST_PROP(DropProperty, RefusesAbsurdTargets, ()) {
  const CarbonationModel model = burst(30, 3);
  RC_ASSERT(
      refuses(drop_plan(model, volumes_of_co2(work_outside(co2_range)), cases::dial(11), hours(0)),
              Subject::co2));
  RC_ASSERT(!drop_plan(model, volumes_of_co2(2.5), exactly(work_in(66, 500)), hours(0)));
}

RC_GTEST_PROP(DriftProperty, ChangeIsTheDifferenceAndPressureLifts, ()) {
  const CarbonationModel model = burst(work_in(8, 30), work_in(1, 8));
  const Duration now = hours(work_in(1, 200)), over = hours(work_in(1, 400));
  const double serving = work_in(5, 20);
  const auto drift = drift_at(model, cases::dial(serving), now, over);
  const auto harder = drift_at(model, cases::dial(serving + 3), now, over);
  const auto vented = drift_at(model, cases::dial(serving), now, over, BeforeServing::vented);
  RC_ASSERT(drift && harder && vented);
  RC_ASSERT(close_to(drift->change.value().count(),
                     drift->then.value().count() - drift->now.value().count(), 1e-6));
  RC_ASSERT(harder->then.value().count() >= drift->then.value().count() - 1e-6);
  RC_ASSERT(vented->then.value().count() <= drift->then.value().count() + 1e-6);
  RC_ASSERT(close_to(drift->now.value().count(), vented->now.value().count()));
}

RC_GTEST_PROP(DriftProperty, RefusesTimesOutsideItsRange, ()) {
  const CarbonationModel model = burst(12, 3);
  const double over = work_outside({60.0, 366 * 86400.0});
  RC_ASSERT(refuses(drift_at(model, exactly(12), days(1), seconds(over)), Subject::duration));
}

}  // namespace
}  // namespace ullage::physics
