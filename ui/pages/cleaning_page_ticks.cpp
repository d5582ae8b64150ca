// SPDX-License-Identifier: GPL-3.0-or-later
//
// The Cleaning page's list at work: ticks, answers, timers.
#include <QTimer>

#include "core/cellar/cleaning_log.h"
#include "core/report/cleaning_words.h"
#include "core/report/names.h"
#include "ui/pages/cleaning_kit.h"
#include "ui/pages/cleaning_page.h"
#include "ui/preferences.h"
#include "ui/prompts.h"

namespace ullage::ui {

void CleaningPage::begin() {
  if (running_ || shown_day() == nullptr) return;
  running_ = *shown_day();
  begun_at_ = context_.cellar.now();
}

void CleaningPage::close_list() {
  running_.reset();
  begun_at_.reset();
  by_hand_.clear();
  timers_.clear();
  chosen_day_ = 0;
  refresh();
}

// What has to be done before, is said; the person may still know better.
bool CleaningPage::may_tick(std::size_t step, cellar::SubjectRef thing) {
  const auto before = cellar::step_before(shown_day()->steps, step, thing,
                                          [&](std::size_t i) { return is_done(i, thing); });
  if (!before) return true;
  const report::Speaker speaker = context_.speaker();
  const cellar::PlanStep& first = shown_day()->steps[*before];
  return context_.prompts.confirm(
      this, tr("Not ticked yet: %1").arg(q(report::say_step(first, speaker))),
      tr("%1 The order keeps people safe.").arg(q(report::say_caution(first, speaker))),
      tr("Tick it all the same"));
}

void CleaningPage::tick(std::size_t step, std::size_t thing, bool on) {
  const cellar::PlannedDay* day = shown_day();
  if (day == nullptr || step >= day->steps.size()) return;
  const cellar::SubjectRef about = day->steps[step].things.at(thing);
  if (on && may_tick(step, about)) {
    begin();
    log_tick(step, about);
  } else if (!on) {
    take_back(step, about);
  }
  // A box's own click led here: it is replaced once that is done.
  QTimer::singleShot(0, this, &CleaningPage::refresh);
}

void CleaningPage::log_tick(std::size_t step, cellar::SubjectRef thing) {
  const cellar::PlanStep& what = running_->steps[step];
  const auto entry = cellar::entry_for(what, thing, *context_.cellar.status(),
                                       cleaning_habits(context_.preferences).kit);
  if (!entry) {
    by_hand_.insert({step, thing});
    return;
  }
  cellar::Act act;
  act.by = s(context_.preferences.initials());
  act.drafts.push_back({*entry, context_.cellar.now(), {}, {}});
  const auto logged = context_.cellar.log(act);
  const auto status = context_.cellar.status();
  if (logged) {
    context_.navigator.announce(
        tr("Logged: %1, %2.")
            .arg(q(report::say_step(what, context_.speaker())), q(report::name_of(thing, *status))),
        true);
  } else {
    context_.navigator.announce(
        q(report::say(logged.error().faults.front().why, context_.speaker())), false);
  }
}

void CleaningPage::take_back(std::size_t step, cellar::SubjectRef thing) {
  if (by_hand_.erase({step, thing}) > 0 || !begun_at_) return;
  const cellar::Entry* entry =
      cellar::done_since(shown_day()->steps[step], thing, context_.cellar.journal(), *begun_at_);
  if (entry == nullptr) return;
  const auto struck = context_.cellar.strike({entry->header.id}, s(tr("unticked")),
                                             s(context_.preferences.initials()));
  context_.navigator.announce(
      struck ? tr("Taken back. The log keeps it, struck.")
             : q(report::say(struck.error().faults.front().why, context_.speaker())),
      false);
}

void CleaningPage::answer(std::size_t step, std::size_t thing) {
  const cellar::PlannedDay* day = shown_day();
  if (day == nullptr || step >= day->steps.size()) return;
  const cellar::PlanStep what = day->steps[step];
  const cellar::SubjectRef about = what.things.at(thing);
  if (!may_tick(step, about)) return;
  begin();
  const auto prefill = cellar::entry_for(what, about, *context_.cellar.status(),
                                         cleaning_habits(context_.preferences).kit);
  if (!prefill) return;
  context_.navigator.open_task({std::string(cellar::kind_of(*prefill)), about, prefill, {}});
  QTimer::singleShot(0, this, &CleaningPage::refresh);
}

void CleaningPage::start_timer(std::size_t step, bool start) {
  const cellar::PlannedDay* day = shown_day();
  if (day == nullptr || step >= day->steps.size()) return;
  if (start) {
    begin();
    timers_[step] = cellar::after(context_.cellar.now(), *day->steps[step].contact);
  } else {
    timers_.erase(step);
  }
  QTimer::singleShot(0, this, &CleaningPage::refresh);
}

}  // namespace ullage::ui
