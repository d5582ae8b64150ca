// SPDX-License-Identifier: GPL-3.0-or-later
//
// The 95 % band on kegs that have no closed form (rate_posterior_test.cpp has those
// that do): part full, gas turned off, warm at first, rocked, on mixed gas, a
// regulator turned down. The truth is worked out apart from the solver
// (reference_keg.h), with every error drawn from what the history says of it.
#include <gtest/gtest.h>

#include <array>
#include <cstdint>
#include <random>
#include <string>

#include "core/physics/rate_posterior.h"
#include "tests/physics/reference_keg.h"

namespace ullage::physics {
namespace {

using namespace units;
using cases::ReferenceKeg;
using cases::ReferenceState;

enum class BusyKind { part_full, gas_off, warm_start, rocked, mixed_gas, turned_down };

const char* busy_name(BusyKind kind) {
  static constexpr std::array names{"part_full", "gas_off",   "warm_start",
                                    "rocked",    "mixed_gas", "turned_down"};
  return names.at(static_cast<std::size_t>(kind));
}

constexpr double busy_dial_bias_psi = 2.0;
constexpr double busy_dial_repeat_psi = 0.5;
constexpr double busy_display_bias_k = 2.0;
constexpr double busy_meter_volumes = 0.15;

class BusyKeg {
 public:
  BusyKeg(BusyKind kind, std::mt19937& random) : random_(random) {
    const double fridge = 2 + 3 * even();
    shown_.brimful = litres(19.6);
    shown_.beer = litres(kind == BusyKind::part_full ? 3 + 13 * even() : 18.5);
    rates_ = carbonation_priors(shown_.brimful, shown_.beer, "K01").value();
    shown_.initial = Estimate<Co2Volumes>(volumes_of_co2(0.85)).with({"CO2 at fill"}, 0.1);
    shown_.ambient =
        Estimate<AbsolutePressure>(sea_level()).with({"weather"}, weather_half_width_pascals);
    draw_errors();
    true_.initial = Estimate<Co2Volumes>(volumes_of_co2(0.85 + 0.1 * error()));
    start_at(kind == BusyKind::warm_start ? 15 + 6 * even() : fridge);
    if (kind == BusyKind::warm_start) put_in(0, fridge);
    story(kind);
  }

  // A meter's reading, as it would be told.
  void read(double at_days) {
    const double told = co2_at(at_days) + busy_meter_volumes * error();
    shown_.readings.push_back(
        {days(at_days),
         Estimate<Co2Volumes>(volumes_of_co2(told)).with({"meter: reading"}, busy_meter_volumes)});
  }
  [[nodiscard]] double co2_at(double at_days, bool exactly = false) const {
    ReferenceKeg keg = keg_;
    ReferenceState x = keg.start(true_);
    double now = 0;
    const auto go = [&](double until) {
      if (exactly) {
        if (keg.rock_until > now && keg.rock_until < until) {
          keg.advance(x, now, keg.rock_until);
          now = keg.rock_until;
        }
        keg.advance(x, now, until);
      } else {
        keg.stride(x, now, until);
      }
      now = until;
    };
    for (const Step& step : true_.steps) {
      if (in_days(step.at) > at_days) break;
      go(in_seconds(step.at));
      keg.apply(step, x);
    }
    go(at_days * 86400);
    return x[0] / cases::moles_per_volume;
  }
  [[nodiscard]] const CarbonationHistory& history() const { return shown_; }
  [[nodiscard]] const CarbonationRates& rates() const { return rates_; }
  [[nodiscard]] double true_days() const { return keg_.resting / 86400; }

 private:
  // One error in 95 % half-widths; an even draw from 0 to 1.
  double error() { return std::normal_distribution<double>(0, 1 / 1.959963985)(random_); }
  double even() { return std::uniform_real_distribution<double>(0, 1)(random_); }

  void draw_errors() {
    keg_.beer = keg_.first_beer = in_cubic_metres(shown_.beer);
    keg_.headspace = in_cubic_metres(shown_.brimful - shown_.beer);
    keg_.resting = in_seconds(rates_.resting.at(error()));
    keg_.rocking = in_seconds(rates_.rocking.at(error()));
    keg_.cooling = in_seconds(rates_.cooling.at(error()));
    keg_.ambient_pa += weather_half_width_pascals * error();
    keg_.equation_off = equation_half_width(Equation::fitted_chart).count() * error();
    dial_off_ = busy_dial_bias_psi * error();
    display_off_ = busy_display_bias_k * error();
  }
  static Estimate<Temperature> display(double c) {
    return Estimate<Temperature>(celsius(c)).with({"display: bias"}, busy_display_bias_k);
  }
  void start_at(double c) {
    shown_.start = display(c);
    true_.start = Estimate<Temperature>(celsius(c + display_off_));
    keg_.place = in_kelvin(true_.start.value());
  }
  void put_in(double at_days, double c) {
    shown_.steps.push_back({days(at_days), PlaceChanged{display(c)}});
    true_.steps.push_back(
        {days(at_days), PlaceChanged{Estimate<Temperature>(celsius(c + display_off_))}});
  }
  void gas(double at_days, double psi_shown, double co2 = 1) {
    const std::string key = "dial: set " + std::to_string(shown_.steps.size());
    shown_.steps.push_back(
        {days(at_days), GasOn{Estimate<GaugePressure>(gauge_psi(psi_shown))
                                  .with({"dial: bias"}, in_pascals(psi(busy_dial_bias_psi)))
                                  .with({key}, in_pascals(psi(busy_dial_repeat_psi))),
                              mole_fraction(co2)}});
    const double truly = psi_shown + dial_off_ + busy_dial_repeat_psi * error();
    true_.steps.push_back({days(at_days), GasOn{cases::exactly(truly), mole_fraction(co2)}});
  }
  void both(double at_days, const What& what) {
    shown_.steps.push_back({days(at_days), what});
    true_.steps.push_back({days(at_days), what});
  }

  void story(BusyKind kind) {
    switch (kind) {
      case BusyKind::part_full:
      case BusyKind::warm_start:
        gas(0, 11 + 15 * even());
        break;
      case BusyKind::gas_off:
        gas(0, 18 + 12 * even());
        both(0.5 + 1.5 * even(), GasOff{});
        break;
      case BusyKind::rocked:
        gas(0, 20 + 10 * even());
        both(0.05, Rocked{minutes(3 + 9 * even())});
        gas(0.15, 11 + 2 * even());
        break;
      case BusyKind::mixed_gas:
        gas(0, 22 + 8 * even(), 0.6 + 0.2 * even());
        break;
      case BusyKind::turned_down:
        gas(0, 25 + 10 * even());
        const double when = 1 + 1.5 * even();
        if (even() < 0.5) both(when, Vented{gauge_psi(0)});
        gas(when, 9 + 3 * even());
        break;
    }
  }

  std::mt19937& random_;
  ReferenceKeg keg_{};
  CarbonationHistory shown_;
  CarbonationHistory true_;  // its start, headspace and steps as they really were
  CarbonationRates rates_{};
  double dial_off_ = 0;
  double display_off_ = 0;
};

struct BusyTally {
  int kegs = 0, inside = 0, read = 0, inside_read = 0, rate_inside = 0;
};

// Every second keg has one reading by a meter.
BusyTally busy_kegs(BusyKind kind, int kegs, std::uint32_t seed) {
  std::mt19937 random(seed);
  std::uniform_real_distribution<double> even(0, 1);
  BusyTally tally;
  for (int i = 0; i < kegs; ++i) {
    BusyKeg keg(kind, random);
    if (i % 2 == 1) keg.read(0.5 + 5 * even(random));
    const double now = 0.3 + 7 * even(random);
    const auto model = CarbonationModel::make(keg.history(), keg.rates(), days(20));
    EXPECT_TRUE(model);
    if (!model) return tally;
    const auto point = model->at(days(now));
    EXPECT_TRUE(point);
    const double truth = keg.co2_at(now);
    ++tally.kegs;
    const int inside = truth >= point->low.count() && truth <= point->high.count() ? 1 : 0;
    tally.inside += inside;
    if (const auto& rate = model->learned()) {
      ++tally.read;
      tally.inside_read += inside;
      tally.rate_inside += keg.true_days() >= in_days(rate->posterior.low) &&
                                   keg.true_days() <= in_days(rate->posterior.high)
                               ? 1
                               : 0;
    }
  }
  return tally;
}

constexpr int kegs_a_kind = 4800;

class BusyKegs : public ::testing::TestWithParam<BusyKind> {};

// Counting 95 % on 4800 kegs is off by 0.6 % at the most, in 19 of 20: 93 to 97 % is
// asked of each kind.
TEST_P(BusyKegs, BandCoversTheTruth) {
  const auto seed = 20260400U + static_cast<std::uint32_t>(GetParam());
  const BusyTally t = busy_kegs(GetParam(), kegs_a_kind, seed);
  ASSERT_EQ(t.kegs, kegs_a_kind);
  const double share = static_cast<double>(t.inside) / t.kegs;
  const double rate_share = static_cast<double>(t.rate_inside) / t.read;
  RecordProperty("co2_covered_permille", static_cast<int>(1000 * share));
  RecordProperty("rate_covered_permille", static_cast<int>(1000 * rate_share));
  EXPECT_GE(share, 0.93) << t.inside_read << " of " << t.read << " with a reading";
  EXPECT_LE(share, 0.97) << t.inside_read << " of " << t.read << " with a reading";
  // Half as many: 0.9 % in 19 of 20.
  EXPECT_GE(rate_share, 0.93);
  EXPECT_LE(rate_share, 0.97);
}

INSTANTIATE_TEST_SUITE_P(AllKinds, BusyKegs,
                         ::testing::Values(BusyKind::part_full, BusyKind::gas_off,
                                           BusyKind::warm_start, BusyKind::rocked,
                                           BusyKind::mixed_gas, BusyKind::turned_down),
                         [](const auto& kind) { return std::string(busy_name(kind.param)); });

// The truth's strides against the adaptive integrator, on the same drawn kegs.
TEST(BusyKegTruth, StridesAgreeWithTheIntegrator) {
  std::mt19937 random(20260499);
  for (int kind = 0; kind < 6; ++kind) {
    const BusyKeg keg(static_cast<BusyKind>(kind), random);
    EXPECT_NEAR(keg.co2_at(2.6), keg.co2_at(2.6, true), 0.002)
        << busy_name(static_cast<BusyKind>(kind));
  }
}

}  // namespace
}  // namespace ullage::physics
