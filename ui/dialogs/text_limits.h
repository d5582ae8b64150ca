// SPDX-License-Identifier: GPL-3.0-or-later
//
// How long a text may be that goes into an entry: what core/cellar lets pass, so that
// no field refuses what could be logged, or takes what could not.
#pragma once

#include "core/cellar/limits.h"

namespace ullage::ui {

// Of the entry's head, whatever its kind.
[[nodiscard]] inline std::size_t initials_limit() { return cellar::text_limit("", "by"); }
[[nodiscard]] inline std::size_t remark_limit() { return cellar::text_limit("", "note"); }
[[nodiscard]] inline std::size_t reason_limit() { return cellar::text_limit("", "reason"); }

}  // namespace ullage::ui
