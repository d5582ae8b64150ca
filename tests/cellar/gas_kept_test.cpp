// SPDX-License-Identifier: GPL-3.0-or-later
//
// What is kept of a gas account between calls only saves work: asked at many
// clocks, with entries logged, corrected and struck between, one Replay that was
// there all the time tells to the last bit what one made on the spot does.
#include <gtest/gtest.h>

#include <algorithm>
#include <cmath>
#include <functional>
#include <map>
#include <random>

#include "core/cellar/gas_draws.h"
#include "core/cellar/gas_sums.h"
#include "core/units/present.h"
#include "tests/cellar/gas_cellar.h"

namespace ullage::testing {
namespace {

// Kegs on one bottle, filled and emptied again and again, with what else happens.
struct BusyGas : GasCellar {
  explicit BusyGas(unsigned seed, int kegs = 5) : random(seed) {
    secondary = gas_regulator("Secondary", {}, regulator);
    other = gas_bottle("Bottle 2");
    ale = batch("Ale");
    for (int i = 0; i < kegs; ++i) {
      all.push_back(keg("K" + std::to_string(i), box));
      lines.push_back(line("Line " + std::to_string(i), std::to_string(i)));
    }
  }
  double flat(double low, double high) {
    return std::uniform_real_distribution<double>(low, high)(random);
  }
  bool one_in(int n) { return std::uniform_int_distribution<int>(1, n)(random) == 1; }

  // The rounds of all kegs up to a day, told in order of time.
  void live(double from, double until) {
    std::vector<std::pair<double, std::function<void(Instant)>>> plan;
    for (std::size_t i = 0; i < all.size(); ++i) {
      double at = from + flat(0, 6);
      while (at < until) {
        round(i, at, plan);
        at += 15 + flat(0, 10);
      }
    }
    const int weeks = static_cast<int>(std::ceil((until - from) / 7));
    for (int week = 0; week < weeks; ++week) {
      const double at = from + 7 * week;
      plan.emplace_back(at, [this](Instant t) { weigh(t, gas -= 0.12); });
      plan.emplace_back(at + flat(0, 7), [this](Instant t) {
        log(t, TemperatureRead{box, units::celsius(flat(3, 6)), {}, TemperatureOf::liquid});
      });
    }
    std::erase_if(plan, [&](const auto& each) { return each.first >= until; });
    std::stable_sort(plan.begin(), plan.end(),
                     [](const auto& a, const auto& b) { return a.first < b.first; });
    for (const auto& [at, tell] : plan)
      tell(day(0) + std::chrono::seconds(std::llround(at * 86400)));
  }
  void round(std::size_t i, double at,
             std::vector<std::pair<double, std::function<void(Instant)>>>& plan) {
    const KegId k = all[i];
    plan.emplace_back(at, [=, this](Instant t) {
      log(t, Purged{k, PurgeMethod::cycles, 3, units::gauge_psi(20), {}, {}});
    });
    plan.emplace_back(at + 0.1, [=, this](Instant t) {
      if (one_in(3)) {
        log(t, receive(k, ale, 4, {}));
      } else {
        fill(k, ale, t, 18.6, 5);
      }
    });
    plan.emplace_back(at + 0.2, [=, this](Instant t) {
      set_gas(k, t, std::round(flat(8, 15)), one_in(3) ? secondary : regulator);
    });
    if (one_in(2)) {
      plan.emplace_back(at + 4, [=, this](Instant t) {
        log(t, CarbonationReading{.keg = k,
                                  .pressure = units::gauge_psi(11),
                                  .instrument = dial,
                                  .temperature = units::celsius(4)});
      });
    }
    plan.emplace_back(at + 5, [=, this](Instant t) { log(t, Tapped{k, lines[i]}); });
    plan.emplace_back(at + 9, [=, this](Instant t) { heavy(k, t, 4.2 + flat(4, 14)); });
    if (one_in(4)) return;  // somebody forgot to log that it ran empty
    plan.emplace_back(at + 13, [=, this](Instant t) { log(t, Emptied{k}); });
  }

  std::mt19937 random;
  double gas = 12;
  RegulatorId secondary;
  BottleId other;
  BatchId ale;
  std::vector<KegId> all;
  std::vector<LineId> lines;
};

void expect_same(const MassEstimate& a, const MassEstimate& b) {
  EXPECT_EQ(a.value(), b.value());
  EXPECT_EQ(a.half_width(), b.half_width());
  ASSERT_EQ(a.contributions().size(), b.contributions().size());
  for (std::size_t i = 0; i < a.contributions().size(); ++i) {
    EXPECT_EQ(a.contributions()[i].source, b.contributions()[i].source);
    EXPECT_EQ(a.contributions()[i].half_width, b.contributions()[i].half_width);
  }
}

void expect_same(const GasAccount& a, const GasAccount& b) {
  ASSERT_EQ(a.weighings.size(), b.weighings.size());
  for (std::size_t i = 0; i < a.weighings.size(); ++i) {
    EXPECT_EQ(a.weighings[i].at, b.weighings[i].at);
    expect_same(a.weighings[i].gas, b.weighings[i].gas);
    expect_same(a.weighings[i].expected, b.weighings[i].expected);
  }
  ASSERT_EQ(a.expected.size(), b.expected.size());
  for (std::size_t i = 0; i < a.expected.size(); ++i) {
    EXPECT_EQ(a.expected[i].at, b.expected[i].at);
    EXPECT_EQ(a.expected[i].low, b.expected[i].low);
    EXPECT_EQ(a.expected[i].likely, b.expected[i].likely);
    EXPECT_EQ(a.expected[i].high, b.expected[i].high);
  }
  EXPECT_EQ(a.alarm, b.alarm);
  ASSERT_EQ(a.loss.has_value(), b.loss.has_value());
  if (a.loss) expect_same(a.loss->per_day, present(b.loss).per_day);
  ASSERT_EQ(a.use_per_day.has_value(), b.use_per_day.has_value());
  if (a.use_per_day) expect_same(*a.use_per_day, present(b.use_per_day));
  expect_same(a.planned, b.planned);
}

class KeptGas {
 public:
  explicit KeptGas(BusyGas& scene) : scene_(scene), kept_(scene.journal, scene.calendar) {}
  void same_as_from_nothing(Instant now) {
    const CellarStatus kept = kept_.status(now);
    const CellarStatus fresh = scene_.cellar(now);
    ASSERT_EQ(kept.bottles.size(), fresh.bottles.size());
    for (std::size_t i = 0; i < kept.bottles.size(); ++i) {
      ASSERT_TRUE(kept.bottles[i].account && fresh.bottles[i].account);
      expect_same(*kept.bottles[i].account, *fresh.bottles[i].account);
    }
  }

 private:
  BusyGas& scene_;
  Replay kept_;
};

TEST(GasKept, AtEveryClockAsFromNothing) {
  for (const unsigned seed : {1u, 2u, 3u}) {
    BusyGas scene(seed);
    scene.live(0, 60);
    KeptGas kept(scene);
    for (const Instant now : {day(20), day(20, 1), day(20, 13.7), day(41), day(60), day(60, 1),
                              day(60, 2), day(61), day(68), day(90), day(59)}) {
      kept.same_as_from_nothing(now);
    }
  }
}

TEST(GasKept, AfterEachNewEntryAsFromNothing) {
  BusyGas scene(7);
  scene.live(0, 40);
  KeptGas kept(scene);
  for (int d = 40; d < 70; d += 3) {
    kept.same_as_from_nothing(day(d, 0.5));
    scene.live(d, d + 3);
  }
  kept.same_as_from_nothing(day(72));
}

TEST(GasKept, AfterChangesOfThePastAsFromNothing) {
  BusyGas scene(11);
  scene.live(0, 60);
  KeptGas kept(scene);
  const Instant now = day(60, 3);
  kept.same_as_from_nothing(now);
  scene.log(day(12, 5), TemperatureRead{scene.box, units::celsius(9), {}, TemperatureOf::liquid});
  kept.same_as_from_nothing(now);
  const EntryId wrong = scene.heavy(scene.all[1], day(17), 12);
  kept.same_as_from_nothing(now);
  scene.strike(wrong);
  kept.same_as_from_nothing(now);
  scene.log(day(30), BottleChanged{scene.regulator, scene.other, {}, true, true});
  kept.same_as_from_nothing(now);
  InstrumentRecord dial = instrument_from_preset(InstrumentKind::regulator_dial);
  dial.instrument = scene.dial;
  dial.name = "Dial";
  dial.pressure_bias = units::psi(0.5);
  scene.log(day(60, 1), dial);
  kept.same_as_from_nothing(now);
  scene.weigh(day(26, 4), 11.5);
  kept.same_as_from_nothing(now);
}

// Nothing of the grid moves with the clock but its end.
TEST(GasKept, OnlyTheLastMomentOfTheCurveMovesWithTheClock) {
  BusyGas scene(5);
  scene.live(0, 50);
  const Replay replay(scene.journal, scene.calendar);
  const auto before = replay.status(day(52, 5)).bottles.front().account;
  const auto after = replay.status(day(52, 6)).bottles.front().account;
  ASSERT_EQ(before->expected.size(), after->expected.size());
  for (std::size_t i = 0; i + 1 < before->expected.size(); ++i) {
    EXPECT_EQ(before->expected[i].at, after->expected[i].at);
    EXPECT_EQ(before->expected[i].likely, after->expected[i].likely);
  }
  EXPECT_EQ(after->expected.back().at, day(52, 6));
}

// A keg emptied within the hour has drawn all that it drew.
TEST(GasKept, AKegEmptiedThisHourKeepsItsDraws) {
  GasCellar scene;
  const KegId k = scene.delivered("K01", scene.batch("Ale"), day(0));
  scene.weigh(day(0), 2.0);
  scene.set_gas(k, day(0, 1), 12);
  scene.log(day(0, 2), Tapped{k, scene.line("Line 1", "1")});
  scene.heavy(k, day(7), 4.2 + 3);
  const double before = units::in_kilograms(scene.account(day(8, 10)).expected.back().likely);
  scene.log(day(8, 10.4), Emptied{k});
  const double after = units::in_kilograms(scene.account(day(8, 10.5)).expected.back().likely);
  EXPECT_NEAR(after, before, 0.02);
  EXPECT_LT(after, 1.97);
}

// Sums with most names put together against the plain sum with every name.
TEST(GasSums, ErrorsPutTogetherShareWhatTheyShared) {
  std::mt19937 random(3);
  std::normal_distribution<double> width(0, 0.01);
  const std::vector<Instant> moments{day(0), day(1), day(2), day(3), day(4), day(5)};
  SourceTable table;
  PlainDraws draws;
  std::vector<std::vector<units::Contribution>> by(moments.size());
  for (int keg = 0; keg < 200; ++keg) {
    for (std::size_t m = 1; m < moments.size(); ++m) {
      std::vector<units::Contribution> errors{
          {{"keg " + std::to_string(keg)}, width(random)},
          {{"reading " + std::to_string(keg) + " " + std::to_string(m)}, width(random)},
          {{"method"}, 0.002}};
      draws.add({moments[m - 1], moments[m]}, MassEstimate(units::grams(10), errors), table);
      by[m].insert(by[m].end(), errors.begin(), errors.end());
    }
  }
  GasSums sums(moments, table);
  for (const PlainDraws::Row& row : draws.rows()) sums.add(draws, row);
  const MassEstimate start = MassEstimate(units::kilograms(20)).with({"method"}, 0.3);
  sums.keep_names_of(start);
  sums.finish({moments[2], moments[5]});
  // By names: what each adds up to by then.
  const auto plain = [&](std::size_t upto) {
    std::map<std::string, double> all;
    for (std::size_t m = 1; m <= upto; ++m) {
      for (const units::Contribution& c : by[m]) all[c.source.name] += c.half_width;
    }
    return all;
  };
  const auto early = plain(2), late = plain(5);
  const auto covariance = [](const auto& a, const auto& b) {
    double sum = 0;
    for (const auto& [name, w] : a) {
      const auto at = b.find(name);
      if (at != b.end()) sum += w * at->second;
    }
    return sum;
  };
  const auto named = [](const MassEstimate& m) {
    std::map<std::string, double> all;
    for (const units::Contribution& c : m.contributions()) all[c.source.name] += c.half_width;
    return all;
  };
  const auto early_sum = named(sums.drawn(0)), late_sum = named(sums.drawn(1));
  EXPECT_LT(late_sum.size(), 60u);
  EXPECT_NEAR(covariance(early_sum, early_sum), covariance(early, early), 1e-12);
  EXPECT_NEAR(covariance(late_sum, late_sum), covariance(late, late), 1e-12);
  EXPECT_NEAR(covariance(early_sum, late_sum), covariance(early, late), 1e-12);
  EXPECT_NEAR(units::in_kilograms(sums.drawn(1).value()), 200 * 5 * 0.01, 1e-9);
  double square = 0;
  for (const auto& [name, w] : late) {
    const double of_start = name == "method" ? 0.3 : 0;
    square += (of_start - w) * (of_start - w);
  }
  EXPECT_NEAR(sums.left(start, 5).half_width, std::sqrt(square), 1e-9);
  EXPECT_NEAR(smaller_causes_together(sums.drawn(1)).half_width(), sums.drawn(1).half_width(),
              1e-12);
}

}  // namespace
}  // namespace ullage::testing
