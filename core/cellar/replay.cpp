// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/cellar/replay.h"

#include <algorithm>
#include <tuple>
#include <unordered_map>
#include <vector>

#include "core/cellar/carbonation_curve.h"
#include "core/cellar/cellar_status.h"
#include "core/cellar/due_work.h"
#include "core/cellar/gas_account.h"
#include "core/cellar/keg_moment.h"
#include "core/cellar/pour_advice.h"
#include "core/cellar/pour_setting.h"
#include "core/units/present.h"

namespace ullage::cellar {

// What is kept between calls. A keg's status is kept as well, for the minute it
// was told for: logging one entry tells the other kegs again by copying.
struct Replay::Memory {
  struct KegSlot {
    KegTimeline timeline;
    Instant told_for{};
    std::optional<KegStatus> told;
  };
  struct BottleSlot {
    BottleStatus status;
    Reliance relies_on;
  };

  // An account is kept for the hour: what is expected to be left falls slowly.
  struct GasSlot {
    std::vector<BottleId> bottles;
    Instant hour{};
    std::size_t subjects = 0;  // of the journal: a new keg may hang on the only supply
    std::shared_ptr<const GasAccount> account;
    Reliance relies_on;
    // Along this account's own grid.
    std::shared_ptr<std::unordered_map<KegId, KegDraws>> drawn;
  };

  const Journal& journal;
  const LocalCalendar& calendar;
  std::unordered_map<KegId, KegSlot> kegs;
  std::unordered_map<LineId, LineTimeline> lines;
  std::unordered_map<PlaceId, PlaceHistory> places;
  std::unordered_map<BottleId, BottleSlot> bottles;
  std::vector<GasSlot> supplies;
  SourceTable sources;  // of the draws

  void list_registered(CellarStatus&, std::vector<PlaceId>&, std::vector<BottleId>&);
  void tell_pours(CellarStatus&);

  void keep_accounts(CellarStatus&, const std::vector<BottleId>&, std::vector<Advice>&);
  const GasSlot& account(const GasSupply&, const CellarStatus&);

  const KegTimeline& timeline(KegId id) { return slot(id).timeline; }

  PlaceLookup place_lookup() {
    return [this](PlaceId id) -> const PlaceHistory& { return place(id); };
  }

  KegSlot& slot(KegId id) {
    const auto at = kegs.find(id);
    if (at != kegs.end() && at->second.timeline.relies_on.holds(journal)) return at->second;
    KegSlot fresh;
    fresh.timeline = keg_timeline(id, journal, place_lookup());
    return kegs.insert_or_assign(id, std::move(fresh)).first->second;
  }

  const KegStatus& keg(KegId id, Instant now) {
    KegSlot& s = slot(id);
    // The minute, but never before what was logged within it.
    Instant minute = std::chrono::floor<std::chrono::minutes>(now);
    if (s.timeline.last_heard_of)
      minute = std::max(minute, std::min(*s.timeline.last_heard_of, now));
    if (!s.told || s.told_for != minute) {
      s.told = keg_status_at(s.timeline, minute, calendar);
      s.told_for = minute;
    }
    return *s.told;
  }

  const LineTimeline& line(LineId id) {
    const auto at = lines.find(id);
    if (at != lines.end() && at->second.relies_on.holds(journal)) return at->second;
    return lines.insert_or_assign(id, line_timeline(id, journal)).first->second;
  }
  const PlaceHistory& place(PlaceId id) {
    const auto at = places.find(id);
    if (at != places.end() && at->second.relies_on.holds(journal)) return at->second;
    return places.insert_or_assign(id, place_history(id, journal)).first->second;
  }
  const BottleStatus& bottle(BottleId id) {
    const auto at = bottles.find(id);
    if (at != bottles.end() && at->second.relies_on.holds(journal)) return at->second.status;
    BottleSlot fresh;
    fresh.status = bottle_status(id, journal, fresh.relies_on);
    return bottles.insert_or_assign(id, std::move(fresh)).first->second.status;
  }
};

namespace {

template <class Record>
void by_name(std::vector<Record>& records) {
  std::stable_sort(records.begin(), records.end(),
                   [](const Record& a, const Record& b) { return natural_less(a.name, b.name); });
}

void put_in_order(CellarStatus& out) {
  std::stable_sort(out.kegs.begin(), out.kegs.end(), [](const KegStatus& a, const KegStatus& b) {
    return natural_less(a.record.tag, b.record.tag);
  });
  std::stable_sort(out.lines.begin(), out.lines.end(), [](const auto& a, const auto& b) {
    return natural_less(a.record.name, b.record.name);
  });
  by_name(out.beers);
  by_name(out.batches);
  by_name(out.regulators);
  by_name(out.instruments);
  std::stable_sort(
      out.segments.begin(), out.segments.end(), [](const SegmentRecord& a, const SegmentRecord& b) {
        return std::tie(a.line, a.position, a.segment) < std::tie(b.line, b.position, b.segment);
      });
  std::stable_sort(out.rules.begin(), out.rules.end(),
                   [](const RuleRecord& a, const RuleRecord& b) {
                     return std::tie(a.scope, a.work, a.rule) < std::tie(b.scope, b.work, b.rule);
                   });
}

}  // namespace

Replay::Replay(const Journal& journal, const LocalCalendar& calendar)
    : memory_(new Memory{journal, calendar, {}, {}, {}, {}, {}, {}}) {}
Replay::~Replay() = default;
Replay::Replay(Replay&&) noexcept = default;
Replay& Replay::operator=(Replay&&) noexcept = default;

KegStatus Replay::keg_status(KegId id, Instant now) const {
  KegStatus out = memory_->keg(id, now);
  if (!out.line || out.phase != Phase::on_tap) return out;
  if (!memory_->line(out.line->line).registered) return out;
  CellarStatus its_line;
  its_line.now = now;
  its_line.lines.push_back(line_status_at(memory_->line(out.line->line)));
  Lookup lookup(memory_->journal);
  for (const SubjectRef& s : memory_->journal.subjects()) {
    if (s.kind != SubjectKind::rule) continue;
    if (auto rule = lookup.find(RuleId{s.uuid})) its_line.rules.push_back(std::move(*rule));
  }
  tell_line_cleaning(its_line, memory_->journal, memory_->calendar);
  tell_next_by_line(out, its_line.lines.front(), memory_->calendar.date_of(now));
  return out;
}

// The records of the register and the status of what stands alone: lines, kegs.
void Replay::Memory::list_registered(CellarStatus& out, std::vector<PlaceId>& in_places,
                                     std::vector<BottleId>& in_bottles) {
  Lookup lookup(journal);
  out.cellar = lookup.cellar();
  const auto keep = [](auto& list, auto record) {
    if (record) list.push_back(std::move(*record));
  };
  for (const SubjectRef& s : journal.subjects()) {
    switch (s.kind) {
      case SubjectKind::keg:
        if (timeline(KegId{s.uuid}).registered) out.kegs.push_back(keg(KegId{s.uuid}, out.now));
        break;
      case SubjectKind::line:
        if (const LineTimeline& of = line(LineId{s.uuid}); of.registered) {
          out.lines.push_back(line_status_at(of));
        }
        break;
      case SubjectKind::place:
        if (place(PlaceId{s.uuid}).record) in_places.push_back(PlaceId{s.uuid});
        break;
      case SubjectKind::bottle:
        if (lookup.find(BottleId{s.uuid})) in_bottles.push_back(BottleId{s.uuid});
        break;
      case SubjectKind::beer:
        keep(out.beers, lookup.find(BeerId{s.uuid}));
        break;
      case SubjectKind::batch:
        keep(out.batches, lookup.find(BatchId{s.uuid}));
        break;
      case SubjectKind::regulator:
        keep(out.regulators, lookup.find(RegulatorId{s.uuid}));
        break;
      case SubjectKind::instrument:
        keep(out.instruments, lookup.find(InstrumentId{s.uuid}));
        break;
      case SubjectKind::segment:
        keep(out.segments, lookup.find(SegmentId{s.uuid}));
        break;
      case SubjectKind::rule:
        keep(out.rules, lookup.find(RuleId{s.uuid}));
        break;
      case SubjectKind::cellar:
        break;
    }
  }
}

// How each line pours, once it is known which keg is on it.
void Replay::Memory::tell_pours(CellarStatus& out) {
  Lookup lookup(journal);
  const PlaceLookup place_of = place_lookup();
  for (LineStatus& line : out.lines) {
    const KegStatus* keg = line.keg ? out.find(*line.keg) : nullptr;
    if (!keg) {
      line.no_pour = message(MessageKey::pour_no_keg);
      continue;
    }
    tell_pour(line, *keg, this->line(line.record.line), timeline(present(line.keg)), out.now,
              lookup, place_of);
  }
  advise_shared_regulators(out);
}

const Replay::Memory::GasSlot& Replay::Memory::account(const GasSupply& supply,
                                                       const CellarStatus& cellar) {
  const Instant hour = std::chrono::floor<std::chrono::hours>(cellar.now);
  const std::size_t subjects = journal.subjects().size();
  const auto kept = std::find_if(supplies.begin(), supplies.end(),
                                 [&](const GasSlot& s) { return s.bottles == supply.bottles; });
  if (kept != supplies.end() && kept->hour == hour && kept->subjects == subjects &&
      kept->relies_on.holds(journal))
    return *kept;
  GasSlot fresh{supply.bottles, hour, subjects, {}, {}, {}};
  fresh.drawn = kept != supplies.end() ? kept->drawn
                                       : std::make_shared<std::unordered_map<KegId, KegDraws>>();
  const auto draws = [&](KegId id, const std::vector<Instant>& grid,
                         Instant to) -> const KegDraws& {
    KegDraws& keg = (*fresh.drawn)[id];
    keg.bring_up(timeline(id), journal, place_lookup(), grid, to, sources);
    return keg;
  };
  GasAccountInput in{supply,
                     journal,
                     hour,
                     [this](KegId id) -> const KegTimeline& { return timeline(id); },
                     draws,
                     sources,
                     place_lookup(),
                     {},
                     {}};
  for (const KegStatus& k : cellar.kegs) in.all_kegs.push_back(k.record.keg);
  for (const RegulatorRecord& r : cellar.regulators) in.all_regulators.push_back(r.regulator);
  fresh.account = std::make_shared<const GasAccount>(gas_account(in, fresh.relies_on));
  if (kept != supplies.end()) return *kept = std::move(fresh);
  supplies.push_back(std::move(fresh));
  return supplies.back();
}

void Replay::Memory::keep_accounts(CellarStatus& out, const std::vector<BottleId>& ids,
                                   std::vector<Advice>& others) {
  Lookup lookup(journal);
  std::vector<RegulatorId> regulators;
  regulators.reserve(out.regulators.size());
  for (const RegulatorRecord& r : out.regulators) regulators.push_back(r.regulator);
  for (const GasSupply& supply : gas_supplies(ids, regulators, lookup)) {
    const GasSlot& kept = account(supply, out);
    for (BottleStatus& b : out.bottles) {
      const auto& of = supply.bottles;
      if (std::find(of.begin(), of.end(), b.record.bottle) != of.end()) b.account = kept.account;
    }
    advise_gas(*kept.account, others);
  }
}

CellarStatus Replay::status(Instant now) const {
  Memory& memory = *memory_;
  CellarStatus out;
  out.now = now;
  std::vector<PlaceId> places;
  std::vector<BottleId> bottles;
  memory.list_registered(out, places, bottles);
  put_in_order(out);
  tell_line_cleaning(out, memory.journal, memory.calendar);
  join_lines_and_kegs(out);
  for (KegStatus& keg : out.kegs) {
    const LineStatus* line = keg.line ? out.find(keg.line->line) : nullptr;
    if (line) tell_next_by_line(keg, *line, memory.calendar.date_of(now));
  }
  memory.tell_pours(out);
  rank_use_next(out);
  std::vector<Advice> others;
  for (const PlaceId id : places) {
    const PlaceHistory& history = memory.place(id);
    out.places.push_back(place_status(history, out));
    advise_place(out.places.back(), history, out, now, others);
  }
  for (const BottleId id : bottles) {
    out.bottles.push_back(memory.bottle(id));
    advise_bottle(out.bottles.back(), memory.calendar.date_of(now), others);
  }
  memory.keep_accounts(out, bottles, others);
  gather_attention(out, others);
  return out;
}

CarbonationCurveData Replay::carbonation_curve(KegId id, Instant now, std::optional<Instant> from,
                                               std::optional<Instant> to) const {
  return carbonation_curve_of(memory_->timeline(id), now, memory_->calendar, from, to);
}

}  // namespace ullage::cellar
