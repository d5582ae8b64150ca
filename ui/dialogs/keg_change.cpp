// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/dialogs/keg_change.h"

#include "core/cellar/cellar_status.h"
#include "core/units/present.h"
#include "ui/preferences.h"
#include "ui/theme/theme.h"
#include "ui/widgets/banner.h"
#include "ui/widgets/enum_picker.h"
#include "ui/widgets/form_section.h"
#include "ui/widgets/ink_label.h"
#include "ui/widgets/screen_room.h"

namespace ullage::ui {
namespace {

enum OffState { off_empty, off_with_beer };

template <class P>
cellar::Payload payload_of(P p) {
  return cellar::Payload(boost::variant2::in_place_type<P>, std::move(p));
}

}  // namespace

KegChange::KegChange(const Context& context, std::optional<cellar::LineId> line,
                     std::optional<cellar::KegId> on, QWidget* parent)
    : ChangeDialog(context, tr("Keg change"), QStringLiteral("keg_change"), parent) {
  build();
  choose(line, on);
  if (!line) {
    line_->setFocus();
  } else if (!on) {
    on_->setFocus();
  } else {
    pressure_->setFocus();
  }
  grow_with_contents(*this);
}

void KegChange::build() {
  line_ = new LinePicker(context());
  line_->setObjectName(QStringLiteral("line"));
  line_->set_required(true);
  on_ = new KegPicker(context());
  on_->setObjectName(QStringLiteral("keg_on"));
  on_->set_required(true);
  on_->set_shows([](const cellar::KegStatus& keg) {
    return keg.record.in_use && keg.contents && keg.phase != cellar::Phase::on_tap;
  });
  off_ = new InkLabel({}, TextRole::strong);
  off_state_ = new ChoiceBar({tr("Empty"), tr("Beer left in it")});
  off_state_->set_name(tr("The keg that comes off"));
  off_state_->set_index(off_empty);
  pressure_ = new GaugePressureEdit(context().preferences);
  pressure_->setObjectName(QStringLiteral("pressure"));
  regulator_ = new RegulatorPicker(context());
  regulator_->set_optional(tr("–"));
  words_ = new InkLabel({}, TextRole::heading, Ink::accent);
  words_->setObjectName(QStringLiteral("in_words"));
  words_->setWordWrap(true);

  auto* form = new FormSection;
  form->add_caution(
      tr("A spent keg is still under pressure until it is vented. Don't lift a full one."));
  form->add(tr("&Line"), line_);
  form->add(tr("Comes off"), off_);
  form->add(tr("It is"), off_state_);
  form->add(tr("Goes &on"), on_);
  form->add(tr("&Gas set to"), pressure_, tr("Leave open if the gas stays as it is."));
  form->add(tr("&Regulator"), regulator_);
  add_when_and_by(*form);
  lay_out(form, words_);
  resize_within_screen(*this, {540, 520});
  connect(line_, &LinePicker::changed, this, &KegChange::on_line);
  connect(on_, &KegPicker::changed, this, &KegChange::on_keg);
  connect(off_state_, &ChoiceBar::changed, this, &KegChange::tell);
}

void KegChange::choose(std::optional<cellar::LineId> line, std::optional<cellar::KegId> on) {
  line_->set_value(line);
  on_->set_value(on);
  on_line();
  on_keg();
}

std::optional<cellar::KegId> KegChange::coming_off() const {
  const auto status = context().cellar.status();
  const cellar::LineStatus* line = line_->value() ? status->find(present(line_->value())) : nullptr;
  return line ? line->keg : std::nullopt;
}

void KegChange::on_line() {
  const auto status = context().cellar.status();
  const cellar::LineStatus* line = line_->value() ? status->find(present(line_->value())) : nullptr;
  const std::optional<cellar::KegId> off = coming_off();
  const cellar::KegStatus* keg = off ? status->find(*off) : nullptr;
  off_->setText(keg ? q(keg->record.tag) + (keg->contents
                                                ? QStringLiteral(", ") + q(keg->contents->beer.name)
                                                : QString())
                    : tr("nothing"));
  off_state_->setEnabled(keg != nullptr);
  if (line && line->record.regulator) regulator_->set_value(line->record.regulator);
  tell();
}

// A locked line, or a keg that would lock it.
void KegChange::warn(const cellar::LineStatus* line, const cellar::KegStatus* on) {
  const report::Speaker speaker = context().speaker();
  const std::optional<cellar::Message> why = on ? cellar::why_not_served(*on) : std::nullopt;
  warning().setVisible((line && line->lock) || why);
  if (line && line->lock) {
    warning().set(cellar::Severity::danger, tr("Do not serve from %1").arg(q(line->record.name)),
                  tr("%1 in it since %2, %3. Release it by a check before anything is poured.")
                      .arg(q(line->lock->agent), q(report::say_time(line->lock->since, speaker)),
                           q(line->lock->by)));
  } else if (why) {
    warning().set(cellar::Severity::danger, tr("Do not serve %1").arg(q(on->record.tag)),
                  tr("%1. On a line it locks the line.").arg(q(report::say(*why, speaker))));
  }
}

void KegChange::on_keg() {
  const auto status = context().cellar.status();
  const cellar::KegStatus* keg = on_->value() ? status->find(present(on_->value())) : nullptr;
  if (keg && !pressure_->value()) pressure_->set_last(keg->gas.should_be);
  tell();
}

QString KegChange::in_words() const { return words_->text(); }

void KegChange::tell() {
  const auto status = context().cellar.status();
  const cellar::LineStatus* line = line_->value() ? status->find(present(line_->value())) : nullptr;
  const cellar::KegStatus* on = on_->value() ? status->find(present(on_->value())) : nullptr;
  const std::optional<cellar::KegId> off_id = coming_off();
  const cellar::KegStatus* off = off_id ? status->find(*off_id) : nullptr;
  forget_refusal();
  warn(line, on);
  if (!line || !on) {
    words_->clear();
    return;
  }
  const bool us = context().preferences.words() == report::RegionalWords::us;
  QString words;
  if (off) words = tr("%1 off, ").arg(q(off->record.tag));
  words += us ? tr("%1 on faucet %2") : tr("%1 on tap %2");
  words_->setText(words.arg(q(on->record.tag), q(line->record.tap)));
}

cellar::Act KegChange::act() const {
  cellar::Act act = begun();
  const auto status = context().cellar.status();
  if (const std::optional<cellar::KegId> off = coming_off()) {
    did(act, payload_of(cellar::Untapped{*off}));
    if (off_state_->index() == off_empty) did(act, payload_of(cellar::Emptied{*off}));
    did(act, payload_of(cellar::GasOff{*off}));
  }
  if (on_->value() && line_->value()) {
    did(act, payload_of(cellar::Tapped{present(on_->value()), present(line_->value())}));
    if (pressure_->value()) {
      cellar::GasSet gas{.keg = present(on_->value()), .pressure = present(pressure_->value())};
      gas.regulator = regulator_->value();
      for (const cellar::RegulatorRecord& r : status->regulators) {
        if (gas.regulator && r.regulator == *gas.regulator) gas.instrument = r.dial;
      }
      did(act, payload_of(gas));
    }
  }
  return act;
}

bool KegChange::show_faults() { return any_fault(line_, on_, pressure_); }

QString KegChange::logged_words() const { return tr("Logged: %1").arg(in_words()); }

}  // namespace ullage::ui
