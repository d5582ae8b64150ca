// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/dialogs/round.h"

#include <QHBoxLayout>
#include <QKeyEvent>
#include <QPushButton>
#include <QScrollArea>
#include <QVBoxLayout>
#include <algorithm>

#include "ui/dialogs/forms/scrolled.h"
#include "ui/dialogs/round_value.h"
#include "ui/preferences.h"
#include "ui/theme/style.h"
#include "ui/theme/theme.h"
#include "ui/widgets/banner.h"
#include "ui/widgets/ink_label.h"
#include "ui/widgets/number_pad.h"
#include "ui/widgets/touch.h"

namespace ullage::ui {
namespace {

constexpr std::chrono::hours round_goes_on_within{18};

QStringList uuids_of(const std::set<cellar::SubjectRef>& subjects) {
  QStringList all;
  for (const cellar::SubjectRef& s : subjects) all << q(cellar::to_text(s.uuid));
  return all;
}

QString round_place_words(const cellar::RoundStation& at) {
  if (at.place.empty()) return RoundDialog::tr("Place not known");
  return at.place_out_of_use ? RoundDialog::tr("Place out of use: %1").arg(q(at.place))
                             : q(at.place);
}

}  // namespace

RoundDialog::RoundDialog(const Context& context, QWidget* parent)
    : QDialog(parent), context_(context) {
  setObjectName(QStringLiteral("round"));
  setWindowTitle(tr("Round"));
  stations_ = cellar::round_stations(*context_.cellar.status(), context_.cellar.journal());
  recall_instruments();
  start_over();
  build();
  recall_place();
  show_station();
}

void RoundDialog::start_over() {
  order_.resize(stations_.size());
  for (std::size_t i = 0; i < order_.size(); ++i) order_[i] = i;
  at_ = 0;
}

QString RoundDialog::key(const char* what) const {
  return QStringLiteral("round/%1/%2")
      .arg(q(context_.cellar.file_name()), QString::fromLatin1(what));
}

void RoundDialog::remember_place() const {
  Preferences& keep = context_.preferences;
  const cellar::RoundStation* here = station();
  keep.remember(key("at"), here != nullptr ? q(cellar::to_text(here->about.uuid)) : QString());
  keep.remember(key("when"),
                QVariant::fromValue<qlonglong>(context_.cellar.now().time_since_epoch().count()));
  keep.remember(key("logged"), uuids_of(logged_));
  keep.remember(key("skipped"), uuids_of(skipped_));
}

void RoundDialog::recall_place() {
  const Preferences& kept = context_.preferences;
  const QString at = kept.remembered(key("at")).toString();
  const cellar::Instant when{std::chrono::seconds(kept.remembered(key("when")).toLongLong())};
  if (at.isEmpty() || context_.cellar.now() - when > round_goes_on_within) return;
  const QStringList logged = kept.remembered(key("logged")).toStringList();
  const QStringList skipped = kept.remembered(key("skipped")).toStringList();
  for (std::size_t i = 0; i < stations_.size(); ++i) {
    const QString id = q(cellar::to_text(stations_[i].about.uuid));
    if (logged.contains(id)) logged_.insert(stations_[i].about);
    if (skipped.contains(id)) skipped_.insert(stations_[i].about);
    if (id == at) at_ = i;
  }
}

QString RoundDialog::instrument_key(const cellar::RoundStation& at,
                                    const cellar::RoundQuestion& question) const {
  return key("read_on/") + q(cellar::to_text(at.about.uuid)) +
         QStringLiteral("/%1").arg(static_cast<int>(question.ask));
}

void RoundDialog::recall_instruments() {
  for (cellar::RoundStation& at : stations_) {
    for (cellar::RoundQuestion& question : at.questions) {
      const QVariant kept = context_.preferences.remembered(instrument_key(at, question));
      if (!kept.isValid()) continue;
      question.instrument.reset();
      for (const cellar::RoundInstrument& i : question.instruments) {
        if (q(cellar::to_text(i.instrument.uuid)) == kept.toString())
          question.instrument = i.instrument;
      }
    }
  }
}

void RoundDialog::remember_instrument(std::size_t question, const RoundValueEdit& edit) {
  cellar::RoundStation& here = stations_.at(order_.at(at_));
  here.questions.at(question).instrument = edit.instrument();
  context_.preferences.remember(
      instrument_key(here, here.questions[question]),
      edit.instrument() ? q(cellar::to_text(edit.instrument()->uuid)) : QString());
}

void RoundDialog::build() {
  const int side = touch_pixels(parentWidget() != nullptr ? parentWidget() : this);
  progress_ = new InkLabel({}, TextRole::body, Ink::secondary, this);
  progress_->setObjectName(QStringLiteral("round_progress"));
  name_ = new InkLabel({}, TextRole::number, Ink::text, this);
  name_->setObjectName(QStringLiteral("round_station"));
  about_ = new InkLabel({}, TextRole::body, Ink::text, this);
  about_->setWordWrap(true);
  auto* values = new QWidget;
  value_column_ = new QVBoxLayout(values);
  value_column_->setContentsMargins(0, 0, space::m, 0);
  value_column_->setSpacing(space::l);
  value_column_->addStretch(1);
  auto* scroll = scrolled();
  scroll->setWidget(values);
  scroll->installEventFilter(this);
  pad_ = new NumberPad(side, context_.preferences.number_style().decimal_mark, this);
  connect(pad_, &NumberPad::typed, this, [this](const QString& character) {
    if (RoundValueEdit* edit = active()) edit->type(character);
  });
  connect(pad_, &NumberPad::taken_back, this, [this] {
    if (RoundValueEdit* edit = active()) edit->take_back();
  });
  connect(pad_, &NumberPad::sign_changed, this, [this] {
    if (RoundValueEdit* edit = active()) edit->change_sign();
  });
  auto* middle = new QHBoxLayout;
  middle->setSpacing(space::xl);
  middle->addWidget(scroll, 1);
  middle->addWidget(pad_, 0, Qt::AlignTop);
  refusal_ = new Banner(cellar::Severity::warning, {}, {}, this);
  refusal_->setObjectName(QStringLiteral("refusal"));
  refusal_->hide();
  auto* all = new QVBoxLayout(this);
  all->setContentsMargins(space::xl, space::m, space::xl, space::m);
  all->setSpacing(space::s);
  all->addWidget(progress_);
  all->addWidget(name_);
  all->addWidget(about_);
  all->addLayout(middle, 1);
  all->addWidget(refusal_);
  all->addWidget(build_foot(side));
  resize(920, 600);
}

QWidget* RoundDialog::build_foot(int side) {
  auto* foot = new QWidget(this);
  auto* row = new QHBoxLayout(foot);
  row->setContentsMargins(0, 0, 0, 0);
  row->setSpacing(space::m);
  const auto button = [&](const QString& text, const char* name) {
    auto* made = new QPushButton(text, foot);
    made->setObjectName(QString::fromLatin1(name));
    made->setMinimumSize(2 * side, side);
    made->setAutoDefault(false);
    row->addWidget(made, 1);
    return made;
  };
  back_ = button(tr("Back\nPage Up"), "round_back");
  skip_ = button(tr("Skip\nPage Down"), "round_skip");
  next_ = button(tr("Log and go on\nEnter"), "round_next");
  set_role(next_, ButtonRole::primary);
  auto* close = button(tr("Close, go on later\nEsc"), "round_close");
  connect(back_, &QPushButton::clicked, this, &RoundDialog::back);
  connect(skip_, &QPushButton::clicked, this, &RoundDialog::skip);
  connect(next_, &QPushButton::clicked, this, [this] { log_and_go_on(); });
  connect(close, &QPushButton::clicked, this, &QDialog::reject);
  return foot;
}

const cellar::RoundStation* RoundDialog::station() const {
  return at_end() ? nullptr : &stations_[order_[at_]];
}

QString RoundDialog::station_name() const {
  const cellar::RoundStation* here = station();
  return here != nullptr ? q(here->name) : QString();
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

QString RoundDialog::about_words(const cellar::RoundStation& here) const {
  if (here.about.kind != cellar::SubjectKind::keg) return {};
  const auto status = context_.cellar.status();
  const cellar::KegStatus* keg = status->find(cellar::KegId{here.about.uuid});
  if (keg == nullptr) return {};
  QStringList words;
  if (keg->contents) words << q(keg->contents->beer.name);
  words << q(report::say(keg->state, context_.speaker()));
  if (here.do_not_serve) words << tr("pour nothing from it");
  return words.join(QStringLiteral(" · "));
}

void RoundDialog::show_station() {
  refusal_->hide();
  active_ = nullptr;
  for (RoundValueEdit* old : values_) {
    value_column_->removeWidget(old);
    old->hide();
    old->setObjectName(QString());  // its name goes to the next
    old->deleteLater();
  }
  values_.clear();
  const cellar::RoundStation* here = station();
  pad_->setEnabled(here != nullptr);
  back_->setEnabled(at_ > 0);
  pad_->offer_sign(false);
  if (here == nullptr) return show_end();
  const QString done = logged_.contains(here->about)    ? tr(" · logged already")
                       : skipped_.contains(here->about) ? tr(" · skipped before")
                                                        : QString();
  progress_->setText(tr("%1 of %2").arg(at_ + 1).arg(order_.size()) + QStringLiteral(" · ") +
                     round_place_words(*here) + done);
  name_->setText(q(here->name));
  about_->setText(about_words(*here));
  about_->setVisible(!about_->text().isEmpty());
  const int side = touch_pixels(this);
  for (const cellar::RoundQuestion& question : here->questions) {
    auto* edit = new RoundValueEdit(context_, question, side, value_column_->parentWidget());
    edit->setObjectName(QStringLiteral("round_value_%1").arg(values_.size()));
    connect(edit, &RoundValueEdit::got_keyboard, this, [this, edit] { take_active(*edit); });
    connect(edit, &RoundValueEdit::instrument_taken, this,
            [this, edit, at = values_.size()] { remember_instrument(at, *edit); });
    value_column_->insertWidget(static_cast<int>(values_.size()), edit);
    edit->show();  // now, not when the layout comes to it: the next key may be Tab
    values_.push_back(edit);
  }
  skip_->setEnabled(true);
  next_->setEnabled(!context_.cellar.read_only());
  next_->setText(tr("Log and go on\nEnter"));
  if (!values_.empty()) values_.front()->take_keyboard();
  remember_place();
}

void RoundDialog::show_end() {
  name_->setText(stations_.empty() ? tr("Nothing to walk to") : tr("That was the round"));
  progress_->setText(tr("%1 logged, %2 skipped").arg(logged_.size()).arg(skipped_.size()));
  about_->setText(stations_.empty()  ? tr("Register places and kegs first.")
                  : skipped_.empty() ? tr("Nothing was skipped.")
                                     : tr("Go back to what was skipped, or close it."));
  about_->show();
  skip_->setEnabled(false);
  next_->setEnabled(!skipped_.empty() && !context_.cellar.read_only());
  next_->setText(tr("To what was skipped\nEnter"));
  next_->setFocus();
  remember_place();
}

void RoundDialog::go_on() {
  if (!at_end()) ++at_;
  show_station();
}

void RoundDialog::skip() {
  const cellar::RoundStation* here = station();
  if (here == nullptr) return;
  if (!logged_.contains(here->about)) skipped_.insert(here->about);
  go_on();
}

void RoundDialog::back() {
  if (at_ == 0) return;
  --at_;
  show_station();
}

bool RoundDialog::log_and_go_on() {
  const cellar::RoundStation* here = station();
  if (here == nullptr) {
    order_.clear();
    for (std::size_t i = 0; i < stations_.size(); ++i) {
      if (skipped_.contains(stations_[i].about)) order_.push_back(i);
    }
    at_ = 0;
    show_station();
    return true;
  }
  std::vector<std::optional<cellar::RoundValue>> read;
  bool anything = false;
  for (RoundValueEdit* edit : values_) {
    if (edit->is_timing()) {  // the glass is full: what it took is shown before it is logged
      edit->press_watch();
      return false;
    }
    if (edit->is_wrong()) {
      edit->take_keyboard();
      return false;
    }
    anything = anything || !edit->is_empty();
    read.push_back(edit->value());
  }
  if (!anything) {
    skip();
    return true;
  }
  cellar::Act act;
  act.by = s(context_.preferences.initials());
  act.drafts = cellar::round_drafts(*here, read, context_.cellar.now(), *context_.cellar.status());
  if (!act.drafts.empty()) {
    const auto outcome = context_.cellar.log(act);
    if (!outcome) {
      QStringList why;
      for (const cellar::Fault& fault : outcome.error().faults) {
        why << q(report::say(fault.why, context_.speaker()));
      }
      refusal_->set(cellar::Severity::warning, tr("Not logged yet."), why.join(QLatin1Char('\n')));
      refusal_->show();
      return false;
    }
  }
  logged_.insert(here->about);
  skipped_.erase(here->about);
  go_on();
  return true;
}

// The scrolling area would take the page and arrow keys for itself.
bool RoundDialog::eventFilter(QObject* watched, QEvent* event) {
  if (event->type() != QEvent::KeyPress) return QDialog::eventFilter(watched, event);
  keyPressEvent(static_cast<QKeyEvent*>(event));
  return true;
}

void RoundDialog::keyPressEvent(QKeyEvent* event) {
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
      if (RoundValueEdit* edit = active()) edit->take_next_instrument();
      return;
    case Qt::Key_F3:
      for (RoundValueEdit* edit : values_) {
        if (edit->has_watch()) edit->press_watch();
      }
      return;
    case Qt::Key_Up:
    case Qt::Key_Down:
      if (RoundValueEdit* edit = active()) edit->step(event->key() == Qt::Key_Up ? 1 : -1);
      return;
    default:
      QDialog::keyPressEvent(event);
  }
}

}  // namespace ullage::ui
