// SPDX-License-Identifier: GPL-3.0-or-later
//
// The errors of room air and of cleaning solutions: by plain arithmetic, and against
// brute force.
#include "core/physics/room_errors.h"

#include <gtest/gtest.h>
#include <rapidcheck.h>
#include <rapidcheck/gtest.h>

#include <cmath>

#include "core/physics/atmosphere.h"
#include "core/physics/cleaning_solution.h"
#include "core/physics/room_leak.h"
#include "tests/physics/property_draws.h"
#include "tests/physics/sampled.h"

namespace ullage::physics {
namespace {

using namespace units;
using cases::work_in;
using sampled::Case;
using sampled::expect_middle;
using sampled::middle_of;
using sampled::off_by;

Estimate<Volume> taped_room(double tape_m = 0.05, double stock_off = 0.05) {
  return net_volume({metres(5), metres(3.5), metres(2.4), metres(tape_m),
                     off_by(fraction(0.1), "kegs and stock", stock_off)});
}
KnownRoom known_room(double share_of_volume) {
  return {off_by(cubic_metres(38), "room", 38 * share_of_volume),
          off_by(celsius(12), "thermometer", 1), off_by(sea_level(), "weather", 2000)};
}
KnownGas bottles(double share) {
  KnownGas gas;
  gas.bottles = {{kilograms(10)}, {kilograms(2), mole_fraction(0.3)}};
  gas.there = gas.there.with({"content"}, share);
  return gas;
}
KnownLeak leak_of(double grams, double changes_an_hour, double factor) {
  return {off_by(kilograms(grams / 1000), "leak", 0.2 * grams / 1000), mole_fraction(1),
          per_second(changes_an_hour / 3600), factor};
}

// 5 by 3.5 by 2.4 m less a tenth: each side and the part taken off by its share.
TEST(RoomErrors, ATapeAndAGuessOfTheStock) {
  const Estimate<Volume> room = taped_room();
  EXPECT_NEAR(in_cubic_metres(room.value()), 37.8, 1e-9);
  const double share = std::hypot(std::hypot(0.05 / 5, 0.05 / 3.5, 0.05 / 2.4), 0.05 / 0.9);
  EXPECT_NEAR(room.half_width() / 37.8, share, 1e-6);
  EXPECT_EQ(taped_room(0, 0).half_width(), 0);
}

// v / V: by the shares of both; oxygen by what the gas displaces.
TEST(RoomErrors, AllAtOnceGoesWithGasAndRoom) {
  const auto air = room_air_estimate(bottles(0.05), known_room(0.1));
  ASSERT_TRUE(air);
  const double share = air->co2.value().count();
  EXPECT_DOUBLE_EQ(share, air->outcome.co2.count());
  const double in_all = std::hypot(std::hypot(0.1, 0.05), std::hypot(2000 / 101325.0, 1 / 285.15));
  EXPECT_NEAR(air->co2.half_width() / share, in_all, 0.002);
  const double displaced = 1 - air->oxygen.value().count() / 0.20946;
  EXPECT_NEAR(air->oxygen.half_width() / (0.20946 * displaced), in_all, 0.002);
  const auto needed = room_for_estimate(mole_fraction(0.03), bottles(0.05), known_room(0.1));
  ASSERT_TRUE(needed);
  EXPECT_NEAR(needed->half_width() / needed->value().value(),
              std::hypot(0.05, 2000 / 101325.0, 1 / 285.15), 0.001);
}

TEST(RoomErrors, AllAtOnceAgainstBruteForce) {
  const KnownGas gas = bottles(0.1);
  const KnownRoom room = known_room(0.15);
  const auto air = room_air_estimate(gas, room);
  ASSERT_TRUE(air);
  const auto drawn = [&](auto pick) {
    return middle_of(4000, [&](Case& c) -> std::optional<double> {
      std::vector<EscapingGas> there = gas.bottles;
      const double full = c.of(gas.there).count();
      for (EscapingGas& g : there) g.mass = full * g.mass;
      const auto out = if_all_escapes(
          there, {c.of(room.net_volume), c.of(room.temperature), c.of(room.ambient)});
      return out ? std::optional(pick(*out).count()) : std::nullopt;
    });
  };
  expect_middle(sampled::stated_by(air->co2), drawn([](const auto& o) { return o.co2; }), 0.06);
  expect_middle(sampled::stated_by(air->co2_flowing),
                drawn([](const auto& o) { return o.co2_flowing; }), 0.06);
  expect_middle(sampled::stated_by(air->oxygen), drawn([](const auto& o) { return o.oxygen; }),
                0.06);
}

// Air changes known to a factor, so the answer is lopsided; sampled to within 3 %.
TEST(RoomErrors, ALeakAgainstBruteForce) {
  const KnownLeak leak = leak_of(500, 0.5, 2);
  const KnownRoom room = known_room(0.1);
  for (const std::optional<Duration>& after :
       {std::optional<Duration>(hours(3)), std::optional<Duration>(hours(24)),
        std::optional<Duration>()}) {
    const auto stated = steady_release_range(leak, room, after);
    const auto oxygen = oxygen_range(leak, room, after);
    ASSERT_TRUE(stated && stated->low && stated->high && oxygen && oxygen->low && oxygen->high);
    const auto drawn = middle_of(4000, [&](Case& c) -> std::optional<double> {
      const EscapingGas gas{c.of(leak.per_day)};
      const double n = in_per_second(leak.air_changes) * std::pow(2, c.offset("air changes"));
      const auto co2 =
          steady_release(gas, {c.of(room.net_volume), c.of(room.temperature), c.of(room.ambient)},
                         per_second(n), after);
      return co2 ? std::optional(co2->count()) : std::nullopt;
    });
    const double width = drawn.high - drawn.low;
    EXPECT_NEAR(stated->low->count(), drawn.low, 0.03 * width);
    EXPECT_NEAR(stated->high->count(), drawn.high, 0.06 * width);
    EXPECT_GT(stated->likely, *stated->low);
    EXPECT_LT(stated->likely, *stated->high);
    // Pure CO2 displaces just as much air.
    EXPECT_NEAR(oxygen->low->count(), 0.20946 * (1 - stated->high->count()), 1e-4);
    EXPECT_NEAR(oxygen->high->count(), 0.20946 * (1 - stated->low->count()), 1e-4);
  }
}

// 500 g a day in 38 m3 settle at 0.06 %: 0.05 % comes for sure only with few air changes.
TEST(RoomErrors, ALimitThatMayNeverBeReached) {
  const KnownRoom room = known_room(0.1);
  const auto perhaps = steady_release_reaches(mole_fraction(0.0005), leak_of(500, 0.5, 2), room);
  ASSERT_TRUE(perhaps && perhaps->likely && perhaps->earliest);
  EXPECT_LT(*perhaps->earliest, *perhaps->likely);
  EXPECT_FALSE(perhaps->latest) << "with twice the air it never is";
  const auto never = steady_release_reaches(mole_fraction(0.05), leak_of(500, 0.5, 2), room);
  ASSERT_TRUE(never);
  EXPECT_FALSE(never->likely);
  EXPECT_FALSE(never->earliest);
  // Shut tight it comes, as late as room over gas.
  const auto shut = steady_release_reaches(mole_fraction(0.0005), leak_of(500, 0, 2), room);
  ASSERT_TRUE(shut && shut->likely && shut->earliest && shut->latest);
  EXPECT_NEAR((*shut->latest - *shut->earliest).value() / (2 * shut->likely->value()),
              std::hypot(0.1, 0.2), 0.02);
}

TEST(RoomErrors, WithoutErrorsItIsTheArithmetic) {
  const KnownRoom exact{Estimate(cubic_metres(38)), Estimate(celsius(12)), Estimate(sea_level())};
  KnownLeak leak = leak_of(500, 0.5, 1);
  leak.per_day = Estimate(grams(500));
  const auto stated = steady_release_range(leak, exact, hours(8));
  const auto plain = steady_release({grams(500)}, {cubic_metres(38), celsius(12), sea_level()},
                                    per_second(0.5 / 3600), hours(8));
  ASSERT_TRUE(stated && plain && stated->low && stated->high);
  EXPECT_DOUBLE_EQ(stated->likely.count(), plain->count());
  EXPECT_DOUBLE_EQ(stated->low->count(), plain->count());
  EXPECT_DOUBLE_EQ(stated->high->count(), plain->count());
}

TEST(RoomErrors, RefusesWhatTheRoomRefuses) {
  EXPECT_EQ(room_air_estimate(bottles(0.05), {Estimate(cubic_metres(0)), Estimate(celsius(12)),
                                              Estimate(sea_level())})
                .error()
                .subject,
            Subject::volume);
  EXPECT_EQ(steady_release_range(leak_of(500, 0, 1.5), known_room(0.1)).error().subject,
            Subject::air_changes);
  EXPECT_EQ(steady_release_range(leak_of(std::nan(""), 1, 1.5), known_room(0.1)).error().subject,
            Subject::mass);
  // Where a shifted end is no room at all, half of the error would be made up.
  EXPECT_FALSE(room_air_estimate(bottles(0.05), known_room(1.1)));
}

RC_GTEST_PROP(RoomErrors, WiderInputsMakeWiderAnswers, ()) {
  const double grams = work_in(5, 3000), changes = work_in(0.05, 20);
  const KnownRoom room = known_room(work_in(0.01, 0.2));
  const double factor = work_in(1, 2.5);
  const auto narrow = steady_release_range(leak_of(grams, changes, factor), room);
  const auto wide = steady_release_range(leak_of(grams, changes, factor * 1.2), room);
  RC_ASSERT(narrow && narrow->low && narrow->high);
  RC_ASSERT(wide && wide->low && wide->high);
  RC_ASSERT(*narrow->low <= narrow->likely && narrow->likely <= *narrow->high);
  RC_ASSERT((wide->high->count() - wide->low->count()) >
            (narrow->high->count() - narrow->low->count()) * 0.999);
}

// --- cleaning solutions

const Concentrate liquor{fraction(0.30), kilograms_per_cubic_metre(1330)};

// 10 L at 2 % from a label known to 5 %, marks to 5 %, a scale to 3 %.
TEST(SolutionErrors, GoByTheirShares) {
  const auto out = solution_estimate(litres(10), fraction(0.02), liquor, {});
  const auto plain = cleaning_solution(litres(10), fraction(0.02), liquor);
  ASSERT_TRUE(out && plain && out->concentrate_volume);
  EXPECT_EQ(out->concentrate.value(), plain->concentrate);
  EXPECT_EQ(out->concentrate_volume->value(), *plain->concentrate_volume);
  EXPECT_NEAR(out->water.value().value(), plain->water.value(), 1e-12);
  const double amount = std::hypot(0.05, 0.05, 0.02);
  EXPECT_NEAR(out->concentrate.half_width() / out->concentrate.value().value(), amount, 0.001);
  EXPECT_NEAR(out->strength.half_width() / 0.02, std::hypot(amount, 0.03), 0.001);
  EXPECT_NEAR(out->water.half_width() / out->water.value().value(), 0.05, 0.001);
}

TEST(SolutionErrors, AgainstBruteForce) {
  const SolutionErrors wide{fraction(0.15), fraction(0.1), fraction(0.05)};
  const auto out = solution_estimate(litres(10), fraction(0.02), liquor, wide);
  ASSERT_TRUE(out);
  // What is weighed out by the values, in water by the marks, of what the label is truly.
  const auto drawn = middle_of(4000, [&](Case& c) -> std::optional<double> {
    const double label = 0.30 * (1 + 0.15 * c.offset("label"));
    const double mass = 0.66667 * (1 + 0.05 * c.offset("scale"));
    const double volume = 10 * (1 + 0.1 * c.offset("marks"));
    return label * mass / (volume * (1 + 0.02 * c.offset("density")));
  });
  expect_middle(sampled::stated_by(out->strength), drawn, 0.06);
}

TEST(SolutionErrors, RefuseWhatCannotBeMixedAndTakeAPurePowder) {
  EXPECT_EQ(solution_estimate(litres(10), fraction(0.05), {fraction(0.03), {}}, {}).error().subject,
            Subject::fraction);
  const auto powder = solution_estimate(litres(10), fraction(0.02), Concentrate{}, {});
  ASSERT_TRUE(powder);
  EXPECT_GT(powder->concentrate.half_width(), 0) << "a label of 100 % is no surer";
}

}  // namespace
}  // namespace ullage::physics
