// SPDX-License-Identifier: GPL-3.0-or-later
//
// A small way of telling a cellar's story in code: "three days ago at 19:20
// these things happened together". Used by the demo cellar only.
#pragma once

#include <string>
#include <utility>
#include <vector>

#include "core/cellar/facade.h"

namespace ullage::app {

class DemoStory {
 public:
  DemoStory(cellar::Instant now, const cellar::LocalCalendar& calendar, cellar::IdSource& ids);

  // A wall-clock time so many days ago; never later than now.
  [[nodiscard]] cellar::Instant ago(int days, int hour, int minute = 0) const;
  [[nodiscard]] cellar::Instant hours_ago(double hours) const;
  [[nodiscard]] cellar::Date date(int days_from_today) const;

  template <class AnyId>
  [[nodiscard]] AnyId fresh() {
    AnyId id;
    ids_.fill(id);
    return id;
  }

  [[nodiscard]] cellar::IdSource& ids() { return ids_; }

  // One act of things that happened at one time.
  template <class... Payloads>
  void did(cellar::Instant at, Payloads&&... payloads) {
    cellar::Act act;
    act.by = by_;
    (act.drafts.push_back({cellar::Payload(std::forward<Payloads>(payloads)), at, {}, {}}), ...);
    acts_.push_back(std::move(act));
  }
  // The same with a remark on the first entry.
  template <class... Payloads>
  void noted(cellar::Instant at, std::string note, Payloads&&... payloads) {
    did(at, std::forward<Payloads>(payloads)...);
    acts_.back().drafts.front().note = std::move(note);
  }
  void by(std::string initials) { by_ = std::move(initials); }

  [[nodiscard]] std::vector<cellar::Act> take();  // in order of time

 private:
  cellar::Instant now_;
  const cellar::LocalCalendar& calendar_;
  cellar::IdSource& ids_;
  std::string by_ = "MK";
  std::vector<cellar::Act> acts_;
};

}  // namespace ullage::app
