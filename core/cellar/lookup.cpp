// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/cellar/lookup.h"

#include <algorithm>
#include <ranges>

namespace ullage::cellar {

namespace {

// Records of other things may stand in the same story (a batch in its beer's),
// so the id has to match as well.
template <class Record, class Id>
std::optional<Record> last_record(std::span<const Entry* const> story, Id id, Id Record::* of) {
  for (const Entry* entry : std::views::reverse(story)) {
    if (const auto* record = get_if<Record>(&entry->payload); record && record->*of == id) {
      return *record;
    }
  }
  return std::nullopt;
}

}  // namespace

void Reliance::add_story(SubjectRef s, std::uint64_t revision) {
  stories_.insert_or_assign(s, Seen{revision});
}
void Reliance::add_records(SubjectRef s, std::uint64_t revision) {
  records_.insert_or_assign(s, revision);
}

// Of two readings of one story the older and the longer counts.
void Reliance::add(const Reliance& other) {
  for (const auto& [s, theirs] : other.stories_) {
    const auto [at, fresh] = stories_.try_emplace(s, theirs);
    if (fresh) continue;
    at->second.revision = std::min(at->second.revision, theirs.revision);
    at->second.until = std::max(at->second.until, theirs.until);
  }
  for (const auto& [s, revision] : other.records_) {
    const auto [at, fresh] = records_.try_emplace(s, revision);
    if (!fresh) at->second = std::min(at->second, revision);
  }
}

Reliance Reliance::until(Instant end) const {
  Reliance out = *this;
  for (auto& [s, seen] : out.stories_) seen.until = std::min(seen.until, end);
  return out;
}

bool Reliance::holds(const Journal& journal) const {
  const auto stands = [&](const auto& story) {
    const Seen& seen = story.second;
    return journal.revision(story.first) == seen.revision ||
           (seen.until < Instant::max() &&
            journal.same_until(story.first, seen.revision, seen.until));
  };
  return std::all_of(stories_.begin(), stories_.end(), stands) &&
         std::all_of(records_.begin(), records_.end(), [&](const auto& known) {
           return journal.records_revision(known.first) == known.second;
         });
}

void Reliance::renew(const Journal& journal) {
  for (auto& [s, seen] : stories_) seen.revision = journal.revision(s);
  for (auto& [s, revision] : records_) revision = journal.records_revision(s);
}

std::span<const Entry* const> Lookup::story(SubjectRef s) {
  relies_on_.add_story(s, journal_.revision(s));
  return journal_.story(s);
}

std::span<const Entry* const> Lookup::records(SubjectRef s) {
  relies_on_.add_records(s, journal_.records_revision(s));
  return journal_.records(s);
}

std::optional<KegRecord> Lookup::find(KegId id) {
  return last_record(records(subject(id)), id, &KegRecord::keg);
}
std::optional<BeerRecord> Lookup::find(BeerId id) {
  return last_record(records(subject(id)), id, &BeerRecord::beer);
}
std::optional<BatchRecord> Lookup::find(BatchId id) {
  return last_record(records(subject(id)), id, &BatchRecord::batch);
}
std::optional<PlaceRecord> Lookup::find(PlaceId id) {
  return last_record(records(subject(id)), id, &PlaceRecord::place);
}
std::optional<LineRecord> Lookup::find(LineId id) {
  return last_record(records(subject(id)), id, &LineRecord::line);
}
std::optional<BottleRecord> Lookup::find(BottleId id) {
  return last_record(records(subject(id)), id, &BottleRecord::bottle);
}
std::optional<RegulatorRecord> Lookup::find(RegulatorId id) {
  return last_record(records(subject(id)), id, &RegulatorRecord::regulator);
}
std::optional<InstrumentRecord> Lookup::find(InstrumentId id) {
  return last_record(records(subject(id)), id, &InstrumentRecord::instrument);
}
std::optional<SegmentRecord> Lookup::find(SegmentId id) {
  return last_record(records(subject(id)), id, &SegmentRecord::segment);
}
std::optional<RuleRecord> Lookup::find(RuleId id) {
  return last_record(records(subject(id)), id, &RuleRecord::rule);
}
std::optional<CellarDescribed> Lookup::cellar() {
  const auto entries = records(SubjectRef{});
  for (const Entry* entry : std::views::reverse(entries)) {
    if (const auto* c = get_if<CellarDescribed>(&entry->payload)) return *c;
  }
  return std::nullopt;
}

}  // namespace ullage::cellar
