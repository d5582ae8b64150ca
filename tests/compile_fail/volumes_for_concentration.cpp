// SPDX-License-Identifier: GPL-3.0-or-later
// Must not compile: volumes of CO2 and grams in a litre differ by a factor of two.
// expect: could not convert 'ullage::units::volumes_of_co2|no viable conversion|no matching
// function
#include "core/units/scales.h"

using namespace ullage::units;

double dissolved(Co2Concentration c) { return c.count(); }
double wrong() { return dissolved(volumes_of_co2(2.5)); }
