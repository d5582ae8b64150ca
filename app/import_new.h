// SPDX-License-Identifier: GPL-3.0-or-later
//
// A new cellar from exported JSON. It is filled under another name and gets its own when
// it is whole: whatever goes wrong, no part of a cellar is left, and no file that was
// there is touched.
#pragma once

#include <cstddef>
#include <expected>
#include <filesystem>
#include <optional>

#include "app/session.h"
#include "core/store/exchange.h"

namespace ullage::app {

// Either a file could not be read or written, or what it says was refused.
struct ImportFailure {
  std::optional<store::StoreError> file = {};
  store::ImportRefusal refused = {};
};

// How many entries there are.
[[nodiscard]] std::expected<std::size_t, ImportFailure> import_new(
    const std::filesystem::path& from, const std::filesystem::path& cellar,
    CellarSession::Tools tools);

}  // namespace ullage::app
