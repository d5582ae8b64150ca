// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/pages/keg_panel_advice.h"

#include <QAbstractButton>
#include <QVBoxLayout>

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
  AdviceCard(Context& context, QWidget* parent) : QWidget(parent), context_(context) {
    auto* column = new QVBoxLayout(this);
    column->setContentsMargins(0, 0, 0, 0);
    column->setSpacing(2);
    banner_ = new Banner(cellar::Severity::info, {}, {}, this);
    because_ = new Disclosure(tr("Because"), {}, this);
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
                [this] { context_.navigator.open_task(*task_); });
      }
    }
    QStringList lines;
    for (const cellar::InputUsed& input : advice.inputs) {
      QString line = q(report::say(input.what, speaker));
      if (input.read) line += QStringLiteral(", ") + q(report::say_age(*input.read, speaker));
      lines << line;
    }
    because_->set_about(headline);
    because_->set_lines(lines);
  }

 private:
  Context& context_;
  Banner* banner_;
  Disclosure* because_;
  std::optional<cellar::SuggestedTask> task_;
  QString shown_action_;
};

}  // namespace

KegPanelAdvice::KegPanelAdvice(Context& context, QWidget* parent)
    : QWidget(parent), context_(context), cards_(new QVBoxLayout(this)) {
  setObjectName("advice");
  cards_->setContentsMargins(0, 0, 0, 0);
  cards_->setSpacing(space::s);
}

void KegPanelAdvice::show_keg(const PanelSubject& subject) {
  const std::vector<cellar::Advice>& advice = subject.keg.advice;
  const auto cards = keep_count<AdviceCard>(*cards_, static_cast<qsizetype>(advice.size()),
                                            [this] { return new AdviceCard(context_, this); });
  for (std::size_t i = 0; i < advice.size(); ++i) {
    cards[i]->show_advice(advice[i], subject.speaker);
  }
  setVisible(!advice.empty());
}

}  // namespace ullage::ui
