// SPDX-License-Identifier: GPL-3.0-or-later
// Must not compile: a gauge pressure is absolute only once the ambient pressure is in hand.
// expect: no match for 'operator\+'|invalid operands to binary expression
#include "core/units/gauge_pressure.h"

using namespace ullage::units;

auto wrong() { return gauge_psi(12) + psi_absolute(14.7); }
