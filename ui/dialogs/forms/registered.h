// SPDX-License-Identifier: GPL-3.0-or-later
//
// The things of the register as they stand now, for forms that change them: a
// change is a new record of the same thing, in force from then on.
#pragma once

#include <optional>
#include <vector>

#include "core/cellar/status.h"

namespace ullage::ui {

struct RegisteredThing {
  cellar::SubjectRef about;
  cellar::Payload record;
};

// Kegs, beers, batches, places, lines, gas bottles, regulators, instruments; those
// out of use, too. Hose and rules have lists of their own.
[[nodiscard]] std::vector<RegisteredThing> registered_things(const cellar::CellarStatus&);

// Its record now; nullopt for what was never registered.
[[nodiscard]] std::optional<cellar::Payload> record_of(const cellar::CellarStatus&,
                                                       const cellar::SubjectRef&);

// Beers and batches are always in use.
[[nodiscard]] bool in_use(const cellar::Payload& record);
// The same thing out of use, or in use again; nullopt where there is no such thing.
[[nodiscard]] std::optional<cellar::Payload> with_use(const cellar::Payload& record, bool in_use);

}  // namespace ullage::ui
