// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/pages/advice_list.h"

#include <QAbstractButton>
#include <QVBoxLayout>
#include <algorithm>

#include "core/report/advice_reasons.h"
#include "ui/context.h"
#include "ui/pages/keg_tasks.h"
#include "ui/theme/theme.h"
#include "ui/widgets/banner.h"
#include "ui/widgets/disclosure.h"
#include "ui/widgets/keep_count.h"

namespace ullage::ui {

namespace {

class AdviceCard final : public QWidget {
 public:
  explicit AdviceCard(AdviceList* parent) : QWidget(parent), list_(parent) {
    auto* column = new QVBoxLayout(this);
    column->setContentsMargins(0, 0, 0, 0);
    column->setSpacing(2);
    banner_ = new Banner(cellar::Severity::info, {}, {}, this);
    because_ = new Disclosure(AdviceList::tr("Because"), {}, this);
    column->addWidget(banner_);
    column->addWidget(because_);
  }

  void show_advice(const cellar::Advice& advice, const report::Speaker& speaker) {
    const QString headline = q(report::say(advice.headline, speaker));
    banner_->set(advice.severity, headline,
                 advice.detail ? q(report::say(*advice.detail, speaker)) : QString());
    task_ = advice.action;
    const QString action = task_ ? task_label(task_->kind, speaker.words) : QString();
    if (action != shown_action_) {
      shown_action_ = action;
      banner_->clear_actions();
      if (task_) {
        connect(banner_->add_action(action), &QAbstractButton::clicked, this,
                [this] { emit list_->task_asked(*task_); });
      }
    }
    QStringList lines;
    for (const std::string& line : report::advice_reasons(advice, speaker)) lines << q(line);
    because_->set_about(headline);
    because_->set_lines(lines);
  }

  void show_nothing() {
    if (isHidden()) return;
    task_.reset();
    shown_action_.clear();
    banner_->clear_actions();
    banner_->set(cellar::Severity::info, {});
    because_->set_lines({});
  }

 private:
  AdviceList* list_;
  Banner* banner_;
  Disclosure* because_;
  std::optional<cellar::SuggestedTask> task_;
  QString shown_action_;
};

}  // namespace

AdviceList::AdviceList(QWidget* parent) : QWidget(parent), cards_(new QVBoxLayout(this)) {
  cards_->setContentsMargins(0, 0, 0, 0);
  cards_->setSpacing(space::s);
}

void AdviceList::show_advice(const std::vector<cellar::Advice>& advice,
                             const report::Speaker& speaker) {
  // Cards that are not wanted now are kept: advice comes and goes as a what-if is
  // dragged, and making one takes longer than all the rest of the frame.
  const auto wanted = static_cast<qsizetype>(advice.size());
  const auto cards = keep_count<AdviceCard>(*cards_, std::max<qsizetype>(wanted, cards_->count()),
                                            [this] { return new AdviceCard(this); });
  for (std::size_t i = 0; i < cards.size(); ++i) {
    const bool used = i < advice.size();
    if (used) {
      cards[i]->show_advice(advice[i], speaker);
    } else {
      cards[i]->show_nothing();
    }
    cards[i]->setVisible(used);
  }
  setVisible(!advice.empty());
}

}  // namespace ullage::ui
