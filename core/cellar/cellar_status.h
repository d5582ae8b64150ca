// SPDX-License-Identifier: GPL-3.0-or-later
//
// What concerns more than one keg: who is on which line, gas bottles, places,
// which keg to use next, and what needs attention.
#pragma once

#include <optional>
#include <vector>

#include "core/cellar/line_timeline.h"
#include "core/cellar/place_history.h"
#include "core/cellar/status.h"

namespace ullage::cellar {

[[nodiscard]] BottleStatus bottle_status(BottleId, const Journal&, Reliance&);
void advise_bottle(const BottleStatus&, Date today, std::vector<Advice>&);

[[nodiscard]] PlaceStatus place_status(const PlaceHistory&, const CellarStatus&);
void advise_place(const PlaceStatus&, const PlaceHistory&, const CellarStatus&, Instant now,
                  std::vector<Advice>&);

// Why what is in a keg must not be served: held back, recalled, or leaking.
[[nodiscard]] std::optional<Message> why_not_served(const KegStatus&);

// Says which keg each line serves; lines and kegs must be filled in.
void join_lines_and_kegs(CellarStatus&);

// First expired, first out: by best-by date (kegs with one before those
// without), then by how long it has been ready, then the emptier first. Only
// kegs that can be tapped now or will be; those on tap are in use already.
void rank_use_next(CellarStatus&);

// Everything of severity advice and above, most severe first, then in the order
// of kegs, lines, places, bottles.
void gather_attention(CellarStatus&, const std::vector<Advice>& of_places_and_bottles);

// "K2" before "K10".
[[nodiscard]] bool natural_less(std::string_view, std::string_view);

}  // namespace ullage::cellar
