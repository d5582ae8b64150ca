// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/pages/cleaning_page.h"

#include <QApplication>
#include <QEvent>
#include <QHBoxLayout>
#include <QPushButton>
#include <QScrollBar>
#include <QStackedWidget>
#include <QTimer>
#include <QVBoxLayout>
#include <algorithm>

#include "core/cellar/cleaning_log.h"
#include "core/report/cleaning_words.h"
#include "core/report/names.h"
#include "core/units/present.h"
#include "ui/dialogs/cleaning_list_preview.h"
#include "ui/dialogs/forms/scrolled.h"
#include "ui/dialogs/kit_dialog.h"
#include "ui/dialogs/put_off_dialog.h"
#include "ui/dialogs/rules_dialog.h"
#include "ui/pages/cleaning_kit.h"
#include "ui/pages/day_choice.h"
#include "ui/pages/due_list.h"
#include "ui/pages/kept_fresh.h"
#include "ui/pages/step_card.h"
#include "ui/preferences.h"
#include "ui/prompts.h"
#include "ui/theme/theme.h"
#include "ui/widgets/empty_state.h"
#include "ui/widgets/ink_label.h"

namespace ullage::ui {
namespace {

constexpr int cleaning_second = 1000;

QPushButton* cleaning_button(const QString& text, const char* name) {
  auto* button = new QPushButton(text);
  button->setObjectName(QLatin1String(name));
  return button;
}

}  // namespace

CleaningPage::CleaningPage(const Context& context, QWidget* parent)
    : QWidget(parent), context_(context) {
  setObjectName(QStringLiteral("cleaning_page"));
  build();
  recall_list();
  auto* seconds = new QTimer(this);
  connect(seconds, &QTimer::timeout, this, &CleaningPage::tell_time);
  seconds->start(cleaning_second);
  fresh_ = std::make_unique<KeptFresh>(*this, context_, [this] { refresh(); });
}

CleaningPage::~CleaningPage() = default;

void CleaningPage::changeEvent(QEvent* event) {
  QWidget::changeEvent(event);
  if (event->type() == QEvent::PaletteChange) refresh();
}

QWidget* CleaningPage::build_body() {
  due_list_ = new DueList(context_);
  days_ = new QWidget;
  days_column_ = new QVBoxLayout(days_);
  days_column_->setContentsMargins(0, 0, space::m, 0);
  days_column_->setSpacing(space::s);
  list_title_ = new InkLabel({}, TextRole::heading);
  list_title_->setWordWrap(true);
  close_ = cleaning_button(tr("C&lose the list"), "close_list");
  auto* list_head = new QHBoxLayout;
  list_head->addWidget(list_title_, 1);
  list_head->addWidget(close_);
  // The days roll away with the steps: a low window has room for one of them.
  auto* rolled = new QWidget;
  auto* rolled_column = new QVBoxLayout(rolled);
  rolled_column->setContentsMargins(0, 0, 0, 0);
  rolled_column->setSpacing(space::s);
  rolled_column->addWidget(days_);
  steps_ = scrolled();
  steps_->setWidget(rolled);
  auto* day = new QWidget;
  auto* right = new QVBoxLayout(day);
  right->setContentsMargins(0, 0, 0, 0);
  right->setSpacing(space::s);
  right->addLayout(list_head);
  right->addWidget(steps_, 1);
  auto* body = new QWidget;
  auto* columns = new QHBoxLayout(body);
  columns->setContentsMargins(0, 0, 0, 0);
  columns->setSpacing(space::xl);
  columns->addWidget(due_list_, 2);
  columns->addWidget(day, 3);
  return body;
}

void CleaningPage::build() {
  summary_ = new InkLabel({}, TextRole::small, Ink::secondary);
  auto* rules = cleaning_button(tr("&Rules…"), "rules");
  auto* kit = cleaning_button(tr("Clea&ner and time…"), "kit");
  print_ = cleaning_button(tr("&Print the list…"), "print_list");
  auto* header = new QHBoxLayout;
  header->addWidget(new InkLabel(tr("Cleaning"), TextRole::title));
  header->addWidget(summary_);
  header->addStretch(1);
  header->addWidget(rules);
  header->addWidget(kit);
  header->addWidget(print_);

  QWidget* body = build_body();
  auto* empty = new EmptyState(Icon::cleaning, tr("Nothing comes round yet"),
                               tr("Say how often lines, kegs and alarms are due, and by whose "
                                  "rule. Ready sets are there to start from."));
  connect(empty->add_action(tr("Rules…")), &QPushButton::clicked, this, &CleaningPage::open_rules);
  stack_ = new QStackedWidget;
  stack_->addWidget(body);
  stack_->addWidget(empty);
  auto* all = new QVBoxLayout(this);
  all->setContentsMargins(space::xl, space::l, space::xl, space::l);
  all->setSpacing(space::m);
  all->addLayout(header);
  all->addWidget(stack_, 1);
  connect(rules, &QPushButton::clicked, this, &CleaningPage::open_rules);
  connect(kit, &QPushButton::clicked, this, &CleaningPage::open_kit);
  connect(print_, &QPushButton::clicked, this, &CleaningPage::open_print);
  connect(close_, &QPushButton::clicked, this, &CleaningPage::close_list);
  connect(due_list_, &DueList::put_off_asked, this, [this] { put_off(due_list_->asked_day()); });
  connect(due_list_, &DueList::log_asked, this, &CleaningPage::log_due);
}

void CleaningPage::refresh() {
  const auto status = context_.cellar.status();
  due_ = cellar::due_work(context_.cellar.journal(), *status, context_.cellar.calendar());
  const auto count = [&](cellar::DueState state) {
    return std::ranges::count(due_, state, &cellar::DueWork::state);
  };
  const auto over = count(cellar::DueState::overdue);
  summary_->setText(due_.empty()
                        ? QString()
                        : tr("%1 overdue, %2 soon").arg(over).arg(count(cellar::DueState::soon)));
  summary_->set_ink(over > 0 ? Ink::danger : Ink::secondary);
  due_list_->show_rows(due_, *status);
  if (!running_) replan();
  stack_->setCurrentIndex(due_.empty() && !running_ ? 1 : 0);
  print_->setEnabled(shown_day() != nullptr);
  show_days();
  show_steps();
}

cellar::PlanWishes CleaningPage::wishes(const cellar::CellarStatus& status,
                                        const QString& kit) const {
  const CleaningHabits habits = cleaning_habits(context_.preferences, kit);
  cellar::PlanWishes wishes = cellar::usual_wishes(status, context_.cellar.calendar());
  wishes.kit = habits.kit;
  wishes.time_at_hand = habits.time_at_hand;
  return wishes;
}

void CleaningPage::replan() {
  const auto status = context_.cellar.status();
  proposed_ = cellar::propose_cleaning_days(due_, *status, context_.cellar.calendar(),
                                            wishes(*status, QStringLiteral("cleaning")));
  if (chosen_day_ >= proposed_.size()) chosen_day_ = 0;
}

const cellar::PlannedDay* CleaningPage::shown_day() const {
  if (running_) return &*running_;
  return chosen_day_ < proposed_.size() ? &proposed_[chosen_day_] : nullptr;
}

void CleaningPage::choose_day(std::size_t which) {
  if (running_ || which >= proposed_.size()) return;
  chosen_day_ = which;
  show_days();
  show_steps();
}

void CleaningPage::show_days() {
  while (QLayoutItem* old = days_column_->takeAt(0)) {
    delete old->widget();
    delete old;
  }
  const cellar::PlannedDay* day = shown_day();
  close_->setVisible(running_.has_value());
  days_->setVisible(!running_);
  if (day == nullptr) {
    list_title_->setText(tr("Nothing falls due within two weeks"));
    return;
  }
  const report::Speaker speaker = context_.speaker();
  if (running_) {
    list_title_->setText(
        tr("Cleaning, begun %1").arg(q(report::say_time(present(begun_at_), speaker))));
    return;
  }
  list_title_->setText(tr("The next cleaning day: choose one; the first tick begins its list"));
  for (std::size_t i = 0; i < proposed_.size(); ++i) {
    const cellar::PlannedDay& one = proposed_[i];
    days_column_->addWidget(new DayChoice(
        context_, one, i == chosen_day_,
        [this, i] {
          // The button's own press led here: it goes once that is done.
          QTimer::singleShot(0, this, [this, i] {
            choose_day(i);
            if (auto* again = findChild<QAbstractButton*>(QStringLiteral("day_%1").arg(i))) {
              again->setFocus();
            }
          });
        },
        i));
  }
}

bool CleaningPage::is_done(std::size_t step, cellar::SubjectRef thing) const {
  if (by_hand_.contains({step, thing})) return true;
  const cellar::PlannedDay* day = shown_day();
  if (day != nullptr && day->steps.at(step).locked_before(thing) != nullptr) return true;
  return day != nullptr && begun_at_ &&
         cellar::done_since(day->steps.at(step), thing, context_.cellar.journal(), *begun_at_) !=
             nullptr;
}

StepCard* CleaningPage::card_for(std::size_t step) {
  const auto status = context_.cellar.status();
  const cellar::PlanStep& what = shown_day()->steps[step];
  std::vector<StepCard::Thing> things;
  for (const cellar::SubjectRef& thing : what.things) {
    const QString name =
        q(report::say_thing(what, thing, *shown_day(), *status, context_.speaker()));
    things.push_back({thing, name, is_done(step, thing), what.locked_before(thing) != nullptr});
  }
  auto* card = new StepCard(context_, step, what, things);
  if (const auto at = timers_.find(step); at != timers_.end()) {
    if (!at->second.stopped) card->set_timer(at->second.ends);
    if (at->second.stopped) card->set_stood(present(stood(step)));
  }
  card->tell_time(context_.cellar.now());
  connect(card, &StepCard::ticked, this,
          [this, step](std::size_t thing, bool on) { tick(step, thing, on); });
  connect(card, &StepCard::form_asked, this,
          [this, step](std::size_t thing) { answer(step, thing); });
  connect(card, &StepCard::timer_asked, this, [this, step](bool on) { start_timer(step, on); });
  return card;
}

void CleaningPage::show_steps() {
  const int at = steps_->verticalScrollBar()->value();
  const QWidget* focus = QApplication::focusWidget();
  const QString focused =
      focus != nullptr && steps_->isAncestorOf(focus) ? focus->objectName() : QString();
  cards_.clear();
  auto* rows = new QWidget;
  auto* column = new QVBoxLayout(rows);
  column->setContentsMargins(0, 0, space::m, 0);
  column->setSpacing(space::s);
  if (const cellar::PlannedDay* day = shown_day()) {
    for (std::size_t i = 0; i < day->steps.size(); ++i) {
      cards_.push_back(card_for(i));
      column->addWidget(cards_.back());
    }
    const auto status = context_.cellar.status();
    for (const cellar::LeftOut& left : day->left_out) {
      auto* words = new InkLabel(
          tr("Not on the list: %1").arg(q(report::say_left_out(left, *status, context_.speaker()))),
          TextRole::small, Ink::secondary);
      words->setWordWrap(true);
      column->addWidget(words);
    }
  }
  column->addStretch(1);
  auto* rolled = static_cast<QVBoxLayout*>(steps_->widget()->layout());
  if (QLayoutItem* old = rolled->takeAt(1)) {
    old->widget()->hide();
    old->widget()->deleteLater();
    delete old;
  }
  rolled->insertWidget(1, rows, 1);
  rows->show();  // not when the event loop gets to it: the focus goes back to a tick in it
  steps_->verticalScrollBar()->setValue(at);
  if (!focused.isEmpty()) {
    if (auto* again = rows->findChild<QWidget*>(focused)) again->setFocus();
  }
}

void CleaningPage::put_off(std::optional<cellar::Date> to) {
  const cellar::DueWork* row = due_list_->chosen();
  if (row == nullptr) return;
  const cellar::DueWork chosen = *row;
  PutOffDialog dialog(context_, chosen, due_, this);
  if (to) dialog.set_day(*to);
  dialog.exec();
}

void CleaningPage::log_due() {
  if (const cellar::DueWork* row = due_list_->chosen()) {
    context_.navigator.open_task(task_of(*row));
  }
}

void CleaningPage::open_rules() {
  RulesDialog dialog(context_, this);
  dialog.exec();
}

void CleaningPage::open_kit() {
  KitDialog dialog(context_, this);
  if (dialog.exec() == QDialog::Accepted) refresh();
}

void CleaningPage::open_print() {
  const cellar::PlannedDay* day = shown_day();
  if (day == nullptr) return;
  CleaningListPreview preview(context_, *day, this);
  preview.exec();
}

bool CleaningPage::print_list() {
  fresh_->now();
  if (shown_day() == nullptr) return false;
  open_print();
  return true;
}

}  // namespace ullage::ui
