// SPDX-License-Identifier: GPL-3.0-or-later
//
// The demo cellar: an invented small brewery tap with a dozen kegs, told as the
// acts that somebody would have logged over the last six weeks, relative to
// now. It goes through the same verbs as any cellar; nothing in it is derived by
// hand.
#pragma once

#include <filesystem>
#include <vector>

#include "app/session.h"

namespace ullage::app {

// The acts in the order they were done.
[[nodiscard]] std::vector<cellar::Act> demo_acts(cellar::Instant now,
                                                 const cellar::LocalCalendar& calendar,
                                                 cellar::IdSource& ids);

// Makes a cellar file and logs them all into it.
[[nodiscard]] CellarSession::Made make_demo(const std::filesystem::path& file,
                                            CellarSession::Tools tools,
                                            const store::OpenOptions& = {});

}  // namespace ullage::app
