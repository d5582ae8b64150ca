// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/cellar/journal.h"

#include <algorithm>
#include <stdexcept>

namespace ullage::cellar {

namespace {

bool speaks_of_journal(const Payload& payload) {
  return holds_alternative<Struck>(payload) || holds_alternative<Restored>(payload);
}

std::optional<EntryId> target_of(const Payload& payload) {
  if (const auto* struck = get_if<Struck>(&payload)) return struck->target;
  if (const auto* restored = get_if<Restored>(&payload)) return restored->target;
  return std::nullopt;
}

}  // namespace

void Journal::append(Entry entry) {
  if (!entries_.empty() && entry.header.sequence <= last_sequence()) {
    throw std::logic_error("journal entries must come in rising sequence");
  }
  const auto index = static_cast<Index>(entries_.size());
  const auto corrected = entry.header.replaces ? index_of(*entry.header.replaces) : std::nullopt;
  entries_.push_back(std::move(entry));
  const Entry& added = entries_.back();
  places_.push_back({.order = added.header.sequence});
  const auto acted_on = acted_on_by(index);
  by_id_.emplace(added.header.id, index);
  if (!speaks_of_journal(added.payload)) {
    for_stories_of(added, [&](Story& story) { story.members.push_back(index); });
    whole_.members.push_back(index);
  }

  ++revision_;
  if (acted_on) links_[*acted_on].acted_on_by.push_back(index);
  if (corrected) {
    // Takes over from the chain it joins.
    join_chain(index, *corrected);
    places_[index].standing = Standing::replaced;
    settle(index);
  } else {
    enter_stories(index);
    if (acted_on) decide_struck(*acted_on);
  }
}

void Journal::append(std::vector<Entry> entries) {
  places_.reserve(places_.size() + entries.size());
  by_id_.reserve(by_id_.size() + entries.size());
  for (Entry& entry : entries) append(std::move(entry));
}

std::optional<Journal::Index> Journal::index_of(EntryId id) const {
  const auto found = by_id_.find(id);
  return found == by_id_.end() ? std::nullopt : std::optional(found->second);
}

const Entry* Journal::find(EntryId id) const {
  const auto index = index_of(id);
  return index ? &entries_[*index] : nullptr;
}

std::int64_t Journal::last_sequence() const {
  return entries_.empty() ? 0 : entries_.back().header.sequence;
}

Standing Journal::standing(EntryId id) const {
  const auto index = index_of(id);
  return index ? places_[*index].standing : Standing::in_force;
}

std::vector<const Entry*> Journal::chain(EntryId id) const {
  const auto index = index_of(id);
  if (!index) return {};
  const auto* members = chain_of(*index);
  if (members == nullptr) return {&entries_[*index]};
  std::vector<const Entry*> all;
  for (const Index member : *members) {
    all.push_back(&entries_[member]);
  }
  return all;
}

const Entry* Journal::replaced_by(EntryId id) const {
  const auto index = index_of(id);
  if (!index) return nullptr;
  const auto* members = chain_of(*index);
  if (members == nullptr) return nullptr;
  const auto winner = winner_of(*members);
  return winner && *winner > *index ? &entries_[*winner] : nullptr;
}

const Entry* Journal::struck_by(EntryId id) const {
  const auto index = index_of(id);
  if (!index || !places_[*index].struck) return nullptr;
  const std::vector<Index>& acts = links_.at(*index).acted_on_by;
  const auto decisive = std::find_if(acts.rbegin(), acts.rend(), [&](Index act) {
    return places_[act].standing == Standing::in_force;
  });
  return decisive == acts.rend() ? nullptr : &entries_[*decisive];
}

void Journal::join_chain(Index replacement, Index target) {
  Links& of_target = links_[target];
  if (!of_target.first_of_chain) {
    of_target.first_of_chain = target;
    of_target.chain.push_back(target);
  }
  const Index first = *of_target.first_of_chain;
  links_[replacement].first_of_chain = first;
  links_[first].chain.push_back(replacement);
  places_[replacement].order = places_[first].order;
}

const std::vector<Journal::Index>* Journal::chain_of(Index index) const {
  const auto links = links_.find(index);
  if (links == links_.end()) return nullptr;
  const std::optional<Index>& first = links->second.first_of_chain;
  return first ? &links_.at(*first).chain : nullptr;
}

std::optional<Journal::Index> Journal::winner_of(const std::vector<Index>& chain) const {
  const auto latest = std::find_if(chain.rbegin(), chain.rend(),
                                   [&](Index member) { return !places_[member].struck; });
  return latest == chain.rend() ? std::nullopt : std::optional(*latest);
}

// What a Struck or Restored works on: always an earlier entry.
std::optional<Journal::Index> Journal::acted_on_by(Index index) const {
  const auto target = target_of(entries_[index].payload);
  if (!target) return std::nullopt;
  const auto found = index_of(*target);
  return found && *found < index ? found : std::nullopt;
}

void Journal::decide_struck(Index target) {
  bool struck = false;
  for (const Index act : links_.at(target).acted_on_by) {
    if (places_[act].standing == Standing::in_force) {
      struck = holds_alternative<Struck>(entries_[act].payload);
    }
  }
  if (struck == places_[target].struck) return;
  places_[target].struck = struck;
  settle(target);
}

// Works out the standing of an entry and of its chain.
void Journal::settle(Index index) {
  const auto* members = chain_of(index);
  if (members == nullptr) {
    set_standing(index, places_[index].struck ? Standing::struck : Standing::in_force);
    return;
  }
  const std::vector<Index> chain = *members;
  const auto winner = winner_of(chain);
  // Whoever leaves the story leaves first: the members of a chain may share a key.
  for (const Index member : chain) {
    if (member == winner) continue;
    const bool corrected = winner && member < *winner;
    set_standing(member, corrected ? Standing::replaced : Standing::struck);
  }
  if (winner) set_standing(*winner, Standing::in_force);
}

void Journal::set_standing(Index index, Standing standing) {
  const Standing before = places_[index].standing;
  if (before == standing) return;
  places_[index].standing = standing;
  if (standing == Standing::in_force) {
    enter_stories(index);
  } else {
    leave_stories(index, before == Standing::in_force);
  }
  // A strike that lost or regained its own standing changes what it acts on.
  if (const auto acted_on = acted_on_by(index)) decide_struck(*acted_on);
}

Journal::Key Journal::key(Index index) const {
  return {entries_[index].header.happened_at, places_[index].order};
}

template <class F>
void Journal::for_stories_of(const Entry& entry, F&& f) {
  const bool record = is_of_register(entry.payload);
  subjects_of(entry.payload, scratch_);
  for (const SubjectRef& s : scratch_) {
    Stories& stories = stories_[s];
    f(stories.all);
    if (record) f(stories.records);
  }
}

void Journal::note_change(Story& story, Instant happened_at) const {
  story.revision = revision_;
  std::vector<Change>& all = story.changes;
  while (!all.empty() && all.back().happened_at >= happened_at) all.pop_back();
  all.push_back({revision_, happened_at});
}

void Journal::enter_stories(Index index) {
  const Entry& entry = entries_[index];
  if (speaks_of_journal(entry.payload)) return;
  for_stories_of(entry, [&](Story& story) {
    note_change(story, entry.header.happened_at);
    put_in(story, entry, key(index));
  });
  put_in(whole_, entry, key(index));
}

// An entry that was out already only changes why: views show which, so the
// revision rises all the same.
void Journal::leave_stories(Index index, bool was_in) {
  const Entry& entry = entries_[index];
  if (speaks_of_journal(entry.payload)) return;
  for_stories_of(entry, [&](Story& story) {
    note_change(story, entry.header.happened_at);
    if (was_in) take_out(story, key(index));
  });
  if (was_in) take_out(whole_, key(index));
}

// Keys are unique within a story: of a chain, which shares one order, only one
// entry is in force.
void Journal::put_in(Story& story, const Entry& entry, Key key) {
  if (!story.built) return;
  const auto at = std::lower_bound(story.keys.begin(), story.keys.end(), key);
  story.entries.insert(story.entries.begin() + (at - story.keys.begin()), &entry);
  story.keys.insert(at, key);
}

void Journal::take_out(Story& story, Key key) {
  if (!story.built) return;
  const auto at = std::lower_bound(story.keys.begin(), story.keys.end(), key);
  if (at == story.keys.end() || *at != key) return;
  story.entries.erase(story.entries.begin() + (at - story.keys.begin()));
  story.keys.erase(at);
}

void Journal::build(Story& story) const {
  std::vector<Index> in_force;
  in_force.reserve(story.members.size());
  for (const Index member : story.members) {
    if (places_[member].standing == Standing::in_force) in_force.push_back(member);
  }
  const auto earlier = [this](Index a, Index b) { return key(a) < key(b); };
  if (!std::is_sorted(in_force.begin(), in_force.end(), earlier)) {
    std::sort(in_force.begin(), in_force.end(), earlier);
  }
  story.entries.clear();
  story.keys.clear();
  story.entries.reserve(in_force.size());
  story.keys.reserve(in_force.size());
  for (const Index member : in_force) {
    story.entries.push_back(&entries_[member]);
    story.keys.push_back(key(member));
  }
  story.built = true;
}

std::span<const Entry* const> Journal::entries_of(Story& story) const {
  if (!story.built) build(story);
  return story.entries;
}

std::span<const Entry* const> Journal::story(SubjectRef s) const {
  const auto found = stories_.find(s);
  if (found == stories_.end()) return {};
  return entries_of(found->second.all);
}

std::span<const Entry* const> Journal::records(SubjectRef s) const {
  const auto found = stories_.find(s);
  if (found == stories_.end()) return {};
  return entries_of(found->second.records);
}

std::vector<const Entry*> Journal::story() const {
  if (!whole_.built) build(whole_);
  return whole_.entries;
}

bool Journal::knows(SubjectRef s) const { return stories_.contains(s); }

std::vector<SubjectRef> Journal::subjects() const {
  std::vector<SubjectRef> all;
  all.reserve(stories_.size());
  for (const auto& [s, story] : stories_) all.push_back(s);
  std::sort(all.begin(), all.end());
  return all;
}

std::uint64_t Journal::revision(SubjectRef s) const {
  const auto found = stories_.find(s);
  return found == stories_.end() ? 0 : found->second.all.revision;
}

std::uint64_t Journal::records_revision(SubjectRef s) const {
  const auto found = stories_.find(s);
  return found == stories_.end() ? 0 : found->second.records.revision;
}

bool Journal::same_until(SubjectRef s, std::uint64_t revision, Instant until) const {
  const auto found = stories_.find(s);
  if (found == stories_.end()) return true;
  const std::vector<Change>& all = found->second.all.changes;
  const auto since =
      std::upper_bound(all.begin(), all.end(), revision,
                       [](std::uint64_t r, const Change& c) { return r < c.revision; });
  return since == all.end() || since->happened_at > until;
}

std::set<SubjectRef> Journal::changed_since(std::uint64_t revision) const {
  std::set<SubjectRef> changed;
  for (const auto& [s, story] : stories_) {
    if (story.all.revision > revision) changed.insert(s);
  }
  return changed;
}

bool Journal::outlives(Index index, Instant limit) const {
  if (speaks_of_journal(entries_[index].payload)) return false;
  if (entries_[index].header.happened_at > limit) return true;
  const auto* members = chain_of(index);
  if (members == nullptr) return false;
  const auto winner = winner_of(*members);
  return winner && entries_[*winner].header.happened_at > limit;
}

// Whatever was said about an entry belongs to it: its chain, and the strikes.
void Journal::gather(Index index, std::set<Index>& into) const {
  if (!into.insert(index).second) return;
  const auto links = links_.find(index);
  if (links == links_.end()) return;
  for (const Index act : links->second.acted_on_by) gather(act, into);
  const auto* members = chain_of(index);
  if (members == nullptr) return;
  for (const Index member : *members) gather(member, into);
}

Journal Journal::excerpt(const std::vector<const Entry*>& chosen) const {
  std::set<Index> indexes;
  for (const Entry* entry : chosen) {
    if (const auto index = index_of(entry->header.id)) gather(*index, indexes);
  }
  Journal part;
  for (const Index index : indexes) part.append(entries_[index]);
  return part;
}

Journal Journal::as_of(const AsOf& limits) const {
  Journal recorded;
  for (const Entry& entry : entries_) {
    if (limits.recorded_through && entry.header.sequence > *limits.recorded_through) break;
    recorded.append(entry);
  }
  if (!limits.happened_by) return recorded;
  std::vector<bool> stays(recorded.entries_.size());
  for (Index i = 0; i < stays.size(); ++i) stays[i] = !recorded.outlives(i, *limits.happened_by);
  Journal known;
  for (Index i = 0; i < stays.size(); ++i) {
    if (stays[i]) known.append(std::move(recorded.entries_[i]));
  }
  return known;
}

}  // namespace ullage::cellar
