// SPDX-License-Identifier: GPL-3.0-or-later
//
// How the form of each entry kind reads: its title, its words for the task
// palette, its caution, and its fields in the order in which somebody would
// answer them. The fields themselves (their types, columns and limits) are the
// payload's (core/cellar/fields.h); a kind needs nothing here but words.
#pragma once

#include <functional>
#include <span>
#include <string_view>
#include <vector>

#include "core/cellar/entry.h"
#include "core/cellar/status.h"

namespace ullage::ui {

enum class Use {
  typed,       // starts empty, or as the payload's default
  remembered,  // starts with what was logged the last time
  reading,     // starts empty; the last reading is offered in grey
  hidden       // kept as it is, not shown
};

using ShownIf = std::function<bool(const cellar::Payload&, const cellar::CellarStatus&)>;

// What a bare number in a field of its kind of quantity means, where that is not the
// unit in which people read a keg: ounces of hops, cubic feet of a cellar's air, the
// seconds of a pour.
enum class FieldScale { usual, small, room };

struct FieldSpec {
  std::string_view column;
  const char* label = "";  // with a mnemonic where there is room for one
  Use use = Use::typed;
  const char* hint = "";
  bool required = false;  // of a field that the payload lets be absent
  // Whether the row makes sense, given the rest and the cellar; always when empty.
  ShownIf shown_if = {};
  // Behind "Further figures": most people leave it as it stands.
  bool further = false;
  FieldScale scale = FieldScale::usual;
};

[[nodiscard]] inline FieldSpec further(FieldSpec field) {
  field.further = true;
  return field;
}

[[nodiscard]] inline FieldSpec scaled(FieldSpec field, FieldScale scale) {
  field.scale = scale;
  return field;
}

enum class CautionWeight { none, caution, danger };

struct FormSpec {
  std::string_view kind;
  const char* title = "";
  const char* keywords = "";  // further words under which the palette finds it
  std::vector<FieldSpec> fields = {};
  CautionWeight weight = CautionWeight::none;
  const char* caution = "";
};

// Null for kinds that have no form of their own (struck, restored).
[[nodiscard]] const FormSpec* form_spec(std::string_view kind);
[[nodiscard]] std::vector<const FormSpec*> all_form_specs();

// What is often done to several kegs at one time, in the same way.
[[nodiscard]] bool done_to_several(std::string_view kind);

// The tables by subject.
[[nodiscard]] std::span<const FormSpec> keg_form_specs();
[[nodiscard]] std::span<const FormSpec> beer_form_specs();
[[nodiscard]] std::span<const FormSpec> gas_form_specs();
[[nodiscard]] std::span<const FormSpec> line_form_specs();
[[nodiscard]] std::span<const FormSpec> place_form_specs();
[[nodiscard]] std::span<const FormSpec> register_form_specs();
[[nodiscard]] std::span<const FormSpec> routine_form_specs();

// A condition on one enum field of one payload type:
// when(&cellar::Purged::method, cellar::PurgeMethod::cycles).
template <class P, class E>
[[nodiscard]] ShownIf when(E P::* field, E value) {
  return [field, value](const cellar::Payload& payload, const cellar::CellarStatus&) {
    const P* p = get_if<P>(&payload);
    return p && p->*field == value;
  };
}

}  // namespace ullage::ui
