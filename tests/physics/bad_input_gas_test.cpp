// SPDX-License-Identifier: GPL-3.0-or-later
//
// Bad input to levels, gas and rooms.
#include <array>

#include "core/physics/cleaning_solution.h"
#include "core/physics/co2_bottle.h"
#include "core/physics/gas_ledger.h"
#include "core/physics/gas_use.h"
#include "core/physics/level.h"
#include "core/physics/level_filter.h"
#include "core/physics/room_air.h"
#include "core/physics/run_out.h"
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

Weighing weighed_at(double gross, double tare, double c) {
  return {with_error(kilograms(gross), 0.1),
          with_error(kilograms(tare), 0.1),
          specific_gravity(1.010),
          celsius(c),
          litres(19.9),
          gauge_psi(12),
          sea_level()};
}
Refusal level_with(double start, double at_days, double read) {
  LevelHistory h{litres(19.9), with_error(litres(start), 4e-4), {}};
  h.steps.push_back({days(1), PutOnTap{}});
  h.steps.push_back({days(at_days), LevelRead{with_error(litres(read), 1e-3)}});
  return refusal_of(LevelFilter::make(h));
}
Refusal forecast(double left, double span_days, double drawn) {
  SpanOnTap span;
  span.days[2] = span_days;
  span.drawn = with_error(litres(drawn), 3e-4);
  return refusal_of(run_out({with_error(litres(left), 5e-4), {span}, 3, 0.5}));
}

const std::vector<BadRow> levels_and_run_out_rows{
    {"gross kg",
     20,
     {0, -1, 5000},
     [](double v) { return refusal_of(beer_from_weight(weighed_at(v, 4.5, 4))); }},
    {"tare kg",
     4.5,
     {0, -1, 5000},
     [](double v) { return refusal_of(beer_from_weight(weighed_at(20, v, 4))); }},
    {"weighed C",
     4,
     {-40, 90},
     [](double v) { return refusal_of(beer_from_weight(weighed_at(20, 4.5, v))); }},
    {"heft",
     0.5,
     {-0.1, 1.5},
     [](double v) { return refusal_of(beer_from_heft(fraction(v), litres(19), {"heft"})); }},
    {"dew line",
     0.5,
     {-0.1, 1.5},
     [](double v) {
       return refusal_of(beer_from_condensation_line(fraction(v), litres(19), {"line"}));
     }},
    {"glasses",
     10,
     {-1, 1e6},
     [](double v) { return refusal_of(poured_by_glasses({v, litres(0.5), {"fill"}, {"loss"}})); }},
    {"start L", 19, {-1, 5000}, [](double v) { return level_with(v, 3, 10); }},
    {"read on day", 3, {-1, 0.5}, [](double v) { return level_with(19, v, 10); }},
    {"read L", 10, {-1, 5000}, [](double v) { return level_with(19, 3, v); }},
    {"left L", 10, {-1, 5000}, [](double v) { return forecast(v, 1, 4); }},
    {"span days", 1, {0, -1, 1e4}, [](double v) { return forecast(10, v, 4); }},
    {"drawn L", 4, {0, -1, 1e6}, [](double v) { return forecast(10, 1, v); }},
};
TEST(BadInput, LevelsAndRunOut) { expect_refusals(levels_and_run_out_rows); }

const Room bad_room{cubic_metres(20), celsius(15), sea_level()};
Refusal weighings(double kg, double at_days) {
  return refusal_of(unexplained_loss(
      std::array{LedgerPoint{days(0), with_error(kilograms(5), 0.02), with_error(kilograms(0), 0)},
                 LedgerPoint{days(at_days), with_error(kilograms(kg), 0.02),
                             with_error(kilograms(0.1), 0.01)}}));
}
SupplyState supply_at(double psi_gauge, double c) {
  return {with_error(gauge_psi(psi_gauge), 1e4), with_error(celsius(c), 1.0), sea_level()};
}

const std::vector<BadRow> gas_and_rooms_rows{
    {"saturation C",
     20,
     {-80, 40},
     [](double v) { return refusal_of(co2_saturation(celsius(v))); }},
    {"bottle kg",
     2,
     {-1, 1e4},
     [](double v) { return refusal_of(co2_bottle_state(kilograms(v), litres(3), celsius(20))); }},
    {"bottle L",
     3,
     {0, -1, 1e4},
     [](double v) { return refusal_of(co2_bottle_state(kilograms(2), litres(v), celsius(20))); }},
    {"fill ratio",
     0.68,
     {0, -1, 2},
     [](double v) { return refusal_of(liquid_full_temperature(fraction(v))); }},
    {"weighed kg", 4.8, {-1e5, 1e6}, [](double v) { return weighings(v, 14); }},
    {"weighed on day", 14, {0, -1, 1e5}, [](double v) { return weighings(4.8, v); }},
    {"pushed L",
     19,
     {-1, 1e6},
     [](double v) {
       return refusal_of(gas_to_push(with_error(litres(v), 1e-4), supply_at(12, 4), {"m"}));
     }},
    {"pushed psi",
     12,
     {-20, 500},
     [](double v) {
       return refusal_of(gas_to_push(with_error(litres(19), 1e-4), supply_at(v, 4), {"m"}));
     }},
    {"escaping kg",
     5,
     {-1, 1e6},
     [](double v) {
       return refusal_of(if_all_escapes(std::array{EscapingGas{kilograms(v)}}, bad_room));
     }},
    {"room m3",
     20,
     {0, -1, 1e7},
     [](double v) {
       return refusal_of(if_all_escapes(std::array{EscapingGas{kilograms(2)}},
                                        {cubic_metres(v), celsius(15), sea_level()}));
     }},
    {"air changes",
     1,
     {0, -1, 1e4},
     [](double v) {
       return refusal_of(steady_release({kilograms(1)}, bad_room, per_second(v / 3600)));
     }},
    {"limit",
     0.03,
     {0, -1, 2},
     [](double v) {
       return refusal_of(
           room_for(mole_fraction(v), std::array{EscapingGas{kilograms(2)}}, bad_room));
     }},
    {"solution L",
     5,
     {-1, 1e5},
     [](double v) { return refusal_of(cleaning_solution(litres(v), fraction(0.02), {})); }},
    {"strength",
     0.02,
     {-1, 0.9},
     [](double v) { return refusal_of(cleaning_solution(litres(5), fraction(v), {})); }},
};
TEST(BadInput, GasAndRooms) { expect_refusals(gas_and_rooms_rows); }

}  // namespace
}  // namespace ullage::physics
