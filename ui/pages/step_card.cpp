// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/pages/step_card.h"

#include <QCheckBox>
#include <QHBoxLayout>
#include <QPushButton>
#include <QSignalBlocker>
#include <QVBoxLayout>
#include <chrono>

#include "core/report/cleaning_words.h"
#include "core/units/present.h"
#include "ui/theme/theme.h"
#include "ui/widgets/form_section.h"
#include "ui/widgets/ink_label.h"

namespace ullage::ui {
namespace {

// Cleaner that stands longer than this is a fault of its own (trade advice).
constexpr std::chrono::hours longest_soak{1};

bool is_danger(cellar::StepCaution c) {
  return c == cellar::StepCaution::caustic || c == cellar::StepCaution::acid ||
         c == cellar::StepCaution::chlorine || c == cellar::StepCaution::pressure;
}

}  // namespace

StepCard::StepCard(const Context& context, std::size_t number, const cellar::PlanStep& step,
                   const std::vector<Thing>& things, QWidget* parent)
    : Card(parent), context_(context) {
  setObjectName(QStringLiteral("step_%1").arg(number));
  column()->setSpacing(space::s);
  add_words(number, step);
  add_things(number, step, things);
  if (step.contact) add_timer(number, step);
}

void StepCard::add_words(std::size_t number, const cellar::PlanStep& step) {
  const report::Speaker speaker = context_.speaker();
  QString title = QStringLiteral("%1. %2").arg(number + 1).arg(q(report::say_step(step, speaker)));
  if (step.place) {
    const auto status = context_.cellar.status();
    if (const cellar::PlaceStatus* place = status->find(*step.place)) {
      title += QStringLiteral(" · ") + q(place->record.name);
    }
  }
  auto* head = new InkLabel(title, TextRole::strong);
  head->setWordWrap(true);
  auto* amounts =
      new InkLabel(q(report::say_amounts(step, speaker)), TextRole::small, Ink::secondary);
  amounts->setWordWrap(true);
  column()->addWidget(head);
  column()->addWidget(amounts);
  const QString caution = q(report::say_caution(step, speaker));
  if (!caution.isEmpty()) {
    column()->addWidget(new Caution(
        caution, is_danger(step.caution) ? Caution::Weight::danger : Caution::Weight::caution));
  }
}

void StepCard::add_things(std::size_t number, const cellar::PlanStep& step,
                          const std::vector<Thing>& things) {
  auto* rows = new QWidget;
  auto* flow = new QVBoxLayout(rows);
  flow->setContentsMargins(0, 0, 0, 0);
  flow->setSpacing(space::xs);
  const QString what = q(report::say_step(step, context_.speaker()));
  for (std::size_t i = 0; i < things.size(); ++i) {
    const Thing& thing = things[i];
    const bool form = cellar::means(step, thing.about) == cellar::TickMeans::opens_form;
    auto* row = new QHBoxLayout;
    auto* tick = new QCheckBox(thing.name);
    tick->setObjectName(QStringLiteral("tick_%1_%2").arg(number).arg(i));
    tick->setAccessibleName(QStringLiteral("%1, %2").arg(what, thing.name));
    tick->setChecked(thing.done);
    row->addWidget(tick);
    row->addStretch(1);
    if (form) {
      // Only the form's answer ticks it.
      tick->setEnabled(false);
      auto* open = new QPushButton(thing.done ? tr("Again…") : tr("Answer…"));
      open->setObjectName(QStringLiteral("answer_%1_%2").arg(number).arg(i));
      open->setAccessibleName(QStringLiteral("%1, %2").arg(what, thing.name));
      open->setEnabled(!context_.cellar.read_only());
      connect(open, &QPushButton::clicked, this, [this, i] { emit form_asked(i); });
      row->addWidget(open);
    } else {
      tick->setEnabled(!thing.before && !context_.cellar.read_only());
      connect(tick, &QCheckBox::clicked, this, [this, i](bool on) { emit ticked(i, on); });
    }
    flow->addLayout(row);
  }
  column()->addWidget(rows);
}

void StepCard::add_timer(std::size_t number, const cellar::PlanStep& step) {
  start_ = new QPushButton;
  start_->setObjectName(QStringLiteral("timer_%1").arg(number));
  start_->setText(tr("Start the %1 timer")
                      .arg(q(report::say_minutes(present(step.contact), context_.speaker()))));
  left_ = new InkLabel({}, TextRole::strong);
  left_->setObjectName(QStringLiteral("timer_left_%1").arg(number));
  auto* row = new QHBoxLayout;
  row->setSpacing(space::m);
  row->addWidget(start_);
  row->addWidget(left_, 1);
  column()->addLayout(row);
  connect(start_, &QPushButton::clicked, this, [this] { emit timer_asked(!ends_); });
}

void StepCard::set_timer(std::optional<cellar::Instant> ends) {
  ends_ = ends;
  if (start_ != nullptr && ends) start_->setText(tr("Stop the timer"));
}

void StepCard::set_stood(units::Duration stood) {
  if (left_ == nullptr) return;
  left_->set_ink(Ink::text);
  left_->setText(tr("Stood %1").arg(q(report::say_minutes(stood, context_.speaker()))));
}

void StepCard::tell_time(cellar::Instant now) {
  if (left_ == nullptr || !ends_) return;
  const auto left = *ends_ - now;
  if (left.count() > 0) {
    const auto seconds = left.count();
    left_->set_ink(Ink::text);
    left_->setText(tr("%1:%2 left").arg(seconds / 60).arg(seconds % 60, 2, 10, QLatin1Char('0')));
  } else if (-left < longest_soak) {
    left_->set_ink(Ink::warning);
    left_->setText(tr("Time is up: rinse"));
  } else {
    left_->set_ink(Ink::danger);
    left_->setText(tr("Over an hour too long: rinse now"));
  }
}

}  // namespace ullage::ui
