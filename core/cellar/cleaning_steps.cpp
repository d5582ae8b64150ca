// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/cellar/cleaning_steps.h"

#include <algorithm>
#include <iterator>
#include <map>
#include <set>

#include "core/physics/atmosphere.h"
#include "core/physics/line_volume.h"
#include "core/physics/purge.h"

namespace ullage::cellar {

namespace {

using Things = std::vector<SubjectRef>;
using ByPlace = std::map<std::optional<PlaceId>, Things>;

class StepWriter {
 public:
  StepWriter(const std::vector<DueWork>& tasks, const CellarStatus& cellar, const CleaningKit& kit,
             const std::vector<LineLock>& standing)
      : tasks_(tasks), cellar_(cellar), kit_(kit), standing_(standing) {}

  [[nodiscard]] std::vector<PlanStep> write() && {
    const Things wet = lines_with_chemicals();
    Things to_release = wet;
    Things only_standing;
    for (const LineLock& lock : standing_) {
      const SubjectRef line = subject(lock.line);
      if (std::find(wet.begin(), wet.end(), line) != wet.end()) continue;
      only_standing.push_back(line);
      to_release.push_back(line);
    }
    work(WorkKind::alarm_check, StepKind::check_alarm, StepCaution::gas);
    steps(only_standing, StepKind::rinse, kit_.minutes.rinse, StepCaution::none);
    steps(wet, StepKind::lock, kit_.minutes.lock, StepCaution::release);
    vent();
    steps(wet, StepKind::flush, kit_.minutes.flush, StepCaution::none);
    chemical(WorkKind::caustic, kit_.caustic, StepKind::caustic, StepKind::rinse);
    chemical(WorkKind::keg_clean, kit_.caustic, StepKind::caustic, StepKind::rinse);
    chemical(WorkKind::acid, kit_.acid, StepKind::acid, StepKind::rinse_acid);
    work(WorkKind::strip_down, StepKind::strip_down, StepCaution::pressure);
    work(WorkKind::coupler_clean, StepKind::coupler, StepCaution::pressure);
    work(WorkKind::seals, StepKind::seals, StepCaution::pressure);
    steps(things_with(WorkKind::keg_clean), StepKind::purge, kit_.minutes.purge, StepCaution::gas);
    steps(to_release, StepKind::release, kit_.minutes.release, StepCaution::release);
    work(WorkKind::leak_test, StepKind::leak_test, StepCaution::none);
    work(WorkKind::place_clean, StepKind::place_clean, StepCaution::none);
    work(WorkKind::bottle_retest, StepKind::retest, StepCaution::none);
    return std::move(out_);
  }

 private:
  [[nodiscard]] std::optional<PlaceId> place_of(SubjectRef thing) const {
    switch (thing.kind) {
      case SubjectKind::line:
        if (const LineStatus* l = cellar_.find(LineId{thing.uuid})) return l->record.place;
        break;
      case SubjectKind::keg:
        if (const KegStatus* k = cellar_.find(KegId{thing.uuid}); k && k->place) {
          return k->place->place;
        }
        break;
      case SubjectKind::bottle:
        if (const BottleStatus* b = cellar_.find(BottleId{thing.uuid})) return b->record.place;
        break;
      case SubjectKind::place:
        return PlaceId{thing.uuid};
      default:
        break;
    }
    return std::nullopt;
  }
  [[nodiscard]] ByPlace by_place(const Things& things) const {
    ByPlace groups;
    for (const SubjectRef& t : things) groups[place_of(t)].push_back(t);
    return groups;
  }
  [[nodiscard]] Things things_with(WorkKind work) const {
    Things things;
    for (const DueWork& t : tasks_) {
      if (t.work == work) things.push_back(t.about);
    }
    return things;
  }
  [[nodiscard]] Things lines_with_chemicals() const {
    Things things;
    for (const DueWork& t : tasks_) {
      const bool wet = t.work == WorkKind::caustic || t.work == WorkKind::acid;
      if (wet && std::find(things.begin(), things.end(), t.about) == things.end()) {
        things.push_back(t.about);
      }
    }
    return things;
  }
  // Those tasks of a kind of work that are about one of the things.
  [[nodiscard]] std::vector<std::size_t> tasks_of(WorkKind work, const Things& things) const {
    std::vector<std::size_t> found;
    for (std::size_t i = 0; i < tasks_.size(); ++i) {
      if (tasks_[i].work != work) continue;
      if (std::find(things.begin(), things.end(), tasks_[i].about) != things.end()) {
        found.push_back(i);
      }
    }
    return found;
  }

  PlanStep& add(StepKind kind, std::optional<PlaceId> place, Things things, units::Duration each,
                StepCaution caution) {
    PlanStep& step = out_.emplace_back();
    step.kind = kind;
    step.place = place;
    step.hands_on = each * static_cast<double>(things.size());
    step.kegs = !things.empty() && things.front().kind == SubjectKind::keg;
    step.things = std::move(things);
    step.caution = caution;
    return step;
  }

  // A step for each place, about these things, that ends no task by itself.
  void steps(const Things& things, StepKind kind, units::Duration each, StepCaution caution) {
    for (auto& [place, group] : by_place(things)) {
      PlanStep& step = add(kind, place, group, each, caution);
      if (kind == StepKind::flush) step.water = lines_hold(step);
      if (kind == StepKind::rinse) step.water = rinse_water(step);
      if (kind == StepKind::lock) tell_locked(step, each);
      if (kind == StepKind::lock) tell_acid_first(step);
      if (kind == StepKind::purge) step.gas = gas_to_purge(step.things);
    }
  }
  void tell_locked(PlanStep& step, units::Duration each) const {
    for (const LineLock& lock : standing_) {
      if (std::find(step.things.begin(), step.things.end(), subject(lock.line)) ==
          step.things.end())
        continue;
      step.locked.push_back(lock);
      step.hands_on -= each;
    }
  }
  void tell_acid_first(PlanStep& step) const {
    const Things caustic = things_with(WorkKind::caustic);
    std::copy_if(step.things.begin(), step.things.end(), std::back_inserter(step.acid_first),
                 [&](const SubjectRef& line) {
                   return std::find(caustic.begin(), caustic.end(), line) == caustic.end();
                 });
  }
  void work(WorkKind work, StepKind kind, StepCaution caution) {
    for (auto& [place, group] : by_place(things_with(work))) {
      const std::size_t many = group.size();
      PlanStep& step = add(kind, place, group, hands_on(work, kit_.minutes), caution);
      step.tasks = tasks_of(work, step.things);
      if (work == WorkKind::seals) step.seals = static_cast<std::int64_t>(many);
    }
  }
  // Everything that is opened later on, or has cleaner pushed through, has its
  // pressure let off first.
  void vent() {
    std::set<SubjectRef> seen;
    Things things;
    for (const DueWork& t : tasks_) {
      const bool opened = t.work == WorkKind::caustic || t.work == WorkKind::acid ||
                          t.work == WorkKind::strip_down || t.work == WorkKind::coupler_clean ||
                          t.work == WorkKind::seals || t.work == WorkKind::keg_clean;
      if (opened && seen.insert(t.about).second) things.push_back(t.about);
    }
    steps(things, StepKind::vent, kit_.minutes.vent, StepCaution::pressure);
  }

  void chemical(WorkKind work, const Cleaner& cleaner, StepKind with, StepKind after) {
    const ByPlace groups = by_place(things_with(work));
    const StepCaution caution = cleaner.kind == LineAgent::acid          ? StepCaution::acid
                                : cleaner.kind == LineAgent::chlorinated ? StepCaution::chlorine
                                                                         : StepCaution::caustic;
    for (const auto& [place, group] : groups) {
      PlanStep& step = add(with, place, group, hands_on(work, kit_.minutes), caution);
      step.tasks = tasks_of(work, step.things);
      step.agent = cleaner.name;
      step.agent_kind = cleaner.kind;
      step.contact = cleaner.contact;
      measure(step, cleaner);
    }
    for (const auto& [place, group] : groups) {
      PlanStep& step = add(after, place, group, kit_.minutes.rinse, StepCaution::none);
      step.water = rinse_water(step);
    }
  }
  [[nodiscard]] std::optional<Volume> rinse_water(PlanStep& step) const {
    const auto once = step.kegs ? std::optional(kegs_take(step)) : lines_hold(step);
    if (!once) return std::nullopt;
    return *once * static_cast<double>(kit_.rinses);
  }
  [[nodiscard]] Volume kegs_take(const PlanStep& step) const {
    return kit_.keg_fill * static_cast<double>(step.things.size());
  }
  void measure(PlanStep& step, const Cleaner& cleaner) const {
    if (step.kegs) {
      step.solution = kegs_take(step);
    } else {
      step.solution = kit_.pot + lines_hold(step).value_or(units::litres(0));
    }
    const auto parts = physics::cleaning_solution(*step.solution, cleaner.strength, cleaner.label);
    if (!parts) return;
    step.concentrate = parts->concentrate_volume;
    step.concentrate_mass = parts->concentrate;
    step.water = parts->water;
  }
  // What the step's lines hold together, as far as it is on record; the step counts
  // those of which it is not.
  [[nodiscard]] std::optional<Volume> lines_hold(PlanStep& step) const {
    std::optional<Volume> sum;
    step.lines_unmeasured = 0;
    for (const SubjectRef& t : step.things) {
      if (t.kind != SubjectKind::line) continue;
      const auto one = volume_of_line(LineId{t.uuid}, cellar_);
      if (one) sum = sum ? *sum + *one : *one;
      if (!one) ++step.lines_unmeasured;
    }
    return sum;
  }
  [[nodiscard]] std::optional<Mass> gas_to_purge(const Things& kegs) const {
    const auto ambient =
        physics::ambient_pressure(cellar_.cellar ? cellar_.cellar->altitude : units::metres(0));
    if (!ambient) return std::nullopt;
    Mass sum = units::kilograms(0);
    for (const SubjectRef& t : kegs) {
      const KegStatus* keg = cellar_.find(KegId{t.uuid});
      if (keg == nullptr) continue;
      // The beer that will be in it has no part in the gas it takes.
      const physics::Vessel vessel{keg->record.brimful, keg->record.nominal, *ambient,
                                   units::celsius(15)};
      const auto purged = physics::purge_by_cycles(
          vessel, {static_cast<int>(kit_.purge_cycles), kit_.purge_to, units::gauge_bar(0)});
      if (!purged) return std::nullopt;
      sum += purged->co2_used;
    }
    return sum;
  }

  const std::vector<DueWork>& tasks_;
  const CellarStatus& cellar_;
  const CleaningKit& kit_;
  const std::vector<LineLock>& standing_;
  std::vector<PlanStep> out_;
};

}  // namespace

units::Duration hands_on(WorkKind work, const WorkMinutes& each) {
  switch (work) {
    case WorkKind::caustic:
    case WorkKind::acid:
      return each.line;
    case WorkKind::strip_down:
      return each.strip_down;
    case WorkKind::seals:
      return each.seals;
    case WorkKind::keg_clean:
      return each.keg;
    case WorkKind::coupler_clean:
      return each.coupler;
    case WorkKind::alarm_check:
      return each.alarm;
    case WorkKind::place_clean:
      return each.place;
    case WorkKind::bottle_retest:
      return each.bottle;
    case WorkKind::leak_test:
      return each.leak_test;
  }
  return each.line;
}

std::vector<PlanStep> steps_of(const std::vector<DueWork>& tasks, const CellarStatus& cellar,
                               const CleaningKit& kit, const std::vector<LineLock>& standing) {
  return StepWriter(tasks, cellar, kit, standing).write();
}

units::Duration time_for(const std::vector<DueWork>& tasks, const CleaningKit& kit) {
  const WorkMinutes& each = kit.minutes;
  units::Duration time = units::minutes(0);
  std::set<SubjectRef> wet;
  std::set<SubjectRef> vented;
  bool lines_caustic = false;
  bool kegs_caustic = false;
  bool acid = false;
  for (const DueWork& t : tasks) {
    time += hands_on(t.work, each);
    const bool chemical = t.work == WorkKind::caustic || t.work == WorkKind::acid;
    if (chemical) wet.insert(t.about);
    if (chemical || t.work == WorkKind::keg_clean) time += each.rinse;
    if (t.work == WorkKind::keg_clean) time += each.purge;
    if (chemical || t.work == WorkKind::keg_clean || t.work == WorkKind::strip_down ||
        t.work == WorkKind::coupler_clean || t.work == WorkKind::seals) {
      vented.insert(t.about);
    }
    lines_caustic = lines_caustic || t.work == WorkKind::caustic;
    kegs_caustic = kegs_caustic || t.work == WorkKind::keg_clean;
    acid = acid || t.work == WorkKind::acid;
  }
  time += static_cast<double>(wet.size()) * (each.lock + each.flush + each.release);
  time += static_cast<double>(vented.size()) * each.vent;
  // Lines and kegs stand at the same time.
  if (lines_caustic || kegs_caustic) time += kit.caustic.contact;
  if (acid) time += kit.acid.contact;
  return time;
}

std::optional<Volume> volume_of_line(LineId id, const CellarStatus& cellar) {
  double litres = 0;
  bool pieces = false;
  for (const SegmentRecord& s : cellar.segments) {
    if (s.line != id || !s.in_use) continue;
    const auto one = physics::line_volume(s.bore, s.length);
    if (!one) return std::nullopt;
    pieces = true;
    litres += units::in_litres(*one);
  }
  const LineStatus* line = cellar.find(id);
  if (!pieces) {
    if (line == nullptr || !line->record.length || !line->record.bore) return std::nullopt;
    const auto one = physics::line_volume(*line->record.bore, *line->record.length);
    if (!one) return std::nullopt;
    litres = units::in_litres(*one);
  }
  if (line != nullptr && line->record.restrictor_length && line->record.restrictor_bore) {
    const auto one =
        physics::line_volume(*line->record.restrictor_bore, *line->record.restrictor_length);
    if (one) litres += units::in_litres(*one);
  }
  return units::litres(litres);
}

std::optional<units::Estimate<Volume>> beer_in_line(LineId id, const CellarStatus& cellar) {
  const auto held = volume_of_line(id, cellar);
  const LineStatus* line = cellar.find(id);
  if (!held || line == nullptr) return std::nullopt;
  return physics::as_hoses_hold(*held, line->record.name);
}

}  // namespace ullage::cellar
