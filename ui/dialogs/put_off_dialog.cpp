// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/dialogs/put_off_dialog.h"

#include <QDialogButtonBox>
#include <QHBoxLayout>
#include <QPushButton>
#include <QVBoxLayout>

#include "core/report/cleaning_words.h"
#include "core/report/names.h"
#include "ui/dialogs/text_limits.h"
#include "ui/preferences.h"
#include "ui/theme/style.h"
#include "ui/theme/theme.h"
#include "ui/widgets/form_section.h"
#include "ui/widgets/ink_label.h"
#include "ui/widgets/screen_room.h"
#include "ui/widgets/text_edit.h"
#include "ui/widgets/when_edit.h"

namespace ullage::ui {

PutOffDialog::PutOffDialog(const Context& context, cellar::DueWork row,
                           std::vector<cellar::DueWork> all, QWidget* parent)
    : QDialog(parent), context_(context), row_(std::move(row)), all_(std::move(all)) {
  setObjectName(QStringLiteral("put_off"));
  setWindowTitle(tr("Move to another day"));
  build();
  const cellar::Date today = context_.cellar.calendar().date_of(context_.cellar.now());
  day_->set_value(std::max(row_.due, today) + std::chrono::days(1));
  tell();
}

void PutOffDialog::build() {
  const report::Speaker speaker = context_.speaker();
  const auto status = context_.cellar.status();
  auto* what =
      new InkLabel(QStringLiteral("%1 – %2, %3")
                       .arg(q(report::name_of(row_.about, *status)),
                            q(report::say(row_.work, speaker)), q(report::say_due(row_, speaker))),
                   TextRole::strong);
  what->setWordWrap(true);
  day_ = new DateEdit(context_.cellar);
  day_->set_required(true);
  day_->setObjectName(QStringLiteral("to_day"));
  why_ = new TextEdit(reason_limit());
  why_->setObjectName(QStringLiteral("reason"));
  auto* steps = new QHBoxLayout;
  steps->setSpacing(space::s);
  for (const auto& [words, days] :
       {std::pair{tr("A day e&arlier"), -1}, std::pair{tr("A day &later"), 1},
        std::pair{tr("A &week later"), 7}}) {
    auto* button = new QPushButton(words);
    button->setAutoDefault(false);
    connect(button, &QPushButton::clicked, this, [this, by = days] { step(by); });
    steps->addWidget(button);
  }
  steps->addStretch(1);
  auto* beside = new QWidget;
  beside->setLayout(steps);
  steps->setContentsMargins(0, 0, 0, 0);
  auto* form = new FormSection;
  form->add(tr("&To"), day_);
  form->add_wide(beside);
  form->add(tr("Wh&y"), why_);
  consequence_ = new InkLabel;
  consequence_->setObjectName(QStringLiteral("consequence"));
  consequence_->setWordWrap(true);
  consequence_->setMinimumHeight(48);
  auto* buttons = new QDialogButtonBox;
  QPushButton* move = buttons->addButton(tr("&Move it"), QDialogButtonBox::AcceptRole);
  move->setObjectName(QStringLiteral("move_it"));
  make_default(move);
  buttons->addButton(QDialogButtonBox::Cancel);
  auto* all = new QVBoxLayout(this);
  all->setSpacing(space::m);
  grow_with_contents(*this);
  all->addWidget(what);
  all->addWidget(form);
  all->addWidget(consequence_);
  all->addWidget(buttons);
  setMinimumWidth(460);
  connect(day_, &DateEdit::changed, this, &PutOffDialog::tell);
  connect(buttons, &QDialogButtonBox::rejected, this, &QDialog::reject);
  connect(buttons, &QDialogButtonBox::accepted, this, &PutOffDialog::log);
}

void PutOffDialog::set_day(cellar::Date day) {
  day_->set_value(day);
  tell();
}

void PutOffDialog::step(int days) {
  const cellar::Date today = context_.cellar.calendar().date_of(context_.cellar.now());
  const cellar::Date to = day_->value().value_or(row_.due) + std::chrono::days(days);
  day_->set_value(std::max(to, today));
  tell();
}

void PutOffDialog::tell() {
  const auto day = day_->value();
  if (!day) {
    consequence_->clear();
    return;
  }
  const auto over = cellar::overdue_if_moved(all_, row_, *day);
  if (over.empty()) {
    consequence_->set_ink(Ink::success);
    consequence_->setText(tr("Nothing becomes overdue."));
    return;
  }
  QStringList lines;
  for (const cellar::DueWork& row : over) {
    lines << q(report::say_will_be(row, *context_.cellar.status(), context_.speaker()));
  }
  consequence_->set_ink(Ink::danger);
  consequence_->setText(lines.join(QLatin1Char('\n')));
}

QString PutOffDialog::consequence() const { return consequence_->text(); }

cellar::Act PutOffDialog::act(cellar::Date day) const {
  using namespace cellar;
  WorkMoved moved;
  moved.work = row_.work;
  moved.rule = row_.governing.rule;
  set_subject(moved, row_.about);
  moved.to_day = day;
  moved.reason = why_->value();
  Act act;
  act.by = s(context_.preferences.initials());
  act.drafts.push_back({Payload(moved), context_.cellar.now(), {}, {}});
  return act;
}

void PutOffDialog::log() {
  day_->show_fault();
  const auto day = day_->value();
  if (!day) return;
  const auto logged = context_.cellar.log(act(*day));
  if (logged) {
    context_.navigator.announce(
        tr("Moved to %1.").arg(q(report::say_date(*day, context_.speaker()))), true);
    accept();
    return;
  }
  day_->set_refusal(q(report::say(logged.error().faults.front().why, context_.speaker())));
}

}  // namespace ullage::ui
