// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/widgets/quantity_edits.h"

#include <QLineEdit>
#include <algorithm>
#include <cmath>

#include "core/units/number_text.h"
#include "core/units/paper_text.h"
#include "core/units/parsing.h"
#include "core/units/present.h"
#include "core/units/printing.h"
#include "ui/context.h"
#include "ui/preferences.h"

namespace ullage::ui {

namespace {

using units::Parser;
using units::Printer;

template <class Kind>
struct Ways;  // read, write, unit

#define ULLAGE_PLAIN_WAYS(Kind, reader, unit_text)                                               \
  template <>                                                                                    \
  struct Ways<kinds::Kind> {                                                                     \
    using V = kinds::Kind::Value;                                                                \
    static units::Parsed<V> read(const Parser& p, std::string_view t) { return p.reader(t); }    \
    static std::string write(const Printer& p, const V& v) { return p.print(v); }                \
    static std::string unit([[maybe_unused]] const units::DisplayUnits& u) { return unit_text; } \
  }

ULLAGE_PLAIN_WAYS(GaugePressure, gauge_pressure, units::unit_name(u.pressure));
ULLAGE_PLAIN_WAYS(PressureDifference, pressure_difference, units::unit_name(u.pressure));
ULLAGE_PLAIN_WAYS(Temperature, temperature, units::unit_name(u.temperature));
ULLAGE_PLAIN_WAYS(TemperatureDifference, temperature_difference, units::unit_name(u.temperature));
ULLAGE_PLAIN_WAYS(Volume, volume, units::unit_name(u.volume));
ULLAGE_PLAIN_WAYS(Mass, mass, units::unit_name(u.mass));
ULLAGE_PLAIN_WAYS(Length, length, units::unit_name(u.length));
ULLAGE_PLAIN_WAYS(Co2, co2, units::unit_name(u.co2));
ULLAGE_PLAIN_WAYS(Gravity, gravity, units::unit_name(u.gravity));
ULLAGE_PLAIN_WAYS(Fraction, fraction, "%");
#undef ULLAGE_PLAIN_WAYS

template <>
struct Ways<kinds::Bore> {
  static units::Parsed<units::Length> read(const Parser& p, std::string_view t) {
    return p.bore(t);
  }
  static std::string write(const Printer& p, units::Length v) { return p.print_bore(v); }
  static std::string unit(const units::DisplayUnits& u) { return units::unit_name(u.bore); }
};

// "16" beside the unit of such a field, which is not the person's usual one.
std::string in_unit(const Parser& p, std::string_view typed, const std::string& unit) {
  return p.number(typed).has_value() ? std::string(typed) + " " + unit : std::string(typed);
}

template <>
struct Ways<kinds::Glass> {
  static units::Parsed<units::Volume> read(const Parser& p, std::string_view t) {
    return p.volume(in_unit(p, t, unit(p.units)));
  }
  static std::string write(const Printer& p, units::Volume v) { return p.print(v); }
  static std::string unit(const units::DisplayUnits& u) {
    return u.volume == units::VolumeUnit::us_gallon ? "fl oz" : units::unit_name(u.volume);
  }
};

template <>
struct Ways<kinds::RoomAir> {
  static units::Parsed<units::Volume> read(const Parser& p, std::string_view t) {
    return p.volume(in_unit(p, t, unit(p.units)));
  }
  static std::string write(const Printer& p, units::Volume v) { return units::print_room(v, p); }
  static std::string unit(const units::DisplayUnits& u) {
    return u.length == units::LengthUnit::foot ? "ft³" : "m³";
  }
};

template <>
struct Ways<kinds::SmallMass> {
  static units::Parsed<units::Mass> read(const Parser& p, std::string_view t) {
    return p.mass(in_unit(p, t, unit(p.units)));
  }
  static std::string write(const Printer& p, units::Mass v) { return p.print(v); }
  static std::string unit(const units::DisplayUnits& u) {
    return u.mass == units::MassUnit::pound ? "oz" : "g";
  }
};

template <>
struct Ways<kinds::Seconds> {
  static units::Parsed<units::Duration> read(const Parser& p, std::string_view t) {
    return p.duration(t, units::seconds(1));
  }
  static std::string write(const Printer& p, units::Duration v) { return p.print(v); }
  static std::string unit(const units::DisplayUnits&) { return "s"; }
};

template <>
struct Ways<kinds::Duration> {
  static units::Parsed<units::Duration> read(const Parser& p, std::string_view t) {
    return p.duration(t, units::minutes(1));
  }
  static std::string write(const Printer& p, units::Duration v) { return p.print(v); }
  static std::string unit(const units::DisplayUnits&) { return "min"; }
};

// A percentage may be typed with or without its sign.
std::string without_percent(std::string_view typed) {
  QString text = QString::fromUtf8(typed.data(), static_cast<qsizetype>(typed.size())).trimmed();
  if (text.endsWith('%')) text.chop(1);
  return s(text.trimmed());
}

template <class V>
units::Parsed<V> refused(units::ParseFault fault, std::string_view typed) {
  units::ParseError error;
  error.fault = fault;
  error.typed = std::string(typed);
  return std::unexpected(std::move(error));
}

template <>
struct Ways<kinds::Abv> {
  static units::Parsed<units::Abv> read(const Parser& p, std::string_view t) {
    const auto number = p.number(without_percent(t));
    if (!number) return std::unexpected(number.error());
    if (*number >= 0 && *number <= 100) return units::percent_abv(*number);
    return refused<units::Abv>(units::ParseFault::out_of_range, t);
  }
  static std::string write(const Printer& p, units::Abv v) { return p.print(v); }
  static std::string unit(const units::DisplayUnits&) { return "%"; }
};

template <>
struct Ways<kinds::Number> {
  static units::Parsed<double> read(const Parser& p, std::string_view t) { return p.number(t); }
  static std::string write(const Printer& p, double v) {
    return units::write_number(v, {0, 6}, p.style);
  }
  static std::string unit(const units::DisplayUnits&) { return {}; }
};

template <>
struct Ways<kinds::WholeNumber> {
  static units::Parsed<std::int64_t> read(const Parser& p, std::string_view t) {
    const auto number = p.number(t);
    if (!number) return std::unexpected(number.error());
    constexpr double largest = 9.0e15;  // every whole number below is exact in a double
    if (std::floor(*number) != *number) {
      return refused<std::int64_t>(units::ParseFault::not_a_number, t);
    }
    if (std::abs(*number) > largest) {
      return refused<std::int64_t>(units::ParseFault::out_of_range, t);
    }
    return static_cast<std::int64_t>(*number);
  }
  static std::string write(const Printer&, std::int64_t v) { return std::to_string(v); }
  static std::string unit(const units::DisplayUnits&) { return {}; }
};

std::string_view bare(std::string_view text) {
  while (!text.empty() && text.back() == ' ') text.remove_suffix(1);
  return text;
}

}  // namespace

template <class Kind>
TypedEdit<Kind>::TypedEdit(const Preferences& preferences, QWidget* parent)
    : QuantityEdit(preferences, parent) {
  refresh_last();
}

template <class Kind>
void TypedEdit<Kind>::set_value(std::optional<Value> value) {
  value_ = std::move(value);
  render();
  emit changed();
}

template <class Kind>
void TypedEdit<Kind>::set_last(std::optional<Value> last) {
  last_ = std::move(last);
  refresh_last();
}

template <class Kind>
void TypedEdit<Kind>::set_range(std::optional<Value> least, std::optional<Value> greatest) {
  least_ = std::move(least);
  greatest_ = std::move(greatest);
}

template <class Kind>
QString TypedEdit<Kind>::take_text(const QString& text) {
  const Parser parser{preferences().units(), preferences().number_style()};
  const Printer printer{preferences().units(), preferences().number_style()};
  const auto read = Ways<Kind>::read(parser, s(text));
  if (!read) return q(units::describe(read.error(), s(line_edit()->accessibleName())));
  if (least_ && *read < *least_) {
    return tr("The least is %1.").arg(q(Ways<Kind>::write(printer, *least_)));
  }
  if (greatest_ && *greatest_ < *read) {
    return tr("The most is %1.").arg(q(Ways<Kind>::write(printer, *greatest_)));
  }
  value_ = *read;
  return {};
}

// Without the unit when it is the one in the field; "120 g" keeps its own.
template <class Kind>
QString TypedEdit<Kind>::shown_value() const {
  const Printer printer{preferences().units(), preferences().number_style()};
  const std::string text = Ways<Kind>::write(printer, present(value_));
  const std::string unit = Ways<Kind>::unit(preferences().units());
  std::string_view number = text;
  if (!unit.empty() && number.ends_with(unit))
    number = bare(number.substr(0, number.size() - unit.size()));
  return q(std::string(number));
}

template <class Kind>
QString TypedEdit<Kind>::shown_unit() const {
  return q(Ways<Kind>::unit(preferences().units()));
}

template <class Kind>
QString TypedEdit<Kind>::last_text() const {
  if (!last_) return {};
  const Printer printer{preferences().units(), preferences().number_style()};
  return tr("last: %1").arg(q(Ways<Kind>::write(printer, *last_)));
}

template <class Kind>
QString TypedEdit<Kind>::other_reading(const QString& typed) const {
  const bool has_letters =
      std::any_of(typed.begin(), typed.end(), [](QChar c) { return c.isLetter(); });
  if (!has_letters) return {};
  const Printer printer{preferences().units(), preferences().number_style()};
  const QString own = q(Ways<Kind>::write(printer, present(value_)));
  return own.simplified().remove(' ') == typed.simplified().remove(' ') ? QString() : own;
}

template class TypedEdit<kinds::GaugePressure>;
template class TypedEdit<kinds::PressureDifference>;
template class TypedEdit<kinds::Temperature>;
template class TypedEdit<kinds::TemperatureDifference>;
template class TypedEdit<kinds::Volume>;
template class TypedEdit<kinds::Glass>;
template class TypedEdit<kinds::RoomAir>;
template class TypedEdit<kinds::Mass>;
template class TypedEdit<kinds::SmallMass>;
template class TypedEdit<kinds::Length>;
template class TypedEdit<kinds::Bore>;
template class TypedEdit<kinds::Co2>;
template class TypedEdit<kinds::Gravity>;
template class TypedEdit<kinds::Fraction>;
template class TypedEdit<kinds::Abv>;
template class TypedEdit<kinds::Duration>;
template class TypedEdit<kinds::Seconds>;
template class TypedEdit<kinds::Number>;
template class TypedEdit<kinds::WholeNumber>;

}  // namespace ullage::ui
