// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/cellar/lock_end.h"

#include <set>

#include "core/cellar/excerpt.h"
#include "core/cellar/line_timeline.h"

namespace ullage::cellar {

std::vector<LineLock> locks_ended_by(const Act& act, const Journal& journal) {
  std::set<LineId> lines;
  for (const EntryId target : acted_on(act, journal)) {
    const Entry* entry = journal.find(target);
    if (entry == nullptr) continue;
    for (const SubjectRef& about : subjects_of(entry->payload)) {
      if (about.kind == SubjectKind::line) lines.insert(LineId{about.uuid});
    }
  }
  std::vector<LineLock> ended;
  for (const LineId line : lines) {
    const std::optional<LineLock> now = line_timeline(line, journal).lock;
    if (now && !line_timeline(line, excerpt_with(journal, line, act)).lock) ended.push_back(*now);
  }
  return ended;
}

namespace {

// A strike of each of these, at the moment of the newest entry: the order of strikes is
// that of the file.
Act striking(const std::vector<EntryId>& targets, const Journal& journal) {
  Act act;
  for (const EntryId target : targets) {
    act.drafts.push_back(
        {Payload(Struck{target, {}}), journal.entries().back().header.happened_at, {}, {}});
  }
  return act;
}

}  // namespace

Act undoing(ActId id, const Journal& journal) {
  std::vector<EntryId> targets;
  for (const Entry& entry : journal.entries()) {
    if (entry.header.act == id && journal.struck_by(entry.header.id) == nullptr)
      targets.push_back(entry.header.id);
  }
  return striking(targets, journal);
}

Act redoing(ActId id, const Journal& journal) {
  std::vector<EntryId> targets;
  for (const Entry& entry : journal.entries()) {
    if (entry.header.act != id) continue;
    if (const Entry* strike = journal.struck_by(entry.header.id))
      targets.push_back(strike->header.id);
  }
  return striking(targets, journal);
}

}  // namespace ullage::cellar
