// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/physics/hold_fit.h"

#include <algorithm>
#include <cmath>

namespace ullage::physics {

using namespace units;

namespace {

constexpr double chi_square_95 = 3.841458820694124;  // 1.96^2, one degree of freedom
constexpr double half_widths_per_sd_of_fit = 1.959963984540054;
constexpr double step_pascals = 20.0;  // of the finite differences
constexpr double step_share = 1e-4;    // of the leak's scale
constexpr double least_start = 1e3;    // Pa absolute: there is no less than nothing in a keg

struct HoldParameters {
  double start = 0;  // Pa absolute
  double rate = 0;   // mol/s
};

double whitened_dot(const std::vector<double>& a, const std::vector<double>& b) {
  double sum = 0;
  for (std::size_t i = 0; i < a.size(); ++i) sum += a[i] * b[i];
  return sum;
}

class LeakMisfit {
 public:
  LeakMisfit(const LeakPath& path, const ReadingErrors& errors) : path_(path), errors_(errors) {}

  std::vector<double> residuals(HoldParameters at) const {
    const auto p = path_.pressures(pascals_absolute(at.start), LeakRate::from_value(at.rate));
    std::vector<double> r(p.size());
    const double ambient = in_pascals(path_.test().ambient);
    for (std::size_t i = 0; i < p.size(); ++i) {
      r[i] = in_pascals(errors_.dry()[i]) - (in_pascals(p[i]) - ambient);
    }
    return errors_.whitened(std::move(r));
  }
  // Change of the whitened residuals with each parameter.
  std::vector<double> by_start(HoldParameters at) const {
    return slope({at.start + step_pascals, at.rate}, {at.start - step_pascals, at.rate},
                 2 * step_pascals);
  }
  std::vector<double> by_rate(HoldParameters at) const {
    const double h = step_share * path_.scale().value();
    return slope({at.start, at.rate + h}, {at.start, at.rate - h}, 2 * h);
  }
  // The start that fits best with the leak given, and the misfit there.
  double profile(HoldParameters& at) const {
    std::vector<double> r = residuals(at);
    for (int i = 0; i < 6; ++i) {
      const std::vector<double> a = by_start(at);
      const double step = -whitened_dot(a, r) / whitened_dot(a, a);
      at.start = std::max(least_start, at.start + step);
      r = residuals(at);
      if (std::abs(step) < 0.01) break;
    }
    return whitened_dot(r, r);
  }
  const LeakPath& path() const { return path_; }

 private:
  std::vector<double> slope(HoldParameters up, HoldParameters down, double apart) const {
    std::vector<double> a = residuals(up);
    const std::vector<double> b = residuals(down);
    for (std::size_t i = 0; i < a.size(); ++i) a[i] = (a[i] - b[i]) / apart;
    return a;
  }
  const LeakPath& path_;
  const ReadingErrors& errors_;
};

// Variances and weights of the straightened problem at a point.
struct Straightened {
  std::vector<double> a;  // by start
  std::vector<double> c;  // by rate
  double aa = 0, ac = 0, cc = 0;
  Straightened(const LeakMisfit& m, HoldParameters at) : a(m.by_start(at)), c(m.by_rate(at)) {
    aa = whitened_dot(a, a);
    ac = whitened_dot(a, c);
    cc = whitened_dot(c, c);
  }
  double determinant() const { return aa * cc - ac * ac; }
  // The readings no longer tell how fast the keg emptied.
  bool blind() const { return !(determinant() > 1e-12 * aa * cc) || cc == 0; }
  double rate_half_width() const {
    return half_widths_per_sd_of_fit * std::sqrt(aa / determinant());
  }
};

HoldParameters best_fit(const LeakMisfit& m, bool& emptied) {
  const HoldTest& test = m.path().test();
  HoldParameters at;
  at.start = in_pascals(test.readings.front().pressure.value().at_ambient(test.ambient));
  const HoldReading& last = test.readings.back();
  const double left = in_moles(
      m.path().gas(last.pressure.value().at_ambient(test.ambient), last.temperature.value()));
  const double had =
      in_moles(m.path().gas(pascals_absolute(at.start), test.readings.front().temperature.value()));
  at.rate = (had - left) / in_seconds(last.at - test.readings.front().at);
  std::vector<double> r = m.residuals(at);
  double misfit = whitened_dot(r, r);
  for (int i = 0; i < 60; ++i) {
    const Straightened s(m, at);
    if (s.blind()) {
      emptied = true;
      break;
    }
    const double ra = whitened_dot(s.a, r);
    const double rc = whitened_dot(s.c, r);
    double da = -(s.cc * ra - s.ac * rc) / s.determinant();
    double dc = -(s.aa * rc - s.ac * ra) / s.determinant();
    HoldParameters next;
    double then = misfit;
    for (int halving = 0; halving < 12; ++halving, da /= 2, dc /= 2) {
      next = {std::max(least_start, at.start + da),
              std::clamp(at.rate + dc, m.path().floor().value(), m.path().cap().value())};
      r = m.residuals(next);
      then = whitened_dot(r, r);
      if (then <= misfit) break;
    }
    if (!(then <= misfit)) {  // no way down: this is the bottom
      r = m.residuals(at);
      break;
    }
    const double gained = misfit - then;
    at = next;
    misfit = then;
    if (at.rate >= m.path().cap().value()) {
      emptied = true;
      break;
    }
    if (gained < 1e-9 && std::abs(dc) < 1e-6 * m.path().scale().value()) break;
  }
  return at;
}

// The leak to one side of `best` at which the misfit has grown to `target`; none
// when it never does up to the fastest leak or inflow looked at.
std::optional<double> leak_edge(const LeakMisfit& m, HoldParameters best, double target,
                                double step) {
  HoldParameters inside = best;
  HoldParameters outside_at = best;
  const double cap = m.path().cap().value();
  const double floor = m.path().floor().value();
  for (int i = 0; i < 40; ++i, step *= 1.7) {
    outside_at.rate = std::clamp(inside.rate + step, floor, cap);
    outside_at.start = inside.start;
    if (m.profile(outside_at) > target) break;
    const bool end = step > 0 ? outside_at.rate >= cap : outside_at.rate <= floor;
    if (end || i == 39) return std::nullopt;
    inside = outside_at;
  }
  const double wide = std::abs(outside_at.rate - inside.rate);
  for (int i = 0; i < 40 && std::abs(outside_at.rate - inside.rate) > 1e-4 * wide; ++i) {
    HoldParameters middle{inside.start, (inside.rate + outside_at.rate) / 2};
    (m.profile(middle) > target ? outside_at : inside) = middle;
  }
  return (inside.rate + outside_at.rate) / 2;
}

// Gas lost from the first reading to the last along the fitted line.
double lost_moles(const LeakPath& path, HoldParameters at) {
  const auto p = path.pressures(pascals_absolute(at.start), LeakRate::from_value(at.rate));
  const auto& readings = path.test().readings;
  return in_moles(path.gas(p.front(), readings.front().temperature.value())) -
         in_moles(path.gas(p.back(), readings.back().temperature.value()));
}

// Moles a pascal at a reading.
double fit_moles_per_pascal(const LeakPath& path, const HoldReading& r) {
  const AbsolutePressure p = r.pressure.value().at_ambient(path.test().ambient);
  const Temperature t = r.temperature.value();
  return (in_moles(path.gas(p + pascals(step_pascals), t)) - in_moles(path.gas(p, t))) /
         step_pascals;
}

// Mean loss and what each reading weighs in it.
void mean_loss(LeakFit& out, const LeakMisfit& m, const ReadingErrors& errors, HoldParameters at) {
  const LeakPath& path = m.path();
  const auto& readings = path.test().readings;
  const double seconds = in_seconds(readings.back().at - readings.front().at);
  std::vector<double> weights(readings.size(), 0.0);
  const Straightened s(m, at);
  if (s.blind()) {
    weights.front() = fit_moles_per_pascal(path, readings.front()) / seconds;
    weights.back() = -fit_moles_per_pascal(path, readings.back()) / seconds;
  } else {
    const double h = step_share * path.scale().value();
    const double ga = (lost_moles(path, {at.start + step_pascals, at.rate}) -
                       lost_moles(path, {at.start - step_pascals, at.rate})) /
                      (2 * step_pascals);
    const double gc =
        (lost_moles(path, {at.start, at.rate + h}) - lost_moles(path, {at.start, at.rate - h})) /
        (2 * h);
    const double wa = -(s.cc * ga - s.ac * gc) / s.determinant() / seconds;
    const double wc = -(s.aa * gc - s.ac * ga) / s.determinant() / seconds;
    for (std::size_t i = 0; i < weights.size(); ++i) weights[i] = wa * s.a[i] + wc * s.c[i];
    weights = errors.unwhitened(std::move(weights));
  }
  out.mean = LeakRate::from_value(lost_moles(path, at) / seconds);
  out.mean_errors = errors.contributions(weights);
}

}  // namespace

LeakRate leak_half_width(const LeakPath& path, const ReadingErrors& errors, AbsolutePressure start,
                         LeakRate assumed) {
  const LeakMisfit m(path, errors);
  const Straightened s(m, {in_pascals(start), assumed.value()});
  return s.blind() ? path.cap() : LeakRate::from_value(s.rate_half_width());
}

LeakFit fit_leak(const LeakPath& path, const ReadingErrors& errors) {
  const LeakMisfit m(path, errors);
  bool emptied = false;
  const HoldParameters best = best_fit(m, emptied);
  HoldParameters bottom = best;
  LeakFit out;
  out.misfit = m.profile(bottom);
  out.start = pascals_absolute(bottom.start);
  out.half_width_at_none = leak_half_width(path, errors, out.start, LeakRate::from_value(0));
  const double step = out.half_width_at_none.value() / 2;
  const double target = out.misfit + chi_square_95;
  // A flat misfit never reaches the target below an emptied keg by small steps;
  // the way down from there is about as long as the leak itself.
  const double down = emptied ? std::max(step, best.rate / 8) : step;
  out.low =
      LeakRate::from_value(leak_edge(m, bottom, target, -down).value_or(path.floor().value()));
  if (!emptied) {
    out.likely = LeakRate::from_value(best.rate);
    if (const auto high = leak_edge(m, bottom, target, step))
      out.high = LeakRate::from_value(*high);
  }
  mean_loss(out, m, errors, bottom);
  return out;
}

}  // namespace ullage::physics
