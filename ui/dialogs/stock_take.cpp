// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/dialogs/stock_take.h"

#include <QDialogButtonBox>
#include <QPushButton>
#include <QVBoxLayout>

#include "ui/dialogs/forms/entry_fields.h"
#include "ui/dialogs/forms/form_memory.h"
#include "ui/dialogs/forms/scrolled.h"
#include "ui/preferences.h"
#include "ui/theme/style.h"
#include "ui/theme/theme.h"
#include "ui/widgets/banner.h"
#include "ui/widgets/form_section.h"
#include "ui/widgets/ink_label.h"
#include "ui/widgets/screen_room.h"

namespace ullage::ui {

StockTake::StockTake(const Context& context, std::vector<cellar::KegId> kegs, QWidget* parent)
    : QDialog(parent), context_(context), kegs_(std::move(kegs)) {
  setWindowTitle(tr("Stock-taking"));
  setObjectName(QStringLiteral("stock_take"));
  if (kegs_.empty()) {
    const auto status = context_.cellar.status();
    for (const cellar::KegStatus& keg : status->kegs) {
      if (keg.record.in_use && keg.phase == cellar::Phase::unknown) {
        kegs_.push_back(keg.record.keg);
      }
    }
  }
  heading_ = new InkLabel({}, TextRole::title);
  progress_ = new InkLabel({}, TextRole::small, Ink::secondary);
  scroll_ = scrolled();
  refusal_ = new Banner(cellar::Severity::warning, {});
  refusal_->setObjectName(QStringLiteral("refusal"));
  refusal_->hide();
  auto* all = new QVBoxLayout(this);
  all->setContentsMargins(space::xl, space::l, space::xl, space::l);
  all->addWidget(heading_);
  all->addWidget(progress_);
  all->addWidget(scroll_, 1);
  all->addWidget(refusal_);
  auto* buttons = new QDialogButtonBox(this);
  log_ = buttons->addButton(tr("&Log it, next keg"), QDialogButtonBox::AcceptRole);
  log_->setObjectName(QStringLiteral("log_it"));
  make_default(log_);
  auto* skip_it = buttons->addButton(tr("S&kip"), QDialogButtonBox::ActionRole);
  skip_it->setObjectName(QStringLiteral("skip"));
  buttons->addButton(tr("&Done"), QDialogButtonBox::RejectRole);
  all->addWidget(buttons);
  resize_within_screen(*this, {680, 660});
  connect(log_, &QPushButton::clicked, this, &StockTake::log_and_go_on);
  connect(skip_it, &QPushButton::clicked, this, &StockTake::skip);
  connect(buttons, &QDialogButtonBox::rejected, this, &StockTake::reject);
  connect(&context_.preferences, &Preferences::changed, this, &StockTake::tell_progress);
  show_keg();
}

void StockTake::show_keg() {
  refusal_->hide();
  guard_.forget();
  if (at_ >= kegs_.size()) {
    heading_->setText(kegs_.empty() ? tr("Nothing to count") : tr("That was the last keg"));
    progress_->setText(
        kegs_.empty()
            ? tr("Of every registered keg something is known.")
            : tr("%n keg(s) logged. What you skipped can be logged any time.", nullptr, logged_));
    if (fields_) fields_->setEnabled(false);
    log_->setEnabled(false);
    return;
  }
  tell_progress();
  cellar::Found found{.keg = kegs_[at_]};
  cellar::Payload start(boost::variant2::in_place_type<cellar::Found>, found);
  if (const auto last = last_of_kind(context_.cellar.journal(), "found", {})) {
    remember(start, *last, *form_spec("found"));
  }
  fields_ = new EntryFields(context_, start, {"keg"});
  if (QWidget* old = scroll_->takeWidget()) old->deleteLater();
  fields_->layout()->setContentsMargins(0, 0, space::s, 0);
  scroll_->setWidget(fields_);
  never_squeeze(*fields_);
  scroll_->setMinimumWidth(fields_->minimumSizeHint().width() +
                           scroll_->verticalScrollBar()->sizeHint().width());
  drop_shared_mnemonics(*this);
  fields_->focus_first();
  guard_.watch(*fields_);
}

void StockTake::tell_progress() {
  if (at_ >= kegs_.size()) return;
  const auto status = context_.cellar.status();
  const cellar::KegStatus* keg = status->find(kegs_[at_]);
  heading_->setText(keg ? q(keg->record.tag) : QString());
  QString line = tr("Keg %1 of %2").arg(at_ + 1).arg(kegs_.size());
  if (keg) {
    line += QStringLiteral(" · ") + q(report::say(keg->record.keg_kind, context_.speaker()));
    if (keg->place) line += QStringLiteral(" · ") + q(keg->place->name);
  }
  progress_->setText(line);
}

bool StockTake::log_and_go_on() {
  if (at_ >= kegs_.size() || fields_->show_faults()) return false;
  cellar::Act act;
  act.by = s(context_.preferences.initials());
  act.drafts.push_back({fields_->payload(), context_.cellar.now(), {}, {}});
  const cellar::Outcome<cellar::ActId> outcome = context_.cellar.log(act);
  if (!outcome) {
    QStringList elsewhere;
    bool first = true;
    for (const cellar::Fault& fault : outcome.error().faults) {
      const QString sentence = q(report::say(fault.why, context_.speaker()));
      if (!fields_->refuse(fault.field, sentence, first)) elsewhere << sentence;
      first = false;
    }
    refusal_->set(cellar::Severity::warning, tr("Not logged yet."),
                  elsewhere.join(QLatin1Char('\n')));
    refusal_->show();
    return false;
  }
  ++logged_;
  go_on();
  return true;
}

void StockTake::skip() {
  if (guard_.lets_go(context_, this)) go_on();
}

void StockTake::go_on() {
  if (at_ < kegs_.size()) ++at_;
  show_keg();
}

void StockTake::reject() {
  if (guard_.lets_go(context_, this)) QDialog::reject();
}

}  // namespace ullage::ui
