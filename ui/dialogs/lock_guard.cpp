// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/dialogs/lock_guard.h"

#include <QCoreApplication>
#include <algorithm>

#include "ui/context.h"
#include "ui/prompts.h"

namespace ullage::ui {
namespace {

struct LockText {
  Q_DECLARE_TR_FUNCTIONS(LockText)
};

bool ask(const Context& context, QWidget* parent, const cellar::LineLock& lock) {
  const QString line = q(lock.line_name);
  const QString agent = lock.agent.empty() ? LockText::tr("cleaner") : q(lock.agent);
  return context.prompts.confirm_risk(
      parent, LockText::tr("Take the lock off %1 without a check?").arg(line),
      LockText::tr("This entry keeps %1 locked: there may be %2 in it. Strike it only if none ever "
                   "went in. Otherwise release the line by a check.")
          .arg(line, agent),
      LockText::tr("None went in: take it off"), LockText::tr("Keep it locked"));
}

// What would no longer hold if the act were undone.
std::vector<cellar::EntryId> held_by(cellar::ActId act, const cellar::Journal& journal) {
  std::vector<cellar::EntryId> entries;
  for (const cellar::Entry& entry : journal.entries()) {
    if (entry.header.act != act) continue;
    const auto* restored = get_if<cellar::Restored>(&entry.payload);
    entries.push_back(restored ? restored->target : entry.header.id);
  }
  return entries;
}

}  // namespace

bool may_strike(const Context& context, QWidget* parent,
                const std::vector<cellar::EntryId>& entries) {
  const auto status = context.cellar.status();
  return std::all_of(status->lines.begin(), status->lines.end(), [&](const auto& line) {
    const bool held =
        line.lock && std::find(entries.begin(), entries.end(), line.lock->entry) != entries.end();
    return !held || ask(context, parent, *line.lock);
  });
}

bool may_undo(const Context& context, QWidget* parent) {
  const std::optional<cellar::ActId> act = context.cellar.undo_target();
  return !act || may_strike(context, parent, held_by(*act, context.cellar.journal()));
}

}  // namespace ullage::ui
