// SPDX-License-Identifier: GPL-3.0-or-later
//
// Gauge pressure: what a dial shows, pressure above the ambient air of the
// place. It has no meaning in a gas law until the ambient pressure is added, so
// it neither converts to nor mixes with AbsolutePressure by itself.
#pragma once

#include <compare>

#include "core/units/quantities.h"

namespace ullage::units {

class GaugePressure {
 public:
  GaugePressure() = default;
  explicit GaugePressure(PressureDifference above_ambient) : above_ambient_(above_ambient) {}

  [[nodiscard]] PressureDifference above_ambient() const { return above_ambient_; }
  [[nodiscard]] AbsolutePressure at_ambient(AbsolutePressure ambient) const {
    return ambient + above_ambient_;
  }
  [[nodiscard]] static GaugePressure from_absolute(AbsolutePressure p, AbsolutePressure ambient) {
    return GaugePressure(p - ambient);
  }

  friend auto operator<=>(const GaugePressure& a, const GaugePressure& b) {
    return a.above_ambient_.value() <=> b.above_ambient_.value();
  }
  friend bool operator==(const GaugePressure& a, const GaugePressure& b) = default;
  friend GaugePressure operator+(GaugePressure a, PressureDifference d) {
    return GaugePressure(a.above_ambient_ + d);
  }
  friend GaugePressure operator-(GaugePressure a, PressureDifference d) {
    return GaugePressure(a.above_ambient_ - d);
  }
  friend PressureDifference operator-(GaugePressure a, GaugePressure b) {
    return a.above_ambient_ - b.above_ambient_;
  }

 private:
  PressureDifference above_ambient_ = pascals(0);
};

[[nodiscard]] inline GaugePressure gauge_psi(double v) { return GaugePressure(psi(v)); }
[[nodiscard]] inline GaugePressure gauge_bar(double v) { return GaugePressure(bar(v)); }
[[nodiscard]] inline GaugePressure gauge_pascals(double v) { return GaugePressure(pascals(v)); }
[[nodiscard]] inline double in_psi(GaugePressure p) { return in_psi(p.above_ambient()); }
[[nodiscard]] inline double in_bar(GaugePressure p) { return in_bar(p.above_ambient()); }
[[nodiscard]] inline double in_pascals(GaugePressure p) { return in_pascals(p.above_ambient()); }

}  // namespace ullage::units
