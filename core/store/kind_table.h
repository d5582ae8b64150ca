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
  const char* field = nullptr;  // null when all is well
  std::string_view why;
};

struct KindOps {
  std::string_view kind;    // also the name of its table
  std::string insert;       // ?1 is the sequence, then the fields in order
  std::string select_list;  // sequence, then the fields in order
  BadField (*bind)(Statement&, const cellar::Payload&);
  // Null, or the name of a field that makes no sense. Column 0 is the sequence.
  const char* (*read)(sqlite3_stmt*, cellar::Payload&);
};

// In the order of cellar::Payload, so that an index there is an index here.
[[nodiscard]] const std::vector<KindOps>& kind_table();

[[nodiscard]] std::string quoted(std::string_view identifier);  // "to" -> "\"to\""

}  // namespace ullage::store
