// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/dialogs/keg_change.h"

#include <QDialogButtonBox>
#include <QPushButton>
#include <QVBoxLayout>

#include "ui/dialogs/forms/hush.h"
#include "ui/preferences.h"
#include "ui/theme/style.h"
#include "ui/theme/theme.h"
#include "ui/widgets/banner.h"
#include "ui/widgets/enum_picker.h"
#include "ui/widgets/form_section.h"
#include "ui/widgets/ink_label.h"
#include "ui/widgets/screen_room.h"
#include "ui/widgets/text_edit.h"
#include "ui/widgets/when_edit.h"

namespace ullage::ui {
namespace {

enum OffState { off_empty, off_with_beer };

template <class P>
cellar::Payload payload_of(P p) {
  return cellar::Payload(boost::variant2::in_place_type<P>, std::move(p));
}

QDialogButtonBox* keg_change_buttons(QWidget* dialog) {
  auto* buttons = new QDialogButtonBox(dialog);
  auto* log_it = buttons->addButton(KegChange::tr("&Log the change"), QDialogButtonBox::AcceptRole);
  log_it->setObjectName(QStringLiteral("log_it"));
  make_default(log_it);
  buttons->addButton(QDialogButtonBox::Cancel);
  return buttons;
}

}  // namespace

KegChange::KegChange(const Context& context, std::optional<cellar::LineId> line,
                     std::optional<cellar::KegId> on, QWidget* parent)
    : QDialog(parent), context_(context) {
  setWindowTitle(tr("Keg change"));
  setObjectName(QStringLiteral("keg_change"));
  build();
  choose(line, on);
  drop_shared_mnemonics(*this);
  if (!line) {
    line_->setFocus();
  } else if (!on) {
    on_->setFocus();
  } else {
    pressure_->setFocus();
  }
  guard_.watch(*this);
  grow_with_contents(*this);
}

KegChange::~KegChange() { hush(*this); }

void KegChange::build() {
  line_ = new LinePicker(context_);
  line_->setObjectName(QStringLiteral("line"));
  line_->set_required(true);
  on_ = new KegPicker(context_);
  on_->setObjectName(QStringLiteral("keg_on"));
  on_->set_required(true);
  on_->set_shows([](const cellar::KegStatus& keg) {
    return keg.record.in_use && keg.contents && keg.phase != cellar::Phase::on_tap;
  });
  off_ = new InkLabel({}, TextRole::strong);
  off_state_ = new ChoiceBar({tr("Empty"), tr("Beer left in it")});
  off_state_->set_name(tr("The keg that comes off"));
  off_state_->set_index(off_empty);
  pressure_ = new GaugePressureEdit(context_.preferences);
  pressure_->setObjectName(QStringLiteral("pressure"));
  regulator_ = new RegulatorPicker(context_);
  regulator_->set_optional(tr("–"));
  when_ = new WhenEdit(context_.cellar);
  by_ = new TextEdit(8);
  by_->set_value(s(context_.preferences.initials()));
  words_ = new InkLabel({}, TextRole::heading, Ink::accent);
  words_->setObjectName(QStringLiteral("in_words"));
  words_->setWordWrap(true);
  warning_ = new Banner(cellar::Severity::danger, {});
  warning_->hide();
  refusal_ = new Banner(cellar::Severity::warning, {});
  refusal_->setObjectName(QStringLiteral("refusal"));
  refusal_->hide();

  auto* form = new FormSection;
  form->add_caution(
      tr("A spent keg is still under pressure until it is vented. Don't lift a full one."));
  form->add(tr("&Line"), line_);
  form->add(tr("Comes off"), off_);
  form->add(tr("It is"), off_state_);
  form->add(tr("Goes &on"), on_);
  form->add(tr("&Gas set to"), pressure_, tr("Leave open if the gas stays as it is."));
  form->add(tr("&Regulator"), regulator_);
  form->add(tr("&When"), when_);
  form->add(tr("By"), by_, tr("Initials."));
  auto* all = new QVBoxLayout(this);
  all->setContentsMargins(space::xl, space::l, space::xl, space::l);
  all->setSpacing(space::m);
  all->addWidget(form);
  all->addStretch(1);
  all->addWidget(warning_);
  all->addWidget(words_);
  all->addWidget(refusal_);
  auto* buttons = keg_change_buttons(this);  // last, so that Tab comes to them last
  all->addWidget(buttons);
  resize_within_screen(*this, {540, 520});
  connect(line_, &LinePicker::changed, this, &KegChange::on_line);
  connect(on_, &KegPicker::changed, this, &KegChange::on_keg);
  connect(off_state_, &ChoiceBar::changed, this, &KegChange::tell);
  connect(buttons, &QDialogButtonBox::accepted, this, &KegChange::log);
  connect(buttons, &QDialogButtonBox::rejected, this, &KegChange::reject);
}

void KegChange::choose(std::optional<cellar::LineId> line, std::optional<cellar::KegId> on) {
  line_->set_value(line);
  on_->set_value(on);
  on_line();
  on_keg();
}

std::optional<cellar::KegId> KegChange::coming_off() const {
  const auto status = context_.cellar.status();
  const cellar::LineStatus* line = line_->value() ? status->find(*line_->value()) : nullptr;
  return line ? line->keg : std::nullopt;
}

void KegChange::on_line() {
  const auto status = context_.cellar.status();
  const cellar::LineStatus* line = line_->value() ? status->find(*line_->value()) : nullptr;
  const std::optional<cellar::KegId> off = coming_off();
  const cellar::KegStatus* keg = off ? status->find(*off) : nullptr;
  off_->setText(keg ? q(keg->record.tag) + (keg->contents
                                                ? QStringLiteral(", ") + q(keg->contents->beer.name)
                                                : QString())
                    : tr("nothing"));
  off_state_->setEnabled(keg != nullptr);
  warning_->setVisible(line && line->lock);
  if (line && line->lock) {
    warning_->set(
        cellar::Severity::danger, tr("Do not serve from %1").arg(q(line->record.name)),
        tr("%1 in it since %2, %3. Release it by a check before anything is poured.")
            .arg(q(line->lock->agent), q(report::say_time(line->lock->since, context_.speaker())),
                 q(line->lock->by)));
  }
  if (line && line->record.regulator) regulator_->set_value(line->record.regulator);
  tell();
}

void KegChange::on_keg() {
  const auto status = context_.cellar.status();
  const cellar::KegStatus* keg = on_->value() ? status->find(*on_->value()) : nullptr;
  if (keg && !pressure_->value()) pressure_->set_last(keg->gas.should_be);
  tell();
}

QString KegChange::in_words() const { return words_->text(); }

void KegChange::tell() {
  const auto status = context_.cellar.status();
  const cellar::LineStatus* line = line_->value() ? status->find(*line_->value()) : nullptr;
  const cellar::KegStatus* on = on_->value() ? status->find(*on_->value()) : nullptr;
  const std::optional<cellar::KegId> off_id = coming_off();
  const cellar::KegStatus* off = off_id ? status->find(*off_id) : nullptr;
  refusal_->hide();
  if (!line || !on) {
    words_->clear();
    return;
  }
  const bool us = context_.preferences.words() == report::RegionalWords::us;
  QString words;
  if (off) words = tr("%1 off, ").arg(q(off->record.tag));
  words += us ? tr("%1 on faucet %2") : tr("%1 on tap %2");
  words_->setText(words.arg(q(on->record.tag), q(line->record.tap)));
}

cellar::Act KegChange::act() const {
  cellar::Act act;
  act.by = by_->value();
  const auto status = context_.cellar.status();
  const cellar::Instant at = when_->value().value_or(context_.cellar.now());
  const auto did = [&](cellar::Payload payload) {
    act.drafts.push_back({std::move(payload), at, {}, {}});
  };
  if (const std::optional<cellar::KegId> off = coming_off()) {
    did(payload_of(cellar::Untapped{*off}));
    if (off_state_->index() == off_empty) did(payload_of(cellar::Emptied{*off}));
    did(payload_of(cellar::GasOff{*off}));
  }
  if (on_->value() && line_->value()) {
    did(payload_of(cellar::Tapped{*on_->value(), *line_->value()}));
    if (pressure_->value()) {
      cellar::GasSet gas{.keg = *on_->value(), .pressure = *pressure_->value()};
      gas.regulator = regulator_->value();
      for (const cellar::RegulatorRecord& r : status->regulators) {
        if (gas.regulator && r.regulator == *gas.regulator) gas.instrument = r.dial;
      }
      did(payload_of(gas));
    }
  }
  return act;
}

bool KegChange::log() {
  line_->show_fault();
  on_->show_fault();
  when_->show_fault();
  pressure_->show_fault();
  by_->show_fault();
  if (!line_->fault().isEmpty() || !on_->fault().isEmpty() || !when_->fault().isEmpty() ||
      !pressure_->fault().isEmpty() || !by_->fault().isEmpty()) {
    return false;
  }
  const QString words = in_words();
  const cellar::Outcome<cellar::ActId> outcome = context_.cellar.log(act());
  if (!outcome) {
    QStringList sentences;
    for (const cellar::Fault& fault : outcome.error().faults) {
      sentences << q(report::say(fault.why, context_.speaker()));
    }
    refusal_->set(cellar::Severity::warning, tr("Not logged yet."),
                  sentences.join(QLatin1Char('\n')));
    refusal_->show();
    return false;
  }
  accept();
  context_.navigator.announce(tr("Logged: %1").arg(words), true);
  return true;
}

void KegChange::reject() {
  if (guard_.lets_go(context_, this)) QDialog::reject();
}

}  // namespace ullage::ui
