// SPDX-License-Identifier: GPL-3.0-or-later
//
// Made-up entries of every kind, through the fields the kinds describe, about
// the things of a small made-up cellar. One number makes one entry, always the
// same: so a failing sequence can be cut down to the numbers that matter.
#pragma once

#include <cstdint>
#include <random>
#include <string>
#include <vector>

#include "core/cellar/entry.h"
#include "tests/support/entry_maker.h"

namespace ullage::testing {

// The things that entries may be about. Two of these with different families
// share nothing but the cellar itself.
struct RandomThings {
  std::vector<cellar::KegId> kegs;
  std::vector<cellar::BeerId> beers;
  std::vector<cellar::BatchId> batches;
  std::vector<cellar::PlaceId> places;
  std::vector<cellar::LineId> lines;
  std::vector<cellar::BottleId> bottles;
  std::vector<cellar::RegulatorId> regulators;
  std::vector<cellar::InstrumentId> instruments;
  std::vector<cellar::SegmentId> segments;
  std::vector<cellar::RuleId> rules;
};

[[nodiscard]] RandomThings random_things(std::uint8_t family);
// Their records, in an order in which they can be logged.
[[nodiscard]] std::vector<cellar::Payload> records_of(const RandomThings&, std::uint8_t family);

// An entry of any kind that is not about the journal itself; records keep their
// names, so that no two things share one. Sequence 0.
[[nodiscard]] cellar::Entry random_entry(std::uint32_t number, const RandomThings&);

}  // namespace ullage::testing
