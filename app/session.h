// SPDX-License-Identifier: GPL-3.0-or-later
//
// One cellar file at work: the façade's verbs on top of the store, the journal
// in memory and the replay. Each verb checks, writes one transaction, takes in
// what was written (and what other programs wrote meanwhile), and tells the
// listeners. Belongs to the thread that made it.
#pragma once

#include <expected>
#include <filesystem>
#include <functional>
#include <memory>
#include <string>

#include "app/undo_stack.h"
#include "app/zone_calendar.h"
#include "core/cellar/facade.h"
#include "core/cellar/register.h"
#include "core/cellar/replay.h"
#include "core/store/journal_store.h"

class QTimer;

namespace ullage::app {

class Listeners;

class CellarSession final : public cellar::Facade {
 public:
  // What the session draws on; both must outlive it.
  struct Tools {
    const cellar::Clock& clock;
    cellar::IdSource& ids;
  };
  using Made = std::expected<std::unique_ptr<CellarSession>, store::StoreError>;

  [[nodiscard]] static Made open(const std::filesystem::path&, Tools,
                                 const store::OpenOptions& = {});
  // A new file whose first entry describes the cellar, set up at the moment given, or now.
  [[nodiscard]] static Made create(const std::filesystem::path&, const cellar::CellarDescribed&,
                                   Tools, const store::OpenOptions& = {},
                                   std::optional<cellar::Instant> set_up_at = {});
  ~CellarSession() override;

  // Asks the file every second whether another program wrote to it. Needs a
  // running event loop.
  void watch();
  // Asks once, now. True when something was taken in.
  bool look_for_changes();

  [[nodiscard]] const store::JournalStore& file() const { return store_; }

  [[nodiscard]] const cellar::Journal& journal() const override { return journal_; }
  [[nodiscard]] cellar::Instant now() const override { return tools_.clock.now(); }
  [[nodiscard]] const cellar::LocalCalendar& calendar() const override { return calendar_; }
  [[nodiscard]] std::shared_ptr<const cellar::CellarStatus> status() const override;
  [[nodiscard]] std::shared_ptr<const cellar::CellarStatus> status_as_of(
      const cellar::AsOf&) const override;
  [[nodiscard]] cellar::CarbonationCurveData carbonation_curve(
      cellar::KegId, std::optional<cellar::Instant> from,
      std::optional<cellar::Instant> to) const override;
  [[nodiscard]] bool read_only() const override { return store_.read_only(); }
  [[nodiscard]] std::string file_name() const override;

  [[nodiscard]] std::vector<cellar::Fault> check(const cellar::Act&) const override;
  [[nodiscard]] std::optional<cellar::KegStatus> preview(const cellar::Act&,
                                                         cellar::KegId) const override;

  cellar::Outcome<cellar::ActId> log(const cellar::Act&) override;
  // All that `logs` logs becomes one transaction of the file, which takes a fraction of
  // the time of one for each act. On failure, or when it throws, the file has none of it:
  // this session, which has heard of it, must go then.
  [[nodiscard]] store::Expected<void> as_one(const std::function<void()>& logs);
  cellar::Outcome<cellar::ActId> strike(const std::vector<cellar::EntryId>&,
                                        const std::string& reason, const std::string& by) override;
  cellar::Outcome<cellar::ActId> restore(const std::vector<cellar::EntryId>&,
                                         const std::string& reason, const std::string& by) override;
  cellar::Outcome<cellar::ActId> correct(cellar::EntryId, const cellar::Draft& as,
                                         const std::string& reason, const std::string& by) override;
  cellar::Outcome<cellar::ActId> undo(const std::string& by) override;
  cellar::Outcome<cellar::ActId> redo(const std::string& by) override;
  [[nodiscard]] std::optional<cellar::ActId> undo_target() const override;
  [[nodiscard]] std::optional<cellar::ActId> redo_target() const override;

  [[nodiscard]] cellar::Uuid fresh_uuid() override { return tools_.ids.next(); }
  [[nodiscard]] std::unique_ptr<cellar::Subscription> on_change(
      std::function<void(const cellar::Change&)>) override;

 private:
  CellarSession(store::JournalStore, std::vector<cellar::Entry>, Tools);

  // Writes the act when it may be logged.
  // `note` hears of the act before the listeners do: what they are told of can
  // be undone by then.
  cellar::Outcome<LoggedAct> write(const cellar::Act&,
                                   const std::function<void(const LoggedAct&)>& note);
  [[nodiscard]] std::vector<cellar::Entry> entries_of(const cellar::Act&, cellar::ActId);
  bool catch_up(std::optional<cellar::ActId> ours);
  void take_in(std::vector<cellar::Entry>, std::optional<cellar::ActId> ours);
  void follow_zone();

  Tools tools_;
  store::JournalStore store_;
  cellar::Journal journal_;
  mutable cellar::Register register_;
  ZoneCalendar calendar_;
  cellar::Replay replay_;
  UndoStack undo_;
  bool behind_ = false;  // the file has entries that could not be read yet
  std::shared_ptr<Listeners> listeners_;
  std::unique_ptr<QTimer> timer_;

  struct Shown {
    std::uint64_t revision = 0;
    cellar::Instant minute{};
    std::shared_ptr<const cellar::CellarStatus> status;
  };
  mutable Shown present_;
  struct ShownPast {
    std::uint64_t revision = 0;
    cellar::AsOf limits;
    cellar::Instant minute{};
    std::shared_ptr<const cellar::CellarStatus> status;
  };
  mutable ShownPast past_;
};

}  // namespace ullage::app
