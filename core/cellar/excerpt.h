// SPDX-License-Identifier: GPL-3.0-or-later
//
// The part of the journal that one keg's state can depend on: so that a form may
// ask, at every key pressed, how the keg would stand after an act, without
// touching the journal and without replaying the whole cellar.
#pragma once

#include <vector>

#include "core/cellar/journal.h"

namespace ullage::cellar {

// What an act corrects, strikes or brings back; of a strike that is struck, what that
// one was about, too.
[[nodiscard]] std::vector<EntryId> acted_on(const Act&, const Journal&);

// Entries about the keg; records, and readings that belong to no other keg, of
// everything those entries and the drafts name, and of what those name in turn;
// and on the lines among them, what other kegs were put on and how fast they were
// drunk. Then the drafts of
// the act, as entries with ids and sequences of their own.
[[nodiscard]] Journal excerpt_with(const Journal&, KegId, const Act&);

// The story of one line alone, and the drafts likewise.
[[nodiscard]] Journal excerpt_with(const Journal&, LineId, const Act&);

}  // namespace ullage::cellar
