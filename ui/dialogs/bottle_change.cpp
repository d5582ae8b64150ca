// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/dialogs/bottle_change.h"

#include <QCheckBox>
#include <QScrollArea>
#include <QVBoxLayout>
#include <cmath>

#include "core/cellar/presets.h"
#include "ui/dialogs/forms/scrolled.h"
#include "ui/dialogs/text_limits.h"
#include "ui/preferences.h"
#include "ui/theme/theme.h"
#include "ui/widgets/banner.h"
#include "ui/widgets/enum_picker.h"
#include "ui/widgets/form_section.h"
#include "ui/widgets/screen_room.h"
#include "ui/widgets/text_edit.h"

namespace ullage::ui {
namespace {

enum TestState { test_tight, test_leaks, test_not_done };
constexpr double tag_agrees_within = 0.005;

}  // namespace

BottleChange::BottleChange(const Context& context, std::optional<cellar::RegulatorId> regulator,
                           std::optional<cellar::BottleId> bottle, QWidget* parent)
    : ChangeDialog(context, tr("Gas bottle changed"), QStringLiteral("bottle_change"), parent) {
  build();
  regulator_->set_value(regulator);
  bottle_->set_value(bottle);
  tell();
}

void BottleChange::build() {
  regulator_ = new RegulatorPicker(context());
  regulator_->setObjectName(QStringLiteral("regulator"));
  regulator_->set_required(true);
  bottle_ = new BottlePicker(context());
  bottle_->setObjectName(QStringLiteral("bottle"));
  bottle_->set_required(true);
  tag_ = new FractionEdit(context().preferences);
  tag_->setObjectName(QStringLiteral("co2_on_tag"));
  washer_ = new QCheckBox(tr("New washer or sealing ring"));
  washer_->setObjectName(QStringLiteral("washer"));
  secured_ = new QCheckBox(tr("Upright and held against falling"));
  secured_->setObjectName(QStringLiteral("secured"));
  warning().setObjectName(QStringLiteral("tag_warning"));

  auto* form = new FormSection;
  form->add_caution(
      tr("Shut the old bottle’s valve and let the regulator down first. Stand beside "
         "the outlet, not before it. CO₂ and mixed-gas regulators are not "
         "interchangeable."));
  form->add(tr("&Regulator"), regulator_);
  form->add(tr("&New bottle"), bottle_);
  form->add(tr("CO₂ on the &tag"), tag_,
            tr("Read the tag, not the paint. The share of CO₂ alone: “70/30” means opposite things "
               "in different countries."));
  form->add(tr("Washer"), washer_);
  form->add(tr("Secured"), secured_);
  auto* ending = new FormSection;
  add_when_and_by(*ending);
  auto* rows = new QWidget;
  auto* column = new QVBoxLayout(rows);
  column->setContentsMargins(0, 0, space::m, 0);
  column->setSpacing(space::m);
  for (QWidget* part : {static_cast<QWidget*>(form), build_test(), static_cast<QWidget*>(ending)})
    column->addWidget(part);
  column->addStretch(1);
  lay_out(scrolled(rows));
  never_squeeze(*rows);
  resize(580, 600);
  connect(bottle_, &BottlePicker::changed, this, &BottleChange::tell);
  connect(tag_, &QuantityEdit::changed, this, &BottleChange::tell);
  connect(test_, &ChoiceBar::changed, this, &BottleChange::tell);
}

QWidget* BottleChange::build_test() {
  test_ = new ChoiceBar({tr("No leak"), tr("It leaks"), tr("Not tested")});
  test_->setObjectName(QStringLiteral("leak_test"));
  test_->set_name(tr("Leak test with soapy water"));
  test_->set_index(test_not_done);
  where_ = new TextEdit(cellar::text_limit(cellar::LeakTested::kind, "where"));
  where_->setObjectName(QStringLiteral("where"));
  weight_ = new MassEdit(context().preferences);
  weight_->setObjectName(QStringLiteral("weight"));
  scale_ = new InstrumentPicker(context());
  scale_->setObjectName(QStringLiteral("scale"));
  scale_->set_optional(tr("–"));
  scale_->set_shows([](const cellar::InstrumentRecord& i) {
    return cellar::reads_of(i.instrument_kind) == cellar::Reads::mass;
  });
  auto* form = new FormSection(tr("Leak test and weight"));
  form->add(tr("&Soapy water on the joints"), test_,
            tr("With the valve open and the pressure up. Bubbles are a leak."));
  form->add(tr("W&here"), where_, tr("Which joint leaks."));
  form->add(tr("Weight of the new &bottle"), weight_,
            tr("Without the regulator, before it goes on."));
  form->add(tr("S&cale"), scale_);
  return form;
}

QString BottleChange::warned_of() const {
  return warning().isHidden() ? QString() : warning().headline();
}

void BottleChange::tell() {
  forget_refusal();
  where_->setEnabled(test_->index() == test_leaks);
  const auto status = context().cellar.status();
  const auto chosen = bottle_->value();
  const cellar::BottleStatus* bottle = chosen ? status->find(*chosen) : nullptr;
  const auto tag = tag_->value();
  const bool differs =
      bottle && tag && std::abs(tag->count() - bottle->record.co2.count()) > tag_agrees_within;
  if (differs) {
    const auto percent = [](double share) { return QString::number(std::lround(share * 100)); };
    warning().set(cellar::Severity::danger,
                  tr("The tag says %1 % CO₂, the register %2 %")
                      .arg(percent(tag->count()), percent(bottle->record.co2.count())),
                  tr("Trust the tag. If it is not the gas you want, take the bottle off again; "
                     "otherwise every keg on it changes its carbonation."));
  } else if (test_->index() == test_leaks) {
    warning().set(cellar::Severity::danger, tr("It leaks: shut the bottle"),
                  tr("Air the room, tighten or renew the washer, and test again."));
  }
  warning().setVisible(differs || test_->index() == test_leaks);
}

cellar::Act BottleChange::act() const {
  cellar::Act act = begun();
  const auto regulator = regulator_->value();
  const auto bottle = bottle_->value();
  if (!regulator || !bottle) return act;
  if (const auto weight = weight_->value()) {
    did(act,
        cellar::BottleWeighed{.bottle = *bottle, .gross_mass = *weight, .scale = scale_->value()});
  }
  cellar::BottleChanged changed{.regulator = *regulator, .bottle = *bottle};
  if (const auto tag = tag_->value()) changed.co2_on_tag = units::mole_fraction(tag->count());
  changed.washer_renewed = washer_->isChecked();
  changed.secured = secured_->isChecked();
  did(act, changed);
  if (test_->index() != test_not_done) {
    cellar::LeakTested tested;
    tested.bottle = *bottle_->value();
    tested.regulator = *regulator_->value();
    tested.leak_found = test_->index() == test_leaks;
    if (tested.leak_found) tested.where = where_->value();
    did(act, tested);
  }
  return act;
}

bool BottleChange::show_faults() { return any_fault(regulator_, bottle_, tag_, weight_, where_); }

QString BottleChange::logged_words() const {
  return test_->index() != test_not_done
             ? tr("Logged the bottle change and its leak test.")
             : tr("Logged the bottle change. Test its joints with soapy water.");
}

}  // namespace ullage::ui
