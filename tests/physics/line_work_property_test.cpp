// SPDX-License-Identifier: GPL-3.0-or-later
//
// What must hold of paper balance, restriction, line contents, cleaner, air pressure
// and weighing, whatever the numbers.
#include <gtest/gtest.h>
#include <rapidcheck/gtest.h>

#include <cmath>
#include <numbers>
#include <vector>

#include "core/physics/atmosphere.h"
#include "core/physics/cleaning_solution.h"
#include "core/physics/handbook_restriction.h"
#include "core/physics/level.h"
#include "core/physics/line_balance.h"
#include "core/physics/line_volume.h"
#include "core/units/present.h"
#include "tests/physics/property_draws.h"

namespace ullage::physics {
namespace {

using namespace units;
using cases::close_to;
using cases::refuses;
using cases::work_in;
using cases::work_outside;

// --- paper balance, restriction, contents

RC_GTEST_PROP(PaperBalanceProperty, AddsUpAndRestrictorIsTheInverse, ()) {
  const double applied = work_in(0, 60), rise = work_in(-10, 30);
  const std::vector<HandbookRun> runs{{feet(work_in(0, 80)), psi_per_foot(work_in(0.02, 0.5))},
                                      {feet(work_in(0, 10)), psi_per_foot(work_in(0.5, 3))}};
  const auto b = handbook_balance(gauge_psi(applied), feet(rise), runs);
  RC_ASSERT(b.has_value());
  RC_ASSERT(std::abs(in_psi(b->lift) + in_psi(b->runs) + in_psi(b->left) - applied) < 1e-9);
  const auto turned = handbook_balance(gauge_psi(applied), feet(rise), {runs[1], runs[0]});
  RC_ASSERT(std::abs(in_psi(turned->left) - in_psi(b->left)) < 1e-9);
  const auto metric = handbook_balance(gauge_bar(applied * pascals_per_psi / pascals_per_bar),
                                       metres(rise * metres_per_foot), runs);
  RC_ASSERT(std::abs(in_psi(metric->left) - in_psi(b->left)) < 1e-9);
  const auto length = restrictor_length(b->left, psi_per_foot(3));
  if (b->left < pascals(0)) {
    RC_ASSERT(refuses(length, Subject::pressure_loss));
    return;
  }
  auto with_it = runs;
  with_it.push_back({*length, psi_per_foot(3)});
  RC_ASSERT(std::abs(in_psi(handbook_balance(gauge_psi(applied), feet(rise), with_it)->left)) <
            1e-9);
}

RC_GTEST_PROP(PaperBalanceProperty, RefusesOutsideItsRange, ()) {
  RC_ASSERT(refuses(handbook_balance(gauge_pascals(work_outside(pour_pressure_range)), feet(3), {}),
                    Subject::gauge_pressure));
  RC_ASSERT(refuses(handbook_balance(gauge_psi(12), metres(work_outside(rise_range)), {}),
                    Subject::rise));
  RC_ASSERT(refuses(handbook_balance(gauge_psi(12), feet(3),
                                     {{metres(work_outside(line_length_range)), psi_per_foot(1)}}),
                    Subject::length));
}

FlowingBeer random_beer() {
  return {kilograms_per_cubic_metre(work_in(995, 1030)), millipascal_seconds(work_in(1.2, 3.5))};
}

RC_GTEST_PROP(RestrictionProperty, NarrowerTakesMoreAndImpliedBoreAnswersTheTable, ()) {
  const FlowingBeer beer = random_beer();
  const double inch = work_in(0.15, 0.5);
  RC_ASSERT(*friction_restriction(inches(inch), beer) >
            *friction_restriction(inches(inch * 1.02), beer));
  const HoseMaterial material =
      *rc::gen::element(HoseMaterial::vinyl, HoseMaterial::barrier, HoseMaterial::polyethylene,
                        HoseMaterial::stainless);
  const double stock = *rc::gen::element(3.0 / 16, 1.0 / 4, 5.0 / 16, 3.0 / 8, 1.0 / 2);
  const auto figure = handbook_restriction(material, inches(stock));
  RC_PRE(figure.has_value());
  RC_ASSERT(present(figure).least <= present(figure).usual &&
            present(figure).usual <= present(figure).most);
  const auto compared = compare_restriction(present(figure), beer);
  RC_ASSERT(compared.has_value());
  const Length implied = compared->implied_bore.count() * present(figure).bore;
  RC_ASSERT(close_to(in_psi_per_foot(*friction_restriction(implied, beer)),
                     in_psi_per_foot(present(figure).usual), 1e-3));
  // Less friction than the table: the hose acts narrower than it is called.
  RC_ASSERT((compared->explained.count() < 1) == (compared->implied_bore.count() < 1));
}

RC_GTEST_PROP(ContentsProperty, GoesByLengthAndTheBoreSquared, ()) {
  const double mm = work_in(1.1, 24), m = work_in(0, 240);
  const auto held = [](Length bore, Length length) {
    return in_cubic_metres(line_volume(bore, length).value());
  };
  const double one = held(millimetres(mm), metres(m));
  RC_ASSERT(close_to(held(millimetres(mm), metres(2 * m)), 2 * one));
  RC_ASSERT(close_to(held(millimetres(2 * mm), metres(m)), 4 * one));
  RC_ASSERT(close_to(held(inches(mm / 25.4), feet(m / metres_per_foot)), one));
  RC_ASSERT(close_to(one, std::numbers::pi / 4 * mm * mm * 1e-6 * m));
  RC_ASSERT(refuses(line_volume(metres(work_outside(bore_range)), metres(1)), Subject::bore));
  RC_ASSERT(refuses(line_volume(millimetres(6), metres(work_outside(line_length_range))),
                    Subject::length));
}

RC_GTEST_PROP(CleanerProperty, GoesByVolumeAndStrengthAndTheLabelIsTheLimit, ()) {
  const double l = work_in(0.1, 200), label = work_in(0.05, 1), strength = work_in(0.001, 0.05);
  const auto grams_of = [&](double volume, double wanted, double sold) {
    return in_grams(
        cleaning_solution(litres(volume), fraction(wanted), {fraction(sold), {}})->concentrate);
  };
  const double one = grams_of(l, strength, label);
  RC_ASSERT(close_to(grams_of(2 * l, strength, label), 2 * one));
  RC_ASSERT(close_to(grams_of(l, strength / 2, label), one / 2));
  RC_ASSERT(close_to(grams_of(l, strength, label / 2 + strength / 2) * (label + strength) / 2,
                     one * label));
  const auto parts = cleaning_solution(litres(l), fraction(strength),
                                       {fraction(label), kilograms_per_cubic_metre(1330)});
  RC_ASSERT(close_to(in_litres(*parts->concentrate_volume) + in_litres(parts->water), l));
  const double too_strong = label + work_in(1e-6, 0.2);
  const auto refused = cleaning_solution(litres(l), fraction(too_strong), {fraction(label), {}});
  RC_ASSERT(refuses(refused, Subject::fraction));
  RC_ASSERT(refused.error().high <= label);
  RC_ASSERT(refuses(cleaning_solution(cubic_metres(work_outside(solution_volume_range)),
                                      fraction(strength), {fraction(label), {}}),
                    Subject::volume));
}

// --- air, weight

RC_GTEST_PROP(AirProperty, FallsWithHeightByTheWeightOfTheAir, ()) {
  const double h = work_in(-500, 5400);
  const auto pa = [](double metres_up) {
    return in_pascals(ambient_pressure(metres(metres_up)).value());
  };
  RC_ASSERT(pa(h + 50) < pa(h));
  // Hydrostatics: dp/dh = -rho g with the standard atmosphere's 288.15 K - 6.5 K/km,
  // over 100 m and to a thousandth.
  const double middle = pa(h + 50);
  const double rho = middle * 0.0289644 / (8.31432 * (288.15 - 0.0065 * (h + 50)));
  RC_ASSERT(close_to((pa(h) - pa(h + 100)) / 100, rho * 9.80665, 3e-3));
  RC_ASSERT(close_to(pa(h), in_pascals(ambient_pressure(feet(h / metres_per_foot)).value())));
  RC_ASSERT(refuses(ambient_pressure(metres(work_outside(altitude_range))), Subject::altitude));
}

Weighing random_weighing(double beer_litres) {
  Weighing w;
  w.brimful = litres(work_in(55, 60));
  w.gravity = specific_gravity(work_in(1.0, 1.03));
  w.temperature = celsius(work_in(0, 20));
  w.headspace = gauge_psi(work_in(0, 30));
  w.ambient = sea_level();
  w.tare = Estimate<Mass>(kilograms(work_in(9, 15)));
  const double sg_kg = w.gravity.count();
  w.gross = Estimate<Mass>(kilograms(in_kilograms(w.tare.value()) + beer_litres * sg_kg + 0.1));
  return w;
}

RC_GTEST_PROP(WeightProperty, KilogramsMoreAreLitresMore, ()) {
  const Weighing w = random_weighing(work_in(5, 45));
  const auto left = [](const Weighing& of) {
    return in_litres(beer_from_weight(of).value().value());
  };
  const double now = left(w);
  Weighing more = w;
  more.gross = Estimate<Mass>(w.gross.value() + kilograms(1));
  // A litre of beer weighs 0.99 to 1.03 kg more than the gas that it replaces.
  RC_ASSERT(left(more) - now > 0.96 && left(more) - now < 1.02);
  Weighing heavier_keg = w;
  heavier_keg.tare = Estimate<Mass>(w.tare.value() + kilograms(1));
  heavier_keg.gross = more.gross;
  RC_ASSERT(close_to(left(heavier_keg), now));
  Weighing denser = w;
  denser.gravity = specific_gravity(w.gravity.count() + 0.005);
  RC_ASSERT(left(denser) < now);
  Weighing harder = w;  // more gas above it weighs, too
  harder.headspace = gauge_psi(in_psi(w.headspace) + 5);
  RC_ASSERT(left(harder) < now);
  Weighing in_pounds_told = w;
  in_pounds_told.gross =
      Estimate<Mass>(pounds(in_kilograms(w.gross.value()) / kilograms_per_pound));
  RC_ASSERT(close_to(left(in_pounds_told), now));
}

RC_GTEST_PROP(WeightProperty, RefusesWhatNoKegWeighs, ()) {
  Weighing w = random_weighing(20);
  w.gross = Estimate<Mass>(kilograms(work_outside(gross_mass_range)));
  RC_ASSERT(refuses(beer_from_weight(w), Subject::mass));
  w = random_weighing(20);
  w.tare = Estimate<Mass>(kilograms(work_outside(tare_range)));
  RC_ASSERT(refuses(beer_from_weight(w), Subject::mass));
  w = random_weighing(20);
  w.gross = Estimate<Mass>(w.tare.value() - kilograms(work_in(0.1, 5)));
  RC_ASSERT(!beer_from_weight(w));
  w.gross = Estimate<Mass>(w.tare.value() + kilograms(work_in(70, 200)));
  RC_ASSERT(refuses(beer_from_weight(w), Subject::beer_volume));
}

}  // namespace
}  // namespace ullage::physics
