// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/dialogs/scan_note.h"

#include <QCoreApplication>
#include <QTimer>
#include <algorithm>

#include "ui/theme/theme.h"
#include "ui/widgets/banner.h"

namespace ullage::ui {
namespace {

struct ScanNoteText {
  Q_DECLARE_TR_FUNCTIONS(ScanNoteText)
};

constexpr int note_stays_milliseconds = 8000;
constexpr const char* note_name = "scan_note";

}  // namespace

void tell_scanned(const QString& keg_tag, QWidget& form) {
  delete form.findChild<Banner*>(QLatin1String(note_name), Qt::FindDirectChildrenOnly);
  auto* note = new Banner(cellar::Severity::info, ScanNoteText::tr("%1 was scanned.").arg(keg_tag),
                          ScanNoteText::tr("It is not opened while this window is open."), &form);
  note->setObjectName(QLatin1String(note_name));
  note->setAttribute(Qt::WA_TransparentForMouseEvents);
  note->setAutoFillBackground(true);
  const int width = std::max(0, form.width() - 2 * space::m);
  note->setFixedWidth(width);
  note->adjustSize();
  note->move(space::m, space::m);
  note->show();
  note->raise();
  QTimer::singleShot(note_stays_milliseconds, note, &QObject::deleteLater);
}

}  // namespace ullage::ui
