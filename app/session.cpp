// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/session.h"

#include <QTimer>
#include <algorithm>
#include <chrono>
#include <system_error>

#include "app/listeners.h"
#include "core/cellar/excerpt.h"
#include "core/cellar/validate.h"

namespace ullage::app {

using cellar::Act;
using cellar::ActId;
using cellar::Draft;
using cellar::Entry;
using cellar::EntryId;
using cellar::Fault;
using cellar::Instant;
using cellar::MessageKey;
using cellar::Outcome;
using cellar::Refusal;

namespace {

constexpr std::chrono::seconds between_looks{1};

Refusal refusal(MessageKey key) {
  return {{{.draft = 0, .field = {}, .why = cellar::message(key)}}};
}
Refusal refusal(MessageKey key, std::string sentence) {
  return {{{.draft = 0, .field = {}, .why = cellar::message(key, std::move(sentence))}}};
}

Instant minute_of(Instant t) { return std::chrono::floor<std::chrono::minutes>(t); }

}  // namespace

CellarSession::CellarSession(store::JournalStore store, std::vector<Entry> entries, Tools tools)
    : tools_(tools),
      store_(std::move(store)),
      register_(journal_),
      replay_(journal_, calendar_),
      listeners_(std::make_shared<Listeners>()) {
  journal_.append(std::move(entries));
  register_.refresh();
  follow_zone();
}

CellarSession::~CellarSession() = default;

CellarSession::Made CellarSession::open(const std::filesystem::path& path, Tools tools,
                                        const store::OpenOptions& options) {
  auto opened = store::JournalStore::open(path, options);
  if (!opened) return std::unexpected(opened.error());
  auto entries = opened->load();
  if (!entries) return std::unexpected(entries.error());
  return std::unique_ptr<CellarSession>(
      new CellarSession(std::move(*opened), std::move(*entries), tools));
}

CellarSession::Made CellarSession::create(const std::filesystem::path& path,
                                          const cellar::CellarDescribed& described, Tools tools,
                                          const store::OpenOptions& options,
                                          std::optional<Instant> set_up_at) {
  const Instant now = tools.clock.now();
  auto created = store::JournalStore::create(path, tools.ids.next(), now, options);
  if (!created) return std::unexpected(created.error());
  Entry first;
  tools.ids.fill(first.header.id);
  tools.ids.fill(first.header.act);
  first.header.happened_at = set_up_at.value_or(now);
  first.header.recorded_at = now;
  first.header.utc_offset = ZoneCalendar(described.time_zone).offset_at(now);
  first.payload = described;
  std::vector<Entry> entries = {std::move(first)};
  if (auto written = created->append(entries); !written) {
    created->close();
    std::error_code ignored;
    std::filesystem::remove(path, ignored);  // an empty file would be no cellar
    return std::unexpected(written.error());
  }
  return std::unique_ptr<CellarSession>(
      new CellarSession(std::move(*created), std::move(entries), tools));
}

void CellarSession::watch() {
  timer_ = std::make_unique<QTimer>();
  timer_->setInterval(between_looks);
  QObject::connect(timer_.get(), &QTimer::timeout, timer_.get(), [this] { look_for_changes(); });
  timer_->start();
}

bool CellarSession::look_for_changes() {
  const auto changed = store_.changed_elsewhere();
  if (!behind_ && (!changed || !*changed)) return false;
  return catch_up(std::nullopt);
}

// A file that cannot be read for a moment is asked again at the next look.
bool CellarSession::catch_up(std::optional<ActId> ours) {
  auto entries = store_.load_after(journal_.last_sequence());
  behind_ = !entries;
  if (!entries || entries->empty()) return false;
  take_in(std::move(*entries), ours);
  return true;
}

std::string CellarSession::file_name() const { return store_.path().filename().string(); }

void CellarSession::follow_zone() {
  const auto* described = register_.find<cellar::CellarDescribed>(cellar::cellar_subject());
  const std::string zone = described == nullptr ? "UTC" : described->time_zone;
  if (zone != calendar_.zone_name()) calendar_.set_zone(zone);
}

std::shared_ptr<const cellar::CellarStatus> CellarSession::status() const {
  const Instant minute = minute_of(now());
  if (!present_.status || present_.revision != journal_.revision() || present_.minute != minute) {
    present_ = {journal_.revision(), minute,
                std::make_shared<const cellar::CellarStatus>(replay_.status(now()))};
  }
  return present_.status;
}

std::shared_ptr<const cellar::CellarStatus> CellarSession::status_as_of(
    const cellar::AsOf& limits) const {
  const Instant minute = minute_of(now());
  const bool same = past_.status && past_.revision == journal_.revision() &&
                    past_.limits.happened_by == limits.happened_by &&
                    past_.limits.recorded_through == limits.recorded_through &&
                    (limits.happened_by || past_.minute == minute);
  if (!same) {
    const cellar::Journal then = journal_.as_of(limits);
    const cellar::Replay replay(then, calendar_);
    past_ = {journal_.revision(), limits, minute,
             std::make_shared<const cellar::CellarStatus>(
                 replay.status(limits.happened_by.value_or(now())))};
  }
  return past_.status;
}

cellar::CarbonationCurveData CellarSession::carbonation_curve(cellar::KegId keg,
                                                              std::optional<Instant> from,
                                                              std::optional<Instant> to) const {
  return replay_.carbonation_curve(keg, now(), from, to);
}

std::vector<Fault> CellarSession::check(const Act& act) const {
  register_.refresh();
  std::vector<Fault> faults = cellar::validate(act, journal_, register_, now());
  for (std::size_t i = 0; i < act.drafts.size(); ++i) {
    const auto* described = get_if<cellar::CellarDescribed>(&act.drafts[i].payload);
    if (described == nullptr || described->time_zone.empty()) continue;
    if (is_known_zone(described->time_zone)) continue;
    faults.push_back(
        {i, "time_zone", cellar::message(MessageKey::fault_unknown_zone, described->time_zone)});
  }
  return faults;
}

std::optional<cellar::KegStatus> CellarSession::preview(const Act& act, cellar::KegId keg) const {
  const cellar::Journal scratch = cellar::excerpt_with(journal_, keg, act);
  if (!scratch.knows(cellar::subject(keg))) return std::nullopt;
  return cellar::Replay(scratch, calendar_).keg_status(keg, now());
}

std::vector<Entry> CellarSession::entries_of(const Act& act, ActId id) {
  const Instant recorded = now();
  std::vector<Entry> entries;
  entries.reserve(act.drafts.size());
  for (const Draft& draft : act.drafts) {
    Entry& e = entries.emplace_back();
    tools_.ids.fill(e.header.id);
    e.header.act = id;
    e.header.happened_at = draft.happened_at;
    e.header.recorded_at = recorded;
    e.header.utc_offset = calendar_.offset_at(recorded);
    e.header.by = act.by;
    e.header.replaces = draft.replaces;
    e.header.note = draft.note;
    e.payload = draft.payload;
  }
  return entries;
}

Outcome<LoggedAct> CellarSession::write(const Act& act,
                                        const std::function<void(const LoggedAct&)>& note) {
  if (read_only()) {
    return std::unexpected(refusal(MessageKey::fault_read_only, store::describe(store_.access())));
  }
  look_for_changes();
  if (std::vector<Fault> faults = check(act); !faults.empty()) {
    return std::unexpected(Refusal{std::move(faults)});
  }
  LoggedAct logged;
  tools_.ids.fill(logged.act);
  std::vector<Entry> entries = entries_of(act, logged.act);
  for (const Entry& e : entries) logged.entries.push_back(e.header.id);
  if (const auto written = store_.append(entries); !written) {
    return std::unexpected(refusal(MessageKey::fault_store, store::describe(written.error())));
  }
  note(logged);
  // Another program may have written between our look and our act.
  if (!behind_ && entries.front().header.sequence == journal_.last_sequence() + 1) {
    take_in(std::move(entries), logged.act);
  } else {
    catch_up(logged.act);
  }
  return logged;
}

void CellarSession::take_in(std::vector<Entry> entries, std::optional<ActId> ours) {
  cellar::Change mine;
  cellar::Change theirs{.subjects = {}, .from_elsewhere = true};
  bool any_of_mine = false;
  bool any_of_theirs = false;
  for (auto from = entries.begin(); from != entries.end();) {
    const bool is_mine = from->header.act == ours;
    const auto to = std::find_if(from, entries.end(),
                                 [&](const Entry& e) { return (e.header.act == ours) != is_mine; });
    (is_mine ? any_of_mine : any_of_theirs) = true;
    const std::uint64_t before = journal_.revision();
    for (; from != to; ++from) journal_.append(std::move(*from));
    (is_mine ? mine : theirs).subjects.merge(journal_.changed_since(before));
  }
  register_.refresh();
  follow_zone();
  if (any_of_theirs) listeners_->tell(theirs);
  if (any_of_mine) listeners_->tell(mine);
}

std::unique_ptr<cellar::Subscription> CellarSession::on_change(
    std::function<void(const cellar::Change&)> listener) {
  return listeners_->add(std::move(listener));
}

Outcome<ActId> CellarSession::log(const Act& act) {
  auto logged = write(act, [this](const LoggedAct& done) { undo_.logged(done); });
  if (!logged) return std::unexpected(std::move(logged.error()));
  return logged->act;
}

store::Expected<void> CellarSession::as_one(const std::function<void()>& logs) {
  return store_.as_one(logs);
}

Outcome<ActId> CellarSession::strike(const std::vector<EntryId>& entries, const std::string& reason,
                                     const std::string& by) {
  Act act{.drafts = {}, .by = by};
  for (const EntryId id : entries) {
    if (journal_.standing(id) == cellar::Standing::replaced) {
      return std::unexpected(refusal(MessageKey::fault_already_replaced));
    }
    act.drafts.push_back({.payload = cellar::Struck{id, reason}, .happened_at = now()});
    // What it corrected must not come back in its stead.
    for (const Entry* e : journal_.chain(id)) {
      if (e->header.id == id || journal_.struck_by(e->header.id) != nullptr) continue;
      act.drafts.push_back({.payload = cellar::Struck{e->header.id, reason}, .happened_at = now()});
    }
  }
  return log(act);
}

Outcome<ActId> CellarSession::restore(const std::vector<EntryId>& entries,
                                      const std::string& reason, const std::string& by) {
  Act act{.drafts = {}, .by = by};
  for (const EntryId id : entries) {
    act.drafts.push_back({.payload = cellar::Restored{id, reason}, .happened_at = now()});
  }
  return log(act);
}

// The reason is kept as a strike of the entry that was wrong, beside the right one.
Outcome<ActId> CellarSession::correct(EntryId entry, const Draft& as, const std::string& reason,
                                      const std::string& by) {
  Act act{.drafts = {as}, .by = by};
  act.drafts[0].replaces = entry;
  act.drafts.push_back({.payload = cellar::Struck{entry, reason}, .happened_at = now()});
  return log(act);
}

Outcome<ActId> CellarSession::undo(const std::string& by) {
  look_for_changes();
  const LoggedAct* target = undo_.to_undo(journal_);
  if (target == nullptr) return std::unexpected(refusal(MessageKey::fault_nothing_to_undo));
  const ActId id = target->act;
  Act act{.drafts = {}, .by = by};
  for (const EntryId e : UndoStack::unstruck(*target, journal_)) {
    act.drafts.push_back({.payload = cellar::Struck{e, "undone"}, .happened_at = now()});
  }
  auto written = write(act, [this, id](const LoggedAct& strikes) { undo_.undone(id, strikes); });
  if (!written) return std::unexpected(std::move(written.error()));
  return written->act;
}

Outcome<ActId> CellarSession::redo(const std::string& by) {
  look_for_changes();
  const UndoStack::Undone* target = undo_.to_redo(journal_);
  if (target == nullptr) return std::unexpected(refusal(MessageKey::fault_nothing_to_redo));
  const ActId id = target->act.act;
  Act act{.drafts = {}, .by = by};
  for (const EntryId e : UndoStack::effective(*target, journal_)) {
    act.drafts.push_back({.payload = cellar::Struck{e, "redone"}, .happened_at = now()});
  }
  auto written = write(act, [this, id](const LoggedAct&) { undo_.redone(id); });
  if (!written) return std::unexpected(std::move(written.error()));
  return written->act;
}

std::optional<ActId> CellarSession::undo_target() const {
  const LoggedAct* target = undo_.to_undo(journal_);
  return target == nullptr ? std::nullopt : std::optional(target->act);
}

std::optional<ActId> CellarSession::redo_target() const {
  const UndoStack::Undone* target = undo_.to_redo(journal_);
  return target == nullptr ? std::nullopt : std::optional(target->act.act);
}

}  // namespace ullage::app
