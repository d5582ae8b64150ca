// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/pages/line_what_if.h"

#include <QHBoxLayout>
#include <QPushButton>
#include <QVBoxLayout>
#include <algorithm>

#include "ui/context.h"
#include "ui/theme/theme.h"
#include "ui/widgets/ink_label.h"
#include "ui/widgets/quantity_slider.h"

namespace ullage::ui {

namespace {

using TriedScale = QuantitySlider::Scale;

TriedScale tried_pressures(units::PressureUnit unit) {
  switch (unit) {
    case units::PressureUnit::psi:
      return {0, units::psi(40).value(), units::psi(0.5).value()};
    case units::PressureUnit::bar:
      return {0, units::bar(2.8).value(), units::bar(0.02).value()};
    case units::PressureUnit::kilopascal:
      break;
  }
  return {0, 280e3, 2e3};
}
TriedScale tried_lengths(units::LengthUnit unit, double now) {
  const bool feet = unit == units::LengthUnit::foot;
  const double step = feet ? units::feet(0.5).value() : 0.1;
  return {step, std::max(feet ? units::feet(30).value() : 10.0, 2 * now), step};
}
TriedScale tried_bores(units::BoreUnit unit) {
  if (unit == units::BoreUnit::inch) {
    const double step = units::inches(1.0 / 32).value();
    return {4 * step, 16 * step, step};
  }
  return {3e-3, 13e-3, 0.1e-3};
}
TriedScale tried_temperatures(units::TemperatureUnit unit) {
  if (unit == units::TemperatureUnit::fahrenheit)
    return {units::fahrenheit(32).value(), units::fahrenheit(77).value(), 1 / 1.8};
  return {units::celsius(0).value(), units::celsius(25).value(), 0.5};
}
TriedScale tried_targets(units::Co2Unit unit) {
  if (unit == units::Co2Unit::grams_per_litre) {
    const double step = 0.1 / units::grams_per_litre_per_volume;
    return {20 * step, 80 * step, step};
  }
  return {1.0, 4.0, 0.05};
}

}  // namespace

LineWhatIf::LineWhatIf(QWidget* parent) : QWidget(parent) {
  setObjectName("line_what_if");
  auto* column = new QVBoxLayout(this);
  column->setContentsMargins(0, 0, 0, 0);
  column->setSpacing(space::xs);
  pressure_ = add(tr("&Pressure"), "try_pressure");
  length_ = add(tr("&Hose length"), "try_length");
  bore_ = add(tr("&Bore"), "try_bore");
  temperature_ = add(tr("&Temperature"), "try_temperature");
  target_ = add(tr("&CO₂ wanted"), "try_target");
  words_ = new InkLabel({}, TextRole::body, Ink::text, this);
  words_->setObjectName("what_if_words");
  words_->setWordWrap(true);
  column->addWidget(words_);
  apply_ = new QPushButton(tr("&Apply…"), this);
  apply_->setObjectName("apply_what_if");
  back_ = new QPushButton(tr("Back to &now"), this);
  back_->setObjectName("reset_what_if");
  auto* row = new QHBoxLayout;
  row->setSpacing(space::s);
  row->addWidget(apply_);
  row->addWidget(back_);
  row->addStretch(1);
  column->addLayout(row);
  connect(apply_, &QPushButton::clicked, this, &LineWhatIf::apply_asked);
  connect(back_, &QPushButton::clicked, this, &LineWhatIf::reset);
  told();
}

QuantitySlider* LineWhatIf::add(const QString& label, const char* name) {
  auto* slider = new QuantitySlider(label, QLatin1String(name), this);
  layout()->addWidget(slider);
  connect(slider, &QuantitySlider::moved, this, [this] {
    told();
    emit changed();
  });
  return slider;
}

void LineWhatIf::show_setting(const cellar::PourSetting& s, const report::Speaker& speaker,
                              bool another) {
  if (another)
    for (QuantitySlider* each : {pressure_, length_, bore_, temperature_, target_}) each->reset();
  const units::Printer print = speaker.printer;
  const physics::Hose& hose = s.line.hose();
  pressure_->set_scale(tried_pressures(print.units.pressure), units::in_pascals(s.pressure.value()),
                       [print](double v) { return q(print.print(units::gauge_pascals(v))); });
  length_->set_scale(tried_lengths(print.units.length, hose.length.value()), hose.length.value(),
                     [print](double v) { return q(print.print(units::metres(v))); });
  bore_->set_scale(tried_bores(print.units.bore), hose.bore.value(),
                   [print](double v) { return q(print.print_bore(units::metres(v))); });
  temperature_->set_scale(tried_temperatures(print.units.temperature),
                          units::in_kelvin(s.beer.value()),
                          [print](double v) { return q(print.print(units::kelvin(v))); });
  double target = 2.4;
  if (s.target_low && s.target_high)
    target = (s.target_low->count() + s.target_high->count()) / 2;
  else if (s.co2)
    target = s.co2->value().count();
  target_->set_scale(tried_targets(print.units.co2), target,
                     [print](double v) { return q(print.print(units::volumes_of_co2(v))); });
  told();
}

cellar::WhatIf LineWhatIf::change() const {
  cellar::WhatIf w;
  if (const auto v = pressure_->value()) w.pressure = units::gauge_pascals(*v);
  if (const auto v = length_->value()) w.length = units::metres(*v);
  if (const auto v = bore_->value()) w.bore = units::metres(*v);
  if (const auto v = temperature_->value()) w.temperature = units::kelvin(*v);
  if (const auto v = target_->value()) w.target = units::volumes_of_co2(*v);
  return w;
}

void LineWhatIf::reset() {
  for (QuantitySlider* each : {pressure_, length_, bore_, temperature_, target_}) each->reset();
  told();
  emit changed();
}

void LineWhatIf::say(const QString& words) { words_->setText(words); }

void LineWhatIf::set_can_apply(bool on) {
  can_apply_ = on;
  told();
}

void LineWhatIf::told() {
  const bool something = !change().empty();
  apply_->setEnabled(something && can_apply_);
  back_->setEnabled(something);
}

}  // namespace ullage::ui
