// SPDX-License-Identifier: GPL-3.0-or-later
//
// What a kind of entry is called where there is no entry to tell of: "Gas set".
#pragma once

#include <QString>
#include <string_view>

#include "core/report/say.h"

namespace ullage::ui {

[[nodiscard]] QString kind_words(std::string_view kind, report::RegionalWords words);

}  // namespace ullage::ui
