// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/dialogs/forms/form_spec.h"

#include <algorithm>
#include <array>

namespace ullage::ui {

bool done_to_several(std::string_view kind) {
  static constexpr auto kinds = std::to_array<std::string_view>(
      {"received", "moved", "quarantined", "cleared", "lent", "returned", "inspected", "cleaned",
       "sanitised", "purged", "gas_set", "gas_off", "vented", "emptied"});
  return std::find(kinds.begin(), kinds.end(), kind) != kinds.end();
}

std::vector<const FormSpec*> all_form_specs() {
  std::vector<const FormSpec*> all;
  for (const auto& table :
       {keg_form_specs(), beer_form_specs(), gas_form_specs(), line_form_specs(),
        place_form_specs(), register_form_specs(), routine_form_specs()}) {
    for (const FormSpec& spec : table) all.push_back(&spec);
  }
  return all;
}

const FormSpec* form_spec(std::string_view kind) {
  for (const FormSpec* spec : all_form_specs()) {
    if (spec->kind == kind) return spec;
  }
  return nullptr;
}

}  // namespace ullage::ui
