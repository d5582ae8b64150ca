// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/store/kind_table.h"

#include "core/store/field_binding.h"

namespace ullage::store {

namespace {

template <class P>
BadField bind_payload(Statement& statement, const cellar::Payload& payload) {
  FieldBinder binder{statement, 2};
  P::fields(get<P>(payload), binder);
  return {binder.fault, binder.why};
}

template <class P>
const char* read_payload(sqlite3_stmt* statement, cellar::Payload& payload) {
  FieldReader reader{statement, 1};
  P::fields(payload.emplace<P>(), reader);
  return reader.fault;
}

template <class P>
KindOps ops_of(P payload) {
  std::string columns = "sequence";
  std::string values = "?1";
  int next = 2;
  P::fields(payload, [&](std::string_view name, const auto&) {
    columns += ", " + quoted(name);
    values += ", ?" + std::to_string(next++);
  });
  const std::string table = quoted(P::kind);
  std::string insert = "INSERT INTO " + table;
  insert += " (" + columns + ") VALUES (" + values + ")";
  return {P::kind, std::move(insert), std::move(columns), bind_payload<P>, read_payload<P>};
}

}  // namespace

std::string quoted(std::string_view identifier) {
  std::string q = "\"";
  q += identifier;
  q += '"';
  return q;
}

const std::vector<KindOps>& kind_table() {
  static const std::vector<KindOps> table = [] {
    std::vector<KindOps> made;
    cellar::for_each_kind([&](auto payload) { made.push_back(ops_of(std::move(payload))); });
    return made;
  }();
  return table;
}

}  // namespace ullage::store
