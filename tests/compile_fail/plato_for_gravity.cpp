// SPDX-License-Identifier: GPL-3.0-or-later
// Must not compile: twelve degrees Plato is no specific gravity of twelve.
// expect: could not convert 'ullage::units::plato|no viable conversion|no matching function
#include "core/units/scales.h"

using namespace ullage::units;

double hydrometer(SpecificGravity g) { return g.count(); }
double wrong() { return hydrometer(plato(12)); }
