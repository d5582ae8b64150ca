// SPDX-License-Identifier: GPL-3.0-or-later
//
// The errors of a purge: by plain arithmetic, and against brute force.
#include "core/physics/purge_errors.h"

#include <gtest/gtest.h>

#include <cmath>
#include <span>
#include <vector>

#include "core/physics/atmosphere.h"
#include "tests/physics/sampled.h"

namespace ullage::physics {
namespace {

using namespace units;
using sampled::Case;
using sampled::expect_middle;
using sampled::middle_of;
using sampled::off_by;

const PurgeMixing perfect{{fraction(1), fraction(1), fraction(1)},
                          {fraction(1), fraction(1), fraction(1)}};
const ErrorSource method{"method"};

KnownVessel soda_keg() {
  return {off_by(litres(19), "keg", 0.4e-3), off_by(litres(18.5), "beer", 0.5e-3),
          off_by(sea_level(), "weather", 2000), off_by(celsius(20), "thermometer", 1)};
}
Estimate<PressureDifference> dial_off(double half_width_psi) {
  return Estimate<PressureDifference>(psi(0)).with_error({"dial"}, psi(half_width_psi));
}
double by(const std::vector<Contribution>& errors, const char* source) {
  for (const Contribution& c : errors) {
    if (c.source.name == source) return std::abs(c.half_width);
  }
  return 0;
}

// Five perfect fills to 44.7 psi absolute: the fifth power of the ratio, so five times
// the share that the dial is off by; and no error but the dial's and the air's.
TEST(PurgeErrors, FiveFillsGoWithTheFifthPower) {
  const auto out = purge_estimate(soda_keg(), PressureCycles{5, gauge_psi(30), {}}, dial_off(2),
                                  method, {mole_fraction(0)}, perfect);
  ASSERT_TRUE(out);
  EXPECT_NEAR(by(out->oxygen_errors, "dial"), 5 * 2 / 44.696, 0.003);
  EXPECT_EQ(by(out->oxygen_errors, "keg"), 0);
  EXPECT_EQ(by(out->oxygen_errors, "purge: mixing"), 0);
  // In the beer the volumes count, straight.
  EXPECT_NEAR(by(out->in_beer_errors, "keg"), 0.4 / 19, 1e-4);
  EXPECT_NEAR(by(out->in_beer_errors, "beer"), 0.5 / 18.5, 1e-4);
  // The gas let in goes with the gauge pressure, nearly, and with the keg's volume.
  const double used = out->co2_used.value().value();
  EXPECT_NEAR(by(out->co2_used.contributions(), "dial") / used, 2.0 / 30, 0.003);
  EXPECT_NEAR(by(out->co2_used.contributions(), "method") / used, 0.15, 1e-9);
}

// With the mixing as it is: every source drawn at random, the mixing by its two sides.
TEST(PurgeErrors, TheRangeIsThatOfBruteForce) {
  const KnownVessel keg = soda_keg();
  const auto dial = dial_off(2);
  LiquidPush pushed;
  pushed.pressure = gauge_psi(5);
  for (const PurgeAct& act :
       {PurgeAct(PressureCycles{5, gauge_psi(30), {}}), PurgeAct(Sweep{3}), PurgeAct(pushed)}) {
    const auto out = purge_estimate(keg, act, dial, method);
    const auto plain = purge_on({}, {litres(19), litres(18.5), sea_level(), celsius(20)}, act);
    ASSERT_TRUE(out && plain);
    const auto drawn = middle_of(4000, [&](Case& c) -> std::optional<double> {
      PurgeAct off = act;
      if (auto* cycles = get_if<PressureCycles>(&off)) cycles->high = cycles->high + c.of(dial);
      if (auto* push = get_if<LiquidPush>(&off)) push->pressure = push->pressure + c.of(dial);
      const auto left = purge_on(
          {}, {c.of(keg.gas_space), c.of(keg.beer), c.of(keg.ambient), c.of(keg.temperature)}, off);
      if (!left) return std::nullopt;
      const double mixes = c.offset("mixing");
      const double side = mixes > 0 ? plain->worst.count() / plain->oxygen.count()
                                    : plain->oxygen.count() / plain->best.count();
      return std::log(left->oxygen.count()) + mixes * std::log(side);
    });
    expect_middle({std::log(out->outcome.best.count()), std::log(out->outcome.oxygen.count()),
                   std::log(out->outcome.worst.count())},
                  drawn, 0.06);
  }
}

TEST(PurgeErrors, RefusesWhatAPurgeRefusesAndClampsNothingElse) {
  EXPECT_EQ(purge_estimate(soda_keg(), Sweep{99}, dial_off(2), method).error().subject,
            Subject::vessel_volumes);
  // A fill to 1 psi by a dial that may be 2 off: at the least nothing is let in.
  const auto out =
      purge_estimate(soda_keg(), PressureCycles{5, gauge_psi(1), {}}, dial_off(2), method);
  ASSERT_TRUE(out);
  EXPECT_LE(out->outcome.worst.count(), 1);
  EXPECT_TRUE(std::isfinite(out->co2_used.half_width()));
  // Nothing done: what was there is there.
  const auto none =
      purge_estimate(soda_keg(), PressureCycles{0, gauge_psi(30), {}}, dial_off(2), method);
  ASSERT_TRUE(none);
  EXPECT_DOUBLE_EQ(none->outcome.worst.count(), air_oxygen.count());
}

// A push and two fills after it: one dial for all of it, mixing and air left on top each
// by its own worst.
TEST(PurgeErrors, SeveralInTheirOrderAgainstBruteForce) {
  const KnownVessel keg = soda_keg();
  const auto dial = dial_off(2);
  LiquidPush pushed;
  pushed.pressure = gauge_psi(5);
  const std::vector<PurgeAct> acts{PurgeAct(pushed),
                                   PurgeAct(PressureCycles{2, gauge_psi(20), {}})};
  const Vessel plain_keg{litres(19), litres(18.5), sea_level(), celsius(20)};
  const auto out = purge_estimate(keg, acts, dial, method);
  const auto plain = purge_in_order(plain_keg, acts);
  ASSERT_TRUE(out && plain);
  EXPECT_DOUBLE_EQ(out->outcome.oxygen.count(), plain->back().oxygen.count());
  EXPECT_DOUBLE_EQ(out->co2_used.value().value(), plain->back().co2_used.value());
  EXPECT_GT(by(out->oxygen_errors, "air left on top, and mixing"), 0);
  const auto drawn = middle_of(4000, [&](Case& c) -> std::optional<double> {
    std::vector<PurgeAct> off = acts;
    get_if<LiquidPush>(&off[0])->pressure = gauge_psi(5) + c.of(dial);
    get_if<PressureCycles>(&off[1])->high = gauge_psi(20) + c.of(dial);
    const auto left = purge_in_order(
        {c.of(keg.gas_space), c.of(keg.beer), c.of(keg.ambient), c.of(keg.temperature)}, off);
    if (!left) return std::nullopt;
    const double mixes = c.offset("mixing");
    const PurgeOutcome& p = plain->back();
    const double side =
        mixes > 0 ? p.worst.count() / p.oxygen.count() : p.oxygen.count() / p.best.count();
    return std::log(left->back().oxygen.count()) + mixes * std::log(side);
  });
  expect_middle({std::log(out->outcome.best.count()), std::log(out->outcome.oxygen.count()),
                 std::log(out->outcome.worst.count())},
                drawn, 0.06);
}

// What went before counts with its range, and its gas does not.
TEST(PurgeErrors, GoesOnFromWhatWasDone) {
  const PurgeAct two = PressureCycles{2, gauge_psi(30), {}};
  const auto first = purge_estimate(soda_keg(), two, dial_off(2), method);
  ASSERT_TRUE(first);
  const auto more =
      purge_estimate(soda_keg(), std::span(&two, 1), dial_off(2), method, {}, {}, first->outcome);
  ASSERT_TRUE(more);
  EXPECT_NEAR(more->co2_used.value().value(), first->co2_used.value().value(), 1e-12);
  const auto width = [](const PurgeEstimate& e) {
    return std::log(e.outcome.worst.count() / e.outcome.best.count());
  };
  EXPECT_GT(width(*more), width(*first));
  EXPECT_EQ(
      purge_estimate(soda_keg(), std::span<const PurgeAct>(), dial_off(2), method).error().subject,
      Subject::cycles);
}

// ln(y0 / yt) / ln(PH / PL) by hand, with the dial at its ends; and a dial that may be
// off by all of it tells of no most.
TEST(PurgeErrors, CyclesToATarget) {
  const Mixing all{fraction(1), fraction(1), fraction(1)};
  const auto n =
      cycles_needed(ppm(1000), soda_keg(), gauge_psi(30), dial_off(2), {mole_fraction(0)}, all);
  ASSERT_TRUE(n && n->most);
  const auto by_hand = [](double psi_gauge) {
    return std::log(0.20946 / 1000e-6) / std::log((14.696 + psi_gauge) / 14.696);
  };
  EXPECT_NEAR(n->likely, by_hand(30), 1e-3);
  const double dial = (by_hand(28) - by_hand(32)) / 2;
  EXPECT_NEAR((*n->most - n->fewest) / 2, dial, 0.03);
  const auto low = cycles_needed(ppm(1000), soda_keg(), gauge_psi(1), dial_off(2));
  ASSERT_TRUE(low);
  EXPECT_FALSE(low->most);
  EXPECT_GT(low->likely, 0);
}

}  // namespace
}  // namespace ullage::physics
