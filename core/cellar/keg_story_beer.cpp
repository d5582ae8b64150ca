// SPDX-License-Identifier: GPL-3.0-or-later
//
// Beer into, in and out of a keg.
#include "core/cellar/keg_story.h"
#include "core/cellar/level_evidence.h"
#include "core/cellar/presets.h"
#include "core/cellar/suggest.h"

namespace ullage::cellar {

void KegStory::check_preparation(const Filled& f) {
  const KegId keg = out_.record.keg;
  const bool clean = cleaned_ && cleaned_->counts;
  const bool sanitised = sanitised_ && sanitised_->counts;
  if (!clean) {
    raise(Fault::filled_unprepared, Severity::warning, message(MessageKey::bad_filled_uncleaned),
          message(MessageKey::bad_filled_unprepared_detail), keg_task<Cleaned>(keg));
  } else if (!sanitised) {
    raise(Fault::filled_unprepared, Severity::warning, message(MessageKey::bad_filled_unsanitised),
          message(MessageKey::bad_filled_unprepared_detail), keg_task<Sanitised>(keg));
  }
  if (f.transfer == Transfer::open && out_.gas.now.unvented) {
    raise(Fault::filled_under_pressure, Severity::warning,
          message(MessageKey::bad_filled_under_pressure, *out_.gas.now.unvented),
          message(MessageKey::bad_opened_unvented_detail), keg_task<Vented>(keg));
  }
  if (out_.unfit) {
    raise(Fault::filled_leaky, Severity::warning, message(MessageKey::bad_filled_unfit),
          message(MessageKey::bad_filled_leaky_detail), keg_task<Inspected>(keg));
  }
}

void KegStory::on(const Filled& f) {
  const bool on_top = holds_beer();
  if (on_top) doesnt_fit(message(MessageKey::misfit_filled_while_full));
  if (!on_top) check_preparation(f);
  // What was checked stays on show; the contents and their faults begin anew.
  const auto unprepared = faults_;
  const auto hops = out_.hops_since;
  const auto sugar = out_.primed;
  forget_contents();
  if (!on_top) faults_ = unprepared;
  out_.hops_since = on_top ? std::nullopt : hops;  // hops and sugar may go in first
  out_.primed = on_top ? std::nullopt : sugar;
  begin_filling(FillingKind::filled, at(), f.batch);
  if (f.transfer == Transfer::open) out_.gas.now.unvented.reset();
  out_.gas.now.on = false;
  out_.fill_gravity = f.gravity;
  std::optional<VolumeEstimate> volume;
  if (!passes_to_) volume = filled_volume(f, *entry_, out_.record, readings_, lookup_);
  if (on_top) {
    raise(Fault::filled_not_empty, Severity::danger, message(MessageKey::bad_filled_not_empty),
          message(MessageKey::bad_filled_not_empty_detail), keg_task<Emptied>(out_.record.keg));
    volume.reset();  // what is in it now is anybody's guess
  }
  out_.level.start(at(), volume);
  set_stage(Stage::full, at());
}

void KegStory::on(const Primed& p) { out_.primed = p.mass; }

void KegStory::on(const HopsIn&) {
  if (holds_beer()) opened();
  if (!out_.hops_since) out_.hops_since = at();
}

void KegStory::on(const HopsOut&) {
  if (!out_.hops_since) doesnt_fit(message(MessageKey::misfit_hops_out_none));
  out_.hops_since.reset();
}

void KegStory::on(const LevelReading& r) {
  if (!holds_beer() && out_.stage != Stage::unknown) {
    doesnt_fit(message(MessageKey::misfit_level_of_empty));
    return;
  }
  out_.last_level_reading = at();
  since_filling_.push_back(entry_);
  if (passes_to_) return;
  LevelEvidence evidence = level_evidence(r, *entry_, out_, readings_, lookup_);
  if (evidence.refused) {
    out_.level.refused(at(), *evidence.refused);
  } else if (evidence.left) {
    out_.level.read(at(), *std::move(evidence.left), r.method);
  } else if (evidence.poured) {
    out_.level.poured(at(), *std::move(evidence.poured), r.method);
  }
}

void KegStory::on(const CarbonationReading&) {
  if (!holds_beer()) {
    doesnt_fit(message(MessageKey::misfit_co2_of_empty));
    return;
  }
  since_filling_.push_back(entry_);
}

void KegStory::put_on_line(LineId line, Instant from) {
  if (!lookup_.find(line)) doesnt_fit(message(MessageKey::misfit_unknown_line));
  out_.on_line = OnLine{line, from, id(), {}};
  out_.level.tapped(from);
  set_stage(Stage::on_tap, from);
}

void KegStory::on(const Tapped& t) {
  const bool empty = !holds_beer() && out_.stage != Stage::unknown;
  if (empty) {
    doesnt_fit(message(MessageKey::misfit_tapped_empty));
    return;
  }
  if (out_.custody.lent_to) doesnt_fit(message(MessageKey::misfit_tapped_lent));
  put_on_line(t.line, at());
  if (const Entry* set = out_.gas.now.on ? lookup_.entry(out_.gas.entry) : nullptr) {
    const auto by = gas_once_tapped(*set, out_.gas.now.regulator, t.line, at(), lookup_);
    if (by) gas_comes(*by);
  }
  if (out_.filling) since_filling_.push_back(entry_);
  if (out_.custody.quarantine_reason) {
    raise(Fault::served_held_back, Severity::danger, message(MessageKey::bad_on_tap_held_back),
          message(MessageKey::bad_on_tap_held_back_detail), keg_task<Untapped>(out_.record.keg));
  }
}

void KegStory::on(const Untapped&) {
  if (out_.stage != Stage::on_tap) {
    doesnt_fit(message(MessageKey::misfit_untapped_not_on_tap));
    return;
  }
  out_.on_line.reset();
  if (out_.filling) since_filling_.push_back(entry_);
  out_.level.untapped(at());
  put_right(Fault::served_held_back);
  // One coupler carries gas and beer: it comes off with the line.
  if (!has_two_posts(out_.record.keg_kind)) out_.gas.now.on = false;
  set_stage(out_.filling ? Stage::full : Stage::unknown, at());
}

void KegStory::on(const Emptied&) {
  if (!holds_beer() && out_.stage != Stage::unknown) {
    doesnt_fit(message(MessageKey::misfit_emptied_already));
    return;
  }
  forget_contents();
  forget_preparation();
  if (!has_two_posts(out_.record.keg_kind)) out_.gas.now.on = false;
  set_stage(Stage::dirty, at());
}

void KegStory::on(const Wasted& w) {
  if (!holds_beer()) {
    if (out_.stage != Stage::unknown) doesnt_fit(message(MessageKey::misfit_wasted_from_empty));
    return;
  }
  if (!passes_to_) out_.level.lost(at(), wasted_volume(w, *entry_));
  since_filling_.push_back(entry_);
}

}  // namespace ullage::cellar
