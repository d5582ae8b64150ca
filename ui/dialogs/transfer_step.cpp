// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/dialogs/transfer_step.h"

#include <QCheckBox>
#include <QHBoxLayout>
#include <QVBoxLayout>

#include "ui/dialogs/forms/entry_fields.h"
#include "ui/dialogs/forms/hush.h"
#include "ui/preferences.h"
#include "ui/theme/theme.h"
#include "ui/widgets/form_section.h"
#include "ui/widgets/ink_label.h"

namespace ullage::ui {

TransferStep::TransferStep(const Context& context, int number, const QString& title,
                           const cellar::Payload& start, Need need, std::set<std::string> left_out,
                           QWidget* parent)
    : QFrame(parent), context_(context), need_(need) {
  setObjectName(QStringLiteral("step_") + QString::fromUtf8(cellar::kind_of(start).data()));
  title_ = new InkLabel(QStringLiteral("%1  %2").arg(number).arg(title), TextRole::strong);
  state_ = new InkLabel({}, TextRole::small, Ink::secondary);
  now_ = new QCheckBox(tr("Log it now"));
  now_->setAccessibleName(tr("Log now: %1").arg(title));
  // What the transfer asks once: into what, from what, and how it is carbonated.
  left_out.insert({"keg", "batch", "purpose"});
  fields_ = new EntryFields(context, start, left_out);
  outcome_ = new InkLabel({}, TextRole::strong, Ink::accent);
  outcome_->setWordWrap(true);
  outcome_->hide();
  caution_ = new FormSection;
  caution_->hide();

  auto* head = new QHBoxLayout;
  head->addWidget(title_);
  head->addStretch(1);
  head->addWidget(state_);
  head->addWidget(now_);
  auto* all = new QVBoxLayout(this);
  all->setContentsMargins(0, space::s, 0, space::s);
  all->setSpacing(space::s);
  all->addLayout(head);
  all->addWidget(caution_);
  all->addWidget(fields_);
  all->addWidget(outcome_);

  if (need_ == Need::always) {
    now_->setChecked(true);
    now_->hide();
  }
  fields_->setVisible(logs_now());
  connect(now_, &QCheckBox::toggled, this, [this](bool on) {
    fields_->setVisible(on);
    tell_state();
    emit changed();
  });
  connect(fields_, &EntryFields::changed, this, &TransferStep::changed);
  connect(&context_.preferences, &Preferences::changed, this, &TransferStep::tell_state);
  tell_state();
}

TransferStep::~TransferStep() { hush(*this); }

void TransferStep::set_found(const cellar::PreparationStep* found) {
  found_ = found ? std::optional(*found) : std::nullopt;
  tell_state();
}

void TransferStep::set_subject(const cellar::SubjectRef& subject) { fields_->set_subject(subject); }

void TransferStep::set_caution(const QString& sentence) {
  caution_->add_caution(sentence, Caution::Weight::danger);
  caution_->show();
}

void TransferStep::set_outcome(const QString& words) {
  outcome_->setText(words);
  outcome_->setVisible(!words.isEmpty());
}

bool TransferStep::logs_now() const { return now_->isChecked(); }

bool TransferStep::done() const {
  return logs_now() || (found_ && found_->done_at && found_->still_counts);
}

QString TransferStep::state_words() const { return state_->text(); }

void TransferStep::tell_state() {
  const report::Speaker speaker = context_.speaker();
  if (need_ == Need::always) {
    state_->clear();
    return;
  }
  if (logs_now()) {
    state_->set_ink(Ink::success);
    state_->setText(tr("✓ will be logged"));
  } else if (found_ && found_->done_at && found_->still_counts) {
    QString words = tr("✓ done %1").arg(q(report::say_age(*found_->done_at, speaker)));
    if (found_->result) words += QStringLiteral(": ") + q(report::say(*found_->result, speaker));
    state_->set_ink(Ink::success);
    state_->setText(words);
  } else if (found_ && found_->done_at) {
    state_->set_ink(Ink::warning);
    state_->setText(tr("not done since it was last used (%1)")
                        .arg(q(report::say_age(*found_->done_at, speaker))));
  } else {
    state_->set_ink(Ink::warning);
    state_->setText(tr("not done"));
  }
}

}  // namespace ullage::ui
