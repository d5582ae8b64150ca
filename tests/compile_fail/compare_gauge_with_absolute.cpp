// SPDX-License-Identifier: GPL-3.0-or-later
// Must not compile: the two count from different zeros.
// expect: no match for 'operator<'|invalid operands to binary expression
#include "core/units/gauge_pressure.h"

using namespace ullage::units;

bool wrong() { return gauge_psi(12) < psi_absolute(14.7); }
