// SPDX-License-Identifier: GPL-3.0-or-later
//
// What registered things are called: a keg by its tag, everything else by its
// name. An id that the status does not know (registered later than the moment
// shown) is called "unknown keg" and so on, never left blank.
#pragma once

#include <string>
#include <vector>

#include "core/cellar/status.h"

namespace ullage::report {

[[nodiscard]] std::string name_of(const cellar::SubjectRef&, const cellar::CellarStatus&);

// A batch with its beer: "Red Rye, Brew 46".
[[nodiscard]] std::string batch_with_beer(cellar::BatchId, const cellar::CellarStatus&);

// The things that an entry is about, each name once, in the order in which the entry
// names them. What it was read on is left out.
[[nodiscard]] std::vector<std::string> things_named(const cellar::Payload&,
                                                    const cellar::CellarStatus&);

}  // namespace ullage::report
