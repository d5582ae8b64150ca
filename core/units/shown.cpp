// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/units/shown.h"

#include <cmath>
#include <limits>

#include "core/units/gravity_scale.h"
#include "core/units/printing.h"

namespace ullage::units {

namespace {

constexpr double ounces_per_pound = 16.0;
constexpr double fluid_ounces_per_us_gallon = 128.0;
constexpr double us_quart_in_fluid_ounces = 32.0;
constexpr double nowhere = std::numeric_limits<double>::quiet_NaN();  // prints as no number

// True when a number below `limit` would still be written as one below it.
bool stays_below(double v, double limit, int decimals) {
  const double scale = std::pow(10.0, decimals);
  return std::round(std::abs(v) * scale) < limit * scale;
}

// One table serves every pressure measured from some other pressure. A keg's dial
// shows a tenth of a psi to somebody with good eyes; a bottle's goes in steps of
// tens: three figures are the most either can tell.
template <class P>
Shown<P> shown_pressure(PressureUnit u, P size) {
  switch (u) {
    case PressureUnit::psi:
      return {[](P p) { return in_psi(p); },
              {0, stays_below(in_psi(size), 100, 1) ? 1 : 0},
              unit_name(u)};
    case PressureUnit::bar: {
      const double bars = in_bar(size);
      const Decimals decimals = stays_below(bars, 10, 2)    ? Decimals{2, 2}
                                : stays_below(bars, 100, 1) ? Decimals{0, 1}
                                                            : Decimals{0, 0};
      return {[](P p) { return in_bar(p); }, decimals, unit_name(u)};
    }
    case PressureUnit::kilopascal:
      break;
  }
  return {[](P p) { return in_pascals(p) / 1000.0; }, {0, 0}, unit_name(u)};
}

}  // namespace

Shown<GaugePressure> shown(const DisplayUnits& u, GaugePressure size) {
  return shown_pressure(u.pressure, size);
}

Shown<PressureDifference> shown(const DisplayUnits& u, PressureDifference size) {
  return shown_pressure(u.pressure, size);
}

Shown<Temperature> shown(const DisplayUnits& u, Temperature) {
  if (u.temperature == TemperatureUnit::fahrenheit) {
    return {[](Temperature t) { return in_fahrenheit(t); }, {0, 1}, unit_name(u.temperature)};
  }
  return {[](Temperature t) { return in_celsius(t); }, {0, 1}, unit_name(u.temperature)};
}

Shown<TemperatureDifference> shown(const DisplayUnits& u, TemperatureDifference) {
  if (u.temperature == TemperatureUnit::fahrenheit) {
    return {[](TemperatureDifference t) { return in_fahrenheit_difference(t); },
            {0, 1},
            unit_name(u.temperature)};
  }
  return {[](TemperatureDifference t) { return in_kelvin(t); }, {0, 1}, unit_name(u.temperature)};
}

Shown<Volume> shown(const DisplayUnits& u, Volume size) {
  switch (u.volume) {
    case VolumeUnit::us_gallon:
      // A glass or what a line holds: hundredths of a gallon would say little of it.
      if (size.value() != 0 && stays_below(in_us_gallons(size) * fluid_ounces_per_us_gallon,
                                           us_quart_in_fluid_ounces, 1)) {
        return {[](Volume v) { return in_us_gallons(v) * fluid_ounces_per_us_gallon; },
                {0, 1},
                "fl oz"};
      }
      return {[](Volume v) { return in_us_gallons(v); }, {0, 2}, unit_name(u.volume)};
    case VolumeUnit::imperial_gallon:
      return {[](Volume v) { return in_imperial_gallons(v); }, {0, 2}, unit_name(u.volume)};
    case VolumeUnit::litre:
      break;
  }
  // A line holds a quarter of a litre: one decimal would say nothing about it.
  const Decimals decimals{0, stays_below(in_litres(size), 1.0, 2) ? 2 : 1};
  return {[](Volume v) { return in_litres(v); }, decimals, unit_name(u.volume)};
}

Shown<Mass> shown(const DisplayUnits& u, Mass size) {
  const bool nothing = size.value() == 0;
  if (u.mass == MassUnit::pound) {
    const bool small = stays_below(in_pounds(size) * ounces_per_pound, ounces_per_pound, 1);
    if (small && !nothing) {
      // A leak of 1.4 g a day is 0.05 oz: one decimal would call it none.
      const bool tiny = stays_below(in_pounds(size) * ounces_per_pound, 0.1, 2);
      const Decimals decimals{0, tiny ? 2 : 1};
      return {[](Mass m) { return in_pounds(m) * ounces_per_pound; }, decimals, "oz"};
    }
    return {[](Mass m) { return in_pounds(m); }, {0, 1}, unit_name(u.mass)};
  }
  if (stays_below(in_grams(size), 1000.0, 0) && !nothing) {
    const Decimals decimals{0, stays_below(in_grams(size), 10.0, 1) ? 1 : 0};
    return {[](Mass m) { return in_grams(m); }, decimals, "g"};
  }
  return {[](Mass m) { return in_kilograms(m); }, {0, 2}, unit_name(u.mass)};
}

Shown<Length> shown(const DisplayUnits& u, Length) {
  if (u.length == LengthUnit::foot) {
    return {[](Length l) { return in_feet(l); }, {0, 2}, unit_name(u.length)};
  }
  return {[](Length l) { return in_metres(l); }, {0, 2}, unit_name(u.length)};
}

Shown<Length> shown_bore(const DisplayUnits& u) {
  if (u.bore == BoreUnit::inch) {
    return {[](Length l) { return in_inches(l); }, {0, 3}, unit_name(u.bore)};
  }
  return {[](Length l) { return in_millimetres(l); }, {0, 2}, unit_name(u.bore)};
}

Shown<Co2Volumes> shown(const DisplayUnits& u, Co2Volumes) {
  if (u.co2 == Co2Unit::volumes) {
    return {[](Co2Volumes v) { return v.count(); }, {1, 2}, unit_name(u.co2)};
  }
  return {[](Co2Volumes v) { return to_concentration(v).count(); }, {1, 2}, unit_name(u.co2)};
}

Shown<Co2Concentration> shown(const DisplayUnits& u, Co2Concentration) {
  using C = Co2Concentration;
  if (u.co2 == Co2Unit::volumes) {
    return {[](C c) { return to_volumes(c).count(); }, {1, 2}, unit_name(u.co2)};
  }
  return {[](C c) { return c.count(); }, {1, 2}, unit_name(u.co2)};
}

Shown<SpecificGravity> shown(const DisplayUnits& u, SpecificGravity) {
  using G = SpecificGravity;
  if (u.gravity == GravityUnit::plato) {
    const auto as_plato = [](G g) {
      const auto p = to_plato(g);
      return p ? p->count() : nowhere;
    };
    return {as_plato, {1, 1}, unit_name(u.gravity)};
  }
  return {[](G g) { return g.count(); }, {3, 3}, unit_name(u.gravity)};
}

Shown<Plato> shown(const DisplayUnits& u, Plato) {
  if (u.gravity == GravityUnit::plato) {
    return {[](Plato p) { return p.count(); }, {1, 1}, unit_name(u.gravity)};
  }
  const auto as_gravity = [](Plato p) {
    const auto g = to_specific_gravity(p);
    return g ? g->count() : nowhere;
  };
  return {as_gravity, {3, 3}, unit_name(u.gravity)};
}

Shown<Abv> shown(const DisplayUnits&, Abv) {
  return {[](Abv a) { return a.count(); }, {1, 1}, "%"};
}

Shown<Fraction> shown(const DisplayUnits&, Fraction size) {
  const Decimals decimals{0, stays_below(size.count() * 100.0, 1.0, 1) ? 1 : 0};
  return {[](Fraction f) { return f.count() * 100.0; }, decimals, "%"};
}

Shown<Duration> shown(const DisplayUnits&, Duration size) {
  if (stays_below(in_seconds(size), 120.0, 0) && size.value() != 0) {
    return {[](Duration d) { return in_seconds(d); }, {0, 0}, "s"};
  }
  if (stays_below(in_minutes(size), 120.0, 0)) {
    return {[](Duration d) { return in_minutes(d); }, {0, 0}, "min"};
  }
  if (stays_below(in_hours(size), 48.0, 0)) {
    const Decimals decimals{0, stays_below(in_hours(size), 10.0, 1) ? 1 : 0};
    return {[](Duration d) { return in_hours(d); }, decimals, "h"};
  }
  const Decimals decimals{0, stays_below(in_days(size), 10.0, 1) ? 1 : 0};
  return {[](Duration d) { return in_days(d); }, decimals, "days", "day"};
}

Shown<Volume> shown_glasses(const DisplayUnits& u) {
  switch (u.glass) {
    case GlassUnit::us_pint:
      return {[](Volume v) { return in_us_pints(v); }, {0, 0}, unit_name(u.glass), "US pint"};
    case GlassUnit::imperial_pint:
      return {[](Volume v) { return in_imperial_pints(v); }, {0, 0}, unit_name(u.glass), "pint"};
    case GlassUnit::half_litre:
      return {
          [](Volume v) { return in_litres(v) * 2.0; }, {0, 0}, unit_name(u.glass), "half litre"};
    case GlassUnit::third_litre:
      break;
  }
  return {[](Volume v) { return in_litres(v) * 3.0; }, {0, 0}, unit_name(u.glass), "third litre"};
}

Volume one_glass(const DisplayUnits& u) {
  switch (u.glass) {
    case GlassUnit::us_pint:
      return us_pints(1);
    case GlassUnit::imperial_pint:
      return imperial_pints(1);
    case GlassUnit::half_litre:
      return litres(0.5);
    case GlassUnit::third_litre:
      break;
  }
  return litres(1.0 / 3.0);
}

}  // namespace ullage::units
