// SPDX-License-Identifier: GPL-3.0-or-later
// Must not compile: a bare number says neither °C nor °F.
// expect: could not convert '4.0e\+0'|no viable conversion|no matching function
#include "core/units/quantities.h"

using namespace ullage::units;

double read(Temperature t) { return in_celsius(t); }
double wrong() { return read(4.0); }
