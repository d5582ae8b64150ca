// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/physics/gravity.h"

#include <algorithm>
#include <array>
#include <cmath>
#include <utility>

#include "core/units/gravity_scale.h"

namespace ullage::physics {

using namespace units;

namespace {

constexpr double ethanol_gravity = 0.7907;  // 20/20 C
constexpr double least_disagreement_abv = 0.1;

// Duty office, original minus present gravity in degrees: % ABV per degree from
// `from` up. The table ends at 100.7.
struct DutyFactor {
  double from;
  double per_degree;
};
constexpr std::array duty_factors{
    DutyFactor{0.0, 0.125},  DutyFactor{7.0, 0.126},  DutyFactor{10.5, 0.127},
    DutyFactor{17.3, 0.128}, DutyFactor{26.2, 0.129}, DutyFactor{36.1, 0.130},
    DutyFactor{46.6, 0.131}, DutyFactor{57.2, 0.132}, DutyFactor{68.0, 0.133},
    DutyFactor{78.9, 0.134}, DutyFactor{89.8, 0.135}};
constexpr double last_duty_degree = 100.75;

std::optional<Abv> by_factor(double degrees) {
  if (degrees < 0 || degrees > last_duty_degree) return std::nullopt;
  const auto after = std::find_if(duty_factors.begin() + 1, duty_factors.end(),
                                  [&](const DutyFactor& row) { return degrees < row.from - 0.05; });
  return percent_abv(degrees * (after - 1)->per_degree);
}

}  // namespace

Result<Fermented> fermented(SpecificGravity original, SpecificGravity final_gravity) {
  const double og = original.count();
  const double fg = final_gravity.count();
  if (auto bad = outside(Subject::gravity, og, original_gravity_range))
    return std::unexpected(*bad);
  if (auto bad = outside(Subject::gravity, fg, final_gravity_range)) return std::unexpected(*bad);
  if (auto bad = outside(Subject::final_gravity, fg, {final_gravity_range.low, og}))
    return std::unexpected(*bad);
  const auto original_extract = to_plato(original);
  const auto apparent_extract = to_plato(final_gravity);
  if (!original_extract || !apparent_extract)
    return std::unexpected(
        RangeError{Subject::gravity, og, original_gravity_range.low, original_gravity_range.high});
  const double oe = original_extract->count();
  const double ae = apparent_extract->count();
  const double re = 0.1808 * oe + 0.8192 * ae;
  const double by_weight = (oe - re) / (2.0665 - 0.010665 * oe);
  Fermented f;
  f.abv = percent_abv(by_weight * fg / ethanol_gravity);
  f.abv_by_factor = by_factor((og - fg) * 1000.0);
  f.original_extract = *original_extract;
  f.apparent_extract = *apparent_extract;
  f.real_extract = plato(re);
  // Water has nothing to attenuate.
  f.apparent_attenuation = fraction(oe > 0.01 ? (oe - ae) / oe : 0.0);
  return f;
}

Result<Estimate<Abv>> alcohol(const Estimate<SpecificGravity>& original,
                              const Estimate<SpecificGravity>& final_gravity, ErrorSource formula) {
  const auto centre = fermented(original.value(), final_gravity.value());
  if (!centre) return std::unexpected(centre.error());
  // The hydrometer's error may carry an unfermented pair past one another; the
  // slope is taken from each side alone, so that no refused point is needed.
  const auto slope = [&](double og, double fg) -> std::pair<double, double> {
    constexpr double step = 1e-4;
    const auto lower_fg = fermented(specific_gravity(og), specific_gravity(fg - step));
    const double by_fg = lower_fg ? (centre->abv.count() - lower_fg->abv.count()) / step : -131.0;
    const auto higher_og = fermented(specific_gravity(og + step), specific_gravity(fg));
    const double by_og = higher_og ? (higher_og->abv.count() - centre->abv.count()) / step : 131.0;
    return {by_og, by_fg};
  };
  const auto [by_og, by_fg] = slope(original.value().count(), final_gravity.value().count());
  Estimate<Abv> result(centre->abv);
  for (const Contribution& c : original.contributions())
    result = result.with(c.source, by_og * c.half_width);
  for (const Contribution& c : final_gravity.contributions())
    result = result.with(c.source, by_fg * c.half_width);
  const double disagreement =
      centre->abv_by_factor ? std::abs(centre->abv.count() - centre->abv_by_factor->count()) : 0;
  return result.with(std::move(formula), std::max(least_disagreement_abv, disagreement));
}

}  // namespace ullage::physics
