// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/dialogs/sheet_preview.h"

#include "core/report/cellar_lists.h"
#include "ui/preferences.h"
#include "ui/print/status_sheet_pages.h"

namespace ullage::ui {

SheetPreview::SheetPreview(const Context& context, QWidget* parent,
                           const std::optional<cellar::AsOf>& as_of)
    : PaperPreview(context, tr("Status sheet"), parent), as_of_(as_of) {
  setObjectName(QStringLiteral("sheet_preview"));
  offer_csv();
  lay_out();
}

std::shared_ptr<const cellar::CellarStatus> SheetPreview::shown_status() const {
  const cellar::Facade& cellar = context().cellar;
  return as_of_ ? cellar.status_as_of(*as_of_) : cellar.status();
}

// Its kegs, one a line.
std::optional<std::string> SheetPreview::csv() const {
  const auto status = shown_status();
  report::Speaker speaker = context().speaker();
  speaker.now = status->now;
  return report::csv_of(report::keg_list(*status, speaker, s(context().preferences.initials())));
}

std::unique_ptr<Pages> SheetPreview::make_pages() {
  const cellar::Facade& cellar = context().cellar;
  const auto status = shown_status();
  report::Speaker speaker = context().speaker();
  speaker.now = status->now;
  report::StatusSheet sheet =
      report::status_sheet(*status, speaker, s(context().preferences.initials()));
  if (as_of_) {
    sheet.printed = s(tr("As of %1, told on %2")
                          .arg(q(report::say_clock(status->now, speaker)),
                               q(report::say_clock(cellar.now(), context().speaker()))));
  }
  return std::make_unique<StatusSheetPages>(std::move(sheet), paper(), font());
}

}  // namespace ullage::ui
