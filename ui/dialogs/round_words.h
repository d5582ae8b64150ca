// SPDX-License-Identifier: GPL-3.0-or-later
//
// What the round says about a station: its name, where it is, how it stands.
#pragma once

#include <QString>

#include "core/cellar/round.h"
#include "ui/context.h"

namespace ullage::ui {

[[nodiscard]] QString round_name(const cellar::RoundStation&, const Context&);  // "K07", "Tap 2"
[[nodiscard]] QString round_place_words(const cellar::RoundStation&, const Context&);
// The beer and its state; at a tap what is on it, whether it may be served, and when
// it was and will be cleaned. Empty for a place.
[[nodiscard]] QString round_about_words(const cellar::RoundStation&, const Context&);

}  // namespace ullage::ui
