// SPDX-License-Identifier: GPL-3.0-or-later
//
// The journal in memory: every entry in recorded order, and the story they
// tell: entries in force, in the order they happened.
//
// Rules of order and standing:
// - The story is ordered by (happened_at, sequence). A replacement takes the
//   sequence of the entry it replaces, so it stands where that one stood among
//   entries of the same second.
// - An entry and all its replacements, and theirs, are one chain. The latest of
//   them that is not struck is in force, the others are out of the story: so
//   striking a correction brings back what it corrected, unless that was struck
//   too. Those before the one in force count as replaced, struck or not.
// - Struck and Restored act on their target by sequence, whatever their own
//   time; the latest of them that is itself in force decides. Striking a Struck
//   entry therefore takes its effect away, and so on down any chain of undoing.
// - Struck and Restored entries are in no story: they speak about the journal.
// - Nothing is ever dropped: entries() has all of them.
#pragma once

#include <cstdint>
#include <deque>
#include <optional>
#include <set>
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
  Journal() = default;
  Journal(Journal&&) noexcept = default;
  Journal& operator=(Journal&&) noexcept = default;
  // A copy is as_of({}).
  Journal(const Journal&) = delete;
  Journal& operator=(const Journal&) = delete;
  ~Journal() = default;

  // Entries must come in rising sequence; std::logic_error if they do not.
  void append(Entry);
  void append(std::vector<Entry>);

  // In recorded order. An entry keeps its address for as long as the journal lives.
  [[nodiscard]] const std::deque<Entry>& entries() const { return entries_; }
  [[nodiscard]] const Entry* find(EntryId) const;
  [[nodiscard]] std::int64_t last_sequence() const;  // 0 when empty
  // An id the journal does not know counts as in force.
  [[nodiscard]] Standing standing(EntryId) const;
  // The correction now in force of an entry, and the entry that struck it.
  [[nodiscard]] const Entry* replaced_by(EntryId) const;
  [[nodiscard]] const Entry* struck_by(EntryId) const;
  // An entry with all that it corrects and all that corrects it, in recorded order.
  [[nodiscard]] std::vector<const Entry*> chain(EntryId) const;

  // In force, in story order. Valid until the next append.
  [[nodiscard]] std::span<const Entry* const> story(SubjectRef) const;  // about one thing
  [[nodiscard]] std::vector<const Entry*> story() const;                // all
  // Those of the register among them (is_of_register): a few among thousands.
  [[nodiscard]] std::span<const Entry* const> records(SubjectRef) const;
  // Whether a subject was ever spoken of.
  [[nodiscard]] bool knows(SubjectRef) const;
  [[nodiscard]] std::vector<SubjectRef> subjects() const;

  // Rises whenever an entry about the subject is appended, struck, restored or
  // replaced; 0 for a subject never spoken of. Without a subject: of any.
  [[nodiscard]] std::uint64_t revision(SubjectRef) const;
  [[nodiscard]] std::uint64_t revision() const { return revision_; }
  // The same, of records() alone.
  [[nodiscard]] std::uint64_t records_revision(SubjectRef) const;
  // Whether the subject's story up to a moment is the same as when its revision
  // was `revision`.
  [[nodiscard]] bool same_until(SubjectRef, std::uint64_t revision, Instant until) const;
  // The subjects whose revision rose after the journal's stood at `revision`.
  [[nodiscard]] std::set<SubjectRef> changed_since(std::uint64_t revision) const;

  // The journal as it stood: entries after the limits left out, strikes by
  // sequence honoured. Of a chain whose entry in force happened after the limit
  // nothing is left: we now know that it did not happen earlier.
  [[nodiscard]] Journal as_of(const AsOf&) const;
  // Some entries only, with their chains and with what struck or restored them.
  [[nodiscard]] Journal excerpt(const std::vector<const Entry*>& chosen) const;

 private:
  using Index = std::uint32_t;  // into entries_
  struct Place {
    std::int64_t order = 0;  // own sequence, or that of the first entry of its chain
    Standing standing = Standing::in_force;
    bool struck = false;
  };
  // Kept only for the few entries that were corrected or acted on.
  struct Links {
    std::vector<Index> acted_on_by;  // Struck and Restored, in recorded order
    std::optional<Index> first_of_chain;
    std::vector<Index> chain;  // held by the first of the chain
  };
  struct Key {
    Instant happened_at{};
    std::int64_t order = 0;
    friend auto operator<=>(const Key&, const Key&) = default;
  };
  struct Change {
    std::uint64_t revision = 0;
    Instant happened_at{};  // of the entry that came or went
  };
  struct Story {
    std::vector<Index> members;  // every entry that is about it, in recorded order
    std::uint64_t revision = 0;
    // Of changes none that a later one, further in the past, makes pointless: both
    // members rise.
    std::vector<Change> changes;
    bool built = false;
    std::vector<const Entry*> entries;  // in force, in story order
    std::vector<Key> keys;              // theirs
  };
  struct Stories {
    Story all, records;
  };

  [[nodiscard]] std::optional<Index> index_of(EntryId) const;
  [[nodiscard]] Key key(Index) const;
  // The chain that an entry belongs to; nullptr where it is alone.
  [[nodiscard]] const std::vector<Index>* chain_of(Index) const;
  [[nodiscard]] std::optional<Index> winner_of(const std::vector<Index>& chain) const;
  [[nodiscard]] bool outlives(Index, Instant limit) const;
  void gather(Index, std::set<Index>& into) const;
  void join_chain(Index replacement, Index target);
  [[nodiscard]] std::optional<Index> acted_on_by(Index) const;
  void decide_struck(Index target);
  void settle(Index);
  void set_standing(Index, Standing);
  template <class F>
  void for_stories_of(const Entry&, F&&);
  void enter_stories(Index);
  void leave_stories(Index, bool was_in);
  void build(Story&) const;
  void note_change(Story&, Instant happened_at) const;
  [[nodiscard]] std::span<const Entry* const> entries_of(Story&) const;
  static void put_in(Story&, const Entry&, Key);
  static void take_out(Story&, Key);

  std::deque<Entry> entries_;
  std::vector<Place> places_;
  std::unordered_map<EntryId, Index> by_id_;
  std::unordered_map<Index, Links> links_;
  mutable std::unordered_map<SubjectRef, Stories> stories_;
  mutable Story whole_;
  std::uint64_t revision_ = 0;
  std::vector<SubjectRef> scratch_;
};

}  // namespace ullage::cellar
