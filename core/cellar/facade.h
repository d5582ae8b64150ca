// SPDX-License-Identifier: GPL-3.0-or-later
//
// What the screens and the command line may ask of a cellar, and nothing else:
// verbs that log, strike and correct, and questions answered from the journal.
// Implemented in app/ on top of the store; tests use the same implementation
// on a temporary file.
#pragma once

#include <expected>
#include <functional>
#include <memory>
#include <optional>
#include <set>
#include <string>
#include <vector>

#include "core/cellar/journal.h"
#include "core/cellar/status.h"

namespace ullage::cellar {

struct Refusal {
  std::vector<Fault> faults;  // never empty
};
template <class T>
using Outcome = std::expected<T, Refusal>;

// What an accepted change touched. Views refresh what they show of it.
struct Change {
  std::set<SubjectRef> subjects;
  bool from_elsewhere = false;  // another window or program wrote to the file
};

// Keeps a listener alive; dropping it ends the listening.
class Subscription {
 public:
  virtual ~Subscription() = default;
};

class Facade {
 public:
  virtual ~Facade() = default;

  // --- questions
  [[nodiscard]] virtual const Journal& journal() const = 0;
  [[nodiscard]] virtual Instant now() const = 0;
  [[nodiscard]] virtual const LocalCalendar& calendar() const = 0;
  // At the present moment. The same object until something changed or the
  // clock moved on by a minute.
  [[nodiscard]] virtual std::shared_ptr<const CellarStatus> status() const = 0;
  [[nodiscard]] virtual std::shared_ptr<const CellarStatus> status_as_of(const AsOf&) const = 0;
  // From filling to a little past the forecast; for a span of the caller's when
  // both ends are given.
  [[nodiscard]] virtual CarbonationCurveData carbonation_curve(
      KegId, std::optional<Instant> from = {}, std::optional<Instant> to = {}) const = 0;
  [[nodiscard]] virtual bool read_only() const = 0;
  [[nodiscard]] virtual std::string file_name() const = 0;  // for the window title

  // What `log` would say, writing nothing: a form asks this as the person types.
  [[nodiscard]] virtual std::vector<Fault> check(const Act&) const = 0;
  // The state of one keg as it would be after the act, writing nothing.
  [[nodiscard]] virtual std::optional<KegStatus> preview(const Act&, KegId) const = 0;

  // --- verbs: each is one transaction, durable when it returns
  virtual Outcome<ActId> log(const Act&) = 0;
  virtual Outcome<ActId> strike(const std::vector<EntryId>&, const std::string& reason,
                                const std::string& by) = 0;
  virtual Outcome<ActId> restore(const std::vector<EntryId>&, const std::string& reason,
                                 const std::string& by) = 0;
  // Logs a replacement of `entry` that takes its place in the story.
  virtual Outcome<ActId> correct(EntryId entry, const Draft& as, const std::string& reason,
                                 const std::string& by) = 0;
  // The last act of this session that is in force, as a strike; redo restores it.
  virtual Outcome<ActId> undo(const std::string& by) = 0;
  virtual Outcome<ActId> redo(const std::string& by) = 0;
  // The act that undo or redo would work on; nullopt when there is none.
  [[nodiscard]] virtual std::optional<ActId> undo_target() const = 0;
  [[nodiscard]] virtual std::optional<ActId> redo_target() const = 0;

  // --- ids for things about to be registered
  [[nodiscard]] virtual Uuid fresh_uuid() = 0;
  template <class AnyId>
  [[nodiscard]] AnyId fresh() {
    return AnyId{fresh_uuid()};
  }

  // Called after each accepted change, from the thread that owns the façade.
  [[nodiscard]] virtual std::unique_ptr<Subscription> on_change(
      std::function<void(const Change&)>) = 0;
};

}  // namespace ullage::cellar
