// SPDX-License-Identifier: GPL-3.0-or-later
//
// The Cleaning page's list at work: ticks, answers, timers.
#include <QStringList>
#include <QTimer>
#include <algorithm>

#include "core/cellar/cleaning_log.h"
#include "core/report/cleaning_words.h"
#include "core/report/names.h"
#include "core/units/present.h"
#include "ui/dialogs/lock_guard.h"
#include "ui/pages/cleaning_kit.h"
#include "ui/pages/cleaning_page.h"
#include "ui/pages/step_card.h"
#include "ui/preferences.h"
#include "ui/prompts.h"

namespace ullage::ui {

namespace {

constexpr std::chrono::hours list_goes_on_within{48};

QString list_words_of(cellar::SubjectRef thing) {
  return QStringLiteral("%1:%2").arg(static_cast<int>(thing.kind)).arg(q(to_text(thing.uuid)));
}

// A step by what it is about, not by its number. A kind of step comes once for a
// place, rinsing once for each thing.
QString list_words_of(const cellar::PlanStep& step) {
  return QStringLiteral("%1/%2/%3")
      .arg(static_cast<int>(step.kind))
      .arg(step.kegs ? 1 : 0)
      .arg(step.things.empty() ? QString() : list_words_of(step.things.front()));
}

}  // namespace

QString CleaningPage::list_key(const char* what) const {
  return QStringLiteral("cleaning-list/%1/%2")
      .arg(q(context_.cellar.file_name()), QString::fromLatin1(what));
}

void CleaningPage::begin() {
  if (running_ || shown_day() == nullptr) return;
  running_ = *shown_day();
  begun_at_ = context_.cellar.now();
  const auto& entries = context_.cellar.journal().entries();
  if (!entries.empty()) begun_after_ = entries.back().header.id;
  remember(context_.preferences, cleaning_habits(context_.preferences), list_key("kit"));
  keep_list();
}

void CleaningPage::keep_list() const {
  Preferences& keep = context_.preferences;
  const auto number = [](auto n) { return QVariant::fromValue<qlonglong>(n); };
  keep.remember(list_key("open"), running_.has_value());
  if (!running_) return;
  keep.remember(list_key("begun"), number(present(begun_at_).time_since_epoch().count()));
  keep.remember(list_key("after"), q(to_text(begun_after_.uuid)));
  keep.remember(list_key("day"), number(running_->day.time_since_epoch().count()));
  QStringList by_hand;
  for (const Ticked& t : by_hand_) {
    by_hand << list_words_of(running_->steps.at(t.first)) + QLatin1Char('=') +
                   list_words_of(t.second);
  }
  keep.remember(list_key("by_hand"), by_hand);
  QStringList timers;
  for (const auto& [step, timer] : timers_) {
    QString kept_timer = QStringLiteral("%1=%2")
                             .arg(list_words_of(running_->steps.at(step)))
                             .arg(timer.ends.time_since_epoch().count());
    if (timer.stopped) {
      kept_timer += QStringLiteral(":%1").arg(timer.stopped->time_since_epoch().count());
    }
    timers << kept_timer;
  }
  keep.remember(list_key("timers"), timers);
}

// The list as it was planned, from the journal as it stood then.
void CleaningPage::recall_list() {
  const Preferences& kept = context_.preferences;
  if (!kept.remembered(list_key("open"), false).toBool()) return;
  const auto number = [&](const char* what) {
    return kept.remembered(list_key(what)).toLongLong();
  };
  const cellar::Instant begun{std::chrono::seconds(number("begun"))};
  const auto now = context_.cellar.now();
  if (begun > now || now - begun > list_goes_on_within) return;
  // Another cellar's file of the same name does not have that entry.
  const auto& entries = context_.cellar.journal().entries();
  const QString after = kept.remembered(list_key("after")).toString();
  const auto last = std::find_if(entries.rbegin(), entries.rend(), [&](const cellar::Entry& e) {
    return q(to_text(e.header.id.uuid)) == after;
  });
  if (last == entries.rend()) return;
  const cellar::AsOf then{begun, last->header.sequence};
  const auto status = context_.cellar.status_as_of(then);
  const cellar::LocalCalendar& calendar = context_.cellar.calendar();
  const cellar::Journal journal = context_.cellar.journal().as_of(then);
  running_ = cellar::plan_cleaning_day(cellar::Date(std::chrono::days(number("day"))),
                                       cellar::due_work(journal, *status, calendar), *status,
                                       calendar, wishes(*status, list_key("kit")));
  if (running_->steps.empty()) return running_.reset();
  begun_at_ = begun;
  begun_after_ = last->header.id;
  const QStringList by_hand = kept.remembered(list_key("by_hand")).toStringList();
  const QStringList timers = kept.remembered(list_key("timers")).toStringList();
  for (std::size_t i = 0; i < running_->steps.size(); ++i) {
    const QString step = list_words_of(running_->steps[i]) + QLatin1Char('=');
    for (const cellar::SubjectRef& thing : running_->steps[i].things) {
      if (by_hand.contains(step + list_words_of(thing))) by_hand_.insert({i, thing});
    }
    for (const QString& timer : timers) {
      if (!timer.startsWith(step)) continue;
      const QStringList times = timer.mid(step.size()).split(QLatin1Char(':'));
      const auto instant = [&](qsizetype at) {
        return cellar::Instant(std::chrono::seconds(times[at].toLongLong()));
      };
      timers_[i] = Timer{instant(0)};
      if (times.size() > 1) timers_[i].stopped = instant(1);
    }
  }
}

void CleaningPage::close_list() {
  running_.reset();
  begun_at_.reset();
  by_hand_.clear();
  timers_.clear();
  chosen_day_ = 0;
  keep_list();
  refresh();
}

// A keg is on the list because it was forecast to be empty by now.
bool CleaningPage::may_open(std::size_t step, cellar::SubjectRef thing) {
  const cellar::StepKind kind = shown_day()->steps[step].kind;
  const auto status = context_.cellar.status();
  if (kind == cellar::StepKind::vent) return true;
  if (!report::waits_for_empty(thing, *shown_day(), *status)) return true;
  return context_.prompts.confirm_risk(
      this, tr("%1 has beer in it").arg(q(report::name_of(thing, *status))),
      tr("It was forecast to have run empty by now. Has it? Then log that first."),
      tr("Tick it all the same"), tr("Don’t tick it"));
}

// What has to be done before, is said; the person may still know better.
bool CleaningPage::may_tick(std::size_t step, cellar::SubjectRef thing) {
  if (!may_open(step, thing)) return false;
  const auto before = cellar::step_before(shown_day()->steps, step, thing,
                                          [&](std::size_t i) { return is_done(i, thing); });
  if (!before) return true;
  const report::Speaker speaker = context_.speaker();
  const cellar::PlanStep& first = shown_day()->steps[*before];
  return context_.prompts.confirm_risk(
      this, tr("Not ticked yet: %1").arg(q(report::say_step(first, speaker))),
      tr("%1 The order keeps people safe.").arg(q(report::say_caution(first, speaker))),
      tr("Tick it all the same"), tr("Don’t tick it"));
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
  keep_list();
  // A box's own click led here: it is replaced once that is done.
  QTimer::singleShot(0, this, &CleaningPage::refresh);
}

void CleaningPage::log_tick(std::size_t step, cellar::SubjectRef thing) {
  const cellar::PlanStep& what = present(running_).steps[step];
  const auto entry =
      cellar::entry_for(what, thing, *context_.cellar.status(),
                        cleaning_habits(context_.preferences, list_key("kit")).kit, stood(step));
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
  if (entry == nullptr || !may_strike(context_, this, {entry->header.id})) return;
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
  const auto prefill =
      cellar::entry_for(what, about, *context_.cellar.status(),
                        cleaning_habits(context_.preferences, list_key("kit")).kit);
  if (!prefill) return;
  context_.navigator.open_task({std::string(cellar::kind_of(*prefill)), about, prefill, {}});
  QTimer::singleShot(0, this, &CleaningPage::refresh);
}

void CleaningPage::start_timer(std::size_t step, bool start) {
  const cellar::PlannedDay* day = shown_day();
  if (day == nullptr || step >= day->steps.size()) return;
  if (start) {
    begin();
    timers_[step] = Timer{cellar::after(context_.cellar.now(), present(day->steps[step].contact))};
  } else if (const auto at = timers_.find(step); at != timers_.end()) {
    at->second.stopped = context_.cellar.now();
  }
  keep_list();
  QTimer::singleShot(0, this, &CleaningPage::refresh);
}

std::optional<units::Duration> CleaningPage::stood(std::size_t step) const {
  const auto at = timers_.find(step);
  if (at == timers_.end() || !running_) return std::nullopt;
  const Timer& timer = at->second;
  const cellar::Instant until = timer.stopped.value_or(context_.cellar.now());
  if (!timer.stopped && until < timer.ends) return std::nullopt;
  const double past = static_cast<double>((until - timer.ends).count()) / 60;
  return present(running_->steps[step].contact) + units::minutes(past);
}

void CleaningPage::tell_time() {
  if (timers_.empty()) return;
  const cellar::Instant now = context_.cellar.now();
  for (StepCard* card : cards_) card->tell_time(now);
  for (auto& [step, timer] : timers_) {
    if (timer.stopped || timer.told || now < timer.ends) continue;
    timer.told = true;
    if (isVisible()) continue;  // its card says so
    context_.navigator.call_to(
        PageId::cleaning,
        tr("%1: the contact time is up.")
            .arg(q(report::say_step(present(running_).steps[step], context_.speaker()))));
  }
}

}  // namespace ullage::ui
