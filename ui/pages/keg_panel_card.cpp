// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/pages/keg_panel_card.h"

#include <QHBoxLayout>
#include <QPushButton>
#include <QVBoxLayout>

#include "ui/charts/answer_chart.h"
#include "ui/context.h"
#include "ui/theme/style.h"
#include "ui/theme/theme.h"
#include "ui/widgets/figure.h"
#include "ui/widgets/flow_layout.h"
#include "ui/widgets/form_section.h"
#include "ui/widgets/ink_label.h"
#include "ui/widgets/keep_count.h"

namespace ullage::ui {

namespace {

constexpr int card_name_width = 116;

// Name, number, and where there is one, the button that logs it.
class CardFigureRow final : public QWidget {
 public:
  CardFigureRow(Context& context, QWidget* parent) : QWidget(parent), context_(context) {
    auto* row = new QHBoxLayout(this);
    row->setContentsMargins(0, 0, 0, 0);
    row->setSpacing(space::m);
    name_ = new InkLabel({}, TextRole::small, Ink::secondary, this);
    name_->setFixedWidth(card_name_width);
    name_->setWordWrap(true);
    number_ = new Figure(TextRole::small, Ink::text, this);
    log_ = new QPushButton(this);
    set_role(log_, ButtonRole::quiet);
    connect(log_, &QPushButton::clicked, this, [this] {
      if (task_) context_.navigator.open_task(*task_);
    });
    row->addWidget(name_, 0, Qt::AlignTop);
    row->addWidget(number_, 1, Qt::AlignTop);
    row->addWidget(log_, 0, Qt::AlignTop);
  }
  void show_figure(const report::CardFigure& figure) {
    name_->setText(q(figure.name));
    number_->show_number(q(figure.name), q(figure.value),
                         [grounds = figure.grounds] { return grounds; });
    log_->setVisible(figure.act.has_value());
    task_.reset();
    if (!figure.act) return;
    task_ = figure.act->task;
    log_->setText(q(figure.act->label));
    log_->setAccessibleName(
        KegPanelCard::tr("Log this: %1, %2").arg(q(figure.name), q(figure.value)));
  }

 private:
  Context& context_;
  InkLabel* name_;
  Figure* number_;
  QPushButton* log_;
  std::optional<cellar::SuggestedTask> task_;
};

QVBoxLayout* card_column(int gap) {
  auto* column = new QVBoxLayout;
  column->setContentsMargins(0, 0, 0, 0);
  column->setSpacing(gap);
  return column;
}

}  // namespace

KegPanelCard::KegPanelCard(Context& context, const QString& name, const QString& title,
                           QWidget* parent)
    : QWidget(parent), context_(context), name_(name), column_(new QVBoxLayout(this)) {
  setObjectName(name);
  setAccessibleName(title);
  column_->setContentsMargins(0, 0, 0, 0);
  column_->setSpacing(space::s);
  if (!title.isEmpty()) {
    column_->addWidget(new InkLabel(title, TextRole::strong, Ink::text, this));
  }
  verdict_ = new InkLabel({}, TextRole::body, Ink::text, this);
  verdict_->setObjectName(name + QStringLiteral("_verdict"));
  verdict_->setWordWrap(true);
  column_->addWidget(verdict_);
  cautions_ = card_column(space::xs);
  figures_ = card_column(6);
  notes_ = card_column(space::xs);
  column_->addLayout(cautions_);
  column_->addLayout(figures_);
  column_->addLayout(notes_);
  chart_part_ = new QWidget(this);
  auto* drawn = new QVBoxLayout(chart_part_);
  drawn->setContentsMargins(0, 0, 0, 0);
  drawn->setSpacing(space::xs);
  chart_title_ = new InkLabel({}, TextRole::small, Ink::secondary, chart_part_);
  chart_title_->setWordWrap(true);
  chart_ = new AnswerChart(chart_part_);
  chart_->setObjectName(name + QStringLiteral("_chart"));
  chart_->lie_on(&Theme::surface);
  drawn->addWidget(chart_title_);
  drawn->addWidget(chart_);
  column_->addWidget(chart_part_);
  acts_part_ = new QWidget(this);
  acts_ = new FlowLayout(acts_part_, space::s);
  acts_->setContentsMargins(0, 0, 0, 0);
  column_->addWidget(acts_part_);
}

void KegPanelCard::add_choice(QWidget* choice) {
  column_->insertWidget(1, choice, 0, Qt::AlignLeft);
}

void KegPanelCard::show_card(const std::optional<report::KegCard>& card,
                             const units::Printer& printer) {
  setVisible(card.has_value());
  if (!card) return;
  verdict_->setText(q(card->verdict));
  show_figures(*card);
  show_texts(*card);
  chart_->show_chart(card->chart, printer);
  chart_title_->setText(q(card->chart.title));
  chart_part_->setVisible(chart_->has_chart());
  show_acts(*card);
}

void KegPanelCard::show_figures(const report::KegCard& card) {
  const auto rows =
      keep_count<CardFigureRow>(*figures_, static_cast<qsizetype>(card.figures.size()),
                                [this] { return new CardFigureRow(context_, this); });
  for (std::size_t i = 0; i < rows.size(); ++i) rows[i]->show_figure(card.figures[i]);
}

void KegPanelCard::show_texts(const report::KegCard& card) {
  const auto notes =
      keep_count<InkLabel>(*notes_, static_cast<qsizetype>(card.notes.size()), [this] {
        auto* label = new InkLabel({}, TextRole::small, Ink::secondary, this);
        label->setWordWrap(true);
        return label;
      });
  for (std::size_t i = 0; i < notes.size(); ++i) notes[i]->setText(q(card.notes[i]));
  const auto cautions =
      keep_count<Caution>(*cautions_, static_cast<qsizetype>(card.cautions.size()),
                          [this] { return new Caution({}, Caution::Weight::caution, this); });
  for (std::size_t i = 0; i < cautions.size(); ++i) cautions[i]->set_sentence(q(card.cautions[i]));
}

void KegPanelCard::show_acts(const report::KegCard& card) {
  tasks_.clear();
  QStringList labels;
  for (const report::CardAct& act : card.acts) {
    tasks_.push_back(act.task);
    labels << q(act.label);
  }
  acts_part_->setVisible(!labels.isEmpty());
  if (labels == act_labels_) return;
  act_labels_ = labels;
  while (QLayoutItem* item = acts_->takeAt(0)) {
    item->widget()->hide();
    item->widget()->deleteLater();
    delete item;
  }
  for (std::size_t i = 0; i < tasks_.size(); ++i) {
    auto* button = new QPushButton(labels[static_cast<qsizetype>(i)], acts_part_);
    button->setObjectName(name_ + QLatin1Char('_') + q(tasks_[i].kind));
    connect(button, &QPushButton::clicked, this,
            [this, i] { context_.navigator.open_task(tasks_[i]); });
    acts_->addWidget(button);
    button->show();
  }
}

}  // namespace ullage::ui
