// SPDX-License-Identifier: GPL-3.0-or-later
//
// The run-out forecast on a second kind of made-up bar, built unlike the first
// (run_out_test.cpp) and unlike the forecast: here guests come in groups, hour by
// hour while the place is open, and each drinks so many glasses. Every bar has its
// own busy days and its days off, parties and match days that come in bursts, a
// holiday that shuts or fills it, days on which the tap is out of order, and a trade
// that drifts with the season. Kegs are of six sizes; levels are read by scale, by
// hand or by the dew line, at any hour.
//
// The forecast has one constant that was set with an eye on both kinds: how far days
// are taken to differ before any were seen (0.45 with the weight of two spans).
#include <gtest/gtest.h>

#include <algorithm>
#include <array>
#include <cmath>
#include <numbers>
#include <numeric>
#include <random>

#include "core/physics/run_out.h"

namespace ullage::physics {
namespace {

using namespace units;

constexpr double read_sd = 1 / 1.959964;  // of a 95 % half-width
constexpr int hours_in_day = 24;

// How a bar trades. Two kinds: `steady` has groups and days off alone.
struct Trade {
  bool eventful = true;
};

class GlassBar {
 public:
  GlassBar(const Trade& trade, std::mt19937& random) : trade_(trade), random_(random) {
    const std::array<double, 4> glasses{0.25, 0.33, 0.4, 0.5};
    glass_ = glasses[index(glasses.size())];
    guests_ = 1.5 + 3 * share();        // in a group
    glasses_each_ = 1 + 1.5 * share();  // the mean
    groups_a_day_ = std::exp(std::log(1.2) + std::log(8.0) * share());
    for (double& d : busy_) d = 0.5 + share();
    if (share() < 0.5) busy_[5] *= 1.5 + share();
    if (share() < 0.6) busy_[6] *= 1.5 + share();
    if (share() < 0.4) busy_[1 + index(3)] = 0;  // shut that day
    opens_ = 11 + static_cast<int>(index(7));
    shuts_ = std::min(hours_in_day, opens_ + 5 + static_cast<int>(index(4)));
    season_ = 0.25 * share();
    season_from_ = 365 * share();
    if (trade_.eventful) plan_events();
  }

  // Litres drawn in that hour of that day; day 0 is a Sunday.
  double drawn_in(int day, int hour) {
    if (hour < opens_ || hour >= shuts_) return 0;
    const double open = shuts_ - opens_;
    const double rate =
        groups_a_day_ / open * busy_[static_cast<std::size_t>(day % 7)] *
        (1 + season_ * std::sin(2 * std::numbers::pi * (day - season_from_) / 365)) * special(day);
    if (rate <= 0) return 0;
    double litres_drawn = 0;
    for (int groups = poisson(rate); groups > 0; --groups) {
      const int guests = 1 + poisson(guests_ - 1);
      litres_drawn += glass_ * poisson(guests * glasses_each_);
    }
    return litres_drawn;
  }

 private:
  double share() { return std::uniform_real_distribution<double>(0, 1)(random_); }
  std::size_t index(std::size_t n) {
    return std::uniform_int_distribution<std::size_t>(0, n - 1)(random_);
  }
  int poisson(double mean) { return mean > 0 ? std::poisson_distribution<int>(mean)(random_) : 0; }

  void plan_events() {
    special_.fill(1);
    for (std::size_t d = 0; d < special_.size(); ++d) {
      if (share() < 0.03) special_[d] *= 1.8 + 1.5 * share();  // a party, a match
      if (share() < 0.008) {                                   // out of order
        for (std::size_t k = d; k < std::min(special_.size(), d + 1 + index(2)); ++k)
          special_[k] = 0;
      }
    }
    if (share() < 0.5) {  // a holiday
      const std::size_t from = index(special_.size());
      const double trade = share() < 0.5 ? 0.0 : 1.7;
      for (std::size_t k = from; k < std::min(special_.size(), from + 3 + index(6)); ++k)
        special_[k] = trade;
    }
  }
  [[nodiscard]] double special(int day) const {
    const auto at = static_cast<std::size_t>(day);
    return trade_.eventful && at < special_.size() ? special_[at] : 1;
  }

  Trade trade_;
  std::mt19937& random_;
  double glass_ = 0.4, guests_ = 3, glasses_each_ = 2, groups_a_day_ = 4;
  std::array<double, 7> busy_{};
  int opens_ = 16, shuts_ = 23;
  double season_ = 0, season_from_ = 0;
  std::array<double, 400> special_{};
};

struct BarForecasts {
  int asked = 0, within = 0, before_likely = 0;
};

// One reading of what was drawn: by scale, by the dew line, by counted glasses.
Estimate<Volume> read_of(double drawn, double keg, std::mt19937& random) {
  std::uniform_int_distribution<int> which(0, 2);
  std::normal_distribution<double> normal(0, read_sd);
  const std::array<double, 3> errors{0.2, 0.03 * keg, 0.06 * drawn};
  const double error = errors[static_cast<std::size_t>(which(random))];
  const double shown = std::max(0.0, drawn + error * normal(random));
  return Estimate<Volume>(litres(shown)).with({"read"}, std::max(0.05, error) * 1e-3);
}

// Spans of half a day to six days, of any length in hours, until `days_seen`.
RunOutQuestion watch(GlassBar& bar, int days_seen, double keg, int& hour, std::mt19937& random) {
  std::uniform_int_distribution<int> span_hours(12, 144);
  RunOutQuestion q;
  const int end = hour + hours_in_day * days_seen;
  while (hour < end) {
    SpanOnTap span;
    double drawn = 0;
    for (int left = std::min(end - hour, span_hours(random)); left > 0; --left, ++hour) {
      const int day = hour / hours_in_day;
      span.days[static_cast<std::size_t>(day % 7)] += 1.0 / hours_in_day;
      drawn += bar.drawn_in(day, hour % hours_in_day);
    }
    span.drawn = read_of(drawn, keg, random);
    q.seen.push_back(span);
  }
  return q;
}

BarForecasts forecast_bars(const Trade& trade, int bars, int days_seen, std::uint32_t seed) {
  std::mt19937 random(seed);
  std::uniform_real_distribution<double> uniform(0, 1);
  std::normal_distribution<double> normal(0, read_sd);
  const std::array<double, 6> sizes{10, 19, 20, 30, 41, 50};
  BarForecasts out;
  while (out.asked < bars) {
    GlassBar bar(trade, random);
    const double keg = sizes[static_cast<std::size_t>(6 * uniform(random))];
    int hour = static_cast<int>(7 * hours_in_day * uniform(random));
    RunOutQuestion q = watch(bar, days_seen, keg, hour, random);
    const double seen = std::accumulate(
        q.seen.begin(), q.seen.end(), 0.0,
        [](double sum, const SpanOnTap& s) { return sum + in_litres(s.drawn.value()); });
    if (seen <= 0) continue;  // refused: nothing tells (RunOut.RefusesWhatTellsNothing)
    const double shown = keg * (0.15 + 0.85 * uniform(random));
    const double error = std::max(0.3, 0.03 * keg * uniform(random));
    double truth = shown + error * normal(random);
    q.left = Estimate<Volume>(litres(shown)).with({"left"}, error * 1e-3);
    q.weekday = hour / hours_in_day % 7;
    q.day_gone = hour % hours_in_day / static_cast<double>(hours_in_day);
    const int asked_at = hour;
    while ((truth -= bar.drawn_in(hour / hours_in_day, hour % hours_in_day)) > 0 &&
           hour < asked_at + 330 * hours_in_day)
      ++hour;
    const double when = (hour - asked_at + 0.5) / hours_in_day;
    const auto told = run_out(q);
    EXPECT_TRUE(told);
    if (!told) continue;
    const auto days_of = [](const std::optional<Duration>& d) { return d ? in_days(*d) : 366.0; };
    ++out.asked;
    // To the hour, as the truth is.
    const double hour_either_way = 0.5 / hours_in_day;
    out.within += when >= days_of(told->earliest) - hour_either_way &&
                          when <= days_of(told->latest) + hour_either_way
                      ? 1
                      : 0;
    out.before_likely += when <= days_of(told->likely) ? 1 : 0;
  }
  return out;
}

// Counting 1000 forecasts of 80 % is good to 1.3 %: 75 to 85 % is four of those.
void expect_eighty_percent(const BarForecasts& b) {
  ::testing::Test::RecordProperty("within_permille", 1000 * b.within / b.asked);
  ::testing::Test::RecordProperty("before_likely_permille", 1000 * b.before_likely / b.asked);
  EXPECT_GE(static_cast<double>(b.within) / b.asked, 0.75);
  EXPECT_LE(static_cast<double>(b.within) / b.asked, 0.85);
  EXPECT_NEAR(static_cast<double>(b.before_likely) / b.asked, 0.5, 0.1);
}

TEST(RunOutOtherBars, AfterAWeekOrTwo) {
  expect_eighty_percent(forecast_bars({true}, 2000, 10, 20261101));
}
TEST(RunOutOtherBars, AfterAMonth) {
  expect_eighty_percent(forecast_bars({true}, 1000, 30, 20261102));
}
TEST(RunOutOtherBars, AfterAQuarter) {
  expect_eighty_percent(forecast_bars({true}, 1000, 90, 20261103));
}
TEST(RunOutOtherBars, WithoutEvents) {
  expect_eighty_percent(forecast_bars({false}, 1000, 30, 20261104));
}

}  // namespace
}  // namespace ullage::physics
