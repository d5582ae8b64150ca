// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/report/preset_units.h"

namespace ullage::report {

units::DisplayUnits units_of(cellar::UnitsPreset preset) {
  switch (preset) {
    case cellar::UnitsPreset::us:
      return units::DisplayUnits::us();
    case cellar::UnitsPreset::british:
      return units::DisplayUnits::british();
    case cellar::UnitsPreset::metric:
      break;
  }
  return units::DisplayUnits::metric();
}

}  // namespace ullage::report
