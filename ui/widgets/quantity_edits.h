// SPDX-License-Identifier: GPL-3.0-or-later
//
// One editor per kind of quantity. All work alike (quantity_edit.h):
//
//   auto* pressure = new GaugePressureEdit(context.preferences, this);
//   pressure->set_last(units::gauge_psi(12));
//   connect(pressure, &QuantityEdit::changed, ...);
//   std::optional<units::GaugePressure> p = pressure->value();
#pragma once

#include <cstdint>
#include <optional>

#include "core/units/gauge_pressure.h"
#include "core/units/quantities.h"
#include "core/units/scales.h"
#include "ui/widgets/quantity_edit.h"

namespace ullage::ui {

// What makes one kind of field: how it reads, prints and names its unit.
// Specialised in quantity_edits.cpp for the kinds below and no others.
template <class Kind>
class TypedEdit : public QuantityEdit {
 public:
  using Value = typename Kind::Value;
  explicit TypedEdit(const Preferences&, QWidget* parent = nullptr);

  [[nodiscard]] std::optional<Value> value() const { return value_; }
  void set_value(std::optional<Value>);
  // The last sensible value, offered in grey; not a value until typed.
  void set_last(std::optional<Value>);
  // Values outside are refused with a sentence naming the limit.
  void set_range(std::optional<Value> least, std::optional<Value> greatest);

 protected:
  QString take_text(const QString&) override;
  void take_nothing() override { value_.reset(); }
  [[nodiscard]] bool has_value() const override { return value_.has_value(); }
  [[nodiscard]] QString shown_value() const override;
  [[nodiscard]] QString shown_unit() const override;
  [[nodiscard]] QString last_text() const override;
  [[nodiscard]] QString other_reading(const QString& typed) const override;

 private:
  std::optional<Value> value_, last_, least_, greatest_;
};

namespace kinds {
struct GaugePressure {
  using Value = units::GaugePressure;
};
struct PressureDifference {
  using Value = units::PressureDifference;
};
struct Temperature {
  using Value = units::Temperature;
};
struct TemperatureDifference {
  using Value = units::TemperatureDifference;
};
struct Volume {
  using Value = units::Volume;
};
struct Glass {  // a volume; a bare number means fluid ounces beside US gallons
  using Value = units::Volume;
};
struct RoomAir {  // a volume; a bare number means cubic metres or feet
  using Value = units::Volume;
};
struct Mass {
  using Value = units::Mass;
};
struct SmallMass {  // hops, sugar; a bare number means grams or ounces
  using Value = units::Mass;
};
struct Length {
  using Value = units::Length;
};
struct Bore {
  using Value = units::Length;
};
struct Co2 {
  using Value = units::Co2Concentration;
};
struct Gravity {
  using Value = units::SpecificGravity;
};
struct Fraction {  // shown as a percentage
  using Value = units::Fraction;
};
struct Abv {
  using Value = units::Abv;
};
struct Duration {
  using Value = units::Duration;
};
struct Seconds {  // a duration; a bare number means seconds
  using Value = units::Duration;
};
struct Number {
  using Value = double;
};
struct WholeNumber {
  using Value = std::int64_t;
};
}  // namespace kinds

using GaugePressureEdit = TypedEdit<kinds::GaugePressure>;
using PressureDifferenceEdit = TypedEdit<kinds::PressureDifference>;
using TemperatureEdit = TypedEdit<kinds::Temperature>;
using TemperatureDifferenceEdit = TypedEdit<kinds::TemperatureDifference>;
using VolumeEdit = TypedEdit<kinds::Volume>;
using GlassEdit = TypedEdit<kinds::Glass>;
using RoomAirEdit = TypedEdit<kinds::RoomAir>;
using SmallMassEdit = TypedEdit<kinds::SmallMass>;
using MassEdit = TypedEdit<kinds::Mass>;
using LengthEdit = TypedEdit<kinds::Length>;
using BoreEdit = TypedEdit<kinds::Bore>;
using Co2Edit = TypedEdit<kinds::Co2>;
using GravityEdit = TypedEdit<kinds::Gravity>;
using FractionEdit = TypedEdit<kinds::Fraction>;
using AbvEdit = TypedEdit<kinds::Abv>;
using DurationEdit = TypedEdit<kinds::Duration>;  // a bare number means minutes
using SecondsEdit = TypedEdit<kinds::Seconds>;
using NumberEdit = TypedEdit<kinds::Number>;
using WholeNumberEdit = TypedEdit<kinds::WholeNumber>;

extern template class TypedEdit<kinds::GaugePressure>;
extern template class TypedEdit<kinds::PressureDifference>;
extern template class TypedEdit<kinds::Temperature>;
extern template class TypedEdit<kinds::TemperatureDifference>;
extern template class TypedEdit<kinds::Volume>;
extern template class TypedEdit<kinds::Glass>;
extern template class TypedEdit<kinds::RoomAir>;
extern template class TypedEdit<kinds::Mass>;
extern template class TypedEdit<kinds::SmallMass>;
extern template class TypedEdit<kinds::Length>;
extern template class TypedEdit<kinds::Bore>;
extern template class TypedEdit<kinds::Co2>;
extern template class TypedEdit<kinds::Gravity>;
extern template class TypedEdit<kinds::Fraction>;
extern template class TypedEdit<kinds::Abv>;
extern template class TypedEdit<kinds::Duration>;
extern template class TypedEdit<kinds::Seconds>;
extern template class TypedEdit<kinds::Number>;
extern template class TypedEdit<kinds::WholeNumber>;

}  // namespace ullage::ui
