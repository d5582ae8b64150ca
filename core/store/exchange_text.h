// SPDX-License-Identifier: GPL-3.0-or-later
//
// How times and days are written in exchange text, and read back strictly.
#pragma once

#include <optional>
#include <string>
#include <string_view>

#include "core/cellar/time.h"

namespace ullage::store {

[[nodiscard]] std::string instant_text(cellar::Instant);  // "2026-03-01T18:00:00Z"
[[nodiscard]] std::string date_text(cellar::Date);        // "2026-03-01"
// nullopt unless written exactly so and on the calendar, years 0001 to 9999.
[[nodiscard]] std::optional<cellar::Instant> instant_from_text(std::string_view);
[[nodiscard]] std::optional<cellar::Date> date_from_text(std::string_view);

}  // namespace ullage::store
