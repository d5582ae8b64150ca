// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/units/gravity_scale.h"

#include <cmath>

namespace ullage::units {

namespace {

double asbc_plato(double s) { return -616.868 + s * (1111.14 + s * (-630.272 + s * 135.997)); }
double asbc_slope(double s) { return 1111.14 + s * (-2.0 * 630.272 + s * 3.0 * 135.997); }

}  // namespace

std::expected<Plato, GravityScaleError> to_plato(SpecificGravity gravity) {
  if (!(gravity >= least_gravity)) return std::unexpected(GravityScaleError::below_range);
  if (gravity > greatest_gravity) return std::unexpected(GravityScaleError::above_range);
  return Plato(asbc_plato(gravity.count()));
}

std::expected<SpecificGravity, GravityScaleError> to_specific_gravity(Plato p) {
  // The ends are allowed the rounding of the inverse, so that a gravity at the
  // end of the span survives the trip there and back.
  constexpr double slack = 1e-9;
  if (!(p.count() >= asbc_plato(least_gravity.count()) - slack)) {
    return std::unexpected(GravityScaleError::below_range);
  }
  if (p.count() > asbc_plato(greatest_gravity.count()) + slack) {
    return std::unexpected(GravityScaleError::above_range);
  }
  // Newton's method: the slope stays between 190 and 270 over the span, so each
  // step squares the error and five are far more than enough.
  double s = 1.0 + p.count() / 258.6;
  for (int i = 0; i < 5; ++i) s -= (asbc_plato(s) - p.count()) / asbc_slope(s);
  if (s < least_gravity.count()) return least_gravity;
  if (s > greatest_gravity.count()) return greatest_gravity;
  return SpecificGravity(s);
}

}  // namespace ullage::units
