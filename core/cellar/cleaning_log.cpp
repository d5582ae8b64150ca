// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/cellar/cleaning_log.h"

#include <algorithm>

#include "core/cellar/due_work.h"

namespace ullage::cellar {

namespace {

const Cleaner& cleaner_of(const PlanStep& step, const CleaningKit& kit) {
  return step.kind == StepKind::acid ? kit.acid : kit.caustic;
}

Payload line_cleaned(const PlanStep& step, LineId line, const CellarStatus& cellar,
                     const CleaningKit& kit, const std::optional<units::Duration>& stood) {
  const Cleaner& cleaner = cleaner_of(step, kit);
  LineCleaned c;
  c.line = line;
  c.agent = cleaner.kind;
  c.agent_name = cleaner.name;
  c.strength_percent = cleaner.strength.count() * 100;
  c.method = SoakMethod::static_soak;
  c.contact = stood;
  const LineStatus* status = cellar.find(line);
  // The beer went out before the first chemical: told once.
  if (step.kind == StepKind::caustic && status != nullptr && status->keg) {
    const KegStatus* keg = cellar.find(*status->keg);
    if (keg != nullptr && keg->contents) c.beer_lost = volume_of_line(line, cellar);
  }
  return Payload(c);
}

Payload keg_cleaned(KegId keg, const CleaningKit& kit,
                    const std::optional<units::Duration>& stood) {
  Cleaned c;
  c.keg = keg;
  c.agent = kit.caustic.name;
  c.strength_percent = kit.caustic.strength.count() * 100;
  c.contact = stood;
  return Payload(c);
}

Payload work_done(WorkKind work, SubjectRef thing) {
  WorkDone w;
  w.work = work;
  set_subject(w, thing);
  return Payload(w);
}

Payload leak_tested(SubjectRef thing) {
  LeakTested l;
  set_subject(l, thing);
  return Payload(l);
}

// By the cleaner that goes in first: it is what the tag at the tap warns of.
Payload locked(const PlanStep& step, SubjectRef thing, const CleaningKit& kit) {
  const auto& acid = step.acid_first;
  const bool acid_first = std::find(acid.begin(), acid.end(), thing) != acid.end();
  const Cleaner& first = acid_first ? kit.acid : kit.caustic;
  LineLocked l;
  l.line = LineId{thing.uuid};
  l.agent = first.kind;
  l.agent_name = first.name;
  l.reason = "cleaning day";
  return Payload(l);
}

Payload purged(KegId keg, const CleaningKit& kit) {
  Purged p;
  p.keg = keg;
  p.method = PurgeMethod::cycles;
  p.cycles = kit.purge_cycles;
  p.pressure = kit.purge_to;
  return Payload(p);
}

// Whether an entry is the one that a tick of this step makes, or a fuller one of
// the same kind from a form.
bool is_of(const PlanStep& step, SubjectRef thing, const Payload& p) {
  const auto work = [&](WorkKind kind) {
    const auto* w = get_if<WorkDone>(&p);
    return w != nullptr && w->work == kind && w->complete;
  };
  const auto* cleaned = get_if<LineCleaned>(&p);
  switch (step.kind) {
    case StepKind::check_alarm:
      return holds_alternative<AlarmChecked>(p);
    case StepKind::lock:
      return holds_alternative<LineLocked>(p);
    case StepKind::vent:
      return thing.kind == SubjectKind::keg && holds_alternative<Vented>(p);
    case StepKind::caustic:
      if (step.kegs) return holds_alternative<Cleaned>(p);
      return cleaned != nullptr && cleaned->agent != LineAgent::acid &&
             cleaned->agent != LineAgent::water;
    case StepKind::acid:
      return cleaned != nullptr && cleaned->agent == LineAgent::acid;
    case StepKind::strip_down:
      return work(WorkKind::strip_down) || (cleaned != nullptr && cleaned->faucet);
    case StepKind::coupler:
      return work(WorkKind::coupler_clean) || (cleaned != nullptr && cleaned->coupler);
    case StepKind::seals:
      return renews_seals(p);
    case StepKind::purge:
      return holds_alternative<Purged>(p);
    case StepKind::release:
      return holds_alternative<LineReleased>(p);
    case StepKind::leak_test:
      return holds_alternative<LeakTested>(p);
    case StepKind::place_clean:
      return work(WorkKind::place_clean);
    case StepKind::retest:
      return work(WorkKind::bottle_retest);
    case StepKind::flush:
    case StepKind::rinse:
    case StepKind::rinse_acid:
      return false;
  }
  return false;
}

}  // namespace

TickMeans means(const PlanStep& step, SubjectRef thing) {
  switch (step.kind) {
    case StepKind::check_alarm:
    case StepKind::release:
    case StepKind::leak_test:
    case StepKind::retest:
      return TickMeans::opens_form;
    case StepKind::vent:
      return thing.kind == SubjectKind::keg ? TickMeans::logs : TickMeans::leaves_no_trace;
    case StepKind::flush:
    case StepKind::rinse:
    case StepKind::rinse_acid:
      return TickMeans::leaves_no_trace;
    default:
      return TickMeans::logs;
  }
}

std::optional<Payload> entry_for(const PlanStep& step, SubjectRef thing, const CellarStatus& cellar,
                                 const CleaningKit& kit,
                                 const std::optional<units::Duration>& stood) {
  switch (step.kind) {
    case StepKind::check_alarm:
      return Payload(AlarmChecked{PlaceId{thing.uuid}, true});
    case StepKind::lock:
      return locked(step, thing, kit);
    case StepKind::vent:
      if (thing.kind != SubjectKind::keg) return std::nullopt;
      return Payload(Vented{KegId{thing.uuid}, std::nullopt});
    case StepKind::caustic:
    case StepKind::acid:
      if (thing.kind == SubjectKind::keg) return keg_cleaned(KegId{thing.uuid}, kit, stood);
      return line_cleaned(step, LineId{thing.uuid}, cellar, kit, stood);
    case StepKind::strip_down:
      return work_done(WorkKind::strip_down, thing);
    case StepKind::coupler:
      return work_done(WorkKind::coupler_clean, thing);
    case StepKind::seals:
      return work_done(WorkKind::seals, thing);
    case StepKind::purge:
      return purged(KegId{thing.uuid}, kit);
    case StepKind::release: {
      LineReleased r;
      r.line = LineId{thing.uuid};
      return Payload(r);
    }
    case StepKind::leak_test:
      return leak_tested(thing);
    case StepKind::place_clean:
      return work_done(WorkKind::place_clean, thing);
    case StepKind::retest:
      return work_done(WorkKind::bottle_retest, thing);
    case StepKind::flush:
    case StepKind::rinse:
    case StepKind::rinse_acid:
      return std::nullopt;
  }
  return std::nullopt;
}

const Entry* done_since(const PlanStep& step, SubjectRef thing, const Journal& journal,
                        Instant since) {
  const auto story = journal.story(thing);
  const auto at = std::find_if(story.rbegin(), story.rend(), [&](const Entry* e) {
    return e->header.happened_at >= since && is_of(step, thing, e->payload);
  });
  return at == story.rend() ? nullptr : *at;
}

std::optional<std::size_t> step_before(const std::vector<PlanStep>& steps, std::size_t step,
                                       SubjectRef thing,
                                       const std::function<bool(std::size_t)>& done) {
  for (std::size_t i = 0; i < step && i < steps.size(); ++i) {
    const auto& things = steps[i].things;
    if (std::find(things.begin(), things.end(), thing) != things.end() && !done(i)) return i;
  }
  return std::nullopt;
}

}  // namespace ullage::cellar
