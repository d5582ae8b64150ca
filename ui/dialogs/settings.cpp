// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/dialogs/settings.h"

#include <QDialogButtonBox>
#include <QHBoxLayout>
#include <QLineEdit>
#include <QPushButton>
#include <QScrollArea>
#include <QVBoxLayout>

#include "core/units/printing.h"
#include "ui/context.h"
#include "ui/dialogs/text_limits.h"
#include "ui/theme/style.h"
#include "ui/theme/theme.h"
#include "ui/widgets/enum_picker.h"
#include "ui/widgets/form_section.h"
#include "ui/widgets/ink_label.h"
#include "ui/widgets/screen_room.h"
#include "ui/widgets/text_edit.h"

namespace ullage::ui {

namespace {
constexpr QSize settings_size(620, 720);
using units::DisplayUnits;
}  // namespace

SettingsDialog::SettingsDialog(Preferences& preferences, QWidget* parent)
    : QDialog(parent), preferences_(preferences) {
  setObjectName(QStringLiteral("settings"));
  setWindowTitle(tr("Settings"));
  auto* inside = new QWidget(this);
  auto* parts = new QVBoxLayout(inside);
  parts->setContentsMargins(space::xl, space::xl, space::xl, space::l);
  parts->setSpacing(space::xl);
  parts->addWidget(units_part());
  parts->addWidget(person_part());
  parts->addStretch(1);
  auto* scroll = new QScrollArea(this);
  scroll->setFrameShape(QFrame::NoFrame);
  scroll->setWidgetResizable(true);
  scroll->setFocusPolicy(Qt::NoFocus);
  scroll->setWidget(inside);

  auto* buttons = new QDialogButtonBox(this);
  auto* close = buttons->addButton(tr("&Close"), QDialogButtonBox::RejectRole);
  close->setObjectName(QStringLiteral("close_settings"));
  connect(buttons, &QDialogButtonBox::rejected, this, &QDialog::accept);
  auto* column = new QVBoxLayout(this);
  column->setContentsMargins(0, 0, 0, space::l);
  column->addWidget(scroll, 1);
  auto* foot = new QHBoxLayout;
  foot->setContentsMargins(space::xl, 0, space::xl, 0);
  foot->addWidget(buttons);
  column->addLayout(foot);
  resize_within_screen(*this, settings_size);
  connect(&preferences_, &Preferences::changed, this, &SettingsDialog::refresh);
  connect(&preferences_, &Preferences::theme_changed, this, &SettingsDialog::refresh);
  refresh();
}

template <class E>
void SettingsDialog::add_unit(FormSection* form, const QString& label, const QString& name,
                              E DisplayUnits::* which,
                              const std::vector<std::pair<E, QString>>& options) {
  auto* picker = new EnumPicker<E>(options, this);
  picker->setObjectName(name);
  form->add(label, picker);
  connect(picker, &ChoiceBar::changed, this, [this, picker, which] {
    DisplayUnits chosen = preferences_.units();
    const auto value = picker->value();
    if (!value || chosen.*which == *value) return;
    chosen.*which = *value;
    preferences_.set_units(chosen);
  });
  shows_choice_.push_back(
      [this, picker, which] { picker->set_value(preferences_.units().*which); });
}

QWidget* SettingsDialog::presets() {
  auto* row = new QWidget(this);
  auto* line = new QHBoxLayout(row);
  line->setContentsMargins(0, 0, 0, 0);
  line->setSpacing(space::s);
  const std::initializer_list<std::tuple<QString, QString, DisplayUnits>> all = {
      {QStringLiteral("preset_metric"), tr("Metric"), DisplayUnits::metric()},
      {QStringLiteral("preset_us"), tr("US"), DisplayUnits::us()},
      {QStringLiteral("preset_british"), tr("British"), DisplayUnits::british()}};
  for (const auto& [name, word, units] : all) {
    auto* button = new QPushButton(tr("All %1").arg(word), row);
    button->setObjectName(name);
    button->setAutoDefault(false);
    line->addWidget(button);
    connect(button, &QPushButton::clicked, this,
            [this, chosen = units] { preferences_.set_units(chosen); });
  }
  line->addStretch(1);
  return row;
}

QWidget* SettingsDialog::units_part() {
  using namespace units;
  auto* form = new FormSection(tr("Units"), this);
  form->add_wide(presets());
  add_unit(form, tr("&Pressure"), QStringLiteral("unit_pressure"), &DisplayUnits::pressure,
           {{PressureUnit::psi, tr("psi")},
            {PressureUnit::bar, tr("bar")},
            {PressureUnit::kilopascal, tr("kPa")}});
  add_unit(form, tr("&Temperature"), QStringLiteral("unit_temperature"), &DisplayUnits::temperature,
           {{TemperatureUnit::celsius, tr("°C")}, {TemperatureUnit::fahrenheit, tr("°F")}});
  add_unit(form, tr("&Volume"), QStringLiteral("unit_volume"), &DisplayUnits::volume,
           {{VolumeUnit::litre, tr("litres")},
            {VolumeUnit::us_gallon, tr("US gallons")},
            {VolumeUnit::imperial_gallon, tr("imperial gallons")}});
  add_unit(form, tr("Gla&ss"), QStringLiteral("unit_glass"), &DisplayUnits::glass,
           {{GlassUnit::us_pint, tr("US pint")},
            {GlassUnit::imperial_pint, tr("pint")},
            {GlassUnit::half_litre, tr("half litre")},
            {GlassUnit::third_litre, tr("0.33 L")}});
  add_unit(form, tr("&Weight"), QStringLiteral("unit_mass"), &DisplayUnits::mass,
           {{MassUnit::kilogram, tr("kg")}, {MassUnit::pound, tr("lb")}});
  add_unit(form, tr("&Length"), QStringLiteral("unit_length"), &DisplayUnits::length,
           {{LengthUnit::metre, tr("metres")}, {LengthUnit::foot, tr("feet")}});
  add_unit(form, tr("&Bore of hoses"), QStringLiteral("unit_bore"), &DisplayUnits::bore,
           {{BoreUnit::millimetre, tr("mm")}, {BoreUnit::inch, tr("inches")}});
  add_unit(form, tr("&CO₂ in beer"), QStringLiteral("unit_co2"), &DisplayUnits::co2,
           {{Co2Unit::volumes, tr("volumes")}, {Co2Unit::grams_per_litre, tr("g/L")}});
  add_unit(form, tr("&Gravity"), QStringLiteral("unit_gravity"), &DisplayUnits::gravity,
           {{GravityUnit::specific_gravity, tr("SG")}, {GravityUnit::plato, tr("°P")}});
  example_ = new InkLabel({}, TextRole::body, Ink::secondary, this);
  example_->setWordWrap(true);
  example_->setObjectName(QStringLiteral("units_example"));
  form->add_wide(example_);
  return form;
}

QWidget* SettingsDialog::person_part() {
  auto* form = new FormSection(tr("You"), this);
  words_ = new EnumPicker<report::RegionalWords>({{report::RegionalWords::british, tr("tap, fob")},
                                                  {report::RegionalWords::us, tr("faucet, foam")}},
                                                 this);
  words_->setObjectName(QStringLiteral("regional_words"));
  form->add(tr("T&rade words"), words_);
  theme_ = new EnumPicker<ThemeChoice>({{ThemeChoice::system, tr("As the system")},
                                        {ThemeChoice::light, tr("Light")},
                                        {ThemeChoice::dark, tr("Dark")}},
                                       this);
  theme_->setObjectName(QStringLiteral("theme"));
  form->add(tr("Loo&ks"), theme_);
  // Each language by its own name, so that a way back can be read.
  language_ = new EnumPicker<QString>({{QStringLiteral("en"), QStringLiteral("English")},
                                       {QStringLiteral("de"), QStringLiteral("Deutsch")}},
                                      this);
  language_->setObjectName(QStringLiteral("language"));
  form->add(tr("&Language"), language_,
            tr("From the next start. What is told of a keg in a sentence, and all paper, "
               "stays English."));
  initials_ = new TextEdit(initials_limit(), TextEdit::Lines::one, this);
  initials_->line_edit()->setObjectName(QStringLiteral("initials"));
  form->add(tr("&Initials"), initials_, tr("Put beside what you log. Leave empty for none."));
  connect(words_, &ChoiceBar::changed, this, [this] {
    if (const auto words = words_->value()) preferences_.set_words(*words);
  });
  connect(theme_, &ChoiceBar::changed, this, [this] {
    if (const auto theme = theme_->value()) preferences_.set_theme(*theme);
  });
  connect(language_, &ChoiceBar::changed, this, [this] {
    if (const auto language = language_->value()) preferences_.set_language(*language);
  });
  connect(initials_, &TextEdit::changed, this, [this] {
    if (initials_->fault().isEmpty()) preferences_.set_initials(q(initials_->value()));
  });
  return form;
}

// Any set of readings would do; these are near what a keg of ale shows.
QString SettingsDialog::example() const {
  const units::Printer printer{preferences_.units(), preferences_.number_style()};
  using namespace units;
  return tr("A keg reads: %1, %2, %3 or %4, %5; %6; hose %7 of %8; gravity %9.")
      .arg(q(printer.print(gauge_psi(12))), q(printer.print(celsius(4.5))),
           q(printer.print(litres(18.6))), q(printer.print_glasses(litres(18.6))),
           q(printer.print(kilograms(23.4))), q(printer.print(volumes_of_co2(2.4))),
           q(printer.print(metres(3))), q(printer.print_bore(inches(3.0 / 16))),
           q(printer.print(specific_gravity(1.012))));
}

void SettingsDialog::refresh() {
  for (const auto& show : shows_choice_) show();
  example_->setText(example());
  words_->set_value(preferences_.words());
  theme_->set_value(preferences_.theme());
  language_->set_value(preferences_.language());
  if (q(initials_->value()) != preferences_.initials() && !initials_->line_edit()->hasFocus()) {
    initials_->set_value(s(preferences_.initials()));
  }
}

}  // namespace ullage::ui
