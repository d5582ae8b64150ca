// SPDX-License-Identifier: GPL-3.0-or-later
// Must compile: the right form of everything its neighbours get wrong. If this
// fails, the others fail for the wrong reason.
// expect: compiles
#include "core/units/instrument_errors.h"

using namespace ullage::units;

Temperature warmer() { return celsius(3) + kelvin_difference(4); }
AbsolutePressure absolute() { return gauge_psi(12).at_ambient(psi_absolute(14.7)); }
bool above() { return absolute() > psi_absolute(14.7) && gauge_psi(12) < gauge_bar(1); }

double weigh(Mass m) { return in_kilograms(m); }
double read(Temperature t) { return in_celsius(t); }
double dissolved(Co2Concentration c) { return c.count(); }
double level(Fraction f) { return f.count(); }
double hydrometer(SpecificGravity g) { return g.count(); }

double right() {
  const RelativeErrors heft{"heft", fraction(0.15), fraction(0.05)};
  return weigh(kilograms(19)) + read(celsius(4)) +
         dissolved(to_concentration(volumes_of_co2(2.5))) + level(fraction(0.3)) +
         hydrometer(specific_gravity(1.048)) + read_with(heft, litres(10), "monday").half_width();
}
