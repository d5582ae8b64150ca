// SPDX-License-Identifier: GPL-3.0-or-later
//
// When the first pages of a cellar, which say where each table begins, are
// broken: every cellar of one schema has its tables begin on the same pages, so
// a new cellar's first pages fit.
#pragma once

#include <filesystem>

#include "core/store/store_error.h"

namespace ullage::store {

// Overwrites the pages that hold the file's header and its list of tables with
// those of a newly made cellar. Only ever called on a copy.
[[nodiscard]] Expected<void> graft_contents(const std::filesystem::path&);

}  // namespace ullage::store
