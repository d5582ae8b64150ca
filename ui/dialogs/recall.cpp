// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/dialogs/recall.h"

#include <QDialogButtonBox>
#include <QPushButton>
#include <QVBoxLayout>
#include <algorithm>

#include "core/cellar/trace.h"
#include "ui/dialogs/log_preview.h"
#include "ui/dialogs/text_limits.h"
#include "ui/dialogs/trace.h"
#include "ui/preferences.h"
#include "ui/theme/style.h"
#include "ui/theme/theme.h"
#include "ui/widgets/banner.h"
#include "ui/widgets/form_section.h"
#include "ui/widgets/ink_label.h"
#include "ui/widgets/text_edit.h"

namespace ullage::ui {
RecallDialog::RecallDialog(const Context& context, cellar::BatchId batch, QWidget* parent)
    : QDialog(parent), context_(context), batch_(batch) {
  setObjectName(QStringLiteral("recall"));
  setWindowTitle(tr("Recall a batch"));
  build();
  resize(560, 520);
}

QStringList RecallDialog::where_it_is() const {
  const auto status = context_.cellar.status();
  const report::Speaker speaker = context_.speaker();
  QStringList lines;
  for (const cellar::Stint& stint : cellar::stints_of(batch_, context_.cellar.journal())) {
    lines << stint_words(stint, *status, speaker);
  }
  return lines;
}

void RecallDialog::build() {
  const auto status = context_.cellar.status();
  auto* all = new QVBoxLayout(this);
  all->setContentsMargins(space::xl, space::l, space::xl, space::l);
  all->setSpacing(space::m);
  auto* title = new InkLabel(tr("Recall %1").arg(batch_words(batch_, *status)), TextRole::title,
                             Ink::text, this);
  title->setWordWrap(true);
  all->addWidget(title);
  all->addWidget(new Caution(
      tr("Every keg that has it is held back at once. Take it off the line as well, and tell those "
         "who have it: what the law asks of you comes first."),
      Caution::Weight::danger, this));
  auto* form = new FormSection({}, this);
  reason_ = new TextEdit(reason_limit(), TextEdit::Lines::one, form);
  reason_->setObjectName(QStringLiteral("recall_reason"));
  reason_->set_required(true);
  by_ = new TextEdit(initials_limit(), TextEdit::Lines::one, form);
  by_->set_value(s(context_.preferences.initials()));
  form->add(tr("&Why"), reason_);
  form->add(tr("&By"), by_);
  all->addWidget(form);
  all->addWidget(new InkLabel(tr("Where it is and was"), TextRole::strong, Ink::text, this));
  const QStringList lines = where_it_is();
  for (const QString& line : lines) {
    auto* words = new InkLabel(line, TextRole::body, Ink::text, this);
    words->setWordWrap(true);
    all->addWidget(words);
  }
  if (lines.isEmpty()) {
    all->addWidget(
        new InkLabel(tr("In no keg that is logged."), TextRole::body, Ink::secondary, this));
  }
  all->addStretch(1);
  outcome_ = new Banner(cellar::Severity::warning, {}, {}, this);
  outcome_->hide();
  all->addWidget(outcome_);
  add_buttons(*all);
  reason_->focus_widget()->setFocus();
}

void RecallDialog::add_buttons(QVBoxLayout& all) {
  auto* buttons = new QDialogButtonBox(this);
  hold_ = buttons->addButton(tr("&Recall and hold them all"), QDialogButtonBox::AcceptRole);
  hold_->setObjectName(QStringLiteral("recall_and_hold"));
  hold_->setEnabled(!context_.cellar.read_only());
  make_default(hold_);
  print_ = buttons->addButton(tr("&Print the list…"), QDialogButtonBox::ActionRole);
  print_->setObjectName(QStringLiteral("print_recall"));
  close_ = buttons->addButton(tr("&Not now"), QDialogButtonBox::RejectRole);
  all.addWidget(buttons);
  connect(buttons, &QDialogButtonBox::accepted, this, &RecallDialog::recall);
  connect(buttons, &QDialogButtonBox::rejected, this, &QDialog::reject);
  connect(print_, &QPushButton::clicked, this, &RecallDialog::print_list);
}

void RecallDialog::print_list() {
  LogPreview preview(context_, report::LogBook::recall, this);
  preview.set_batch(batch_);
  preview.exec();
}

// Stays open: the list is still to be printed.
void RecallDialog::say_recalled(const QString& words) {
  context_.navigator.announce(words, true);
  outcome_->set(cellar::Severity::info, words,
                tr("Print the list, take it to the kegs, and sign for each one secured."));
  outcome_->show();
  reason_->setEnabled(false);
  by_->setEnabled(false);
  hold_->setEnabled(false);
  close_->setText(tr("&Close"));
  make_default(print_);
  print_->setFocus();
  resize(size().expandedTo(sizeHint()));
}

bool RecallDialog::recall() {
  if (reason_->value().empty()) {
    reason_->show_fault();
    reason_->focus_widget()->setFocus();
    return false;
  }
  const auto status = context_.cellar.status();
  const cellar::Act act = cellar::recall_act(batch_, reason_->value(), context_.cellar.now(),
                                             by_->value(), *status, context_.cellar.journal());
  const auto outcome = context_.cellar.log(act);
  if (!outcome) {
    QStringList why;
    for (const cellar::Fault& fault : outcome.error().faults) {
      why << q(report::say(fault.why, context_.speaker()));
    }
    outcome_->set(cellar::Severity::warning, tr("Not recalled."), why.join(QLatin1Char('\n')));
    outcome_->show();
    return false;
  }
  const auto held = static_cast<int>(act.drafts.size()) - 1;
  say_recalled(held == 1 ? tr("Recalled. 1 keg is held back.")
                         : tr("Recalled. %1 kegs are held back.").arg(held));
  return true;
}

}  // namespace ullage::ui
