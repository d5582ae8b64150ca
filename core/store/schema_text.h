// SPDX-License-Identifier: GPL-3.0-or-later
//
// The files of resources/sql as compiled in, in name order: "001_10_journal.sql"
// belongs to version 1; the "002_" files together are the step from 1 to 2.
#pragma once

#include <span>
#include <string_view>

namespace ullage::store {

struct SchemaFile {
  std::string_view name;
  std::string_view sql;
};
[[nodiscard]] std::span<const SchemaFile> schema_files();

}  // namespace ullage::store
