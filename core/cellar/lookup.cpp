// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/cellar/lookup.h"

namespace ullage::cellar {

namespace {

// Records of other things may stand in the same story (a batch in its beer's),
// so the id has to match as well.
template <class Record, class Id>
std::optional<Record> last_record(std::span<const Entry* const> story, Id id, Id Record::* of) {
  for (auto at = story.rbegin(); at != story.rend(); ++at) {
    if (const auto* record = get_if<Record>(&(*at)->payload); record && record->*of == id) {
      return *record;
    }
  }
  return std::nullopt;
}

}  // namespace

std::span<const Entry* const> Lookup::story(SubjectRef s) {
  relies_on_.add(s, journal_.revision(s));
  return journal_.story(s);
}

std::optional<KegRecord> Lookup::find(KegId id) {
  return last_record(story(subject(id)), id, &KegRecord::keg);
}
std::optional<BeerRecord> Lookup::find(BeerId id) {
  return last_record(story(subject(id)), id, &BeerRecord::beer);
}
std::optional<BatchRecord> Lookup::find(BatchId id) {
  return last_record(story(subject(id)), id, &BatchRecord::batch);
}
std::optional<PlaceRecord> Lookup::find(PlaceId id) {
  return last_record(story(subject(id)), id, &PlaceRecord::place);
}
std::optional<LineRecord> Lookup::find(LineId id) {
  return last_record(story(subject(id)), id, &LineRecord::line);
}
std::optional<BottleRecord> Lookup::find(BottleId id) {
  return last_record(story(subject(id)), id, &BottleRecord::bottle);
}
std::optional<RegulatorRecord> Lookup::find(RegulatorId id) {
  return last_record(story(subject(id)), id, &RegulatorRecord::regulator);
}
std::optional<InstrumentRecord> Lookup::find(InstrumentId id) {
  return last_record(story(subject(id)), id, &InstrumentRecord::instrument);
}
std::optional<SegmentRecord> Lookup::find(SegmentId id) {
  return last_record(story(subject(id)), id, &SegmentRecord::segment);
}
std::optional<RuleRecord> Lookup::find(RuleId id) {
  return last_record(story(subject(id)), id, &RuleRecord::rule);
}
std::optional<CellarDescribed> Lookup::cellar() {
  const auto entries = story(SubjectRef{});
  for (auto at = entries.rbegin(); at != entries.rend(); ++at) {
    if (const auto* c = get_if<CellarDescribed>(&(*at)->payload)) return *c;
  }
  return std::nullopt;
}

}  // namespace ullage::cellar
