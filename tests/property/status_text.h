// SPDX-License-Identifier: GPL-3.0-or-later
//
// Everything a status says, as text: so that two statuses can be compared whole
// and a difference be read.
#pragma once

#include <string>

#include "core/cellar/status.h"

namespace ullage::testing {

[[nodiscard]] std::string text_of(const cellar::KegStatus&);
[[nodiscard]] std::string text_of(const cellar::CellarStatus&);

// Where two texts part, with what surrounds it; empty when they are the same.
[[nodiscard]] std::string difference(const std::string& a, const std::string& b);

}  // namespace ullage::testing
