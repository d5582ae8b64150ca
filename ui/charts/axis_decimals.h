// SPDX-License-Identifier: GPL-3.0-or-later
//
// How many decimals the numbers on an axis need so that none is rounded: ticks
// 2.5 apart take one, or 7.5 would be marked 8. `span` is the length of the axis
// in its own unit, above zero; `ticks` the number asked of the plot's own ticker,
// whose steps are 1, 2, 2.5 or 5 times a power of ten. At most six.
#pragma once

namespace ullage::ui {

[[nodiscard]] int axis_decimals(double span, int ticks);

}  // namespace ullage::ui
