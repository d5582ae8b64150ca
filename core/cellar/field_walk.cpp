// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/cellar/field_walk.h"

namespace ullage::cellar {

namespace detail {

void walk(const Payload& payload, const FieldSink<true>& sink) {
  visit([&]<class P>(const P& p) { P::fields(p, sink); }, payload);
}

void walk(Payload& payload, const FieldSink<false>& sink) {
  visit([&]<class P>(P& p) { P::fields(p, sink); }, payload);
}

}  // namespace detail

std::vector<const void*> fields_of(const Payload& payload) {
  std::vector<const void*> fields;
  for_each_field(payload, [&](std::string_view, const auto& field) { fields.push_back(&field); });
  return fields;
}

}  // namespace ullage::cellar
