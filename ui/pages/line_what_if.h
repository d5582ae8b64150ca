// SPDX-License-Identifier: GPL-3.0-or-later
//
// What-if controls for one line: pressure, hose length and bore, temperature,
// target CO2. They recompute as they move and write nothing; "Apply" asks for
// entries.
#pragma once

#include <QWidget>

#include "core/cellar/pour_state.h"
#include "core/report/say.h"

class QPushButton;

namespace ullage::ui {

class InkLabel;
class QuantitySlider;

class LineWhatIf final : public QWidget {
  Q_OBJECT
 public:
  explicit LineWhatIf(QWidget* parent = nullptr);

  // Where the line stands now. `another`: a line not shown before; all goes back.
  void show_setting(const cellar::PourSetting&, const report::Speaker&, bool another);
  [[nodiscard]] cellar::WhatIf change() const;
  void reset();
  // What the change would do, in words beneath the controls.
  void say(const QString& words);
  void set_can_apply(bool);

 signals:
  void changed();
  void apply_asked();

 private:
  QuantitySlider* add(const QString& label, const char* name);
  void told();

  QuantitySlider* pressure_;
  QuantitySlider* length_;
  QuantitySlider* bore_;
  QuantitySlider* temperature_;
  QuantitySlider* target_;
  InkLabel* words_;
  QPushButton* apply_;
  QPushButton* back_;
  bool can_apply_ = true;
};

}  // namespace ullage::ui
