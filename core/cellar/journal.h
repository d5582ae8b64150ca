// SPDX-License-Identifier: GPL-3.0-or-later
//
// The journal in memory: every entry in recorded order, and the story they
// tell: entries in force, in the order they happened. Rules of order:
// (happened_at, sequence); a replacement takes the sequence of what it
// replaces; a struck or replaced entry is out of the story but stays in the
// journal; strikes act by sequence, whatever their own time.
#pragma once

#include <cstdint>
#include <optional>
#include <span>
#include <unordered_map>
#include <vector>

#include "core/cellar/entry.h"

namespace ullage::cellar {

enum class Standing { in_force, struck, replaced };

// What may be asked of the past.
struct AsOf {
  std::optional<Instant> happened_by;            // what we now know about then
  std::optional<std::int64_t> recorded_through;  // what had been recorded by then (sequence)
};

class Journal {
 public:
  // Entries must come in rising sequence.
  void append(Entry);
  void append(std::vector<Entry>);

  [[nodiscard]] const std::vector<Entry>& entries() const { return entries_; }
  [[nodiscard]] const Entry* find(EntryId) const;
  [[nodiscard]] std::int64_t last_sequence() const;
  [[nodiscard]] Standing standing(EntryId) const;
  // The latest correction of an entry, and the entry that struck it.
  [[nodiscard]] const Entry* replaced_by(EntryId) const;
  [[nodiscard]] const Entry* struck_by(EntryId) const;

  // In force, in story order. Valid until the next append.
  [[nodiscard]] std::span<const Entry* const> story(SubjectRef) const;  // about one thing
  [[nodiscard]] std::vector<const Entry*> story() const;                // all
  // Rises whenever an entry about the subject is appended, struck or replaced.
  [[nodiscard]] std::uint64_t revision(SubjectRef) const;

  // The journal as it stood: entries after the limits left out, strikes by
  // sequence honoured.
  [[nodiscard]] Journal as_of(const AsOf&) const;

 private:
  struct Place {
    std::size_t index = 0;
    Instant happened_at{};
    std::int64_t order = 0;  // own sequence, or that of the entry it replaces
    Standing standing = Standing::in_force;
    std::optional<std::size_t> struck_by, replaced_by;
  };
  void take_in(std::size_t index);
  void set_struck(EntryId target, std::size_t by, bool struck);
  void refresh(std::size_t index);
  void rebuild_subject(SubjectRef) const;

  std::vector<Entry> entries_;
  std::vector<Place> places_;
  std::unordered_map<EntryId, std::size_t> by_id_;
  struct SubjectIndex {
    std::vector<std::size_t> members;  // every entry that names the subject
    std::uint64_t revision = 0;
    bool stale = true;
    std::vector<const Entry*> story;
  };
  mutable std::unordered_map<SubjectRef, SubjectIndex> subjects_;
};

}  // namespace ullage::cellar
