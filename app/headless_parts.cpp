// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/headless_parts.h"

#include <QString>
#include <ostream>

#include "app/exit_codes.h"
#include "core/report/preset_units.h"
#include "ui/print/whole_file.h"
#include "ui/theme/theme.h"
#include "ui/theme/theme_switch.h"

namespace ullage::app {

int file_problem(Terminal terminal, const store::StoreError& error) {
  terminal.err << store::describe(error) << '\n';
  if (!error.detail.empty()) terminal.err << "(" << error.detail << ")\n";
  return exit_file_problem;
}

int write_text(const std::filesystem::path& path, const std::string& text, Terminal terminal) {
  const auto written = ui::write_whole(QString::fromStdString(path.string()), text);
  if (written) return exit_ok;
  terminal.err << written.error().toStdString() << '\n';
  return exit_file_problem;
}

store::OpenOptions for_reading() { return {.read_only = true, .allow_network_read_only = true}; }

report::Speaker speaker_for(const CellarSession& session, const cellar::CellarStatus& status,
                            const std::optional<units::DisplayUnits>& wanted) {
  const units::DisplayUnits as_set_up =
      status.cellar ? report::units_of(status.cellar->units) : units::DisplayUnits::metric();
  const units::DisplayUnits chosen = wanted.value_or(as_set_up);
  const bool set_up_us = status.cellar && status.cellar->units == cellar::UnitsPreset::us;
  const bool us = chosen == units::DisplayUnits::us() ||
                  (set_up_us && chosen != units::DisplayUnits::british());
  return {.printer = {.units = chosen, .style = {}},
          .calendar = &session.calendar(),
          .words = us ? report::RegionalWords::us : report::RegionalWords::british,
          .now = session.now()};
}

QFont paper_font() {
  ui::load_typeface();
  return ui::font_of(ui::TextRole::body);
}

std::string counted(std::size_t number, const char* one, const char* many) {
  return std::to_string(number) + " " + (number == 1 ? one : many);
}

}  // namespace ullage::app
