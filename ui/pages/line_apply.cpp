// SPDX-License-Identifier: GPL-3.0-or-later
//
// A what-if of the chosen line that is decided on: what it logs, and what it can't.
#include <algorithm>
#include <utility>

#include "core/cellar/pour_state.h"
#include "core/report/say.h"
#include "core/units/present.h"
#include "ui/pages/line_panel.h"
#include "ui/pages/line_what_if.h"
#include "ui/preferences.h"
#include "ui/prompts.h"

namespace ullage::ui {

QStringList LinePanel::left_out(const std::vector<cellar::Payload>& entries) const {
  const auto logs = [&](std::string_view kind) {
    return std::any_of(entries.begin(), entries.end(),
                       [&](const cellar::Payload& p) { return cellar::kind_of(p) == kind; });
  };
  const QString keg = q(line()->pour->setting.keg_tag);
  const cellar::WhatIf change = tried();
  QStringList out;
  if (change.temperature && !logs(cellar::PlaceRecord::kind))
    out << tr("The temperature can’t be logged: %1 stands in no place. Say where it stands first.")
               .arg(keg);
  if (change.target && !logs(cellar::BeerRecord::kind))
    out << tr("The CO₂ wanted can’t be logged: nobody said which beer is in %1.").arg(keg);
  return out;
}

// The other kegs whose pressure changes with this one's.
QString LinePanel::fed_too() const {
  const cellar::LineStatus* shown = line();
  const cellar::KegStatus* keg = shown->keg ? status_->find(*shown->keg) : nullptr;
  if (!tried().pressure || keg == nullptr) return {};
  QStringList tags;
  for (const cellar::KegStatus* other : cellar::fed_with(*keg, *status_))
    tags << q(other->record.tag);
  if (tags.isEmpty()) return {};
  for (const cellar::RegulatorRecord& r : status_->regulators) {
    if (r.regulator == present(keg->gas.regulator))
      return tr("%1 feeds %2, too: their pressure changes with it and is logged as well.")
          .arg(q(r.name), tags.join(QStringLiteral(", ")));
  }
  return {};
}

// One act, undone as one.
void LinePanel::apply() {
  const cellar::LineStatus* shown = line();
  if (shown == nullptr || !shown->pour) return;
  cellar::Act act;
  act.by = s(context_.preferences.initials());
  const report::Speaker speaker = context_.speaker();
  QStringList words;
  std::vector<cellar::Payload> entries = cellar::entries_for(tried(), *shown, *status_);
  QStringList notes = left_out(entries);
  if (entries.empty()) {
    context_.prompts.tell(this, tr("Nothing to log."), notes.join(QLatin1Char('\n')));
    return;
  }
  if (const QString others = fed_too(); !others.isEmpty()) notes << others;
  for (cellar::Payload& p : entries) {
    words << q(report::say_entry(p, *status_, speaker));
    act.drafts.push_back({std::move(p), context_.cellar.now(), {}, {}});
  }
  const QString detail =
      (words + notes).join(QLatin1Char('\n')) +
      (tried().pressure ? tr("\nTurning a regulator down does not vent the keg.") : QString());
  if (!context_.prompts.confirm(this, tr("Log this as done now?"), detail, tr("Log it"))) return;
  const cellar::Outcome<cellar::ActId> outcome = context_.cellar.log(act);
  if (!outcome) {
    QStringList sentences;
    for (const cellar::Fault& f : outcome.error().faults)
      sentences << q(report::say(f.why, speaker));
    context_.prompts.tell(this, tr("Not logged yet."), sentences.join(QLatin1Char('\n')));
    return;
  }
  what_if_->reset();
  context_.navigator.announce(tr("Logged: %1").arg(words.join(QStringLiteral("; "))), true);
}

}  // namespace ullage::ui
