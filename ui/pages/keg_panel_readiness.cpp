// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/pages/keg_panel_readiness.h"

#include <QCoreApplication>
#include <QHBoxLayout>
#include <QVBoxLayout>

#include "core/report/laws.h"
#include "ui/context.h"
#include "ui/models/keg_row.h"
#include "ui/theme/theme.h"
#include "ui/widgets/disclosure.h"
#include "ui/widgets/ink_label.h"
#include "ui/widgets/keep_count.h"
#include "ui/widgets/status_mark.h"

namespace ullage::ui {

namespace {

struct ReadinessText {
  Q_DECLARE_TR_FUNCTIONS(ReadinessText)
};

// What the numbers of this keg stand on, with the age of each.
QStringList stands_on(const PanelSubject& subject) {
  const cellar::KegStatus& keg = subject.keg;
  const report::Speaker& speaker = subject.speaker;
  const auto aged = [&](const QString& what, const std::optional<cellar::Instant>& at) {
    return at ? what + QStringLiteral(", ") + q(report::say_age(*at, speaker)) : what;
  };
  QStringList lines;
  if (!keg.contents) return lines;
  if (keg.gas.set && keg.gas.on) {
    lines << aged(ReadinessText::tr("Gas set to %1").arg(q(speaker.printer.print(*keg.gas.set))),
                  keg.gas.since);
  }
  if (keg.beer_temperature) {
    lines << ReadinessText::tr("Beer at %1").arg(q(speaker.printer.print(*keg.beer_temperature)));
  }
  if (keg.level.left) {
    lines << aged(ReadinessText::tr("%1 in it").arg(q(speaker.printer.print(*keg.level.left))),
                  keg.level.measured_at);
  }
  if (keg.co2.now) {
    if (const units::Contribution* widest = keg.co2.now->largest()) {
      lines << ReadinessText::tr("Most of the ± comes from: %1").arg(q(widest->source.name));
    }
    const report::Law& law = report::laws::carbonation;
    lines << q(std::string(law.words));
    lines << ReadinessText::tr("Sources and limits: %1, “%2”.")
                 .arg(q(std::string(law.document)), q(std::string(law.section)));
  }
  return lines;
}

}  // namespace

KegPanelReadiness::KegPanelReadiness(QWidget* parent) : Card(parent) {
  setObjectName("readiness_card");
  auto* top = new QHBoxLayout;
  top->setSpacing(space::s);
  mark_ = new StatusMark(Mark::question, {}, this);
  headline_ = new InkLabel({}, TextRole::heading, Ink::text, this);
  headline_->setObjectName("readiness_headline");
  headline_->setWordWrap(true);
  top->addWidget(mark_, 0, Qt::AlignTop);
  top->addWidget(headline_, 1);
  column()->addLayout(top);
  reasons_ = new QVBoxLayout;
  reasons_->setContentsMargins(0, 0, 0, 0);
  reasons_->setSpacing(space::xs);
  column()->addLayout(reasons_);
  to_do_ = new InkLabel({}, TextRole::strong, Ink::text, this);
  to_do_->setWordWrap(true);
  column()->addWidget(to_do_);
  because_ = new Disclosure(tr("Because"), {}, this);
  column()->addWidget(because_);
}

void KegPanelReadiness::show_keg(const PanelSubject& subject) {
  const cellar::Readiness& readiness = subject.keg.readiness;
  const report::Speaker& speaker = subject.speaker;
  const KegRow row = keg_row(subject.keg, speaker);
  const bool nothing_in_it = readiness.kind == cellar::ReadinessKind::nothing_in_it;
  mark_->set(row.mark, {});
  const QString headline = nothing_in_it ? row.state : q(report::say(readiness.headline, speaker));
  headline_->setText(headline);
  const QString to_do = readiness.to_do ? q(report::say(*readiness.to_do, speaker)) : row.next_step;
  // What is to be done stands below by itself; it need not be among the reasons too.
  QStringList reasons;
  for (const cellar::Message& reason : readiness.reasons) {
    const QString words = q(report::say(reason, speaker));
    if (to_do.isEmpty() || !words.startsWith(to_do, Qt::CaseInsensitive)) reasons << words;
  }
  const auto labels = keep_count<InkLabel>(*reasons_, reasons.size(), [this] {
    auto* label = new InkLabel({}, TextRole::small, Ink::secondary, this);
    label->setWordWrap(true);
    return label;
  });
  for (std::size_t i = 0; i < labels.size(); ++i) {
    labels[i]->setText(reasons[static_cast<qsizetype>(i)]);
  }
  to_do_->setText(to_do.left(1).toUpper() + to_do.mid(1));
  to_do_->setVisible(!to_do.isEmpty());
  because_->set_about(headline);
  because_->set_lines(stands_on(subject));
}

}  // namespace ullage::ui
