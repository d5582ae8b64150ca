// SPDX-License-Identifier: GPL-3.0-or-later
//
// What the choices of a form are called. A stored word that reads well by
// itself ("set_and_wait" as "Set and wait") needs nothing here.
#pragma once

#include <QString>
#include <string_view>

#include "core/report/say.h"

namespace ullage::ui {

[[nodiscard]] QString words_of_choice(std::string_view stored_word, const report::Speaker& speaker);

}  // namespace ullage::ui
