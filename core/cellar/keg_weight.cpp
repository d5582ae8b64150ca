// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/cellar/keg_weight.h"

namespace ullage::cellar {

namespace {

constexpr double tare_off_by = 1.5;
constexpr double densest = 1300, usual = 1000;  // kg/m³

}  // namespace

std::optional<KegWeights> keg_weights(const KegRecord& keg) {
  if (!keg.tare) return std::nullopt;
  const Mass full = units::kilograms(densest * units::in_cubic_metres(keg.holds()));
  return KegWeights{*keg.tare / tare_off_by, tare_off_by * *keg.tare + full};
}

std::optional<Mass> usual_weight(const KegRecord& keg, Volume beer) {
  if (!keg.tare) return std::nullopt;
  return *keg.tare + units::kilograms(usual * units::in_cubic_metres(beer));
}

}  // namespace ullage::cellar
