// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/dialogs/transfer_gravity.h"

#include "core/physics/gravity.h"
#include "ui/context.h"
#include "ui/dialogs/transfer_form.h"

namespace ullage::ui {

using namespace cellar;

BatchGravity gravity_of(BatchId batch, const Journal& journal) {
  BatchGravity known;
  for (const Entry* entry : journal.story(subject(batch))) {
    if (const auto* record = get_if<BatchRecord>(&entry->payload)) {
      if (record->original_gravity) known.original = record->original_gravity;
      if (record->final_gravity && !known.read) known.now = record->final_gravity;
      continue;
    }
    const auto* read = get_if<GravityRead>(&entry->payload);
    if (!read) continue;
    if (read->stage == GravityStage::original) {
      known.original = read->gravity;
      continue;
    }
    known.now = read->gravity;
    PreparationStep step;
    step.kind = GravityRead::kind;
    step.entry = entry->header.id;
    step.done_at = entry->header.happened_at;
    step.still_counts = true;
    known.read = std::move(step);
  }
  return known;
}

QString fermented_words(const BatchGravity& known, const units::Printer& printer) {
  if (!known.original || !known.now) return {};
  const auto beer = physics::fermented(*known.original, *known.now);
  if (!beer) return {};
  return TransferForm::tr("From %1 to %2: %3 alcohol, apparent extract %4 °P")
      .arg(q(printer.print(*known.original)), q(printer.print(*known.now)),
           q(printer.print(beer->abv)), q(printer.number(beer->apparent_extract.count(), 1)));
}

}  // namespace ullage::ui
