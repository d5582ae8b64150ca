// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/dialogs/trace.h"

#include <QDialogButtonBox>
#include <QPushButton>
#include <QScrollArea>
#include <QVBoxLayout>
#include <algorithm>
#include <set>

#include "core/report/names.h"
#include "ui/dialogs/forms/scrolled.h"
#include "ui/theme/theme.h"
#include "ui/widgets/ink_label.h"

namespace ullage::ui {

QString batch_words(cellar::BatchId id, const cellar::CellarStatus& cellar) {
  return q(report::batch_with_beer(id, cellar));
}

QString stint_words(const cellar::Stint& stint, const cellar::CellarStatus& cellar,
                    const report::Speaker& speaker) {
  const QString keg = q(report::name_of(cellar::subject(stint.keg), cellar));
  QString words = stint.to ? TraceDialog::tr("%1: %2 to %3")
                                 .arg(keg, q(report::say_day(stint.from, speaker)),
                                      q(report::say_day(*stint.to, speaker)))
                           : TraceDialog::tr("%1: has it, since %2")
                                 .arg(keg, q(report::say_day(stint.from, speaker)));
  for (const cellar::LineId line : stint.lines) {
    words += TraceDialog::tr(", served through %1")
                 .arg(q(report::name_of(cellar::subject(line), cellar)));
  }
  const cellar::KegStatus* now = stint.to ? nullptr : cellar.find(stint.keg);
  if (now && now->lock) words += TraceDialog::tr(", do not serve");
  return words;
}

TraceDialog::TraceDialog(const Context& context, cellar::BatchId batch, QWidget* parent)
    : QDialog(parent), context_(context) {
  setObjectName(QStringLiteral("trace"));
  setWindowTitle(tr("Trace"));
  const auto status = context_.cellar.status();
  const cellar::Journal& journal = context_.cellar.journal();
  const report::Speaker speaker = context_.speaker();
  auto* inside = new QWidget;
  auto* column = new QVBoxLayout(inside);
  column->setContentsMargins(0, 0, space::m, 0);
  column->setSpacing(space::xs);
  add_line(*column, tr("Kegs of this batch"), true);
  const auto stints = cellar::stints_of(batch, journal);
  std::set<cellar::KegId> kegs;
  for (const cellar::Stint& stint : stints) {
    add_line(*column, stint_words(stint, *status, speaker), false);
    kegs.insert(stint.keg);
  }
  if (stints.empty()) add_line(*column, tr("None that is logged."), false);
  if (const auto recall = cellar::recall_of(batch, journal)) {
    add_line(*column,
             tr("Recalled %1 by %2: %3")
                 .arg(q(report::say_time(recall->at, speaker)), q(recall->by), q(recall->reason)),
             true);
  }
  for (const cellar::KegId keg : kegs) {
    column->addSpacing(space::s);
    add_line(*column,
             tr("What else %1 held").arg(q(report::name_of(cellar::subject(keg), *status))), true);
    bool any = false;
    for (const cellar::Stint& other : cellar::stints_of(keg, journal)) {
      if (other.batch == batch) continue;
      any = true;
      const QString until = other.to ? q(report::say_day(*other.to, speaker)) : tr("now");
      add_line(*column,
               tr("%1: %2 to %3")
                   .arg(batch_words(other.batch, *status), q(report::say_day(other.from, speaker)),
                        until),
               false);
    }
    if (!any) add_line(*column, tr("Nothing else."), false);
  }
  column->addStretch(1);
  auto* title = new InkLabel(batch_words(batch, *status), TextRole::title, Ink::text, this);
  title->setWordWrap(true);
  auto* scroll = scrolled(inside);
  auto* buttons = new QDialogButtonBox(this);
  buttons->addButton(tr("&Close"), QDialogButtonBox::RejectRole);
  connect(buttons, &QDialogButtonBox::rejected, this, &QDialog::reject);
  auto* all = new QVBoxLayout(this);
  all->setContentsMargins(space::xl, space::l, space::xl, space::l);
  all->setSpacing(space::m);
  all->addWidget(title);
  all->addWidget(scroll, 1);
  all->addWidget(buttons);
  resize(520, 480);
}

void TraceDialog::add_line(QVBoxLayout& column, const QString& text, bool strong) {
  auto* line = new InkLabel(text, strong ? TextRole::strong : TextRole::body);
  line->setWordWrap(true);
  column.addWidget(line);
}

}  // namespace ullage::ui
