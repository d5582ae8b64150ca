// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/dialogs/lock_guard.h"

#include <QCoreApplication>
#include <algorithm>

#include "core/cellar/lock_end.h"
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
      LockText::tr("After this, nothing would keep %1 locked, and there may be %2 in it. Go on "
                   "only if none ever went in. Otherwise release the line by a check.")
          .arg(line, agent),
      LockText::tr("None went in: take it off"), LockText::tr("Keep it locked"));
}

bool may_log(const Context& context, QWidget* parent, const cellar::Act& act) {
  const std::vector<cellar::LineLock> ended = cellar::locks_ended_by(act, context.cellar.journal());
  return std::all_of(ended.begin(), ended.end(),
                     [&](const cellar::LineLock& lock) { return ask(context, parent, lock); });
}

}  // namespace

bool may_strike(const Context& context, QWidget* parent,
                const std::vector<cellar::EntryId>& entries) {
  cellar::Act act;
  for (const cellar::EntryId entry : entries) {
    act.drafts.push_back(
        {cellar::Payload(cellar::Struck{entry, {}}), context.cellar.now(), {}, {}});
  }
  return may_log(context, parent, act);
}

bool may_correct(const Context& context, QWidget* parent, cellar::EntryId entry, cellar::Draft as) {
  as.replaces = entry;
  return may_log(context, parent, {{std::move(as)}, {}});
}

bool may_undo(const Context& context, QWidget* parent) {
  const std::optional<cellar::ActId> act = context.cellar.undo_target();
  return !act || may_log(context, parent, cellar::undoing(*act, context.cellar.journal()));
}

bool may_redo(const Context& context, QWidget* parent) {
  const std::optional<cellar::ActId> act = context.cellar.redo_target();
  return !act || may_log(context, parent, cellar::redoing(*act, context.cellar.journal()));
}

}  // namespace ullage::ui
