// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/widgets/quantity_slider.h"

#include <QHBoxLayout>
#include <QLabel>
#include <QSlider>
#include <algorithm>
#include <cmath>

#include "ui/theme/theme.h"
#include "ui/widgets/ink_label.h"

namespace ullage::ui {

QuantitySlider::QuantitySlider(const QString& label, const QString& name, QWidget* parent)
    : QWidget(parent) {
  setObjectName(name);
  auto* row = new QHBoxLayout(this);
  row->setContentsMargins(0, 0, 0, 0);
  row->setSpacing(space::m);
  auto* words = new QLabel(label, this);
  words->setMinimumWidth(108);
  slider_ = new QSlider(Qt::Horizontal, this);
  slider_->setObjectName(name + QStringLiteral("_slider"));
  slider_->setAccessibleName(QString(label).remove(QLatin1Char('&')));
  slider_->setMinimumHeight(28);
  words->setBuddy(slider_);
  shown_ = new InkLabel({}, TextRole::strong, Ink::text, this);
  shown_->setMinimumWidth(72);
  shown_->setAlignment(Qt::AlignRight | Qt::AlignVCenter);
  row->addWidget(words);
  row->addWidget(slider_, 1);
  row->addWidget(shown_);
  connect(slider_, &QSlider::valueChanged, this, [this] {
    if (setting_) return;
    moved_ = true;
    show_value();
    emit moved();
  });
}

void QuantitySlider::set_scale(Scale scale, double now, std::function<QString(double)> print) {
  const double stood = at();
  scale_ = scale;
  now_ = now;
  print_ = std::move(print);
  setting_ = true;
  slider_->setRange(0, static_cast<int>(std::lround((scale.high - scale.low) / scale.step)));
  slider_->setPageStep(std::max(1, slider_->maximum() / 10));
  const double place = moved_ ? stood : now;
  slider_->setValue(static_cast<int>(std::lround((place - scale.low) / scale.step)));
  setting_ = false;
  show_value();
}

void QuantitySlider::reset() {
  moved_ = false;
  setting_ = true;
  slider_->setValue(static_cast<int>(std::lround((now_ - scale_.low) / scale_.step)));
  setting_ = false;
  show_value();
}

void QuantitySlider::set_value(double v) {
  slider_->setValue(static_cast<int>(std::lround((v - scale_.low) / scale_.step)));
}

double QuantitySlider::at() const { return scale_.low + scale_.step * slider_->value(); }

std::optional<double> QuantitySlider::value() const {
  return moved_ ? std::optional(at()) : std::nullopt;
}

void QuantitySlider::show_value() {
  if (!print_) return;
  const QString words = print_(moved_ ? at() : now_);
  shown_->setText(words);
  shown_->set_ink(moved_ ? Ink::accent : Ink::text);
  slider_->setAccessibleDescription(words);
}

}  // namespace ullage::ui
