// SPDX-License-Identifier: GPL-3.0-or-later
//
// The Paper menu's commands, and those that exchange lists with other programs:
// each opens its preview or asks for its file.
#pragma once

#include "ui/commands/commands.h"
#include "ui/context.h"

namespace ullage::ui {

// Whether the command is one of these.
[[nodiscard]] bool is_paper(Command);
void open_paper(Command, const Context&, QWidget* parent);

// Writes due work and ready dates as an iCalendar file; false, and a notice, when
// it could not be written.
bool save_calendar(const Context&, const QString& path);

}  // namespace ullage::ui
