// SPDX-License-Identifier: GPL-3.0-or-later
//
// What a derivation reads of the journal. Every story and record goes through
// here, so that afterwards it is known what the result relies on: when none of
// those revisions has risen, the result still stands.
#pragma once

#include <cstdint>
#include <map>
#include <optional>
#include <span>
#include <vector>

#include "core/cellar/journal.h"

namespace ullage::cellar {

// What something was derived from, at which revision.
class Reliance {
 public:
  void add_story(SubjectRef, std::uint64_t revision);
  void add_records(SubjectRef, std::uint64_t revision);
  void add(const Reliance& other);
  // The same, of stories no more than what happened up to a moment.
  [[nodiscard]] Reliance until(Instant) const;
  [[nodiscard]] bool holds(const Journal&) const;
  // It holds, so it may as well have been read now: later changes are told apart
  // from those that did not matter.
  void renew(const Journal&);

 private:
  struct Seen {
    std::uint64_t revision = 0;
    Instant until = Instant::max();
  };
  std::map<SubjectRef, Seen> stories_;
  std::map<SubjectRef, std::uint64_t> records_;
};

class Lookup {
 public:
  explicit Lookup(const Journal& journal) : journal_(journal) {}

  [[nodiscard]] std::span<const Entry* const> story(SubjectRef);
  // What the register says of it: relies on that alone, not on all that is done.
  [[nodiscard]] std::span<const Entry* const> records(SubjectRef);
  [[nodiscard]] const Entry* entry(EntryId id) const { return journal_.find(id); }

  // The last record of a thing; nullopt when it was never registered (its
  // registration was struck, or a file came without it).
  [[nodiscard]] std::optional<KegRecord> find(KegId);
  [[nodiscard]] std::optional<BeerRecord> find(BeerId);
  [[nodiscard]] std::optional<BatchRecord> find(BatchId);
  [[nodiscard]] std::optional<PlaceRecord> find(PlaceId);
  [[nodiscard]] std::optional<LineRecord> find(LineId);
  [[nodiscard]] std::optional<BottleRecord> find(BottleId);
  [[nodiscard]] std::optional<RegulatorRecord> find(RegulatorId);
  [[nodiscard]] std::optional<InstrumentRecord> find(InstrumentId);
  [[nodiscard]] std::optional<SegmentRecord> find(SegmentId);
  [[nodiscard]] std::optional<RuleRecord> find(RuleId);
  [[nodiscard]] std::optional<CellarDescribed> cellar();

  void rely_on(const Reliance& other) { relies_on_.add(other); }
  [[nodiscard]] const Reliance& relies_on() const { return relies_on_; }

 private:
  const Journal& journal_;
  Reliance relies_on_;
};

}  // namespace ullage::cellar
