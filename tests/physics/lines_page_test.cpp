// SPDX-License-Identifier: GPL-3.0-or-later
//
// The worked numbers of docs/physics-lines.md, to the digits printed there.
#include <gtest/gtest.h>

#include "core/physics/atmosphere.h"
#include "core/physics/break_out.h"
#include "core/physics/gas_blend.h"
#include "core/physics/handbook_restriction.h"
#include "core/physics/line_balance.h"
#include "core/physics/line_calibration.h"
#include "core/physics/shared_regulator.h"
#include "core/units/present.h"

namespace ullage::physics {
namespace {

using namespace units;

FlowingBeer cold_beer() { return flowing_beer(celsius(4)).value(); }

LineParts example_parts() {
  return {Fitting{psi(0.3)}, Hose{metres(2.5), inches(0.1875), drawn_tube_roughness(), metres(0.6)},
          Fitting{psi(0.5)}};
}
LineFlow example_line() { return LineFlow::make(example_parts(), cold_beer()).value(); }

TEST(LinesPage, BeerThatFlows) {
  EXPECT_NEAR(in_millipascal_seconds(cold_beer().viscosity), 2.26, 0.006);
  EXPECT_NEAR(in_kilograms_per_cubic_metre(cold_beer().density), 1010.0, 0.06);
}

TEST(LinesPage, Pour) {
  const LineFlow line = example_line();
  EXPECT_NEAR(in_psi(line.lift()), 0.86, 0.006);
  const VolumeFlow q = line.flow_at(gauge_psi(12)).value();
  EXPECT_NEAR(in_litres_per_second(q) * 1e3, 49.2, 0.06);
  EXPECT_NEAR(in_litres(us_pints(1)) / in_litres_per_second(q), 9.6, 0.06);
  const Velocity v = mean_velocity(q, inches(0.1875));
  EXPECT_NEAR(v.value(), 2.76, 0.006);
  const Reynolds re =
      reynolds_number(cold_beer().density, v, inches(0.1875), cold_beer().viscosity);
  EXPECT_NEAR(re.count(), 5890, 6);
  EXPECT_NEAR(in_psi(*line.loss_in(1, q)), 10.58, 0.006);
  EXPECT_NEAR(in_psi(*line.loss_in(0, q) + *line.loss_in(2, q)), 0.55, 0.006);
  EXPECT_NEAR(in_metres(*line.length_for(1, gauge_psi(12), nominal_pour())), 1.78, 0.006);
  EXPECT_NEAR(in_psi(*line.pressure_for(nominal_pour())), 16.2, 0.06);
  EXPECT_NEAR(in_millimetres(*line.bore_for(1, gauge_psi(12), nominal_pour())), 5.12, 0.006);
}

TEST(LinesPage, HandbookBeside) {
  const auto c =
      compare_restriction(present(handbook_restriction(HoseMaterial::vinyl, inches(0.1875))),
                          cold_beer())
          .value();
  EXPECT_NEAR(in_psi_per_foot(c.friction), 1.77, 0.006);
  EXPECT_NEAR(c.explained.count() * 100, 59, 0.6);
  EXPECT_NEAR(c.implied_bore.count(), 0.895, 0.0006);
  const auto prior = bore_prior(HoseMaterial::vinyl, inches(0.1875), cold_beer(), {"hose"});
  EXPECT_NEAR(prior.value().count(), 0.948, 0.0006);
  EXPECT_NEAR(prior.half_width(), 0.082, 0.0006);
}

TEST(LinesPage, Calibration) {
  const auto thick = ordinary_viscosity_factor({"beer: viscosity"});
  const MeasuredPour pour{Estimate<Volume>(us_pints(1)).with({"glass"}, 0.01e-3),
                          Estimate<Duration>(seconds(11)).with({"watch"}, 0.4),
                          Estimate<GaugePressure>(gauge_psi(12)).with({"dial"}, psi(2).value()),
                          Estimate<Temperature>(celsius(4)).with({"thermometer"}, 0.5)};
  const auto f = calibrate_bore(example_parts(), pour, specific_gravity(1.010), thick).value();
  const BoreRange bores = range_of_bores(f);
  EXPECT_NEAR(bores.likely.count(), 0.950, 0.0006);
  EXPECT_NEAR(bores.low.count(), 0.912, 0.0006);
  EXPECT_NEAR(present(bores.high).count(), 0.999, 0.0006);
  const auto same = pour_flow(example_parts(),
                              {f, pour.pressure, pour.temperature, specific_gravity(1.010), thick})
                        .value();
  const PourTime t = pour_time(same, us_pints(1)).value();
  EXPECT_NEAR(in_seconds(t.likely), 11, 0.06);
  EXPECT_NEAR(in_seconds(t.high) - in_seconds(t.likely), 0.5, 0.06);
  const auto rough =
      calibrate_roughness(example_parts(), pour, specific_gravity(1.010), ViscosityFactor(1.44))
          .value();
  EXPECT_NEAR(in_millimetres(rough), 0.052, 0.0006);
}

TEST(LinesPage, BreakOut) {
  const LineFlow line = example_line();
  const auto j =
      break_out_pouring(line, gauge_psi(12), volumes_of_co2(2.3), celsius(4), sea_level()).value();
  EXPECT_NEAR(in_seconds(j.whole), 0.905, 0.006);
  EXPECT_NEAR(in_metres(present(j.supersaturated_from)), 0.46, 0.006);
  EXPECT_NEAR(j.places.back().at_end.count(), 1.66, 0.006);
  const auto standing = Estimate<Temperature>(celsius(15));
  const auto rest = break_out_at_rest(line, Estimate<GaugePressure>(gauge_psi(12)),
                                      {standing, standing, standing},
                                      {Estimate<Co2Volumes>(volumes_of_co2(2.5)),
                                       Estimate<AbsolutePressure>(sea_level()),
                                       {"equation"}})
                        .value();
  EXPECT_NEAR(in_psi(rest[1].pressure), 11.1, 0.06);
  EXPECT_NEAR(in_psi(rest[1].needed.value()), 23.0, 0.06);
  EXPECT_EQ(rest[1].verdict, AtRest::breaks_out);
}

TEST(LinesPage, Blend) {
  const GaugePressure pure =
      equilibrium_gauge(volumes_of_co2(2.5), celsius(4), sea_level()).value();
  EXPECT_NEAR(in_psi(pure), 11.8, 0.06);
  EXPECT_NEAR(blend_for(pure, gauge_psi(22), sea_level())->count() * 100, 72, 0.6);
}

TEST(LinesPage, TwoBeersOnOneRegulator) {
  const auto keg = [](double low, double high) {
    SharingKeg k;
    k.temperature = Estimate<Temperature>(celsius(4));
    k.ambient = Estimate<AbsolutePressure>(sea_level());
    k.low = volumes_of_co2(low);
    k.high = volumes_of_co2(high);
    return k;
  };
  const auto best = best_shared_pressure({keg(1.8, 2.1), keg(2.5, 2.8)}).value();
  EXPECT_FALSE(best.suits_all);
  EXPECT_NEAR(in_psi(best.pressure), 9.7, 0.06);
  EXPECT_NEAR(best.settles[0].count(), 2.30, 0.006);
}

}  // namespace
}  // namespace ullage::physics
