// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/dialogs/cleaning_list_preview.h"

#include "core/report/cleaning_list.h"
#include "ui/preferences.h"
#include "ui/print/cleaning_list_pages.h"

namespace ullage::ui {

CleaningListPreview::CleaningListPreview(const Context& context, cellar::PlannedDay day,
                                         QWidget* parent)
    : PaperPreview(context, tr("Cleaning list"), parent), day_(std::move(day)) {
  setObjectName(QStringLiteral("cleaning_list_preview"));
  lay_out();
}

std::unique_ptr<Pages> CleaningListPreview::make_pages() {
  const report::CleaningList list = report::cleaning_list(
      day_, *context().cellar.status(), context().speaker(), s(context().preferences.initials()));
  return std::make_unique<CleaningListPages>(list, paper(), font());
}

}  // namespace ullage::ui
