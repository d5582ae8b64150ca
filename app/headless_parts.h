// SPDX-License-Identifier: GPL-3.0-or-later
//
// What the commands without a display share. Used by headless*.cpp alone.
#pragma once

#include <QFont>
#include <filesystem>
#include <optional>
#include <string>

#include "app/headless.h"
#include "core/report/say.h"

namespace ullage::app {

// Tells what went wrong; gives exit_file_problem.
[[nodiscard]] int file_problem(Terminal terminal, const store::StoreError& error);

// Writes the file whole or not at all; tells what went wrong.
[[nodiscard]] int write_text(const std::filesystem::path& path, const std::string& text,
                             Terminal terminal);

// Reading a cellar here must neither lock it nor bring it up to date.
[[nodiscard]] store::OpenOptions for_reading();

// In the units asked for, else as the cellar was set up; US units bring the words
// of the US.
[[nodiscard]] report::Speaker speaker_for(const CellarSession& session,
                                          const cellar::CellarStatus& status,
                                          const std::optional<units::DisplayUnits>& wanted);

// The typeface that all screens have too.
[[nodiscard]] QFont paper_font();

[[nodiscard]] std::string counted(std::size_t number, const char* one, const char* many);

}  // namespace ullage::app
