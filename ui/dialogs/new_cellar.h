// SPDX-License-Identifier: GPL-3.0-or-later
//
// The four things a new cellar needs: its name, its height above the sea (air
// is thinner up there, so a dial reads differently), its time zone, and the
// units its people read. Nothing else is asked.
#pragma once

#include <QDialog>
#include <optional>

#include "core/cellar/records.h"
#include "ui/widgets/enum_picker.h"

class QComboBox;
class QLineEdit;

namespace ullage::ui {

class FieldMessage;
class TextEdit;

class NewCellar : public QDialog {
  Q_OBJECT
 public:
  explicit NewCellar(QWidget* parent = nullptr);
  ~NewCellar() override;

  // What was asked for; nullopt until accepted with everything right.
  [[nodiscard]] std::optional<cellar::CellarDescribed> described() const { return described_; }

 private:
  QWidget* altitude_field();
  QWidget* zone_field();
  void read_altitude(bool tell);
  [[nodiscard]] QString zone_fault() const;
  void try_to_accept();

  std::optional<cellar::CellarDescribed> described_;
  TextEdit* name_;
  QLineEdit* altitude_ = nullptr;
  FieldMessage* altitude_below_ = nullptr;
  QString altitude_fault_;
  std::optional<units::Length> height_;
  QComboBox* zone_ = nullptr;
  FieldMessage* zone_below_ = nullptr;
  EnumPicker<cellar::UnitsPreset>* units_;
};

}  // namespace ullage::ui
