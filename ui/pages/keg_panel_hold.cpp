// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/pages/keg_panel_hold.h"

#include <QGridLayout>
#include <QPushButton>
#include <QVBoxLayout>

#include "core/cellar/suggest.h"
#include "ui/charts/hold_chart.h"
#include "ui/context.h"
#include "ui/theme/theme.h"
#include "ui/widgets/figure.h"
#include "ui/widgets/ink_label.h"

namespace ullage::ui {

namespace {

// The next reading: on the same dial, with the same thermometer.
cellar::SuggestedTask next_hold_reading(const cellar::HoldStudy& study,
                                        const cellar::Journal& journal, cellar::KegId keg) {
  cellar::HoldReading next;
  if (const cellar::Entry* last = journal.find(study.entries.back())) {
    if (const auto* read = get_if<cellar::HoldReading>(&last->payload)) next = *read;
  }
  next.starts_test = false;
  return cellar::keg_task<cellar::HoldReading>(keg, next);
}

}  // namespace

KegPanelHold::KegPanelHold(Context& context, QWidget* parent) : QWidget(parent), context_(context) {
  setObjectName("hold_test");
  auto* column = new QVBoxLayout(this);
  column->setContentsMargins(0, 0, 0, 0);
  column->setSpacing(space::s);
  column->addWidget(new InkLabel(tr("Hold test"), TextRole::strong, Ink::text, this));
  verdict_ = new InkLabel({}, TextRole::body, Ink::text, this);
  verdict_->setObjectName("hold_verdict");
  verdict_->setWordWrap(true);
  chart_ = new HoldChart(this);
  legend_ = new InkLabel({}, TextRole::small, Ink::secondary, this);
  legend_->setObjectName("hold_legend");
  legend_->setWordWrap(true);
  grid_ = new QGridLayout;
  grid_->setHorizontalSpacing(space::m);
  grid_->setVerticalSpacing(6);
  grid_->setColumnMinimumWidth(0, 84);
  grid_->setColumnStretch(1, 1);
  notes_ = new InkLabel({}, TextRole::small, Ink::secondary, this);
  notes_->setObjectName("hold_notes");
  notes_->setWordWrap(true);
  read_ = new QPushButton(tr("Read it again…"), this);
  read_->setObjectName("hold_read_again");
  connect(read_, &QPushButton::clicked, this, [this] {
    if (task_) context_.navigator.open_task(*task_);
  });
  for (QWidget* each : {static_cast<QWidget*>(verdict_), static_cast<QWidget*>(chart_),
                        static_cast<QWidget*>(legend_)}) {
    column->addWidget(each);
  }
  column->addLayout(grid_);
  column->addWidget(notes_);
  column->addWidget(read_, 0, Qt::AlignLeft);
}

void KegPanelHold::show_keg(const PanelSubject& subject) {
  const auto& study = subject.keg.hold_study;
  setVisible(study != nullptr);
  if (!study) return;
  const report::HoldReport report = report::hold_report(*study, subject.speaker);
  verdict_->setText(q(report.verdict));
  chart_->show_study(study, subject.speaker);
  chart_->setVisible(chart_->has_readings());
  legend_->setVisible(chart_->has_lines());
  legend_->setText(
      study->beer
          ? tr("Dashed: a tight keg, by what its beer takes up and gives off at that temperature, "
               "and how far that is known.")
          : tr("Dashed: a tight keg, and below it what water left inside may take up. Lines: the "
               "leak that fits, through a scratch (full) or a hole (dotted)."));
  show_figures(report.figures);
  QStringList notes;
  for (const std::string& note : report.notes) notes << q(note);
  notes_->setText(notes.join(QStringLiteral(" ")));
  notes_->setVisible(!notes.isEmpty());
  task_ = next_hold_reading(*study, context_.cellar.journal(), subject.keg.record.keg);
}

void KegPanelHold::show_figures(const std::vector<report::HoldFigure>& figures) {
  while (rows_.size() < figures.size()) {
    auto* name = new InkLabel({}, TextRole::small, Ink::secondary, this);
    auto* value = new Figure(TextRole::small, Ink::text, this);
    name->setWordWrap(true);
    const int row = static_cast<int>(rows_.size());
    grid_->addWidget(name, row, 0, Qt::AlignTop);
    grid_->addWidget(value, row, 1, Qt::AlignTop);
    rows_.emplace_back(name, value);
  }
  for (std::size_t i = 0; i < rows_.size(); ++i) {
    const auto& [name, value] = rows_[i];
    const bool used = i < figures.size();
    if (used) {
      const report::HoldFigure& figure = figures[i];
      name->setText(q(figure.name));
      value->show_number(q(figure.name), q(figure.value),
                         [grounds = figure.grounds] { return grounds; });
    }
    name->setVisible(used);
    value->setVisible(used);
  }
}

}  // namespace ullage::ui
