// SPDX-License-Identifier: GPL-3.0-or-later
//
// Input outside the stated range is refused, with the limit that was passed.
#include <gtest/gtest.h>

#include <cmath>
#include <limits>

#include "core/physics/equilibrium.h"
#include "core/physics/gravity.h"
#include "core/physics/keg_cooling.h"
#include "core/physics/level.h"
#include "core/physics/line_volume.h"
#include "core/physics/purge.h"
#include "tests/physics/keg_cases.h"

namespace ullage::physics {
namespace {

using namespace units;
using cases::exactly;
using cases::soda_keg;

constexpr double nan = std::numeric_limits<double>::quiet_NaN();
constexpr double inf = std::numeric_limits<double>::infinity();

template <class T>
void expect_refused(const Result<T>& result, Subject subject, const char* what) {
  ASSERT_FALSE(result.has_value()) << what;
  EXPECT_EQ(result.error().subject, subject) << what << ": " << describe(result.error());
  const RangeError& e = result.error();
  EXPECT_FALSE(e.value >= e.low && e.value <= e.high) << what << ": " << describe(e);
}

TEST(Refusal, Atmosphere) {
  for (const double m : {nan, inf, -inf, 9000.0, -900.0})
    expect_refused(ambient_pressure(metres(m)), Subject::altitude, "altitude");
}

TEST(Refusal, Equilibrium) {
  const auto gas = [](double psi) { return GasAbove{gauge_psi(psi), sea_level()}; };
  for (const double c : {nan, inf, 90.0, -20.0})
    expect_refused(equilibrium_co2(gas(12), celsius(c)), Subject::temperature, "temperature");
  for (const double p : {nan, inf, 500.0, -20.0})
    expect_refused(equilibrium_co2(gas(p), celsius(3)), Subject::gauge_pressure, "pressure");
  expect_refused(equilibrium_co2(gas(70), celsius(25)), Subject::co2_above_water, "water");
  for (const double v : {nan, inf, 0.0, -1.0, 30.0})
    expect_refused(equilibrium_gauge(volumes_of_co2(v), celsius(3), sea_level()), Subject::co2,
                   "volumes");
  for (const double y : {nan, 0.0, -0.3, 1.2})
    expect_refused(equilibrium_gauge(volumes_of_co2(2), celsius(3), sea_level(), mole_fraction(y)),
                   Subject::co2_fraction, "share");
  expect_refused(equilibrium_gauge(volumes_of_co2(2), celsius(3), pascals_absolute(0)),
                 Subject::ambient_pressure, "ambient");
}

TEST(Refusal, PolynomialKeepsToItsOwnTable) {
  const auto ask = [](double v, double f) {
    return equilibrium_gauge(volumes_of_co2(v), fahrenheit(f), sea_level(), mole_fraction(1),
                             Equation::polynomial);
  };
  EXPECT_TRUE(ask(2.0, 32));
  EXPECT_TRUE(ask(3.0, 40));
  expect_refused(ask(3.2, 40), Subject::co2, "3.2 volumes");
  expect_refused(ask(2.5, 31), Subject::temperature, "31 F");
  expect_refused(ask(2.5, 81), Subject::temperature, "81 F");
  expect_refused(ask(2.5, 75), Subject::co2_above_water, "warm");
}

void expect_history_refused(const CarbonationHistory& h, Subject subject, const char* what) {
  expect_refused(CarbonationModel::make(h, cases::rates()), subject, what);
}

TEST(Refusal, CarbonationSteps) {
  const auto with = [](What what) { return soda_keg(3, {{hours(1), std::move(what)}}); };
  for (const double psi : {nan, inf, 500.0, -5.0})
    expect_history_refused(with(GasOn{exactly(psi)}), Subject::gauge_pressure, "gas");
  for (const double y : {nan, 0.0, 1.5})
    expect_history_refused(with(GasOn{exactly(10), mole_fraction(y)}), Subject::co2_fraction,
                           "share");
  for (const double c : {nan, 90.0, -30.0})
    expect_history_refused(with(PlaceChanged{cases::thermometer(c)}), Subject::temperature,
                           "place");
  for (const double l : {nan, -1.0, 19.0, inf})
    expect_history_refused(with(BeerDrawn{litres(l)}), Subject::beer_volume, "drawn");
  expect_history_refused(with(Rocked{hours(nan)}), Subject::duration, "rocked");
  expect_history_refused(with(Co2Read{Estimate<Co2Volumes>(volumes_of_co2(9))}), Subject::co2,
                         "read");
  expect_history_refused(with(Vented{gauge_psi(nan)}), Subject::gauge_pressure, "vented");
}

TEST(Refusal, CarbonationHistory) {
  CarbonationHistory h = soda_keg(3, {});
  h.beer = litres(19.7);
  expect_history_refused(h, Subject::beer_volume, "more beer than keg");
  h = soda_keg(3, {});
  h.brimful = litres(0);
  expect_history_refused(h, Subject::volume, "no keg");
  h = soda_keg(3, {});
  h.initial = Estimate<Co2Volumes>(volumes_of_co2(nan));
  expect_history_refused(h, Subject::co2, "initial");
  h = soda_keg(3, {{hours(5), GasOff{}}, {hours(4), GasOff{}}});
  expect_history_refused(h, Subject::step_time, "out of order");
  h = soda_keg(3, {});
  h.start = Estimate<Temperature>(celsius(3)).with({"broken"}, nan);
  expect_history_refused(h, Subject::temperature, "error that is no number");
}

TEST(Refusal, CarbonationQuestions) {
  const auto m = CarbonationModel::make(soda_keg(3, {}), cases::rates(), days(10)).value();
  for (const double d : {nan, -1.0, 11.0, inf})
    expect_refused(m.at(days(d)), Subject::duration, "time");
  expect_refused(m.curve(days(0), days(5), 1), Subject::cycles, "one point");
  EXPECT_TRUE(m.curve(days(0), days(10), 200));
}

TEST(Refusal, Purge) {
  const Vessel v{litres(19), litres(19), sea_level(), celsius(20)};
  expect_refused(purge_by_cycles(v, {-1, gauge_psi(30), {}}), Subject::cycles, "cycles");
  expect_refused(purge_by_cycles(v, {3, gauge_psi(500), {}}), Subject::gauge_pressure, "500 psi");
  expect_refused(purge_by_cycles(v, {3, gauge_psi(5), gauge_psi(6)}), Subject::gauge_pressure,
                 "vented above");
  expect_refused(cycles_to_reach(ppm(10), v, gauge_psi(30)), Subject::oxygen_fraction, "floor");
  expect_refused(cycles_to_reach(ppm(1000), v, gauge_psi(0)), Subject::gauge_pressure, "0 psi");
  expect_refused(purge_by_sweep(v, nan), Subject::vessel_volumes, "sweep");
  expect_refused(purge_by_sweep({litres(0), litres(19), sea_level(), celsius(20)}, 1),
                 Subject::headspace, "no gas space");
  expect_refused(purge_by_liquid(v, {gauge_psi(5), fraction(2)}), Subject::fraction, "share");
}

TEST(Refusal, Gravity) {
  const auto ask = [](double og, double fg) {
    return fermented(specific_gravity(og), specific_gravity(fg));
  };
  expect_refused(ask(1.010, 1.050), Subject::final_gravity, "final above original");
  for (const double og : {nan, 0.0, 1.5, inf})
    expect_refused(ask(og, 1.01), Subject::gravity, "OG");
  for (const double fg : {nan, 0.0, 0.9}) expect_refused(ask(1.05, fg), Subject::gravity, "FG");
}

TEST(Refusal, CoolingLineAndLevel) {
  expect_refused(cooling_time_constant(litres(0), {"k"}), Subject::volume, "no keg");
  expect_refused(line_volume(millimetres(0), metres(1)), Subject::bore, "no bore");
  expect_refused(line_volume(millimetres(5), metres(nan)), Subject::length, "length");
  expect_refused(beer_from_heft(fraction(1.2), litres(19), {"heft"}), Subject::fraction, "heft");
  expect_refused(beer_from_heft(fraction(nan), litres(19), {"heft"}), Subject::fraction, "heft");
}

TEST(RangeErrorText, NamesTheLimit) {
  EXPECT_EQ(describe({Subject::temperature, 363.15, 270.15, 308.15}),
            "temperature 363.15 is outside 270.15 to 308.15 K");
}

}  // namespace
}  // namespace ullage::physics
