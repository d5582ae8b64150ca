// SPDX-License-Identifier: GPL-3.0-or-later
// Must not compile: a share of the molecules is not a share of a keg.
// expect: could not convert 'ullage::units::mole_fraction|no viable conversion|no matching function
#include "core/units/scales.h"

using namespace ullage::units;

double level(Fraction f) { return f.count(); }
double wrong() { return level(mole_fraction(0.3)); }
