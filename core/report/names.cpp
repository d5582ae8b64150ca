// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/report/names.h"

#include <fmt/format.h>

#include <algorithm>

namespace ullage::report {
namespace {

using cellar::CellarStatus;
using cellar::SubjectKind;
using cellar::SubjectRef;

SubjectRef subject_of(const cellar::BeerRecord& r) { return cellar::subject(r.beer); }
SubjectRef subject_of(const cellar::BatchRecord& r) { return cellar::subject(r.batch); }
SubjectRef subject_of(const cellar::RegulatorRecord& r) { return cellar::subject(r.regulator); }
SubjectRef subject_of(const cellar::InstrumentRecord& r) { return cellar::subject(r.instrument); }

// The record of `id` among plain records, or null.
template <class Records, class Id>
const typename Records::value_type* record_of(const Records& records, Id id) {
  const auto at = std::find_if(records.begin(), records.end(),
                               [&](const auto& r) { return cellar::subject(id) == subject_of(r); });
  return at == records.end() ? nullptr : &*at;
}

template <class Found>
std::string named(const Found* found, const char* otherwise) {
  return found ? found->name : std::string(otherwise);
}
template <class Found>
std::string record_named(const Found* found, const char* otherwise) {
  return found ? found->record.name : std::string(otherwise);
}

std::string rule_name(cellar::RuleId id, const CellarStatus& status) {
  const auto at = std::find_if(status.rules.begin(), status.rules.end(),
                               [&](const auto& r) { return r.rule == id; });
  if (at == status.rules.end()) return "unknown rule";
  std::string words(cellar::to_word(at->work));
  std::replace(words.begin(), words.end(), '_', ' ');
  return "Rule: " + words;
}

}  // namespace

std::string name_of(const SubjectRef& ref, const CellarStatus& status) {
  switch (ref.kind) {
    case SubjectKind::keg: {
      const cellar::KegStatus* keg = status.find(cellar::KegId{ref.uuid});
      return keg ? keg->record.tag : "unknown keg";
    }
    case SubjectKind::line:
      return record_named(status.find(cellar::LineId{ref.uuid}), "unknown line");
    case SubjectKind::place:
      return record_named(status.find(cellar::PlaceId{ref.uuid}), "unknown place");
    case SubjectKind::bottle:
      return record_named(status.find(cellar::BottleId{ref.uuid}), "unknown bottle");
    case SubjectKind::beer:
      return named(record_of(status.beers, cellar::BeerId{ref.uuid}), "unknown beer");
    case SubjectKind::batch:
      return named(record_of(status.batches, cellar::BatchId{ref.uuid}), "unknown batch");
    case SubjectKind::regulator:
      return named(record_of(status.regulators, cellar::RegulatorId{ref.uuid}),
                   "unknown regulator");
    case SubjectKind::instrument:
      return named(record_of(status.instruments, cellar::InstrumentId{ref.uuid}),
                   "unknown instrument");
    case SubjectKind::segment: {
      const auto at = std::find_if(status.segments.begin(), status.segments.end(),
                                   [&](const auto& s) { return s.segment.uuid == ref.uuid; });
      if (at == status.segments.end()) return "unknown piece of hose";
      return fmt::format("{}, piece {}", name_of(cellar::subject(at->line), status), at->position);
    }
    case SubjectKind::rule:
      return rule_name(cellar::RuleId{ref.uuid}, status);
    case SubjectKind::cellar:
      return status.cellar ? status.cellar->name : "the cellar";
  }
  return "unknown";
}

std::string batch_with_beer(cellar::BatchId id, const CellarStatus& status) {
  const cellar::BatchRecord* batch = record_of(status.batches, id);
  if (!batch) return "unknown batch";
  const cellar::BeerRecord* beer = record_of(status.beers, batch->beer);
  return beer ? fmt::format("{}, {}", beer->name, batch->name) : batch->name;
}

std::vector<std::string> things_named(const cellar::Payload& payload, const CellarStatus& names) {
  std::vector<std::string> told;
  for (const SubjectRef& subject : cellar::subjects_of(payload)) {
    if (subject.kind == SubjectKind::instrument) continue;
    std::string name = name_of(subject, names);
    if (std::find(told.begin(), told.end(), name) == told.end()) told.push_back(std::move(name));
  }
  return told;
}

}  // namespace ullage::report
