// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/dialogs/kit_dialog.h"

#include <QCheckBox>
#include <QDialogButtonBox>
#include <QPushButton>
#include <QVBoxLayout>

#include "ui/dialogs/forms/scrolled.h"
#include "ui/pages/cleaning_kit.h"
#include "ui/preferences.h"
#include "ui/theme/style.h"
#include "ui/theme/theme.h"
#include "ui/widgets/form_section.h"
#include "ui/widgets/screen_room.h"
#include "ui/widgets/text_edit.h"

namespace ullage::ui {

KitDialog::KitDialog(const Context& context, QWidget* parent) : QDialog(parent), context_(context) {
  setObjectName(QStringLiteral("kit_dialog"));
  setWindowTitle(tr("Cleaner and time"));
  const CleaningHabits habits = cleaning_habits(context_.preferences);
  auto* rows = new QWidget;
  auto* column = new QVBoxLayout(rows);
  column->setContentsMargins(0, 0, space::m, 0);
  column->addWidget(section(tr("For lines and kegs"), caustic_, habits.kit.caustic));
  chlorine_ = new QCheckBox(tr("It is c&hlorinated: acid then waits for another day"));
  chlorine_->setChecked(habits.kit.caustic.kind == cellar::LineAgent::chlorinated);
  column->addWidget(chlorine_);
  column->addSpacing(space::m);
  column->addWidget(section(tr("Acid"), acid_, habits.kit.acid));
  column->addSpacing(space::m);
  auto* time = new FormSection(tr("The day"));
  time_ = new DurationEdit(context_.preferences);
  time_->set_value(habits.time_at_hand);
  time_->set_required(true);
  time->add(tr("&Time at hand"), time_, tr("Hands-on work and waiting together."));
  column->addWidget(time);
  column->addStretch(1);
  auto* buttons = new QDialogButtonBox(QDialogButtonBox::Cancel);
  QPushButton* keep_it = buttons->addButton(tr("&Keep"), QDialogButtonBox::AcceptRole);
  keep_it->setObjectName(QStringLiteral("keep_kit"));
  make_default(keep_it);
  auto* all = new QVBoxLayout(this);
  all->addWidget(scrolled(rows), 1);
  all->addWidget(buttons);
  setTabOrder(keep_it, buttons->button(QDialogButtonBox::Cancel));
  resize_within_screen(*this, {520, 620});
  connect(buttons, &QDialogButtonBox::rejected, this, &QDialog::reject);
  connect(buttons, &QDialogButtonBox::accepted, this, &KitDialog::keep);
}

FormSection* KitDialog::section(const QString& heading, CleanerFields& fields,
                                const cellar::Cleaner& cleaner) {
  auto* form = new FormSection(heading);
  fields.name = new TextEdit(60);
  fields.name->set_value(cleaner.name);
  fields.strength = new FractionEdit(context_.preferences);
  fields.strength->set_value(cleaner.strength);
  fields.strength->set_required(true);
  fields.label = new FractionEdit(context_.preferences);
  fields.label->set_value(cleaner.label.active);
  fields.label->set_required(true);
  fields.density = new NumberEdit(context_.preferences);
  if (cleaner.label.density) {
    fields.density->set_value(units::in_kilograms_per_cubic_metre(*cleaner.label.density) / 1000);
  }
  fields.contact = new DurationEdit(context_.preferences);
  fields.contact->set_value(cleaner.contact);
  fields.contact->set_required(true);
  form->add(tr("Name"), fields.name);
  form->add(tr("Strength in use"), fields.strength, tr("Active by weight. The label comes first."));
  form->add(tr("Strength on the label"), fields.label);
  form->add(tr("Relative density"), fields.density,
            tr("How many times as heavy as water. Leave open for a powder."));
  form->add(tr("Contact time"), fields.contact);
  return form;
}

bool KitDialog::read(const CleanerFields& fields, cellar::Cleaner& into) const {
  fields.strength->show_fault();
  fields.label->show_fault();
  fields.density->show_fault();
  fields.contact->show_fault();
  const auto strength = fields.strength->value();
  const auto label = fields.label->value();
  const auto contact = fields.contact->value();
  if (!strength || !label || !contact || !fields.density->fault().isEmpty()) return false;
  into.name = fields.name->value();
  into.strength = *strength;
  into.label.active = *label;
  into.contact = *contact;
  const auto density = fields.density->value();
  into.label.density =
      density ? std::optional(units::kilograms_per_cubic_metre(*density * 1000)) : std::nullopt;
  // What can't be mixed is refused here, not on the day.
  const auto mixed = physics::cleaning_solution(units::litres(1), into.strength, into.label);
  if (mixed) return true;
  fields.strength->set_refusal(
      mixed.error().subject == physics::Subject::density
          ? tr("A liquid cleaner is 0.5 to 2.5 times as heavy as water.")
          : tr("At most 20 %, and no more than the label’s own strength."));
  return false;
}

void KitDialog::keep() {
  CleaningHabits habits = cleaning_habits(context_.preferences);
  const bool lines = read(caustic_, habits.kit.caustic);
  const bool acid = read(acid_, habits.kit.acid);
  time_->show_fault();
  const auto time = time_->value();
  if (!lines || !acid || !time) return;
  habits.time_at_hand = *time;
  habits.kit.caustic.kind =
      chlorine_->isChecked() ? cellar::LineAgent::chlorinated : cellar::LineAgent::caustic;
  remember(context_.preferences, habits);
  accept();
}

}  // namespace ullage::ui
