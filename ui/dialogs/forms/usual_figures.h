// SPDX-License-Identifier: GPL-3.0-or-later
//
// Kegs and instruments come in kinds, and a kind brings its usual figures
// (core/cellar/presets.h): they stand in the form, to be changed where somebody
// knows better.
#pragma once

#include <cstddef>
#include <optional>

#include "core/cellar/entry.h"

namespace ullage::ui {

// Which kind it is of; nullopt for things that don't come in kinds.
[[nodiscard]] std::optional<std::size_t> kind_chosen(const cellar::Payload&);

// With the figures of its kind; what it is called, who owns it and where it
// stands stay as they are.
[[nodiscard]] cellar::Payload with_usual_figures(const cellar::Payload&);

}  // namespace ullage::ui
