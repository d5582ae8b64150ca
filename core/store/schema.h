// SPDX-License-Identifier: GPL-3.0-or-later
//
// The schema's versions and the steps between them. The SQL itself is in
// resources/sql, one set of files a version, and is compiled in.
#pragma once

#include <cstdint>
#include <span>
#include <string>
#include <string_view>

#include "core/store/connection.h"

namespace ullage::store {

// In the file's header, so that a file is known as ours ("Ullg").
inline constexpr std::uint32_t application_id = 0x556c6c67;
inline constexpr int schema_version = 2;

// The whole schema of a version as SQL; empty for a version there never was.
[[nodiscard]] std::string schema_sql(int version);

// From one version to the next. SQL that needs a table changed makes a new one,
// copies, drops the old and renames.
struct MigrationStep {
  int from = 0;
  std::string sql;  // leads to version from + 1
};
// All released steps, by rising version.
[[nodiscard]] std::span<const MigrationStep> released_steps();

// Settings every connection runs with.
[[nodiscard]] Expected<void> set_up_connection(const Connection&);

// Makes schema, kinds and identity in an empty file, as one transaction.
[[nodiscard]] Expected<void> create_schema(const Connection&, int version);

}  // namespace ullage::store
