// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/cellar/trace.h"

#include <algorithm>
#include <set>

#include "core/cellar/status.h"

namespace ullage::cellar {
namespace {

class StintReader {
 public:
  void take(const Entry& entry) {
    entry_ = &entry;
    visit([this](const auto& p) { on(p); }, entry.payload);
  }
  [[nodiscard]] std::vector<Stint> done() { return std::move(stints_); }

 private:
  template <class Other>
  void on(const Other&) {}
  void on(const Filled& f) { begin(f.keg, f.batch); }
  void on(const Received& r) { begin(r.keg, r.batch); }
  void on(const Found& f) {
    // Found with the batch it has: the same stay, looked at again.
    if (f.contents != FoundContents::beer) {
      if (f.contents != FoundContents::unknown) end();
      return;
    }
    if (!f.batch) return;
    if (stints_.empty() || !stints_.back().still_there() || stints_.back().batch != *f.batch) {
      begin(f.keg, *f.batch);
      if (f.since && *f.since < stints_.back().from) stints_.back().from = *f.since;
    }
    if (f.line) serve(*f.line);
  }
  void on(const Tapped& t) { serve(t.line); }
  void on(const Emptied&) { end(); }
  void on(const Cleaned&) { end(); }

  void begin(KegId keg, BatchId batch) {
    end();
    Stint s;
    s.keg = keg;
    s.batch = batch;
    s.from = entry_->header.happened_at;
    s.entry = entry_->header.id;
    stints_.push_back(std::move(s));
  }
  void end() {
    if (!stints_.empty() && stints_.back().still_there()) {
      stints_.back().to = entry_->header.happened_at;
    }
  }
  void serve(LineId line) {
    if (stints_.empty() || !stints_.back().still_there()) return;
    std::vector<LineId>& lines = stints_.back().lines;
    if (std::find(lines.begin(), lines.end(), line) == lines.end()) lines.push_back(line);
  }

  const Entry* entry_ = nullptr;
  std::vector<Stint> stints_;
};

}  // namespace

std::vector<Stint> stints_of(KegId keg, const Journal& journal) {
  StintReader reader;
  for (const Entry* e : journal.story(subject(keg))) reader.take(*e);
  return reader.done();
}

std::vector<Stint> stints_of(BatchId batch, const Journal& journal) {
  std::set<SubjectRef> kegs;
  for (const Entry* e : journal.story(subject(batch))) {
    for (const SubjectRef& s : subjects_of(e->payload)) {
      if (s.kind == SubjectKind::keg) kegs.insert(s);
    }
  }
  std::vector<Stint> all;
  for (const SubjectRef& s : kegs) {
    for (Stint& stint : stints_of(KegId{s.uuid}, journal)) {
      if (stint.batch == batch) all.push_back(std::move(stint));
    }
  }
  std::stable_sort(all.begin(), all.end(),
                   [](const Stint& a, const Stint& b) { return a.from < b.from; });
  return all;
}

std::optional<Recall> recall_of(BatchId batch, const Journal& journal) {
  std::optional<Recall> found;
  for (const Entry* e : journal.story(subject(batch))) {
    if (const auto* r = get_if<BatchRecalled>(&e->payload)) {
      found = Recall{e->header.id, e->header.happened_at, r->reason, e->header.by};
    }
  }
  return found;
}

Act recall_act(BatchId batch, const std::string& reason, Instant when, const std::string& by,
               const CellarStatus& kegs, const Journal& journal) {
  Act act;
  act.by = by;
  act.drafts.push_back({Payload(BatchRecalled{batch, reason}), when, {}, {}});
  for (const Stint& stint : stints_of(batch, journal)) {
    const KegStatus* keg = kegs.find(stint.keg);
    if (!stint.still_there() || keg == nullptr || keg->quarantined) continue;
    act.drafts.push_back({Payload(Quarantined{stint.keg, reason}), when, {}, {}});
  }
  return act;
}

}  // namespace ullage::cellar
