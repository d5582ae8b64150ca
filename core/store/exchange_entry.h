// SPDX-License-Identifier: GPL-3.0-or-later
//
// One entry of exchange text, given its meaning.
#pragma once

#include <optional>
#include <string>
#include <utility>
#include <vector>

#include "core/cellar/entry.h"
#include "core/store/exchange_reader.h"

namespace ullage::store {

// nullopt when there was a problem with it; every one found is added.
[[nodiscard]] std::optional<cellar::Entry> entry_from(const RawEntry&, ProblemList&);

// The other entries that an entry speaks of, with the field's name.
[[nodiscard]] std::vector<std::pair<std::string, cellar::EntryId>> entries_named_by(
    const cellar::Entry&);

}  // namespace ullage::store
