// SPDX-License-Identifier: GPL-3.0-or-later
//
// The physical quantities of the program. Everything in core that is measured
// in something passes between functions as one of these types, never as a bare
// double. A value is made with a unit in its name (`psi(12)`, `celsius(3)`) and
// read with a unit in its name (`in_psi(p)`, `in_celsius(t)`).
//
// Points and differences are distinct: Temperature is a point on the scale and
// TemperatureDifference a span; AbsolutePressure is a point and
// PressureDifference a span. GaugePressure has a type of its own because it
// becomes absolute only with the ambient pressure of a place in hand
// (gauge_pressure.h). Amounts that are fractions or trade scales are in
// scales.h.
#pragma once

#include <boost/units/absolute.hpp>
#include <boost/units/quantity.hpp>
#include <boost/units/systems/si/amount.hpp>
#include <boost/units/systems/si/area.hpp>
#include <boost/units/systems/si/dynamic_viscosity.hpp>
#include <boost/units/systems/si/length.hpp>
#include <boost/units/systems/si/mass.hpp>
#include <boost/units/systems/si/mass_density.hpp>
#include <boost/units/systems/si/pressure.hpp>
#include <boost/units/systems/si/temperature.hpp>
#include <boost/units/systems/si/time.hpp>
#include <boost/units/systems/si/velocity.hpp>
#include <boost/units/systems/si/volume.hpp>

namespace ullage::units {

namespace si = boost::units::si;

using Length = boost::units::quantity<si::length>;
using Area = boost::units::quantity<si::area>;
using Volume = boost::units::quantity<si::volume>;
using Mass = boost::units::quantity<si::mass>;
using Duration = boost::units::quantity<si::time>;
using Velocity = boost::units::quantity<si::velocity>;
using Density = boost::units::quantity<si::mass_density>;
using Amount = boost::units::quantity<si::amount>;
using PressureDifference = boost::units::quantity<si::pressure>;
using AbsolutePressure = boost::units::quantity<boost::units::absolute<si::pressure>>;
using TemperatureDifference = boost::units::quantity<si::temperature>;
using Temperature = boost::units::quantity<boost::units::absolute<si::temperature>>;
using Rate =
    boost::units::quantity<boost::units::divide_typeof_helper<si::dimensionless, si::time>::type>;

// Exact by definition: NIST SP 811 (psi, pound, foot); 231 in3 (US gallon);
// UK Weights and Measures Act (imperial gallon).
inline constexpr double pascals_per_psi = 6894.757293168361;
inline constexpr double pascals_per_bar = 1.0e5;
inline constexpr double pascals_per_atmosphere = 101325.0;
inline constexpr double kilograms_per_pound = 0.45359237;
inline constexpr double metres_per_foot = 0.3048;
inline constexpr double metres_per_inch = 0.0254;
inline constexpr double litres_per_us_gallon = 3.785411784;
inline constexpr double litres_per_imperial_gallon = 4.54609;
inline constexpr double kelvin_at_zero_celsius = 273.15;

// --- length
[[nodiscard]] inline Length metres(double v) { return v * si::metre; }
[[nodiscard]] inline Length millimetres(double v) { return v * 1e-3 * si::metre; }
[[nodiscard]] inline Length feet(double v) { return v * metres_per_foot * si::metre; }
[[nodiscard]] inline Length inches(double v) { return v * metres_per_inch * si::metre; }
[[nodiscard]] inline double in_metres(Length q) { return q.value(); }
[[nodiscard]] inline double in_millimetres(Length q) { return q.value() * 1e3; }
[[nodiscard]] inline double in_feet(Length q) { return q.value() / metres_per_foot; }
[[nodiscard]] inline double in_inches(Length q) { return q.value() / metres_per_inch; }

// --- volume
[[nodiscard]] inline Volume cubic_metres(double v) { return v * si::cubic_metre; }
[[nodiscard]] inline Volume litres(double v) { return v * 1e-3 * si::cubic_metre; }
[[nodiscard]] inline Volume us_gallons(double v) { return litres(v * litres_per_us_gallon); }
[[nodiscard]] inline Volume imperial_gallons(double v) {
  return litres(v * litres_per_imperial_gallon);
}
[[nodiscard]] inline Volume us_pints(double v) { return us_gallons(v / 8.0); }
[[nodiscard]] inline Volume imperial_pints(double v) { return imperial_gallons(v / 8.0); }
[[nodiscard]] inline Volume us_fluid_ounces(double v) { return us_gallons(v / 128.0); }
[[nodiscard]] inline double in_cubic_metres(Volume q) { return q.value(); }
[[nodiscard]] inline double in_litres(Volume q) { return q.value() * 1e3; }
[[nodiscard]] inline double in_us_gallons(Volume q) { return in_litres(q) / litres_per_us_gallon; }
[[nodiscard]] inline double in_imperial_gallons(Volume q) {
  return in_litres(q) / litres_per_imperial_gallon;
}
[[nodiscard]] inline double in_us_pints(Volume q) { return in_us_gallons(q) * 8.0; }
[[nodiscard]] inline double in_imperial_pints(Volume q) { return in_imperial_gallons(q) * 8.0; }

// --- mass
[[nodiscard]] inline Mass kilograms(double v) { return v * si::kilogram; }
[[nodiscard]] inline Mass grams(double v) { return v * 1e-3 * si::kilogram; }
[[nodiscard]] inline Mass pounds(double v) { return v * kilograms_per_pound * si::kilogram; }
[[nodiscard]] inline double in_kilograms(Mass q) { return q.value(); }
[[nodiscard]] inline double in_grams(Mass q) { return q.value() * 1e3; }
[[nodiscard]] inline double in_pounds(Mass q) { return q.value() / kilograms_per_pound; }

// --- time spans
[[nodiscard]] inline Duration seconds(double v) { return v * si::second; }
[[nodiscard]] inline Duration minutes(double v) { return v * 60.0 * si::second; }
[[nodiscard]] inline Duration hours(double v) { return v * 3600.0 * si::second; }
[[nodiscard]] inline Duration days(double v) { return v * 86400.0 * si::second; }
[[nodiscard]] inline double in_seconds(Duration q) { return q.value(); }
[[nodiscard]] inline double in_minutes(Duration q) { return q.value() / 60.0; }
[[nodiscard]] inline double in_hours(Duration q) { return q.value() / 3600.0; }
[[nodiscard]] inline double in_days(Duration q) { return q.value() / 86400.0; }

// --- temperature: points and differences
[[nodiscard]] inline Temperature kelvin(double v) {
  return Temperature(v * boost::units::absolute<si::temperature>());
}
[[nodiscard]] inline Temperature celsius(double v) { return kelvin(v + kelvin_at_zero_celsius); }
[[nodiscard]] inline Temperature fahrenheit(double v) { return celsius((v - 32.0) / 1.8); }
[[nodiscard]] inline double in_kelvin(Temperature q) { return q.value(); }
[[nodiscard]] inline double in_celsius(Temperature q) { return q.value() - kelvin_at_zero_celsius; }
[[nodiscard]] inline double in_fahrenheit(Temperature q) { return in_celsius(q) * 1.8 + 32.0; }
[[nodiscard]] inline TemperatureDifference kelvin_difference(double v) { return v * si::kelvin; }
[[nodiscard]] inline TemperatureDifference fahrenheit_difference(double v) {
  return v / 1.8 * si::kelvin;
}
[[nodiscard]] inline double in_kelvin(TemperatureDifference q) { return q.value(); }
[[nodiscard]] inline double in_fahrenheit_difference(TemperatureDifference q) {
  return q.value() * 1.8;
}

// --- pressure: points and differences
[[nodiscard]] inline PressureDifference pascals(double v) { return v * si::pascal; }
[[nodiscard]] inline PressureDifference psi(double v) { return pascals(v * pascals_per_psi); }
[[nodiscard]] inline PressureDifference bar(double v) { return pascals(v * pascals_per_bar); }
[[nodiscard]] inline double in_pascals(PressureDifference q) { return q.value(); }
[[nodiscard]] inline double in_psi(PressureDifference q) { return q.value() / pascals_per_psi; }
[[nodiscard]] inline double in_bar(PressureDifference q) { return q.value() / pascals_per_bar; }
[[nodiscard]] inline AbsolutePressure pascals_absolute(double v) {
  return AbsolutePressure(v * boost::units::absolute<si::pressure>());
}
[[nodiscard]] inline AbsolutePressure psi_absolute(double v) {
  return pascals_absolute(v * pascals_per_psi);
}
[[nodiscard]] inline AbsolutePressure bar_absolute(double v) {
  return pascals_absolute(v * pascals_per_bar);
}
[[nodiscard]] inline double in_pascals(AbsolutePressure q) { return q.value(); }
[[nodiscard]] inline double in_psi(AbsolutePressure q) { return q.value() / pascals_per_psi; }
[[nodiscard]] inline double in_bar(AbsolutePressure q) { return q.value() / pascals_per_bar; }

// --- the rest
[[nodiscard]] inline Density kilograms_per_cubic_metre(double v) {
  return v * si::kilogram_per_cubic_meter;
}
[[nodiscard]] inline double in_kilograms_per_cubic_metre(Density q) { return q.value(); }
[[nodiscard]] inline Rate per_second(double v) { return v / si::second; }
[[nodiscard]] inline Rate per_day(double v) { return v / 86400.0 / si::second; }
[[nodiscard]] inline double in_per_second(Rate q) { return q.value(); }
[[nodiscard]] inline double in_per_day(Rate q) { return q.value() * 86400.0; }
[[nodiscard]] inline Amount moles(double v) { return v * si::mole; }
[[nodiscard]] inline double in_moles(Amount q) { return q.value(); }

}  // namespace ullage::units
