// SPDX-License-Identifier: GPL-3.0-or-later
//
// On a gas card: how many kegs are still to be filled, and whether the gas carries
// them, too. Asks, and writes nothing.
#pragma once

#include <QWidget>
#include <memory>

#include "core/cellar/kegs_to_fill.h"
#include "ui/context.h"
#include "ui/widgets/quantity_edits.h"

namespace ullage::ui {

class FactList;

class KegsToFillPart : public QWidget {
  Q_OBJECT
 public:
  explicit KegsToFillPart(const Context& context, QWidget* parent = nullptr);
  void show_account(std::shared_ptr<const cellar::GasAccount>);

 private:
  void show_answer();

  Context context_;
  std::shared_ptr<const cellar::GasAccount> account_;
  WholeNumberEdit* count_;
  VolumeEdit* each_;
  FactList* answer_;
};

}  // namespace ullage::ui
