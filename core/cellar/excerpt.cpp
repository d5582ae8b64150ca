// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/cellar/excerpt.h"

#include <algorithm>
#include <set>
#include <vector>

#include "core/cellar/register.h"

namespace ullage::cellar {

namespace {

// Ids of entries that exist only while somebody types. No UUID of the file has
// this form: its version digits are not those of a random UUID.
EntryId passing_id(std::size_t number) {
  EntryId id;
  for (std::size_t i = 0; i < 4; ++i) {
    id.uuid.bytes[15 - i] = static_cast<std::uint8_t>(number >> (8U * i));
  }
  id.uuid.bytes[0] = 0xff;
  return id;
}

// The entry that this one strikes or brings back.
std::optional<EntryId> target_of(const Payload& payload) {
  if (const auto* s = get_if<Struck>(&payload)) return s->target;
  if (const auto* r = get_if<Restored>(&payload)) return r->target;
  return std::nullopt;
}

class Gathering {
 public:
  Gathering(const Journal& journal, KegId keg) : journal_(journal), keg_(subject(keg)) {}

  // Everything a payload names will be followed up.
  void names(const Payload& payload) {
    for (const SubjectRef& s : subjects_of(payload)) meet(s);
    for (const InstrumentId i : instruments_of(payload)) meet(subject(i));
  }
  void act(const Act& act) {
    for (const Draft& draft : act.drafts) names(draft.payload);
    for (const EntryId target : acted_on(act, journal_)) take(journal_.find(target));
  }
  std::vector<const Entry*> all() {
    meet(cellar_subject());
    meet(keg_);
    while (!waiting_.empty()) {
      const SubjectRef s = waiting_.back();
      waiting_.pop_back();
      for (const Entry* entry : journal_.story(s)) {
        if (s != keg_ && !matters(*entry, s)) continue;
        take(entry);
        const auto* tapped = get_if<Tapped>(&entry->payload);
        if (tapped != nullptr && s.kind == SubjectKind::line) drew_here(tapped->keg);
        // What a reading was taken with says how far it may be off.
        for (const InstrumentId i : instruments_of(entry->payload)) meet(subject(i));
        if (s == keg_ || registers(entry->payload) == s ||
            holds_alternative<BottleChanged>(entry->payload)) {
          names(entry->payload);
        }
      }
    }
    return chosen_;
  }

 private:
  void meet(SubjectRef s) {
    if (s.kind == SubjectKind::keg && s != keg_) return;
    if (met_.insert(s).second) waiting_.push_back(s);
  }
  void take(const Entry* entry) {
    if (entry != nullptr && taken_.insert(entry).second) chosen_.push_back(entry);
  }
  // How fast other kegs were drunk on the keg's line says when it runs empty: of
  // theirs, what tells how full they were put on and when they were empty.
  void drew_here(KegId other) {
    const SubjectRef about = subject(other);
    if (about == keg_ || !drew_.insert(about).second) return;
    for (const Entry* entry : journal_.story(about)) {
      const Payload& p = entry->payload;
      if (registers(p) == about || holds_alternative<Filled>(p) || holds_alternative<Received>(p) ||
          holds_alternative<Found>(p) || holds_alternative<Tapped>(p) ||
          holds_alternative<Untapped>(p) || holds_alternative<Emptied>(p)) {
        take(entry);
      }
    }
  }
  // Of what is said about a shared thing, leave out what was done to other kegs.
  bool matters(const Entry& entry, SubjectRef s) const {
    if (s.kind == SubjectKind::batch) return true;  // one beer, wherever it was sampled
    // Another keg put, or found, on the same line displaces this one.
    if (s.kind == SubjectKind::line &&
        (holds_alternative<Tapped>(entry.payload) || holds_alternative<Found>(entry.payload))) {
      return true;
    }
    const std::vector<SubjectRef> about = subjects_of(entry.payload);
    return std::none_of(about.begin(), about.end(), [&](const SubjectRef& other) {
      return other.kind == SubjectKind::keg && other != keg_;
    });
  }

  const Journal& journal_;
  SubjectRef keg_;
  std::set<SubjectRef> met_;
  std::set<SubjectRef> drew_;  // other kegs
  std::vector<SubjectRef> waiting_;
  std::set<const Entry*> taken_;
  std::vector<const Entry*> chosen_;
};

void log_into(Journal& part, const Act& act, std::int64_t sequence) {
  for (const Draft& draft : act.drafts) {
    Entry entry;
    entry.header.sequence = ++sequence;
    entry.header.id = passing_id(static_cast<std::size_t>(sequence));
    entry.header.happened_at = draft.happened_at;
    entry.header.recorded_at = draft.happened_at;
    entry.header.by = act.by;
    entry.header.replaces = draft.replaces;
    entry.header.note = draft.note;
    entry.payload = draft.payload;
    part.append(std::move(entry));
  }
}

}  // namespace

std::vector<EntryId> acted_on(const Act& act, const Journal& journal) {
  std::vector<EntryId> out;
  for (const Draft& draft : act.drafts) {
    if (draft.replaces) out.push_back(*draft.replaces);
    std::optional<EntryId> target = target_of(draft.payload);
    while (target) {
      out.push_back(*target);
      const Entry* entry = journal.find(*target);
      target = entry == nullptr ? std::nullopt : target_of(entry->payload);
    }
  }
  return out;
}

Journal excerpt_with(const Journal& journal, KegId keg, const Act& act) {
  Gathering gathering(journal, keg);
  gathering.act(act);
  Journal part = journal.excerpt(gathering.all());
  log_into(part, act, journal.last_sequence());
  return part;
}

Journal excerpt_with(const Journal& journal, LineId line, const Act& act) {
  std::vector<const Entry*> chosen;
  for (const Entry* entry : journal.story(subject(line))) chosen.push_back(entry);
  for (const EntryId target : acted_on(act, journal)) {
    if (const Entry* entry = journal.find(target)) chosen.push_back(entry);
  }
  Journal part = journal.excerpt(chosen);
  log_into(part, act, journal.last_sequence());
  return part;
}

}  // namespace ullage::cellar
