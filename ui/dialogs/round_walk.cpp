// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/dialogs/round_walk.h"

#include <algorithm>

#include "ui/preferences.h"

namespace ullage::ui {
namespace {

constexpr std::chrono::hours round_goes_on_within{18};

QString uuid_text(const cellar::Uuid& uuid) { return q(cellar::to_text(uuid)); }

QStringList uuids_of(const std::set<cellar::SubjectRef>& subjects) {
  QStringList all;
  for (const cellar::SubjectRef& s : subjects) all << uuid_text(s.uuid);
  return all;
}

}  // namespace

RoundWalk::RoundWalk(const Context& context) : context_(context) {
  stations_ = cellar::round_stations(*context_.cellar.status(), context_.cellar.journal());
  recall_instruments();
  start_over();
  recall();
}

void RoundWalk::start_over() {
  order_.resize(stations_.size());
  for (std::size_t i = 0; i < order_.size(); ++i) order_[i] = i;
  at_ = 0;
}

QString RoundWalk::key(const char* what) const {
  return QStringLiteral("round/%1/%2")
      .arg(q(context_.cellar.file_name()), QString::fromLatin1(what));
}

void RoundWalk::remember() const {
  Preferences& keep = context_.preferences;
  const cellar::RoundStation* here = station();
  keep.remember(key("at"), here != nullptr ? uuid_text(here->about.uuid) : QString());
  keep.remember(key("when"),
                QVariant::fromValue<qlonglong>(context_.cellar.now().time_since_epoch().count()));
  keep.remember(key("logged"), uuids_of(logged_));
  keep.remember(key("skipped"), uuids_of(skipped_));
  QStringList entries;
  for (const auto& [about, ids] : entries_) {
    for (const cellar::EntryId id : ids) {
      entries << uuid_text(about.uuid) + QLatin1Char('/') + uuid_text(id.uuid);
    }
  }
  keep.remember(key("entries"), entries);
}

void RoundWalk::recall() {
  const Preferences& kept = context_.preferences;
  const QString at = kept.remembered(key("at")).toString();
  const cellar::Instant when{std::chrono::seconds(kept.remembered(key("when")).toLongLong())};
  if (at.isEmpty() || context_.cellar.now() - when > round_goes_on_within) return;
  const QStringList logged = kept.remembered(key("logged")).toStringList();
  const QStringList skipped = kept.remembered(key("skipped")).toStringList();
  for (std::size_t i = 0; i < stations_.size(); ++i) {
    const QString id = uuid_text(stations_[i].about.uuid);
    if (logged.contains(id)) logged_.insert(stations_[i].about);
    if (skipped.contains(id)) skipped_.insert(stations_[i].about);
    if (id == at) at_ = i;
  }
  recall_entries();
}

void RoundWalk::recall_entries() {
  const QStringList kept = context_.preferences.remembered(key("entries")).toStringList();
  for (const QString& each : kept) {
    const auto id = cellar::uuid_from_text(s(each.section(QLatin1Char('/'), 1)));
    const QString about = each.section(QLatin1Char('/'), 0, 0);
    for (const cellar::RoundStation& at : stations_) {
      if (id && uuid_text(at.about.uuid) == about) {
        entries_[at.about].push_back(cellar::EntryId{*id});
      }
    }
  }
}

QString RoundWalk::instrument_key(const cellar::RoundStation& at,
                                  const cellar::RoundQuestion& question) const {
  return key("read_on/") + uuid_text(at.about.uuid) +
         QStringLiteral("/%1").arg(static_cast<int>(question.ask));
}

void RoundWalk::recall_instruments() {
  for (cellar::RoundStation& at : stations_) {
    for (cellar::RoundQuestion& question : at.questions) {
      const QVariant kept = context_.preferences.remembered(instrument_key(at, question));
      if (!kept.isValid()) continue;
      question.instrument.reset();
      for (const cellar::RoundInstrument& i : question.instruments) {
        if (uuid_text(i.instrument.uuid) == kept.toString()) question.instrument = i.instrument;
      }
    }
  }
}

void RoundWalk::take_instrument(std::size_t question, std::optional<cellar::InstrumentId> on) {
  cellar::RoundStation& here = stations_.at(order_.at(at_));
  here.questions.at(question).instrument = on;
  context_.preferences.remember(instrument_key(here, here.questions[question]),
                                on ? uuid_text(on->uuid) : QString());
}

const cellar::RoundStation* RoundWalk::station() const {
  return at_end() ? nullptr : &stations_[order_[at_]];
}

void RoundWalk::skip() {
  const cellar::RoundStation* here = station();
  if (here == nullptr) return;
  if (!logged_.contains(here->about)) skipped_.insert(here->about);
  ++at_;
}

void RoundWalk::back() {
  if (at_ > 0) --at_;
}

void RoundWalk::to_what_was_skipped() {
  order_.clear();
  for (std::size_t i = 0; i < stations_.size(); ++i) {
    if (skipped_.contains(stations_[i].about)) order_.push_back(i);
  }
  at_ = 0;
}

bool RoundWalk::go_to(cellar::SubjectRef about) {
  const auto find = [&] {
    const auto at = std::find_if(order_.begin(), order_.end(),
                                 [&](std::size_t i) { return stations_[i].about == about; });
    if (at == order_.end()) return false;
    at_ = static_cast<std::size_t>(at - order_.begin());
    return true;
  };
  if (find()) return true;
  const bool there = std::any_of(stations_.begin(), stations_.end(),
                                 [&](const cellar::RoundStation& s) { return s.about == about; });
  if (!there) return false;
  start_over();  // it was walking to what was skipped
  return find();
}

void RoundWalk::keep_entries_of(cellar::ActId act, cellar::SubjectRef about) {
  const auto& entries = context_.cellar.journal().entries();
  for (auto e = entries.rbegin(); e != entries.rend() && e->header.act == act; ++e) {
    entries_[about].push_back(e->header.id);
  }
  acts_.push_back({act, about});
}

cellar::Outcome<void> RoundWalk::log(const RoundRead& read) {
  const cellar::RoundStation* here = station();
  if (here == nullptr) return {};
  cellar::Act act;
  act.by = s(context_.preferences.initials());
  act.drafts =
      cellar::round_drafts(*here, read.values, read.when, *context_.cellar.status(), read.remark);
  cellar::correct_instead(act.drafts, entries_[here->about], context_.cellar.journal(),
                          read.when_stated);
  if (!act.drafts.empty()) {
    const auto outcome = context_.cellar.log(act);
    if (!outcome) return std::unexpected(outcome.error());
    keep_entries_of(*outcome, here->about);
  }
  logged_.insert(here->about);
  skipped_.erase(here->about);
  ++at_;
  return {};
}

std::optional<cellar::SubjectRef> RoundWalk::to_take_back() const {
  if (acts_.empty() || context_.cellar.undo_target() != acts_.back().act) return std::nullopt;
  return acts_.back().about;
}

cellar::Outcome<void> RoundWalk::take_back() {
  const auto about = to_take_back();
  if (!about) return {};
  const auto undone = context_.cellar.undo(s(context_.preferences.initials()));
  if (!undone) return std::unexpected(undone.error());
  acts_.pop_back();
  const cellar::Journal& journal = context_.cellar.journal();
  const auto& ids = entries_[*about];
  const bool some_stand = std::any_of(ids.begin(), ids.end(), [&](cellar::EntryId id) {
    return journal.standing(id) == cellar::Standing::in_force;
  });
  if (!some_stand) logged_.erase(*about);
  go_to(*about);
  return {};
}

}  // namespace ullage::ui
