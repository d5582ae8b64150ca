// SPDX-License-Identifier: GPL-3.0-or-later
//
// The worked examples of docs/physics-rescue.md, -sugar.md, -purge.md and -hold.md, and
// those of docs/physics.md that physics_page_test.cpp has not, read from the pages
// themselves and worked out anew, to the digits printed there.
#include <gtest/gtest.h>

#include <cmath>

#include "core/physics/co2_gas.h"
#include "core/physics/gas_use.h"
#include "core/physics/leak_law.h"
#include "core/physics/level.h"
#include "core/physics/line_volume.h"
#include "core/physics/priming.h"
#include "core/physics/purge_plan.h"
#include "core/physics/rescue.h"
#include "tests/physics/hold_cases.h"
#include "tests/physics/printed_numbers.h"

namespace ullage::physics {
namespace {

using namespace units;
using cases::printed;

double number(const std::string& text) { return std::stod(text); }

OverCarbonated example_keg(const std::vector<std::string>& n, double beer, double celsius_now) {
  return {litres(number(n[1])),
          Estimate<Volume>(litres(beer)),
          Estimate<Co2Volumes>(volumes_of_co2(number(n[3]))),
          Estimate<Temperature>(celsius(celsius_now)),
          sea_level(),
          volumes_of_co2(number(n[4])),
          LogEstimate<Duration>(days(4), 2, {"uptake"})};
}

// "18.9 L in a 19.9 L keg at 4 °C, from 3.7 to 2.5 volumes: 19 or 20 vents"
TEST(RescuePage, WorkedExample) {
  const auto n = printed("physics-rescue.md",
                         R"((\d+\.\d) L in a (\d+\.\d) L keg at (\d+) °C, from (\d\.\d) to )"
                         R"((\d\.\d) volumes: (\d+) or (\d+) vents)");
  ASSERT_EQ(n.size(), 7U);
  const auto full = vents_to_target(example_keg(n, number(n[0]), number(n[2]))).value();
  EXPECT_GE(full.vents, number(n[5]));
  EXPECT_LE(full.vents, number(n[6]));
  // "some hours after each"
  EXPECT_GT(in_hours(full.wait.median()), 2);
  EXPECT_LT(in_hours(full.wait.median()), 24);

  const auto half =
      printed("physics-rescue.md", R"(Half full \((\d+\.\d+) L\): (\d+), with days between)");
  ASSERT_EQ(half.size(), 2U);
  const auto few = vents_to_target(example_keg(n, number(half[0]), number(n[2]))).value();
  EXPECT_EQ(few.vents, std::stoi(half[1]));
  EXPECT_GT(in_days(few.wait.median()), 1);

  const auto warm =
      printed("physics-rescue.md", R"(At (\d+) °C the full keg takes less than two thirds)");
  ASSERT_EQ(warm.size(), 1U);
  const auto fewer = vents_to_target(example_keg(n, number(n[0]), number(warm[0]))).value();
  EXPECT_LT(fewer.vents, 2.0 / 3.0 * full.vents);

  const auto held = printed("physics-rescue.md", R"(takes 4 days × ln (\d+), about (\d+) days)");
  ASSERT_EQ(held.size(), 2U);
  const auto plan = hold_at_target(example_keg(n, number(n[0]), number(n[2]))).value();
  EXPECT_NEAR(in_days(plan.within.median()), 4 * std::log(number(held[0])), 1e-9);
  EXPECT_PRINTED(in_days(plan.within.median()), held[1], 0);
}

// "A litre over 18.9 L of beer at 4 °C: about a thirtieth."
TEST(RescuePage, TheWait) {
  const auto n = printed("physics-rescue.md",
                         R"(A litre over (\d+\.\d) L of beer at (\d+) °C: about a thirtieth)");
  ASSERT_EQ(n.size(), 2U);
  const auto share =
      closed_time_share({litres(number(n[0]) + 1), litres(number(n[0])), celsius(number(n[1]))});
  EXPECT_NEAR(1 / share->count(), 30, 5);
}

PrimingQuestion sugar_question(double beer, double brimful, double fermented, double volumes,
                               double held_at) {
  PrimingQuestion q;
  q.brimful = litres(brimful);
  q.beer = litres(beer);
  q.warmest = Estimate<Temperature>(celsius(fermented));
  q.ambient = sea_level();
  q.target = volumes_of_co2(volumes);
  q.holds_at = celsius(held_at);
  q.conditions_at = celsius(held_at);
  q.headspace_purged = false;
  return q;
}

TEST(SugarPage, WorkedExample) {
  const auto n = printed("physics-sugar.md",
                         R"((\d+) L in a (\d+) L keg not purged, fermented at (\d+) °C, to hold )"
                         R"((\d\.\d) volumes at (\d+) °C: (\d+) g of sucrose for the beer )"
                         R"(\((\d+) g by the trade's (\d) g a litre and volume\), and (\d+) % )"
                         R"(more for the headspace; it stands at about (\d+) psi)");
  ASSERT_EQ(n.size(), 10U);
  const auto plan =
      priming(sugar_question(number(n[0]), number(n[1]), number(n[2]), number(n[3]), number(n[4])))
          .value();
  const Mass bare = plan.sugar.value() - plan.for_headspace;
  EXPECT_PRINTED(in_grams(bare), n[5], 0);
  EXPECT_PRINTED(number(n[7]) * number(n[0]) * (number(n[3]) - plan.residual.value().count()), n[6],
                 0);
  EXPECT_PRINTED(100 * in_grams(plan.for_headspace) / in_grams(bare), n[8], 0);
  EXPECT_PRINTED(in_psi(plan.while_conditioning.value()), n[9], 0);

  const auto more = printed("physics-sugar.md",
                            R"(From (\d\.\d+) to (\d\.\d+) another (\d\.\d) volumes would come)");
  ASSERT_EQ(more.size(), 3U);
  const auto come =
      co2_still_to_come(specific_gravity(number(more[0])), specific_gravity(number(more[1])));
  EXPECT_PRINTED(come->count(), more[2], 0);
}

TEST(SugarPage, Headspace) {
  const auto n = printed("physics-sugar.md",
                         R"(For (\d\.\d) volumes at (\d+) °C a litre over (\d+) L adds about )"
                         R"((\d+) %, four litres over (\d+) L about (\d+) %)");
  ASSERT_EQ(n.size(), 6U);
  const auto added = [&](double over, double beer) {
    const auto plan =
        priming(sugar_question(beer, beer + over, 20, number(n[0]), number(n[1]))).value();
    return 100 * in_grams(plan.for_headspace) / in_grams(plan.sugar.value() - plan.for_headspace);
  };
  EXPECT_PRINTED(added(1, number(n[2])), n[3], 0);
  EXPECT_PRINTED(added(4, number(n[4])), n[5], 0);
}

void expect_page_ppm(const PurgeOutcome& out, const std::vector<std::string>& n) {
  ASSERT_EQ(n.size(), 4U);
  EXPECT_PRINTED(in_ppm(out.oxygen), n[0], 3);
  EXPECT_PRINTED(in_ppm(out.best), n[1], 3);
  EXPECT_PRINTED(in_ppm(out.worst), n[2], 3);
  EXPECT_PRINTED(in_grams(out.co2_used), n[3], 0);
}

TEST(PurgePage, WorkedExample) {
  const std::string page = "physics-purge.md";
  const auto keg = printed(page, R"((\d+) L at (\d+) °C: five fills to (\d+) psi leave)");
  ASSERT_EQ(keg.size(), 3U);
  const Vessel v{litres(number(keg[0])), litres(number(keg[0])), sea_level(),
                 celsius(number(keg[1]))};
  const auto cycles = purge_by_cycles(v, {5, gauge_psi(number(keg[2])), {}}).value();
  expect_page_ppm(cycles, printed(page, R"(leave (\d+) ppm \((\d+) to (\d+)\) and use (\d+) g)"));
  expect_page_ppm(
      purge_by_sweep(v, 5).value(),
      printed(page, R"(Five volumes swept: ([\d ]+) ppm \(([\d ]+) to ([\d ]+)\), (\d+) g)"));
  const auto push = printed(page, R"(Pushed out with (\d+) psi: \d+ ppm)");
  ASSERT_EQ(push.size(), 1U);
  expect_page_ppm(
      purge_by_liquid(v, {gauge_psi(number(push[0]))}).value(),
      printed(page, R"(Pushed out with \d+ psi: (\d+) ppm \((\d+) to (\d+)\), (\d+) g)"));
  const auto more = printed(page, R"(The push and then two fills to (\d+) psi leave)");
  ASSERT_EQ(more.size(), 1U);
  const std::vector<PurgeAct> in_order{LiquidPush{gauge_psi(number(push[0]))},
                                       PressureCycles{2, gauge_psi(number(more[0])), {}}};
  expect_page_ppm(
      purge_in_order(v, in_order).value().back(),
      printed(page, R"(two fills to \d+ psi leave (\d+) ppm \((\d+) to (\d+)\) and use (\d+) g)"));
  const auto beer = printed(page, R"(all of the first goes into the beer it is (\d+\.\d+) mg/L)");
  ASSERT_EQ(beer.size(), 1U);
  EXPECT_PRINTED(cycles.if_all_in_beer.count(), beer[0], 0);

  const auto target = printed(page, R"(To (\d+) ppm the cheapest is a push and then cycles)");
  ASSERT_EQ(target.size(), 1U);
  const auto plans = purge_plans(ppm(number(target[0])), v).value();
  ASSERT_FALSE(plans.empty());
  EXPECT_EQ(plans.front().way, PurgeWay::push_then_cycles);
}

// "30 psi at sea level is a factor of 3.04, at 3000 m of 3.95"
TEST(PurgePage, PressuresAreAbsolute) {
  const auto n =
      printed("physics-purge.md",
              R"((\d+) psi at sea level is a factor of (\d\.\d+), at (\d+) m of (\d\.\d+))");
  ASSERT_EQ(n.size(), 4U);
  const auto factor = [&](AbsolutePressure air) {
    return in_pascals(gauge_psi(number(n[0])).at_ambient(air)) / in_pascals(air);
  };
  EXPECT_PRINTED(factor(sea_level()), n[1], 0);
  EXPECT_PRINTED(factor(ambient_pressure(metres(number(n[2]))).value()), n[3], 0);
}

TEST(HoldPage, WorkedExample) {
  const auto n = printed("physics-hold.md",
                         R"((\d+\.\d) L at sea level, (\d+) psi at (\d+) °C. A day later at )"
                         R"((\d+) °C a tight keg reads (\d+\.\d+) psi)");
  ASSERT_EQ(n.size(), 5U);
  HoldTest test = cases::held_keg({cases::hold_reading(0, number(n[1]), number(n[2])),
                                   cases::hold_reading(24, number(n[4]), number(n[3]))});
  test.gas_space = litres(number(n[0]));
  const auto cold = judge_hold(test).value();
  EXPECT_PRINTED(in_psi(cold.expected), n[4], 0);
  EXPECT_NE(cold.verdict, HoldVerdict::leaks);

  const auto fall =
      printed("physics-hold.md", R"(A fall from (\d+) to (\d+) psi at (\d+) °C in a day is about )"
                                 R"((\d+\.\d) g)");
  ASSERT_EQ(fall.size(), 4U);
  // The gas alone: no water inside to take any up.
  test.readings = {cases::hold_reading(0, number(fall[0]), number(fall[2])),
                   cases::hold_reading(24, number(fall[1]), number(fall[2]))};
  test.wet_residue = litres(0);
  EXPECT_PRINTED(in_grams(judge_hold(test)->leak_per_day.value()), fall[3], 0);
}

// "from 30 psi down to 12 psi a viscous leak falls to 28 % and an orifice leak to 60 %"
TEST(HoldPage, LeakLaws) {
  const auto n = printed("physics-hold.md",
                         R"(from (\d+) psi down to (\d+) psi a viscous leak falls to (\d+) % and )"
                         R"(an orifice leak to (\d+) %)");
  ASSERT_EQ(n.size(), 4U);
  const auto share = [&](LeakLaw law) {
    const auto state = [](double psi) {
      return LeakState{gauge_psi(psi).at_ambient(sea_level()), celsius(15)};
    };
    return in_grams_per_day(
        leak_at(law, grams_per_day(100), state(number(n[0])), state(number(n[1])), sea_level())
            .value());
  };
  EXPECT_PRINTED(share(LeakLaw::viscous), n[2], 0);
  EXPECT_PRINTED(share(LeakLaw::orifice), n[3], 0);
}

// "The litre above the 18 L of a full 19 L keg at 4 °C holds 0.13 g for each psi, which
// the beer swallows by 0.004 volumes": from 12 to 13 psi, as a keg on gas stands.
TEST(HoldPage, WhatThePsiOfAHeadspaceIs) {
  const auto n = printed("physics-hold.md",
                         R"(above the (\d+) L of a full (\d+) L keg at (\d+) °C holds (\d\.\d+) g )"
                         R"(for each psi, which the beer swallows by (\d\.\d+) volumes)");
  ASSERT_EQ(n.size(), 5U);
  const Volume beer = litres(number(n[0]));
  const auto held = [&](double psi_gauge) {
    return gas_amount(gauge_psi(psi_gauge).at_ambient(sea_level()), litres(number(n[1])) - beer,
                      celsius(number(n[2])))
        .value();
  };
  const double g = in_grams(co2_mass(held(13) - held(12)));
  EXPECT_PRINTED(g, n[3], 0);
  EXPECT_PRINTED(g / grams_per_litre_per_volume / in_litres(beer), n[4], 0);
}

// "The trade's rule of 1 psi per 2000 ft agrees to 0.05 psi at 5000 ft and is 0.65 psi
// too much at 12 000 ft"
TEST(MainPage, AltitudeRule) {
  const auto n =
      printed("physics.md", R"(rule of (\d) psi per (\d+) ft agrees to (\d\.\d+) psi at (\d+) ft )"
                            R"(and is (\d\.\d+) psi too much at ([\d ]+) ft)");
  ASSERT_EQ(n.size(), 6U);
  const auto too_much = [&](const std::string& ft) {
    const auto air = ambient_pressure(feet(number(ft))).value();
    return number(n[0]) * number(ft) / number(n[1]) - in_psi(sea_level() - air);
  };
  EXPECT_LT(std::abs(too_much(n[3])), number(n[2]));
  EXPECT_PRINTED(too_much(n[5]), n[4], 0);
}

TEST(MainPage, Co2Gas) {
  const auto n =
      printed("physics.md", R"(A litre at (\d+) psi and (\d+) °C is (\d\.\d+) mol or (\d\.\d+) g )"
                            R"(of CO2; with (\d+) % CO2 and the rest nitrogen it is (\d\.\d+) mol )"
                            R"(and (\d\.\d+) g)");
  ASSERT_EQ(n.size(), 7U);
  const auto holds = [&](MoleFraction co2) {
    return gas_amount(gauge_psi(number(n[0])).at_ambient(sea_level()), litres(1),
                      celsius(number(n[1])), co2)
        .value();
  };
  const MoleFraction pure = mole_fraction(1), mixed = mole_fraction(number(n[4]) / 100);
  EXPECT_PRINTED(in_moles(holds(pure)), n[2], 0);
  EXPECT_PRINTED(in_grams(gas_mass(holds(pure), pure)), n[3], 0);
  EXPECT_PRINTED(in_moles(holds(mixed)), n[5], 0);
  EXPECT_PRINTED(in_grams(gas_mass(holds(mixed), mixed)), n[6], 0);
}

void expect_litres(const Estimate<Volume>& level, const std::string& value,
                   const std::string& error) {
  EXPECT_PRINTED(in_litres(level.value()), value, 0);
  EXPECT_PRINTED(level.half_width() * 1e3, error, 0);
}

TEST(MainPage, LevelByWeight) {
  const auto n = printed(
      "physics.md",
      R"(A keg of (\d+) L weighs (\d+\.\d) ± (\d\.\d) kg, its tare is (\d+\.\d) ± (\d\.\d) kg; )"
      R"(with beer of (\d\.\d+) at (\d+) °C under (\d+) psi it holds (\d+\.\d) ± (\d\.\d) L)");
  ASSERT_EQ(n.size(), 10U);
  Weighing w;
  w.brimful = litres(number(n[0]));
  w.gross = Estimate<Mass>(kilograms(number(n[1]))).with({"scale"}, number(n[2]));
  w.tare = Estimate<Mass>(kilograms(number(n[3]))).with({"tare"}, number(n[4]));
  w.gravity = specific_gravity(number(n[5]));
  w.temperature = celsius(number(n[6]));
  w.headspace = gauge_psi(number(n[7]));
  w.ambient = sea_level();
  expect_litres(beer_from_weight(w).value(), n[8], n[9]);
}

TEST(MainPage, LevelByHandEyeAndGlasses) {
  const auto n = printed(
      "physics.md", R"(Hefted as four tenths of (\d+) L it holds (\d+) ± (\d+\.\d) L, with a dew )"
                    R"(line at four tenths (\d+) ± (\d+) L, and after (\d+) glasses of (\d\.\d) L )"
                    R"(out of a full one (\d+\.\d) ± (\d\.\d) L)");
  ASSERT_EQ(n.size(), 9U);
  const Volume keg = litres(number(n[0]));
  expect_litres(beer_from_heft(fraction(0.4), keg, {"heft"}).value(), n[1], n[2]);
  expect_litres(beer_from_condensation_line(fraction(0.4), keg, {"dew"}).value(), n[3], n[4]);
  const Glasses drawn{number(n[5]), litres(number(n[6])), {"fill"}, {"loss"}};
  expect_litres(beer_after_glasses(Estimate<Volume>(keg), drawn).value(), n[7], n[8]);
}

// "trade figures of 18, 32, 49 and 71 mL/m for 3/16, 1/4, 5/16 and 3/8 in": printed to
// the millilitre, the third a bare half off.
TEST(MainPage, LineContents) {
  const auto n = printed("physics.md", R"((\d+) m of (\d+) mm hold (\d+) mL)");
  ASSERT_EQ(n.size(), 3U);
  const auto held = [](Length bore, double m) {
    return in_litres(line_volume(bore, metres(m)).value()) * 1e3;
  };
  EXPECT_PRINTED(held(millimetres(number(n[1])), number(n[0])), n[2], 0);
  const auto trade =
      printed("physics.md", R"(trade figures of (\d+), (\d+), (\d+) and (\d+) mL/m for 3/16, )");
  ASSERT_EQ(trade.size(), 4U);
  for (std::size_t i = 0; i < 4; ++i)
    EXPECT_PRINTED(held(inches((3 + static_cast<double>(i)) / 16), 1), trade[i], 0);
}

// "five fills leave 5 times as much, and five volumes swept 30 times" between m = 1 and
// the worst.
TEST(PurgePage, MixingMattersMost) {
  const auto n = printed("physics-purge.md",
                         R"(five fills leave (\d+) times as much, and five volumes swept (\d+))");
  ASSERT_EQ(n.size(), 2U);
  const Vessel v{litres(19), litres(19), sea_level(), celsius(20)};
  const auto spread = [](const PurgeOutcome& out) { return out.worst.count() / out.best.count(); };
  EXPECT_PRINTED(spread(purge_by_cycles(v, {5, gauge_psi(30), {}}).value()), n[0], 0);
  EXPECT_NEAR(spread(purge_by_sweep(v, 5).value()), number(n[1]), 5);
}

}  // namespace
}  // namespace ullage::physics
