// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/dialogs/round.h"

#include <QHBoxLayout>
#include <QKeyEvent>
#include <QLineEdit>
#include <QPushButton>
#include <QScrollArea>
#include <QVBoxLayout>
#include <algorithm>

#include "ui/dialogs/forms/scrolled.h"
#include "ui/dialogs/round_value.h"
#include "ui/dialogs/round_words.h"
#include "ui/dialogs/text_limits.h"
#include "ui/preferences.h"
#include "ui/theme/style.h"
#include "ui/theme/theme.h"
#include "ui/widgets/banner.h"
#include "ui/widgets/ink_label.h"
#include "ui/widgets/number_pad.h"
#include "ui/widgets/text_edit.h"
#include "ui/widgets/touch.h"
#include "ui/widgets/when_edit.h"

namespace ullage::ui {
namespace {

constexpr std::chrono::minutes still_now{1};  // "now" goes on while the round is walked

}  // namespace

RoundDialog::RoundDialog(const Context& context, QWidget* parent)
    : QDialog(parent), context_(context), walk_(context) {
  setObjectName(QStringLiteral("round"));
  setWindowTitle(tr("Round"));
  build();
  show_station();
}

void RoundDialog::build() {
  const int side = touch_pixels(parentWidget() != nullptr ? parentWidget() : this);
  about_ = new InkLabel({}, TextRole::body, Ink::text, this);
  about_->setObjectName(QStringLiteral("round_about"));
  about_->setWordWrap(true);
  pad_ = new NumberPad(side, context_.preferences.number_style().decimal_mark, this);
  connect_pad();
  auto* middle = new QHBoxLayout;
  middle->setSpacing(space::xl);
  middle->addWidget(build_values(), 1);
  middle->addWidget(pad_, 0, Qt::AlignTop);
  notice_ = new Banner(cellar::Severity::warning, {}, {}, this);
  notice_->setObjectName(QStringLiteral("refusal"));
  notice_->hide();
  auto* all = new QVBoxLayout(this);
  all->setContentsMargins(space::xl, space::m, space::xl, space::m);
  all->setSpacing(space::s);
  all->addLayout(build_head(side));
  all->addWidget(about_);
  all->addLayout(middle, 1);
  all->addWidget(notice_);
  all->addWidget(build_foot(side));
  resize(960, 600);
}

QLayout* RoundDialog::build_head(int side) {
  progress_ = new InkLabel({}, TextRole::body, Ink::secondary, this);
  progress_->setObjectName(QStringLiteral("round_progress"));
  progress_->setWordWrap(true);
  name_ = new InkLabel({}, TextRole::number, Ink::text, this);
  name_->setObjectName(QStringLiteral("round_station"));
  auto* told = new QVBoxLayout;
  told->setSpacing(space::xs);
  told->addWidget(progress_);
  told->addWidget(name_);
  told->addStretch(1);
  when_ = new WhenEdit(context_.cellar, this);
  when_->setObjectName(QStringLiteral("round_when"));
  when_->line_edit()->setMinimumHeight(side);
  when_->line_edit()->setAccessibleName(tr("Read at"));
  when_->line_edit()->installEventFilter(this);
  for (auto* button : when_->findChildren<QPushButton*>()) button->setMinimumSize(side, side);
  auto* row = new QHBoxLayout;
  row->setSpacing(space::s);
  row->addLayout(told, 1);
  row->addWidget(new InkLabel(tr("Read at"), TextRole::body, Ink::secondary, this));
  row->addWidget(when_);
  return row;
}

QWidget* RoundDialog::build_values() {
  auto* values = new QWidget;
  value_column_ = new QVBoxLayout(values);
  value_column_->setContentsMargins(0, 0, space::m, 0);
  value_column_->setSpacing(space::l);
  value_column_->addStretch(1);
  auto* scroll = scrolled();
  scroll->setWidget(values);
  scroll->installEventFilter(this);
  return scroll;
}

void RoundDialog::connect_pad() {
  connect(pad_, &NumberPad::typed, this, [this](const QString& character) {
    if (RoundValueEdit* edit = active()) edit->type(character);
  });
  connect(pad_, &NumberPad::taken_back, this, [this] {
    if (RoundValueEdit* edit = active()) edit->take_back();
  });
  connect(pad_, &NumberPad::sign_changed, this, [this] {
    if (RoundValueEdit* edit = active()) edit->change_sign();
  });
}

QWidget* RoundDialog::build_foot(int side) {
  auto* foot = new QWidget(this);
  auto* row = new QHBoxLayout(foot);
  row->setContentsMargins(0, 0, 0, 0);
  row->setSpacing(space::m);
  const auto button = [&](const QString& text, const char* name) {
    auto* made = new QPushButton(text, foot);
    made->setObjectName(QString::fromLatin1(name));
    made->setMinimumSize(side, side);
    made->setAutoDefault(false);
    row->addWidget(made, 1);
    return made;
  };
  back_ = button(tr("Back\nPage Up"), "round_back");
  skip_ = button(tr("Skip\nPage Down"), "round_skip");
  take_back_ = button(tr("Take back the last\nCtrl+Z"), "round_take_back");
  next_ = button(tr("Log and go on\nEnter"), "round_next");
  set_role(next_, ButtonRole::primary);
  auto* close = button(tr("Close, go on later\nEsc"), "round_close");
  connect(back_, &QPushButton::clicked, this, &RoundDialog::back);
  connect(skip_, &QPushButton::clicked, this, &RoundDialog::skip);
  connect(take_back_, &QPushButton::clicked, this, &RoundDialog::take_back);
  connect(next_, &QPushButton::clicked, this, [this] { log_and_go_on(); });
  connect(close, &QPushButton::clicked, this, &QDialog::reject);
  return foot;
}

QString RoundDialog::station_name() const {
  const cellar::RoundStation* here = walk_.station();
  return here != nullptr ? round_name(*here, context_) : QString();
}

RoundValueEdit* RoundDialog::active() const {
  for (RoundValueEdit* edit : values_) {
    if (edit->has_keyboard()) return edit;
  }
  return active_;
}

void RoundDialog::take_active(RoundValueEdit& edit) {
  active_ = &edit;
  pad_->offer_sign(edit.may_be_below_zero());
}

void RoundDialog::clear_values() {
  active_ = nullptr;
  for (RoundValueEdit* old : values_) {
    value_column_->removeWidget(old);
    old->hide();
    old->setObjectName(QString());  // its name goes to the next
    old->deleteLater();
  }
  values_.clear();
  if (remark_ != nullptr) {
    remark_->hide();
    remark_->deleteLater();
  }
}

// Made anew after the values of each station: Tab goes in the order of making.
void RoundDialog::make_remark() {
  remark_ = new TextEdit(remark_limit(), TextEdit::Lines::one, value_column_->parentWidget());
  remark_->set_placeholder(tr("Remark"));
  remark_->line_edit()->setAccessibleName(tr("Remark"));
  remark_->line_edit()->setMinimumHeight(touch_pixels(this));
  remark_->line_edit()->installEventFilter(this);
  value_column_->insertWidget(static_cast<int>(values_.size()), remark_);
  remark_->setVisible(!walk_.at_end());
}

void RoundDialog::show_station() {
  notice_->hide();
  clear_values();
  const cellar::RoundStation* here = walk_.station();
  pad_->setEnabled(here != nullptr && !here->questions.empty());
  pad_->offer_sign(false);
  back_->setEnabled(walk_.number() > 1);
  take_back_->setEnabled(walk_.to_take_back().has_value());
  walk_.remember();
  if (here == nullptr) return show_end();
  const QString done = walk_.was_logged(here->about) ? tr(" · logged already: type to correct it")
                       : walk_.was_skipped(here->about) ? tr(" · skipped before")
                                                        : QString();
  progress_->setText(tr("%1 of %2").arg(walk_.number()).arg(walk_.count()) + QStringLiteral(" · ") +
                     round_place_words(*here, context_) + done);
  name_->setText(round_name(*here, context_));
  about_->setText(round_about_words(*here, context_));
  about_->setVisible(!about_->text().isEmpty());
  show_values(*here);
  skip_->setEnabled(true);
  next_->setEnabled(!context_.cellar.read_only());
  next_->setText(tr("Log and go on\nEnter"));
}

void RoundDialog::show_values(const cellar::RoundStation& here) {
  const int side = touch_pixels(this);
  for (const cellar::RoundQuestion& question : here.questions) {
    auto* edit = new RoundValueEdit(context_, question, side, value_column_->parentWidget());
    edit->setObjectName(QStringLiteral("round_value_%1").arg(values_.size()));
    connect(edit, &RoundValueEdit::got_keyboard, this, [this, edit] { take_active(*edit); });
    connect(edit, &RoundValueEdit::instrument_taken, this,
            [this, edit, at = values_.size()] { walk_.take_instrument(at, edit->instrument()); });
    edit->findChild<QLineEdit*>()->installEventFilter(this);
    value_column_->insertWidget(static_cast<int>(values_.size()), edit);
    edit->show();  // now, not when the layout comes to it: the next key may be Tab
    values_.push_back(edit);
  }
  make_remark();
  if (values_.empty()) {
    remark_->line_edit()->setFocus();
  } else {
    values_.front()->take_keyboard();
  }
}

void RoundDialog::show_end() {
  make_remark();
  name_->setText(walk_.has_stations() ? tr("That was the round") : tr("Nothing to walk to"));
  progress_->setText(tr("%1 logged, %2 skipped").arg(walk_.logged()).arg(walk_.skipped()));
  about_->setText(!walk_.has_stations()  ? tr("Register places and kegs first.")
                  : walk_.skipped() == 0 ? tr("Nothing was skipped.")
                                         : tr("Go back to what was skipped, or close it."));
  about_->show();
  skip_->setEnabled(false);
  next_->setEnabled(walk_.skipped() > 0 && !context_.cellar.read_only());
  next_->setText(tr("To what was skipped\nEnter"));
  next_->setFocus();
}

void RoundDialog::skip() {
  walk_.skip();
  show_station();
}

void RoundDialog::back() {
  walk_.back();
  show_station();
}

void RoundDialog::tell(cellar::Severity severity, const QString& headline, const QString& detail) {
  notice_->set(severity, headline, detail);
  notice_->show();
}

void RoundDialog::tell_refusal(const QString& headline, const cellar::Refusal& refusal) {
  QStringList why;
  for (const cellar::Fault& fault : refusal.faults) {
    why << q(report::say(fault.why, context_.speaker()));
  }
  tell(cellar::Severity::warning, headline, why.join(QLatin1Char('\n')));
}

std::optional<RoundRead> RoundDialog::read() {
  RoundRead read;
  for (RoundValueEdit* edit : values_) {
    if (edit->is_timing()) {  // the glass is full: what it took is shown before it is logged
      edit->press_watch();
      return std::nullopt;
    }
    if (edit->is_wrong()) {
      edit->take_keyboard();
      return std::nullopt;
    }
    read.values.push_back(edit->value());
  }
  if (!remark_->fault().isEmpty()) {
    remark_->line_edit()->setFocus();
    return std::nullopt;
  }
  read.remark = remark_->value();
  const auto when = when_->value();
  if (!when) {
    when_->show_fault();
    when_->line_edit()->setFocus();
    return std::nullopt;
  }
  read.when = *when;
  read.when_stated = std::chrono::abs(context_.cellar.now() - *when) >= still_now;
  return read;
}

bool RoundDialog::anything_typed() const {
  return !remark_->text().trimmed().isEmpty() ||
         std::any_of(values_.begin(), values_.end(),
                     [](const RoundValueEdit* edit) { return !edit->is_empty(); });
}

bool RoundDialog::log_and_go_on() {
  if (walk_.at_end()) {
    walk_.to_what_was_skipped();
    show_station();
    return true;
  }
  const std::optional<RoundRead> read = this->read();
  if (!read) return false;
  // A tap with nothing to be read at is done when it was looked at.
  if (!anything_typed() && !values_.empty()) {
    skip();
    return true;
  }
  if (const auto logged = walk_.log(*read); !logged) {
    tell_refusal(tr("Not logged yet."), logged.error());
    return false;
  }
  show_station();
  return true;
}

void RoundDialog::take_back() {
  if (!walk_.to_take_back()) return;
  if (const auto taken = walk_.take_back(); !taken) {
    tell_refusal(tr("Not taken back."), taken.error());
    return;
  }
  show_station();
  tell(cellar::Severity::info, tr("Taken back: %1").arg(station_name()));
}

void RoundDialog::show_scanned(const QString& tag) {
  const auto status = context_.cellar.status();
  const cellar::KegStatus* keg = status->keg_by_tag(s(tag));
  const auto about =
      keg != nullptr ? std::optional(cellar::subject(keg->record.keg)) : std::nullopt;
  const cellar::RoundStation* here = walk_.station();
  if (about && here != nullptr && here->about == *about) return;
  const QString scanned = tr("%1 was scanned.").arg(tag);
  if (anything_typed()) {
    tell(cellar::Severity::info, scanned, tr("Log what is typed here first, or clear it."));
  } else if (about && walk_.go_to(*about)) {
    show_station();
  } else {
    tell(cellar::Severity::info, scanned, tr("It has no station on this round."));
  }
}

// The scrolling area would take the page and arrow keys for itself. A field has its
// own undo, which wins while there is something in it.
bool RoundDialog::eventFilter(QObject* watched, QEvent* event) {
  if (event->type() != QEvent::KeyPress) return QDialog::eventFilter(watched, event);
  auto* key = static_cast<QKeyEvent*>(event);
  if (auto* field = qobject_cast<QLineEdit*>(watched)) {
    const bool enter = key->key() == Qt::Key_Return || key->key() == Qt::Key_Enter;
    if (field == when_->line_edit() && enter && !values_.empty()) {
      values_.front()->take_keyboard();
      return true;
    }
    if (!key->matches(QKeySequence::Undo) || anything_typed()) return false;
  }
  keyPressEvent(key);
  return true;
}

void RoundDialog::keyPressEvent(QKeyEvent* event) {
  if (event->matches(QKeySequence::Undo)) return take_back();
  const bool elsewhere = remark_->line_edit()->hasFocus() || when_->line_edit()->hasFocus();
  RoundValueEdit* edit = elsewhere ? nullptr : active();
  switch (event->key()) {
    case Qt::Key_Return:
    case Qt::Key_Enter:
      log_and_go_on();
      return;
    case Qt::Key_PageDown:
      skip();
      return;
    case Qt::Key_PageUp:
      back();
      return;
    case Qt::Key_F2:
      if (edit != nullptr) edit->take_next_instrument();
      return;
    case Qt::Key_F3:
      for (RoundValueEdit* each : values_) {
        if (each->has_watch()) each->press_watch();
      }
      return;
    case Qt::Key_Up:
    case Qt::Key_Down:
      if (edit != nullptr) edit->step(event->key() == Qt::Key_Up ? 1 : -1);
      return;
    default:
      QDialog::keyPressEvent(event);
  }
}

}  // namespace ullage::ui
