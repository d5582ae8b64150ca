// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/cellar/line_timeline.h"

#include <algorithm>
#include <tuple>

#include "core/cellar/typed_names.h"

namespace ullage::cellar {

namespace {

enum class LineChemical { none, acid, chlorine };

class LineStory {
 public:
  explicit LineStory(LineTimeline& out) : out_(out) {}

  void take(const Entry& entry) {
    entry_ = &entry;
    header_ = &entry.header;
    visit([this](const auto& p) { on(p); }, entry.payload);
  }

 private:
  template <class Other>
  void on(const Other&) {}

  void on(const LineRecord& r) {
    if (!out_.registered) out_.registered_at = header_->happened_at;
    out_.registered = true;
    if (hose_ && !same_hose(*hose_, r)) out_.pours.clear();
    hose_ = r;
  }
  void on(const SegmentRecord& segment) {
    if (segment.line != out_.record.line) return;
    out_.pours.clear();
    std::erase_if(out_.segments,
                  [&](const SegmentRecord& old) { return old.segment == segment.segment; });
    if (segment.in_use) out_.segments.push_back(segment);
  }
  void on(const TimedPour&) { out_.pours.push_back(entry_); }
  void on(const LineLocked& l) {
    if (!out_.lock) lock(l.agent, l.agent_name);
    chemical(l.agent);
  }
  void on(const LineCleaned& c) {
    const bool passed = c.flush_check != FlushCheck::none && c.flush_passed == true;
    chemical(c.agent);
    if (c.agent == LineAgent::water) return;
    out_.last_cleaned = header_->happened_at;
    if (passed) {
      last_ = LineChemical::none;
    } else if (!out_.lock) {
      lock(c.agent, c.agent_name);
    }
  }
  void on(const WorkDone& w) { used(w.agent_kind); }
  void on(const LineReleased& r) {
    // The line's rule as it stood then: a stricter one, set since, locks nothing again.
    const LineRecord& then = hose_ ? *hose_ : out_.record;
    if (!r.passed || is_blank_text(r.checked_by)) return;
    if (then.second_initials_to_release && !signed_by_two(r)) return;
    out_.lock.reset();
    last_ = LineChemical::none;
    out_.acid_after_chlorine.reset();
  }
  void on(const Tapped& t) {
    out_.last_tapped = t.keg;
    out_.tapped_at = header_->happened_at;
  }
  void on(const Found& f) {
    out_.last_tapped = f.keg;
    out_.tapped_at = header_->happened_at;
  }

  void lock(LineAgent agent, const std::string& name) {
    out_.lock = LineLock{out_.record.line,     out_.record.name, name,       agent,
                         header_->happened_at, header_->by,      header_->id};
  }
  void used(LineAgent agent) {
    if (agent == LineAgent::acid) out_.chemicals.acid = header_->happened_at;
    if (agent == LineAgent::chlorinated) out_.chemicals.chlorine = header_->happened_at;
  }
  void chemical(LineAgent agent) {
    used(agent);
    const LineChemical now = agent == LineAgent::acid          ? LineChemical::acid
                             : agent == LineAgent::chlorinated ? LineChemical::chlorine
                                                               : LineChemical::none;
    if (agent == LineAgent::water) {
      last_ = LineChemical::none;
      out_.acid_after_chlorine.reset();
      return;
    }
    if (now != LineChemical::none && last_ != LineChemical::none && now != last_) {
      out_.acid_after_chlorine = header_->id;
      out_.acid_after_chlorine_at = header_->happened_at;
    }
    if (now != LineChemical::none) last_ = now;
  }

  static bool same_hose(const LineRecord& a, const LineRecord& b) {
    const auto hose = [](const LineRecord& r) {
      return std::tie(r.length, r.bore, r.rise, r.coupler_loss, r.shank_loss, r.faucet_loss,
                      r.restrictor_length, r.restrictor_bore);
    };
    return hose(a) == hose(b) && a.material == b.material;
  }

  LineTimeline& out_;
  const Entry* entry_ = nullptr;
  const EntryHeader* header_ = nullptr;
  std::optional<LineRecord> hose_;
  LineChemical last_ = LineChemical::none;
};

}  // namespace

bool signed_by_two(const LineReleased& release) {
  return !is_blank_text(release.countersigned_by) &&
         folded_name(release.countersigned_by) != folded_name(release.checked_by);
}

LineTimeline line_timeline(LineId id, const Journal& journal) {
  Lookup lookup(journal);
  LineTimeline out;
  out.record.line = id;
  if (auto record = lookup.find(id)) out.record = *record;
  LineStory story(out);
  for (const Entry* entry : lookup.story(subject(id))) story.take(*entry);
  std::stable_sort(out.segments.begin(), out.segments.end(),
                   [](const SegmentRecord& a, const SegmentRecord& b) {
                     return std::tie(a.position, a.segment) < std::tie(b.position, b.segment);
                   });
  out.relies_on = lookup.relies_on();
  return out;
}

}  // namespace ullage::cellar
