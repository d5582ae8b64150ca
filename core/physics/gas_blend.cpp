// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/physics/gas_blend.h"

#include <optional>

#include "core/physics/atmosphere.h"

namespace ullage::physics {

using namespace units;

namespace {

std::optional<RangeError> blend_fault(GaugePressure p, AbsolutePressure ambient) {
  if (auto bad = outside(Subject::gauge_pressure, in_pascals(p), blend_pressure_range)) return *bad;
  if (auto bad = outside(Subject::ambient_pressure, in_pascals(ambient), ambient_pressure_range))
    return *bad;
  return std::nullopt;
}

std::optional<RangeError> share_fault(MoleFraction co2) {
  if (auto bad = outside(Subject::co2_fraction, co2.count(), blend_share_range)) return *bad;
  return std::nullopt;
}

}  // namespace

Result<MoleFraction> blend_for(GaugePressure pure, GaugePressure applied,
                               AbsolutePressure ambient) {
  if (const auto bad = blend_fault(pure, ambient)) return std::unexpected(*bad);
  if (const auto bad = blend_fault(applied, ambient)) return std::unexpected(*bad);
  if (applied < pure)
    return std::unexpected(RangeError{Subject::gauge_pressure, in_pascals(applied),
                                      in_pascals(pure), blend_pressure_range.high});
  return mole_fraction(in_pascals(pure.at_ambient(ambient)) /
                       in_pascals(applied.at_ambient(ambient)));
}

Result<GaugePressure> applied_for(GaugePressure pure, MoleFraction co2, AbsolutePressure ambient) {
  if (const auto bad = blend_fault(pure, ambient)) return std::unexpected(*bad);
  if (const auto bad = share_fault(co2)) return std::unexpected(*bad);
  const double total = in_pascals(pure.at_ambient(ambient)) / co2.count();
  return GaugePressure::from_absolute(pascals_absolute(total), ambient);
}

Result<GaugePressure> pure_equivalent(GaugePressure applied, MoleFraction co2,
                                      AbsolutePressure ambient) {
  if (const auto bad = blend_fault(applied, ambient)) return std::unexpected(*bad);
  if (const auto bad = share_fault(co2)) return std::unexpected(*bad);
  const double partial = in_pascals(applied.at_ambient(ambient)) * co2.count();
  return GaugePressure::from_absolute(pascals_absolute(partial), ambient);
}

}  // namespace ullage::physics
