// SPDX-License-Identifier: GPL-3.0-or-later
//
// Where a round stands: at which station, what was logged, skipped or taken back on
// it. Each station is logged as one act; what is typed again at one that was logged
// corrects it. Kept when the window closes: within 18 hours the next one goes on there.
#pragma once

#include <map>
#include <set>
#include <string>
#include <vector>

#include "core/cellar/round.h"
#include "ui/context.h"

namespace ullage::ui {

// What was read at a station.
struct RoundRead {
  std::vector<std::optional<cellar::RoundValue>> values;
  std::string remark;
  cellar::Instant when{};
  bool when_stated = false;  // else it is simply now
};

class RoundWalk {
 public:
  explicit RoundWalk(const Context&);

  [[nodiscard]] const cellar::RoundStation* station() const;  // nullptr at the end
  [[nodiscard]] bool at_end() const { return at_ >= order_.size(); }
  [[nodiscard]] bool has_stations() const { return !stations_.empty(); }
  [[nodiscard]] std::size_t number() const { return at_ + 1; }
  [[nodiscard]] std::size_t count() const { return order_.size(); }
  [[nodiscard]] std::size_t logged() const { return logged_.size(); }
  [[nodiscard]] std::size_t skipped() const { return skipped_.size(); }
  [[nodiscard]] bool was_logged(cellar::SubjectRef about) const { return logged_.contains(about); }
  [[nodiscard]] bool was_skipped(cellar::SubjectRef about) const {
    return skipped_.contains(about);
  }

  void skip();
  void back();
  void to_what_was_skipped();
  bool go_to(cellar::SubjectRef);  // false when the round has no such station
  // Logs and goes on; with nothing read the station counts as looked at.
  cellar::Outcome<void> log(const RoundRead&);
  // The last act of this round is taken back, and its station shown again; nullopt
  // when there is none, or something else was logged since.
  [[nodiscard]] std::optional<cellar::SubjectRef> to_take_back() const;
  cellar::Outcome<void> take_back();

  void take_instrument(std::size_t question, std::optional<cellar::InstrumentId>);
  void remember() const;

 private:
  void start_over();
  void recall();
  void recall_entries();
  void recall_instruments();  // taken at a station before, whether or not a reading came of it
  void keep_entries_of(cellar::ActId, cellar::SubjectRef about);
  [[nodiscard]] QString key(const char* what) const;
  [[nodiscard]] QString instrument_key(const cellar::RoundStation&,
                                       const cellar::RoundQuestion&) const;

  struct Logged {
    cellar::ActId act;
    cellar::SubjectRef about;
  };
  Context context_;
  std::vector<cellar::RoundStation> stations_;
  std::vector<std::size_t> order_;  // of the stations still to walk, with those walked
  std::size_t at_ = 0;
  std::set<cellar::SubjectRef> logged_, skipped_;
  std::map<cellar::SubjectRef, std::vector<cellar::EntryId>> entries_;  // logged on this round
  std::vector<Logged> acts_;                                            // since it was opened
};

}  // namespace ullage::ui
