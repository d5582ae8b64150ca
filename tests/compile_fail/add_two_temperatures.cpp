// SPDX-License-Identifier: GPL-3.0-or-later
// Must not compile: two points on a scale have no sum; 3 °C and 4 °C do not make 7 °C.
// expect: no match for 'operator\+'|invalid operands to binary expression
#include "core/units/quantities.h"

using namespace ullage::units;

Temperature wrong() { return celsius(3) + celsius(4); }
