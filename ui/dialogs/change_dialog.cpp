// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/dialogs/change_dialog.h"

#include <QDialogButtonBox>
#include <QPushButton>
#include <QVBoxLayout>

#include "ui/dialogs/forms/hush.h"
#include "ui/dialogs/text_limits.h"
#include "ui/preferences.h"
#include "ui/theme/style.h"
#include "ui/theme/theme.h"
#include "ui/widgets/banner.h"
#include "ui/widgets/form_section.h"
#include "ui/widgets/text_edit.h"
#include "ui/widgets/when_edit.h"

namespace ullage::ui {

ChangeDialog::ChangeDialog(const Context& context, const QString& title, const QString& name,
                           QWidget* parent)
    : QDialog(parent),
      context_(context),
      when_(new WhenEdit(context_.cellar)),
      by_(new TextEdit(initials_limit())),
      warning_(new Banner(cellar::Severity::danger, {})),
      refusal_(new Banner(cellar::Severity::warning, {})) {
  setWindowTitle(title);
  setObjectName(name);
  by_->set_value(s(context_.preferences.initials()));
  refusal_->setObjectName(QStringLiteral("refusal"));
  warning_->hide();
  refusal_->hide();
}

ChangeDialog::~ChangeDialog() { hush(*this); }

void ChangeDialog::add_when_and_by(FormSection& form) {
  form.add(tr("&When"), when_);
  form.add(tr("By"), by_, tr("Initials."));
}

void ChangeDialog::lay_out(QWidget* body, QWidget* words) {
  auto* buttons = new QDialogButtonBox;
  auto* log_it = buttons->addButton(tr("&Log the change"), QDialogButtonBox::AcceptRole);
  log_it->setObjectName(QStringLiteral("log_it"));
  make_default(log_it);
  buttons->addButton(QDialogButtonBox::Cancel);
  auto* all = new QVBoxLayout(this);
  all->setContentsMargins(space::xl, space::l, space::xl, space::l);
  all->setSpacing(space::m);
  all->addWidget(body, 1);
  all->addWidget(warning_);
  if (words != nullptr) all->addWidget(words);
  all->addWidget(refusal_);
  all->addWidget(buttons);  // last, so that Tab comes to them last
  drop_shared_mnemonics(*this);
  connect(buttons, &QDialogButtonBox::accepted, this, &ChangeDialog::log);
  connect(buttons, &QDialogButtonBox::rejected, this, &ChangeDialog::reject);
  guard_.watch(*this);
}

void ChangeDialog::forget_refusal() { refusal_->hide(); }

cellar::Act ChangeDialog::begun() const {
  cellar::Act act;
  act.by = by_->value();
  return act;
}

void ChangeDialog::did(cellar::Act& act, cellar::Payload payload) const {
  const cellar::Instant at = when_->value().value_or(context_.cellar.now());
  act.drafts.push_back({std::move(payload), at, {}, {}});
}

bool ChangeDialog::log() {
  if (faults_shown(show_faults(), when_, by_)) return false;
  const QString words = logged_words();
  const cellar::Outcome<cellar::ActId> outcome = context_.cellar.log(act());
  if (!outcome) {
    QStringList sentences;
    for (const cellar::Fault& fault : outcome.error().faults) {
      sentences << q(report::say(fault.why, context_.speaker()));
    }
    refusal_->set(cellar::Severity::warning, tr("Not logged yet."),
                  sentences.join(QLatin1Char('\n')));
    refusal_->show();
    return false;
  }
  accept();
  context_.navigator.announce(words, true);
  return true;
}

void ChangeDialog::reject() {
  if (guard_.lets_go(context_, this)) QDialog::reject();
}

}  // namespace ullage::ui
