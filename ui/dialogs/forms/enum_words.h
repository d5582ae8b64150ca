// SPDX-License-Identifier: GPL-3.0-or-later
//
// What the choices of a form are called. A stored word that reads well by
// itself ("set_and_wait" as "Set and wait") needs nothing here. And the words of
// the region, for forms: they are written in the British ones.
#pragma once

#include <QString>
#include <string_view>

#include "core/report/say.h"

namespace ullage::ui {

[[nodiscard]] QString words_of_choice(std::string_view stored_word, const report::Speaker& speaker);

// "&Tap" as "&Faucet", "sanitised" as "sanitized", where the US ones are set: whole
// words of English alone (core/report/regional.h), so German stays as it is.
[[nodiscard]] QString regional(const QString& said, report::RegionalWords words);

}  // namespace ullage::ui
