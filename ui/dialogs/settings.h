// SPDX-License-Identifier: GPL-3.0-or-later
//
// What a person chooses for themselves: units per dimension, words of the
// region, theme, initials. Each choice applies at once to every open view;
// stored values do not change. Closing is the only way out: there is nothing to
// lose.
#pragma once

#include <QDialog>
#include <functional>

#include "core/units/display_units.h"
#include "ui/preferences.h"
#include "ui/widgets/enum_picker.h"

namespace ullage::ui {

class FormSection;
class InkLabel;
class TextEdit;

class SettingsDialog : public QDialog {
  Q_OBJECT
 public:
  explicit SettingsDialog(Preferences&, QWidget* parent = nullptr);

  // One line of readings in the chosen units, as shown.
  [[nodiscard]] QString example() const;

 private:
  QWidget* units_part();
  QWidget* presets();
  QWidget* person_part();
  void refresh();
  template <class E>
  void add_unit(FormSection*, const QString& label, const QString& name, E units::DisplayUnits::*,
                const std::vector<std::pair<E, QString>>&);

  Preferences& preferences_;
  std::vector<std::function<void()>> shows_choice_;
  InkLabel* example_ = nullptr;
  EnumPicker<report::RegionalWords>* words_ = nullptr;
  EnumPicker<ThemeChoice>* theme_ = nullptr;
  EnumPicker<QString>* language_ = nullptr;
  TextEdit* initials_ = nullptr;
};

}  // namespace ullage::ui
