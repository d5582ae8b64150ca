// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/dialogs/new_cellar.h"

#include <QComboBox>
#include <QCompleter>
#include <QDialogButtonBox>
#include <QLineEdit>
#include <QLocale>
#include <QPushButton>
#include <QTimeZone>
#include <QVBoxLayout>

#include "core/report/preset_units.h"
#include "core/units/parsing.h"
#include "core/units/printing.h"
#include "ui/context.h"
#include "ui/dialogs/text_limits.h"
#include "ui/theme/style.h"
#include "ui/theme/theme.h"
#include "ui/widgets/enum_picker.h"
#include "ui/widgets/field_message.h"
#include "ui/widgets/form_section.h"
#include "ui/widgets/screen_room.h"
#include "ui/widgets/text_edit.h"

namespace ullage::ui {

namespace {

constexpr int new_cellar_width = 520;

cellar::UnitsPreset preset_of_region() {
  switch (QLocale().measurementSystem()) {
    case QLocale::ImperialUSSystem:
      return cellar::UnitsPreset::us;
    case QLocale::ImperialUKSystem:
      return cellar::UnitsPreset::british;
    case QLocale::MetricSystem:
      break;
  }
  return cellar::UnitsPreset::metric;
}

units::NumberStyle style_of_region() {
  units::NumberStyle style;
  if (QLocale().decimalPoint() == QLatin1String(",")) style.decimal_mark = ',';
  return style;
}

}  // namespace

NewCellar::NewCellar(QWidget* parent)
    : QDialog(parent),
      name_(new TextEdit(cellar::text_limit(cellar::CellarDescribed::kind, "name"),
                         TextEdit::Lines::one, this)) {
  setObjectName(QStringLiteral("new_cellar"));
  setWindowTitle(tr("New cellar"));
  name_->set_required(true);
  name_->set_placeholder(tr("for example Back room"));
  name_->line_edit()->setObjectName(QStringLiteral("cellar_name"));

  auto* form = new FormSection(tr("New cellar"), this);
  form->add(tr("&Place"), name_, tr("What you call it. It stands in the window and on sheets."));
  form->add(tr("&Altitude"), altitude_field(),
            tr("Above the sea. It sets the air pressure that dials are read against."));
  form->add(tr("&Time zone"), zone_field());
  using Preset = cellar::UnitsPreset;  // made here: Tab follows the order of making
  units_ = new EnumPicker<Preset>(
      {{Preset::metric, tr("Metric")}, {Preset::us, tr("US")}, {Preset::british, tr("British")}},
      this);
  units_->set_value(preset_of_region());
  form->add(tr("&Units"), units_, tr("Can be changed any time, each on its own, in the settings."));

  auto* buttons = new QDialogButtonBox(this);
  auto* make = buttons->addButton(tr("&Make the cellar"), QDialogButtonBox::AcceptRole);
  make->setObjectName(QStringLiteral("make_cellar"));
  make_default(make);
  buttons->addButton(tr("Cancel"), QDialogButtonBox::RejectRole);
  connect(buttons, &QDialogButtonBox::accepted, this, &NewCellar::try_to_accept);
  connect(buttons, &QDialogButtonBox::rejected, this, &QDialog::reject);
  connect(units_, &ChoiceBar::changed, this, [this] { read_altitude(false); });

  auto* column = new QVBoxLayout(this);
  column->setContentsMargins(space::xl, space::xl, space::xl, space::l);
  column->setSpacing(space::xl);
  column->addWidget(form);
  column->addStretch(1);
  column->addWidget(buttons);
  setMinimumWidth(new_cellar_width);
  grow_with_contents(*this);
  name_->setFocus();
}

NewCellar::~NewCellar() = default;

QWidget* NewCellar::altitude_field() {
  auto* field = new QWidget(this);
  altitude_ = new QLineEdit(field);
  altitude_->setObjectName(QStringLiteral("cellar_altitude"));
  altitude_->setPlaceholderText(tr("for example 120 m or 400 ft"));
  altitude_below_ = new FieldMessage(altitude_, field);
  auto* column = new QVBoxLayout(field);
  column->setContentsMargins(0, 0, 0, 0);
  column->setSpacing(0);
  column->addWidget(altitude_);
  column->addWidget(altitude_below_);
  field->setFocusProxy(altitude_);
  connect(altitude_, &QLineEdit::textEdited, this, [this] { read_altitude(false); });
  connect(altitude_, &QLineEdit::editingFinished, this, [this] { read_altitude(true); });
  return field;
}

QWidget* NewCellar::zone_field() {
  auto* field = new QWidget(this);
  zone_ = new QComboBox(field);
  zone_->setObjectName(QStringLiteral("cellar_zone"));
  zone_->setEditable(true);
  zone_->setInsertPolicy(QComboBox::NoInsert);
  zone_->setSizeAdjustPolicy(QComboBox::AdjustToMinimumContentsLengthWithIcon);
  zone_->setMinimumContentsLength(24);
  for (const QByteArray& id : QTimeZone::availableTimeZoneIds()) {
    // "Etc/GMT+3" and the like name an offset, not a place with its clock changes.
    if (id.contains('/') && !id.startsWith("Etc/")) zone_->addItem(QString::fromLatin1(id));
  }
  zone_->addItem(QStringLiteral("Etc/UTC"));
  zone_->completer()->setFilterMode(Qt::MatchContains);
  zone_->completer()->setCompletionMode(QCompleter::PopupCompletion);
  zone_->setCurrentText(QString::fromLatin1(QTimeZone::systemTimeZoneId()));
  zone_below_ = new FieldMessage(zone_, field);
  auto* column = new QVBoxLayout(field);
  column->setContentsMargins(0, 0, 0, 0);
  column->setSpacing(0);
  column->addWidget(zone_);
  column->addWidget(zone_below_);
  field->setFocusProxy(zone_);
  connect(zone_->lineEdit(), &QLineEdit::editingFinished, this,
          [this] { zone_below_->fault(zone_fault()); });
  return field;
}

// A bare number is in the unit of the chosen preset; the line beneath says
// which, so that 300 m is not taken for 300 ft unseen.
void NewCellar::read_altitude(bool tell) {
  const units::DisplayUnits shown = report::units_of(units_->value().value_or(preset_of_region()));
  const units::Parser parser{shown, style_of_region()};
  const units::Printer printer{shown, style_of_region()};
  height_.reset();
  altitude_fault_.clear();
  const auto read = parser.length(s(altitude_->text()));
  const auto [lowest, highest] =
      cellar::number_limits(cellar::CellarDescribed::kind, "altitude_m", cellar::Measure::length);
  const bool beyond = read ? *read < units::metres(lowest) || *read > units::metres(highest)
                           : read.error().fault == units::ParseFault::out_of_range;
  if (beyond) {
    altitude_fault_ =
        tr("Air pressure can be worked out between %1 and %2.")
            .arg(q(printer.print(units::metres(lowest))), q(printer.print(units::metres(highest))));
  } else if (altitude_->text().trimmed().isEmpty()) {
    altitude_fault_ = tr("Fill this in. A guess within 100 m will do.");
  } else if (!read) {
    altitude_fault_ = q(units::describe(read.error(), s(tr("Altitude"))));
  } else {
    height_ = *read;
  }
  if (height_) {
    altitude_below_->hint(q(printer.print(*height_)));
  } else if (tell) {
    altitude_below_->fault(altitude_fault_);
  } else {
    altitude_below_->hint({});
  }
}

QString NewCellar::zone_fault() const {
  const QByteArray id = zone_->currentText().trimmed().toLatin1();
  if (QTimeZone(id).isValid()) return {};
  return tr("There is no time zone “%1”. Choose one from the list: “Europe/London”, say.")
      .arg(zone_->currentText().trimmed());
}

void NewCellar::try_to_accept() {
  name_->show_fault();
  read_altitude(true);
  zone_below_->fault(zone_fault());
  if (!name_->fault().isEmpty()) return name_->setFocus();
  if (!height_) return altitude_->setFocus();
  if (!zone_fault().isEmpty()) return zone_->setFocus();
  cellar::CellarDescribed cellar;
  cellar.name = name_->value();
  cellar.altitude = *height_;
  cellar.time_zone = s(zone_->currentText().trimmed());
  cellar.units = units_->value().value_or(preset_of_region());
  described_ = cellar;
  accept();
}

}  // namespace ullage::ui
