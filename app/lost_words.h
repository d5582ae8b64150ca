// SPDX-License-Identifier: GPL-3.0-or-later
//
// What a recovery could not save, entry by entry, in the words of the windows: which
// entry, when it happened, what it was, about which keg or line.
#pragma once

#include <QString>

#include "core/store/recover.h"
#include "ui/context.h"

namespace ullage::app {

// `saved` is of the cellar that was saved: it knows the names.
[[nodiscard]] QString lost_words(const store::RecoveryReport&, const ui::Context& saved);

}  // namespace ullage::app
