// SPDX-License-Identifier: GPL-3.0-or-later
//
// Bad input to lines, pours and hold tests.
#include <functional>

#include "core/physics/break_out.h"
#include "core/physics/handbook_restriction.h"
#include "core/physics/hold_beer.h"
#include "core/physics/line_balance.h"
#include "core/physics/line_calibration.h"
#include "core/physics/line_volume.h"
#include "tests/physics/bad_input.h"
#include "tests/physics/hold_cases.h"
#include "tests/physics/keg_cases.h"

namespace ullage::physics {
namespace {

using namespace units;
using cases::BadRow;
using cases::expect_refusals;
using cases::Refusal;
using cases::refusal_of;
using cases::with_error;

LineParts hose_of(double length, double bore, double rise = 0.5, double rough = 0.0015) {
  return {Hose{metres(length), millimetres(bore), millimetres(rough), metres(rise)}};
}
Refusal line_refusal(LineParts parts) {
  return refusal_of(LineFlow::make(std::move(parts), *flowing_beer(celsius(4))));
}
LineFlow good_line() { return LineFlow::make(hose_of(2, 4.76), *flowing_beer(celsius(4))).value(); }

const std::vector<BadRow> lines_rows{
    {"bore mm", 4.76, {0, -1, 0.1, 500}, [](double v) { return line_refusal(hose_of(2, v)); }},
    {"length m", 2, {-1, 1e5}, [](double v) { return line_refusal(hose_of(v, 4.76)); }},
    {"rise m", 1, {-500, 500}, [](double v) { return line_refusal(hose_of(2, 4.76, v)); }},
    {"roughness mm", 0.01, {-1, 2}, [](double v) { return line_refusal(hose_of(2, 4.76, 1, v)); }},
    {"fitting psi",
     0.5,
     {-1, 500},
     [](double v) { return line_refusal({hose_of(2, 4.76)[0], Fitting{psi(v)}}); }},
    {"line beer C", 4, {-20, 90}, [](double v) { return refusal_of(flowing_beer(celsius(v))); }},
    {"beer gravity",
     1.01,
     {0, -1, 2},
     [](double v) { return refusal_of(flowing_beer(celsius(4), specific_gravity(v))); }},
    {"beer over water",
     1.4,
     {0, -1, 50},
     [](double v) { return refusal_of(beer_viscosity(celsius(4), ViscosityFactor(v))); }},
    {"pour psi",
     12,
     {-20, 0, 500},
     [](double v) { return refusal_of(good_line().flow_at(gauge_psi(v))); }},
    {"pour L/s",
     0.06,
     {0, -1, 1e3},
     [](double v) { return refusal_of(good_line().pressure_for(litres_per_second(v))); }},
    {"profile psi",
     12,
     {-20, 500},
     [](double v) { return refusal_of(good_line().profile_pouring(gauge_psi(v))); }},
    {"length for L/s",
     0.06,
     {0, -1, 1e3},
     [](double v) {
       return refusal_of(good_line().length_for(0, gauge_psi(12), litres_per_second(v)));
     }},
    {"bore for psi",
     12,
     {-20, 500},
     [](double v) { return refusal_of(good_line().bore_for(0, gauge_psi(v), nominal_pour())); }},
    {"Reynolds",
     5000,
     {0, -1, 1e12},
     [](double v) { return refusal_of(friction_factor(Reynolds(v), RelativeRoughness(0))); }},
    {"relative roughness",
     0.01,
     {-1, 0.5},
     [](double v) { return refusal_of(friction_factor(Reynolds(5000), RelativeRoughness(v))); }},
    {"friction of bore mm",
     6,
     {0, -1, 0.1, 500},
     [](double v) {
       return refusal_of(friction_restriction(millimetres(v), *flowing_beer(celsius(4))));
     }},
    {"contents: bore mm",
     6,
     {0, -1, 0.1, 500},
     [](double v) { return refusal_of(line_volume(millimetres(v), metres(2))); }},
    {"contents: length m",
     6,
     {-1, 1e4},
     [](double v) { return refusal_of(line_volume(millimetres(6), metres(v))); }},
    {"restrictor psi",
     3,
     {-1},
     [](double v) { return refusal_of(restrictor_length(psi(v), psi_per_foot(3))); }},
    {"balance: rise m",
     1,
     {-500, 500},
     [](double v) { return refusal_of(handbook_balance(gauge_psi(12), metres(v), {})); }},
};
TEST(BadInput, Lines) { expect_refusals(lines_rows); }

MeasuredPour timed(double seconds_long, double millilitres, double psi_gauge, double c) {
  return {with_error(litres(millilitres * 1e-3), 1e-5), with_error(seconds(seconds_long), 0.4),
          with_error(gauge_psi(psi_gauge), 1.4e4), with_error(celsius(c), 0.5)};
}
Refusal calibrated(const MeasuredPour& pour) {
  return refusal_of(calibrate_bore(hose_of(2, 4.76), pour, specific_gravity(1.010),
                                   ordinary_viscosity_factor({"viscosity"})));
}
Refusal standing_at(double volumes, double c) {
  const CarbonatedBeer beer{
      with_error(volumes_of_co2(volumes), 0.1), with_error(sea_level(), 2000), {"equation"}};
  return refusal_of(break_out_at_rest(good_line(), with_error(gauge_psi(12), 1e4),
                                      {with_error(celsius(c), 1.0)}, beer));
}

const std::vector<BadRow> pours_and_break_out_rows{
    {"timed s", 10, {0, -1, 1e5}, [](double v) { return calibrated(timed(v, 473, 12, 4)); }},
    {"timed mL", 473, {0, -1, 1e6}, [](double v) { return calibrated(timed(10, v, 12, 4)); }},
    {"timed psi", 12, {-20, 500}, [](double v) { return calibrated(timed(10, 473, v, 4)); }},
    {"timed C", 4, {-20, 90}, [](double v) { return calibrated(timed(10, 473, 12, v)); }},
    {"standing: volumes", 2.5, {0, -1, 30}, [](double v) { return standing_at(v, 10); }},
    {"standing: C", 10, {-20, 90}, [](double v) { return standing_at(2.5, v); }},
    {"pouring: volumes",
     2.5,
     {0, -1, 30},
     [](double v) {
       return refusal_of(break_out_pouring(good_line(), gauge_psi(12), volumes_of_co2(v),
                                           celsius(4), sea_level()));
     }},
    {"pouring: C",
     4,
     {-20, 90},
     [](double v) {
       return refusal_of(break_out_pouring(good_line(), gauge_psi(12), volumes_of_co2(2.5),
                                           celsius(v), sea_level()));
     }},
    {"glass mL",
     473,
     {0, -1},
     [](double v) {
       return refusal_of(pour_time(with_error(nominal_pour(), 1e-6), litres(v * 1e-3)));
     }},
};
TEST(BadInput, PoursAndBreakOut) { expect_refusals(pours_and_break_out_rows); }

HoldTest held_two(double h, double psi_then, double c_then) {
  return cases::held_keg(
      {cases::hold_reading(0, 30, 20), cases::hold_reading(h, psi_then, c_then)});
}
Refusal held_with(const std::function<void(HoldTest&)>& spoil, double limit = 2) {
  HoldTest test = held_two(24, 29.9, 20);
  spoil(test);
  return refusal_of(judge_hold(test, grams(limit)));
}

const std::vector<BadRow> hold_tests_rows{
    {"hours",
     24,
     {0, -1, 1e6},
     [](double v) { return refusal_of(judge_hold(held_two(v, 29.9, 20))); }},
    {"psi", 29.9, {-20, 500}, [](double v) { return refusal_of(judge_hold(held_two(24, v, 20))); }},
    {"C", 20, {-80, 90}, [](double v) { return refusal_of(judge_hold(held_two(24, 29.9, v))); }},
    {"gas space L",
     19,
     {0, -1, 1e6},
     [](double v) { return held_with([v](HoldTest& t) { t.gas_space = litres(v); }); }},
    {"air Pa",
     1e5,
     {0, -1, 1e6},
     [](double v) { return held_with([v](HoldTest& t) { t.ambient = pascals_absolute(v); }); }},
    {"barometer Pa",
     2000,
     {-1},
     [](double v) { return held_with([v](HoldTest& t) { t.barometer = pascals(v); }); }},
    {"residue L",
     0.2,
     {-1},
     [](double v) { return held_with([v](HoldTest& t) { t.wet_residue = litres(v); }); }},
    {"limit g/day", 2, {0, -1, 1e6}, [](double v) { return held_with([](HoldTest&) {}, v); }},
    {"error of a dial",
     3000,
     {},
     [](double v) {
       return held_with(
           [v](HoldTest& t) { t.readings[1].pressure = t.readings[1].pressure.with({"odd"}, v); });
     }},
    {"leak: psi",
     12,
     {-20, 500},
     [](double v) {
       const LeakState known{gauge_psi(30).at_ambient(sea_level()), celsius(20)};
       return refusal_of(leak_at(LeakLaw::viscous, grams_per_day(2), known,
                                 {gauge_psi(v).at_ambient(sea_level()), celsius(4)}, sea_level()));
     }},
    {"nozzle: bore mm",
     0.1,
     {-1, 1e4},
     [](double v) {
       return refusal_of(nozzle_flow(bar_absolute(3), celsius(20), sea_level(), millimetres(v)));
     }},
    {"with beer: volumes",
     2.4,
     {0, -1, 30},
     [](double v) {
       HoldTest test = held_two(24, 29.9, 20);
       test.gas_space = litres(1);
       return refusal_of(judge_hold_with_beer(test, {litres(18.6),
                                                     with_error(volumes_of_co2(v), 0.1),
                                                     LogEstimate<Duration>(days(4), 2, {"uptake"}),
                                                     {"equation"}}));
     }},
};
TEST(BadInput, HoldTests) { expect_refusals(hold_tests_rows); }

// --- contradictory, too few, too short, out of order: said, not computed away

TEST(BadInput, ColdSealedKegThatRoseIsNotCalledTight) {
  const auto out = judge_hold(held_two(24, 40, 4));
  ASSERT_TRUE(out);
  EXPECT_EQ(out->verdict, HoldVerdict::cant_tell);
  EXPECT_EQ(out->reason, HoldReason::rose);
}

TEST(BadInput, ShortSingleAndDisorderedHoldTests) {
  EXPECT_EQ(judge_hold(held_two(2.0 / 60, 29.9, 20))->reason, HoldReason::too_soon);
  EXPECT_EQ(judge_hold(cases::held_keg({cases::hold_reading(0, 30, 20)}))->reason,
            HoldReason::one_reading);
  const auto disordered =
      judge_hold(cases::held_keg({cases::hold_reading(5, 30, 20), cases::hold_reading(0, 29, 20)}));
  ASSERT_FALSE(disordered);
  EXPECT_EQ(disordered.error().subject, Subject::step_time);
}

}  // namespace
}  // namespace ullage::physics
