// SPDX-License-Identifier: GPL-3.0-or-later
//
// What must hold of levels, run-out, learned rates, rescues, sugar, purge plans,
// leaks and room air, whatever the numbers.
#include <gtest/gtest.h>
#include <rapidcheck/gtest.h>

#include <algorithm>
#include <array>
#include <cmath>

#include "core/physics/leak_law.h"
#include "core/physics/level_filter.h"
#include "core/physics/priming.h"
#include "core/physics/purge_plan.h"
#include "core/physics/rate_posterior.h"
#include "core/physics/rescue.h"
#include "core/physics/room_air.h"
#include "core/physics/run_out.h"
#include "core/units/present.h"
#include "tests/physics/keg_cases.h"

namespace ullage::physics {
namespace {

using namespace units;

double answer_in(double low, double high) {
  return low + (high - low) * *rc::gen::inRange(0, 1000001) / 1e6;
}

Estimate<Volume> litres_about(double l, double half_width, const std::string& name) {
  return Estimate<Volume>(litres(l)).with({name}, half_width * 1e-3);
}

// --- level

LevelHistory level_of(double start, double last, double last_error) {
  LevelHistory h{litres(50), litres_about(start, 1, "fill"), {}};
  h.steps.push_back({days(1), PutOnTap{}});
  h.steps.push_back({days(4), LevelRead{litres_about(last, last_error, "look")}});
  return h;
}

// A reading is news, and news does not make one less sure; what is drawn on unseen
// afterwards does.
RC_GTEST_PROP(LevelProperty, ReadingNarrowsAndTimeOnTapWidens, ()) {
  const double start = answer_in(20, 49);
  LevelHistory h = level_of(start, start * answer_in(0.4, 0.9), answer_in(0.3, 6));
  const auto with = LevelFilter::make(h);
  const Duration when = h.steps.back().at;
  h.steps.pop_back();
  const auto without = LevelFilter::make(h);
  RC_ASSERT(with.has_value() && without.has_value());
  RC_PRE(with->conflicts().empty());
  RC_ASSERT(with->at(when).half_width() <= without->at(when).half_width() * (1 + 1e-9));
  double before = 0;
  for (const double d : {4.0, 5.0, 8.0, 20.0}) {
    const double now = with->at(days(d)).half_width();
    RC_ASSERT(std::isfinite(now) && now >= before);
    before = now;
  }
}

RC_GTEST_PROP(LevelProperty, LowerReadingLowerLevel, ()) {
  const double start = answer_in(30, 49);
  const double read = start * answer_in(0.5, 0.9);
  const double error = answer_in(1, 5);
  const auto high = LevelFilter::make(level_of(start, read, error));
  const auto low = LevelFilter::make(level_of(start, read - answer_in(0.1, 1), error));
  RC_ASSERT(high.has_value() && low.has_value());
  RC_PRE(high->conflicts().empty() && low->conflicts().empty());
  RC_ASSERT(low->at(days(4)).value() < high->at(days(4)).value());
  RC_ASSERT(present(low->draw_a_day()).value() > present(high->draw_a_day()).value());
}

RC_GTEST_PROP(LevelProperty, ShutKegKeepsItsBeer, ()) {
  const LevelHistory h{litres(50), litres_about(answer_in(5, 49), 1, "fill"), {}};
  const auto f = LevelFilter::make(h);
  RC_ASSERT(f.has_value());
  const auto later = f->at(days(answer_in(0, 400)));
  RC_ASSERT(std::abs(in_litres(later.value()) - in_litres(h.start.value())) < 1e-9);
  // The filter adds 10 mL to every reading's own error (no reading is exact): 0.2 mL here.
  RC_ASSERT(later.half_width() == f->at(days(0)).half_width());
  RC_ASSERT(std::abs(later.half_width() - h.start.half_width()) < 2.5e-7);
}

// --- run-out

RunOutQuestion any_question(double scale) {
  RunOutQuestion q;
  const int spans = *rc::gen::inRange(1, 25);
  for (int i = 0; i < spans; ++i) {
    SpanOnTap span;
    double held = 0;
    for (double& d : span.days) held += d = answer_in(0, 1);
    RC_PRE(held > 0.1);
    const double drawn = held * answer_in(0.2, 8);
    span.drawn = litres_about(scale * drawn, scale * 0.3, "read " + std::to_string(i));
    q.seen.push_back(span);
  }
  q.left = litres_about(scale * answer_in(1, 40), scale * 0.5, "left");
  q.weekday = *rc::gen::inRange(0, 7);
  q.day_gone = answer_in(0, 1);
  return q;
}

double days_or_never(const std::optional<Duration>& d) { return d ? in_days(*d) : 1e9; }

RC_GTEST_PROP(RunOutProperty, InOrderAndMoreBeerLastsLonger, ()) {
  RunOutQuestion q = any_question(1);
  const auto out = run_out(q);
  q.left = Estimate<Volume>(q.left.value() + litres(answer_in(0.1, 10)), q.left.contributions());
  const auto more = run_out(q);
  RC_ASSERT(out.has_value() && more.has_value());
  RC_ASSERT(days_or_never(out->earliest) <= days_or_never(out->likely));
  RC_ASSERT(days_or_never(out->likely) <= days_or_never(out->latest));
  RC_ASSERT(days_or_never(out->earliest) <= days_or_never(more->earliest) + 1e-9);
  RC_ASSERT(days_or_never(out->likely) <= days_or_never(more->likely) + 1e-9);
  RC_ASSERT(days_or_never(out->latest) <= days_or_never(more->latest) + 1e-9);
}

// Twice the bar and twice the keg is the same question. The unit of beer plays no
// part: no constant of litres hides in it.
RC_GTEST_PROP(RunOutProperty, TwiceTheBarAndTwiceTheKeg, ()) {
  const RunOutQuestion q = any_question(1);
  const double by = answer_in(0.2, 4);
  RunOutQuestion big = q;
  const auto times = [by](const Estimate<Volume>& e) {
    return litres_about(by * in_litres(e.value()), by * 1e3 * e.half_width(), "scaled");
  };
  big.left = times(q.left);
  for (SpanOnTap& s : big.seen) s.drawn = times(s.drawn);
  const auto a = run_out(q);
  const auto b = run_out(big);
  RC_ASSERT(a.has_value() && b.has_value());
  RC_ASSERT(a->likely.has_value() == b->likely.has_value());
  if (a->likely)
    RC_ASSERT(std::abs(in_days(*a->likely) - in_days(*b->likely)) <
              1e-6 * (1 + in_days(*a->likely)));
}

// --- the learned rate

CarbonationHistory on_gas_read_at(double at_days, double volumes, double half_width) {
  CarbonationHistory h = cases::soda_keg(3, {{hours(0), GasOn{cases::dial(12)}}});
  h.readings.push_back(
      {days(at_days), Estimate<Co2Volumes>(volumes_of_co2(volumes)).with({"meter"}, half_width)});
  return h;
}

// More CO2 at the same time is a faster keg; and no reading makes the rate less sure
// than the prior by more than what a bent likelihood does to a quantile.
RC_GTEST_PROP(RateProperty, MoreCo2IsAFasterKeg, ()) {
  const double at = answer_in(1, 6);
  const double volumes = answer_in(1.1, 2.2);
  const double error = answer_in(0.05, 0.3);
  const auto slow = rate_posterior(on_gas_read_at(at, volumes, error), cases::rates());
  const auto fast =
      rate_posterior(on_gas_read_at(at, volumes + answer_in(0.02, 0.2), error), cases::rates());
  RC_ASSERT(slow.has_value() && fast.has_value());
  for (const auto& r : {*slow, *fast}) {
    RC_ASSERT(r.posterior.low < r.posterior.median && r.posterior.median < r.posterior.high);
    RC_ASSERT(r.agreement >= 0 && r.agreement <= 1);
    RC_ASSERT(in_seconds(r.posterior.low) > 0);
  }
  RC_PRE(slow->fits && fast->fits);
  RC_ASSERT(in_days(fast->posterior.median) <= in_days(slow->posterior.median) * (1 + 1e-6));
}

// A meter so bad that it says nothing leaves the prior.
RC_GTEST_PROP(RateProperty, WorthlessReadingLeavesThePrior, ()) {
  const auto r =
      rate_posterior(on_gas_read_at(answer_in(0.5, 20), answer_in(0.8, 2.6), 8), cases::rates());
  RC_ASSERT(r.has_value());
  RC_ASSERT(r->fits);
  // Medians are read off a grid of 89 points; a hundredth is a third of its step.
  RC_ASSERT(std::abs(r->posterior.median / r->prior.median - 1) < 0.02);
}

// --- rescue

OverCarbonated too_much(double beer, double co2, double target, double celsius_now) {
  return {litres(19.9),
          litres_about(beer, 0.4, "level"),
          Estimate<Co2Volumes>(volumes_of_co2(co2)).with({"CO2"}, 0.1),
          Estimate<Temperature>(celsius(celsius_now)).with({"thermometer"}, 0.5),
          sea_level(),
          volumes_of_co2(target),
          LogEstimate<Duration>(days(4), 2, {"uptake"})};
}

// One vent after the other: none ever adds CO2; more beer over the target, less
// headspace or a target further down never takes fewer.
RC_GTEST_PROP(RescueAnswers, VentsOnlyTakeAndHarderCasesNeverTakeFewer, ()) {
  const double beer = answer_in(4, 18);
  const double target = answer_in(2.0, 2.8);
  const double co2 = target + answer_in(0.2, 0.9);
  const double t = answer_in(2, 12);
  const auto plan = vents_to_target(too_much(beer, co2, target, t));
  RC_ASSERT(plan.has_value());
  double before = co2;
  for (const VentStep& s : plan->steps) {
    RC_ASSERT(s.after.count() <= before);
    before = s.after.count();
  }
  RC_ASSERT(static_cast<int>(plan->steps.size()) == plan->vents);
  RC_ASSERT(in_grams(plan->vented) > 0);
  for (const OverCarbonated& harder :
       {too_much(beer, co2 + 0.1, target, t), too_much(beer + 0.5, co2, target, t),
        too_much(beer, co2, target - 0.1, t)}) {
    const auto more = vents_to_target(harder);
    RC_ASSERT(more.has_value());
    RC_ASSERT(more->vents >= plan->vents);
  }
}

RC_GTEST_PROP(RescueAnswers, LessDrawnForLessToLose, ()) {
  const double beer = answer_in(8, 18);
  const double target = answer_in(2.2, 2.8);
  const auto some = serve_to_target(too_much(beer, target + 0.2, target, 4));
  const auto more = serve_to_target(too_much(beer, target + 0.3, target, 4));
  RC_ASSERT(some.has_value());
  if (more) RC_ASSERT(more->drawn > some->drawn);
  RC_ASSERT(std::abs(in_litres(some->drawn + some->left) - beer) < 1e-6);
}

// --- sugar

PrimingQuestion to_prime(double target, double warmest, double holds_at) {
  return {litres(19.9),
          litres(18),
          Estimate<Temperature>(celsius(warmest)).with({"thermometer"}, 1.0),
          sea_level(),
          volumes_of_co2(target),
          celsius(holds_at),
          celsius(20)};
}

// More carbonation wants more sugar; so does beer that fermented warmer (less CO2
// stayed), and a target that shall hold warmer (the headspace stands higher).
RC_GTEST_PROP(SugarProperty, RisesWithTargetAndTemperatures, ()) {
  const double target = answer_in(1.9, 3.0);
  const double warmest = answer_in(8, 24);
  const double holds = answer_in(2, 18);
  const auto sugar = [](double v, double w, double h) {
    const auto plan = priming(to_prime(v, w, h));
    RC_ASSERT(plan.has_value());
    return in_grams(plan->sugar.value());
  };
  const double here = sugar(target, warmest, holds);
  RC_ASSERT(here > 0);
  RC_ASSERT(sugar(target + 0.05, warmest, holds) > here);
  RC_ASSERT(sugar(target, warmest + 0.5, holds) > here);
  RC_ASSERT(sugar(target, warmest, holds + 1) > here);
}

RC_GTEST_PROP(SugarProperty, MoreSugarMoreCo2, ()) {
  const PrimingQuestion q = to_prime(2.5, answer_in(8, 24), answer_in(2, 18));
  const double g = answer_in(5, 150);
  const auto a = primed_to(q, grams(g));
  const auto b = primed_to(q, grams(g + 1));
  RC_ASSERT(a.has_value() && b.has_value());
  RC_ASSERT(b->value() > a->value());
}

// --- purge plans

// A target easier to reach never takes more gas, nor does purer gas.
RC_GTEST_PROP(PurgeAnswers, EasierNeverTakesMoreGas, ()) {
  const Vessel keg{litres(answer_in(5, 58)), litres(5), sea_level(), celsius(answer_in(0, 30))};
  const double target = answer_in(80, 5000);
  PurgeMeans means;
  means.liquid = *rc::gen::arbitrary<bool>();
  const auto hard = purge_plans(ppm(target), keg, means);
  const auto easy = purge_plans(ppm(target * answer_in(1.01, 3)), keg, means);
  means.gas.oxygen = ppm(1);
  const auto pure = purge_plans(ppm(target), keg, means);
  RC_ASSERT(hard.has_value() && easy.has_value() && pure.has_value());
  RC_ASSERT(!hard->empty() && !easy->empty() && !pure->empty());
  const double used = in_grams(hard->front().outcome.co2_used);
  RC_ASSERT(in_grams(easy->front().outcome.co2_used) <= used * (1 + 1e-9));
  RC_ASSERT(in_grams(pure->front().outcome.co2_used) <= used * (1 + 1e-9));
}

// --- leaks

RC_GTEST_PROP(LeakProperty, DriveRisesFromNothingAtAmbient, ()) {
  const AbsolutePressure air = pascals_absolute(answer_in(6e4, 1.1e5));
  const Temperature t = celsius(answer_in(-5, 35));
  const double over = answer_in(100, 5e5);
  for (const LeakLaw law : {LeakLaw::viscous, LeakLaw::orifice}) {
    const auto drive = [&](double pa) { return leak_drive(law, air + pascals(pa), t, air); };
    RC_ASSERT(drive(0) == 0.0);
    RC_ASSERT(drive(over) > 0.0);
    RC_ASSERT(drive(over * 1.01) > drive(over));
  }
}

// The two laws bound what a leak seen at a high pressure does at a lower one: the
// viscous falls off faster. And there and back is the same leak.
RC_GTEST_PROP(LeakProperty, ViscousFallsOffFasterAndBothComeBack, ()) {
  const LeakState test{gauge_psi(answer_in(20, 60)).at_ambient(sea_level()),
                       celsius(answer_in(0, 25))};
  const LeakState use{gauge_psi(answer_in(2, 18)).at_ambient(sea_level()), test.temperature};
  const MassFlow seen = grams_per_day(answer_in(0.1, 50));
  const auto viscous = leak_at(LeakLaw::viscous, seen, test, use, sea_level());
  const auto orifice = leak_at(LeakLaw::orifice, seen, test, use, sea_level());
  RC_ASSERT(viscous.has_value() && orifice.has_value());
  RC_ASSERT(*viscous < *orifice);
  RC_ASSERT(*orifice < seen);
  for (const auto& [law, there] :
       {std::pair{LeakLaw::viscous, *viscous}, std::pair{LeakLaw::orifice, *orifice}}) {
    const auto back = leak_at(law, there, use, test, sea_level());
    RC_ASSERT(back.has_value());
    RC_ASSERT(std::abs(in_grams_per_day(*back) / in_grams_per_day(seen) - 1) < 1e-12);
  }
}

RC_GTEST_PROP(LeakProperty, NozzleGoesByAreaAndChokes, ()) {
  const double p0 = answer_in(2e5, 1e6);
  const double bore = answer_in(0.01, 2);
  const Temperature t = celsius(answer_in(0, 40));
  const auto flow = [&](double up, double down, double mm) {
    return in_kilograms_per_second(
        nozzle_flow(pascals_absolute(up), t, pascals_absolute(down), millimetres(mm))->flow);
  };
  const double critical = critical_pressure_ratio() * p0;
  RC_ASSERT(std::abs(flow(p0, 1e5, 2 * bore) / flow(p0, 1e5, bore) - 4) < 1e-9);
  RC_ASSERT(flow(p0 * 1.01, 1e5, bore) > flow(p0, 1e5, bore));
  // Choked: what is behind it plays no part any more. Not choked: it does.
  RC_ASSERT(flow(p0, critical * 0.99, bore) == flow(p0, critical * 0.5, bore));
  RC_ASSERT(flow(p0, critical * 1.2, bore) < flow(p0, critical * 0.99, bore));
}

// --- room air

RC_GTEST_PROP(RoomProperty, MoreAirChangesLessAndRoomForIsTheInverse, ()) {
  const std::array gas{EscapingGas{kilograms(answer_in(0.5, 30))}};
  const Room room{cubic_metres(answer_in(10, 300)), celsius(answer_in(0, 30)), sea_level()};
  const double changes = answer_in(0.1, 10) / 3600;
  const auto some = steady_release(gas[0], room, per_second(changes));
  const auto more = steady_release(gas[0], room, per_second(changes * 1.1));
  RC_ASSERT(some.has_value() && more.has_value());
  RC_ASSERT(more->count() <= some->count());
  const double limit = answer_in(0.005, 0.2);
  const auto wanted = room_for(mole_fraction(limit), gas, room);
  RC_ASSERT(wanted.has_value());
  RC_PRE(in_cubic_metres(*wanted) < room_volume_range.high &&
         in_cubic_metres(*wanted) > room_volume_range.low);
  const auto back = if_all_escapes(gas, {*wanted, room.temperature, room.ambient});
  RC_ASSERT(back.has_value());
  RC_ASSERT(std::abs(back->co2.count() - limit) < 1e-9);
}

}  // namespace
}  // namespace ullage::physics
