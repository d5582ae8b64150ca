// SPDX-License-Identifier: GPL-3.0-or-later
//
// A copy of a cellar that is known to be good before it gets its name.
#pragma once

#include "core/cellar/ids.h"
#include "core/store/connection.h"
#include "core/store/files.h"

namespace ullage::store {

// Copies what the connection sees, while others may write, into one file without
// a log, checks it in full and moves it to `to`.
[[nodiscard]] Expected<void> verified_copy(const Connection&, const std::filesystem::path& to,
                                           Existing);

// Success when the file is a cellar of a schema we know, passes the integrity
// check and all its references hold. Gives the cellar's id. Writes nothing.
[[nodiscard]] Expected<cellar::Uuid> verify_cellar(const std::filesystem::path&);

// The same for an open connection: damaged, with the findings as detail.
[[nodiscard]] Expected<void> full_check(const Connection&);

}  // namespace ullage::store
