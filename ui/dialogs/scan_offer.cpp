// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/dialogs/scan_offer.h"

#include <QHBoxLayout>
#include <QLabel>
#include <QPushButton>
#include <QTimer>
#include <QVBoxLayout>

#include "ui/pages/keg_tasks.h"
#include "ui/preferences.h"
#include "ui/theme/style.h"

namespace ullage::ui {

cellar::SuggestedTask next_task(const cellar::KegStatus& keg, report::RegionalWords words) {
  for (const cellar::Advice& advice : keg.advice) {
    if (advice.action) return *advice.action;
  }
  const std::vector<LikelyTask> usual = likely_tasks(keg, words);
  if (!usual.empty()) return usual.front().task;
  return {"noted", cellar::subject(keg.record.keg), {}, {}};
}

ScanOffer::ScanOffer(const Context& context, QWidget* parent) : QDialog(parent), context_(context) {
  setWindowTitle(tr("Scanned"));
  setMinimumWidth(420);
  tag_ = new QLabel;
  tag_->setObjectName(QStringLiteral("tag"));
  QFont large = tag_->font();
  large.setPointSizeF(large.pointSizeF() * 2.2);
  large.setBold(true);
  tag_->setFont(large);
  state_ = new QLabel;
  state_->setObjectName(QStringLiteral("state"));
  state_->setWordWrap(true);
  likely_ = new QPushButton;
  likely_->setObjectName(QStringLiteral("likely"));
  make_default(likely_);
  likely_->setMinimumHeight(48);
  auto* other = new QPushButton(tr("&Other task…"));
  other->setMinimumHeight(48);
  auto* close = new QPushButton(tr("&Close"));
  close->setMinimumHeight(48);
  auto* buttons = new QHBoxLayout;
  buttons->addWidget(likely_, 1);
  buttons->addWidget(other);
  buttons->addWidget(close);
  auto* all = new QVBoxLayout(this);
  all->addWidget(tag_);
  all->addWidget(state_);
  all->addLayout(buttons);
  connect(likely_, &QPushButton::clicked, this, [this] { open_form(task_); });
  connect(other, &QPushButton::clicked, this,
          [this] { open_form({{}, cellar::subject(keg_), {}, {}}); });
  connect(close, &QPushButton::clicked, this, &QDialog::reject);
}

void ScanOffer::show_keg(cellar::KegId id) {
  const auto status = context_.cellar.status();
  const cellar::KegStatus* keg = status->find(id);
  if (!keg) return;
  keg_ = id;
  const report::RegionalWords words = context_.preferences.words();
  const report::Speaker speaker = context_.speaker();
  task_ = next_task(*keg, words);
  tag_->setText(q(keg->record.tag));
  QStringList lines;
  if (keg->contents) lines << q(keg->contents->beer.name);
  lines << q(report::say(keg->state, speaker));
  if (keg->next_step) lines << tr("Next: %1").arg(q(report::say(*keg->next_step, speaker)));
  if (keg->lock) lines << tr("DO NOT SERVE: its line holds a cleaner.");
  state_->setText(lines.join(QLatin1Char('\n')));
  likely_->setText(task_label(task_.kind, words));
  likely_->setFocus();
}

// The form comes after this box has gone.
void ScanOffer::open_form(const cellar::SuggestedTask& task) {
  accept();
  QTimer::singleShot(0, parent(),
                     [navigator = &context_.navigator, task] { navigator->open_task(task); });
}

}  // namespace ullage::ui
