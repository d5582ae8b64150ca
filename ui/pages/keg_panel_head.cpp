// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/pages/keg_panel_head.h"

#include <QCoreApplication>
#include <QEvent>
#include <QHBoxLayout>
#include <QPushButton>
#include <QToolButton>
#include <QVBoxLayout>

#include "ui/context.h"
#include "ui/models/keg_row.h"
#include "ui/pages/keg_tasks.h"
#include "ui/theme/icons.h"
#include "ui/theme/style.h"
#include "ui/theme/theme.h"
#include "ui/widgets/banner.h"
#include "ui/widgets/flow_layout.h"
#include "ui/widgets/ink_label.h"
#include "ui/widgets/keep_count.h"

namespace ullage::ui {

namespace {

struct Warned {
  cellar::Severity severity;
  QString headline, detail, action;
  std::optional<cellar::SuggestedTask> task;
  std::optional<cellar::SubjectRef> entries_of;
};

struct KegHeadText {
  Q_DECLARE_TR_FUNCTIONS(KegHeadText)
};

std::vector<Warned> warnings_of(const PanelSubject& subject) {
  const cellar::KegStatus& keg = subject.keg;
  const cellar::SubjectRef about = cellar::subject(keg.record.keg);
  const report::Speaker& speaker = subject.speaker;
  std::vector<Warned> all;
  if (keg.lock) {
    all.push_back(
        {cellar::Severity::danger,
         caution_of(keg, speaker).whole(),
         KegHeadText::tr("Cleaner may stand in %1. Flush it, check what runs out and release it "
                         "before a glass is poured. The agent’s label and your local rules go "
                         "first.")
             .arg(q(keg.lock->line_name)),
         task_label("line_released", speaker.words),
         cellar::SuggestedTask{"line_released", cellar::subject(keg.lock->line), {}},
         {}});
  }
  if (keg.quarantined) {
    const QString since = keg.quarantined_since
                              ? KegHeadText::tr("Since %1. ")
                                    .arg(q(report::say_time(*keg.quarantined_since, speaker)))
                              : QString();
    all.push_back({cellar::Severity::danger,
                   held_back_because(keg).isEmpty()
                       ? KegHeadText::tr("Held back")
                       : KegHeadText::tr("Held back – %1").arg(held_back_because(keg)),
                   since + KegHeadText::tr("Not to be served or filled until it is cleared."),
                   task_label("cleared", speaker.words),
                   cellar::SuggestedTask{"cleared", about, {}},
                   {}});
  }
  for (const cellar::DoesntFit& odd : keg.doesnt_fit) {
    all.push_back({cellar::Severity::warning,
                   KegHeadText::tr("An entry doesn’t fit"),
                   q(report::say(odd.why, speaker)),
                   KegHeadText::tr("Look at the entries"),
                   {},
                   about});
  }
  if (keg.lent_to) {
    all.push_back({cellar::Severity::info,
                   KegHeadText::tr("Lent to %1").arg(q(*keg.lent_to)),
                   {},
                   task_label("returned", speaker.words),
                   cellar::SuggestedTask{"returned", about, {}},
                   {}});
  }
  return all;
}

// A banner whose button is made anew only when it does something else.
class WarnedBanner final : public Banner {
 public:
  WarnedBanner(Context& context, QWidget* parent)
      : Banner(cellar::Severity::info, {}, {}, parent), context_(context) {}
  void show_warned(const Warned& warned) {
    set(warned.severity, warned.headline, warned.detail);
    now_ = warned;
    if (shown_action_ == warned.action) return;
    shown_action_ = warned.action;
    clear_actions();
    if (warned.action.isEmpty()) return;
    connect(add_action(warned.action), &QAbstractButton::clicked, this, [this] {
      if (now_.task) context_.navigator.open_task(*now_.task);
      if (now_.entries_of) context_.navigator.show_entries_of(*now_.entries_of);
    });
  }

 private:
  Context& context_;
  Warned now_{};
  QString shown_action_;
};

QString batch_line(const PanelSubject& subject) {
  const auto& contents = subject.keg.contents;
  if (!contents) return {};
  QStringList parts;
  if (!contents->batch_record.name.empty()) {
    parts << KegHeadText::tr("Batch %1").arg(q(contents->batch_record.name));
  }
  if (!contents->beer.style.empty()) parts << q(contents->beer.style);
  if (contents->abv) parts << q(subject.speaker.printer.print(*contents->abv));
  if (!contents->beer.allergens.empty()) {
    parts << KegHeadText::tr("contains %1").arg(q(contents->beer.allergens));
  }
  return parts.join(QStringLiteral(" · "));
}

}  // namespace

KegPanelHead::KegPanelHead(Context& context, QWidget* parent) : QWidget(parent), context_(context) {
  auto* column = new QVBoxLayout(this);
  column->setContentsMargins(0, 0, 0, 0);
  column->setSpacing(2);
  auto* top = new QHBoxLayout;
  top->setSpacing(space::s);
  where_ = new InkLabel({}, TextRole::small, Ink::secondary, this);
  where_->setWordWrap(true);
  close_ = new QToolButton(this);
  close_->setObjectName("close_panel");
  close_->setAutoRaise(true);
  close_->setToolTip(tr("Back to the list (Esc)"));
  close_->setAccessibleName(tr("Back to the list"));
  close_->setIcon(icon(Icon::close, theme_of(this).text));
  connect(close_, &QToolButton::clicked, this, &KegPanelHead::close_wanted);
  top->addWidget(where_, 1);
  top->addWidget(close_, 0, Qt::AlignTop);
  column->addLayout(top);
  contents_ = new InkLabel({}, TextRole::title, Ink::text, this);
  contents_->setObjectName("panel_contents");
  contents_->setWordWrap(true);
  column->addWidget(contents_);
  batch_ = new InkLabel({}, TextRole::small, Ink::secondary, this);
  batch_->setWordWrap(true);
  column->addWidget(batch_);
  banners_ = new QVBoxLayout;
  banners_->setContentsMargins(0, space::s, 0, 0);
  banners_->setSpacing(space::s);
  column->addLayout(banners_);
  auto* buttons = new QWidget(this);
  tasks_ = new FlowLayout(buttons, space::s);
  tasks_->setContentsMargins(0, space::s, 0, 0);
  column->addWidget(buttons);
  set_closable(false);
}

void KegPanelHead::changeEvent(QEvent* event) {
  QWidget::changeEvent(event);
  if (event->type() == QEvent::PaletteChange && close_ != nullptr) {
    close_->setIcon(icon(Icon::close, theme_of(this).text));
  }
}

void KegPanelHead::set_closable(bool on) { close_->setVisible(on); }

void KegPanelHead::show_keg(const PanelSubject& subject) {
  const KegRow row = keg_row(subject.keg, subject.speaker);
  QStringList where{row.tag, row.kind};
  if (subject.keg.place) where << q(subject.keg.place->name);
  where_->setText(where.join(QStringLiteral(" · ")));
  contents_->setText(row.contents);
  const QString batch = batch_line(subject);
  batch_->setText(batch);
  batch_->setVisible(!batch.isEmpty());
  show_banners(subject);
  show_tasks(subject);
}

void KegPanelHead::show_banners(const PanelSubject& subject) {
  const std::vector<Warned> warned = warnings_of(subject);
  const auto banners =
      keep_count<WarnedBanner>(*banners_, static_cast<qsizetype>(warned.size()),
                               [this] { return new WarnedBanner(context_, this); });
  for (std::size_t i = 0; i < warned.size(); ++i) banners[i]->show_warned(warned[i]);
}

void KegPanelHead::show_tasks(const PanelSubject& subject) {
  std::vector<LikelyTask> tasks = likely_tasks(subject.keg, subject.speaker.words);
  tasks.push_back({tr("All tasks…"), {"", cellar::subject(subject.keg.record.keg), {}}});
  QStringList labels;
  task_kinds_.clear();
  for (LikelyTask& task : tasks) {
    labels << task.label;
    task_kinds_.push_back(std::move(task.task));
  }
  if (labels == task_labels_) return;
  task_labels_ = labels;
  while (QLayoutItem* item = tasks_->takeAt(0)) {
    item->widget()->hide();
    item->widget()->deleteLater();
    delete item;
  }
  for (qsizetype i = 0; i < labels.size(); ++i) {
    auto* button = new QPushButton(labels[i], tasks_->parentWidget());
    if (i + 1 == labels.size()) button->setToolTip(tr("Ctrl+L"));  // all tasks
    connect(button, &QPushButton::clicked, this,
            [this, i] { context_.navigator.open_task(task_kinds_[static_cast<std::size_t>(i)]); });
    tasks_->addWidget(button);
  }
}

}  // namespace ullage::ui
