// SPDX-License-Identifier: GPL-3.0-or-later
//
// Looking a cellar file over on a thread of its own, while it is in use.
#pragma once

#include <filesystem>
#include <stop_token>

#include "core/store/store_error.h"

namespace ullage::store {

enum class CheckDepth {
  quick,  // structure of every page, and every row's types and rules
  full,   // also every index against its table, references, and that each entry has its payload
};

// Success means sound. Errors: damaged (detail lists what was found), cancelled
// when stop was requested, and those of opening. Writes nothing.
[[nodiscard]] Expected<void> check_file(const std::filesystem::path&, CheckDepth,
                                        std::stop_token = {});

}  // namespace ullage::store
