// SPDX-License-Identifier: GPL-3.0-or-later
//
// On a gas card: how many kegs are still to be filled, and whether the gas carries
// them, too. Starts with what the journal knows of it until somebody types another
// number. Asks, and writes nothing.
#pragma once

#include <QWidget>
#include <memory>

#include "core/cellar/kegs_to_fill.h"
#include "ui/context.h"
#include "ui/widgets/quantity_edits.h"

namespace ullage::ui {

class FactList;
class InkLabel;

class KegsToFillPart : public QWidget {
  Q_OBJECT
 public:
  explicit KegsToFillPart(const Context& context, QWidget* parent = nullptr);
  void show_account(std::shared_ptr<const cellar::GasAccount>);

 private:
  void show_known();
  void show_answer();

  Context context_;
  std::shared_ptr<const cellar::GasAccount> account_;
  WholeNumberEdit* count_;
  VolumeEdit* each_;
  InkLabel* known_;
  FactList* answer_;
  bool count_typed_ = false, each_typed_ = false;
};

}  // namespace ullage::ui
