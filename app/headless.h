// SPDX-License-Identifier: GPL-3.0-or-later
//
// The commands that need no display. Each prints one or a few lines and gives
// the program's exit code.
#pragma once

#include <iosfwd>

#include "app/command_line.h"
#include "app/session.h"

namespace ullage::app {

struct Terminal {
  std::ostream& out;  // what was asked for
  std::ostream& err;  // what went wrong
};

// Needs a QGuiApplication, for its fonts.
[[nodiscard]] int print_sheet(const PrintSheet&, CellarSession::Tools, Terminal);
[[nodiscard]] int export_cellar(const ExportCellar&, Terminal);
[[nodiscard]] int import_cellar(const ImportCellar&, CellarSession::Tools, Terminal);
[[nodiscard]] int check_cellar(const CheckCellar&, CellarSession::Tools, Terminal);

// What is due within so many days: exit_refused when something is overdue.
[[nodiscard]] int tell_due(const TellDue&, CellarSession::Tools, Terminal);
// Need a QGuiApplication too (a log, when it becomes a PDF).
[[nodiscard]] int print_tags(const PrintTags&, CellarSession::Tools, Terminal);
[[nodiscard]] int write_log(const WriteLog&, CellarSession::Tools, Terminal);
[[nodiscard]] int plan_day(const PlanDay&, CellarSession::Tools, Terminal);
[[nodiscard]] int write_calendar(const WriteCalendar&, CellarSession::Tools, Terminal);

}  // namespace ullage::app
