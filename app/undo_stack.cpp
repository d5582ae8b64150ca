// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/undo_stack.h"

#include <algorithm>

namespace ullage::app {

namespace {

bool is_struck(const cellar::Journal& journal, cellar::EntryId id) {
  return journal.struck_by(id) != nullptr;
}

}  // namespace

void UndoStack::logged(LoggedAct act) {
  done_.push_back(std::move(act));
  undone_.clear();
}

const LoggedAct* UndoStack::to_undo(const cellar::Journal& journal) const {
  const auto latest = std::find_if(done_.rbegin(), done_.rend(), [&](const LoggedAct& act) {
    return !unstruck(act, journal).empty();
  });
  return latest == done_.rend() ? nullptr : &*latest;
}

std::vector<cellar::EntryId> UndoStack::unstruck(const LoggedAct& act,
                                                 const cellar::Journal& journal) {
  std::vector<cellar::EntryId> ids;
  std::copy_if(act.entries.rbegin(), act.entries.rend(), std::back_inserter(ids),
               [&](cellar::EntryId id) { return !is_struck(journal, id); });
  return ids;
}

void UndoStack::undone(cellar::ActId act, LoggedAct by) {
  const auto at =
      std::find_if(done_.begin(), done_.end(), [&](const LoggedAct& a) { return a.act == act; });
  if (at == done_.end()) return;
  undone_.push_back({std::move(*at), std::move(by)});
  // Later acts were struck by other hands already: they are over.
  done_.erase(at, done_.end());
}

const UndoStack::Undone* UndoStack::to_redo(const cellar::Journal& journal) const {
  if (undone_.empty() || effective(undone_.back(), journal).empty()) return nullptr;
  return &undone_.back();
}

std::vector<cellar::EntryId> UndoStack::effective(const Undone& undone,
                                                  const cellar::Journal& journal) {
  std::vector<cellar::EntryId> ids;
  std::copy_if(
      undone.by.entries.rbegin(), undone.by.entries.rend(), std::back_inserter(ids),
      [&](cellar::EntryId id) {
        const cellar::Entry* strike = journal.find(id);
        const auto* what = strike == nullptr ? nullptr : get_if<cellar::Struck>(&strike->payload);
        const cellar::Entry* decisive = what == nullptr ? nullptr : journal.struck_by(what->target);
        return decisive != nullptr && decisive->header.id == id;
      });
  return ids;
}

void UndoStack::redone(cellar::ActId act) {
  if (undone_.empty() || undone_.back().act.act != act) return;
  done_.push_back(std::move(undone_.back().act));
  undone_.pop_back();
}

}  // namespace ullage::app
