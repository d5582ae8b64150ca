// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/physics/run_out.h"

#include <algorithm>
#include <cmath>
#include <numeric>

#include "core/physics/small_matrix.h"

namespace ullage::physics {

using namespace units;

namespace {

constexpr double run_out_sigmas = 1.959963984540054;
constexpr double weekday_differs = 0.6;  // of the usual draw, each weekday by itself
constexpr double level_differs = 1.0;    // of the usual draw, all weekdays together
constexpr double day_differs = 0.45;     // one day from the same weekday of another week
constexpr double day_differs_weight = 2;
constexpr double least_share_of_usual = 0.1;
// Days are skewed, so that the mean of a few is more often too low than too high.
constexpr double leans_up = 1.5;
constexpr int days_looked_ahead = 366;
constexpr std::size_t days_in_week = 7;
// Sunday first: Fridays and Saturdays draw more, as long as nothing is known.
constexpr std::array<double, days_in_week> usual_week{0.8, 0.8, 0.8, 0.8, 0.8, 1.5, 1.5};
// Gauss and Hermite's five points for a normal number, and their weights.
struct NormalPoint {
  double z, weight;
};
constexpr std::array<NormalPoint, 5> normal_points{{{-2.856970, 0.0112574},
                                                    {-1.355626, 0.2220759},
                                                    {0.0, 0.5333333},
                                                    {1.355626, 0.2220759},
                                                    {2.856970, 0.0112574}}};

using RunOutRefusal = std::optional<RangeError>;

double run_out_days(const WeekdayShares& days) {
  return std::accumulate(days.begin(), days.end(), 0.0);
}

RunOutRefusal check_run_out(const RunOutQuestion& q) {
  if (auto bad = outside(Subject::beer_volume, in_cubic_metres(q.left.value()), {0.0, 1.0}))
    return *bad;
  if (auto bad = outside(Subject::beer_volume, q.left.half_width(), {0.0, 1.0})) return *bad;
  if (auto bad = outside(Subject::cycles, static_cast<double>(q.seen.size()), spans_range))
    return *bad;
  if (auto bad = outside(Subject::cycles, q.weekday, weekday_range)) return *bad;
  if (auto bad = outside(Subject::fraction, q.day_gone, {0.0, 1.0})) return *bad;
  for (const SpanOnTap& span : q.seen) {
    for (const double d : span.days) {
      if (auto bad = outside(Subject::duration, d, {0.0, span_days_range.high})) return *bad;
    }
    if (auto bad = outside(Subject::duration, run_out_days(span.days), span_days_range))
      return *bad;
    if (auto bad = outside(Subject::beer_volume, in_cubic_metres(span.drawn.value()), {0.0, 10.0}))
      return *bad;
    if (auto bad = outside(Subject::beer_volume, span.drawn.half_width(), {0.0, 10.0})) return *bad;
  }
  return std::nullopt;
}

// The days_in_week' draws, in litres.
struct Week {
  std::array<double, days_in_week> mean{};
  std::array<std::array<double, days_in_week>, days_in_week> covariance{};
  double day_variance_share = day_differs * day_differs;  // c squared

  [[nodiscard]] double usual(std::size_t d, double all) const {
    return std::max(mean[d], least_share_of_usual * all);
  }
};

Week prior_week(double usual) {
  Week week;
  for (std::size_t i = 0; i < days_in_week; ++i) {
    week.mean[i] = usual * usual_week[i];
    for (std::size_t j = 0; j < days_in_week; ++j)
      week.covariance[i][j] = std::pow(level_differs * usual, 2) * usual_week[i] * usual_week[j];
    week.covariance[i][i] += std::pow(weekday_differs * week.mean[i], 2);
  }
  return week;
}

// What a span says of the days_in_week it held.
void learn_span(Week& week, const SpanOnTap& span, double day_variance) {
  std::array<double, days_in_week> gain{};
  double off = in_litres(span.drawn.value());
  double variance = std::pow(span.drawn.half_width() * 1e3 / run_out_sigmas, 2) + day_variance;
  for (std::size_t i = 0; i < days_in_week; ++i) {
    off -= span.days[i] * week.mean[i];
    for (std::size_t j = 0; j < days_in_week; ++j) gain[i] += week.covariance[i][j] * span.days[j];
    variance += span.days[i] * gain[i];
  }
  for (std::size_t i = 0; i < days_in_week; ++i) {
    week.mean[i] += gain[i] * off / variance;
    for (std::size_t j = 0; j < days_in_week; ++j)
      week.covariance[i][j] -= gain[i] * gain[j] / variance;
  }
}

// How far off the draw told for these days is, because the weekdays are.
double weekdays_variance(const Week& week, const WeekdayShares& days) {
  double sum = 0;
  for (std::size_t i = 0; i < days_in_week; ++i) {
    for (std::size_t j = 0; j < days_in_week; ++j) sum += days[i] * days[j] * week.covariance[i][j];
  }
  return sum;
}

double day_squares(const Week& week, const WeekdayShares& days, double usual) {
  double sum = 0;
  for (std::size_t d = 0; d < days_in_week; ++d) sum += days[d] * std::pow(week.usual(d, usual), 2);
  return sum;
}

// How far days differ needs the weekdays, and the other way round: a few rounds of
// expectation and maximisation. What a span is off by is more than it shows, since
// the weekdays were bent towards it: by the variance that is left in them.
Week week_of(const std::vector<SpanOnTap>& seen, double usual) {
  Week week = prior_week(usual);
  double share = week.day_variance_share;
  for (int round = 0; round < 3; ++round) {
    Week next = prior_week(usual);
    const Week& squares_by = round == 0 ? next : week;
    std::vector<double> variances;
    variances.reserve(seen.size());
    for (const SpanOnTap& span : seen)
      variances.push_back(share * day_squares(squares_by, span.days, usual));
    for (std::size_t i = 0; i < seen.size(); ++i) learn_span(next, seen[i], variances[i]);
    double shown = day_differs_weight * day_differs * day_differs;
    for (const SpanOnTap& span : seen) {
      double off = in_litres(span.drawn.value());
      for (std::size_t d = 0; d < days_in_week; ++d) off -= span.days[d] * next.mean[d];
      const double own = std::pow(span.drawn.half_width() * 1e3 / run_out_sigmas, 2);
      const double bent = weekdays_variance(next, span.days);
      shown += std::max(0.0, off * off + bent - own) / day_squares(next, span.days, usual);
    }
    share = shown / (day_differs_weight + static_cast<double>(seen.size()));
    next.day_variance_share = share;
    week = next;
  }
  return week;
}

double draw_below(double z) { return 0.5 * std::erfc(-z / std::sqrt(2.0)); }

// How likely the keg is empty after these days of each weekday.
double empty_by(const Week& week, const WeekdayShares& days, double usual,
                const Estimate<Volume>& left) {
  double draw = 0, level_variance = 0, whole = 0;
  const double of_weekdays = weekdays_variance(week, days);
  for (std::size_t i = 0; i < days_in_week; ++i) {
    draw += days[i] * week.usual(i, usual);
    whole += week.usual(i, usual);
    for (std::size_t j = 0; j < days_in_week; ++j) level_variance += week.covariance[i][j];
  }
  // A bar that draws more draws all days more, and its days differ by more: how
  // far off the whole level is counts as a factor, the rest as a sum.
  const double factor = std::sqrt(std::max(0.0, level_variance)) / whole;
  const double days_differ = week.day_variance_share * day_squares(week, days, usual) +
                             std::max(0.0, of_weekdays - std::pow(factor * draw, 2));
  const double left_variance = std::pow(left.half_width() * 1e3 / run_out_sigmas, 2);
  double sum = 0;
  for (const NormalPoint& at : normal_points) {
    const double level = std::exp(factor * (at.z + leans_up * factor));
    const double over = level * draw - in_litres(left.value());
    const double variance = left_variance + level * level * days_differ;
    sum += at.weight * (variance > 0 ? draw_below(over / std::sqrt(variance))
                        : over >= 0  ? 1.0
                                     : 0.0);
  }
  return sum;
}

}  // namespace

Result<RunOut> run_out(const RunOutQuestion& q) {
  if (const auto bad = check_run_out(q)) return std::unexpected(*bad);
  double litres_drawn = 0;
  double days_seen = 0;
  for (const SpanOnTap& span : q.seen) {
    litres_drawn += in_litres(span.drawn.value());
    for (std::size_t d = 0; d < days_in_week; ++d) days_seen += span.days[d] * usual_week[d];
  }
  const double usual = litres_drawn / days_seen;
  if (auto bad = outside(Subject::beer_volume, usual * 1e-3, {1e-6, 10.0}))
    return std::unexpected(*bad);
  const Week week = week_of(q.seen, usual);
  RunOut out;
  for (std::size_t d = 0; d < days_in_week; ++d) {
    out.a_day[d] =
        Estimate<Volume>(litres(week.usual(d, usual)))
            .with({"draw by weekday"},
                  run_out_sigmas * std::sqrt(std::max(0.0, week.covariance[d][d])) * 1e-3);
  }
  const std::array<double, 3> shares{0.1, 0.5, 0.9};
  const std::array<std::optional<Duration>*, 3> times{&out.earliest, &out.likely, &out.latest};
  WeekdayShares days{};
  double before = empty_by(week, days, usual, q.left);
  double now = 0;
  for (std::size_t k = 0; k < 3; ++k) {
    if (before >= shares[k]) *times[k] = seconds(0);
  }
  for (int day = 0; day < days_looked_ahead && !out.latest; ++day) {
    const auto weekday = static_cast<std::size_t>((q.weekday + day) % 7);
    const double length = day == 0 ? 1 - q.day_gone : 1;
    days[weekday] += length;
    // Never less likely than the day before: the spread grows with the days.
    const double after = std::max(before, empty_by(week, days, usual, q.left));
    for (std::size_t k = 0; k < 3; ++k) {
      if (*times[k] || after < shares[k]) continue;
      const double part = after > before ? (shares[k] - before) / (after - before) : 1;
      *times[k] = units::days(now + length * part);
    }
    now += length;
    before = after;
  }
  return out;
}

}  // namespace ullage::physics
