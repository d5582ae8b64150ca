// SPDX-License-Identifier: GPL-3.0-or-later
// Must not compile: nineteen litres are not nineteen kilograms.
// expect: could not convert 'ullage::units::litres|no viable conversion|no matching function
#include "core/units/quantities.h"

using namespace ullage::units;

double weigh(Mass m) { return in_kilograms(m); }
double wrong() { return weigh(litres(19)); }
