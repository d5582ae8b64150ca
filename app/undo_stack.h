// SPDX-License-Identifier: GPL-3.0-or-later
//
// Which acts of this session can be taken back, and which of those taken back
// can be brought again. Acts of other sessions and of earlier runs are no
// business of undo: they are struck from the Log page, with a reason.
#pragma once

#include <optional>
#include <vector>

#include "core/cellar/journal.h"

namespace ullage::app {

struct LoggedAct {
  cellar::ActId act;
  std::vector<cellar::EntryId> entries;
};

class UndoStack {
 public:
  // A new act: what was undone before it can no longer be redone.
  void logged(LoggedAct);

  // The latest act of which something is still in force; nullptr when none.
  [[nodiscard]] const LoggedAct* to_undo(const cellar::Journal&) const;
  // Its entries that have not been struck meanwhile, the last first.
  [[nodiscard]] static std::vector<cellar::EntryId> unstruck(const LoggedAct&,
                                                             const cellar::Journal&);
  void undone(cellar::ActId, LoggedAct by);

  struct Undone {
    LoggedAct act;
    LoggedAct by;  // the strikes that undid it
  };
  // The act undone last, while its undoing still has an effect.
  [[nodiscard]] const Undone* to_redo(const cellar::Journal&) const;
  // The strikes that still keep it undone. Redoing strikes those in turn, so
  // that the act and whatever it struck stand exactly as before the undo.
  [[nodiscard]] static std::vector<cellar::EntryId> effective(const Undone&,
                                                              const cellar::Journal&);
  void redone(cellar::ActId);

 private:
  std::vector<LoggedAct> done_;
  std::vector<Undone> undone_;
};

}  // namespace ullage::app
