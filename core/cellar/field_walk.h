// SPDX-License-Identifier: GPL-3.0-or-later
//
// Walks the fields of an entry's payload, of whatever kind: calls f(column, field)
// for each, in the order of its fields(). What f does is compiled once for each
// *type* of field (some 75), not once for each field of each kind (some 340), which
// is much of what a build spends on entries. To know the kind as well, ask
// kind_of(), or visit the payload and call P::fields().
#pragma once

#include <array>
#include <boost/mp11/algorithm.hpp>
#include <boost/mp11/list.hpp>
#include <memory>
#include <string_view>
#include <type_traits>
#include <vector>

#include "core/cellar/entry.h"

namespace ullage::cellar {

// Every type that a field has. One that is missing stops the build in field_walk.cpp.
using FieldTypes = boost::mp11::mp_append<
    boost::mp11::mp_list<bool, std::int64_t, std::string, Date, EntryId, BeerId, SegmentId>,
    boost::mp11::mp_list<units::Temperature, units::Length, units::Volume, units::Mass,
                         units::Duration, units::GaugePressure, units::MoleFraction,
                         units::SpecificGravity>,
    boost::mp11::mp_list<BatchId, BottleId, InstrumentId, KegId, LineId, PlaceId, RegulatorId,
                         RuleId>,
    boost::mp11::mp_list<BatchOrigin, CleaningMethod, Co2AtFill, FlushCheck, FoundContents,
                         GasPurpose, GravityStage, InstrumentKind, KegKind, LeakMethod, LevelMethod,
                         LineAgent, LineMaterial, Owner, PlaceKind, PurgeMethod, RuleScope,
                         SanitisingMethod, SoakMethod, SugarKind, TemperatureOf, Transfer,
                         UnitsPreset, WasteReason, WorkKind>,
    boost::mp11::mp_transform<
        std::optional,
        boost::mp11::mp_list<bool, double, std::int64_t, std::string, Instant, Date, BatchId,
                             BottleId, InstrumentId, KegId, LineId, PlaceId, RegulatorId, RuleId,
                             units::Temperature, units::PressureDifference, units::Length,
                             units::Volume, units::Mass, units::TemperatureDifference,
                             units::Duration, units::GaugePressure, units::Fraction,
                             units::Co2Concentration, units::MoleFraction, units::Abv,
                             units::SpecificGravity>>>;

namespace detail {

template <class T>
constexpr std::size_t field_type = boost::mp11::mp_find<FieldTypes, std::remove_const_t<T>>::value;

// What fields() calls: a function object whose type it need not know.
template <bool Const>
class FieldSink {
 public:
  using Call = void (*)(void* sink, std::string_view column, const void* field);

  template <class F>
  explicit FieldSink(F& f) : f_(std::addressof(f)), calls_(Table<F, FieldTypes>::calls.data()) {}

  template <class T>
  void operator()(std::string_view column, T& field) const {
    static_assert(field_type<T> < boost::mp11::mp_size<FieldTypes>::value,
                  "add the field's type to FieldTypes");
    calls_[field_type<T>](f_, column, std::addressof(field));
  }

 private:
  template <class F, class T>
  static void call(void* f, std::string_view column, const void* field) {
    if constexpr (Const) {
      (*static_cast<F*>(f))(column, *static_cast<const T*>(field));
    } else {
      // Only fields of payloads that may be changed come here.
      (*static_cast<F*>(f))(column, *static_cast<T*>(const_cast<void*>(field)));
    }
  }
  template <class F, class Types>
  struct Table;
  template <class F, class... Ts>
  struct Table<F, boost::mp11::mp_list<Ts...>> {
    static constexpr std::array<Call, sizeof...(Ts)> calls = {&call<F, Ts>...};
  };

  void* f_;
  const Call* calls_;
};

void walk(const Payload&, const FieldSink<true>&);
void walk(Payload&, const FieldSink<false>&);

}  // namespace detail

template <class F>
void for_each_field(const Payload& payload, F&& f) {
  detail::walk(payload, detail::FieldSink<true>(f));
}
template <class F>
void for_each_field(Payload& payload, F&& f) {
  detail::walk(payload, detail::FieldSink<false>(f));
}

// Where the fields of a payload are, in order: a second payload of the same kind can
// then be walked beside it.
[[nodiscard]] std::vector<const void*> fields_of(const Payload&);

}  // namespace ullage::cellar
