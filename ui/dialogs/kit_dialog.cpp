// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/dialogs/kit_dialog.h"

#include <QCheckBox>
#include <QDialogButtonBox>
#include <QPushButton>
#include <QToolButton>
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
  column->addSpacing(space::m);
  QWidget* folded = amounts(habits.kit);
  column->addWidget(unfold_, 0, Qt::AlignLeft);
  column->addWidget(folded);
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
                                const cellar::Cleaner& cleaner) const {
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

QWidget* KitDialog::amounts(const cellar::CleaningKit& kit) {
  auto* folded = new QWidget;
  folded->setObjectName(QStringLiteral("kit_amounts"));
  auto* column = new QVBoxLayout(folded);
  column->setContentsMargins(0, 0, 0, 0);
  auto* vessels = new FormSection(tr("Amounts"));
  const auto field = [&]<class Edit>(Edit*& edit, const char* name, const auto& value,
                                     const auto& least, const auto& most, const QString& label,
                                     const QString& hint = {}) {
    edit = new Edit(context_.preferences);
    edit->setObjectName(QLatin1String(name));
    edit->set_range(least, most);
    edit->set_value(value);
    edit->set_required(true);
    vessels->add(label, edit, hint);
  };
  field(pot_, "kit_pot", kit.pot, units::litres(0), units::litres(200), tr("Cleaning vessel"),
        tr("What it and its hose hold besides the lines."));
  field(keg_fill_, "kit_keg_fill", kit.keg_fill, units::litres(0.1), units::litres(200),
        tr("Solution to wash a keg"));
  field(rinses_, "kit_rinses", kit.rinses, std::int64_t{1}, std::int64_t{20}, tr("Rinses"),
        tr("At least so many times what a line holds; the check decides."));
  field(purge_cycles_, "kit_purge_cycles", kit.purge_cycles, std::int64_t{1}, std::int64_t{30},
        tr("Purge cycles of a keg"));
  field(purge_to_, "kit_purge_to", kit.purge_to, units::gauge_bar(0.1), units::gauge_bar(4),
        tr("Purge to"), tr("No more than the keg is rated for."));
  auto* work = new FormSection(tr("Minutes of work at each"));
  for (const MinutesOfWork& each : minutes_of_work) {
    auto* edit = new DurationEdit(context_.preferences);
    edit->setObjectName(QStringLiteral("kit_minutes_") + QLatin1String(each.key));
    edit->set_range(units::minutes(0), units::minutes(600));
    edit->set_value(kit.minutes.*each.each);
    edit->set_required(true);
    work->add(tr(each.label), edit);
    minutes_.push_back(edit);
  }
  column->addWidget(vessels);
  column->addSpacing(space::m);
  column->addWidget(work);
  unfold_ = new QToolButton;
  unfold_->setObjectName(QStringLiteral("kit_unfold"));
  unfold_->setText(tr("&Amounts and minutes"));
  unfold_->setCheckable(true);
  unfold_->setAutoRaise(true);
  unfold_->setToolButtonStyle(Qt::ToolButtonTextBesideIcon);
  unfold_->setArrowType(Qt::RightArrow);
  folded->hide();
  connect(unfold_, &QToolButton::toggled, folded, [this, folded](bool open) {
    unfold_->setArrowType(open ? Qt::DownArrow : Qt::RightArrow);
    folded->setVisible(open);
  });
  return folded;
}

bool KitDialog::read_amounts(cellar::CleaningKit& into) const {
  bool all = true;
  const auto take = [&](auto* edit, auto& value) {
    edit->show_fault();
    if (const auto read = edit->value()) {
      value = *read;
    } else {
      all = false;
    }
  };
  take(pot_, into.pot);
  take(keg_fill_, into.keg_fill);
  take(rinses_, into.rinses);
  take(purge_cycles_, into.purge_cycles);
  take(purge_to_, into.purge_to);
  for (std::size_t i = 0; i < minutes_.size(); ++i) {
    take(minutes_[i], into.minutes.*minutes_of_work[i].each);
  }
  if (!all) unfold_->setChecked(true);  // what is wrong has to be seen
  return all;
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
  const bool amounts_read = read_amounts(habits.kit);
  time_->show_fault();
  const auto time = time_->value();
  if (!lines || !acid || !amounts_read || !time) return;
  habits.time_at_hand = *time;
  habits.kit.caustic.kind =
      chlorine_->isChecked() ? cellar::LineAgent::chlorinated : cellar::LineAgent::caustic;
  remember(context_.preferences, habits);
  accept();
}

}  // namespace ullage::ui
