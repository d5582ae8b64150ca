// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/physics/level_filter.h"

#include <algorithm>
#include <cmath>
#include <map>

#include "core/physics/keg_cooling.h"
#include "core/physics/small_matrix.h"

namespace ullage::physics {

using namespace units;

namespace {

constexpr double level_sigmas = 1.959963984540054;  // of a 95 % half-width
constexpr double conflict_sigmas = 3.290526731;     // one in a thousand, both sides
constexpr double days_a_keg_lasts = 10;             // give or take as much
constexpr double day_varies = 0.6;                  // of a day's draw
constexpr double draw_drifts = 0.1;                 // of the draw, a day
constexpr double least_draw_share = 0.02;           // of a keg: so much varies even a quiet day
constexpr double least_own_litres = 0.01;
constexpr Range level_amount_range{0.0, 2.0};       // m3
constexpr Range level_half_width_range{0.0, 10.0};  // m3

double litres_of(double cubic) { return cubic * 1e3; }

using LevelRefusal = std::optional<RangeError>;

LevelRefusal check_level(const Estimate<Volume>& e) {
  if (auto bad = outside(Subject::beer_volume, in_cubic_metres(e.value()), level_amount_range))
    return *bad;
  if (auto bad = outside(Subject::beer_volume, e.half_width(), level_half_width_range)) return *bad;
  return std::nullopt;
}

const Estimate<Volume>* level_amount_of(const LevelEvidence& what) {
  if (const auto* counted = get_if<BeerCounted>(&what)) return &counted->amount;
  if (const auto* lost = get_if<BeerLost>(&what)) return &lost->amount;
  if (const auto* read = get_if<LevelRead>(&what)) return &read->left;
  return nullptr;
}

LevelRefusal check_level(const LevelHistory& history) {
  if (auto bad = outside(Subject::volume, in_cubic_metres(history.brimful), vessel_volume_range))
    return *bad;
  if (auto bad = check_level(history.start)) return bad;
  if (auto bad =
          outside(Subject::cycles, static_cast<double>(history.steps.size()), level_steps_range))
    return *bad;
  double last = 0;
  for (const LevelStep& step : history.steps) {
    if (auto bad = outside(Subject::step_time, in_seconds(step.at), {last, 1e10})) return *bad;
    last = in_seconds(step.at);
    if (const Estimate<Volume>* amount = level_amount_of(step.what)) {
      if (auto bad = check_level(*amount)) return bad;
    }
  }
  return std::nullopt;
}

// Sources that more than one piece of evidence names.
std::vector<ErrorSource> shared_sources(const LevelHistory& history) {
  std::map<ErrorSource, int> named;
  const auto count = [&](const Estimate<Volume>& e) {
    for (const Contribution& c : e.contributions()) ++named[c.source];
  };
  count(history.start);
  for (const LevelStep& step : history.steps) {
    if (const Estimate<Volume>* amount = level_amount_of(step.what)) count(*amount);
  }
  std::vector<ErrorSource> out;
  for (const auto& [source, times] : named) {
    if (times > 1) out.push_back(source);
  }
  return out;
}

}  // namespace

// One pass over a history. In litres and days; state 0 is V, 1 is r.
class LevelFilterRun {
 public:
  LevelFilterRun(const LevelHistory& history, LevelFilter& out) : history_(history), out_(out) {
    out_.shared_ = shared_sources(history);
    size_ = 2 + out_.shared_.size();
    mean().assign(size_, 0.0);
    covariance().assign(size_ * size_, 0.0);
    for (std::size_t i = 2; i < size_; ++i) p(i, i) = 1 / (level_sigmas * level_sigmas);
    forget_draw();
    start_from(history.start);
  }

  void go() {
    out_.points_.push_back({seconds(0), out_.volume_of(out_.state_), true});
    for (const LevelStep& step : history_.steps) {
      now_ = step.at;
      visit([this](const auto& what) { on(what); }, step.what);
      out_.last_ = now_;
      out_.points_.push_back(
          {now_, out_.volume_of(out_.state_), level_amount_of(step.what) != nullptr});
    }
  }

  // Time passes: what is drawn meanwhile, and how far that may be off.
  static void pass(LevelFilter::State& state, std::size_t size, double days, double keg_litres) {
    if (days <= 0) return;
    auto& m = state.mean;
    auto& c = state.covariance;
    const double draw = std::max(m[1], least_draw_share * keg_litres);
    m[0] -= m[1] * days;
    for (std::size_t j = 0; j < size; ++j) c[j] -= days * c[size + j];
    for (std::size_t i = 0; i < size; ++i) c[i * size] -= days * c[i * size + 1];
    c[0] += day_varies * day_varies * draw * draw * days;
    c[size + 1] += draw_drifts * draw_drifts * draw * draw * days;
  }

 private:
  std::vector<double>& mean() { return out_.state_.mean; }
  std::vector<double>& covariance() { return out_.state_.covariance; }
  double& p(std::size_t i, std::size_t j) { return covariance()[i * size_ + j]; }
  [[nodiscard]] double keg_litres() const { return in_litres(history_.brimful); }

  void forget_draw() {
    const double usual = keg_litres() / days_a_keg_lasts;
    mean()[1] = usual;
    for (std::size_t i = 0; i < size_; ++i) p(1, i) = p(i, 1) = 0;
    p(1, 1) = usual * usual;
  }

  // An amount as offsets of the shared sources and an error of its own.
  struct Parts {
    double litres = 0;
    std::vector<double> by_shared;
    double own_variance = 0;
  };
  [[nodiscard]] Parts parts_of(const Estimate<Volume>& e) const {
    Parts out{in_litres(e.value()), std::vector<double>(size_, 0.0),
              least_own_litres * least_own_litres};
    for (const Contribution& c : e.contributions()) {
      const auto at = std::lower_bound(out_.shared_.begin(), out_.shared_.end(), c.source);
      if (at != out_.shared_.end() && *at == c.source) {
        out.by_shared[2 + static_cast<std::size_t>(at - out_.shared_.begin())] +=
            litres_of(c.half_width);
      } else {
        out.own_variance += std::pow(litres_of(c.half_width) / level_sigmas, 2);
      }
    }
    return out;
  }

  // V as this amount says, whatever was thought before.
  void start_from(const Estimate<Volume>& e) {
    const Parts parts = parts_of(e);
    for (std::size_t i = 0; i < size_; ++i) p(0, i) = p(i, 0) = 0;
    mean()[0] = parts.litres;
    add(parts, 1);
  }

  // V moves by sign * (the amount's offsets and own error); its value apart.
  void add(const Parts& parts, double sign) {
    const std::vector<double>& h = parts.by_shared;
    std::vector<double> ph(size_, 0.0);
    double hph = 0;
    for (std::size_t i = 0; i < size_; ++i) {
      for (std::size_t j = 2; j < size_; ++j) ph[i] += p(i, j) * h[j];
    }
    for (std::size_t j = 2; j < size_; ++j) {
      hph += h[j] * ph[j];
      mean()[0] += sign * h[j] * mean()[j];
    }
    for (std::size_t i = 1; i < size_; ++i) {
      p(0, i) += sign * ph[i];
      p(i, 0) = p(0, i);
    }
    p(0, 0) += 2 * sign * ph[0] + hph + parts.own_variance;
  }

  // `row` x = value, with this variance: the usual update.
  struct Innovation {
    double off = 0;
    double variance = 0;
    std::vector<double> gain;
  };
  Innovation look(const std::vector<double>& row, double value, double variance) {
    Innovation out{value, variance, std::vector<double>(size_, 0.0)};
    for (std::size_t i = 0; i < size_; ++i) {
      out.off -= row[i] * mean()[i];
      for (std::size_t j = 0; j < size_; ++j) out.gain[i] += p(i, j) * row[j];
    }
    for (std::size_t i = 0; i < size_; ++i) out.variance += row[i] * out.gain[i];
    return out;
  }
  void take(const Innovation& seen) {
    for (std::size_t i = 0; i < size_; ++i) mean()[i] += seen.gain[i] * seen.off / seen.variance;
    for (std::size_t i = 0; i < size_; ++i) {
      for (std::size_t j = 0; j < size_; ++j)
        p(i, j) -= seen.gain[i] * seen.gain[j] / seen.variance;
    }
  }

  [[nodiscard]] double days_since(Duration then) const { return in_days(now_ - then); }

  void draw_on() {
    if (out_.on_tap_) pass(out_.state_, size_, days_since(out_.last_), keg_litres());
  }

  void on(const PutOnTap&) {
    if (!out_.on_tap_) seen_from_ = {now_, out_.volume_of(out_.state_)};
    draw_on();
    out_.on_tap_ = true;
  }
  void on(const TakenOffTap&) {
    draw_on();
    out_.on_tap_ = false;
  }
  void on(const BeerLost& lost) {
    draw_on();
    const Parts parts = parts_of(lost.amount);
    mean()[0] -= parts.litres;
    add(parts, -1);
    lost_litres_ += parts.litres;
  }
  void on(const BeerCounted& counted) {
    const double days = days_since(out_.last_);
    const Parts parts = parts_of(counted.amount);
    mean()[0] -= parts.litres;
    add(parts, -1);
    if (out_.on_tap_ && days > 0) tell_draw(parts, days);
    // Beer that leaves is drawn, on tap or not.
    see_draw(out_.last_, counted.amount);
  }
  // A count over some days says what a day is like, as far as days differ.
  void tell_draw(const Parts& parts, double days) {
    const double draw = std::max(parts.litres / days, least_draw_share * keg_litres());
    const double variance = day_varies * day_varies * draw * draw / days;
    std::vector<double> row(size_, 0.0);
    row[1] = 1;
    take(look(row, parts.litres / days, variance));
    out_.draw_known_ = true;
  }

  void on(const LevelRead& read) {
    draw_on();
    const Parts parts = parts_of(read.left);
    std::vector<double> row = parts.by_shared;
    for (double& h : row) h = -h;
    row[0] = 1;
    const Estimate<Volume> expected = out_.volume_of(out_.state_);
    const Innovation seen = look(row, parts.litres, parts.own_variance);
    if (std::abs(seen.off) > conflict_sigmas * std::sqrt(seen.variance)) {
      const bool less = seen.off < 0;
      const bool surer = read.left.half_width() < expected.half_width();
      out_.conflicts_.push_back({now_, read.left, expected, less || surer});
      if (!less && !surer) return;
      start_from(read.left);
      forget_draw();
      out_.draw_known_ = false;
      seen_from_ = {now_, read.left};
      lost_litres_ = 0;
      return;
    }
    take(seen);
    out_.conflicts_.clear();
    if (!out_.on_tap_ || !seen_from_) return;
    const Estimate<Volume> now_left = out_.volume_of(out_.state_);
    const double gone = in_litres(seen_from_->left.value()) - in_litres(now_left.value());
    if (now_ > seen_from_->at) {
      out_.draw_known_ = true;
      out_.draws_.push_back(
          {seen_from_->at, now_,
           Estimate<Volume>(litres(std::max(0.0, gone - lost_litres_)))
               .with({"readings of the level"}, apart(seen_from_->left, now_left))});
    }
    seen_from_ = {now_, now_left};
    lost_litres_ = 0;
  }

  // Half-width of a difference: shared sources cancel, the rest is apart.
  [[nodiscard]] double apart(const Estimate<Volume>& a, const Estimate<Volume>& b) const {
    double squares = 0;
    const auto shared = [&](const ErrorSource& source) {
      return std::binary_search(out_.shared_.begin(), out_.shared_.end(), source);
    };
    for (const Contribution& c : a.contributions()) {
      double other = 0;
      for (const Contribution& d : b.contributions()) {
        if (shared(c.source) && c.source == d.source) other = d.half_width;
      }
      squares += std::pow(c.half_width - other, 2);
    }
    for (const Contribution& d : b.contributions()) {
      const bool in_both =
          shared(d.source) && std::any_of(a.contributions().begin(), a.contributions().end(),
                                          [&](const auto& c) { return c.source == d.source; });
      if (!in_both) squares += d.half_width * d.half_width;
    }
    return std::sqrt(squares);
  }

  void see_draw(Duration from, const Estimate<Volume>& amount) {
    if (now_ > from && out_.on_tap_) out_.draws_.push_back({from, now_, amount});
    seen_from_ = {now_, out_.volume_of(out_.state_)};
    lost_litres_ = 0;
  }

  struct SeenFrom {
    Duration at{};
    Estimate<Volume> left;
  };

  const LevelHistory& history_;
  LevelFilter& out_;
  std::size_t size_ = 2;
  Duration now_{};
  std::optional<SeenFrom> seen_from_;  // the last evidence on tap
  double lost_litres_ = 0;             // since then
};

Result<LevelFilter> LevelFilter::make(const LevelHistory& history) {
  if (const auto bad = check_level(history)) return std::unexpected(*bad);
  LevelFilter out;
  out.keg_litres_ = in_litres(history.brimful);
  LevelFilterRun(history, out).go();
  return out;
}

// The shared sources keep their names; what is left over after them is the
// draw's, then the level's own.
Estimate<Volume> LevelFilter::volume_of(const State& state) const {
  const std::size_t size = state.mean.size();
  SmallMatrix ordered(size, size);
  const auto place = [&](std::size_t i) { return i < 2 ? size - 1 - i : i - 2; };
  for (std::size_t i = 0; i < size; ++i) {
    for (std::size_t j = 0; j < size; ++j)
      ordered(place(i), place(j)) = state.covariance[i * size + j];
  }
  const Cholesky root(ordered, size);
  std::vector<Contribution> out;
  for (std::size_t i = 0; i < size; ++i) {
    const double half_width = level_sigmas * root.lower()(size - 1, i) * 1e-3;
    if (half_width == 0) continue;
    const ErrorSource source = i + 2 < size    ? shared_[i]
                               : i + 2 == size ? ErrorSource{"how fast it is drawn"}
                                               : ErrorSource{"readings of the level"};
    out.push_back({source, half_width});
  }
  return {litres(state.mean[0]), std::move(out)};
}

Estimate<Volume> LevelFilter::at(Duration when) const {
  State state = state_;
  if (on_tap_) LevelFilterRun::pass(state, state.mean.size(), in_days(when - last_), keg_litres_);
  return volume_of(state);
}

std::optional<Estimate<Volume>> LevelFilter::draw_a_day() const {
  if (!draw_known_) return std::nullopt;
  const double variance = state_.covariance[state_.mean.size() + 1];
  return Estimate<Volume>(litres(std::max(0.0, state_.mean[1])))
      .with({"how fast it is drawn"}, level_sigmas * std::sqrt(variance) * 1e-3);
}

}  // namespace ullage::physics
