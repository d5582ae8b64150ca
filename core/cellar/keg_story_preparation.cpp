// SPDX-License-Identifier: GPL-3.0-or-later
//
// Making an empty keg fit to fill, and what undoes what.
#include <algorithm>
#include <cmath>

#include "core/cellar/keg_story.h"
#include "core/cellar/purge_story.h"
#include "core/cellar/suggest.h"
#include "core/units/present.h"

namespace ullage::cellar {

namespace {

// Parts per million to two figures: the mixing is not known better.
std::int64_t whole_ppm(units::MoleFraction share) {
  const double parts = physics::in_ppm(share);
  if (parts < 1) return 1;
  const double step = std::pow(10.0, std::floor(std::log10(parts)) - 1);
  return std::llround(std::round(parts / std::max(step, 1.0)) * std::max(step, 1.0));
}

}  // namespace

void KegStory::opened() {
  opened_at_ = at();
  end_hold_test();
  if (!out_.gas.now.unvented) return;
  raise(Fault::opened_unvented, Severity::warning,
        message(MessageKey::bad_opened_unvented, *out_.gas.now.unvented),
        message(MessageKey::bad_opened_unvented_detail), keg_task<Vented>(out_.record.keg));
  // Open it stands at the pressure of the room, whatever was logged.
  out_.gas.now.unvented.reset();
  out_.gas.now.on = false;
}

void KegStory::used(Chemical what) {
  if (what == Chemical::acid) out_.chemicals.acid = at();
  if (what == Chemical::chlorine) out_.chemicals.chlorine = at();
}

void KegStory::chemical(Chemical now) {
  if (now == Chemical::none) {
    chemical_ = now;
    put_right(Fault::acid_and_chlorine);
    return;
  }
  if (chemical_ != Chemical::none && chemical_ != now) {
    Cleaned rinse;
    rinse.method = CleaningMethod::rinse;
    raise(Fault::acid_and_chlorine, Severity::danger, message(MessageKey::bad_acid_and_chlorine),
          message(MessageKey::bad_acid_and_chlorine_detail),
          keg_task<Cleaned>(out_.record.keg, rinse));
  }
  chemical_ = now;
}

void KegStory::on(const Inspected& i) {
  out_.unfit = !i.fit_to_use;
  out_.unfit_entry = i.fit_to_use ? std::nullopt : std::optional(id());
  if (i.fit_to_use) {
    put_right(Fault::inspect_after_pressure);
    tight(at());
  }
  if (holds_beer()) {
    if (i.seals_renewed) doesnt_fit(message(MessageKey::misfit_opened_while_full));
    return;
  }
  const Message result = message(i.seals_renewed      ? MessageKey::step_seals_renewed
                                 : i.seals_lubricated ? MessageKey::step_seals_lubricated
                                                      : MessageKey::step_looked_over);
  inspected_ = Done{id(), at(), i.fit_to_use, result};
  if (i.seals_renewed) seals_renewed();
}

// Ticked on a cleaning day, or logged as due work: the same as an inspection that
// renewed them, but nobody said whether the keg is fit to use.
void KegStory::on(const WorkDone& w) {
  used(w.agent_kind == LineAgent::acid          ? Chemical::acid
       : w.agent_kind == LineAgent::chlorinated ? Chemical::chlorine
                                                : Chemical::none);
  if (w.work != WorkKind::seals || !w.complete) return;
  if (holds_beer()) {
    doesnt_fit(message(MessageKey::misfit_opened_while_full));
    return;
  }
  inspected_ = Done{id(), at(), !out_.unfit, message(MessageKey::step_seals_renewed)};
  seals_renewed();
}

void KegStory::seals_renewed() {
  opened();
  hold_readings_ = {};
  for (auto* step : {&sanitised_, &purged_}) {
    if (!*step || !(*step)->counts) continue;
    (*step)->counts = false;
    (*step)->result = message(MessageKey::step_undone_by_opening);
  }
  judge_empty_stage();
}

void KegStory::on(const Cleaned& c) {
  if (holds_beer()) {
    doesnt_fit(message(MessageKey::misfit_cleaned_while_full));
    return;
  }
  opened();
  const bool rinse = c.method == CleaningMethod::rinse;
  if (c.method == CleaningMethod::acid) used(Chemical::acid);
  if (!rinse) {
    out_.chemicals.washed = at();
    out_.chemicals.washed_with = c.agent;
  }
  chemical(c.method == CleaningMethod::acid && !rinse ? Chemical::acid
           : rinse                                    ? Chemical::none
                                                      : chemical_);
  if (rinse) {
    out_.only_rinsed = !(cleaned_ && cleaned_->counts);
    if (out_.only_rinsed) {
      cleaned_ = Done{id(), at(), false, message(MessageKey::step_only_rinsed)};
    }
  } else {
    out_.only_rinsed = false;
    Message result =
        message(MessageKey::step_cleaned, c.agent.empty() ? plain_word(c.method) : c.agent);
    cleaned_ = Done{id(), at(), true, std::move(result)};
  }
  if (sanitised_ && sanitised_->counts) {
    sanitised_->counts = false;
    sanitised_->result = message(MessageKey::step_undone_by_cleaning);
  }
  if (purged_ && purged_->counts) {
    purged_->counts = false;
    purged_->result = message(MessageKey::step_undone_by_opening);
  }
  judge_empty_stage();
}

void KegStory::on(const Sanitised& s) {
  if (holds_beer()) {
    doesnt_fit(message(MessageKey::misfit_sanitised_while_full));
    return;
  }
  if (s.method == SanitisingMethod::acid_sanitiser) chemical(Chemical::acid);
  if (s.method == SanitisingMethod::chlorine) {
    chemical(Chemical::chlorine);
    used(Chemical::chlorine);
  }
  const bool clean = cleaned_ && cleaned_->counts;
  Message result =
      clean ? message(MessageKey::step_sanitised, s.agent.empty() ? plain_word(s.method) : s.agent)
            : message(MessageKey::step_sanitised_unclean);
  sanitised_ = Done{id(), at(), clean, std::move(result)};
  if (purged_ && purged_->counts) {
    purged_->counts = false;
    purged_->result = message(MessageKey::step_undone_by_opening);
  }
  judge_empty_stage();
}

void KegStory::on(const HoldReading& h) {
  pressure_seen(h.pressure, true);
  // Beer takes up and gives off gas: a test of its own, mostly undecided.
  if (holds_beer()) since_filling_.push_back(entry_);
  HoldReadings& test = holds_beer() ? hold_with_beer_ : hold_readings_;
  // A keg opened since its gas was set is off the gas, said or not.
  if (out_.gas.now.on && (!opened_at_ || out_.gas.now.since > *opened_at_)) {
    test.with_gas_on = entry_;
    return;
  }
  if (h.starts_test || hold_over_) test.entries.clear();
  hold_over_ = false;
  test.with_gas_on = nullptr;
  if (test.entries.empty()) test.closed_at = gas_off_at_;
  test.entries.push_back(entry_);
}

// Of all purges since the keg was last open; the words name the last where it stands
// alone.
std::optional<Message> KegStory::purge_result(const Purged& p) const {
  const auto cellar = lookup_.cellar();
  const auto known = purge_known(out_.record, cellar ? cellar->altitude : units::metres(0),
                                 units::celsius(15), false);
  const auto left = known ? left_by_purges(*known, purges_) : std::nullopt;
  if (!left) return std::nullopt;
  const std::int64_t ppm = whole_ppm(left->outcome.oxygen);
  const std::int64_t at_most = whole_ppm(left->outcome.worst);
  if (purges_.size() > 1)
    return message(MessageKey::step_purged_in_order, static_cast<std::int64_t>(purges_.size()), ppm,
                   at_most);
  switch (p.method) {
    case PurgeMethod::cycles:
      return message(MessageKey::step_purged_cycles, present(p.cycles), present(p.pressure), ppm,
                     at_most);
    case PurgeMethod::swept:
      return message(MessageKey::step_purged_swept, ppm, at_most);
    case PurgeMethod::pushed_liquid:
      break;
  }
  return message(MessageKey::step_purged_pushed, ppm, at_most);
}

void KegStory::on(const Purged& p) {
  end_hold_test();
  if (p.pressure) pressure_seen(*p.pressure, false);
  if (holds_beer()) return;  // the headspace after filling: good practice, nothing to judge
  if (!purged_ || !purged_->counts) purges_.clear();  // open since: all begins anew
  purges_.push_back(entry_);
  purged_ = Done{id(), at(), true, {}};  // its result is told at the end: only the last counts
  judge_empty_stage();
}

void KegStory::tight(Instant since) {
  put_right(Fault::leak_found);
  out_.leak.reset();
  out_.tight_since = since;
}

void KegStory::on(const LeakTested& t) {
  leak_tested_ = Done{id(), at(), !t.leak_found,
                      t.leak_found ? message(MessageKey::step_leak_found, t.where)
                                   : message(MessageKey::step_no_leak)};
  if (!t.leak_found) {
    tight(at());
    return;
  }
  out_.leak = FoundLeak{at(), t.where};
  LeakTested again;
  again.method = t.method;
  raise(Fault::leak_found, Severity::warning, message(MessageKey::bad_leak_found, t.where),
        message(MessageKey::bad_leak_found_detail), keg_task<LeakTested>(out_.record.keg, again));
}

}  // namespace ullage::cellar
