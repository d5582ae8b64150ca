// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/cellar/keg_story.h"

#include <algorithm>
#include <utility>

#include "core/cellar/co2_story.h"
#include "core/cellar/line_draws.h"
#include "core/cellar/suggest.h"
#include "core/physics/gravity.h"

namespace ullage::cellar {

namespace {

// Whatever was in it before: its level and contents begin anew.
bool fills_anew(const Entry& e) {
  return holds_alternative<Filled>(e.payload) || holds_alternative<Received>(e.payload) ||
         holds_alternative<Found>(e.payload);
}

}  // namespace

KegStory::KegStory(KegId id, const Journal& journal, Lookup& lookup, KegTimeline& out,
                   PlaceLookup places)
    : journal_(journal),
      lookup_(lookup),
      readings_(lookup),
      out_(out),
      places_(places ? std::move(places) : places_of(journal)) {
  out_.record.keg = id;
  if (auto record = lookup_.find(id)) {
    out_.record = *record;
    out_.registered = true;
  }
}

void KegStory::take(const Entry& entry) {
  entry_ = &entry;
  if (passes_to_ == entry_) passes_to_ = nullptr;
  if (!out_.first_heard_of) out_.first_heard_of = at();
  out_.last_heard_of = at();
  visit([this](const auto& p) { on(p); }, entry.payload);
}

void KegStory::set_stage(Stage stage, Instant from) {
  if (!out_.spans.empty() && out_.stage == stage) return;
  out_.stage = stage;
  out_.stage_since = from;
  // A keg found today may say it has been so since last week: spans that began
  // later give way.
  while (!out_.spans.empty() && out_.spans.back().from >= from) out_.spans.pop_back();
  out_.spans.push_back({from, stage});
}

// The stage of an empty keg, from the steps that still count.
void KegStory::judge_empty_stage() {
  if (holds_beer()) return;
  const auto counts = [](const std::optional<Done>& d) { return d && d->counts; };
  Stage stage = out_.stage == Stage::unknown ? Stage::unknown : Stage::dirty;
  if (counts(cleaned_)) {
    stage = Stage::clean;
    if (counts(sanitised_)) stage = counts(purged_) ? Stage::purged : Stage::sanitised;
  }
  set_stage(stage, at());
}

void KegStory::doesnt_fit(Message why) { out_.doesnt_fit.push_back({id(), std::move(why)}); }

void KegStory::raise(Fault f, Severity severity, Message headline, std::optional<Message> detail,
                     std::optional<SuggestedTask> action) {
  Advice advice;
  advice.severity = severity;
  advice.about = subject(out_.record.keg);
  advice.headline = std::move(headline);
  advice.detail = std::move(detail);
  advice.action = std::move(action);
  advice.because_of.push_back(id());
  faults_.insert_or_assign(f, std::move(advice));
}

void KegStory::finish() {
  resolve_contents();
  if (out_.on_line) {
    out_.line = line_timeline(out_.on_line->line, journal_);
    lookup_.rely_on(out_.line->relies_on);
    const LineTimeline& line = *out_.line;
    if (line.last_tapped && *line.last_tapped != out_.record.keg &&
        line.tapped_at >= out_.on_line->since) {
      out_.on_line->displaced_by = line.last_tapped;
    }
  }
  out_.level.finish(out_.record.holds(),
                    out_.on_line ? draws_on_line(out_.on_line->line, out_.on_line->since, lookup_)
                                 : std::vector<BeerDraw>{});
  derive_warmth_and_co2();  // asks the level how much beer shares the headspace's gas
  judge_hold();
  list_preparation();
  for (auto& [kind, advice] : faults_) out_.faults.push_back(std::move(advice));
}

void KegStory::list_preparation() {
  if (purged_ && purged_->counts && !purged_->result && !purges_.empty())
    purged_->result = purge_result(get<Purged>(purges_.back()->payload));
  const auto list = [this](const char* kind, const std::optional<Done>& done) {
    PreparationStep step;
    step.kind = kind;
    if (done) {
      step.entry = done->entry;
      step.done_at = done->at;
      step.still_counts = done->counts;
      step.result = done->result;
    }
    out_.preparation.push_back(std::move(step));
  };
  std::optional<Done> hold;
  if (out_.hold.entry) {
    hold =
        Done{*out_.hold.entry, out_.hold.last, out_.hold.kind == HoldKind::holds, out_.hold.result};
  }
  list("hold_reading", hold);
  list("cleaned", cleaned_);
  list("sanitised", sanitised_);
  list("inspected", inspected_);
  list("purged", purged_);
  for (const Entry* purge : purges_) {
    if (purged_ && purge->header.id != purged_->entry)
      out_.preparation.back().goes_on_from.push_back(purge->header.id);
  }
  list("leak_tested", leak_tested_);
}

void KegStory::resolve_contents() {
  if (!out_.filling || !out_.filling->batch) return;
  const BatchId id = *out_.filling->batch;
  const auto batch = lookup_.find(id);
  if (!batch) return;
  const auto beer = lookup_.find(batch->beer);
  Contents contents;
  contents.batch = id;
  contents.batch_record = *batch;
  if (beer) contents.beer = *beer;
  contents.beer.beer = batch->beer;
  contents.filled_by_us = out_.filling->kind == FillingKind::filled;
  contents.found = out_.filling->kind == FillingKind::found;
  contents.since = out_.filling->at;
  contents.best_by = out_.filling->best_by ? out_.filling->best_by : batch->best_by;

  std::optional<SpecificGravity> original = batch->original_gravity;
  std::optional<SpecificGravity> final_gravity = batch->final_gravity;
  for (const Entry* entry : lookup_.story(subject(id))) {
    if (const auto* read = get_if<GravityRead>(&entry->payload)) {
      if (read->stage == GravityStage::original) original = read->gravity;
      if (read->stage == GravityStage::final) final_gravity = read->gravity;
    } else if (const auto* changed = get_if<BestByChanged>(&entry->payload)) {
      contents.best_by = changed->best_by;
    } else if (const auto* recalled = get_if<BatchRecalled>(&entry->payload)) {
      out_.recalled = entry->header.id;
      out_.recall_reason = recalled->reason;
    }
  }
  contents.abv = batch->abv;
  if (!contents.abv && original && final_gravity) {
    if (const auto f = physics::fermented(*original, *final_gravity)) contents.abv = f->abv;
  }
  contents.batch_record.original_gravity = original;
  contents.batch_record.final_gravity = final_gravity;
  out_.range = co2_range_of(contents.beer);
  out_.contents = std::move(contents);
}

void KegStory::judge_hold() {
  out_.hold = hold_test(hold_readings_, out_.record, lookup_);
  if (out_.leak && out_.hold.kind == HoldKind::holds && out_.hold.first >= out_.leak->at)
    tight(out_.hold.last);
  if (holds_beer() && out_.stage != Stage::on_tap)
    out_.hold_with_beer = hold_test_with_beer(hold_with_beer_, out_, lookup_);
}

const PlaceHistory& KegStory::history_of(PlaceId id) {
  const PlaceHistory& history = places_(id);
  lookup_.rely_on(history.relies_on);
  return history;
}

std::vector<Stay> KegStory::stays() {
  std::vector<Stay> out;
  out.reserve(stays_.size());
  for (const PlaceStay& stay : stays_)
    out.push_back({stay.from, stay.place ? &history_of(*stay.place) : nullptr});
  return out;
}

void KegStory::derive_warmth_and_co2() {
  if (const auto place = stays_.empty() ? std::nullopt : stays_.back().place) {
    out_.place = place;
    out_.in_place_since = stays_.back().from;
    out_.place_history = history_of(*place);
  }
  if (out_.filling) derive_co2(since_filling_, stays(), lookup_, out_);
}

KegStory::Past KegStory::until(Instant end) {
  Past past;
  if (!out_.filling) return past;
  KegTimeline so_far = out_;
  out_.level.finish(out_.record.holds(), {});
  const std::vector<Stay> stood = stays();
  derive_co2(since_filling_, stood, lookup_, out_, end);
  past.reaches_later = std::any_of(stood.begin(), stood.end(), [&](const Stay& s) {
    return s.place && (s.place->warmth.empty() || s.place->warmth.front().from > end);
  });
  past.keg = std::exchange(out_, std::move(so_far));
  return past;
}

KegTimeline keg_timeline(KegId id, const Journal& journal, const PlaceLookup& places) {
  KegTimeline out;
  Lookup lookup(journal);
  KegStory story(id, journal, lookup, out, places);
  const auto entries = lookup.story(subject(id));
  const auto last_filling =
      std::find_if(entries.rbegin(), entries.rend(), [](const Entry* e) { return fills_anew(*e); });
  if (last_filling != entries.rend()) story.pass_over_to(**last_filling);
  for (const Entry* entry : entries) story.take(*entry);
  story.finish();
  out.relies_on = lookup.relies_on();
  return out;
}

}  // namespace ullage::cellar
