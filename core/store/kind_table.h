// SPDX-License-Identifier: GPL-3.0-or-later
//
// What the store needs to know of each kind of entry, made from the payload's own
// description: the SQL to add and to read its row, and how to bind and read it.
#pragma once

#include <string>
#include <string_view>
#include <vector>

#include "core/cellar/entry.h"
#include "core/store/connection.h"

namespace ullage::store {

// A value that its column can never hold.
struct BadField {
  std::string_view field;  // empty when all is well
  std::string_view why;
};

struct KindOps {
  std::string_view kind;    // also the name of its table
  std::string insert;       // ?1 is the sequence, then the fields in order
  std::string select_list;  // sequence, then the fields in order
  cellar::Payload blank;    // what read_payload() fills
};

[[nodiscard]] BadField bind_payload(Statement&, const cellar::Payload&);  // after ?1
// Reads the fields of the payload's kind from column 1 on. Empty, or the name of a field
// that makes no sense.
[[nodiscard]] std::string_view read_payload(sqlite3_stmt*, cellar::Payload&);

// In the order of cellar::Payload, so that an index there is an index here.
[[nodiscard]] const std::vector<KindOps>& kind_table();

[[nodiscard]] std::string quoted(std::string_view identifier);  // "to" -> "\"to\""

}  // namespace ullage::store
