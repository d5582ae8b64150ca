// SPDX-License-Identifier: GPL-3.0-or-later
//
// Kegs as stock: registered, found, received, moved, held back, lent.
#include <algorithm>

#include "core/cellar/keg_story.h"
#include "core/cellar/suggest.h"
#include "core/units/present.h"

namespace ullage::cellar {

namespace {

// A stated volume without an error of its own: within 5 % (common practice).
constexpr double found_volume_error = 0.05;
// Breweries fill a little over (half a pint to a pint a keg, common practice).
constexpr double received_volume_error = 0.015;

Stage stage_of(FoundContents contents) {
  switch (contents) {
    case FoundContents::empty_dirty:
      return Stage::dirty;
    case FoundContents::empty_clean:
      return Stage::clean;
    case FoundContents::empty_sanitised:
      return Stage::sanitised;
    case FoundContents::empty_purged:
      return Stage::purged;
    case FoundContents::beer:
      return Stage::full;
    case FoundContents::unknown:
      break;
  }
  return Stage::unknown;
}

}  // namespace

void KegStory::stands_in(std::optional<PlaceId> place, Instant from) {
  if (!stays_.empty() && stays_.back().place == place) return;
  if (place && !lookup_.find(*place)) {
    doesnt_fit(message(MessageKey::misfit_unknown_place));
    place.reset();
  }
  stays_.push_back({from, place});
}

void KegStory::on(const KegRecord& r) {
  // A record that only repeats the place says nothing new about where it stands.
  if (r.place && r.place != home_) {
    home_ = r.place;
    stands_in(r.place, at());
  }
  if (out_.spans.empty()) set_stage(Stage::unknown, at());
}

void KegStory::forget_preparation() {
  inspected_.reset();
  cleaned_.reset();
  sanitised_.reset();
  purged_.reset();
  purges_.clear();
  leak_tested_.reset();
  hold_readings_ = {};
  out_.only_rinsed = false;
  chemical_ = Chemical::none;
  put_right(Fault::acid_and_chlorine);
}

void KegStory::forget_contents() {
  out_.filling.reset();
  out_.on_line.reset();
  out_.hops_since.reset();
  out_.primed.reset();
  out_.fill_gravity.reset();
  out_.last_level_reading.reset();
  out_.level.stop();
  since_filling_.clear();
  for (const Fault f : {Fault::filled_unprepared, Fault::filled_not_empty, Fault::filled_leaky,
                        Fault::filled_under_pressure, Fault::served_held_back}) {
    put_right(f);
  }
}

void KegStory::begin_filling(FillingKind kind, Instant since, std::optional<BatchId> batch) {
  Filling filling;
  filling.kind = kind;
  filling.entry = id();
  filling.at = since;
  filling.batch = batch;
  if (batch && !lookup_.find(*batch)) doesnt_fit(message(MessageKey::misfit_unknown_batch));
  out_.filling = std::move(filling);
  since_filling_.clear();
  since_filling_.push_back(entry_);
  hold_with_beer_ = {};
}

void KegStory::on(const Found& f) {
  const Instant since = f.since ? std::min(*f.since, at()) : at();
  forget_contents();
  forget_preparation();
  faults_.clear();
  out_.leak.reset();
  out_.gas = {};
  const Done as_found{id(), at(), true, message(MessageKey::step_as_found)};
  if (f.contents == FoundContents::empty_clean) cleaned_ = as_found;
  if (f.contents == FoundContents::empty_sanitised) cleaned_ = sanitised_ = as_found;
  if (f.contents == FoundContents::empty_purged) cleaned_ = sanitised_ = purged_ = as_found;
  set_stage(stage_of(f.contents), since);
  if (f.contents == FoundContents::beer) {
    begin_filling(FillingKind::found, since, f.batch);
    std::optional<VolumeEstimate> left;
    if (f.volume) {
      const Volume error = f.volume_half_width.value_or(found_volume_error * *f.volume);
      left = VolumeEstimate(*f.volume).with({out_.record.tag + ": volume as found"}, error.value());
    }
    out_.level.start(at(), left);
  }
  if (f.gas_on && f.pressure) {
    gas_set(*f.pressure, GasPurpose::serving, f.line);
    out_.gas.now.since = since;
  } else if (f.pressure) {
    pressure_seen(*f.pressure, true);
  }
  if (f.line) put_on_line(*f.line, since);
}

void KegStory::on(const Received& r) {
  if (holds_beer()) doesnt_fit(message(MessageKey::misfit_received_while_full));
  forget_contents();
  forget_preparation();
  out_.gas = {};
  begin_filling(FillingKind::received, at(), r.batch);
  auto& filling = present(out_.filling);
  filling.best_by = r.best_by;
  filling.arrival = r.temperature;
  filling.seal_intact = r.seal_intact;
  filling.supplier = r.supplier;
  const Volume volume = r.volume.value_or(out_.record.nominal);
  if (volume.value() > 0) {
    out_.level.start(at(), VolumeEstimate(volume).with({out_.record.tag + ": fill as delivered"},
                                                       received_volume_error * volume.value()));
  } else {
    out_.level.unknown_start(at());
  }
  set_stage(Stage::full, at());
}

void KegStory::on(const Moved& m) { stands_in(m.place, at()); }

void KegStory::on(const Quarantined& q) {
  if (!out_.custody.quarantine_reason) out_.custody.quarantined_since = at();
  out_.custody.quarantine_reason = q.reason;
  if (out_.stage == Stage::on_tap) {
    raise(Fault::served_held_back, Severity::danger, message(MessageKey::bad_on_tap_held_back),
          message(MessageKey::bad_on_tap_held_back_detail), keg_task<Untapped>(out_.record.keg));
  }
}

void KegStory::on(const Cleared&) {
  if (!out_.custody.quarantine_reason) doesnt_fit(message(MessageKey::misfit_cleared_not_held));
  out_.custody.quarantine_reason.reset();
  put_right(Fault::served_held_back);
}

void KegStory::on(const Lent& l) {
  if (out_.stage == Stage::on_tap) doesnt_fit(message(MessageKey::misfit_lent_on_tap));
  if (!out_.custody.lent_to) home_ = stays_.empty() ? std::nullopt : stays_.back().place;
  out_.custody.lent_to = l.to;
  out_.custody.lent_since = at();
  out_.custody.due_back = l.due_back;
  stands_in(std::nullopt, at());
}

void KegStory::on(const Returned&) {
  if (!out_.custody.lent_to) {
    doesnt_fit(message(MessageKey::misfit_returned_not_lent));
    return;
  }
  out_.custody.lent_to.reset();
  out_.custody.due_back.reset();
  stands_in(home_, at());
}

}  // namespace ullage::cellar
