// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/store/kind_table.h"

#include "core/cellar/field_walk.h"
#include "core/store/field_binding.h"

namespace ullage::store {

namespace {

KindOps ops_of(const cellar::Payload& blank) {
  const std::string_view kind = cellar::kind_of(blank);
  std::string columns = "sequence";
  std::string values = "?1";
  int next = 2;
  cellar::for_each_field(blank, [&](std::string_view name, const auto&) {
    columns += ", " + quoted(name);
    values += ", ?" + std::to_string(next++);
  });
  const std::string table = quoted(kind);
  std::string insert = "INSERT INTO " + table;
  insert += " (" + columns + ") VALUES (" + values + ")";
  return {kind, std::move(insert), std::move(columns), blank};
}

}  // namespace

BadField bind_payload(Statement& statement, const cellar::Payload& payload) {
  FieldBinder binder{statement, 2};
  cellar::for_each_field(payload, binder);
  return {binder.fault, binder.why};
}

std::string_view read_payload(sqlite3_stmt* statement, cellar::Payload& payload) {
  FieldReader reader{statement, 1};
  cellar::for_each_field(payload, reader);
  return reader.fault;
}

std::string quoted(std::string_view identifier) {
  std::string q = "\"";
  q += identifier;
  q += '"';
  return q;
}

const std::vector<KindOps>& kind_table() {
  static const std::vector<KindOps> table = [] {
    std::vector<KindOps> made;
    for (const cellar::Payload& blank : cellar::blank_payloads()) made.push_back(ops_of(blank));
    return made;
  }();
  return table;
}

}  // namespace ullage::store
